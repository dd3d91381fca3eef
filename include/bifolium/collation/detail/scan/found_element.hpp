// SPDX-License-Identifier: MIT
/// What the reader of a run finds in the text: the signatures of its ends, its count, and the notation of both. What
/// the run means in the formula is decided by the grammar.
#pragma once

#include <bifolium/collation/detail/scan/count_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run with its count, if it has one, or the reason why there is none.
struct FoundElement {
  FoundSignature first{}, last{};
  FoundCount count{};
  FoundCount said{}; ///< the count in words that follows another count: K4, in eights
  std::int64_t gatherings{1};
  std::uint32_t from{}, end{};
  bool apart{};                   ///< true if blanks come before the count
  bool single{true};              ///< true if there is no dash
  bool read_flat{};               ///< true if 2A-G was read as ²A-G
  bool by_sequence{};             ///< 1-210: number and count were separated with the help of the neighbouring runs
  bool first_counted{};           ///< A⁸-E⁸: the first end has its own count
  bool roman{};                   ///< (i-iiii): its numbers are Roman numerals
  bool mixed{};                   ///< 2A-CC: later alphabets are written in two ways
  bool half_enclosed{};           ///< (A)-K: one end alone is in parentheses
  bool in_brackets{};             ///< [a-b]⁴ in an insertion: no gathering of the run is signed
  Problem problem{Problem::none}; ///< why the ends make no run
};

/// Returns the number of leaves if the count of one gathering is a list of its leaves, m1-3, π1,2 or π1.2: nothing
/// alternates in a single gathering. Returns 0 if it is no such list.
[[nodiscard]] constexpr int leaves_listed(FoundElement const& e) noexcept {
  auto const& terms = e.count.cycle;
  if (!e.single || terms.size() < 2) return 0;
  if (e.count.hyphen && terms.size() == 2 && terms.term(0) < terms.term(1)) return terms.term(1) - terms.term(0) + 1;
  for (std::size_t i = 0; i < terms.size(); ++i)
    if (terms.term(i) != static_cast<int>(i) + 1) return 0;
  return static_cast<int>(terms.size());
}
/// Returns true if the figure of A-H3, in fours, may be the last leaf that is signed: it is on the line, and lower than the
/// count in words after it.
[[nodiscard]] constexpr bool may_be_signed_leaf(FoundElement const& e) noexcept {
  auto const& figures = e.count.cycle;
  return e.count.sound() && e.count.flat && figures.size() == 1 && e.said.sound() &&
         figures.term(0) < e.said.cycle.term(0);
}
/// Returns the leaves that the count of an element gives to its gatherings.
[[nodiscard]] constexpr Cycle leaves_of_count(FoundElement const& e) noexcept {
  auto const listed = leaves_listed(e);
  return listed != 0 ? Cycle{listed} : e.count.cycle;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
