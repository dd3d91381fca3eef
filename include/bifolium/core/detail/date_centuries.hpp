// SPDX-License-Identifier: MIT
/// Centuries, and their halves and quarters, as years. A number is a century only by the words about it, of which one may stand
/// for two numbers (16th or 17th century), so the words after it are looked for before it is taken for a year.
#pragma once

#include <bifolium/core/detail/century_words.hpp>
#include <bifolium/core/detail/date_text.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>
#include <bifolium/core/year_range.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The words after the number of a century, and the years that it has.
class DateCenturies : protected DateText {
protected:
  using DateText::DateText;

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
};

} // namespace detail
} // namespace v0
} // namespace bifolium
