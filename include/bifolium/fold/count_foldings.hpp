// SPDX-License-Identifier: MIT
/// Counts the ways to fold a sheet into a gathering. The two rows of two leaves of a quarto can be folded into two
/// gatherings, the two rows of four of an octavo into twelve, and a sheet of forty leaves into more than a hundred
/// thousand; printers used one or two of each. Two foldings are different if they put the leaves in different orders.
#pragma once

#include <bifolium/core/expected.hpp>

#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The numbers of ways to fold a sheet, by the least number of folds that each needs.
struct FoldingCount {
  std::vector<std::int64_t> by_folds{}; ///< element k is the number of ways that need exactly k folds
  /// Returns the number of all ways.
  [[nodiscard]] constexpr std::int64_t all() const noexcept {
    std::int64_t sum = 0;
    for (auto const n : by_folds) sum += n;
    return sum;
  }
  /// Returns the number of ways that need the fewest folds, or 0 if there is no way.
  [[nodiscard]] constexpr std::int64_t with_fewest_folds() const noexcept {
    for (auto const n : by_folds)
      if (n != 0) return n;
    return 0;
  }
  friend bool operator==(FoldingCount const&, FoldingCount const&) = default;
};

/// Counts the gatherings into which an uncut sheet of rows x columns leaves can be folded. All leaves must form one
/// packet, and every pair of conjugate leaves must be joined at the gutter; with an odd number of leaves, one leaf has
/// no conjugate. A packet and the same packet turned over count once. Sheets that lie differently on the table count
/// separately. The function allocates memory, and the work grows fast: 5 x 8 leaves take a second or two. Precondition:
/// rows and columns are at least 1. Errors: too_many_cells for more than 64 leaves; too_many_arrangements if more than
/// `most_arrangements` arrangements of the half-folded sheet would have to be stored.
Expected<FoldingCount> count_foldings(int rows, int columns, std::int64_t most_arrangements = 2'000'000);

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/folding_counter.hpp> // the body of this
