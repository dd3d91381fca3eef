// SPDX-License-Identifier: MIT
#include <bifolium/core/message.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/utf8.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("every scalar value of Unicode is read back from its own encoding") {
  char bytes[4];
  for (char32_t c = 0; c <= 0x10FFFF; ++c) {
    if (c >= 0xD800 && c < 0xE000) continue;
    auto const size = encode(c, bytes);
    auto const back = decode({bytes, size}, 0);
    REQUIRE(back.value == c);
    REQUIRE(back.bytes == size);
    REQUIRE(!back.malformed);
  }
}

TEST_CASE("ill-formed sequences are one malformed byte") {
  // RFC 3629 sections 3 and 10: overlong forms, surrogates, beyond U+10FFFF, a lone continuation, a cut sequence
  for (char const* text :
       {"\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\x80", "\xE2\x81", "\xFF"}) {
    auto const c = decode(text, 0);
    CHECK(c.malformed);
    CHECK(c.bytes == 1);
  }
}

TEST_CASE("raised digits come from three blocks") {
  // The Unicode Standard: U+00B2, U+00B3, U+00B9 (Latin-1 Supplement); U+2070, U+2074-2079 (Superscripts)
  STATIC_CHECK(superscript_digit(U'\u00B2') == 2 && superscript_digit(U'\u00B9') == 1);
  STATIC_CHECK(superscript_digit(U'\u2078') == 8 && !superscript_digit(U'\u2071'));
  for (int digit = 0; digit < 10; ++digit) CHECK(superscript_digit(superscript(digit)) == digit);
}

TEST_CASE("raised digits and blanks are found in the bytes of a text as by the character that these bytes are") {
  char bytes[4];
  for (char32_t c = 0; c <= 0x10FFFF; ++c) {
    if (c >= 0xD800 && c < 0xE000) continue;
    std::string_view const text{bytes, encode(c, bytes)};
    auto const digit = superscript_digit(c);
    auto const raised = digit ? RaisedDigit{*digit, static_cast<std::uint32_t>(text.size())} : RaisedDigit{};
    REQUIRE((raised_digit_at(text, 0) == raised && blank_at(text, 0) == (is_space(c) ? text.size() : 0)));
    bool found = false; // cut, they are no character
    for (std::size_t size = 0; size < text.size(); ++size)
      found = found || raised_digit_at(text.substr(0, size), 0).bytes != 0 || blank_at(text.substr(0, size), 0) != 0;
    REQUIRE(!found);
  }
  for (std::string_view const text : {"\xE2\x81 ", "\xE2\x81\xFF", "\xC2 ", "\xC2\xFF", "\xE2\x80 "}) {
    CHECK(raised_digit_at(text, 0) == RaisedDigit{});
    CHECK(blank_at(text, 0) == 0);
  }
  STATIC_CHECK(raised_digit_at("A¹⁶", 1) == RaisedDigit{1, 2} && raised_digit_at("A¹⁶", 3) == RaisedDigit{6, 3});
  STATIC_CHECK(raised_digit_at("A⁸", 4) == RaisedDigit{} && raised_digit_at("A⁸", 0) == RaisedDigit{});
}

TEST_CASE("columns count characters, not bytes") {
  STATIC_CHECK(column_of("A⁸B", 4) == 3);
  STATIC_CHECK(column_of("x\nA⁸", 3, 2) == 2);
}

TEST_CASE("short text and errors never hold half a character") {
  ShortText<4> text;
  CHECK_FALSE(text.assign("ab⁸"));
  CHECK(text == "ab");
  auto const error = error_at(Problem::no_such_piece, TextPlace{2, 14}, "abcdefghijklmnopqrstuv⁸");
  CHECK(std::string{error.found} == "abcdefghijklmnopqrstuv");
  CHECK(message(error) == "line 2, column 14: no piece has the name 'abcdefghijklmnopqrstuv'");
}

TEST_CASE("short text holds what fits, and says when it does not") { // constructed
  constexpr auto stored = [](std::string_view what, std::string_view more = "") {
    ShortText<6> text{what};
    text.append(more);
    return text;
  };
  STATIC_CHECK(stored("").empty());
  STATIC_CHECK(!stored("a").empty());
  STATIC_CHECK(stored("abcdef") == "abcdef");
  STATIC_CHECK(stored("abcdefg") == "abcdef");
  STATIC_CHECK(stored("abcd⁸") == "abcd");  // of three bytes, two would fit
  STATIC_CHECK(stored("abc⁸") == "abc⁸");   // just fits
  STATIC_CHECK(stored("abcdé") == "abcdé"); // of two bytes
  STATIC_CHECK(stored("abcdeé") == "abcde");
  STATIC_CHECK(stored("⁸⁸⁸") == "⁸⁸");
  STATIC_CHECK(stored("abc", "def") == "abcdef");
  STATIC_CHECK(stored("abc", "defg") == "abc"); // as a whole or not at all
  STATIC_CHECK(ShortText<6>::capacity() == 6);
  ShortText<6> text;
  CHECK(text.assign("abcdef"));
  CHECK_FALSE(text.assign("abcdefg"));
  CHECK_FALSE(text.append("x"));
  CHECK(text.append(""));
  CHECK(text.assign("ab"));
  CHECK(text == ShortText<6>{"ab"}); // none of what was there before is left
  CHECK(text != ShortText<6>{"abc"});
  CHECK(text.append("cd"));
  CHECK(text.append("wxyz", 2));
  CHECK(text == "abcdwx");
  CHECK(std::hash<ShortText<6>>{}(text) == std::hash<ShortText<6>>{}(ShortText<6>{"abcdwx"}));
  ShortText<1> none;
  CHECK_FALSE(none.assign("é")); // not even the first character fits
  CHECK(none.empty());
}

namespace {
/// True if a text is one line of UTF-8 without control characters: RFC 3629, and RFC 8259 section 7 for what a string
/// of JSON may hold as it is.
bool fits_in_one_line(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    auto const c = decode(text, at);
    if (c.malformed || c.value < 0x20 || (c.value >= 0x7F && c.value < 0xA0)) return false;
    at += c.bytes;
  }
  return true;
}
} // namespace

TEST_CASE("a message is one line of UTF-8 whatever byte it quotes, and what is sound is quoted as it is") {
  for (int byte = 0; byte < 256; ++byte) {
    std::string const text{'A', static_cast<char>(byte), '8'};
    CAPTURE(byte);
    bool const sound = byte >= 0x20 && byte < 0x7F;
    CHECK((one_line(text) == text) == sound);
    CHECK(fits_in_one_line(one_line(text)));
    if (byte == 0) continue; // ends what an error quotes
    auto const told = message(error_at(Problem::no_signature, TextPlace{}, text));
    CHECK(fits_in_one_line(told));
    CHECK(told.find("'" + one_line(text) + "'") != told.npos);
  }
  CHECK(one_line("8°: π² A–K⁸") == "8°: π² A–K⁸");
  CHECK(one_line("a\r\nb\tc") == "a  b c");
  CHECK(one_line("\xE2\x82|\xC2\x85|\xE2\x80\xA8") == "\uFFFD\uFFFD|\uFFFD|\uFFFD"); // cut; next line; line separator
  // explicit formatting characters of the Unicode Standard, Annex 9, table 1, and what has no width: nothing of a text turns or
  // hides the sentence that quotes it
  for (char32_t const c : {0x202AU, 0x202BU, 0x202CU, 0x202DU, 0x202EU, 0x2066U, 0x2067U, 0x2068U, 0x2069U, 0x061CU,
                           0x200BU, 0x2060U, 0xFEFFU, 0xADU, 0xE0041U}) {
    CAPTURE(std::uint32_t{c});
    char bytes[4];
    std::string const text = "zz" + std::string{bytes, encode(c, bytes)} + "z";
    CHECK(is_invisible(c));
    CHECK(one_line(text) == "zz\uFFFDz");
    CHECK(message(error_at(Problem::no_signature, TextPlace{}, text)).find(text.substr(2)) == std::string::npos);
  }
  CHECK(one_line("\u05D0\u200E \u0633\u200C\u0644") ==
        "\u05D0\u200E \u0633\u200C\u0644"); // words of other scripts need these
  STATIC_CHECK(shown_character("\n", 0) == " " && shown_character("ſ", 0) == "ſ");
}

TEST_CASE("characters that are obeyed, and those that leave no trace, are those of Unicode") {
  // UnicodeData.txt 15.0: control characters (Cc), separators of lines and paragraphs (Zl, Zp); of the format characters
  // (Cf) those that no letter needs, with the code points reserved for more of them in the same blocks (Blocks.txt)
  struct {
    char32_t from, to;
    bool obeyed;
  } const listed[]{
      {0x0000, 0x001F, true},    // C0 controls
      {0x007F, 0x009F, true},    // DELETE and the C1 controls
      {0x00AD, 0x00AD, false},   // SOFT HYPHEN
      {0x061C, 0x061C, false},   // ARABIC LETTER MARK
      {0x200B, 0x200F, false},   // ZERO WIDTH SPACE to RIGHT-TO-LEFT MARK
      {0x2028, 0x2029, true},    // LINE SEPARATOR, PARAGRAPH SEPARATOR
      {0x202A, 0x202E, true},    // LEFT-TO-RIGHT EMBEDDING to RIGHT-TO-LEFT OVERRIDE
      {0x2060, 0x2065, false},   // WORD JOINER to INVISIBLE PLUS, and one reserved
      {0x2066, 0x2069, true},    // LEFT-TO-RIGHT ISOLATE to POP DIRECTIONAL ISOLATE
      {0x206A, 0x206F, false},   // the deprecated format characters
      {0xFEFF, 0xFEFF, false},   // ZERO WIDTH NO-BREAK SPACE
      {0xFFF9, 0xFFFB, false},   // INTERLINEAR ANNOTATION ANCHOR to TERMINATOR
      {0xE0000, 0xE007F, false}, // the block Tags
  };
  for (char32_t c = 0; c <= 0x10FFFF; ++c) {
    bool obeyed = false, traceless = false;
    for (auto const& row : listed)
      if (c >= row.from && c <= row.to) obeyed = row.obeyed, traceless = true;
    if (is_control_character(c) != obeyed || is_invisible(c) != traceless)
      FAIL_CHECK("character " << static_cast<unsigned long>(c));
  }
}
