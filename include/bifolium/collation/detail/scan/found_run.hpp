// SPDX-License-Identifier: MIT
/// The data that the grammar passes to the resolver, and the resolver to a sink: a run with the signatures of its ends
/// as found in the text, a gathering that a change names, and a doubt with its bytes.
#pragma once

#include <bifolium/collation/parts.hpp>
#include <bifolium/core/ascii.hpp>
#include <bifolium/core/problem.hpp>
#include <bifolium/leaf/signature_key.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// More leaves than are folded together; with counts on the line perhaps two that take turns, run together (A-K84).
inline constexpr int thick_gathering = 48;
/// The most gatherings of one inserted run. A change is stored for each, so a few bytes must not make thousands.
inline constexpr int most_inserted_gatherings = 99;

/// A run whose names are of no meaning without the text.
struct FoundRun {
  SignatureKey first{}, last{};
  std::int64_t gatherings{1};
  Cycle leaves{};
  bool first_inferred{}, last_inferred{}, unsigned_throughout{}, begins_part{};
};
/// Returns true for I-V, I-X and I-L: at the beginning of a series these may be letters or Roman numerals. Other runs
/// have an end that is no numeral, or end before they begin.
[[nodiscard]] constexpr bool may_be_roman_run(SignatureKey first, SignatureKey last) noexcept {
  bool const numeral = last.letter == 12 || last.letter == Alphabet::v || last.letter == 24; // L, V, X
  return first.letter == 9 && first.multiple == 1 && numeral && last.multiple == 1 && first.is_plain_latin();
}
/// A gathering that a change names.
struct Target {
  GatheringAt gathering{};
  std::int64_t ordinal{}; ///< number of the gathering in the book, from 0
  int leaves{};           ///< as folded
  bool other_series{};    ///< true if its name has a raised digit, π or χ that was not written
};
/// A doubt or an error, with its bytes in the text.
struct Doubt {
  Problem problem{};
  std::uint32_t from{}, to{};
  std::int64_t limit{};

  /// Returns the doubt with a whole number of characters of the text.
  [[nodiscard]] constexpr Doubt of_whole_characters(std::string_view text) const noexcept {
    auto end = to;
    while (end > from && end < text.size() && continues_character(text[end])) --end;
    return {problem, from, end > from ? end : from, limit};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
