// SPDX-License-Identifier: MIT
/// The kinds of leaf that schemes make: how the sheet is divided, which way its chain lines run, where a watermark may come
/// to be, how many leaves are gathered. Nothing here is stored by format; every scheme is folded once and its leaves are
/// looked at, the first time anything is inferred. Schemes whose leaves agree in format, division and direction are one
/// kind, so 61 schemes come to some twenty-odd.
#pragma once

#include <bifolium/evidence/observation.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/leaf_size.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// One kind of leaf.
struct LeafShape {
  Format format{};                       ///< fraction of the sheet of paper, with the shape the scheme states
  Attested scheme{SchemeRow::broadside}; ///< the first scheme that makes it
  SheetLine lay{};
  ChainLines chain_lines{}; ///< on paper from an ordinary hand mould
  /// By `MarkPlace`: how often the mark of a sheet falls so in a leaf picked at random, one mark to the sheet.
  std::array<double, 8> marks{};
  std::uint32_t gatherings{}; ///< bit k: some scheme gathers it in k leaves (k up to 31)
  int schemes{1};             ///< how many schemes make it; `marks` is the mean over them
};

/// Which place of a leaf a point is.
constexpr MarkPlace place_of(PointOfLeaf at) {
  constexpr double edge = 0.02;
  bool const gutter = at.from_gutter<edge, fore_edge = at.from_gutter> 1 - edge;
  bool const head = at.from_head<edge, tail = at.from_head> 1 - edge;
  if ((head || tail) && gutter) return head ? MarkPlace::head_of_gutter : MarkPlace::corner;
  if ((head || tail) && fore_edge) return MarkPlace::corner;
  if (head || tail) return MarkPlace::head_or_tail_edge;
  return gutter ? MarkPlace::gutter : fore_edge ? MarkPlace::fore_edge : MarkPlace::centre;
}

namespace detail {

inline void look_at_leaves(LeafShape& shape, Fold<> const& fold) {
  double cases = 0;
  for (int g = 0; g < fold.gatherings(); ++g) {
    auto const leaves = fold.gathering(g).leaves();
    if (leaves < 32) shape.gatherings |= std::uint32_t{1} << static_cast<unsigned>(leaves);
    for (int k = 1; k <= leaves; ++k) {
      auto const shown = shows(fold, {g, fold.gathering(g).leaf(k)});
      for (auto lie : {Lie::as_given, Lie::end_for_end}) {
        auto const at = shown.watermark_lying(lie);
        shape.marks[static_cast<std::size_t>(at ? place_of(*at) : MarkPlace::absent)] += 1;
        cases += 1;
      }
    }
  }
  for (auto& share : shape.marks) share /= cases;
}

inline std::vector<LeafShape> find_leaf_shapes() {
  std::vector<LeafShape> shapes;
  for (int row = 0; row < Attested::count; ++row) {
    Attested const scheme{static_cast<SchemeRow>(row)};
    auto const folded = *fold(scheme.scheme());
    LeafShape shape{format_of(folded, FormatReading::paper_fraction).with(folded.format().shape()),
                    scheme,
                    folded.sheet(0),
                    *shows(folded, {0, folded.gathering(0).leaf(1)}).chain_lines,
                    {},
                    0,
                    1};
    look_at_leaves(shape, folded);
    bool known = false;
    for (auto& other : shapes) {
      auto const a = divided(other.lay), b = divided(shape.lay);
      if (other.format != shape.format || a.long_side != b.long_side || a.short_side != b.short_side ||
          other.chain_lines != shape.chain_lines)
        continue;
      other.gatherings |= shape.gatherings;
      ++other.schemes;
      for (std::size_t i = 0; i < shape.marks.size(); ++i)
        other.marks[i] += (shape.marks[i] - other.marks[i]) / other.schemes;
      known = true;
    }
    if (!known) shapes.push_back(shape);
  }
  return shapes;
}

} // namespace detail

/// All kinds of leaf, in the order of the schemes. Folded once a program, on first use.
inline std::vector<LeafShape> const& leaf_shapes() {
  static std::vector<LeafShape> const shapes = detail::find_leaf_shapes();
  return shapes;
}

} // namespace v0
} // namespace bifolium
