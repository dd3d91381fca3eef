// SPDX-License-Identifier: MIT
/// Reads the size of a record: `19 cm (8vo)`, `20 x 32 cm`, `24-28 cm`, `12 cm bound to 20 cm`, `95 x 120 mm`, `7 1/2
/// in.`, `In-16° (mm 123x95)`.
///
/// Rules: DCRMR 6.24 (DCRM(B) 5D): centimetres are rounded up, and so are millimetres under 10 cm. Dealers round
/// millimetres to the nearest one; the reader assumes this for 100 mm and more. That inches are exact to half of their
/// smallest part is our convention.
#pragma once

#include <bifolium/record/detail/size_reader.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of size. `unit` is the unit of a number that stands alone, as in a column of millimetres; one with a
/// word after it that is no known unit, or with another number, is refused. Text that does not belong to the size is listed
/// in `unread`. Errors, with the column: not_a_length, size_of_no_leaf, unit_missing, unknown_unit, not_positive,
/// number_too_large.
[[nodiscard]] inline Expected<SizeStatement> read_size(std::string_view text, std::optional<SheetUnit> unit = {}) {
  return read_characters(text, [&](std::string_view plain) { return detail::SizeReader{plain, unit}.read(); });
}

} // namespace v0
} // namespace bifolium
