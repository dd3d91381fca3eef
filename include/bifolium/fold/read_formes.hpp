// SPDX-License-Identifier: MIT
/// Reads formes from text: a line `outer`, `inner` or `forme` (the only forme of its sheet), then the rows from the far
/// edge, with page numbers separated by blanks or commas. `↓` or `v` after a number means that the head of the page points
/// to the compositor, `↑` or `^` that it points away from him. `?` in place of a number means that the page is illegible:
///
///     outer
///      8↓  9↓ 12↓  5↓
///      1  16   ?   4
///
/// If no page has `↓`, all heads are unknown, since a plain table of numbers does not show them. Otherwise a number
/// without an arrow points away, and an illegible page without an arrow has an unknown head. Several sheets begin with
/// lines `sheet 1`, `sheet 2`. Capitals, a colon after a heading and the word forme after outer and inner make no
/// difference. `forme_text` writes this text.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/scheme.hpp>
#include <bifolium/fold/seen_forme.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Reads the text line by line. A function that fails returns false and stores the reason in `error_`.
class FormesReader {
  TextCursor cursor_;
  std::vector<SeenForme> formes_{};
  int sheet_{0};
  bool arrows_{};
  Error error_{};

  constexpr bool fail(Problem problem, TextSpan word, std::int64_t limit = 0) {
    error_ = cursor_.error(problem, word, limit);
    return false;
  }
  [[nodiscard]] constexpr bool in_word() const {
    auto const c = cursor_.character();
    auto const parts = [&](char32_t one) { return c.value == one; };
    return c.bytes != 0 && !is_space(c.value) && !parts(U'#') && !parts(U'|') && !parts(U',') && !parts(U';') &&
           !parts(U':');
  }
  /// Returns the next word of the line, or an empty span at the end of the line.
  constexpr TextSpan next() {
    while (!cursor_.at_end() && !in_word() && cursor_.peek() != '\n' && cursor_.peek() != '#')
      cursor_.skip(cursor_.character().bytes);
    auto const from = cursor_.at();
    while (in_word()) cursor_.skip(cursor_.character().bytes);
    return {from, cursor_.at()};
  }
  [[nodiscard]] constexpr std::string_view words(TextSpan span) const { return span.of(cursor_.text()); }
  constexpr void begin(Side side) { formes_.push_back({sheet_, side, 0, 0, {}}); }
  constexpr bool end_of_line() {
    auto const word = next();
    return word.empty() || fail(Problem::trailing_text, word);
  }

  constexpr bool sheet_line() {
    auto const word = next();
    TextCursor digits{words(word)};
    auto const number = digits.take_number(Scheme::most_sheets);
    if (!number && digits.at_digit()) return fail(Problem::too_many_sheets, word, Scheme::most_sheets);
    if (!number || *number == 0 || !digits.at_end()) return fail(Problem::not_a_number, word);
    sheet_ = static_cast<int>(*number) - 1;
    return true;
  }
  constexpr bool page(TextSpan word) {
    constexpr int most = 65535;
    SeenPage seen;
    TextCursor letters{words(word)};
    if (auto const number = letters.take_number(most); number && *number > 0)
      seen.page = static_cast<std::uint16_t>(*number);
    else if (letters.at_digit())
      return fail(Problem::number_too_large, word, most);
    else if (number || !letters.take('?'))
      return fail(Problem::not_a_forme, word);
    if (letters.take("↓") || letters.take('v'))
      seen.head = Head::near_edge, arrows_ = true;
    else if (letters.take("↑") || letters.take('^'))
      seen.head = Head::far_edge;
    if (!letters.at_end()) return fail(Problem::not_a_forme, word);
    formes_.back().pages.push_back(seen);
    return true;
  }
  constexpr bool row(TextSpan word) {
    if (formes_.empty()) begin(Side::outer);
    auto& forme = formes_.back();
    int columns = 0;
    for (auto here = word; !here.empty(); here = next()) {
      if (!page(here)) return false;
      if (++columns > Scheme::most_cells || forme.rows == Scheme::most_cells)
        return fail(Problem::too_many_cells, here, Scheme::most_cells);
    }
    if (forme.rows > 0 && columns != forme.columns) return fail(Problem::row_of_other_length, word, forme.columns);
    forme.columns = columns;
    ++forme.rows;
    return true;
  }
  constexpr bool line() {
    auto const span = next();
    auto const word = words(span);
    if (word.empty()) return true;
    if (equal_in_any_case(word, "sheet")) return sheet_line() && end_of_line();
    bool const outer = equal_in_any_case(word, "outer"), inner = equal_in_any_case(word, "inner");
    if (!outer && !inner && !equal_in_any_case(word, "forme")) return row(span);
    begin(outer ? Side::outer : inner ? Side::inner : Side::only);
    auto const rest = next();
    if (!rest.empty() && (!(outer || inner) || !equal_in_any_case(words(rest), "forme")))
      return fail(Problem::trailing_text, rest);
    return end_of_line();
  }

public:
  constexpr explicit FormesReader(std::string_view text) : cursor_{text} {}
  constexpr Expected<std::vector<SeenForme>> read() {
    while (!cursor_.at_end()) {
      if (!line()) return error_;
      while (!cursor_.at_end() && cursor_.peek() != '\n') cursor_.skip(1); // a comment
      cursor_.take('\n');
    }
    if (formes_.empty()) return cursor_.error_here(Problem::not_a_forme);
    if (arrows_)
      for (auto& forme : formes_)
        for (auto& seen : forme.pages)
          if (seen.page && !seen.head) seen.head = Head::far_edge;
    return static_cast<std::vector<SeenForme>&&>(formes_);
  }
};

} // namespace detail

/// Reads formes from text. Rows without a heading are the outer forme. The function allocates memory. Errors, with line
/// and column: not_a_forme, not_a_number, number_too_large, trailing_text, row_of_other_length (`limit` is the length of
/// the rows above), too_many_sheets, too_many_cells.
constexpr Expected<std::vector<SeenForme>> read_formes(std::string_view text) {
  return read_utf8(text, [](std::string_view given) { return detail::FormesReader{given}.read(); });
}

} // namespace v0
} // namespace bifolium
