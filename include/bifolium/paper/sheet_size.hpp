// SPDX-License-Identifier: MIT
/// One row of the table of named sheets. A name alone does not determine a size: royal is 43 x 62 cm in 1450, 20 x 25
/// inches for printing in 1901 and 19 x 23 1/2 inches for drawing in 1854. So every row states where, when and for what
/// use its size is reported, whether the size is a law, a list, a mean or a bound, and how reliable it is.
#pragma once

#include <bifolium/core/year_range.hpp>
#include <bifolium/paper/region.hpp>
#include <bifolium/paper/sheet.hpp>

namespace bifolium {
inline namespace v0 {

/// The unit in which a source gives its numbers.
enum class SheetUnit : std::uint8_t { mm, cm, inch, pouce };

/// The use of the paper. `unstated` means that the source does not say.
enum class PaperUse : std::uint8_t {
  printing = 1,
  writing = 2,
  drawing = 4,
  writing_drawing = 6,
  unstated = 7,
  wrapping = 8
};

/// The kind of statement: a law or standard, a list of the trade, the mean of many sheets, the lower or the upper end
/// of a range, sheets that were measured, or a size inferred from other evidence.
enum class SheetBasis : std::uint8_t { law, listed, mean, least, most, measured, inferred };

/// The reliability of a row. `published`: read in the named source. `from_memory`: recalled, not read; it orders
/// candidates and proves nothing. `unit_trap`: the numbers are wrong because of a wrong inch; searches never return
/// such a row.
enum class Trust : std::uint8_t { published, from_memory, unit_trap };

/// The source of a row. paper/sheet_size_sources.hpp has the titles.
enum class SheetSource : std::uint8_t {
  bologna_stone,
  diet_library,
  memory_bologna,
  needham_1988,
  briquet,
  cambridge_stocks,
  german_overview,
  encyclopedie_1765,
  arret_1741,
  cim_1906,
  french_trade_names,
  french_trade_list,
  tomlinson_1854,
  cockerell_1901,
  british_amalgamated,
  british_printing,
  dawe_1914,
  austen_report,
  britannia_sheets,
  memory_gaskell,
  memory_british,
  kanzlei,
  meyers_1896,
  memory_german,
  memory_dutch,
  polish_lexicon,
  scribner_1849,
  scientific_1854,
  student_1854,
  hill_1880s,
  etherington_1982,
};

/// Returns a length in a unit, in millimetres. Example: `length_in(SheetUnit::cm, 2) == 20_mm`.
[[nodiscard]] constexpr millimetres length_in(SheetUnit unit, double figure) {
  switch (unit) {
  case SheetUnit::cm:
    return centimetres{figure};
  case SheetUnit::inch:
    return inches{figure};
  case SheetUnit::pouce:
    return paris_inches{figure};
  case SheetUnit::mm:
    break;
  }
  return millimetres{figure};
}

/// A named sheet as reported. The years follow the words of the source by one rule: a year is itself; `c.` adds five
/// years on either side; a century is its hundred years (15th c.: 1401-1500); an open range ends with the century.
struct SheetSize {
  char const* name{""};                 ///< the name; other names follow after ` / `
  double short_figure{}, long_figure{}; ///< the two sides as the source gives them, in `unit`
  SheetUnit unit{};                     ///< the unit of the two numbers
  int first_year{};                     ///< the first year in which the size is attested
  int last_year{};                      ///< the last year in which the size is attested
  Region region{};                      ///< the region of use
  PaperUse use{};                       ///< the use of the paper
  SheetBasis basis{};                   ///< the kind of statement
  Trust trust{};                        ///< the reliability of the row
  SheetSource source{};                 ///< the source

  /// Returns the years in which the size is attested.
  [[nodiscard]] constexpr YearRange years() const { return {first_year, last_year}; }
  /// Returns the short side, in millimetres.
  [[nodiscard]] constexpr millimetres short_side() const { return in_millimetres(short_figure); }
  /// Returns the long side, in millimetres.
  [[nodiscard]] constexpr millimetres long_side() const { return in_millimetres(long_figure); }
  /// Returns the sheet, in millimetres.
  [[nodiscard]] constexpr Sheet<millimetres> sheet() const { return {short_side(), long_side()}; }
  /// Returns true if the numbers are the size of a sheet, and false if they are an end of a range.
  [[nodiscard]] constexpr bool is_of_sheets() const { return basis != SheetBasis::least && basis != SheetBasis::most; }

private:
  [[nodiscard]] constexpr millimetres in_millimetres(double figure) const { return length_in(unit, figure); }
};

} // namespace v0
} // namespace bifolium
