// SPDX-License-Identifier: MIT
/// The data of the search for repairs, and its proposals.
#pragma once

#include <bifolium/book/detail/slips/formula_slips.hpp>
#include <bifolium/book/detail/slips/page_shape.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The input of the search.
struct SearchInput {
  std::vector<FormulaShape> formulas{};  ///< the formula as it is, then as read with other letters
  std::vector<double> formula_weights{}; ///< for each formula; 0 for the first
  std::vector<bool> formula_is_edit{};   ///< true if reading it in this way is a repair
  std::vector<std::int32_t> changes{};   ///< leaves that each parenthesis adds
  std::optional<PageShape> pages{};
  std::optional<std::int64_t> leaves{};
  std::int64_t plates{};
  int blanks_noted{};
  bool early{};
};

/// A formula after an edit, or without one.
struct FormulaVariant {
  FormulaShape shape{};
  std::size_t reading{}; ///< index of the formula in the input
  FormulaEdit edits[2]{};
  int count{};
  double score{};
  std::int64_t leaves{};
};
/// A pagination after an edit, or without one.
struct PageVariant {
  PageShape shape{};
  PageEdit edits[2]{};
  int count{};
  double score{};
  double with_formula{}; ///< the part of the score that the formula adds, while variants are compared
};
/// A number of leaves after an edit, or without one.
struct LeavesVariant {
  std::int64_t leaves{};
  SlipKind kind{};
  int count{};
  double score{};
};
/// A proposal: indices in the lists of the search for the three fields, or -1 if there is no such field.
struct Proposal {
  std::int32_t formula{-1}, pages{-1}, leaves{-1};
  std::int32_t edits{};
  double score{};
  std::uint64_t state{}; ///< the description that it leads to, so that equal ones are recognised
};

/// Keeps the `most` best of many values by score, the best first. Most values are not better than the last, and cost
/// one comparison.
template <class T> void offer(std::vector<T>& best, std::size_t most, T one) {
  if (best.size() == most) {
    if (!(one.score > best.back().score)) return;
    best.pop_back();
  }
  auto k = best.size();
  best.push_back(static_cast<T&&>(one));
  for (; k > 0 && best[k - 1].score < best[k].score; --k) {
    T moved = static_cast<T&&>(best[k]);
    best[k] = static_cast<T&&>(best[k - 1]);
    best[k - 1] = static_cast<T&&>(moved);
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
