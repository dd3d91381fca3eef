// SPDX-License-Identifier: MIT
/// The probability density of the sides of the sheet that a leaf implies, if it comes from one population of sheets.
/// The logarithms of the sides have a normal distribution with correlation. A binder then removes something, as much of
/// the height as of the width, with an exponential distribution on one side. The sum of the two has a closed form: the
/// density falls like a normal distribution above the sheet, and slowly below it.
#pragma once

#include <bifolium/core/real.hpp>

#include <array>
#include <cstddef>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// `exp(u²/2)` times the tail of the normal distribution beyond `u`, for u >= 0. It is a table of cubics, each with the
/// right values and slopes at both ends (the slope is `u` times the value less the density at 0). It is right to seven
/// digits; a test compares it with Boost.Math.
class NormalTail {
  static constexpr std::size_t per_unit = 16, end = 12;
  static constexpr double density_at_0 = 0.398942280401432677939946;
  std::array<std::array<double, 4>, per_unit * end> cubics_{};

public:
  [[gnu::cold, gnu::noinline]] NormalTail() {
    constexpr double step = 1.0 / per_unit, root_half = 0.70710678118654752440;
    auto const value = [](double u) { return 0.5 * real::exp(u * u / 2) * real::erfc(u * root_half); };
    auto const slope = [](double u, double here) { return step * (u * here - density_at_0); };
    double from = 0, a = value(0);
    for (auto& cubic : cubics_) {
      auto const to = from + step, b = value(to), at_a = slope(from, a), at_b = slope(to, b);
      cubic = {a, at_a, 3 * (b - a) - 2 * at_a - at_b, 2 * (a - b) + at_a + at_b};
      from = to, a = b;
    }
  }
  [[nodiscard]] double operator()(double u) const {
    if (!(u < end)) return density_at_0 / u * (1 - 1 / (u * u)); // the first terms of its series
    auto const at = static_cast<int>(u * per_unit);
    auto const& cubic = cubics_[static_cast<std::size_t>(at)];
    auto const x = u * per_unit - at;
    return cubic[0] + x * (cubic[1] + x * (cubic[2] + x * cubic[3]));
  }
};
inline NormalTail const& normal_tail() {
  static NormalTail const table;
  return table;
}

/// What binders take from leaves in one state: further loss falls off by e for every 1/`tail` of the logarithm, but for
/// a share of copies, `cropped`, of which it does so for every 1/`cropped_tail`. They count where both sides are known;
/// one side alone cannot tell a cropped leaf from one of a smaller sheet.
struct LossLaw {
  double tail{}, cropped{}, cropped_tail{};
};

template <std::size_t count> class SheetsSideBySide;

/// One population. All lengths are natural logarithms.
///
/// Two numbers of a sheet tell how likely it is: how far its shape is from that of the population, which no loss
/// changes since both sides lose alike, and how far its size is, along which the loss runs. The bell curve of two sides
/// is the product of one for the shape and one for the size.
class SheetDensity {
public:
  /// The exponential of this or less counts as 0.
  static constexpr double hardly_ever = -24;

private:
  struct Side {
    double variance, spread;
  };
  NormalTail const* beyond_{};
  std::array<double, 2> mean_{};
  std::array<Side, 2> side_{};           // long, short
  double shape_{}, of_shape_{};          // its mean, and -1/2 over its variance
  double by_long_{}, by_short_{}, at_{}; // size in its spreads: what each side adds, and what the mean has
  double root_{}, peak_{};               // spread of the size

  template <std::size_t count> friend class SheetsSideBySide;
  static constexpr double all_but_1e_12 = 7; // spreads of the bell curve
  static double exp(double x) { return x < hardly_ever ? 0 : real::quick_exp(x); }
  /// Does what `exp` does by a call: a side alone is asked less often, and then its code counts.
  [[gnu::noinline]] static double exp_for_side(double x) { return real::quick_exp(x); }
  /// exp(exponent) times the normal distribution up to z, where exponent - z²/2 is `bell`. `of_bell`: exp(bell).
  [[nodiscard]] double up_to(double z, double bell, double of_bell) const {
    constexpr double all_but_1e_9 = 6;
    if (z < 0) return of_bell * (*beyond_)(-z);
    auto const all = exp(bell + z * z / 2);
    return z > all_but_1e_9 ? all : all - of_bell * (*beyond_)(z);
  }

  /// What tells how far a sheet is from a population. `reach`: how far the longer tail starts from the middle.
  struct Middle {
    double shape, of_shape, by_long, by_short, at, reach;
  };
  /// The exponent of the bell curve, the size in its spreads, and no less than the exponent of the density.
  struct Away {
    double bell, size, most;
  };
  struct Sides {
    double log_long, log_short;
  };
  static Away away(Sides const& sheet, Middle const& middle) {
    auto const apart = sheet.log_long - sheet.log_short - middle.shape;
    auto const size = middle.by_long * sheet.log_long + middle.by_short * sheet.log_short - middle.at;
    auto const bell = middle.of_shape * apart * apart - size * size / 2;
    auto const lost = -size - middle.reach;
    auto const beyond = lost + real::abs(lost); // twice what is lost, or 0: the longer tail makes so much of it
    return {bell, size, bell + beyond * beyond / 8};
  }
  [[nodiscard, gnu::noinline]] double of_both_near(double bell, double size, LossLaw const& loss) const {
    auto const of_bell = exp(bell);
    auto const usual = loss.tail * up_to(-size - loss.tail * root_, bell, of_bell);
    if (!(loss.cropped > 0)) return peak_ * usual;
    auto const cropped = loss.cropped_tail * up_to(-size - loss.cropped_tail * root_, bell, of_bell);
    return peak_ * ((1 - loss.cropped) * usual + loss.cropped * cropped);
  }

public:
  SheetDensity() = default;
  /// Precondition: the covariance is of a distribution.
  [[gnu::cold]] SheetDensity(double log_long, double log_short, double long_variance, double covariance,
                             double short_variance)
      : beyond_{&normal_tail()}, mean_{log_long, log_short}, side_{Side{long_variance, real::sqrt(long_variance)},
                                                                   Side{short_variance, real::sqrt(short_variance)}},
        shape_{log_long - log_short}, of_shape_{-0.5 / (long_variance - 2 * covariance + short_variance)} {
    constexpr double two_pi = 6.28318530717958647692;
    auto const determinant = long_variance * short_variance - covariance * covariance;
    auto const a = short_variance / determinant, b = -covariance / determinant, c = long_variance / determinant;
    auto const all = a + 2 * b + c; // the inverse of the covariance, added up
    root_ = 1 / real::sqrt(all);
    by_long_ = (a + b) * root_, by_short_ = (b + c) * root_;
    at_ = by_long_ * log_long + by_short_ * log_short;
    peak_ = 1 / real::sqrt(two_pi * determinant * all);
  }
  [[nodiscard]] double mean(std::size_t side) const { return mean_[side]; }
  [[nodiscard]] double variance(std::size_t side) const { return side_[side].variance; }

  /// Both sides measured. 0 for what hardly ever occurs.
  [[nodiscard]] double of_both(double log_long, double log_short, LossLaw const& loss) const {
    auto const it =
        away({log_long, log_short}, {shape_, of_shape_, by_long_, by_short_, at_, loss.cropped_tail * root_});
    return it.most < hardly_ever ? 0 : of_both_near(it.bell, it.size, loss);
  }
  /// One side measured: 0 the long one, 1 the short one.
  [[nodiscard]] double of_side(std::size_t side, double length, LossLaw const& loss) const {
    auto const& of = side_[side];
    auto const x = length - mean_[side], bell = -0.5 * x * x / of.variance;
    if (x > all_but_1e_12 * of.spread) return 0;
    return loss.tail *
           up_to(-(x + loss.tail * of.variance) / of.spread, bell, bell < hardly_ever ? 0 : exp_for_side(bell));
  }
  /// One side of which two bounds are known. `fall`: exp(-tail (to - from)), the same for all populations.
  [[nodiscard]] double side_between(std::size_t side, double from, double to, double fall, LossLaw const& loss) const {
    auto const& of = side_[side];
    auto const low = from - mean_[side], high = to - mean_[side], bend = -loss.tail * of.variance;
    if (low > all_but_1e_12 * of.spread) return 0;
    // below the bend, what the tail alone gives; the same at both ends but for the fall
    auto const at_high = low < bend ? exp_for_side(loss.tail * (high - bend / 2)) : 0;
    if (high < bend - all_but_1e_12 * of.spread)
      return at_high * (1 - fall); // far down the tail, where the bell is over
    auto const up_to_end = [&](double x, double tail_here) {
      auto const u = x / of.spread, bell = -0.5 * u * u;
      auto const here = bell < hardly_ever ? 0 : exp_for_side(bell);
      auto const z = u - bend / of.spread; // the tail's own measure, less than 0 below the bend
      auto const of_tail = z > 0 ? here * (*beyond_)(z) : tail_here - here * (*beyond_)(-z);
      return (u > 0 ? 1 - here * (*beyond_)(u) : here * (*beyond_)(-u)) + of_tail;
    };
    auto const between = up_to_end(high, at_high) - up_to_end(low, at_high * fall);
    return between > 0 ? between : 0;
  }
};

/// Several populations side by side, for leaves of which both sides are known: how far a sheet is from each is computed
/// for two of them at once, and most are too far to ask further.
template <std::size_t count> class SheetsSideBySide {
  static constexpr std::size_t even = count + count % 2;
  using Row = std::array<double, even>;
  Row shape_{}, of_shape_{}, by_long_{}, by_short_{}, at_{}, reach_{};
  SheetDensity const* all_;
  LossLaw loss_;

public:
  /// Precondition: there are `count` densities.
  SheetsSideBySide(SheetDensity const* all, LossLaw const& loss) : all_{all}, loss_{loss} {
    for (std::size_t k = 0; k < count; ++k) {
      auto const& one = all[k];
      shape_[k] = one.shape_, of_shape_[k] = one.of_shape_, by_long_[k] = one.by_long_, by_short_[k] = one.by_short_;
      at_[k] = one.at_, reach_[k] = loss.cropped_tail * one.root_;
    }
  }
  /// Returns what `SheetDensity::of_both` returns for each.
  [[nodiscard]] std::array<double, count> of_both(double log_long, double log_short) const {
    Row bell, size, most;
    for (std::size_t k = 0; k < even; ++k) {
      auto const it = SheetDensity::away({log_long, log_short},
                                         {shape_[k], of_shape_[k], by_long_[k], by_short_[k], at_[k], reach_[k]});
      bell[k] = it.bell, size[k] = it.size, most[k] = it.most;
    }
    std::array<double, count> densities;
    for (std::size_t k = 0; k < count; ++k)
      densities[k] = most[k] < SheetDensity::hardly_ever ? 0 : all_[k].of_both_near(bell[k], size[k], loss_);
    return densities;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
