// SPDX-License-Identifier: MIT
/// The words about a year in statements of date, in the languages of catalogues. A row is the word without its point, in
/// small letters.
///
/// Rules: DCRMR 5.23 (approximately, that is, between, not before, not after) and the rules before it (ca., i.e., n.d.).
/// The French, German and Italian words are common practice, no source.
#pragma once

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What a word says of the year after it, or of the statement.
enum class DateWord : std::uint8_t {
  other,
  about,
  correction,
  between,
  joins, ///< `and`, `or`: between two years
  to,    ///< `to`: between the ends of a range
  not_before,
  not_after,
  no_date,
  reprinted,
  republic, ///< `an`: years of the French Republic
  century,
  early_half,
  late_half,
  middle_half
};

struct DateWordRow {
  std::string_view words;
  DateWord says;
};
/// Rows of several words come before the rows they begin with.
inline constexpr DateWordRow date_words[]{
    {"approximately", DateWord::about},
    {"approx", DateWord::about},
    {"circa", DateWord::about},
    {"ca", DateWord::about},
    {"c", DateWord::about},
    {"about", DateWord::about},
    {"around", DateWord::about},
    {"vers", DateWord::about},
    {"um", DateWord::about},
    {"etwa", DateWord::about},
    {"verso il", DateWord::about},
    {"that is", DateWord::correction},
    {"i.e", DateWord::correction},
    {"i. e", DateWord::correction},
    {"id est", DateWord::correction},
    {"recte", DateWord::correction},
    {"rectius", DateWord::correction},
    {"sc", DateWord::correction},
    {"scil", DateWord::correction},
    {"between", DateWord::between},
    {"entre", DateWord::between},
    {"zwischen", DateWord::between},
    {"and", DateWord::joins},
    {"or", DateWord::joins},
    {"et", DateWord::joins},
    {"ou", DateWord::joins},
    {"und", DateWord::joins},
    {"oder", DateWord::joins},
    {"to", DateWord::to},
    {"bis", DateWord::to},
    {"not before", DateWord::not_before},
    {"after", DateWord::not_before},
    {"nicht vor", DateWord::not_before},
    {"nach", DateWord::not_before},
    {"not after", DateWord::not_after},
    {"before", DateWord::not_after},
    {"nicht nach", DateWord::not_after},
    {"vor", DateWord::not_after},
    {"n.d", DateWord::no_date},
    {"n. d", DateWord::no_date},
    {"nd", DateWord::no_date},
    {"s.a", DateWord::no_date},
    {"s. a", DateWord::no_date},
    {"s.d", DateWord::no_date},
    {"s. d", DateWord::no_date},
    {"o.j", DateWord::no_date},
    {"o. j", DateWord::no_date},
    {"z.j", DateWord::no_date},
    {"z. j", DateWord::no_date},
    {"no date", DateWord::no_date},
    {"undated", DateWord::no_date},
    {"sine anno", DateWord::no_date},
    {"sans date", DateWord::no_date},
    {"ohne jahr", DateWord::no_date},
    {"date of publication not identified", DateWord::no_date},
    {"date of production not identified", DateWord::no_date},
    {"uuuu", DateWord::no_date},
    {"reprinted", DateWord::reprinted},
    {"re-printed", DateWord::reprinted},
    {"an", DateWord::republic},
    {"first half of the", DateWord::early_half},
    {"first half", DateWord::early_half},
    {"early", DateWord::early_half},
    {"beginning of the", DateWord::early_half},
    {"second half of the", DateWord::late_half},
    {"second half", DateWord::late_half},
    {"last half of the", DateWord::late_half},
    {"late", DateWord::late_half},
    {"end of the", DateWord::late_half},
    {"middle of the", DateWord::middle_half},
    {"mid", DateWord::middle_half},
    {"saec", DateWord::century},
    {"saeculo", DateWord::century},
    {"sec", DateWord::century},
    {"s", DateWord::century},
};
/// What makes a number of the word before it the number of a century: 18th century, XVIIIe siècle, 18. Jahrhundert.
inline constexpr std::string_view century_words[]{"century", "cent", "c",    "siècle", "siecle", "jahrhundert",
                                                  "jh",      "jhd",  "jhdt", "secolo", "sec",    "s"};

} // namespace detail
} // namespace v0
} // namespace bifolium
