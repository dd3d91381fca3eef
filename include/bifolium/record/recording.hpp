// SPDX-License-Identifier: MIT
/// The size of a book as a catalogue records it. A reader needs the size to find the shelf. So the rules ask for whole
/// centimetres, rounded up; for millimetres only under 10 cm, where a centimetre would be coarse; for the width only if
/// the book has an unusual shape; and for the binding only if its size misleads about the text.
///
/// Rules: Descriptive Cataloging of Rare Materials (Books), area 5D; AACR2 2.5D rounds in the same way. The numbers are
/// computed first (`recorded_size`) and then written (`to_words`), so that a record can store both.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/paper/measure.hpp>

#include <span>
#include <string>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// Measurements of a book. Only `height` is required. If there are several copies, give the tallest.
struct Measured {
  millimetres height{};           ///< height of the leaf; of the lowest volume if volumes differ
  OptionalLength width{};         ///< width of the leaf
  OptionalLength tallest{};       ///< height of the tallest volume of the set, if volumes differ
  OptionalLength binding{};       ///< height of the cover
  OptionalLength binding_width{}; ///< width of the cover
  bool single_sheet{};            ///< true for a single sheet, whose width is always recorded
  /// size when folded, of a sheet that was issued folded and is used unfolded
  OptionalLength folded_height{}, folded_width{};
  friend constexpr bool operator==(Measured const&, Measured const&) = default;
};

/// A size in whole units.
struct StatedSize {
  int height{};                 ///< height of the leaf, or of the lowest volume
  std::optional<int> tallest{}; ///< height of the tallest volume of the set, if volumes differ
  std::optional<int> width{};   ///< the width, if the rules ask for it
  bool in_millimetres{};        ///< true for millimetres, false for centimetres
  friend constexpr bool operator==(StatedSize const&, StatedSize const&) = default;
};

/// The numbers of a record.
struct RecordedSize {
  StatedSize size{};                     ///< the size of the leaf
  std::optional<StatedSize> folded_to{}; ///< the size when folded, of a sheet that was issued folded
  /// the size of the binding, if its height differs from that of the text by 3 cm or more
  std::optional<StatedSize> bound_to{};
  friend constexpr bool operator==(RecordedSize const&, RecordedSize const&) = default;
};

namespace detail {
/// Rounds a length up to whole units. A thousandth of a millimetre is ignored, because it comes from arithmetic and not
/// from paper.
constexpr int whole_units(millimetres length, bool in_millimetres) {
  auto const units = (length.count() - 1e-3) / (in_millimetres ? 1 : 10);
  auto const whole = static_cast<int>(units);
  return units > whole || whole == 0 ? whole + 1 : whole;
}
/// Makes a size. The height alone decides the unit. This gives both examples of the rules: `20 x 8 cm`, although 8 cm
/// is under 10, and `95 x 120 mm`, in which one unit must serve for both sides.
constexpr StatedSize stated_size(millimetres height, std::optional<millimetres> width, bool width_always) {
  bool const millimetre = height < 100_mm;
  StatedSize size{.height = whole_units(height, millimetre), .in_millimetres = millimetre};
  // broader than high, or less than half as broad as high: both strictly, before rounding
  if (width && (width_always || *width > height || *width * 2 < height)) size.width = whole_units(*width, millimetre);
  return size;
}
} // namespace detail

/// Returns the size as it is recorded. If the rules ask for the size of the binding, but its width is needed and
/// unknown, the leaf is recorded instead, because height and width in one statement must belong to one thing. Errors:
/// impossible_measure; tallest_below_lowest.
/// Example: `to_words(*recorded_size({.height = 188_mm})) == "19 cm"`.
constexpr Expected<RecordedSize> recorded_size(Measured const& measured) {
  for (auto const& [field, length] : {std::pair{"height", std::optional{measured.height}},
                                      {"width", measured.width},
                                      {"tallest", measured.tallest},
                                      {"binding", measured.binding},
                                      {"binding_width", measured.binding_width},
                                      {"folded_height", measured.folded_height},
                                      {"folded_width", measured.folded_width}})
    if (!is_measure(length)) return error_in_field(Problem::impossible_measure, field);
  if (measured.tallest && *measured.tallest < measured.height)
    return error_in_field(Problem::tallest_below_lowest, "tallest");

  RecordedSize record{.size = detail::stated_size(measured.height, measured.width, measured.single_sheet)};
  if (measured.binding) {
    auto const bound = detail::stated_size(*measured.binding, measured.binding_width, false);
    auto const differs = *measured.binding - measured.height;
    if (differs >= 30_mm || differs <= -30_mm)
      record.bound_to = bound;
    else if (!record.size.width || bound.width)
      record.size = bound;
  }
  if (measured.tallest) {
    auto const to = detail::whole_units(*measured.tallest, record.size.in_millimetres);
    if (to > record.size.height) record.size.tallest = to;
  }
  if (measured.folded_height)
    record.folded_to = detail::stated_size(*measured.folded_height, measured.folded_width, true);
  return record;
}

/// Writes a size: `20 cm`, `20 x 32 cm`, `24-28 cm`. The function allocates memory.
inline std::string to_words(StatedSize const& size) {
  auto text = std::to_string(size.height);
  if (size.tallest)
    text.append("-").append(std::to_string(*size.tallest));
  else if (size.width)
    text.append(" x ").append(std::to_string(*size.width));
  return text.append(size.in_millimetres ? " mm" : " cm");
}
/// Writes a size as in a record: `20 cm`, `12 cm bound to 20 cm`, `48 x 30 cm folded to 24 x 15 cm`. The function
/// allocates memory.
inline std::string to_words(RecordedSize const& record) {
  auto text = to_words(record.size);
  if (record.folded_to) text.append(" folded to ").append(to_words(*record.folded_to));
  if (record.bound_to) text.append(" bound to ").append(to_words(*record.bound_to));
  return text;
}

/// Writes the size with the formats after it: `20 cm (4to)`, `51 x 38 cm (full-sheet)`, and `20 cm (4to and 8vo)` for a
/// book with two. The rules ask for the format of books of the hand press only, and only if it is known. So "not
/// determined", and a single sheet whose fraction is unknown, are left out. `formats` is any container of formats. The
/// function allocates memory.
template <class Formats>
requires requires(Formats const& formats) { Format{*formats.begin()}; }
std::string to_words(RecordedSize const& record, Formats const& formats) {
  auto text = to_words(record);
  bool any = false;
  for (Format const format : formats) {
    if (!format.leaves_to_sheet()) continue;
    text.append(any ? " and " : " (").append(format.abbreviation());
    any = true;
  }
  return any ? text.append(")") : text;
}
/// Writes the size with one format after it: `20 cm (4to)`. The function allocates memory.
inline std::string to_words(RecordedSize const& record, Format format) {
  return to_words(record, std::span<Format const>{&format, 1});
}

} // namespace v0
} // namespace bifolium
