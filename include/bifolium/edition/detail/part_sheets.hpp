// SPDX-License-Identifier: MIT
/// Divides the leaves that are left over when the whole sheets are filled. They are fewer than a sheet and are printed
/// as parts of one - halves, thirds, quarters. The size of a part is even and divides the sheet, so that no paper is
/// left. A table over the leaves of one sheet gives the fewest parts: the fewest for n are one more than the fewest for
/// n less its last part. The result is exact and takes at most 128 leaves times the divisors of the sheet (16 for 120)
/// steps.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/edition/plan.hpp>
#include <bifolium/fold/scheme.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The fewest parts of a sheet that add up to a number of leaves.
class PartSheets {
  std::array<std::uint8_t, Scheme::most_cells + 1> fewest_{}, first_{};

public:
  static constexpr int impossible = 255;

  /// Finds the parts of a sheet of `leaves_to_sheet` leaves for fewer than `less_than` leaves. `single` leaves may be
  /// odd in number, because they are not folded.
  constexpr PartSheets(int leaves_to_sheet, int less_than, bool single) {
    for (int leaves = 1; leaves < less_than; ++leaves) {
      auto const at = static_cast<std::size_t>(leaves);
      fewest_[at] = impossible;
      for (int part = single ? 1 : 2; part <= leaves; part += single ? 1 : 2) {
        if (leaves_to_sheet % part != 0) continue;
        auto const rest = fewest_[static_cast<std::size_t>(leaves - part)];
        if (rest == impossible || rest + 1 > fewest_[at]) continue;
        fewest_[at] = static_cast<std::uint8_t>(rest + 1);
        first_[at] = static_cast<std::uint8_t>(part); // of equal choices the one with the largest part
      }
    }
  }
  [[nodiscard]] constexpr int fewest(int leaves) const { return fewest_[static_cast<std::size_t>(leaves)]; }
  /// Returns the parts for a number of leaves, the largest first, or no value if they are impossible.
  [[nodiscard]] std::optional<std::vector<int>> parts_of(int leaves) const {
    std::vector<int> parts;
    if (fewest(leaves) == impossible) return std::nullopt;
    for (; leaves > 0; leaves -= parts.back()) parts.push_back(first_[static_cast<std::size_t>(leaves)]);
    insertion_sort(parts, [](int a, int b) { return a > b; });
    return parts;
  }
  /// Adds the parts for a number of leaves to the plan, with equal ones as one working.
  constexpr void add_to(Plan& plan, int leaves, Working::Kind kind) const {
    while (leaves > 0) {
      auto const part = first_[static_cast<std::size_t>(leaves)];
      Working working{0, part, kind, {}};
      for (; leaves > 0 && first_[static_cast<std::size_t>(leaves)] == part; leaves -= part) ++working.times;
      plan.add(working);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
