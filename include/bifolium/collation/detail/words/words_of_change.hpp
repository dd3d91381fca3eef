// SPDX-License-Identifier: MIT
/// Words in a parenthesis that may be a change, although they are not read as one: they are kept as a note, and it is
/// told. And which kinds of such words a text has at all: most have none, and then no parenthesis need be asked for them.
#pragma once

#include <bifolium/collation/detail/scan/word_at.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words that say that leaves are changed or inserted (common practice, no source). They are not counted, so there is a
/// warning; as there is for those of leaves that are not there (leaf/leaf_words.hpp).
inline constexpr char const* words_of_change[]{
    "added", "canc", "cancellanda", "cancellandum", "carton", "cartons", "cut", "extra", "inserted", "moved", "plus",
    "replaced", "stub", "stubs", "transferred", "repeated", "repeats", "repeating", "twice", "thrice", "duplicated",
    "duplicate", "doubled",
    // leaves that are not there
    "gone", "lost", "delete", "deleatur", "destroyed", "nicht", "saknas", "saknar", "mangler", "caret", "carent",
    "verloren", "herausgeschnitten", "entfernt", "supprim", "arrach", "perdu", "soppressa", "asportata", "strappata",
    "suprimida", "arrancada", "perdida", "ohne", "sans", "senza", "zonder", "sine",
    // leaves that are put in; a word ends before an accent
    "bis", "ajout", "ajoute", "aggiunta", "aggiunto", "aggiunte", "hinzugef", "eingef", "eingeschaltet", "toegevoegd",
    "tilf", "intercal", "interpolated"};
/// Words that say that a letter is not used (common practice, no source).
inline constexpr char const* words_of_omission[]{"omit",  "omits",   "omitted",  "omitting",
                                                 "skips", "skipped", "skipping", "unused"};

/// Returns true for a word that says that a letter is not used.
[[nodiscard]] constexpr bool is_word_of_omission(std::string_view word) noexcept {
  return is_one_of(word, words_of_omission);
}
/// The kinds of words about leaves that a text has.
struct WordsInText {
  bool cancel{};   ///< about cancels
  bool absence{};  ///< that leaves are not there
  bool omission{}; ///< that a letter is not used; also "no" and "not"

  constexpr WordsInText() = default;
  constexpr explicit WordsInText(std::string_view text) noexcept {
    for (std::size_t i = 0; i < text.size(); ++i) {
      auto const from = i;
      while (i < text.size() && is_latin_letter(text[i])) ++i;
      if (i - from > 1) add({text.data() + from, i - from});
    }
  }

private:
  constexpr void add(std::string_view word) noexcept {
    switch (small_letter(word[0])) { // of each kind are only the words with some first letters
    case 'c':
      cancel = cancel || cancel_word(word) != CancelWord::none;
      break;
    case 'n':
      omission = omission || equal_in_any_case(word, "no") || equal_in_any_case(word, "not");
      break;
    case 's':
    case 'u':
      omission = omission || is_word_of_omission(word);
      break;
    case 'o':
      omission = omission || is_word_of_omission(word);
      [[fallthrough]];
    default:
      absence = absence || absence_word(word).says != Absence::none;
    }
  }
};

/// Returns true if the words contain a sign or a word of change.
[[nodiscard]] constexpr bool says_change(std::string_view words) noexcept {
  bool negated = false, torn = false;
  for (TokenCursor c{words}; !c.ended(); c.take()) {
    if (c.at(TokenKind::plus) || c.at(TokenKind::equals) || c.at(TokenKind::plus_minus) || c.at(TokenKind::minus))
      return true;
    if (!c.at(TokenKind::letter)) continue;
    auto const w = word_at(words, c.token.from);
    if (absence_word(w).says != Absence::none || cancel_word(w) != CancelWord::none) return true;
    if (negated && equal_in_any_case(w, "present")) return true;
    negated = equal_in_any_case(w, "not");
    if (torn && (equal_in_any_case(w, "out") || equal_in_any_case(w, "away"))) return true; // torn alone is damage
    torn = equal_in_any_case(w, "torn");
    if (is_one_of(w, words_of_change)) return true;
    if (!w.empty()) c = TokenCursor{words, c.token.from + w.size() - 1};
  }
  return false;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
