// SPDX-License-Identifier: MIT
/// Runs of gatherings, such as A-K⁸, of which a formula consists. A run is stored as it is written and never as a list
/// of gatherings, so a formula is as small as its text. collation/change.hpp has the changes to single leaves (−L4).
#pragma once

#include <bifolium/leaf/cycle.hpp>
#include <bifolium/leaf/signature.hpp>

#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// Gatherings that follow one another in one series, with their leaf counts: A-K⁸, π², a-o8/6.
struct Run {
  Signature first, last;      ///< the two ends of the run; equal if it is one gathering
  std::int64_t gatherings{1}; ///< number of gatherings
  Cycle leaves{};             ///< number of leaves of each
  /// true for [A]-D⁴: the gathering is unsigned and its signature inferred from the sequence
  bool first_inferred{}, last_inferred{};
  bool unsigned_throughout{}; ///< true inside brackets around the whole formula: [a-c⁶]
  bool imperfect{};           ///< true if + follows: the book once had more leaves
  bool begins_part{};         ///< true if a semicolon or the name of a volume comes before it

  /// Returns the number of leaves of the whole run, before any change.
  [[nodiscard]] constexpr std::int64_t leaf_total() const { return leaves.total(gatherings); }
  friend constexpr bool operator==(Run const&, Run const&) = default;
};

/// A gathering of a formula: the run, and the place in this run.
struct GatheringAt {
  std::uint32_t run{};  ///< index of the run in the formula, from 0
  std::int64_t index{}; ///< index of the gathering in the run, from 0
  friend constexpr auto operator<=>(GatheringAt, GatheringAt) = default;
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::GatheringAt> {
  std::size_t operator()(bifolium::GatheringAt at) const noexcept {
    return static_cast<std::size_t>(at.index) * 31U + at.run;
  }
};
