// SPDX-License-Identifier: MIT
/// The sheets a leaf may have come of, and how common each was: for later books the table of named sheets, asked for the
/// years and the place of every period in turn; for the fifteenth century the four sizes of the first printers, with the
/// shares fitted to them. A sheet that several periods know stands in the list once, and a period only weighs it: what a
/// size says of a sheet does not depend on the year.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The sheets that may be meant, side by side for the loops that ask each of them, and how common each is in every period.
/// Sheets of the same size stand here once, whatever they are called: lists of different years and places repeat each other,
/// and 192 rows that may be meant where nothing is known come to 141 sizes.
///
/// Loops take sizes `step` at a time and stop at the end of their period, so each period's list is filled up with sizes of
/// weight 0.
struct PossibleSheets {
  static constexpr std::size_t step = 8, periods = std::tuple_size_v<PriorsByPeriod>;
  static constexpr std::size_t rows = std::size(sheet_table::rows), most = (rows + step - 1) / step * step;
  using Numbers = std::array<double, most>;
  /// How common the sizes are in a period; sizes from `end` on, it does not know. Weights are of any unit, and add up to
  /// `all`.
  struct Shares {
    std::size_t end{};
    double all{};
    Numbers weight;
    Numbers single;                     ///< part of it that the commonest sheet of the size has
    std::array<std::int16_t, most> met; ///< when that one was first met, in whatever period
    std::array<char const*, most> name; ///< what that one is called

    Shares() {} // what is not counted is not read, and filling it costs more than the question

    /// One more sheet of the size; of equally common ones the first met names it.
    void add(std::size_t i, double share, char const* called, std::int16_t first_met) {
      weight[i] += share;
      all += share;
      if (share > single[i] || (share == single[i] && first_met < met[i]))
        single[i] = share, name[i] = called, met[i] = first_met;
    }
  };
  std::size_t count{};
  Numbers along, across; ///< logarithms of the long and short side in mm, of the first `count`
  std::array<millimetres, most> long_side, short_side;
  std::array<Shares, periods> of_period;

  PossibleSheets() {} // as above

  /// One more size, as yet of no period. Gives its number.
  std::size_t add(millimetres longer, millimetres shorter, double log_longer, double log_shorter) {
    along[count] = log_longer, across[count] = log_shorter;
    long_side[count] = longer, short_side[count] = shorter;
    for (auto& shares : of_period) {
      shares.weight[count] = shares.single[count] = 0;
      shares.name[count] = "";
      shares.met[count] = 0;
    }
    return count++;
  }
  /// To be called when all are there. Sizes of weight 0 fill up the last step.
  void fill_up() {
    while (count % step != 0) add(1_mm, 1_mm, 0, 0);
    for (auto& shares : of_period) shares.end = (shares.end + step - 1) / step * step;
  }
};

/// A row of the table as the ranking sees it; taken once a program.
struct SheetRow {
  millimetres long_side{}, short_side{};
  double log_long{}, log_short{}; ///< logarithms of the sides in mm
  std::size_t first{};            ///< the first row of the same size
  std::size_t size_class{};       ///< of `sheet_classes`, from 0
  YearRange years{};
  Region region{};
  bool from_memory{};
  char const* name{""};
};
struct SheetRows {
  std::array<SheetRow, PossibleSheets::rows> all{};
  /// The rows that speak for some place and time: `usable_for` any place and all years, and of sheets.
  std::array<std::uint16_t, PossibleSheets::rows> usable{};
  std::size_t usable_count{};
};
/// Not constexpr, as a lambda is by itself: g++ would run it while including, for a sixth of the time of bifolium.hpp.
inline SheetRows make_sheet_rows() {
  SheetRows rows;
  for (std::size_t i = 0; i < rows.all.size(); ++i) {
    auto const& size = sheet_table::rows[i];
    auto& row = rows.all[i];
    row.long_side = size.long_side(), row.short_side = size.short_side();
    row.log_long = real::log(row.long_side.count()), row.log_short = real::log(row.short_side.count());
    while (rows.all[row.first].long_side != row.long_side || rows.all[row.first].short_side != row.short_side)
      ++row.first;
    while (row.size_class < sheet_classes.size() && row.long_side.count() > sheet_classes[row.size_class])
      ++row.size_class;
    row.years = size.years(), row.region = size.region, row.name = size.name;
    row.from_memory = size.trust == Trust::from_memory;
  }
  for (auto const& size : usable_for({-9999, 9999}, Region::anywhere))
    if (size.is_of_sheets())
      rows.usable[rows.usable_count++] = static_cast<std::uint16_t>(&size - std::begin(sheet_table::rows));
  return rows;
}
inline SheetRows const& sheet_rows() {
  static auto const rows = make_sheet_rows();
  return rows;
}

/// How common sheets of the `sheet_classes` were in a year.
using SharesOfClasses = std::array<double, sheet_classes.size() + 1>;
inline SharesOfClasses shares_of_classes(EvidenceParameters const& parameters, int year) {
  SharesOfClasses shares{};
  for (std::size_t c = 0; c < shares.size(); ++c)
    if (year > 1600)
      shares[c] = parameters.late_sheets[year <= 1800 ? 0 : 1][c];
    else
      for (auto const& format : parameters.undated_shares.of) shares[c] += format[c];
  return shares;
}

/// Gathers the sheets of one period after another; sizes met before are only weighed.
class SheetGatherer {
  SheetRows const& rows_{sheet_rows()};
  PossibleSheets& sheets_;
  EvidenceParameters const& parameters_;
  std::array<std::int16_t, PossibleSheets::rows> at_{};  ///< of a size, by its first row: the number it has here and 1
  std::array<std::int16_t, PossibleSheets::rows> met_{}; ///< of a row, when it was first met, from 1
  std::int16_t rows_met_{};

  void take_row(PossibleSheets::Shares& shares, std::size_t number, SharesOfClasses const& class_shares) {
    auto const& row = rows_.all[number];
    if (met_[number] == 0) met_[number] = ++rows_met_;
    auto& at = at_[row.first];
    if (at == 0)
      at = static_cast<std::int16_t>(sheets_.add(row.long_side, row.short_side, row.log_long, row.log_short) + 1);
    auto const weight = (row.from_memory ? parameters_.from_memory : 1.0) * class_shares[row.size_class];
    shares.add(static_cast<std::size_t>(at) - 1, weight, row.name, met_[number]);
  }
  /// What `usable_for` gives for the years and the place, if that is anything.
  bool take_usable(std::size_t period, YearRange years, Region place, SharesOfClasses const& class_shares) {
    auto& shares = sheets_.of_period[period];
    auto const asked = years_that_speak_for(years);
    for (std::size_t i = 0; i < rows_.usable_count; ++i)
      if (auto const& row = rows_.all[rows_.usable[i]]; row.years.meets(asked) && meets(row.region, place))
        take_row(shares, rows_.usable[i], class_shares);
    shares.end = sheets_.count;
    return shares.all > 0;
  }

public:
  SheetGatherer(PossibleSheets& sheets, EvidenceParameters const& parameters)
      : sheets_{sheets}, parameters_{parameters} {}

  /// The caller's sheets, taken alike.
  void take(std::size_t period, SheetSizes const& sizes) {
    auto& shares = sheets_.of_period[period];
    for (auto const& size : sizes)
      if (size.is_of_sheets())
        take_row(shares, static_cast<std::size_t>(&size - std::begin(sheet_table::rows)), {1, 1, 1, 1});
    shares.end = sheets_.count;
  }
  /// The sheets of the years and the place. A name in a list is not a ream in the shop: large sheets were the exception,
  /// and are weighed as one.
  void take(std::size_t period, When years, Region place) {
    auto const shares = shares_of_classes(parameters_, (years.from + years.to) / 2);
    if (take_usable(period, {years.from, years.to}, place, shares)) return;
    if (take_usable(period, {years.from, years.to}, Region::anywhere, shares)) return;
    take_usable(period, {1500, 1850}, Region::anywhere, shares);
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
