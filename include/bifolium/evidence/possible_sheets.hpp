// SPDX-License-Identifier: MIT
/// The sheets a leaf may have come of, and how common each was: for later books the table of named sheets, asked for the
/// years and the place of every period in turn; for the fifteenth century the four sizes of the first printers, with the
/// shares fitted to them. A sheet that several periods know stands in the list once, and a period only weighs it: what a
/// size says of a sheet does not depend on the year.
#pragma once

#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include <cmath>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The sheets that may be meant, side by side for the loops that ask each of them, and how common each is in every period.
/// Loops take them `step` at a time, so the list is filled up with sheets of weight 0.
struct PossibleSheets {
  static constexpr std::size_t step = 4, periods = std::tuple_size_v<PriorsByPeriod>;
  static constexpr std::size_t rows = std::size(sheet_table::rows), most = (rows + step - 1) / step * step;
  using Numbers = std::array<double, most>;
  std::size_t count{};
  Numbers along, across; ///< logarithms of the long and short side in mm, of the first `count`
  std::array<millimetres, most> long_side, short_side;
  std::array<char const*, most> name;
  std::array<Numbers, periods> weight; ///< of a period, they add up to 1 or are all nothing

  PossibleSheets() {} // what is not counted is not read, and filling it costs more than the question

  std::size_t add(char const* called, millimetres longer, millimetres shorter, double log_longer, double log_shorter) {
    along[count] = log_longer, across[count] = log_shorter, name[count] = called;
    long_side[count] = longer, short_side[count] = shorter;
    for (auto& one : weight) one[count] = 0;
    return count++;
  }
  /// To be called when all are there.
  void fill_up() {
    while (count % step != 0) add("", 1_mm, 1_mm, 0, 0);
  }
};

/// Logarithms of the sides of a row of the table, taken once a program.
struct LogSides {
  double long_side, short_side;
};
inline LogSides const* log_sides() {
  static auto const all = [] {
    std::array<LogSides, PossibleSheets::rows> sides{};
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
  std::array<std::int16_t, PossibleSheets::rows> at_{}; ///< of a row of the table, the number it has here and 1

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

} // namespace detail
} // namespace v0
} // namespace bifolium
