// SPDX-License-Identifier: MIT
/// Years in Roman numerals at a position of a statement of date: M.D.XLIII, MDXL[III], an VII, XVIIIe siècle. A day may stand
/// beside the year and is a numeral too, and so is the number of a century or of a year of the Republic: the words about it
/// and the blanks in it tell which it is.
#pragma once

#include <bifolium/core/detail/date_figures.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Numbers at a position, in figures or Roman numerals.
class DateNumerals : protected DateFigures {
protected:
  using DateFigures::DateFigures;

  /// Reads a Roman numeral which brackets divide, since a part of it is supplied: MDXL[III], M.D.[XLIII], [MD]XLIII.
  /// The brackets touch letters of the numeral, and each that opens in it closes in it or after
  /// a question mark.
  [[nodiscard]] constexpr std::optional<Atom> parted_numeral(std::size_t at) const {
    char letters[48]{};
    std::size_t size = 0, to = at, counted = 0; // counted: the letters up to the last that is worth something
    Atom read{.roman = true};
    auto const has_worth = [&](std::size_t i) { return numeral_worth(static_cast<unsigned char>(byte(i))) > 0; };
    for (auto i = at; size < sizeof letters; ++i) {
      char const c = byte(i);
      if (auto const blank = blank_at(text_, i); blank != 0) {
        letters[size++] = ' ', i += blank - 1;
        continue;
      }
      if (has_worth(i) || c == '.' || c == ',') {
        letters[size++] = c;
        if (has_worth(i)) counted = size, to = i + 1;
        continue;
      }
      bool const opens = c == '[' && i > at && blank_before(text_, i) == 0 && has_worth(i + 1);
      bool const closes = c == ']' && (has_worth(i - 1) || byte(i - 1) == '.') &&
                          (read.opened > 0 || (depth_ + read.opened > 0 && has_worth(i + 1)));
      if (!opens && !closes) break;
      read.opened += opens ? 1 : -1, read.parted = true;
      if (closes && !has_worth(i + 1)) to = i + 1;
    }
    auto const year = imprint_numeral({letters, counted});
    if (!read.parted || (read.opened > 0 && byte(to) != '?') || year.bytes != counted || word_goes_on(to))
      return std::nullopt;
    read.years = year.year, read.to = to;
    return read;
  }
  /// Returns the year before the last part of a numeral, if that part stands apart as the others do and can be a day of at
  /// most `named.most`, or 0: M. D. X. V. Kal. Maii is 1510 and the fifth day, or 1515 and the Kalends. A month alone says this
  /// only of parts with blanks between.
  [[nodiscard]] constexpr int year_before_day(std::size_t at, ImprintNumeral const& whole, DayBefore named) const {
    if (named.most == 0) return 0;
    auto i = whole.bytes;
    while (i > 0 && numeral_worth(static_cast<unsigned char>(byte(at + i - 1))) > 0) --i;
    auto const from = at + i;
    if (i == 0 || (blank_before(text_, from) == 0 && !(named.stops && byte(from - 1) == '.'))) return 0;
    auto const year = imprint_numeral(text_.substr(at, i));
    char typed = '\0';
    auto const day = numeral_part(text_, from, typed);
    bool const adds = year.bytes > 0 && whole.year - year.year == day.value;
    return adds && day.value >= 1 && day.value <= named.most ? year.year : 0;
  }
  [[nodiscard]] constexpr std::optional<Atom> roman_atom(std::size_t at) const {
    if (auto const parted = parted_numeral(at)) return parted;
    auto const year = imprint_numeral(text_.substr(at));
    if (year.bytes > 0) {
      auto const to = at + year.bytes;
      // MDL. XII. Maii: what a blank parts from a numeral without blanks is the day, if a month follows
      auto const named = day_before(after_blanks(byte(to) == '.' ? to + 1 : to));
      bool const day =
          year.to_first_blank > 0 && year.to_first_blank < year.bytes && year.year - year.before_blank <= named.most;
      if (day && !named.unsure) return Atom{.years = year.before_blank, .to = at + year.to_first_blank, .roman = true};
      if (auto const shortest = year_before_day(at, year, named))
        return Atom{.years = {shortest, year.year}, .to = to, .roman = true, .with_day = true};
      return Atom{.years = year.year, .to = to, .roman = true, .initial = year.initial};
    }
    char typed = '\0';
    auto const part = numeral_part(text_, at, typed);
    auto const to = at + part.bytes;
    if (part.bytes == 0 || part.value < 1 || part.value > 21) return std::nullopt;
    auto const made = [&](YearRange years, std::size_t end, bool is_century) {
      return Atom{.years = years, .to = end, .several = true, .century = is_century, .roman = true};
    };
    if (auto const end = century_after(to)) return made(century(part.value), end, true);
    if (auto const end = century_shared_after(to)) return made(century(part.value), end, true);
    if (word_goes_on(to) || month_follows(to)) return std::nullopt;
    if (said_.century) return made(century(part.value), to, true);
    if (said_.republic && part.value <= 14) return made({1791 + part.value, 1792 + part.value}, to, false);
    return std::nullopt;
  }
  [[nodiscard]] constexpr std::optional<Atom> atom(std::size_t at) const {
    return is_digit(byte(at)) ? number_atom(at) : roman_atom(at);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
