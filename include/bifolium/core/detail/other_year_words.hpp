// SPDX-License-Identifier: MIT
/// Words that make the year of a book another one than the year that is printed: they correct it, or say that the book is
/// older or younger than the year after them. A date without its word would be wrong in silence, so each language of
/// catalogues has its words here.
///
/// Rules: DCRMR 5.23 (that is, not before, not after) and the rules before it (i.e.). The Latin, French, German, Italian and
/// Spanish words are common practice, no source.
#pragma once

#include <bifolium/core/detail/date_words.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The words that correct a year or open a range.
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
    {"not earlier than"sv, DateWord::not_before},
    {"no earlier than"sv, DateWord::not_before},
    {"nicht früher als"sv, DateWord::not_before},
    {"au plus tôt en"sv, DateWord::not_before},
    {"non prima di"sv, DateWord::not_before},
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
    {"not later than"sv, DateWord::not_after},
    {"no later than"sv, DateWord::not_after},
    {"nicht später als"sv, DateWord::not_after},
    {"au plus tard en"sv, DateWord::not_after},
    {"non oltre il"sv, DateWord::not_after},
    {"pre"sv, DateWord::not_after},
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

} // namespace detail
} // namespace v0
} // namespace bifolium
