// SPDX-License-Identifier: MIT
// The language of folding: what it reads, what it writes back, and what it says about what is wrong.
#include <bifolium/core/message.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"

#include <algorithm>
#include <random>
#include <string>

using namespace bifolium;

namespace {

/// Reads and folds; "" when it works, else the message.
std::string trouble(std::string_view text) {
  auto const scheme = read_scheme(text);
  if (!scheme) return message(scheme.error());
  auto const folded = fold(*scheme);
  return folded ? "" : message(folded.error());
}
std::string after_sheet(std::string const& lines, std::string const& sheet = "rows 2 columns 2 long-side far-near") {
  return trouble("scheme x 4°\nsheet S " + sheet + "\n" + lines);
}

} // namespace

TEST_CASE("every attested scheme is written and read back, as itself and mirrored") {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    CHECK(*read_scheme(write_scheme(scheme)) == scheme);
    CHECK(write_scheme(scheme) == attested.text());
    CHECK(*read_scheme(write_scheme(mirrored(scheme))) == mirrored(scheme));
    CHECK(Attested::find(attested.id()) == attested);
    CHECK_FALSE(attested.source().empty());
    CHECK_FALSE(attested.what().empty());
    CHECK(scheme.format().leaves_to_sheet() ==
          format_of(*fold(scheme), FormatReading::paper_fraction).leaves_to_sheet());
  }
  CHECK_FALSE(Attested::find("9_nones"));
  CHECK(schemes::octavo.id() == "8_octavo");
  CHECK("12_long_accordion"_scheme == schemes::long_duodecimo);
}

TEST_CASE("comments, blank lines, tabs and carriage returns do not matter") {
  auto const plain = read_scheme("scheme x 2°\nsheet S rows 1 columns 2 long-side left-right\n"
                                 "fold S right-over-left 1\ngathering A S\n");
  auto const spaced = read_scheme("\r\n# a folio\r\nscheme  x\t2° # so called\r\n\r\n"
                                  "sheet S rows 1 columns 2\tlong-side left-right#\r\n"
                                  "  fold S right-over-left 1   # the only crease\r\ngathering A S");
  REQUIRE(plain);
  REQUIRE(spaced);
  CHECK(*plain == *spaced);
}

TEST_CASE("words, names and places are checked where they stand") {
  CHECK(trouble("") ==
        "line 1, column 1: found the end of the text where the first line is expected: write scheme NAME FORMAT");
  CHECK(trouble("sheet S rows 1").starts_with("line 1, column 1: found 'sheet' where the first line is"));
  CHECK(trouble("scheme x\n").starts_with("line 1, column 9: the text ends"));
  CHECK(trouble("scheme x 8\n") == "line 1, column 10: '8' is not the name of a format: write it as 8°, 8vo or octavo");
  CHECK(trouble("scheme x 8° reads upwards").starts_with("line 1, column 19: 'upwards' is not a word"));
  CHECK(trouble("scheme x 8°\n")
            .starts_with("line 2, column 1: the scheme has no sheet: write a line that begins with sheet"));
  CHECK(trouble("scheme x 8°\nfold S right-over-left 1")
            .ends_with("the scheme has no sheet: write a line that begins with sheet"));
  CHECK(after_sheet("") == "line 3, column 1: the scheme has no gathering: write a line that begins with gathering");
  CHECK(after_sheet("", "rows 0 columns 2 long-side far-near").starts_with("line 2, column 14: '0' must be more"));
  CHECK(after_sheet("", "rows 2 columns two long-side far-near")
            .starts_with("line 2, column 24: found 'two' where a whole"));
  CHECK(after_sheet("", "rows 20 columns 20 long-side far-near")
            .ends_with("the sheets of a scheme have at most 128 leaves together"));
  CHECK(after_sheet("", "rows 2 columns 2 long-side upright").starts_with("line 2, column 36: 'upright'"));
  CHECK(after_sheet("gathering A T\n") == "line 3, column 13: no piece has the name 'T'");
  CHECK(after_sheet("gathering page S\n") ==
        "line 3, column 11: 'page' is a word of the folding language: choose another name");
  CHECK(after_sheet("cut S row 1 a S\n") ==
        "line 3, column 15: another piece has the name 'S' already: choose another name");
  CHECK(after_sheet("cut S row 1 a 1b\n").starts_with("line 3, column 15: found '1b' where a name is expected"));
  CHECK(after_sheet("cut S row 1 a sixteen_letters_\n").ends_with("has more than 15 characters"));
  CHECK(after_sheet("cut S row 2 a b\n").starts_with("line 3, column 11: line 2 is not inside the piece"));
  CHECK(after_sheet("cut S row 1 a b\nfold S right-over-left 1\n").starts_with("line 4, column 6: 'S' has been cut"));
  CHECK(after_sheet("fold S right-over-left 1\ncut S row 1 a b\n")
            .starts_with("line 4, column 5: 'S' is folded already"));
  CHECK(after_sheet("fold S right-on-left 1\n").starts_with("line 3, column 8: 'right-on-left' is not a word"));
  CHECK(after_sheet("fold S right-over-left 1 over\n").starts_with("line 3, column 26: found 'over' where"));
  CHECK(after_sheet("sheet T rows 1 columns 1 long-side far-near\nfold S right-over-left 1\n"
                    "sheet U rows 1 columns 1 long-side far-near\n")
            .starts_with("line 5, column 1: describe all sheets before"));
  CHECK(after_sheet("cut S row 1 a b\ngathering A b\n") ==
        "line 3, column 13: 'a' is in no gathering: put every piece into a gathering");
  CHECK(after_sheet("gathering A S S\n")
            .starts_with("line 3, column 15: 'S' is in a gathering already: use each piece once"));
  CHECK(after_sheet("gathering A S:inner\n").starts_with("line 3, column 15: 'S' has more than one leaf: ':inner'"));
  CHECK(after_sheet("gathering A S:far\n").starts_with("line 3, column 15: 'far' is not a word"));
  CHECK(after_sheet("cut S row 1 a b\ngathering A a+b\n").starts_with("line 4, column 13: 'a' has more than one leaf"));
  CHECK(after_sheet("gathering A S page 0\n").starts_with("line 3, column 20: '0' must be more than zero"));
  CHECK(after_sheet("gathering A S page\n").starts_with("line 3, column 19: the text ends"));
  CHECK(after_sheet("gathering A\n").starts_with("line 3, column 12: the text ends"));
  // columns count characters: the degree sign is one
  CHECK(trouble("scheme x 4° read").starts_with("line 1, column 13: found 'read' where"));
}

TEST_CASE("limits are errors") {
  std::string sheets, cuts;
  for (int i = 0; i < 9; ++i) sheets += "sheet S" + std::to_string(i) + " rows 1 columns 1 long-side far-near\n";
  CHECK(trouble("scheme x 1°\n" + sheets) == "line 10, column 1: a scheme has at most 8 sheets");
  for (int i = 1; i < 24; ++i)
    cuts += "cut " + (i == 1 ? std::string{"S"} : "b" + std::to_string(i - 1)) + " column " + std::to_string(i) + " a" +
            std::to_string(i) + " b" + std::to_string(i) + "\n";
  CHECK(trouble("scheme x 1°\nsheet S rows 1 columns 40 long-side left-right\n" + cuts)
            .ends_with("a scheme has at most 40 pieces"));
  std::string folds;
  for (int i = 0; i < 65; ++i) folds += "fold S right-over-left 1\n";
  CHECK(after_sheet(folds) == "line 67, column 1: a scheme has at most 64 cuts and folds");
}

TEST_CASE("what folds to no gathering is an error with its line") {
  // the crease misses the paper
  CHECK(after_sheet("fold S far-over-near 1\nfold S far-over-near 1\ngathering A S\n") ==
        "line 4, column 22: line 1 is not inside the piece in its present position");
  // not folded up
  CHECK(after_sheet("fold S far-over-near 1\ngathering A S\n") ==
        "line 4, column 13: 'S' is still 2 leaves wide: fold it until it is one leaf wide");
  // two leaves joined at the head have no spine
  CHECK(after_sheet("fold S far-over-near 1\ngathering A S\n", "rows 2 columns 1 long-side far-near") ==
        "line 4, column 13: 'S' has no spine: one of its creases must run far-near");
  // a quarto with its spine crease made first reads 1 4 / 8 5: leaf 1 hangs on leaf 2
  CHECK(after_sheet("fold S right-over-left 1\nfold S far-over-near 1\ngathering A S\n") ==
        "line 3, column 24: in 'S' leaf 1 is not joined to its conjugate across the gutter: this folds, but not "
        "to a gathering");
}

TEST_CASE("the order of the folds is part of the layout") {
  // long twelves fold their columns first and then head to head; the other way is another imposition
  auto const text = [](char const* first, char const* last) {
    return std::string{"scheme x long 12°\nsheet S rows 2 columns 6 long-side left-right\n"} + first +
           "fold S right-over-left 4 under\nfold S right-over-left 2\n" + last +
           "fold S right-over-left 1\ngathering A S\n";
  };
  auto const columns_first = fold(*read_scheme(text("", "fold S far-over-near 1\n")));
  auto const heads_first = fold(*read_scheme(text("fold S far-over-near 1\n", "")));
  REQUIRE(columns_first);
  REQUIRE(heads_first);
  CHECK(*columns_first == *fold(schemes::long_duodecimo.scheme()));
  CHECK_FALSE(*columns_first == *heads_first);
}

TEST_CASE("copies, formes and the axis of turning are checked") {
  std::string const halves = "cut S row 1 H2 H\nfold H right-over-left 1\n";
  std::string const turned = "rows 2 columns 2 long-side far-near turned about left-right";
  CHECK(after_sheet(halves + "fold H2 right-over-left 1 under\ngathering A H\ngathering A H2:near page 1\n", turned) ==
        "");
  // turned about the wrong axis
  CHECK(after_sheet(halves + "fold H2 right-over-left 1 under\ngathering A H\ngathering A H2:near page 1\n",
                    "rows 2 columns 2 long-side far-near turned about far-near") ==
        "line 2, column 7: with this way of turning, page 2 is backed by a page of another leaf");
  // the second half laid head up instead of head down
  CHECK(after_sheet(halves + "fold H2 right-over-left 1\ngathering A H\ngathering A H2 page 1\n", turned)
            .ends_with("page 1 would be in one forme twice"));
  // the same half-sheet twice in a sheet with two formes
  CHECK(after_sheet(halves + "fold H2 right-over-left 1\ngathering A H\ngathering A H2 page 1\n") ==
        "line 7, column 1: page 1 would be in one forme twice");
  // two gatherings that begin alike but are of different makes
  CHECK(trouble(
            "scheme x 8°\nsheet S rows 2 columns 4 long-side left-right\nsheet T rows 2 columns 2 long-side far-near\n"
            "fold S right-over-left 2\nfold S far-over-near 1\nfold S right-over-left 1\n"
            "fold T far-over-near 1\nfold T right-over-left 1\ngathering A S\ngathering B T page 1\n") ==
        "line 10, column 1: gathering 'B' begins with page 1 as another one does, but has other leaves");
}

TEST_CASE("no text makes the reader do anything but answer") {
  // words of the language in random order, and random bytes
  std::mt19937 random{1501};
  char const* const words[]{
      "scheme",   "sheet",           "cut",       "fold",    "gathering", "S",   "T",      "a",  "b",
      "rows",     "columns",         "1",         "2",       "4",         "row", "column", "8°", "page",
      "far-near", "under",           "turned",    "about",   "half",      "\n",  "\n",     "#",  "+",
      ":near",    "right-over-left", "long-side", "S:inner", "\xff"};
  for (int i = 0; i < 20000; ++i) {
    std::string text = "scheme x 4°\nsheet S rows 2 columns 2 long-side far-near\n";
    for (auto n = random() % 30; n-- > 0;)
      text += words[random() % std::size(words)], text += random() % 8 != 0 ? " " : "";
    auto const scheme = read_scheme(text);
    if (!scheme) {
      auto const lines = static_cast<std::uint32_t>(std::count(text.begin(), text.end(), '\n')) + 1;
      REQUIRE(scheme.error().place->line <= lines);
      REQUIRE(scheme.error().place->column >= 1);
      continue;
    }
    REQUIRE(*read_scheme(write_scheme(*scheme)) == *scheme);
    (void)fold(*scheme);
  }
}

TEST_CASE("gatherings of the table are named by the 23 letters in their order") {
  // The alphabet of signatures has no J, no U and no W: McKerrow, An Introduction to Bibliography (1927), p. 73 (from memory)
  std::string_view const letters = "ABCDEFGHIKLMNOPQRSTVXYZ";
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const folded = *fold(scheme);
    std::size_t place = 0;
    for (int g = 0; g < scheme.gatherings(); ++g) {
      auto const name = scheme.gathering(g).name.view();
      CHECK(letters.find(name[0]) != letters.npos);
      if (folded.is_copy(g)) continue;
      CHECK(name == letters.substr(place++, 1));
    }
  }
}

TEST_CASE("a gathering without a page begins after the gathering above it, and the first with page 1") {
  auto const scheme = *read_scheme("scheme own 4°\nsheet S rows 2 columns 2 long-side far-near\ncut S row 1 top low\n"
                                   "fold top right-over-left 1\nfold low right-over-left 1\n"
                                   "gathering A top:near\ngathering B low\n");
  CHECK_FALSE(scheme.gathering(0).first_page);
  auto const folded = fold(scheme);
  REQUIRE(folded);
  CHECK(folded->first_page(0) == 1);
  CHECK(folded->first_page(1) == 5);
}
