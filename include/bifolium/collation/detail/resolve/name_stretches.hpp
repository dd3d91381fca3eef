// SPDX-License-Identifier: MIT
/// Finds the owner of position n in series s. Each owner (a run of a formula, or an insertion) has a stretch of
/// positions in one series of marks. Stretches may overlap, since letters return in every part of a book; then the
/// owner with the lowest number is meant, and the result says that there are several. The stretches are divided once so
/// that they no longer overlap, and a look-up is a binary search.
#pragma once

#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

#include <compare>
#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Stretches of positions in series. `Series` is the common part of the marks of one series; it must have an order.
template <class Series> class NameStretches {
public:
  struct Stretch {
    Series series{};
    std::int64_t first{}, last{}; // positions
    std::uint32_t owner{};
    bool several{};
  };

private:
  std::vector<Stretch> all_;

  static constexpr std::strong_ordering compare(Stretch const& stretch, Series const& series, std::int64_t place) {
    if (auto const c = stretch.series <=> series; std::is_neq(c)) return c;
    return stretch.first <=> place;
  }

  /// The stretches that cover one position, with the lowest owner on top: a binary heap.
  class Open {
    std::vector<Stretch> heap_;

    constexpr void exchange(std::size_t a, std::size_t b) {
      auto const other = heap_[a];
      heap_[a] = heap_[b], heap_[b] = other;
    }

  public:
    [[nodiscard]] constexpr bool empty() const noexcept { return heap_.empty(); }
    [[nodiscard]] constexpr Stretch const& first() const { return heap_.front(); }
    constexpr void push(Stretch const& one) {
      heap_.push_back(one);
      for (auto i = heap_.size() - 1; i > 0 && heap_[i].owner < heap_[(i - 1) / 2].owner; i = (i - 1) / 2)
        exchange(i, (i - 1) / 2);
    }
    constexpr void pop() {
      heap_.front() = heap_.back();
      heap_.pop_back();
      for (std::size_t i = 0; 2 * i + 1 < heap_.size();) {
        auto least = 2 * i + 1;
        if (least + 1 < heap_.size() && heap_[least + 1].owner < heap_[least].owner) ++least;
        if (heap_[i].owner <= heap_[least].owner) return;
        exchange(i, least);
        i = least;
      }
    }
  };

public:
  constexpr void add(Series const& series, std::int64_t first, std::int64_t last, std::uint32_t owner) {
    all_.push_back({series, first, last, owner});
  }
  /// Divides the stretches. Call it after the last `add` and before the first `find`.
  constexpr void settle() {
    merge_sort(all_, [](Stretch const& a, Stretch const& b) { return std::is_lt(compare(a, b.series, b.first)); });
    std::vector<Stretch> parted;
    Open open;
    std::int64_t furthest = 0,
                 second = 0; // the two farthest ends of the open stretches, to find out if there are several
    for (std::size_t i = 0; i < all_.size();) {
      auto const series = all_[i].series;
      auto place = all_[i].first;
      furthest = second = place - 1;
      do {
        for (; i < all_.size() && all_[i].series == series && all_[i].first <= place; ++i) {
          auto const last = all_[i].last;
          second = last > furthest ? furthest : last > second ? last : second;
          furthest = last > furthest ? last : furthest;
          open.push(all_[i]);
        }
        while (!open.empty() && open.first().last < place) open.pop();
        if (open.empty()) break;
        auto to = open.first().last;
        if (i < all_.size() && all_[i].series == series && all_[i].first <= to) to = all_[i].first - 1;
        bool const several = second >= place;
        if (several && second < to) to = second;
        parted.push_back({series, place, to, open.first().owner, several});
        place = to + 1;
      } while (!open.empty());
    }
    all_ = static_cast<std::vector<Stretch>&&>(parted);
  }
  /// Returns the stretch with this position, or null if there is none.
  [[nodiscard]] constexpr Stretch const* find(Series const& series, std::int64_t place) const {
    auto const begun = // those that begin at the position or before it
        partition_point(all_.size(), [&](std::size_t i) { return std::is_lteq(compare(all_[i], series, place)); });
    if (begun == 0) return nullptr;
    auto const& found = all_[begun - 1];
    return found.series == series && found.last >= place ? &found : nullptr;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
