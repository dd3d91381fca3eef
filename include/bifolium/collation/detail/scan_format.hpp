// SPDX-License-Identifier: MIT
/// The statement of format before a formula: 8°:, Fol., Royal 4°, 2° and 4°. Formats themselves are read by
/// fold/read_format.hpp; here it is decided whether one stands there at all, since 2o is a format and 2o⁸ a gathering.
#pragma once

#include <bifolium/collation/detail/scan_state.hpp>
#include <bifolium/fold/read_format.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The end of "in 4s", "(in fours)" at byte `i`; `i` where it does not stand there.
constexpr std::size_t end_of_gathered_in(FormulaText const& text, std::size_t i) noexcept {
  bool const parenthesis = text.at(i) == '(';
  auto k = i + (parenthesis ? 1 : 0);
  if (!text.is_any(k, {"in "})) return i;
  auto const word = k = text.skip(k + 3);
  while (is_digit(text.at(k)) || is_small(text.at(k))) ++k;
  if (k < word + 2 || text.at(k - 1) != 's') return i;
  if (!parenthesis) return k;
  return text.at(k) == ')' ? k + 1 : i;
}

/// Reads the statement at byte `start`, if there is one, and moves the state behind it.
template <class Sink> constexpr void scan_format(ScanState<Sink>& book, std::size_t start) {
  auto const begins_format = [&](std::size_t i) {
    char const c = book.at(i), d = book.at(i + 1), e = book.at(i + 2);
    if (is_digit(c)) {
      auto k = i;
      while (is_digit(book.at(k))) ++k;
      return book.at(k) == '/' || book.at(k) == 'o' || book.at(k) == 'm' || book.at(k) == 't' || book.at(k) == 'v' ||
             is_degree_sign(book.code(k));
    }
    if (c == '(') return is_digit(d) || (is_latin_letter(d) && is_latin_letter(e));
    if (is_latin_letter(c)) return is_small(d) ? is_small(e) || e == '.' || e == '-' : d == '.' && is_small(e);
    return book.code(i) == 0xBD;
  };
  auto i = book.skip(start);
  while (book.at(i) == ';' || book.at(i) == '.') i = book.skip(i + 1);
  book.at_ = i;
  if (book.is_any(i, {"In ", "in "}) && begins_format(book.skip(i + 3))) i = book.skip(i + 3); // in folio
  if (!begins_format(i)) return;
  auto const from = i;
  auto found = format_at_start(book.view().substr(i));
  if (!found && is_latin_letter(book.at(i))) { // a class of paper may stand before: Royal 4°, median 8°
    auto k = i;
    for (int words = 0; words < 2 && !found; ++words) {
      while (is_latin_letter(book.at(k)) || book.at(k) == '-') ++k;
      if (k < i + 4 || k == i) return;
      auto const next = book.skip(k);
      if (next == k || !begins_format(next)) return;
      found = format_at_start(book.view().substr(next));
      if (found) book.sink_.paper_class(i, k), i = next;
      k = next;
    }
  }
  if (!found || found->bytes == 0) return;
  i += found->bytes;
  // 2o⁸ is a gathering, 2o a format
  if (book.at(i) == '^' || book.at(i) == '<' || (i < book.view().size() && superscript_digit(book.code(i)) >= 0))
    return;
  auto format = found->format;
  book.sink_.format(format);
  if (format.kind() == Format::Kind::single_sheet) book.warn(Problem::part_of_sheet_not_stated, from, i);
  auto next = book.skip(i);
  if (book.is_any(next, {"and ", "& "})) {
    next = book.skip(next + (book.at(next) == '&' ? 1 : 3));
    if (auto const second = format_at_start(book.view().substr(next)); second && second->bytes != 0)
      book.sink_.second_format(second->format), i = next + second->bytes;
  }
  i = book.skip(i);
  if (auto const gathered = end_of_gathered_in(book, i); gathered != i) { // 8° (in 4s): the counts say so themselves
    book.warn(Problem::text_not_read, i, gathered);
    i = book.skip(gathered);
  }
  if (book.at(i) == ':' || book.at(i) == '.' || book.at(i) == ',') ++i;
  book.at_ = i;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
