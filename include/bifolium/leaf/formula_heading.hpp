// SPDX-License-Identifier: MIT
/// The words before a formula: "Signatures:", "Collation formula:", "Segn.:". A note of signatures begins with one of
/// them, and so does a formula that was copied with it; both are read with this table.
///
/// Words: DCRMR 6.215.44 (Signatures, Collation); those of other languages and the abbreviations are common practice, no
/// source.
#pragma once

#include <bifolium/core/text_cursor.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Takes the words at the cursor that come before a formula, in capitals or small letters, with the full stop of an
/// abbreviation, but not the colon after them. Returns the number of bytes taken, or no value if there is none.
constexpr std::optional<std::size_t> take_formula_heading(TextCursor& cursor) noexcept {
  using namespace std::string_view_literals;
  constexpr std::string_view words[]{"signature statement"sv,
                                     "signature formula"sv,
                                     "signature collation"sv,
                                     "signatures"sv,
                                     "signature"sv,
                                     "signaturformel"sv,
                                     "signat."sv,
                                     "signed"sv,
                                     "sign."sv,
                                     "sigs."sv,
                                     "sigs"sv,
                                     "sig."sv,
                                     "sig"sv,
                                     "collational formula"sv,
                                     "collation formula"sv,
                                     "collation by signatures"sv,
                                     "collation by gatherings"sv,
                                     "collation"sv,
                                     "collates"sv,
                                     "coll."sv,
                                     "coll"sv,
                                     "formula"sv,
                                     "register"sv,
                                     "registro"sv,
                                     "registre"sv,
                                     "reg."sv,
                                     "kollation"sv,
                                     "koll."sv,
                                     "lagenformel"sv,
                                     "lagen"sv,
                                     "signaturen"sv,
                                     "collatieformule"sv,
                                     "katernformule"sv,
                                     "bogensignaturen"sv,
                                     "bogensignatur"sv,
                                     "segnature"sv,
                                     "segnatura"sv,
                                     "segn."sv,
                                     "signaturas"sv};
  auto const initial = small_letter(cursor.peek());
  for (auto const word : words) {
    if (initial != word[0]) continue; // most begin otherwise
    auto next = cursor;
    if (!next.take_in_any_case(word) || (word.back() != '.' && is_latin_letter(next.peek()))) continue;
    cursor = next;
    return word.size();
  }
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
