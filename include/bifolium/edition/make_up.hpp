// SPDX-License-Identifier: MIT
/// The facts about a scheme that a plan and a bill need: how it divides the sheet and gathers the leaves. They are
/// computed from the fold and typed in nowhere. A sheet goes to press whole, or it is cut first and its pieces go to
/// press. A whole sheet is printed from two formes, or from one forme on both sides (half-sheet work).
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// One unit of a scheme, which is all its sheets for one copy of its pages, and how it is printed.
struct SheetMakeUp {
  int leaves_to_sheet{}; ///< leaves of the whole sheet of paper
  /// pieces into which the sheet is cut before it goes to press
  int pieces_to_sheet{1};
  int gathering_count{}; ///< gatherings of one copy of the pages; a sheet may print several copies
  std::array<std::uint8_t, Scheme::most_gatherings> sizes{}; ///< leaves of each gathering, in the order of the pages
  int workings{};      ///< sheets (or pieces) with two formes in a unit; each gives one copy
  int half_workings{}; ///< half-sheets in a unit; each has one forme and gives two copies to the sheet

  /// Returns the leaves of one copy of the scheme's pages.
  [[nodiscard]] constexpr int leaves() const noexcept {
    int all = 0;
    for (int g = 0; g < gathering_count; ++g) all += sizes[static_cast<std::size_t>(g)];
    return all;
  }
  /// Returns the leaves of the paper that goes to press at once: of the sheet, or of a piece if the sheet is cut first.
  [[nodiscard]] constexpr int leaves_to_press() const noexcept { return leaves_to_sheet / pieces_to_sheet; }
  friend constexpr bool operator==(SheetMakeUp const&, SheetMakeUp const&) = default;
};

/// Reads the make-up from a fold. If a gathering has several copies, only the first counts.
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
  auto const missing = result.leaves_to_press() * fold.sheets() - result.leaves();
  result.half_workings = 2 * missing / result.leaves_to_press();
  result.workings = fold.sheets() - result.half_workings;
  return result;
}

} // namespace v0
} // namespace bifolium
