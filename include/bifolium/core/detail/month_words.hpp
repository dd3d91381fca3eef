// SPDX-License-Identifier: MIT
/// The names of months, and of the days from which Romans counted back. Beside a year a number may be a day, and a year may
/// begin in March or at Easter: both are seen only by such a word. Common practice, no source.
#pragma once

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// The beginnings of the names of months, in the languages of catalogues, first those in which a year that begins in
/// March or at Easter still has its old number. They are long enough to leave out Maria and Martin.
inline constexpr std::string_view month_beginnings[]{
    "jan."sv,   "janu"sv,   "janv"sv,   "jän"sv,  "ianu"sv, "genn"sv, "feb"sv,  "fev"sv,  "fév"sv,   "march"sv,
    "martii"sv, "martij"sv, "martio"sv, "mars"sv, "marz"sv, "märz"sv, "març"sv, "mar."sv, "apr"sv,   "avr"sv,
    "abr"sv,    "may"sv,    "mai"sv,    "mag"sv,  "june"sv, "juni"sv, "juin"sv, "jun."sv, "giug"sv,  "jul"sv,
    "juil"sv,   "lug"sv,    "aug"sv,    "ago"sv,  "aou"sv,  "aoû"sv,  "sep"sv,  "set"sv,  "oct"sv,   "okt"sv,
    "ott"sv,    "nov"sv,    "dec"sv,    "déc"sv,  "dez"sv,  "dic"sv,  "iuni"sv, "iuli"sv, "nouemb"sv};
/// How many of them are of the first kind.
inline constexpr std::size_t months_before_spring = 21;

/// The beginning of the name of a day from which Romans counted back, and the highest number that can stand before it:
/// XIX. Kal. Septembris, VI. Non. Maii, VIII. Id. Martii.
struct RomanDay {
  std::string_view word;
  int most;
};
inline constexpr RomanDay roman_days[]{{"kal"sv, 19}, {"cal."sv, 19}, {"calend"sv, 19}, {"idus"sv, 8}, {"idib"sv, 8},
                                       {"id."sv, 8},  {"non."sv, 6},  {"nonas"sv, 6},   {"nonis"sv, 6}};
/// The highest number of a day before the name of its month.
inline constexpr int most_days_of_month = 31;
/// Words between the number of a day and the name of its month: V. die Maii, III. mensis Aprilis, V de Mayo.
inline constexpr std::string_view words_of_days[]{"die"sv, "dies"sv,   "mensis"sv, "mens"sv,    "day"sv,
                                                  "of"sv,  "jour"sv,   "de"sv,     "du mois"sv, "tag"sv,
                                                  "des"sv, "giorno"sv, "di"sv};

} // namespace detail
} // namespace v0
} // namespace bifolium
