// SPDX-License-Identifier: MIT
/// Chooses what to look at next: of the evidence not yet seen, the kind that is most likely to decide the format in
/// relation to its effort, computed with the model that ranks. For each possible outcome, each format gives a
/// probability. The value of a look is the probability that it leaves one format above .95, plus a quarter of the
/// average decrease of the uncertainty over formats (the entropy). A mark may tell most, but to find one takes a dozen
/// leaves held against the light; the signatures can be read as soon as the book is open.
#pragma once

#include <bifolium/evidence/detail/weighing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The expected result of a look.
struct Expectation {
  double learnt{};  ///< expected decrease of the entropy, in natural units
  double settled{}; ///< probability that one format is above .95 afterwards
  /// The greatest value of a look; it decides everything.
  static constexpr double most = 1.25;
  /// Returns the value of the look for its effort. `before` is the entropy before it.
  [[nodiscard]] double worth(double before, double cost) const { return (settled + 0.25 * learnt / before) / cost; }
};

/// The formats that are still possible.
class Look {
  static constexpr std::size_t most = 8, outcomes = 16;
  std::array<Tally const*, most> tallies_{};
  std::array<double, most> share_{};
  std::size_t count_{};
  double before_{};

  static double entropy_part(double p) { return p > 1e-9 ? -p * real::quick_log(p) : 0; }

public:
  /// Takes the tallies. Formats below one in two hundred are left out, since a look at them is not worth its effort.
  Look(Tallies const& tallies, std::size_t reading) {
    double all = 0, kept = 0;
    for (std::size_t i = 0; i < tallies.count; ++i) all += tallies.of_format[i].together[reading];
    for (std::size_t i = 0; i < tallies.count && count_ < most; ++i) {
      auto const here = tallies.of_format[i].together[reading];
      if (here < 0.005 * all || !(here > 0)) continue;
      tallies_[count_] = &tallies.of_format[i], share_[count_++] = here;
      kept += here;
    }
    for (std::size_t i = 0; i < count_; ++i) before_ += entropy_part(share_[i] /= kept);
  }
  /// Returns the entropy before the look, in natural units.
  [[nodiscard]] double before() const { return before_; }
  /// Returns the expectation. `part(tally, outcome)` is the probability of the outcome under the format, in any unit
  /// that is the same for all outcomes of a format; the outcomes divide the probability of the format.
  template <class Part> [[nodiscard]] Expectation expect(std::size_t asked, Part part) const {
    std::array<std::array<double, outcomes>, most> parts; // filled only as far as it is read
    for (std::size_t i = 0; i < count_; ++i) {
      double whole = 0;
      for (std::size_t o = 0; o < asked; ++o) whole += parts[i][o] = part(*tallies_[i], o);
      for (std::size_t o = 0; o < asked; ++o) parts[i][o] *= whole > 0 ? share_[i] / whole : 0;
    }
    // entropy of the formats, given the outcome: the sum of x log(sum) - x log(x)
    double after = 0, settled = 0;
    for (std::size_t o = 0; o < asked; ++o) {
      double here = 0, likeliest = 0;
      for (std::size_t i = 0; i < count_; ++i) {
        here += parts[i][o];
        if (parts[i][o] > likeliest) likeliest = parts[i][o];
      }
      constexpr double hardly_ever = 1e-5; // not worth a logarithm
      if (!(here > hardly_ever)) continue;
      if (likeliest > 0.95 * here) settled += here;
      after -= entropy_part(here);
      for (std::size_t i = 0; i < count_; ++i) after += entropy_part(parts[i][o]);
    }
    return {before_ - after, settled};
  }
};

/// Returns the expectation for the year: the size is weighed again with the formats and the paper of years over the
/// whole range.
inline Expectation expect_of_year(Look const& look, Weigher const& weigher, PaperModel const& model,
                                  LeafEvidence const& seen) {
  auto const years = model.sampled(seen.place, seen.year);
  Tally const* last = nullptr;
  std::array<double, population_count> sizes{};
  return look.expect(years.size(), [&](Tally const& tally, std::size_t o) {
    if (&tally != last) sizes = weigher.sizes(*tally.kind), last = &tally;
    auto const& paper = years[o].papers[format_group(tally.kind->leaves)];
    double size = 0;
    for (std::size_t k = 0; k < population_count; ++k) size += paper[k] * sizes[k];
    return years[o].books * years[o].formats[tally.kind->ranked] * size;
  });
}

/// Returns what to look at next, or no value if no look is worth its effort.
inline std::optional<EvidenceKind> look_next(Tallies const& tallies, Weigher const& weigher, PaperModel const& model,
                                             Counted const& counted, std::size_t reading) {
  constexpr double worth_it = 0.01;
  Look const look{tallies, reading};
  std::optional<EvidenceKind> next;
  double most = 0;
  if (look.before() < worth_it) return next;
  auto const consider = [&](EvidenceRow const& row, Expectation const& expected) {
    if (expected.learnt < worth_it * row.cost) return;
    auto const worth = expected.worth(look.before(), row.cost);
    if (worth > most) most = worth, next = row.kind;
  };
  auto const& seen = counted.seen;
  // the cheap ones first: what they promise makes the dear ones not worth asking
  for (auto const kind : {EvidenceKind::gathering, EvidenceKind::chain_lines, EvidenceKind::type_page,
                          EvidenceKind::year, EvidenceKind::watermark, EvidenceKind::point_hole}) {
    auto const& row = row_of(kind);
    if (row.seen(counted) || Expectation::most / row.cost <= most) continue;
    if (kind == EvidenceKind::year) {
      consider(row, expect_of_year(look, weigher, model, seen));
      continue;
    }
    bool const of_one_leaf = kind == EvidenceKind::chain_lines || kind == EvidenceKind::watermark;
    if (of_one_leaf && (!counted.of_paper || counted.leaves)) continue;
    if (kind == EvidenceKind::chain_lines && seen.material == Material::wove) continue;
    if (kind == EvidenceKind::point_hole && !counted.of_paper) continue;
    auto const& schemes = scheme_facts();
    auto const expected = look.expect(static_cast<std::size_t>(row.outcomes), [&](Tally const& t, std::size_t o) {
      auto const double_paper = t.together[reading] > 0 ? t.twofold / t.together[reading] : 0;
      Case one{counted, *t.kind, schemes[t.scheme], double_paper > 0.5, weigher.log_height(t)};
      auto const likely = row.of_outcome(one, static_cast<int>(o));
      if (!row.by_mould || double_paper < 0.02 || double_paper > 0.98) return likely;
      one.twofold = !one.twofold;
      auto const other = row.of_outcome(one, static_cast<int>(o));
      return one.twofold ? (1 - double_paper) * likely + double_paper * other
                         : double_paper * likely + (1 - double_paper) * other;
    });
    consider(row, expected);
  }
  return next;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
