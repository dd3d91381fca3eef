// SPDX-License-Identifier: MIT
/// The kinds of leaf that schemes make: how the sheet is divided, which way its chain lines run, where a watermark may come
/// to be, how many leaves are gathered. Schemes whose leaves agree in format, division and direction are one kind, so 61
/// schemes come to some twenty-odd, and what depends on size alone is reckoned once for each.
#pragma once

#include <bifolium/evidence/leaf_facts.hpp>
#include <bifolium/fold/leaf_size.hpp>

#include <cmath>

namespace bifolium {
inline namespace v0 {

/// One kind of leaf.
struct LeafShape {
  Format format{}; ///< fraction of the sheet of paper, with the shape the scheme states
  SheetLine lay{};
  ChainLines chain_lines{};       ///< on paper from an ordinary hand mould
  std::vector<int> schemes{};     ///< the schemes that make it, numbers in `scheme_facts()`
  std::uint32_t gatherings{};     ///< bit k: some scheme gathers it in k leaves (k up to 31)
  std::size_t format_number{};    ///< kinds of one format have the same number, counted from 0
  std::size_t division{};         ///< kinds with the same number are divided alike, so their leaves have the same size
  double log_long{}, log_short{}; ///< logarithms of the parts into which the long and the short side are divided
  /// How often a leaf picked at random has the watermark in the first place and the countermark in the second, by
  /// `MarkPlace`, if the paper has both; the mean over its schemes.
  std::array<std::array<double, 8>, 8> marks{};

  /// How often the mark of paper with one mark a sheet is there.
  [[nodiscard]] double mark(MarkPlace place) const {
    double sum = 0;
    for (auto one : marks[static_cast<std::size_t>(place)]) sum += one;
    return sum;
  }
  /// How often one of the two marks of paper with a countermark is there. The two never stand in one leaf of a format
  /// above broadside; where they do, the watermark is what was described.
  [[nodiscard]] double either_mark(MarkPlace place) const {
    constexpr auto absent = static_cast<std::size_t>(MarkPlace::absent);
    auto const p = static_cast<std::size_t>(place);
    return place == MarkPlace::absent ? marks[absent][absent] : mark(place) + marks[absent][p];
  }
};

namespace detail {

inline void add_marks(LeafShape& shape, SchemeFacts const& facts) {
  double cases = 0;
  std::array<std::array<double, 8>, 8> found{};
  for (auto const& gathering : facts.gatherings)
    for (auto const& leaf : gathering)
      for (std::size_t lie = 0; lie < 2; ++lie, cases += 1)
        found[static_cast<std::size_t>(leaf.watermark[lie])][static_cast<std::size_t>(leaf.countermark[lie])] += 1;
  auto const n = static_cast<double>(shape.schemes.size());
  for (std::size_t a = 0; a < 8; ++a)
    for (std::size_t b = 0; b < 8; ++b) shape.marks[a][b] += (found[a][b] / cases - shape.marks[a][b]) / n;
  for (auto const& gathering : facts.gatherings)
    if (gathering.size() < 32) shape.gatherings |= std::uint32_t{1} << gathering.size();
}

inline std::vector<LeafShape> find_leaf_shapes() {
  std::vector<LeafShape> shapes;
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
      if (other.format == facts.format && other.chain_lines == facts.gatherings[0][0].chain_lines) shape = &other;
    }
    if (shape == nullptr) {
      shape = &shapes.emplace_back();
      shape->format = facts.format;
      shape->lay = facts.lay;
      shape->chain_lines = facts.gatherings[0][0].chain_lines;
      shape->division = division;
      shape->format_number = format_number;
      shape->log_long = std::log(n.long_side);
      shape->log_short = std::log(n.short_side);
    }
    shape->schemes.push_back(static_cast<int>(i));
    add_marks(*shape, facts);
  }
  return shapes;
}

} // namespace detail

/// All kinds of leaf, in the order of the schemes. Found once a program, on first use.
inline std::vector<LeafShape> const& leaf_shapes() {
  static std::vector<LeafShape> const shapes = detail::find_leaf_shapes();
  return shapes;
}

} // namespace v0
} // namespace bifolium
