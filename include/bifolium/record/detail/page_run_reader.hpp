// SPDX-License-Identifier: MIT
/// Reads one run of pages that bears numbers: 1-205, 1-[206], xii, a-d, ²1-44, *57-*60, each with its correction. A run is
/// kept with its places in the text only when all of it is read, since what follows it may show that it is none.
#pragma once

#include <bifolium/record/detail/page_run_lookahead.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageRunReader : protected PageRunLookahead {
protected:
  using PageRunLookahead::PageRunLookahead;
  bool unit_before_{}; // in an extent, true if the unit of the numbers stands before them: Vol. I: pp. xii, 320

  // -- corrections ---------------------------------------------------------------------------------------------------

  /// Reads [=152], [i.e. 152] or [that is, 152] after a run, perhaps with a comma between them.
  std::optional<Error> correction(PageRun& run) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    if (cursor_.take(',')) cursor_.take_blanks();
    auto const from = cursor_.at();
    char const close = cursor_.take('[') ? ']' : cursor_.take('(') ? ')' : '\0';
    cursor_.take_blanks();
    // 414 i.e. 416: without brackets the sign = alone is too little
    if ((close == '\0' && cursor_.peek() == '=') || !take_correction_word(cursor_, close != '\0'))
      return cursor_.go_to(here), std::nullopt;
    cursor_.take_blanks();
    auto truly = figure();
    // 81-112 [i.e. 97-128]: both ends are corrected, and the number of pages is that of the printed range
    if (auto const whole = truly.value + run.last - run.first;
        truly.value > 0 && run.first > 0 && cursor_.take_dash()) {
      truly = figure();
      if (truly.value != whole) return cursor_.error_from(from, problem());
    }
    cursor_.take_blanks();
    static_cast<void>(cursor_.take('?'));
    if (truly.value < 1 || (close != '\0' && !cursor_.take(close))) return cursor_.error_from(from, problem());
    if (truly.value > most) return cursor_.error_from(from, Problem::number_too_large);
    run.true_at = truly.at;
    if (run.numbering == Numbering::none)
      run.count = truly.value;
    else {
      run.count = sequences_.corrected_count(run, truly.value);
      run.true_last = truly.value;
    }
    return std::nullopt;
  }
  static void set_unit(PageRun& run, PageUnitWord const& unit) {
    run.unit = unit.unit;
    run.preliminary = unit.preliminary;
    if (!unit.preliminary || run.numbering != Numbering::printed) return;
    run.numbering = Numbering::none; // 4 p. l. are four leaves without numbers
    run.numerals = {}, run.series = 0, run.starred = false;
    run.first = run.last = 0, run.true_last.reset();
  }
  std::optional<Error> finish(PageRun& run, std::size_t from, bool range) {
    if (auto error = correction(run)) return error;
    if (!plus_joins() && cursor_.take('+')) read_.pagination.incomplete = true; // 142+
    run.at = {from, cursor_.at()};
    run.part = part_;
    bool const closed = unit_before_ && !unit_after();
    if (unit_before_ && !closed) unit_before_ = false, unit_ = {"", PageUnit::pages};
    set_unit(run, unit_);
    sequences_.add(run, range);
    runs().push_back(run);
    if (closed) group_ = runs().size();
    any_ = true;
    return std::nullopt;
  }
  /// Returns true before a unit, with words on numbering or without.
  [[nodiscard]] bool unit_after() const {
    auto look = cursor_;
    bool unnumbered = false;
    look.take_blanks();
    while (take_numbering_words(look, unnumbered) || take_folded_word(look)) look.take_blanks();
    return take_page_unit(look) != nullptr;
  }

  // -- runs ----------------------------------------------------------------------------------------------------------

  /// Keeps a run of which more comes at once: the B-G of B-[H].
  void keep_beginning(PageRun run, TextSpan at) {
    run.at = at, run.part = part_;
    set_unit(run, unit_);
    sequences_.add(run, true);
    runs().push_back(run);
  }
  /// a-d, A-K, and [A]-H or A-[H], where the letter of one end is not printed.
  std::optional<Error> lettered(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    auto const letters = letter_run();
    auto const uses = [&](int one) { return letters.first == one || letters.last == one; };
    Alphabet const alphabet{{uses(Alphabet::j), uses(Alphabet::u), uses(Alphabet::w)}};
    TextSpan const first_at{from + letters.first_at, from + letters.first_at + 1};
    TextSpan const last_at{from + letters.last_at, from + letters.last_at + 1};
    cursor_.skip(letters.bytes);
    PageRun run{letters.all_open ? Numbering::inferred : Numbering::printed, Numerals::letters, series, starred};
    auto const made = [&](int first, int last) {
      auto part = run;
      part.first = first, part.last = last, part.count = last - first + 1;
      return part;
    };
    int first = alphabet.place(letters.first), last = alphabet.place(letters.last);
    if (last - first != letters.last - letters.first)
      read_.pagination.warn(
          cursor_.error(Problem::pages_lettered, {from, cursor_.at()}, letters.last - letters.first + 1));
    if (letters.first_open) {
      auto head = made(first, first);
      head.numbering = Numbering::inferred, head.last_at = first_at;
      keep_beginning(head, {from, first_at.to + 1});
      ++first;
    }
    auto body = made(first, last - (letters.last_open ? 1 : 0));
    if (!letters.first_open) body.first_at = first_at;
    if (letters.last_open && body.count > 0) keep_beginning(body, {first_at.from, last_at.from - 1});
    auto end = letters.last_open ? made(last, last) : body;
    if (letters.last_open) end.numbering = Numbering::inferred;
    end.last_at = last_at;
    return finish(end, letters.last_open ? last_at.from - 1 : letters.first_open ? last_at.from : from, true);
  }
  /// Reads 1-205, or 1-[206], where the last page has no number.
  std::optional<Error> range(PageRun& run, Figure const& first, std::size_t from) {
    cursor_.take('*');
    if (run.series != 0)
      if (auto const second = series(); second != 0 && second != run.series) return cursor_.error_from(from, problem());
    bool const unprinted = cursor_.take('[');
    auto const last = figure();
    if (run.starred) take_mark_of_repetition();
    if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    if (unprinted && !cursor_.take(']')) return cursor_.error_from(from, problem());
    ranges_ = true;
    run.last = last.value, run.count = last.value - first.value + 1;
    run.first_at = first.at, run.last_at = last.at;
    if (!unprinted) return finish(run, from, true);
    auto tail = run;
    if (run.count > 1) {
      run.last = last.value - 1, --run.count, run.last_at.reset();
      keep_beginning(run, {from, last.at.from});
    }
    tail.numbering = Numbering::inferred;
    tail.first = tail.last, tail.count = 1, tail.first_at.reset();
    return finish(tail, last.at.from, true);
  }
  /// Reads a number alone. It is one page or, in an extent, the last number of its sequence: 205 for 1-205.
  std::optional<Error> numbered(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = run.last = first.value, run.count = 1, run.last_at = first.at;
    if (auto const pages = starred ? 0 : take_letters_of_number(first); pages > 0) {
      run.starred = true, run.count = pages; // 24a-24d: four pages
      return finish(run, from, true);
    }
    if (!starred && take_mark_of_repetition()) {
      run.starred = true;
      if (!cursor_.take_dash()) return finish(run, from, true); // one page
      return range(run, first, from);
    }
    if (dash_parts(first)) {
      run.first = 1, run.count = first.value;
      auto const error = finish(run, from, false);
      cursor_.take_dash();
      return error;
    }
    if (cursor_.take_dash()) return range(run, first, from);
    if (said_unnumbered()) {
      PageRun none{Numbering::none};
      none.count = first.value, none.last_at = first.at;
      return finish(none, from, false);
    }
    if (sequences_.is_one_page(run, first.value, extent_, ranges_)) return finish(run, from, extent_);
    run.first = 1, run.count = first.value;
    if (!extent_ && ranges_) warn(Problem::number_read_as_total, from);
    return finish(run, from, false);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
