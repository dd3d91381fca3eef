// SPDX-License-Identifier: MIT
/// The ranges of an ideal copy: iterators over its leaves and its gatherings. An iterator stores a number or a place
/// and asks the ideal copy for the rest, so that the ranges need no storage.
#pragma once

#include <bifolium/collation/ideal_copy.hpp>

namespace bifolium {
inline namespace v0 {

/// An iterator over leaves.
class IdealCopy::leaf_iterator {
  IdealCopy const* book_{};
  std::int64_t number_{};

public:
  /// The type of an element.
  using value_type = LeafOfBook;
  /// The type of a distance between two iterators.
  using difference_type = std::ptrdiff_t;
  leaf_iterator() = default;
  /// Makes an iterator at the leaf with a number. Precondition: 1 to one past the last leaf.
  leaf_iterator(IdealCopy const& book, std::int64_t number) : book_{&book}, number_{number} {}
  /// Returns the leaf at this position.
  [[nodiscard]] LeafOfBook operator*() const { return *book_->leaf_of_number(number_); }
  /// Moves to the next leaf and returns this iterator.
  leaf_iterator& operator++() { return ++number_, *this; }
  /// Moves to the next leaf and returns the iterator as it was before.
  leaf_iterator operator++(int) {
    auto const old = *this;
    return ++number_, old;
  }
  friend bool operator==(leaf_iterator const& a, leaf_iterator const& b) noexcept { return a.number_ == b.number_; }
};
/// An iterator over gatherings.
class IdealCopy::gathering_iterator {
  IdealCopy const* book_{};
  GatheringAt at_{};

public:
  /// The type of an element.
  using value_type = GatheringOfBook;
  /// The type of a distance between two iterators.
  using difference_type = std::ptrdiff_t;
  gathering_iterator() = default;
  /// Makes an iterator at the first gathering of a run.
  gathering_iterator(IdealCopy const& book, std::uint32_t run) : book_{&book}, at_{run, 0} {}
  /// Returns the gathering at this position.
  [[nodiscard]] GatheringOfBook operator*() const {
    auto const numbers = book_->numbers_of(at_);
    return {at_, book_->signature(at_), book_->leaves_folded(at_), numbers.count(), numbers.from};
  }
  /// Moves to the next gathering and returns this iterator.
  gathering_iterator& operator++() {
    if (++at_.index == book_->runs_[at_.run].gatherings) at_ = {at_.run + 1, 0};
    return *this;
  }
  /// Moves to the next gathering and returns the iterator as it was before.
  gathering_iterator operator++(int) {
    auto const old = *this;
    return ++*this, old;
  }
  friend bool operator==(gathering_iterator const& a, gathering_iterator const& b) noexcept { return a.at_ == b.at_; }
};
/// The gatherings of an ideal copy as a view, which the ideal copy must outlive.
class IdealCopy::Gatherings {
  IdealCopy const* book_;

public:
  /// The type of an iterator over the gatherings.
  using iterator = gathering_iterator;
  /// Makes the view. Precondition: the ideal copy outlives it.
  explicit Gatherings(IdealCopy const& book) : book_{&book} {}
  /// Returns an iterator to the first gathering.
  [[nodiscard]] iterator begin() const { return {*book_, 0}; }
  /// Returns an iterator past the last gathering.
  [[nodiscard]] iterator end() const { return {*book_, static_cast<std::uint32_t>(book_->runs_.size())}; }
};

inline IdealCopy::Gatherings IdealCopy::gatherings() const& { return Gatherings{*this}; }
inline IdealCopy::leaf_iterator IdealCopy::begin() const& { return {*this, 1}; }
inline IdealCopy::leaf_iterator IdealCopy::end() const& { return {*this, leaves() + 1}; }

} // namespace v0
} // namespace bifolium

// Its iterators are those of the ideal copy, and live as long as that.
template <> inline constexpr bool std::ranges::enable_borrowed_range<bifolium::IdealCopy::Gatherings> = true;
