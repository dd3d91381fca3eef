// SPDX-License-Identifier: MIT
/// Where the lines of cutting and folding run on the flat sheet, and in which order they come. A step is written for the
/// packet as it lies at that moment; one fold of a packet makes several creases in the sheet, some the other way up.
/// So the steps are carried out, and at each the places where paper parts or bends are noted.
#pragma once

#include <bifolium/fold/layers.hpp>
#include <bifolium/fold/read_scheme.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// A stretch of a cut or crease on the flat sheet as it lies on the type, between two lines that cross it.
/// Along far-near it lies on column line `line` and runs from row line `from` to row line `to`.
struct SheetMark {
  int sheet{}, step{};      ///< the step counts from 0, as `Scheme::step`
  Step::Kind kind{};        ///< cut or fold
  Axis along{};             ///< which way the line runs
  int line{}, from{}, to{}; ///< the line, and between which two it is drawn: lines of the flat sheet, from 0
  bool hollow_on_inner{};   ///< a crease: the inner side of the sheet lies inside the fold (a valley seen from there)
  friend constexpr bool operator==(SheetMark const&, SheetMark const&) = default;
};

namespace detail {

/// The layer that lay in a cell of the flat sheet, and the piece it is part of now; nothing if there is no such cell.
struct LayerOf {
  Layer layer{};
  int piece{-1};
};

class SheetMarks {
  Scheme const& scheme_;
  Layers layers_;
  std::array<bool, Scheme::most_pieces> gone_{};
  std::vector<SheetMark> marks_{};

  [[nodiscard]] LayerOf find(int sheet, int row, int column) const {
    for (int piece = 0; piece < scheme_.pieces(); ++piece) {
      if (gone_[static_cast<std::size_t>(piece)]) continue;
      for (int i = 0; i < layers_.count(piece); ++i)
        if (auto const& here = layers_.layer(piece, i);
            here.sheet == sheet && here.home_row == row && here.home_column == column)
          return {here, piece};
    }
    return {};
  }
  void add(SheetMark mark) {
    for (auto& other : marks_)
      if (other.sheet == mark.sheet && other.step == mark.step && other.along == mark.along &&
          other.line == mark.line && other.to == mark.from && other.hollow_on_inner == mark.hollow_on_inner) {
        other.to = mark.to;
        return;
      }
    marks_.push_back(mark);
  }

  /// A step parts or bends the paper between two cells when it brings their layers on either side of its line.
  void between(int number, int sheet, int row, int column, Axis along) {
    auto const& step = scheme_.step(number);
    auto const one = find(sheet, row, column);
    auto const other = along == Axis::far_near ? find(sheet, row, column + 1) : find(sheet, row + 1, column);
    if (one.piece != step.piece || other.piece != step.piece) return;
    auto const place = [&](Layer const& layer) { return step.along == Axis::far_near ? layer.column : layer.row; };
    bool const one_before = place(one.layer) < step.line, other_before = place(other.layer) < step.line;
    if (one_before == other_before || along != step.along) return;
    bool const inside = step.kind == Step::Kind::fold && step.under == one.layer.outer_up;
    auto const at = along == Axis::far_near
                        ? SheetMark{sheet, number, step.kind, along, column + 1, row, row + 1, inside}
                        : SheetMark{sheet, number, step.kind, along, row + 1, column, column + 1, inside};
    add(at);
  }

public:
  explicit SheetMarks(Scheme const& scheme) : scheme_{scheme}, layers_{scheme} {}

  std::vector<SheetMark> find_all() && {
    for (int number = 0; number < scheme_.steps(); ++number) {
      for (int s = 0; s < scheme_.sheets(); ++s)
        for (int r = 0; r < scheme_.sheet(s).rows; ++r)
          for (int c = 0; c < scheme_.sheet(s).columns; ++c) {
            if (c + 1 < scheme_.sheet(s).columns) between(number, s, r, c, Axis::far_near);
            if (r + 1 < scheme_.sheet(s).rows) between(number, s, r, c, Axis::left_right);
          }
      auto const& step = scheme_.step(number);
      layers_.take(step);
      if (step.kind == Step::Kind::cut) gone_[step.piece] = true;
    }
    return static_cast<std::vector<SheetMark>&&>(marks_);
  }
};

} // namespace detail

/// All cuts and creases of a scheme in the order they are made. Allocates. pre: the scheme folds.
inline std::vector<SheetMark> sheet_marks(Scheme const& scheme) { return detail::SheetMarks{scheme}.find_all(); }

} // namespace v0
} // namespace bifolium
