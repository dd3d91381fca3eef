// SPDX-License-Identifier: MIT
/// The words about a year in statements of date, in the languages of catalogues. A row has the word without its full
/// stop, in small letters.
///
/// Rules: DCRMR 5.23 (approximately, that is, between, not before, not after) and the rules before it (ca., i.e.,
/// n.d.). The French, German and Italian words are common practice, no source.
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
  no_date,
  reprinted,
  republic, ///< `an`: a year of the French Republic
  century,
  early_half,
  late_half,
  middle_half
};

struct DateWordRow {
  std::string_view words;
  DateWord says;
};
/// A row of several words comes before the row of its first words.
inline constexpr DateWordRow date_words[]{
    {"approximately"sv, DateWord::about},
    {"approx"sv, DateWord::about},
    {"circa"sv, DateWord::about},
    {"ca"sv, DateWord::about},
    {"c"sv, DateWord::about},
    {"about"sv, DateWord::about},
    {"around"sv, DateWord::about},
    {"vers"sv, DateWord::about},
    {"um"sv, DateWord::about},
    {"etwa"sv, DateWord::about},
    {"verso il"sv, DateWord::about},
    {"that is"sv, DateWord::correction},
    {"i.e"sv, DateWord::correction},
    {"i. e"sv, DateWord::correction},
    {"id est"sv, DateWord::correction},
    {"recte"sv, DateWord::correction},
    {"rectius"sv, DateWord::correction},
    {"sc"sv, DateWord::correction},
    {"scil"sv, DateWord::correction},
    {"between"sv, DateWord::between},
    {"entre"sv, DateWord::between},
    {"zwischen"sv, DateWord::between},
    {"and"sv, DateWord::joins},
    {"or"sv, DateWord::joins},
    {"et"sv, DateWord::joins},
    {"ou"sv, DateWord::joins},
    {"und"sv, DateWord::joins},
    {"oder"sv, DateWord::joins},
    {"to"sv, DateWord::to},
    {"bis"sv, DateWord::to},
    {"not before"sv, DateWord::not_before},
    {"after"sv, DateWord::not_before},
    {"nicht vor"sv, DateWord::not_before},
    {"nach"sv, DateWord::not_before},
    {"not after"sv, DateWord::not_after},
    {"before"sv, DateWord::not_after},
    {"nicht nach"sv, DateWord::not_after},
    {"vor"sv, DateWord::not_after},
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
    {"an"sv, DateWord::republic},
    {"first half of the"sv, DateWord::early_half},
    {"first half"sv, DateWord::early_half},
    {"early"sv, DateWord::early_half},
    {"beginning of the"sv, DateWord::early_half},
    {"second half of the"sv, DateWord::late_half},
    {"second half"sv, DateWord::late_half},
    {"last half of the"sv, DateWord::late_half},
    {"late"sv, DateWord::late_half},
    {"end of the"sv, DateWord::late_half},
    {"middle of the"sv, DateWord::middle_half},
    {"mid"sv, DateWord::middle_half},
    {"saec"sv, DateWord::century},
    {"saeculo"sv, DateWord::century},
    {"sec"sv, DateWord::century},
    {"s"sv, DateWord::century},
};
/// Words that make the number before them the number of a century: 18th century, XVIIIe siècle, 18. Jahrhundert.
inline constexpr std::string_view century_words[]{"century"sv, "cent"sv,        "c"sv,   "siècle"sv,
                                                  "siecle"sv,  "jahrhundert"sv, "jh"sv,  "jhd"sv,
                                                  "jhdt"sv,    "secolo"sv,      "sec"sv, "s"sv};

} // namespace detail
} // namespace v0
} // namespace bifolium
