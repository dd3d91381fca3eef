// SPDX-License-Identifier: MIT
/// The fields of a description of a book. They have identifiers for programs, which do not change from release to
/// release.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A field of a description.
enum class Field : std::uint8_t {
  formula,     ///< the collation formula
  pagination,  ///< the extent or the statement of pagination
  leaves,      ///< a number of leaves that is stated by itself
  plates,      ///< leaves of plates
  format,      ///< the format statement
  signing,     ///< the statement of signing
  gatherings,  ///< number of leaves of most gatherings
  height,      ///< height of the leaf
  width,       ///< width of the leaf
  binding,     ///< height of the binding
  chain_lines, ///< direction of the chain lines
  material,    ///< laid or wove paper, vellum
  year,        ///< year of printing
  place,       ///< place of printing
  coded_year,  ///< year of printing, as a record codes it beside the imprint
  coded_place, ///< country of printing, as a record codes it beside the imprint
  watermark,   ///< place of the watermark in the leaf
  countermark, ///< place of the countermark in the leaf
  head_edge,   ///< what is left of the edge at the head
  tail_edge,   ///< what is left of the edge at the tail
  fore_edge,   ///< what is left of the fore-edge
  point_hole,  ///< place of a hole of a press point
  leaves_seen  ///< what leaves of one gathering show
};
inline constexpr std::size_t field_count = 23; ///< number of fields

/// Returns the identifier of a field, which is also the name of its column: `chain_lines`. A number that is not a field
/// gives "unknown".
[[nodiscard]] constexpr std::string_view identifier(Field field) noexcept {
  constexpr char const* names[field_count]{
      "formula",   "pagination",  "leaves",      "plates",    "format",    "signing",    "gatherings", "height",
      "width",     "binding",     "chain_lines", "material",  "year",      "place",      "coded_year", "coded_place",
      "watermark", "countermark", "head_edge",   "tail_edge", "fore_edge", "point_hole", "leaves_seen"};
  auto const i = static_cast<std::size_t>(field);
  return i < field_count ? names[i] : "unknown";
}

/// Returns the field that has an identifier, such as the heading of a column, or no value if none has it.
/// Example: `find_field("chain_lines") == Field::chain_lines`.
[[nodiscard]] constexpr std::optional<Field> find_field(std::string_view text) noexcept {
  for (std::size_t i = 0; i < field_count; ++i)
    if (identifier(static_cast<Field>(i)) == text) return static_cast<Field>(i);
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
