// SPDX-License-Identifier: MIT
/// The states of the leaves of a list. A word for a state is said of the item before it, and if "and" joins single leaves,
/// A1 and B4 in facsimile, of all of them. More words may follow, A1 in facsimile, mounted, so the state is given to the
/// leaves only when the next item comes.
#pragma once

#include <bifolium/copy/detail/list_so_far.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class StatesInList {
  ListSoFar& list_;
  std::size_t group_from_{}; // the spans of the items that "and" joins
  std::size_t stated_{};     // how many spans have words for their state
  bool joined_{};            // "and" comes before the item

  /// Returns where the spans begin of which a state after the last item is said.
  [[nodiscard]] std::size_t first_stated() const {
    auto const& leaves = list_.leaves;
    bool single = !leaves.inside_bifolium() && group_from_ < leaves.item_from();
    for (auto i = group_from_; i < leaves.item_to(); ++i)
      single = single && leaves.spans()[i].from == leaves.spans()[i].to;
    return single ? group_from_ : leaves.item_from();
  }

public:
  explicit StatesInList(ListSoFar& list) : list_{list} {}

  /// Notes that "and" comes before the next item.
  void join() noexcept { joined_ = true; }
  /// Notes that an item was read.
  void end_item() noexcept {
    auto const from = list_.leaves.item_from();
    if (!joined_ || group_from_ > from) group_from_ = from;
    joined_ = false;
  }
  /// Gives the leaves of the last item a state.
  std::optional<Error> take(std::string_view word, LeafInCopy state) {
    if (list_.wanting && state == LeafInCopy::blank) return {}; // the blank K8; K8 blank
    if (list_.leaves.empty()) return list_.error(Problem::not_a_reference, word);
    list_.leaves.give_state(first_stated(), [&](LeafInCopy& one) {
      stated_ += !list_.wanting && one == LeafInCopy::original ? 1U : 0U;
      // A1 in manuscript facsimile; a facsimile that was mounted, or supplied by a binder, is still no leaf
      bool const keeps = is_substitute(one) && state != LeafInCopy::facsimile;
      if (!keeps) one = state;
    });
    joined_ = false; // en fac-similé
    return {};
  }
  /// Returns true if every leaf of a list of `spans` spans has a word for its state, and none is only named: A1 in facsimile.
  [[nodiscard]] bool are_all(std::size_t spans) const noexcept { return stated_ > 0 && stated_ >= spans; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
