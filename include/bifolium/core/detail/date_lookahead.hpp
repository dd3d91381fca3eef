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
  [[nodiscard]] constexpr std::optional<Atom> number_atom(std::size_t at) const {
    auto const read = digits(at);
    auto const to = read.to;
    int const number = read.number;
    auto const made = [&](std::size_t end, YearRange years, bool several, bool clipped = false) {
      return Atom{years, end, read.count, several, false, clipped, read.opened, read.parted};
    };
    if (read.count == 4) {
      if (byte(to) == 's' && !word_goes_on(to + 1) && number % 10 == 0)
        return made(to + 1, {number, number + (number % 100 == 0 ? 99 : 9)}, true);
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
  [[nodiscard]] constexpr std::optional<Atom> roman_atom(std::size_t at) const {
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
  [[nodiscard]] constexpr WordAt word(std::size_t at) const {
    WordAt found;
    for (auto const& row : date_words) {
      auto end = cursor(at);
      if (row.words.size() <= found.words.size() || !end.take_in_any_case(row.words) || word_goes_on(end.at()))
        continue;
      end.take('.');
      found = {row.says, end.at(), row.words};
    }
    auto const next = byte(after_blanks(found.to));
    if (found.says == DateWord::about && !is_digit(next) && next != '[' && imprint_numeral_after(found.to) == 0)
      return {};
    return found;
  }
  [[nodiscard]] constexpr std::size_t imprint_numeral_after(std::size_t at) const {
    auto const next = after_blanks(at);
    return next < text_.size() ? imprint_numeral(text_.substr(next)).bytes : 0;
  }

  /// Reads a second year after `first`, in full or by its last digits (1715-16, 1725/6). It has 0 digits if there is
  /// none.
  [[nodiscard]] constexpr std::optional<Atom> second_year(std::size_t at, YearRange first, bool full_only) const {
    at = after_blanks(at);
    auto const last = digits(at);
    if (!full_only && (last.count == 1 || last.count == 2) && !word_goes_on(last.to)) {
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
