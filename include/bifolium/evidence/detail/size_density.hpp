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
  struct Cubic {
    double constant, linear, square, cube;
  };
  Cubic cubics_[per_unit * end];

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
    return cubic.constant + x * (cubic.linear + x * (cubic.square + x * cubic.cube));
  }
};
[[gnu::noinline]] inline NormalTail const& normal_tail() {
  static NormalTail const table;
  return table;
}

/// What binders take from leaves in one state: further loss falls off by e for every 1/`tail` of the logarithm, but for
/// a share of copies, `cropped`, of which it does so for every 1/`cropped_tail`. They count where both sides are known;
/// one side alone cannot tell a cropped leaf from one of a smaller sheet.
struct LossLaw {
  double tail{}, cropped{}, cropped_tail{};
};

/// Room for the sheets of which a population is asked at once: a leaf implies one for each kind of leaf.
inline constexpr std::size_t sheets_at_once = 22;
/// A number for each of these sheets.
using EachSheet = double[sheets_at_once];

/// Sheets of which the sides are known, as the logarithms of them.
struct BothSides {
  EachSheet log_long, log_short;
};
/// Sheets of which one side is known, or two bounds of it.
struct OneSide {
  std::uint8_t side[sheets_at_once]; ///< 0 the long one, 1 the short one
  EachSheet length;                  ///< its logarithm, or that of the upper bound
  EachSheet low;                     ///< that of the lower bound
  double fall;                       ///< exp(-tail (length - low)), the same for all of them
};
/// The sheets that a population may have, by their numbers, and how likely they are. All others hardly ever occur.
struct NearSheets {
  std::size_t count{};
  std::uint8_t number[sheets_at_once];
  EachSheet density;

  void add(std::size_t i, double of_sheet) {
    number[count] = static_cast<std::uint8_t>(i);
    density[count++] = of_sheet;
  }
};

/// One population. All lengths are natural logarithms. It is asked of many sheets at once: how far each is from it is
/// computed for two of them at a time, and most are too far to ask further.
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
    double variance, spread, per_spread;
  };
  /// The losses of one kind: how far from the middle they start, in spreads of the size, and their part of the density.
  struct Tail {
    double reach, part;
  };
  NormalTail const* beyond_;
  double mean_[2];
  Side side_[2];                   // long, short
  double shape_, of_shape_;        // its mean, and -1/2 over its variance
  double by_long_, by_short_, at_; // size in its spreads: what each side adds, and what the mean has
  double root_, peak_;             // spread of the size

  static constexpr double all_but_1e_12 = 7; // spreads of the bell curve
  static double exp(double x) { return x < hardly_ever ? 0 : real::quick_exp(x); }
  /// By a call: a side between two bounds is asked less often, and then its code counts.
  [[gnu::noinline]] static double exp_for_side(double x) { return real::quick_exp(x); }

  /// exp(exponent) times the normal distribution up to z, where exponent - z²/2 is `bell`. `of_bell`: exp(bell).
  [[nodiscard]] double up_to(double z, double bell, double of_bell) const {
    constexpr double all_but_1e_9 = 6;
    auto const beyond = of_bell > 0 && z <= all_but_1e_9 ? of_bell * (*beyond_)(real::abs(z)) : 0;
    return z < 0 ? beyond : exp(bell + 0.5 * z * z) - beyond;
  }
  /// By a call: of one side alone it is asked less often, and then its code counts.
  [[nodiscard, gnu::noinline]] double side_up_to(double z, double bell) const { return up_to(z, bell, exp(bell)); }
  /// How likely a side is shorter than `x` from its mean. `of_tail`: what the tail alone gives there.
  [[nodiscard, gnu::noinline]] double up_to_end(double x, double bend, Side const& of, double of_tail) const {
    auto const u = x * of.per_spread, bell = -0.5 * u * u;
    auto const here = bell < hardly_ever ? 0 : exp_for_side(bell);
    auto const z = u - bend * of.per_spread; // the tail's own measure, less than 0 below the bend
    auto const of_u = here * (*beyond_)(real::abs(u)), of_z = here * (*beyond_)(real::abs(z));
    return (u > 0 ? 1 - of_u : of_u) + (z > 0 ? of_z : of_tail - of_z);
  }
  static Side side_of(double variance) {
    auto const spread = real::sqrt(variance);
    return {variance, spread, 1 / spread};
  }

  /// What tells how far sheets are from the population.
  struct Away {
    EachSheet bell; ///< exponent of the bell curve
    EachSheet size; ///< in its spreads
    EachSheet most; ///< no less than the exponent of the density
  };
  /// `reach`: how far the longer tail starts from the middle.
  void find_away(BothSides const& sheets, double reach, Away& away) const {
    auto const shape = shape_, of_shape = of_shape_, by_long = by_long_, by_short = by_short_, at = at_;
    for (std::size_t i = 0; i < sheets_at_once; ++i) {
      auto const apart = sheets.log_long[i] - sheets.log_short[i] - shape;
      auto const size = by_long * sheets.log_long[i] + by_short * sheets.log_short[i] - at;
      auto const bell = of_shape * apart * apart - 0.5 * size * size;
      auto const lost = size + reach, beyond = lost - real::abs(lost); // 0, or twice what is lost
      away.bell[i] = bell, away.size[i] = size, away.most[i] = bell + 0.125 * beyond * beyond; // by the longer tail
    }
  }

public:
  SheetDensity() = default;
  /// Precondition: the covariance is of a distribution.
  [[gnu::cold]] SheetDensity(double log_long, double log_short, double long_variance, double covariance,
                             double short_variance)
      : beyond_{&normal_tail()}, mean_{log_long, log_short}, side_{side_of(long_variance), side_of(short_variance)},
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

  /// Finds the first `count` sheets near it.
  [[gnu::noinline]] void of_both(BothSides const& sheets, std::size_t count, LossLaw const& loss,
                                 NearSheets& found) const {
    Tail const tails[]{{loss.cropped_tail * root_, peak_ * loss.cropped_tail * loss.cropped},
                       {loss.tail * root_, peak_ * loss.tail * (1 - loss.cropped)}};
    auto const* const first = loss.cropped > 0 ? tails : tails + 1;
    Away away;
    find_away(sheets, tails[0].reach, away);
    found.count = 0;
    for (std::size_t i = 0; i < count; ++i) {
      if (away.most[i] < hardly_ever) continue;
      auto const bell = away.bell[i], of_bell = exp(bell);
      double density = 0;
      for (auto const* tail = first; tail != std::end(tails); ++tail)
        density += tail->part * up_to(-away.size[i] - tail->reach, bell, of_bell);
      found.add(i, density);
    }
  }
  /// Finds the first `count` sheets of which one side is near it.
  [[gnu::noinline]] void of_side(OneSide const& sheets, std::size_t count, LossLaw const& loss,
                                 NearSheets& found) const {
    found.count = 0;
    for (std::size_t i = 0; i < count; ++i) {
      auto const& of = side_[sheets.side[i]];
      auto const x = (sheets.length[i] - mean_[sheets.side[i]]) * of.per_spread, bell = -0.5 * x * x;
      if (x > all_but_1e_12) continue;
      found.add(i, loss.tail * side_up_to(-x - loss.tail * of.spread, bell));
    }
  }
  /// The same for two bounds of the side.
  [[gnu::noinline]] void of_side_between(OneSide const& sheets, std::size_t count, LossLaw const& loss,
                                         NearSheets& found) const {
    found.count = 0;
    for (std::size_t i = 0; i < count; ++i) {
      auto const side = sheets.side[i];
      auto const& of = side_[side];
      auto const low = sheets.low[i] - mean_[side], high = sheets.length[i] - mean_[side];
      auto const bend = -loss.tail * of.variance;
      if (low > all_but_1e_12 * of.spread) continue;
      // below the bend, what the tail alone gives; the same at both ends but for the fall
      auto const at_high = low < bend ? exp_for_side(loss.tail * (high - bend / 2)) : 0;
      if (high < bend - all_but_1e_12 * of.spread) { // far down the tail, where the bell is over
        found.add(i, at_high * (1 - sheets.fall));
        continue;
      }
      auto const between = up_to_end(high, bend, of, at_high) - up_to_end(low, bend, of, at_high * sheets.fall);
      found.add(i, between > 0 ? between : 0);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
