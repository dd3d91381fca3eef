// SPDX-License-Identifier: MIT
/// Words that say that a copy is whole: complete, all leaves present, otherwise perfect, with the blanks (common practice,
/// no source). Complete stands for all leaves; after the leaves that a copy lacks it says only that no others are wanting.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words for a copy that has all its leaves.
inline constexpr char const* whole_copy_words[]{"complete", "perfect",  "vollständig", "komplett", "complet",
                                                "completo", "completa", "volledig",    "compleet", "integrum"};
/// Words for "but for that".
inline constexpr char const* otherwise_words[]{"otherwise", "else",       "sonst",    "ansonsten",
                                               "sinon",     "altrimenti", "overigens"};
/// Words for "with".
inline constexpr char const* words_for_with[]{"with", "including", "incl.", "mit", "avec", "con", "met"};

/// Takes words that say that the blanks of a copy are there: with the blanks, avec les ff. blancs.
[[nodiscard]] inline bool take_with_blanks(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!is_row(c.take_until(is_between_items), words_for_with)) return false;
  bool blank = false;
  for (auto next = c;; c = next) {
    if (!next.take_blanks()) break;
    auto const one = without_point(next.take_until(is_between_items));
    bool const is_blank = is_blank_word(one);
    bool const beside = is_article(one) || is_row(one, first_words) || is_row(one, last_words) || is_leaf_noun(one) ||
                        equal_in_any_case(one, "all") || number_beside_leaves(one);
    if (!is_blank && !beside) break;
    blank = blank || is_blank;
  }
  c.take_blanks();
  if (!blank || (!c.at_end() && c.peek() != ',' && c.peek() != ';')) return false;
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
  } else if (!is_row(word, whole_copy_words)) {
    return false;
  }
  c.take_while(is_space);
  if (!ended && take_with_blanks(c)) return cursor = c, true; // complete with blanks
  if (!ended && !c.at_end() && c.peek() != ',' && c.peek() != ';') return false;
  cursor = c;
  return true;
}
/// Takes words that say again that a copy is whole but for what is wanting, otherwise complete, or that its blanks are there,
/// with the blanks, after something else.
[[nodiscard]] inline bool take_remark_on_copy(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const word = c.take_until(is_between_items);
  if (is_row(word, otherwise_words)) {
    c.take_blanks();
    if (!take_whole_book(c)) return false;
    cursor = c;
    return true;
  }
  return take_with_blanks(cursor);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
