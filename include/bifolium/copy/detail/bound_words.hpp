// SPDX-License-Identifier: MIT
/// Words that say that leaves are bound in another place than the formula has them: B3 bound after B6, D misbound before C,
/// K8 bound at the front, A2 verbunden, B3 relié après B6 (common practice, no source). The leaves are there, so these words
/// change the order of a copy and not what it lacks. A binding is described with the same words - bound in vellum - so they
/// are taken only with a place, or with a word that says that it is the wrong one.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/state_words.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words for "bound": English, German, French, Italian, Spanish, Dutch.
inline constexpr char const* bound_words[]{
    "bound",        "gebunden",      "eingebunden",   "geheftet",   "relié",    "reliée",      "reliés",
    "reliées",      "placé",         "placée",        "placés",     "placées",  "legato",      "legata",
    "legati",       "legate",        "rilegato",      "rilegata",   "rilegati", "rilegate",    "encuadernado",
    "encuadernada", "encuadernados", "encuadernadas", "ingebonden", "gebonden", "relie\u0301", "place\u0301"};
/// Words for "bound in the wrong place", in the same languages.
inline constexpr char const* misbound_words[]{"misbound",  "mis-bound",  "misplaced",   "transposed",  "interchanged",
                                              "verbunden", "verheftet",  "interverti",  "intervertis", "interverties",
                                              "transposé", "transposés", "spostato",    "spostata",    "spostati",
                                              "spostate",  "traspuesto", "traspuestos", "verbonden"};
/// Words for "wrongly" beside a word for "bound".
inline constexpr char const* wrongly_words[]{"wrongly", "incorrectly", "erroneously", "falsch",      "irrig",
                                             "mal",     "verkeerd",    "fout",        "erroneamente"};
/// Phrases after a word for "bound" that say that the order is wrong.
inline constexpr char const* wrong_order_phrases[]{
    "out of order",       "out of sequence", "out of place",     "in wrong order",    "in the wrong order",
    "in the wrong place", "in wrong place",  "in reverse order", "in reversed order", "in falscher Reihenfolge"};
/// Phrases that say how leaves are bound at their own place.
inline constexpr char const* in_place_phrases[]{"upside down", "inverted", "kopfstehend", "à l'envers", "à l’envers"};
/// Words for "after" the leaf that is named next.
inline constexpr char const* after_words[]{"after", "following", "nach",          "hinter", "après", "apre\u0300s",
                                           "dopo",  "después",   "despue\u0301s", "tras",   "na",    "achter"};
/// Words for "before" the leaf that is named next.
inline constexpr char const* before_words[]{"before", "preceding", "vor", "avant", "devant", "prima", "antes", "voor"};
/// Words before the name of a place in the book: at the front, am Ende, à la fin.
inline constexpr char const* words_before_place[]{"at", "in",   "am",  "au", "à",  "a\u0300", "a",
                                                  "al", "alla", "aan", "zu", "of", "de",      "van"};
/// Words for the front of the book.
inline constexpr char const* front_words[]{"front",  "beginning", "Anfang", "début", "de\u0301but",
                                           "inizio", "principio", "begin",  "vorne"};
/// Words for its end.
inline constexpr char const* back_words[]{"end", "back", "Ende", "fin", "fine", "final", "einde", "eind", "hinten"};

/// Takes words for a place in the book: at the end, am Anfang, in fine. Returns true if it is the front, and no value if there is
/// none.
[[nodiscard]] inline std::optional<bool> take_place_of_book(TextCursor& cursor) noexcept {
  auto const ends = [](char32_t one) { return is_between_items(one) || one == ')' || one == ':'; };
  auto c = cursor;
  for (int words = 0; words < 4; ++words) {
    auto const word = without_point(c.take_until(ends));
    bool const back = is_row(word, back_words);
    if (words > 0 && (back || is_row(word, front_words))) return cursor = c, !back;
    if (!is_row(word, words_before_place) && !is_article(word)) return std::nullopt;
    if (!c.take_blanks()) return std::nullopt;
  }
  return std::nullopt;
}
/// Where leaves are bound, as words say.
struct BoundWords {
  using At = MovedLeaves::At;
  At at{};
  std::string_view beside{}; ///< the name of the leaf or gathering before or after which they are bound
  bool pair{};               ///< true if another name must follow: between B6 and B7
};

/// Takes the words after the leaves. Returns no value if they do not say that these are bound elsewhere.
[[nodiscard]] inline std::optional<BoundWords> take_bound_words(TextCursor& cursor) {
  auto c = cursor;
  auto const ends = [](char32_t one) { return is_between_items(one) || one == ')'; };
  bool const round = c.take('(');
  bool bound = false, wrong = false;
  std::optional<BoundWords> place;
  auto const take_place = [&](TextCursor& look) -> std::optional<BoundWords> {
    auto word = look.take_until(ends);
    bool const between = equal_in_any_case(word, "between"), after = is_row(word, after_words);
    if (between || after || is_row(word, before_words)) {
      look.take_blanks();
      auto name = take_until_beside_names(look, ends);
      for (int words = 0; words < 3 && (is_row(name, words_before_place) || begins_leaf(name)); ++words) {
        auto next = look; // après le cahier B; a may be a gathering
        if (!next.take_blanks()) break;
        auto const other = take_until_beside_names(next, ends);
        if (other.empty() || is_row(other, bound_words)) break;
        name = other, look = next;
      }
      if (name.empty()) return std::nullopt;
      return BoundWords{between || after ? BoundWords::At::after : BoundWords::At::before, name, between};
    }
    for (int words = 0; words < 4; ++words) {
      if (is_row(word, front_words)) return BoundWords{BoundWords::At::front, {}, false};
      if (is_row(word, back_words)) return BoundWords{BoundWords::At::back, {}, false};
      if (!is_row(word, words_before_place) && !is_article(word)) return std::nullopt;
      look.take_blanks();
      word = look.take_until(ends);
    }
    return std::nullopt;
  };
  for (int words = 0; words < 8; ++words) {
    c.take_blanks();
    if (c.at_end() || ends(c.character().value)) break;
    if (bound && take_phrase(c, wrong_order_phrases)) {
      wrong = true;
      continue;
    }
    if (bound && take_phrase(c, in_place_phrases)) {
      place = BoundWords{BoundWords::At::in_place, {}, false};
      continue;
    }
    auto next = c;
    auto const word = without_point(next.take_until(ends));
    if (is_row(word, misbound_words)) {
      bound = wrong = true, c = next;
    } else if (is_row(word, bound_words)) {
      bound = true, c = next;
    } else if (is_row(word, wrongly_words)) {
      wrong = true, c = next;
    } else if (auto look = c; !place && (place = take_place(look))) {
      c = look;
      if (place->pair) {
        look.take_blanks();
        if (!is_joining_word(look.take_until(ends)) || !look.take_blanks()) return std::nullopt;
        take_until_beside_names(look, ends);
        c = look;
      }
    } else if (is_word_before_state(word) || equal_in_any_case(word, "but")) {
      c = next; // is also
    } else {
      break;
    }
  }
  auto after = c;
  after.take_blanks();
  if (round && !after.take(')')) return std::nullopt;
  if (round) c = after;
  auto rest = c;
  rest.take_blanks();
  auto const next = TextCursor{rest}.take_until(is_between_items);
  bool const ended = rest.at_end() || is_between_items(rest.character().value) || rest.peek() == ')' ||
                     is_joining_word(next) || state_of(next);
  if (!bound || !(place || wrong) || !ended) return std::nullopt;
  cursor = c;
  return place.value_or(BoundWords{});
}

} // namespace detail
} // namespace v0
} // namespace bifolium
