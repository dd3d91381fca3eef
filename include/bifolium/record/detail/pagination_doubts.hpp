// SPDX-License-Identifier: MIT
/// What is doubtful in a statement of pages when all of it is read: numbers that may be those of volumes, pages that may be
/// stated twice, a word that may be a unit. One number alone shows none of these.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/record/extent.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// 2 vol. (205-320 p.): by the rules pages 205 to 320; some catalogues give the last page of each volume so.
inline void doubt_range_of_volumes(TextCursor& cursor, Extent& read) {
  auto const& runs = read.pagination.runs;
  if (read.volumes.value_or(1) < 2 || read.pagination.parts() != 1) return;
  TextSpan const all{runs.front().at.from, runs.back().at.to};
  if (all.of(cursor.text()).find(',') != std::string_view::npos) return; // sequences are listed
  for (std::size_t r = 0; r < runs.size(); ++r) {
    auto const& run = runs[r];
    bool const goes_on = r > 0 && runs[r - 1].last + 1 == run.first;
    if (run.numbering == Numbering::printed && run.first_at && run.first > 1 && !goes_on && run.count > 1)
      return read.pagination.warn(cursor.error(Problem::range_or_volumes, run.at, run.count));
  }
}
/// 120 leaves, 240 p.: two runs of one part in two units with one sum can be the same pages. In fewer pages the sums are
/// often equal by chance.
inline void doubt_equal_sums(TextCursor& cursor, Extent& read) {
  constexpr std::int64_t fewest = 32;
  auto const& all = read.pagination.runs;
  for (std::size_t r = 1; r < all.size(); ++r) {
    auto const &a = all[r - 1], &b = all[r];
    auto const of_part = [&](std::size_t i) { return i < all.size() && all[i].part == b.part; };
    bool const two = a.part == b.part && !of_part(r - 2) && !of_part(r + 1);
    if (two && a.unit != b.unit && a.pages() == b.pages() && b.pages() >= fewest)
      read.pagination.warn(cursor.error(Problem::pages_stated_again, b.at, a.pages()));
  }
}
/// Returns the word that stands where the unit of the numbers is expected: `map` in `1 map`. It is empty if the text
/// ends there, or goes on with a remark or with other parts of a description.
[[nodiscard]] inline TextSpan unknown_unit(std::string_view text_of_all, Extent const& read) {
  for (auto const span : read.unread) {
    auto const text = span.of(text_of_all);
    if (span.from < read.pagination.runs.back().at.to || !is_latin_letter(text[0])) continue;
    TextCursor word{text};
    word.take_until([](char32_t c) { return is_space(c) || c == ',' || c == ';'; });
    return {span.from, span.from + word.at()};
  }
  return {};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
