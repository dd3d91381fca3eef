// SPDX-License-Identifier: MIT
/// The part of UTF-8 that the library needs. Formulas contain raised digits (from three blocks of Unicode), three kinds
/// of degree sign and five kinds of dash. Bytes are decoded one character at a time. Columns in messages count
/// characters, because people count characters.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/broken.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// One character of a text and the number of its bytes. A byte that does not begin a valid character is `malformed`,
/// with a length of one byte.
struct CodePoint {
  /// the code point; U+FFFD if the bytes are not a character
  char32_t value{};
  std::uint8_t bytes{}; ///< the number of bytes in the text
  bool malformed{};     ///< true if the bytes are not a character
  friend constexpr bool operator==(CodePoint const&, CodePoint const&) = default;
};

/// Returns the character that begins at byte `at`. Overlong forms, surrogates and values above U+10FFFF are malformed.
/// Precondition: at < text.size().
constexpr CodePoint decode(std::string_view text, std::size_t at) noexcept {
  auto const byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  unsigned const first = byte(at);
  if (first < 0x80) return {first, 1, false};
  std::uint8_t const bytes = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
  CodePoint const wrong{0xFFFD, 1, true};
  if (first < 0xC2 || first > 0xF4 || text.size() - at < bytes) return wrong;
  char32_t value = first & (0x7FU >> bytes);
  for (std::size_t i = 1; i < bytes; ++i) {
    if (!continues_character(text[at + i])) return wrong;
    value = (value << 6U) | (byte(at + i) & 0x3FU);
  }
  bool const overlong = bytes == 3 ? value < 0x800 : bytes == 4 && value < 0x10000;
  if (overlong || value > 0x10FFFF || (value >= 0xD800 && value < 0xE000)) return wrong;
  return {value, bytes, false};
}

/// Writes `value` as UTF-8 into `out`, which has room for 4 bytes, and returns the number of bytes written.
/// Precondition: `value` is a Unicode scalar value.
constexpr std::size_t encode(char32_t value, char* out) noexcept {
  auto const put = [&](std::size_t i, char32_t bits) { out[i] = static_cast<char>(static_cast<unsigned char>(bits)); };
  if (value < 0x80) return put(0, value), 1;
  if (value < 0x800) return put(0, 0xC0U | (value >> 6U)), put(1, 0x80U | (value & 0x3FU)), 2;
  if (value < 0x10000)
    return put(0, 0xE0U | (value >> 12U)), put(1, 0x80U | ((value >> 6U) & 0x3FU)), put(2, 0x80U | (value & 0x3FU)), 3;
  return put(0, 0xF0U | (value >> 18U)), put(1, 0x80U | ((value >> 12U) & 0x3FU)),
         put(2, 0x80U | ((value >> 6U) & 0x3FU)), put(3, 0x80U | (value & 0x3FU)), 4;
}

/// Returns the column of byte `at` in the line that begins at byte `line_start`. Columns count characters from 1.
constexpr std::uint32_t column_of(std::string_view text, std::size_t at, std::size_t line_start = 0) noexcept {
  std::uint32_t column = 1;
  for (std::size_t i = line_start; i < at && i < text.size(); i += decode(text, i).bytes) ++column;
  return column;
}

/// Returns the value of a raised digit (⁰ ¹ ² ³ ⁴ ... ⁹), or no value for any other character.
constexpr std::optional<int> superscript_digit(char32_t c) noexcept {
  switch (c) {
  case 0x2070:
    return 0;
  case 0x00B9:
    return 1;
  case 0x00B2:
    return 2;
  case 0x00B3:
    return 3;
  default:
    if (c < 0x2074 || c > 0x2079) return std::nullopt;
    return static_cast<int>(c - 0x2070);
  }
}
/// A raised digit in a text.
struct RaisedDigit {
  int digit{};           ///< its value
  std::uint32_t bytes{}; ///< the number of its bytes, 0 if there is none
  friend constexpr bool operator==(RaisedDigit, RaisedDigit) = default;
};
/// Returns the raised digit that begins at byte `at`. Half the bytes of a formula are raised digits, so that they are
/// not decoded as other characters are: their bytes are C2 and one more, or E2 81 and one more.
[[gnu::always_inline]] constexpr RaisedDigit raised_digit_at(std::string_view text, std::size_t at) noexcept {
  auto const byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  auto const lead = byte(at);
  if (lead != 0xC2 && lead != 0xE2) return {};
  auto const second = byte(at + 1);
  if (lead == 0xE2 && second != 0x81) return {};
  auto const digit = superscript_digit(lead == 0xC2 ? second : 0x2040U + (byte(at + 2) - 0x80U));
  return digit ? RaisedDigit{*digit, lead == 0xC2 ? 2U : 3U} : RaisedDigit{};
}
/// Returns the value of a lowered digit (₀ to ₉), or no value for any other character.
constexpr std::optional<int> subscript_digit(char32_t c) noexcept {
  if (c < 0x2080 || c > 0x2089) return std::nullopt;
  return static_cast<int>(c - 0x2080);
}
/// Returns a digit as a raised digit. Precondition: 0 to 9.
constexpr char32_t superscript(int digit) {
  if (digit < 0 || digit > 9) broken("a digit must be from 0 to 9");
  constexpr char32_t raised[]{0x2070, 0x00B9, 0x00B2, 0x00B3, 0x2074, 0x2075, 0x2076, 0x2077, 0x2078, 0x2079};
  return raised[static_cast<std::size_t>(digit)];
}
/// Returns a digit as a lowered digit. Precondition: 0 to 9.
constexpr char32_t subscript(int digit) {
  if (digit < 0 || digit > 9) broken("a digit must be from 0 to 9");
  return 0x2080 + static_cast<char32_t>(digit);
}
/// Returns true for ° and for the two characters that records have in its place: º (masculine ordinal) and ⁰ (raised
/// zero).
constexpr bool is_degree_sign(char32_t c) noexcept { return c == 0x00B0 || c == 0x00BA || c == 0x2070; }
/// Returns true for a hyphen or a dash of any kind: people write any of them between the ends of a run of signatures.
constexpr bool is_dash(char32_t c) noexcept {
  return c == '-' || (c >= 0x2010 && c <= 0x2015); // also the figure dash and the horizontal bar
}
/// Returns true for ' and ", straight or curved, low („) or angular («): people write any of them around a quotation.
constexpr bool is_quotation_mark(char32_t c) noexcept {
  return c == '\'' || c == '"' || (c >= 0x2018 && c <= 0x201F) || c == 0xAB || c == 0xBB || c == 0x2039 || c == 0x203A;
}
/// Returns true for ' " ‘ “ ‚ „ « » ‹ ›, which can begin a quoted signature mark. Returns false for ’, which is also
/// the apostrophe.
constexpr bool opens_quotation(char32_t c) noexcept {
  return is_quotation_mark(c) && c != 0x2019 && c != 0x201B && c != 0x201D && c != 0x201F;
}
/// Returns true if `c` ends what `open` begins: ‘A’ and “A” as in English, „A“ and »A« as in German, «A» as in French
/// and Italian.
constexpr bool ends_quotation(char32_t open, char32_t c) noexcept {
  switch (open) {
  case 0x2018: // ‘
    return c == 0x2019;
  case 0x201C: // “
    return c == 0x201D;
  case 0x201A: // ‚
    return c == 0x2018 || c == 0x2019;
  case 0x201E: // „
    return c == 0x201C || c == 0x201D;
  case 0xAB: // «
    return c == 0xBB;
  case 0xBB: // »
    return c == 0xAB;
  case 0x2039: // ‹
    return c == 0x203A;
  case 0x203A: // ›
    return c == 0x2039;
  default:
    return c == open;
  }
}
/// Returns true for a blank, a tab, a no-break space and the thin spaces that typesetters put between elements. Line
/// breaks are not blanks here; `TextCursor::take_blanks` takes them as well.
constexpr bool is_blank(char32_t c) noexcept {
  return c == ' ' || c == '\t' || c == 0x00A0 || c == 0x202F || (c >= 0x2000 && c <= 0x200A);
}

/// Returns true for a blank or a line break.
constexpr bool is_space(char32_t c) noexcept { return is_blank(c) || c == '\n' || c == '\r'; }
/// Returns the number of bytes of the blank or line break that begins at byte `at`, or 0 if there is none.
constexpr std::size_t blank_at(std::string_view text, std::size_t at) noexcept {
  if (at >= text.size()) return 0;
  auto const byte = static_cast<unsigned char>(text[at]);
  if (byte > ' ') { // most bytes are letters and figures; the blanks that are not ASCII begin with C2 A0 or E2 80
    auto const second = static_cast<unsigned char>(at + 1 < text.size() ? text[at + 1] : '\0');
    if (byte == 0xC2 ? second != 0xA0 : byte != 0xE2 || second != 0x80) return 0;
  }
  auto const c = byte < 0x80 ? CodePoint{byte, 1} : decode(text, at);
  return is_space(c.value) ? c.bytes : 0U;
}
/// Returns the number of bytes of the blank or line break that ends before byte `at`, or 0 if there is none.
constexpr std::size_t blank_before(std::string_view text, std::size_t at) noexcept {
  for (std::size_t bytes = 1; bytes <= 3 && bytes <= at; ++bytes) // no blank has more
    if (blank_at(text, at - bytes) == bytes) return bytes;
  return 0;
}
/// Returns the position after all blanks and line breaks at byte `at`: `at` itself if there are none.
constexpr std::size_t after_blanks(std::string_view text, std::size_t at) noexcept {
  while (auto const bytes = blank_at(text, at)) at += bytes;
  return at;
}
/// Returns the position at which the blanks and line breaks begin that end before byte `at`: `at` itself if there are
/// none.
constexpr std::size_t before_blanks(std::string_view text, std::size_t at) noexcept {
  while (auto const bytes = blank_before(text, at)) at -= bytes;
  return at;
}

/// Returns true for a character that a terminal or a page obeys and does not show: control characters, ends of lines and
/// paragraphs, and those that turn the direction of the text after them (Unicode Standard Annex 9: embeddings, overrides,
/// isolates). The marks of direction U+200E and U+200F are none: they only stand beside a letter, as after a signature in Hebrew
/// letters.
constexpr bool is_control_character(char32_t c) noexcept {
  return c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0x2028 && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}
/// Returns true for a character that leaves no trace where it stands: one that is obeyed, a soft hyphen, a blank or a joiner
/// without width, a mark of direction, a tag.
constexpr bool is_invisible(char32_t c) noexcept {
  return is_control_character(c) || c == 0xAD || (c >= 0x200B && c <= 0x200F) || (c >= 0x2060 && c <= 0x206F) ||
         c == 0x061C || c == 0xFEFF || (c >= 0xFFF9 && c <= 0xFFFB) || (c >= 0xE0000 && c <= 0xE007F);
}
/// Returns the character that begins at byte `at` as a message shows it, so that the message stays one line of UTF-8 that reads in
/// its own direction, and hides nothing: a blank for a tab or a line break, U+FFFD for another control character, for a character
/// without a trace and for a byte that belongs to no character, the character itself for all others, and for the marks of
/// direction and joiners that words of other scripts need. Precondition: at < text.size().
constexpr std::string_view shown_character(std::string_view text, std::size_t at) noexcept {
  auto const c = decode(text, at);
  if (c.value == '\t' || c.value == '\n' || c.value == '\r') return " ";
  bool const of_words = c.value >= 0x200C && c.value <= 0x200F;
  return c.malformed || (is_invisible(c.value) && !of_words) ? "\xEF\xBF\xBD" : text.substr(at, c.bytes);
}

} // namespace v0
} // namespace bifolium
