// SPDX-License-Identifier: MIT
/// The words about a year in statements of date, in the languages of catalogues. A row has the word without its full
/// stop, in small letters. The words for `about` are in core/about_words.hpp.
///
/// Rules: DCRMR 5.23 (that is, between, not before, not after) and the rules before it (i.e.,
/// n.d.). The Latin, French, German, Italian and Spanish words are common practice, no source.
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
    {"1. Hälfte"sv, DateWord::early_half},
    {"erste Hälfte"sv, DateWord::early_half},
    {"Anfang"sv, DateWord::early_half},
    {"première moitié du"sv, DateWord::early_half},
    {"début du"sv, DateWord::early_half},
    {"inizio"sv, DateWord::early_half},
    {"2. Hälfte"sv, DateWord::late_half},
    {"zweite Hälfte"sv, DateWord::late_half},
    {"Ende"sv, DateWord::late_half},
    {"seconde moitié du"sv, DateWord::late_half},
    {"fin du"sv, DateWord::late_half},
    {"fine"sv, DateWord::late_half},
    {"Mitte"sv, DateWord::middle_half},
    {"milieu du"sv, DateWord::middle_half},
    {"mid"sv, DateWord::middle_half},
    {"saec"sv, DateWord::century},
    {"saeculo"sv, DateWord::century},
    {"sec"sv, DateWord::century},
    {"s"sv, DateWord::century},
    {"siglo"sv, DateWord::century},
    {"século"sv, DateWord::century},
};
/// The words that correct a year or open a range. They have a table of their own, so that each is made in few steps.
inline constexpr DateWordRow words_of_another_year[]{
    {"that is"sv, DateWord::correction},
    {"i.e"sv, DateWord::correction},
    {"i. e"sv, DateWord::correction},
    {"id est"sv, DateWord::correction},
    {"recte"sv, DateWord::correction},
    {"rectius"sv, DateWord::correction},
    {"sc"sv, DateWord::correction},
    {"scil"sv, DateWord::correction},
    {"vere"sv, DateWord::correction},
    {"verius"sv, DateWord::correction},
    {"in fact"sv, DateWord::correction},
    {"really"sv, DateWord::correction},
    {"actually"sv, DateWord::correction},
    {"sic for"sv, DateWord::correction},
    {"error for"sv, DateWord::correction},
    {"misprint for"sv, DateWord::correction},
    {"misprinted for"sv, DateWord::correction},
    {"das heißt"sv, DateWord::correction},
    {"d.h"sv, DateWord::correction},
    {"d. h"sv, DateWord::correction},
    {"d.i"sv, DateWord::correction},
    {"d. i"sv, DateWord::correction},
    {"vielmehr"sv, DateWord::correction},
    {"vielm"sv, DateWord::correction},
    {"eigentlich"sv, DateWord::correction},
    {"sic, for"sv, DateWord::correction},
    {"erroneously for"sv, DateWord::correction},
    {"es decir"sv, DateWord::correction},
    {"c'est-à-dire"sv, DateWord::correction},
    {"c.-à-d"sv, DateWord::correction},
    {"cioè"sv, DateWord::correction},
    {"not before"sv, DateWord::not_before},
    {"after"sv, DateWord::not_before},
    {"in or after"sv, DateWord::not_before},
    {"since"sv, DateWord::not_before},
    {"seit"sv, DateWord::not_before},
    {"frühestens"sv, DateWord::not_before},
    {"nicht vor"sv, DateWord::not_before},
    {"nach"sv, DateWord::not_before},
    {"pas avant"sv, DateWord::not_before},
    {"après"sv, DateWord::not_before},
    {"non prima del"sv, DateWord::not_before},
    {"dopo il"sv, DateWord::not_before},
    {"no antes de"sv, DateWord::not_before},
    {"después de"sv, DateWord::not_before},
    {"non ante"sv, DateWord::not_before},
    {"post"sv, DateWord::not_before},
    {"not after"sv, DateWord::not_after},
    {"before"sv, DateWord::not_after},
    {"in or before"sv, DateWord::not_after},
    {"by"sv, DateWord::not_after},
    {"until"sv, DateWord::not_after},
    {"spätestens"sv, DateWord::not_after},
    {"nicht nach"sv, DateWord::not_after},
    {"vor"sv, DateWord::not_after},
    {"pas après"sv, DateWord::not_after},
    {"avant"sv, DateWord::not_after},
    {"non dopo il"sv, DateWord::not_after},
    {"prima del"sv, DateWord::not_after},
    {"no después de"sv, DateWord::not_after},
    {"antes de"sv, DateWord::not_after},
    {"non post"sv, DateWord::not_after},
    {"ante"sv, DateWord::not_after},
    {"or later"sv, DateWord::or_later},
    {"or after"sv, DateWord::or_later},
    {"oder später"sv, DateWord::or_later},
    {"ou plus tard"sv, DateWord::or_later},
    {"o dopo"sv, DateWord::or_later},
    {"or earlier"sv, DateWord::or_earlier},
    {"or before"sv, DateWord::or_earlier},
    {"oder früher"sv, DateWord::or_earlier},
    {"ou plus tôt"sv, DateWord::or_earlier},
    {"o prima"sv, DateWord::or_earlier},
};
/// A word for another era. It stands directly after the year: 1221 AH, 50 v. Chr. Some stand before it as well: AH 1221, anno
/// mundi 5521. Before a year since printing began such letters are the initials of a printer or bookseller.
struct EraWord {
  std::string_view word;
  bool before_year;
};
inline constexpr EraWord era_words[]{{"b.c"sv, false},
                                     {"bc"sv, false},
                                     {"b. c"sv, false},
                                     {"b.c.e"sv, false},
                                     {"bce"sv, false},
                                     {"v.chr"sv, false},
                                     {"v. chr"sv, false},
                                     {"vor chr"sv, false},
                                     {"vor christus"sv, false},
                                     {"vor christi geburt"sv, false},
                                     {"av. j.-c"sv, false},
                                     {"av. j. c"sv, false},
                                     {"av. j.c"sv, false},
                                     {"avant j.-c"sv, false},
                                     {"avant jésus-christ"sv, false},
                                     {"a.c"sv, false},
                                     {"a. c"sv, false},
                                     {"a.chr"sv, false},
                                     {"a. chr"sv, false},
                                     {"ante christum"sv, false},
                                     {"ante christum natum"sv, false},
                                     {"avanti cristo"sv, false},
                                     {"antes de cristo"sv, false},
                                     {"voor christus"sv, false},
                                     {"v.c"sv, false},
                                     {"a.h"sv, true},
                                     {"a. h"sv, true},
                                     {"ah"sv, true},
                                     {"h"sv, false},
                                     {"hijri"sv, true},
                                     {"hijra"sv, true},
                                     {"hegira"sv, true},
                                     {"anno hegirae"sv, true},
                                     {"de l'hégire"sv, false},
                                     {"hégire"sv, false},
                                     {"a.m"sv, true},
                                     {"a. m"sv, true},
                                     {"am"sv, true},
                                     {"anno mundi"sv, true},
                                     {"a.u.c"sv, true},
                                     {"a. u. c"sv, true},
                                     {"auc"sv, true},
                                     {"ab urbe condita"sv, true},
                                     {"saka"sv, true},
                                     {"śaka"sv, true},
                                     {"samvat"sv, true},
                                     {"saṃvat"sv, true},
                                     {"vikram samvat"sv, true},
                                     {"vikrama"sv, true}};
/// Words that make the number before them the number of a century: 18th century, XVIIIe siècle, 18. Jahrhundert.
inline constexpr std::string_view century_words[]{"century"sv, "centuries"sv,   "cent"sv, "c"sv,   "siècle"sv,
                                                  "siecle"sv,  "jahrhundert"sv, "jh"sv,   "jhd"sv, "jhdt"sv,
                                                  "secolo"sv,  "sec"sv,         "s"sv};

/// The beginnings of the names of months, in the languages of catalogues, first those in which a year that begins in
/// March or at Easter still has its old number. They are long enough to leave out Maria and Martin.
inline constexpr std::string_view month_beginnings[]{
    "jan."sv,   "janu"sv,   "janv"sv,   "jän"sv,  "ianu"sv, "genn"sv, "feb"sv,  "fev"sv,  "fév"sv,  "march"sv,
    "martii"sv, "martij"sv, "martio"sv, "mars"sv, "marz"sv, "märz"sv, "març"sv, "mar."sv, "apr"sv,  "avr"sv,
    "abr"sv,    "may"sv,    "mai"sv,    "mag"sv,  "june"sv, "juni"sv, "juin"sv, "jun."sv, "giug"sv, "jul"sv,
    "juil"sv,   "lug"sv,    "aug"sv,    "ago"sv,  "aou"sv,  "aoû"sv,  "sep"sv,  "set"sv,  "oct"sv,  "okt"sv,
    "ott"sv,    "nov"sv,    "dec"sv,    "déc"sv,  "dez"sv,  "dic"sv};
/// How many of them are of the first kind.
inline constexpr std::size_t months_before_spring = 21;

} // namespace detail
} // namespace v0
} // namespace bifolium
