// SPDX-License-Identifier: MIT
/// A forme as somebody has it before them - in a manual's diagram, in a photograph, on the stone - where pages may be
/// illegible and the way a page lies may not be known. `Imposition` is what folding gives; this is what one asks about.
#pragma once

#include <bifolium/fold/forme_side.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// One page as it is seen in a forme.
struct SeenPage {
  std::optional<std::uint16_t> page{}; ///< its number; none where it cannot be read
  std::optional<Head> head{};          ///< which way its head points; none where that is not known
  friend constexpr bool operator==(SeenPage, SeenPage) = default;
};

/// One forme, as the type lies on the stone. Printed paper shows its left-right mirror.
struct SeenForme {
  int sheet{};                   ///< the sheet it prints, from 0
  Side side{};                   ///< outer, inner, or the only forme of the sheet
  int rows{}, columns{};         ///< of pages
  std::vector<SeenPage> pages{}; ///< row by row from the far edge, each from the left: rows x columns of them
  friend constexpr bool operator==(SeenForme const&, SeenForme const&) = default;
};

} // namespace v0
} // namespace bifolium
