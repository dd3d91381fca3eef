// SPDX-License-Identifier: MIT
// Published tables of sheets, leaves and formats, put to the folding of sheets: where they agree, and where they are
// wrong.
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/leaf_origin.hpp>
#include <bifolium/record/height_scale.hpp>

#include "check.hpp"
#include "data.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

using namespace bifolium;

namespace {

/// The usual leaf of a format of so many leaves.
LeafShape const& shape_of(int leaves, Shape shape = Shape::usual) {
  for (auto const& one : leaf_shapes())
    if (one.format == Format::of(leaves, shape)) return one;
  broken("no scheme makes this format");
}
LeafSize<millimetres> leaf_of(int leaves, Sheet<millimetres> sheet) { return leaf_size(shape_of(leaves).lay, sheet); }
/// A sheet for printing as Cockerell, Bookbinding and the Care of Books (1901), p. 283, lists it.
Sheet<millimetres> cockerell(std::string_view name) {
  for (auto const& size : find_sheets({.name = name, .years = {1901, 1901}, .region = Region::britain}))
    if (size.source == SheetSource::cockerell_1901) return size.sheet();
  broken("Cockerell lists no such sheet");
}
bool near(millimetres a, millimetres b, millimetres within = 0.5_mm) { return a - b < within && b - a < within; }

/// A size held upright.
struct Published {
  std::string name;
  millimetres height, width;
};
std::vector<Published> sizes_of(std::string_view set) {
  std::vector<Published> all;
  for (auto const& row : data::rows("paper_sizes.tsv", 5)) {
    if (row[0] != set) continue;
    auto const in_unit = [&](std::string const& figure) {
      return row[4] == "in" ? millimetres{inches{std::stod(figure)}} : millimetres{std::stod(figure)};
    };
    auto const a = in_unit(row[2]), b = in_unit(row[3]); // libpaper and ISO write the short side first
    all.push_back({row[1], a < b ? b : a, a < b ? a : b});
  }
  REQUIRE(!all.empty());
  return all;
}
Published size_of(std::string_view set, std::string_view name) {
  for (auto const& one : sizes_of(set))
    if (one.name == name) return one;
  broken("no such size is recorded");
}

} // namespace

TEST_CASE("octavo leaves of the British sheets are those of memoir, but for its slips") {
  // memoir.cls 3.7.19 against the sheets of Cockerell (1901)
  for (auto const& [name, sheet] : {std::pair{"foolscapvo", "foolscap"}, std::pair{"crownvo", "crown"},
                                    std::pair{"royalvo", "royal"}, std::pair{"imperialvo", "imperial"}}) {
    CAPTURE(std::string{name});
    auto const stock = size_of("memoir", name);
    auto const leaf = leaf_of(8, cockerell(sheet));
    CHECK(near(leaf.height, stock.height));
    CHECK(near(leaf.width, stock.width));
  }
  // demy: 22 1/2 / 4 is 5.625; 5.675 is a slip, since R. Hollick, 'Demy octavo' (2010), has 5 5/8 too
  auto const demy = size_of("memoir", "demyvo");
  CHECK(near(leaf_of(8, cockerell("demy")).height, demy.height));
  CHECK(near(demy.width - leaf_of(8, cockerell("demy")).width, 0.05_in, 0.01_mm));
  // post octavo of 8 x 5 in. is cut from no post of any list, but from copy, 20 x 16 in. (Tomlinson 1854)
  auto const post = size_of("memoir", "postvo");
  CHECK_FALSE(near(leaf_of(8, cockerell("post")).height, post.height));
  for (auto const& size : find_sheets({.name = "post"}))
    CHECK_FALSE(
        (near(leaf_of(8, size.sheet()).height, post.height) && near(leaf_of(8, size.sheet()).width, post.width)));
  bool copy = false;
  for (auto const& size : find_sheets({.name = "copy", .years = {1854, 1854}}))
    copy = copy ||
           (near(leaf_of(8, size.sheet()).height, post.height) && near(leaf_of(8, size.sheet()).width, post.width));
  CHECK(copy);
  // pott of 6 1/4 x 4 in.: pott is 15 x 12 1/2 in. (a list put together from several), which gives 3 3/4
  auto const pott = size_of("memoir", "pottvo");
  for (auto const& size :
       find_sheets({.name = "pott", .years = {1901, 2000}, .region = Region::britain, .memory = false}))
    CHECK(near(pott.width - leaf_of(8, size.sheet()).width, 0.25_in));
}

TEST_CASE("metric octavos are a thirty-second of quad sheets, cut 3 mm at head, tail and fore-edge") {
  // quad crown 768 x 1008 mm: media54.com; the other three from memory (BS 1413). Leaves: memoir.cls
  struct {
    char const* stock;
    double short_side, long_side;
  } const rows[]{
      {"mcrownvo", 768, 1008}, {"mlargecrownvo", 816, 1056}, {"mdemyvo", 888, 1128}, {"msmallroyalvo", 960, 1272}};
  for (auto const& [name, short_side, long_side] : rows) {
    CAPTURE(std::string{name});
    auto const stock = size_of("memoir", name);
    auto const loss =
        loss_against(shape_of(32).lay, {millimetres{short_side}, millimetres{long_side}}, {stock.height, stock.width});
    CHECK(loss == LeafLoss{6_mm, 3_mm});
  }
}

TEST_CASE("sizes of bound books, and one sheet in six formats") {
  // issuu.com/jackfower, sizes of bound books in mm, against Cockerell's sheets in inches
  struct {
    int leaves;
    char const* sheet;
    double height, width;
  } const bound[]{{4, "foolscap", 216, 171}, {8, "crown", 191, 127}, {4, "demy", 286, 222}, {2, "crown", 381, 254}};
  for (auto const& [leaves, sheet, height, width] : bound) {
    auto const leaf = leaf_of(leaves, cockerell(sheet));
    CHECK(near(leaf.height, millimetres{height}, 0.6_mm));
    CHECK(near(leaf.width, millimetres{width}, 0.6_mm));
  }
  // Webster's Third, table of book sizes (as reprinted): royal 20 x 25 in. in 2°, 4°, 8°, 16°, 32°, 64°
  struct {
    int leaves;
    double height, width;
  } const royal[]{{2, 20, 12.5}, {4, 12.5, 10}, {8, 10, 6.25}, {16, 6.25, 5}, {32, 5, 3.125}, {64, 3.125, 2.5}};
  for (auto const& [leaves, height, width] : royal) {
    auto const leaf = leaf_of(leaves, cockerell("royal"));
    CHECK(near(leaf.height, inches{height}, 0.01_mm));
    CHECK(near(leaf.width, inches{width}, 0.01_mm));
  }
  // taylorbooks.co.uk: medium octavo 9 1/2 x 6 in.; its demy octavo, 8 3/4 x 5 1/2, is untrimmed one way and trimmed
  // the other
  CHECK(near(leaf_of(8, cockerell("medium")).height, 9.5_in));
  CHECK(near(leaf_of(8, cockerell("medium")).width, 6_in));
  auto const mixed = loss_against(shape_of(8).lay, cockerell("demy"), {millimetres{8.75_in}, millimetres{5.5_in}});
  CHECK(near(mixed.height, 0_mm, 0.001_mm));
  CHECK(near(mixed.width, 0.125_in, 0.001_mm));
}

TEST_CASE("the Library Association's table of formats, and its error about 18°") {
  // Committee on Size-notation, in Quinn, Manual of Library Cataloguing (1899), Appendix B: chain lines of each format
  struct {
    int leaves;
    ChainLines chain_lines;
  } const rows[]{{2, ChainLines::vertical},    {4, ChainLines::horizontal},  {8, ChainLines::vertical},
                 {12, ChainLines::horizontal}, {16, ChainLines::horizontal}, {18, ChainLines::horizontal},
                 {32, ChainLines::vertical}};
  for (auto const& [leaves, chain_lines] : rows) {
    CAPTURE(leaves);
    if (leaves == 18)
      CHECK(shape_of(18).chain_lines != chain_lines); // see below
    else
      CHECK(shape_of(leaves).chain_lines == chain_lines);
  }
  // The table has 18° both horizontal and two thirds to three quarters as broad as high. No sheet gives both. Six
  // leaves to the long side and three to the short one have that shape on every British sheet of 1901, and chain lines,
  // parallel to the short side, stand upright in them; three by six, whose chain lines lie across, are under half as
  // broad as high.
  auto const lay = detail::divided(shape_of(18).lay);
  CHECK(lay.long_side == 6);
  CHECK(lay.short_side == 3);
  for (char const* name : {"foolscap", "crown", "post", "demy", "medium", "royal"}) {
    auto const sheet = cockerell(name);
    auto const ratio = leaf_of(18, sheet).width / leaf_of(18, sheet).height;
    CHECK(ratio >= 2 / 3.0 - 0.05);
    CHECK(ratio <= 3 / 4.0 + 0.05);
    auto const across = sheet.long_side() / 3, along = sheet.short_side() / 6;
    CHECK(along / across < 0.5);
  }
  // so a leaf of such shape with horizontal chain lines is not thought an 18°
  auto const seen = leaf_of(18, cockerell("royal"));
  auto const inference = infer_format(*observe({.height = seen.height,
                                                .width = seen.width,
                                                .chain_lines = ChainLines::horizontal,
                                                .state = LeafState::uncut,
                                                .year = 1780}),
                                      flat_priors());
  CHECK(inference.candidates.front().format != Format::of(18));
}

TEST_CASE("trade sizes fall in the Library Association's bands") {
  // the same table, heights in inches; Cockerell's sheets, untrimmed or cut by 1/8 in. at head and tail (Hollick 2010)
  struct {
    int leaves;
    char const *sheet, *symbol;
  } const rows[]{{2, "imperial", "Imp. fo."}, {2, "royal", "Roy. fo."},   {2, "demy", "fo."},
                 {4, "imperial", "Imp. 4°"},  {4, "royal", "Roy. 4°"},    {4, "demy", "4°"},
                 {4, "foolscap", "Sm. 4°"},   {8, "imperial", "Imp. 8°"}, {8, "royal", "Roy. 8°"},
                 {8, "demy", "8°"},           {8, "crown", "Sm. 8°"},     {8, "foolscap", "Sm. 8°"},
                 {16, "demy", "16°"},         {32, "demy", "24°/32°"}};
  for (auto const& [leaves, sheet, symbol] : rows) {
    CAPTURE(std::string{symbol});
    CAPTURE(std::string{sheet});
    auto const untrimmed = leaf_of(leaves, cockerell(sheet)).height;
    bool found = false;
    for (auto const height : {untrimmed, untrimmed - millimetres{0.25_in}}) {
      auto const classes = height_classes(HeightScale::british_association, height);
      for (std::size_t i = 0; i < classes.size(); ++i) found = found || std::string_view{classes[i].symbol} == symbol;
    }
    CHECK(found);
  }
}

TEST_CASE("copies whose paper a library names are cut from that paper") {
  // records of the Morgan Library, themorgan.org/incunables: format, class of paper, leaf, with their numbers
  struct {
    int number, leaves;
    char const* paper;
    double height, width;
    LeafState state;
    YearRange year;
  } const rows[]{{140567, 4, "royal", 265, 194, LeafState::unknown, 1476},
                 {134346, 2, "chancery", 300, 212, LeafState::unknown, 1473},
                 {134803, 2, "chancery", 273, 193, LeafState::unknown, {1450, 1500}},
                 {134801, 2, "chancery", 216, 145, LeafState::inlaid, {1450, 1500}},
                 {170306, 2, "chancery", 300, 207, LeafState::unknown, {1450, 1500}},
                 {134501, 4, "median", 233, 160, LeafState::unknown, {1450, 1500}}};
  for (auto const& [number, leaves, paper, height, width, state, year] : rows) {
    CAPTURE(number);
    LeafSize<millimetres> const leaf{millimetres{height}, millimetres{width}};
    auto const& shape = shape_of(leaves);
    bool possible = false;
    for (auto const& one : named_origins(shape, leaf, usable_for({year.from, year.to}, Region::anywhere),
                                         loss_limits(state), shape.chain_lines))
      possible = possible || (one.origin == PaperOrigin::whole_sheet && is_called(*one.sheet, paper));
    CHECK(possible);
    // the inference, with chain lines as the format has them: the same format, and the same paper
    auto const inference = infer_format(*observe(
        {.height = leaf.height, .width = leaf.width, .chain_lines = shape.chain_lines, .state = state, .year = year}));
    auto const& first = inference.candidates.front();
    auto const like = named_like(first.sheet, year, Region::anywhere);
    REQUIRE(like);
    MESSAGE(number << ": " << first.format << " like " << std::string{like->name} << ", " << first.probability);
    CHECK(first.format == shape.format);
    CHECK(is_called(*like, paper));
  }
}

TEST_CASE("ISO sheets fold to ISO leaves, and RA and SRA leave something to cut") {
  // ISO 216 as libpaper 1.1.29 lists it: eight leaves of A1 are A4, as halving rounds down to the millimetre
  struct {
    char const* sheet;
    int leaves;
    char const* leaf;
  } const rows[]{{"a3", 2, "a4"}, {"a2", 4, "a4"}, {"a1", 8, "a4"}, {"a1", 16, "a5"},
                 {"b3", 2, "b4"}, {"b2", 4, "b4"}, {"b1", 8, "b4"}};
  for (auto const& [sheet, leaves, leaf] : rows) {
    CAPTURE(std::string{sheet});
    auto const paper = size_of("libpaper", sheet), page = size_of("libpaper", leaf);
    auto const folded = leaf_of(leaves, {paper.height, paper.width});
    CHECK(near(folded.height, page.height, 1_mm));
    CHECK(near(folded.width, page.width, 1_mm));
    CHECK(folded.height >= page.height);
    CHECK(folded.width >= page.width);
  }
  // ISO 217: A4 is cut from eight leaves of RA1 or SRA1 at head, tail and fore-edge
  auto const a4 = size_of("libpaper", "a4");
  for (char const* name : {"RA1", "SRA1"}) {
    auto const sheet = size_of("iso217", name);
    auto const loss = loss_against(shape_of(8).lay, {sheet.height, sheet.width}, {a4.height, a4.width});
    CHECK(loss.height >= 6_mm);
    CHECK(loss.width >= 3_mm);
    CHECK(could_be(loss, {a4.height, a4.width}, loss_limits(LeafState::trimmed)));
  }
  // which A1 does not leave
  auto const a1 = size_of("libpaper", "a1");
  CHECK(loss_against(shape_of(8).lay, {a1.height, a1.width}, {a4.height, a4.width}).height < 1_mm);
}

#ifdef BIFOLIUM_PAPERCONF
TEST_CASE("libpaper lists the sizes that are recorded here") {
  auto* const listed = popen(BIFOLIUM_PAPERCONF " -a -n -s -m", "r");
  REQUIRE(listed);
  std::string text;
  for (int c = 0; (c = std::fgetc(listed)) != EOF;) text += static_cast<char>(c);
  REQUIRE(pclose(listed) == 0);
  for (auto const& row : data::rows("paper_sizes.tsv", 5))
    if (row[0] == "libpaper") CHECK(text.find(row[1] + " " + row[2] + " mm " + row[3] + " mm") != std::string::npos);
}
#endif

TEST_CASE("a book in a publisher's cover is called by the trade's name of its sheet") {
  // in use with these sizes from the 1820s on (from memory)
  for (char const* paper : {"crown", "post", "demy", "medium", "royal"})
    for (int const year : {1826, 1840, 1860}) {
      auto const uncut = leaf_of(8, cockerell(paper));
      // uncut, and as R. Hollick has demy octavo (2010): an eighth of an inch off head, tail and fore-edge
      for (double const cut : {0.0, 0.125}) {
        CAPTURE(std::string{paper});
        CAPTURE(cut);
        LeafEvidence const seen{.height = millimetres{uncut.height.count() - 2 * cut * 25.4},
                                .width = millimetres{uncut.width.count() - cut * 25.4},
                                .year = year,
                                .place = Region::britain};
        auto const inference = infer_format(*observe(seen));
        auto const& first = inference.front();
        CHECK(first.format == Format::of(8));
        auto const like = named_like(first.sheet, seen.year, seen.place);
        REQUIRE(like);
        CHECK(is_called(*like, paper));
        CHECK(like->use != PaperUse::writing_drawing);
        CHECK(first.uncut.height.count() == doctest::Approx(uncut.height.count()).epsilon(0.03));
      }
    }
  // what a later binder cut does not tell its sheet: the population does, as of any older book
  LeafEvidence rebound{.height = 184_mm, .width = 120_mm, .state = LeafState::rebound, .year = 1840};
  auto const before = infer_format(*observe(rebound));
  CHECK(before.front().sheet == fitted_paper_model().sheets()[6]);
  LeafEvidence const older{.height = 184_mm, .width = 120_mm, .year = 1825};
  auto const sheet = infer_format(*observe(older)).front().sheet;
  bool of_population = false;
  for (auto const& one : fitted_paper_model().sheets()) of_population = of_population || one == sheet;
  CHECK(of_population);
}
