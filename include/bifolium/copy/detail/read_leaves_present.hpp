// SPDX-License-Identifier: MIT
/// read_leaves_present: the passages of a list that name leaves which are there, and those that name leaves which are
/// wanting; then the leaves that are left. Each passage is read by LeavesReader.
#pragma once

#include <bifolium/copy/detail/leaves_reader.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

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

/// Reads a list whose passages name leaves that are there and leaves that are wanting.
inline Expected<LeavesPresent> leaves_of_passages(IdealCopy const& book, std::string_view text, Limits const& limits) {
  if (is_too_long(text, limits)) return too_long(limits);
  LeavesReader there{book, text, limits, false}, wanting{book, text, limits, true};
  ListPassages passages{text};
  bool says_wanting = false;
  std::size_t before = 0; // where the passage before ended
  TextSpan word{};        // the word after which leaves are wanting
  while (auto const passage = passages.next()) {
    if (passage->wanting && !says_wanting) word = trimmed(text, {before, passage->text.from}, " ,;:().");
    before = passage->text.to;
    says_wanting = says_wanting || passage->wanting;
    if (auto const wrong = (passage->wanting ? wanting : there).read(passage->text)) return *wrong;
  }
  there.settle(), wanting.settle();
  auto& result = there.result();
  if (!says_wanting) return static_cast<LeavesPresent&&>(result);
  if (!there.begun() && book.leaves() > 0) result.spans.push_back(span_of_numbers(book, 1, book.leaves()));
  auto const& gone = wanting.result();
  // K8 wanting: which of the leaves before the word are meant, a list does not say
  if (!wanting.begun() && there.begun())
    return error_at(Problem::wanting_after_leaves, place_in(text, word.from), word.of(text));
  if (!wanting.begun()) return error_at(Problem::not_a_reference, place_in(text, text.size()), {});
  result.spans = WantingRemover{book, gone.spans}.remove_from(result.spans);
  result.doubts.insert(result.doubts.end(), gone.doubts.begin(), gone.doubts.end());
  merge_sort(result.doubts,
             [](Error const& a, Error const& b) { return a.line != b.line ? a.line < b.line : a.column < b.column; });
  return static_cast<LeavesPresent&&>(result);
}

} // namespace detail

BIFOLIUM_INLINE Expected<LeavesPresent> read_leaves_present(IdealCopy const& book, std::string_view text,
                                                            Limits const& limits) {
  return detail::leaves_of_passages(book, text, limits);
}

} // namespace v0
} // namespace bifolium
