// SPDX-License-Identifier: MIT
/// The data of the search for repairs, and its proposals.
#pragma once

#include <bifolium/book/detail/formula_slips.hpp>
#include <bifolium/book/detail/page_shape.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is searched.
struct SearchInput {
  std::vector<FormulaShape> formulas{};  ///< the formula as it reads, then as it reads with other letters
  std::vector<double> formula_weights{}; ///< of each; the first has 0
  std::vector<bool> formula_is_edit{};   ///< reading it so is a repair
  std::vector<std::int32_t> changes{};   ///< leaves that each parenthesis adds
  std::optional<PageShape> pages{};
  std::optional<std::int64_t> leaves{};
  std::int64_t plates{};
  int blanks_noted{};
  bool early{};
};

/// A formula that an edit, or none, makes of the one that was read.
struct FormulaVariant {
  FormulaShape shape{};
  std::size_t reading{}; ///< which of the formulas of the input
  FormulaEdit edits[2]{};
  int count{};
  double score{};
  std::int64_t leaves{};
};
/// The same of a pagination.
struct PageVariant {
  PageShape shape{};
  PageEdit edits[2]{};
  int count{};
  double score{};
};
/// The same of a number of leaves.
struct LeavesVariant {
  std::int64_t leaves{};
  SlipKind kind{};
  int count{};
  double score{};
};
/// All three, by their numbers in the lists of the search; -1 if there is no such field.
struct Proposal {
  std::int32_t formula{-1}, pages{-1}, leaves{-1};
  std::int32_t edits{};
  double score{};
  std::uint64_t state{}; ///< what it leads to, so that equal ones are known
};

/// Keeps the `most` best of many by score, best first. Most of what is offered is no better than the last and costs a comparison.
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
