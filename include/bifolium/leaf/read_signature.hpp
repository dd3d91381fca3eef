// SPDX-License-Identifier: MIT
/// Reads signatures. One mark has many spellings: 2C is also CC or Cc; [par.] names a symbol that cannot be typeset; )(
/// is one symbol of two characters. A raised digit, or π or χ, before a letter marks another use of the same letters.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/leaf/signature_reader.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads a text that is one signature. `added` lists the letters used in addition to the 23. Errors: no_signature,
/// unknown_mark, mark_too_long, multiple_too_high, number_too_large, second_letter_is_place, trailing_text.
/// Example: `read_signature("Aa") == Signature::letter('A', 2)`.
constexpr Expected<Signature> read_signature(std::string_view text, Letters added = {}) {
  TokenCursor c{text};
  auto const found = c.token.spaced ? FoundSignature{} : SignatureReader{text, added}.take(c);
  std::size_t at = found.end < text.size() ? found.end : text.size();
  if (!found)
    return error_of_text(
        text, error_in(text, {at, text.size()}, found.problem,
                       found.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple} : 23));
  // a Hebrew number is written with a sign after it that ends its direction
  while (at < text.size() && detail::is_direction_sign(decode(text, at).value)) at += decode(text, at).bytes;
  if (at != text.size()) return error_of_text(text, error_in(text, {at, text.size()}, Problem::trailing_text));
  return signature_of(found.key, text, added);
}

} // namespace v0
} // namespace bifolium
