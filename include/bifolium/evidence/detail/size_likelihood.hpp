// SPDX-License-Identifier: MIT
/// How likely the size of a leaf is, if it came of a given sheet: the uncut leaf by geometry, less what binders cut away.
/// The losses of height and width go together, and their tails are heavy: a multivariate t with six degrees of freedom,
/// whose powers are whole (4 in the plane, 3 1/2 on the line), so that no logarithm is taken of any sheet while ranking.
///
/// Losses are differences of natural logarithms: -0.1 is a tenth of the height gone, whatever the height. So the uncut
/// leaf is the sheet less the logarithm of how many parts its side is divided into, and a kind of leaf asks two hundred
/// sheets with additions and one division each.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/possible_sheets.hpp>
#include <bifolium/evidence/leaf_shape.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

constexpr double fourth_power(double x) { return x * x * (x * x); }

/// The density of a loss, made ready: `peak / base^4` in the plane, with `base = 1 + a x² + b xy + c y²` about the mean;
/// `peak / base^(7/2)` on the line, where only the height or only the width was measured.
class LossDensity {
  double height_, width_, a_, b_, c_, inverse_height_, inverse_width_;

public:
  double peak, peak_of_height, peak_of_width;

  explicit LossDensity(TrimModel const& trim) : height_{trim.height}, width_{trim.width} {
    constexpr double nu = trim_tails, two_pi = 6.28318530717958647692;
    constexpr double peak_of_line = 0.3827; // of the t density with six degrees of freedom
    auto const determinant = trim.height_variance * trim.width_variance - trim.covariance * trim.covariance;
    a_ = trim.width_variance / determinant / nu;
    b_ = -2 * trim.covariance / determinant / nu;
    c_ = trim.height_variance / determinant / nu;
    inverse_height_ = 1 / (nu * trim.height_variance);
    inverse_width_ = 1 / (nu * trim.width_variance);
    peak = 1 / (two_pi * real::sqrt(determinant));
    peak_of_height = peak_of_line / real::sqrt(trim.height_variance);
    peak_of_width = peak_of_line / real::sqrt(trim.width_variance);
  }
  [[nodiscard]] double base(double height, double width) const {
    auto const x = height - height_, y = width - width_;
    return 1 + x * (a_ * x + b_ * y) + c_ * y * y;
  }
  [[nodiscard]] double base_of_height(double height) const {
    auto const x = height - height_;
    return 1 + x * x * inverse_height_;
  }
  [[nodiscard]] double base_of_width(double width) const {
    auto const y = width - width_;
    return 1 + y * y * inverse_width_;
  }
};

/// What copies of one description have lost: one density, the same on every sheet.
struct OneLoss {
  static constexpr bool by_kind = false; // whether it depends on the kind of leaf
  LossDensity loss;
  [[nodiscard]] double of_both(std::size_t, double h, double w) const {
    return loss.peak / fourth_power(loss.base(h, w));
  }
  [[nodiscard]] double of_height(std::size_t, double h) const {
    auto const base = loss.base_of_height(h);
    return loss.peak_of_height * real::sqrt(base) / fourth_power(base);
  }
  [[nodiscard]] double of_width(std::size_t, double w) const {
    auto const base = loss.base_of_width(w);
    return loss.peak_of_width * real::sqrt(base) / fourth_power(base);
  }
};
/// A mixture of two densities, one for the share of copies that were cropped and nobody said so. The two fractions are
/// brought to one, since a division costs as much as all the rest.
struct MixedLoss {
  static constexpr bool by_kind = false;
  LossDensity usual, cropped;
  double share; ///< of the cropped, 0 to 1
  [[nodiscard]] double of_both(std::size_t, double h, double w) const {
    return fraction(usual.peak, fourth_power(usual.base(h, w)), cropped.peak, fourth_power(cropped.base(h, w)));
  }
  [[nodiscard]] double of_height(std::size_t, double h) const {
    auto const p = usual.base_of_height(h), q = cropped.base_of_height(h);
    return fraction(usual.peak_of_height * real::sqrt(p), fourth_power(p), cropped.peak_of_height * real::sqrt(q),
                    fourth_power(q));
  }
  [[nodiscard]] double of_width(std::size_t, double w) const {
    auto const p = usual.base_of_width(w), q = cropped.base_of_width(w);
    return fraction(usual.peak_of_width * real::sqrt(p), fourth_power(p), cropped.peak_of_width * real::sqrt(q),
                    fourth_power(q));
  }

private:
  [[nodiscard]] double fraction(double a, double p, double b, double q) const {
    return ((1 - share) * a * q + share * b * p) / (p * q);
  }
};
/// The fifteenth century: as usual on any of the sheets, and otherwise on the last, which stands for what is not as usual.
struct EarlyLoss {
  static constexpr bool by_kind = true;
  OneLoss usual, unusual;
  [[nodiscard]] OneLoss const& on(std::size_t i) const { return i + 1 < early_sheets.size() ? usual : unusual; }
  [[nodiscard]] double of_both(std::size_t i, double h, double w) const { return on(i).of_both(i, h, w); }
  [[nodiscard]] double of_height(std::size_t i, double h) const { return on(i).of_height(i, h); }
  [[nodiscard]] double of_width(std::size_t i, double w) const { return on(i).of_width(i, w); }
};

/// The measures of a leaf as logarithms; of the type page, less what is usual, so that it is a height of the uncut leaf.
struct LogMeasures {
  std::optional<double> height, width, type;

  LogMeasures(LeafEvidence const& seen, EvidenceParameters const& parameters)
      : height{logarithm(seen.height)}, width{logarithm(seen.width)}, type{logarithm(seen.type_height)} {
    if (type) *type -= parameters.type_of_uncut;
  }

private:
  static std::optional<double> logarithm(std::optional<millimetres> length) {
    if (length) return real::log(length->count());
    return {};
  }
};

/// What the sheets of a period say of one kind of leaf: likelihoods of size and type page, alone and together.
struct SizeAnswer {
  double size{1}, type{1}, together{1};
};

/// The measures of a leaf, asked of each sheet for one kind of leaf after another. The answers of the sheets stay until the
/// next kind is asked; each period weighs them. What a height alone says, of the leaf or its type page, or a width alone,
/// stays for kinds that have the same.
class SheetsAsked {
  using Numbers = PossibleSheets::Numbers;
  LogMeasures measures_;
  EvidenceParameters const& parameters_;
  bool upright_{}; // of the kind asked before
  double height_parts_{}, width_parts_{};
  std::size_t count_{};
  Numbers size_, type_; // of the first `count_`; those of type pages only where one was measured

  template <class Likelihood> static void each(Numbers& answers, std::size_t count, Likelihood likelihood) {
    for (std::size_t i = 0; i < count; i += PossibleSheets::step) {
      std::array<double, PossibleSheets::step> some;
      for (std::size_t k = 0; k < some.size(); ++k) some[k] = likelihood(i + k);
      for (std::size_t k = 0; k < some.size(); ++k) answers[i + k] = some[k];
    }
  }
  /// A type page counts 1 where it is as usual on the leaf, and falls off as the t density does, whose power is whole.
  void ask_type(Numbers const& heights, double type) {
    static_assert(type_tails == 7);
    auto const inverse = 1 / ((type_tails - 2) * parameters_.type_of_uncut_variance);
    each(type_, count_, [&](std::size_t i) {
      auto const x = type - heights[i];
      return 1 / fourth_power(1 + x * x * inverse) + parameters_.least_type;
    });
  }
  [[nodiscard]] static double mean(Numbers const& answers, PossibleSheets::Shares const& shares) {
    double a = 0, b = 0, c = 0, d = 0; // four sums, so that none waits for the other
    for (std::size_t i = 0; i < shares.end; i += 4) {
      a += shares.weight[i] * answers[i], b += shares.weight[i + 1] * answers[i + 1];
      c += shares.weight[i + 2] * answers[i + 2], d += shares.weight[i + 3] * answers[i + 3];
    }
    return (a + b + (c + d)) / shares.all;
  }

public:
  SheetsAsked(LeafEvidence const& seen, EvidenceParameters const& parameters)
      : measures_{seen, parameters}, parameters_{parameters} {}

  /// `loss` gives the density of what was lost on a sheet, `floor` is the least that any size is worth. By value: what is
  /// only looked at would have to be read again after every answer written.
  template <class Loss> void ask(PossibleSheets const& sheets, LeafShape const& shape, Loss loss, double floor) {
    bool const upright = shape.lay.long_side == Axis::left_right;
    auto const& heights = upright ? sheets.across : sheets.along;
    auto const& widths = upright ? sheets.along : sheets.across;
    auto const height_parts = upright ? shape.log_short : shape.log_long;
    auto const width_parts = upright ? shape.log_long : shape.log_short;
    auto const height = (measures_.height ? *measures_.height : 0) + height_parts;
    auto const width = (measures_.width ? *measures_.width : 0) + width_parts;
    bool const same_side = count_ != 0 && upright == upright_;
    bool const same_height = same_side && height_parts == height_parts_;
    bool const same_width = same_side && width_parts == width_parts_;
    upright_ = upright, height_parts_ = height_parts, width_parts_ = width_parts;
    count_ = sheets.count;
    if (measures_.height && measures_.width)
      each(size_, count_,
           [&](std::size_t i) { return loss.of_both(i, height - heights[i], width - widths[i]) + floor; });
    else if (measures_.width && (!same_width || loss.by_kind))
      each(size_, count_, [&](std::size_t i) { return loss.of_width(i, width - widths[i]) + floor; });
    else if (measures_.height && (!same_height || loss.by_kind))
      each(size_, count_, [&](std::size_t i) { return loss.of_height(i, height - heights[i]) + floor; });
    else if (!measures_.height && !measures_.width && !same_side)
      each(size_, count_, [](std::size_t) { return 1.0; });
    if (measures_.type && !same_height) ask_type(heights, *measures_.type + height_parts);
  }
  /// What was answered, in the mean over the sheets of a period.
  [[nodiscard]] SizeAnswer answer(PossibleSheets::Shares const& shares) const {
    if (!measures_.type) {
      auto const size = mean(size_, shares);
      return {size, 1, size};
    }
    std::array<double, 2> size{}, type{}, together{}; // the weights are read once for all three
    for (std::size_t i = 0; i < shares.end; i += 2)
      for (std::size_t k = 0; k < 2; ++k) {
        auto const weight = shares.weight[i + k];
        size[k] += weight * size_[i + k];
        type[k] += weight * type_[i + k];
        together[k] += weight * size_[i + k] * type_[i + k];
      }
    return {(size[0] + size[1]) / shares.all, (type[0] + type[1]) / shares.all,
            (together[0] + together[1]) / shares.all};
  }
  /// The size of which a sheet explains the measures best, how common it was in the period counted in; of equals the
  /// one first met.
  [[nodiscard]] std::size_t best(PossibleSheets::Shares const& shares) const {
    auto const& single = shares.single;
    if (measures_.type) return best(shares, [&](std::size_t i) { return single[i] * size_[i] * type_[i]; });
    return best(shares, [&](std::size_t i) { return single[i] * size_[i]; });
  }

private:
  template <class Likelihood>
  static std::size_t best(PossibleSheets::Shares const& shares, Likelihood const& likelihood) {
    constexpr auto step = PossibleSheets::step;
    Numbers all; // kept, since what is reckoned again need not be the same to the last bit everywhere
    std::array<double, step> most{}; // of every eighth, so that eight are asked together
    for (std::size_t i = 0; i < shares.end; i += step)
      for (std::size_t k = 0; k < step; ++k) {
        all[i + k] = likelihood(i + k);
        most[k] = most[k] < all[i + k] ? all[i + k] : most[k];
      }
    double first = 0;
    for (auto const one : most) first = first < one ? one : first;
    std::size_t found = 0;
    for (std::size_t k = 0; k < step; ++k)
      for (auto i = k; most[k] == first && i < shares.end; i += step)
        if (all[i] == first && (all[found] < first || shares.met[i] < shares.met[found])) found = i;
    return found;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
