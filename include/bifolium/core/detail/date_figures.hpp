// SPDX-License-Identifier: MIT
/// Years in figures: 1725, 17[25], 172-, 17.., 1640s, 725. Catalogues write less than a year where they know less, and what
/// is missing is filled by dashes, points or letters. How many years the figures mean depends on what stands in the place of
/// the last ones, so a number is found together with its end.
#pragma once

#include <bifolium/core/detail/date_centuries.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Figures at a position.
class DateFigures : protected DateCenturies {
protected:
  using DateCenturies::DateCenturies;

  /// A year, or a word for several years: 172-, 18th century.
  struct Atom {
    YearRange years{};
    std::size_t to{}; // position of the byte after it
    int digits{};     // number of digits
    bool several{};   // true for a decade or a century
    bool century{};   // true for a century
    bool roman{}, clipped{};
    int opened{};    // number of brackets opened in it, less those closed: 17[25]
    bool parted{};   // true if brackets divide it
    bool initial{};  // true if its last letter may be an initial
    bool with_day{}; // true if its last letters may be the day: the years are then from the shorter one to the longer
  };

  /// Digits, also across brackets that divide them (17[25], (5)367): their number and their value.
  struct Digits {
    int count{}, number{}, opened{};
    std::size_t to{};
    bool parted{}; // true if a bracket divides them
  };
  [[nodiscard]] constexpr Digits digits(std::size_t at) const { return digits(at, depth_); }
  /// Returns the digits at a position at which `open` brackets are open.
  [[nodiscard]] constexpr Digits digits(std::size_t at, int open) const {
    Digits found;
    while (found.count < 6) {
      if (is_digit(byte(at)))
        found.number = found.number * 10 + (text_[at] - '0'), ++found.count;
      else if (found.count > 0 && found.count < 4 &&
               (byte(at) == '[' ||
                ((byte(at) == ']' || (byte(at) == ')' && found.count == 1)) && found.opened + open > 0)) &&
               is_digit(byte(at + 1)))
        found.opened += text_[at] == '[' ? 1 : -1, found.parted = true;
      else
        break;
      found.to = ++at;
    }
    return found;
  }
  /// Returns the number of bytes of a character for an unknown digit of a year (u, x, X, ?, _ or a dash), or 0 for another
  /// character. MARC 21 writes u, and the extended date-time format X (ISO 8601-2, from memory).
  [[nodiscard]] constexpr std::size_t wildcard(std::size_t at) const {
    if (auto const c = small_letter(byte(at)); c == 'u' || c == 'x' || c == '?' || c == '_') return 1;
    return is_dash(point(at).value) ? point(at).bytes : 0;
  }
  /// Returns the number of bytes of the points that stand for the unknown digits of a year of which `known` are written,
  /// or 0: 17.., [178.]. One point alone ends a sentence, unless a bracket closes after it.
  [[nodiscard]] constexpr std::size_t points_for_digits(std::size_t at, int known) const {
    auto points = cursor(at);
    std::size_t count = 0;
    while (count < 3 && points.take('.')) ++count;
    if (count == 0 && (points.take("\u2026") || points.take("\u2025"))) count = 2;
    if (points.at_digit() || word_goes_on(points.at())) return 0;
    bool const closes =
        points.peek() == ']' || points.peek() == '?' || points.peek() == ')' || is_dash(points.character().value);
    return (known == 2 && count >= 2) || (known == 3 && count == 1 && closes) ? points.at() - at : 0;
  }
  /// Returns the position of the byte after the s of `1640s` or `1640's`, or 0.
  [[nodiscard]] constexpr std::size_t plural_after(std::size_t at) const {
    auto end = cursor(at);
    if (!end.take('\'')) end.take("\u2019");
    return end.take_in_any_case("s") && !word_goes_on(end.at()) ? end.at() : 0;
  }
  /// The last year of a statement. A higher number is of another era, or wrong.
  static constexpr int latest_year = 2100;
  /// Years counted from the creation begin in autumn: by how many the number of a year is higher than that of the year
  /// in which it ends, in the Jewish reckoning and in the Byzantine one. 5521 is 1760 or 1761 (from memory).
  static constexpr int eras[]{3760, 5508};
  [[nodiscard]] constexpr std::optional<Atom> number_atom(std::size_t at) const {
    auto const read = digits(at);
    auto const to = read.to;
    int const number = read.number;
    auto const made = [&](std::size_t end, YearRange years, bool several, bool clipped = false) {
      return Atom{.years = years,
                  .to = end,
                  .digits = read.count,
                  .several = several,
                  .clipped = clipped,
                  .opened = read.opened,
                  .parted = read.parted};
    };
    auto const made_several = [&](std::size_t end, int from, int years) -> std::optional<Atom> {
      if (from + years - 1 > latest_year) return std::nullopt;
      return made(end, {from, from + years - 1}, true);
    };
    auto const made_century = [&](std::size_t end) {
      return Atom{.years = century(number), .to = end, .digits = read.count, .several = true, .century = true};
    };
    if (read.count == 4) {
      if (auto const end = number % 10 == 0 ? plural_after(to) : 0)
        return made_several(end, number, number % 100 == 0 ? 100 : 10);
      for (int const before : eras)
        if (number - before > 1440 && number - before <= latest_year)
          return made(to, {number - before - 1, number - before}, true, true);
      if (number > latest_year) return std::nullopt;
      return made(to, number, false);
    }
    if (auto const points = points_for_digits(to, read.count)) {
      if (read.count == 2 && number >= 14 && number <= 20) return made_several(to + points, number * 100, 100);
      if (read.count == 3 && number >= 140 && number < 210) return made_several(to + points, number * 10, 10);
    }
    auto const first = wildcard(to);
    auto const second = wildcard(to + first);
    bool const digit_follows = is_digit(byte(after_blanks(to + first)));
    if (read.count == 3 && first > 0 && !digit_follows && !word_goes_on(to + first))
      return made_several(to + first, number * 10, 10);
    auto const sign = point(to).value; // [16—]: a long dash holds both places
    bool const long_dash = read.count == 2 && (sign == U'\u2014' || sign == U'\u2015') && second == 0;
    if (long_dash && !digit_follows && !word_goes_on(to + first)) return made_several(to + first, number * 100, 100);
    if (read.count == 2 && second > 0 && !word_goes_on(to + first + second))
      return made_several(to + first + second, number * 100, 100);
    if (read.count <= 2 && number > 0 && number <= 21) {
      if (auto const end = century_after(to)) return made_century(end);
      if (auto const end = century_shared_after(to)) return made_century(end);
      if (said_.century && !month_follows(to)) return made_century(to);
      if (said_.republic && number <= 14 && !month_follows(to)) return made(to, {1791 + number, 1792 + number}, true);
    }
    if (read.count == 3 && number >= 450) return made(to, number + 1000, false, true);
    return std::nullopt;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
