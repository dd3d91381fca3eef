// SPDX-License-Identifier: MIT
/// Divides the leaves that are left over when the whole sheets are filled. They are fewer than a sheet and are printed
/// as parts of one - halves, thirds, quarters. The size of a part is even and divides the sheet, so that no paper is
/// left. A part takes one forme if it is turned, otherwise two. A table over the leaves of one sheet gives the fewest
/// formes, and among these the fewest parts: those for n are those of the last part and of n without it. The result is
/// exact and takes at most 128 leaves times the divisors of the sheet (16 for 120) steps.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/edition/plan.hpp>
#include <bifolium/fold/scheme.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The parts of a sheet that add up to a number of leaves and take the fewest formes.
class PartSheets {
  std::array<std::uint8_t, Scheme::most_cells + 1> fewest_{}, parts_{}, first_{};
  int sheet_;
  PartWork work_;

  [[nodiscard]] constexpr int formes_of(int part) const {
    return Working{1, static_cast<std::uint8_t>(part), Working::kind_of(part, sheet_, work_), {}}.formes();
  }

public:
  static constexpr int impossible = 255;

  /// Finds the parts of a sheet of `leaves_to_sheet` leaves for fewer than `less_than` leaves. `single` leaves may be
  /// odd in number, because they are not folded.
  constexpr PartSheets(int leaves_to_sheet, int less_than, bool single, PartWork work)
      : sheet_{leaves_to_sheet}, work_{work} {
    for (int leaves = 1; leaves < less_than; ++leaves) fewest_[static_cast<std::size_t>(leaves)] = impossible;
    for (int part = 1; part < less_than; ++part) {
      if (!is_part_of_sheet(part, leaves_to_sheet, single)) continue;
      auto const formes_of_part = formes_of(part);
      for (int leaves = part; leaves < less_than; ++leaves) {
        auto const at = static_cast<std::size_t>(leaves);
        auto const rest = static_cast<std::size_t>(leaves - part);
        if (fewest_[rest] == impossible) continue;
        auto const formes = fewest_[rest] + formes_of_part, parts = parts_[rest] + 1;
        if (formes > fewest_[at] || (formes == fewest_[at] && parts > parts_[at])) continue;
        fewest_[at] = static_cast<std::uint8_t>(formes);
        parts_[at] = static_cast<std::uint8_t>(parts);
        first_[at] = static_cast<std::uint8_t>(part); // of equal choices the one with the largest part
      }
    }
  }
  /// Returns the fewest formes for a number of leaves, or `impossible`.
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
  constexpr void add_to(Plan& plan, int leaves) const {
    while (leaves > 0) {
      auto const part = first_[static_cast<std::size_t>(leaves)];
      Working working{0, part, Working::kind_of(part, sheet_, work_), {}};
      for (; leaves > 0 && first_[static_cast<std::size_t>(leaves)] == part; leaves -= part) ++working.times;
      plan.add(working);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
