// SPDX-License-Identifier: MIT
/// Reads the extent of a record: "[8], 205, [3] p.", "[2], 152 leaves", "xii pages, 1 l., 340 pages, [2] leaves of
/// plates (1 folded)", "3 v. in 2", "2 volumes (vi, 200, [4] pages, CCC leaves of plates)". Old and new rules,
/// catalogue cards and dealers use different abbreviations. All are read to one value, and text that does not belong to
/// the extent is listed as unread.
///
/// Rules: DCRMR 6.21 (DCRM(B) 5B).
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/record/extent.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads an extent, or a statement that begins with its unit (pp. [viii], [554]). A unit applies to the numbers between
/// the unit before it and itself. A dash after a number in brackets makes a range whose first page bears no number
/// ("[3]-40 p."), but after an even number that does not continue the numbers before it, it parts two sequences
/// ("[8]-320 p." is 328 pages), with the doubt bracket_read_as_count. A correction ("[i.e. 271]", "[that is, 271]")
/// replaces the number before it. `;` separates volumes. Text after the extent (illustrations, size, notes) is listed
/// in `unread`. Errors, with the column: not_an_extent, number_too_large, unit_of_pages_missing and
/// not_a_unit_of_pages if no unit follows the numbers, and the limits of core/limits.hpp.
[[nodiscard]] BIFOLIUM_INLINE Expected<Extent> read_extent(std::string_view text, Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/record/detail/read_extent.hpp>
#endif
