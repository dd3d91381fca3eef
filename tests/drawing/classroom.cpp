// SPDX-License-Identifier: MIT
// What a class makes with scissors, and what it reads afterwards: the cancel, the sheet to fold by both kinds of duplex,
// the misread book, the two views of a forme. Checked by geometry on what was drawn.
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "drawing/sound.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct PageOfPaper {
  double width{}, height{};
};
PageOfPaper page_of(pugi::xml_document const& document) {
  PageOfPaper page;
  REQUIRE(std::sscanf(document.child("svg").attribute("viewBox").value(), "0 0 %lf %lf", &page.width, &page.height) ==
          2);
  return page;
}
/// A box of the back as it is seen through the paper from the front: the printer turned the page about its long or its
/// short edge.
DrawnBox seen_from_front(DrawnBox box, PageOfPaper page, Duplex duplex) {
  bool const about_upright = (page.height > page.width) == (duplex == Duplex::long_edge);
  auto const old = box;
  if (about_upright)
    box.left = page.width - old.right, box.right = page.width - old.left;
  else
    box.top = page.height - old.bottom, box.bottom = page.height - old.top;
  return box;
}
bool same_place(DrawnBox const& a, DrawnBox const& b) {
  auto const near = [](double x, double y) { return std::abs(x - y) < 0.02; };
  return near(a.left, b.left) && near(a.right, b.right) && near(a.top, b.top) && near(a.bottom, b.bottom);
}
std::vector<DrawnBox> lines_of(pugi::xml_document const& document, std::string const& kind) {
  std::vector<DrawnBox> boxes;
  for (auto const& line : document.select_nodes(("//line[@class='" + kind + "']").c_str()))
    boxes.push_back(line_box(line.node()));
  return boxes;
}
DrawnBox frame_of(pugi::xml_document const& document, std::string const& kind) {
  auto const node = document.select_node(("//rect[@class='" + kind + "']").c_str()).node();
  REQUIRE(node);
  DrawnBox box{value_of(node, "x"), value_of(node, "y"), value_of(node, "x") + value_of(node, "width"),
               value_of(node, "y") + value_of(node, "height")};
  box.turn(node);
  return box;
}
DrawnBox number_within(pugi::xml_document const& document, DrawnBox const& area) {
  for (auto const& text : document.select_nodes("//text[@class='page']"))
    if (auto box = text_box(text.node()); box.on(area)) return box;
  FAIL("no page number there");
  return {};
}

} // namespace

TEST_CASE("cut and pasted, the cancel is where the wrong leaf was, and its paste covers the stub alone") {
  for (auto size : {PageSize::a4, PageSize::letter})
    for (auto duplex : {Duplex::long_edge, Duplex::short_edge}) {
      auto const printed = cancel_to_paste(size, duplex);
      is_sound(printed.front);
      is_sound(printed.back);
      auto const front = read_svg(printed.front), back = read_svg(printed.back);
      auto const page = page_of(front);
      auto const through = [&](DrawnBox const& box) { return seen_from_front(box, page, duplex); };
      auto const sheet = frame_of(front, "sheet"), cancel = frame_of(front, "frame");
      CHECK(same_place(sheet, through(frame_of(back, "sheet"))));
      CHECK(same_place(cancel, through(frame_of(back, "frame"))));
      auto const fold = lines_of(front, "crease").at(0), cut = lines_of(front, "cut").at(0);
      CHECK(same_place(fold, through(lines_of(back, "crease").at(0))));
      CHECK(same_place(cut, through(lines_of(back, "cut").at(0))));
      auto const stub = cut.left - fold.left;
      CHECK(stub > 5);
      // The wrong leaf lies to the right of the fold, page 3 on it, page 4 on its back; so do those of the cancel.
      DrawnBox const wrong{fold.left, sheet.top, sheet.right, sheet.bottom};
      CHECK(number_within(front, wrong).what == "3");
      CHECK(number_within(front, cancel).what == "3");
      for (auto const& text : back.select_nodes("//text[@class='page']")) {
        auto const box = through(text_box(text.node()));
        CHECK(box.what == (box.on(wrong) || box.on(cancel) ? "4" : "1"));
      }
      // The word for the stub lies on it, between the fold and the cut, in the middle of the sheet's height.
      for (auto const* side : {&front, &back}) {
        auto const words = side->select_nodes("//text[@class='stub']");
        REQUIRE(words.size() == 1);
        auto const drawn = text_box(words[0].node());
        auto const box = side == &front ? drawn : through(drawn);
        auto const middle = (box.left + box.right) / 2, height = (box.top + box.bottom) / 2;
        CHECK(middle > fold.left);
        CHECK(middle < cut.left);
        CHECK(height > sheet.top + (sheet.bottom - sheet.top) * .45);
        CHECK(height < sheet.top + (sheet.bottom - sheet.top) * .55);
      }
      // The cancel is the leaf and its paste is on the side of the fold, no broader than the stub.
      CHECK(std::abs((cancel.right - cancel.left) - (wrong.right - wrong.left)) < 0.02);
      CHECK(std::abs((cancel.bottom - cancel.top) - (wrong.bottom - wrong.top)) < 0.02);
      CHECK(lines_of(front, "paste").empty());
      auto const paste = lines_of(back, "paste");
      REQUIRE(paste.size() > 10);
      for (auto const& line : paste) {
        CHECK(through(line).left >= cancel.left - 0.02);
        CHECK(through(line).right <= cancel.left + stub + 0.02);
      }
      CHECK(printed.front.find("Never cut or paste anything in an original.") != std::string::npos);
    }
}

TEST_CASE("the marks of both sides lie on each other when the printer turns the page about either edge") {
  for (int row = 0; row < Attested::count; ++row)
    for (auto size : {PageSize::a4, PageSize::letter})
      for (auto duplex : {Duplex::long_edge, Duplex::short_edge}) {
        Attested const attested{static_cast<SchemeRow>(row)};
        CAPTURE(attested.id());
        auto const scheme = attested.scheme();
        auto const printed = sheet_to_fold(scheme, scheme.sheets() - 1, size, duplex);
        REQUIRE(printed);
        auto const front = read_svg(printed->front), back = read_svg(printed->back);
        auto const page = page_of(front);
        CHECK(page_of(back).width == page.width);
        auto const short_edge = std::min(page.width, page.height), long_edge = std::max(page.width, page.height);
        CHECK(short_edge == (size == PageSize::a4 ? 210 : 215.9)); // ISO 216; ANSI/ASME Y14.1, 8.5 x 11 in
        CHECK(long_edge == (size == PageSize::a4 ? 297 : 279.4));
        for (auto const* kind : {"register", "cut", "crease"}) {
          auto const one = lines_of(front, kind), other = lines_of(back, kind);
          CAPTURE(kind);
          CHECK(one.size() == other.size());
          for (auto const& line : other) {
            auto const seen = seen_from_front(line, page, duplex);
            CHECK(std::any_of(one.begin(), one.end(), [&](DrawnBox const& box) { return same_place(box, seen); }));
          }
        }
        // The crosses are at all four corners, outside the sheet.
        auto const sheet = frame_of(front, "sheet");
        CHECK(lines_of(front, "register").size() == 8);
        for (auto const& line : lines_of(front, "register")) CHECK(!line.on(sheet));
      }
}

TEST_CASE("signatures are on the recto they belong to, and lie as its page lies") {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const folded = *fold(scheme);
    for (int s = 0; s < scheme.sheets(); ++s) {
      auto const printed = *sheet_to_fold(scheme, s);
      for (auto const& side : {printed.front, printed.back}) {
        auto const document = read_svg(side);
        auto const sheet = frame_of(document, "sheet");
        auto const& lay = scheme.sheet(s);
        auto const column_of = [&](DrawnBox const& box) {
          return std::floor(((box.left + box.right) / 2 - sheet.left) / (sheet.right - sheet.left) * lay.columns);
        };
        auto const row_of = [&](DrawnBox const& box) {
          return std::floor(((box.top + box.bottom) / 2 - sheet.top) / (sheet.bottom - sheet.top) * lay.rows);
        };
        for (auto const& found : document.select_nodes("//text[@class='signature']")) {
          auto const mark = text_box(found.node());
          bool right = false;
          for (auto const& number : document.select_nodes("//text[@class='page']")) {
            auto const page = text_box(number.node());
            if (column_of(page) != column_of(mark) || row_of(page) != row_of(mark)) continue;
            auto const n = std::stoi(page.what);
            for (int g = 0; g < folded.gatherings(); ++g) {
              auto const from_first = n - folded.first_page(g);
              if (from_first < 0 || from_first >= folded.gathering(g).pages() || from_first % 2 != 0) continue;
              std::string const name{scheme.gathering(g).name.view()};
              auto expected = name.substr(0, name.find('_'));
              if (from_first > 0) expected += std::to_string(from_first / 2 + 1);
              right = right || expected == mark.what;
            }
            bool const page_down = number.node().attribute("transform"),
                       mark_down = found.node().attribute("transform");
            CHECK(page_down == mark_down);
            auto const group_turned = document.select_node("//g[@class='turned']").node();
            bool const down = page_down != static_cast<bool>(group_turned);
            CHECK((down ? mark.bottom < page.top : mark.top > page.bottom)); // at the foot
          }
          CHECK(right);
        }
      }
    }
  }
}

TEST_CASE("a misread book is drawn as it is read, and what is wrong is marked") {
  auto const half = schemes::octavo_half_sheet.scheme();
  auto const folded = *fold(half);
  auto const met = pages_met(impose(folded), folded, 0, Slip::turned_about_other_line);
  auto const svg = book_svg(met, "Turned wrong");
  is_sound(svg);
  auto const document = read_svg(svg);
  std::vector<std::string> order;
  for (auto const& text : document.select_nodes("//text[@class='page']")) order.emplace_back(text.node().text().get());
  CHECK(order == std::vector<std::string>{"1", "4", "1", "4", "5", "8", "5", "8"});
  CHECK(document.select_nodes("//g[@class='wrong']").size() == 4);
  CHECK(document.select_nodes("//text[@class='should-be']").size() == 4);

  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    for (auto const& scheme : {attested.scheme(), mirrored(attested.scheme())}) {
      auto const book = *fold(scheme);
      auto const formes = impose(book);
      for (auto slip : {Slip::none, Slip::inner_forme_turned, Slip::turned_about_other_line}) {
        auto const pages = pages_met(formes, book, 0, slip);
        auto const drawn = book_svg(pages, scheme.id(), book.first_page(0), scheme.reads());
        is_sound(drawn);
        if (slip == Slip::none) CHECK(read_svg(drawn).select_nodes("//g[@class='wrong']").empty());
      }
    }
  }
}

TEST_CASE("the two pages of an opening lie side by side, the recto on the outer side of reading") {
  auto const folded = *fold(schemes::quarto.scheme());
  auto const pages = pages_met(impose(folded), folded);
  for (auto reads : {Reads::left_to_right, Reads::right_to_left}) {
    auto const document = read_svg(book_svg(pages, "Quarto", 1, reads));
    auto const at = [&](int page) {
      for (auto const& text : document.select_nodes("//text[@class='page']"))
        if (text.node().text().as_int() == page) return value_of(text.node(), "x");
      return 0.0;
    };
    CHECK((at(3) > at(2)) == (reads == Reads::left_to_right)); // the verso of leaf 1 faces the recto of leaf 2
    auto const page = document.select_node("//rect[@class='leaf']").node();
    CHECK(std::abs(at(3) - at(2)) < value_of(page, "width") * 1.1); // side by side
  }
}

TEST_CASE("the compositor's view and the binder's are mirrors of each other, and neither is a mirrored figure") {
  CHECK(both_views_text(impose(*fold(schemes::quarto.scheme()))) == "the compositor sees type | the binder sees paper\n"
                                                                    "outer                    | outer\n"
                                                                    "4↓ 5↓                    | 5↓ 4↓\n"
                                                                    "1  8                     | 8  1\n"
                                                                    "inner                    | inner\n"
                                                                    "6↓ 3↓                    | 3↓ 6↓\n"
                                                                    "7  2                     | 2  7\n");
}
