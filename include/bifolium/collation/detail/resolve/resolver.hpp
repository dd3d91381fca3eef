// SPDX-License-Identifier: MIT
/// Works out what the runs of a formula mean together. The grammar passes them in the order of the text. The resolver keeps
/// the current series, the position reached in the alphabet and the leaves counted so far. It passes the result to a sink: the
/// sink of the counter adds leaves, the sink of the reader stores the elements. Both get the same elements, so a count and a
/// reading never differ.
#pragma once

#include <bifolium/collation/detail/resolve/named_targets.hpp>
#include <bifolium/core/checked.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class Resolver : protected NamedTargets<Sink> {
  std::int64_t reached_[3]{}; // the highest places of the plain capitals, small letters and numbers of this part
  NamesMet series_met_;       // the highest places of all other series
  std::uint32_t letters_from_{}, letters_to_{}; // the first run of Latin letters
  bool begins_early_{};                         // an alphabet begins at A or B
  Cycle gathered_{};                            // the leaves of the gatherings beside the format
  Doubt gathered_doubt_{};                      // the text of that statement, for the warning
  std::uint32_t not_met_{};                     // a bit for each of these counts that no run has had
  std::uint32_t looked_at_{};                   // how many runs are in the counts seen
  std::uint64_t counts_seen_{};                 // a bit for each leaf count below 64

protected:
  using Base = NamedTargets<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::text_, Base::alphabet_, Base::limits_, Base::leaves_,
      Base::gatherings_, Base::gatherings_inserted_, Base::last_, Base::runs_, Base::part_number_, Base::part_run_,
      Base::check_inserted;

  bool part_{false}; // true after a semicolon or a volume since the last run

  /// Returns true if a run has been read.
  [[nodiscard]] constexpr bool begun() const noexcept { return runs_.size() > 0; }

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
};

} // namespace detail
} // namespace v0
} // namespace bifolium
