// SPDX-License-Identifier: MIT
/// Casting off: how many pages a manuscript will make before a line of it is set, and casting up: what a sheet of it is
/// worth to the compositor. Printers counted words or letters of a sample line, or ens (half the body of the type) and
/// thousands of them; the printed tables give lines x ens x pages, in thousands, half a thousand counting as one
/// (Savage 1841). What is assumed is part of the answer.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/range.hpp>

namespace bifolium {
inline namespace v0 {

/// Thousands of ens in a sheet, as the tables give it: a fraction of five hundred and more counts as one, less is dropped.
/// `lines` in the page with head line and direction line, `ens` in the line, `pages` in the sheet.
/// error: negative_count, result_too_large.
constexpr Expected<std::int64_t> thousands_in_sheet(std::int64_t lines, std::int64_t ens, std::int64_t pages) {
  if (lines < 0) return error_in_field(Problem::negative_count, "lines", lines);
  if (ens < 0) return error_in_field(Problem::negative_count, "ens", ens);
  if (pages < 0) return error_in_field(Problem::negative_count, "pages", pages);
  auto const page = checked_multiply(lines, ens);
  auto const sheet = page ? checked_multiply(*page, pages) : std::nullopt;
  auto const rounded = sheet ? checked_add(*sheet, 500) : std::nullopt;
  if (!rounded) return error_in_field(Problem::result_too_large, "");
  return *rounded / 1000;
}

/// What is counted in the copy and in a line of type.
enum class CastingUnit : std::uint8_t {
  words,   ///< of the language
  letters, ///< with the spaces between words
  ens      ///< half the body of the type, the compositor's measure
};

/// A sample of the copy and of the type it will be set in.
struct Sample {
  std::int64_t in_copy{};               ///< words, letters or ens of the whole manuscript; see `in_manuscript`
  Fraction a_line{};                    ///< of type, on the average: found by setting a few lines (MacKellar 1893)
  std::int64_t lines_a_page{};          ///< of type, without head line and direction line; see `lines_in_page`
  CastingUnit unit{CastingUnit::words}; ///< of both figures above
  std::optional<Fraction> least_a_line{}, most_a_line{}; ///< of the lines that were set, where a range is wanted
};

/// What casting off gives, and what it assumes.
struct CastOff {
  Fraction lines{}; ///< of type, exactly
  /// Pages; the last may be short. low: every line holds as much as the fullest that was set; high: as little as the emptiest.
  Range<std::int64_t> pages{};
  CastingUnit unit{}; ///< what was counted

  /// What is assumed, as a clause to print after the figure.
  [[nodiscard]] constexpr char const* assumption() const noexcept {
    switch (unit) {
    case CastingUnit::words:
      return "the sample's words a line hold for the whole; breaks and headings take no more room than in the sample";
    case CastingUnit::letters:
      return "the sample's letters a line, spaces counted, hold for the whole; breaks and headings take no more room";
    case CastingUnit::ens:
      return "a letter is an en on the average, spaces counted; breaks and headings take no more room";
    }
    return "";
  }
  friend constexpr bool operator==(CastOff const&, CastOff const&) = default;
};

/// Words (or letters) of a manuscript by its own sample: a line x lines a page x pages (MacKellar 1893).
/// error: negative_count, result_too_large.
constexpr Expected<std::int64_t> in_manuscript(Fraction a_line, std::int64_t lines_a_page, std::int64_t pages) {
  if (a_line < Fraction{}) return error_in_field(Problem::negative_count, "a_line");
  if (lines_a_page < 0) return error_in_field(Problem::negative_count, "lines_a_page", lines_a_page);
  if (pages < 0) return error_in_field(Problem::negative_count, "pages", pages);
  auto const lines = checked_multiply(lines_a_page, pages);
  auto const all = lines ? checked_multiply(a_line, Fraction{*lines}) : std::nullopt;
  if (!all) return error_in_field(Problem::result_too_large, "");
  return all->ceil();
}

/// Pages that the copy will make. error: negative_count, not_positive, out_of_order (a least above the average, or a most below it),
/// result_too_large.
constexpr Expected<CastOff> cast_off(Sample const& sample) {
  if (sample.in_copy < 0) return error_in_field(Problem::negative_count, "in_copy", sample.in_copy);
  auto const least = sample.least_a_line.value_or(sample.a_line), most = sample.most_a_line.value_or(sample.a_line);
  if (least <= Fraction{})
    return error_in_field(Problem::not_positive, sample.least_a_line ? "least_a_line" : "a_line");
  if (least > sample.a_line) return error_in_field(Problem::out_of_order, "least_a_line");
  if (most < sample.a_line) return error_in_field(Problem::out_of_order, "most_a_line");
  if (sample.lines_a_page <= 0) return error_in_field(Problem::not_positive, "lines_a_page", sample.lines_a_page);
  bool fits = true;
  auto const lines_at = [&](Fraction a_line) {
    auto const lines = checked_divide(Fraction{sample.in_copy}, a_line);
    fits = fits && lines.has_value();
    return lines.value_or(Fraction{});
  };
  auto const pages_of = [&](Fraction lines) { return Fraction{lines.ceil(), sample.lines_a_page}.ceil(); };
  auto const lines = lines_at(sample.a_line), fewest = lines_at(most), many = lines_at(least);
  if (!fits) return error_in_field(Problem::result_too_large, "");
  return CastOff{lines, {pages_of(fewest), pages_of(lines), pages_of(many)}, sample.unit};
}

/// Ens in a measure: both in the same unit, points or tenths of a millimetre; an en is half the body.
/// error: not_positive, result_too_large.
constexpr Expected<Fraction> ens_in_line(Fraction measure, Fraction body) {
  if (measure <= Fraction{}) return error_in_field(Problem::not_positive, "measure");
  if (body <= Fraction{}) return error_in_field(Problem::not_positive, "body");
  auto const twice = checked_multiply(measure, Fraction{2});
  auto const ens = twice ? checked_divide(*twice, body) : std::nullopt;
  if (!ens) return error_in_field(Problem::result_too_large, "");
  return *ens;
}

/// Whole lines in a type page, from its height and the measure of twenty lines, both in the same unit: the way early type is
/// described. error: not_positive, result_too_large.
constexpr Expected<std::int64_t> lines_in_page(Fraction page_height, Fraction twenty_lines) {
  if (page_height <= Fraction{}) return error_in_field(Problem::not_positive, "page_height");
  if (twenty_lines <= Fraction{}) return error_in_field(Problem::not_positive, "twenty_lines");
  auto const twenty_times = checked_multiply(page_height, Fraction{20});
  auto const lines = twenty_times ? checked_divide(*twenty_times, twenty_lines) : std::nullopt;
  if (!lines) return error_in_field(Problem::result_too_large, "");
  return lines->floor();
}

/// Words in a square inch of type set solid.
struct SolidType {
  Fraction points{};    ///< size of the type
  std::int32_t words{}; ///< in a square inch
  friend constexpr bool operator==(SolidType const&, SolidType const&) = default;
};
/// From a printers' handbook of about 1900, pp. 72-73; its larger sizes cannot be read.
inline constexpr SolidType solid_types[]{{5, 69}, {{11, 2}, 65}, {6, 47}, {7, 38}, {8, 32}};

/// Words on a page of so many square inches, set solid. error: no_such_type, not_positive, result_too_large.
constexpr Expected<std::int64_t> words_in_page(Fraction points, Fraction square_inches) {
  if (square_inches <= Fraction{}) return error_in_field(Problem::not_positive, "square_inches");
  for (auto const& type : solid_types)
    if (type.points == points) {
      auto const words = checked_multiply(square_inches, Fraction{type.words});
      if (!words) return error_in_field(Problem::result_too_large, "");
      return words->floor();
    }
  return error_in_field(Problem::no_such_type, "points");
}

} // namespace v0
} // namespace bifolium
