// SPDX-License-Identifier: MIT
/// Reads a place of printing: `London`, `Venetiis`, `Lugduni Batavorum`, `A Lyon`, `Eboracum [York]`, `Philadelphia
/// [that is, Frankfurt]`, `[Amsterdam?]`, `[S.l.]`. The reader knows 280 towns and the countries, in English, in Latin
/// and in the language of the place. The longest name has priority: Lugduni Batavorum is Leiden, and Lugduni alone is
/// Lyon or Leiden. The tables and their sources are in paper/detail.
///
/// Rules: DCRMR 5.21 (DCRM(B) 4B).
#pragma once

#include <bifolium/paper/detail/place_reader.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a statement of place. The place after `i.e.` or `that is` replaces the printed one. A name in brackets decides
/// an ambiguous name before it. If several places are named, the first counts; after `reprinted`, the last; of those with
/// `or` between them each can be meant. Words that do not name a place are listed in `unread`; if they can make a name that
/// of another place, as in `New London` or `Paris, Kentucky`, no place is meant. Errors: unknown_place, with the column, if the text names no known place
/// and does not say that the place is unknown; unexpected_end if the text has no word.
[[nodiscard]] inline Expected<StatedPlace> read_place(std::string_view text) {
  return read_characters(text, [](std::string_view plain) { return detail::PlaceReader{plain}.read(); });
}

} // namespace v0
} // namespace bifolium
