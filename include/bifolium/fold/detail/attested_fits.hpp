// SPDX-License-Identifier: MIT
/// The attested schemes among the answers, and the fact that best separates them: the fact that nobody has looked at
/// yet and that differs most between the schemes that still fit.
#pragma once

#include <bifolium/fold/detail/unfolder.hpp>
#include <bifolium/fold/foldings_showing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The schemes of the table that show all that was seen, by `shows`.
class AttestedFits {
  struct Known {
    Fold<> folded;
    std::vector<int> gatherings; // of the fold, for those given
    int price;                   // of its group
  };
  std::span<SeenGathering const> given_;
  Mould const& mould_;
  std::vector<Known> known_{};

  /// Gatherings of the fold for those given from `chosen` on, in order, none twice.
  bool fits(Fold<> const& folded, std::vector<int>& chosen) const {
    if (chosen.size() == given_.size()) return lies_agree(folded, chosen);
    for (int g = 0; g < folded.gatherings(); ++g) {
      bool used = false;
      for (auto const other : chosen) used = used || other == g;
      if (used || folded.gathering(g).leaves() != given_[chosen.size()].leaves) continue;
      chosen.push_back(g);
      if (fits(folded, chosen)) return true;
      chosen.pop_back();
    }
    return false;
  }
  [[nodiscard]] bool lies_agree(Fold<> const& folded, std::vector<int> const& chosen) const {
    std::array<unsigned, Scheme::most_sheets> lies{};
    lies.fill(15);
    for (std::size_t i = 0; i < given_.size(); ++i)
      for (auto const& seen : given_[i].seen) {
        LeafAt const at{chosen[i], folded.gathering(chosen[i]).leaf(seen.leaf)};
        auto const shown = shows(folded, at, mould_);
        if (!agrees_all(seen, shown)) return false;
        for (unsigned lie = 0; lie < 4 && seen.watermark; ++lie)
          if (!agrees(*seen.watermark, shown.watermark[lie])) lies[folded.cell(at).sheet] &= ~(1U << lie);
      }
    for (int s = 0; s < folded.sheets(); ++s)
      if (lies[static_cast<std::size_t>(s)] == 0) return false;
    return true;
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

  /// What a leaf of an attested scheme shows, as a number that differs where what is seen differs.
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
      int lies = 0; // in how many of the four the leaf has it
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
  /// How far one fact parts the schemes: the sum over pairs that differ in it of the product of their weights. A mark that
  /// a leaf has only if the sheet lay so parts by that part of the ways in which it could lie.
  [[nodiscard]] double parted(std::vector<double> const& weights, LookNext const& look) const {
    std::vector<int> values;
    for (auto const& known : known_)
      values.push_back(shown(look.what, known, static_cast<std::size_t>(look.gathering), look.leaf));
    double sum = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
      for (std::size_t k = 0; k < i; ++k)
        if (auto const apart = values[i] > values[k] ? values[i] - values[k] : values[k] - values[i]; apart != 0)
          sum += weights[i] * weights[k] * (look.what == LookNext::What::watermark ? apart / 4.0 : 1.0);
    return sum;
  }

public:
  AttestedFits(std::span<SeenGathering const> given, Mould const& mould) : given_{given}, mould_{mould} {}

  /// Names the schemes in their groups; a group that was not found, as of unequal sheets, is added.
  void name(std::vector<FoldingGroup>& groups) {
    for (auto const attested : Attested::all()) {
      auto const scheme = attested.scheme();
      auto const folded = *fold(scheme);
      std::vector<int> chosen;
      if (!fits(folded, chosen)) continue;
      auto const work = folding_work(scheme);
      FoldingGroup group{format_of(folded, FormatReading::paper_fraction),
                         folded.sheets(),
                         scheme.sheet(0).part,
                         work.cuts > 0,
                         0,
                         work.price(),
                         scheme.sheet(0),
                         {}};
      FoldingGroup* home = nullptr;
      for (auto& other : groups)
        if (other.is_like(group)) home = &other;
      if (home == nullptr) home = &groups.emplace_back(group);
      home->attested.push_back(attested);
      known_.push_back({folded, chosen, home->price});
    }
  }
  /// Returns the fact that parts them best; a dearer scheme weighs less, by half for each cut.
  [[nodiscard]] std::optional<LookNext> best_look() const {
    int least = PieceFolds::none;
    for (auto const& known : known_) least = known.price < least ? known.price : least;
    std::vector<double> weights;
    for (auto const& known : known_) {
      weights.push_back(1);
      for (int price = least; price < known.price; price += folding_prices.cut) weights.back() /= 2;
    }
    std::optional<LookNext> best;
    double most = 0;
    using What = LookNext::What;
    for (std::size_t g = 0; g < given_.size(); ++g)
      for (int leaf = 1; leaf <= given_[g].leaves; ++leaf)
        for (auto what :
             {What::chain_lines, What::watermark, What::head, What::tail, What::fore_edge, What::conjugate}) {
          LookNext const look{what, static_cast<int>(g), leaf};
          if (looked_at(what, g, leaf)) continue;
          if (auto const here = parted(weights, look); here > most) most = here, best = look;
        }
    return best;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
