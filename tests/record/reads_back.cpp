// SPDX-License-Identifier: MIT
// Whatever is written reads back: a law for every writer of record/, over values made at random (a generator with a fixed
// seed; BIFOLIUM_CASES in the environment makes more). The answer of each case is known from how it was made, so the law is
// not only that two functions agree.
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>

#include "check.hpp"

#include <array>
#include <cstdint>
#include <cstdlib>
#include <string>

using namespace bifolium;

namespace {

class Random {
  std::uint64_t state_;

public:
  explicit Random(std::uint64_t seed) : state_{seed} {}
  /// From least to most, both included.
  std::int64_t operator()(std::int64_t least, std::int64_t most) {
    state_ = state_ * 6364136223846793005U + 1442695040888963407U;
    return least + static_cast<std::int64_t>((state_ >> 33U) % static_cast<std::uint64_t>(most - least + 1));
  }
  bool one_in(int n) { return (*this)(1, n) == 1; }
};
int cases(int usual) {
  auto const* more = std::getenv("BIFOLIUM_CASES");
  return more == nullptr ? usual : std::atoi(more);
}

/// A statement of pages that is made run by run, and the pages it has by that.
struct Made {
  std::string text;
  std::int64_t pages{};
};
/// pp. [8] 1-205 [206] ²1-8: in the statement's way, where all ends are written.
Made statement(Random& random) {
  Made made{random.one_in(4) ? "ff." : "pp.", 0};
  std::int64_t worth = made.text == "ff." ? 2 : 1;
  int series = 1;
  for (auto runs = random(1, 6), r = runs; r > 0; --r) {
    if (r < runs && random.one_in(8)) {
      worth = 3 - worth;
      made.text += worth == 2 ? " ff." : " pp.";
    }
    auto const count = random(2, 300);
    switch (random(0, 6)) {
    case 0: // so many without numbers
      made.text += " [" + std::to_string(count) + " unnumbered]";
      made.pages += worth * count;
      break;
    case 1: { // a sequence of its own
      made.text += ' ';
      made.text.append(raised(++series).view());
      made.text += "1-" + std::to_string(count);
      made.pages += worth * count;
      break;
    }
    case 2: { // inserted numbers
      auto const first = random(1, 500);
      made.text += " *" + std::to_string(first) + "-*" + std::to_string(first + count - 1);
      made.pages += worth * count;
      break;
    }
    case 3: { // Roman, without its numbers printed
      made.text += " [i-";
      made.text.append(small_roman(count).view());
      made.text += ']';
      made.pages += worth * count;
      break;
    }
    case 4: { // lettered: none of a to i is read in two ways
      auto const last = random(1, 9);
      made.text += std::string{" a-"} + static_cast<char>('a' + last - 1);
      made.pages += worth * last;
      break;
    }
    default: {
      auto const first = random(1, 500);
      made.text += ' ' + std::to_string(first) + '-' + std::to_string(first + count - 1);
      made.pages += worth * count;
    }
    }
  }
  return made;
}
/// [8], 205, [3] p., 12 leaves: in the extent's way, where a number is the last of its sequence.
Made extent(Random& random, bool plates) {
  Made made;
  std::int64_t before = 0;
  for (auto groups = random(1, 3); groups > 0; --groups) {
    bool const leaves = random.one_in(4);
    std::int64_t count = 0;
    for (auto runs = random(1, 4), r = runs; r > 0; --r) {
      auto const number = random(1, 400);
      if (!made.text.empty()) made.text += ", ";
      if (random.one_in(3) && number != before + 1) // 205, [206] is page 206
        made.text += '[' + std::to_string(number) + ']';
      else if (random.one_in(4))
        made.text.append(small_roman(number).view());
      else
        made.text += std::to_string(number);
      count += number, before = number;
    }
    made.text += leaves ? " leaves" : " p.";
    made.pages += leaves ? 2 * count : count;
  }
  if (plates) made.text += ", [" + std::to_string(random(1, 40)) + "] leaves of plates";
  return made;
}
Formula formula(Random& random, std::string const& after = "") {
  std::string text = "8°: ";
  if (random.one_in(2)) text += "π" + std::string{raised(2 * static_cast<int>(random(1, 3))).view()} + ' ';
  auto const last = static_cast<char>('B' + random(0, 6));
  text += std::string{"A-"} + last + std::string{raised(8).view()} + ' ';
  text += static_cast<char>(last + 1);
  text += std::string{raised(4).view()} + "(−" + static_cast<char>(last + 1) + "4)";
  auto const read = read_formula(text + after);
  REQUIRE_MESSAGE(read, (text + after));
  return *read;
}
std::string signing(Random& random) {
  std::string text = "[$" + std::to_string(random(1, 5));
  auto const place = [&] {
    return std::string(1, static_cast<char>('A' + random(0, 5))) + std::to_string(random(1, 6));
  };
  if (random.one_in(2)) {
    text += " (−" + place();
    if (random.one_in(2)) text += ", " + place();
    if (random.one_in(2)) text += "; +" + place();
    text += ')';
  }
  text += " signed";
  if (random.one_in(3)) text += "; missigning " + place() + " as '" + place() + "'";
  return text + ']';
}

} // namespace

TEST_CASE("paginations are written so that they read back the same, and their extents have as many pages") {
  Random random{20240305};
  for (int i = 0, n = cases(4000); i < n; ++i) {
    auto const made = statement(random);
    INFO(made.text);
    auto const read = read_pagination(made.text);
    REQUIRE(read);
    REQUIRE(read->pages() == made.pages);
    auto const written = write_pagination(*read);
    INFO(written);
    auto const again = read_pagination(written);
    REQUIRE(again);
    CHECK(*again == *read);
    CHECK(write_pagination(*again) == written);
    auto const line = extent_line(*read);
    INFO(line);
    auto const back = read_extent(line);
    REQUIRE(back);
    CHECK(back->pages() == made.pages);
    CHECK(back->unread.empty());
    CHECK(back->warnings().empty());
  }
}

TEST_CASE("extents are written so that they have as many pages, plates and volumes when they are read") {
  Random random{7};
  for (int i = 0, n = cases(4000); i < n; ++i) {
    auto made = extent(random, random.one_in(2));
    bool const volumes = random.one_in(4);
    if (volumes) made.text = "3 v. in 2 (" + made.text + ')';
    INFO(made.text);
    auto const read = read_extent(made.text);
    REQUIRE(read);
    REQUIRE(read->pages() == made.pages);
    auto const line = extent_line(*read);
    INFO(line);
    auto const again = read_extent(line);
    REQUIRE(again);
    CHECK(again->pages() == made.pages);
    CHECK(again->plates == read->plates);
    CHECK(again->volumes == read->volumes);
    CHECK(again->bound_in == read->bound_in);
    CHECK(again->unread.empty());
    for (auto const& plates : read->plates) CHECK((*read_extent(plates_line(plates))).plates == std::vector{plates});
    // as a physical description
    auto const whole = physical_description(line, "19 cm (8vo)");
    auto const described = read_physical_description(whole);
    REQUIRE(described);
    REQUIRE(described->extent);
    CHECK(described->extent->pages() == made.pages);
    REQUIRE(described->size);
    CHECK(described->size->height == SizeRange{180, 190});
    CHECK(described->size->formats == std::vector{Format::of(8)});
  }
}

TEST_CASE("notes of signatures, statements of signing and collation lines read back") {
  Random random{1706};
  for (int i = 0, n = cases(1500); i < n; ++i) {
    auto const statement_of_signing = signing(random);
    INFO(statement_of_signing);
    auto const how = read_signing(statement_of_signing);
    REQUIRE(how);
    CHECK(*read_signing(write_signing(*how)) == *how);

    auto const plain = formula(random);
    auto const note = signatures_note(plain);
    INFO(note);
    auto const read = read_signature_note(note);
    REQUIRE(read);
    CHECK(read->formula.leaves() == plain.leaves());
    CHECK(read->formula.runs() == plain.runs());
    for (auto notation : {Notation::unicode, Notation::caret})
      CHECK((*read_signature_note(signatures_note(plain, notation))).formula.leaves() == plain.leaves());

    auto const pages = statement(random);
    auto const line = collation_line(plain, {*how, *read_pagination(pages.text)});
    INFO(line);
    auto const whole = read_formula(line);
    REQUIRE(whole);
    CHECK(whole->leaves() == plain.leaves());
    CHECK(whole->format() == plain.format());
    CHECK(*signing_of(*whole) == *how);
    CHECK((*pagination_of(*whole)).pages() == pages.pages);
    CHECK(collation_line(*whole) == line);
    // the same where the statements are in the text of the formula
    auto const stated = formula(random, " " + statement_of_signing + "; 20 leaves, " + pages.text);
    auto const stated_line = collation_line(stated);
    INFO(stated_line);
    CHECK((*pagination_of(*read_formula(stated_line))).pages() == pages.pages);
    CHECK(collation_line(*read_formula(stated_line)) == stated_line);
  }
}

TEST_CASE("formats read back from all the ways in which they are written") {
  for (int leaves = 1; leaves <= Format::most_leaves; ++leaves)
    for (auto shape : {Shape::usual, Shape::oblong, Shape::agenda, Shape::broad, Shape::longer}) {
      auto const format = Format::of(leaves, shape);
      for (auto const& text : {format.symbol(), format.abbreviation(), format.name()}) {
        INFO(text.view());
        auto const read = read_format(text.view());
        REQUIRE(read);
        CHECK(*read == format);
        auto const size = read_size("19 cm (" + std::string{text.view()} + ')');
        REQUIRE(size);
        CHECK(size->formats == std::vector{format});
      }
    }
}

TEST_CASE("physical descriptions by the rules") {
  // DCRMR 0.2.6.1: extent : details ; size (format) + accompanying material. The example is constructed
  constexpr std::string_view text = "[8], 205, [3] p. : ill., maps ; 20 cm (4to) + 1 atlas";
  auto const read = read_physical_description(text);
  REQUIRE(read);
  CHECK(read->extent->pages() == 216);
  CHECK(read->details.of(text) == "ill., maps");
  CHECK(read->size->height == SizeRange{190, 200});
  CHECK(read->size->formats == std::vector{Format::of(4)});
  CHECK(read->accompanying.of(text) == "1 atlas");
  CHECK((*read_physical_description("20 cm")).size->height == SizeRange{190, 200});
  CHECK(!(*read_physical_description("20 cm")).extent);
  CHECK((*read_physical_description("[2], 152 leaves")).extent->pages() == 308);
  CHECK(!(*read_physical_description("[2], 152 leaves")).size);
  CHECK((*read_physical_description("4 v. ([4], 527; 12, 548 p.) ; 20 cm")).extent->pagination.parts() == 2);
  // formats in parts of their own, before the size or after it
  auto const formats = [](char const* line) {
    auto const described = read_physical_description(line);
    REQUIRE(described);
    CHECK(described->extent->pages() == 205);
    REQUIRE(described->size);
    CHECK(described->size->height == SizeRange{190, 200});
    return described->size->formats;
  };
  std::vector const octavo{Format::of(8)}, both{Format::of(4), Format::of(8)};
  CHECK(formats("205 p. ; 8vo ; 20 cm") == octavo);
  CHECK(formats("205 p. ; 4to; 8vo; 20 cm") == both);
  CHECK(formats("205 p. ; 4to ; 20 cm (8vo)") == both);
  CHECK(formats("205 p. ; 4to and 8vo ; 20 cm") == both);
  CHECK(formats("205 p. ; 20 cm ; 8vo") == octavo);
  CHECK(formats("205 p. ; 20 cm (4to; 8vo)") == both);
  CHECK(formats("205 p. ; fine 8vo ; 20 cm").empty()); // words that are no format
  CHECK((*read_physical_description("205 p. : ill. ; 8vo ; 20 cm")).details.of("205 p. : ill. ; 8vo ; 20 cm") ==
        "ill.");
  CHECK(!read_physical_description(""));
  CHECK(!read_physical_description("a handsome copy"));
}

TEST_CASE("texts that were not read back as they were written") { // regressions: found by fuzzing
  for (auto text : {"05; pp. 1-205;; pp. 1-205; .!", "pp.57-*6016 6 ²1-88", "1p.mm.0j", "pp. 1-142+"}) {
    INFO(text);
    auto const read = read_pagination(text);
    REQUIRE(read);
    CHECK(*read_pagination(write_pagination(*read)) == *read);
    CHECK((*read_extent(extent_line(*read))).pages() == read->pages());
  }
  for (auto text :
       {"3*6-30foll.", "[12],cols. [12], 11 2-56 , 121-568, 121", "unp.,panel [06],11 2-51 approx.124pa l"}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    auto const again = read_extent(extent_line(*read));
    REQUIRE(again);
    CHECK(again->pages() == read->pages());
    CHECK(again->pagination.approximate == read->pagination.approximate);
  }
  CHECK(!read_pagination("pp.in various foliations")); // no pages are named
}

TEST_CASE("a leaf of a gathering signed in any alphabet is written so that it reads back") {
  // After Hebrew letters a sign of direction is written, which the leaf follows.
  for (std::string const mark :
       {"A", "a", "2B", "²C", "α", "Ω", "Б", "д", "כ", "יא", "*", "**", "[par.]", "\"G&H\"", "π", "χ", "2π"}) {
    auto const formula = read_formula("8°: " + mark + "8");
    CAPTURE(mark);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    for (int leaf = 1; leaf <= 8; ++leaf) {
      auto const named = write_reference(book, Reference{*book.leaf_of_number(leaf)});
      CAPTURE(named);
      auto const again = read_reference(book, named);
      REQUIRE(again);
      CHECK(again->leaf == *book.leaf_of_number(leaf));

      auto const stated = "[$4 (-" + named + ", $3)]";
      auto const signing = read_signing(stated);
      REQUIRE(signing);
      REQUIRE(signing->exceptions.size() == 2);
      CHECK(signing->exceptions[0].place.leaf == leaf);
      auto const written = write_signing(*signing);
      CAPTURE(written);
      auto const back = read_signing(written);
      REQUIRE(back);
      CHECK(*back == *signing);
    }
  }
}
