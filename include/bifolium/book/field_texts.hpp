// SPDX-License-Identifier: MIT
/// The texts of a description, field by field, as a row of a table or a record of a catalogue gives them.
#pragma once

#include <bifolium/core/config.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The text of each field; empty if the description does not have it.
struct FieldTexts {
  std::string_view formula{};    ///< the collation formula: `8°: A-K⁸ L⁴`, `Signatures: A-K⁸ L⁴.`
  std::string_view pagination{}; ///< the pages or numbered leaves: `[8], 205, [3] p.`
  std::string_view leaves{};     ///< the number of leaves: `108`, `108 leaves`; `216 p.` is a pagination
  std::string_view plates{};     ///< the plates: `4`, `[4] leaves of plates`
  std::string_view format{};     ///< the format: `8vo`
  std::string_view signing{};    ///< which leaves are signed: `$4 signed`
  std::string_view gatherings{}; ///< the leaves of most gatherings: `8`, `in fours`
  std::string_view height{}; ///< the height of the leaf: `187 mm`, `19 cm (8vo)`, `19 x 12 cm`; a number alone is in mm
  std::string_view width{};  ///< the width of the leaf, in the same form as `height`
  std::string_view binding{};     ///< height of the cover, in the same form as `height`
  std::string_view chain_lines{}; ///< the direction of the chain lines: `vertical`, `horizontal`, `both`
  std::string_view watermark{}; ///< place of the watermark in the leaf: `centre`, `gutter`, `head-of-gutter`, `absent`
  std::string_view countermark{}; ///< place of the countermark in the same leaf, in the same words
  std::string_view head_edge{};   ///< what no binder cut away of the edge at the head: `bolt`, `deckle`, `tranchefile`
  std::string_view tail_edge{};   ///< the same of the edge at the tail
  std::string_view fore_edge{};   ///< the same of the fore-edge
  std::string_view point_hole{};  ///< place of the hole of a press point: `spine-fold`, `head`, `fore-edge`, `inside`
  std::string_view leaves_seen{}; ///< what leaves of one gathering show: `1 gutter; 2 absent; 3 absent horizontal`
  std::string_view material{};    ///< what the book is printed on: `laid`, `wove`, `vellum`
  std::string_view year{};        ///< the date of printing as stated: `1725`, `[1725?]`, `MDCCXXV`
  std::string_view coded_year{};  ///< the year in a coded field: `1725`, `17uu`, `1720-1729`
  std::string_view place{};       ///< the place of printing as stated: `Venetiis`
  /// a code of the MARC Code List for Countries: `it`, `enk`. Of codes that `country_of_code` does not know, nothing is
  /// compared.
  std::string_view coded_place{};
  friend constexpr bool operator==(FieldTexts const&, FieldTexts const&) = default;
};

} // namespace v0
} // namespace bifolium
