// SPDX-License-Identifier: MIT
// Folds every attested scheme and writes include/bifolium/evidence/detail/leaf_rows.hpp to standard output.

#include "leaf_rows/folded.hpp"

#include <iostream>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

char edge_digit(EdgeFacts const& edge) {
  int const deckle = edge.deckle == 1 ? 2 : edge.deckle == 0.5 ? 3 : 0;
  return static_cast<char>('0' + (edge.bolt ? 1 : deckle) + (edge.end_of_long_side ? 4 : 0));
}
std::string leaf_text(LeafFacts const& leaf) {
  std::string text{static_cast<char>('a' + leaf.sheet)};
  auto const add = [&](auto value) { text += static_cast<char>('0' + static_cast<int>(value)); };
  add(leaf.chain_lines);
  for (auto const& marks : {leaf.watermark, leaf.countermark})
    for (auto const mark : marks) add(mark);
  add(leaf.central);
  for (auto const& edge : leaf.edges) text += edge_digit(edge);
  for (auto const hole : leaf.holes) add(hole);
  return text;
}
char const* name(Shape shape) {
  constexpr char const* names[]{"usual", "oblong", "agenda", "broad", "longer"};
  return names[static_cast<std::size_t>(shape)];
}
std::string row(leaf_rows_of_folds::Folded const& folded) {
  auto const& lay = folded.lay;
  auto const leaves = folded.format.leaves_to_sheet().value_or(0);
  if (folded.format != Format::of(leaves, folded.format.shape())) {
    std::cerr << "a format that is not a number of leaves\n";
    std::exit(1);
  }
  std::string text = "    {" + std::to_string(leaves) + ", Shape::" + name(folded.format.shape()) + ", " +
                     std::to_string(int{lay.rows}) + ", " + std::to_string(int{lay.columns}) +
                     (lay.long_side == Axis::far_near ? ", Axis::far_near, " : ", Axis::left_right, ") +
                     (lay.part == PaperPart::whole  ? "PaperPart::whole, "
                      : lay.part == PaperPart::half ? "PaperPart::half, "
                                                    : "PaperPart::quarter, ") +
                     (lay.one_forme ? "true, " : "false, ") +
                     (lay.turned_about == Axis::far_near ? "Axis::far_near, " : "Axis::left_right, ") +
                     std::to_string(folded.sheets) + ",";
  std::string all;
  for (auto const& gathering : folded.gatherings) {
    if (!all.empty()) all += ' ';
    for (auto const& leaf : gathering) all += leaf_text(leaf);
  }
  constexpr std::size_t width = 112;
  for (std::size_t from = 0; from < all.size(); from += width) text += "\n     \"" + all.substr(from, width) + '"';
  return text + "},\n";
}

} // namespace

int main() {
  std::string rows;
  std::size_t leaves = 0;
  for (auto const scheme : Attested::all()) {
    auto const folded = leaf_rows_of_folds::folded(scheme);
    for (auto const& gathering : folded.gatherings) leaves += gathering.size();
    rows += row(folded);
  }
  std::cout << R"(// SPDX-License-Identifier: MIT
/// What each leaf of every attested scheme shows, written by bench/write_leaf_rows.cpp, which folds the schemes. For
/// the form of a row see leaf_row.hpp.
#pragma once

#include <)" // the end of the name apart: this is no include of this file
            << R"(bifolium/evidence/detail/leaf_row.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
namespace leaf_rows {

inline constexpr std::size_t leaves = )"
            << leaves << R"(; ///< of all schemes
// clang-format off
inline constexpr SchemeLeaves schemes[]{
)" << rows << R"(};
// clang-format on

} // namespace leaf_rows
} // namespace detail
} // namespace v0
} // namespace bifolium
)";
}
