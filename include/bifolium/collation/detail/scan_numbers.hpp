// SPDX-License-Identifier: MIT
/// Numbered gatherings whose raised counts have sunk to the line: 1-210 312 4-1010 for 1-2¹⁰ 3¹² 4-10¹⁰. One such run by
/// itself cannot be parted (12-204), but the numbers of a book run on without a gap, so the runs before and behind it say
/// where the number ends. It is parted only where just one place is left.
#pragma once

#include <bifolium/collation/detail/formula_text.hpp>
#include <bifolium/collation/detail/scan_plain.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run of numbers parted from its count; `leaves` is 0 where it cannot be.
struct PartedNumbers {
  std::uint32_t first{}, last{};
  int leaves{};
  std::size_t end{};
  bool ranged{};
};

class NumberScanner {
  FormulaText const& text_;

  struct Figures {
    std::size_t from{}, end{};
  };
  [[nodiscard]] constexpr Figures figures(std::size_t i) const noexcept {
    auto end = i;
    while (is_digit(text_.at(end))) ++end;
    return {i, end};
  }
  /// The number in these bytes; 0 for what is longer than any number of a gathering.
  [[nodiscard]] constexpr std::uint32_t value(std::size_t from, std::size_t end) const noexcept {
    if (end == from || end - from > 6 || text_.at(from) == '0') return 0;
    std::uint32_t number = 0;
    for (auto k = from; k < end; ++k) number = number * 10 + static_cast<std::uint32_t>(text_.at(k) - '0');
    return number;
  }
  /// A count as gatherings have it: even or one, and no thicker than is folded together.
  [[nodiscard]] constexpr int count(std::size_t from, std::size_t end) const noexcept {
    auto const leaves = value(from, end);
    return leaves == 1 || (leaves != 0 && leaves % 2 == 0 && leaves <= thick_gathering) ? static_cast<int>(leaves) : 0;
  }
  [[nodiscard]] constexpr std::size_t behind_dash(std::size_t i) const noexcept {
    return is_dash(text_.code(i)) ? i + decode(text_.view(), i).bytes : i;
  }
  enum class Next : std::uint8_t { other, goes_on, breaks };
  /// What the next run says: it begins with `number`, with another number, or is no run of numbers.
  [[nodiscard]] constexpr Next next(std::size_t i, std::uint32_t number) const {
    for (;;) {
      i = text_.skip(i);
      char const c = text_.at(i);
      if (c == '(') {
        auto const close = text_.closing(i);
        if (close == std::string_view::npos) return Next::other;
        i = close + 1;
      } else if (c == ',' || c == ';' || c == '.')
        ++i;
      else
        break;
    }
    auto const run = figures(i);
    if (run.end == run.from || text_.is_extent(i)) return Next::other;
    bool const ranged = behind_dash(run.end) != run.end,
               on_the_line = !ranged && !CountScanner{text_.view()}.scan(run.end, false, false).found();
    for (auto k = run.from + 1; k <= run.end; ++k)
      if (value(run.from, k) == number && (on_the_line ? count(k, run.end) != 0 : k == run.end)) return Next::goes_on;
    return Next::breaks;
  }

public:
  constexpr explicit NumberScanner(FormulaText const& text) noexcept : text_{text} {}

  /// The run at byte `i`, if its numbers begin with `expected`. `known`: a run of numbers came before.
  [[nodiscard]] constexpr PartedNumbers scan(std::size_t i, std::uint32_t expected, bool known) const {
    auto const first = figures(i);
    auto const to = behind_dash(first.end);
    bool const ranged = to != first.end;
    auto const last = ranged ? figures(to) : first;
    if (last.end == last.from || last.end - last.from > 9 || (ranged && value(first.from, first.end) != expected))
      return {};
    PartedNumbers found;
    for (auto k = last.from + 1; k < last.end; ++k) {
      auto const number = value(last.from, k);
      auto const leaves = count(k, last.end);
      if (leaves == 0 || (ranged ? number <= expected : number != expected)) continue;
      auto const said = next(last.end, number + 1);
      if (said == Next::breaks || (said == Next::other && !known)) continue;
      if (found.leaves != 0) return {}; // two places are left
      found = {expected, number, leaves, last.end, ranged};
    }
    return found;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
