// SPDX-License-Identifier: MIT
/// What to look at next: of the signs not yet seen, the one from which most is expected to be learnt, by the same model
/// that ranks. For each outcome a sign may have it is asked how likely each format makes it; what is learnt is by how much
/// the uncertainty over formats (its entropy) shrinks on average, times the chance that the sign can be seen at all.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/scheme_likelihood.hpp>
#include <bifolium/evidence/detail/tally.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Formats still in play, and what is expected from a look.
class Look {
  std::array<Tally const*, 32> tallies_{};
  std::size_t count_{};
  double all_{}, before_{};

  static double entropy_part(double p) { return p > 0 ? -p * real::log(p) : 0; }

public:
  /// Formats below one in a thousand are passed over: all of them together change the entropy by less than what is
  /// worth a look.
  Look(Tallies const& tallies, std::size_t count) {
    double all = 0;
    for (std::size_t i = 0; i < count; ++i) all += tallies[i].together;
    for (std::size_t i = 0; i < count; ++i) {
      if (tallies[i].together < 0.001 * all) continue;
      tallies_[count_++] = &tallies[i];
      all_ += tallies[i].together;
    }
    for (std::size_t i = 0; i < count_; ++i) before_ += entropy_part(tallies_[i]->together / all_);
  }
  /// `part(tally, outcome)`: how likely the outcome is under the format, in any unit that is the same for all outcomes of
  /// a format; the outcomes share the format's probability out.
  template <class Part> [[nodiscard]] double learnt(std::size_t outcomes, Part part) const {
    constexpr std::size_t most = 16;
    std::array<std::array<double, most>, 32> parts; // filled as far as it is read
    for (std::size_t i = 0; i < count_; ++i) {
      double whole = 0;
      for (std::size_t o = 0; o < outcomes; ++o) whole += parts[i][o] = part(*tallies_[i], o);
      for (std::size_t o = 0; o < outcomes; ++o) parts[i][o] *= whole > 0 ? tallies_[i]->together / whole : 0;
    }
    double after = 0;
    for (std::size_t o = 0; o < outcomes; ++o) {
      double here = 0;
      for (std::size_t i = 0; i < count_; ++i) here += parts[i][o];
      for (std::size_t i = 0; i < count_ && here > 0; ++i) after += here / all_ * entropy_part(parts[i][o] / here);
    }
    return before_ - after;
  }
};

/// How much of the t density with seven degrees of freedom lies left of `x`, in units of its scale. A closed form, as for
/// all odd numbers of them (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3).
inline double left_of_type(double x) {
  static_assert(type_tails == 7);
  constexpr double pi = 3.14159265358979323846, root = 2.64575131106459059050; // of seven
  auto const tangent = x / root;                                               // of the angle in the formula
  auto const square = 1 / (1 + tangent * tangent);                             // of its cosine
  return 0.5 + (real::atan(tangent) + tangent * square * (1 + square * (2.0 / 3 + square * 8 / 15))) / pi;
}

/// What is to be looked at next; nothing when nothing would tell enough to be worth a walk to the shelf.
inline std::optional<EvidenceKind> look_next(Tallies const& tallies, std::size_t count, CountedSigns const& signs,
                                             bool early, EvidenceParameters const& parameters) {
  std::optional<EvidenceKind> next;
  double most = 0.01;
  Look const look{tallies, count};
  auto const consider = [&](EvidenceKind sign, double gain) {
    if (gain > most) most = gain, next = sign;
  };
  bool const paper = signs.of_paper();
  if (paper && signs.seen().material != Material::wove && !signs.has(EvidenceKind::chain_lines) &&
      !signs.has(EvidenceKind::leaves))
    consider(EvidenceKind::chain_lines, look.learnt(2, [](Tally const& t, std::size_t o) {
      return o == 0 ? t.vertical : t.together - t.vertical;
    }));
  if (signs.mark_open())
    consider(EvidenceKind::watermark, look.learnt(7, [](Tally const& t, std::size_t o) { return t.marks[o + 1]; }));
  if (!signs.has(EvidenceKind::gathering)) {
    constexpr int sizes[]{2, 4, 6, 8, 10, 12, 16, 18, 24};
    consider(EvidenceKind::gathering, look.learnt(9, [&](Tally const& t, std::size_t o) {
      return gathering_likelihood(*t.kind, sizes[o], {}, early, parameters);
    }));
  }
  if (!signs.has(EvidenceKind::type_page)) {
    // in steps of a tenth of the logarithm, from a quarter of the tallest leaf upwards
    auto const scale = real::sqrt(parameters.type_of_uncut_variance * (type_tails - 2) / type_tails);
    double tallest = -10;
    for (std::size_t i = 0; i < count; ++i) tallest = (std::max)(tallest, tallies[i].log_height);
    double left = 0; // of the step; steps are asked one after another
    consider(EvidenceKind::type_page, look.learnt(16, [&](Tally const& t, std::size_t o) {
      auto const x = tallest - 1.6 + 0.1 * static_cast<double>(o) - t.log_height - parameters.type_of_uncut;
      auto const before = o == 0 ? left_of_type(x / scale) : left;
      left = left_of_type((x + 0.1) / scale);
      return left - before + 1e-6;
    }));
  }
  if (paper && !signs.has(EvidenceKind::point_hole) && !signs.has(EvidenceKind::leaves))
    consider(EvidenceKind::point_hole, parameters.holes_visible * look.learnt(5, [&](Tally const& t, std::size_t o) {
      return hole_likelihood(scheme_facts()[static_cast<std::size_t>(t.kind->schemes.front())],
                             static_cast<HolePlace>(o + 1), parameters);
    }));
  return next;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
