// SPDX-License-Identifier: MIT
/// The attested schemes among the answers, how likely each is, and the fact that best separates them: the fact that
/// nobody has looked at yet and that differs most between the schemes that still fit.
#pragma once

#include <bifolium/fold/detail/key_table.hpp>
#include <bifolium/fold/folding_weights.hpp>
#include <bifolium/fold/foldings_left.hpp>
#include <bifolium/fold/seen_leaf.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The attested schemes that show all the evidence, as `shows` says.
class AttestedFits {
  struct Known {
    Fold<> folded;
    std::vector<int> gatherings; // gatherings of the fold that stand for the given ones
    std::size_t group;
    double weight; // probability together with the evidence
  };
  std::span<SeenGathering const> given_;
  Mould const& mould_;
  FoldingWeights const& weights_;
  std::vector<Known> known_{};

  using Lies = std::uint64_t; // the ways in which each sheet may lie: four bits a sheet
  static constexpr Lies any_lie = ~Lies{0};
  /// Returns the ways in which the sheets may lie if a gathering of the fold shows the evidence of a given one; 0 if
  /// there is none.
  [[nodiscard]] Lies lies_showing(Fold<> const& folded, int gathering, SeenGathering const& given) const {
    auto lies = any_lie;
    for (auto const& seen : given.seen) {
      LeafAt const at{gathering, folded.gathering(gathering).leaf(seen.leaf)};
      auto const shown = shows(folded, at, mould_);
      if (!agrees_all(seen, shown)) return 0;
      auto const sheet = folded.cell(at).sheet * 4U;
      for (unsigned lie = 0; lie < 4 && seen.watermark; ++lie)
        if (!agrees(*seen.watermark, shown.watermark[lie])) lies &= ~(Lies{1} << (sheet + lie));
      if ((lies >> sheet & 15U) == 0) return 0;
    }
    return lies;
  }
  /// Returns the share of these ways among all ways in which the sheets may lie.
  static double share_of(Lies lies, int sheets) {
    double share = 1;
    for (int s = 0; s < sheets; ++s, lies >>= 4U) {
      int ways = 0;
      for (unsigned lie = 0; lie < 4; ++lie) ways += (lies >> lie & 1U) != 0 ? 1 : 0;
      share *= ways / 4.0;
    }
    return share;
  }
  /// Choices of gatherings of the fold for the first few of the given gatherings. Choices that use the same gatherings and
  /// allow the same positions of the sheets are counted together, and one of them is stored.
  struct Chosen {
    double ways{};
    std::vector<int> gatherings{};
  };
  /// Returns the probability that a fold shows the evidence, if the given gatherings are any different gatherings of
  /// the fold with as many leaves, and each sheet lies in any of the four ways. `chosen` becomes gatherings that show it.
  double likelihood(Fold<> const& folded, std::vector<int>& chosen) const {
    KeyTable<std::array<std::uint64_t, 2>> states; // gatherings taken, lies
    std::vector<Chosen> rows{{1, {}}};
    states.number(std::array{std::uint64_t{0}, any_lie});
    double choices = 1; // of gatherings
    for (std::size_t i = 0; i < given_.size(); ++i) {
      KeyTable<std::array<std::uint64_t, 2>> after;
      std::vector<Chosen> longer;
      int alike = 0;
      for (int g = 0; g < folded.gatherings(); ++g) {
        if (folded.gathering(g).leaves() != given_[i].leaves) continue;
        ++alike;
        auto const lies = lies_showing(folded, g, given_[i]);
        for (std::size_t s = 0; s < rows.size() && lies != 0; ++s) {
          auto const bit = std::uint64_t{1} << static_cast<unsigned>(g);
          if ((states[s][0] & bit) != 0 || !(share_of(states[s][1] & lies, folded.sheets()) > 0)) continue;
          auto const before = after.size(), number = after.number(std::array{states[s][0] | bit, states[s][1] & lies});
          if (number == before) longer.push_back({0, rows[s].gatherings}), longer.back().gatherings.push_back(g);
          longer[number].ways += rows[s].ways;
        }
      }
      for (std::size_t before = 0; before < i; ++before) alike -= given_[before].leaves == given_[i].leaves ? 1 : 0;
      choices *= alike;
      states = static_cast<KeyTable<std::array<std::uint64_t, 2>>&&>(after);
      rows = static_cast<std::vector<Chosen>&&>(longer);
    }
    double sum = 0;
    for (std::size_t s = 0; s < rows.size(); ++s) sum += rows[s].ways * share_of(states[s][1], folded.sheets());
    if (rows.empty()) return 0;
    chosen = rows[0].gatherings;
    return sum / choices;
  }
  static bool agrees_all(SeenLeaf const& seen, LeafShows const& shown) {
    auto const mate = [](Edge const& edge) {
      return edge.mate ? std::optional{edge.mate->leaf.number()} : std::nullopt;
    };
    auto const edge = [&](std::optional<SeenEdge> const& looked_for, Edge const& there) {
      return !looked_for || agrees(*looked_for, there.kind, mate(there));
    };
    bool const joined = shown.gutter.kind == Edge::Kind::gutter;
    return edge(seen.head, shown.head) && edge(seen.tail, shown.tail) && edge(seen.fore_edge, shown.fore_edge) &&
           (!seen.chain_lines || !shown.chain_lines || seen.chain_lines == shown.chain_lines) &&
           (!seen.conjugate || (joined && mate(shown.gutter) == seen.conjugate)) && (!seen.disjunct || !joined) &&
           (!seen.point_hole || agrees(*seen.point_hole, shown.point_holes[0]) ||
            agrees(*seen.point_hole, shown.point_holes[1]));
  }

  /// Returns a number for what a leaf of an attested scheme shows. Two leaves that show different things have different
  /// numbers.
  [[nodiscard]] int shown(LookNext::What what, Known const& known, std::size_t gathering, int leaf) const {
    LeafAt const at{known.gatherings[gathering], known.folded.gathering(known.gatherings[gathering]).leaf(leaf)};
    auto const all = shows(known.folded, at, mould_);
    auto const edge = [](Edge const& e) {
      return static_cast<int>(e.kind) * 64 + (e.mate ? e.mate->leaf.number() : 0);
    };
    switch (what) {
    case LookNext::What::chain_lines:
      return all.chain_lines ? static_cast<int>(*all.chain_lines) : 0;
    case LookNext::What::watermark: {
      int lies = 0; // in how many of the four positions the leaf has it
      for (auto const& mark : all.watermark) lies += mark ? 1 : 0;
      return lies;
    }
    case LookNext::What::head:
      return edge(all.head);
    case LookNext::What::tail:
      return edge(all.tail);
    case LookNext::What::fore_edge:
      return edge(all.fore_edge);
    case LookNext::What::conjugate:
      return edge(all.gutter);
    }
    return 0;
  }
  [[nodiscard]] bool looked_at(LookNext::What what, std::size_t gathering, int leaf) const {
    for (auto const& seen : given_[gathering].seen) {
      if (seen.leaf != leaf) continue;
      switch (what) {
      case LookNext::What::chain_lines:
        return seen.chain_lines.has_value();
      case LookNext::What::watermark:
        return seen.watermark.has_value();
      case LookNext::What::head:
        return seen.head.has_value();
      case LookNext::What::tail:
        return seen.tail.has_value();
      case LookNext::What::fore_edge:
        return seen.fore_edge.has_value();
      case LookNext::What::conjugate:
        return seen.conjugate.has_value() || seen.disjunct;
      }
    }
    return false;
  }
  /// Returns how well one fact separates the schemes: the sum of the products of weights over all pairs that differ in it. A
  /// mark that depends on the position of the sheet counts by the share of the positions in which the leaf has it.
  [[nodiscard]] double parted(LookNext const& look) const {
    std::vector<int> values;
    values.reserve(known_.size());
    for (auto const& known : known_)
      values.push_back(shown(look.what, known, static_cast<std::size_t>(look.gathering), look.leaf));
    double sum = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
      for (std::size_t k = 0; k < i; ++k)
        if (auto const apart = values[i] > values[k] ? values[i] - values[k] : values[k] - values[i]; apart != 0)
          sum += known_[i].weight * known_[k].weight * (look.what == LookNext::What::watermark ? apart / 4.0 : 1.0);
    return sum;
  }

public:
  AttestedFits(std::span<SeenGathering const> given, Mould const& mould, FoldingWeights const& weights)
      : given_{given}, mould_{mould}, weights_{weights} {}

  /// Adds the schemes to their groups, with the probability. A group that the search did not find, for example of
  /// unequal sheets, is added.
  void name(std::vector<FoldingGroup>& groups) {
    double all = 0;
    for (auto const attested : Attested::all()) {
      auto const scheme = attested.scheme();
      auto const folded = *fold(scheme);
      std::vector<int> chosen;
      auto const weight = likelihood(folded, chosen) * weights_.of(attested);
      if (chosen.empty()) continue;
      auto const work = folding_work(scheme);
      FoldingGroup group;
      group.format = format_of(folded, FormatReading::paper_fraction);
      group.sheets = folded.sheets(), group.part = scheme.sheet(0).part, group.sheet = scheme.sheet(0);
      group.cut = work.cuts > 0, group.price = work.price();
      std::size_t home = 0;
      while (home < groups.size() && !groups[home].is_like(group)) ++home;
      if (home == groups.size()) groups.push_back(group);
      groups[home].attested.push_back(attested);
      known_.push_back({folded, chosen, home, weight});
      all += weight;
    }
    for (auto& known : known_)
      if (all > 0) groups[known.group].probability += known.weight /= all;
  }
  /// Returns the price of the simplest scheme that shows the evidence, or no value if none does.
  [[nodiscard]] std::optional<int> simplest() const {
    std::optional<int> price;
    for (auto const attested : Attested::all()) {
      std::vector<int> chosen;
      auto const scheme = attested.scheme();
      if (static_cast<void>(likelihood(*fold(scheme), chosen)); chosen.empty()) continue;
      if (auto const here = folding_work(scheme).price(); !price || here < *price) price = here;
    }
    return price;
  }
  /// Returns the fact that best separates the schemes, each with its probability.
  [[nodiscard]] std::optional<LookNext> best_look() const {
    std::optional<LookNext> best;
    double most = 0;
    using What = LookNext::What;
    for (std::size_t g = 0; g < given_.size(); ++g)
      for (int leaf = 1; leaf <= given_[g].leaves; ++leaf)
        for (auto what :
             {What::chain_lines, What::watermark, What::head, What::tail, What::fore_edge, What::conjugate}) {
          LookNext const look{what, static_cast<int>(g), leaf};
          if (looked_at(what, g, leaf)) continue;
          if (auto const here = parted(look); here > most) most = here, best = look;
        }
    return best;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
