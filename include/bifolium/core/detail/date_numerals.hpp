// SPDX-License-Identifier: MIT
/// Finds the years that figures and Roman numerals mean, at a position of a statement of date: 1725, 172-, 1640s, 725,
/// 17[25], M.D.XLIII, an VII, 18th century. What a number means depends on the word before it and on the bytes after
/// it, so a number is found together with its end.
#pragma once

#include <bifolium/core/detail/century_words.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>
#include <bifolium/core/detail/month_words.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/core/year_range.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Numbers at a position. A statement of date is read by position: only its end shows whether a numeral, a word or a
/// range is there. So each function gets a position and returns the position after what it finds.
class DateNumerals {
protected:
  /// A year, or a word for several years: 172-, 18th century.
  struct Atom {
    YearRange years{};
    std::size_t to{}; // position of the byte after it
    int digits{};     // number of digits
    bool several{};   // true for a decade or a century
    bool century{};   // true for a century
    bool roman{}, clipped{};
    int opened{};   // number of brackets opened in it, less those closed: 17[25]
    bool parted{};  // true if brackets divide it
    bool initial{}; // true if its last letter may be an initial
  };
  /// What the words before a year say about it.
  struct Said {
    std::size_t from{}; // position of the first of these words
    std::size_t c_at{}; // position of the c of c1790
    bool any{}, about{}, bare_c{}, correction{}, between{}, joins{}, to{}, not_before{}, not_after{}, reprinted{};
    bool republic{}, century{}, probable{}, colophon{}, preface{};
    DateWord half{};
  };

  std::string_view text_;
  int depth_{}; // number of open brackets
  Said said_{};
  PlaceCounter places_{}; // a date of several years has a doubt for each

  constexpr explicit DateNumerals(std::string_view text) : text_{text} {}
  [[nodiscard]] constexpr TextCursor cursor(std::size_t at) const { return TextCursor{text_, at}; }
  [[nodiscard]] constexpr CodePoint point(std::size_t at) const { return cursor(at).character(); }
  [[nodiscard]] constexpr char byte(std::size_t at) const { return cursor(at).peek(); }
  [[nodiscard]] constexpr std::size_t after_blanks(std::size_t at) const {
    auto blanks = cursor(at);
    blanks.take_blanks();
    return blanks.at();
  }
  [[nodiscard]] constexpr bool word_goes_on(std::size_t at) const { return is_word_letter(point(at).value); }
  [[nodiscard]] constexpr Error error(Problem problem, TextSpan span, std::int64_t limit = 0) {
    return error_at(problem, places_.place(text_, span.from), span.of(text_), limit);
  }

  /// Returns the place of a month in the table of months, from 1, or 0 if none is there.
  [[nodiscard]] constexpr std::size_t month_at(std::size_t at) const {
    std::size_t place = 0;
    for (auto const beginning : month_beginnings) {
      ++place;
      if (cursor(at).take_in_any_case(beginning)) return place;
    }
    return 0;
  }
  /// Returns true before a month, or a day from which Romans counted back: XII. Kal. Maii.
  [[nodiscard]] constexpr bool day_named_at(std::size_t at) const {
    for (auto const word : {"kal", "cal.", "calend", "idus", "id.", "non.", "nonas"})
      if (cursor(at).take_in_any_case(word)) return true;
    return month_at(at) > 0;
  }
  /// Returns true if the number before the position is a day: 16 May, XVI. Maii.
  [[nodiscard]] constexpr bool month_follows(std::size_t at) const {
    return month_at(after_blanks(byte(at) == '.' ? at + 1 : at)) > 0;
  }

  /// Reads the words after a number that make it a century: `th century`, `e siècle`, `. Jh.`. Returns the position of
  /// the byte after them, or 0.
  [[nodiscard]] constexpr std::size_t century_after(std::size_t at) const {
    auto words = cursor(at);
    bool ordinal = false;
    for (std::string_view ending : {"st", "nd", "rd", "th", "ème", "eme", "e", "o", "."})
      if (!ordinal && (ending == "o" ? words.take(ending) : words.take_in_any_case(ending))) ordinal = ending != ".";
    words.take_blanks();
    for (auto word : century_words) {
      if (word.size() == 1 && !ordinal) continue; // the s of `16 S. Martin` is not a century
      auto end = words;
      if (end.take_in_any_case(word) && !word_goes_on(end.at()) && !end.at_digit()) return end.at();
    }
    return 0;
  }
  /// Reads the ending of the number of a century that leaves the word to the next one, with which a word or a dash joins
  /// it: the `th` of `16th or 17th century`. Returns the position of the byte after it, or 0.
  [[nodiscard]] constexpr std::size_t century_shared_after(std::size_t at) const {
    auto first = cursor(at);
    for (std::string_view ending : {"st", "nd", "rd", "th", "ème", "eme", "e", "."})
      if (auto end = cursor(at); first.at() == at && end.take(ending) && !word_goes_on(end.at())) first = end;
    auto const to = first.at();
    if (word_goes_on(to)) return 0;
    first.take_blanks();
    bool joined = first.take_dash() || first.take('/');
    for (std::string_view word : {"or", "and", "to", "oder", "und", "bis", "ou", "et", "o", "e", "y"})
      joined = joined || first.take_word(word);
    first.take_blanks();
    for (auto half : {"early", "late", "beginning of the", "end of the", "mid"}) // of the second alone
      if (joined && first.take_word(half)) first.take_blanks();
    char typed = '\0';
    auto const number = first.take_number(21);
    auto const roman = number ? NumeralPart{} : numeral_part(text_, first.at(), typed);
    first.skip(roman.bytes);
    return joined && (number || (roman.value > 0 && roman.value <= 21)) && century_after(first.at()) > 0 ? to : 0;
  }
  [[nodiscard]] constexpr YearRange century(int number) const {
    return part_of_century((number - 1) * 100, said_.half);
  }
  /// Returns the years of a half, a quarter or all of a century, before which `before` years passed.
  [[nodiscard]] static constexpr YearRange part_of_century(int before, DateWord part) {
    switch (part) {
    case DateWord::early_half:
      return {before + 1, before + 50};
    case DateWord::late_half:
      return {before + 51, before + 100};
    case DateWord::middle_half:
      return {before + 26, before + 75};
    case DateWord::first_quarter:
    case DateWord::second_quarter:
    case DateWord::third_quarter:
    case DateWord::fourth_quarter: {
      int const quarter = static_cast<int>(part) - static_cast<int>(DateWord::first_quarter);
      return {before + 25 * quarter + 1, before + 25 * quarter + 25};
    }
    default:
      return {before + 1, before + 100};
    }
  }
  /// Digits, also across brackets that divide them (17[25]): their number and their value.
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
      else if (found.count > 0 && found.count < 4 && (byte(at) == '[' || byte(at) == ']') && is_digit(byte(at + 1)) &&
               (byte(at) == '[' || found.opened + open > 0))
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
  [[nodiscard]] constexpr std::optional<Atom> roman_atom(std::size_t at) const {
    if (auto const parted = parted_numeral(at)) return parted;
    auto const year = imprint_numeral(text_.substr(at));
    if (year.bytes > 0) {
      auto const to = at + year.bytes;
      // MDL. XII. Maii: what a blank parts from a numeral without blanks is the day, if a month follows
      bool const day = year.to_first_blank > 0 && year.to_first_blank < year.bytes &&
                       year.year - year.before_blank <= 31 && day_named_at(after_blanks(byte(to) == '.' ? to + 1 : to));
      if (day) return Atom{.years = year.before_blank, .to = at + year.to_first_blank, .roman = true};
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
