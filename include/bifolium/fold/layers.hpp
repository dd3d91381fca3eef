// SPDX-License-Identifier: MIT
/// Paper as it lies on the table while it is cut and folded. A piece is a pile of layers. A layer is the paper of one
/// leaf, with the cell of the flat sheet from which it came, its present place, and the way it lies.
///
/// A fold takes the layers beyond the crease, turns them over as one packet, which reverses their order, and lays them
/// on top of the rest or underneath. A cut divides the pile while it is flat. These two acts are the whole engine: the
/// library contains no grid of pages, and every grid follows from these acts. fold/walk.hpp gives the paper before and
/// after each step of a scheme.
#pragma once

#include <bifolium/fold/scheme.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// The paper of one leaf in a pile.
struct Layer {
  std::uint8_t sheet{};       ///< the sheet from which it came, from 0
  std::uint8_t home_row{};    ///< its cell of the flat sheet: row from the far edge, from 0
  std::uint8_t home_column{}; ///< its cell of the flat sheet: column from the left, from 0
  std::int16_t row{};         ///< its present place, in cells of the flat sheet; a fold can carry it off the sheet
  std::int16_t column{};      ///< its present place, in cells of the flat sheet
  bool outer_up{};            ///< true if the side that lay on the type is on top
  bool end_for_end{};         ///< true if the edge that pointed away from the compositor now points to him

  /// Returns true if the layer came from that cell of the flat sheet.
  [[nodiscard]] constexpr bool is_from(int of_sheet, int of_row, int of_column) const noexcept {
    return sheet == of_sheet && home_row == of_row && home_column == of_column;
  }
  /// Returns the distance, in cells, of the layer from the left edge for a line along far_near, and from the far edge
  /// for a line along left_right.
  [[nodiscard]] constexpr int across(Axis line) const noexcept { return line == Axis::far_near ? column : row; }
  friend constexpr bool operator==(Layer, Layer) = default;
};

namespace detail {
/// Makes the error for a crease that does not run inside its piece, with the line of the scheme and the number given
/// there.
constexpr Error crease_misses(Step const& step) {
  char digits[3]{};
  std::size_t first = 3;
  for (int rest = step.line; first == 3 || rest != 0; rest /= 10) digits[--first] = static_cast<char>('0' + rest % 10);
  return error_in_scheme(Problem::line_outside_piece, step.place, {digits + first, 3 - first});
}
} // namespace detail

/// A layer in the paper on the table, and its place there.
struct LayerInPile {
  Layer layer{};    ///< the layer as it lies
  int piece{};      ///< the piece of the scheme to which it belongs now
  int from_below{}; ///< number of layers of the piece below it, over the whole piece
  friend constexpr bool operator==(LayerInPile const&, LayerInPile const&) = default;
};

/// All sheets of a scheme as they lie on the table at one moment. The value takes about 1 KB.
class Layers {
  std::array<Layer, Scheme::most_cells> layers_{};
  std::array<std::uint8_t, Scheme::most_pieces> first_{}, count_{};

  static constexpr std::size_t index(int piece) {
    if (piece < 0 || piece >= Scheme::most_pieces) broken("a scheme has at most 40 pieces, numbered from 0");
    return static_cast<std::size_t>(piece);
  }
  static constexpr void turn_over(Layer& layer, Axis crease, int line) {
    auto& at = crease == Axis::far_near ? layer.column : layer.row;
    at = static_cast<std::int16_t>(2 * line - 1 - at);
    layer.outer_up = !layer.outer_up;
    if (crease == Axis::left_right) layer.end_for_end = !layer.end_for_end;
  }

  constexpr void cut(Step const& step) {
    std::array<Layer, Scheme::most_cells> rest{};
    std::size_t const first = first_[step.piece], end = first + count_[step.piece];
    std::size_t kept = first, taken = 0;
    for (auto i = first; i < end; ++i)
      if (layers_[i].across(step.along) < step.line)
        layers_[kept++] = layers_[i];
      else
        rest[taken++] = layers_[i];
    for (std::size_t i = 0; i < taken; ++i) layers_[kept + i] = rest[i];
    count_[step.piece] = 0;
    first_[step.far_or_left_piece] = static_cast<std::uint8_t>(first);
    count_[step.far_or_left_piece] = static_cast<std::uint8_t>(kept - first);
    first_[step.near_or_right_piece] = static_cast<std::uint8_t>(kept);
    count_[step.near_or_right_piece] = static_cast<std::uint8_t>(taken);
  }

  /// Folds. Returns false if the crease does not run inside the piece as it lies.
  constexpr bool fold(Step const& step) {
    std::array<Layer, Scheme::most_cells> moved{};
    std::size_t const first = first_[step.piece], end = first + count_[step.piece];
    std::size_t kept = first, taken = 0;
    for (auto i = first; i < end; ++i)
      if (step.moves(layers_[i].across(step.along)))
        moved[taken++] = layers_[i];
      else
        layers_[kept++] = layers_[i];
    if (taken == 0 || kept == first) return false;
    if (step.under) // make room below
      for (auto i = kept; i-- > first;) layers_[i + taken] = layers_[i];
    auto const to = step.under ? first : kept;
    for (std::size_t i = 0; i < taken; ++i) {
      auto& layer = layers_[to + i] = moved[taken - 1 - i];
      turn_over(layer, step.along, step.line);
    }
    return true;
  }

public:
  /// Lays the sheets of a scheme out flat, outer side down.
  constexpr explicit Layers(Scheme const& scheme) {
    std::size_t at = 0;
    for (int s = 0; s < scheme.sheets(); ++s) {
      auto const& sheet = scheme.sheet(s);
      first_[static_cast<std::size_t>(s)] = static_cast<std::uint8_t>(at);
      count_[static_cast<std::size_t>(s)] = static_cast<std::uint8_t>(sheet.rows * sheet.columns);
      for (std::uint8_t r = 0; r < sheet.rows; ++r)
        for (std::uint8_t c = 0; c < sheet.columns; ++c)
          layers_[at++] = {static_cast<std::uint8_t>(s), r, c, r, c, false, false};
    }
  }
  /// Makes a cut or a fold. Returns false if a crease does not run inside the piece as it lies.
  constexpr bool take(Step const& step) {
    if (step.kind == Step::Kind::fold) return fold(step);
    cut(step);
    return true;
  }
  /// Returns the number of layers of a piece: 0 for a piece that is not cut out yet, or was itself cut up.
  [[nodiscard]] constexpr int count(int piece) const { return count_[index(piece)]; }
  /// Returns layer `i` of a piece, counting from the bottom. Precondition: 0 <= i < count(piece).
  [[nodiscard]] constexpr Layer const& layer(int piece, int i) const& BIFOLIUM_LIFETIMEBOUND {
    if (i < 0 || i >= count(piece)) broken("the piece has no layer with this number");
    return layers_[static_cast<std::size_t>(first_[index(piece)] + i)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr Layer layer(int piece, int i) const&& { return layer(piece, i); }
  /// Returns all layers of a piece, bottom to top. Those at one place form the pile there. The result is empty for a
  /// piece that is not there.
  [[nodiscard]] constexpr std::span<Layer const> pile(int piece) const& BIFOLIUM_LIFETIMEBOUND {
    return std::span{layers_}.subspan(first_[index(piece)], count_[index(piece)]);
  }
  std::span<Layer const> pile(int piece) const&& = delete; // it would outlive the paper it looks at
  /// Finds the layer that came from a cell of the flat sheet, or no value if no sheet has this cell. All three numbers
  /// count from 0.
  [[nodiscard]] constexpr std::optional<LayerInPile> find(int sheet, int row, int column) const {
    for (int piece = 0; piece < Scheme::most_pieces; ++piece)
      for (int i = 0; i < count(piece); ++i)
        if (auto const& here = layer(piece, i); here.is_from(sheet, row, column)) return LayerInPile{here, piece, i};
    return std::nullopt;
  }

  friend constexpr bool operator==(Layers const&, Layers const&) = default;
};

} // namespace v0
} // namespace bifolium
