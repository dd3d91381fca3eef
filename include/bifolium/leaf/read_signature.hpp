// SPDX-License-Identifier: MIT
/// Reading and writing signatures. A mark is met in many spellings: 2C is CC or Cc, [par.] names what cannot be set, )( is
/// one symbol of two characters, a raised figure or π and χ before the letter tell a second use of the same letters apart.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/leaf/scan_signature.hpp>

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
    return error_at(Problem::text_goes_on, 1, column_of(text, at), text.data() + at, text.size() - at);
  return scan.signature;
}

/// The signature as bibliographers write it: 2B, ²πA, [par.]. At most 64 bytes.
constexpr ShortText<64> to_text(Signature const& signature) {
  ShortText<64> text;
  signature.spell(
      [&](char const* bytes, std::size_t size) {
        text.append({bytes, size});
      },
      [&](int figure) { text.append(raised(figure)); });
  return text;
}

} // namespace v0
} // namespace bifolium
