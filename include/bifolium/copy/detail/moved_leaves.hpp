// SPDX-License-Identifier: MIT
/// Puts leaves that are bound elsewhere where the list says: B3 after B6, D before C. The leaf beside which they are bound
/// may itself be bound elsewhere, as in B3 bound after B6, B4 bound after B3. So the list is gone through once, and where a
/// leaf stands that others are bound beside, these come next, with those that are bound beside them.
#pragma once

#include <bifolium/copy/detail/leaves_taken_out.hpp>
#include <bifolium/copy/detail/list_so_far.hpp>
#include <bifolium/copy/read_leaves_present.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class MovedLeavesPlacer {
  using At = MovedLeaves::At;
  /// Leaves of which a part is still to be placed.
  struct Open {
    LeafSpan leaves{};
    std::int64_t from{}; // the first leaf that is not placed
    std::size_t next{};  // the first that can be bound beside one of these
  };
  IdealCopy const& book_;
  std::vector<MovedLeaves> moved_{}; // in the order of the leaves beside which they are bound
  std::vector<std::size_t> next_{}; // the next that is not placed: an entry or a shorter way to it; the last is the end
  std::vector<LeafSpan> placed_{};
  std::vector<Open> open_{};

  /// Returns the place in the order of the book: before leaf 3 is 6, after it 7.
  [[nodiscard]] static std::int64_t key(MovedLeaves const& one) noexcept {
    return 2 * one.number + (one.at == At::after ? 1 : 0);
  }
  /// Returns the first entry from `i` on that is not placed.
  [[nodiscard]] std::size_t unplaced(std::size_t i) noexcept {
    while (next_[i] != i) {
      next_[i] = next_[next_[i]];
      i = next_[i];
    }
    return i;
  }
  void open(LeafSpan const& leaves) {
    if (!leaves.in_ideal()) return placed_.push_back(leaves);
    auto const first = partition_point(moved_.size(), [&](std::size_t i) { return key(moved_[i]) < 2 * leaves.from; });
    open_.push_back({leaves, leaves.from, first});
  }
  void place_to(Open& one, std::int64_t to) {
    if (one.from > to) return;
    placed_.push_back(span_of_numbers(book_, one.from, to, one.leaves.state));
    one.from = to + 1;
  }
  /// Places leaves, and those that are bound beside them.
  void place(LeafSpan const& leaves) {
    for (open(leaves); !open_.empty();) {
      auto& one = open_.back();
      auto const i = unplaced(one.next);
      if (i == moved_.size() || key(moved_[i]) > 2 * one.leaves.to + 1) {
        place_to(one, one.leaves.to);
        open_.pop_back();
        continue;
      }
      place_to(one, moved_[i].at == At::after ? moved_[i].number : moved_[i].number - 1);
      one.next = next_[i] = i + 1;
      open(moved_[i].leaves); // `one` may be elsewhere now
    }
  }

public:
  explicit MovedLeavesPlacer(IdealCopy const& book) : book_{book} {}

  /// Adds leaves that are bound before or after another one.
  void add(MovedLeaves const& one) { moved_.push_back(one); }
  /// Returns the leaves of a copy with these among them. Those that could not be placed are `left`: the copy lacks the leaf
  /// beside which they are bound, or each of two is bound beside the other. The others are `sure`.
  [[nodiscard]] std::vector<LeafSpan> place_in(std::vector<LeafSpan> const& copy, std::vector<MovedLeaves>& sure,
                                               std::vector<MovedLeaves>& left) {
    merge_sort(moved_, [](MovedLeaves const& a, MovedLeaves const& b) { return key(a) < key(b); });
    next_.resize(moved_.size() + 1);
    for (std::size_t i = 0; i < next_.size(); ++i) next_[i] = i;
    for (auto const& one : copy) place(one);
    for (std::size_t i = 0; i < moved_.size(); ++i) (next_[i] == i ? left : sure).push_back(moved_[i]);
    return static_cast<std::vector<LeafSpan>&&>(placed_);
  }
};

/// Returns the leaves that the list has at the place of the formula, in the order of the copy if that is the order of the
/// formula.
inline std::vector<LeafSpan> put_back(std::vector<LeafSpan> copy, std::vector<MovedLeaves> const& moved) {
  bool ascending = true;
  for (std::size_t i = 1; i < copy.size(); ++i) ascending = ascending && copy[i - 1].last < copy[i].first;
  for (auto const& one : moved) copy.push_back(one.leaves);
  if (ascending) merge_sort(copy, [](LeafSpan const& a, LeafSpan const& b) { return a.first < b.first; });
  return copy;
}
/// Puts leaves that are bound elsewhere where they are bound. Where that is not said, they are there, at the place of the
/// formula, with a doubt.
inline void place_moved(IdealCopy const& book, std::string_view text, std::vector<MovedLeaves> const& moved,
                        LeavesPresent& result) {
  if (moved.empty()) return;
  std::vector<LeafSpan> out;
  std::vector<MovedLeaves> unknown, beside, sure, left;
  for (auto const& one : moved) {
    out.push_back(one.leaves);
    out.back().state = LeafInCopy::original; // what is in its place is the leaf itself
    if (one.at == MovedLeaves::At::unknown || one.at == MovedLeaves::At::in_place) unknown.push_back(one);
    if (one.at == MovedLeaves::At::before || one.at == MovedLeaves::At::after) beside.push_back(one);
  }
  auto const others = WantingRemover{book, out}.remove_from(result.spans);
  auto const place = [&](std::vector<MovedLeaves> const& by_others) {
    std::vector<LeafSpan> copy, back;
    for (auto const& one : moved) {
      if (one.at == MovedLeaves::At::front) copy.push_back(one.leaves);
      if (one.at == MovedLeaves::At::back) back.push_back(one.leaves);
    }
    auto const middle = put_back(others, unknown);
    copy.insert(copy.end(), middle.begin(), middle.end());
    copy.insert(copy.end(), back.begin(), back.end());
    MovedLeavesPlacer placer{book};
    for (auto const& one : by_others) placer.add(one);
    sure.clear(), left.clear();
    result.spans = placer.place_in(copy, sure, left);
  };
  place(beside);
  if (!left.empty()) {
    unknown.insert(unknown.end(), left.begin(), left.end());
    place(std::vector<MovedLeaves>{sure});
  }
  PlaceCounter places;
  std::string_view told;
  for (auto const& one : unknown) {
    if (one.at != MovedLeaves::At::in_place && told.data() != one.words.data())
      result.doubts.push_back(error_at(Problem::bound_elsewhere,
                                       places.place(text, static_cast<std::size_t>(one.words.data() - text.data())),
                                       one.words));
    told = one.words;
  }
  merge_sort(result.doubts, [](Error const& a, Error const& b) { return a.place < b.place; });
}

} // namespace detail
} // namespace v0
} // namespace bifolium
