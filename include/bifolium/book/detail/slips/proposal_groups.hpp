// SPDX-License-Identifier: MIT
/// Compares the proposals of the search. Proposals that lead to the same description count as one. A proposal with one
/// sufficient edit makes another with this edit and a second one superfluous.
#pragma once

#include <bifolium/book/detail/slips/proposal.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The edited fields, to which proposals refer by index.
struct SearchVariants {
  std::vector<FormulaVariant> formulas{};
  std::vector<PageVariant> pages{};
  std::vector<LeavesVariant> leaves{};
  /// Returns the edited formula of a proposal. Precondition: the proposal has this field.
  [[nodiscard]] FormulaVariant const& of_formula(Proposal const& one) const {
    return formulas[static_cast<std::size_t>(one.formula)];
  }
  [[nodiscard]] PageVariant const& of_pages(Proposal const& one) const {
    return pages[static_cast<std::size_t>(one.pages)];
  }
  [[nodiscard]] LeavesVariant const& of_leaves(Proposal const& one) const {
    return leaves[static_cast<std::size_t>(one.leaves)];
  }
};

class ProposalGroups {
  /// A proposal with an additional edit is kept if it is not this much less likely (as a logarithm) than without it.
  /// Estimated: one in twenty.
  static constexpr double clearly_less = 3;
  SearchVariants const& variants_;
  std::vector<Proposal>& found_;

  static void mix(std::uint64_t& state, std::int64_t value) {
    state = (state ^ static_cast<std::uint64_t>(value)) * 0x100000001B3U;
    state ^= state >> 29U;
  }
  /// Returns the state of a description. Two descriptions with the same counts have the same state.
  [[nodiscard]] std::uint64_t state_of(Proposal const& one) const {
    std::uint64_t state = 0xCBF29CE484222325U;
    if (one.formula >= 0) {
      auto const& shape = variants_.of_formula(one).shape;
      std::int64_t leaves = 0, count = 0;
      auto const put = [&](std::int64_t l, std::int64_t c) {
        if (l == leaves) {
          count += c;
          return;
        }
        mix(state, leaves), mix(state, count);
        leaves = l, count = c;
      };
      for (auto const& run : shape.runs)
        if (run.plain())
          put(run.leaves.term(0), run.gatherings());
        else
          for (std::int64_t i = 0; i < run.gatherings(); ++i) put(run.leaves.at(i), 1);
      mix(state, leaves), mix(state, count), mix(state, shape.changed);
      mix(state, shape.added.j + 2 * shape.added.u + 4 * shape.added.w);
    }
    if (one.pages >= 0) {
      auto const& shape = variants_.of_pages(one).shape;
      for (auto const& run : shape.runs) mix(state, run.count);
      mix(state, shape.by_leaf ? 1 : 0);
    }
    if (one.leaves >= 0) mix(state, variants_.of_leaves(one).leaves);
    return state;
  }
  static bool same(FormulaEdit const& a, FormulaEdit const& b) {
    return a.what == b.what && a.run == b.run && a.a == b.a && a.b == b.b;
  }
  static bool same(PageEdit const& a, PageEdit const& b) { return a.what == b.what && a.run == b.run && a.a == b.a; }
  /// Returns true if `less` has some of the edits of `more`, but fewer.
  [[nodiscard]] bool is_part(Proposal const& less, Proposal const& more) const {
    if (less.edits >= more.edits) return false;
    if (less.formula >= 0) {
      auto const &a = variants_.of_formula(less), &b = variants_.of_formula(more);
      if (a.reading != b.reading) return false;
      for (int i = 0; i < a.count; ++i)
        if (!(b.count > 0 && same(a.edits[i], b.edits[0])) && !(b.count > 1 && same(a.edits[i], b.edits[1])))
          return false;
    }
    if (less.pages >= 0) {
      auto const &a = variants_.of_pages(less), &b = variants_.of_pages(more);
      for (int i = 0; i < a.count; ++i)
        if (!(b.count > 0 && same(a.edits[i], b.edits[0])) && !(b.count > 1 && same(a.edits[i], b.edits[1])))
          return false;
    }
    if (less.leaves >= 0 && variants_.of_leaves(less).count > 0 &&
        (variants_.of_leaves(more).count == 0 || variants_.of_leaves(more).leaves != variants_.of_leaves(less).leaves))
      return false;
    return true;
  }

public:
  ProposalGroups(SearchVariants const& variants, std::vector<Proposal>& found) : variants_{variants}, found_{found} {}

  /// Combines proposals that lead to one description: the most likely one stays, with the probability of all.
  void join_alike(std::size_t most_kept) {
    std::vector<Proposal> grouped;
    for (auto& one : found_) {
      one.state = state_of(one);
      Proposal* same = nullptr;
      for (auto& other : grouped)
        if (other.state == one.state) same = &other;
      if (same != nullptr)
        same->score += real::log(1 + real::exp(one.score - same->score));
      else
        grouped.push_back(one);
    }
    found_.clear();
    for (auto const& one : grouped) offer(found_, most_kept, one);
  }
  /// Removes proposals with an edit in addition to one that is already enough.
  void drop_needless() {
    std::vector<Proposal> kept;
    for (auto const& one : found_) {
      bool needless = false;
      for (auto const& other : found_)
        needless = needless || (other.edits > 0 && one.score < other.score - clearly_less && is_part(other, one));
      if (!needless) kept.push_back(one);
    }
    found_ = static_cast<std::vector<Proposal>&&>(kept);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
