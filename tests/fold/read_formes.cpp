// SPDX-License-Identifier: MIT
// Formes as text: what forme_text writes reads back, and what is not a forme is named with its place. The form of the
// text is the library's own; no source.
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/seen_formes.hpp>

#include "check.hpp"

#include <string>
#include <string_view>

using namespace bifolium;

namespace {

constexpr bool reads_two_pages() {
  auto const formes = read_formes("inner\n3\u2193 ?\u2191");
  if (!formes) return false;
  auto const& forme = formes->front();
  return formes->size() == 1 && forme.side == Side::inner && forme.rows == 1 && forme.columns == 2 &&
         forme.pages[0] == SeenPage{3, Head::near_edge} && forme.pages[1] == SeenPage{std::nullopt, Head::far_edge};
}
static_assert(reads_two_pages());

} // namespace

TEST_CASE("the formes of every scheme are read back from their text") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const formes = impose(*fold(attested.scheme()));
    auto const text = forme_text(formes);
    auto const read = read_formes(text);
    REQUIRE(read);
    auto expected = seen_formes(formes);
    if (text.find("\u2193") == text.npos) // one row of pages, all head up: the text says nothing of heads
      for (auto& forme : expected)
        for (auto& page : forme.pages) page.head.reset();
    CHECK(*read == expected);
  }
}

TEST_CASE("a table of numbers is the outer forme, with heads unknown") {
  auto const read = read_formes("# an octavo\r\n\r\n 8 |  9 12 5 # the far row\r\n 1 16 13 4");
  REQUIRE(read);
  REQUIRE(read->size() == 1);
  auto const& forme = read->front();
  CHECK(forme.side == Side::outer);
  CHECK(forme.sheet == 0);
  CHECK(forme.rows == 2);
  CHECK(forme.columns == 4);
  CHECK(forme.pages[7] == SeenPage{4, std::nullopt});
}

TEST_CASE("one arrow says how all pages lie") {
  auto const read = read_formes("outer\n4\u2193 5\n1 8\n? ?\u2193\n");
  REQUIRE(read);
  CHECK(read->front().pages[0].head == Head::near_edge);
  CHECK(read->front().pages[1].head == Head::far_edge);
  CHECK(read->front().pages[2].head == Head::far_edge);
  CHECK(read->front().pages[4] == SeenPage{});
  CHECK(read->front().pages[5] == SeenPage{std::nullopt, Head::near_edge});
}

TEST_CASE("formes are read as people type them") {
  auto const as_printed = *read_formes("outer\n8\u2193 9\u2193\n1 16\ninner\n10\u2193 7\u2193\n15 2\n");
  for (auto const* const text :
       {"Outer forme:\n8v, 9v\n1, 16\nINNER\n10v; 7v\n15 2\n", "outer:\n8v 9v\n1^ 16^\ninner Forme\n10v,7v,\n15,2\n"}) {
    CAPTURE(text);
    auto const read = read_formes(text);
    REQUIRE(read);
    CHECK(*read == as_printed);
  }
  CHECK(read_formes("forme forme\n1 2\n").error().problem == Problem::trailing_text);
  CHECK(read_formes("outer inner\n1 2\n").error().problem == Problem::trailing_text);
}

TEST_CASE("sheets are numbered from 1") {
  auto const read = read_formes("sheet 1\nouter\n1 8\ninner\n7 2\nsheet 2\nforme\n3 4\n");
  REQUIRE(read);
  REQUIRE(read->size() == 3);
  CHECK((*read)[1].sheet == 0);
  CHECK((*read)[2].sheet == 1);
  CHECK((*read)[2].side == Side::only);
}

TEST_CASE("what is not a forme is named with its place") {
  struct Wrong {
    std::string_view text;
    Problem problem;
    std::uint32_t line, column;
    std::string_view found;
  };
  Wrong const wrong[]{
      {"", Problem::not_a_forme, 1, 1, ""},
      {"# only a remark\n", Problem::not_a_forme, 2, 1, ""},
      {"outter\n1 2\n", Problem::not_a_forme, 1, 1, "outter"},
      {"outer\n1 x\n", Problem::not_a_forme, 2, 3, "x"},
      {"outer\n1 0\n", Problem::not_a_forme, 2, 3, "0"},
      {"outer\n1 2\u2192\n", Problem::not_a_forme, 2, 3, "2\u2192"},
      {"outer\n\u21932 1\n", Problem::not_a_forme, 2, 1, "\u21932"},
      {"outer\n1\u2193 65536\n", Problem::number_too_large, 2, 4, "65536"},
      {"outer 1\n", Problem::trailing_text, 1, 7, "1"},
      {"outer\n1 2 3\n4 5\n", Problem::row_of_other_length, 3, 1, "4"},
      {"sheet\n", Problem::not_a_number, 1, 6, ""},
      {"sheet two\n", Problem::not_a_number, 1, 7, "two"},
      {"sheet 0\n", Problem::not_a_number, 1, 7, "0"},
      {"sheet 9\n", Problem::too_many_sheets, 1, 7, "9"},
      {"sheet 1 of 2\n", Problem::trailing_text, 1, 9, "of"},
  };
  for (auto const& one : wrong) {
    CAPTURE(one.text);
    auto const read = read_formes(one.text);
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == one.problem);
    CHECK(read.error().place->line == one.line);
    CHECK(read.error().place->column == one.column);
    CHECK(read.error().found_text() == one.found);
  }
  std::string wide = "outer\n";
  for (int i = 0; i < 129; ++i) wide += "1 ";
  CHECK(read_formes(wide).error().problem == Problem::too_many_cells);
  std::string high = "outer\n";
  for (int i = 0; i < 129; ++i) high += "1\n";
  CHECK(read_formes(high).error().problem == Problem::too_many_cells);
}
