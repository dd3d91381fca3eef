// SPDX-License-Identifier: MIT
/// Words that call the leaves blank that are named after them: A-K (blanks A1, K8), with the blank leaf L4. The word in the plural
/// is said of all names up to a semicolon, "blank" of the next alone.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/detail/whole_copy_words.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>
#include <bifolium/copy/detail/words_between_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class BlanksBefore {
  ListSoFar& list_;
  enum class Next : std::uint8_t { not_blank, one, all } next_{};

public:
  explicit BlanksBefore(ListSoFar& list) : list_{list} {}

  /// Takes words that call the leaves blank that are named after them: A-K (blanks A1, K8), with the blank leaf L4.
  bool take(TextCursor& cursor) {
    if (list_.wanting || !begins_word(cursor.peek())) return false;
    auto c = cursor;
    bool blank = false, several = false,
         said = false; // said: more than the word blank, which may be said of what comes before
    for (int words = 0; words < 6; ++words) {
      auto next = c;
      auto const word = take_until_beside_names(next, is_between_items), bare = without_point(word);
      bool const noun = is_leaf_noun(word), is_blank = !noun && is_blank_word(bare);
      bool const beside =
          (words == 0 && is_row(word, words_for_with)) || equal_in_any_case(word, "both") || is_number_word(word);
      if (!noun && !is_blank && !beside && !is_article(word) && !is_row(word, last_words) && !is_row(word, first_words))
        break;
      if (names_gathering(list_.book, word) || !next.take_blanks()) return false;
      blank = blank || is_blank, said = said || !is_blank || is_plural_blank_word(bare);
      several = several || is_plural_blank_word(bare) || (noun && names_several_leaves(bare));
      c = next;
    }
    auto name = c;
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one) || one == ')'; };
    auto const first = take_until_beside_names(name, ends);
    if (!blank || !said || (!names_gathering(list_.book, first) && !find_reference(list_.book, first))) return false;
    next_ = several ? Next::all : Next::one;
    cursor = c;
    return true;
  }
  /// Ends the names that are called blank.
  void end() noexcept { next_ = Next::not_blank; }
  /// Gives the last item its state.
  void end_item() {
    auto& leaves = list_.leaves;
    if (next_ == Next::not_blank || leaves.item_from() == leaves.item_to()) return;
    leaves.say(leaves.item_from(), LeafInCopy::blank);
    if (next_ == Next::one) next_ = Next::not_blank;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
