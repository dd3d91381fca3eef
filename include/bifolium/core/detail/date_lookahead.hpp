// SPDX-License-Identifier: MIT
/// Finds years, numerals and words in a statement of date, at a position of its text.
#pragma once

#include <bifolium/core/detail/date_words.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/core/year_range.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Looks ahead in a statement of date. Only its end shows whether a numeral, a word or a range is there. So each
/// function gets a position and returns the position after what it finds.
class DateLookahead {
protected:
  /// A year, or a word for several years: 172-, 18th century.
  struct Atom {
    YearRange years{};
    std::size_t to{}; // position of the byte after it
    int digits{};     // number of digits
    bool several{};   // true for a decade or a century
    bool roman{}, clipped{};
    int opened{};  // number of brackets opened in it, less those closed: 17[25]
    bool parted{}; // true if brackets divide it
  };
  /// What the words before a year say about it.
  struct Said {
    std::size_t from{}; // position of the first of these words
    bool any{}, about{}, bare_c{}, correction{}, between{}, joins{}, to{}, not_before{}, not_after{}, reprinted{};
    bool republic{}, century{};
    DateWord half{};
  };

  std::string_view text_;
  int depth_{}; // number of open brackets
  Said said_{};

  constexpr explicit DateLookahead(std::string_view text) : text_{text} {}
  [[nodiscard]] constexpr TextCursor cursor(std::size_t at) const { return TextCursor{text_, at}; }
  [[nodiscard]] constexpr CodePoint point(std::size_t at) const { return cursor(at).character(); }
  [[nodiscard]] constexpr char byte(std::size_t at) const { return cursor(at).peek(); }
  [[nodiscard]] constexpr std::size_t after_blanks(std::size_t at) const {
    auto blanks = cursor(at);
    blanks.take_blanks();
    return blanks.at();
  }
  [[nodiscard]] constexpr bool word_goes_on(std::size_t at) const { return is_word_letter(point(at).value); }
  [[nodiscard]] constexpr Error error(Problem problem, TextSpan span, std::int64_t limit = 0) const {
    return error_in(text_, span, problem, limit);
  }

  /// Reads the words after a number that make it a century: `th century`, `e siècle`, `. Jh.`. Returns the position of
  /// the byte after them, or 0.
  [[nodiscard]] constexpr std::size_t century_after(std::size_t at) const {
    auto words = cursor(at);
    bool ordinal = false;
    for (std::string_view ending : {"st", "nd", "rd", "th", "ème", "eme", "e", "o", "."})
      if (!ordinal && words.take(ending)) ordinal = ending != ".";
    words.take_blanks();
    for (auto word : century_words) {
      if (word.size() == 1 && !ordinal) continue; // the s of `16 S. Martin` is not a century
      auto end = words;
      if (end.take_in_any_case(word) && !word_goes_on(end.at()) && !end.at_digit()) return end.at();
    }
    return 0;
  }
  [[nodiscard]] constexpr YearRange century(int number) const {
    int const before = (number - 1) * 100;
    switch (said_.half) {
    case DateWord::early_half:
      return {before + 1, before + 50};
    case DateWord::late_half:
      return {before + 51, before + 100};
    case DateWord::middle_half:
      return {before + 26, before + 75};
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
  [[nodiscard]] constexpr Digits digits(std::size_t at) const {
    Digits found;
    while (found.count < 6) {
      if (is_digit(byte(at)))
        found.number = found.number * 10 + (text_[at] - '0'), ++found.count;
      else if (found.count > 0 && found.count < 4 && (byte(at) == '[' || byte(at) == ']') && is_digit(byte(at + 1)) &&
               (byte(at) == '[' || found.opened + depth_ > 0))
        found.opened += text_[at] == '[' ? 1 : -1, found.parted = true;
      else
        break;
      found.to = ++at;
    }
    return found;
  }
  /// Returns the number of bytes of a character for an unknown digit of a year (u, x, X, ? or a dash), or 0 for another
  /// character. MARC 21 writes u, and the extended date-time format X (ISO 8601-2, from memory).
  [[nodiscard]] constexpr std::size_t wildcard(std::size_t at) const {
    if (byte(at) == 'u' || byte(at) == 'x' || byte(at) == 'X' || byte(at) == '?') return 1;
    return is_dash(point(at).value) ? point(at).bytes : 0;
  }
  /// Returns the position of the byte after the s of `1640s` or `1640's`, or 0.
  [[nodiscard]] constexpr std::size_t plural_after(std::size_t at) const {
    auto end = cursor(at);
    if (!end.take('\'')) end.take("\u2019");
    return end.take('s') && !word_goes_on(end.at()) ? end.at() : 0;
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
      return Atom{years, end, read.count, several, false, clipped, read.opened, read.parted};
    };
    if (read.count == 4) {
      if (auto const end = number % 10 == 0 ? plural_after(to) : 0)
        return made(end, {number, number + (number % 100 == 0 ? 99 : 9)}, true);
      for (int const before : eras)
        if (number - before > 1440 && number - before <= latest_year)
          return made(to, {number - before - 1, number - before}, true, true);
      if (number > latest_year) return std::nullopt;
      return made(to, number, false);
    }
    auto const first = wildcard(to);
    auto const second = first > 0 ? wildcard(to + first) : 0;
    bool const digit_follows = is_digit(byte(after_blanks(to + first)));
    if (read.count == 3 && first > 0 && !digit_follows && !word_goes_on(to + first))
      return made(to + first, {number * 10, number * 10 + 9}, true);
    if (read.count == 2 && second > 0 && !word_goes_on(to + first + second))
      return made(to + first + second, {number * 100, number * 100 + 99}, true);
    if (read.count <= 2 && number > 0 && number <= 21) {
      if (auto const end = century_after(to)) return made(end, century(number), true);
      if (said_.century) return made(to, century(number), true);
      if (said_.republic && number <= 14) return made(to, {1791 + number, 1792 + number}, true);
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
      if (has_worth(i) || c == '.' || c == ',' || c == ' ') {
        letters[size++] = c;
        if (has_worth(i)) counted = size, to = i + 1;
        continue;
      }
      bool const opens = c == '[' && i > at && byte(i - 1) != ' ' && has_worth(i + 1);
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
    if (year.bytes > 0) return Atom{year.year, at + year.bytes, 0, false, true, false};
    bool typed = false;
    auto const part = numeral_part(text_, at, typed);
    auto const to = at + part.bytes;
    if (part.bytes == 0 || part.value < 1 || part.value > 21) return std::nullopt;
    if (auto const end = century_after(to)) return Atom{century(part.value), end, 0, true, true, false};
    if (word_goes_on(to)) return std::nullopt;
    if (said_.century) return Atom{century(part.value), to, 0, true, true, false};
    if (said_.republic && part.value <= 14)
      return Atom{{1791 + part.value, 1792 + part.value}, to, 0, true, true, false};
    return std::nullopt;
  }
  [[nodiscard]] constexpr std::optional<Atom> atom(std::size_t at) const {
    return is_digit(byte(at)) ? number_atom(at) : roman_atom(at);
  }

  /// A word of the table at a position, and the position of the byte after it.
  struct WordAt {
    DateWord says{};
    std::size_t to{};
    std::string_view words{};
  };
  /// Keeps the longest word of a table at a position.
  template <std::size_t N> constexpr void find_word(DateWordRow const (&rows)[N], std::size_t at, WordAt& found) const {
    for (auto const& row : rows) {
      auto end = cursor(at);
      if (row.words.size() <= found.words.size() || !end.take_in_any_case(row.words) || word_goes_on(end.at()))
        continue;
      end.take('.');
      found = {row.says, end.at(), row.words};
    }
  }
  [[nodiscard]] constexpr WordAt word(std::size_t at) const {
    WordAt found;
    find_word(date_words, at, found);
    find_word(words_of_another_year, at, found);
    bool const direction = found.says == DateWord::not_before || found.says == DateWord::not_after;
    bool const negated =
        found.words.starts_with("no") || found.words.starts_with("ni") || found.words.starts_with("pas");
    if (found.says != DateWord::about && (!direction || negated)) return found;
    // `c.` and `nach` are also other words: nach Christi Geburt 1543
    bool const year_follows = stands_before_year(found.to) || (direction && month_at(after_blanks(found.to)));
    return year_follows ? found : WordAt{};
  }
  [[nodiscard]] constexpr bool stands_before_year(std::size_t at) const {
    auto const next = byte(after_blanks(at));
    return is_digit(next) || next == '[' || imprint_numeral_after(at) != 0;
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
  /// Returns the position of the byte after a `ca.` or `circa` that stands after its year, or 0. `c` has its full
  /// stop.
  [[nodiscard]] constexpr std::size_t about_after(std::size_t at) const {
    for (auto const& row : date_words) {
      auto end = cursor(at);
      if (row.says != DateWord::about || !end.take_in_any_case(row.words)) continue;
      bool const point = end.take('.');
      if ((row.words.size() == 1 && !point) || word_goes_on(end.at())) continue;
      auto const next = byte(after_blanks(end.at()));
      if (next == '\0' || next == ']' || next == ')' || next == '?' || next == ',' || next == ';') return end.at();
    }
    return 0;
  }
  [[nodiscard]] constexpr std::size_t imprint_numeral_after(std::size_t at) const {
    auto const next = after_blanks(at);
    return next < text_.size() ? imprint_numeral(text_.substr(next)).bytes : 0;
  }

  /// What joins a second year to the one before it: a dash, a stroke or a word, with the brackets round one of the two.
  struct Joint {
    bool slash{}, word{}, alternative{}; ///< alternative: `or`
    std::size_t to{};                    ///< position of the byte after it; 0 if there is none
    int opened{};                        ///< number of brackets opened in it, less those closed: [1640]-45, 1640-[45]
    bool brackets{};
  };
  [[nodiscard]] constexpr Joint joint(std::size_t at) const {
    Joint found;
    auto next = after_blanks(at);
    if (byte(next) == ']' && depth_ > 0 && is_dash(point(next + 1).value))
      found.brackets = true, found.opened = -1, ++next;
    found.slash = byte(next) == '/';
    if (!found.slash && !is_dash(point(next).value)) {
      auto const between = word(next);
      found.word = between.says == DateWord::joins || between.says == DateWord::to;
      found.alternative = between.words == "or" || between.words == "oder" || between.words == "ou";
      found.to = found.word ? between.to : 0;
      return found;
    }
    found.to = after_blanks(next + point(next).bytes);
    if (!found.slash && byte(found.to) == '[') found.brackets = true, ++found.opened, ++found.to;
    return found;
  }
  /// Reads the Roman end of a range that leaves out the hundreds: MDCCLXXXIX-XCII.
  [[nodiscard]] constexpr std::optional<Atom> roman_end(std::size_t at, int first) const {
    bool typed = false;
    auto const part = numeral_part(text_, at, typed);
    auto end = cursor(at + part.bytes);
    end.take('.');
    end.take_blanks();
    bool const ends = end.at_end() || end.peek() == ']' || end.peek() == '[' || end.peek() == ',' || end.peek() == '(';
    if (part.bytes == 0 || part.value > 99 || part.value <= first % 100 || !ends) return std::nullopt;
    return Atom{.years = first - first % 100 + part.value, .to = at + part.bytes, .roman = true};
  }
  /// Reads a second year after `first`, in full or by its last digits (1715-16, 1725/6). It has 0 digits if there is
  /// none.
  [[nodiscard]] constexpr std::optional<Atom> second_year(Joint const& joint, YearRange first, bool roman) const {
    auto const at = after_blanks(joint.to);
    auto const last = digits(at);
    bool const two = last.count == 2 && (!joint.word || joint.alternative);
    if (roman && !joint.word)
      if (auto const end = roman_end(at, first.to)) return end;
    if ((two || (last.count == 1 && !joint.word)) && !word_goes_on(last.to)) {
      int const place = last.count == 1 ? 10 : 100;
      int const year = first.to - first.to % place + last.number;
      if (year <= first.to || (last.count == 1 && last.number == 0)) return std::nullopt;
      return Atom{year, last.to, last.count, false, false, false, last.opened, last.parted};
    }
    return atom(at);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
