// SPDX-License-Identifier: MIT
/// Finds the lines of cuts and folds on the flat sheet, and their order. A step is written for the paper as it lies at
/// that moment. One fold of a packet makes several creases in the sheet, some of them ridges. So the scheme is carried
/// out (fold/walk.hpp), and for each step the places where paper is cut or bent are recorded.
#pragma once

#include <bifolium/fold/read_scheme.hpp>
#include <bifolium/fold/walk.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A stretch of a cut or crease on the flat sheet as it lies on the type, between two lines that cross it. A stretch
/// along far-near is on column line `line` and runs from row line `from` to row line `to`.
struct SheetMark {
  int sheet{}, step{};      ///< the step counts from 0, as in `Scheme::step`
  Step::Kind kind{};        ///< cut or fold
  Axis along{};             ///< direction of the line
  int line{}, from{}, to{}; ///< lines of the flat sheet, from 0
  bool hollow_on_inner{};   ///< for a crease: true if the inner side of the sheet is inside the fold
  friend constexpr bool operator==(SheetMark const&, SheetMark const&) = default;
};

/// Adds a stretch, or lengthens the stretch that it continues.
inline void add_mark(std::vector<SheetMark>& marks, SheetMark const& mark) {
  for (auto& other : marks)
    if (other.sheet == mark.sheet && other.step == mark.step && other.along == mark.along && other.line == mark.line &&
        other.to == mark.from && other.hollow_on_inner == mark.hollow_on_inner) {
      other.to = mark.to;
      return;
    }
  marks.push_back(mark);
}

/// Records the line between a cell and the next one (`along` far_near: to its right; left_right: nearer) if a step cuts
/// or bends the paper there. This is so if it brings the two layers to different sides of its line.
inline void note_mark(std::vector<SheetMark>& marks, WalkedStep const& walked, int sheet, int row, int column,
                      Axis along) {
  auto const& step = walked.step;
  bool const upright = along == Axis::far_near;
  auto const one = walked.before.find(sheet, row, column);
  auto const other = walked.before.find(sheet, upright ? row : row + 1, upright ? column + 1 : column);
  if (!one || !other || one->piece != step.piece || other->piece != step.piece || along != step.along) return;
  if (step.moves(one->layer.across(along)) == step.moves(other->layer.across(along))) return;
  bool const inside = step.kind == Step::Kind::fold && step.under == one->layer.outer_up;
  if (upright)
    add_mark(marks, {sheet, walked.number, step.kind, along, column + 1, row, row + 1, inside});
  else
    add_mark(marks, {sheet, walked.number, step.kind, along, row + 1, column, column + 1, inside});
}

/// Returns all cuts and creases of a scheme in the order in which they are made. The function allocates memory.
/// Precondition: `steps` are those of the scheme.
inline std::vector<SheetMark> sheet_marks(Scheme const& scheme, std::vector<WalkedStep> const& steps) {
  std::vector<SheetMark> marks;
  for (auto const& walked : steps)
    for (int s = 0; s < scheme.sheets(); ++s)
      for (int r = 0; r < scheme.sheet(s).rows; ++r)
        for (int c = 0; c < scheme.sheet(s).columns; ++c) {
          if (c + 1 < scheme.sheet(s).columns) note_mark(marks, walked, s, r, c, Axis::far_near);
          if (r + 1 < scheme.sheet(s).rows) note_mark(marks, walked, s, r, c, Axis::left_right);
        }
  return marks;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
