// SPDX-License-Identifier: MIT
// The drawings are read back as a pupil reads them: page numbers are found by where they are printed and which way they
// lie, the paper is cut and folded by hand, and the book must read 1, 2, 3 ... upright. The folding here is its own: bits
// of paper in a heap with heights, turned over as points in space. It shares only the written steps with the library's
// engine.
#include <bifolium/drawing.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <pugixml.hpp>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct Figure {
  int page{};
  double x{}, y{};
  bool upside_down{};
};

/// The page numbers of a group of the drawing, with all rotations from the root taken into account.
struct SideRead {
  double left{}, top{}, width{}, height{};
  std::vector<Figure> figures{};
};

void turned(pugi::xml_node node, double& x, double& y, bool& upside_down) {
  std::string const how = node.attribute("transform").value();
  if (how.empty()) return;
  double degrees{}, about_x{}, about_y{};
  REQUIRE(std::sscanf(how.c_str(), "rotate(%lf %lf %lf)", &degrees, &about_x, &about_y) == 3);
  REQUIRE(degrees == 180);
  x = 2 * about_x - x;
  y = 2 * about_y - y;
  upside_down = !upside_down;
}

SideRead read_side(std::string const& svg, std::string const& group) {
  pugi::xml_document document;
  REQUIRE(document.load_string(svg.c_str()));
  SideRead side;
  auto const found = document.select_node(("//*[@class='" + group + "']").c_str()).node();
  REQUIRE(found);
  auto const sheet = found.select_node("*[@class='sheet']").node();
  double x1 = sheet.attribute("x").as_double(), y1 = sheet.attribute("y").as_double();
  double x2 = x1 + sheet.attribute("width").as_double(), y2 = y1 + sheet.attribute("height").as_double();
  bool dummy = false;
  for (auto up = sheet.parent(); up; up = up.parent()) {
    turned(up, x1, y1, dummy);
    turned(up, x2, y2, dummy);
  }
  side.left = std::min(x1, x2), side.top = std::min(y1, y2);
  side.width = std::abs(x2 - x1), side.height = std::abs(y2 - y1);
  for (auto const& text : found.select_nodes(".//*[@class='page']")) {
    Figure figure{text.node().text().as_int(), text.node().attribute("x").as_double(),
                  text.node().attribute("y").as_double(), false};
    for (auto up = text.node(); up; up = up.parent()) turned(up, figure.x, figure.y, figure.upside_down);
    side.figures.push_back(figure);
  }
  return side;
}

/// A leaf-sized bit of paper. x and y are where its middle is, z its height in the heap; (hx, hy) the direction in which
/// what was far on the flat sheet points, and `inner_up` whether the side seen first still looks up.
struct Bit {
  double x{}, y{}, z{}, hy{-1};
  bool inner_up{true};
  int column{}, row{};     // on the flat sheet, only to cut
  Figure inner{}, outer{}; // what is printed on either side
  [[nodiscard]] Figure const& up() const { return inner_up ? inner : outer; }
  [[nodiscard]] Figure const& down() const { return inner_up ? outer : inner; }
};

using Heap = std::vector<Bit>;

/// Front and back of the drawing laid on each other. Held with the inner side up, the back is seen through the paper:
/// turned left for right about its upright middle line.
Heap lay_out(SideRead const& inner, SideRead const& outer, int rows, int columns) {
  Heap heap;
  for (int r = 0; r < rows; ++r)
    for (int c = 0; c < columns; ++c) {
      Bit bit;
      bit.x = c + 0.5, bit.y = r + 0.5, bit.row = r, bit.column = c;
      auto const at = [&](SideRead const& side, double x, double y) {
        for (auto const& f : side.figures)
          if (std::floor((f.x - side.left) / side.width * columns) == std::floor(x) &&
              std::floor((f.y - side.top) / side.height * rows) == std::floor(y))
            return f;
        return Figure{};
      };
      bit.inner = at(inner, bit.x, bit.y);
      bit.outer = at(outer, columns - bit.x, bit.y);
      heap.push_back(bit);
    }
  return heap;
}

double highest(Heap const& heap) {
  double z = -1e9;
  for (auto const& bit : heap) z = std::max(z, bit.z);
  return z;
}
double lowest(Heap const& heap) {
  double z = 1e9;
  for (auto const& bit : heap) z = std::min(z, bit.z);
  return z;
}

void fold_heap(Heap& heap, Step const& step) {
  bool const upright = step.along == Axis::far_near;
  double const top = highest(heap), bottom = lowest(heap);
  for (auto& bit : heap) {
    auto& across = upright ? bit.x : bit.y;
    if ((across < step.line) != step.far_or_left_moves) continue;
    across = 2.0 * step.line - across;
    bit.z = step.under ? bottom - 1 - (bit.z - bottom) : top + 1 + (top - bit.z);
    bit.inner_up = !bit.inner_up;
    if (!upright) bit.hy = -bit.hy;
  }
}

struct Read {
  int page{};
  bool upright{};
};

/// The leaves of a packet as a reader turns them: spine in the proper hand, heads up, from the front.
std::vector<std::array<Read, 2>> read_packet(Heap heap, bool heads_near, bool spine_at_hand, bool recto_inner) {
  // Looking down at the packet as it lies; if it is the wrong way about, it is turned over sideways.
  std::sort(heap.begin(), heap.end(), [](Bit const& a, Bit const& b) { return a.z > b.z; });
  bool turn_over = heap.size() == 1 ? recto_inner != true : !spine_at_hand;
  if (turn_over) std::reverse(heap.begin(), heap.end());
  std::vector<std::array<Read, 2>> leaves;
  for (auto const& bit : heap) {
    auto const& front = turn_over ? bit.down() : bit.up();
    auto const& back = turn_over ? bit.up() : bit.down();
    auto const upright = [&](Figure const& f) {
      bool const head_is_far = (bit.hy < 0) != f.upside_down;
      return head_is_far != heads_near;
    };
    leaves.push_back({Read{front.page, upright(front)}, Read{back.page, upright(back)}});
  }
  return leaves;
}

std::map<int, Heap> cut_and_fold(Scheme const& scheme, std::vector<Heap> const& sheets) {
  std::map<int, Heap> pieces;
  for (int s = 0; s < scheme.sheets(); ++s) pieces[s] = sheets[static_cast<std::size_t>(s)];
  for (int i = 0; i < scheme.steps(); ++i) {
    auto const& step = scheme.step(i);
    auto const heap = pieces[step.piece];
    if (step.kind == Step::Kind::fold) {
      fold_heap(pieces[step.piece], step);
      continue;
    }
    Heap before, after;
    for (auto const& bit : heap)
      ((step.along == Axis::far_near ? bit.x : bit.y) < step.line ? before : after).push_back(bit);
    pieces.erase(step.piece);
    pieces[step.far_or_left_piece] = before;
    pieces[step.near_or_right_piece] = after;
  }
  return pieces;
}

/// The line of the last crease along the spine of a piece.
int spine_of(Scheme const& scheme, int piece) {
  int line = -1;
  for (int i = 0; i < scheme.steps(); ++i)
    if (scheme.step(i).kind == Step::Kind::fold && scheme.step(i).piece == piece &&
        scheme.step(i).along == Axis::far_near)
      line = scheme.step(i).line;
  return line;
}

void reads_through(Scheme const& scheme, std::vector<Heap> const& sheets) {
  auto const pieces = cut_and_fold(scheme, sheets);
  int next_first = 1;
  for (int g = 0; g < scheme.gatherings(); ++g) {
    auto const& line = scheme.gathering(g);
    std::vector<std::array<Read, 2>> before, after;
    bool comes_after = false;
    for (int k = 0; k < line.count; ++k) {
      auto const& placed = scheme.placed(line.first + k);
      auto const& heap = pieces.at(placed.piece);
      // Heads away from the reader's body: with heads near the packet is looked at from the other end.
      bool const spine_left = heap.front().x > spine_of(scheme, placed.piece);
      bool const spine_seen_left = spine_left != placed.heads_near;
      bool const at_hand = spine_seen_left == (scheme.reads() == Reads::left_to_right);
      auto const leaves = read_packet(heap, placed.heads_near, at_hand, placed.recto_inner);
      if (leaves.size() == 1) {
        if (comes_after)
          after.insert(after.begin(), leaves[0]);
        else
          before.push_back(leaves[0]);
        comes_after = placed.opens_pair;
        continue;
      }
      auto const half = static_cast<std::ptrdiff_t>(leaves.size() - leaves.size() / 2);
      before.insert(before.end(), leaves.begin(), leaves.begin() + half);
      after.insert(after.begin(), leaves.begin() + half, leaves.end());
      comes_after = placed.opens_pair;
    }
    before.insert(before.end(), after.begin(), after.end());
    int const first = line.first_page ? *line.first_page : next_first;
    int expected = first;
    for (auto const& leaf : before)
      for (auto const& side : leaf) {
        CHECK(side.page == expected++);
        CHECK(side.upright);
      }
    next_first = expected;
  }
}

template <class Act> void each_scheme(Act act) {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    act(attested.scheme());
    act(mirrored(attested.scheme()));
  }
}

} // namespace

TEST_CASE("the printed sides of every picture of formes, folded by hand, read 1, 2, 3 upright; right-to-left too") {
  each_scheme([](Scheme const& scheme) {
    std::vector<Heap> sheets;
    for (int s = 0; s < scheme.sheets(); ++s) {
      auto const svg = forme_svg(scheme, s);
      REQUIRE(svg);
      sheets.push_back(
          lay_out(read_side(*svg, "inner"), read_side(*svg, "outer"), scheme.sheet(s).rows, scheme.sheet(s).columns));
    }
    reads_through(scheme, sheets);
  });
}

TEST_CASE("the sheet to fold reads through when printed by either kind of duplex, on A4 and on letter") {
  each_scheme([](Scheme const& scheme) {
    for (auto size : {PageSize::a4, PageSize::letter})
      for (auto duplex : {Duplex::long_edge, Duplex::short_edge}) {
        std::vector<Heap> sheets;
        for (int s = 0; s < scheme.sheets(); ++s) {
          auto const printed = sheet_to_fold(scheme, s, size, duplex);
          REQUIRE(printed);
          pugi::xml_document document;
          REQUIRE(document.load_string(printed->front.c_str()));
          double x{}, y{}, width{}, height{};
          REQUIRE(std::sscanf(document.child("svg").attribute("viewBox").value(), "%lf %lf %lf %lf", &x, &y, &width,
                              &height) == 4);
          auto const inner = read_side(printed->front, "inner");
          auto outer = read_side(printed->back, "outer");
          // The printer turns the page about an edge; about a level one, the back comes out the other way up. To look
          // at it as the front lies, it is turned round in its plane.
          bool const level_edge = (width > height) == (duplex == Duplex::long_edge);
          if (level_edge) {
            outer.left = width - outer.left - outer.width, outer.top = height - outer.top - outer.height;
            for (auto& f : outer.figures) f.x = width - f.x, f.y = height - f.y, f.upside_down = !f.upside_down;
          }
          // Register: the frames lie on each other.
          CHECK(std::abs(outer.left - (width - inner.left - inner.width)) < 0.02);
          CHECK(std::abs(outer.top - inner.top) < 0.02);
          sheets.push_back(lay_out(inner, outer, scheme.sheet(s).rows, scheme.sheet(s).columns));
        }
        reads_through(scheme, sheets);
      }
  });
}

TEST_CASE("every picture of a step shows the pages that are up when the sheet is folded by hand so far") {
  each_scheme([](Scheme const& scheme) {
    std::map<int, Heap> pieces;
    for (int s = 0; s < scheme.sheets(); ++s) {
      auto const svg = *forme_svg(scheme, s);
      pieces[s] =
          lay_out(read_side(svg, "inner"), read_side(svg, "outer"), scheme.sheet(s).rows, scheme.sheet(s).columns);
    }
    for (int i = 0; i < scheme.steps(); ++i) {
      auto const& step = scheme.step(i);
      Heap const before = pieces[step.piece];
      Heap after;
      if (step.kind == Step::Kind::fold) {
        fold_heap(pieces[step.piece], step);
        after = pieces[step.piece];
      } else {
        for (auto const& bit : before)
          pieces[(step.along == Axis::far_near ? bit.x : bit.y) < step.line ? step.far_or_left_piece
                                                                            : step.near_or_right_piece]
              .push_back(bit);
        after = before;
      }
      pugi::xml_document document;
      REQUIRE(document.load_string((*step_svg(scheme, i)).c_str()));
      double const middle = document.child("svg").attribute("width").as_double() / 2;
      for (Heap const* heap : {&before, static_cast<Heap const*>(&after)}) {
        std::map<int, bool> up; // page, and whether it lies upside down
        for (auto const& bit : *heap) {
          bool const covered = std::any_of(heap->begin(), heap->end(), [&](Bit const& other) {
            return std::abs(other.x - bit.x) < 0.1 && std::abs(other.y - bit.y) < 0.1 && other.z > bit.z;
          });
          if (!covered) up[bit.up().page] = (bit.hy > 0) != bit.up().upside_down;
        }
        std::size_t drawn = 0;
        for (auto const& found : document.select_nodes("//g[@class='cell']")) {
          bool const on_right = found.node().child("rect").attribute("x").as_double() > middle;
          if (on_right != (heap == &after)) continue;
          auto const page = found.node().attribute("data-page").as_int();
          ++drawn;
          REQUIRE(up.count(page) == 1);
          if (auto const number = found.node().select_node("text").node()) {
            CHECK(number.text().as_int() == page);
            CHECK(static_cast<bool>(number.attribute("transform")) == up[page]);
          }
        }
        // Two copies can be up at once in one-forme work, each page twice.
        CHECK(drawn >= up.size());
        CHECK(drawn <= 2 * up.size());
      }
    }
  });
}
