// SPDX-License-Identifier: MIT
/// The size of a book as a catalogue records it. A reader wants to know which shelf to go to, so the rules give whole
/// centimetres, any part of one counted as a whole; millimetres only under 10 cm, where a centimetre would be coarse; the
/// width only where the book is not of the usual shape; the binding apart only where it misleads about the text.
///
/// Rules: Descriptive Cataloging of Rare Materials (Books), area 5D; AACR2 2.5D has the same rounding. The numbers are
/// worked out first (`recorded_size`), then written (`to_words`), so that a record can keep both.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/paper/measure.hpp>

#include <span>
#include <string>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// What was measured. Only `height` must be there. Of several copies the tallest is measured; the others are for a note.
struct Measured {
  millimetres height{};                       ///< of the leaf; of the lowest volume where volumes differ
  std::optional<millimetres> width{};         ///< of the leaf
  std::optional<millimetres> tallest{};       ///< volume of the set, where volumes differ
  std::optional<millimetres> binding{};       ///< height of the cover
  std::optional<millimetres> binding_width{}; ///< width of the cover
  bool single_sheet{};                        ///< a single sheet: the width belongs to it always
  std::optional<millimetres> folded_height{}, folded_width{}; ///< of what was issued folded, to be used unfolded
};

/// One size: whole numbers, all in one unit.
struct StatedSize {
  int height{};                 ///< of the leaf, or of the lowest volume
  std::optional<int> tallest{}; ///< volume of the set, where volumes differ
  std::optional<int> width{};   ///< where the rules want it
  bool in_millimetres{};        ///< else in centimetres
  friend constexpr bool operator==(StatedSize const&, StatedSize const&) = default;
};

/// The numbers of a record.
struct RecordedSize {
  StatedSize size{};                     ///< of the leaf
  std::optional<StatedSize> folded_to{}; ///< of what was issued folded
  std::optional<StatedSize> bound_to{};  ///< where the binding is 3 cm or more taller or lower than the text
  friend constexpr bool operator==(RecordedSize const&, RecordedSize const&) = default;
};

namespace detail {
/// A length in whole units, parts counted up. A thousandth of a millimetre is a rounding of arithmetic, not of paper.
constexpr int whole_units(millimetres length, bool in_millimetres) {
  auto const units = (length.count() - 1e-3) / (in_millimetres ? 1 : 10);
  auto const whole = static_cast<int>(units);
  return units > whole || whole == 0 ? whole + 1 : whole;
}
/// The unit follows the height alone. So both examples of the rules come out: `20 x 8 cm`, though 8 cm is under 10, and
/// `95 x 120 mm`, where one unit must serve both sides.
constexpr StatedSize stated_size(millimetres height, std::optional<millimetres> width, bool width_always) {
  bool const millimetre = height < 100_mm;
  StatedSize size{.height = whole_units(height, millimetre), .in_millimetres = millimetre};
  // broader than high, or less than half as broad as high: both strictly, before rounding
  if (width && (width_always || *width > height || *width * 2 < height)) size.width = whole_units(*width, millimetre);
  return size;
}
} // namespace detail

/// The size as it is recorded. Where the binding is measured, as the rules want it, but its width is not known and would
/// have to be given, the leaf is recorded instead: height and width in one statement belong to one thing.
/// error: impossible_measure; tallest_below_lowest.
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

/// `20 cm`, `20 x 32 cm`, `24-28 cm`. Allocates.
inline std::string to_words(StatedSize const& size) {
  auto text = std::to_string(size.height);
  if (size.tallest)
    text.append("-").append(std::to_string(*size.tallest));
  else if (size.width)
    text.append(" x ").append(std::to_string(*size.width));
  return text.append(size.in_millimetres ? " mm" : " cm");
}
/// As written in a record: `20 cm`, `12 cm bound to 20 cm`, `48 x 30 cm folded to 24 x 15 cm`. Allocates.
inline std::string to_words(RecordedSize const& record) {
  auto text = to_words(record.size);
  if (record.folded_to) text.append(" folded to ").append(to_words(*record.folded_to));
  if (record.bound_to) text.append(" bound to ").append(to_words(*record.bound_to));
  return text;
}

/// The size with the formats after it: `20 cm (4to)`, `51 x 38 cm (full-sheet)`, `20 cm (4to and 8vo)` for a book of
/// two. The rules want a format of books of the hand press only, and only where it is known; "not determined" and a single
/// sheet of which the fraction is not known are left out. `formats`: any container of them. Allocates.
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
/// The size with one format after it: `20 cm (4to)`. Allocates.
inline std::string to_words(RecordedSize const& record, Format format) {
  return to_words(record, std::span<Format const>{&format, 1});
}

} // namespace v0
} // namespace bifolium
