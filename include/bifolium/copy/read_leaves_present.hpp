// SPDX-License-Identifier: MIT
/// Reads the list of the leaves that a copy has: "A1-8, B1 B2 C1.8 D K8 facsimile".
#pragma once

#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {

/// The leaves of a copy, in its order.
struct LeavesPresent {
  std::vector<LeafSpan> spans{}; ///< the leaves as listed
  std::vector<Error> doubts{};   ///< names that can mean more than one leaf or gathering, with column
  /// Returns the doubts, with column: names that can mean more than one leaf or gathering.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return doubts; }
  /// Returns the doubts of temporary leaves by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(doubts); }
  friend bool operator==(LeavesPresent const&, LeavesPresent const&) = default;
};

/// Reads the leaves of a copy, in the order of the copy: references and runs of them, separated by blanks, commas or
/// semicolons: "A1-8, B1 B2 C-D f.30-32". A gathering alone means all its leaves. B3.6 are two leaves, B3 and B6, with
/// what the list names next inside them, if it belongs there: "B1.4 B2" is B1, B2 and B4. Inserted leaves are named as the
/// formula prints them (χ1, a1-4) or by the leaf before them (A3+1). The list may name a leaf that the formula removes,
/// since some copies still have it. A word after leaves gives their state: facsimile, supplied, blank, mounted. Errors,
/// with the column: those of read_reference; run_goes_backwards; the limits of core/limits.hpp.
[[nodiscard]] BIFOLIUM_INLINE Expected<LeavesPresent> read_leaves_present(IdealCopy const& book, std::string_view text,
                                                                          Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/copy/detail/read_leaves_present.hpp>
#endif
