// SPDX-License-Identifier: MIT
/// A number of leaves or gatherings before their names: two leaves (A1 and B3), 4 leaves: A1, A8, B4.5. The names say which
/// leaves are wanting, so the number adds nothing, but one that is not that of the names shows a slip in one of them. A
/// number without names after it says nothing of which leaves it counts, and is not taken.
#pragma once

#include <bifolium/copy/detail/states_in_list.hpp>
#include <bifolium/copy/detail/that_is_words.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class CountBeforeNames {
  struct Count {
    std::string_view word{};
    int leaves{};
    std::size_t from{}; // the spans after it
    TextPlace place{};
  };
  ListSoFar& list_;
  std::optional<Count> count_{};
  bool said_{};

public:
  explicit CountBeforeNames(ListSoFar& list) : list_{list} {}

  /// Returns true if a number was taken and no item after it was read.
  [[nodiscard]] bool is_said() const noexcept { return said_; }
  /// Notes that an item was read.
  void end_item() noexcept { said_ = false; }

  /// Takes a number of leaves or gatherings before their names.
  bool take(TextCursor& cursor) {
    auto const& book = list_.book;
    auto c = cursor;
    auto word = c.take_until(is_between_items);
    if (is_article(word) && c.take_blanks()) word = c.take_until(is_between_items);
    auto const number = number_beside_leaves(word);
    if (!number || !c.take_blanks()) return false;
    auto noun = c.take_until(is_between_items);
    while (noun.ends_with(':')) noun.remove_suffix(1);
    bool const gatherings = is_noun(without_point(noun), gathering_noun_rows, NounUse::in_list);
    if (!is_leaf_noun(noun) && !gatherings) return false;
    while (c.take_blanks() || c.take(':') || c.take(',') || take_that_is(c)) continue;
    auto name = c;
    static_cast<void>(name.take('(') && take_that_is(name));
    auto const ends = [](char32_t one) { return is_between_items(one) || is_dash(one) || one == ')' || one == '.'; };
    auto const first = take_until_beside_names(name, ends);
    if (!names_gathering(book, first) && !find_reference(book, first)) return false;
    check();
    list_.leaves.close();
    auto const place = [&] { return list_.doubt_places.place(list_.text, list_.position(word)); };
    said_ = true;
    if (!gatherings) count_ = {word, *number, list_.leaves.size(), place()};
    cursor = c;
    return true;
  }
  /// Takes a number of leaves in parentheses after their names: C (8 leaves). One that is not theirs is doubted. `states` know
  /// with which span the names begin that "and" joins.
  bool take_after(TextCursor& cursor, StatesInList& states) {
    auto c = cursor;
    if (!c.take('(')) return false;
    auto const ends = [](char32_t one) { return is_between_items(one) || one == ')'; };
    auto const word = c.take_until(ends);
    auto const number = number_beside_leaves(word);
    if (!number || !c.take_blanks()) return false;
    auto const noun = c.take_until(ends);
    bool const unit = is_noun(without_point(noun), leaf_noun_rows, NounUse::in_list);
    if (!unit || !c.take(')') || (!c.at_end() && !is_between_items(c.character().value))) return false;
    list_.leaves.close();
    auto const leaves = list_.leaves.leaves_from(list_.leaves.item_from());
    bool const right = leaves == *number || list_.leaves.leaves_from(states.first_of_group()) == *number ||
                       list_.leaves.leaves_from(list_.passage_from) == *number;
    if (!right)
      list_.doubts.push_back(error_at(Problem::leaves_miscounted,
                                      list_.doubt_places.place(list_.text, list_.position(word)), word, leaves));
    cursor = c;
    return true;
  }
  /// Doubts a number of leaves that is not that of the leaves named after it.
  void check() {
    if (!count_) return;
    list_.leaves.close();
    auto const leaves = list_.leaves.leaves_from(count_->from);
    if (leaves != count_->leaves)
      list_.doubts.push_back(error_at(Problem::leaves_miscounted, count_->place, count_->word, leaves));
    count_.reset();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
