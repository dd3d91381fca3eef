// SPDX-License-Identifier: MIT
/// A forme as it is seen in a manual's diagram, in a photograph or on the stone, where pages may be illegible and the
/// direction of a head may be unknown. It is the input of a search; `Imposition` is the result of folding.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/fold/forme_side.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// One page as it is seen in a forme.
struct SeenPage {
  OptionalNumber<std::uint16_t> page{}; ///< its number; no value if it is illegible
  std::optional<Head> head{};           ///< the direction of its head; no value if it is unknown
  friend constexpr bool operator==(SeenPage, SeenPage) = default;
};

/// One forme, as the type lies on the stone. Printed paper shows its left-right mirror.
struct SeenForme {
  int sheet{};                   ///< the sheet that it prints, from 0
  Side side{};                   ///< outer, inner, or the only forme of the sheet
  int rows{}, columns{};         ///< numbers of rows and columns of pages
  std::vector<SeenPage> pages{}; ///< rows x columns pages, row by row from the far edge, each row from the left
  friend constexpr bool operator==(SeenForme const&, SeenForme const&) = default;
};

} // namespace v0
} // namespace bifolium
