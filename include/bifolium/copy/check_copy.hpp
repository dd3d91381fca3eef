// SPDX-License-Identifier: MIT
/// A copy against the formula. The formula tells of the ideal copy; what stands in the hand may want leaves, have them
/// twice or in another order. Both are kept apart: nothing seen in one copy changes the formula. A missing leaf whose
/// conjugate is missing too is a lost bifolium, easily lost without a trace; one whose conjugate is there has left a
/// stub. Everything is kept in spans, so the cost goes with what is listed and not with the leaves of the book.
#pragma once

#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/list.hpp>
#include <bifolium/core/put.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaves that stand elsewhere than in the ideal copy.
struct Misplaced {
  LeafSpan leaves{};                 ///< that stand together, in the order of the ideal copy
  std::optional<LeafOfBook> after{}; ///< what they are bound behind; nothing at the front
  friend constexpr bool operator==(Misplaced const&, Misplaced const&) = default;
};
/// What a copy shows against the formula.
struct CopyChecked {
  std::vector<LeafSpan> wanting{};      ///< leaves of the ideal copy that are not there, in its order
  std::vector<LeafSpan> repeated{};     ///< leaves that are there again, once for each time beyond the first
  std::vector<LeafSpan> not_in_ideal{}; ///< leaves the ideal copy lacks: a cancelled or deleted leaf left in
  std::vector<Misplaced> misplaced{};   ///< the fewest leaves that, set right, bring all into order
  std::vector<JointJudged> joints{};    ///< what was seen of joined leaves, in the order given, against the formula
  std::int64_t leaves_ideal{};          ///< leaves of the ideal copy
  std::int64_t leaves_present{};        ///< leaves of this copy, repeated ones and those not in the ideal copy included
  bool backwards{}; ///< every leaf comes before the last: a book read from right to left, collated from the back?
  /// Nothing is wanting; leaves may still be misplaced, repeated or too many.
  [[nodiscard]] bool complete() const noexcept { return wanting.empty(); }
};
/// A leaf the copy wants.
struct MissingLeaf {
  LeafOfBook leaf{};                     ///< the leaf that is wanting
  std::optional<LeafOfBook> conjugate{}; ///< the leaf it is one piece with; nothing where it has none
  bool conjugate_missing{};              ///< both halves gone: a lost bifolium
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

/// Which of the spans stand in order, the last of them first: the choice that leaves most leaves in place.
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

/// Checks the leaves present, in the order of the copy, and what was seen of their joints.
/// pre: the leaves are of gatherings of the formula (read_leaves_present finds them).
[[nodiscard]] inline CopyChecked check_copy(Formula const& formula, std::vector<LeafSpan> const& present,
                                            std::vector<JointSeen> const& seen = {}) {
  CopyChecked result;
  result.leaves_ideal = leaf_count(formula);
  detail::NumbersSeen numbers;
  std::vector<LeafSpan> found; // what was not there before, in the order of the copy
  bool falling = true;
  bool joined = false; // nothing else stands between the last of `found` and what comes
  for (auto const& span : present) {
    if (!span.in_ideal()) {
      result.not_in_ideal.push_back(span);
      result.leaves_present += 1;
      joined = false;
      continue;
    }
    result.leaves_present += span.leaves();
    falling = falling && span.from == span.to && (found.empty() || span.from < found.back().from);
    numbers.add(
        span.from, span.to,
        [&](std::int64_t from, std::int64_t to) {
          if (joined && found.back().to + 1 == from)
            found.back() = span_of_numbers(formula, found.back().from, to);
          else
            found.push_back(span_of_numbers(formula, from, to));
          joined = true;
        },
        [&](std::int64_t from, std::int64_t to) {
          result.repeated.push_back(span_of_numbers(formula, from, to));
          joined = false;
        });
  }
  result.backwards = falling && found.size() > 2;
  auto kept = detail::in_order(found);
  for (std::size_t s = 0; s < found.size(); ++s)
    if (!kept.empty() && kept.back() == s)
      kept.pop_back();
    else
      result.misplaced.push_back({found[s], s == 0 ? std::nullopt : std::optional{found[s - 1].last}});
  numbers.gaps(result.leaves_ideal, [&](std::int64_t from, std::int64_t to) {
    result.wanting.push_back(span_of_numbers(formula, from, to));
  });
  result.joints = std::vector<JointJudged>(seen.size());
  for (std::size_t i = 0; i < seen.size(); ++i) result.joints[i] = judge(formula, seen[i]);
  return result;
}

/// The span of wanting leaves in which a leaf of the book lies, by its number.
[[nodiscard]] inline std::optional<LeafSpan> wanting_at(CopyChecked const& copy, std::int64_t number) {
  auto const at = detail::first_to_reach(copy.wanting, number);
  if (at == copy.wanting.size() || copy.wanting[at].from > number) return std::nullopt;
  return copy.wanting[at];
}
/// What became of a leaf the copy wants, by its number. pre: a leaf of the book.
[[nodiscard]] inline MissingLeaf missing_leaf(Formula const& formula, CopyChecked const& copy, std::int64_t number) {
  auto const leaf = leaf_of_number(formula, number);
  if (!leaf) broken("the book has no leaf of that number");
  MissingLeaf missing{*leaf, conjugate(formula, *leaf), false};
  if (missing.conjugate)
    if (auto const other = leaf_number(formula, *missing.conjugate))
      missing.conjugate_missing = wanting_at(copy, *other).has_value();
  return missing;
}

namespace detail {

/// Of the leaves wanting, those that follow one another in one gathering, beginning with `number`.
inline std::int64_t last_of_portion(Formula const& formula, LeafSpan const& wanting, std::int64_t number) {
  auto const end = numbers_of(formula, leaf_of_number(formula, number)->gathering).to;
  return end < wanting.to ? end : wanting.to;
}
/// More than a bifolium's two leaves together are named by their ends.
inline bool named_by_ends(Formula const& formula, CopyChecked const& copy, std::int64_t number) {
  auto const wanting = wanting_at(copy, number);
  if (!wanting) return false;
  auto const here = numbers_of(formula, leaf_of_number(formula, number)->gathering);
  auto const from = here.from > wanting->from ? here.from : wanting->from;
  return last_of_portion(formula, *wanting, number) - from >= 2;
}
/// What is wanting of one gathering, from `from` to `to`.
inline void append_wanting(Formula const& formula, CopyChecked const& copy, std::int64_t from, std::int64_t to,
                           std::string& text) {
  auto const part = [&] { text += text.empty() ? "" : ", "; };
  if (to - from >= 2) return part(), text += span_words(formula, span_of_numbers(formula, from, to)), void();
  for (auto n = from; n <= to; ++n) {
    auto const missing = missing_leaf(formula, copy, n);
    auto const other = missing.conjugate_missing ? leaf_number(formula, *missing.conjugate) : std::nullopt;
    bool const bifolium = other && !named_by_ends(formula, copy, *other);
    if (bifolium && *other < n) continue; // said with its other half
    part();
    text += leaf_words(formula, missing.leaf);
    if (bifolium)
      text += '.' + (missing.conjugate->inserted > 0 ? leaf_words(formula, *missing.conjugate)
                                                     : std::to_string(missing.conjugate->leaf));
  }
}

} // namespace detail

/// What the copy wants, as the trade says it: "wants B3.6, C8, E-G"; empty for a complete copy. A lost bifolium has a full
/// point between its leaves, three leaves and more that follow one another are named by the first and the last.
[[nodiscard]] inline std::string wants(Formula const& formula, CopyChecked const& copy) {
  std::string text;
  for (auto const& span : copy.wanting)
    for (auto n = span.from; n <= span.to;) {
      auto const at = leaf_of_number(formula, n)->gathering;
      auto const here = detail::numbers_of(formula, at);
      if (here.from < n || here.to > span.to) { // part of a gathering
        auto const end = here.to < span.to ? here.to : span.to;
        detail::append_wanting(formula, copy, n, end, text);
        n = end + 1;
        continue;
      }
      // whole gatherings, as far as they belong to one run
      auto last = GatheringAt{at.run, formula.runs()[at.run].gatherings - 1};
      if (detail::numbers_of(formula, last).to > span.to) {
        last = leaf_of_number(formula, span.to)->gathering;
        if (detail::numbers_of(formula, last).to > span.to) --last.index;
      }
      auto const end = detail::numbers_of(formula, last).to;
      if (!text.empty()) text += ", ";
      text += detail::span_words(formula, span_of_numbers(formula, n, end));
      n = end + 1;
    }
  return text.empty() ? text : "wants " + text;
}

/// What is wrong with the order: "B bound behind C4; A8 bound at the front"; empty when all is in place.
[[nodiscard]] inline std::string misbound(Formula const& formula, CopyChecked const& copy) {
  std::string text;
  auto const& all = copy.misplaced;
  for (std::size_t i = 0; i < all.size();) {
    if (!text.empty()) text += "; ";
    text += detail::span_words(formula, all[i].leaves);
    auto const& after = all[i].after;
    for (++i; i < all.size() && all[i].after == all[i - 1].leaves.last; ++i) // bound behind one another
      text += ", " + detail::span_words(formula, all[i].leaves);
    text += after ? " bound behind " + detail::leaf_words(formula, *after) : " bound at the front";
  }
  return text;
}

} // namespace v0
} // namespace bifolium
