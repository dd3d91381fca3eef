// SPDX-License-Identifier: MIT
/// The gatherings of a formula for the class page: a drawing of each, and for each leaf the sheet of the book to which
/// it belongs and the formes that print its two sides. The scheme of a gathering is the usual one for its format and
/// number of leaves (fold/scheme_names.hpp). If no attested scheme makes such a gathering, the page says so.
#pragma once

#include <bifolium/drawing/detail/class_sections.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/fold/scheme_names.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the usual scheme for gatherings of `leaves` leaves in a format, or no value if no attested scheme makes
/// them.
inline std::optional<Attested> usual_scheme(Format format, int leaves) {
  std::string name{format.symbol().view()};
  return find_scheme(name.append(" in ").append(std::to_string(leaves)).append("s"));
}

/// Assigns the sheets of a book to its gatherings, in order.
class SheetsAndFormes {
  std::optional<Attested> scheme_{};
  int next_gathering_{}, next_sheet_{1};

public:
  struct Taken {
    Scheme scheme;
    Fold<> fold;
    int gathering{}, first_sheet{};
    bool half{}; ///< half a sheet, printed together with a second copy of itself
  };
  /// Returns the sheets of the next gathering, which has `leaves` leaves.
  std::optional<Taken> take(Format format, int leaves) {
    auto const wanted = usual_scheme(format, leaves);
    if (!wanted) return next_gathering_ = 0, scheme_ = wanted, std::nullopt;
    auto const scheme = wanted->scheme();
    auto const folded = *fold(scheme);
    if (wanted != scheme_) next_gathering_ = 0;
    scheme_ = wanted;
    int const g = next_gathering_, first = g == 0 ? next_sheet_ : next_sheet_ - scheme.sheets();
    if (folded.gathering(g).leaves() != leaves) return next_gathering_ = 0, std::nullopt;
    if (g == 0) next_sheet_ += scheme.sheets();
    do ++next_gathering_;
    while (next_gathering_ < folded.gatherings() && folded.is_copy(next_gathering_));
    if (next_gathering_ == folded.gatherings()) next_gathering_ = 0;
    return Taken{scheme, folded, g, first, folded.copies() > 1};
  }
};

/// Writes one row of the table of a gathering, for leaf `number` as folded.
inline std::string leaf_row(SheetsAndFormes::Taken const& taken, Imposition<> const& formes, std::string_view label,
                            int number, std::string_view said) {
  LeafAt const at{taken.gathering, taken.fold.gathering(taken.gathering).leaf(number)};
  auto const pages = taken.fold.pages_of(at);
  auto const forme = [&](int page) {
    auto const place = formes.place(page);
    std::string words = place.side == Side::outer   ? "outer forme"
                        : place.side == Side::inner ? "inner forme"
                                                    : "the one forme";
    return words.append(", ")
        .append(row_name(place.row, formes.rows(place.sheet)))
        .append(", ")
        .append(ordinal(place.column + 1));
  };
  std::string row = "<tr data-leaf=\"book:";
  row.append(xml_escaped(label)).append("\"><th scope=\"row\">").append(xml_escaped(label)).append("</th><td>");
  row.append(taken.half ? "half of sheet " : "sheet ")
      .append(std::to_string(taken.first_sheet + taken.fold.cell(at).sheet));
  row.append("</td><td>").append(forme(pages.recto)).append("</td><td>").append(forme(pages.verso()));
  return row.append("</td><td>").append(xml_escaped(said)).append("</td></tr>\n");
}

/// Describes a number of leaves as a part of a sheet: "2/8 of a sheet, printed with other matter", "3 sheets".
inline std::string part_of_sheet(Format format, int leaves) {
  auto const to_sheet = format.leaves_to_sheet();
  if (!to_sheet) return "of sheets whose number is not known";
  auto const whole = leaves / *to_sheet, rest = leaves % *to_sheet;
  std::string text = whole > 0 ? number_of(whole, "sheet", "sheets") : "";
  if (rest == 0) return text;
  text.append(whole > 0 ? " and " : "").append(std::to_string(rest)).append("/").append(std::to_string(*to_sheet));
  return text.append(" of a sheet, printed together with something else");
}

/// Writes the table of one gathering, with its leaves in the order of the book.
inline std::string gathering_table(DrawnGathering const& drawn, std::optional<SheetsAndFormes::Taken> const& taken,
                                   Format format, int leaves) {
  if (!taken)
    return "<p>" + capitalised(number_of(leaves, "leaf is", "leaves are")) + " " + part_of_sheet(format, leaves) +
           ". No attested scheme makes such a gathering in this format, so its formes are not known.</p>\n";
  auto const formes = impose(taken->fold);
  std::string html = "<div class=\"scroll\"><table class=\"leaves\"><caption>";
  html.append(xml_escaped(title_of(taken->scheme))).append("</caption><thead><tr><th scope=\"col\">leaf</th>");
  html.append("<th scope=\"col\">sheet</th><th scope=\"col\">recto in</th><th scope=\"col\">verso in</th>");
  html.append("<th scope=\"col\">what became of it</th></tr></thead><tbody>\n");
  int number = 0;
  for (int i = 0; i < static_cast<int>(drawn.leaves.size()); ++i) {
    auto const& leaf = drawn.leaves[static_cast<std::size_t>(i)];
    auto const said = words_for(drawn, i);
    if (leaf.state == LeafFate::inserted)
      html.append("<tr data-leaf=\"book:")
          .append(xml_escaped(leaf.label))
          .append("\"><th scope=\"row\">")
          .append(xml_escaped(leaf.label))
          .append("</th><td colspan=\"3\">printed apart</td><td>")
          .append(xml_escaped(said))
          .append("</td></tr>\n");
    else
      html.append(leaf_row(*taken, formes, leaf.label, ++number, said));
  }
  return html.append("</tbody></table></div>\n");
}

/// Returns the section of a formula. Precondition: the formula has a format. Error: too_many_leaves_drawn.
inline Expected<std::string> formula_section(Formula const& formula, std::string_view written, Limits const& limits) {
  std::string html = "<p>";
  html.append(xml_escaped(written)).append("</p>\n");
  IdealCopy const book{formula};
  SheetsAndFormes sheets;
  std::int64_t leaves_drawn = 0;
  for (auto const& gathering : book.gatherings()) {
    leaves_drawn += leaves_to_draw(book, gathering.at);
    if (leaves_drawn > limits.leaves_drawn)
      return error_in_field(Problem::too_many_leaves_drawn, "leaves_drawn", limits.leaves_drawn);
    auto const drawn = GatheringOfFormula{formula, book, gathering.at}.take();
    auto const leaves = book.leaves_folded(gathering.at);
    auto const taken = sheets.take(*formula.format(), leaves);
    html.append("<h3>").append(xml_escaped(drawn.title)).append("</h3>\n<div class=\"side-by-side\">");
    auto picture = svg_element(gathering_svg(drawn));
    // The leaves of the book are marked differently from those of the sheet above.
    for (auto at = picture.find("data-leaf=\""); at != picture.npos; at = picture.find("data-leaf=\"", at + 16))
      picture.insert(at + 11, "book:");
    html.append("<figure>")
        .append(picture)
        .append("</figure>\n")
        .append(gathering_table(drawn, taken, *formula.format(), leaves))
        .append("</div>\n");
  }
  return html;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
