// SPDX-License-Identifier: MIT
/// Casting off estimates how many pages a manuscript will make, before a line of it is set. Casting up counts the work
/// of a sheet for the compositor's pay. Printers counted words or letters of a sample line, or ens (an en is half the
/// body of the type) in thousands. The printed tables give lines x ens x pages in thousands, and count half a thousand
/// as one (Savage 1841). The answer states its assumption.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/range.hpp>

namespace bifolium {
inline namespace v0 {

/// Returns the thousands of ens in a sheet, as the tables give it: a remainder of five hundred or more counts as one
/// thousand, a smaller one is dropped. `lines` counts the lines of a page including head line and direction line, `ens`
/// the ens of a line, `pages` the pages of the sheet. Errors: negative_count, result_too_large.
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

/// The unit that is counted in the manuscript and in a line of type.
enum class CastingUnit : std::uint8_t {
  words,   ///< words
  letters, ///< letters, including the spaces between words
  ens      ///< ens, the compositor's measure: half the body of the type
};

/// A sample of the manuscript and of the type in which it will be set.
struct Sample {
  std::int64_t in_copy{}; ///< words, letters or ens of the whole manuscript; see `in_manuscript`
  Fraction a_line{};      ///< average in a line of type, found by setting a few lines (MacKellar 1893)
  /// lines of type in a page, without head line and direction line; see `lines_in_page`
  std::int64_t lines_a_page{};
  CastingUnit unit{CastingUnit::words}; ///< the unit of `in_copy` and `a_line`
  /// the least and the greatest number in the lines that were set, if a range is wanted
  std::optional<Fraction> least_a_line{}, most_a_line{};
  friend constexpr bool operator==(Sample const&, Sample const&) = default;
};

/// The result of casting off, and its assumption.
struct CastOff {
  Fraction lines{}; ///< lines of type, exactly
  /// Pages; the last page may be short. `low`: every line holds as much as the fullest line of the sample. `high`:
  /// every line holds as little as the emptiest.
  Range<std::int64_t> pages{};
  CastingUnit unit{}; ///< the unit that was counted

  /// Returns the assumption as a clause that can be printed after the number.
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

/// Returns the words (or letters) of a manuscript from a sample of it: words in a line x lines in a page x pages
/// (MacKellar 1893). Errors: negative_count, result_too_large.
constexpr Expected<std::int64_t> in_manuscript(Fraction a_line, std::int64_t lines_a_page, std::int64_t pages) {
  if (a_line < Fraction{}) return error_in_field(Problem::negative_count, "a_line");
  if (lines_a_page < 0) return error_in_field(Problem::negative_count, "lines_a_page", lines_a_page);
  if (pages < 0) return error_in_field(Problem::negative_count, "pages", pages);
  auto const lines = checked_multiply(lines_a_page, pages);
  auto const all = lines ? checked_multiply(a_line, Fraction{*lines}) : std::nullopt;
  if (!all) return error_in_field(Problem::result_too_large, "");
  return all->ceil();
}

/// Returns the pages that the manuscript will make. Errors: negative_count, not_positive, out_of_order (a least number
/// above the average, or a greatest below it), result_too_large.
/// Example: `cast_off({.in_copy = 27'000, .a_line = 9, .lines_a_page = 32})->pages.stated == 94`.
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

/// Returns the ens in a measure (the width of a line). `measure` and `body` are in the same unit, for example points or
/// tenths of a millimetre; an en is half the body. Errors: not_positive, result_too_large.
constexpr Expected<Fraction> ens_in_line(Fraction measure, Fraction body) {
  if (measure <= Fraction{}) return error_in_field(Problem::not_positive, "measure");
  if (body <= Fraction{}) return error_in_field(Problem::not_positive, "body");
  auto const twice = checked_multiply(measure, Fraction{2});
  auto const ens = twice ? checked_divide(*twice, body) : std::nullopt;
  if (!ens) return error_in_field(Problem::result_too_large, "");
  return *ens;
}

/// Returns the whole lines in a type page from its height and the height of twenty lines, both in the same unit. Early
/// type is described in this way. Errors: not_positive, result_too_large.
constexpr Expected<std::int64_t> lines_in_page(Fraction page_height, Fraction twenty_lines) {
  if (page_height <= Fraction{}) return error_in_field(Problem::not_positive, "page_height");
  if (twenty_lines <= Fraction{}) return error_in_field(Problem::not_positive, "twenty_lines");
  auto const twenty_times = checked_multiply(page_height, Fraction{20});
  auto const lines = twenty_times ? checked_divide(*twenty_times, twenty_lines) : std::nullopt;
  if (!lines) return error_in_field(Problem::result_too_large, "");
  return lines->floor();
}

/// The words in a square inch of type that is set solid, without extra space between lines.
struct SolidType {
  Fraction points{};    ///< size of the type, in points
  std::int32_t words{}; ///< words in a square inch
  friend constexpr bool operator==(SolidType const&, SolidType const&) = default;
};
/// Words in a square inch, from a printers' handbook of about 1900, pp. 72-73. Its larger sizes are illegible.
inline constexpr SolidType solid_types[]{{5, 69}, {{11, 2}, 65}, {6, 47}, {7, 38}, {8, 32}};

/// Returns the words on a page of `square_inches`, set solid. Errors: no_such_type, not_positive, result_too_large.
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
