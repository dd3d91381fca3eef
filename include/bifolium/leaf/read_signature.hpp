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

namespace detail {
/// Finds the signature that the whole of a text is.
constexpr FoundSignature whole_mark(std::string_view text, Letters added) noexcept {
  TokenCursor c{text};
  auto found = c.token.spaced ? FoundSignature{} : SignatureReader{text, added}.take(c);
  std::size_t at = found.end < text.size() ? found.end : text.size();
  if (found) { // a Hebrew number is written with a sign after it that ends its direction
    while (at < text.size() && is_direction_sign(decode(text, at).value)) at += decode(text, at).bytes;
    if (at != text.size()) found.problem = Problem::trailing_text;
  }
  found.end = static_cast<std::uint32_t>(at);
  return found;
}
/// Returns a mark that a formula has only with its count or a leaf after it, because other words may be in such
/// parentheses: (a), (?), )o(, 2:. Returns no value for any other text.
constexpr std::optional<Signature> mark_before_count(std::string_view text, Letters added) {
  char counted[widest_name + 1]{};
  if (text.empty() || text.size() > widest_name || std::string_view{"():"}.find(text.back()) == text.npos)
    return std::nullopt;
  for (std::size_t i = 0; i < text.size(); ++i) counted[i] = text[i];
  counted[text.size()] = '1';
  std::string_view const with_leaf{counted, text.size() + 1};
  TokenCursor c{with_leaf};
  auto const found = c.token.spaced ? FoundSignature{} : SignatureReader{with_leaf, added}.take(c);
  return found && found.end == text.size() ? std::optional{signature_of(found.key, with_leaf, added)} : std::nullopt;
}
/// Returns the signature that the whole of a text is, or no value.
constexpr std::optional<Signature> signature_of_text(std::string_view text, Letters added) {
  auto const found = whole_mark(text, added);
  return found ? std::optional{signature_of(found.key, text, added)} : mark_before_count(text, added);
}
} // namespace detail

/// Reads a text that is one signature. `added` lists the letters used in addition to the 23. Errors: no_signature,
/// unknown_mark, mark_too_long, multiple_too_high, number_too_large, second_letter_is_place, trailing_text.
/// Example: `read_signature("Aa") == Signature::letter('A', 2)`.
constexpr Expected<Signature> read_signature(std::string_view text, Letters added = {}) {
  auto const found = detail::whole_mark(text, added);
  if (found) return signature_of(found.key, text, added);
  if (auto const mark = detail::mark_before_count(text, added)) return *mark;
  std::int64_t const limit = found.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple}
                             : found.problem == Problem::trailing_text   ? 0
                                                                         : 23;
  return error_of_text(text, error_in(text, {found.end, text.size()}, found.problem, limit));
}

} // namespace v0
} // namespace bifolium
