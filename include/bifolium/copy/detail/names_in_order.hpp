// SPDX-License-Identifier: MIT
/// Names of gatherings that come again, as in volumes that are signed alike, in a list of leaves. A list is in the
/// order of the book, so a name means the next gathering that has it. Which one is meant stays in doubt, unless the
/// list has the name as often as the book. Looking at the runs of the book for each name would take long for a long
/// list of a long book, so only a number of runs is looked at that grows with the book; after that the first gathering
/// is taken, with its doubt.
#pragma once

#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/core/merge_sort.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class NamesInOrder {
  /// A word whose name several gatherings have, and the one that was taken.
  struct OfSeveral {
    std::string_view word{};
    GatheringAt taken{};
    std::size_t doubt{}; // its doubt
  };

  IdealCopy const& book_;
  std::int64_t looks_; // how many more runs may be looked at
  std::vector<OfSeveral> of_several_{};

  /// Returns the number of gatherings with the name of this one, or 0 if too many runs have been looked at.
  [[nodiscard]] std::size_t gatherings_named_as(GatheringAt at) {
    auto const name = book_.signature(at);
    if (name.series() || name.duplicate() != Duplicate::none) return 0; // which series is meant may be in doubt too
    std::size_t number = 0;
    for (auto one = std::optional{book_.find(name)->gathering}; one; one = after(name, *one))
      if (++number, looks_ < 0) return 0;
    return number;
  }
  /// Returns the next gathering with a name.
  [[nodiscard]] std::optional<GatheringAt> after(Signature const& name, GatheringAt at) {
    auto const found = book_.find_after(name, at);
    auto const to = found ? std::int64_t{found->run} : static_cast<std::int64_t>(book_.runs().size());
    looks_ -= to - at.run + 1;
    return found;
  }

public:
  explicit NamesInOrder(IdealCopy const& book)
      : book_{book}, looks_{64 * static_cast<std::int64_t>(book.runs().size())} {}

  /// Returns the leaf of this name that is meant after leaf `last`. If several gatherings have the name, it is the next
  /// one in the book: in "A-B A-B" the second A is that of the second part. If no other comes after, it is `leaf`, the
  /// first of the book.
  [[nodiscard]] LeafOfBook next(LeafOfBook const& leaf, std::optional<LeafOfBook> const& last) {
    if (!last || *last < leaf || leaf.inserted) return leaf;
    auto const name = book_.signature(leaf.gathering);
    LeafOfBook other{last->gathering, leaf.leaf};
    if (*last < other && book_.signature(other.gathering) == name) return other;
    while (looks_ > 0) {
      auto const at = after(name, other.gathering);
      if (!at) break;
      other.gathering = *at;
      if (other.leaf <= book_.leaves_folded(*at)) return other;
    }
    return leaf;
  }
  /// Notes a word of which doubt number `doubt` says that several gatherings have its name.
  void doubted(std::string_view word, GatheringAt taken, std::size_t doubt) {
    of_several_.push_back({word, taken, doubt});
  }
  /// Removes the doubts about names that the list has as often as the book and in its order: A-B A-B in a book of two
  /// such parts.
  void settle(std::vector<Error>& doubts) {
    merge_sort(of_several_, [](OfSeveral const& a, OfSeveral const& b) { return a.word < b.word; });
    std::vector<char> settled(doubts.size());
    for (std::size_t i = 0, end = 0; i < of_several_.size(); i = end) {
      bool ascending = true;
      for (end = i + 1; end < of_several_.size() && of_several_[end].word == of_several_[i].word; ++end)
        ascending = ascending && of_several_[end - 1].taken < of_several_[end].taken;
      if (end - i < 2 || !ascending || gatherings_named_as(of_several_[i].taken) != end - i) continue;
      for (auto k = i; k < end; ++k) settled[of_several_[k].doubt] = 1;
    }
    std::size_t kept = 0;
    for (std::size_t i = 0; i < settled.size(); ++i)
      if (settled[i] == 0) doubts[kept++] = doubts[i];
    doubts.resize(kept);
  }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
