// SPDX-License-Identifier: MIT
/// Leaves that follow one another in the ideal copy, stored by the first and the last. A list of a copy has few spans,
/// however many leaves it has.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/copy/leaf_in_copy.hpp>

namespace bifolium {
inline namespace v0 {

/// The leaves from one leaf to another, including both. The numbers count in the ideal copy. A leaf that the ideal copy
/// does not have is a span by itself, with the numbers 0.
struct LeafSpan {
  LeafOfBook first{};  ///< the first leaf
  LeafOfBook last{};   ///< the last leaf
  std::int64_t from{}; ///< number of the first leaf in the ideal copy, from 1
  std::int64_t to{};   ///< number of the last leaf in the ideal copy
  LeafInCopy state{};  ///< the state of its leaves
  /// Returns true if the ideal copy has these leaves.
  [[nodiscard]] constexpr bool in_ideal() const noexcept { return from > 0; }
  /// Returns the number of leaves; 1 if the ideal copy does not have the leaf.
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return to - from + 1; }
  friend constexpr bool operator==(LeafSpan const&, LeafSpan const&) = default;
};

/// Returns the span of the leaves with these numbers. Precondition: 1 <= from <= to <= leaves of the book.
[[nodiscard]] inline LeafSpan span_of_numbers(IdealCopy const& book, std::int64_t from, std::int64_t to,
                                              LeafInCopy state = LeafInCopy::original) {
  auto const first = book.leaf_of_number(from), last = book.leaf_of_number(to);
  if (!first || !last || to < from) broken("the book has no leaves with these numbers");
  return {*first, *last, from, to, state};
}
/// Returns the span of one leaf. Precondition: the formula has the gathering of the leaf.
[[nodiscard]] inline LeafSpan span_of_leaf(IdealCopy const& book, LeafOfBook const& leaf,
                                           LeafInCopy state = LeafInCopy::original) {
  auto const number = book.leaf_number(leaf).value_or(0);
  return {leaf, leaf, number, number, state};
}

namespace detail {

/// Writes a leaf without its side, as in a reference.
inline std::string leaf_words(IdealCopy const& book, LeafOfBook const& leaf) { return leaf_text(book, leaf, false); }

/// Returns the leaf of the same gathering or insertion that a number alone names: 4 in A1.4, 2 in χ1.2. If there is
/// none, `most` is set to the highest number.
inline std::optional<LeafOfBook> leaf_of_figure(IdealCopy const& book, LeafOfBook leaf, std::int64_t figure,
                                                int& most) {
  most = book.leaves_folded(leaf.gathering);
  if (auto const one = book.inserted(leaf)) {
    auto const first = one->first_figure();
    auto const& insertion = one->insertion;
    most = first + insertion.leaves_folded() - 1;
    if (figure < first || figure > most) return std::nullopt;
    auto const named = static_cast<int>(figure);
    bool const lacks = insertion.lacking != 0;
    if (lacks && insertion.lacks(named)) return std::nullopt;
    leaf.inserted = *leaf.inserted + (lacks ? insertion.place_of(named) - one->number : named - one->figure());
    return leaf;
  }
  if (figure < 1 || figure > most) return std::nullopt;
  leaf.leaf = static_cast<int>(figure);
  return leaf;
}

/// Writes a span by its first and its last leaf: B3, B3-5, A7-B2.
inline std::string span_by_leaves(IdealCopy const& book, LeafSpan const& span) {
  if (!span.in_ideal() || span.from == span.to) return leaf_words(book, span.first);
  bool const figure = span.first.gathering == span.last.gathering && !span.first.inserted && !span.last.inserted;
  return leaf_words(book, span.first) + '-' + (figure ? std::to_string(span.last.leaf) : leaf_words(book, span.last));
}
/// Writes a span as the trade does: C, C-D, B3, B3-5, A7-B2.
inline std::string span_words(IdealCopy const& book, LeafSpan const& span) {
  if (!span.in_ideal() || span.from == span.to) return leaf_words(book, span.first);
  auto const head = book.numbers_of(span.first.gathering), tail = book.numbers_of(span.last.gathering);
  auto const mark = [&](GatheringAt at) { return std::string{to_text(book.signature(at)).view()}; };
  if (head.from == span.from && tail.to == span.to && head.to > head.from) {
    auto text = mark(span.first.gathering);
    if (span.first.gathering != span.last.gathering) text += '-' + mark(span.last.gathering);
    return text;
  }
  return span_by_leaves(book, span);
}

} // namespace detail

} // namespace v0
} // namespace bifolium
