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

TEST_CASE("columns count characters, not bytes") {
  STATIC_CHECK(column_of("A⁸B", 4) == 3);
  STATIC_CHECK(column_of("x\nA⁸", 3, 2) == 2);
}

TEST_CASE("short text and errors never hold half a character") {
  ShortText<4> text;
  CHECK_FALSE(text.assign("ab⁸"));
  CHECK(text == "ab");
  auto const error = error_at(Problem::no_such_piece, 2, 14, "abcdefghijklmnopqrstuv⁸", 25);
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
