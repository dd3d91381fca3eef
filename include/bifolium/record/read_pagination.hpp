// SPDX-License-Identifier: MIT
/// Reads a statement of pagination, "pp. [8] 1-205 [206] [misprinting 45 as 54]", or of foliation, "ff. [2] 1-152". A
/// number in brackets is a number of pages without numbers. It is the inferred number of one page if it continues the
/// number before it, and the next number, if there is one, continues from it. "[=152]" and "[i.e. 152]" correct the
/// last number of a run to the number that counting from the run before gives. Doubtful readings are warnings.
///
/// Bowers, Principles of Bibliographical Description, has both uses of the brackets.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/record/detail/pagination_reader.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of pagination or foliation. The unit at the beginning ("pp.", "ff.") may be missing. A unit inside
/// the statement applies from there on: "pp. 1-64, ff. 65-100". `read_extent` reads the words of "[8], 205, [3] p.".
/// Errors, with the column: not_a_pagination, number_too_large, and the limits of core/limits.hpp.
/// Example: `write_pagination(*read_pagination("[4], 164, [2] p.")) == "pp. [4] 1-164 [2]"`.
[[nodiscard]] inline Expected<Pagination> read_pagination(std::string_view text, Limits const& limits = {}) {
  auto read = read_characters(text, [&](std::string_view plain) {
    return detail::PaginationReader{plain, false, limits}.read();
  });
  if (!read) return read.error();
  auto& pagination = read->pagination;
  if (pagination.runs.empty() && !pagination.unpaged && !pagination.incomplete)
    return error_of_text(text, TextCursor{text}.error_from(0, Problem::not_a_pagination)); // there are only plates
  for (auto const& plates : read->plates) pagination.unread.push_back(plates.at);
  for (auto const span : read->unread) pagination.unread.push_back(span);
  return static_cast<Pagination&&>(pagination);
}

namespace detail {
/// Returns the position at which the pagination begins in the text after a formula, or no value if there is none. "50
/// ll. plates" states a number of leaves; "ff. [2] 1-152" numbers them.
inline std::optional<std::size_t> pagination_place(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    bool const apart = i == 0 || text[i - 1] == ',' || text[i - 1] == ';' || blank_before(text, i) != 0;
    if (!apart) continue;
    for (std::string_view unit : {"p. l. ", "pp. ", "p. ", "ff. ", "foll. ", "fol. ", "ll. ", "cols. "}) {
      TextCursor after{text, i};
      if (!after.take(unit)) continue;
      auto const numbers = text.substr(after.at(), 40);
      if (numbers.empty()) continue;
      bool const begins =
          numbers[0] == '[' || numbers[0] == '*' || is_digit(numbers[0]) || superscript_digit(decode(numbers, 0).value);
      if (begins || roman_numeral(numbers) || letter_run(TextCursor{numbers}).bytes > 0) return i;
    }
  }
  return std::nullopt;
}
} // namespace detail

/// Reads the pagination in the text after a formula ("86 leaves, pp. [4] 1-32 35-154[=152] [16]"). Columns and places
/// are those of formula.tail(). Errors: those of read_pagination; not_stated.
[[nodiscard]] inline Expected<Pagination> pagination_of(Formula const& formula, Limits const& limits = {}) {
  std::string_view const text = formula.tail();
  auto const from = detail::pagination_place(text);
  if (!from) return error_in_field(Problem::not_stated, "pagination");
  auto read = read_pagination(text.substr(*from), limits);
  auto const start = place_in(text, *from);
  if (!read) return error_after(start, read.error());
  return static_cast<Pagination&&>(*read).moved(*from, start);
}

} // namespace v0
} // namespace bifolium
