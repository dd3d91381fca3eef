// SPDX-License-Identifier: MIT
/// Words that stand about the date and the place of a title page and say nothing of them, since records give both as
/// printed: `Printed in the year of our Lord 1725`, `Impressum fuit Venetiis`. A word with a capital that is not among them
/// can belong to the name of a place, and any that is not is told to the user. Common practice, no source.
#pragma once

#include <bifolium/core/ascii.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
inline constexpr char const* title_page_words[]{
    "printed",   "imprinted", "emprinted", "reprinted", "impressum", "impressus", "impressa",   "impressit", "imprimé",
    "imprimée",  "imprime",   "impreso",   "impresso",  "stampato",  "stampata",  "gedruckt",   "getruckt",  "gedrukt",
    "trykt",     "tryckt",    "excusum",   "excusa",    "excudebat", "excudit",   "excudebant", "typis",     "apud",
    "ex",        "officina",  "per",       "by",        "for",       "from",      "chez",       "bey",       "bei",
    "bij",       "appresso",  "presso",    "en",        "casa",      "de",        "del",        "la",        "le",
    "les",       "el",        "die",       "der",       "das",       "het",       "the",        "this",      "a",
    "an",        "at",        "in",        "im",        "zu",        "of",        "and",        "et",        "und",
    "fuit",      "est",       "hoc",       "opus",      "liber",     "datum",     "actum",      "finis",     "explicit",
    "published", "publié",    "editum",    "edita",     "sold",      "first",     "now",        "venduntur", "prostat",
    "prostant",  "sumptibus", "anno",      "anni",      "année",     "año",       "domini",     "dni",       "christi",
    "salutis",   "year",      "yere",      "our",       "lord",      "grace",     "l'an",       "jahr",      "jahre",
    "jar"};
/// Returns true if two words have the same letters, in capitals or not, with u as v and i as j.
constexpr bool same_printed_letters(std::string_view word, char const* row) noexcept {
  auto const plain = [](char c) {
    c = small_letter(c);
    return c == 'v' ? 'u' : c == 'j' ? 'i' : c;
  };
  for (char const c : word)
    if (*row == '\0' || plain(c) != plain(*row++)) return false;
  return *row == '\0';
}
} // namespace detail

/// Returns true for a word of printing or dating that a title page has about its place and date, in capitals or small
/// letters, with u as v and i as j.
/// Example: `is_title_page_word("IMPRESSVM")`.
[[nodiscard]] constexpr bool is_title_page_word(std::string_view word) noexcept {
  for (auto const* const one : detail::title_page_words)
    if (detail::same_printed_letters(word, one)) return true;
  return false;
}

} // namespace v0
} // namespace bifolium
