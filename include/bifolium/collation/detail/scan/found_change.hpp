// SPDX-License-Identifier: MIT
/// A change as the grammar finds it, before it becomes one that users see. Its places and names are those of the text: a name
/// is made only if the formula is stored, since most formulas are only counted.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/leaf/signature_key.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A change in terms of the text. Its names have a meaning only together with the text.
struct FoundChange {
  /// In `first` and `last` of a deletion or a cancel: every leaf of the gathering.
  static constexpr int every_leaf = 0;
  Change::Kind kind{};
  GatheringAt gathering{};
  /// the leaves as folded, or both `every_leaf`; for an insertion, `first` is the leaf before it. A number in place of
  /// FoldedLeaves, since the state of a parenthesis, which is copied for each change, has four of these
  int first{}, last{};
  int leaves{};            ///< number of inserted leaves
  Joined joined{};         ///< the way in which they are joined
  bool named{}, starred{}; ///< true if a name follows; true for (+8*)
  bool of_change{};        ///< true for an identity of the change before it
  bool leaf_written{};     ///< true for an identity with its leaf on the left
  bool doubtful{};         ///< true if there is a question mark
  bool inferred{};         ///< true if the name of an insertion is in square brackets
  SignatureKey name{};     ///< the name of an insertion, or of the other leaf of an identity
  int figure{};            ///< the number after the name or before the star
  std::uint64_t lacking{}; ///< the leaves that an inserted gathering lacks, as in Insertion
  std::uint32_t from{}, to{};
  ChangeForm form{};
};

} // namespace detail
} // namespace v0
} // namespace bifolium
