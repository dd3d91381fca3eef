// SPDX-License-Identifier: MIT
/// A copy against the formula. The formula describes the ideal copy; the copy in hand may want leaves, have them twice or
/// in another order. Both are kept apart: nothing seen in one copy changes the formula. A missing leaf whose conjugate is
/// missing too is a lost bifolium, easily lost without a trace; one whose conjugate is there has left a stub. A missing
/// blank is missing paper and no missing text. Everything is kept in spans, so the cost grows with what is listed and not
/// with the leaves of the book. What is found is put into words by copy/copy_words.hpp.
#pragma once

#include <bifolium/copy/detail/numbers_seen.hpp>
#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/read_leaves_present.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Leaves that are bound elsewhere than in the ideal copy.
struct Misplaced {
  LeafSpan leaves{};                 ///< that are together, in the order of the ideal copy
  std::optional<LeafOfBook> after{}; ///< the leaf after which they are bound; none at the front
  friend constexpr bool operator==(Misplaced const&, Misplaced const&) = default;
};
/// What a copy shows against the formula.
struct CopyChecked {
  std::vector<LeafSpan> wanting{};      ///< leaves of the ideal copy that are not there, in its order
  std::vector<LeafSpan> repeated{};     ///< leaves that are there again, once for each time beyond the first
  std::vector<LeafSpan> not_in_ideal{}; ///< leaves the ideal copy lacks: a cancelled or deleted leaf left in
  std::vector<LeafSpan> noted{};        ///< leaves listed with a word: blank, mounted, supplied, facsimile
  std::vector<Misplaced> misplaced{};   ///< the fewest leaves that, set right, bring all into order
  std::vector<JointJudged> joints{};    ///< what was seen of joined leaves, in the order given, against the formula
  std::int64_t leaves_ideal{};          ///< leaves of the ideal copy
  std::int64_t leaves_present{};        ///< leaves of this copy, repeated ones and those not in the ideal copy included
  std::int64_t leaves_wanting{};        ///< leaves of the ideal copy that are not there; a facsimile is not the leaf
  std::int64_t blanks_wanting{};        ///< those of them that the formula notes as blank
  bool backwards{}; ///< every leaf comes before the last: a book read from right to left, collated from the back?
  /// No leaf is wanting; leaves may still be misplaced, repeated or too many.
  [[nodiscard]] bool complete() const noexcept { return wanting.empty(); }
  /// No leaf with text is wanting: what is missing is noted as blank.
  [[nodiscard]] bool text_complete() const noexcept { return leaves_wanting == blanks_wanting; }
};
/// A leaf the copy wants.
struct MissingLeaf {
  LeafOfBook leaf{};                     ///< the leaf that is wanting
  std::optional<LeafOfBook> conjugate{}; ///< the leaf it is one piece with; none for a single leaf
  bool conjugate_missing{};              ///< both halves gone: a lost bifolium
  bool blank{};                          ///< the formula notes that it is blank: no text is lost
  friend constexpr bool operator==(MissingLeaf const&, MissingLeaf const&) = default;
};

namespace detail {

/// The best chain of spans that ends at or before a number, for every number at which a span ends: a tree of prefix
/// maxima (Fenwick 1994), so that asking and adding take the logarithm of the number of spans.
class BestChains {
public:
  static constexpr auto none = static_cast<std::size_t>(-1);
  struct Chain {
    std::int64_t to{}, leaves{}; ///< where it ends, and how many leaves are in it
    std::size_t span{none};      ///< its last span
    /// More leaves are better; of as many, those that end later.
    [[nodiscard]] bool is_better_than(Chain const& other) const {
      return leaves != other.leaves ? leaves > other.leaves : to > other.to;
    }
  };

private:
  std::vector<std::int64_t> ends_; // where spans end, in order, each once
  std::vector<Chain> tree_;

  /// How many of the ends come before `number`.
  [[nodiscard]] std::size_t ends_before(std::int64_t number) const {
    return static_cast<std::size_t>(std::lower_bound(ends_.begin(), ends_.end(), number) - ends_.begin());
  }

public:
  explicit BestChains(std::vector<LeafSpan> const& spans) {
    ends_.reserve(spans.size());
    for (auto const& span : spans) ends_.push_back(span.to);
    std::sort(ends_.begin(), ends_.end());
    ends_.erase(std::unique(ends_.begin(), ends_.end()), ends_.end());
    tree_.resize(ends_.size() + 1);
  }
  /// The best that ends before `number`; without a span where there is none.
  [[nodiscard]] Chain before(std::int64_t number) const {
    Chain best;
    for (auto i = ends_before(number); i > 0; i &= i - 1)
      if (tree_[i].is_better_than(best)) best = tree_[i];
    return best;
  }
  /// pre: it ends where one of the spans does.
  void add(Chain const& chain) {
    for (auto i = ends_before(chain.to) + 1; i < tree_.size(); i += i & (0 - i))
      if (chain.is_better_than(tree_[i])) tree_[i] = chain;
  }
};

/// Which of the spans are in order, the last of them first: the choice that leaves most leaves in place.
inline std::vector<std::size_t> in_order(std::vector<LeafSpan> const& spans) {
  BestChains best{spans};
  std::vector<std::size_t> before(spans.size()), kept; // what each follows
  std::int64_t last = 0;
  for (std::size_t s = 0; s < spans.size(); ++s) {
    auto const chain = best.before(spans[s].from);
    before[s] = chain.span;
    auto const leaves = chain.leaves + spans[s].leaves();
    if (spans[s].to > last) last = spans[s].to;
    // one with as many leaves that ends no later is as good, and came first
    if (best.before(spans[s].to + 1).leaves < leaves) best.add({spans[s].to, leaves, s});
  }
  for (auto s = best.before(last + 1).span; s != BestChains::none; s = before[s]) kept.push_back(s);
  return kept;
}

} // namespace detail

/// The span of wanting leaves in which a leaf of the book lies, by its number.
[[nodiscard]] inline std::optional<LeafSpan> wanting_at(CopyChecked const& copy, std::int64_t number) {
  auto const at = detail::first_to_reach(copy.wanting, number);
  if (at == copy.wanting.size() || copy.wanting[at].from > number) return std::nullopt;
  return copy.wanting[at];
}
namespace detail {

/// Goes through the leaves of a copy in their order.
class CopyChecker {
  IdealCopy const& book_;
  CopyChecked result_{};
  NumbersSeen numbers_{};
  std::vector<LeafSpan> found_{}; // what was not there before, in the order of the copy
  bool falling_{true};
  bool joined_{false}; // nothing else is between the last of `found_` and what comes

public:
  explicit CopyChecker(IdealCopy const& book) : book_{book} { result_.leaves_ideal = book.leaves(); }

  void see(LeafSpan const& span) {
    if (span.state != LeafInCopy::original) result_.noted.push_back(span);
    if (span.state == LeafInCopy::facsimile) { // the leaf itself is not there
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

/// Checks the leaves present, in the order of the copy, and what was seen of their joints.
/// pre: the leaves are of gatherings of the formula (LeavesPresent::spans).
[[nodiscard]] inline CopyChecked check_copy(IdealCopy const& book, std::vector<LeafSpan> const& present,
                                            std::vector<JointSeen> const& seen = {}) {
  detail::CopyChecker checker{book};
  for (auto const& span : present) checker.see(span);
  return checker.finish(seen);
}
/// What became of a leaf the copy wants, by its number. pre: a leaf of the book.
[[nodiscard]] inline MissingLeaf missing_leaf(IdealCopy const& book, CopyChecked const& copy, std::int64_t number) {
  auto const leaf = book.leaf_of_number(number);
  if (!leaf) broken("the book has no leaf of that number");
  MissingLeaf missing{*leaf, book.conjugate(*leaf), false, book.is_blank(*leaf)};
  if (missing.conjugate)
    if (auto const other = book.leaf_number(*missing.conjugate))
      missing.conjugate_missing = wanting_at(copy, *other).has_value();
  return missing;
}

} // namespace v0
} // namespace bifolium
