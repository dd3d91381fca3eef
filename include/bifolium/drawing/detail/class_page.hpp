// SPDX-License-Identifier: MIT
/// class_page: the sections in their order, for a scheme and for a formula.
#pragma once

#include <bifolium/drawing/class_page.hpp>
#include <bifolium/drawing/detail/class_formula.hpp>
#include <bifolium/drawing/detail/class_script.hpp>
#include <bifolium/drawing/detail/class_style.hpp>
#include <bifolium/drawing/printable.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string class_head(std::string_view title, PageSize size) {
  std::string html = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\">\n"
                     "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>";
  html.append(xml_escaped(title)).append("</title>\n<style>").append(class_style).append(paper_rules(size));
  return html.append("@media screen { .tall, .wide, .asked { display: none; } }\n</style>\n</head>\n<body>\n");
}
inline std::string class_folding() {
  return "<section aria-labelledby=\"of-folding\">\n<h2 id=\"of-folding\">Fold the sheet</h2>\n"
         "<div class=\"bar\"><button type=\"button\" id=\"back\">◀ Back</button>\n"
         "<button type=\"button\" id=\"forward\">Forward ▶</button>\n"
         "<button type=\"button\" id=\"start\">From the start</button>\n"
         "<label><input type=\"checkbox\" id=\"still\"> no motion</label></div>\n"
         "<p id=\"step\" role=\"status\" aria-live=\"polite\"></p>\n<div id=\"table\" role=\"img\"></div>\n"
         "<p>Say first where each page will lie; then press Forward, or the right arrow key. What moves next is "
         "shaded.</p>\n"
         "<noscript><p>The folding needs JavaScript. Printed, this page shows each step as a picture.</p></noscript>\n"
         "</section>\n";
}

/// Returns the page of a scheme. A further section, with a title and content, follows the folding; it may be empty.
inline Expected<std::string> class_page_of(Scheme const& scheme, ClassPageOptions options, std::string_view heading,
                                           std::string_view own_title, std::string_view own) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const steps = walk(scheme);
  if (!steps) return steps.error();
  ClassSections const sections{scheme, *folded, *steps};
  auto html = class_head(heading, options.paper);
  html.append("<a class=\"skip\" href=\"#of-openings\">Skip to the openings</a>\n<div class=\"for-screen\">\n<h1>");
  html.append(xml_escaped(heading)).append("</h1>\n<nav aria-label=\"Sections\"><a href=\"#of-folding\">fold</a>\n");
  if (!own.empty()) html.append("<a href=\"#of-book\">").append(own_title).append("</a>\n");
  html.append(
      "<a href=\"#of-formes\">formes</a>\n<a href=\"#of-paper\">paper</a>\n<a href=\"#of-gatherings\">gatherings</a>\n"
      "<a href=\"#of-openings\">openings</a>\n<a href=\"#of-questions\">questions</a></nav>\n<main>\n");
  html.append(class_folding());
  if (!own.empty())
    html.append("<section aria-labelledby=\"of-book\">\n<h2 id=\"of-book\">")
        .append(own_title)
        .append("</h2>\n")
        .append(own)
        .append("</section>\n");
  html.append(sections.formes()).append(sections.paper_section()).append(sections.gatherings());
  html.append(sections.openings()).append(sections.questions());
  html.append("</main>\n<p id=\"said\" role=\"status\" aria-live=\"polite\">Point at a page, or move to one with Tab "
              "and the arrow "
              "keys: it is marked wherever it is shown.</p>\n</div>\n<div class=\"for-print\">\n");
  for (int sheet = 0; sheet < scheme.sheets(); ++sheet) {
    auto const sides = sheet_to_fold(scheme, sheet, options.paper, options.duplex);
    append_paper_page(html, sides->front);
    append_paper_page(html, sides->back);
  }
  for (auto const& page : *steps_svg(scheme, options.paper)) append_paper_page(html, page);
  html.append(sections.questions_to_print()).append("</div>\n<script type=\"application/json\" id=\"walk\">");
  html.append(ClassData{scheme, *folded, *steps}.written()).append("</script>\n<script>\n").append(class_script);
  return html.append("</script>\n</body>\n</html>\n");
}

} // namespace detail

BIFOLIUM_INLINE Expected<std::string> class_page(Scheme const& scheme, ClassPageOptions options) {
  return detail::class_page_of(scheme, options, title_of(scheme), {}, {});
}
BIFOLIUM_INLINE Expected<std::string> class_page(Formula const& formula, std::string_view written,
                                                 ClassPageOptions options, Limits const& limits) {
  if (!formula.format()) return error_in_field(Problem::format_not_stated, "formula");
  std::optional<Attested> commonest;
  std::uint64_t most = 0;
  for (auto const& run : formula.runs())
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      if (auto const scheme = detail::usual_scheme(*formula.format(), run.leaves.term(i));
          scheme && static_cast<std::uint64_t>(run.gatherings) > most)
        commonest = scheme, most = static_cast<std::uint64_t>(run.gatherings);
  if (!commonest) return error_in_field(Problem::no_scheme_for_gatherings, "formula");
  auto const section = detail::formula_section(formula, written, limits);
  if (!section) return section.error();
  return detail::class_page_of(commonest->scheme(), options, written, "The book", *section);
}

} // namespace v0
} // namespace bifolium
