// SPDX-License-Identifier: MIT
/// A change as the scanner finds it, before its form is told from its meaning.
#pragma once

#include <bifolium/collation/parts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is said of a leaf beyond the runs, as it is found in the text.
struct ScannedChange {
  /// What was done to the gathering.
  enum class Kind : std::uint8_t {
    deletion,  ///< (-A4): not in the ideal copy
    cancel,    ///< (±B2): cut out and replaced
    insertion, ///< (A3+χ1.2)
    identity,  ///< [=B2]: the leaf was printed there
    note       ///< (B2 blank): words
  };
  /// How it follows what stands before it.
  enum class Joint : std::uint8_t {
    opens,    ///< the first in its parenthesis
    apart,    ///< after a comma: disjunct leaves
    conjugate ///< after a point: conjugate leaves
  };
  /// How inserted leaves hang together.
  enum class Joined : std::uint8_t { apart, conjugate, gathering };

  Kind kind{};                  ///< what was done
  Joint joint{};                ///< whether what was put in is joined to what was there
  Joined joined{};              ///< how the leaves put in are joined among themselves
  bool doubtful{};              ///< a question mark
  bool of_change{};             ///< an identity of the change before it, not of the run
  bool place_named{};           ///< (+8*): the figure is the place, the leaf is called 8*
  bool named{};                 ///< `name` holds something
  std::uint32_t stands_after{}; ///< the run behind which it is written
  GatheringAt gathering{};      ///< the gathering it changes
  int leaf{};                   ///< the leaf in it; 0: the whole gathering. For an insertion: the leaf it follows
  int added{};                  ///< leaves inserted
  Signature name{};             ///< of the inserted leaves, or of the leaf it is identical with
  int name_leaf{};              ///< the leaf number with the name, 0 when there is none
  std::uint32_t note{};         ///< which of the formula's notes

  friend constexpr bool operator==(ScannedChange const&, ScannedChange const&) = default;
};

} // namespace detail
} // namespace v0
} // namespace bifolium
