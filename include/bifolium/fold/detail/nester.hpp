// SPDX-License-Identifier: MIT
/// Sets pieces one inside another until every leaf has its place. The piece with the lowest leaf is the outermost; the
/// pieces inside it fill its gap exactly, and so on inwards. A single leaf forms a pair with the single leaf at the
/// other end of the gap, or comes before what follows. Half-sheet work gives two gatherings with the same leaves.
#pragma once

#include <bifolium/fold/detail/number_set.hpp>
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
  std::uint64_t used_{}; // a bit for each part
  std::vector<Nested> order_{};
  struct Gathering {
    int first{}, end{}; ///< its first leaf, and the number after that of its last
  };
  std::vector<Gathering> gatherings_{};      // those that are begun
  static constexpr int cost_of_trying = 200; // of a complete nesting, in steps of the search
  int budget_;
  int complete_{};       // the complete nestings that were found
  NumberSet hopeless_{}; // what was used, and is to be filled, where no complete nesting followed

  [[nodiscard]] constexpr bool is_used(std::size_t part) const { return (used_ >> part & 1U) != 0; }
  constexpr void take(std::size_t part, bool begins, bool opens_pair) {
    used_ |= std::uint64_t{1} << part;
    order_.push_back({static_cast<std::uint8_t>(part), begins, opens_pair});
  }
  constexpr void take_back(std::size_t to) {
    while (order_.size() > to) {
      used_ &= ~(std::uint64_t{1} << order_.back().part);
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
  /// Parts, by their numbers.
  struct Row {
    std::array<std::uint8_t, Scheme::most_pieces> parts{};
    std::size_t size{};
    [[nodiscard]] constexpr std::uint8_t const* begin() const { return parts.data(); }
    [[nodiscard]] constexpr std::uint8_t const* end() const { return parts.data() + size; }
  };
  /// Returns the unused parts that begin with a leaf. The part nearest to the last one taken comes last.
  [[nodiscard]] constexpr Row beginning_with(int key) const {
    Row found;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      if (is_used(i) || parts_[i].piece.first != key) continue;
      auto at = found.size++;
      auto const last = order_.empty() ? i : std::size_t{order_.back().part};
      for (; at > 0 && apart(last, i) < apart(last, found.parts[at - 1]); --at) found.parts[at] = found.parts[at - 1];
      found.parts[at] = static_cast<std::uint8_t>(i);
    }
    return found;
  }
  /// Returns what a step depends on: the parts that are left, the leaves to be filled, and the gathering before.
  [[nodiscard]] constexpr std::uint64_t state(int from, int to) const {
    auto const last = gatherings_.empty() ? Gathering{} : gatherings_.back();
    auto hash = used_;
    for (int const one : {from, to, last.first, last.end, static_cast<int>(gatherings_.size())}) {
      hash = (hash ^ static_cast<std::uint64_t>(one)) * 0x9E3779B97F4A7C15U;
      hash ^= hash >> 32U;
    }
    return hash;
  }
  /// Fills the leaves from `from` up to `to` with unused parts of one gathering, and then the rest.
  template <class Accept> constexpr bool fill(int from, int to, bool begins, Accept& accept) {
    if (from == to) return gather_rest(accept);
    auto const here = state(from, to);
    if (--budget_ < 0 || hopeless_.has(here)) return false;
    auto const complete_before = complete_;
    if (fill_from(from, to, begins, accept)) return true;
    if (complete_ == complete_before && budget_ >= 0) hopeless_.insert(here);
    return false;
  }
  template <class Accept> constexpr bool fill_from(int from, int to, bool begins, Accept& accept) {
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
      if (!is_used(i) && parts_[i].piece.first < lowest) lowest = parts_[i].piece.first;
    if (lowest == PieceFolds::none) {
      budget_ -= cost_of_trying;
      ++complete_;
      return accept(order_);
    }
    if (gatherings_.size() == Scheme::most_gatherings) return false;
    // a gathering that begins as the one before it is its copy, and has as many leaves
    int const as_before = !gatherings_.empty() && gatherings_.back().first == lowest ? gatherings_.back().end : 0;
    // The gathering ends where one of the pieces ends; the shortest possible one is taken.
    auto const before = order_.size();
    for (int end = lowest + 1, next = 0;; end = next) {
      bool ends = false;
      next = PieceFolds::none;
      for (std::size_t i = 0; i < parts_.size(); ++i) {
        if (is_used(i)) continue;
        ends = ends || parts_[i].piece.end() == end;
        if (parts_[i].piece.end() > end && parts_[i].piece.end() < next) next = parts_[i].piece.end();
      }
      if (ends && (as_before == 0 || end == as_before)) {
        gatherings_.push_back({lowest, end});
        if (fill(lowest, end, true, accept)) return true;
        gatherings_.pop_back();
      }
      take_back(before);
      if (next == PieceFolds::none || budget_ < 0) return false;
    }
  }

  /// Returns true if two parts cannot belong to one gathering: both have a leaf, or one lies half in the gap of the other.
  [[nodiscard]] constexpr bool apart_for_ever(std::size_t one, std::size_t other) const {
    auto const &a = parts_[one].piece, &b = parts_[other].piece;
    auto const inside = [](Piece const& in, Piece const& out) {
      auto const gap = out.first + out.front();
      return in.first >= gap && in.end() <= gap + out.gap;
    };
    return !(a.end() <= b.first || b.end() <= a.first || inside(a, b) || inside(b, a));
  }
  /// Returns how many parts at most have one leaf.
  [[nodiscard]] constexpr int copies() const {
    std::array<std::uint8_t, 2 * Scheme::most_cells> times{};
    int most = 0;
    for (auto const& part : parts_)
      for (int k = 0; k < part.piece.leaves; ++k) {
        auto const leaf = part.piece.first + k + (k < part.piece.front() ? 0 : part.piece.gap);
        auto const n = ++times[static_cast<std::size_t>(leaf)];
        most = n > most ? n : most;
      }
    return most;
  }

public:
  /// Returns false if the parts nest in no way, as a quick look shows: of parts that cannot belong to one gathering, each must be
  /// in the other of two copies. Gatherings with common leaves are two at any leaf, so that two kinds are enough for them.
  [[nodiscard]] constexpr bool may_nest() const {
    auto const most = copies();
    if (most > 2) return true;
    std::array<char, Scheme::most_pieces> kind{}; // 1 or 2; 0 if not known
    std::vector<std::size_t> known;
    for (std::size_t begin = 0; begin < parts_.size(); ++begin) {
      if (kind[begin] != 0) continue;
      kind[begin] = 1;
      known.push_back(begin);
      while (!known.empty()) {
        auto const one = known.back();
        known.pop_back();
        for (std::size_t other = 0; other < parts_.size(); ++other) {
          if (other == one || !apart_for_ever(one, other)) continue;
          if (most < 2 || kind[other] == kind[one]) return false;
          if (kind[other] == 0) kind[other] = kind[one] == 1 ? 2 : 1, known.push_back(other);
        }
      }
    }
    return true;
  }
  static constexpr int most_steps = 20000; ///< for one set of parts
  constexpr explicit Nester(std::vector<Part> const& parts, int budget = most_steps) : parts_{parts}, budget_{budget} {}
  /// Calls `accept(nesting)` for each way of nesting until it returns true. A nesting has the parts in the order of the
  /// gatherings, each gathering from its outermost piece inwards. Returns true if `accept` did.
  template <class Accept> constexpr bool nest(Accept accept) { return gather_rest(accept); }
  /// Returns the steps that are left of the budget; below 0 if it did not suffice.
  [[nodiscard]] constexpr int left() const noexcept { return budget_; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
