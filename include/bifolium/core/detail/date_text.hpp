// SPDX-License-Identifier: MIT
/// A statement of date as text that is looked at by position. Only the end of a date shows whether a numeral, a word or a
/// range is there, so each function of its reader gets a position and returns the position after what it finds. What all of
/// them share is here: the text, the brackets that are open, and what has been said of the year to come.
#pragma once

#include <bifolium/core/detail/date_words.hpp>
#include <bifolium/core/detail/imprint_numeral.hpp>
#include <bifolium/core/detail/month_words.hpp>
#include <bifolium/core/text_cursor.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The text, and where the reader is in it.
class DateText {
protected:
  /// What the words before a year say about it.
  struct Said {
    std::size_t from{}; // position of the first of these words
    std::size_t c_at{}; // position of the c of c1790
    TextSpan part{};    // the word for the part of the book that has the year: colophon
    bool about{}, bare_c{}, correction{}, between{}, not_before{}, not_after{}, reprinted{};
    bool republic{}, century{}, probable{}, colophon{}, preface{};
    DateWord half{};
  };

  std::string_view text_;
  int depth_{}; // number of open brackets
  Said said_{};
  PlaceCounter places_{}; // a date of several years has a doubt for each

  constexpr explicit DateText(std::string_view text) : text_{text} {}
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
  /// The number of a day that can stand before a word: at most `most`, 0 if the word names no day. `stops`: the number
  /// may also be the last of several parts with full stops between, of which nobody sees whether it is one.
  struct DayBefore {
    int most{};
    bool stops{};
    bool unsure{}; ///< no month says that it is a day: MDXX. V. die
  };
  /// Returns the day that can stand before the word at the position: at most 31 before a month, 19 before `Kal.`.
  [[nodiscard]] constexpr DayBefore day_before(std::size_t at) const {
    for (auto const& day : roman_days)
      if (cursor(at).take_in_any_case(day.word)) return {day.most, true};
    if (month_at(at) > 0) return {most_days_of_month, false};
    if (word_of_day_at(at)) return {most_days_of_month, true};
    return day_ends_at(at) ? DayBefore{most_days_of_month, true, true} : DayBefore{};
  }
  /// Returns true before `die` at the end of a statement, without a month.
  [[nodiscard]] constexpr bool day_ends_at(std::size_t at) const {
    for (std::string_view const word : {"die", "dies", "mensis", "die mensis"}) {
      auto end = cursor(at);
      if (!end.take_in_any_case(word) || word_goes_on(end.at())) continue;
      if (numeral_ends(text_, end.at())) return true;
    }
    return false;
  }
  /// Returns true before `die Maii` or `die mensis Maii`, unless the number of the day comes after the month: mensis Maii
  /// die XX.
  [[nodiscard]] constexpr bool word_of_day_at(std::size_t at) const {
    auto look = cursor(at);
    for (bool more = true; more;) {
      more = false;
      for (auto const word : words_of_days)
        if (auto end = look; !more && end.take_in_any_case(word) && !word_goes_on(end.at())) {
          end.take('.');
          more = end.take_blanks();
          if (more) look = end;
        }
    }
    if (look.at() == at || month_at(look.at()) == 0) return false;
    while (!look.at_end() && word_goes_on(look.at())) look.skip(point(look.at()).bytes);
    look.take('.');
    look.take_blanks();
    if (look.take_in_any_case("die")) look.take_blanks();
    char typed = '\0';
    return !look.at_digit() && numeral_part(text_, look.at(), typed).bytes == 0;
  }
  /// Returns true if the number before the position is a day: 16 May, XVI. Maii.
  [[nodiscard]] constexpr bool month_follows(std::size_t at) const {
    return month_at(after_blanks(byte(at) == '.' ? at + 1 : at)) > 0;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
