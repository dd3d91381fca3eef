// SPDX-License-Identifier: MIT
/// Reads gatherings in any notation. A run gets its own count, a count that it shares with a later run, or the eight
/// leaves that an omitted count means in some catalogues; doubts become warnings.
#pragma once

#include <bifolium/collation/detail/grammar/plain_run_grammar.hpp>
#include <bifolium/collation/detail/scan/other_alphabets.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class RunGrammar : protected PlainRunGrammar<Sink> {
protected:
  using Base = PlainRunGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::begun, Base::last_, Base::part_, Base::dialect_, Base::text_, Base::at, Base::c_,
      Base::depth_, Base::roman_, Base::cursor, Base::take_count, Base::take_element, Base::text_mark,
      Base::shared_until_;

  /// Reads a run in any notation.
  constexpr bool gathering() {
    FoundElement e;
    auto c = c_;
    if (!take_element(c, e)) return no_run(e);
    if (!e.count.found() && e.first.key.mark() == Mark::number && separate_numbers(e)) c = cursor(e.end);
    if (e.said.found()) settle_counts(e);
    bool const in_words = !e.count.found() || e.count.in_words;
    FoundRun run;
    run.first = e.first.key;
    run.last = e.last.key;
    run.gatherings = e.gatherings;
    run.first_inferred = e.first.inferred;
    run.last_inferred = e.single || e.gatherings == 1 ? run.first_inferred : e.last.inferred;
    begin(run);
    this->keep_series(run);
    if (!count(e, run, c)) return false;
    c_ = c;
    doubts(e, run);
    if (in_words) ++runs_in_words_;
    if (is_hebrew_alphabet(e)) return hebrew_alphabet(e, run);
    if (!this->add_run(run, e.from, e.end)) return false;
    if (e.said.found() && !this->has_gathering_of(e.said.cycle))
      warn(Problem::gathered_otherwise, e.said.from, e.said.end);
    return true;
  }
  /// Adds a gathering π or χ for leaves that the text describes in words as unsigned.
  constexpr bool unsigned_gathering(bool chi, int leaves, std::uint32_t from, std::uint32_t to) {
    FoundRun run;
    run.first = run.last = SignatureKey::of(chi ? Mark::chi : Mark::pi);
    run.leaves = Cycle{leaves};
    begin(run);
    this->doubt_counts(run.leaves, run.gatherings, true, from, to);
    if (run.begins_part) this->begin_part();
    if (this->comes_again(run)) warn(Problem::series_starts_again, from, to);
    this->reach(run);
    return this->add_run(run, from, to);
  }
  /// Reads the bare name of a symbol with a count: par⁴. It is a name, although the brackets are missing.
  constexpr bool named(std::uint32_t end, FoundCount const& count) {
    auto const from = c_.token.from;
    auto const name = text_mark(Mark::name, from, end, end, 1);
    if (!name) return fail(name.problem, from, end, Signature::longest_text);
    FoundRun run;
    run.first = run.last = name.key;
    run.leaves = Cycle{count.cycle.term(0)};
    begin(run);
    warn(Problem::name_without_brackets, from, count.end);
    if (run.begins_part) this->begin_part();
    if (this->comes_again(run)) warn(Problem::series_starts_again, from, count.end);
    this->reach(run);
    c_ = cursor(count.end);
    return this->add_run(run, from, count.end);
  }
  /// Skips the count after the bracket that closes a group, because the runs in the group already have it.
  constexpr void after_group(std::uint32_t bracket_end) {
    if (shared_until_ <= bracket_end) return;
    if (dialect_.omitted != Omitted::next) {
      c_ = cursor(shared_until_);
      return;
    }
    auto p = c_;
    if (!c_.at(TokenKind::open_round) && take_count(p, dialect_.flat_counts).found()) c_ = p;
  }

  /// Fails with the reason why a count cannot be read.
  constexpr bool refuse_count(FoundCount const& count, std::uint32_t from, std::uint32_t to) {
    bool const terms = count.problem == Problem::cycle_too_long;
    return fail(count.problem, from, to, terms ? std::int64_t{Cycle::most_terms} : most_leaves_in_gathering);
  }
  /// Checks the count of gatherings, also of inserted ones. Fails if it cannot be read, or is on the line and too high:
  /// 810 is 8.10 without its point, and so is 38 6.
  constexpr bool check_count(FoundElement const& e) {
    if (e.count.problem != Problem::none) return refuse_count(e.count, e.from, e.count.end);
    auto const most = e.apart ? thick_gathering / 2 : thick_gathering;
    for (std::size_t i = 0; i < e.count.cycle.size(); ++i)
      if (auto const leaves = e.count.cycle.term(i); e.count.flat && leaves > most)
        return fail(Problem::very_thick_gathering, e.from, e.end, leaves);
    return true;
  }
  /// Adds warnings for doubts about the marks of gatherings, also of inserted ones. `again`: the letter has come
  /// before.
  constexpr void doubt_marks(FoundElement const& e, FoundRun const& run, bool again) {
    if (!e.single) {
      if (run.gatherings == 1) warn(Problem::run_of_one, e.from, e.end);
      if (e.first.glyph_outside || e.last.glyph_outside) warn(Problem::letter_not_in_alphabet, e.from, e.end);
    } else if (e.first.glyph_outside && (run.first.letter == Alphabet::w || again))
      warn(Problem::letter_not_in_alphabet, e.from, e.end);
    // πA⁶ is the notation of Greg and Bowers; πA without a count may be π and A
    if (e.first.flat_prefix && !e.count.found()) warn(Problem::duplicate_read_flat, e.from, e.end);
    if (e.mixed) warn(Problem::mixed_notation, e.from, e.end);
    if (e.half_enclosed) warn(Problem::parentheses_at_one_end, e.from, e.end);
    if (is_unsettled(e, run)) warn(Problem::alphabet_not_settled, e.from, e.end, gatherings_of(e));
    if (e.roman) warn(Problem::roman_numbers, e.from, e.end);
    if (e.by_sequence) warn(Problem::numbers_read_by_sequence, e.from, e.end);
    if (e.read_flat) warn(Problem::series_read_flat, e.from, e.end);
  }
  constexpr void begin(FoundRun& run) {
    roman_ = false;
    run.unsigned_throughout = depth_ > 0;
    run.begins_part = part_ && begun();
    part_ = false;
  }

  Letters shown_{}; // J, U and W, which the alphabet lacks and the formula has in their places: A-I⁸ J⁸, V⁸ W⁸

private:
  bool ends_with_u_{false};        // the last run ends with U, in an alphabet without it
  std::uint32_t runs_in_words_{0}; // how many runs have a count in words, or share one

  /// Decides between a count in figures and one in words after it. The figure is the last leaf that is signed, A-H3, in
  /// fours, if it is on the line, lower, and no run before it has its count in figures. Otherwise it is the count of this
  /// run, and the words say how most gatherings are. (common practice, no source)
  constexpr void settle_counts(FoundElement& e) const {
    if (e.said.sound() && !(may_be_signed_leaf(e) && runs_in_words_ == this->runs_.size())) return;
    e.count = e.said; // also a count that cannot be read, which is refused
    e.said = {};
    e.apart = false;
  }

  constexpr void look_for_letters(FoundElement const& e, FoundRun const& run) {
    auto const before = letter_before(run);
    auto const letter = run.first.letter;
    bool const outside = e.first.glyph_outside;
    if (outside && letter == Alphabet::w && before == Alphabet::v) shown_.w = true;
    if (outside && letter == Alphabet::j - 1 && before == letter) shown_.j = true;
    if (!outside && letter == Alphabet::v && before == letter && ends_with_u_) shown_.u = true;
    ends_with_u_ = e.last.glyph_outside && run.last.letter == Alphabet::v;
  }
  /// Returns the letter of the gathering before the run, or 0 if it is not of the same alphabet.
  [[nodiscard]] constexpr int letter_before(FoundRun const& run) const {
    auto const& before = last_.last;
    bool const same = begun() && run.first.is_plain_latin() && !run.begins_part && before.series == run.first.series &&
                      before.multiple == run.first.multiple;
    return same ? int{before.letter} : 0;
  }
  constexpr bool no_run(FoundElement const& e) {
    if (e.problem != Problem::none) return fail(e.problem, e.from, e.end);
    auto const why = e.first.problem;
    auto const limit = why == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple}
                                                         : std::int64_t{Signature::longest_text};
    return fail(why == Problem::no_signature ? Problem::unknown_mark : why, e.first.end, e.first.end + 12, limit);
  }
  /// Separates 1-210 312: if the numbers continue those of the run before, they show where the count begins.
  constexpr bool separate_numbers(FoundElement& e) const {
    if (!dialect_.flat_counts || dialect_.omitted == Omitted::eight || e.first.inferred || !is_digit(at(e.from)))
      return false;
    bool const known = begun() && last_.last.mark() == Mark::number && !last_.last.enclosed();
    return this->part_numbers(e, known ? last_.last.multiple + 1 : 1, known) ||
           (known && part_ && this->part_numbers(e, 1, false));
  }
  constexpr bool count(FoundElement& e, FoundRun& run, TokenCursor const& after) {
    if (e.count.found()) return own_count(e, run);
    if (auto const named = named_leaves_of(e)) {
      run.leaves = Cycle{named->count};
      return true;
    }
    if (this->find_shared(e, after, depth_)) {
      bool doubtful = false;
      run.leaves = this->take_shared(run.gatherings, doubtful);
      if (doubtful) warn(Problem::count_shared, e.from, e.end);
      return true;
    }
    if (dialect_.omitted == Omitted::eight) {
      run.leaves = Cycle{8};
      warn(Problem::count_supplied, e.from, e.end, 8);
      return true;
    }
    if (is_digit(at(e.end))) return fail(Problem::flat_count, e.from, e.end + 3);
    bool const number = run.first.mark() == Mark::number && e.end - e.from > 1;
    return fail(number ? Problem::flat_numbers : Problem::no_leaf_count, e.from, e.end);
  }
  constexpr bool own_count(FoundElement const& e, FoundRun& run) {
    if (!check_count(e)) return false;
    run.leaves = leaves_of_count(e);
    if (leaves_listed(e) != 0) warn(Problem::leaves_read_as_count, e.from, e.end, leaves_listed(e));
    if (!this->shares_nothing(0) && !e.said.found()) run.leaves = this->own_of_shared(run.leaves, e.end);
    if (e.apart) warn(Problem::count_apart, e.from, e.end);
    return true;
  }
  /// Returns the leaves that the mark names: 'gg3.4'.
  [[nodiscard]] constexpr std::optional<NamedLeaves> named_leaves_of(FoundElement const& e) const {
    if (!e.single || e.first.key.mark() != Mark::printed) return std::nullopt;
    return named_leaves(text_.substr(e.first.key.text_from, e.first.key.text_size));
  }
  constexpr void doubts(FoundElement const& e, FoundRun const& run) {
    if (run.begins_part) this->begin_part();
    look_for_letters(e, run);
    this->doubt_counts(run.leaves, run.gatherings, e.count.found(), e.from, e.end);
    bool const again = this->comes_again(run);
    doubt_marks(e, run, again && Base::is_followed(run.first));
    if (again) warn(Problem::series_starts_again, e.from, e.end);
    this->doubt_place(run, e.from, e.end);
    if (this->skips(run)) warn(Problem::letters_skipped, e.from, e.end);
    if (may_be_roman_run(run.first, run.last) && !e.last.glyph_outside && this->reached(run.first) == 0)
      warn(Problem::letters_or_roman_numbers, e.from, e.end, run.gatherings);
    this->reach(run);
  }
  /// Adds a run of Hebrew letters as runs of numbers: the letters up to י are consecutive numbers, each later one is a
  /// run.
  constexpr bool hebrew_alphabet(FoundElement const& e, FoundRun run) {
    auto const leaves = run.leaves;
    auto const first = e.first.key.multiple, last = e.last.key.multiple;
    std::int64_t index = 0;
    for (auto worth = first; worth <= last;) {
      auto const to = worth < 10 ? 10U : worth;
      run.first = SignatureKey::of(Mark::hebrew, 0, worth);
      run.last = SignatureKey::of(Mark::hebrew, 0, to);
      run.gatherings = std::int64_t{to} - worth + 1;
      run.leaves = leaves.turned(index);
      if (!this->add_run(run, e.from, e.end)) return false;
      run.begins_part = false;
      index += run.gatherings;
      worth = to + (to < 100 ? 10 : 100);
    }
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
