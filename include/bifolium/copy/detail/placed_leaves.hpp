// SPDX-License-Identifier: MIT
/// The leaves of a list in the order of the copy. A bifolium stands round the leaves that come after it: A1.4 A2.3 is the
/// whole of A, and its leaves are A1, A2, A3, A4. So the second leaf of a bifolium waits until a leaf comes that does not
/// belong inside; bifolia in one another wait in a stack, and each leaf is moved once, however deep it lies.
#pragma once

#include <bifolium/copy/leaf_span.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PlacedLeaves {
  struct Bifolium {
    LeafOfBook first{};
    LeafSpan second{};
  };
  std::vector<LeafSpan> spans_{};
  std::vector<Bifolium> around_{};      // those that wait for their second leaf, the outermost first
  std::size_t item_from_{}, item_to_{}; // the spans of the last item
  bool item_waits_{};                   // the last item is a bifolium, and its second leaf waits

  void close_innermost() {
    spans_.push_back(around_.back().second);
    around_.pop_back();
  }
  /// Ends the bifolia in which these leaves do not belong.
  void go_inside(LeafOfBook const& first, LeafOfBook const& last) {
    while (!around_.empty() && !(around_.back().first < first && last < around_.back().second.last)) close_innermost();
  }

public:
  /// Adds the leaves of an item inside the bifolia that they belong to.
  void place(std::span<LeafSpan const> leaves) {
    go_inside(leaves.front().first, leaves.back().last);
    item_from_ = spans_.size();
    spans_.insert(spans_.end(), leaves.begin(), leaves.end());
    item_to_ = spans_.size();
    item_waits_ = false;
  }
  /// Adds a bifolium, round what comes after it.
  void place_bifolium(LeafSpan const& first, LeafSpan const& second) {
    go_inside(first.first, second.last);
    item_from_ = spans_.size();
    spans_.push_back(first);
    item_to_ = spans_.size();
    around_.push_back({first.first, second});
    item_waits_ = true;
  }
  /// Ends all bifolia: what comes after is inside none.
  void close() {
    while (!around_.empty()) close_innermost();
    if (item_waits_) ++item_to_, item_waits_ = false; // the second leaf of the innermost follows the first
  }
  /// What comes before is not of the last item any more.
  void begin_item() noexcept { item_from_ = item_to_ = 0, item_waits_ = false; }
  /// Removes the leaves of the last item. Precondition: all bifolia are closed.
  void remove_item() {
    auto const begin = spans_.begin();
    spans_.erase(begin + static_cast<std::ptrdiff_t>(item_from_), begin + static_cast<std::ptrdiff_t>(item_to_));
    item_to_ = item_from_;
  }

  [[nodiscard]] bool empty() const noexcept { return spans_.empty(); }
  [[nodiscard]] std::size_t size() const noexcept { return spans_.size() + around_.size(); }
  /// Returns the leaves that are last in the order of the copy. Precondition: there are leaves.
  [[nodiscard]] LeafSpan const& last() const { return around_.empty() ? spans_.back() : around_.front().second; }
  [[nodiscard]] bool inside_bifolium() const noexcept { return !around_.empty(); }
  [[nodiscard]] std::size_t item_from() const noexcept { return item_from_; }
  [[nodiscard]] std::size_t item_to() const noexcept { return item_to_; }
  /// Returns the leaves, but for those that wait for the end of their bifolium.
  [[nodiscard]] std::vector<LeafSpan> const& spans() const noexcept { return spans_; }
  /// Gives a state to the leaves from span `from` to the end of the last item.
  template <class State> void give_state(std::size_t from, State&& state) {
    for (auto i = from; i < item_to_; ++i) state(spans_[i].state);
    if (item_waits_) state(around_.back().second.state);
  }
  /// Closes all bifolia and gives the leaves away.
  [[nodiscard]] std::vector<LeafSpan> take() {
    close();
    return static_cast<std::vector<LeafSpan>&&>(spans_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
