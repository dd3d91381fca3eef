// SPDX-License-Identifier: MIT
/// Words for what is printed on a leaf, which catalogues add to its name, A1 (title), or write in its place (common
/// practice, no source). The formula does not say on which leaf a title or a privilege is, so beside a name they say
/// nothing, and alone they name no leaf.
#pragma once

#include <bifolium/copy/detail/sides_of_leaves.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words that stand beside those: title page, title leaf.
inline constexpr char const* words_beside_contents[]{"page", "leaf"};
/// Words for pages and leaves that are counted.
inline constexpr char const* page_and_leaf_words[]{"p", "pp", "page", "pages", "leaf", "leaves"};

/// Returns true for a word for what is printed on a leaf.
[[nodiscard]] inline bool is_content_word(std::string_view word) noexcept {
  return is_noun(word, content_noun_rows, NounUse::in_list);
}
/// Returns true for a word that counts pages or leaves, or says what is on them, and does not name a leaf.
[[nodiscard]] inline bool names_no_leaf(std::string_view word) noexcept {
  while (word.ends_with(')') || word.ends_with('.') || word.ends_with(':')) word.remove_suffix(1);
  if (word.starts_with('(')) word.remove_prefix(1);
  if (is_row(word, page_and_leaf_words)) return true;
  TextCursor cursor{word};
  if (cursor.take("pp.") || cursor.take("p.")) return cursor.at_digit(); // p.5
  return is_content_word(word) || number_of_word(word).has_value() || whole_number(word, 999'999'999).has_value();
}
/// Words between a side and what is said of it.
inline constexpr char const* words_beside_side[]{"on", "with", "its", "the", "and", "au", "am", "of"};

/// Takes words that say of the leaf before them that one side is blank: A1, verso blank; A1 (blank on verso).
[[nodiscard]] inline bool take_blank_side(TextCursor& cursor) noexcept {
  auto c = cursor;
  bool const round = c.take('(');
  bool side = false, blank = false;
  for (int words = 0; words < 5 && !(side && blank); ++words) {
    c.take_blanks();
    auto const word = without_point(c.take_until([](char32_t one) { return is_between_items(one) || one == ')'; }));
    if (!side && word.size() > 1 && side_word(word) != LeafSide::not_said)
      side = true;
    else if (!blank && is_blank_word(word))
      blank = true;
    else if (!is_row(word, words_beside_side))
      return false;
  }
  c.take_blanks();
  if (!side || !blank || (round && !c.take(')'))) return false;
  if (!c.at_end() && !is_between_items(c.character().value) && c.peek() != ')') return false;
  cursor = c;
  return true;
}
/// Takes a remark in parentheses that only says that leaves are blank: (a blank), (both blank leaves).
[[nodiscard]] inline bool take_blank_remark(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!c.take('(')) return false;
  for (bool blank = false;;) {
    c.take_blanks();
    if (blank && c.take(')')) break;
    auto const word = without_point(c.take_until([](char32_t one) { return is_space(one) || one == ')'; }));
    bool const is_blank = is_blank_word(word);
    if (!is_blank && !is_linking_word(word) && !is_article(word) && !is_leaf_noun(word)) return false;
    blank = blank || is_blank;
  }
  cursor = c;
  return true;
}
/// Takes a remark in parentheses that says what is printed on the leaves before it: (title), (title page), (title, verso blank).
[[nodiscard]] inline bool take_content_remark(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!c.take('(')) return false;
  bool side = false, blank = false;
  for (bool any = false;; any = true) {
    c.take_blanks();
    if (any && c.take(')')) break;
    auto word = c.take_until([](char32_t one) { return is_space(one) || one == ')'; });
    while (word.ends_with('.') || word.ends_with(',') || word.ends_with(';')) word.remove_suffix(1);
    bool const beside = is_row(word, words_beside_contents) || is_row(word, words_beside_side);
    bool const is_side = any && word.size() > 1 && side_word(word) != LeafSide::not_said;
    bool const is_blank = any && is_blank_word(word);
    side = side || is_side, blank = blank || is_blank;
    if (!is_content_word(word) && !is_side && !is_blank && !(any && beside)) return false;
  }
  if (blank && !side) return false; // (title, blank): what is said of the leaf
  cursor = c;
  return true;
}
/// Returns the word without the parentheses round it: (A1).
[[nodiscard]] inline std::string_view in_parentheses(std::string_view word) noexcept {
  bool const enclosed = word.size() > 2 && word.starts_with('(') && word.ends_with(')') &&
                        word.substr(1, word.size() - 2).find_first_of("()") == word.npos;
  return enclosed ? word.substr(1, word.size() - 2) : word;
}
/// Takes words for what is printed on a leaf, the title page, that no name comes after.
[[nodiscard]] inline std::string_view take_contents(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto word = c.take_until(is_between_items);
  auto from = cursor.at();
  if (is_article(word) && c.take_blanks()) from = c.at(), word = c.take_until(is_between_items);
  if (!is_content_word(word)) return {};
  auto end = c;
  while (c.take_blanks()) {
    auto const next = c.take_until(is_between_items);
    if (!is_content_word(next) && !is_row(next, words_beside_contents)) break;
    end = c;
  }
  cursor = end;
  return end.text().substr(from, end.at() - from);
}
/// Takes words for what is printed on a leaf if the name of the leaf comes after them: title page (A1).
[[nodiscard]] inline bool take_content_before_leaf(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  for (bool any = false;; any = true) {
    auto next = c;
    auto const word = next.take_until(is_between_items);
    if (is_content_word(word) || (any && is_row(word, words_beside_contents))) {
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

} // namespace detail
} // namespace v0
} // namespace bifolium
