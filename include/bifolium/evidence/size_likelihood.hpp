// SPDX-License-Identifier: MIT
/// How likely the size of a leaf is, if it came of a given sheet: the uncut leaf by geometry, less what binders cut away.
/// The losses of height and width go together, and their tails are heavy: a multivariate t with six degrees of freedom,
/// whose powers are whole (4 in the plane, 3 1/2 on the line), so that no logarithm is taken of any sheet while ranking.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include <cmath>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The density of a loss, made ready: `k / (1 + a x² + b xy + c y²)^4` about the mean, in height, in width, or in both.
class LossDensity {
  double height_, width_, a_, b_, c_, plane_, line_height_, line_width_, inverse_height_, inverse_width_;

public:
  explicit LossDensity(TrimModel const& trim) : height_{trim.height}, width_{trim.width} {
    constexpr double nu = trim_tails, two_pi = 6.28318530717958647692;
    constexpr double peak_of_line = 0.3827; // of the t density with six degrees of freedom
    auto const determinant = trim.height_variance * trim.width_variance - trim.covariance * trim.covariance;
    a_ = trim.width_variance / determinant / nu;
    b_ = -2 * trim.covariance / determinant / nu;
    c_ = trim.height_variance / determinant / nu;
    plane_ = 1 / (two_pi * std::sqrt(determinant));
    line_height_ = peak_of_line / std::sqrt(trim.height_variance);
    line_width_ = peak_of_line / std::sqrt(trim.width_variance);
    inverse_height_ = 1 / (nu * trim.height_variance);
    inverse_width_ = 1 / (nu * trim.width_variance);
  }
  [[nodiscard]] double of_both(double height, double width) const {
    auto const x = height - height_, y = width - width_;
    auto const base = 1 + a_ * x * x + b_ * x * y + c_ * y * y;
    auto const square = base * base;
    return plane_ / (square * square);
  }
  [[nodiscard]] double of_height(double height) const {
    return on_line(line_height_, inverse_height_, height - height_);
  }
  [[nodiscard]] double of_width(double width) const { return on_line(line_width_, inverse_width_, width - width_); }

private:
  static double on_line(double peak, double inverse, double x) {
    auto const base = 1 + x * x * inverse;
    return peak / (base * base * base * std::sqrt(base));
  }
};

/// The sheets that may be meant, side by side for the loops that ask each of them, and how common each is in every period.
struct PossibleSheets {
  static constexpr std::size_t most = std::size(sheet_table::rows), periods = std::tuple_size_v<PriorsByPeriod>;
  std::size_t count{};
  std::array<double, most> along, across; ///< logarithms of the long and short side in mm, of the first `count`
  std::array<millimetres, most> long_side, short_side;
  std::array<char const*, most> name;
  std::array<std::array<double, most>, periods> weight; ///< of a period, they add up to 1 or are all nothing

  PossibleSheets() {} // what is not counted is not read, and filling it costs more than the question

  std::size_t add(char const* called, millimetres longer, millimetres shorter, double log_longer, double log_shorter) {
    along[count] = log_longer, across[count] = log_shorter, name[count] = called;
    long_side[count] = longer, short_side[count] = shorter;
    for (auto& one : weight) one[count] = 0;
    return count++;
  }
};

/// Logarithms of the sides of a row of the table, taken once a program.
struct LogSides {
  double long_side, short_side;
};
inline LogSides const* log_sides() {
  static auto const all = [] {
    std::array<LogSides, PossibleSheets::most> sides{};
    for (std::size_t i = 0; i < sides.size(); ++i)
      sides[i] = {std::log(sheet_table::rows[i].long_side().count()),
                  std::log(sheet_table::rows[i].short_side().count())};
    return sides;
  }();
  return all.data();
}

/// How common a sheet of this long side was in the years, judged by four classes of size.
inline double share_of_sheet(EvidenceParameters const& parameters, int year, double log_long_side) {
  constexpr double ends[3]{6.174, 6.328, 6.522}; // logarithms of 480, 560 and 680 mm, midway between the early sheets
  std::size_t c = 0;
  while (c < 3 && log_long_side > ends[c]) ++c;
  if (year > 1600) return parameters.late_sheets[year <= 1800 ? 0 : 1][c];
  double share = 0;
  for (auto const& format : parameters.undated_shares.of) share += format[c];
  return share;
}

/// Gathers the sheets of one period after another; those met before are only weighed.
class SheetGatherer {
  PossibleSheets& sheets_;
  EvidenceParameters const& parameters_;
  std::array<std::int16_t, PossibleSheets::most> at_{}; ///< of a row of the table, the number it has here and 1

  bool take(std::size_t period, SheetSizes const& from, std::optional<int> year) {
    double all = 0;
    auto const* const logarithms = log_sides();
    auto& weights = sheets_.weight[period];
    for (auto const& size : from) {
      if (!size.is_of_sheets()) continue;
      auto const row = static_cast<std::size_t>(&size - std::begin(sheet_table::rows));
      auto const& sides = logarithms[row];
      if (at_[row] == 0)
        at_[row] = static_cast<std::int16_t>(
            sheets_.add(size.name, size.long_side(), size.short_side(), sides.long_side, sides.short_side) + 1);
      auto weight = size.trust == Trust::from_memory ? 0.7 : 1.0;
      if (year) weight *= share_of_sheet(parameters_, *year, sides.long_side);
      weights[static_cast<std::size_t>(at_[row]) - 1] = weight;
      all += weight;
    }
    if (!(all > 0)) return false;
    for (std::size_t i = 0; i < sheets_.count; ++i) weights[i] /= all;
    return true;
  }

public:
  SheetGatherer(PossibleSheets& sheets, EvidenceParameters const& parameters)
      : sheets_{sheets}, parameters_{parameters} {}

  /// The caller's sheets, taken alike.
  void take(std::size_t period, SheetSizes const& sizes) { take(period, sizes, std::nullopt); }
  /// The sheets of the years and the place. A name in a list is not a ream in the shop: large sheets were the exception,
  /// and are weighed as one.
  void take(std::size_t period, When years, Region place) {
    auto const year = (years.from + years.to) / 2;
    if (take(period, usable_for({years.from, years.to}, place), year)) return;
    if (take(period, usable_for({years.from, years.to}, Region::anywhere), year)) return;
    take(period, usable_for({1500, 1850}, Region::anywhere), year);
  }
};

/// 2°, 4° or 8°, for the numbers fitted on these; other formats are taken as octavo, and a broadside as folio.
constexpr std::size_t early_format(int leaves) { return leaves <= 2 ? 0 : leaves == 4 ? 1 : 2; }

/// Joint shares of formats and sheets in the fifteenth century, over the years given; over most of it, as undated.
inline EarlyShares early_shares_of(When years, EvidenceParameters const& parameters) {
  int from = 1440, met = 0;
  double all = 0;
  EarlyShares shares;
  for (std::size_t p = 0; p < early_periods.size(); ++p) {
    auto const common = (std::min)(early_periods[p], years.to) - (std::max)(from, years.from) + 1;
    from = early_periods[p] + 1;
    if (common <= 0) continue;
    ++met;
    all += common;
    for (std::size_t f = 0; f < 3; ++f)
      for (std::size_t s = 0; s < early_sheets.size(); ++s)
        shares.of[f][s] += common * parameters.early_shares[p].of[f][s];
  }
  if (met == 0 || met > 3) return parameters.undated_shares;
  for (auto& format : shares.of)
    for (auto& one : format) one /= all;
  return shares;
}

/// What the sheets say of one kind of leaf: likelihoods of size and type page, alone and together.
struct SizeAnswer {
  double size{1}, type{1}, together{1};
  std::size_t best{}; ///< the sheet that explains it best
};
using SizeAnswers = std::array<SizeAnswer, PossibleSheets::periods>;

/// A mixture of two densities, one for the share of copies that were cropped and nobody said so.
struct LossMixture {
  LossDensity usual, cropped;
  double share;
  [[nodiscard]] double of_both(double h, double w) const {
    return (1 - share) * usual.of_both(h, w) + share * cropped.of_both(h, w);
  }
  [[nodiscard]] double of_height(double h) const {
    return (1 - share) * usual.of_height(h) + share * cropped.of_height(h);
  }
  [[nodiscard]] double of_width(double w) const {
    return (1 - share) * usual.of_width(w) + share * cropped.of_width(w);
  }
};

/// The measures of a leaf, asked of each sheet.
class MeasuresAsked {
  EvidenceParameters const& parameters_;
  std::optional<double> log_height_, log_width_, log_type_;

  static std::optional<double> logarithm(std::optional<millimetres> length) {
    return length ? std::optional{std::log(length->count())} : std::nullopt;
  }
  using Numbers = std::array<double, PossibleSheets::most>;

  template <class Loss>
  void ask_each(PossibleSheets const& sheets, LeafShape const& shape, Numbers& answers, Loss loss) const {
    bool const upright = shape.lay.long_side == Axis::left_right;
    auto const& heights = upright ? sheets.across : sheets.along;
    auto const& widths = upright ? sheets.along : sheets.across;
    auto const height = log_height_.value_or(0) + (upright ? shape.log_short : shape.log_long);
    auto const width = log_width_.value_or(0) + (upright ? shape.log_long : shape.log_short);
    for (std::size_t i = 0; i < sheets.count; ++i) answers[i] = loss(i, height - heights[i], width - widths[i]);
  }
  template <class Density>
  void ask_size(PossibleSheets const& sheets, LeafShape const& shape, Numbers& answers, Density density,
                double floor) const {
    if (log_height_ && log_width_)
      ask_each(sheets, shape, answers,
               [&](std::size_t i, double h, double w) { return density(i).of_both(h, w) + floor; });
    else if (log_height_)
      ask_each(sheets, shape, answers,
               [&](std::size_t i, double h, double) { return density(i).of_height(h) + floor; });
    else if (log_width_)
      ask_each(sheets, shape, answers, [&](std::size_t i, double, double w) { return density(i).of_width(w) + floor; });
    else
      for (std::size_t i = 0; i < sheets.count; ++i) answers[i] = 1;
  }
  void ask_type(PossibleSheets const& sheets, LeafShape const& shape, Numbers& answers) const {
    bool const upright = shape.lay.long_side == Axis::left_right;
    auto const& heights = upright ? sheets.across : sheets.along;
    auto const from = *log_type_ - parameters_.type_of_uncut + (upright ? shape.log_short : shape.log_long);
    auto const half = 0.5 / parameters_.type_of_uncut_variance;
    for (std::size_t i = 0; i < sheets.count; ++i) {
      auto const x = from - heights[i];
      answers[i] = std::exp(-x * x * half) + parameters_.least_type;
    }
  }

public:
  MeasuresAsked(Seen const& seen, EvidenceParameters const& parameters)
      : parameters_{parameters}, log_height_{logarithm(seen.height)},
        log_width_{logarithm(seen.width)}, log_type_{logarithm(seen.type_height)} {}

  /// How likely the measures are under each period's sheets; `density(i)` gives the density of losses on sheet i, `floor`
  /// is the least that any size is worth.
  template <class Density>
  [[nodiscard]] SizeAnswers ask(PossibleSheets const& sheets, LeafShape const& shape,
                                std::array<bool, PossibleSheets::periods> const& asked, Density density,
                                double floor) const {
    Numbers of_size, of_type;
    ask_size(sheets, shape, of_size, density, floor);
    if (log_type_) ask_type(sheets, shape, of_type);
    SizeAnswers answers{};
    for (std::size_t p = 0; p < answers.size(); ++p) {
      if (!asked[p]) continue;
      auto const& weight = sheets.weight[p];
      SizeAnswer answer{0, log_type_ ? 0.0 : 1.0, 0, 0};
      double best = -1;
      for (std::size_t i = 0; i < sheets.count; ++i) {
        if (!(weight[i] > 0)) continue; // a sheet of other periods
        auto both = weight[i] * of_size[i];
        answer.size += both;
        if (log_type_) answer.type += weight[i] * of_type[i], both *= of_type[i];
        answer.together += both;
        if (both > best) best = both, answer.best = i;
      }
      answers[p] = answer;
    }
    return answers;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
