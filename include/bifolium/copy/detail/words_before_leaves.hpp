// SPDX-License-Identifier: MIT
/// Words that stand before the names of leaves and gatherings in the languages of catalogues: les f. A1, die Lage C, la
/// última hoja (common practice, no source). They say nothing of which leaf is meant, but a leaf by number, and the first
/// or the last leaf. Some are also signatures, as e and y are; what the book has as a gathering is never such a word.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/core/ascii.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/book_nouns.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true between the items of a list.
[[nodiscard]] constexpr bool is_between_items(char32_t c) noexcept { return is_space(c) || c == ',' || c == ';'; }
/// Returns true for a byte with which a word or a number may begin.
[[nodiscard]] constexpr bool begins_word(char c) noexcept {
  return is_latin_letter(c) || is_digit(c) || static_cast<unsigned char>(c) >= 0x80;
}
/// Returns true if the word is a row of the table, in capitals or small letters. Most rows begin otherwise: with this bit
/// a capital is the small letter.
template <std::size_t N>
[[nodiscard]] constexpr bool is_row(std::string_view word, char const* const (&table)[N]) noexcept {
  constexpr auto small_bit = 0x20;
  if (word.empty()) return false;
  auto const first = word[0] | small_bit, second = (word.size() > 1 ? word[1] : '\0') | small_bit;
  for (auto const* const row : table)
    if ((row[0] | small_bit) == first && (row[1] | small_bit) == second && equal_in_any_case(word, row)) return true;
  return false;
}
/// Takes a phrase of a table.
template <std::size_t N> [[nodiscard]] bool take_phrase(TextCursor& cursor, char const* const (&phrases)[N]) noexcept {
  auto const first = small_letter(cursor.peek()); // most phrases begin otherwise
  for (auto const* const one : phrases)
    if (small_letter(one[0]) == first && cursor.take_word_in_any_case(one)) return true;
  return false;
}
/// Returns true if a word of two letters or more, or one with a point, may be at the cursor. Most items of a list are none: A1, B-C.
[[nodiscard]] constexpr bool begins_phrase(TextCursor const& cursor) noexcept {
  auto const second = cursor.peek(1);
  bool const letter =
      is_latin_letter(second) || second == '.' || second == '\'' || static_cast<unsigned char>(second) >= 0x80;
  return letter && begins_word(cursor.peek()) && !is_digit(cursor.peek());
}
/// English, then German, French, Italian, Spanish and Dutch.
inline constexpr char const* articles[]{"the", "der", "die", "das", "den", "des",   "dem", "le",
                                        "la",  "les", "du",  "de",  "il",  "lo",    "gli", "delle",
                                        "del", "el",  "los", "las", "het", "della", "dei"};
/// Words that say that no other leaf is there, in the same languages and Latin.
inline constexpr char const* words_for_only[]{"only",      "nur",    "seul",   "solo",  "solamente", "soltanto",
                                              "seulement", "alleen", "tantum", "seuls", "seule",     "seules",
                                              "soli",      "sole",   "sólo",   "solos"};
/// Words before the first of a run, in which another word comes before the last: da B3 a B6, von A1 bis A4.
inline constexpr char const* words_before_run[]{"da", "dal", "dalla", "von", "from", "desde", "van", "vanaf"};
inline constexpr char const* first_words[]{
    "erste",   "erstes", "premier",  "première", "premie\u0300re", "prima",     "primo",
    "primera", "primum", "eerste",   "ersten",   "premiers",       "premières", "premie\u0300res",
    "prime",   "primi",  "primeras", "primeros", "first"};
inline constexpr char const* last_words[]{
    "letzte", "letztes", "dernier", "dernière",     "dernie\u0300re", "ultima",   "ultimo",    "última",
    "último", "ultimum", "laatste", "u\u0301ltima", "letzten",        "derniers", "dernières", "dernie\u0300res",
    "ultime", "ultimi",  "últimas", "últimos",      "u\u0301ltimas",  "last",     "final"};

/// Returns the word without the full point after it.
[[nodiscard]] constexpr std::string_view without_point(std::string_view word) noexcept {
  return word.ends_with('.') ? word.substr(0, word.size() - 1) : word;
}
/// Returns true for a word for leaves, with the full point that short ones need.
[[nodiscard]] constexpr bool is_leaf_noun(std::string_view word) noexcept {
  auto const bare = without_point(word);
  bool const needs_point = bare.size() == 1 || equal_in_any_case(bare, "cc") || equal_in_any_case(bare, "hh") ||
                           equal_in_any_case(bare, "ll");
  bool const pointed = bare.size() < word.size() || !needs_point || equal_in_any_case(bare, "f");
  return pointed && bare != "bl" && is_noun(bare, leaf_noun_rows, NounUse::in_list); // bl. is "blank"
}
/// Returns true for a word for several leaves: leaves, ff, Blätter, carte.
[[nodiscard]] constexpr bool names_several_leaves(std::string_view word) noexcept {
  for (std::string_view const one :
       {"Bll", "Blätter", "Blättern", "carte", "folia", "foliis", "bladen", "ff", "cc", "hh", "ll"})
    if (equal_in_any_case(word, one)) return true;
  return word.ends_with('s');
}
/// Returns true for an article, or a word for only, as it may stand before the name of a leaf.
[[nodiscard]] constexpr bool is_article(std::string_view word) noexcept {
  return is_row(word, articles) || is_row(word, words_for_only);
}
/// Returns true for a word with which the name of a leaf may begin: the, letzte, Blatt.
[[nodiscard]] constexpr bool begins_leaf(std::string_view word) noexcept {
  return is_article(word) || is_leaf_noun(word) ||
         is_noun(without_point(word), gathering_noun_rows, NounUse::in_list) || is_row(word, first_words) ||
         is_row(word, last_words);
}
/// Returns true for a word, in small letters, that joins leaves. E and y are such words if they are no gathering.
[[nodiscard]] constexpr bool joins_leaves(std::string_view word) noexcept {
  for (std::string_view const one : {"and", "&", "und", "u.", "et", "ed", "e", "y", "en"})
    if (word == one) return true;
  return false;
}
/// Returns true for a word, in small letters, between the ends of a run: A1 bis A4.
[[nodiscard]] constexpr bool is_word_of_run(std::string_view word) noexcept {
  for (std::string_view const one : {"to", "through", "bis", "à", "a\u0300", "a", "al", "tot", "t/m", "usque"})
    if (word == one) return true;
  return false;
}

/// A number and its word in a language of catalogues; core/number_words.hpp has the English ones.
struct NumberWordRow {
  char const* word;
  int number;
};
/// German, French, Italian, Spanish, Dutch, Latin. (common practice, no source)
inline constexpr NumberWordRow number_words_of_catalogues[]{
    {"ein", 1},  {"eine", 1}, {"zwei", 2},   {"beiden", 2}, {"drei", 3},    {"vier", 4},   {"fünf", 5}, {"sechs", 6},
    {"acht", 8}, {"un", 1},   {"une", 1},    {"deux", 2},   {"trois", 3},   {"quatre", 4}, {"cinq", 5}, {"six", 6},
    {"huit", 8}, {"una", 1},  {"due", 2},    {"tre", 3},    {"quattro", 4}, {"cinque", 5}, {"sei", 6},  {"otto", 8},
    {"dos", 2},  {"tres", 3}, {"cuatro", 4}, {"cinco", 5},  {"seis", 6},    {"ocho", 8},   {"een", 1},  {"twee", 2},
    {"drie", 3}, {"vijf", 5}, {"zes", 6},    {"duo", 2},    {"tria", 3}};
/// Returns true for a word for a number, in the languages of catalogues: two, deux.
[[nodiscard]] constexpr bool is_number_word(std::string_view word) noexcept {
  for (auto const& row : number_words_of_catalogues)
    if (equal_in_any_case(word, row.word)) return true;
  return number_of_word(word).has_value();
}
/// Returns the number of leaves that a word or a figure beside a word for leaves means, in the languages of catalogues: 2
/// derniers ff., ultime due carte.
[[nodiscard]] inline std::optional<int> number_beside_leaves(std::string_view word) noexcept {
  if (auto const english = number_of_word(word)) return english;
  for (auto const& row : number_words_of_catalogues)
    if (equal_in_any_case(word, row.word)) return row.number;
  auto const figure = whole_number(word, most_leaves_in_gathering);
  return figure && *figure > 0 ? std::optional{static_cast<int>(*figure)} : std::nullopt;
}
/// Returns true for a word that says that nothing else is there: only, nur, and the present beside it.
[[nodiscard]] inline bool is_only_word(std::string_view word) noexcept {
  return is_row(without_point(word), words_for_only);
}

/// Returns true for a numeral such as xii, as leaves are numbered by after a word for leaves: f. xii. A numeral that is also
/// a leaf, xij or cij, is a number if a small one; cij would be leaf 102.
[[nodiscard]] inline bool is_roman_folio(IdealCopy const& book, std::string_view word) {
  if (word.size() > 15 || !is_roman_numeral(word) || names_gathering(book, word)) return false;
  return std::string_view{"ivxIVX"}.find(word[0]) != word.npos || !find_reference(book, word);
}

/// Words for one thing in a book that the English article stands before, and words between it and them.
inline constexpr char const* words_after_a[]{
    "leaf",       "blank",      "gathering", "quire",     "bifolium",  "sheet",       "half-sheet",
    "pair",       "folio",      "signature", "single",    "singleton", "whole",       "second",
    "few",        "couple",     "number",    "plate",     "page",      "title",       "title-page",
    "title-leaf", "half-title", "final",     "conjugate", "leaves",    "preliminary", "frontispiece"};

/// Returns the cursor after the blanks at it.
[[nodiscard]] inline TextCursor past_blanks(TextCursor cursor) noexcept {
  cursor.take_blanks();
  return cursor;
}
/// Returns true if a Portuguese word for leaves or gatherings is at the cursor: as folhas. "As" alone is English, too.
[[nodiscard]] inline bool is_noun_in_portuguese(TextCursor cursor) noexcept {
  auto const word = cursor.take_until(is_space);
  return word.starts_with("folha") || word.starts_with("caderno");
}
/// Returns true if the name at the cursor is the first of a run with a word before its last: the B3 of da B3 a B6.
[[nodiscard]] inline bool leads_run(TextCursor cursor) {
  for (int words = 0; words < 3; ++words) { // von Bl. A1 bis A4
    auto const word = take_until_beside_names(cursor, is_between_items);
    if (!cursor.take_blanks()) return false;
    if (is_article(word) || is_leaf_noun(word)) continue;
    return cursor.character().bytes != 0 &&
           (is_dash(cursor.character().value) || is_word_of_run(cursor.take_until(is_between_items)));
  }
  return false;
}
/// No name has more words before it. A list of many is not looked through again for each of them.
inline constexpr int most_words_before_name = 4;
/// Takes words before the name of a leaf or a gathering: les feuillets A1. Before a number, les f. 3, only the articles
/// are taken. Returns false, and takes nothing, if there are none.
[[nodiscard]] inline bool take_words_before_name(TextCursor& cursor, IdealCopy const& book) {
  auto const second = cursor.peek(1);                         // most names have another one
  bool const article = cursor.peek() == 'i' && second == ' '; // i fascicoli; a gathering i is none
  if (!is_latin_letter(second) && second != '.' && !article) return false;
  auto c = cursor;
  auto next = c;
  for (int words = 0; words < most_words_before_name; ++words, c = next) {
    auto const word = next.take_until(is_space);
    bool const leaves = is_leaf_noun(word);
    bool const known = leaves || is_article(word) ||
                       is_noun(without_point(word), gathering_noun_rows, NounUse::in_list) ||
                       ((article || words > 0) && word == "i") ||
                       ((word == "as" || word == "os") && is_noun_in_portuguese(past_blanks(next))) ||
                       (is_row(word, words_before_run) && leads_run(past_blanks(next))) || // solo i fascicoli da C a E
                       (words > 0 && is_blank_word(word));                                 // les ff. blancs A1 et L4
    if (!known || names_gathering(book, word) || !next.take_blanks()) break;
    auto numeral = next;
    auto const at_number = [&] {
      auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one); };
      return next.at_digit() || is_roman_folio(book, take_until_beside_names(numeral, ends));
    };
    if (leaves && at_number()) break;
  }
  if (c.at() == cursor.at()) return false;
  auto after = c;
  auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one); };
  auto const name = take_until_beside_names(after, ends);
  bool const number = is_leaf_noun(name) && after.take_blanks() &&
                      (after.at_digit() || is_roman_folio(book, take_until_beside_names(after, ends)));
  auto const leaf = name.substr(0, last_point(name)); // bifolium C4.5
  bool const named = names_gathering(book, name) || find_reference(book, name) ||
                     (leaf.size() < name.size() && find_reference(book, leaf));
  if (!number && !named) return false;
  cursor = c;
  return true;
}
/// Takes a word for leaves before a number: f. 3, leaves 3-4, ff. v-vii. Returns true if it was taken. In a book with a gathering f
/// only f. is that word, in small letters and with its point.
[[nodiscard]] inline bool take_word_before_number(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  auto word = c.take_until(is_between_items);
  if (word.starts_with('(')) word.remove_prefix(1);
  if (!is_leaf_noun(word) || !c.take_blanks()) return false;
  if (!c.at_digit()) { // f. xii; in a book with a gathering x it is also leaf x2
    auto after = c;
    auto const numeral =
        take_until_beside_names(after, [](char32_t one) { return is_between_items(one) || is_dash(one); });
    if (!is_roman_folio(book, numeral)) return false;
  }
  auto const bare = without_point(word);
  bool const folio = bare.size() < word.size() && word[0] == 'f';
  if (bare.size() <= 2 && !folio && names_gathering(book, bare)) return false;
  cursor = c;
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
