// SPDX-License-Identifier: MIT
/// Reads one run of pages: 1-205, [8], [206], xii, ²1-44, *57-*60, each with its correction. A statement begins with
/// its unit and an extent ends with it, and a number alone has different meanings in them: in `pp. 1-7, 8` it is a
/// page, in `8, 205 p.` a number of pages.
#pragma once

#include <bifolium/record/detail/page_faults.hpp>
#include <bifolium/record/detail/page_sequences.hpp>
#include <bifolium/record/detail/page_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageRunReader : protected PageFaultScanner {
protected:
  bool extent_;        // true if the unit comes after the numbers
  bool wanted_extent_; // the kind of statement that the caller wants: errors name it
  bool ranges_{};      // true after a run from - to: in a statement, numbers alone are then single pages
  bool unit_seen_{}, any_{};
  int depth_{}; // depth of the parentheses after volumes
  std::uint16_t part_{};
  PageUnitWord unit_{"", PageUnit::pages}; // the unit of the numbers after it, if the unit comes first
  std::size_t group_{};                    // the first run whose unit is not read yet
  std::vector<std::size_t> own_unit_{};    // runs of this group with a unit of their own: 8, [4 leaves], 205 p.
  bool approximate_{};
  std::size_t approximate_run_{SIZE_MAX}; // the first run stated as approximate; it may still be left unread
  PageSequences sequences_{};

  [[nodiscard]] std::vector<PageRun>& runs() { return read_.pagination.runs; }
  [[nodiscard]] Problem problem() const { return wanted_extent_ ? Problem::not_an_extent : Problem::not_a_pagination; }
  [[nodiscard]] std::optional<Error> wrong(Figure const& figure, std::size_t from) {
    if (figure.value < 1) return cursor_.error_from(from, problem());
    if (figure.value > most) return cursor_.error_from(from, Problem::number_too_large);
    return std::nullopt;
  }

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
    if ((close == '\0' && cursor_.peek() == '=') || !take_correction_word(cursor_))
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
  /// Returns true before a plus that joins two runs: viii+205 p., viii+[4] p.; not before that of 142+ l.
  [[nodiscard]] bool plus_joins() const {
    auto look = cursor_;
    if (!look.take('+')) return false;
    look.take_blanks();
    auto const roman = roman_numeral(look.rest().substr(0, 40));
    return look.at_digit() || look.peek() == '[' ||
           (roman && roman->bytes > 1 && !is_latin_letter(look.peek(roman->bytes)));
  }
  std::optional<Error> finish(PageRun& run, std::size_t from, bool range) {
    if (auto error = correction(run)) return error;
    if (!plus_joins() && cursor_.take('+')) read_.pagination.incomplete = true; // 142+
    run.at = {from, cursor_.at()};
    run.part = part_;
    set_unit(run, unit_);
    sequences_.add(run, range);
    runs().push_back(run);
    any_ = true;
    return std::nullopt;
  }

  // -- runs ----------------------------------------------------------------------------------------------------------

  /// Returns the next number in the text without taking it.
  [[nodiscard]] std::int64_t next_number(Numerals numerals) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    while (cursor_.take(',')) cursor_.take_blanks();
    bool const bracket = cursor_.take('[');
    auto const next = figure();
    bool const run = cursor_.take_dash();
    cursor_.go_to(here);
    return next.numerals == numerals && (!bracket || run) ? next.value : -1;
  }
  /// Decides what a number in brackets means. In a statement [206] is one page if it continues the numbers, and the
  /// number after it, if there is one, continues from it. Otherwise it is a number of pages.
  void decide_bracket(PageRun& run, Figure const& figure, std::size_t from) {
    PageRun as_number{Numbering::inferred, figure.numerals, run.series};
    as_number.starred = run.starred;
    auto const next = next_number(figure.numerals);
    if (!sequences_.is_number_of_page(as_number, figure.value, next)) return;
    as_number.first = as_number.last = figure.value;
    as_number.count = 1;
    as_number.last_at = run.last_at;
    run = as_number;
    if (next != figure.value + 1 && figure.value <= 16) warn(Problem::bracket_read_as_number, from);
  }
  /// [8], and (8) as dealers write it.
  std::optional<Error> bracketed(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    char const close = cursor_.peek() == '(' ? ')' : ']';
    cursor_.skip(1);
    cursor_.take_blanks();
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::none};
    run.series = series, run.starred = starred;
    run.count = first.value, run.last_at = first.at;
    bool lone = true, said = false;
    if (cursor_.take_dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
      if (auto error = wrong(last, from)) return error;
      run.numbering = Numbering::inferred, run.numerals = first.numerals;
      run.first = first.value, run.last = last.value, run.count = last.value - first.value + 1;
      run.first_at = first.at, run.last_at = last.at;
      lone = false;
    } else
      run.series = 0, run.starred = false;
    if (cursor_.take('+')) read_.pagination.incomplete = true; // [48+]
    auto const* const own = words_in_bracket(close, lone, said);
    if (lone && take_correction_word(cursor_)) { // [12 i.e. 14]
      cursor_.take_blanks();
      auto const truly = figure();
      if (auto error = wrong(truly, from)) return error;
      run.count = truly.value, run.true_at = truly.at;
    }
    if (!cursor_.take(close)) return cursor_.error_from(from, problem());
    bool parts = lone && dash_parts(first);
    if (lone && !parts && series == 0 && !starred && before_sequence(first)) {
      parts = true;
      read_.pagination.warn(cursor_.error(Problem::bracket_read_as_count, {from, cursor_.at()}, first.value));
    }
    if (lone && !parts && cursor_.take_dash()) return opened_range(first, series, starred, from);
    if (lone && !said && !extent_ && !said_unnumbered()) {
      run.series = series, run.starred = starred;
      decide_bracket(run, first, from);
      if (run.numbering == Numbering::none) run.series = 0, run.starred = false;
    }
    auto const error = finish(run, from, !lone);
    if (!error && parts) cursor_.take_dash();
    if (!error && own != nullptr) keep_unit(*own);
    return error;
  }
  /// Takes the words after a number in brackets, up to the end: `[8 unnumbered pages]`, `[4 ll.]`, `[1, blank]`, `[2 ads]`.
  /// Returns the unit among them, if there is one; words about what is printed there are left unread.
  PageUnitWord const* words_in_bracket(char close, bool lone, bool& said) {
    PageUnitWord const* own = nullptr;
    cursor_.take_blanks();
    for (bool more = true; more;) {
      auto const from = cursor_.at();
      bool unnumbered = false;
      if (take_numbering_words(cursor_, unnumbered)) said = true;
      if (own == nullptr && (own = take_page_unit(cursor_)) != nullptr) said = true;
      cursor_.take_blanks();
      more = cursor_.at() > from;
    }
    auto const here = cursor_.at();
    if (!lone || take_correction_word(cursor_)) return cursor_.go_to(here), own;
    auto const from = cursor_;
    if (cursor_.take(',')) cursor_.take_blanks();
    int depth = 0;
    bool const words = names_matter();
    auto const is_word = [&](char c) { return !is_digit(c) && c != '[' && !(depth == 0 && c == close); };
    while (words && !cursor_.at_end() && is_word(cursor_.peek())) {
      depth += cursor_.peek() == '(' ? 1 : cursor_.peek() == ')' ? -1 : 0;
      cursor_.skip(1);
    }
    if (!words || cursor_.peek() != close) return cursor_ = from, own;
    said = true;
    auto const text = cursor_.text().substr(from.at(), cursor_.at() - from.at());
    if (text.find("blank") == text.npos) read_.unread.push_back({from.at(), cursor_.at()});
    return own;
  }
  /// Returns true before a word for what is printed on pages without numbers; [1 v.], [1 map] and [3 leaves of plates]
  /// are none.
  [[nodiscard]] bool names_matter() const {
    auto look = cursor_;
    static_cast<void>(look.take('('));
    for (std::string_view const beginning :
         {"ads", "advert", "advt", "blank", "catalog", "colophon", "content", "dedicat", "errat", "half-title",
          "imprint", "index", "publisher", "title"})
      if (look.take_in_any_case(beginning)) return true;
    return false;
  }
  /// Gives the last run the unit written inside its brackets; the unit after its group is not its own.
  void keep_unit(PageUnitWord const& unit) {
    set_unit(runs().back(), unit);
    if (group_ + 1 == runs().size())
      group_ = runs().size(), unit_seen_ = true;
    else
      own_unit_.push_back(runs().size() - 1);
  }
  /// XII-400, [8]-xii, 400-[3]: a dash between numbers of two kinds, or that go back, parts two sequences.
  [[nodiscard]] bool dash_parts(Figure const& first) {
    auto const here = cursor_.at();
    bool parts = false;
    if (cursor_.take_dash()) {
      bool const bracket = cursor_.take('[');
      auto const next = figure();
      parts = next.value > 0 && (next.numerals != first.numerals || (bracket && next.value < first.value));
    }
    return cursor_.go_to(here), parts;
  }
  /// [8]-320 p., as French catalogues write it: eight pages without numbers and then 1 to 320, while [3]-40 p. and
  /// vi, [7]-263 p. are ranges whose first page bears no number. Numbers begin on a recto, which is odd, and leaves
  /// without numbers have an even number of pages. So an even number in brackets is a number of pages, unless it
  /// continues the numbers before it: xv, [16]-328 p. Common practice, no source. A statement that begins with its unit
  /// writes 1-320 in full, and there the dash always makes a range.
  [[nodiscard]] bool before_sequence(Figure const& first) {
    auto const here = cursor_.at();
    if (!extent_ || first.value % 2 != 0 || !cursor_.take_dash()) return false;
    auto const next = figure();
    cursor_.go_to(here);
    if (next.value <= first.value) return false;
    std::int64_t before = 0; // the number of the last page before it
    for (auto r = runs().size(); r-- > 0 && runs()[r].part == part_;) {
      bool const counted = runs()[r].numbering != Numbering::none;
      before += counted ? runs()[r].last : runs()[r].pages();
      if (counted) break;
    }
    return before == 0 || first.value <= before || first.value > before + 2;
  }
  /// The word after the number, or after its unit, says that the pages bear none: 8 unnumbered pages, 2 ff. n. ch.
  [[nodiscard]] bool said_unnumbered() const {
    auto look = cursor_;
    bool unnumbered = false;
    look.take_blanks();
    if (take_numbering_words(look, unnumbered)) return unnumbered;
    if (take_page_unit(look) == nullptr) return false;
    look.take_blanks();
    static_cast<void>(look.take('('));
    take_numbering_words(look, unnumbered);
    return unnumbered;
  }
  /// a-d, A-K.
  std::optional<Error> lettered(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    auto const letter = [&] { return small_letter(cursor_.peek()) - 'a' + 1; };
    auto const first = letter();
    cursor_.skip(1);
    cursor_.take_dash();
    auto const last = letter();
    cursor_.skip(1);
    auto const uses = [&](int one) { return first == one || last == one; };
    Alphabet const alphabet{{uses(Alphabet::j), uses(Alphabet::u), uses(Alphabet::w)}};
    PageRun run{Numbering::printed, Numerals::letters, series, starred};
    run.first = alphabet.place(first), run.last = alphabet.place(last), run.count = run.last - run.first + 1;
    run.first_at = {from, from + 1}, run.last_at = {cursor_.at() - 1, cursor_.at()};
    if (run.count != last - first + 1)
      read_.pagination.warn(cursor_.error(Problem::pages_lettered, {from, cursor_.at()}, last - first + 1));
    return finish(run, from, true);
  }
  /// Reads [3]-40, where the first page has no number.
  std::optional<Error> opened_range(Figure const& first, std::uint8_t series, bool starred, std::size_t from) {
    PageRun head{Numbering::inferred, first.numerals, series, starred};
    head.first = head.last = first.value, head.count = 1, head.last_at = first.at;
    head.at = {from, cursor_.at()}, head.part = part_;
    set_unit(head, unit_);
    auto const last = figure();
    if (last.value <= first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    sequences_.add(head, true);
    runs().push_back(head);
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = first.value + 1, run.last = last.value, run.count = last.value - first.value, run.last_at = last.at;
    ranges_ = true;
    return finish(run, last.at.from, true);
  }
  /// Reads 1-205, or 1-[206], where the last page has no number.
  std::optional<Error> range(PageRun& run, Figure const& first, std::size_t from) {
    cursor_.take('*');
    bool const unprinted = cursor_.take('[');
    auto const last = figure();
    if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    if (unprinted && !cursor_.take(']')) return cursor_.error_from(from, problem());
    ranges_ = true;
    run.last = last.value, run.count = last.value - first.value + 1;
    run.first_at = first.at, run.last_at = last.at;
    if (!unprinted) return finish(run, from, true);
    auto tail = run;
    if (run.count > 1) {
      run.last = last.value - 1, --run.count, run.last_at = {}, run.at = {from, last.at.from};
      run.part = part_;
      set_unit(run, unit_);
      sequences_.add(run, true);
      runs().push_back(run);
    }
    tail.numbering = Numbering::inferred;
    tail.first = tail.last, tail.count = 1, tail.first_at = {};
    return finish(tail, last.at.from, true);
  }
  /// Reads a number alone. It is one page or, in an extent, the last number of its sequence: 205 for 1-205.
  std::optional<Error> numbered(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = run.last = first.value, run.count = 1, run.last_at = first.at;
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

  PageRunReader(std::string_view text, bool extent) : PageFaultScanner{text}, extent_{extent}, wanted_extent_{extent} {}

public:
  PageRunReader(PageRunReader const&) = delete;
  PageRunReader& operator=(PageRunReader const&) = delete;
  ~PageRunReader() = default;
};

} // namespace detail
} // namespace v0
} // namespace bifolium
