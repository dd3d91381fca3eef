// SPDX-License-Identifier: MIT
/// The evidence that the leaves of each attested scheme show. Nobody writes down such a fact of a format: the program
/// bench/write_leaf_rows.cpp folds every scheme, examines its leaves and writes detail/leaf_rows.hpp. So a unit that
/// names formats needs neither the reader of schemes nor the folder, and nothing is folded at the first inference.
#pragma once

#include <bifolium/evidence/leaf_facts.hpp>
#include <bifolium/fold/attested.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// The evidence that the leaves of one scheme show, for each gathering and over all. For a leaf that may be any of
/// them, the shares are used. They are counted once in a program, so that a question need not walk through every leaf.
struct SchemeFacts {
  Attested scheme{SchemeRow::broadside}; ///< the scheme
  Format format{};                       ///< fraction of the sheet of paper, with the shape the scheme states
  SheetLine lay{};                     ///< rows and columns of the sheet, its part, and the direction of its long side
  int sheets{};                        ///< number of sheets, laid one inside another or side by side
  int gatherings{};                    ///< number of gatherings
  std::span<LeafFacts const> leaves{}; ///< all leaves, in the order of the book
  std::span<EdgeLook const> looks{};   ///< every combination of edges once; the shares add up to 1
  std::array<double, 6> holes{};       ///< share of the leaves with a hole at each `HolePlace`
  double pierced{};                    ///< share of the leaves with a hole
  std::array<std::uint8_t, Scheme::most_gatherings> gathered{}; ///< leaves of each gathering

  /// Returns the leaves of one gathering. Precondition: 0 <= g < gatherings.
  [[nodiscard]] std::span<LeafFacts const> gathering(int g) const {
    if (g < 0 || g >= gatherings) broken("the scheme has no gathering with this number");
    std::size_t before = 0;
    for (std::size_t i = 0; i < static_cast<std::size_t>(g); ++i) before += gathered[i];
    return {leaves.data() + before, gathered[static_cast<std::size_t>(g)]};
  }
  /// Returns true if one of its gatherings has `number` leaves.
  [[nodiscard]] bool gathers(int number) const {
    for (int g = 0; g < gatherings; ++g)
      if (gathered[static_cast<std::size_t>(g)] == number) return true;
    return false;
  }
};

/// Returns the facts of all attested schemes, in their order. They are read once in a program, at the first use.
inline std::array<SchemeFacts, Attested::count> const& scheme_facts();

} // namespace v0
} // namespace bifolium

#include <bifolium/evidence/detail/read_leaf_rows.hpp>
