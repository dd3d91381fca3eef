// SPDX-License-Identifier: MIT
/// Leaves from one to the end of the book: ab K5, from K5 on, K5 to the end. A word before the leaf says so only in a
/// list of leaves that are wanting.
#pragma once

#include <bifolium/copy/detail/end_words.hpp>
#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/pair_words.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class RunToEnd {
  ListSoFar& list_;
  bool from_{}, to_end_{};

public:
  explicit RunToEnd(ListSoFar& list) : list_{list} {}

  /// Notes that an item begins.
  void begin_item() noexcept { to_end_ = false; }
  /// Takes words for the end of the book after "to": the end, zum Ende.
  bool take_end(TextCursor& cursor) {
    auto c = cursor;
    for (int words = 0; words < 3; ++words) {
      auto const word = c.take_until(is_between_items);
      if (is_row(word, back_words)) return cursor = c, to_end_ = true;
      if (!(is_article(word) || word == "zum" || is_row(word, words_before_place)) || !c.take_blanks()) return false;
    }
    return false;
  }
  /// Takes a word before the first leaf of all that are wanting after it: ab K5, from K5 on.
  bool take_from(TextCursor& cursor) {
    auto c = cursor;
    bool const from = c.take_word_in_any_case("à partir de") || c.take_word_in_any_case("à partir du") ||
                      is_row(c.take_until(is_between_items), words_for_from);
    auto const here = cursor.text().substr(cursor.at(), c.at() - cursor.at());
    if (!list_.wanting || !from || !c.take_blanks() || names_gathering(list_.book, here)) return false;
    for (int words = 0; words < 2; ++words) { // ab Bl. K5
      auto next = c;
      auto const word = next.take_until(is_between_items);
      if (!(is_article(word) || is_leaf_noun(word) ||
            is_noun(without_point(word), gathering_noun_rows, NounUse::in_list)) ||
          !next.take_blanks())
        break;
      c = next;
    }
    auto name = c;
    auto const leaf = take_until_beside_names(name, is_between_items);
    auto const read = find_reference(list_.book, leaf);
    if (!names_gathering(list_.book, leaf) && !(read && read->side == LeafSide::not_said)) return false;
    if (leads_run(c) || last_point(leaf) < leaf.size()) return cursor = c, true; // from K5 to L2
    cursor = c;
    return from_ = true;
  }
  /// Takes "on" after the leaf, from K5 on, and returns true if the item goes on to the end of the book.
  [[nodiscard]] bool end_item(TextCursor& cursor) {
    if (auto on = past_blanks(cursor); from_ && is_row(on.take_until(is_between_items), words_for_on)) cursor = on;
    bool const to_end = to_end_ || from_;
    from_ = false;
    return to_end;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
