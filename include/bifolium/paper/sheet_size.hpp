// SPDX-License-Identifier: MIT
/// One row of the table of named sheets. A name alone fixes no size: royal is 43 x 62 cm in 1450, 20 x 25 inches for
/// printing in 1901 and 19 x 23 1/2 for drawing in 1854. So every row carries where, when and for what use its figures
/// are reported, whether they are a law, a list, a mean or a bound, and how far they can be trusted.
#pragma once

#include <bifolium/core/year_range.hpp>
#include <bifolium/paper/region.hpp>
#include <bifolium/paper/sheet.hpp>

namespace bifolium {
inline namespace v0 {

/// The unit in which a source gives its numbers.
enum class SheetUnit : std::uint8_t { mm, cm, inch, pouce };

/// What the paper was for. Where the source does not say, it may have been printed on, written on or drawn on.
enum class PaperUse : std::uint8_t {
  printing = 1,
  writing = 2,
  drawing = 4,
  writing_drawing = 6,
  unstated = 7,
  wrapping = 8
};

/// What the two figures are: a law or standard, a list of the trade, the mean of many sheets, the lower and the upper
/// end of a range, sheets measured, or drawn from other evidence.
enum class SheetBasis : std::uint8_t { law, listed, mean, least, most, measured, inferred };

/// `published`: read in the source named. `from_memory`: recalled, not seen; it orders candidates and proves nothing.
/// `unit_trap`: the numbers are wrong because of a wrong inch, and no search gives them.
enum class Trust : std::uint8_t { published, from_memory, unit_trap };

/// Which source a row comes from; the titles are in paper/sheet_size_sources.hpp.
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

/// A named sheet, as reported. The years are taken from the words of the source by one rule: a year is itself; `c.`
/// widens it by five years on either side; a century is its hundred years (15th c.: 1401-1500); an open end is closed
/// at the end of its century.
struct SheetSize {
  char const* name;                 ///< other names of the sheet follow after ` / `
  double short_figure, long_figure; ///< as the source gives them, in `unit`
  SheetUnit unit;                   ///< the unit of the two numbers
  int first_year;                   ///< of the years in which the size is attested
  int last_year;                    ///< of these years, itself included
  Region region;                    ///< where it was used
  PaperUse use;                     ///< what it was made for
  SheetBasis basis;                 ///< what kind of statement the numbers are
  Trust trust;                      ///< how good the evidence is
  SheetSource source;               ///< where it was read

  /// The years in which the size is attested, both included.
  [[nodiscard]] constexpr YearRange years() const { return {first_year, last_year}; }
  /// The short side, in millimetres.
  [[nodiscard]] constexpr millimetres short_side() const { return in_millimetres(short_figure); }
  /// The long side, in millimetres.
  [[nodiscard]] constexpr millimetres long_side() const { return in_millimetres(long_figure); }
  /// The sheet, in millimetres.
  [[nodiscard]] constexpr Sheet<millimetres> sheet() const { return {short_side(), long_side()}; }
  /// True where the numbers are those of sheets, and not the ends of a range.
  [[nodiscard]] constexpr bool is_of_sheets() const { return basis != SheetBasis::least && basis != SheetBasis::most; }

private:
  [[nodiscard]] constexpr millimetres in_millimetres(double figure) const {
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
};

} // namespace v0
} // namespace bifolium
