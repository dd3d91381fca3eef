// SPDX-License-Identifier: MIT
/// Reads numbered gatherings whose raised counts are typed on the line: 1-210 312 4-1010 for 1-2¹⁰ 3¹² 4-10¹⁰. One such
/// run alone cannot be separated (12-204). But the numbers of a book are consecutive, so the runs before and after it
/// show where the number ends. It is separated only if exactly one place is possible.
#pragma once

#include <bifolium/collation/detail/scan/element_reader.hpp>
#include <bifolium/collation/detail/scan/scan_plain.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class NumberReader : protected ElementReader {
protected:
  using ElementReader::ElementReader;

  /// Separates numbers and count of the run `e` if its numbers begin with `expected`. `known` is true after a run of
  /// numbers.
  constexpr bool part_numbers(FoundElement& e, std::uint32_t expected, bool known) const {
    auto c = cursor(e.from);
    auto const first = c.token;
    c.take();
    bool const ranged = c.touches(TokenKind::dash);
    if (ranged) c.take();
    auto const last = ranged ? c.token : first;
    bool const figures = last.is_flat_figure() && !(ranged && last.spaced) && last.to - last.from <= 9;
    if (!figures || (ranged && first.value != expected)) return false;
    std::uint32_t found = 0, leaves = 0;
    for (auto k = last.from + 1; k < last.to; ++k) {
      auto const number = value(last.from, k), count = count_of(k, last.to);
      if (count == 0 || (ranged ? number <= expected : number != expected)) continue;
      auto const said = next_run(cursor(last.to), number + 1);
      if (said == Next::breaks || (said == Next::other && !known)) continue;
      if (found != 0) return false; // two places are possible
      found = number, leaves = count;
    }
    if (found == 0) return false;
    e.first.key = SignatureKey::of(Mark::number, 0, expected);
    e.last.key = SignatureKey::of(Mark::number, 0, found);
    e.gatherings = std::int64_t{found} - expected + 1;
    e.single = !ranged;
    e.count.cycle = Cycle{static_cast<int>(leaves)};
    e.end = e.count.end = last.to;
    e.by_sequence = true;
    return true;
  }

private:
  enum class Next : std::uint8_t { other, continues, breaks };

  /// Returns the number in these bytes, or 0 if it has more digits than the number of a gathering can have.
  [[nodiscard]] constexpr std::uint32_t value(std::uint32_t from, std::uint32_t end) const noexcept {
    if (end == from || end - from > 6 || at(from) == '0') return 0;
    std::uint32_t number = 0;
    for (auto k = from; k < end; ++k) number = number * 10 + static_cast<std::uint32_t>(at(k) - '0');
    return number;
  }
  /// Returns a count that gatherings can have: even or one, and not more than are folded together.
  [[nodiscard]] constexpr std::uint32_t count_of(std::uint32_t from, std::uint32_t end) const noexcept {
    auto const leaves = value(from, end);
    return leaves == 1 || (leaves != 0 && leaves % 2 == 0 && leaves <= thick_gathering) ? leaves : 0;
  }
  /// Returns what the next run is: one that begins with `number`, one that begins with another number, or no run of
  /// numbers.
  [[nodiscard]] constexpr Next next_run(TokenCursor c, std::uint32_t number) const {
    for (;;) {
      if (c.at(TokenKind::open_round)) {
        auto const close = closing_round(c);
        if (close == 0) return Next::other;
        c = cursor(close + 1U);
      } else if (is_separator(c.token))
        c.take();
      else
        break;
    }
    if (!c.is_flat_figure() || is_extent(c)) return Next::other;
    auto const figures = c.token;
    c.take();
    auto p = c;
    bool const on_the_line = !c.touches(TokenKind::dash) && !take_count(p, false).found();
    for (auto k = figures.from + 1; k <= figures.to; ++k)
      if (value(figures.from, k) == number && (on_the_line ? count_of(k, figures.to) != 0 : k == figures.to))
        return Next::continues;
    return Next::breaks;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
