// SPDX-License-Identifier: MIT
/// Words for the leaves at the ends of a book, in the languages of catalogues: le dernier feuillet, les 2 derniers ff., first
/// and last leaves, the last quire, final blank (common practice, no source). Copies lose leaves at the ends most often,
/// and catalogues seldom look up what these are called.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

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

} // namespace detail
} // namespace v0
} // namespace bifolium
