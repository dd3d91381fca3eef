// SPDX-License-Identifier: MIT
/// Sets pieces one inside another until every leaf has its place. The piece with the lowest leaf is the outermost; the
/// pieces inside it fill its gap exactly, and so on inwards. A single leaf forms a pair with the single leaf at the
/// other end of the gap, or comes before what follows. Half-sheet work gives two gatherings with the same leaves.
#pragma once

#include <bifolium/fold/detail/piece_finder.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A piece and the place from which it was cut.
struct Part {
  GridRect rect{};
  Piece piece{};
};

/// A piece in its gathering.
struct Nested {
  std::uint8_t part{}; ///< index of the part
  bool begins{};       ///< true for the outermost piece of a gathering
  bool opens_pair{};   ///< true for a single leaf before the other one of its pair
};

/// Finds the ways of nesting. Pieces cut off nearest to one another come first.
class Nester {
  std::vector<Part> const& parts_;
  std::vector<char> used_{}; // for each part
  std::vector<Nested> order_{};
  static constexpr int cost_of_trying = 200; // of a complete nesting, in steps of the search
  int budget_;

  constexpr void take(std::size_t part, bool begins, bool opens_pair) {
    used_[part] = true;
    order_.push_back({static_cast<std::uint8_t>(part), begins, opens_pair});
  }
  constexpr void take_back(std::size_t to) {
    while (order_.size() > to) {
      used_[order_.back().part] = false;
      order_.pop_back();
    }
  }
  /// Returns the distance between the places of two parts. Parts of other sheets are farther away than any on this
  /// sheet.
  [[nodiscard]] constexpr int apart(std::size_t one, std::size_t other) const {
    auto const &a = parts_[one].rect, &b = parts_[other].rect;
    auto const size = [](int n) { return n < 0 ? -n : n; };
    return size(a.sheet - b.sheet) * 1000 + size(a.top + a.bottom - b.top - b.bottom) +
           size(a.left + a.right - b.left - b.right);
  }
  /// Returns the unused parts that begin with a leaf. The part nearest to the last one taken comes last.
  [[nodiscard]] constexpr std::vector<std::size_t> beginning_with(int key) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      if (used_[i] || parts_[i].piece.first != key) continue;
      auto at = found.size();
      auto const last = order_.empty() ? i : std::size_t{order_.back().part};
      while (at > 0 && apart(last, i) < apart(last, found[at - 1])) --at;
      found.insert(found.begin() + static_cast<std::ptrdiff_t>(at), i);
    }
    return found;
  }
  /// Fills the leaves from `from` up to `to` with unused parts of one gathering, and then the rest.
  template <class Accept> constexpr bool fill(int from, int to, bool begins, Accept& accept) {
    if (from == to) return gather_rest(accept);
    if (--budget_ < 0) return false;
    auto const before = order_.size();
    for (auto const i : beginning_with(from)) {
      auto const& piece = parts_[i].piece;
      if (piece.leaves > 1) {
        if (piece.end() != to) continue;
        take(i, begins, false);
        if (fill(from + piece.front(), from + piece.front() + piece.gap, false, accept)) return true;
        take_back(before);
        continue;
      }
      for (auto const j : beginning_with(to - 1)) {
        if (j == i || to == from + 1 || parts_[j].piece.leaves > 1) continue;
        take(i, begins, true);
        take(j, false, false);
        if (fill(from + 1, to - 1, false, accept)) return true;
        take_back(before);
      }
      take(i, begins, false);
      if (fill(from + 1, to, false, accept)) return true;
      take_back(before);
    }
    return false;
  }
  template <class Accept> constexpr bool gather_rest(Accept& accept) {
    if (--budget_ < 0) return false;
    int lowest = PieceFolds::none;
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (!used_[i] && parts_[i].piece.first < lowest) lowest = parts_[i].piece.first;
    if (lowest == PieceFolds::none) {
      budget_ -= cost_of_trying;
      return accept(order_);
    }
    // The gathering ends where one of the pieces ends; the shortest possible one is taken.
    auto const before = order_.size();
    for (int end = lowest + 1, next = 0;; end = next) {
      bool ends = false;
      next = PieceFolds::none;
      for (std::size_t i = 0; i < parts_.size(); ++i) {
        if (used_[i]) continue;
        ends = ends || parts_[i].piece.end() == end;
        if (parts_[i].piece.end() > end && parts_[i].piece.end() < next) next = parts_[i].piece.end();
      }
      if (ends && fill(lowest, end, true, accept)) return true;
      take_back(before);
      if (next == PieceFolds::none || budget_ < 0) return false;
    }
  }

public:
  static constexpr int most_steps = 20000; ///< for one set of parts
  constexpr explicit Nester(std::vector<Part> const& parts, int budget = most_steps) : parts_{parts}, budget_{budget} {
    for (std::size_t i = 0; i < parts.size(); ++i) used_.push_back(false);
  }
  /// Calls `accept(nesting)` for each way of nesting until it returns true. A nesting has the parts in the order of the
  /// gatherings, each gathering from its outermost piece inwards. Returns true if `accept` did.
  template <class Accept> constexpr bool nest(Accept accept) { return gather_rest(accept); }
  /// Returns the steps that are left of the budget; below 0 if it did not suffice.
  [[nodiscard]] constexpr int left() const noexcept { return budget_; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
