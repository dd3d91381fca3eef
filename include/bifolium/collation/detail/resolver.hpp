// SPDX-License-Identifier: MIT
/// Works out what the elements of a formula mean together. The grammar passes elements in the order of the text. The
/// resolver keeps the current series, the position reached in the alphabet, the gatherings that a change may name, the
/// deleted leaves, and the first error. It passes the result to a sink: the sink of the counter adds leaves, the sink
/// of the reader stores the elements. Both get the same elements, so a count and a reading never differ.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/detail/gone_leaves.hpp>
#include <bifolium/collation/detail/names_met.hpp>
#include <bifolium/collation/detail/runs_so_far.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/collation/passage.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/fold/format.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A change in terms of the text. Its names have a meaning only together with the text.
struct FoundChange {
  /// In `first` and `last` of a deletion or a cancel: every leaf of the gathering.
  static constexpr int every_leaf = 0;
  Change::Kind kind{};
  GatheringAt gathering{};
  /// the leaves as folded, or both `every_leaf`; for an insertion, `first` is the leaf before it. A number in place of
  /// FoldedLeaves, since the state of a parenthesis, which is copied for each change, has four of these
  int first{}, last{};
  int leaves{};            ///< number of inserted leaves
  Joined joined{};         ///< the way in which they are joined
  bool named{}, starred{}; ///< true if a name follows; true for (+8*)
  bool of_change{};        ///< true for an identity of the change before it
  bool leaf_written{};     ///< true for an identity with its leaf on the left
  bool doubtful{};         ///< true if there is a question mark
  bool inferred{};         ///< true if the name of an insertion is in square brackets
  SignatureKey name{};     ///< the name of an insertion, or of the other leaf of an identity
  int figure{};            ///< the number after the name or before the star
  std::uint64_t lacking{}; ///< the leaves that an inserted gathering lacks, as in Insertion
  std::uint32_t from{}, to{};
  ChangeForm form{};
};

/// A sink that stores only the number of doubts.
struct CountSink {
  static constexpr bool stores = false; ///< false if it is of no use to make a run or change only to pass it on
  std::int64_t warnings{0};
  constexpr void run(FoundRun const&) {}
  constexpr void change(FoundChange const&) {}
  constexpr void blank(LeafOfBook const&) {}
  constexpr void warn(Doubt const&) { ++warnings; }
  constexpr void format(Format) {}
  constexpr void second_format(Format) {}
  constexpr void paper_class(std::uint32_t, std::uint32_t) {}
  constexpr void gathered(Cycle const&) {}
  constexpr void label(std::uint32_t, std::uint32_t, bool) {}
  constexpr void passage(Passage::Kind, std::uint32_t, std::uint32_t) {}
  constexpr void tail(std::uint32_t, std::uint32_t) {}
  constexpr void imperfect() {}
  /// Returns a sink for text that is read a second time and not stored.
  [[nodiscard]] constexpr CountSink nobody() const { return {}; }
};

template <class Sink> class Resolver {
  struct InsertedNames { // a gathering or leaves, or a run of gatherings; without initialisers
    std::uint32_t multiple, text_from;
    std::uint16_t series;
    std::uint8_t letter, text_size;
    std::int64_t gatherings;
    int first, last; // the leaves, or both 0 for gatherings
    std::uint32_t from, to;
    [[nodiscard]] constexpr SignatureKey name() const { return {series, letter, text_size, multiple, text_from}; }
  };

protected:
  std::string_view text_;
  Dialect dialect_;
  Alphabet alphabet_;
  Sink& sink_;
  Limits limits_;
  Doubt error_{};
  bool failed_{false};
  bool part_{false}; // true after a semicolon or a volume since the last run
  std::int64_t leaves_{}, gatherings_{}, gatherings_inserted_{};
  FoundRun last_{};
  RunsSoFar runs_;
  GoneLeaves gone_;

private:
  SmallList<InsertedNames, 64> inserted_names_;
  std::size_t inserted_checked_{}; // this number of them
  std::int64_t reached_[3]{};      // the highest places of the plain capitals, small letters and numbers of this part
  NamesMet series_met_;            // the highest places of all other series
  NamesMet leaves_inserted_;       // bits of the leaves that are inserted under a name
  std::uint32_t part_number_{}, part_run_{};    // the number of this part and of its first run
  std::uint32_t letters_from_{}, letters_to_{}; // the first run of Latin letters
  bool begins_early_{};                         // an alphabet begins at A or B
  std::uint32_t changes_{};
  Cycle gathered_{};            // the leaves of the gatherings beside the format
  Doubt gathered_doubt_{};      // the text of that statement, for the warning
  std::uint32_t not_met_{};     // a bit for each of these counts that no run has had
  std::uint32_t looked_at_{};   // how many runs are in the counts seen
  std::uint64_t counts_seen_{}; // a bit for each leaf count below 64

protected:
  constexpr Resolver(std::string_view text, Dialect dialect, Limits const& limits, Sink& sink)
      : text_{text}, dialect_{dialect}, alphabet_{dialect.letters}, sink_{sink}, limits_{limits} {}

  constexpr bool fail(Problem problem, std::uint32_t from, std::uint32_t to, std::int64_t limit = 0) {
    auto const size = static_cast<std::uint32_t>(text_.size());
    if (!failed_) error_ = {problem, from < size ? from : size, to < size ? to : size, limit};
    failed_ = true;
    return false;
  }
  constexpr void warn(Problem problem, std::uint32_t from, std::uint32_t to, std::int64_t limit = 0) {
    auto const size = static_cast<std::uint32_t>(text_.size());
    sink_.warn({problem, from, to < size ? to : size, limit});
  }
  /// Returns true if a leaf was deleted, cancelled or inserted.
  [[nodiscard]] constexpr bool has_changes() const noexcept { return changes_ != 0; }
  /// Returns true if a run has been read.
  [[nodiscard]] constexpr bool begun() const noexcept { return runs_.size() > 0; }

  // -- runs ----------------------------------------------------------------------------------------------------------

  constexpr std::int64_t& reached(SignatureKey mark) {
    return reached_[mark.mark() == Mark::capital ? 0 : mark.mark() == Mark::small_letter ? 1 : 2];
  }
  /// A mark of a series whose places are followed.
  [[nodiscard]] static constexpr bool is_followed(SignatureKey mark) noexcept {
    return mark.is_plain_latin() || mark.is_bare_number();
  }
  constexpr void begin_part() {
    reached_[0] = reached_[1] = reached_[2] = 0;
    check_inserted();
    ++part_number_;
    part_run_ = runs_.size();
  }
  constexpr bool add_leaves(std::int64_t number, std::uint32_t from, std::uint32_t to) {
    auto const sum = checked_add(leaves_, number);
    if (!sum) return fail(Problem::number_too_large, from, to);
    leaves_ = *sum;
    return true;
  }
  /// Takes a valid run: counts it, stores it for later and passes it on.
  constexpr bool add_run(FoundRun const& run, std::uint32_t from, std::uint32_t to) {
    auto const sum = checked_add(gatherings_, run.gatherings);
    if (!sum) return fail(Problem::number_too_large, from, to);
    if (runs_.size() == limits_.runs) return fail(Problem::too_many_runs, from, to, limits_.runs);
    if (!add_leaves(run.leaves.total(run.gatherings), from, to)) return false;
    runs_.push_back(run, gatherings_);
    gatherings_ = *sum;
    if (not_met_ != 0) meet(run.leaves);
    last_ = run;
    if (run.first.is_latin()) meet_letters(run, from, to);
    sink_.run(run);
    return true;
  }
  /// Notes where an alphabet of the formula begins.
  constexpr void meet_letters(FoundRun const& run, std::uint32_t from, std::uint32_t to) noexcept {
    if (letters_to_ == 0) letters_from_ = from, letters_to_ = to;
    begins_early_ = begins_early_ || run.first.letter <= 2 || run.last.multiple != run.first.multiple;
  }
  /// Warns at the end of the text if no alphabet begins at A or B: gatherings may be left out. One gathering alone is an
  /// example of something.
  constexpr void check_alphabet() {
    if (letters_to_ != 0 && !begins_early_ && gatherings_ > 1)
      warn(Problem::alphabet_begins_late, letters_from_, letters_to_);
  }
  /// Takes the leaves of the gatherings that are stated beside the format.
  constexpr void gathered(Cycle const& leaves, std::uint32_t from, std::uint32_t to) {
    check_gathered(); // of the volume before
    gathered_ = leaves;
    gathered_doubt_ = {Problem::gathered_otherwise, from, to};
    not_met_ = (1U << leaves.size()) - 1U;
    sink_.gathered(leaves);
  }
  /// Returns true if each of these leaf counts is that of some run. Each run is looked at once, however often this is asked.
  [[nodiscard]] constexpr bool has_gathering_of(Cycle const& leaves) {
    for (; looked_at_ < runs_.size(); ++looked_at_)
      for (std::size_t i = 0; i < runs_.terms(looked_at_); ++i) {
        auto const one = static_cast<unsigned>(runs_.leaves_folded({looked_at_, static_cast<std::int64_t>(i)}));
        if (one < 64U) counts_seen_ |= std::uint64_t{1} << one;
      }
    for (std::size_t k = 0; k < leaves.size(); ++k)
      if (leaves.term(k) < 64 && ((counts_seen_ >> static_cast<unsigned>(leaves.term(k))) & 1U) == 0) return false;
    return true;
  }
  /// Warns at the end of the text, or of a volume with such a statement, if no gathering has the number of leaves
  /// stated beside the format. Others may differ: a book in fours often begins or ends with another gathering.
  constexpr void check_gathered() {
    if (not_met_ != 0) sink_.warn(gathered_doubt_);
    not_met_ = 0;
  }
  /// A change that is understood is counted and handed on.
  constexpr bool add_change(FoundChange const& change) {
    if (changes_ == limits_.changes) return fail(Problem::too_many_changes, change.from, change.to, limits_.changes);
    ++changes_;
    sink_.change(change);
    return true;
  }
  /// Counts an inserted gathering of so many leaves, as folded.
  constexpr void add_inserted_gathering(int folded) {
    ++gatherings_inserted_;
    if (not_met_ != 0) meet(Cycle{folded});
  }
  /// Notes which of the stated counts this run has.
  constexpr void meet(Cycle const& leaves) {
    for (std::size_t i = 0; i < gathered_.size(); ++i)
      for (std::size_t k = 0; k < leaves.size(); ++k)
        if (leaves.term(k) == gathered_.term(i)) not_met_ &= ~(1U << i);
  }
  /// A raised figure rules the rest of its series, ²a-b⁸ c⁶, unless the main series continues at just this letter.
  constexpr void keep_series(FoundRun& run) {
    if (!last_.last.raised() || !run.first.is_plain_latin() || run.begins_part) return;
    auto const as_last = run.first.in_series(*last_.last.raised());
    auto const rank = run.first.rank(alphabet_);
    if (same_series(as_last, last_.last, text_) && rank == last_.last.rank(alphabet_) + 1 &&
        reached(run.first) + 1 != rank)
      run.first = as_last, run.last = run.last.in_series(*as_last.raised());
  }
  /// Adds warnings for doubts in the counts of a run. The counts are looked at where they are: of a copy, g++ 12 -O3
  /// thinks that they may be uninitialized.
  constexpr void doubt_counts(Cycle const& leaves, std::int64_t gatherings, bool counted, std::uint32_t from,
                              std::uint32_t to) {
    auto const terms = leaves.size();
    bool odd = false;
    for (std::size_t i = 0; i < terms; ++i) odd = odd || (leaves.term(i) % 2 != 0 && leaves.term(i) != 1);
    if (odd) warn(Problem::odd_gathering, from, to);
    for (std::size_t i = 0; i < terms; ++i) {
      bool told = false;
      for (std::size_t k = 0; k < i; ++k) told = told || leaves.term(k) == leaves.term(i);
      if (!told && leaves.term(i) > thick_gathering) warn(Problem::very_thick_gathering, from, to, leaves.term(i));
    }
    if (terms > 1 && gatherings % static_cast<std::int64_t>(terms) != 0 && counted)
      warn(Problem::alternation_over_odd_run, from, to, gatherings);
  }
  /// Returns what has been reached in the series of the run, which is none of those that are followed.
  constexpr std::uint64_t& reached_otherwise(SignatureKey mark) { return series_met_.of(mark, 0, part_number_, text_); }
  /// Returns true if the mark, or one after it in its series, has come before in this part of the book.
  [[nodiscard]] constexpr bool comes_again(FoundRun const& run) {
    auto const rank = run.first.rank(alphabet_);
    return is_followed(run.first) ? rank <= reached(run.first)
                                  : static_cast<std::uint64_t>(rank) <= reached_otherwise(run.first);
  }
  /// Warns of π after other gatherings and of χ before all. They say only where unsigned leaves are, and in a book in
  /// Greek letters they are letters.
  constexpr void doubt_place(FoundRun const& run, std::uint32_t from, std::uint32_t to) {
    auto const mark = run.first.mark();
    if ((mark != Mark::pi && mark != Mark::chi) || run.first.duplicate() != Duplicate::none) return;
    bool const begins = !begun() || run.begins_part;
    bool const late = mark == Mark::pi && !begins && last_.last.mark() != Mark::pi && last_.last.mark() != Mark::greek;
    if (late || (mark == Mark::chi && !begun())) warn(Problem::unsigned_mark_misplaced, from, to);
  }
  /// Returns true if the run begins more than one letter after the last run of its series in the same part.
  [[nodiscard]] constexpr bool skips(FoundRun const& run) {
    bool const number = run.first.is_bare_number();
    if (!is_followed(run.first) || (reached(run.first) == 0 && !number)) return false;
    auto const next = reached(run.first) + 1;
    return run.first.rank(alphabet_) > next && (number || alphabet_.has(run.first.letter));
  }
  constexpr void reach(FoundRun const& run) {
    if (!is_followed(run.first)) {
      auto& highest = reached_otherwise(run.first);
      auto const rank = static_cast<std::uint64_t>(run.last.rank(alphabet_));
      if (rank > highest) highest = rank;
      return;
    }
    // a W that the alphabet does not have stands before X, which can follow
    bool const between = run.last.is_latin() && !alphabet_.has(run.last.letter);
    auto const rank = run.last.rank(alphabet_) - (between ? 1 : 0);
    if (rank > reached(run.first)) reached(run.first) = rank;
  }

  // -- what changes name ----------------------------------------------------------------------------------------------

  [[nodiscard]] constexpr Target last_gathering() const {
    auto const index = last_.gatherings - 1;
    return {{runs_.size() - 1, index}, gatherings_ - 1, last_.leaves.at(index), false};
  }
  [[nodiscard]] constexpr std::optional<Target> find(SignatureKey name) { return runs_.find(name, text_, alphabet_); }
  /// Remembers the names of what was inserted, so that a change of it is told as such, and warns if a name has come
  /// before. `first` and `last`: the leaves, or both 0 for whole gatherings.
  constexpr void remember_inserted(SignatureKey mark, std::int64_t gatherings, int first, int last, std::uint32_t from,
                                   std::uint32_t to) {
    inserted_names_.push_back(
        {mark.multiple, mark.text_from, mark.series, mark.letter, mark.text_size, gatherings, first, last, from, to});
    std::uint64_t bits = first == 0 ? ~std::uint64_t{0} : 0;
    for (auto leaf = first; leaf > 0 && leaf <= last && leaf <= 64; ++leaf)
      bits |= std::uint64_t{1} << static_cast<unsigned>(leaf - 1);
    auto const rank = mark.rank(alphabet_);
    bool again = false;
    for (std::int64_t i = 0; i < gatherings; ++i) {
      auto& met = leaves_inserted_.of(mark, rank + i, part_number_, text_);
      again = again || (met & bits) != 0;
      met |= bits;
    }
    if (again) warn(Problem::inserted_name_taken, from, to);
  }
  /// Warns at the end of a part if a leaf was inserted under the name of one that the part has.
  constexpr void check_inserted() {
    for (; inserted_checked_ < inserted_names_.size(); ++inserted_checked_) {
      auto const one = inserted_names_[inserted_checked_];
      auto const name = one.name();
      auto const rank = name.rank(alphabet_);
      bool taken = false;
      for (std::int64_t i = 0; i < one.gatherings && !taken; ++i)
        if (auto const target = find(one.gatherings == 1 ? name : name.at_rank(rank + i, alphabet_));
            target && !target->other_series && target->gathering.run >= part_run_)
          taken = has_leaf(*target, one.first, one.last);
      if (taken) warn(Problem::inserted_name_taken, one.from, one.to);
    }
  }
  /// Returns true if the gathering has one of the leaves, or for 0 any leaf, in its place.
  [[nodiscard]] constexpr bool has_leaf(Target const& target, int first, int last) const {
    auto const to = first == 0 || last > target.leaves ? target.leaves : last;
    for (auto leaf = first == 0 ? 1 : first; leaf <= to; ++leaf)
      if (!is_out(target, leaf)) return true;
    return false;
  }
  /// Returns true if leaves were inserted under this name.
  [[nodiscard]] constexpr bool is_inserted(SignatureKey name) const {
    for (std::size_t i = 0; i < inserted_names_.size(); ++i) {
      auto const& one = inserted_names_[i];
      auto const place =
          run_length({one.series, one.letter, one.text_size, one.multiple, one.text_from}, name, alphabet_, text_);
      if (place && *place <= one.gatherings) return true;
    }
    return false;
  }
  constexpr bool take_out(Target const& target, int first, int last, std::uint32_t from, std::uint32_t to,
                          bool cancelled = false) {
    if (!gone_.take_out(target.ordinal, target.leaves, first, last)) return fail(Problem::leaf_changed_twice, from, to);
    if (cancelled) static_cast<void>(gone_.take_out(as_cancelled(target.ordinal), target.leaves, first, last));
    return true;
  }
  /// Returns the number under which cancelled leaves are kept a second time. No gathering has it.
  [[nodiscard]] static constexpr std::int64_t as_cancelled(std::int64_t ordinal) noexcept { return -1 - ordinal; }
  /// Returns true if the leaf is deleted or cancelled. Precondition: the gathering has it.
  [[nodiscard]] constexpr bool is_out(Target const& target, int leaf) const {
    return gone_.is_out(target.ordinal, leaf);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
