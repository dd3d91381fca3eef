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

/// `exp(u²/2)` times the part of the normal distribution beyond `u`, for u >= 0: a table of its values, between which a
/// cubic runs through both values and both slopes (the slope is `u` times the value less the density at 0). Right to seven
/// digits; a test compares it with Boost.Math.
class NormalTail {
  static constexpr std::size_t per_unit = 16, end = 12;
  static constexpr double density_at_0 = 0.398942280401432677939946;
  std::array<double, per_unit * end + 1> values_{};

public:
  NormalTail() {
    constexpr double root_half = 0.70710678118654752440;
    for (std::size_t i = 0; i < values_.size(); ++i) {
      auto const u = static_cast<double>(i) / per_unit;
      values_[i] = 0.5 * real::exp(u * u / 2) * real::erfc(u * root_half);
    }
  }
  [[nodiscard]] double operator()(double u) const {
    if (!(u < end)) return density_at_0 / u * (1 - 1 / (u * u)); // the first terms of its series
    auto const at = static_cast<std::size_t>(u * per_unit);
    constexpr double step = 1.0 / per_unit;
    auto const start = static_cast<double>(at) * step, x = (u - start) * per_unit;
    auto const a = values_[at], b = values_[at + 1];
    auto const slope_a = step * (start * a - density_at_0), slope_b = step * ((start + step) * b - density_at_0);
    auto const c = 3 * (b - a) - 2 * slope_a - slope_b, d = 2 * (a - b) + slope_a + slope_b;
    return a + x * (slope_a + x * (c + x * d));
  }
};
inline NormalTail const& normal_tail() {
  static NormalTail const table;
  return table;
}

/// One population, made ready for the losses of one state of leaf. All lengths are natural logarithms; sides are counted
/// from the mean of the population.
class SheetDensity {
  struct Side {
    double variance, spread;
  };
  NormalTail const* beyond_{};
  std::array<double, 2> mean_{};
  std::array<Side, 2> side_{}; // long, short
  double a_{}, b_{}, c_{};     // of the inverse of the covariance
  double root_{}, peak_{}, tail_{};
  double cropped_{}, longer_{1};

  /// exp(exponent) times the normal distribution up to z, where exponent - z²/2 is `bell`.
  [[nodiscard, gnu::noinline]] double up_to(double z, double bell) const {
    if (z < 0) return real::exp(bell) * (*beyond_)(-z);
    return real::exp(bell + z * z / 2) - real::exp(bell) * (*beyond_)(z);
  }

public:
  SheetDensity() = default;
  /// `tail`: see `PaperModel::tail`. Precondition: the covariance is of a distribution.
  SheetDensity(double log_long, double log_short, double long_variance, double covariance, double short_variance,
               double tail)
      : beyond_{&normal_tail()}, mean_{log_long, log_short}, side_{Side{long_variance, real::sqrt(long_variance)},
                                                                   Side{short_variance, real::sqrt(short_variance)}},
        tail_{tail} {
    constexpr double two_pi = 6.28318530717958647692;
    auto const determinant = long_variance * short_variance - covariance * covariance;
    a_ = short_variance / determinant, b_ = -covariance / determinant, c_ = long_variance / determinant;
    auto const all = a_ + 2 * b_ + c_;
    root_ = 1 / real::sqrt(all);
    peak_ = tail / real::sqrt(two_pi * determinant * all);
  }
  /// Of copies of which nobody says so, a share has been cropped: their tail falls off only `longer` times as fast. It counts
  /// where both sides are known; one side alone cannot tell a cropped leaf from one of a smaller sheet.
  void crop(double share, double longer) { cropped_ = share, longer_ = longer; }
  [[nodiscard]] double mean(std::size_t side) const { return mean_[side]; }
  [[nodiscard]] double variance(std::size_t side) const { return side_[side].variance; }

  /// Both sides measured. 0 for what is less likely than e^-40.
  [[nodiscard]] double of_both(double log_long, double log_short) const {
    auto const x = log_long - mean_[0], y = log_short - mean_[1];
    auto const bell = -0.5 * (x * (a_ * x + 2 * b_ * y) + c_ * y * y);
    auto const z = -((a_ + b_) * x + (b_ + c_) * y + tail_) * root_;
    auto const cropped = z + (1 - longer_) * tail_ * root_; // as z, for the longer tail
    if (bell + (cropped > 0 ? cropped * cropped / 2 : 0) < -40) return 0;
    auto const usual = up_to(z, bell);
    return peak_ * (cropped_ > 0 ? (1 - cropped_) * usual + cropped_ * longer_ * up_to(cropped, bell) : usual);
  }
  /// One side measured: 0 the long one, 1 the short one.
  [[nodiscard]] double of_side(std::size_t side, double length) const {
    auto const& of = side_[side];
    auto const x = length - mean_[side];
    return tail_ * up_to(-(x + tail_ * of.variance) / of.spread, -0.5 * x * x / of.variance);
  }
  /// One side of which two bounds are known. `fall`: exp(-tail (to - from)), the same for all populations.
  [[nodiscard]] double side_between(std::size_t side, double from, double to, double fall) const {
    auto const& of = side_[side];
    auto const low = from - mean_[side], high = to - mean_[side], bend = -tail_ * of.variance;
    // below the bend, what the tail alone gives; the same at both ends but for the fall
    auto const at_high = low < bend ? real::exp(tail_ * (high - bend / 2)) : 0;
    auto const up_to_end = [&](double x, double tail_here) {
      auto const u = x / of.spread, bell = -0.5 * u * u;
      auto const here = bell < -40 ? 0 : real::exp(bell);
      auto const z = u - bend / of.spread; // the tail's own measure, less than 0 below the bend
      auto const of_tail = z > 0 ? here * (*beyond_)(z) : tail_here - here * (*beyond_)(-z);
      return (u > 0 ? 1 - here * (*beyond_)(u) : here * (*beyond_)(-u)) + of_tail;
    };
    auto const between = up_to_end(high, at_high) - up_to_end(low, at_high * fall);
    return between > 0 ? between : 0;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
