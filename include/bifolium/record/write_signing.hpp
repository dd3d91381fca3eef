// SPDX-License-Identifier: MIT
/// Writes a statement of signing, in one notation: [$4 (−A3,4; +C5) signed; missigning V4 as 'U4'].
#pragma once

#include <bifolium/record/signing.hpp>

namespace bifolium {
inline namespace v0 {

/// Writes the statement in one notation. Reading it gives the same statement.
[[nodiscard]] inline std::string write_signing(Signing const& signing) {
  // a stroke distinguishes gathering 2 from leaf 2 of the gathering before it; 2: and 2)( are marks only before a
  // number
  auto const words = [](SigningPlace const& place) {
    auto const& mark = place.gathering;
    bool const needs_figure =
        mark.mark() == Mark::number || (mark.multiple() > 1 && (mark.text()[0] == ':' || mark.text()[0] == ')'));
    bool const bare = !place.any && !place.title && !place.leaf && needs_figure;
    return detail::place_words(place) + (bare ? "/" : "");
  };
  // a text with a quotation mark in it was read without quotation marks around it, and would end at its own
  auto const quoted = [](std::string const& printed) {
    for (std::size_t at = 0; at < printed.size(); at += decode(printed, at).bytes)
      if (is_quotation_mark(decode(printed, at).value)) return printed;
    return '\'' + printed + '\'';
  };
  std::string text{"[$"};
  if (signing.half) {
    text += "½";
    if (signing.beyond_half > 0) text += '+' + std::to_string(signing.beyond_half);
  } else if (signing.first)
    text += std::to_string(*signing.first);
  for (std::size_t i = 0; i < signing.listed.size(); ++i)
    text += (i > 0 ? "," : "") + std::to_string(signing.listed[i]);
  if (signing.of) text += " (of " + std::to_string(*signing.of) + ')';
  SigningException const* before = nullptr;
  for (auto const& exception : signing.exceptions) {
    bool const same_sign = before != nullptr && before->is_signed == exception.is_signed;
    bool const same_place = same_sign && before->place.leaf && exception.place.leaf &&
                            before->place.any == exception.place.any &&
                            before->place.gathering == exception.place.gathering;
    text += before == nullptr ? " (" : same_place ? "," : same_sign ? ", " : "; ";
    if (!same_sign) text += exception.is_signed ? "+" : "−";
    text += same_place ? std::to_string(*exception.place.leaf) : words(exception.place);
    before = &exception;
  }
  if (before != nullptr) text += text.back() == ':' ? " )" : ")"; // ":)" is a mark of its own
  text += " signed";
  constexpr char const* numerals[]{"", "; arabic numerals", "; roman numerals", "; roman and arabic numerals"};
  text += numerals[static_cast<std::size_t>(signing.numerals)];
  for (auto const& wrong : signing.missigned) {
    text += &wrong == signing.missigned.data() ? "; missigning " : ", ";
    text += words(wrong.place) + " as " + quoted(wrong.as);
  }
  return text + ']';
}

} // namespace v0
} // namespace bifolium
