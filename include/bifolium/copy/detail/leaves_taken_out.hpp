// SPDX-License-Identifier: MIT
/// Leaves taken out of others, by their numbers: those that are wanting out of those that are there, and back. Both are
/// kept as spans in order, so that a long list is gone through once, and not once for each leaf.
#pragma once

#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Removes the leaves that are wanting from a list.
class WantingRemover {
  IdealCopy const& book_;
  std::vector<LeafSpan> wanting_;   // in the order of the book, without those that lie in others
  std::vector<LeafSpan> instead_{}; // a facsimile or a leaf of another copy that is in their place

public:
  WantingRemover(IdealCopy const& book, std::vector<LeafSpan> const& wanting) : book_{book}, wanting_{wanting} {
    merge_sort(wanting_, [](LeafSpan const& a, LeafSpan const& b) { return a.from < b.from; });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < wanting_.size(); ++i) {
      auto const one = wanting_[i];
      if (one.state != LeafInCopy::original) instead_.push_back(one);
      if (!one.in_ideal() || (kept > 0 && one.to <= wanting_[kept - 1].to)) continue;
      wanting_[kept++] = one;
    }
    wanting_.resize(kept);
  }
  /// Returns the leaves of the list that are not wanting.
  [[nodiscard]] std::vector<LeafSpan> remove_from(std::vector<LeafSpan> const& list) const {
    std::vector<LeafSpan> left;
    bool ascending = true;
    for (auto const& span : list) {
      ascending = ascending && (left.empty() || left.back().last < span.first);
      if (!span.in_ideal()) {
        left.push_back(span);
        continue;
      }
      auto from = span.from;
      auto i = partition_point(wanting_.size(), [&](std::size_t k) { return wanting_[k].to < from; });
      for (; i < wanting_.size() && wanting_[i].from <= span.to; ++i) {
        if (from < wanting_[i].from) left.push_back(span_of_numbers(book_, from, wanting_[i].from - 1, span.state));
        if (from <= wanting_[i].to) from = wanting_[i].to + 1;
      }
      if (from <= span.to) left.push_back(span_of_numbers(book_, from, span.to, span.state));
    }
    left.insert(left.end(), instead_.begin(), instead_.end());
    if (ascending) merge_sort(left, [](LeafSpan const& a, LeafSpan const& b) { return a.first < b.first; });
    return left;
  }
};

/// Leaves by number, of which it can be asked whether they have others.
class SpansByNumber {
  std::vector<LeafSpan> spans_{}; // in the order of their first leaves; `to` is the highest number so far

public:
  explicit SpansByNumber(std::vector<LeafSpan> const& spans) {
    for (auto const& one : spans)
      if (one.in_ideal()) spans_.push_back(one);
    merge_sort(spans_, [](LeafSpan const& a, LeafSpan const& b) { return a.from < b.from; });
    for (std::size_t i = 1; i < spans_.size(); ++i)
      if (spans_[i].to < spans_[i - 1].to) spans_[i].to = spans_[i - 1].to;
  }
  /// Returns true if one of these leaves is in a span: in that which reaches farthest of those that begin no later than the
  /// last of them.
  [[nodiscard]] bool touch(LeafSpan const& one) const {
    auto const after = partition_point(spans_.size(), [&](std::size_t i) { return spans_[i].from <= one.to; });
    return after > 0 && one.from <= spans_[after - 1].to;
  }
  /// Returns how many leaves there are, each counted once.
  [[nodiscard]] std::int64_t leaves() const {
    std::int64_t sum = 0, last = 0;
    for (auto const& one : spans_) {
      auto const from = one.from > last ? one.from : last + 1;
      if (from <= one.to) sum += one.to + 1 - from, last = one.to;
    }
    return sum;
  }
  /// Returns true if one of the spans has all these leaves: that which reaches farthest of those that begin before.
  [[nodiscard]] bool have(LeafSpan const& one) const {
    auto const after = partition_point(spans_.size(), [&](std::size_t i) { return spans_[i].from <= one.from; });
    return one.in_ideal() && after > 0 && one.to <= spans_[after - 1].to;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
