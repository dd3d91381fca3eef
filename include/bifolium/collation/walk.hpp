// SPDX-License-Identifier: MIT
/// Going through the book that a formula describes: its gatherings one after another, the number of a leaf in the book,
/// the leaf of a number. Nothing is expanded; a gathering is looked up by arithmetic in its run. The ideal copy has its
/// deleted leaves gone and its insertions in place, so leaf B4 need not be the fourth leaf of B.
#pragma once

#include <bifolium/collation/formula.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf of the ideal copy by its place in the structure. `inserted` is 0 for a leaf of the gathering as folded, and
/// counts the leaves inserted behind it from 1. Leaf 0 is the place before the first leaf.
struct LeafOfBook {
  GatheringAt gathering{}; ///< which gathering
  int leaf{1};             ///< from 1, or the leaf after which something is inserted
  int inserted{};          ///< 0 for a leaf of the gathering, else which of the leaves put in, from 1
  friend constexpr auto operator<=>(LeafOfBook const&, LeafOfBook const&) = default;
};

/// One gathering of the book.
struct GatheringOfBook {
  GatheringAt at{};          ///< where it stands in the formula
  Signature signature{};     ///< what it is signed
  int folded{};              ///< leaves as folded
  std::int64_t leaves{};     ///< leaves in the ideal copy
  std::int64_t first_leaf{}; ///< the number of its first leaf in the book, from 1
  friend constexpr bool operator==(GatheringOfBook const&, GatheringOfBook const&) = default;
};

/// Leaves that the changes add to a gathering; below nothing where they take away.
[[nodiscard]] inline std::int64_t leaves_gained(Formula const& formula, GatheringAt at) {
  std::int64_t gained = 0;
  for (auto const& change : formula.changes()) {
    if (change.gathering != at) continue;
    if (change.kind == Change::Kind::insertion) gained += change.added;
    if (change.kind == Change::Kind::deletion) gained -= change.leaf == 0 ? formula.leaves_folded(at) : 1;
  }
  return gained;
}
/// How many leaves of the ideal copy come before this gathering. pre: it is one of the formula.
[[nodiscard]] inline std::int64_t leaves_before(Formula const& formula, GatheringAt at) {
  std::int64_t before = 0;
  for (std::uint32_t r = 0; r < at.run; ++r) before += formula.runs()[r].leaf_total();
  before += formula.runs()[at.run].leaves.total(at.index);
  for (auto const& change : formula.changes()) {
    if (!(change.gathering < at)) continue;
    if (change.kind == Change::Kind::insertion) before += change.added;
    if (change.kind == Change::Kind::deletion) before -= change.leaf == 0 ? formula.leaves_folded(change.gathering) : 1;
  }
  return before;
}
/// The leaf has been deleted from the ideal copy.
[[nodiscard]] inline bool is_deleted(Formula const& formula, GatheringAt at, int leaf) {
  for (auto const& change : formula.changes())
    if (change.kind == Change::Kind::deletion && change.gathering == at && (change.leaf == leaf || change.leaf == 0))
      return true;
  return false;
}
/// How many leaves are inserted behind leaf `leaf` of a gathering.
[[nodiscard]] inline int leaves_inserted(Formula const& formula, GatheringAt at, int leaf) {
  int inserted = 0;
  for (auto const& change : formula.changes())
    if (change.kind == Change::Kind::insertion && change.gathering == at && change.leaf == leaf)
      inserted += change.added;
  return inserted;
}

/// The number of a leaf in the book, from 1; nothing when the ideal copy lacks it. pre: the formula has the gathering.
[[nodiscard]] inline std::optional<std::int64_t> leaf_number(Formula const& formula, LeafOfBook const& leaf) {
  auto const folded = formula.leaves_folded(leaf.gathering);
  if (leaf.leaf < 0 || leaf.leaf > folded || leaf.inserted < 0) return std::nullopt;
  if (leaf.inserted == 0 && (leaf.leaf == 0 || is_deleted(formula, leaf.gathering, leaf.leaf))) return std::nullopt;
  if (leaf.inserted > leaves_inserted(formula, leaf.gathering, leaf.leaf)) return std::nullopt;
  auto number = leaves_before(formula, leaf.gathering) + leaf.leaf + leaf.inserted;
  bool all_gone = false;
  for (auto const& change : formula.changes()) {
    if (change.gathering != leaf.gathering) continue;
    if (change.kind == Change::Kind::deletion) {
      if (change.leaf == 0)
        all_gone = true;
      else if (change.leaf <= leaf.leaf)
        --number;
    }
    if (change.kind == Change::Kind::insertion && change.leaf < leaf.leaf) number += change.added;
  }
  return all_gone ? number - leaf.leaf : number;
}
/// The leaf that has a number in the book; nothing when the book has no such leaf.
[[nodiscard]] inline std::optional<LeafOfBook> leaf_of_number(Formula const& formula, std::int64_t number) {
  if (number < 1 || number > leaf_count(formula)) return std::nullopt;
  // the last gathering that has fewer than `number` leaves before it
  std::uint32_t r = 0;
  for (std::uint32_t next = 1; next < formula.runs().size() && leaves_before(formula, {next, 0}) < number; ++next)
    r = next;
  std::int64_t low = 0, high = formula.runs()[r].gatherings - 1;
  while (low < high) {
    auto const middle = low + (high - low + 1) / 2;
    if (leaves_before(formula, {r, middle}) < number)
      low = middle;
    else
      high = middle - 1;
  }
  GatheringAt const at{r, low};
  auto left = number - leaves_before(formula, at);
  auto const folded = formula.leaves_folded(at);
  for (int leaf = 0; leaf <= folded; ++leaf) {
    if (leaf > 0 && !is_deleted(formula, at, leaf) && --left == 0) return LeafOfBook{at, leaf, 0};
    auto const inserted = leaves_inserted(formula, at, leaf);
    if (left <= inserted) return LeafOfBook{at, leaf, static_cast<int>(left)};
    left -= inserted;
  }
  return std::nullopt;
}

/// The gatherings of a book in order, as a range; holds a pointer to the formula, which must live as long.
class GatheringsOfBook {
  Formula const* formula_;

public:
  /// pre: the formula outlives the view.
  explicit GatheringsOfBook(Formula const& formula) : formula_{&formula} {}

  /// Walks from gathering to gathering; forward only.
  class iterator {
    Formula const* formula_{};
    GatheringAt at_{};
    std::int64_t before_{};

    [[nodiscard]] std::int64_t leaves_here() const {
      return formula_->leaves_folded(at_) + leaves_gained(*formula_, at_);
    }

  public:
    using value_type = GatheringOfBook;
    using difference_type = std::ptrdiff_t;
    iterator() = default;
    /// Before the first gathering of that run.
    iterator(Formula const& formula, std::uint32_t run_number) : formula_{&formula}, at_{run_number, 0} {}
    [[nodiscard]] GatheringOfBook operator*() const {
      return {at_, formula_->signature(at_), formula_->leaves_folded(at_), leaves_here(), before_ + 1};
    }
    /// As the standard has it.
    iterator& operator++() {
      before_ += leaves_here();
      if (++at_.index == formula_->runs()[at_.run].gatherings) at_ = {at_.run + 1, 0};
      return *this;
    }
    /// As the standard has it.
    iterator operator++(int) {
      auto const old = *this;
      return ++*this, old;
    }
    friend bool operator==(iterator const& a, iterator const& b) noexcept { return a.at_ == b.at_; }
  };
  [[nodiscard]] iterator begin() const { return {*formula_, 0}; }
  [[nodiscard]] iterator end() const { return {*formula_, static_cast<std::uint32_t>(formula_->runs().size())}; }
};
/// The gatherings in their order. pre: the formula outlives the view.
[[nodiscard]] inline GatheringsOfBook gatherings(Formula const& formula) { return GatheringsOfBook{formula}; }
GatheringsOfBook gatherings(Formula const&&) = delete; // it would outlive the formula it looks at

/// The leaf joined to this one across the gutter: none for the middle of an odd gathering, for a cancel, for a leaf
/// whose other half was deleted or cancelled. Two leaves inserted as a pair are conjugate with one another.
[[nodiscard]] inline std::optional<LeafOfBook> conjugate(Formula const& formula, LeafOfBook const& leaf) {
  if (leaf.inserted > 0) {
    int before = 0;
    for (auto const& change : formula.changes()) {
      if (change.kind != Change::Kind::insertion || change.gathering != leaf.gathering || change.leaf != leaf.leaf)
        continue;
      auto const within = leaf.inserted - before;
      if (within <= change.added) {
        auto const other = change.added + 1 - within;
        if (change.joined == Change::Joined::apart || other == within) return std::nullopt;
        return LeafOfBook{leaf.gathering, leaf.leaf, before + other};
      }
      before += change.added;
    }
    return std::nullopt;
  }
  auto const folded = formula.leaves_folded(leaf.gathering);
  if (leaf.leaf < 1 || leaf.leaf > folded) return std::nullopt;
  auto const other = folded + 1 - leaf.leaf;
  if (other == leaf.leaf) return std::nullopt;
  for (auto const& change : formula.changes())
    if (change.gathering == leaf.gathering &&
        (change.kind == Change::Kind::deletion || change.kind == Change::Kind::cancel) &&
        (change.leaf == leaf.leaf || change.leaf == other || change.leaf == 0))
      return std::nullopt;
  return LeafOfBook{leaf.gathering, other, 0};
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::LeafOfBook> {
  std::size_t operator()(bifolium::LeafOfBook const& leaf) const noexcept {
    return (std::hash<bifolium::GatheringAt>{}(leaf.gathering) * 131U + static_cast<std::size_t>(leaf.leaf)) * 31U +
           static_cast<std::size_t>(leaf.inserted);
  }
};
