// SPDX-License-Identifier: MIT
/// Compares a copy with the formula. The formula describes the ideal copy, the most complete state of the book. The
/// copy in hand may lack leaves, or have them twice or in another order. Copy and formula stay separate: evidence in
/// one copy does not change the formula. If a leaf and its conjugate are both missing, a whole bifolium is lost, which
/// leaves no trace; if the conjugate is there, the missing leaf left a stub. A missing blank is missing paper but no
/// missing text. Leaves are stored in spans, so the cost grows with the length of the list and not with the number of
/// leaves. copy/copy_words.hpp puts the result into words.
#pragma once

#include <bifolium/copy/detail/numbers_seen.hpp>
#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/read_leaves_present.hpp>

#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Leaves that are bound in another place than in the ideal copy.
struct Misplaced {
  LeafSpan leaves{};                 ///< leaves that are together, in the order of the ideal copy
  std::optional<LeafOfBook> after{}; ///< the leaf after which they are bound; no value at the front
  friend constexpr bool operator==(Misplaced const&, Misplaced const&) = default;
};
/// The result of comparing a copy with the formula.
struct CopyChecked {
  std::vector<LeafSpan> wanting{};  ///< leaves of the ideal copy that the copy lacks, in order
  std::vector<LeafSpan> repeated{}; ///< leaves that the copy has more than once, one entry for each further time
  /// leaves that the ideal copy does not have: a cancelled or deleted leaf that stayed in the book
  std::vector<LeafSpan> not_in_ideal{};
  std::vector<LeafSpan> noted{};      ///< leaves listed with a word: blank, mounted, supplied, facsimile, manuscript
  std::vector<Misplaced> misplaced{}; ///< the fewest leaves that must be moved so that all leaves are in order
  std::vector<JointJudged> joints{};  ///< evidence of joined leaves, in the order given, compared with the formula
  std::int64_t leaves_ideal{};        ///< leaves of the ideal copy
  /// leaves of this copy, including repeated leaves and those that the ideal copy does not have
  std::int64_t leaves_present{};
  /// leaves of the ideal copy that the copy lacks; a facsimile or a manuscript does not count as the leaf
  std::int64_t leaves_wanting{};
  std::int64_t blanks_wanting{}; ///< lacking leaves that the formula notes as blank
  /// true if every leaf comes before the leaf it should follow; a book read from right to left was perhaps collated
  /// from the back
  bool backwards{};
  /// Returns true if the copy lacks no leaf. Leaves may still be misplaced, repeated or additional.
  [[nodiscard]] bool complete() const noexcept { return wanting.empty(); }
  /// Returns true if the copy lacks no leaf with text: the formula notes all missing leaves as blank.
  [[nodiscard]] bool text_complete() const noexcept { return leaves_wanting == blanks_wanting; }
  friend bool operator==(CopyChecked const&, CopyChecked const&) = default;
};
/// A leaf that the copy lacks.
struct MissingLeaf {
  LeafOfBook leaf{};                     ///< the leaf
  std::optional<LeafOfBook> conjugate{}; ///< the leaf with which it is one piece of paper; no value for a single leaf
  bool conjugate_missing{};              ///< true if the copy lacks both: a lost bifolium
  bool blank{};                          ///< true if the formula notes that the leaf is blank, so that no text is lost
  friend constexpr bool operator==(MissingLeaf const&, MissingLeaf const&) = default;
};

/// Returns the span of lacking leaves that contains a leaf, given by its number in the book.
[[nodiscard]] inline std::optional<LeafSpan> wanting_at(CopyChecked const& copy, std::int64_t number) {
  auto const at = detail::first_to_reach(copy.wanting, number);
  if (at == copy.wanting.size() || copy.wanting[at].from > number) return std::nullopt;
  return copy.wanting[at];
}
/// Compares the leaves of a copy, in the order of the copy, and the evidence of its joints with the formula.
/// Precondition: the formula has the gatherings of these leaves, as in LeavesPresent::spans.
/// Example: `check_copy(IdealCopy{*read_formula("A8")}, {}).leaves_wanting == 8`.
[[nodiscard]] BIFOLIUM_INLINE CopyChecked check_copy(IdealCopy const& book, std::vector<LeafSpan> const& present,
                                                     std::vector<JointSeen> const& seen = {});
/// Returns the facts about a leaf that the copy lacks, given by its number in the book. Precondition: the book has a
/// leaf of this number.
[[nodiscard]] inline MissingLeaf missing_leaf(IdealCopy const& book, CopyChecked const& copy, std::int64_t number) {
  auto const leaf = book.leaf_of_number(number);
  if (!leaf) broken("the book has no leaf with this number");
  MissingLeaf missing{*leaf, book.conjugate(*leaf), false, book.is_blank(*leaf)};
  if (missing.conjugate)
    if (auto const other = book.leaf_number(*missing.conjugate))
      missing.conjugate_missing = wanting_at(copy, *other).has_value();
  return missing;
}

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/copy/detail/check_copy.hpp>
#endif
