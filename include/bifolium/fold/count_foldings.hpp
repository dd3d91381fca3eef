// SPDX-License-Identifier: MIT
/// How many ways are there to fold a sheet into a gathering? A quarto's two rows of two can be folded into two gatherings,
/// an octavo's two rows of four into twelve, and a sheet of forty leaves into more than a hundred thousand; printers used
/// one or two of each. Two foldings are different if they put the leaves in different orders.
#pragma once

#include <bifolium/core/expected.hpp>

#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The ways of folding a sheet, by the number of folds they take at least.
struct FoldingCount {
  std::vector<std::int64_t> by_folds{}; ///< element k: how many take k folds and no less
  /// All of them.
  [[nodiscard]] constexpr std::int64_t all() const noexcept {
    std::int64_t sum = 0;
    for (auto const n : by_folds) sum += n;
    return sum;
  }
  /// Those with the fewest folds that will do; 0 where there is none at all.
  [[nodiscard]] constexpr std::int64_t with_fewest_folds() const noexcept {
    for (auto const n : by_folds)
      if (n != 0) return n;
    return 0;
  }
  friend bool operator==(FoldingCount const&, FoldingCount const&) = default;
};

/// Counts the gatherings that an uncut sheet of rows x columns leaves can be folded into: all leaves in one packet, every
/// pair of conjugates joined across the gutter (of an odd number of leaves one has no conjugate). A packet and the same
/// turned over count once; sheets that lie differently on the table count apart. Allocates; the work grows fast: 5 x 8
/// leaves take some seconds. pre: rows and columns are at least 1. error: too_many_cells for more than 64 leaves;
/// too_many_arrangements where more than `most_arrangements` of the half-folded sheet would have to be kept.
Expected<FoldingCount> count_foldings(int rows, int columns, std::int64_t most_arrangements = 2'000'000);

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/folding_counter.hpp> // the body of this
