// SPDX-License-Identifier: MIT
/// check_copy: the leaves of a copy one after the other, and the most of them that are in order.
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/copy/detail/numbers_seen.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The best chain of spans that ends at or before a number, for every number at which a span ends. It is a tree of
/// prefix maxima (Fenwick 1994), so that looking up and adding take time in proportion to the logarithm of the number
/// of spans.
class BestChains {
public:
  static constexpr auto none = static_cast<std::size_t>(-1);
  struct Chain {
    std::int64_t to{}, leaves{}; ///< the number at which the chain ends, and the number of its leaves
    std::size_t span{none};      ///< its last span
    /// Returns true if this chain has more leaves, or as many and ends later.
    [[nodiscard]] bool is_better_than(Chain const& other) const {
      return leaves != other.leaves ? leaves > other.leaves : to > other.to;
    }
  };

private:
  std::vector<std::int64_t> ends_; // the ends of the spans, in order, each once
  std::vector<Chain> tree_;

  /// Returns the number of ends before `number`.
  [[nodiscard]] std::size_t ends_before(std::int64_t number) const {
    return partition_point(ends_.size(), [&](std::size_t i) { return ends_[i] < number; });
  }

public:
  explicit BestChains(std::vector<LeafSpan> const& spans) {
    ends_.reserve(spans.size());
    for (auto const& span : spans) ends_.push_back(span.to);
    merge_sort(ends_, [](std::int64_t a, std::int64_t b) { return a < b; });
    keep_each_once(ends_);
    tree_.resize(ends_.size() + 1);
  }
  /// Returns the best chain that ends before `number`; it has no span if there is none.
  [[nodiscard]] Chain before(std::int64_t number) const {
    Chain best;
    for (auto i = ends_before(number); i > 0; i &= i - 1)
      if (tree_[i].is_better_than(best)) best = tree_[i];
    return best;
  }
  /// Adds a chain. Precondition: it ends where one of the spans ends.
  void add(Chain const& chain) {
    for (auto i = ends_before(chain.to) + 1; i < tree_.size(); i += i & (0 - i))
      if (chain.is_better_than(tree_[i])) tree_[i] = chain;
  }
};

/// Returns the spans that are in order, the last of them first: the choice that leaves the most leaves in place.
inline std::vector<std::size_t> in_order(std::vector<LeafSpan> const& spans) {
  BestChains best{spans};
  std::vector<std::size_t> before(spans.size()), kept; // the span that each follows
  std::int64_t last = 0;
  for (std::size_t s = 0; s < spans.size(); ++s) {
    auto const chain = best.before(spans[s].from);
    before[s] = chain.span;
    auto const leaves = chain.leaves + spans[s].leaves();
    if (spans[s].to > last) last = spans[s].to;
    // a chain with as many leaves that ends no later is as good, and was found first
    if (best.before(spans[s].to + 1).leaves < leaves) best.add({spans[s].to, leaves, s});
  }
  for (auto s = best.before(last + 1).span; s != BestChains::none; s = before[s]) kept.push_back(s);
  return kept;
}

/// Walks through the leaves of a copy in their order.
class CopyChecker {
  IdealCopy const& book_;
  CopyChecked result_{};
  NumbersSeen numbers_{};
  std::vector<LeafSpan> found_{}; // leaves that were not found before, in the order of the copy
  bool falling_{true};
  bool joined_{false}; // true if there is no other leaf between the last of `found_` and the next leaf

public:
  explicit CopyChecker(IdealCopy const& book) : book_{book} { result_.leaves_ideal = book.leaves(); }

  void see(LeafSpan const& span) {
    if (span.state != LeafInCopy::original) result_.noted.push_back(span);
    if (is_substitute(span.state)) { // the leaf itself is missing
      joined_ = false;
      return;
    }
    if (!span.in_ideal()) {
      result_.not_in_ideal.push_back(span);
      result_.leaves_present += 1;
      joined_ = false;
      return;
    }
    result_.leaves_present += span.leaves();
    falling_ = falling_ && span.from == span.to && (found_.empty() || span.from < found_.back().from);
    numbers_.add(
        span.from, span.to,
        [&](std::int64_t from, std::int64_t to) {
          if (joined_ && found_.back().to + 1 == from)
            found_.back() = span_of_numbers(book_, found_.back().from, to);
          else
            found_.push_back(span_of_numbers(book_, from, to));
          joined_ = true;
        },
        [&](std::int64_t from, std::int64_t to) {
          result_.repeated.push_back(span_of_numbers(book_, from, to));
          joined_ = false;
        });
  }
  CopyChecked finish(std::vector<JointSeen> const& seen) {
    result_.backwards = falling_ && found_.size() > 2;
    auto kept = in_order(found_);
    for (std::size_t s = 0; s < found_.size(); ++s)
      if (!kept.empty() && kept.back() == s)
        kept.pop_back();
      else
        result_.misplaced.push_back({found_[s], s == 0 ? std::nullopt : std::optional{found_[s - 1].last}});
    numbers_.gaps(result_.leaves_ideal, [&](std::int64_t from, std::int64_t to) {
      result_.wanting.push_back(span_of_numbers(book_, from, to));
      result_.leaves_wanting += to - from + 1;
    });
    for (auto const& blank : book_.blanks())
      if (auto const number = book_.leaf_number(blank); number && wanting_at(result_, *number))
        ++result_.blanks_wanting;
    result_.joints = std::vector<JointJudged>(seen.size());
    for (std::size_t i = 0; i < seen.size(); ++i) result_.joints[i] = judge(book_, seen[i]);
    return std::move(result_);
  }
};

} // namespace detail

BIFOLIUM_INLINE CopyChecked check_copy(IdealCopy const& book, std::vector<LeafSpan> const& present,
                                       std::vector<JointSeen> const& seen) {
  detail::CopyChecker checker{book};
  for (auto const& span : present) checker.see(span);
  return checker.finish(seen);
}

} // namespace v0
} // namespace bifolium
