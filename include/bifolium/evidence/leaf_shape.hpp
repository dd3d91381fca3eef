// SPDX-License-Identifier: MIT
/// The kinds of leaf that schemes make: how the sheet is divided, which way its chain lines run, where a watermark may come
/// to be, how many leaves are gathered. Schemes whose leaves agree in format, division and direction are one kind, so 61
/// schemes come to some twenty-odd, and what depends on size alone is reckoned once for each.
#pragma once

#include <bifolium/core/put.hpp>
#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/leaf_facts.hpp>
#include <bifolium/fold/leaf_size.hpp>

namespace bifolium {
inline namespace v0 {

/// One kind of leaf.
struct LeafShape {
  Format format{};                ///< fraction of the sheet of paper, with the shape the scheme states
  int leaves{};                   ///< to the sheet, 1 to 128
  SheetLine lay{};                ///< how the sheet is divided, and which way its long side lies
  ChainLines chain_lines{};       ///< on paper from an ordinary hand mould
  std::vector<int> schemes{};     ///< the schemes that make it, numbers in `scheme_facts()`
  std::uint32_t gatherings{};     ///< bit k: some scheme gathers it in k leaves (k up to 31)
  std::size_t format_number{};    ///< kinds of one format have the same number, counted from 0
  std::size_t division{};         ///< kinds with the same number are divided alike, so their leaves have the same size
  double log_long{}, log_short{}; ///< logarithms of the parts into which the long and the short side are divided
  /// Of all kinds with as many leaves to the sheet, this one among them, how many have each `Shape`: they share a prior.
  std::array<double, 5> sharers{};
  /// How often a leaf picked at random has the watermark in the first place and the countermark in the second, by
  /// `MarkPlace`, if the paper has both; the mean over its schemes.
  std::array<std::array<double, 8>, 8> marks{};
  std::array<double, 8> one_mark{};  ///< sums of `marks`, see `mark`
  std::array<double, 8> two_marks{}; ///< sums of `marks`, see `either_mark`

  /// How often the mark of paper with one mark a sheet is there.
  [[nodiscard]] double mark(MarkPlace place) const { return one_mark[static_cast<std::size_t>(place)]; }
  /// How often one of the two marks of paper with a countermark is there. The two never stand in one leaf of a format
  /// above broadside; where they do, the watermark is what was described.
  [[nodiscard]] double either_mark(MarkPlace place) const { return two_marks[static_cast<std::size_t>(place)]; }
};

namespace detail {

inline void add_marks(LeafShape& shape, SchemeFacts const& facts) {
  double cases = 0;
  std::array<std::array<double, 8>, 8> found{};
  for (auto const& leaf : facts.leaves)
    for (std::size_t lie = 0; lie < 2; ++lie, cases += 1)
      found[static_cast<std::size_t>(leaf.watermark[lie])][static_cast<std::size_t>(leaf.countermark[lie])] += 1;
  auto const n = static_cast<double>(shape.schemes.size());
  for (std::size_t a = 0; a < 8; ++a)
    for (std::size_t b = 0; b < 8; ++b) shape.marks[a][b] += (found[a][b] / cases - shape.marks[a][b]) / n;
  for (auto const leaves : facts.gathered)
    if (leaves > 0 && leaves < 32) shape.gatherings |= std::uint32_t{1} << leaves;
}

/// Sums that need all kinds to be there.
inline void sum_up(List<LeafShape>& shapes) {
  constexpr auto absent = static_cast<std::size_t>(MarkPlace::absent);
  for (auto& shape : shapes) {
    for (std::size_t a = 0; a < 8; ++a) {
      for (auto const one : shape.marks[a]) shape.one_mark[a] += one;
      shape.two_marks[a] = a == absent ? shape.marks[a][a] : shape.one_mark[a] + shape.marks[absent][a];
    }
    for (auto const& other : shapes)
      if (other.leaves == shape.leaves) shape.sharers[static_cast<std::size_t>(other.format.shape())] += 1;
  }
}

inline List<LeafShape> find_leaf_shapes() {
  List<LeafShape> shapes;
  auto const& all = scheme_facts();
  for (std::size_t i = 0; i < all.size(); ++i) {
    auto const& facts = all[i];
    auto const n = divided(facts.lay);
    auto const alike = [&](LeafShape const& other) {
      auto const m = divided(other.lay);
      return other.lay.long_side == facts.lay.long_side && m.long_side == n.long_side && m.short_side == n.short_side;
    };
    LeafShape* shape = nullptr;
    auto division = shapes.size();
    std::size_t format_number = 0;
    for (auto const& other : shapes) format_number = (std::max)(format_number, other.format_number + 1);
    for (auto const& other : shapes)
      if (other.format == facts.format) format_number = other.format_number;
    for (auto& other : shapes) {
      if (!alike(other)) continue;
      division = other.division;
      if (other.format == facts.format && other.chain_lines == facts.leaves[0].chain_lines) shape = &other;
    }
    if (shape == nullptr) {
      shapes.push_back({});
      shape = &shapes.back();
      shape->format = facts.format;
      shape->leaves = facts.format.leaves_to_sheet().value_or(0);
      shape->lay = facts.lay;
      shape->chain_lines = facts.leaves[0].chain_lines;
      shape->division = division;
      shape->format_number = format_number;
      shape->log_long = real::log(n.long_side);
      shape->log_short = real::log(n.short_side);
    }
    shape->schemes.push_back(static_cast<int>(i));
    add_marks(*shape, facts);
  }
  sum_up(shapes);
  return shapes;
}

} // namespace detail

/// All kinds of leaf, in the order of the schemes. Found once a program, on first use.
inline View<LeafShape const> leaf_shapes() {
  static auto const shapes = detail::find_leaf_shapes();
  return {shapes.data(), shapes.size()};
}

namespace detail {

/// The numbers of all kinds, those next to each other that have one of their sides from the same side of the sheet, divided
/// into as many parts. What such a side says is then asked once for all of them.
inline List<int> sort_shapes(bool by_width) {
  auto const shapes = leaf_shapes();
  auto const parts = [&](LeafShape const& shape) {
    return (shape.lay.long_side == Axis::left_right) == by_width ? shape.log_long : shape.log_short;
  };
  auto const before = [&](LeafShape const& a, LeafShape const& b) {
    return a.lay.long_side != b.lay.long_side ? a.lay.long_side < b.lay.long_side : parts(a) < parts(b);
  };
  List<int> sorted;
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    auto at = sorted.size();
    while (at > 0 && before(shapes[i], shapes[static_cast<std::size_t>(sorted[at - 1])])) --at;
    put(sorted, at, at, static_cast<int>(i));
  }
  return sorted;
}
inline List<int> const& shapes_by_height() {
  static auto const shapes = sort_shapes(false);
  return shapes;
}
inline List<int> const& shapes_by_width() {
  static auto const shapes = sort_shapes(true);
  return shapes;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
