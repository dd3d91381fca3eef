// SPDX-License-Identifier: MIT
/// Reads a statement of size: the object that was measured, numbers with their units, formats in parentheses. A number
/// gets its meaning from what follows it - a second number, a unit, a label - so a measure is kept only when all of it is
/// read.
#pragma once

#include <bifolium/core/about_words.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/read_gathered.hpp>
#include <bifolium/record/detail/number_alone.hpp>
#include <bifolium/record/detail/size_numbers.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/size_statement.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SizeReader {
  TextCursor cursor_;
  SizeNumbers numbers_{cursor_};
  std::optional<SheetUnit> unit_;
  SizeStatement read_{};
  bool about_{};
  bool one_part_; // a semicolon before any height ends it

  [[nodiscard]] Error error(Problem problem, std::size_t from) { return cursor_.error_from(from, problem); }

  /// Reads `19 cm`, `20 x 32 cm`, `24-28 cm` or `mm 123x95`.
  std::optional<Error> measure(std::optional<SizeOf> of, std::size_t from) {
    cursor_.take_blanks();
    auto unit = take_size_unit(cursor_);
    cursor_.take_blanks();
    auto first = numbers_.number();
    if (!first) return first.error();
    std::optional<SizeNumber> across, tallest, depth; // the third number of a box is its depth
    char labelled = '\0';                             // what the first number is said to be
    auto unit_after = take_size_unit(cursor_);        // 20 cm x 32 cm
    if ((unit_after ? unit_after : unit) == SheetUnit::pouce) numbers_.add_lignes(*first);
    if (auto const label = take_side_label(cursor_)) labelled = label;
    while (!depth) {
      auto const here = cursor_.at();
      auto const [by, to] = numbers_.joint(!across && !tallest);
      if ((!by && !to) || !cursor_.at_digit()) {
        cursor_.go_to(here);
        break;
      }
      auto next = numbers_.number();
      if (!next) return next.error();
      (to ? tallest : across ? depth : across) = *next;
      if (auto const found = take_size_unit(cursor_)) unit_after = found;
      if (by && across && !depth && (unit_after ? unit_after : unit) == SheetUnit::pouce) numbers_.add_lignes(*across);
    }
    if (unit_after) unit = unit_after;
    auto const last = take_side_label(cursor_);
    if (!unit_after && last != '\0')
      if (auto const found = take_size_unit(cursor_)) unit = found; // 187 (h) x 114 (w) mm
    bool const taken = !unit && unit_;                              // 187 in a column of millimetres
    if (!unit) unit = unit_;
    if (!unit) return error(Problem::unit_missing, from);
    if (auto const label = of ? std::nullopt : take_size_label_after(cursor_)) of = label;
    take_about_after();
    if (auto const why = taken ? why_not_alone(cursor_) : NotAlone{}; why.problem == Problem::unknown_unit)
      return cursor_.error(why.problem, why.word);
    else if (why.problem != Problem::none)
      return error(why.problem, from);
    // 114 (w) x 187 (h) mm, 114 x 187 mm (w x h)
    bool const width_first = across && (labelled == 'w' || (labelled == '\0' && last == 'w'));
    return width_first ? keep(of.value_or(SizeOf::book), *across, *first, tallest, *unit, from)
                       : keep(of.value_or(SizeOf::book), *first, across, tallest, *unit, from);
  }
  /// Takes `ca.` before a number; after the height a number must follow: in 22 c. the letter is none.
  bool take_about_before() {
    auto look = cursor_;
    if (!take_about(look) || (read_.height && !look.at_digit())) return false;
    cursor_ = look;
    return about_ = true;
  }
  /// Takes `approx.` after a measure.
  void take_about_after() {
    auto look = cursor_;
    look.take_blanks();
    bool const letter_alone = small_letter(look.peek()) == 'c' && !is_latin_letter(look.peek(1)); // 22 c.: of cm
    if (letter_alone || !take_about(look) ||
        (!look.at_end() && look.peek() != ',' && look.peek() != ';' && look.peek() != '('))
      return;
    cursor_ = look;
    about_ = true;
  }
  std::optional<Error> keep(SizeOf of, SizeNumber const& height, std::optional<SizeNumber> const& width,
                            std::optional<SizeNumber> const& tallest, SheetUnit unit, std::size_t from) {
    auto const as_range = [&](std::optional<SizeNumber> const& number) {
      return number ? std::optional{size_range(*number, height, unit, about_)} : std::nullopt;
    };
    if (tallest && tallest->value < height.value) return error(Problem::not_a_length, from);
    if (of == SizeOf::binding && !read_.binding) {
      read_.binding = size_range(height, height, unit, about_), read_.binding_width = as_range(width);
    } else if (of == SizeOf::folded && !read_.folded_height) {
      read_.folded_height = size_range(height, height, unit, about_), read_.folded_width = as_range(width);
    } else if (of == SizeOf::width && read_.height && !read_.width) {
      read_.width = size_range(height, height, unit, about_);
    } else if ((of == SizeOf::book || of == SizeOf::leaf) && !read_.height) {
      read_.height = size_range(height, height, unit, about_), read_.width = as_range(width),
      read_.tallest = as_range(tallest);
      read_.of_leaf = of == SizeOf::leaf, read_.approximate = about_;
    } else
      read_.unread.push_back(trimmed(cursor_.text(), {from, cursor_.at()}, " ."));
    about_ = false;
    return std::nullopt;
  }
  /// Takes a format and the gatherings after it: 8vo in 4s, in 8°.
  bool format() {
    auto look = cursor_;
    if (look.take("in ") || look.take("In ")) look.take_blanks();
    auto const found = format_at_start(look.rest());
    if (!found || found->bytes == 0) return false;
    look.skip(found->bytes);
    read_.formats.push_back(found->format);
    if (auto const gathered = take_gathered(look, found->format); gathered.counts.found())
      read_.gathered = gathered.counts.leaves;
    cursor_ = look;
    return true;
  }
  /// Takes words about the paper before a format in parentheses: the royal of (royal 4to).
  void words_of_paper() {
    auto look = cursor_;
    auto const inner = look.take_until([](char32_t c) { return c == ')' || c == '('; });
    auto const read = read_format_statement(inner);
    if (!read || read->formats.size() != 1 || !read->unread.empty() || read->paper.empty()) return;
    auto const words = TextSpan{cursor_.at(), cursor_.at() + inner.find(read->paper) + read->paper.size()};
    read_.unread.push_back(words);
    cursor_.go_to(words.to);
    cursor_.take_blanks();
  }
  /// Reads formats: (4to and 8vo), In-16°. A parenthesis may contain the measure instead.
  bool formats() {
    auto const from = cursor_.at();
    bool const bracket = cursor_.take('(');
    bool any = false;
    if (bracket) words_of_paper();
    while (true) {
      cursor_.take_blanks();
      if (!format()) break;
      any = true;
      cursor_.take_blanks();
      bool const parted = !ends_at_semicolon() && cursor_.take("; ");
      if (!parted && !cursor_.take_word("and") && !cursor_.take('&') && !cursor_.take(',')) break;
    }
    cursor_.take_blanks();
    if (any && bracket && cursor_.take_word("or")) return leave_alternatives(from);
    if (any && bracket) static_cast<void>(cursor_.take(')'));
    if (!any) cursor_.go_to(from);
    return any;
  }
  [[nodiscard]] bool ends_at_semicolon() const { return one_part_ && !read_.height; }
  /// (4to or 8vo): none of the formats is stated.
  bool leave_alternatives(std::size_t from) {
    cursor_.take_until([](char32_t c) { return c == ')'; });
    static_cast<void>(cursor_.take(')'));
    read_.formats.clear();
    read_.unread.push_back({from, cursor_.at()});
    return true;
  }
  void leave_rest(std::size_t from) {
    auto const whole = cursor_.text().size();
    cursor_.go_to(whole);
    if (auto const left = trimmed(cursor_.text(), {from, whole}, " ."); !left.empty())
      read_.unread.push_back({from, left.to});
  }

public:
  /// `one_part`: the height must be in the text before its first semicolon, as where each part of a line is tried.
  SizeReader(std::string_view text, std::optional<SheetUnit> unit, bool one_part = false)
      : cursor_{text}, unit_{unit}, one_part_{one_part} {}

  /// Reads a text that has formats and nothing else. Returns no formats if it has more.
  std::vector<Format> read_formats() {
    formats();
    static_cast<void>(cursor_.take('.'));
    cursor_.take_blanks();
    return cursor_.at_end() ? read_.formats : std::vector<Format>{};
  }
  Expected<SizeStatement> read() {
    std::optional<Error> wrong;
    while (true) {
      cursor_.take_blanks();
      if (cursor_.at_end()) break;
      if (ends_at_semicolon() && cursor_.peek() == ';') return error(Problem::not_a_length, cursor_.at());
      if (cursor_.take(',') || cursor_.take(';') || cursor_.take(')') || take_about_before() || formats()) continue;
      auto const from = cursor_.at();
      static_cast<void>(cursor_.take('('));
      auto const of = take_size_label(cursor_);
      if (!of && !cursor_.at_digit() && cursor_.peek() != 'm' && cursor_.peek() != 'c' &&
          !vulgar_number(cursor_.character().value)) {
        if (!read_.height) return error(Problem::not_a_length, from);
        leave_rest(from);
        break;
      }
      wrong = measure(of, from);
      if (!wrong) continue;
      if (!read_.height) return *wrong;
      leave_rest(from); // after the size: notes
      break;
    }
    if (!read_.height && read_.binding) // the binding alone is the height of the book
      read_.height = read_.binding, read_.width = read_.binding_width, read_.binding.reset(),
      read_.binding_width.reset();
    if (!read_.height && !read_.unread.empty()) return cursor_.error(Problem::size_of_no_leaf, read_.unread.front());
    if (!read_.height) return error(Problem::not_a_length, 0);
    return static_cast<SizeStatement&&>(read_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
