// SPDX-License-Identifier: MIT
/// A copy against the formula. The formula describes the ideal copy; the copy in hand may want leaves, have them twice or
/// in another order. Both are kept apart: nothing seen in one copy changes the formula. A missing leaf whose conjugate is
/// missing too is a lost bifolium, easily lost without a trace; one whose conjugate is there has left a stub. A missing
/// blank is missing paper and no missing text. Everything is kept in spans, so the cost grows with what is listed and not
/// with the leaves of the book. What is found is put into words by copy/copy_words.hpp.
#pragma once

#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/read_leaves_present.hpp>
#include <bifolium/core/list.hpp>
#include <bifolium/core/put.hpp>

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

/// Of spans in the order in which they end: the first that does not end before `number`.
template <class Spans> std::size_t first_to_reach(Spans const& spans, std::int64_t number) {
  std::size_t low = 0, high = spans.size();
  while (low < high)
    if (auto const middle = low + (high - low) / 2; spans[middle].to < number)
      low = middle + 1;
    else
      high = middle;
  return low;
}

/// Disjoint spans of numbers in order, and which part of a new one was there already.
class NumbersSeen {
  struct Numbers {
    std::int64_t from{}, to{};
  };
  List<Numbers> seen_{};

public:
  /// Calls fresh(from, to) and again(from, to) for the parts, in order.
  template <class Fresh, class Again> void add(std::int64_t from, std::int64_t to, Fresh&& fresh, Again&& again) {
    auto i = first_to_reach(seen_, from);
    auto const place = i;
    Numbers whole{from, to};
    for (auto next = from; next <= to;) {
      bool const free = i == seen_.size() || seen_[i].from > next;
      auto const end = i == seen_.size() ? to : free ? seen_[i].from - 1 : seen_[i].to;
      auto const until = end < to ? end : to;
      if (free)
        fresh(next, until);
      else {
        again(next, until);
        whole = {(seen_[i].from < whole.from ? seen_[i].from : whole.from),
                 (seen_[i].to > whole.to ? seen_[i].to : whole.to)};
        ++i;
      }
      next = until + 1;
    }
    put(seen_, place, i, whole);
  }
  /// Calls gap(from, to) for what is not there of 1 to `last`.
  template <class Gap> void gaps(std::int64_t last, Gap&& gap) const {
    std::int64_t next = 1;
    for (auto const& one : seen_) {
      if (one.from > next) gap(next, one.from - 1);
      next = one.to + 1;
    }
    if (next <= last) gap(next, last);
  }
};

/// Which of the spans are in order, the last of them first: the choice that leaves most leaves in place.
inline List<std::size_t> in_order(std::vector<LeafSpan> const& spans) {
  struct Chain { // the best that ends with span `span`; kept so that both `to` and `leaves` rise
    std::int64_t to{}, leaves{};
    std::size_t span{};
  };
  constexpr auto none = static_cast<std::size_t>(-1);
  List<Chain> best;
  List<std::size_t> before; // what each follows
  for (std::size_t s = 0; s < spans.size(); ++s) {
    auto leaves = spans[s].leaves();
    before.push_back(none);
    if (auto const i = first_to_reach(best, spans[s].from); i > 0) {
      before[s] = best[i - 1].span;
      leaves += best[i - 1].leaves;
    }
    auto const i = first_to_reach(best, spans[s].to);
    if (i > 0 && best[i - 1].leaves >= leaves) continue;
    auto end = i;
    while (end < best.size() && best[end].leaves < leaves) ++end;
    put(best, i, end, Chain{spans[s].to, leaves, s});
  }
  List<std::size_t> kept;
  if (best.empty()) return kept;
  for (auto s = best.back().span; s != none; s = before[s]) kept.push_back(s);
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
    return static_cast<CopyChecked&&>(result_);
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
