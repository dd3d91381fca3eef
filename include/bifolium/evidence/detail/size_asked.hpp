// SPDX-License-Identifier: MIT
/// The size of a leaf as the density of a population of sheets needs it: the logarithms of the sides of the sheet that
/// a kind of leaf implies.
#pragma once

#include <bifolium/evidence/detail/size_density.hpp>
#include <bifolium/evidence/detail/type_density.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/seen.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A leaf's size as the sheet of one kind of leaf that it implies, ready to be asked of each population.
struct SizeAsked {
  enum class Known : std::uint8_t { none, both, one, between } known{};
  std::uint8_t side{};                      ///< of one side alone: 0 the long one, 1 the short one
  double log_long{}, log_short{}, length{}; ///< of one side alone its length
  double low{}, fall{}; ///< of one side between two bounds the lower, and how the tail falls between them

  /// Returns how likely the size is on the sheets of one population.
  [[nodiscard, gnu::noinline]] double on(SheetDensity const& sheets, LossLaw const& loss) const {
    if (known == Known::both) return sheets.of_both(log_long, log_short, loss);
    if (known == Known::one) return sheets.of_side(side, length, loss);
    return known == Known::between ? sheets.side_between(side, low, length, fall, loss) : 1;
  }
  /// Returns how likely it is on each population of the model, which `sheets` has side by side.
  [[nodiscard, gnu::noinline]] std::array<double, population_count>
  on_each(SheetDensity const* all, SheetsSideBySide<population_count> const& sheets, LossLaw const& loss) const {
    if (known == Known::both) return sheets.of_both(log_long, log_short);
    std::array<double, population_count> sizes;
    for (std::size_t k = 0; k < population_count; ++k) sizes[k] = on(all[k], loss);
    return sizes;
  }
};

/// How high type pages are on the sheets of one population, along one side of them.
class TypePage {
  double middle_, precision_, peak_;

public:
  TypePage() = default;
  /// `side`: 0 the long one, 1 the short one.
  TypePage(SheetDensity const& sheets, std::size_t side, EvidenceParameters const& p)
      : middle_{sheets.mean(side) + SheetPopulation::base_loss + p.type_of_uncut},
        precision_{1 / (p.type_variance + sheets.variance(side))}, peak_{real::sqrt(usual_type_variance * precision_)} {
  }
  /// `length`: the logarithm of the height, times the parts into which the side is divided.
  [[nodiscard]] double density(double length) const { return peak_ * type_density(length - middle_, precision_); }
};

/// Height, width and type page as the densities want them: logarithms of the leaf, without its boards.
class LogMeasures {
  SizeAsked::Known known_{};
  double low_{}, height_{}, width_{}, type_{}, fall_{};
  bool has_height_, has_type_;

  [[gnu::noinline]] static double logarithm(double length) {
    constexpr double least = 5; // mm; boards leave no less
    return real::quick_log(length > least ? length : least);
  }

public:
  /// `tail`: of the losses.
  LogMeasures(LeafEvidence const& seen, double tail, EvidenceParameters const& p)
      : has_height_{seen.height.has_value()}, has_type_{seen.type_height.has_value()} {
    using enum SizeAsked::Known;
    auto const boards = p.boards.count() * (seen.of == MeasureOf::leaf ? 0 : seen.of == MeasureOf::binding ? 1 : 0.5);
    auto const step = seen.rounded_up_to.count();
    if (has_height_ != seen.width.has_value())
      known_ = step > 0 ? between : one;
    else if (has_height_)
      known_ = both;
    // of two sides stated in steps the middle of the step is taken, of one its two ends
    auto const back = known_ == between ? 0 : step / 2;
    if (has_height_) height_ = logarithm(seen.height->count() - boards - back);
    if (seen.width) width_ = logarithm(seen.width->count() - boards - back);
    if (known_ == between) {
      low_ = logarithm((has_height_ ? *seen.height : *seen.width).count() - boards - step);
      fall_ = real::exp(-tail * (one_side() - low_));
    }
    if (has_type_) type_ = logarithm(seen.type_height->count());
  }
  [[nodiscard]] bool has_type() const { return has_type_; }
  [[nodiscard]] double one_side() const { return has_height_ ? height_ : width_; }

  /// `uncut`: by how much the leaf would be larger.
  [[nodiscard]] SizeAsked implied(LeafShape const& shape, double uncut) const {
    bool const upright = shape.lay.long_side == Axis::left_right; // then the height is of the short side
    auto const to_height = (upright ? shape.log_short : shape.log_long) + uncut;
    auto const to_width = (upright ? shape.log_long : shape.log_short) + uncut;
    SizeAsked sheet{known_, static_cast<std::uint8_t>(upright == has_height_ ? 1 : 0)};
    sheet.log_long = upright ? width_ + to_width : height_ + to_height;
    sheet.log_short = upright ? height_ + to_height : width_ + to_width;
    if (known_ == SizeAsked::Known::both) return sheet;
    auto const to = has_height_ ? to_height : to_width;
    sheet.length = one_side() + to, sheet.low = low_ + to, sheet.fall = fall_;
    return sheet;
  }
  /// Returns how likely the height of the type page is in a leaf of this kind, relative to a usual one. Precondition:
  /// it was measured.
  [[nodiscard]] double type(TypePage const& usual, LeafShape const& shape) const {
    constexpr double least = 2e-4; // estimated
    auto const parts = shape.lay.long_side == Axis::left_right ? shape.log_short : shape.log_long;
    return usual.density(type_ + parts) + least;
  }
  [[nodiscard]] double by_chance(EvidenceParameters const& p) const {
    if (known_ == SizeAsked::Known::none) return 1;
    if (known_ == SizeAsked::Known::both) return p.chance.both_sides;
    return p.chance.one_side * (known_ == SizeAsked::Known::between ? one_side() - low_ : 1);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
