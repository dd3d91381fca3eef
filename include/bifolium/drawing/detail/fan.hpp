// SPDX-License-Identifier: MIT
/// The paths of the leaves of a gathering that stands on its spine and opens like a fan: the tips in a row along a
/// shallow arc, the folds one inside another at the gutter. A pair that was inserted beside the middle has its fold
/// between the leaves where it was inserted. Lengths are in mm. The first leaf is on the left, and the picture is not
/// yet placed on its page.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/drawing/svg.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A curve from the fold to the fore-edge of a leaf: a cubic Bézier curve.
struct Bend {
  Spot fold{}, rise{}, lean{}, tip{};
  /// Returns the point at fraction `t` of the curve, 0 to 1.
  [[nodiscard]] Spot at(double t) const {
    auto const u = 1 - t;
    auto const a = u * u * u, b = 3 * u * u * t, c = 3 * u * t * t, d = t * t * t;
    return {a * fold.x + b * rise.x + c * lean.x + d * tip.x, a * fold.y + b * rise.y + c * lean.y + d * tip.y};
  }
  /// Returns the point at `t`, moved at right angles to the curve: to the right in the direction from fold to tip, or
  /// to the left if `off` is less than 0.
  [[nodiscard]] Spot beside(double t, double off) const {
    auto const here = at(t), before = at(t > 0.99 ? 0.98 : t), after = at(t > 0.99 ? 1 : t + 0.02);
    auto const dx = after.x - before.x, dy = after.y - before.y;
    auto const tall = dy < 0 ? -dy : dy, wide = dx < 0 ? -dx : dx;
    // The length of (dx, dy) within a few per cent, without a square root: it only decides how thick a blade is.
    auto const length = (tall > wide ? 0.96 * tall + 0.4 * wide : 0.96 * wide + 0.4 * tall) + 1e-6;
    return {here.x - dy / length * off, here.y + dx / length * off};
  }
};

/// The words above a leaf. They have a line of their own if they would overlap those of the following leaves.
struct Flag {
  int leaf{}, level{};
  std::string words{};
  double room{};
};

/// The fan of leaves. `mates` has for each leaf the index of the leaf to which it is joined, if it is joined to one.
class Fan {
  std::vector<std::optional<int>> mates_;
  std::vector<int> depth_{};
  std::vector<Spot> fold_{};
  double apart_{}, middle_{}, top_{}, droop_{}, tall_{}, deepest_{};
  static constexpr double fold_apart = 2.2;

  [[nodiscard]] int count() const { return static_cast<int>(mates_.size()); }
  [[nodiscard]] static std::size_t index(int i) { return static_cast<std::size_t>(i); }

  /// Returns the curve from the gutter to a place among the tips, which may be between two leaves.
  [[nodiscard]] Bend from_gutter(double place, int depth) const {
    Spot const tip{(place + 0.5) * apart_, tip_height(place)};
    Spot const fold{middle_, floor() - 1 - fold_apart * depth};
    auto const high = fold.y - tip.y;
    return {fold,
            {fold.x + (tip.x - fold.x) * 0.2, fold.y - high * 0.26},
            {fold.x + (tip.x - fold.x) * 0.72, fold.y - high * 0.72},
            tip};
  }
  [[nodiscard]] double tip_height(double place) const {
    auto const off = count() < 2 ? 0 : ((place + 0.5) * apart_ - middle_) / (count() * apart_ / 2);
    return top_ + droop_ * off * off;
  }
  /// Returns the number of leaves between a joined leaf and its mate. The pair with most leaves between is at the gutter.
  [[nodiscard]] int within(int i) const { return *mates_[index(i)] - i - 1; }

  /// Sets the folds of the pairs of one nest, from `from` up to `end`. The largest pair has its fold on the gutter of
  /// its nest.
  void lay_folds(int from, int end, int depth, bool at_gutter) {
    int largest = -1;
    for (int i = from; i < end; ++i)
      if (mates_[index(i)] > i) {
        if (largest < 0 || within(i) >= within(largest)) largest = i;
        i = *mates_[index(i)];
      }
    for (int i = from; i < end; ++i) {
      auto const mate = mates_[index(i)];
      depth_[index(i)] = depth;
      if (!mate || *mate <= i) continue;
      bool const main = at_gutter && i == largest;
      depth_[index(*mate)] = depth;
      fold_[index(i)] = fold_[index(*mate)] =
          main ? from_gutter(i, depth).at(0) : from_gutter((i + *mate) / 2.0, depth).at(0.3);
      lay_folds(i + 1, *mate, depth + 1, main);
      i = *mate;
    }
    if (depth > deepest_) deepest_ = depth;
  }

public:
  Fan(std::vector<std::optional<int>> mates, double broadest)
      : mates_{static_cast<std::vector<std::optional<int>>&&>(mates)}, depth_(mates_.size()), fold_(mates_.size()) {
    auto const fit = count() == 0 ? 18.0 : 230.0 / count(), wanted = fit < 18 ? fit : 18;
    apart_ = broadest + 2 > wanted ? broadest + 2 : wanted;
    middle_ = count() * apart_ / 2;
    droop_ = count() < 3 ? 2 : 14;
    lay();
  }
  void lay() {
    tall_ = 62 + fold_apart * count() / 2.0;
    lay_folds(0, count(), 0, true);
  }
  /// Moves the fan so that the highest tip is at this distance from the top.
  void move_down(double top) { top_ = top, lay(); }

  [[nodiscard]] double width() const { return count() * apart_; }
  [[nodiscard]] double crown() const { return top_; }
  /// Returns the position of the table on which it stands.
  [[nodiscard]] double floor() const { return top_ + droop_ + tall_ + 2; }
  [[nodiscard]] Spot tip(int i) const { return {(i + 0.5) * apart_, tip_height(i)}; }
  [[nodiscard]] Bend bend(int i) const {
    if (!mates_[index(i)]) return from_gutter(i, depth_[index(i)]);
    auto bend = from_gutter(i, depth_[index(i)]);
    auto const fold = fold_[index(i)];
    auto const high = fold.y - bend.tip.y, aside = bend.tip.x - fold.x;
    return {
        fold, {fold.x + aside * 0.2, fold.y - high * 0.26}, {fold.x + aside * 0.72, fold.y - high * 0.72}, bend.tip};
  }
  /// Returns the stub of a leaf, which leans a little towards the middle of the gathering.
  [[nodiscard]] Bend flap(int i) const {
    auto bend = this->bend(i);
    auto const aside = bend.tip.x < middle_ ? apart_ * 0.42 : -apart_ * 0.42;
    bend.rise.x += aside * 0.35, bend.lean.x += aside, bend.tip.x += aside;
    return bend;
  }
  /// Gives each flag a line on which it overlaps no other, from the last leaf to the first. Returns the number of
  /// lines.
  [[nodiscard]] int raise(std::vector<Flag>& flags) const {
    int levels = 0;
    for (std::size_t k = 0; k < flags.size(); ++k) {
      for (std::size_t other = 0; other < k; ++other)
        if (tip(flags[k].leaf).x + flags[k].room > tip(flags[other].leaf).x - 2 && flags[k].level <= flags[other].level)
          flags[k].level = flags[other].level + 1;
      levels = flags[k].level + 1 > levels ? flags[k].level + 1 : levels;
    }
    return levels;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
