// SPDX-License-Identifier: MIT
/// A small writer of SVG 1.1. A drawing is measured in millimetres and is black on white. Text stays text, so that it
/// can be searched, read aloud and tested, and every drawing has a title and a description for people who cannot see
/// it. The output has the same bytes on every machine: numbers are rounded to hundredths and written without the
/// locale. Input text is escaped, with U+FFFD in place of characters that XML 1.0 does not allow.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/utf8.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Returns `text` in the form that is allowed between tags and inside quotation marks (XML 1.0, fifth edition, sections
/// 2.2 and 2.4).
inline std::string xml_escaped(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    auto const [value, bytes, malformed] = decode(text, at);
    bool const allowed =
        value == '\t' || value == '\n' || value == '\r' || (value >= 0x20 && value != 0xFFFE && value != 0xFFFF);
    if (malformed || !allowed)
      out += "\xEF\xBF\xBD";
    else if (value < 0x20)
      out += value == '\t' ? "&#9;" : value == '\n' ? "&#10;" : "&#13;"; // an attribute would turn them into blanks
    else if (value == '&')
      out += "&amp;";
    else if (value == '<')
      out += "&lt;";
    else if (value == '>')
      out += "&gt;";
    else if (value == '"')
      out += "&quot;";
    else
      out.append(text.substr(at, bytes));
    at += bytes;
  }
  return out;
}

/// Writes a length or position in millimetres, to the hundredth, without superfluous zeros. Precondition: it is less
/// than a billion.
inline std::string svg_number(double length) {
  if (!(length > -1e9 && length < 1e9)) broken("a length in a drawing is less than a billion millimetres");
  auto const rounded = static_cast<long long>(length * 100 + (length < 0 ? -0.5 : 0.5));
  auto const size = static_cast<unsigned long long>(rounded < 0 ? -rounded : rounded);
  std::string out = rounded < 0 ? "-" : "";
  out += std::to_string(size / 100);
  auto const rest = size % 100;
  if (rest != 0) {
    out += '.';
    out += static_cast<char>('0' + rest / 10);
    if (rest % 10 != 0) out += static_cast<char>('0' + rest % 10);
  }
  return out;
}

/// A point of the drawing, in millimetres from its left and upper edges.
struct Spot {
  double x{}, y{}; ///< millimetres from the left and from the top
  friend constexpr bool operator==(Spot, Spot) = default;
};

/// The style of a line. Kinds of line differ in dashes and width, never in colour, so that a photocopy shows them.
struct Stroke {
  double width{0.25};               ///< width in millimetres
  std::string_view breaks{};        ///< lengths of dashes and gaps in mm, "2 1"; empty for a solid line
  std::string_view colour{"black"}; ///< the name or number of a colour in SVG
  bool round{};                     ///< true for round ends: a dash of length 0 becomes a dot
};

/// The part of the text that is at its point.
enum class Anchor : std::uint8_t { start, middle, end };

/// The style of a text. `turned` is clockwise, about the middle of the text's height at its anchor.
struct Lettering {
  double size{4};                   ///< size of the type, in mm
  Anchor anchor{Anchor::middle};    ///< the part of the text that is at its point
  int turned{};                     ///< degrees
  bool bold{}, italic{};            ///< the style of the letters
  std::string_view kind{};          ///< written as `class`, so that a program can find the text
  std::string_view colour{"black"}; ///< the name or number of a colour in SVG
};

/// The content of a group, for programs that connect drawings. It is written as the attributes data-page, data-leaf and
/// data-place, if they have a value.
struct Joins {
  std::optional<int> page{};               ///< the page of the scheme
  std::optional<std::string_view> leaf{};  ///< the leaf, such as A3
  std::optional<std::string_view> place{}; ///< its position, such as outer-0-1: forme, row and column
};

/// A drawing that is being written. Groups are opened and closed in pairs; `finish` returns the text.
class Svg {
  static constexpr std::string_view prolog = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  std::string text_;
  int open_{};

  template <class... Parts> void put(Parts const&... parts) { ((text_ += parts), ...); }
  void attribute(char const* name, double value) { put(" ", name, "=\"", svg_number(value), "\""); }
  void stroke(Stroke const& how, std::string_view filled = "none") {
    put(" fill=\"", xml_escaped(filled), "\" stroke=\"", xml_escaped(how.colour), "\"");
    attribute("stroke-width", how.width);
    if (!how.breaks.empty()) put(" stroke-dasharray=\"", xml_escaped(how.breaks), "\"");
    if (how.round) put(" stroke-linecap=\"round\"");
  }

public:
  /// Begins a drawing of `width` x `height` mm.
  Svg(double width, double height, std::string_view title, std::string_view description) {
    auto const w = svg_number(width), h = svg_number(height);
    put(prolog, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"", w, "mm\" height=\"", h, "mm\" viewBox=\"0 0 ", w,
        " ", h, "\" role=\"img\" aria-label=\"", xml_escaped(title),
        "\" font-family=\"'DejaVu Serif', 'Liberation Serif', serif\">\n<title>", xml_escaped(title),
        "</title>\n<desc>", xml_escaped(description), "</desc>\n");
    put("<rect width=\"", w, "\" height=\"", h, "\" fill=\"white\"/>\n");
  }

  /// Begins a group, which ends with `close`. `kind` is written as `class`, `joins` as data attributes.
  void open(std::string_view kind, Joins const& joins = {}) {
    put("<g class=\"", xml_escaped(kind), "\"");
    if (joins.page) put(" data-page=\"", std::to_string(*joins.page), "\"");
    if (joins.leaf) put(" data-leaf=\"", xml_escaped(*joins.leaf), "\"");
    if (joins.place) put(" data-place=\"", xml_escaped(*joins.place), "\"");
    put(">\n");
    ++open_;
  }
  /// Begins a group that is turned upside down about a point.
  void open_upside_down(std::string_view kind, Spot about) {
    put("<g class=\"", xml_escaped(kind), "\" transform=\"rotate(180 ", svg_number(about.x), " ", svg_number(about.y),
        ")\">\n");
    ++open_;
  }
  /// Ends a group.
  void close() {
    if (open_-- == 0) broken("no group of the drawing is open");
    put("</g>\n");
  }

  /// Begins a window: until `close_window`, only the part of the drawing inside this rectangle is visible. Positions
  /// are still those of the whole drawing.
  void open_window(Spot corner, double width, double height) {
    put("<svg");
    attribute("x", corner.x), attribute("y", corner.y), attribute("width", width), attribute("height", height);
    put(" viewBox=\"", svg_number(corner.x), " ", svg_number(corner.y), " ", svg_number(width), " ", svg_number(height),
        "\">\n");
    ++open_;
  }
  /// Ends a window.
  void close_window() {
    if (open_-- == 0) broken("no window of the drawing is open");
    put("</svg>\n");
  }

  /// Draws a straight line.
  void line(Spot from, Spot to, Stroke const& how = {}, std::string_view kind = {}) {
    put("<line");
    if (!kind.empty()) put(" class=\"", xml_escaped(kind), "\"");
    attribute("x1", from.x), attribute("y1", from.y), attribute("x2", to.x), attribute("y2", to.y);
    stroke(how);
    put("/>\n");
  }
  /// Draws a rectangle. `filled` with white covers what lies below it.
  void rectangle(Spot corner, double width, double height, Stroke const& how = {}, std::string_view kind = {},
                 std::string_view filled = "none") {
    put("<rect");
    if (!kind.empty()) put(" class=\"", xml_escaped(kind), "\"");
    attribute("x", corner.x), attribute("y", corner.y), attribute("width", width), attribute("height", height);
    stroke(how, filled);
    put("/>\n");
  }
  /// Draws a circle.
  void circle(Spot middle, double radius, Stroke const& how = {}, std::string_view filled = "none") {
    put("<circle");
    attribute("cx", middle.x), attribute("cy", middle.y), attribute("r", radius);
    stroke(how, filled);
    put("/>\n");
  }
  /// Draws a path. `d` is the path in the notation of SVG; make its numbers with `svg_number`.
  void path(std::string_view d, Stroke const& how = {}, std::string_view kind = {}, std::string_view filled = "none") {
    put("<path");
    if (!kind.empty()) put(" class=\"", xml_escaped(kind), "\"");
    put(" d=\"", xml_escaped(d), "\"");
    stroke(how, filled);
    put("/>\n");
  }
  /// Writes a text whose digits are centred on `at` vertically. No attribute for baselines is used, because programs
  /// treat it differently.
  void text(Spot at, std::string_view what, Lettering const& how = {}) {
    put("<text");
    if (!how.kind.empty()) put(" class=\"", xml_escaped(how.kind), "\"");
    attribute("x", at.x), attribute("y", at.y + figure_height * how.size / 2), attribute("font-size", how.size);
    if (how.anchor != Anchor::start) put(" text-anchor=\"", how.anchor == Anchor::middle ? "middle" : "end", "\"");
    if (how.bold) put(" font-weight=\"bold\"");
    if (how.italic) put(" font-style=\"italic\"");
    put(" fill=\"", xml_escaped(how.colour), "\"");
    if (how.turned != 0)
      put(" transform=\"rotate(", std::to_string(how.turned), " ", svg_number(at.x), " ", svg_number(at.y), ")\"");
    put(">", xml_escaped(what), "</text>\n");
  }

  /// Returns the text of the drawing. Precondition: every group is closed.
  [[nodiscard]] std::string finish() && {
    if (open_ != 0) broken("a group of the drawing is still open: close it before finish()");
    put("</svg>\n");
    return static_cast<std::string&&>(text_);
  }

  /// The height of a digit as a fraction of the size of its type, and an upper bound of its width; they give the room
  /// that a text needs.
  static constexpr double figure_height = 0.73, figure_width = 0.64;
  /// Returns an upper bound of the width of a line of text in mm. Fonts differ, so broad letters count as broad, and
  /// characters of scripts that are written in squares as squares.
  [[nodiscard]] static constexpr double room(std::string_view text, double size, bool bold = false) {
    double width = 0;
    for (std::size_t at = 0; at < text.size();) {
      auto const [value, bytes, malformed] = decode(text, at);
      bool const narrow = value == ' ' || value == '.' || value == ',' || value == 'i' || value == 'l' || value == ':';
      bool const broad = (value >= 'A' && value <= 'Z') || value == 'm' || value == 'w' || value == '%' || value == '@';
      width += malformed || value >= 0x1100 ? 1.03 : broad ? (bold ? 1.0 : 0.9) : narrow ? 0.42 : bold ? 0.74 : 0.66;
      at += bytes;
    }
    return width * size;
  }
  /// Returns the size at which a line of text fits into `width` mm: `size`, or less.
  [[nodiscard]] static constexpr double size_within(std::string_view text, double size, double width,
                                                    bool bold = false) {
    auto const needed = room(text, size, bold);
    return needed > width ? size * width / needed : size;
  }
};

/// Returns a drawing as an element for a page of HTML, without the first line that only a separate file has. No element
/// of a drawing has an id, so several drawings can be in one page.
inline std::string svg_element(std::string_view drawing) {
  auto const start = drawing.find("<svg");
  return std::string{drawing.substr(start == drawing.npos ? 0 : start)};
}

} // namespace v0
} // namespace bifolium
