// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_pagination.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
Pagination pagination(char const* text) {
  auto const read = read_pagination(text);
  REQUIRE(read);
  return *read;
}
std::string on(Pagination const& pages, std::int64_t page) { return to_words(*printed_number(pages, page)); }
} // namespace

TEST_CASE("Roman numerals are read as old books print them") {
  // Modern values: any handbook of the numerals. viiij, iiij and CCCC: extents in EEBO-TCP headers (CC0), A03319 and others.
  STATIC_CHECK(roman_numeral("mcmxcix")->value == 1999);
  STATIC_CHECK(roman_numeral("CCCCxxviij")->value == 428);
  STATIC_CHECK(roman_numeral("viiij")->value == 9 && roman_numeral("iiij")->value == 4);
  STATIC_CHECK(roman_numeral("iiiv")->bytes == 3); // a numeral ends where it stops being one
  STATIC_CHECK(!roman_numeral("Bv"));
  STATIC_CHECK(small_roman(48) == "xlviii");
  for (int n = 1; n < 5000; ++n) CHECK(roman_numeral(small_roman(n))->value == n); // a law
}

TEST_CASE("A statement of pagination adds up to the leaves of its formula") {
  struct Described {
    char const *formula, *pages;
  };
  for (auto const& book : {
           // Rare Book School, sample descriptions by Noble and Whitesell: both the formula and the pages
           Described{"2°: [A]2 B-Y4 [$2 signed]", "pp. [4] 1-32 35-154[=152] [16]"},
           // Pryor-Johnson Rare Books, catalogue II, the Macklin Bible (1800), volumes III and V
           Described{"2°: [π]² †A-†8E²", "pp. [iv], [664]"},
           Described{"2°: π2 ‡A-‡8S2 ‡8T2(-‡8T2) a-b2", "pp. [iv], [718], [8]"},
           // Goucher College, guide to a Bede of Antwerp 1565: foliation
           Described{"4°: [asterisk]6, [triangle]4, [parallel lines]4, A-3C4", "ff. [14] 1-192 [4]"},
           // EEBO-TCP A01200 (CC0), the extent written out as a statement
           Described{"A² B-5H⁴ 5I²", "pp. [34] 1-747 [i.e. 759] [7]"},
       }) {
    INFO(book.formula);
    auto const formula = read_formula(book.formula);
    REQUIRE(formula);
    auto const pages = pagination(book.pages);
    CHECK(pages.pages() == formula->pages());
    CHECK((*compare_extent(*formula, pages)).verdict == ExtentAgrees::agrees);
  }
}

TEST_CASE("A figure in brackets is so many pages, or the number of one") { // constructed, after Bowers's two uses
  auto const pages = pagination("pp. [8] 1-205 [206]");
  CHECK(pages.pages() == 8 + 206);
  CHECK(on(pages, 8) == "unnumbered");
  CHECK(on(pages, 9) == "1");
  CHECK(on(pages, 213) == "205");
  CHECK(on(pages, 214) == "[206]");
  CHECK(!printed_number(pages, 215));
  CHECK(!printed_number(pages, 0));
  CHECK(pagination("pp. [i-iv] v-viii, [1] 2-205 [206-208]").pages() == 8 + 208);
  CHECK(pagination("pp. 1-2 [3] 3-10").pages() == 2 + 3 + 8); // 3 comes next: the bracket cannot be page 3
  auto const either = pagination("pp. 1 [2]");
  REQUIRE(either.warnings().size() == 1);
  CHECK(either.warnings()[0].problem == Problem::bracket_read_as_number);
  CHECK(either.warnings()[0].place->column == 7);
}

TEST_CASE("A foliation numbers rectos") { // the extent: EEBO-TCP A01466 (CC0), [2], 152 leaves
  auto const leaves = pagination("ff. [2] 1-152");
  CHECK(leaves.pages() == 308);
  CHECK(on(leaves, 5) == "1");
  CHECK(on(leaves, 6) == "unnumbered");
  auto const book = *read_formula("[A]2 B-U8");
  CHECK(to_words(*printed_number(book, leaves, *read_reference(book, "B2r"))) == "2");
  auto const found = pages_numbered(leaves, 152);
  REQUIRE(found.size() == 1);
  CHECK(write_reference(book, *reference_of_page(book, found[0].page)) == "V8r");
}

TEST_CASE("Units after their numbers apply to the numbers before them, as in an extent") {
  // generated: one to three groups of a number of pages without numbers and a last page, each with a unit of its own
  struct Unit {
    std::string_view word;
    PageUnit counts;
  };
  constexpr Unit units[]{{"p.", PageUnit::pages},          {"pages", PageUnit::pages}, {"S.", PageUnit::pages},
                         {"leaves", PageUnit::leaves},     {"ff.", PageUnit::leaves},  {"Bl.", PageUnit::leaves},
                         {"ff. n. ch.", PageUnit::leaves}, {"h.", PageUnit::leaves},   {"p. l.", PageUnit::leaves}};
  for (auto const& first : units)
    for (auto const& second : units)
      for (auto const& third : units) {
        std::string const text =
            "[4] " + std::string{first.word} + ", 120 " + std::string{second.word} + ", [2] " + std::string{third.word};
        CAPTURE(text);
        auto const in_pages = [](Unit const& unit, int number) {
          return unit.counts == PageUnit::leaves ? 2 * number : number;
        };
        auto const read = read_pagination(text);
        REQUIRE(read);
        CHECK(read->pages() == in_pages(first, 4) + in_pages(second, 120) + in_pages(third, 2));
        CHECK(read->pages() == read_extent(text).value().pages());
      }
  CHECK(write_pagination(*read_pagination("4 p. l., 120 p.")) == "p. l. [4] pp. 1-120");
  // numbers after the last unit: of the same unit, with a doubt
  auto const rest = *read_pagination("[4] Bl., 120");
  CHECK(rest.pages() == 8 + 240);
  REQUIRE(rest.warnings().size() == 1);
  CHECK(rest.warnings()[0].problem == Problem::pages_without_unit);
  // a unit at the beginning applies from there on
  CHECK(read_pagination("pp. 1-64, ff. 65-100").value().pages() == 64 + 2 * 36);
  CHECK(read_pagination("1-64 pp., ff. 65-100").value().pages() == 64 + 2 * 36);
}

TEST_CASE("A number may be on two pages, or on none") { // constructed
  auto const pages = pagination("pp. [4] 1-32 35-96 95-120, ²1-30 [misprinting 45 as 54, '207' for 20]");
  CHECK(pages_numbered(pages, 33).empty());
  CHECK(pages_numbered(pages, 96).size() == 2);
  CHECK(pages_numbered(pages, 7).size() == 2); // once in each sequence
  auto const wrong = pages_numbered(pages, 54);
  REQUIRE(wrong.size() == 2);
  CHECK(wrong[0].bears.should_be == 45);
  CHECK(to_words(wrong[0].bears) == "54 [for 45]");
  CHECK(!wrong[1].bears.misprinted());
  CHECK(pages_numbered(pages, 207).front().bears.should_be == 20);
  CHECK(pages_numbered(pages, 20).size() == 2); // the page that should bear it is found too, and ²20
  CHECK(pages_numbered(pages, 3, Numerals::roman).empty());
  CHECK(on(pages, 4 + 32 + 1) == "35");
}

TEST_CASE("Numbers omitted and repeated may be said in words") { // constructed: the two ways of saying it count alike
  CHECK(pagination("pp. 1-120 [33-34 omitted]") == pagination("pp. 1-32 35-120"));
  CHECK(pagination("pp. 1-120 (repeating 95-96)") == pagination("pp. 1-96 95-120"));
  CHECK(pagination("pp. 1-96 95-120 [95-96 repeated; 33 omitted]") == pagination("pp. 1-32 34-96 95-120"));
  auto const absent = pagination("pp. 1-20 [30 omitted; misprinting 40 as 4]");
  CHECK(absent.warnings().size() == 2);
  CHECK(absent.misprints.empty());
}

TEST_CASE(
    "A run at fault in a place not stated says that its numbers are doubtful") { // EEBO-TCP A01612 (CC0), inverted
  auto const pages = pagination("pp. [4] 1-21 [i.e. 17]");
  CHECK(pages.pages() == 21);
  CHECK(printed_number(pages, 10)->doubtful);
  CHECK(on(pages, 21) == "21?");
  CHECK(pages_numbered(pages, 21).front().page == 21);
}

TEST_CASE("Statements are written in one way, and read back the same") { // a law
  for (auto text :
       {"pp. [8] 1-205 [206]", "ff. [2] 1-152", "pp. [4] 1-32 35-154[=152] [16]", "pp. viii, 205, [3]",
        "pp. [i-iv] v-viii, [1] 2-205 [206-208]", "pp. 1 [2] 3-10", "pp. 1-2 [3] 3-10", "pp. 1-9 [10 unnumbered]",
        "pp. [4] 1-32, ²1-44 ²[45] [misprinting 15 as 51, '30' for 13, ²7 as 9; 20-21 omitted]", "pp. [unpaged]",
        "pp. 1-7, 8, 10", "ff. i-xij, [1], CCxxxi-CCCCxxviij [i.e. 430]", "pp. 1-200+", "pp. [4] 1-20; 1-30"})
    for (bool const approximate : {false, true}) {
      INFO(text);
      auto once = pagination(text);
      if (approximate && once.runs.empty()) continue; // no number is there to be approximate
      once.approximate = approximate;
      auto const written = write_pagination(once);
      INFO(written);
      auto const again = read_pagination(written);
      REQUIRE(again);
      CHECK(*again == once);
      CHECK(write_pagination(*again) == written);
    }
  CHECK(write_pagination(*read_pagination("approximately 200 p.")) == "pp. 1-200 (approximately)");
  CHECK(write_pagination(pagination("pp. [8], 1–205, [206]")) == "pp. [8] 1-205 [206]");
}

TEST_CASE("A text that is not a pagination is refused at the place where it stops being one") {
  CHECK(read_pagination("pp. [8] 10-5").error().place->column == 9);
  CHECK(read_pagination("").error().problem == Problem::not_a_pagination);
  CHECK(!read_pagination("pp. [8"));
  CHECK(!read_pagination("pp. 0"));
  CHECK(read_pagination("pp. 1-99999999999999999999").error().problem == Problem::number_too_large);
  CHECK(pagination("pp. [8] 1-20; 4 plates").warnings().empty());
  CHECK(pagination("pp. [8] 1-20 bound with others").warnings().size() == 1);
}

TEST_CASE("The pages are found in what follows a formula") {
  auto const book = *read_formula("2°: [A]2 B-Y4 [$2 signed]; 86 leaves, pp. [4] 1-32 35-154[=152] [16]"); // RBS
  auto const pages = pagination_of(book);
  REQUIRE(pages);
  CHECK(to_words(*printed_number(book, *pages, *read_reference(book, "B1r"))) == "1");
  CHECK(to_words(*printed_number(book, *pages, *read_reference(book, "F1r"))) == "35");
  CHECK(pagination_of(*read_formula("A-B8, 16 ll.")).error().problem == Problem::not_stated);
}

TEST_CASE("A misprint of a page that turns out to be omitted is a doubt") { // regression: found by fuzzing
  auto const read = *read_pagination("pp. 1-55 [misprinting 2 as 3, omitting 2]");
  CHECK(read.misprints.empty());
  REQUIRE(read.warnings().size() == 1);
  CHECK(read.warnings()[0].problem == Problem::fault_of_no_page);
  CHECK(read.warnings()[0].place->column == 23);
  CHECK(write_pagination(read) == "pp. 1 3-55");
  CHECK((*read_pagination("pp. 1-55 [misprinting 2 as 3, omitting 12]")).misprints.size() == 1);
}

TEST_CASE(
    "A number alone after ranges is the last of its sequence, and that is said") { // constructed; pages by addition
  auto const read = *read_pagination("pp. 1-120, xvi");
  CHECK(read.pages() == 120 + 16);
  REQUIRE(read.warnings().size() == 1);
  CHECK(read.warnings()[0].problem == Problem::number_read_as_total);
  CHECK(read.warnings()[0].found_text() == "xvi");
  CHECK(read.warnings()[0].place->column == 12);
  CHECK((*read_pagination("pp. i-xvi, 205")).pages() == 16 + 205);
  CHECK((*read_pagination("pp. i-xvi, 205")).warnings().size() == 1);
  CHECK((*read_pagination("pp. xvi, 205")).warnings().empty()); // no number here is of a range
  CHECK((*read_extent("1-120, xvi p.")).pages() == 120 + 16);   // an extent always names the last number
  CHECK((*read_extent("1-120, xvi p.")).warnings().empty());
  CHECK((*read_pagination("pp. 1-120, 122")).pages() == 121); // one page, of a sequence that has begun
  CHECK((*read_pagination("pp. 1-120, 122")).warnings().empty());
}

TEST_CASE("Numbers are omitted and repeated inside a run, at its ends as far as that can be") { // constructed
  struct Told {
    char const* text;
    std::int64_t pages;
    bool doubted;
  };
  Told const all[]{{"pp. 1-96 [95-96 repeated]", 98, false},
                   {"pp. 1-96 [1-2 repeated]", 98, false},
                   {"pp. 1-96 [96 repeated]", 97, false},
                   {"pp. 1-96 [95-98 repeated]", 96, true}, // 97 and 98 are on no page
                   {"pp. 3-96 [2-4 repeated]", 94, true},
                   {"pp. 1-96 [2 omitted]", 95, false},
                   {"pp. 1-96 [94-95 omitted]", 94, false},
                   {"pp. 1-96 [1 omitted]", 96, true}, // the run itself says that it has its ends
                   {"pp. 1-96 [95-96 omitted]", 96, true},
                   // where the numbers of a run are not certain, none of them can be found twice or be missed
                   {"pp. 1-21 [i.e. 17] [5-6 repeated]", 17, true},
                   {"pp. 1-21 [i.e. 17] [5-6 omitted]", 17, true},
                   {"pp. 1-21 [i.e. 17] [misprinting 5 as 6]", 17, false},
                   {"pp. 1-96 [misprinting 96 as 69]", 96, false},
                   {"pp. 1-96 [misprinting 1 as 7]", 96, false},
                   {"pp. 1-96 [misprinting 97 as 79]", 96, true},
                   {"pp. 3-96 [misprinting 2 as 5]", 94, true}};
  for (auto const& one : all) {
    INFO(one.text);
    auto const read = pagination(one.text);
    CHECK(read.pages() == one.pages);
    CHECK(read.warnings().size() == (one.doubted ? 1U : 0U));
    if (one.doubted) CHECK(read.warnings()[0].problem == Problem::fault_of_no_page);
    bool const misprint = std::string_view{one.text}.find("misprinting") != std::string_view::npos;
    CHECK(read.misprints.size() == (misprint && !one.doubted ? 1U : 0U));
  }
}
