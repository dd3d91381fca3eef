// SPDX-License-Identifier: MIT
/// The words that stand beside the leaves of a list: the state in which they are, and the ends of the book.
#pragma once

#include <bifolium/copy/detail/list_passages.hpp>
#include <bifolium/copy/leaf_in_copy.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads a word for the leaves before it, with or without parentheses: facsimile, (facsimile).
[[nodiscard]] inline std::optional<LeafInCopy> state_of(std::string_view word) {
  if (word.starts_with('(')) word.remove_prefix(1);
  while (word.ends_with(')') || word.ends_with('.')) word.remove_suffix(1);
  if (word == "facs") return LeafInCopy::facsimile;
  for (auto const state : {LeafInCopy::blank, LeafInCopy::mounted, LeafInCopy::supplied, LeafInCopy::facsimile})
    if (word == to_words(state)) return state;
  return std::nullopt;
}
/// The first leaf of a book, or the last, or both, as words name them.
struct EndsOfBook {
  bool first{}, last{};
  bool before_name{}; ///< true for "the final blank K8", where a name follows, and says which leaf it is
};
/// Takes "the last leaf", "first and last leaves" or "final blank". If there is none, takes nothing and returns no value.
[[nodiscard]] inline std::optional<EndsOfBook> take_ends_of_book(TextCursor& cursor) {
  auto c = cursor;
  auto const take = [&](std::string_view word) {
    auto next = c;
    if (!next.take_in_any_case(word) || is_latin_letter(next.peek())) return false;
    next.take_blanks();
    c = next;
    return true;
  };
  static_cast<void>(take("the"));
  EndsOfBook ends;
  ends.first = take("first");
  bool const both = ends.first && take("and");
  ends.last = (!ends.first || both) && (take("last") || take("final"));
  if (both ? !ends.last : ends.first == ends.last) return std::nullopt;
  bool const blank = take("blank") || (both && take("blanks"));
  if (!take(both ? "leaves" : "leaf") && !blank) return std::nullopt;
  cursor = c;
  bool const item_ends = c.at_end() || c.peek() == '(' || is_between_items(c.character().value) || take("and");
  ends.before_name = !item_ends;
  return ends;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
