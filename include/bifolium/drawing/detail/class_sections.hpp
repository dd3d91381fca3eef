// SPDX-License-Identifier: MIT
/// The sections of the class page that come from one scheme: formes, printed paper, the paper itself, gatherings,
/// openings correct and wrong, questions with their answers.
#pragma once

#include <bifolium/drawing/book_svg.hpp>
#include <bifolium/drawing/detail/class_data.hpp>
#include <bifolium/drawing/detail/ways_read.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/gathering_svg.hpp>
#include <bifolium/drawing/sheet_svg.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The data for the sections.
class ClassSections {
  Scheme const& scheme_;
  Fold<> const& fold_;
  std::vector<WalkedStep> const& steps_;
  Imposition<> formes_{fold_};
  std::vector<SheetMark> marks_{sheet_marks(scheme_, steps_)};

  static void put(std::string& html, std::string_view text) { html += text; }
  static std::string figure(std::string_view drawing, std::string_view caption) {
    std::string html = "<figure>";
    return html.append(svg_element(drawing))
        .append("<figcaption>")
        .append(xml_escaped(caption))
        .append("</figcaption></figure>\n");
  }
  static std::string section(std::string_view name, std::string_view title, std::string_view content) {
    std::string html = "<section aria-labelledby=\"of-";
    html.append(name).append("\">\n<h2 id=\"of-").append(name).append("\">").append(title).append("</h2>\n");
    return html.append(content).append("</section>\n");
  }
  [[nodiscard]] std::string panel(int sheet, Facing seen, std::string const& caption) const {
    DrawnSheet const drawn{scheme_, fold_, formes_, marks_, sheet};
    constexpr double longest = 140, border = 2;
    auto const wanted = proportion(drawn.lay());
    double const width = wanted > 1 ? longest : longest * wanted, height = wanted > 1 ? longest / wanted : longest;
    Svg svg{width + 2 * border, height + 2 * border, caption,
            "A sheet of " + title_of(scheme_) + ", printed paper or type."};
    draw_panel(svg, {{border, border}, width, height, drawn.lay().rows, drawn.lay().columns}, "sheet-side", seen,
               drawn);
    return figure(static_cast<Svg&&>(svg).finish(), caption);
  }
  [[nodiscard]] std::string of_sheet(int sheet) const {
    if (scheme_.sheets() == 1) return "";
    return ", sheet " + std::to_string(sheet + 1);
  }
  [[nodiscard]] static PaperDrawn paper(Scheme const& scheme, Fold<> const& fold, int sheet) {
    // The chancery sheet of the Bologna stone, 1389: 315 x 450 mm.
    return {scheme, fold, {millimetres{315}, millimetres{450}}, hand_mould, sheet, Lie::as_given};
  }

public:
  ClassSections(Scheme const& scheme, Fold<> const& fold, std::vector<WalkedStep> const& steps)
      : scheme_{scheme}, fold_{fold}, steps_{steps} {}

  [[nodiscard]] std::string formes() const {
    std::string html =
        "<p>The type as it lies on the stone, the compositor at the lower edge. Signatures and catchwords are "
        "at the foot of their pages.</p>\n<div class=\"side-by-side\">\n";
    for (int s = 0; s < scheme_.sheets(); ++s) {
      auto const headings = headings_of({scheme_, fold_, formes_, marks_, s});
      put(html, panel(s, Facing::outer_type, headings.outer_type + of_sheet(s)));
      if (formes_.one_forme(s))
        put(html, "<p>" + words_of_turning(formes_.sheet(s).turned_about) + "</p>\n");
      else
        put(html, panel(s, Facing::inner_type, headings.inner_type + of_sheet(s)));
    }
    put(html, "</div>\n<h3>Printed paper</h3>\n<p>Paper shows the mirror of the type. Heavy line: cut. Dashes: a fold "
              "that is "
              "hollow on this side. Dots: a fold that is a ridge on this side. A figure in a circle: the step.</p>\n"
              "<div class=\"side-by-side\">\n");
    for (int s = 0; s < scheme_.sheets(); ++s) {
      auto const headings = headings_of({scheme_, fold_, formes_, marks_, s});
      put(html, panel(s, Facing::outer_paper, headings.outer + ": turned down before folding" + of_sheet(s)));
      put(html, panel(s, Facing::inner_paper, headings.inner + ": up before folding" + of_sheet(s)));
    }
    return section("formes", "The formes", html.append("</div>\n"));
  }

  [[nodiscard]] std::string paper_section() const {
    std::string html =
        "<p>The sheet against the light, and its leaves, heads up. Thin lines: chain lines. Ring: the "
        "watermark. Uneven edge: deckle. Heavy edge: gutter. Broken edge: a fold still to be opened. Plain "
        "edge: cut. Hold an original against the light only as far as it opens by itself.</p>\n";
    auto const drawn = paper(scheme_, fold_, 0);
    auto const scale = 140 / (drawn.width() > drawn.height() ? drawn.width() : drawn.height());
    Svg sheet{drawn.width() * scale + 4, drawn.height() * scale + 4, "The sheet as paper",
              "Paper seen against the light."};
    draw_paper(sheet, drawn, {2, 2}, scale, 18 * scale);
    put(html, "<div class=\"side-by-side\">" +
                  figure(static_cast<Svg&&>(sheet).finish(), "The sheet, outer side down") + "</div>\n");
    put(html, "<div class=\"side-by-side small leaves\">\n");
    auto const leaf = leaf_size(drawn.lay(), drawn.paper);
    auto const larger = leaf.width.count() > leaf.height.count() ? leaf.width.count() : leaf.height.count();
    auto const leaf_scale = 30 / larger;
    auto const width = leaf.width.count() * leaf_scale, height = leaf.height.count() * leaf_scale;
    auto const least = width < height ? width : height;
    auto const radius = 18 * leaf_scale < least * 0.4 ? 18 * leaf_scale : least * 0.4;
    drawn.each_leaf([&](LeafAt at) {
      auto const name = signature_of(scheme_, at.gathering) + std::to_string(at.leaf.number());
      Svg svg{width + 3, height + 6.5, "Leaf " + name, "A leaf of paper seen against the light."};
      svg.open("leaf", {{}, name, {}});
      svg.rectangle({0.3, 0.3}, width + 2.4, height + 5.9, {.width = 0}, "spot");
      draw_paper_leaf(svg, drawn, at, {1.5, 1.5}, leaf_scale, radius);
      svg.close();
      put(html, svg_element(static_cast<Svg&&>(svg).finish()));
    });
    return section("paper", "The paper", html.append("</div>\n"));
  }

  [[nodiscard]] std::string gatherings() const {
    std::string html =
        "<p>Standing on the spine, seen from the tail. Leaves that meet at the bottom are one piece of paper."
        "</p>\n<div class=\"side-by-side\">\n";
    for (int g = 0; g < fold_.gatherings(); ++g) {
      if (fold_.is_copy(g)) continue;
      auto drawn = regular_gathering(signature_of(scheme_, g), fold_.gathering(g).leaves());
      for (std::size_t i = 0; i < drawn.leaves.size(); ++i) { // pairs that the fold joins; single leaves are not joined
        auto const at = LeafAt{g, fold_.gathering(g).leaf(static_cast<int>(i) + 1)};
        auto const mate = fold_.conjugate(at);
        if (mate)
          drawn.leaves[i].conjugate = mate->leaf.number() - 1;
        else
          drawn.leaves[i].conjugate.reset();
        drawn.leaves[i].state = mate ? LeafFate::present : LeafFate::single;
      }
      drawn.right_to_left = fold_.reads() == Reads::right_to_left;
      put(html, figure(gathering_svg(drawn), gathering_words(scheme_, fold_, g)));
    }
    return section("gatherings", fold_.gatherings() > 1 ? "The gatherings" : "The gathering", html.append("</div>\n"));
  }

  [[nodiscard]] std::vector<WayRead> ways() const {
    std::vector<WayRead> ways;
    ways.push_back({"right", "as it should be", Slip::none, scheme_});
    if (formes_.one_forme(0))
      ways.push_back({"turned", "wrong: the sheet turned about the other line between its impressions",
                      Slip::turned_about_other_line, scheme_});
    else
      ways.push_back({"inner", "wrong: the inner forme laid end for end", Slip::inner_forme_turned, scheme_});
    if (auto const wrong = wrong_inset(scheme_))
      ways.push_back({"inset", "wrong: the parts set one inside another in the wrong order", Slip::none, *wrong});
    return ways;
  }

  /// Writes one page of an opening. `should_be` has no value for a correct page.
  static void put_page(std::string& html, PageRead met, std::string_view leaf, std::optional<int> should_be) {
    put(html, "<span class=\"page");
    put(html, should_be ? " wrong" : "");
    put(html, met.upright ? "\"" : " down\"");
    put(html, " data-page=\"" + std::to_string(met.page) + "\" data-leaf=\"");
    put(html, leaf), put(html, "\"><span>" + std::to_string(met.page) + "</span>");
    if (should_be) put(html, "<small>should be " + std::to_string(*should_be) + "</small>");
    put(html, "</span>");
  }
  [[nodiscard]] std::string book(WayRead const& way, int g) const {
    auto const folded = fold(way.folded);
    auto const pages = pages_met(formes_, *folded, g, way.slip);
    bool const rtl = fold_.reads() == Reads::right_to_left;
    std::string html = "<ol class=\"book\">";
    for (std::size_t i = 0; i <= pages.size(); i += 2) { // the recto of a leaf is the second page of its opening
      std::string halves[2];
      for (std::size_t half = 0; half < 2; ++half) {
        auto const page = i + half;
        auto& to = halves[(half == 1) != rtl ? 1 : 0];
        if (page == 0 || page > pages.size()) {
          to = "<span class=\"page none\"></span>";
          continue;
        }
        auto const& met = pages[page - 1];
        auto const should_be = fold_.first_page(g) + static_cast<int>(page) - 1;
        auto const leaf = signature_of(scheme_, g) + std::to_string((page + 1) / 2);
        put_page(to, met, leaf, met.page == should_be && met.upright ? std::nullopt : std::optional{should_be});
      }
      put(html, "<li class=\"opening\">" + halves[0] + halves[1] + "</li>\n");
    }
    return html.append("</ol>\n");
  }
  [[nodiscard]] std::string openings() const {
    std::string html = "<fieldset><legend>How the sheet was treated</legend>\n";
    auto const all = ways();
    for (auto const& way : all)
      put(html, "<label><input type=\"radio\" name=\"way\" value=\"" + way.name + "\"" +
                    (way.slip == Slip::none && way.name == "right" ? " checked" : "") + "> " + way.words +
                    "</label>\n");
    put(html, "</fieldset>\n");
    for (auto const& way : all) {
      put(html, "<div data-way=\"" + way.name + "\"" + (way.name == "right" ? ">\n" : " hidden>\n"));
      for (int g = 0; g < fold_.gatherings(); ++g) {
        if (fold_.is_copy(g)) continue;
        if (fold_.gatherings() > 1) put(html, "<h3>Gathering " + signature_of(scheme_, g) + "</h3>\n");
        put(html, book(way, g));
      }
      put(html, "</div>\n");
    }
    return section("openings", "Every opening, as a reader meets it", html);
  }

  [[nodiscard]] std::string questions() const;
  [[nodiscard]] std::string questions_to_print() const;

private:
  struct Question {
    std::string asked, answer;
  };
  [[nodiscard]] std::vector<Question> asked() const;
};

/// Returns questions whose answers follow from the scheme.
inline std::vector<ClassSections::Question> ClassSections::asked() const {
  std::vector<Question> list;
  auto const first = fold_.first_page(0);
  auto const gathering = fold_.gathering(0);
  auto const leaf = [&](int number) { return signature_of(scheme_, 0) + std::to_string(number); };
  list.push_back(
      {"How many leaves does the first gathering have, and how many pages?",
       number_of(gathering.leaves(), "leaf", "leaves") + ", " + number_of(gathering.pages(), "page", "pages") + "."});
  if (auto const mate = fold_.conjugate({0, gathering.leaf(1)})) {
    auto const beside = first + gathering.pages() - 1;
    list.push_back({"Before you unfold: which page is printed beside page " + std::to_string(first) + "?",
                    "Page " + std::to_string(beside) + ". Page " + std::to_string(first) +
                        " is on the first leaf and page " + std::to_string(beside) +
                        " on the last, and the two are one piece of paper."});
    list.push_back({"With which leaf is " + leaf(1) + " conjugate?", "With " + leaf(mate->leaf.number()) + "."});
  }
  std::string down;
  for (auto const one : formes_.forme(Side::outer)) {
    if (one.head == Head::near_edge) down.append(down.empty() ? "" : ", ").append(std::to_string(one.page));
  }
  list.push_back(
      {"Which pages are upside down in the " + std::string{formes_.one_forme() ? "forme" : "outer forme"} + "?",
       down.empty() ? "None." : "Pages " + down + "."});
  auto const shown = shows(fold_, {0, gathering.leaf(1)});
  if (shown.chain_lines)
    list.push_back({"How do the chain lines run in leaf " + leaf(1) + ": upright or level?",
                    *shown.chain_lines == ChainLines::vertical ? "Upright (vertical)." : "Level (horizontal)."});
  for (auto const& way : ways())
    if (way.name != "right")
      list.push_back({"What does the reader meet where the sheet went " + way.words + "? Write the numbers in order.",
                      pages_text(pages_met(formes_, *fold(way.folded), 0, way.slip)) + " (an arrow: upside down)"});
  return list;
}
inline std::string ClassSections::questions() const {
  std::string html = "<ol>\n";
  for (auto const& one : asked())
    put(html, "<li>" + xml_escaped(one.asked) + " <details><summary>Answer</summary>" + xml_escaped(one.answer) +
                  "</details></li>\n");
  return section("questions", "Questions", html.append("</ol>\n"));
}
inline std::string ClassSections::questions_to_print() const {
  std::string html = "<div class=\"asked\"><h2>" + xml_escaped(title_of(scheme_)) + "</h2>\n<ol>\n";
  for (auto const& one : asked()) put(html, "<li>" + xml_escaped(one.asked) + "</li>\n");
  return html.append("</ol>\n<p>Fold and cut the printed sheet only, never an original.</p></div>\n");
}

} // namespace detail
} // namespace v0
} // namespace bifolium
