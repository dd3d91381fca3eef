// SPDX-License-Identifier: MIT
/// Reads what leaf_rows.hpp keeps of the leaves of every attested scheme.
#pragma once

#include <bifolium/evidence/detail/leaf_rows.hpp>
#include <bifolium/evidence/scheme_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

static_assert(std::size(leaf_rows::schemes) == Attested::count,
              "the leaves of schemes are not those of the attested ones: write leaf_rows.hpp again (write_leaf_rows)");

/// Room for different edges of leaves.
inline constexpr std::size_t most_edge_looks = 48;

/// Reads one leaf of a row of leaf_rows.hpp.
[[gnu::cold]] inline LeafFacts read_leaf(char const* text) {
  auto const digit = [&](int at) { return static_cast<std::uint8_t>(text[at] - '0'); };
  auto const mark = [&](int at) { return static_cast<MarkPlace>(digit(at)); };
  LeafFacts facts;
  facts.sheet = text[0] - 'a';
  facts.chain_lines = static_cast<ChainLines>(digit(1));
  facts.watermark = {mark(2), mark(3)}, facts.countermark = {mark(4), mark(5)}, facts.central = mark(6);
  for (int i = 0; i < 3; ++i) {
    auto const edge = digit(7 + i); // 1: a bolt; 2: a deckle, 3: which may be cut; 4 more: at an end of the long side
    facts.edges[static_cast<std::size_t>(i)] = {edge % 4 == 1, edge >= 4, edge % 4 == 2 ? 1 : edge % 4 == 3 ? 0.5 : 0};
  }
  facts.holes = {static_cast<HolePlace>(digit(10)), static_cast<HolePlace>(digit(11))};
  return facts;
}
/// Writes the different edges of leaves, with their shares, from `looks` on, and returns their number. Precondition:
/// there is room for one a leaf.
[[gnu::cold]] inline std::size_t count_looks(std::span<LeafFacts const> leaves, EdgeLook* looks) {
  std::size_t count = 0;
  auto const share = 1 / static_cast<double>(leaves.size());
  for (auto const& leaf : leaves) {
    std::size_t at = 0;
    while (at < count && looks[at].edges != leaf.edges) ++at;
    if (at == count) looks[count++].edges = leaf.edges;
    looks[at].share += share;
  }
  return count;
}
/// Counts the leaves with a hole at each place. A leaf has at most two holes, depending on how its sheet was laid.
[[gnu::cold]] inline void count_holes(SchemeFacts& facts) {
  auto const share = 1 / static_cast<double>(facts.leaves.size());
  for (auto const& leaf : facts.leaves) {
    bool pierced = false;
    for (std::size_t place = 1; place < facts.holes.size(); ++place) {
      auto const hole = static_cast<HolePlace>(place);
      if (leaf.holes[0] != hole && leaf.holes[1] != hole) continue;
      facts.holes[place] += share;
      pierced = true;
    }
    if (pierced) facts.pierced += share;
  }
}

/// The facts of all attested schemes, and the data of their spans.
class AllSchemeFacts {
  LeafFacts leaves_[leaf_rows::leaves]{};
  EdgeLook looks_[leaf_rows::leaves]{}; // no scheme has more looks than leaves
  std::array<SchemeFacts, Attested::count> schemes_{};
  EdgeLook const* numbered_[most_edge_looks]; // a look with each number
  std::size_t numbers_{};

  /// Gives each look the number of its edges: they are few, so what they argue for is computed once for each.
  [[gnu::cold]] void number_looks(std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
      std::size_t number = 0;
      while (number < numbers_ && numbered_[number]->edges != looks_[i].edges) ++number;
      if (number == most_edge_looks) broken("there is no room for so many different edges of leaves");
      if (number == numbers_) numbered_[numbers_++] = &looks_[i];
      looks_[i].number = static_cast<std::uint8_t>(number);
    }
  }

public:
  [[gnu::cold]] AllSchemeFacts() {
    std::size_t leaf = 0, look = 0;
    for (std::size_t row = 0; row < schemes_.size(); ++row) {
      auto& facts = schemes_[row];
      auto const& kept = leaf_rows::schemes[row];
      facts.scheme = Attested{static_cast<SchemeRow>(row)};
      facts.format = Format::of(kept.leaves, kept.shape);
      facts.lay = {kept.rows, kept.columns, kept.long_side, kept.part, kept.one_forme, kept.turned_about, {}};
      facts.sheets = kept.sheets;
      auto const first = leaf;
      for (auto const* text = kept.text; *text != 0; text += *text == ' ' ? 1 : leaf_rows::characters) {
        if (facts.gatherings == 0 || *text == ' ') ++facts.gatherings;
        if (*text == ' ') continue;
        leaves_[leaf++] = read_leaf(text);
        ++facts.gathered[static_cast<std::size_t>(facts.gatherings - 1)];
      }
      facts.leaves = {leaves_ + first, leaf - first};
      count_holes(facts);
      auto const count = count_looks(facts.leaves, looks_ + look);
      facts.looks = {looks_ + look, count};
      look += count;
    }
    number_looks(look);
  }
  AllSchemeFacts(AllSchemeFacts const&) = delete; // the spans look at its arrays
  AllSchemeFacts& operator=(AllSchemeFacts const&) = delete;

  [[nodiscard]] std::array<SchemeFacts, Attested::count> const& schemes() const { return schemes_; }
  /// Returns for each number of edges a look that has it.
  [[nodiscard]] std::span<EdgeLook const* const> looks() const { return {numbered_, numbers_}; }
};
[[gnu::noinline]] inline AllSchemeFacts const& all_scheme_facts() {
  static AllSchemeFacts const facts;
  return facts;
}

} // namespace detail

inline std::array<SchemeFacts, Attested::count> const& scheme_facts() { return detail::all_scheme_facts().schemes(); }

} // namespace v0
} // namespace bifolium
