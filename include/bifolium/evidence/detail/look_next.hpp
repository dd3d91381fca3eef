// SPDX-License-Identifier: MIT
/// Chooses what to look at next: of the evidence not yet seen, the kind that is most likely to decide the format in
/// relation to its effort, computed with the model that ranks. For each possible outcome, each format gives a
/// probability. The value of a look is the probability that it leaves one format above .95, plus a quarter of the
/// average decrease of the uncertainty over formats (the entropy). A mark may tell most, but to find one takes a dozen
/// leaves held against the light; the signatures can be read as soon as the book is open.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
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

  [[gnu::noinline]] static double entropy_part(double p) { return p > 1e-9 ? -p * real::quick_log(p) : 0; }

public:
  /// For each format the probabilities of the outcomes, in any unit that is the same for all outcomes of a format.
  using Parts = std::array<std::array<double, outcomes>, most>;

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
  /// Returns the formats.
  [[nodiscard]] std::span<Tally const* const> formats() const { return {tallies_.data(), count_}; }
  /// Returns the entropy before the look, in natural units.
  [[nodiscard]] double before() const { return before_; }
  /// Returns what is expected of a look with so many outcomes, which divide the probability of each format.
  [[nodiscard, gnu::noinline]] Expectation expect(std::size_t asked, Parts& parts) const {
    for (std::size_t i = 0; i < count_; ++i) {
      double whole = 0;
      for (std::size_t o = 0; o < asked; ++o) whole += parts[i][o];
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
inline Expectation expect_of_year(Look const& look, OnPaper const& paper, PaperModel const& model,
                                  LeafEvidence const& seen) {
  auto const years = model.sampled(seen.place, seen.year);
  Look::Parts parts; // filled only as far as it is read
  for (std::size_t i = 0; i < look.formats().size(); ++i) {
    auto const& kind = *look.formats()[i]->kind;
    auto const sizes = paper.sizes(kind);
    for (std::size_t o = 0; o < years.size(); ++o) {
      auto const& on_each = years[o].papers[kind.group];
      double size = 0;
      for (std::size_t k = 0; k < population_count; ++k) size += on_each[k] * sizes[k];
      parts[i][o] = years[o].books * years[o].formats[kind.ranked] * size;
    }
  }
  return look.expect(years.size(), parts);
}
/// Returns the expectation for a kind of evidence whose outcomes its row knows.
inline Expectation expect_of(EvidenceRow const& row, Look const& look, OnPaper const& paper, Counted const& counted,
                             std::size_t reading) {
  auto const asked = static_cast<std::size_t>(row.outcomes);
  Look::Parts parts; // filled only as far as it is read
  for (std::size_t i = 0; i < look.formats().size(); ++i) {
    auto const& tally = *look.formats()[i];
    auto const of_double = tally.together[reading] > 0 ? tally.twofold / tally.together[reading] : 0;
    bool const both_papers = row.by_mould != nullptr && row.by_mould(counted) && of_double >= 0.02 && of_double <= 0.98;
    Case one{counted, *tally.kind, scheme_facts()[tally.scheme], of_double > 0.5,
             paper.log_height(*tally.kind, tally.paper)};
    Case other{one};
    other.twofold = !one.twofold;
    auto const of_one = one.twofold ? of_double : 1 - of_double;
    for (std::size_t o = 0; o < asked; ++o) {
      auto const outcome = static_cast<int>(o);
      parts[i][o] = row.of_outcome(one, outcome);
      if (both_papers) parts[i][o] = of_one * parts[i][o] + (1 - of_one) * row.of_outcome(other, outcome);
    }
  }
  return look.expect(asked, parts);
}

/// Returns the kinds of evidence that may be suggested, the cheap ones first.
inline auto kinds_by_cost() {
  constexpr auto count = [] {
    std::size_t n = 0;
    for (auto const& row : evidence_rows) n += row.outcomes > 0 ? 1 : 0;
    return n;
  };
  std::array<EvidenceKind, count()> kinds{};
  std::size_t n = 0;
  for (auto const& row : evidence_rows)
    if (row.outcomes > 0) kinds[n++] = row.kind;
  insertion_sort(kinds, [](EvidenceKind a, EvidenceKind b) { return row_of(a).cost < row_of(b).cost; });
  return kinds;
}

/// Returns what to look at next, or no value if no look is worth its effort.
inline std::optional<EvidenceKind> look_next(Tallies const& tallies, OnPaper const& paper, PaperModel const& model,
                                             Counted const& counted, std::size_t reading) {
  constexpr double worth_it = 0.01;
  static auto const by_cost = kinds_by_cost();
  Look const look{tallies, reading};
  std::optional<EvidenceKind> next;
  double most = 0;
  if (look.before() < worth_it) return next;
  for (auto const kind : by_cost) { // what the cheap ones promise makes the dear ones not worth asking
    auto const& row = row_of(kind);
    if (row.seen(counted) || !row.to_be_seen(counted) || Expectation::most / row.cost <= most) continue;
    auto const expected = kind == EvidenceKind::year ? expect_of_year(look, paper, model, counted.seen)
                                                     : expect_of(row, look, paper, counted, reading);
    if (expected.learnt < worth_it * row.cost) continue;
    auto const worth = expected.worth(look.before(), row.cost);
    if (worth > most) most = worth, next = row.kind;
  }
  return next;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
