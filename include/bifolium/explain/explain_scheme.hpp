// SPDX-License-Identifier: MIT
/// Explains the facts of a sheet in plain English: its steps, why a page is at its position in the forme, and what a
/// sheet gives. Every sentence follows from carrying out the scheme (fold/walk.hpp), so a scheme of your own is
/// explained as well as an octavo. Old manuals give the folder a check - page 3 falls on page 2; the text gives it too,
/// from the pages that meet in a fold.
#pragma once

#include <bifolium/core/checked.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/fold/walk.hpp>
#include <bifolium/imposition/imposition.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string row_name(int row, int rows) {
  if (rows == 1) return "only row";
  return row == 0 ? "far row" : row == rows - 1 ? "near row" : ordinal(row + 1) + " row from the far edge";
}
constexpr char const* part_name(Step const& step, bool far_or_left) {
  return step.along == Axis::far_near ? (far_or_left ? "left" : "right") : (far_or_left ? "far" : "near");
}

/// Describes the line of the piece along which a cut runs.
inline std::string cut_words(Scheme const& scheme, Fold<> const& fold, WalkedStep const& walked) {
  auto const& step = walked.step;
  bool const columns = step.along == Axis::far_near;
  std::string text = "Cut ";
  text.append(piece_words(scheme, fold, step.piece)).append(columns ? " between columns " : " between rows ");
  text.append(std::to_string(step.line)).append(" and ").append(std::to_string(step.line + 1));
  text.append(columns ? ", counted from the left" : ", counted from the far edge");
  text.append(": the ").append(part_name(step, true)).append(" part is ");
  text.append(piece_words(scheme, fold, step.far_or_left_piece)).append(", the ").append(part_name(step, false));
  return text.append(" part is ").append(piece_words(scheme, fold, step.near_or_right_piece)).append(".");
}
inline std::string fold_words(Scheme const& scheme, Fold<> const& fold, WalkedStep const& walked) {
  auto const& step = walked.step;
  auto const first = walked.far_or_left_extent(), second = walked.near_or_right_extent();
  bool const third = step.far_or_left_moves ? second == 2 * first : first == 2 * second;
  std::string text = "Fold the ";
  text.append(part_name(step, step.far_or_left_moves)).append(walked.halves() ? " half" : third ? " third" : " part");
  text.append(" of ").append(piece_words(scheme, fold, step.piece));
  text.append(step.under ? " underneath the " : " over on the ");
  text.append(third ? "middle third" : part_name(step, !step.far_or_left_moves));
  // Manuals give the folder two numbers to look at: the lowest pages that meet. The other pairs are counted.
  constexpr int told = 2;
  auto const meetings = walked.meetings();
  for (int i = 0, last = 0; i < told; ++i) {
    Meeting const* next = nullptr;
    for (auto const& met : meetings)
      if (auto const kept = page_on(fold, met.kept); kept > last && (!next || kept < page_on(fold, next->kept)))
        next = &met;
    if (!next) break;
    last = page_on(fold, next->kept);
    text.append(i == 0 ? ": page " : ", ").append(std::to_string(page_on(fold, next->moved)));
    text.append(" meets ").append(std::to_string(last));
  }
  auto const pairs = static_cast<int>(meetings.size());
  if (pairs > told) text.append(", and ").append(number_of(pairs - told, "more pair meets", "more pairs meet"));
  return text += ".";
}
inline std::string step_words(Scheme const& scheme, Fold<> const& fold, WalkedStep const& walked) {
  return walked.step.kind == Step::Kind::cut ? cut_words(scheme, fold, walked) : fold_words(scheme, fold, walked);
}

inline std::string gathering_words(Scheme const& scheme, Fold<> const& fold, int g) {
  auto const& line = scheme.gathering(g);
  auto text = capitalised(gathering_name(scheme, fold, g));
  if (text.empty()) text.append("Gathering ").append(signature_of(scheme, g));
  text.append(", ").append(number_of(fold.gathering(g).leaves(), "leaf", "leaves"));
  auto const first = fold.first_page(g);
  text.append(", pages ").append(std::to_string(first));
  text.append(" to ").append(std::to_string(first + fold.gathering(g).pages() - 1));
  for (int k = 0; k < line.count && line.count > 1; ++k) {
    bool const after = k > 0 && scheme.placed(line.first + k - 1).opens_pair;
    text.append(k == 0 ? ": " : after ? " and after it " : ", inside it ");
    text.append(piece_words(scheme, fold, scheme.placed(line.first + k).piece));
  }
  return text += ".";
}

/// Writes a sentence that names the steps that turn the leaf of a cell end for end.
inline std::string turning_words(std::vector<WalkedStep> const& steps, Cell cell) {
  std::string text;
  for (auto const& walked : steps) {
    auto const turned = [&](Layers const& paper) {
      return paper.find(cell.sheet, cell.row, cell.column)->layer.end_for_end;
    };
    if (turned(walked.before) == turned(walked.after)) continue;
    auto const& step = walked.step;
    text.append(text.empty() ? " Step " : ", step ").append(std::to_string(walked.number + 1));
    text.append(text.find(',') == text.npos ? " turns its leaf end for end: the " : " turns it once more: the ");
    text.append(part_name(step, step.far_or_left_moves))
        .append(" part is folded ")
        .append(step.under ? "under" : "over");
  }
  return text.empty() ? " No fold turns its leaf end for end." : text.append(".");
}

} // namespace detail

/// Describes the steps of a scheme, one a line and numbered, and then which packets are set inside which. Directions
/// are those of the sheet as it lies with its outer side down; of the pages that meet in a fold the two lowest pairs are
/// named and the others counted. Errors: those of `fold`.
inline Expected<std::string> explain_steps(Scheme const& scheme) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const steps = walk(scheme);
  if (!steps) return steps.error();
  std::string text;
  for (auto const& walked : *steps) {
    text.append(std::to_string(walked.number + 1)).append(". ");
    text.append(detail::step_words(scheme, *folded, walked)).append("\n");
  }
  for (int g = 0; g < folded->gatherings(); ++g) text.append(detail::gathering_words(scheme, *folded, g)).append("\n");
  return text;
}

/// Explains why a page of the scheme is at its position in the forme, in a few sentences. Errors: those of `fold`;
/// no_such_page.
inline Expected<std::string> explain_page(Scheme const& scheme, int page) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const found = formes.find_place(page);
  if (!found) return error_in_field(Problem::no_such_page, "page", formes.last_page());
  auto const& place = *found;
  auto const columns = formes.columns(place.sheet);
  std::string text = "Page ";
  text.append(std::to_string(page)).append(" is imposed ");
  text.append(place.head == Head::near_edge ? "upside down" : "upright").append(" in the ");
  text.append(place.side == Side::outer ? "outer forme" : place.side == Side::inner ? "inner forme" : "one forme");
  if (formes.sheets() > 1) text.append(" of sheet ").append(std::to_string(place.sheet + 1));
  text.append(", in the ").append(detail::row_name(place.row, formes.rows(place.sheet)));
  text.append(", ").append(detail::ordinal(place.column + 1)).append(" from the left.");

  // On the flat sheet the columns of the inner forme count from the other side.
  auto const column = place.side == Side::inner ? columns - 1 - place.column : int{place.column};
  auto const at = folded->leaf_at(place.sheet, place.row, column);
  auto const cell = folded->cell(at);
  text.append(detail::turning_words(*walk(scheme), cell));
  auto const set = detail::set_in(scheme, cell.piece);
  if (set && scheme.placed(scheme.gathering(set->gathering).first + set->order).heads_near)
    text.append(" The folded piece lies with its heads near, and is turned round to be read.");

  text.append(" On its back is page ")
      .append(std::to_string(page % 2 == folded->first_page(at.gathering) % 2 ? page + 1 : page - 1));
  if (auto const mate = folded->conjugate(at)) {
    auto const first = folded->first_page(at.gathering);
    auto const sum = 2 * first - 1 + folded->gathering(at.gathering).pages();
    text.append("; beside it across the gutter, page ").append(std::to_string(sum - page));
    text.append(", since the two add up to ").append(std::to_string(sum));
  } else {
    text.append("; its leaf is joined to no other at the gutter");
  }
  return text += ".";
}

/// Describes the paper and formes for printing `copies` copies: the rule with the numbers. Overs are not included.
/// Errors: those of `fold`; not_positive, result_too_large.
inline Expected<std::string> explain_count(Scheme const& scheme, std::int64_t copies) {
  if (copies < 1) return error_in_field(Problem::not_positive, "copies", copies);
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  std::string text;
  auto const leaves = folded->leaves(), sheets = folded->sheets(), at_once = folded->copies();
  text.append(number_of(sheets, "sheet gives ", "sheets give ")).append(number_of(leaves, "leaf", "leaves"));
  text.append(", ").append(std::to_string(2 * leaves)).append(" pages");
  if (at_once > 1)
    text.append("; they are ")
        .append(std::to_string(at_once))
        .append(" copies of the same ")
        .append(number_of(formes.pages(), "page", "pages"));
  auto const at_press = checked_multiply(copies / at_once + (copies % at_once != 0 ? 1 : 0), sheets);
  auto const impressions = at_press ? checked_multiply(*at_press, 2) : std::nullopt;
  if (!impressions) return error_in_field(Problem::result_too_large, "copies");
  auto const needed = *at_press;
  text.append(". ").append(std::to_string(copies)).append(copies == 1 ? " copy takes " : " copies take ");
  text.append(std::to_string(needed)).append(needed == 1 ? " sheet" : " sheets").append(", and ");
  text.append(std::to_string(*impressions)).append(" impressions: every sheet goes through the press twice");
  return text += formes.one_forme(0) ? ", both times on the same forme." : ", once on each forme.";
}

} // namespace v0
} // namespace bifolium
