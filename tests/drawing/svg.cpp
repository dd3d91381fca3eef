// SPDX-License-Identifier: MIT
// Drawings as XML and as pictures: escaping, numbers, nothing outside the page, no two labels on each other; and the
// explanations, checked as facts against what the manuals say of the same sheets.
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/cancel_sheet.hpp>
#include <bifolium/drawing/class_page.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include "check.hpp"
#include "drawing/sound.hpp"

#include <algorithm>
#include <cmath>
#include <pugixml.hpp>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;

TEST_CASE("every drawing of every scheme is sound, inside its page, and no label lies on another") {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const is_good = [](std::string const& svg) {
      is_sound(svg);
      fits_on_a_page(svg);
    };
    for (int s = 0; s < scheme.sheets(); ++s) {
      auto const formes = *forme_svg(scheme, s);
      is_good(formes);
      // Page numbers of 4 mm can be read by a neighbour of the pupil who holds the sheet.
      pugi::xml_document document;
      REQUIRE(document.load_string(formes.c_str()));
      for (auto const& page : document.select_nodes("//text[@class='page']"))
        if (scheme.sheet(s).rows * scheme.sheet(s).columns <= 36) CHECK(value_of(page.node(), "font-size") >= 4);
      auto const printed = sheet_to_fold(scheme, s, PageSize::letter, Duplex::long_edge);
      is_good(printed->front);
      is_good(printed->back);
      is_good(*sheet_svg(scheme, Sheet<millimetres>{315_mm, 450_mm}, countermark_mould, s));
    }
    for (auto const& page : *steps_svg(scheme)) is_good(page);
    auto const book = *fold(scheme);
    is_good(book_svg(pages_met(impose(book), book, 0, Slip::inner_forme_turned), title_of(scheme), book.first_page(0)));
  }
}

TEST_CASE("whatever text a drawing is given, it stays XML and the text comes back") {
  CHECK(xml_escaped("<a href=\"x\">&amp;</a>") == "&lt;a href=&quot;x&quot;&gt;&amp;amp;&lt;/a&gt;"); // XML 1.0, 2.4
  CHECK(xml_escaped(std::string_view{"\0\x01\x1F", 3}) == "\uFFFD\uFFFD\uFFFD");                      // XML 1.0, 2.2
  CHECK(xml_escaped("\xFF\xC3") == "\uFFFD\uFFFD");
  CHECK(xml_escaped("\xEF\xBF\xBE") == "\uFFFD");
  std::mt19937 random{20240229};
  for (int round = 0; round < 400; ++round) {
    std::string wild;
    for (auto n = random() % 40; n > 0; --n)
      wild += random() % 3 == 0 ? "<>&\"']]>\r\n\t"[random() % 11] : static_cast<char>(random() % 256);
    auto gathering = regular_gathering("A", 4);
    gathering.title = wild;
    gathering.leaves[1].label = "x" + wild + "x"; // a parser may trim what is blank at the ends
    pugi::xml_document document;
    REQUIRE(document.load_string(gathering_svg(gathering).c_str(), pugi::parse_full | pugi::parse_ws_pcdata));
    std::string expected = "x";
    for (std::size_t at = 0; at < wild.size();) {
      auto const [value, bytes, malformed] = decode(wild, at);
      bool const allowed =
          value >= 0x20 ? value != 0xFFFE && value != 0xFFFF : value == '\t' || value == '\n' || value == '\r';
      expected += malformed || !allowed ? "\uFFFD" : wild.substr(at, bytes);
      at += bytes;
    }
    bool found = false;
    for (auto const& text : document.select_nodes("//text[@class='label']"))
      found = found || text.node().text().get() == expected + "x";
    CHECK(found);
  }
}

TEST_CASE("numbers are written alike everywhere: hundredths, no locale, no minus before zero") {
  CHECK(svg_number(0) == "0");
  CHECK(svg_number(-0.001) == "0");
  CHECK(svg_number(12.3) == "12.3");
  CHECK(svg_number(-1.05) == "-1.05");
  CHECK(svg_number(7.999) == "8");
}

TEST_CASE("the pages said to meet in a fold are those the manuals give the folder") {
  // Nicholson, A Manual of the Art of Bookbinding (1856), octavo: 3 on 2; 5 on 4 and 12 on 13; 9 on 8.
  auto const octavo = *explain_steps(schemes::octavo.scheme());
  CHECK(octavo.find("1. Fold the right half of the sheet over on the left: page 3 meets 2") == 0);
  CHECK(octavo.find("\n2. Fold the far half of the sheet over on the near: page 5 meets 4, 12 meets 13.\n") !=
        std::string::npos);
  CHECK(octavo.find("\n3. Fold the right half of the sheet over on the left: page 9 meets 8.\n") != std::string::npos);
  // The same book, twelves: 3 on 2; 5 and 20 on 4 and 21; 17 on 8; of the off-cut 10 and 11 meet, 12 and 13.
  auto const twelves = *explain_steps(schemes::duodecimo.scheme());
  for (char const* words : {"page 3 meets 2", "page 5 meets 4, 20 meets 21", "page 17 meets 8", "11 meets 10",
                            "12 meets 13", "inside it the off-cut", "the far part is the off-cut"}) {
    CAPTURE(words);
    CHECK(twelves.find(words) != std::string::npos);
  }
}

TEST_CASE("a third that is folded is called a third") {
  // Brossard, Le Correcteur typographe II (1934), ch. VIII: eighteens rolled, the last third turned in first. Roberts &
  // Etherington, s.v. twelvemo: two parallel folds, which make thirds. The words for long twelves are from memory.
  struct Known {
    Attested scheme;
    char const* words;
  };
  for (auto const& [scheme, words] :
       {Known{Attested{SchemeRow::octodecimo_rolled},
              "1. Fold the right third of the sheet over on the middle third: page 4 meets 5"},
        Known{Attested{SchemeRow::octodecimo_rolled},
              "3. Fold the far third of the sheet over on the middle third: page 12 meets 13"},
        Known{Attested{SchemeRow::duodecimo_without_cutting},
              "1. Fold the far third of the sheet underneath the middle third:"},
        Known{schemes::long_duodecimo, "1. Fold the right third of the sheet underneath the middle third:"}}) {
    CAPTURE(words);
    CHECK(("\n" + *explain_steps(scheme.scheme())).find(std::string{"\n"} + words) != std::string::npos);
  }
}

TEST_CASE("no two leaves of a sheet have the same label, and copies are told apart") {
  int copies = 0;
  for (auto const attested : Attested::all()) {
    auto const scheme = attested.scheme();
    for (int sheet = 0; sheet < scheme.sheets(); ++sheet) {
      CAPTURE(attested.id());
      auto const document = read_svg(*sheet_svg(scheme, Sheet<millimetres>{315_mm, 450_mm}, hand_mould, sheet));
      std::vector<std::string> labels;
      for (auto const& text : document.select_nodes("//text[@class='label']")) {
        labels.emplace_back(text.node().text().get());
        copies += labels.back().find(", copy ") == std::string::npos ? 0 : 1;
      }
      std::sort(labels.begin(), labels.end());
      CHECK(std::adjacent_find(labels.begin(), labels.end()) == labels.end());
    }
  }
  CHECK(copies > 100);
  auto const half = read_svg(*sheet_svg(schemes::octavo_half_sheet.scheme(), Sheet<millimetres>{315_mm, 450_mm}));
  CHECK(half.select_nodes("//text[text()='A4, copy 2']").size() == 1);
}

TEST_CASE("an off-cut is called so in formes and on the sheet to fold") {
  for (auto const& drawn : {*forme_svg(schemes::duodecimo.scheme()), *forme_svg(schemes::sexto.scheme())}) {
    auto const document = read_svg(drawn);
    CHECK(document.select_nodes("//text[@class='piece'][starts-with(text(), 'Off-cut')]").size() == 2);
    CHECK(document.select_nodes("//text[@class='piece'][text()='Main part']").size() == 2);
  }
}

TEST_CASE("no sentence and no title shows the name of a piece or the id of a scheme") {
  for (auto const attested : Attested::all()) {
    auto const scheme = attested.scheme();
    CAPTURE(attested.id());
    auto const folded = *fold(scheme);
    auto text = *explain_steps(scheme) + title_of(scheme);
    for (int piece = 0; piece < scheme.pieces(); ++piece) text += "\n" + piece_label(scheme, folded, piece);
    CHECK(text.find('_') == std::string::npos);
    CHECK(text.find("piece") == std::string::npos);
    CHECK(title_of(mirrored(scheme)) == title_of(scheme) + ", read from right to left");
  }
  CHECK(title_of(schemes::octavo.scheme()) == "Common octavo (8°)");
  auto const twelves = schemes::duodecimo.scheme();
  CHECK(piece_label(twelves, *fold(twelves), 1) == "off-cut, inset");
  // A scheme that only has the id of an attested one is not called by its name.
  auto const own = read_scheme("scheme 8_octavo 2°\nsheet S rows 1 columns 2 long-side left-right\n"
                               "fold S right-over-left 1\ngathering A S\n");
  CHECK(title_of(*own) == "Folio (2°)");
}

TEST_CASE("a page is explained by the facts of its sheet") {
  auto const five = *explain_page(schemes::octavo.scheme(), 5);
  CHECK(five.find("upside down in the outer forme, in the far row, fourth from the left") != std::string::npos);
  CHECK(five.find("Step 2 turns its leaf end for end: the far part is folded over") != std::string::npos);
  CHECK(five.find("page 12, since the two add up to 17") != std::string::npos); // Savage (1841): 17 in octavo
  CHECK(
      (*explain_count(schemes::octavo_half_sheet.scheme(), 1000)).find("1000 copies take 500 sheets, and 1000 impr") !=
      std::string::npos);
}

TEST_CASE("sheets printed right and treated wrong are read wrong") {
  auto const scheme = schemes::folio.scheme();
  auto const folded = *fold(scheme);
  auto const formes = impose(folded);
  CHECK(pages_text(pages_met(formes, folded)) == "1 2 3 4");
  CHECK(pages_text(pages_met(formes, folded, 0, Slip::inner_forme_turned)) == "1 3↓ 2↓ 4");
}

TEST_CASE("a gathering is drawn with its pairs joined, and what is not joined begins above the gutter") {
  auto gathering = regular_gathering("A", 8);
  gathering.leaves[2].state = LeafFate::cancel;
  gathering.leaves[7].state = LeafFate::removed;
  insert_leaf(gathering, 5, {"χ1", LeafFate::inserted});
  for (bool right_to_left : {false, true}) {
    gathering.right_to_left = right_to_left;
    auto const svg = gathering_svg(gathering);
    is_sound(svg);
    pugi::xml_document document;
    REQUIRE(document.load_string(svg.c_str()));
    CHECK(document.select_nodes("//path[@class='fold']").size() == 4);
    CHECK(document.select_nodes("//g[@class='leaf']").size() == 9);
    CHECK(document.select_nodes("//path[@class='paste']").size() == 1);
    CHECK(document.select_nodes("//path[@class='stub']").size() == 2);
    CHECK(document.select_nodes("//path[@class='wanting']").size() == 1);
    // Names are in the order of the book, from the left; seen from the tail a book read from right to left begins on
    // the right.
    double before = right_to_left ? 1e9 : -1e9;
    for (auto const& label : document.select_nodes("//text[@class='label']")) {
      auto const x = value_of(label.node(), "x");
      CHECK((right_to_left ? x < before : x > before));
      before = x;
    }
  }
  CHECK(gathering.leaves[8].conjugate == 0);
  CHECK(gathering_text(gathering) == "A1 joined to A8 (cut away to a stub)\n"
                                     "  A2 joined to A7\n"
                                     "    A3 (cancel, pasted to the stub), its stub joined to A6\n"
                                     "      A4 joined to A5\n"
                                     "      χ1 (inserted)\n");
  auto const refused = [](DrawnGathering const& one) {
    CHECK_THROWS_AS((void)gathering_svg(one), BrokenPrecondition);
    CHECK_THROWS_AS((void)gathering_text(one), BrokenPrecondition);
  };
  gathering.leaves[0].conjugate = 3;
  refused(gathering);
  // joined to a leaf that is not there, to itself, to one that is joined to none; and two pairs that cross
  for (int const mate : {-1, 0, 1, 2, 99})
    refused({"x", {{"A1", LeafFate::present, mate, ""}, {"A2", LeafFate::present, {}, ""}}});
  refused({"x",
           {{"A1", LeafFate::present, 2, ""},
            {"A2", LeafFate::present, 3, ""},
            {"A3", LeafFate::present, 0, ""},
            {"A4", LeafFate::present, 1, ""}}});
}

namespace {

/// The corners of a path of straight lines: M 1 2 L 3 4 Z.
std::vector<std::pair<double, double>> corners_of(pugi::xml_node path) {
  std::vector<std::pair<double, double>> all;
  std::istringstream in{path.attribute("d").value()};
  std::string word;
  for (double x = 0, y = 0; in >> word && word != "Z";) {
    REQUIRE((word == "M" || word == "L"));
    REQUIRE((in >> x >> y));
    all.emplace_back(x, y);
  }
  return all;
}
double area_of(std::vector<std::pair<double, double>> const& corners) { // the surveyor's formula
  double twice = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    auto const& a = corners[i];
    auto const& b = corners[(i + 1) % corners.size()];
    twice += a.first * b.second - b.first * a.second;
  }
  return twice < 0 ? -twice / 2 : twice / 2;
}
double least_distance(std::pair<double, double> from, std::vector<std::pair<double, double>> const& to) {
  double least = 1e9;
  for (auto const& one : to) least = (std::min)(least, std::hypot(one.first - from.first, one.second - from.second));
  return least;
}

} // namespace

TEST_CASE("the paste of a cancel lies between the cancel and the stub, along both") { // a cancel is pasted to the stub
  for (int const leaves : {2, 4, 8, 12, 16})
    for (int k = 0; k < leaves; ++k)
      for (bool const right_to_left : {false, true}) {
        CAPTURE(leaves);
        CAPTURE(k);
        auto gathering = regular_gathering("A", leaves);
        gathering.right_to_left = right_to_left;
        gathering.leaves[static_cast<std::size_t>(k)].state = LeafFate::cancel;
        pugi::xml_document document;
        auto const svg = gathering_svg(gathering);
        REQUIRE(document.load_string(svg.c_str()));
        auto const pastes = document.select_nodes("//path[@class='paste']");
        REQUIRE(pastes.size() == 1);
        auto const drawn = pastes[0].node().parent();
        auto const paste = corners_of(pastes[0].node());
        auto const stub = corners_of(drawn.select_node("path[@class='stub']").node());
        auto const paper = corners_of(drawn.select_node("path[@class='paper']").node());
        REQUIRE(paste.size() == 4);
        CHECK(area_of(paste) > 1);
        for (auto const& corner : paste)
          CHECK((std::min)(least_distance(corner, paper), least_distance(corner, stub)) < 3);
        CHECK(path_box(pastes[0].node()).on(path_box(drawn.select_node("path[@class='paper']").node())));
        CHECK(path_box(pastes[0].node()).on(path_box(drawn.select_node("path[@class='stub']").node())));
      }
}

TEST_CASE("every leaf rises from the gutter to its tip and leans to its own side") { // as a book stands on its spine
  for (int const leaves : {1, 2, 3, 4, 6, 8, 12, 24})
    for (auto const state : {LeafFate::present, LeafFate::cancel, LeafFate::removed, LeafFate::loose})
      for (bool const right_to_left : {false, true}) {
        CAPTURE(leaves);
        auto gathering = regular_gathering("A", leaves);
        gathering.right_to_left = right_to_left;
        gathering.leaves[static_cast<std::size_t>(leaves / 3)].state = state;
        auto const svg = gathering_svg(gathering);
        pugi::xml_document document;
        REQUIRE(document.load_string(svg.c_str()));
        auto const blades = document.select_nodes("//g[@class='leaf']/path[@class='paper' or @class='wanting']");
        REQUIRE(static_cast<int>(blades.size()) == leaves);
        for (int i = 0; i < leaves; ++i) {
          CAPTURE(i);
          auto const blade = corners_of(blades[static_cast<std::size_t>(i)].node());
          auto const half = blade.size() / 2; // up one side and down the other
          REQUIRE(blade.size() == 2 * half);
          // to the left before the middle of the gathering, to the right after it, or to neither
          auto const leans = ((2 * i + 1 > leaves) - (2 * i + 1 < leaves)) * (right_to_left ? -1 : 1);
          double most_aside = 0;
          for (std::size_t k = 0; k < half; ++k) {
            auto const x = (blade[k].first + blade[2 * half - 1 - k].first) / 2,
                       y = (blade[k].second + blade[2 * half - 1 - k].second) / 2;
            if (k == 0) continue;
            auto const before_x = (blade[k - 1].first + blade[2 * half - k].first) / 2,
                       before_y = (blade[k - 1].second + blade[2 * half - k].second) / 2;
            CHECK(y < before_y);
            CHECK((x - before_x) * leans >= -0.02); // two decimals are drawn
            most_aside = std::fmax(most_aside, std::fabs(x - before_x));
          }
          CHECK((most_aside > 0.02) == (leans != 0));
        }
      }
}

TEST_CASE("the tips of a gathering stand in an arc, the middle ones highest, as a book opens like a fan") {
  for (int leaves = 3; leaves <= 24; ++leaves) {
    CAPTURE(leaves);
    auto const document = read_svg(gathering_svg(regular_gathering("A", leaves)));
    std::vector<double> heights;
    for (auto const& label : document.select_nodes("//text[@class='label']"))
      heights.push_back(value_of(label.node(), "y"));
    REQUIRE(static_cast<int>(heights.size()) == leaves);
    for (std::size_t i = 0; i < heights.size(); ++i) {
      CHECK(std::fabs(heights[i] - heights[heights.size() - 1 - i]) < 0.02); // one side as the other
      if (i > 0 && 2 * i < heights.size()) CHECK(heights[i] < heights[i - 1]);
    }
    auto const rise =
        heights.front() - heights[heights.size() / 2]; // mm: it can be seen, and names stay near their leaves
    CHECK(rise > 5);
    CHECK(rise < 25);
  }
}

TEST_CASE("what is not said of a drawing is the first sheet, A4, and turning about the long edge") { // the declarations
  Sheet<millimetres> const paper{315_mm, 450_mm};
  auto const royal = find_sheets({.name = "royal", .years = {1389, 1389}});
  auto const named = *royal.begin();
  for (auto const& scheme :
       {schemes::octavo.scheme(), schemes::quarto_in_eights.scheme(), schemes::duodecimo.scheme()}) {
    CHECK(*forme_svg(scheme) == *forme_svg(scheme, 0));
    CHECK(*sheet_svg(scheme, paper) == *sheet_svg(scheme, paper, hand_mould, 0, Lie::as_given));
    CHECK(*sheet_svg(scheme, named) == *sheet_svg(scheme, named, hand_mould, 0, Lie::as_given));
    auto const of = [&](auto... how) { return *sheet_to_fold(scheme, how...); };
    for (auto const& printed : {of(), of(0), of(0, PageSize::a4)}) {
      CHECK(printed.front == of(0, PageSize::a4, Duplex::long_edge).front);
      CHECK(printed.back == of(0, PageSize::a4, Duplex::long_edge).back);
    }
    CHECK(of(0, PageSize::letter).back == of(0, PageSize::letter, Duplex::long_edge).back);
    CHECK(of().back != of(0, PageSize::a4, Duplex::short_edge).back);
    CHECK(of().front != of(0, PageSize::letter).front);
    CHECK(*steps_svg(scheme) == *steps_svg(scheme, PageSize::a4));
    CHECK(*printable_html(scheme) == *printable_html(scheme, PageSize::a4, Duplex::long_edge));
    CHECK(*class_page(scheme) ==
          *class_page(scheme, ClassPageOptions{.paper = PageSize::a4, .duplex = Duplex::long_edge}));
    auto const folded = *fold(scheme);
    auto const met = pages_met(impose(folded), folded);
    CHECK(book_svg(met, "") == book_svg(met, "", 1, Reads::left_to_right));
  }
  CHECK(cancel_to_paste().front == cancel_to_paste(PageSize::a4, Duplex::long_edge).front);
  CHECK(cancel_to_paste().back == cancel_to_paste(PageSize::a4, Duplex::long_edge).back);
  CHECK(cancel_to_paste().back != cancel_to_paste(PageSize::a4, Duplex::short_edge).back);
}

TEST_CASE("a folded piece shows the edges of the paper below, at most four to a leaf") { // reckoned by hand
  // one fold lays two thicknesses on each other, two folds four, three folds eight; flat paper has nothing below
  auto const edges = [](Scheme const& scheme, int step) {
    auto const document = read_svg(*step_svg(scheme, step));
    std::set<std::string> places; // a rectangle that is drawn twice is one
    for (auto const& one : document.select_nodes("//rect[@class='edge']"))
      places.insert(std::string{one.node().attribute("x").value()} + " " + one.node().attribute("y").value());
    return places.size();
  };
  CHECK(edges(schemes::folio.scheme(), 0) == 0 + 1); // before the step, and after it
  CHECK(edges(schemes::quarto.scheme(), 0) == 0 + 2 * 1);
  CHECK(edges(schemes::quarto.scheme(), 1) == 2 * 1 + 3);
  CHECK(edges(schemes::octavo.scheme(), 0) == 0 + 4 * 1);
  CHECK(edges(schemes::octavo.scheme(), 1) == 4 * 1 + 2 * 3);
  CHECK(edges(schemes::octavo.scheme(), 2) == 2 * 3 + 4);
}
