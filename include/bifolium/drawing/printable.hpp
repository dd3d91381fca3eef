// SPDX-License-Identifier: MIT
/// One page of HTML to print, with everything a pupil needs to fold the sheets of a scheme: front and back of each
/// sheet, then the steps. Any browser prints it. Every page of paper has its own size and lies so that the sheet is as
/// large as possible.
#pragma once

#include <bifolium/drawing/foldable.hpp>
#include <bifolium/drawing/steps_svg.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Adds a drawing as one page of paper.
inline void append_paper_page(std::string& html, std::string_view drawing) {
  auto const at = drawing.find(" width=\"");
  auto const number = [&](std::string_view name) {
    double value = 0;
    for (auto i = drawing.find(name, at) + name.size(); drawing[i] >= '0' && drawing[i] <= '9'; ++i)
      value = value * 10 + (drawing[i] - '0');
    return value;
  };
  bool const wide = number(" width=\"") > number(" height=\"");
  html.append("<div class=\"").append(wide ? "wide" : "tall").append("\">").append(svg_element(drawing));
  html.append("</div>\n");
}

/// Returns the CSS rules by which a browser prints such pages on paper of a size.
inline std::string paper_rules(PageSize size) {
  std::string const name = size == PageSize::a4 ? "A4" : "letter";
  return "@page { margin: 0; }\n@page tall { size: " + name + " portrait; }\n@page wide { size: " + name +
         " landscape; }\n@page asked { size: " + name +
         " portrait; }\n.tall { page: tall; break-after: page; }\n.wide { page: wide; break-after: page; }\n"
         ".tall svg, .wide svg { display: block; }\n";
}

} // namespace detail

/// Returns one file of HTML with the sheets of a scheme, front and back, and the pages of its steps. Errors: those of
/// `fold`.
inline Expected<std::string> printable_html(Scheme const& scheme, PageSize size = PageSize::a4,
                                            Duplex duplex = Duplex::long_edge) {
  auto const steps = steps_svg(scheme, size);
  if (!steps) return steps.error();
  auto const title = xml_escaped(title_of(scheme));
  auto html = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\">\n<title>Sheets to fold: " + title +
              "</title>\n<style>\nbody { margin: 0; }\n" + detail::paper_rules(size) + "</style>\n</head>\n<body>\n";
  for (int sheet = 0; sheet < scheme.sheets(); ++sheet) {
    auto const sides = sheet_to_fold(scheme, sheet, size, duplex);
    if (!sides) return sides.error();
    detail::append_paper_page(html, sides->front);
    detail::append_paper_page(html, sides->back);
  }
  for (auto const& page : *steps) detail::append_paper_page(html, page);
  return html.append("</body>\n</html>\n");
}

} // namespace v0
} // namespace bifolium
