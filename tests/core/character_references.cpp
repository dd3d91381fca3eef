// SPDX-License-Identifier: MIT
// Character references of HTML: HTML Living Standard, 13.2.5.72 to 13.2.5.80 (how they are read) and 13.5 (their names, in
// tests/data/html_character_names.tsv). That a text may be escaped twice, and that & is a mark in a formula: common
// practice, no source.
#include <bifolium/core/character_references.hpp>

#include "check.hpp"
#include "data.hpp"

#include <string>

using namespace bifolium;

namespace {

std::string characters(std::string const& text) {
  TextOfCharacters const read{text};
  return read.malformed() ? "malformed " + std::string{read.malformed()->of(text)} : std::string{read.text()};
}
std::string utf8(char32_t value) {
  char bytes[4]{};
  return {bytes, encode(value, bytes)};
}

} // namespace

TEST_CASE("every name of the standard is its character, or it is told that it is not known") {
  int known = 0, all = 0;
  for (auto const& row : data::rows("html_character_names.tsv", 2)) {
    CAPTURE(row[0]);
    auto const value = static_cast<char32_t>(std::stoul(row[1], nullptr, 16));
    auto const text = "&" + row[0] + ";";
    auto const found = character_reference_at(text, 0);
    ++all;
    REQUIRE((found || detail::may_be_signature(row[0])));
    if (found && !found->malformed) {
      ++known;
      CHECK(found == CharacterReference{value, static_cast<std::uint32_t>(text.size())});
    } else if (!detail::may_be_signature(row[0])) {
      CHECK(found->malformed);
    }
  }
  CHECK(all > 2000);
  CHECK(known == sizeof detail::character_names / sizeof detail::character_names[0]);
}

TEST_CASE("every character has two numbers") {
  for (char32_t value = 1; value < 0x110000; value += value < 0x3000 ? 1 : 0x3FF) {
    bool const none = (value < 0x20 && value != 9 && value != 10 && value != 13) || value == 0x7F ||
                      (value >= 0x80 && value < 0xA0) || (value >= 0xD800 && value < 0xE000);
    if (none) continue;
    char hex[16]{};
    std::snprintf(hex, sizeof hex, "%x", static_cast<unsigned>(value));
    for (auto const& text :
         {"&#" + std::to_string(static_cast<std::uint32_t>(value)) + ";", "&#x" + std::string{hex} + ";",
          "&#X000" + std::string{hex} + ";", "&amp;#" + std::to_string(static_cast<std::uint32_t>(value)) + ";"})
      CHECK(characters("a" + text + "b") == "a" + utf8(value) + "b");
  }
  // HTML, 13.2.5.80: the characters of Windows
  CHECK(characters("&#150;&#146;&#x80;&#x9f;") == "\u2013\u2019\u20ac\u0178");
}

TEST_CASE("what is no reference is told, or stays if it can be a mark, a leaf or a word") {
  for (std::string const text :
       {"&#8312", "&#x2078", "&#;", "&#x;", "&#0;", "&#11;", "&#127;", "&#129;", "&#xD800;", "&#xDFFF;", "&#x110000;",
        "&#99999999999999999999;", "&sup8;", "&foo;", "&deg", "&sup2", "&frac12", "&Sup2;"})
    for (auto const* after : {"", " L", ", B"}) {
      CAPTURE(text);
      CHECK(characters("A" + text + after) == "malformed " + text);
    }
  for (std::string const text : {"&", "&&", "A & B", "&\u2078", "&c;", "&A8;", "&aa;", "&aaa8;", "&chi1;", "&pi", "&#",
                                 "& #8312;", "AT&T", "A&B;", "-&", "&#*", "&chi A"})
    CHECK(characters(text) == text);
  CHECK(characters("AT&amp;T &amp;amp;deg; &amp;c;") == "AT&T \u00b0 &c;");
}

TEST_CASE("places lead back into the text with the references") {
  std::string const text{"a&deg;\n&#8312;b&sup1;&sup2;c"};
  TextOfCharacters const read{text};
  CHECK(read.text() == "a\u00b0\n\u2078b\u00b9\u00b2c");
  for (auto const& [character, reference] : {std::pair{"a", "a"},
                                             {"\u00b0", "&deg;"},
                                             {"\n", "\n"},
                                             {"\u2078", "&#8312;"},
                                             {"b", "b"},
                                             {"\u00b9", "&sup1;"},
                                             {"\u00b2", "&sup2;"},
                                             {"c", "c"}}) {
    auto const at = read.text().find(character);
    CHECK(read.original(TextSpan{at, at + std::string_view{character}.size()}).of(text) == reference);
  }
  CHECK(read.original(read.text().size()) == text.size());
  auto const error =
      read.original(error_in(read.text(), {read.text().find('c'), read.text().size()}, Problem::unknown_mark));
  CHECK(error == error_in(text, {text.find('c'), text.size()}, Problem::unknown_mark));
  STATIC_CHECK(TextOfCharacters{"8&deg;"}.original(3) == 6);
}
