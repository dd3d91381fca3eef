// SPDX-License-Identifier: MIT
/// A sheet as all its drawings need it: which page and which leaf is at a position, seen as type or as paper, and what they
/// are called.
#pragma once

#include <bifolium/drawing/detail/creases.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/imposition/imposition.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The view of a panel: type on the stone, paper from its outer side, paper from its inner side as it lies for folding.
enum class Facing : std::uint8_t { outer_type, inner_type, outer_paper, inner_paper };

/// One sheet of a scheme with the data for its drawing.
struct DrawnSheet {
  Scheme const& scheme;
  Fold<> const& fold;
  Imposition<> const& formes;
  std::vector<SheetMark> const& marks;
  int sheet{};

  /// Returns the number of digits of the longest page number.
  [[nodiscard]] std::size_t digits() const {
    int last = 0;
    for (int g = 0; g < fold.gatherings(); ++g) {
      auto const end = fold.first_page(g) + fold.gathering(g).pages() - 1;
      last = end > last ? end : last;
    }
    return std::to_string(last).size();
  }
  [[nodiscard]] SheetLine const& lay() const { return formes.sheet(sheet); }
  /// Returns the page at a position of the panel. In half-sheet work the second impression is the first after turning
  /// the sheet.
  [[nodiscard]] ImposedPage standing(Facing seen, int row, int column) const {
    auto const mirrored = lay().columns - 1 - column;
    switch (seen) {
    case Facing::outer_type:
      return formes.outer(row, column, sheet);
    case Facing::inner_type:
      return formes.inner(row, column, sheet);
    case Facing::outer_paper:
      return formes.outer(row, mirrored, sheet);
    case Facing::inner_paper:
      break;
    }
    if (!lay().one_forme) return formes.inner(row, mirrored, sheet);
    if (lay().turned_about == Axis::far_near) return formes.outer(row, mirrored, sheet);
    auto turned = formes.outer(lay().rows - 1 - row, column, sheet);
    turned.head = turned.head == Head::far_edge ? Head::near_edge : Head::far_edge;
    return turned;
  }
  /// Returns the leaf whose page is at a position of the panel.
  [[nodiscard]] LeafAt leaf(Facing seen, int row, int column) const {
    bool const as_it_lies = seen == Facing::outer_type || seen == Facing::inner_paper;
    return fold.leaf_at(sheet, row, as_it_lies ? column : lay().columns - 1 - column);
  }
  /// Returns the name of a leaf: A3.
  [[nodiscard]] std::string leaf_name(LeafAt at) const {
    return signature_of(scheme, at.gathering) + std::to_string(at.leaf.number());
  }
  /// Returns the position of a page in the formes: outer-0-1 is row 0, column 1 of the outer forme. It is empty for a
  /// page in no forme.
  [[nodiscard]] std::string place_name(int page) const {
    auto const place = formes.find_place(page);
    if (!place) return {};
    auto const forme = place->side == Side::inner ? "inner-" : place->side == Side::outer ? "outer-" : "forme-";
    return std::string{forme} + std::to_string(place->row) + "-" + std::to_string(place->column);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
