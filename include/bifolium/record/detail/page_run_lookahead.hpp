// SPDX-License-Identifier: MIT
/// What a number in a statement of pages means, which the text around it shows: a number of pages or the number of a
/// page, the end of one sequence or the first number of a range, the word of a unit or of a blank. A statement begins
/// with its unit and an extent ends with it, and a number alone has different meanings in them: in `pp. 1-7, 8` it is a
/// page, in `8, 205 p.` a number of pages. The questions stand here, so that the reader of runs has only the forms.
#pragma once

#include <bifolium/record/detail/page_faults.hpp>
#include <bifolium/record/detail/page_sequences.hpp>
#include <bifolium/record/detail/page_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageRunLookahead : protected PageFaultScanner {
protected:
  bool extent_;        // true if the unit comes after the numbers
  bool wanted_extent_; // the kind of statement that the caller wants: errors name it
  bool ranges_{};      // true after a run from - to: in a statement, numbers alone are then single pages
  bool unit_seen_{}, any_{};
  bool units_follow_{}; // the first unit of a statement of pagination stood after its numbers: [4] Bl., 120 S.
  int depth_{};         // depth of the parentheses after volumes
  std::uint16_t part_{};
  PageUnitWord unit_{"", PageUnit::pages}; // the unit of the numbers after it, if the unit comes first
  std::size_t group_{};                    // the first run whose unit is not read yet
  std::vector<std::size_t> own_unit_{};    // runs of this group with a unit of their own: 8, [4 leaves], 205 p.
  bool approximate_{};
  std::size_t approximate_run_{SIZE_MAX}; // the first run stated as approximate; it may still be left unread
  PageSequences sequences_{};
  std::size_t counted_{}; // the runs that pages_of_part has added up
  std::uint16_t counted_part_{};
  std::int64_t counted_pages_{};

  [[nodiscard]] std::vector<PageRun>& runs() { return read_.pagination.runs; }
  [[nodiscard]] Problem problem() const { return wanted_extent_ ? Problem::not_an_extent : Problem::not_a_pagination; }
  [[nodiscard]] std::optional<Error> wrong(Figure const& figure, std::size_t from) {
    if (figure.value < 1) return cursor_.error_from(from, problem());
    if (figure.value > most) return cursor_.error_from(from, Problem::number_too_large);
    return std::nullopt;
  }

  /// Returns true before a plus that joins two runs: viii+205 p., viii+[4] p.; not before that of 142+ l.
  [[nodiscard]] bool plus_joins() const {
    auto look = cursor_;
    if (!look.take('+')) return false;
    look.take_blanks();
    bool const bracket = look.take('[') || look.take('('); // of a number, and not of [misprinting 45 as 54]
    auto const roman = page_numeral(look.rest());
    return look.at_digit() || (roman && (bracket || roman->bytes > 1) && !is_latin_letter(look.peek(roman->bytes)));
  }
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
  /// Returns the first number of a range that comes next in the text, or -1: 14 before 14-320.
  [[nodiscard]] std::int64_t next_range(Numerals numerals) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    while (cursor_.take(',')) cursor_.take_blanks();
    auto const next = figure();
    bool const range = cursor_.take_dash() && figure().value > next.value;
    cursor_.go_to(here);
    return range && next.numerals == numerals ? next.value : -1;
  }
  /// A higher number in brackets is seldom a number of pages without numbers if it can be the number of a page. Our
  /// convention.
  static constexpr std::int64_t most_pages_without_numbers = 16;
  /// Returns true if a number in brackets can be the number of a page. In an extent it is one only after a range that is
  /// written in full, as in 2-205, [206] p., or if it is high: the short form writes 205, [1] p.
  [[nodiscard]] bool bracket_may_be_number(PageRun const& run, Figure const& figure) {
    PageRun as_number{Numbering::inferred, figure.numerals, run.series};
    as_number.starred = run.starred;
    return !extent_ || sequences_.latest_is_range(as_number) || figure.value > most_pages_without_numbers ||
           next_range(figure.numerals) == figure.value + 1;
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
    bool const may_count = extent_ ? next != figure.value + 1 && !sequences_.latest_is_range(as_number)
                                   : figure.value <= most_pages_without_numbers;
    if (next != figure.value + 1 && may_count) warn(Problem::bracket_read_as_number, from);
  }
  /// Returns true before a word for what is printed on pages without numbers; [1 v.], [1 map] and [3 leaves of plates]
  /// are none.
  [[nodiscard]] bool names_matter() const {
    auto look = cursor_;
    static_cast<void>(look.take('('));
    if (begins_no_word(look.peek())) return false;
    for (std::string_view const beginning :
         {"ads", "advert", "advt", "blank", "catalog", "colophon", "content", "dedicat", "errat", "half-title",
          "imprint", "index", "publisher", "title"})
      if (look.take_in_any_case(beginning)) return true;
    return false;
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
  /// writes 1-320 in full, and there the dash makes a range, unless a second dash and bracket follow.
  [[nodiscard]] bool before_sequence(Figure const& first) {
    auto const here = cursor_.at();
    if (first.value % 2 != 0 || !cursor_.take_dash()) return false;
    auto const next = figure();
    bool const dashes = cursor_.take_dash() && cursor_.peek() == '['; // [8]-320-[4]: every sequence has its dash
    cursor_.go_to(here);
    if (next.value <= first.value || (!extent_ && !dashes)) return false;
    std::int64_t before = 0; // the number of the last page before it
    for (auto r = runs().size(); r-- > 0 && runs()[r].part == part_;) {
      bool const counted = runs()[r].numbering != Numbering::none;
      before += counted ? runs()[r].last : runs()[r].pages();
      if (counted) break;
    }
    return before == 0 || first.value <= before || first.value > before + 2;
  }
  /// Returns the pages of this volume or part so far. Those whose unit is read are added up once, since a statement may ask
  /// after each of its numbers.
  [[nodiscard]] std::int64_t pages_of_part() {
    auto const with_unit = extent_ || units_follow_ ? group_ : runs().size();
    for (; counted_ < with_unit; ++counted_) {
      auto const& one = runs()[counted_];
      if (one.part != counted_part_) counted_part_ = one.part, counted_pages_ = 0;
      counted_pages_ += one.pages();
    }
    auto sum = counted_part_ == part_ ? counted_pages_ : 0;
    for (auto r = counted_; r < runs().size(); ++r) sum += runs()[r].part == part_ ? runs()[r].pages() : 0;
    return sum;
  }
  /// What a number in brackets with a unit of its own says about the pages before it, which are counted in another: 120
  /// leaves (240 p.).
  enum class Again : std::uint8_t { added, stated_again, doubtful };
  /// After a comma the number is added. Without one it counts the same pages again if the sum is the same, or one page less
  /// or more for a blank verso; a number of which the half is not reached, as in 240 p. (4 ff.), is added.
  [[nodiscard]] Again said_again(PageRun run, PageUnitWord const& unit, std::size_t from) {
    auto const before = before_blanks(cursor_.text(), from);
    bool const open = extent_ && group_ < runs().size();
    if (runs().empty() || open || runs().back().part != part_ || runs().back().unit == unit.unit || before == 0)
      return Again::added;
    if (char const c = cursor_.text()[before - 1]; c == ',' || c == '+' || c == '&' || c == ';') return Again::added;
    run.unit = unit.unit;
    return said_again(run.pages());
  }
  /// The same of a number of pages.
  [[nodiscard]] Again said_again(std::int64_t pages) {
    auto const all = pages_of_part(), apart = pages > all ? pages - all : all - pages;
    return apart <= Pagination::blank_verso ? Again::stated_again : 2 * pages >= all ? Again::doubtful : Again::added;
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
  /// Returns true before [A]-H or [A-H] in a statement, or in an extent before its unit, after which [A-H] is a remark.
  [[nodiscard]] bool letters_in_bracket() {
    bool const open = runs().empty() || !extent_ || group_ < runs().size();
    return open && cursor_.peek() == '[' && letter_run().bytes > 0;
  }
  /// Takes ca. before a number.
  bool take_approximately() {
    auto look = cursor_;
    // 120 c. are leaves
    if (!take_about(look) || (!look.at_digit() && look.peek() != '[' && !page_numeral(look.rest()))) return false;
    cursor_ = look;
    return approximate_ = true;
  }
  PageRunLookahead(std::string_view text, bool extent)
      : PageFaultScanner{text}, extent_{extent}, wanted_extent_{extent} {}

public:
  PageRunLookahead(PageRunLookahead const&) = delete;
  PageRunLookahead& operator=(PageRunLookahead const&) = delete;
  ~PageRunLookahead() = default;
};

} // namespace detail
} // namespace v0
} // namespace bifolium
