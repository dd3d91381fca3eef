// SPDX-License-Identifier: MIT
/// Finds what stands between the years of a statement of date, at a position of its text: words about a year, remarks
/// after it, and what joins a second year to the first.
#pragma once

#include <bifolium/core/about_words.hpp>
#include <bifolium/core/detail/century_words.hpp>
#include <bifolium/core/detail/date_numerals.hpp>
#include <bifolium/core/detail/dated_parts.hpp>
#include <bifolium/core/detail/era_words.hpp>
#include <bifolium/core/detail/other_year_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Looks ahead from a year to the words and the year after it, and from a word to the year that it is about.
class DateLookahead : protected DateNumerals {
protected:
  using DateNumerals::DateNumerals;

  /// A year or a range, with everything that the statement says about it.
  struct Item {
    YearRange written{}, years{};
    TextSpan at{};
    bool probable{}, about{}, doubled{}, open_before{}, open_after{}, roman{}, clipped{}, joined{}, republic{};
    bool ends{};      ///< a range of which each end is printed and supplied: MDCL [1650]-MDCLII [1652]
    bool copyright{}; ///< c1649, which beside another year is that of the copyright
    TextSpan era{};   ///< a word or sign that the years are of another era, or empty
    DateWord part{};  ///< the kind of the part of the book that has the years: `colophon`, `preface`, or `other`
  };
  /// A word of the table at a position, and the position of the byte after it.
  struct WordAt {
    DateWord says{};
    std::size_t to{};
    std::string_view words{};
  };
  /// Keeps a word that is at a position, if it is longer than the one found.
  constexpr void find_word(std::string_view words, DateWord says, std::size_t at, WordAt& found) const {
    if (words.size() <= found.words.size() || small_letter(byte(at)) != small_letter(words[0])) return; // most words
    auto end = cursor(at);
    if (!end.take_in_any_case(words) || word_goes_on(end.at())) return;
    end.take('.');
    found = {says, end.at(), words};
  }
  /// Keeps the longest word of a table at a position.
  template <std::size_t N> constexpr void find_word(DateWordRow const (&rows)[N], std::size_t at, WordAt& found) const {
    for (auto const& row : rows) find_word(row.words, row.says, at, found);
  }
  [[nodiscard]] constexpr WordAt word(std::size_t at) const {
    WordAt found;
    find_word(date_words, at, found);
    find_word(words_of_centuries, at, found);
    for (auto const words : about_words) find_word(words, DateWord::about, at, found);
    find_word(words_of_another_year, at, found);
    find_word(parts_with_dates, at, found);
    if (found.words == "mid" && is_numeral_mid(at)) return {};
    // mid-17th century, post-1640: no minus
    auto const hyphen = found.to > at && found.to == at + found.words.size() ? point(found.to) : CodePoint{};
    bool const half = found.says >= DateWord::early_half;
    if (is_dash(hyphen.value) && (half || found.words == "post" || found.words == "pre" || found.words == "ante") &&
        (is_digit(byte(found.to + hyphen.bytes)) || numeral_worth(point(found.to + hyphen.bytes).value) > 0))
      found.to += hyphen.bytes;
    bool const direction = found.says == DateWord::not_before || found.says == DateWord::not_after;
    bool const negated =
        found.words.starts_with("no") || found.words.starts_with("ni") || found.words.starts_with("pas");
    if (found.says != DateWord::about && (!direction || negated)) return found;
    // `c.` and `nach` are also other words: nach Christi Geburt 1543
    bool const about = direction && word_about_at(after_blanks(found.to)); // after c. 1607
    bool const year_follows = about || stands_before_year(found.to) || (direction && month_at(after_blanks(found.to)));
    return year_follows ? found : WordAt{};
  }
  /// Returns true at MID for 1499, in capitals and before no number of a century.
  [[nodiscard]] constexpr bool is_numeral_mid(std::size_t at) const {
    auto end = cursor(at);
    if (!end.take("MID")) return false;
    end.take_dash();
    end.take_blanks();
    return !end.at_digit() && numeral_worth(point(end.at()).value) == 0;
  }
  /// Returns true before a word for `about` with a year after it.
  [[nodiscard]] constexpr bool word_about_at(std::size_t at) const {
    WordAt found;
    for (auto const words : about_words) find_word(words, DateWord::about, at, found);
    return found.to > at && stands_before_year(found.to);
  }
  [[nodiscard]] constexpr bool stands_before_year(std::size_t at) const {
    auto const next = byte(after_blanks(at));
    return is_digit(next) || next == '[' || imprint_numeral_after(at) != 0;
  }
  /// Returns the position of the byte after a `ca.` or `circa` that stands after its year, or 0. `c` has its full
  /// stop.
  [[nodiscard]] constexpr std::size_t about_after(std::size_t at) const {
    for (auto const words : about_words) {
      auto end = cursor(at);
      if (!end.take_in_any_case(words)) continue;
      bool const point = end.take('.');
      if ((words.size() == 1 && !point) || word_goes_on(end.at())) continue;
      auto const next = byte(after_blanks(end.at()));
      if (next == '\0' || next == ']' || next == ')' || next == '?' || next == ',' || next == ';') return end.at();
    }
    return 0;
  }
  /// Reads a remark after a year: `?`, `ca.`, `or later`, or the dash of a range without an end. Returns the position of
  /// the byte after it, or 0.
  [[nodiscard]] constexpr std::size_t remark(Item& read, std::size_t at, bool several) const {
    if (byte(at) == '?') {
      read.probable = true;
      return at + 1;
    }
    // 1641[?], 1641 (?)
    if ((byte(at) == '[' && byte(at + 1) == '?' && byte(at + 2) == ']') ||
        (byte(at) == '(' && byte(at + 1) == '?' && byte(at + 2) == ')')) {
      read.probable = true;
      return at + 3;
    }
    if (auto const end = about_after(at)) {
      read.about = true;
      return end;
    }
    auto const said = word(at);
    auto const after_dash = after_blanks(at + point(at).bytes);
    bool const ends =
        after_dash == text_.size() || byte(after_dash) == ']' || byte(after_dash) == ')' || byte(after_dash) == '>';
    // 1640-, 1640+: the last volume has not come out
    bool const begun = !several && (is_dash(point(at).value) || byte(at) == '+') && ends;
    read.open_after = read.open_after || begun || said.says == DateWord::or_later;
    read.open_before = read.open_before || said.says == DateWord::or_earlier;
    if (said.says == DateWord::or_later || said.says == DateWord::or_earlier) return said.to;
    return begun ? at + point(at).bytes : 0;
  }
  /// Reads the part of a century that stands after it: 15th cent., second half; saec. XV ex. Returns the part and the
  /// position of the byte after it, 0 if there is none.
  [[nodiscard]] constexpr WordAt part_after_century(std::size_t at) const {
    WordAt found;
    auto look = cursor(at);
    look.take('.');
    look.take_blanks();
    bool const round = look.take('('), comma = !round && look.take(',');
    look.take_blanks();
    find_word(words_after_century, look.at(), found);
    if (!round && !comma && found.words.size() > 3 && !found.words.ends_with("eunte")) return {};
    return at_end_of_remark(found, round, "])?,;:");
  }
  /// Reads the part of the book that stands after its year: 1608 in the colophon, 1605 (preface). Returns its kind and the
  /// position of the byte after it, 0 if there is none.
  [[nodiscard]] constexpr WordAt part_after(std::size_t at) const {
    WordAt found;
    auto look = cursor(at);
    bool const comma = look.take(',');
    look.take_blanks();
    bool const round = !comma && look.take('(');
    look.take_blanks();
    find_word(parts_with_dates, look.at(), found);
    for (auto const words : words_before_part)
      if (auto part = look; part.take_in_any_case(words) && part.take_blanks())
        find_word(parts_with_dates, part.at(), found);
    return at_end_of_remark(found, round, comma ? "])" : "])?,;."); // after a colon comes the year of the part
  }
  /// Returns a word after a year, with its bracket, if the statement ends there, or one of these signs follows.
  [[nodiscard]] constexpr WordAt at_end_of_remark(WordAt found, bool round, std::string_view signs) const {
    if (found.to == 0) return {};
    auto end = cursor(found.to);
    if (round && !end.take(')')) return {};
    found.to = end.at();
    end.take_blanks();
    return end.at_end() || signs.find(end.peek()) != std::string_view::npos ? found : WordAt{};
  }
  /// Returns the word for another era that begins at a position, or an empty span. `after` is true after a year, where
  /// nothing but the end of a statement, a stop or a bracket comes next: the A. H. of 1725 A. H. Smith is a name.
  [[nodiscard]] constexpr TextSpan era_at(std::size_t at, bool after) const {
    TextSpan found;
    auto const look = [&](std::string_view words) {
      if (small_letter(byte(at)) != words[0]) return;
      auto end = cursor(at);
      if (!end.take_in_any_case(words) || word_goes_on(end.at())) return;
      end.take('.');
      auto next = end;
      next.take_blanks();
      bool const ends = next.at_end() || std::string_view{"[](),;:=/<>?."}.find(next.peek()) != std::string_view::npos;
      if ((after ? ends : next.at_digit()) && end.at() > found.to) found = {at, end.at()};
    };
    for (auto const& one : era_words)
      if (after || one.before_year) look(one.word);
    return found;
  }
  /// Returns the sign that makes the year after it negative, -1725, or an empty span. Nothing that is not read comes
  /// between `read_to` and it, or it begins what is in brackets; between two years it joins them.
  [[nodiscard]] constexpr TextSpan minus_at(std::size_t at, std::size_t read_to) const {
    auto const sign = point(at);
    auto const next = at + sign.bytes;
    bool const minus = is_dash(sign.value) || sign.value == U'\u2212';
    bool const year = is_digit(byte(next)) || (after_blanks(next) == next && imprint_numeral_after(next) > 0);
    if (!minus || !year) return {};
    auto before = at;
    for (auto blank = blank_before(text_, before); blank != 0; blank = blank_before(text_, before)) before -= blank;
    bool const opens = before > 0 && std::string_view{"[(<"}.find(text_[before - 1]) != std::string_view::npos;
    return opens || before <= read_to ? TextSpan{at, next} : TextSpan{};
  }
  [[nodiscard]] constexpr std::size_t imprint_numeral_after(std::size_t at) const {
    auto const next = after_blanks(at);
    return next < text_.size() ? imprint_numeral(text_.substr(next)).bytes : 0;
  }

  /// What joins a second year to the one before it: a dash, a stroke or a word, with the brackets round one of the two.
  struct Joint {
    bool slash{}, word{}, alternative{}; ///< alternative: `or`
    bool about{};                        ///< the word before the second year says that it is not exact
    std::size_t to{};                    ///< position of the byte after it; 0 if there is none
    int opened{};                        ///< number of brackets opened in it, less those closed: [1640]-45, 1640-[45]
    bool brackets{};
  };
  /// Takes `ca.` before the second year into what joins the two.
  [[nodiscard]] constexpr Joint about_second(Joint found) const {
    auto const said = found.to > 0 ? word(after_blanks(found.to)) : WordAt{};
    if (said.says == DateWord::about) found.about = true, found.to = said.to;
    return found;
  }
  [[nodiscard]] constexpr Joint joint(std::size_t at) const {
    Joint found;
    auto next = after_blanks(at);
    if (byte(next) == ']' && depth_ > 0 && is_dash(point(next + 1).value))
      found.brackets = true, found.opened = -1, ++next;
    else if (byte(next) == '[' && is_dash(point(next + 1).value))
      found.brackets = true, found.opened = 1, ++next; // 1789 [-1792]
    found.slash = byte(next) == '/';
    if (!found.slash && !is_dash(point(next).value)) {
      auto const between = word(next);
      found.word = between.says == DateWord::joins || between.says == DateWord::to;
      found.alternative =
          between.words == "or" || between.words == "oder" || between.words == "ou" || between.words == "o";
      found.to = found.word ? between.to : 0;
      return about_second(found);
    }
    found.to = after_blanks(next + point(next).bytes);
    if (!found.slash && byte(found.to) == '[') found.brackets = true, ++found.opened, ++found.to;
    if (byte(found.to) == '<') ++found.to; // 1620-<1625>: it may still change
    return about_second(found);
  }
  /// Reads the Roman end of a range that leaves out the hundreds: MDCCLXXXIX-XCII.
  [[nodiscard]] constexpr std::optional<Atom> roman_end(std::size_t at, int first) const {
    char typed = '\0';
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
  [[nodiscard]] constexpr std::optional<Atom> second_year(Joint const& joint, Atom const& before) const {
    auto const at = after_blanks(joint.to);
    if (before.century || said_.republic) return atom(at);
    auto const first = before.years;
    auto const last = digits(at, depth_ + joint.opened);
    bool const two = last.count == 2 && (!joint.word || joint.alternative);
    if (before.roman && !joint.word)
      if (auto const end = roman_end(at, first.to)) return end;
    bool const one = last.count == 1 && (!joint.word || (joint.alternative && !month_follows(last.to)));
    if (last.count == 2 && points_for_digits(last.to, 2) > 0) return atom(at); // 17..-18..
    if ((two || one) && !word_goes_on(last.to)) {
      int const place = last.count == 1 ? 10 : 100;
      int const year = first.to - first.to % place + last.number;
      if (year <= first.to || (last.count == 1 && last.number == 0)) return std::nullopt;
      return Atom{.years = year, .to = last.to, .digits = last.count, .opened = last.opened, .parted = last.parted};
    }
    if (last.count == 4 && last.parted && last.number <= latest_year)
      return Atom{.years = last.number, .to = last.to, .digits = 4, .opened = last.opened, .parted = true};
    return atom(at);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
