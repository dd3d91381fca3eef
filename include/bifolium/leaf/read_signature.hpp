// SPDX-License-Identifier: MIT
/// Reading signatures. A mark is met in many spellings: 2C is CC or Cc, [par.] names what cannot be set, )( is
/// one symbol of two characters, a raised figure or π and χ before the letter tell a second use of the same letters apart.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/leaf/detail/scan_signature.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads one signature and nothing else. error: no_signature, text_goes_on and others, with the column.
constexpr Expected<Signature> read_signature(std::string_view text, Letters added = {}) {
  auto const scan = detail::SignatureScanner{text, added}.scan(0);
  auto const at = scan.end < text.size() ? scan.end : text.size();
  if (!scan)
    return error_at(scan.problem, 1, column_of(text, at), text.data() + at, text.size() - at,
                    scan.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple} : 23);
  if (at != text.size())
    return error_at(Problem::trailing_text, 1, column_of(text, at), text.data() + at, text.size() - at);
  return scan.signature;
}

} // namespace v0
} // namespace bifolium
