// SPDX-License-Identifier: MIT
/// Of which leaves of a list a word for a state is said: of the item before it, and if "and" joins single leaves, A1 and B4
/// in facsimile, of all of them. After the word another group begins: in A1 mounted and B4 torn each leaf has its own. A leaf
/// that is torn is there, so in "lacks A1 and B4 torn" only the last is torn, and A1 is wanting.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class StatesInList {
  ListSoFar& list_;
  std::size_t group_from_{}; // the spans of the items that "and" joins
  std::size_t asked_{};      // the spans of the group up to here were looked at
  bool single_{true};        // and each is a single leaf
  bool joined_{};            // "and" comes before the item
  bool said_{};              // a state was said of the group
  bool of_all_{};            // "both" or "are" comes after the item
  bool of_wanting_{};        // no semicolon has ended what is said to be wanting

  /// Returns true if a state would make leaves that are said to be wanting leaves that are there.
  [[nodiscard]] bool denies_loss(LeafInCopy state) const noexcept {
    bool const there = state == LeafInCopy::damaged || state == LeafInCopy::mounted;
    return list_.wanting && of_wanting_ && there && !of_all_;
  }

public:
  explicit StatesInList(ListSoFar& list) : list_{list} {}

  /// Returns where the spans begin of which words after the last item are said.
  [[nodiscard]] std::size_t first_of_group() {
    auto const& leaves = list_.leaves;
    auto const is_single = [&](std::size_t i) { return leaves.spans()[i].from == leaves.spans()[i].to; };
    for (; asked_ < leaves.item_from(); ++asked_) single_ = single_ && is_single(asked_);
    bool single = single_ && !leaves.inside_bifolium() && group_from_ < leaves.item_from();
    for (auto i = leaves.item_from(); single && i < leaves.item_to(); ++i) single = is_single(i);
    return single ? group_from_ : leaves.item_from();
  }

  /// Returns where the spans begin of which it is said that they are bound elsewhere: leaves or gatherings that "and" joins.
  [[nodiscard]] std::size_t first_of_bound() const {
    auto const& leaves = list_.leaves;
    bool of_one = !leaves.inside_bifolium() && group_from_ < leaves.item_from();
    for (auto i = group_from_; of_one && i < leaves.item_to(); ++i)
      of_one = leaves.spans()[i].first.gathering == leaves.spans()[i].last.gathering;
    return of_one ? group_from_ : leaves.item_from();
  }
  /// Notes that "and" comes before the next item.
  void join() noexcept { joined_ = true; }
  /// Notes a word after which a state is said of all leaves that "and" joins: A1 and A2 are torn.
  void say_of_all() noexcept { of_all_ = true; }
  /// Notes that a passage begins, or after a semicolon another part of it.
  void begin_passage() noexcept { of_wanting_ = true; }
  void begin_clause() noexcept { of_wanting_ = false; }
  /// Notes that an item was read.
  void end_item() noexcept {
    auto const from = list_.leaves.item_from();
    if (!joined_ || said_ || group_from_ > from) group_from_ = asked_ = from, single_ = true;
    joined_ = said_ = of_all_ = false;
  }
  /// Gives the leaves of the last item a state.
  std::optional<Error> take(std::string_view word, LeafInCopy state) {
    auto& leaves = list_.leaves;
    if (list_.wanting && state == LeafInCopy::blank) { // the blank K8; K8 blank
      bool const beside = leaves.half_of_item() && leaves.item_from() > list_.passage_from;
      if (beside) leaves.remove(leaves.item_from()); // lacks L4; A1v blank
      return {};
    }
    if (!list_.has_leaves()) return list_.error(Problem::not_a_reference, word);
    if (leaves.item_from() == leaves.item_to()) { // B3 bound after B6, torn
      for (auto i = list_.moved_from; i < list_.moved.size(); ++i) list_.moved[i].leaves.state = state;
      return {};
    }
    leaves.say(leaves.is_stated() ? 0 : denies_loss(state) ? leaves.item_from() : first_of_group(), state);
    said_ = true;
    joined_ = false; // en fac-similé
    return {};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
