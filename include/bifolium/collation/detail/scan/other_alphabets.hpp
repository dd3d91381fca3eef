// SPDX-License-Identifier: MIT
/// Runs in alphabets that printers counted in several ways: Cyrillic letters, and Hebrew letters, which are numbers
/// (from memory). There is a warning with the number of gatherings that was counted.
#pragma once

#include <bifolium/collation/detail/scan/element_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true for a run that can be counted in several ways: Cyrillic letters past И, where some alphabets have Й or
/// І, and past Щ; Hebrew letters past י, which can be letters or the numbers from 20 on.
[[nodiscard]] constexpr bool is_unsettled(FoundElement const& e, FoundRun const& run) noexcept {
  auto const mark = run.first.mark();
  if (e.single) return false;
  if (mark == Mark::hebrew)
    return e.first.one_letter && e.last.one_letter && run.first.multiple < 20 && run.last.multiple >= 20;
  if (mark != Mark::cyrillic && mark != Mark::cyrillic_capital) return false;
  auto const passes = [&](int letter) { // comes after the first letter, and not after the last
    return run.first.multiple < run.last.multiple || (run.first.letter <= letter && run.last.letter > letter);
  };
  return passes(9) || passes(25) || passes(26) || passes(27) || passes(28);
}
/// Returns true for א-ת. No book has four hundred gatherings, so these are the letters of the alphabet and not numbers.
[[nodiscard]] constexpr bool is_hebrew_alphabet(FoundElement const& e) noexcept {
  return e.last.key.mark() == Mark::hebrew && !e.single && e.first.one_letter && e.last.one_letter &&
         e.first.key.multiple < 100 && e.last.key.multiple >= 100;
}
/// Returns the number of gatherings of a run. A run of the Hebrew alphabet has one for each letter: 1 to 10, tens,
/// hundreds.
[[nodiscard]] constexpr std::int64_t gatherings_of(FoundElement const& e) noexcept {
  constexpr auto place = [](std::uint32_t worth) {
    return std::int64_t{worth < 10 ? worth : worth < 100 ? 9 + worth / 10 : 18 + worth / 100};
  };
  return is_hebrew_alphabet(e) ? place(e.last.key.multiple) - place(e.first.key.multiple) + 1 : e.gatherings;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
