// SPDX-License-Identifier: MIT
// Text that is raised or lowered by tags: <sup> and <sub> (HTML), <hi rend="superscript"> (TEI P5), ^{ } (TeX), and the signs of
// catalogues whose raised figures were converted. Where a tag has nothing or a blank in it, is not closed, or is closed by another,
// the text need not be a formula; but what is read must be written so that it reads back (common practice, no source).
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

struct MarkedUp {
  char const* text;
  char const* written;
};

} // namespace

TEST_CASE("a word that a tag cuts after its first letter is a word and no signature") { // constructed
  for (std::string const text :
       {"A⁸; M<sup>r</sup>s X", "A⁸. M<sup>r</sup>s X", "A⁸, M<hi rend=\"superscript\">r</hi> X",
        "A⁸; y<sup>e</sup> book", "A⁸; w<sup>t</sup>h plates"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 8);
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0].problem == Problem::text_not_read);
  }
  CHECK(read_lawfully("A⁸ M<sup>r</sup>s X").error().problem == Problem::unknown_mark);
  CHECK((*read_lawfully("A⁸ B<sup>8</sup> C<sup>4</sup>")).leaves() == 20);
  CHECK((*read_lawfully("A⁸ <sup>π</sup>B<sup>8</sup>")).leaves() == 16);
}

TEST_CASE("whatever a tag has in it, a mark or words beside it are written so that they read back") {
  struct Tag {
    char const *open, *shut;
  };
  int texts = 0, read = 0; // a law about what is read holds of nothing if nothing is read
  for (auto const& tag : std::initializer_list<Tag>{{"<sup>", "</sup>"},
                                                    {"<sub>", "</sub>"},
                                                    {"<hi rend=\"superscript\">", "</hi>"},
                                                    {"^{", "}"},
                                                    {"Ûp", "Ûs"},
                                                    {"<sup>", ""},
                                                    {"<sub>", ""},
                                                    {"^{", ""},
                                                    {"Ûp", ""},
                                                    {"<sub>", "</hi>"},
                                                    {"^{", "</sup>"},
                                                    {"", "</sub>"},
                                                    {"", "}"}})
    for (std::string const inside : {"", " ", "\n", "2", "2 ", " 2", "a", "*", "+", ")", "]"})
      for (std::string const before : {"", "A", "A⁸ ", "A⁸ (", "A⁸ (lst", "a(lst", "A⁸; words", "A⁸; in", "A⁸+", "A⁸ †",
                                       "A⁸ [par", "A⁸ (−", "A⁸ (A1+", "A⁸ π", "2", "A⁸ (K8 blank", "A⁸ 'g"})
        for (std::string const after :
             {"", " ", ")", " )", "]⁴", "†A⁸", "8", "words", " words)", "*⁸", "b⁴", " )l", "'⁴"}) {
          auto const text = before + tag.open + inside + tag.shut + after;
          for (auto const dialect : {dialects::strict, dialects::bmc, dialects::stc}) {
            ++texts, read += read_formula(text, dialect) ? 1 : 0;
            auto const broken = broken_law(text, dialect);
            if (!broken.empty()) FAIL_CHECK(broken);
          }
        }
  CAPTURE(texts);
  CHECK(read > texts / 5);
}

TEST_CASE("figures that tags raise in words stay raised, and the tags themselves are left out") {
  for (auto const& one :
       std::initializer_list<MarkedUp>{{"A⁸ (see fol. 12<sup>v</sup>)", "A⁸(see fol. 12v)"},
                                       {"A⁸ (M<sup>r</sup> X)", "A⁸(Mr X)"},
                                       {"A⁸ (M<sup>r</sup>s X)", "A⁸(Mrs X)"},
                                       {"A⁸ (y<sup>e</sup>s X)", "A⁸(yes X)"},
                                       {"A⁸ (D<hi rend=\"superscript\">octo</hi>r X)", "A⁸(Doctor X)"},
                                       {"A⁸; Mag<sup>istri</sup> X", "A⁸, Magistri X"},
                                       {"A⁸; words<sup>a</sup>8", "A⁸, wordsa 8"},
                                       {"A⁸ (the M<sup>r</sup>s X)", "A⁸(the Mrs X)"},
                                       {"A⁸ (pp. <sup>2</sup>1-44)", "A⁸(pp. ²1-44)"},
                                       {"A⁸ (pp. <hi rend=\"superscript\">12</hi>1)", "A⁸(pp. ¹²1)"},
                                       {"A⁸ (H<sub>2</sub>O stain)", "A⁸(H₂O stain)"},
                                       {"A⁸ (pp. <hi rend=\"bold\">12</hi>)", "A⁸(pp. 12)"},
                                       {"A⁸ (H<hi rend=\"sub\">2</hi>O)", "A⁸(H₂O)"},
                                       {"A⁸ (words<sub></sub>)", "A⁸(words)"},
                                       {"A⁸ (words<sup> </sup>)", "A⁸(words)"},
                                       {"A⁸ (words &lt;sup&gt;2&lt;/sup&gt;1)", "A⁸(words ²1)"}, // escaped twice
                                       {"A⁸ (words &lt;sup&gt;)", "A⁸(words)"},
                                       {"A<sup>8</sup> (K8 blank<sub> )", "A⁸(K8 blank)"},
                                       {"A⁸; words <sup>2</sup>1-44", "A⁸, words ²1-44"},
                                       {"A⁸; words\n<sup>", "A⁸, words"},
                                       {"A⁸; words à<sup>", "A⁸, words à"}}) {
    CAPTURE(std::string{one.text});
    auto const formula = read_formula(one.text);
    REQUIRE(formula);
    CHECK(write_formula(*formula) == one.written);
  }
}

TEST_CASE("a symbol or a name with a tag in it is not read as a mark; a blank is a blank") {
  for (auto const* const text :
       {"<sub>*</sub>⁸", "<sup>*</sup>⁸", "A⁸ †<sup></sup>†<sub>†</sub>⁴", "<sub>[par.]</sub>⁴", "<sub>+</sub>⁸"}) {
    CAPTURE(std::string{text});
    CHECK(!read_formula(text));
  }
  // a blank of HTML parts what a blank parts, in words too
  CHECK(*read_formula("8°:&nbsp;A-K⁸&nbsp;L⁴&nbsp;(−L4,&nbsp;blank)") == *read_formula("8°: A-K⁸ L⁴ (−L4, blank)"));
  CHECK(write_formula(*read_formula("A⁸ (a&nbsp;note&nbsp;)")) == "A⁸(a note)");
  // two symbols with a tag between them are two symbols, however long the tag
  auto const between = "b⁴†<hi rend=\"superscript\"></sub>†A⁸";
  CHECK(broken_law(between, dialects::stc) == "");
}

TEST_CASE(
    "A raised letter may begin a part, a raised figure may not; a number of pages ends with its word") { // constructed
  auto const parts = read_formula("1: <sup>χ</sup>A<sup>4</sup> 2: A<sup>4</sup>");
  REQUIRE(parts);
  CHECK(parts->parts().size() == 2);
  CHECK(*parts == *read_formula("1: χA⁴; 2: A⁴"));
  for (auto const text :
       {"1: <sup>χ</sup>A<sup>4</sup> 2: A<sup>4</sup>", "I: <sup>π</sup>A-B<sup>4</sup> II: A<sup>4</sup>",
        "A-C⁴, p. iv", "A-C⁴, p. xi<sup>th</sup> 4"})
    CHECK(broken_law(text, dialects::stc) == "");
}

TEST_CASE("words about blank leaves say the same once their tags are left out, wherever those stand") { // constructed
  int read = 0;
  for (std::string const text : {"A-K⁸ (K8 blank)", "A-K⁸ (−A1, blank?)", "A-K⁸ (K7-8 bl. and genuine)",
                                 "*⁴ A-K⁸ (*4, K7,8 blank; A2 missigned)", "A-K⁸ (with the final blank K8)",
                                 "A-K⁸ (the last two blanks K7, K8)", "A-K⁸ ([K]8, blank)"})
    for (auto from = text.find('(') + 1; from < text.size(); ++from)
      for (std::string const tag :
           {"<sub>", "<sup>", "<hi rend=\"superscript\">", "^{", "</sub>", "&amp;", "<s<sub>up>"}) {
        auto const tagged = text.substr(0, from) + tag + text.substr(from);
        read += read_formula(tagged) ? 1 : 0;
        auto const broken = broken_law(tagged, dialects::stc);
        if (!broken.empty()) FAIL_CHECK(broken);
      }
  CHECK(read > 600);
  for (auto const* const text : {"A-K⁸ (K8 <sub>blank</sub>)", "A-K⁸ (<sub>K8</sub> <sup>blank</sup>)",
                                 "A-K⁸ (K<sub>8</sub> b<sup>l</sup>ank)", "A-K⁸ (K₇-₈ blank)"}) {
    CAPTURE(std::string{text});
    CHECK(!(*read_formula(text)).blanks().empty());
  }
  // leaves may be numbered below the line in a list too
  CHECK(*read_formula("A-K⁸ (−K₇,₈)") == *read_formula("A-K⁸ (−K7,8)"));
  // a count is a constant expression with tags in the words too
  static_assert(count_formula("A-K8 (K8 <sub>blank, and a long sentence after it</sub>)")->leaves == 80);
}

TEST_CASE("text after gatherings is written without its tags and reads the same, wherever those stand") { // constructed
  int read = 0, texts = 0;
  for (std::string const text : {"A-K⁸, 80 leaves x, h⁸ i", "A-K⁸, pp. 1-16, L⁸", "A1 A⁸, AA8.4", "A-K⁸, Mrs X",
                                 "A8, 8 leaves, then B4", "[A4 v. 2:+⁸]"})
    for (auto from = text.find_first_of(",v"); from < text.size(); ++from)
      for (auto to = from; to <= text.size(); ++to)
        for (std::string const tag : {"sup", "sub"}) {
          if (continues_character(text[from]) || (to < text.size() && continues_character(text[to]))) continue;
          auto const tagged = text.substr(0, from) + "<" + tag + ">" + text.substr(from, to - from) +
                              (to < text.size() ? "</" + tag + ">" + text.substr(to) : "");
          ++texts, read += read_formula(tagged) ? 1 : 0;
          for (auto const dialect : {dialects::strict, dialects::stc})
            if (auto const broken = broken_law(tagged, dialect); !broken.empty()) FAIL_CHECK(broken);
        }
  MESSAGE(read << " of " << texts << " are read");
  CHECK(read > texts / 4);
}
