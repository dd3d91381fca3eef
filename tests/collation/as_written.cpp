// SPDX-License-Identifier: MIT
// What cataloguers and printers wrote in ways of their own: the leaves of each counted by hand, the doubt that is told,
// and how it is written in one way. Constructed after descriptions; where a source was read it is named, else common
// practice, no source.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <string>
#include <tuple>

using namespace bifolium;

namespace {

struct Written {
  char const* text;
  std::int64_t leaves;
  Problem doubt; ///< the first; Problem::none for none at all
  char const* written;
  Dialect dialect = dialects::strict;
};
void check(std::initializer_list<Written> all) {
  for (auto const& one : all) {
    std::string const text{one.text};
    CAPTURE(text);
    CHECK(broken_law(one.text, one.dialect) == "");
    auto const formula = read_formula(one.text, one.dialect);
    REQUIRE(formula);
    CHECK(formula->leaves() == one.leaves);
    CHECK(write_formula(*formula) == one.written);
    if (one.doubt == Problem::none)
      CHECK(formula->warnings().empty());
    else {
      REQUIRE(!formula->warnings().empty());
      CHECK(formula->warnings()[0].problem == one.doubt);
    }
  }
}

} // namespace

TEST_CASE("printed marks of every kind are signatures") {
  check({{"⁂⁴ A–C⁸", 28, Problem::none, "⁂⁴ A-C⁸"},
         {"⁂–3⁂⁴", 12, Problem::none, "⁂-3⁂⁴"},
         {"❧⁴ ☙⁴ ℞²", 10, Problem::none, "❧⁴ ☙⁴ ℞²"},
         {"*_*⁴ A⁸", 12, Problem::none, "*_*⁴ A⁸"},
         {")o(⁴ )*(⁴ A⁸", 16, Problem::none, ")o(⁴ )*(⁴ A⁸"},
         {"):(⁴ 2):(⁴ A⁸", 16, Problem::none, "):(⁴ 2):(⁴ A⁸"},
         {"):():(⁴ A⁸", 12, Problem::none, "2):(⁴ A⁸"},
         {"):(–3):(⁴ A⁸", 20, Problem::none, "):(-3):(⁴ A⁸"},
         {"8°: §⁴ ¶⁸ 2¶⁸ †⁴ ‡⁴ (a)⁸ (b)⁴ [a]⁴ ☞⁴ [b]⁴", 52, Problem::none,
          "8°: §⁴ ¶⁸ 2¶⁸ †⁴ ‡⁴ (a)⁸ (b)⁴ [a]⁴ ☞⁴ [b]⁴"}});
}

TEST_CASE("letters printed in parentheses are a series of their own") {
  check({{"(a)-(b)⁴", 8, Problem::none, "(a)-(b)⁴"},
         {"(a–b)⁴", 8, Problem::none, "(a)-(b)⁴"},
         {"(a)–(c)⁸ (d)⁴ (2A)⁴", 32, Problem::none, "(a)-(c)⁸ (d)⁴ (2A)⁴"},
         {"A⁸ (a)⁴(−(a)4)", 11, Problem::none, "A⁸ (a)⁴(−(a)4)"},
         {"(i-iiii)8 a⁸", 40, Problem::roman_numbers, "1-4⁸ a⁸"}});
  IdealCopy const book{*read_formula("A⁸ (a)-(c)⁴")};
  CHECK(book.leaf_number(read_reference(book, "(b)2r")->leaf) == 14);
}

TEST_CASE("Latin and Greek letters of one place are one mark") {
  // Morgan Library record themorgan.org/incunables/140772: quires signed a[alpha] ... z[psi] &[omega], 24 marks
  check({{"aα–zψ⁸ &ω⁸", 192, Problem::none, "aα-zψ⁸ &ω⁸"},
         {"Aα–Ψ⁸", 184, Problem::none, "Aα-Zψ⁸"},
         {"aα⁸ bβ⁸ qπ⁴", 20, Problem::none, "aα⁸ bβ⁸ qπ⁴", dialects::bmc}});
  CHECK(read_formula("aα-ω⁸").error().problem == Problem::run_crosses_series); // ω is the 24th
}

TEST_CASE("Hebrew letters are numbers, and Cyrillic letters an alphabet") { // from memory
  check({{"א–ב⁸", 16, Problem::none, "א\u200E-ב\u200E⁸"},
         {"א–טו⁸ טז⁴", 124, Problem::none, "א\u200E-טו\u200E⁸ טז\u200E⁴"},
         {"א–כב⁸", 176, Problem::none, "א\u200E-כב\u200E⁸"},
         {"\u2067א\u2069–\u2067ג\u2069⁸", 24, Problem::none, "א\u200E-ג\u200E⁸"},
         {"י–כ⁸", 88, Problem::alphabet_not_settled, "י\u200E-כ\u200E⁸"}, // as letters two gatherings, 16 leaves
         {"А–В⁸ Г⁴", 28, Problem::none, "А-В⁸ Г⁴"},
         {"а⁸ 2а–2в⁸", 32, Problem::none, "а⁸ 2а-2в⁸"},
         {"А–К⁸", 80, Problem::alphabet_not_settled, "А-К⁸"}});
  auto const letters = *read_formula("א–ת⁸"); // no book has four hundred gatherings
  CHECK(letters.leaves() == 22 * 8);
  CHECK(letters.warnings()[0].problem == Problem::alphabet_not_settled);
  IdealCopy const book{letters};
  CHECK(book.leaf_number(read_reference(book, "ת8")->leaf) == 176);
  CHECK(book.leaf_number(read_reference(book, "כ1")->leaf) == 81);
  CHECK(read_formula("אא⁸").error().problem == Problem::unknown_mark);
}

TEST_CASE("letters of later alphabets are doubled in one way") {
  check({{"AAa-FFf⁶ GGg-YYy⁴", 100, Problem::none, "3A-3F⁶ 3G-3Y⁴"},
         {"AA–CC⁸", 24, Problem::none, "2A-2C⁸"},
         {"2A–CC⁸", 24, Problem::mixed_notation, "2A-2C⁸"},
         {"Aa–CC⁸", 24, Problem::mixed_notation, "2A-2C⁸"},
         {"A–Zz⁸", 368, Problem::none, "A-2Z⁸"}});
}

TEST_CASE("a statement of format may say how the book is gathered, which is compared with the gatherings") {
  // common practice, no source: 4to in 8s, 8vo in fours. 12° (8/4): twelves made of a gathering of eight and one of
  // four.
  check({{"8° (4s): A-H⁴", 32, Problem::none, "8° (4s): A-H⁴"},
         {"8° (in 4s): A-H4", 32, Problem::none, "8° (4s): A-H⁴"},
         {"8vo in fours: A-H4", 32, Problem::none, "8° (4s): A-H⁴"},
         {"4to in eights. A-H⁸ I⁴", 68, Problem::none, "4° (8s): A-H⁸ I⁴"},
         {"4° in 8's: A-H8", 64, Problem::none, "4° (8s): A-H⁸"},
         {"4° in 8s A-H8", 64, Problem::none, "4° (8s): A-H⁸"},
         {"18° in sixes: π² A-M⁶", 74, Problem::none, "18° (6s): π² A-M⁶"},
         {"12° (8/4): A-H8/4", 48, Problem::none, "12° (8/4): A-H⁸/⁴"},
         {"12° (8/4): A⁸ B⁴ C⁸ D⁴", 24, Problem::none, "12° (8/4): A⁸ B⁴ C⁸ D⁴"},
         {"12° in eights and fours: A-H8.4", 48, Problem::none, "12° (8/4): A-H⁸/⁴"},
         {"12° in alternate eights and fours: A-H8.4", 48, Problem::none, "12° (8/4): A-H⁸/⁴"},
         {"Royal 4° and 8° (8s): A-H⁸", 64, Problem::none, "Royal 4° and 8° (8s): A-H⁸"},
         // the half of a sheet of eight leaves, or of twelve, makes a gathering
         {"8vo in half-sheets: A-H4", 32, Problem::none, "8° (4s): A-H⁴"},
         {"12° in half sheets: A-H⁶", 48, Problem::none, "12° (6s): A-H⁶"}});
  // no gathering has what is stated; of 8/4, none has four
  check({{"8° (4s): A-H⁸", 64, Problem::gathered_otherwise, "8° (4s): A-H⁸"},
         {"8° in fours: A-H⁸", 64, Problem::gathered_otherwise, "8° (4s): A-H⁸"},
         {"12° (8/4): A-H⁸", 64, Problem::gathered_otherwise, "12° (8/4): A-H⁸"},
         {"8° in half-sheets: A-H⁸", 64, Problem::gathered_otherwise, "8° (4s): A-H⁸"},
         // each volume is compared with its own statement
         {"v. 1: 8° in fours: A-H⁸; v. 2: 8° in fours: A-B⁴", 72, Problem::gathered_otherwise,
          "8° (4s): v. 1: A-H⁸; v. 2: A-B⁴"}});
  // an inserted gathering counts too
  check({{"8° (4s): A⁸(A1+a⁴)", 12, Problem::none, "8° (4s): A⁸(A1+a⁴)"},
         {"8° (4s): A⁸(A1+a⁴(−a4))", 11, Problem::none, "8° (4s): A⁸(A1+a⁴(−a4))"},
         {"v. 1: 8° in fours: A-H⁴; v. 2: 4° in eights: A-B⁸", 48, Problem::none, "8° (4s): v. 1: A-H⁴; v. 2: A-B⁸"}});
  CHECK(count_formula("8° (4s): A-H⁸")->warning_count == 1);
  CHECK((*read_formula("12° (8/4): A-H8/4")).gathered()->term(1) == 4);
  CHECK_FALSE((*read_formula("8°: A-H8")).gathered());
  CHECK_FALSE(*read_formula("8° (4s): A-H⁴") == *read_formula("8°: A-H⁴"));
  for (auto const* const text :
       {"4° (8): A-H⁸", "8° (6s: A-B⁶", "4° (0s): A8", "4° (4097s): A8", "4° in 8s.", "12° (8/4/: A8"}) {
    INFO(text);
    CHECK_FALSE(read_formula(text));
  }
}

TEST_CASE(
    "words for engraved leaves before a formula are written after it, and read there") { // common practice, no source
  for (std::string const words : {"t.p.", "t.p. engraved", "engr. ti.", "engraved title", "port.", "portrait", "front.",
                                  "frontis.", "frontispiece", "title", "plate", "map"})
    for (auto const dialect : {Dialect{}, Dialect{Omitted::next}, Dialect{Omitted::eight}}) {
      INFO(words);
      auto const read = read_formula(words + ", A⁸ B⁴", dialect);
      REQUIRE(read);
      CHECK(read->leaves() == 12);
      CHECK(read->tail() == words);
      auto const again = read_formula(write_formula(*read), dialect);
      REQUIRE(again);
      CHECK(*again == *read);
    }
}

TEST_CASE("a lowered figure is a leaf") { // Early Novels Database, id 4499929: E₁₁ blank
  check({{"1–23⁶(-23₆)", 137, Problem::none, "1-23⁶(−23/6)"}, {"A⁸(-A<sub>8</sub>)", 7, Problem::none, "A⁸(−A8)"}});
  CHECK_FALSE(read_formula("A₄"));
}

TEST_CASE("counts may be apart, in parentheses or in words") {
  check({{"A–D⁸ ⁴", 24, Problem::count_apart, "A-D⁸/⁴"},
         {"A–D⁸ ⁴ E⁸", 32, Problem::count_apart, "A-D⁸/⁴ E⁸"},
         {"A-C⁴ ² A-B⁴ C²", 22, Problem::none, "A-C⁴ ²A-²B⁴ ²C²"}, // EEBO-TCP: the second series
         {"A–D⁸ ¹⁰ E⁸", 44, Problem::count_apart, "A-D⁸/¹⁰ E⁸"},
         {"A–D (8/4)", 24, Problem::count_apart, "A-D⁸/⁴"},
         {"A–D⁸⁻⁴", 24, Problem::none, "A-D⁸/⁴"},
         {"c⁸⁻²", 6, Problem::place_not_stated, "c⁸(−c7-8)"},
         {"A:8 B:8", 16, Problem::count_apart, "A⁸ B⁸", dialects::bmc},
         {"A in four leaves, B-H in eights", 60, Problem::none, "A⁴ B-H⁸"},
         {"A, 4 leaves; B–Z, in 4s", 92, Problem::none, "A⁴; B-Z⁴"},
         {"A (four leaves), B-K in eights", 76, Problem::none, "A⁴ B-K⁸"},
         {"A-D in eights and fours", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D in alternate 8s and 4s", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D in 8's & 4's alternately", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D alternately in 8s and 4s", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D, Alternately in eights and fours", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D alternately 8s & 4s", 24, Problem::none, "A-D⁸/⁴"},
         {"A–D in alternating 8s and 4s", 24, Problem::none, "A-D⁸/⁴"},
         {"12° alternately in eights and fours: A-H8.4", 48, Problem::none, "12° (8/4): A-H⁸/⁴"},
         // H. W. Kent, Bibliographical notes on one hundred books famous in English literature (1903), nos. 7, 29, 35
         {"¶ and A, four leaves each; B-N, in eights; X-Z and Aa-Bb, in eights", 8 + 96 + 40, Problem::none,
          "¶⁴ A⁴; B-N⁸; X-Z⁸ 2A-2B⁸"},
         {"Two leaves without signatures; B-I, in twos.", 18, Problem::unsigned_leaves_as_gathering, "π² B-I²"},
         {"Four leaves (without signatures): B-Z and Aa-Cc, in eights", 4 + 25 * 8,
          Problem::unsigned_leaves_as_gathering, "π⁴ B-Z⁸ 2A-2C⁸"}});
}

TEST_CASE("one count at the end of a list is that of each gathering, however long the list is") { // constructed
  std::string const letters = "ABCDEFGHIKLMNOPQRSTVXYZ";
  for (auto const omitted : {Omitted::error, Omitted::eight, Omitted::next})
    for (auto const* each : {", four leaves each", ", in fours"})
      for (std::size_t n = 2; n <= letters.size(); ++n) {
        std::string text;
        for (std::size_t i = 0; i < n; ++i) text += (i == 0 ? "" : i + 1 == n ? " and " : ", ") + letters.substr(i, 1);
        text += each;
        INFO(text);
        auto const formula = read_formula(text, {omitted, {}, true});
        REQUIRE(formula);
        CHECK(formula->leaves() == static_cast<std::int64_t>(4 * n));
        CHECK(formula->warnings().empty());
      }
}

TEST_CASE("a sign joins runs, and is a mark after the alphabet") {
  check({{"a–c⁸ & d⁶", 30, Problem::none, "a-c⁸ d⁶", dialects::bmc},
         {"A & B⁸", 16, Problem::none, "A⁸ B⁸", dialects::bmc},
         {"A and B⁸", 16, Problem::none, "A⁸ B⁸", dialects::bmc},
         {"m-z & A-B⁸", 120, Problem::none, "m-z⁸ &⁸ A-B⁸", dialects::bmc}, // Christie's, lot 3053127: & is a gathering
         {"A⁸ + B⁸", 16, Problem::none, "A⁸ B⁸"},
         {"A–K⁸ + χ⁴", 84, Problem::none, "A-K⁸ χ⁴"},
         {"A⁸+", 8, Problem::imperfect, "A⁸+"}});
}

TEST_CASE("leaves that are wanting are taken away, and it is told") {
  check({{"8°: A–K⁸ (less K8)", 79, Problem::wanting_read_as_deletion, "8°: A-K⁸(−K8)"},
         {"A–K⁸ (lacking K8, blank)", 79, Problem::wanting_read_as_deletion, "A-K⁸(−K8, blank)"},
         {"A⁸ (wants 8)", 7, Problem::wanting_read_as_deletion, "A⁸(−A8)"},
         {"A–M⁸ (M8 blank and wanting)", 95, Problem::wanting_read_as_deletion, "A-M⁸(−M8, blank)"},
         {"A–M⁸ (M8 blank, wanting)", 95, Problem::wanting_read_as_deletion, "A-M⁸(−M8, blank)"},
         {"A–M⁸ (M7 and M8 blank & lacking)", 94, Problem::wanting_read_as_deletion, "A-M⁸(−M7,8, blank)"},
         // Early Novels Database, id 260972: 26 p.
         {"B-D⁴, E² (? last leaf blank and wanting).", 13, Problem::wanting_read_as_deletion, "B-D⁴ E²(−E2?, blank)"},
         {"A–K⁸ (K8 missing)", 80, Problem::text_not_read, "A-K⁸(K8 missing)"},
         {"A–K⁸ (K8 blank)", 80, Problem::none, "A-K⁸(K8 blank)"}});
  IdealCopy const book{*read_formula("A–M⁸ (M8 blank, wanting)")};
  CHECK(book.leaves() == 95);
}

TEST_CASE("a cancel may have its sign after it, or alone, and say how it is signed") {
  check({{"A–K⁸ (A3 ±)", 80, Problem::none, "A-K⁸(±A3)"},
         {"A–K⁸ (K3±, A1±)", 80, Problem::none, "A-K⁸(±K3, A1)"},
         {"A⁸ B⁸(B1.8±)", 16, Problem::none, "A⁸ B⁸(±B1.8)"},
         {"A⁸(±)", 8, Problem::none, "A⁸(±A)"},
         {"A–K⁸ (±)", 80, Problem::change_of_which_gathering, "A-K⁸(±K)"},
         {"A⁸ A3 ±", 8, Problem::change_outside_parentheses, "A⁸(±A3)"},
         {"A⁸ ±", 8, Problem::change_outside_parentheses, "A⁸(±A)"},
         {"A⁸ (±A7 '*A7')", 8, Problem::text_not_read, "A⁸(±A7; '*A7')"},
         {"A⁸ (±A3²)", 9, Problem::cancelled_by_several, "A⁸(±A3, A3+1)"}});
}

TEST_CASE("a deletion may be a range, or without parentheses") {
  check({{"A–B⁸ (−B5 to 8)", 12, Problem::none, "A-B⁸(−B5-8)"},
         {"A–B⁸ (-B5-B8)", 14, Problem::two_leaves_or_range, "A-B⁸(−B5,8)"},
         {"A–B⁸, −B8", 15, Problem::change_outside_parentheses, "A-B⁸(−B8)"},
         {"A⁸ -A1", 7, Problem::change_outside_parentheses, "A⁸(−A1)"},
         {"A8 - Z8", 184, Problem::none, "A-Z⁸"},
         {"A⁸ (A1 + 8 blank)", 8, Problem::none, "A⁸(A1 + 8 blank)"}});
}

TEST_CASE("what comes before the gatherings is no gathering of theirs") {
  check({{"engr. ti. + A⁸", 8, Problem::text_not_read, "A⁸, engr. ti."},
         {"engr. t.p., A–K⁸", 80, Problem::text_not_read, "A-K⁸, engr. t.p."},
         {"Frontispiece; ¶⁴ A⁸", 12, Problem::text_not_read, "¶⁴ A⁸, Frontispiece"},
         {"[2] leaves, A-K⁸", 82, Problem::unsigned_leaves_as_gathering, "π² A-K⁸"},
         {"4 p.l., A-K⁸", 84, Problem::unsigned_leaves_as_gathering, "π⁴ A-K⁸"},
         {"2 unsigned leaves, A–K⁸", 82, Problem::unsigned_leaves_as_gathering, "π² A-K⁸"}});
}

TEST_CASE("what comes after the gatherings is kept, and leaves among it are told") {
  check({{"A⁸; pp. *367-*432", 8, Problem::none, "A⁸, pp. *367-*432"},
         {"A-C⁸: 24 leaves", 24, Problem::none, "A-C⁸, 24 leaves"},
         {"A-C⁸: 30 leaves", 24, Problem::total_contradicts, "A-C⁸, 30 leaves"},
         {"A-C⁸ 24ff.", 24, Problem::none, "A-C⁸, 24ff."},
         {"A-C⁸ [24 leaves]", 24, Problem::none, "A-C⁸, [24 leaves]"},
         {"A–K⁸ + 1 leaf", 80, Problem::text_not_read, "A-K⁸, + 1 leaf"},
         {"a–c8, and 4 unsigned leaves", 24, Problem::text_not_read, "a-c⁸, and 4 unsigned leaves"},
         {"A–K⁸ + 3 plates", 80, Problem::none, "A-K⁸, + 3 plates"},
         {"A–K⁸ ...", 80, Problem::text_not_read, "A-K⁸"},
         {"A–H⁸ I⁶ CW: A1v the", 70, Problem::text_not_read, "A-H⁸ I⁶, CW: A1v the"},
         {"A–H⁸ I⁶ RT] The Works", 70, Problem::text_not_read, "A-H⁸ I⁶, RT] The Works"},
         {"A–H⁸ I⁶ tea- se,u (3) 1612A", 70, Problem::text_not_read, "A-H⁸ I⁶, tea- se,u (3) 1612A"},
         {"A–G¹² H² [advts. H1–2]", 86, Problem::text_not_read, "A-G¹² H²(advts. H1–2)"},
         {"A–K⁸ -- K8 blank", 80, Problem::text_not_read, "A-K⁸(K8 blank)"}});
}

TEST_CASE("formats and parts have names of their own") {
  check({{"Q: A–P⁴", 60, Problem::none, "4°: A-P⁴"},
         {"F: A–P⁶", 90, Problem::none, "2°: A-P⁶"},
         {"4°-form 8°: A–P⁴", 60, Problem::none, "4°-form 8°: A-P⁴"},
         {"Vol. I: 8°: A–C⁸; vol. II: A–C⁸", 48, Problem::none, "8°: Vol. I: A-C⁸; vol. II: A-C⁸"},
         {"Parte prima: A⁸; Parte seconda: A⁴", 12, Problem::none, "Parte prima: A⁸; Parte seconda: A⁴"},
         {"[Part 1:] A⁸ [Part 2:] A⁴", 12, Problem::none, "Part 1: A⁸; Part 2: A⁴"},
         {"I: A–K⁸. II: A–L⁸", 168, Problem::none, "I: A-K⁸; II: A-L⁸"},
         {"1. Teil: A⁸", 8, Problem::none, "1. Teil: A⁸"}});
}

TEST_CASE("numbers of gatherings begin with 1 and leave none out") {
  check({{"1–3⁸ 5⁴", 28, Problem::letters_skipped, "1-3⁸ 5⁴"},
         {"46; a-t8", 160, Problem::letters_skipped, "46⁸; a-t⁸", dialects::bmc}, // a scan of π⁶? a-t⁸
         {"1–3⁸ 2⁴", 28, Problem::series_starts_again, "1-3⁸ 2⁴"},
         {"a–c⁸ 1–2⁸", 40, Problem::none, "a-c⁸ 1-2⁸"}});
}

TEST_CASE("a count after a blank is one in every notation, unless a mark follows whose series it may be") {
  for (std::string const eight : {"\u2078", "^8", "<sup>8</sup>", "[superscript 8]", "^{8}"})
    for (std::string const after : {"", ".", ";"}) {
      auto const text = "8°: & " + eight + after;
      CAPTURE(text);
      check({{text.c_str(), 8, Problem::count_apart, "8°: &⁸"}});
    }
  CHECK(!read_formula("8°: & ^8B⁸"));
  CHECK((*read_formula("A⁴ ^2A⁸")).warnings().empty()); // the second A
}

TEST_CASE("a mark of parentheses may have a blank in it before its count") {
  check({{") (⁴ A-B⁸", 20, Problem::none, ")(⁴ A-B⁸"},
         {"A-B⁸ ) (⁴ C⁸", 28, Problem::none, "A-B⁸ )(⁴ C⁸"},
         {"4°: )(⁴ )\u00a0(⁸ A-B⁴", 20, Problem::none, "4°: )(⁴ )(⁸ A-B⁴"},
         {"A⁸ (−A3) (A4 blank)", 7, Problem::none, "A⁸(−A3)(A4 blank)"}});
  CHECK(!read_formula("A-B⁸ ) ( C⁸"));
}

TEST_CASE("a page is no leaf: a change of it is doubted, and where a page ends a leaf may be put in") {
  for (std::string const side : {"r", "v", "ra", "rb", "va", "vb", " recto", " verso"}) {
    CAPTURE(side);
    for (auto const& [text, leaves, written] : {std::tuple{"−A1" + side, 15, "A-B⁸(−A1)"},
                                                {"±A1" + side, 16, "A-B⁸(±A1)"},
                                                {"−B8, A1" + side, 14, "A-B⁸(−B8, A1)"}})
      check({{("A-B⁸ (" + text + ")").c_str(), leaves, Problem::page_read_as_leaf, written}});
    if (side.size() != 1) // 2r may be a gathering
      check({{("A-B⁸ (−A1,2" + side + ")").c_str(), 14, Problem::page_read_as_leaf, "A-B⁸(−A1,2)"}});
    else
      check({{("A-B⁸ (−A1,2" + side + ")").c_str(), 15, Problem::text_not_read, ("A-B⁸(−A1; 2" + side + ")").c_str()}});
    for (auto const& text : {"lacks A1" + side, "wants A1" + side, "A1" + side + " wanting", "less A1" + side}) {
      CAPTURE(text);
      auto const one = read_formula("A-B⁸ (" + text + ")");
      REQUIRE(one);
      CHECK(one->leaves() == 15);
      REQUIRE(one->warnings().size() == 2);
      CHECK(one->warnings()[0].problem == Problem::wanting_read_as_deletion);
      CHECK(one->warnings()[1].problem == Problem::page_read_as_leaf);
      CHECK(one->warnings()[1].found_text() == "A1" + side);
    }
  }
  check({{"A-B⁸ (A1v+1)", 17, Problem::none, "A-B⁸(A1+1)"},
         {"A-B⁸ (A1r+1)", 17, Problem::page_read_as_leaf, "A-B⁸(A1+1)"},
         {"A-B⁸ (A1v torn)", 16, Problem::none, "A-B⁸(A1v torn)"},
         {"A-B⁸ (A1rb blank)", 16, Problem::none, "A-B⁸(A1rb blank)"}});
}

TEST_CASE("a number of leaves after a sign is no name of a leaf: the last are meant, and it is doubted") {
  check({{"A-B⁸ (−2 leaves)", 14, Problem::place_not_stated, "A-B⁸(−B7-8)"},
         {"A-B⁸ (-1 leaf)", 15, Problem::place_not_stated, "A-B⁸(−B8)"},
         {"A-B⁸ (−2 ll.)", 14, Problem::place_not_stated, "A-B⁸(−B7-8)"},
         {"A-B⁸ (±2 leaves)", 16, Problem::place_not_stated, "A-B⁸(±B7-8)"},
         {"A-B⁸ (−2 blank leaves)", 14, Problem::place_not_stated, "A-B⁸(−B7-8, blank leaves)"},
         {"A-B⁸ (less 2 leaves)", 14, Problem::wanting_read_as_deletion, "A-B⁸(−B7-8)"},
         {"A-B⁸ (wants 2 leaves)", 14, Problem::wanting_read_as_deletion, "A-B⁸(−B7-8)"},
         {"A-B⁸ (−8 leaves)", 8, Problem::place_not_stated, "A-B⁸(−B1-8)"},
         {"A-B⁸ (−2)", 15, Problem::none, "A-B⁸(−B2)"},
         {"A-B⁸ (−B2 leaf)", 15, Problem::none, "A-B⁸(−B2, leaf)"}});
  CHECK(read_formula("A-B⁸ (−9 leaves)").error().problem == Problem::no_such_leaf);
  CHECK(read_formula("A-B⁸ (−0 leaves)").error().problem == Problem::no_such_leaf);
}

TEST_CASE("leaves that are only named after a cancel are doubted one by one, and read back") {
  check({{"A-C⁸ (cancel A1; B2,3)", 24, Problem::text_not_read, "A-C⁸(±A1)(B2)(3)"},
         {"A-C⁸ (A1 a cancel; B2, C3, C4)", 24, Problem::text_not_read, "A-C⁸(±A1)(B2)(C3)(C4)"},
         {"A-C⁸ (cancel A1; B2, torn)", 24, Problem::text_not_read, "A-C⁸(±A1)(B2)(torn)"}});
}

TEST_CASE("a volume in the words after a formula is told, for its leaves are not counted") {
  check({{"v. 1: A-C⁸, 24 leaves. v. 2: A-B⁸", 24, Problem::text_not_read, "v. 1: A-C⁸, 24 leaves. v. 2: A-B⁸"},
         {"A-C⁸, 24 leaves; Bd. II: A-B⁸", 24, Problem::text_not_read, "A-C⁸, 24 leaves; Bd. II: A-B⁸"},
         {"A-C⁸, pp. [48]; vol. 2: A-B⁸", 24, Problem::text_not_read, "A-C⁸, pp. [48]; vol. 2: A-B⁸"},
         {"v. 1: A-C⁸; v. 2: A-B⁸, 40 leaves", 40, Problem::none, "v. 1: A-C⁸; v. 2: A-B⁸, 40 leaves"},
         {"A-C⁸, 24 leaves, v. 2", 24, Problem::none, "A-C⁸, 24 leaves, v. 2"}});
}

TEST_CASE("the only quotation mark of a text, at one of its ends, is left out, and it is told") {
  for (std::string const mark : {"\"", "'", "\u201c", "\u2018", "\u2019", "\u201d", "\u201e", "\u00ab", "\u00bb"}) {
    CAPTURE(mark);
    check({{("8°: A-C⁸" + mark).c_str(), 24, Problem::lone_quotation_mark, "8°: A-C⁸"},
           {("8°: A-C⁸ " + mark + ".").c_str(), 24, Problem::lone_quotation_mark, "8°: A-C⁸"},
           {("8°: A-C⁸(−C8)." + mark).c_str(), 23, Problem::lone_quotation_mark, "8°: A-C⁸(−C8)"}});
    CHECK(!read_formula("A⁸ " + mark + "C⁸"));
    CHECK(!read_formula("A⁸" + mark + " B⁸" + mark + "'"));
  }
  check({{"\"8°: A-C⁸", 24, Problem::lone_quotation_mark, "8°: A-C⁸"},
         {"\u201eA-C⁸", 24, Problem::lone_quotation_mark, "A-C⁸"}});
}
