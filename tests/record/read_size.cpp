// SPDX-License-Identifier: MIT
// Sizes against the worked examples of the rules. Rule numbers are those of DCRMR (RDA edition of the rules for rare
// materials, 2023), in brackets those of DCRM(B). 18 cm is more than 17 and at most 18: 6.24.3.1 (5D1.1).
#include <bifolium/core/message.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/record/read_size.hpp>
#include <bifolium/record/recording.hpp>

#include "check.hpp"

#include <array>
#include <cstdint>

using namespace bifolium;

namespace {
SizeStatement size(std::string_view text) {
  auto const read = read_size(text);
  REQUIRE_MESSAGE(read, text);
  return *read;
}
constexpr SizeRange cm(int whole) { return {10.0 * (whole - 1), 10.0 * whole}; }
} // namespace

TEST_CASE("a stated size is an interval, since catalogues count up") {
  CHECK(size("18 cm").height == SizeRange{170, 180}); // DCRMR 6.24.3.1
  CHECK(size("99 mm").height == SizeRange{98, 99});   // the same, under 10 cm
  CHECK(size("18 cm").height->contains(17.1_cm));
  CHECK(!size("18 cm").height->contains(17_cm));
  CHECK(size("18 cm").height->contains(18_cm));
  // 6.24.3.2: where one side is in millimetres, both are
  CHECK(size("95 x 120 mm").height == SizeRange{94, 95});
  CHECK(size("95 x 120 mm").width == SizeRange{119, 120});
  // common practice, no source: dealers measure to the nearest millimetre
  CHECK(size("187 mm").height == SizeRange{186.5, 187.5});
  CHECK(size("18.4 cm").height == SizeRange{183.5, 184.5});
  CHECK(size("18,4 cm").height == size("18.4 cm").height);
}

TEST_CASE("both sides, sets, and what was issued folded") {
  // DCRMR 6.24.333
  CHECK(size("20 x 32 cm").width == cm(32));
  CHECK(size("20 × 32 cm") == size("20 x 32 cm"));
  CHECK(size("20 cm x 32 cm") == size("20 x 32 cm")); // constructed
  CHECK(size("20 x 8 cm").width == cm(8));
  // .335.2: from the lowest to the tallest volume
  CHECK(size("24-28 cm").height == cm(24));
  CHECK(size("24-28 cm").tallest == cm(28));
  // .35: sheets
  CHECK(size("32 x 25 cm").height == cm(32));
  auto const folded = size("22 x 28 cm, folded to 22 x 10 cm");
  CHECK(folded.width == cm(28));
  CHECK(folded.folded_height == cm(22));
  CHECK(folded.folded_width == cm(10));
  // .37: a box is not the book
  constexpr std::string_view boxed = "33 cm, in box 34 x 25 x 6 cm";
  CHECK(size(boxed).height == cm(33));
  REQUIRE(size(boxed).unread.size() == 1);
  CHECK(size(boxed).unread[0].of(boxed) == "in box 34 x 25 x 6 cm");
}

TEST_CASE("height and width may be labelled, and come in either order") { // common practice, no source
  for (std::string_view const text :
       {"187 x 114 mm", "187 × 114 mm", "187 by 114 mm", "187 mm by 114 mm", "187 mm (h) x 114 mm (w)",
        "187 (h) x 114 (w) mm", "187 x 114 mm (h x w)", "187 × 114 mm (H × W)", "114 x 187 mm (w x h)",
        "114 (w) x 187 (h) mm", "114 mm (W) x 187 mm (H)", "h. 187 mm, w. 114 mm", "Height 187 mm; width 114 mm",
        "mm 187x114"}) {
    INFO(text);
    auto const read = size(text);
    CHECK(read.height == SizeRange{186.5, 187.5});
    CHECK(read.width == SizeRange{113.5, 114.5});
    CHECK(read.unread.empty());
  }
  for (std::string_view const text :
       {"leaf 187 mm", "leaf: 187 mm", "leaf size: 187 mm", "page size 187 mm", "leaf height 187 mm"}) {
    INFO(text);
    CHECK(size(text).height == SizeRange{186.5, 187.5});
    CHECK(size(text).of_leaf);
  }
  constexpr std::string_view both = "type page 150 x 90 mm; leaf 187 x 114 mm"; // the type page is not the leaf
  CHECK(size(both).height == SizeRange{186.5, 187.5});
  REQUIRE(size(both).unread.size() == 1);
  CHECK(size(both).unread[0].of(both) == "type page 150 x 90 mm");
  CHECK(size("24 to 28 cm").tallest == cm(28));
}

TEST_CASE("the binding is stated apart from 3 cm on; else the leaf may be lower") {
  auto const bound = size("12 cm bound to 20 cm"); // DCRM(B) 5D1
  CHECK(bound.height == cm(12));
  CHECK(bound.binding == cm(20));
  CHECK(bound.leaf_height() == cm(12));
  auto const block = size("text block 12 cm, in binding 20 cm"); // DCRMR 6.24.331.2
  CHECK(block.height == bound.height);
  CHECK(block.binding == bound.binding);
  CHECK(block.of_leaf);
  CHECK(size("24 cm, bound to 26 cm").binding == cm(26)); // constructed
  CHECK(size("20 cm").leaf_height() == SizeRange{160, 200});
}

TEST_CASE("what was measured may be said after the measure") { // common practice of dealers, no source
  for (std::string_view const text :
       {"187 x 114 mm (leaf)", "187 x 114 mm (leaves)", "187 x 114 mm (leaf size)", "187 x 114 mm (text block)",
        "187 x 114 mm (page)", "leaf 187 x 114 mm", "Leaf: 187 x 114 mm", "sheet 187 x 114 mm"}) {
    INFO(text);
    auto const read = size(text);
    CHECK(read.of_leaf);
    CHECK(read.height == SizeRange{186.5, 187.5});
    CHECK(read.width == SizeRange{113.5, 114.5});
    CHECK(read.unread.empty());
  }
  for (std::string_view const text : {"22 cm (binding)", "binding 22 cm", "22 cm (bound)", "Einband 22 cm"}) {
    INFO(text);
    CHECK(size(text).height == cm(22)); // by the rules the height of a book is that of its binding
    CHECK(size(text).leaf_height() == SizeRange{180, 220});
    CHECK_FALSE(size(text).binding);
  }
  CHECK(size("22 cm (binding), 20 cm (leaf)").binding == cm(22));
  CHECK(size("22 cm (binding), 20 cm (leaf)").height == cm(20));
  for (std::string_view const text :
       {"150 x 95 mm (type page)", "type page 150 x 95 mm", "image 20 x 15 cm", "25 x 20 x 5 cm (box)"}) {
    INFO(text);
    CHECK(read_size(text).error().problem == Problem::size_of_no_leaf);
    auto const with_leaf = std::string{text} + ", 187 mm (leaf)";
    CHECK(size(std::string_view{with_leaf}).height == SizeRange{186.5, 187.5});
    CHECK(size(std::string_view{with_leaf}).unread.size() == 1);
  }
}

TEST_CASE("the word in before another word is not the unit") {
  for (std::string_view const text : {"20 cm in slipcase 25 cm", "20 cm in box 25 cm", "20 cm, in case 25 cm",
                                      "20 cm in slipcase", "20 cm in a case of 25 cm", "20 cm in morocco"}) {
    INFO(text);
    CHECK(size(text).height == cm(20));
  }
  CHECK((*read_size("187 in slipcase", SheetUnit::mm)).height == SizeRange{186.5, 187.5});
  for (std::string_view const text : {"7 in", "7 in.", "7 in x 5 in", "7 in by 5 in", "7 in. tall", "7 in high"}) {
    INFO(text);
    CHECK(size(text).height == size("7 inches").height);
  }
}

TEST_CASE("words for units, height and sheets") { // common practice, no source
  for (std::string_view const text :
       {"20 cms", "20 cms.", "20 CM", "20 Cm.", "20 centimètres", "20 Zentimeter", "20 centimetri", "20 centímetros",
        "H 20 cm", "h 20 cm", "H. 20 cm", "Höhe 20 cm", "haut. 20 cm", "Haut. 20 cm", "alt. 20 cm", "Height: 20 cm"}) {
    INFO(text);
    CHECK(size(text).height == cm(20));
    CHECK(size(text).unread.empty());
  }
  CHECK(size("200 millimètres").height == size("200 mm").height);
  for (std::string const word : {"Millimeter", "millimetre", "milímetros", "MM."})
    CHECK(size(std::string_view{"200 " + word}).height == size("200 mm").height);
  for (std::string const word : {"inches", "Inch", "in", "in.", "\"", "\u2033"})
    CHECK(size(std::string_view{"8 " + word}).height == size("8 in.").height);
  for (std::string const word : {"lignes", "ligne", "lig.", "Lignes"})
    CHECK(size(std::string_view{"6 pouces 11 " + word}).height == size("6 pouces 11 lignes").height);
  CHECK(!read_size("11 lignes"));
  CHECK(size("20 cm approx.").height == SizeRange{180, 210});
  CHECK(size("20 cm approx.").approximate);
  CHECK(size("24-28 x 18 cm").tallest == cm(28));
  CHECK(size("24-28 x 18 cm").width == cm(18));
  CHECK(size("48 x 30 cm. fold. to 24 x 15 cm.").folded_height == cm(24));
}

TEST_CASE("a format after the size has its gatherings, and words about the paper") { // common practice, no source
  CHECK(size("20 cm (8vo in 4s)").gathered == Cycle(4));
  CHECK(size("27 cm (fol. in 8s)").gathered == Cycle(8));
  CHECK_FALSE(size("20 cm (8vo)").gathered);
  CHECK(size("20 cm (4to & 8vo)").formats.size() == 2);
  CHECK(size("In 8°, 20 cm").formats.size() == 1);
  for (std::string_view const text : {"25 cm (royal 4to)", "25 cm (Imperial 4to)", "25 cm (demy 4to in 8s)"}) {
    INFO(text);
    REQUIRE(size(text).formats.size() == 1);
    CHECK(size(text).formats[0].leaves_to_sheet() == 4);
    REQUIRE(size(text).unread.size() == 1); // the name of the paper
    CHECK(text.find(size(text).unread[0].of(text)) == 7);
  }
}

TEST_CASE("formats follow the size in parentheses") {
  // DCRM(B) 5D1.3
  CHECK(size("20 cm (4to)").formats == std::vector{Format::of(4)});
  CHECK(size("20 cm (4to and 8vo)").formats == std::vector{Format::of(4), Format::of(8)});
  CHECK(size("51 x 38 cm (full-sheet)").formats == std::vector{Format::of(1)});
  CHECK(size("19 cm (8vo)").formats == std::vector{Format::of(8)});
  CHECK(size("19 cm (4to or 8vo)").formats.empty()); // constructed: neither is stated
  CHECK(size("19 cm (4to or 8vo)").unread.size() == 1);
  // a dealer's description
  auto const dealer = size("In-16° (mm 123x95)");
  CHECK(dealer.formats == std::vector{Format::of(16)});
  CHECK(dealer.height == SizeRange{122.5, 123.5});
  CHECK(dealer.width == SizeRange{94.5, 95.5});
}

TEST_CASE("inches and Paris inches") { // an inch is 25.4 mm by definition; how exactly people give it is our convention
  CHECK(size("7 1/2 in.").height->contains(7.5_in));
  CHECK(size("7½ in") == size("7 1/2 in."));
  CHECK(size("7 in").height == SizeRange{6.75 * 25.4, 7.25 * 25.4});
  CHECK(size("36 pouces").height->contains(paris_inches{36.0}));
  // with their twelfths, as read_length reads them
  CHECK(size("6 pouces 11 lignes").height->contains(*read_length("6 pouces 11 lignes")));
  CHECK(size("6 pouces 11 lignes x 4 pouces 3 lignes").width->contains(paris_inches{4.25}));
  CHECK(size("6 pouces x 4 pouces 3 lignes").width->contains(paris_inches{4.25}));
}

TEST_CASE("a text that is not a size is told with its place") {
  CHECK(read_size("19").error().problem == Problem::unit_missing);
  CHECK((*read_size("19", SheetUnit::mm)).height == SizeRange{18, 19});
  CHECK(read_size("0 cm").error().problem == Problem::not_positive);
  CHECK(read_size("").error().problem == Problem::not_a_length);
  CHECK(read_size("a book").error().problem == Problem::not_a_length);
  CHECK(read_size("1234567 cm").error().problem == Problem::number_too_large);
  CHECK(read_size("20-19 cm").error().problem == Problem::not_a_length);
  CHECK(size("ca. 19 cm").approximate);
  CHECK(size("ca. 19 cm").height == SizeRange{170, 200});
  CHECK(size("approx. 19 cm") == size("ca. 19 cm"));
  constexpr std::string_view text = "20 cm (8vo) + 1 map";
  REQUIRE(size(text).unread.size() == 1);
  CHECK(size(text).unread[0].of(text) == "+ 1 map");
}

TEST_CASE("whatever is recorded reads back as an interval that holds what was measured") { // a law
  std::uint32_t state = 20240117;
  auto const random = [&](int least, int most) {
    state = state * 1664525U + 1013904223U;
    return least + static_cast<int>((state >> 8U) % static_cast<unsigned>(most - least + 1));
  };
  int with_width = 0, bound = 0, sets = 0, folded = 0;
  for (int i = 0; i < 20'000; ++i) {
    Measured measured{.height = millimetres{random(300, 9000) / 10.0}};
    measured.width = millimetres{random(200, 9000) / 10.0};
    if (random(0, 3) == 0) measured.tallest = measured.height + millimetres{random(0, 800) / 10.0};
    if (random(0, 3) == 0) measured.binding = measured.height + millimetres{random(0, 600) / 10.0};
    measured.single_sheet = random(0, 9) == 0;
    if (measured.single_sheet && random(0, 1) == 0)
      measured.folded_height = measured.height * 0.5, measured.folded_width = *measured.width * 0.5;
    auto const recorded = recorded_size(measured);
    REQUIRE(recorded);
    std::array const formats{Format::of(std::array{2, 4, 8, 12, 16}[static_cast<std::size_t>(random(0, 4))])};
    auto const line = to_words(*recorded, formats);
    INFO(line);
    auto const read = read_size(line);
    REQUIRE(read);
    CHECK(read->unread.empty());
    CHECK(read->formats == std::vector{formats[0]});
    bool const of_binding = measured.binding.has_value() && !recorded->bound_to;
    CHECK(read->height->to >= measured.height.count() - 1e-3);
    if (!of_binding && recorded->size.in_millimetres == (measured.height < 100_mm))
      CHECK(read->height->above < measured.height.count());
    CHECK(read->width.has_value() == (recorded->size.width && !recorded->size.tallest));
    CHECK(read->tallest.has_value() == recorded->size.tallest.has_value());
    CHECK(read->binding.has_value() == recorded->bound_to.has_value());
    CHECK(read->folded_height.has_value() == recorded->folded_to.has_value());
    with_width += read->width ? 1 : 0, bound += read->binding ? 1 : 0, sets += read->tallest ? 1 : 0;
    folded += read->folded_height ? 1 : 0;
  }
  CHECK(with_width > 1000); // each of the kinds was met
  CHECK(bound > 1000);
  CHECK(sets > 1000);
  CHECK(folded > 500);
}

TEST_CASE("formats and a size, in either order and parted by semicolons") { // constructed
  for (auto text : {"8vo; 20 cm", "8vo;20 cm", "20 cm; 8vo", "20 cm (8vo)", "; 8vo; 20 cm"}) {
    INFO(text);
    CHECK(size(text).height == cm(20));
    CHECK(size(text).formats == std::vector{Format::of(8)});
    CHECK(size(text).unread.empty());
  }
  CHECK(size("4to; 8vo; 20 cm").formats == std::vector{Format::of(4), Format::of(8)});
  CHECK(size("20 cm (4to; 8vo)").formats == std::vector{Format::of(4), Format::of(8)});
}
