// SPDX-License-Identifier: MIT
/// What a word can say about a year, and the words that join two years or say that no date is known, in the languages of
/// catalogues. Words of a date mean one thing each, whichever language they are of, so all tables give one of these
/// meanings. A row has the word without its full stop, in small letters. The words for `about` are in core/about_words.hpp.
///
/// Rules: DCRMR 5.23 (between) and the rules before it (n.d.). The Latin, French, German, Italian and Spanish words are
/// common practice, no source.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// What a word says about the year after it, or about the statement.
enum class DateWord : std::uint8_t {
  other,
  about,
  correction,
  between,
  joins, ///< `and`, `or` between two years
  to,    ///< `to` between the ends of a range
  not_before,
  not_after,
  or_later,   ///< after a year: it or a later one
  or_earlier, ///< after a year: it or an earlier one
  no_date,
  reprinted,
  republic, ///< `an`: a year of the French Republic
  our_era,  ///< A.D.: it changes nothing
  colophon, ///< a part of the book that says when it was printed, as the title does
  preface,  ///< a part of the book that has a date of its own
  century,
  early_half,
  late_half,
  middle_half,
  first_quarter, // the quarters follow one another
  second_quarter,
  third_quarter,
  fourth_quarter
};

struct DateWordRow {
  std::string_view words;
  DateWord says;
};
/// A row of several words comes before the row of its first words.
inline constexpr DateWordRow date_words[]{
    {"between"sv, DateWord::between},
    {"tra il"sv, DateWord::between},
    {"tra"sv, DateWord::between},
    {"fra il"sv, DateWord::between},
    {"fra"sv, DateWord::between},
    {"entre"sv, DateWord::between},
    {"zwischen"sv, DateWord::between},
    {"and"sv, DateWord::joins},
    {"or"sv, DateWord::joins},
    {"et"sv, DateWord::joins},
    {"ou"sv, DateWord::joins},
    {"und"sv, DateWord::joins},
    {"oder"sv, DateWord::joins},
    {"y"sv, DateWord::joins},
    {"e"sv, DateWord::joins},
    {"e il"sv, DateWord::joins},
    {"o"sv, DateWord::joins},
    {"&"sv, DateWord::joins},
    {"to"sv, DateWord::to},
    {"bis"sv, DateWord::to},
    {"à"sv, DateWord::to},
    {"a"sv, DateWord::to},
    {"al"sv, DateWord::to},
    {"n.d"sv, DateWord::no_date},
    {"n. d"sv, DateWord::no_date},
    {"nd"sv, DateWord::no_date},
    {"s.a"sv, DateWord::no_date},
    {"s. a"sv, DateWord::no_date},
    {"s.d"sv, DateWord::no_date},
    {"s. d"sv, DateWord::no_date},
    {"o.j"sv, DateWord::no_date},
    {"o. j"sv, DateWord::no_date},
    {"z.j"sv, DateWord::no_date},
    {"z. j"sv, DateWord::no_date},
    {"no date"sv, DateWord::no_date},
    {"undated"sv, DateWord::no_date},
    {"sine anno"sv, DateWord::no_date},
    {"sans date"sv, DateWord::no_date},
    {"ohne jahr"sv, DateWord::no_date},
    {"date of publication not identified"sv, DateWord::no_date},
    {"date of production not identified"sv, DateWord::no_date},
    {"uuuu"sv, DateWord::no_date},
    {"reprinted"sv, DateWord::reprinted},
    {"re-printed"sv, DateWord::reprinted},
    {"repr"sv, DateWord::reprinted},
    {"an"sv, DateWord::republic},
    {"a.d"sv, DateWord::our_era},
    {"a. d"sv, DateWord::our_era},
    {"ad"sv, DateWord::our_era},
    {"c.e"sv, DateWord::our_era},
    {"ce"sv, DateWord::our_era},
    {"n. chr"sv, DateWord::our_era},
    {"n.chr"sv, DateWord::our_era},
    {"nach chr"sv, DateWord::our_era},
    {"ap. j.-c"sv, DateWord::our_era},
    {"d.c"sv, DateWord::our_era},
};

} // namespace detail
} // namespace v0
} // namespace bifolium
