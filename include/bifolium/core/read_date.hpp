// SPDX-License-Identifier: MIT
/// Reading the date of a book as catalogues write it: `MDCCXXV [1725]`, `[ca. 1580?]`, `1785 [i.e. 1795]`, `1690/1`,
/// `[172-?]`, `18th century`, `[n.d.]`. Old and new rules, AACR2 and RDA, the fixed field of MARC 21 (`17uu`) and dealers
/// write the same thing in many ways; all of them give one range of years.
///
/// Rules: DCRMR 5.23 (DCRM(B) 4D), ISBD 4.3.4, MARC 21 field 008.
#pragma once

#include <bifolium/core/detail/date_reader.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of date. Words that do not tell of the year (day and month, the imprint's prose) are passed over and
/// listed in `unread`.
/// error: not_years where no year and no word such as `n.d.` is found; impossible_years for a range that ends before it
/// begins; with the column.
[[nodiscard]] constexpr Expected<StatedDate> read_date(std::string_view text) {
  return detail::DateReader{text}.read();
}

} // namespace v0
} // namespace bifolium
