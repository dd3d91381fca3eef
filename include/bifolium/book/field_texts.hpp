// SPDX-License-Identifier: MIT
/// The texts of a description, field by field, as a row of a table or a record of a catalogue gives them.
#pragma once

#include <bifolium/core/config.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The text of each field; empty if the description does not have it.
struct FieldTexts {
  std::string_view formula{};     ///< `8°: A-K⁸ L⁴`, `Signatures: A-K⁸ L⁴.`
  std::string_view pagination{};  ///< `[8], 205, [3] p.`
  std::string_view leaves{};      ///< `108`, `108 leaves`
  std::string_view plates{};      ///< `4`, `[4] leaves of plates`
  std::string_view format{};      ///< `8vo`
  std::string_view signing{};     ///< `$4 signed`
  std::string_view gatherings{};  ///< `8`, `in fours`
  std::string_view height{};      ///< `187 mm`, `19 cm (8vo)`, `19 x 12 cm`; a number alone is in millimetres
  std::string_view width{};       ///< in the same form as `height`
  std::string_view binding{};     ///< height of the cover, in the same form as `height`
  std::string_view chain_lines{}; ///< `vertical`, `horizontal`, `both`
  std::string_view material{};    ///< `laid`, `wove`, `vellum`
  std::string_view year{};        ///< `1725`, `[1725?]`, `MDCCXXV`
  std::string_view coded_year{};  ///< `1725`, `17uu`, `1720-1729`
  std::string_view place{};       ///< `Venetiis`
  /// a code of the MARC Code List for Countries: `it`, `enk`. Of codes that `country_of_code` does not know, nothing is
  /// compared.
  std::string_view coded_place{};
  friend constexpr bool operator==(FieldTexts const&, FieldTexts const&) = default;
};

} // namespace v0
} // namespace bifolium
