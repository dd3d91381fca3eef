// SPDX-License-Identifier: MIT
// The same formula typed otherwise: other blanks, other ways to raise a figure, in quotation marks, under a heading, with a
// stop after it. It has the same leaves and the same doubts. The formulas are those of tests/data, whose heads name the
// sources; that the ways of typing mean the same is common practice, no source.
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/message.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "data.hpp"
#include "typed.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct Quoted {
  char const* text;
  std::int64_t leaves;
  char const* written;
};
struct Typed {
  std::string text;
  Dialect dialect;
};
std::vector<Typed> typed_formulas() {
  std::vector<Typed> all;
  for (auto const& row : data::rows("formulas_as_written.tsv", 2)) all.push_back({row[1], dialects::stc});
  for (auto const& row : data::rows("later_formulas.tsv", 3)) all.push_back({row[1], dialects::stc});
  for (auto const& row : data::rows("tcp_formulas.tsv", 4)) all.push_back({row[1], dialects::stc});
  for (auto const& row : data::rows("bmc_formulas.tsv", 4)) all.push_back({row[2], dialects::bmc});
  for (auto const& row : data::rows("collation_examples.tsv", 7)) all.push_back({row[5], dialects::stc});
  return all;
}
/// What a formula is: its leaves and its doubts, or that it is refused.
std::string told(std::string_view text, Dialect dialect) {
  auto const formula = read_formula(text, dialect);
  if (!formula) return "refused";
  auto told = std::to_string(formula->leaves());
  for (auto const& warning : formula->warnings()) told.append(" ").append(identifier(warning.problem));
  return told;
}
/// The text with each raised number between two others.
std::string raised_between(std::string const& text, std::string_view before, std::string_view after) {
  std::string out;
  bool inside = false;
  for (std::size_t i = 0; i < text.size();) {
    auto const c = decode(text, i);
    auto const digit = superscript_digit(c.value);
    if (digit.has_value() != inside) out += digit ? before : after;
    inside = digit.has_value();
    out += digit ? std::to_string(*digit) : text.substr(i, c.bytes);
    i += c.bytes;
  }
  return inside ? out.append(after) : out;
}
template <class Type> void check_the_same(std::vector<Typed> const& all, std::size_t at_least, Type type) {
  std::size_t changed = 0;
  for (auto const& [text, dialect] : all) {
    std::string const other = type(text);
    if (other == text) continue;
    ++changed;
    auto const here = told(text, dialect);
    if (here == "refused") continue;
    CAPTURE(text);
    CAPTURE(other);
    CHECK(told(other, dialect) == here);
  }
  CHECK(changed >= at_least);
}

} // namespace

TEST_CASE("a formula is the same with other blanks in it") {
  auto const all = typed_formulas();
  for (std::string_view const blank : {"  ", "\t", "\u00a0", "\u2009", " \u00a0 "})
    check_the_same(all, 500, [&](std::string const& text) { return with(text, " ", blank); });
}

TEST_CASE("a formula is the same with character references, and its doubts are where they were") {
  auto const all = typed_formulas(); // HTML Living Standard, 13.5: character references
  auto const decimal = [](std::uint32_t c) { return "&#" + std::to_string(c) + ";"; };
  auto const twice = [](std::uint32_t c) { return "&amp;#" + std::to_string(c) + ";"; };
  auto const no_ascii = [](char32_t c) { return c > 0x7F; };
  check_the_same(all, 500, [&](std::string const& text) { return with_references(text, no_ascii, decimal); });
  check_the_same(all, 500, [&](std::string const& text) { return with_references(text, no_ascii, twice); });
  check_the_same(all, 900, [&](std::string const& text) {
    return with_references(
        text, [](char32_t) { return true; }, decimal);
  });
  int doubts = 0;
  for (auto const& [text, dialect] : all) {
    auto const other = with_references(text, no_ascii, decimal);
    auto const here = read_formula(text, dialect), there = read_formula(other, dialect);
    CAPTURE(other);
    REQUIRE(here.has_value() == there.has_value());
    auto const original = [&](std::string_view part) { return with_references(part, no_ascii, decimal).size(); };
    auto const moved = [&](Error const& one) {
      auto const at = position_of(text, *one.place);
      return place_in(other, original(std::string_view{text}.substr(0, at)));
    };
    auto const place = [](Error const& one) { return one.place.value(); };
    auto const count = count_formula(other, dialect);
    if (!here) {
      CHECK(place(there.error()) == moved(here.error()));
      CHECK(count.error() == there.error());
      continue;
    }
    CHECK(*here == *there);
    CHECK(count->leaves == here->leaves());
    for (std::size_t i = 0; i < here->warnings().size(); ++i, ++doubts)
      CHECK(place(there->warnings()[i]) == moved(here->warnings()[i]));
    for (std::size_t i = 0; i < here->changes().size(); ++i)
      CHECK(there->changes()[i].text().size() == original(here->changes()[i].text().of(text)));
    for (std::size_t i = 0; i < here->passages().size(); ++i)
      CHECK(there->passages()[i].text.size() == original(here->passages()[i].text.of(text)));
  }
  CHECK(doubts > 100);
  for (auto const& [text, leaves] : {std::pair{"8&deg;: A-K&#8312; L&sup2;", 82},
                                     {"A-K&#x2078; (&minus;K8)", 79},
                                     {"&pi;&sup2; A&ndash;K&#8312; &chi;1", 83},
                                     {"A-K&sup1;&sup2;", 120},
                                     {"&dagger;&#8312; A&#45;B&#8312;", 24},
                                     {"A&#8312;(A3&plusmn;)", 8}}) {
    CAPTURE(std::string{text});
    auto const read = read_formula(text, dialects::bmc);
    REQUIRE(read);
    CHECK(read->leaves() == leaves);
  }
  for (std::string const text : {"A-K&#8312 L&#8308", "A-K&sup8;", "8&deg: A-K\u2078", "A\u2078 &foo; B\u2078"}) {
    CAPTURE(text);
    auto const read = read_formula(text);
    REQUIRE(!read);
    CHECK(read.error().problem == Problem::bad_character_reference);
    CHECK(read.error().place->column == place_in(text, text.find('&')).column);
    CHECK(count_formula(text).error() == read.error());
  }
}

TEST_CASE("what looks like a character reference in the words of a formula is kept, and one that tags part is read") {
  for (std::string const words :
       {"torn &blank; B", "&foo;", "A&T;", "&#8312", "&deg", "&amp;foo;", "&de<sup>g</sup>;", "&#83<sup>1</sup>2;"}) {
    auto const text = "A-K\u2078 (K8 " + words + ")";
    CAPTURE(text);
    CHECK(broken_law(text, dialects::strict) == "");
    CHECK(read_formula(text));
  }
  CHECK((*read_formula("A-K\u2078 (K8 &de<sup>g</sup>;)")).notes()[0] == "K8 \u00b0");
}

TEST_CASE("a formula is the same however its figures are raised") {
  auto all = typed_formulas();
  // after a blank a raised figure may be a count (&  ⁸), one after a caret names a series; 8⁰ has a raised zero for °
  std::erase_if(all, [](Typed const& one) {
    return one.text.find("& \u2078") != one.text.npos || one.text.find("8\u2070") != one.text.npos;
  });
  for (auto const& [before, after] :
       {std::pair{"<sup>", "</sup>"}, std::pair{"[superscript ", "]"}, std::pair{"[Superscript\u00a0", "]"},
        std::pair{"^{", "}"}, std::pair{"\u00dbp", "\u00dbs"}})
    check_the_same(all, 300, [&](std::string const& text) { return raised_between(text, before, after); });
}

TEST_CASE("a caret after a raised number ends it, whatever comes then") {
  for (auto const& [text, leaves] :
       {std::pair{"a-q^8^r^6^ s^8^", 142}, std::pair{"a^2^ ^2^a^2^ ^3^a^2^", 6}, std::pair{"A-K^8^l^4^", 84},
        std::pair{"A^8^B^6^", 14}, std::pair{"A^8^\u03c7B^6^", 14}, std::pair{"A^8^ \u03c0B^6^", 14}}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("a formula is the same with a stop after it, or under a heading") {
  auto const all = typed_formulas();
  auto const ends_openly = [](std::string const& text) { return text.ends_with('.') || text.ends_with(';'); };
  check_the_same(all, 400, [&](std::string const& text) { return ends_openly(text) ? text : text + '.'; });
  check_the_same(all, 400, [&](std::string const& text) { return ends_openly(text) ? text : text + " ;"; });
  check_the_same(all, 400, [&](std::string const& text) { // after words it is a part of them
    bool const words = told(text, dialects::stc).find("text_not_read") != text.npos;
    return ends_openly(text) || words ? text : text + " :";
  });
  for (std::string_view const heading : {"Signatures: ", "Collation: ", "Lagenformel: ", "Segnatura: "})
    check_the_same(all, 900, [&](std::string const& text) {
      bool const headed = text.starts_with("Sig") || text.starts_with("Coll");
      return headed ? text : std::string{heading} + text;
    });
}

TEST_CASE("a quoted formula is read as what is quoted, with a heading before it and with more after it") {
  auto all = typed_formulas();
  std::erase_if(all, [](Typed const& one) { // has quotation marks of its own, or is quoted from another book's mark
    return one.text.find_first_of("'\"") != one.text.npos || one.text.find("\u2018") != one.text.npos ||
           one.text.find("\u201c") != one.text.npos || told(one.text, dialects::strict) == "refused";
  });
  for (auto const& [before, after] :
       {std::pair{"\"", "\""}, std::pair{"\u201c", "\u201d"}, std::pair{"\u2018", "\u2019"},
        std::pair{"\u201e", "\u201c"}, std::pair{"\u00ab", "\u00bb"}, std::pair{"\u00bb", "\u00ab"},
        std::pair{"Signatures: \"", "\""}, std::pair{"Sig.: \u2018", "\u2019."}, std::pair{"\"\u2018", "\u2019\""}})
    check_the_same(all, 300, [&](std::string const& text) { return before + text + after; });
}

TEST_CASE("what quotation marks hold is a formula or a mark: one gathering, two, with more after them") {
  // common practice, no source; leaves counted by hand
  for (auto const& [text, leaves, written] : std::initializer_list<Quoted>{
           Quoted{"\"A8\"", 8, "A\u2078"}, Quoted{"\"a^6\"", 6, "a\u2076"}, Quoted{"'A8B4'", 12, "A\u2078 B\u2074"},
           Quoted{"8\u00b0: \"A8\"", 8, "8\u00b0: A\u2078"}, Quoted{"\"8\u00b0: A8\"", 8, "8\u00b0: A\u2078"},
           Quoted{"\"A-K8\"; 80 leaves", 80, "A-K\u2078, 80 leaves"},
           Quoted{"\"A-K8\", 80 leaves", 80, "A-K\u2078, 80 leaves"},
           Quoted{"\"A-K8\" (last blank)", 80, "A-K\u2078(last blank)"},
           Quoted{"Vol. 1: \"A-K\u2078\"; vol. 2: \"A-B\u2078\"", 96, "Vol. 1: A-K\u2078; vol. 2: A-B\u2078"},
           Quoted{"\"A-K\u2078 (K8 blank)\"; pp. 1-160", 80, "A-K\u2078(K8 blank), pp. 1-160"},
           // marks
           Quoted{"\"A\"\u2078", 8, "\"A\"\u2078"}, Quoted{"'Gg\u2076' 2H\u2076", 12, "\"Gg\"\u2076 2H\u2076"},
           Quoted{"'gg3.4'", 2, "\"gg3.4\""}, Quoted{"'gg3' A\u2078", 9, "\"gg3\" A\u2078"},
           Quoted{"A\u2078; 'gg3.4'", 10, "A\u2078; \"gg3.4\""}, Quoted{"\u201eG&H\u201c\u2078", 8, "\"G&H\"\u2078"},
           Quoted{"\u00abG&H\u00bb\u2078", 8, "\"G&H\"\u2078"}}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text, dialects::stc);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
    CHECK(write_formula(*formula) == written);
  }
}

TEST_CASE("a mark in quotation marks is the same mark whatever gathering comes after it, and is written so") {
  // leaves counted by hand: one of the mark, and those of the gathering
  for (std::string const mark : {"\"B2\"", "\"A1\"", "'gg3'", "\"Gg10\"", "\"*3\""})
    for (auto const& [next, leaves] : std::initializer_list<std::pair<std::string, int>>{{"\u00b6\u2078", 8},
                                                                                         {"[hand]\u2078", 8},
                                                                                         {"[par.]\u2074", 4},
                                                                                         {"[hand]\u2078 C\u2074", 12},
                                                                                         {"(*)\u2078", 8},
                                                                                         {"[*]\u2074", 4},
                                                                                         {"[C\u2078]", 8},
                                                                                         {"[C\u2078] D\u2074", 12},
                                                                                         {"C\u2078", 8},
                                                                                         {"\u03c7\u00b2", 2}}) {
      CAPTURE(mark);
      CAPTURE(next);
      auto const formula = read_formula(mark + " " + next);
      REQUIRE(formula);
      CHECK(formula->leaves() == 1 + leaves);
    }
  // with its count it can stand before anything, or alone
  for (std::string const mark : {"\"B2\"", "\"A1\"", "'gg3'", "\"Gg10\""})
    for (std::string const next : {"", " [hand]\u2078", " [$4 signed]", " \u00b6\u2078", " [C\u2078 D\u2074]",
                                   "; A\u2078", " C\u2078", " (A1 blank)", ", 80 leaves"})
      for (auto const notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
        auto const text = mark + "\u00b9" + next;
        CAPTURE(text);
        auto const formula = read_formula(text);
        REQUIRE(formula);
        auto const written = write_formula(*formula, notation);
        CAPTURE(written);
        auto const again = read_formula(written);
        REQUIRE(again);
        CHECK(again->leaves() == formula->leaves());
        CHECK(write_formula(*again, notation) == written);
      }
}

TEST_CASE("what comes after a quoted part is read as it is without quotation marks") { // leaves counted by hand
  for (auto const* const text : {"\"A8 Bb8\"; C8 C3 \u00b1", "A8 Bb8; C8 C3 \u00b1"})
    CHECK((*read_formula(text)).leaves() == 24);
  for (auto const* const text : {"\"A8 (A1 torn)\"; B8 (lacks B8)", "A8 (A1 torn); B8 (lacks B8)"})
    CHECK((*read_formula(text)).leaves() == 15);
}

TEST_CASE("a source in brackets after a full stop is no gathering, whatever follows it") { // as in library catalogues
  for (auto const* const text :
       {"A-K\u2078. [Library Co]", "A-K\u2078. [Library Co].", "A-K\u2078. [from the colophon]; pp. 160",
        "A-K\u2078. [by  Library\u00a0Company cataloger] ;"})
    CHECK(told(text, dialects::stc).starts_with("80 "));
}

TEST_CASE("a number directly before a letter is of the next signature, after a comma without a blank") {
  for (auto const& [text, leaves] : {std::pair{"A-Z8,2A-2M8", 280}, std::pair{"A-K8,4L4", 84}, std::pair{"A8,B4", 12},
                                     std::pair{"A-K8,4", 60}, std::pair{"A-K8,4 L4", 64}}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
  }
}

TEST_CASE("every hyphen and dash of Unicode joins the ends of a run, and is the sign of a lost leaf") {
  // General Punctuation, U+2010 to U+2015: hyphen, non-breaking hyphen, figure dash, en dash, em dash, horizontal bar (Unicode)
  for (std::string const dash : {"-", "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2015"})
    for (auto const& [text, leaves] :
         {std::pair{"8°: A" + dash + "K⁸", 80}, std::pair{"8°: A" + dash + "K8 L4 (" + dash + "L4)", 83},
          std::pair{"8°: a " + dash + " z⁸ A⁸", 192}, std::pair{"8°: A" + dash + "K⁸ L⁴ " + dash + "L4", 83}}) {
      CAPTURE(text);
      auto const formula = read_formula(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == leaves);
      auto const hyphen = read_formula(write_formula(*formula));
      REQUIRE(hyphen);
      CHECK(hyphen->leaves() == leaves);
    }
}
