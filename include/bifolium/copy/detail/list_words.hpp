// SPDX-License-Identifier: MIT
/// The words that stand beside the leaves of a list: the state in which they are, what is printed on them, and the ends
/// of the book (common practice, no source).
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/copy/detail/list_passages.hpp>
#include <bifolium/copy/leaf_in_copy.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Returns true if the word is one of these, with or without parentheses, in capitals or small letters.
template <std::size_t N>
[[nodiscard]] bool is_one_of(std::string_view word, std::string_view const (&words)[N]) noexcept {
  if (word.starts_with('(')) word.remove_prefix(1);
  while (word.ends_with(')') || word.ends_with(':')) word.remove_suffix(1);
  return is_any(word, words);
}
/// Returns true for a word that says that a leaf is not whole, or that its paper was mended. The leaf is there.
[[nodiscard]] inline bool is_damage_word(std::string_view word) noexcept {
  constexpr std::string_view words[]{"damaged"sv, "torn"sv,   "mutilated"sv, "repaired"sv, "cropped"sv, "stained"sv,
                                     "shaved"sv,  "wormed"sv, "holed"sv,     "soiled"sv,   "trimmed"sv, "remargined"sv};
  return is_one_of(word, words);
}
/// Returns what stands in the place of a leaf as a word says: A1 supplied in manuscript, f. A1 en fac-similé. What was
/// written by hand or typed is not a facsimile, since it does not show what the leaf looked like.
[[nodiscard]] inline std::optional<LeafInCopy> substitute_of(std::string_view word) noexcept {
  constexpr std::string_view facsimile[]{"facsimile"sv,        "facsimiles"sv,      "facs"sv,          "photographic"sv,
                                         "photostatic"sv,      "photostat"sv,       "photocopy"sv,     "xerox"sv,
                                         "Faksimile"sv,        "Fotokopie"sv,       "Kopie"sv,         "fac-simile"sv,
                                         "fac-similé"sv,       "facsimilé"sv,       "photocopie"sv,    "fotocopia"sv,
                                         "facsímil"sv,         "facsímile"sv,       "facsimil"sv,      "fotokopie"sv,
                                         "fac-simile\u0301"sv, "facsimile\u0301"sv, "facsi\u0301mil"sv};
  constexpr std::string_view manuscript[]{
      "manuscript"sv,      "ms"sv,          "mss"sv,        "handwritten"sv, "Handschrift"sv,
      "handschriftlich"sv, "handschr"sv,    "hschr"sv,      "manuscrit"sv,   "manuscrite"sv,
      "manoscritto"sv,     "manoscritta"sv, "manuscrito"sv, "manuscrita"sv};
  constexpr std::string_view typescript[]{"typescript"sv, "typewritten"sv, "maschinenschriftlich"sv};
  if (is_any(word, facsimile)) return LeafInCopy::facsimile;
  if (is_any(word, manuscript)) return LeafInCopy::manuscript;
  if (is_any(word, typescript)) return LeafInCopy::typescript;
  return std::nullopt;
}
/// Reads a word for the leaves before it, with or without parentheses: facsimile, (facsimile).
[[nodiscard]] inline std::optional<LeafInCopy> state_of(std::string_view word) {
  if (word.starts_with('(')) word.remove_prefix(1);
  while (word.ends_with(')') || word.ends_with('.') || word.ends_with('?')) word.remove_suffix(1);
  if (auto const substitute = substitute_of(word)) return substitute;
  if (is_blank_word(word)) return LeafInCopy::blank;
  for (auto const state : {LeafInCopy::mounted, LeafInCopy::supplied})
    if (equal_in_any_case(word, to_words(state))) return state;
  if (is_damage_word(word)) return LeafInCopy::damaged;
  return std::nullopt;
}
/// Returns true for a word that joins the leaves before it and after it.
[[nodiscard]] inline bool is_joining_word(std::string_view word) noexcept {
  constexpr std::string_view words[]{"and"sv, "und"sv, "et"sv};
  return joins_leaves(word) || is_one_of(word, words);
}
/// Returns true for a word that may come between a leaf and its state: A1 which is supplied in manuscript facsimile
/// from another copy.
[[nodiscard]] inline bool is_word_before_state(std::string_view word) noexcept {
  constexpr std::string_view words[]{"in"sv,   "is"sv,      "are"sv,       "both"sv, "which"sv, "also"sv, "from"sv,
                                     "copy"sv, "another"sv, "inclusive"sv, "als"sv,  "im"sv,    "en"sv};
  return is_one_of(word, words);
}
/// Returns true for a word that may come before the leaves that are wanting: wants the bifolium A1.8.
[[nodiscard]] inline bool is_word_before_leaves(std::string_view word) noexcept {
  constexpr std::string_view words[]{
      "the"sv,        "leaf"sv,  "leaves"sv,     "gathering"sv,  "gatherings"sv, "quire"sv, "quires"sv, "sig."sv,
      "signature"sv,  "sigs."sv, "signatures"sv, "bifolium"sv,   "bifolia"sv,    "for"sv,   "only"sv,   "cancel"sv,
      "cancellans"sv, "pair"sv,  "conjugate"sv,  "conjugates"sv, "is"sv,         "are"sv,   "both"sv};
  return is_one_of(word, words);
}
/// Returns true for a word that only says that a copy is described: this copy.
[[nodiscard]] inline bool is_word_for_copy(std::string_view word) noexcept {
  constexpr std::string_view words[]{
      "this"sv,      "the"sv,     "our"sv,          "copy"sv,         "exemplar"sv,    "dies"sv,
      "dieses"sv,    "unser"sv,   "das"sv,          "es"sv,           "le"sv,          "cet"sv,
      "notre"sv,     "il"sv,      "lo"sv,           "exemplaire"sv,   "esemplare"sv,   "el"sv,
      "este"sv,      "nuestro"sv, "ejemplar"sv,     "dit"sv,          "ons"sv,         "het"sv,
      "exemplaar"sv, "ex"sv,      "expl"sv,         "exempl"sv,       "exemp"sv,       "esempl"sv,
      "ej"sv,        "ejempl"sv,  "l'exemplaire"sv, "l’exemplaire"sv, "l'esemplare"sv, "l’esemplare"sv,
      "l'ex"sv,      "l’ex"sv};
  while (word.ends_with(':') || word.ends_with('.')) word.remove_suffix(1);
  return is_one_of(word, words);
}
/// Words for what is printed on a leaf, which catalogues add to it, A1 (title), or write in its place (common practice,
/// no source).
[[nodiscard]] inline bool is_content_word(std::string_view word) noexcept {
  for (std::string_view const one :
       {"title",      "half-title", "title-page", "title-leaf", "half",          "t.p",           "frontispiece",
        "dedication", "errata",     "colophon",   "imprint",    "imprimatur",    "privilege",     "license",
        "licence",    "contents",   "index",      "preface",    "advertisement", "advertisements"})
    if (equal_in_any_case(word, one)) return true;
  return false;
}
/// Returns true for a word that counts pages or leaves, or says what is on them, and does not name a leaf.
[[nodiscard]] inline bool names_no_leaf(std::string_view word) noexcept {
  while (word.ends_with(')') || word.ends_with('.') || word.ends_with(':')) word.remove_suffix(1);
  if (word.starts_with('(')) word.remove_prefix(1);
  for (std::string_view const one : {"p", "pp", "page", "pages", "leaf", "leaves"})
    if (equal_in_any_case(word, one)) return true;
  TextCursor cursor{word};
  if (cursor.take("pp.") || cursor.take("p.")) return cursor.at_digit(); // p.5
  return is_content_word(word) || number_of_word(word).has_value() || whole_number(word, 999'999'999).has_value();
}
/// Takes a remark in parentheses that says what is printed on the leaves before it: (title), (title page).
[[nodiscard]] inline bool take_content_remark(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!c.take('(')) return false;
  for (bool any = false;; any = true) {
    c.take_blanks();
    if (any && c.take(')')) break;
    auto word = c.take_until([](char32_t one) { return is_space(one) || one == ')'; });
    while (word.ends_with('.') || word.ends_with(',')) word.remove_suffix(1);
    bool const beside =
        equal_in_any_case(word, "page") || equal_in_any_case(word, "leaf") || equal_in_any_case(word, "and");
    if (!is_content_word(word) && !(any && beside)) return false;
  }
  cursor = c;
  return true;
}
/// Takes words for all leaves of the book: complete, perfect, all, all leaves present. Nothing else may come in the same
/// item, so that the all of "all after C1" is not taken.
[[nodiscard]] inline bool take_whole_book(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto word = c.take_until(is_between_items);
  bool const ended = word.ends_with('.') || word.ends_with(':'); // Complete. Lacks L4
  if (ended) word.remove_suffix(1);
  if (equal_in_any_case(word, "all") && !ended) {
    for (std::string_view const more : {"leaves", "present"}) {
      auto next = c;
      next.take_blanks();
      if (equal_in_any_case(next.take_until(is_between_items), more)) c = next;
    }
  } else {
    constexpr std::string_view words[]{"complete"sv, "perfect"sv,  "vollständig"sv, "komplett"sv, "complet"sv,
                                       "completo"sv, "completa"sv, "volledig"sv,    "compleet"sv, "integrum"sv};
    if (!is_any(word, words)) return false;
  }
  c.take_while(is_space);
  if (!ended && !c.at_end() && c.peek() != ',' && c.peek() != ';') return false;
  cursor = c;
  return true;
}
/// Returns the word without the parentheses round it: (A1).
[[nodiscard]] inline std::string_view in_parentheses(std::string_view word) noexcept {
  bool const enclosed = word.size() > 2 && word.starts_with('(') && word.ends_with(')') &&
                        word.substr(1, word.size() - 2).find_first_of("()") == word.npos;
  return enclosed ? word.substr(1, word.size() - 2) : word;
}
/// Takes words for what is printed on a leaf if the name of the leaf comes after them: title page (A1).
[[nodiscard]] inline bool take_content_before_leaf(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  for (bool any = false;; any = true) {
    auto next = c;
    auto const word = next.take_until(is_between_items);
    bool const beside = equal_in_any_case(word, "page") || equal_in_any_case(word, "leaf");
    if (is_content_word(word) || (any && beside)) {
      next.take_blanks();
      c = next;
      continue;
    }
    auto const name = in_parentheses(word);
    if (!any || name.empty() || names_gathering(book, name) || !find_reference(book, name)) return false;
    cursor = c;
    return true;
  }
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
/// Leaves at the beginning or the end of a book, or at both, as words name them.
struct EndsOfBook {
  int first{}, last{};
  bool gatherings{};  ///< true if gatherings are counted, and not leaves
  bool before_name{}; ///< true for "the final blank K8": a name follows, and says which leaf is meant
};
/// Takes the first or the last leaves or gatherings, in any language: le dernier feuillet, les 2 derniers ff., la última hoja
/// blanca, the first quire, fol. ultimum.
[[nodiscard]] inline std::optional<EndsOfBook> take_end_leaf(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const take = [&](auto is) {
    auto next = c;
    auto const word = next.take_until(is_between_items);
    if (word.empty() || !is(word)) return false;
    next.take_blanks();
    c = next;
    return true;
  };
  auto const is_blank = [](std::string_view word) { return is_blank_word(without_point(word)); };
  auto const is_leaves = [](std::string_view word) { return is_leaf_noun(word); };
  auto const is_gatherings = [](std::string_view word) { return is_row(without_point(word), gathering_nouns); };
  auto const is_first = [](std::string_view word) { return is_row(word, first_words); };
  auto const is_last = [](std::string_view word) { return is_row(word, last_words); };
  int number = 1;
  auto const is_number = [&](std::string_view word) {
    auto const found = number_beside_leaves(word);
    if (found) number = *found;
    return found.has_value();
  };
  static_cast<void>(take(is_article) || take([](std::string_view word) { return word == "i"; }));
  for (std::string_view const elided : {"l'", "l’", "dell'", "dell’"})
    if (c.take(elided)) break;
  EndsOfBook ends;
  bool const before = take(is_leaves); // fol. ultimum
  static_cast<void>(!before && take(is_number));
  bool const first = take(is_first);
  if (!first && !take(is_last)) return std::nullopt;
  static_cast<void>(!before && number == 1 && take(is_number));
  auto const is_counted = [](std::string_view word) {
    return is_row(without_point(word), leaf_nouns);
  }; // 2 cc, at the end
  bool const blank = take(is_blank), leaf = before || take(is_counted);
  ends.gatherings = !blank && !leaf && take(is_gatherings);
  if (!blank && !leaf && !ends.gatherings) return std::nullopt;
  (first ? ends.first : ends.last) = number;
  auto const end = c; // en blanco
  if (!(take([](std::string_view word) { return word == "en"; }) && take(is_blank))) c = end, take(is_blank);
  cursor = c;
  auto const next = c.peek();
  ends.before_name = !c.at_end() && next != '(' && next != ',' && next != ';';
  return ends;
}
/// Takes "first 4 and last 2 leaves", which names the leaves once.
[[nodiscard]] inline std::optional<EndsOfBook> take_both_ends(TextCursor& cursor) noexcept {
  auto c = cursor;
  EndsOfBook ends;
  auto const take = [&](std::string_view word) {
    if (!c.take_word_in_any_case(word)) return false;
    return c.take_blanks();
  };
  auto const take_number = [&](int& to) {
    auto const number = number_beside_leaves(c.take_until(is_between_items));
    to = number.value_or(0);
    return number && c.take_blanks();
  };
  static_cast<void>(take("the"));
  if (!take("first") || !take_number(ends.first)) return std::nullopt;
  if (!take("and")) return std::nullopt;
  static_cast<void>(take("the"));
  if (!take("last") || !take_number(ends.last)) return std::nullopt;
  if (!is_leaf_noun(c.take_until(is_between_items))) return std::nullopt;
  cursor = c;
  return ends;
}
/// Takes "the last two leaves", "first and last leaves", "final blank" or "the last quire". If there is none, takes nothing
/// and returns no value.
[[nodiscard]] inline std::optional<EndsOfBook> take_ends_of_book(TextCursor& cursor) {
  if (auto const both = take_both_ends(cursor)) return both;
  auto c = cursor;
  auto counted = take_counted_leaves(c);
  if (!counted) return take_end_leaf(cursor);
  EndsOfBook ends;
  auto const add = [&] { (counted->first ? ends.first : ends.last) = counted->leaves; };
  add();
  auto other = c;
  if (counted->first && other.take_word("and")) {
    other.take_blanks();
    if (auto const last = take_counted_leaves(other); last && !last->first) counted = last, c = other, add();
  }
  auto blank = c;
  bool const is_blank = is_blank_word(blank.take_letters());
  if (is_blank) {
    c = blank;
    c.take_blanks();
    static_cast<void>(c.take_word("leaf") || c.take_word("leaves"));
    c.take_blanks();
  }
  if (!counted->says_leaves && !is_blank) return take_end_leaf(cursor);
  cursor = c;
  bool const item_ends = c.at_end() || c.peek() == '(' || is_between_items(c.character().value) || c.take_word("and");
  ends.before_name = !item_ends;
  return ends;
}
/// Takes words that say again that a copy is whole but for what is wanting, otherwise complete, or that its blanks are there,
/// with the blanks, after something else.
[[nodiscard]] inline bool take_remark_on_copy(TextCursor& cursor) noexcept {
  auto c = cursor;
  constexpr std::string_view otherwise[]{"otherwise"sv, "else"sv,       "sonst"sv,    "ansonsten"sv,
                                         "sinon"sv,     "altrimenti"sv, "overigens"sv};
  auto const word = c.take_until(is_between_items);
  if (is_any(word, otherwise)) {
    c.take_blanks();
    if (!take_whole_book(c)) return false;
    cursor = c;
    return true;
  }
  constexpr std::string_view with[]{"with"sv, "including"sv, "incl."sv, "mit"sv, "avec"sv, "con"sv, "met"sv};
  if (!is_any(word, with)) return false;
  bool blank = false;
  for (auto next = c;; c = next) {
    if (!next.take_blanks()) break;
    auto const one = without_point(next.take_until(is_between_items));
    bool const is_blank = is_blank_word(one);
    bool const beside = is_article(one) || is_row(one, first_words) || is_row(one, last_words) || is_leaf_noun(one) ||
                        number_beside_leaves(one);
    if (!is_blank && !beside) break;
    blank = blank || is_blank;
  }
  c.take_blanks();
  if (!blank || (!c.at_end() && c.peek() != ',' && c.peek() != ';')) return false;
  cursor = c;
  return true;
}
/// A pair of conjugate leaves of a gathering, by its place.
struct PairOfGathering {
  bool inner{};               ///< true for the inmost, false for the outmost
  std::string_view gathering; ///< the name of the gathering
};
/// Takes "inner bifolium of B". An outer sheet is such a pair only in a folio, so it is not taken.
[[nodiscard]] inline std::optional<PairOfGathering> take_pair_of_gathering(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  auto const word = [&] {
    c.take_blanks();
    return c.take_until(is_between_items);
  };
  constexpr std::string_view inner[]{"inner"sv, "inmost"sv, "innermost"sv, "central"sv, "middle"sv};
  constexpr std::string_view outer[]{"outer"sv, "outmost"sv, "outermost"sv};
  if (c.starts_with("the ")) c.take("the");
  auto const place = word();
  bool const is_inner = is_any(place, inner);
  if (!is_inner && !is_any(place, outer)) return std::nullopt;
  if (!equal_in_any_case(word(), "bifolium") || word() != "of") return std::nullopt;
  auto name = word();
  if (is_row(without_point(name), gathering_nouns)) name = word();
  if (!names_gathering(book, name)) return std::nullopt;
  cursor = c;
  return PairOfGathering{is_inner, name};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
