// SPDX-License-Identifier: MIT
/// The steps of a scheme as data for the class page, in JSON (RFC 8259): the piles of paper at the start and after each
/// step, the words of each step, and a sentence for each page.
#pragma once

#include <bifolium/drawing/detail/pile.hpp>
#include <bifolium/explain/explain_scheme.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Writes a text in quotation marks. `<` is escaped too, so that no HTML element can begin or end inside it.
inline std::string json_text(std::string_view text) {
  std::string out = "\"";
  for (char c : text) {
    auto const byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      out.append("\\").append(1, c);
    else if (byte < 0x20 || c == '<')
      out.append("\\u00").append(1, "0123456789abcdef"[byte / 16]).append(1, "0123456789abcdef"[byte % 16]);
    else
      out += c;
  }
  return out += '"';
}

class ClassData {
  Scheme const& scheme_;
  Fold<> const& fold_;
  std::vector<WalkedStep> const& steps_;
  std::string out_{};

  void put(std::string_view text) { out_ += text; }
  void put(int number) { out_ += std::to_string(number); }

  void pile(Layers const& paper, int piece) {
    put("["), put(piece), put(",[");
    bool first = true;
    for (auto const& layer : paper.pile(piece)) {
      auto const& lay = scheme_.sheet(layer.sheet);
      auto const at = fold_.leaf_at(layer.sheet, layer.home_row, layer.home_column);
      auto const up = page_up(fold_, layer);
      put(first ? "[" : ",["), first = false;
      put(layer.sheet * Scheme::most_cells + layer.home_row * lay.columns + layer.home_column), put(",");
      put(layer.row), put(","), put(layer.column), put(","), put(up.page),
          put(up.head == Head::near_edge ? ",1," : ",0,");
      put(page_on(fold_, lower_side(layer))), put(",");
      put(json_text(signature_of(scheme_, at.gathering) + std::to_string(at.leaf.number()))), put("]");
    }
    put("]]");
  }
  void step(WalkedStep const& walked) {
    auto const& one = walked.step;
    bool const cut = one.kind == Step::Kind::cut;
    put("{\"piece\":"), put(one.piece), put(",\"line\":"), put(one.line);
    put(one.along == Axis::far_near ? ",\"upright\":true" : ",\"upright\":false");
    put(one.far_or_left_moves ? ",\"low\":true" : ",\"low\":false"),
        put(one.under ? ",\"under\":true" : ",\"under\":false");
    put(cut ? ",\"cut\":true" : ",\"cut\":false");
    put(",\"words\":"), put(json_text(step_words(scheme_, fold_, walked))), put(",\"after\":[");
    pile(walked.after, cut ? one.far_or_left_piece : one.piece);
    if (cut) put(","), pile(walked.after, one.near_or_right_piece);
    put("]}");
  }
  void sheets() {
    put(",\"sheets\":[");
    double x = 0;
    for (int s = 0; s < scheme_.sheets(); ++s) {
      put(s > 0 ? ",[" : "["), put(s), put(",["), put(svg_number(x)), put(",0]]");
      x += scheme_.sheet(s).columns + 0.5;
    }
    put("],\"start\":[");
    Layers const flat{scheme_};
    for (int s = 0; s < scheme_.sheets(); ++s) put(s > 0 ? "," : ""), pile(flat, s);
    put("]");
  }
  void pages() {
    put(",\"pages\":{");
    auto const formes = impose(fold_);
    bool first = true;
    for (int page = 1; page <= Scheme::most_cells * 2; ++page) {
      if (!formes.find_place(page)) continue;
      put(first ? "\"" : ",\""), first = false;
      put(page), put("\":"), put(json_text(*explain_page(scheme_, page)));
    }
    put("}");
  }

public:
  ClassData(Scheme const& scheme, Fold<> const& fold, std::vector<WalkedStep> const& steps)
      : scheme_{scheme}, fold_{fold}, steps_{steps} {}

  [[nodiscard]] std::string written() && {
    auto const& lay = scheme_.sheet(0);
    put("{\"ratio\":"), put(svg_number(proportion(lay) * lay.rows / lay.columns));
    sheets();
    put(",\"steps\":[");
    for (auto const& walked : steps_) put(walked.number > 0 ? "," : ""), step(walked);
    put("]"), pages(), put(",\"last\":");
    std::string last;
    for (int g = 0; g < fold_.gatherings(); ++g) last.append(gathering_words(scheme_, fold_, g)).append(" ");
    put(json_text(last)), put("}");
    return static_cast<std::string&&>(out_);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
