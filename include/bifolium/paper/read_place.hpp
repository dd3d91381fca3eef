// SPDX-License-Identifier: MIT
/// Reading a place of printing: `London`, `Venetiis`, `Lugduni Batavorum`, `A Lyon`, `Eboracum [York]`,
/// `Philadelphia [that is, Frankfurt]`, `[Amsterdam?]`, `[S.l.]`. 280 towns and the countries are known, in English, in
/// Latin and in the languages of the place; the longest name wins, so that Lugduni Batavorum is Leiden and Lugduni alone
/// is Lyon or Leiden. The tables and their sources are in paper/detail.
///
/// Rules: DCRMR 5.21 (DCRM(B) 4B).
#pragma once

#include <bifolium/paper/detail/place_reader.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of place. The true place after `i.e.` or `that is` wins over what is printed; a name in brackets
/// settles an ambiguous name before it; of several places the first counts, after `reprinted` the last. Words that name no
/// place are listed in `unread`.
/// error: unknown_place, with the column, where the text names no place that is known and does not say that none is;
/// unexpected_end for a text without a word.
[[nodiscard]] inline Expected<StatedPlace> read_place(std::string_view text) {
  return detail::PlaceReader{text}.read();
}

} // namespace v0
} // namespace bifolium
