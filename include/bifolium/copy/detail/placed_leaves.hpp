// SPDX-License-Identifier: MIT
/// The leaves of a list in the order of the copy. A bifolium stands round the leaves that come after it: A1.4 A2.3 is the
/// whole of A, and its leaves are A1, A2, A3, A4. So the second leaf of a bifolium waits until a leaf comes that does not
/// belong inside; bifolia in one another wait in a stack, and each leaf is moved once, however deep it lies. So does a
/// state: more words for it may follow, A1 in facsimile, mounted, and it is given to the leaves when the next ones come.
#pragma once

#include <bifolium/copy/detail/sides_of_leaves.hpp>
#include <bifolium/copy/leaf_span.hpp>

#include <optional>
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
  std::vector<std::int64_t> counted_{}; // of each span: the leaves up to its end
  std::vector<Bifolium> around_{};      // those that wait for their second leaf, the outermost first
  std::size_t item_from_{}, item_to_{}; // the spans of the last item
  bool item_waits_{};                   // the last item is a bifolium, and its second leaf waits
  std::optional<LeafInCopy> said_{};    // the state of the leaves from span said_from_ to the end of the last item
  std::size_t said_from_{}, stated_{};  // stated_: how many spans have words for their state
  std::vector<HalfLeaf> halves_{};      // in the order of their spans

  void add(LeafSpan const& span) {
    counted_.push_back((counted_.empty() ? 0 : counted_.back()) + span.leaves());
    spans_.push_back(span);
  }
  void close_innermost() {
    add(around_.back().second);
    around_.pop_back();
  }
  /// Ends the bifolia in which these leaves do not belong.
  void go_inside(LeafOfBook const& first, LeafOfBook const& last) {
    while (!around_.empty() && !(around_.back().first < first && last < around_.back().second.last)) close_innermost();
  }

  /// Returns the state of leaves of which one thing is said after another. A facsimile that was mounted, or supplied by a
  /// binder, is still no leaf; A1 in manuscript facsimile is a facsimile.
  [[nodiscard]] static LeafInCopy both(LeafInCopy before, LeafInCopy next) noexcept {
    if (next == LeafInCopy::original) return before; // A1, verso blank
    return is_substitute(before) && next != LeafInCopy::facsimile ? before : next;
  }

public:
  /// Gives the last item the state that was said of it.
  void give_state() noexcept {
    if (!said_) return;
    auto const give = [&](LeafInCopy& state) {
      if (state == LeafInCopy::original) ++stated_;
      state = both(state, *said_);
    };
    for (auto i = said_from_; i < item_to_; ++i) give(spans_[i].state);
    if (item_waits_) give(around_.back().second.state);
    said_.reset();
  }
  /// Adds the leaves of an item inside the bifolia that they belong to.
  void place(std::span<LeafSpan const> leaves) {
    give_state();
    go_inside(leaves.front().first, leaves.back().last);
    item_from_ = spans_.size();
    for (auto const& one : leaves) add(one);
    item_to_ = spans_.size();
    item_waits_ = false;
  }
  /// Adds a bifolium, round what comes after it.
  void place_bifolium(LeafSpan const& first, LeafSpan const& second) {
    give_state();
    go_inside(first.first, second.last);
    item_from_ = spans_.size();
    add(first);
    item_to_ = spans_.size();
    around_.push_back({first.first, second});
    item_waits_ = true;
  }
  /// Ends all bifolia: what comes after is inside none.
  void close() {
    give_state();
    while (!around_.empty()) close_innermost();
    if (item_waits_) ++item_to_, item_waits_ = false; // the second leaf of the innermost follows the first
  }
  /// What comes before is not of the last item any more.
  void begin_item() noexcept {
    give_state();
    item_from_ = item_to_ = 0, item_waits_ = false;
  }
  /// Gives a state to the leaves from span `from` to the end of the last item.
  void say(std::size_t from, LeafInCopy state) noexcept {
    if (!said_) said_from_ = from;
    said_ = said_ ? both(*said_, state) : state;
  }
  /// Returns true if a state was said of the last item.
  [[nodiscard]] bool is_stated() const noexcept { return said_.has_value(); }
  /// Returns how many spans have words for their state.
  [[nodiscard]] std::size_t stated() const noexcept { return stated_; }
  /// Removes the leaves from span `from` to the end of the last item, which is the last span. Precondition: all bifolia are
  /// closed.
  void remove(std::size_t from) {
    auto const begin = spans_.begin();
    spans_.erase(begin + static_cast<std::ptrdiff_t>(from), begin + static_cast<std::ptrdiff_t>(item_to_));
    counted_.resize(spans_.size());
    while (!halves_.empty() && halves_.back().span >= from) halves_.pop_back();
    begin_item();
  }
  /// Notes that only one side of the first or the last leaf of the last item is named.
  void add_half(LeafOfBook const& leaf, LeafSide side, bool last, std::string_view word) {
    halves_.push_back({leaf, side, word, last ? item_to_ - 1 : item_from_, last});
  }
  /// Returns the leaves of which only one side is named.
  [[nodiscard]] std::vector<HalfLeaf> const& halves() const noexcept { return halves_; }
  /// Returns the leaf of which the last item is one side.
  [[nodiscard]] std::optional<HalfLeaf> half_of_item() const {
    bool const half = item_to_ == item_from_ + 1 && !halves_.empty() && halves_.back().span == item_from_ &&
                      spans_[item_from_].from == spans_[item_from_].to;
    return half ? std::optional{halves_.back()} : std::nullopt;
  }
  /// Notes that a span was taken out, or with no number that all have other places.
  void forget_halves(std::optional<std::size_t> taken_out = std::nullopt) {
    if (!taken_out) return halves_.clear();
    for (auto& half : halves_) half.span -= half.span > *taken_out ? 1U : 0U;
  }

  [[nodiscard]] bool empty() const noexcept { return spans_.empty(); }
  [[nodiscard]] std::size_t size() const noexcept { return spans_.size() + around_.size(); }
  /// Returns the leaves that are last in the order of the copy. Precondition: there are leaves.
  [[nodiscard]] LeafSpan const& last() const { return around_.empty() ? spans_.back() : around_.front().second; }
  [[nodiscard]] bool inside_bifolium() const noexcept { return !around_.empty(); }
  [[nodiscard]] std::size_t item_from() const noexcept { return item_from_; }
  [[nodiscard]] std::size_t item_to() const noexcept { return item_to_; }
  /// Returns how many leaves the spans from `from` on have, but for those that wait for the end of their bifolium.
  [[nodiscard]] std::int64_t leaves_from(std::size_t from) const noexcept {
    if (from >= counted_.size()) return 0;
    return counted_.back() - (from > 0 ? counted_[from - 1] : 0);
  }
  /// Returns the leaves, but for those that wait for the end of their bifolium.
  [[nodiscard]] std::vector<LeafSpan> const& spans() const noexcept { return spans_; }
  /// Closes all bifolia and gives the leaves away.
  [[nodiscard]] std::vector<LeafSpan> take() {
    close();
    return static_cast<std::vector<LeafSpan>&&>(spans_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
