// SPDX-License-Identifier: MIT
/// How common gatherings of each size are in books of each format, early and late, on whole sheets and on sheets cut in
/// two.
#pragma once

#include <bifolium/evidence/detail/paper_counts.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The frequency of one kind of gatherings in books of each of `ranked_leaves`, early and late.
struct GatheringShares {
  int larger{}, smaller{};
  FormatShares early{}, late{};
  bool common{}; ///< true for an even number of leaves that is usual in some format

  /// On whole sheets, in one age.
  [[nodiscard]] double whole(std::size_t f, PaperAge const& age, EvidenceParameters const& p) const {
    return (common ? p.odd_gathering : p.odder_gathering) + 0.97 * (early[f] + age.late_make_up * (late[f] - early[f]));
  }
  /// On whole sheets and on sheets cut in two, on which it is as common as in a format of half as many leaves.
  [[nodiscard]] double all(LeafShape const& shape, PaperAge const& age, EvidenceParameters const& p) const {
    return (1 - p.cut_halves) * whole(shape.ranked, age, p) + p.cut_halves * whole(shape.ranked_half, age, p);
  }
};
[[gnu::cold]] inline GatheringShares find_gathering_shares(int larger, int smaller) {
  GatheringShares shares{larger, smaller};
  shares.common = smaller == 0 && larger % 2 == 0 && larger <= 16 && larger != 14;
  std::array<bool, ranked_leaves.size()> known_early{};
  for (auto const& row : paper_rows::gatherings) {
    auto const f = ranked_number(row.leaves);
    known_early[f] = known_early[f] || !row.late;
    if (row.larger == larger && row.smaller == smaller)
      (row.late ? shares.late : shares.early)[f] = static_cast<double>(row.share);
  }
  if (smaller > 0 && larger != 2 * smaller) // folios and quartos are quired unevenly, in sixes and eights by turns
    shares.late[ranked_number(2)] = shares.late[ranked_number(4)] = 0.04;
  for (std::size_t f = 0; f < shares.early.size(); ++f)
    if (!known_early[f]) shares.early[f] = shares.late[f];
  return shares;
}
/// Of gatherings of 1 leaf up to so many.
inline constexpr int most_gathered = 32;
using AllGatheringShares = std::array<GatheringShares, most_gathered>;
[[gnu::cold]] inline AllGatheringShares find_all_gathering_shares() {
  AllGatheringShares all;
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = find_gathering_shares(static_cast<int>(i + 1), 0);
  return all;
}
[[gnu::noinline]] inline AllGatheringShares const& all_gathering_shares() {
  static auto const all = find_all_gathering_shares();
  return all;
}

/// How likely the gathering that was seen is in each format.
class GatheringLikelihood {
  double whole_[ranked_leaves.size()]; // on whole sheets
  double cut_halves_;

  void ask(GatheringShares const& shares, PaperAge const& age, EvidenceParameters const& p) {
    for (std::size_t f = 0; f < ranked_leaves.size(); ++f) whole_[f] = shares.whole(f, age, p);
  }

public:
  GatheringLikelihood() {} // none was seen
  /// Of gatherings in so many leaves, or in two sizes by turns.
  GatheringLikelihood(int leaves, int other, PaperAge const& age, EvidenceParameters const& p)
      : cut_halves_{p.cut_halves} {
    auto const& of_one_size = all_gathering_shares();
    if (leaves == other && leaves <= most_gathered)
      ask(of_one_size[static_cast<std::size_t>(leaves - 1)], age, p);
    else if (leaves == other)
      ask(find_gathering_shares(leaves, 0), age, p);
    else
      ask(find_gathering_shares(leaves > other ? leaves : other, leaves > other ? other : leaves), age, p);
  }
  /// On sheets cut in two: as a format of half as many leaves is gathered.
  [[nodiscard]] double cut(LeafShape const& shape) const { return whole_[shape.ranked_half]; }
  [[nodiscard]] double all(LeafShape const& shape) const {
    return (1 - cut_halves_) * whole_[shape.ranked] + cut_halves_ * cut(shape);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
