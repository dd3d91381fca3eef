// SPDX-License-Identifier: MIT
/// How a scheme divides the sheet and gathers the leaves: what a plan and a bill need to know of it, read off the
/// fold and nowhere typed in. A sheet goes to press whole, or was cut before (then its pieces go to press); a whole one
/// prints two formes, or one and the same on both sides (half-sheet work).
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// One unit of the scheme - all its sheets, one copy of its pages - and how it is worked.
struct SheetMakeUp {
  int leaves_to_sheet{};                                     ///< of the whole sheet of paper
  int pieces_to_sheet{1};                                    ///< into which it is cut before it goes to press
  int gathering_count{};                                     ///< gatherings of one copy of the scheme's pages
  std::array<std::uint8_t, Scheme::most_gatherings> sizes{}; ///< their leaves, in the order of the pages
  int workings{};      ///< sheets (or pieces) of two formes in a unit, each one copy
  int half_workings{}; ///< half-sheets in a unit, each of one forme that gives two copies to the sheet

  /// Leaves of one copy of the scheme's pages.
  [[nodiscard]] constexpr int leaves() const noexcept {
    int all = 0;
    for (int g = 0; g < gathering_count; ++g) all += sizes[static_cast<std::size_t>(g)];
    return all;
  }
  /// Leaves of what goes to press at once: the sheet, or the piece of one cut before.
  [[nodiscard]] constexpr int leaves_to_press() const noexcept { return leaves_to_sheet / pieces_to_sheet; }
  friend constexpr bool operator==(SheetMakeUp const&, SheetMakeUp const&) = default;
};

/// Reads it off a fold. Of several copies of a gathering the first counts.
template <int N> constexpr SheetMakeUp make_up(Fold<N> const& fold) {
  SheetMakeUp result;
  auto const& lay = fold.sheet(0);
  result.pieces_to_sheet = static_cast<int>(lay.part);
  result.leaves_to_sheet = lay.rows * lay.columns * result.pieces_to_sheet;
  for (int g = 0; g < fold.gatherings(); ++g) {
    if (!fold.is_copy(g))
      result.sizes[static_cast<std::size_t>(result.gathering_count++)] =
          static_cast<std::uint8_t>(fold.gathering(g).leaves());
  }
  // leaves = press x two-forme sheets + press/2 x half-sheets, and the two kinds of sheets add up
  result.workings = fold.sheets();
  auto const missing = result.leaves_to_press() * fold.sheets() - result.leaves();
  if (missing > 0) {
    result.half_workings = 2 * missing / result.leaves_to_press();
    result.workings -= result.half_workings;
  }
  return result;
}

} // namespace v0
} // namespace bifolium
