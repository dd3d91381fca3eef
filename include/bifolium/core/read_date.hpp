// SPDX-License-Identifier: MIT
/// Reads the date of a book as catalogues write it: `MDCCXXV [1725]`, `[ca. 1580?]`, `1785 [i.e. 1795]`, `1690/1`,
/// `[172-?]`, `18th century`, `[n.d.]`. Cataloguing codes, old and new, the fixed field of MARC 21 (`17uu`) and dealers
/// write one date in many ways. The reader gives one range of years for all of them.
///
/// Rules: DCRMR 5.23 (DCRM(B) 4D), ISBD 4.3.4, MARC 21 field 008.
#pragma once

#include <bifolium/core/detail/typed_figures.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of date. Words that do not concern the year (day and month, the text of the imprint) are skipped
/// and listed in `unread`. Errors, each with its column: not_years if the text has no year and no word such as `n.d.`;
/// impossible_years if a range ends before it begins; other_era if the year is of another era (AH 1221, 1725 BC, -1725) and
/// no year of ours is beside it.
/// Example: `(*read_date("MDCXII")).years == 1612`.
[[nodiscard]] constexpr Expected<StatedDate> read_date(std::string_view text) {
  return read_characters(text, [](std::string_view plain) { return detail::date_of_characters(plain); });
}

} // namespace v0
} // namespace bifolium
