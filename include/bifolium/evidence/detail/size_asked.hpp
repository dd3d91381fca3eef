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

static_assert(most_leaf_shapes <= sheets_at_once);

/// A leaf's size as the sheets that it implies, one for each kind of leaf.
class SheetsImplied {
public:
  enum class Known : std::uint8_t { none, both, one, between };

private:
  Known known_{};
  std::size_t count_{};
  BothSides both_{};
  OneSide one_{};

  friend class LogMeasures;

public:
  /// Finds those that are near the sheets of one population, or takes all of them if no side is known.
  void find(SheetDensity const& sheets, LossLaw const& loss, NearSheets& found) const {
    if (known_ == Known::both) return sheets.of_both(both_, count_, loss, found);
    if (known_ == Known::one) return sheets.of_side(one_, count_, loss, found);
    if (known_ == Known::between) return sheets.of_side_between(one_, count_, loss, found);
    found.count = 0;
    for (std::size_t i = 0; i < count_; ++i) found.add(i, 1);
  }
};
/// By how much a leaf would be larger if it were cut as a folio of the usual state is, as a logarithm: so much, and so
/// much for each unit of the logarithm of its number of leaves to the sheet.
struct LargerUncut {
  double by{}, for_leaves{};
};

/// How high type pages are on the sheets of one population, along one side of them.
class TypePage {
  double middle_, precision_, peak_;

public:
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
  SheetsImplied::Known known_{};
  double low_{}, height_{}, width_{}, type_{}, fall_{};
  bool has_height_, has_type_;

  [[gnu::noinline]] static double logarithm(double length) {
    constexpr double least = 5; // mm; boards leave no less
    return real::log(length > least ? length : least);
  }

public:
  /// `tail`: of the losses.
  LogMeasures(LeafEvidence const& seen, double tail, EvidenceParameters const& p)
      : has_height_{seen.height.has_value()}, has_type_{seen.type_height.has_value()} {
    using enum SheetsImplied::Known;
    auto const boards = p.boards.count() * (seen.of == MeasureOf::leaf ? 0 : seen.of == MeasureOf::binding ? 1 : 0.5);
    constexpr double least_step = 1e-6; // mm; a measure in smaller steps is exact
    auto const step = seen.rounded_up_to.count() < least_step ? 0 : seen.rounded_up_to.count();
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

  /// Returns the sheets that the leaf implies.
  [[nodiscard]] SheetsImplied implied(std::span<LeafShape const> kinds, LargerUncut const& uncut) const {
    SheetsImplied sheets;
    sheets.known_ = known_, sheets.count_ = kinds.size(), sheets.one_.fall = fall_;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      auto const& kind = kinds[i];
      bool const upright = kind.lay.long_side == Axis::left_right; // then the height is of the short side
      auto const larger = uncut.by + uncut.for_leaves * (kind.log_long + kind.log_short);
      auto const to_long = kind.log_long + larger, to_short = kind.log_short + larger;
      if (known_ == SheetsImplied::Known::both) {
        sheets.both_.log_long[i] = to_long + (upright ? width_ : height_);
        sheets.both_.log_short[i] = to_short + (upright ? height_ : width_);
        continue;
      }
      bool const is_short = upright == has_height_;
      sheets.one_.side[i] = is_short ? 1 : 0;
      sheets.one_.length[i] = one_side() + (is_short ? to_short : to_long);
      sheets.one_.low[i] = low_ + (is_short ? to_short : to_long);
    }
    return sheets;
  }
  /// Returns how likely the height of the type page is in a leaf of this kind, relative to a usual one. Precondition:
  /// it was measured. `usual`: on the long side and on the short.
  [[nodiscard]] double type(TypePage const (&usual)[2], LeafShape const& shape) const {
    constexpr double least = 2e-4; // estimated
    bool const upright = shape.lay.long_side == Axis::left_right;
    return usual[upright ? 1 : 0].density(type_ + (upright ? shape.log_short : shape.log_long)) + least;
  }
  [[nodiscard]] double by_chance(EvidenceParameters const& p) const {
    if (known_ == SheetsImplied::Known::none) return 1;
    if (known_ == SheetsImplied::Known::both) return p.chance.both_sides;
    return p.chance.one_side * (known_ == SheetsImplied::Known::between ? one_side() - low_ : 1);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
