// SPDX-License-Identifier: MIT
// The tokens of a formula: where each ends, and what stands between them.
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/lexer.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

std::vector<Token> tokens_of(std::string const& text) {
  std::vector<Token> all;
  Lexer lexer{text};
  for (auto token = lexer.next(); token.kind != TokenKind::end && all.size() <= text.size(); token = lexer.next())
    all.push_back(token);
  return all;
}

} // namespace

TEST_CASE(
    "a sign of several characters is one token, and the next begins after it") { // spellings of the plus-or-minus sign
  for (std::string const sign : {"\u00B1", "+-", "-+", "+/-", "-/+"})
    for (std::string const before : {"", "A", "A ", "("}) {
      auto const text = before + sign + "B3";
      CAPTURE(text);
      auto const tokens = tokens_of(text);
      auto const at = before.empty() ? 0U : 1U;
      REQUIRE(tokens.size() == at + 3);
      CHECK(tokens[at].kind == TokenKind::plus_minus);
      CHECK(tokens[at].from == before.size());
      CHECK(tokens[at].to == before.size() + sign.size());
      CHECK(tokens[at + 1].kind == TokenKind::letter);
      CHECK(tokens[at + 1].from == tokens[at].to);
      CHECK_FALSE(tokens[at + 1].spaced);
      CHECK(tokens[at + 2].kind == TokenKind::figure);
      CHECK(tokens_of(before + sign).size() == at + 1);
    }
  CHECK(tokens_of("+A").size() == 2);
  CHECK(tokens_of("-/A").size() == 3);
  CHECK(tokens_of("++").size() == 2);
  CHECK(tokens_of("--").size() == 2);
}

TEST_CASE("every blank of set type parts two tokens and is none, and marks of direction do not even part them") {
  // UnicodeData.txt: the space separators (Zs) but those of Ogham, of formulas and of East Asian type, with the
  // tabulator and the line breaks of ASCII and U+FEFF at the beginning of files; and the marks that set the direction of
  // writing (Bidi_Control in PropList.txt)
  for (char32_t const blank :
       {U'\t', U'\n', U'\r', U' ', U'\u00A0', U'\u2000', U'\u2001', U'\u2002', U'\u2003', U'\u2004', U'\u2005',
        U'\u2006', U'\u2007', U'\u2008', U'\u2009', U'\u200A', U'\u202F', U'\uFEFF'})
    for (int many = 1; many <= 3; ++many) {
      char bytes[4];
      std::string between;
      for (int i = 0; i < many; ++i) between.append(bytes, encode(blank, bytes));
      CAPTURE(static_cast<unsigned long>(blank));
      auto const tokens = tokens_of("A" + between + "B");
      REQUIRE(tokens.size() == 2);
      CHECK(tokens[1].kind == TokenKind::letter);
      CHECK(tokens[1].spaced);
      CHECK(tokens[1].from == 1 + between.size());
      CHECK(tokens_of(between + "A" + between).size() == 1);
      CHECK(tokens_of(between).empty());
    }
  for (char32_t const mark : {U'\u061C', U'\u200E', U'\u200F', U'\u202A', U'\u202B', U'\u202C', U'\u202D', U'\u202E',
                              U'\u2066', U'\u2067', U'\u2068', U'\u2069'}) {
    char bytes[4];
    std::string const between{bytes, encode(mark, bytes)};
    CAPTURE(static_cast<unsigned long>(mark));
    auto const tokens = tokens_of("A" + between + "B");
    REQUIRE(tokens.size() == 2);
    CHECK_FALSE(tokens[1].spaced);
    CHECK(tokens[1].from == 1 + between.size());
    CHECK(tokens_of(between).empty());
  }
}
