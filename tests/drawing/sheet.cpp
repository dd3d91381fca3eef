// SPDX-License-Identifier: MIT
// The sheet as paper, read back from the drawing: which leaves show the mark, how the chain lines run and how many cross a
// leaf, which edges are deckle, and that everything is to one scale.
#include <bifolium/drawing.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include "check.hpp"
#include "drawing/sound.hpp"

#include <map>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// The labels of the leaves that have something in them.
std::string leaves_with(pugi::xml_document const& document, char const* what) {
  std::string labels;
  for (auto const& leaf : document.select_nodes("//g[@class='leaf']"))
    if (leaf.node().select_node(what)) {
      labels += labels.empty() ? "" : " ";
      labels += leaf.node().select_node("text").node().text().get();
    }
  return labels;
}
double scale_of(pugi::xml_document const& document) {
  for (auto const& text : document.select_nodes("//text")) {
    std::string const words = text.node().text().get();
    if (auto const at = words.find("drawn 1 : "); at != std::string::npos) return 1 / std::stod(words.substr(at + 10));
  }
  FAIL("no scale");
  return 0;
}
constexpr Scheme half_paper = written(R"(scheme folio_on_half_sheets 2°
sheet S rows 1 columns 2 half long-side far-near
fold S right-over-left 1
gathering A S
)");
constexpr Scheme quarter_paper = written(R"(scheme folio_on_quarters 2°
sheet S rows 1 columns 2 quarter long-side left-right
fold S right-over-left 1
gathering A S
)");

} // namespace

TEST_CASE("marks are drawn in the leaves in which they are found in books") {
  // Tanselle and others; the common tables: 4° in one bifolium of the two, 8° in leaves 1 4 5 8 or 2 3 6 7, common 12° in 7 8
  // or 11 12. With a countermark in the other half no leaf of a 4° or 8° is bare.
  Sheet<millimetres> const paper{315_mm, 450_mm};
  struct Known {
    Attested scheme;
    char const *marked, *countermarked;
  };
  for (auto const& known :
       {Known{schemes::folio, "A1", "A2"}, Known{schemes::quarto, "A2 A3", "A1 A4"},
        Known{schemes::octavo, "A1 A4 A5 A8", "A2 A3 A6 A7"}, Known{schemes::duodecimo, "A7 A8", "A11 A12"}}) {
    CAPTURE(known.scheme.id());
    auto const drawn = read_svg(*sheet_svg(known.scheme.scheme(), paper, countermark_mould));
    CHECK(leaves_with(drawn, ".//g[@class='watermark']") == known.marked);
    CHECK(leaves_with(drawn, ".//g[@class='countermark']") == known.countermarked);
    auto const turned = read_svg(*sheet_svg(known.scheme.scheme(), paper, countermark_mould, 0, Lie::end_for_end));
    CHECK(leaves_with(turned, ".//g[@class='watermark']") == known.countermarked);
  }
}

TEST_CASE("a mark lies where the mould has it, whichever way the sheet was laid") { // constructed
  // a fifth of the long side from one end, two fifths of the short side: turned, it lies as far from the other end or side
  auto mould = countermark_mould;
  mould.watermark = PointOfSheet{.along = 0.2, .across = 0.4};
  mould.countermark = PointOfSheet{.along = 0.8, .across = 0.6};
  auto const places = [&](Lie lie, char const* mark) {
    auto const drawn = read_svg(*sheet_svg(schemes::folio.scheme(), Sheet<millimetres>{300_mm, 400_mm}, mould, 0, lie));
    auto const at =
        drawn.select_node((std::string{"//g[@class='paper']/g[@class='"} + mark + "']/circle").c_str()).node();
    REQUIRE(at);
    return std::pair{at.attribute("cx").as_double(), at.attribute("cy").as_double()};
  };
  auto const [left, top] = places(Lie::as_given, "watermark");
  auto const [right, bottom] = places(Lie::as_given, "countermark");
  CHECK((right - left) / (bottom - top) == doctest::Approx(0.6 * 400 / (0.2 * 300)).epsilon(1e-2));
  CHECK(places(Lie::end_for_end, "watermark") == std::pair{right, top});
  CHECK(places(Lie::end_for_end, "countermark") == std::pair{left, bottom});
  CHECK(places(Lie::side_for_side, "watermark") == std::pair{left, bottom});
  CHECK(places(Lie::both_ways, "watermark") == std::pair{right, bottom});
  CHECK(places(Lie::both_ways, "countermark") == std::pair{left, top});
}

TEST_CASE("the chain lines of the leaves are those of the sheet, and leaves and sheet have one scale") {
  Sheet<millimetres> const paper{318_mm, 458_mm}; // no chain line falls on a fold
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    for (bool mirror : {false, true}) {
      CAPTURE(attested.id());
      auto const scheme = mirror ? mirrored(attested.scheme()) : attested.scheme();
      auto const drawn = read_svg(*sheet_svg(scheme, paper));
      auto const scale = scale_of(drawn);
      auto const chains = drawn.select_nodes("//g[@class='paper']/line[@class='chain']");
      CHECK(chains.size() == 18); // 458 mm at 25 mm: nine on either side of the middle
      auto const first = chains.first().node();
      bool const upright = value_of(first, "x1") == value_of(first, "x2");
      auto const& lay = scheme.sheet(0);
      CHECK(upright == (lay.long_side == Axis::left_right));
      auto const crossed = upright ? lay.rows : lay.columns;
      std::size_t in_leaves = 0;
      for (auto const& leaf : drawn.select_nodes("//g[@class='leaf']")) {
        in_leaves += leaf.node().select_nodes("line[@class='chain']").size();
        auto const window = leaf.node().child("svg");
        auto const along = upright ? lay.columns : lay.rows, across = upright ? lay.rows : lay.columns;
        auto const w = value_of(window, upright ? "width" : "height"),
                   h = value_of(window, upright ? "height" : "width");
        CHECK(std::abs(w - 458 * scale / along) < 458 * scale * 0.01);
        CHECK(std::abs(h - 318 * scale / across) < 318 * scale * 0.01);
      }
      CHECK(in_leaves == chains.size() * static_cast<std::size_t>(crossed));
    }
  }
}

TEST_CASE("paper cut before printing keeps its deckle where it was not cut, and half its chain lines") {
  // A folio on half-sheets of larger paper has level chain lines (Bühler, Studies in Bibliography 23).
  auto const half = *sheet_svg(half_paper, Sheet<millimetres>{445_mm, 615_mm}, countermark_mould);
  is_sound(half);
  auto const drawn = read_svg(half);
  CHECK(drawn.select_nodes("//g[@class='paper']/line[@class='chain']").size() == 24);
  for (auto const& leaf : drawn.select_nodes("//g[@class='leaf']")) {
    CHECK(leaf.node().select_nodes("line[@class='chain']").size() == 12);
    CHECK(value_of(leaf.node().child("line"), "y1") == value_of(leaf.node().child("line"), "y2"));
    CHECK(leaf.node().select_nodes("path[@class='deckle']").size() == 2); // head and fore-edge
    CHECK(leaf.node().select_nodes("line[@class='cut']").size() == 1);    // tail
  }
  CHECK(leaves_with(drawn, ".//g[@class='watermark']") == "A1 A2"); // in the gutter, half in each
  CHECK(leaves_with(drawn, ".//g[@class='countermark']").empty());  // it went with the other half
  CHECK(half.find("Cut in half before printing") != std::string::npos);

  auto const quarter = *sheet_svg(quarter_paper, Sheet<millimetres>{445_mm, 615_mm});
  is_sound(quarter);
  CHECK(read_svg(quarter).select_nodes("//g[@class='paper']/line[@class='cut']").size() == 2);
  CHECK(read_svg(quarter).select_nodes("//g[@class='leaf']//path[@class='deckle']").size() == 3);
}

TEST_CASE(
    "a sheet from the mould has a deckle along each of its four sides") { // Gaskell, A New Introduction to Bibliography
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const drawn = read_svg(*sheet_svg(scheme, Sheet<millimetres>{315_mm, 450_mm}));
    bool const level = scheme.sheet(0).long_side == Axis::left_right;
    auto const scale = scale_of(drawn), width = (level ? 450 : 315) * scale, height = (level ? 315 : 450) * scale;
    auto const found = drawn.select_nodes("//g[@class='paper']/path[@class='deckle']");
    REQUIRE(found.size() == 4);
    std::vector<DrawnBox> sides;
    DrawnBox whole{1e9, 1e9, -1e9, -1e9};
    for (auto const& one : found) {
      auto const box = sides.emplace_back(path_box(one.node()));
      whole.left = std::fmin(whole.left, box.left), whole.right = std::fmax(whole.right, box.right);
      whole.top = std::fmin(whole.top, box.top), whole.bottom = std::fmax(whole.bottom, box.bottom);
    }
    CHECK(whole.right - whole.left == doctest::Approx(width).epsilon(0.02));
    CHECK(whole.bottom - whole.top == doctest::Approx(height).epsilon(0.02));
    int left = 0, right = 0, top = 0, bottom = 0; // each as long as its side of the sheet, and uneven by less than 1 mm
    for (auto const& box : sides) {
      bool const upright = box.bottom - box.top > height - 1.5, lying = box.right - box.left > width - 1.5;
      left += upright && box.right < whole.left + 1, right += upright && box.left > whole.right - 1;
      top += lying && box.bottom < whole.top + 1, bottom += lying && box.top > whole.bottom - 1;
    }
    CHECK((left == 1 && right == 1 && top == 1 && bottom == 1));
  }
}

TEST_CASE("a named sheet is drawn by its name") {
  auto const found = find_sheets({.name = "royal", .years = {1389, 1389}}); // the Bologna stone
  auto const royal = *found.begin();
  auto const svg = *sheet_svg(schemes::folio.scheme(), royal);
  CHECK(svg.find("royal, 445 x " + svg_number(royal.long_side().count()) + " mm, drawn 1 : ") != std::string::npos);
}

TEST_CASE("on every kind of mould, lying either way, the drawing of paper is sound") {
  for (auto const& mould : {hand_mould, countermark_mould, turned_chain_mould, central_mark_mould, edge_mark_mould,
                            machine_laid_mould, wove_mould})
    for (auto lie : {Lie::as_given, Lie::end_for_end, Lie::side_for_side, Lie::both_ways})
      for (auto const& scheme : {schemes::octavo.scheme(), mirrored(schemes::duodecimo.scheme()), half_paper})
        is_sound(*sheet_svg(scheme, Sheet<millimetres>{370_mm, 480_mm}, mould, 0, lie));
}
