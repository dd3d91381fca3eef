// SPDX-License-Identifier: MIT
/// What every drawing must be: XML with a title, a description and a viewBox in millimetres, nothing outside its page, no
/// text on other text, no page number or signature on a line or a circle. Widths of text are estimated from DejaVu Serif;
/// tests/drawing/browser.sh asks a browser for the true ones.
#pragma once

#include <bifolium/drawing/svg.hpp>

#include "check.hpp"

#include <cmath>
#include <cstdio>
#include <pugixml.hpp>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

/// A drawing as XML.
inline pugi::xml_document read_svg(std::string const& svg) {
  pugi::xml_document document;
  REQUIRE(document.load_string(svg.c_str()));
  return document;
}

struct DrawnBox {
  double left{}, top{}, right{}, bottom{};
  std::string what{}, kind{};
  [[nodiscard]] bool on(DrawnBox const& other) const {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
  /// Turned by whatever groups it is in.
  void turn(pugi::xml_node node) {
    for (auto up = node; up; up = up.parent()) {
      double degrees{}, x{}, y{};
      if (std::sscanf(up.attribute("transform").value(), "rotate(%lf %lf %lf)", &degrees, &x, &y) != 3) continue;
      REQUIRE(degrees == 180);
      auto const old = *this;
      left = 2 * x - old.right, right = 2 * x - old.left, top = 2 * y - old.bottom, bottom = 2 * y - old.top;
    }
  }
};

inline double value_of(pugi::xml_node node, char const* name) { return node.attribute(name).as_double(); }

inline DrawnBox text_box(pugi::xml_node node) {
  auto const size = value_of(node, "font-size"), x = value_of(node, "x"), y = value_of(node, "y");
  std::string const text = node.text().get(), anchor = node.attribute("text-anchor").value();
  bool const bold = node.attribute("font-weight");
  int characters = 0;
  for (char c : text) characters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  // DejaVu Serif: figures are 0.636 of the size wide; words come to 0.56 on average, bold to 0.64.
  bool const figures = text.find_first_not_of("0123456789") == std::string::npos;
  auto const width = characters * size * (figures ? 0.636 : bold ? 0.64 : 0.56);
  auto const left = anchor == "middle" ? x - width / 2 : anchor == "end" ? x - width : x;
  DrawnBox box{left, y - 0.73 * size, left + width, y, text, node.attribute("class").value()};
  box.turn(node);
  return box;
}

inline DrawnBox line_box(pugi::xml_node node) {
  DrawnBox box{std::fmin(value_of(node, "x1"), value_of(node, "x2")),
               std::fmin(value_of(node, "y1"), value_of(node, "y2")),
               std::fmax(value_of(node, "x1"), value_of(node, "x2")),
               std::fmax(value_of(node, "y1"), value_of(node, "y2")),
               "line",
               node.attribute("class").value()};
  box.turn(node);
  return box;
}

/// A path of M, L and Z: its points.
inline DrawnBox path_box(pugi::xml_node node) {
  DrawnBox box{1e9, 1e9, -1e9, -1e9, "path", node.attribute("class").value()};
  std::istringstream words{node.attribute("d").value()};
  std::string word;
  bool begins = true; // with an M: SVG 1.1, 8.3.2
  while (words >> word) {
    if (word == "Z" && !begins) continue;
    REQUIRE((begins ? word == "M" : word == "M" || word == "L"));
    begins = false;
    double x = 0, y = 0;
    REQUIRE((words >> x >> y));
    box.left = std::fmin(box.left, x), box.right = std::fmax(box.right, x);
    box.top = std::fmin(box.top, y), box.bottom = std::fmax(box.bottom, y);
  }
  box.turn(node);
  return box;
}

/// Fits on a sheet of A4 or of letter paper, lying either way (ISO 216; ANSI/ASME Y14.1, 8.5 x 11 in).
inline void fits_on_a_page(std::string const& svg) {
  double width{}, height{};
  auto const at = svg.find("viewBox=\"0 0 ");
  REQUIRE(at != std::string::npos);
  REQUIRE(std::sscanf(svg.c_str() + at, "viewBox=\"0 0 %lf %lf", &width, &height) == 2);
  auto const large = std::fmax(width, height), small = std::fmin(width, height);
  CAPTURE(width);
  CAPTURE(height);
  CHECK(((large <= 297.01 && small <= 210.01) || (large <= 279.41 && small <= 215.91)));
}

inline void is_sound(std::string const& svg) {
  pugi::xml_document document;
  REQUIRE(document.load_string(svg.c_str()));
  auto const root = document.child("svg");
  CHECK(!std::string{root.child("title").text().get()}.empty());
  std::string const described = root.child("desc").text().get();
  bool const says_what_it_shows = described.find("type") != std::string::npos ||
                                  described.find("aper") != std::string::npos; // type on the stone, or (printed) paper
  CHECK(says_what_it_shows);
  double x{}, y{}, width{}, height{};
  REQUIRE(std::sscanf(root.attribute("viewBox").value(), "%lf %lf %lf %lf", &x, &y, &width, &height) == 4);
  CHECK(root.attribute("width").value() == bifolium::svg_number(width) + "mm");
  CHECK(root.attribute("height").value() == bifolium::svg_number(height) + "mm");
  auto const page = root.child("desc").next_sibling(); // white, so that it can be read where the window is dark
  CHECK(std::string{page.name()} == "rect");
  CHECK(std::string{page.attribute("fill").value()} == "white");
  CHECK(value_of(page, "x") == x);
  CHECK(value_of(page, "y") == y);
  CHECK(value_of(page, "width") == width);
  CHECK(value_of(page, "height") == height);
  CHECK(svg.find("nan") == std::string::npos);
  CHECK(svg.find(" id=") == std::string::npos); // several drawings in one page must not share names

  std::vector<DrawnBox> texts, boxes;
  for (auto const& found : document.select_nodes("//text")) texts.push_back(text_box(found.node()));
  for (std::size_t i = 0; i < texts.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) {
      CAPTURE(texts[i].what);
      CAPTURE(texts[k].what);
      CHECK(!texts[i].on(texts[k]));
    }
  for (auto const& text : document.select_nodes("//text[not(@class='page')]")) {
    CAPTURE(text.node().text().get());
    CHECK(value_of(text.node(), "font-size") >= 2.4); // mm: what is read on a sheet held in the hand
  }
  boxes = texts;
  for (auto const& found : document.select_nodes("//line | //path | //rect | //circle")) {
    auto const node = found.node();
    std::string const name = node.name(), group = node.parent().attribute("class").value();
    // Left out, SVG fills in black and draws no line (SVG 1.1, 11.3 and 11.4): the drawing says both, and shows something.
    bool const is_page = name == "rect" && !node.attribute("x");
    std::string const fill = node.attribute("fill").value(), stroke = node.attribute("stroke").value();
    CHECK(!fill.empty());
    CHECK((is_page || !stroke.empty()));
    bool const is_spot = std::string_view{node.attribute("class").value()} == "spot"; // a place to point at, not to see
    CHECK((is_spot || fill != "none" || (stroke != "none" && value_of(node, "stroke-width") > 0)));
    std::string const drawn = node.attribute("d").value();
    if (name == "line" || (name == "path" && drawn.back() != 'Z')) CHECK(fill == "none"); // it holds no area
    if (group == "watermark" || group == "countermark") continue;                         // cut by their windows
    DrawnBox box;
    if (name == "line") box = line_box(node);
    if (name == "path") box = path_box(node);
    if (name == "rect") {
      auto const left = value_of(node, "x"), top = value_of(node, "y");
      box = {left, top, left + value_of(node, "width"), top + value_of(node, "height"), "rect"};
      box.turn(node);
    }
    if (name == "circle") {
      auto const r = value_of(node, "r"), at_x = value_of(node, "cx"), at_y = value_of(node, "cy");
      box = {at_x - r, at_y - r, at_x + r, at_y + r, "circle"};
      box.turn(node);
    }
    boxes.push_back(box);
    // What must be read is clear of lines and circles.
    bool const in_the_way = box.kind == "crease" || box.kind == "cut" || box.kind == "catchword" ||
                            box.kind == "register" || box.kind == "fold" || box.what == "circle";
    if (!in_the_way) continue;
    for (auto const& text : texts) {
      if (text.kind == "turn") continue; // in its circle on its line
      CAPTURE(text.what);
      CAPTURE(box.kind);
      CHECK(!text.on(box));
    }
  }
  for (auto const& box : boxes) {
    CAPTURE(box.what);
    CHECK(box.left >= -0.01);
    CHECK(box.top >= -0.01);
    CHECK(box.right <= width + 0.01);
    CHECK(box.bottom <= height + 0.01);
  }
}
