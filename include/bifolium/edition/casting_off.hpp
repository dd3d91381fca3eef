// SPDX-License-Identifier: MIT
/// Casting off: how many pages a manuscript will make before a line of it is set, and casting up: what a sheet of it is
/// worth to the compositor. Printers counted in ens (half the body of the type) and thousands of them; the printed tables
/// reckon lines x ens x pages, in thousands, half a thousand counting as one (Savage 1841).
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>

namespace bifolium {
inline namespace v0 {

/// Thousands of ens in a sheet, as the tables give it: a fraction of five hundred and more counts as one, less is dropped.
/// `lines` in the page with head line and direction line, `ens` in the line, `pages` in the sheet.
/// error: negative_count, number_too_large.
constexpr Expected<std::int64_t> thousands_in_sheet(std::int64_t lines, std::int64_t ens, std::int64_t pages) {
  if (lines < 0 || ens < 0 || pages < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  auto const page = checked_multiply(lines, ens);
  auto const sheet = page ? checked_multiply(*page, pages) : std::nullopt;
  auto const rounded = sheet ? checked_add(*sheet, 500) : std::nullopt;
  if (!rounded) return error_at(Problem::number_too_large, 1, 1);
  return *rounded / 1000;
}

/// A sample of the copy and of the type it will be set in.
struct Sample {
  std::int64_t words_in_copy{}; ///< of the whole manuscript, or words a line x lines a page x pages of it
  Fraction words_a_line{};      ///< of type, found by setting a few lines (MacKellar 1893)
  std::int64_t lines_a_page{};  ///< of type
};

/// What casting off gives, and what it took for granted.
struct CastOff {
  Fraction lines{};     ///< of type, exactly
  std::int64_t pages{}; ///< the last may be short
  static constexpr char const* assumption =
      "the sample's words a line hold for the whole; breaks and headings take no more room";
};

/// Pages that the copy will make. error: negative_count, not_positive, number_too_large.
constexpr Expected<CastOff> cast_off(Sample const& sample) {
  if (sample.words_in_copy < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  if (sample.words_a_line <= Fraction{} || sample.lines_a_page <= 0) return error_at(Problem::not_positive, 1, 1);
  auto const lines = checked_divide(Fraction{sample.words_in_copy}, sample.words_a_line);
  auto const pages = lines ? checked_divide(Fraction{lines->ceil()}, Fraction{sample.lines_a_page}) : std::nullopt;
  if (!lines || !pages) return error_at(Problem::number_too_large, 1, 1);
  return CastOff{*lines, pages->ceil()};
}

/// Whole lines in a type page `page_height` high, by the measure of twenty lines, both in tenths of a millimetre: the way
/// early type is described. error: not_positive.
constexpr Expected<std::int64_t> lines_in_page(std::int64_t page_height, std::int64_t twenty_lines) {
  if (page_height <= 0 || twenty_lines <= 0) return error_at(Problem::not_positive, 1, 1);
  auto const twenty_times = checked_multiply(page_height, 20);
  if (!twenty_times) return error_at(Problem::number_too_large, 1, 1);
  return *twenty_times / twenty_lines;
}

} // namespace v0
} // namespace bifolium
