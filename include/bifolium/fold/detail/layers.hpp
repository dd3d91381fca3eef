// SPDX-License-Identifier: MIT
/// The engine: paper is really folded. A piece is a list of layers, bottom to top, each a leaf-sized bit of paper with
/// the place it came from, the place where it lies now and the way it lies. To fold is to take the layers beyond the
/// crease, keep the rest in order, turn the taken ones over as one packet - which reverses them - and lay them on top,
/// or underneath. To cut is to part the list while it is flat. No grid of pages is known anywhere; all grids come from
/// what these two acts leave behind.
#pragma once

#include <bifolium/fold/scheme.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// One leaf's worth of paper.
struct Layer {
  std::uint8_t sheet{}, home_row{}, home_column{};
  std::int16_t row{}, column{}; ///< where it lies now, in lines of the flat sheet
  bool outer_up{};              ///< the side that lay on the type looks up
  bool end_for_end{};           ///< what pointed far now points near
};

/// All sheets of a scheme, cut and folded.
class Layers {
  std::array<Layer, Scheme::most_cells> layers_{};
  std::array<std::uint8_t, Scheme::most_pieces> first_{}, count_{};

  static constexpr std::int16_t place(Layer const& layer, Axis crease) {
    return crease == Axis::far_near ? layer.column : layer.row;
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
      if (place(layers_[i], step.along) < step.line)
        layers_[kept++] = layers_[i];
      else
        rest[taken++] = layers_[i];
    for (std::size_t i = 0; i < taken; ++i) layers_[kept + i] = rest[i];
    first_[step.far_or_left_piece] = static_cast<std::uint8_t>(first);
    count_[step.far_or_left_piece] = static_cast<std::uint8_t>(kept - first);
    first_[step.near_or_right_piece] = static_cast<std::uint8_t>(kept);
    count_[step.near_or_right_piece] = static_cast<std::uint8_t>(taken);
  }

  /// False when the crease does not run inside the piece as it lies.
  constexpr bool fold(Step const& step) {
    std::array<Layer, Scheme::most_cells> moved{};
    std::size_t const first = first_[step.piece], end = first + count_[step.piece];
    std::size_t kept = first, taken = 0;
    for (auto i = first; i < end; ++i)
      if ((place(layers_[i], step.along) < step.line) == step.far_or_left_moves)
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
  /// Lays the sheets out flat, outer side down.
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
  /// Cuts or folds; false when a crease misses the paper.
  constexpr bool take(Step const& step) {
    if (step.kind == Step::Kind::fold) return fold(step);
    cut(step);
    return true;
  }
  [[nodiscard]] constexpr int count(int piece) const { return count_[static_cast<std::size_t>(piece)]; }
  /// Layer `i` of a piece, counting from the bottom.
  [[nodiscard]] constexpr Layer const& layer(int piece, int i) const {
    return layers_[static_cast<std::size_t>(first_[static_cast<std::size_t>(piece)] + i)];
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
