// SPDX-License-Identifier: MIT
/// The facts of a sheet in plain English: its steps, why a page stands where it stands, what a sheet gives. Nothing is
/// recited: every word is chosen by what the layers do when the scheme is carried out, so a scheme of one's own is
/// explained as well as an octavo. The check that old manuals give the folder - page 3 falls on page 2 - is found the
/// same way, by looking which pages meet in the fold.
#pragma once

#include <bifolium/core/list.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/layers.hpp>
#include <bifolium/imposition/imposition.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string ordinal(int n) {
  static constexpr char const* words[]{"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"};
  if (n >= 1 && n <= 8) return words[n - 1];
  bool const teen = n % 100 >= 11 && n % 100 <= 13;
  return std::to_string(n) + (teen ? "th" : n % 10 == 1 ? "st" : n % 10 == 2 ? "nd" : n % 10 == 3 ? "rd" : "th");
}
inline std::string row_name(int row, int rows) {
  if (rows == 1) return "only row";
  return row == 0 ? "far row" : row == rows - 1 ? "near row" : ordinal(row + 1) + " row from the far edge";
}
inline std::string counted(int n, char const* one, char const* many) {
  return std::to_string(n).append(" ").append(n == 1 ? one : many);
}
constexpr char const* part_name(Step const& step, bool far_or_left) {
  return step.along == Axis::far_near ? (far_or_left ? "left" : "right") : (far_or_left ? "far" : "near");
}

/// Which two pages are pressed together in a fold.
struct Meeting {
  int moved, kept;
};

/// What one step does to its piece, seen just before it is taken.
struct StepSeen {
  bool halves{};    ///< the two parts are equally wide
  bool all_of_it{}; ///< what was moved covers all of the rest
  List<Meeting> meetings{};
};

/// Carries a scheme out step by step beside the fold that came of it.
class StepWatch {
  Scheme const& scheme_;
  Fold<> const& fold_;
  Layers layers_;

  [[nodiscard]] int page_up(Layer const& layer) const { return page(layer, layer.outer_up); }
  [[nodiscard]] int page_down(Layer const& layer) const { return page(layer, !layer.outer_up); }
  [[nodiscard]] int page(Layer const& layer, bool outer) const {
    auto const at = fold_.leaf_at(layer.sheet, layer.home_row, layer.home_column);
    auto const recto = fold_.first_page(at.gathering) + 2 * (at.leaf.number() - 1);
    return fold_.cell(at).recto_down == outer ? recto : recto + 1;
  }

public:
  StepWatch(Scheme const& scheme, Fold<> const& folded) : scheme_{scheme}, fold_{folded}, layers_{scheme} {}

  [[nodiscard]] Layers const& layers() const { return layers_; }

  /// Takes step `number` and says what it did.
  StepSeen take(int number) {
    auto const& step = scheme_.step(number);
    StepSeen seen;
    auto const place = [&](Layer const& layer) { return step.along == Axis::far_near ? layer.column : layer.row; };
    int least = Scheme::most_cells, most = -1;
    for (int i = 0; i < layers_.count(step.piece); ++i) {
      auto const at = place(layers_.layer(step.piece, i));
      least = at < least ? at : least;
      most = at > most ? at : most;
    }
    auto const before = step.line - least, behind = most + 1 - step.line;
    seen.halves = before == behind;
    auto const moved_count = step.far_or_left_moves ? before : behind;
    seen.all_of_it = moved_count == (step.far_or_left_moves ? behind : before);
    std::array<Layer, Scheme::most_cells> old{};
    auto const count = layers_.count(step.piece);
    for (int i = 0; i < count; ++i) old[static_cast<std::size_t>(i)] = layers_.layer(step.piece, i);
    layers_.take(step);
    if (step.kind == Step::Kind::cut) return seen;
    auto const was_moved = [&](Layer const& layer) {
      for (int i = 0; i < count; ++i) {
        auto const& was = old[static_cast<std::size_t>(i)];
        if (was.sheet == layer.sheet && was.home_row == layer.home_row && was.home_column == layer.home_column)
          return (place(was) < step.line) == step.far_or_left_moves;
      }
      return false;
    };
    // Neighbours in the pile at the same place, one moved and one not, met in this fold.
    for (int i = 0; i < count; ++i)
      for (int k = i + 1; k < count; ++k) {
        auto const &lower = layers_.layer(step.piece, i), &upper = layers_.layer(step.piece, k);
        if (lower.row != upper.row || lower.column != upper.column) continue;
        if (was_moved(lower) != was_moved(upper))
          seen.meetings.push_back(was_moved(upper) ? Meeting{page_down(upper), page_up(lower)}
                                                   : Meeting{page_up(lower), page_down(upper)});
        break;
      }
    for (std::size_t i = 1; i < seen.meetings.size(); ++i) // by page, as a folder's table lists them
      for (auto k = i; k > 0 && seen.meetings[k].kept < seen.meetings[k - 1].kept; --k) {
        auto const earlier = seen.meetings[k];
        seen.meetings[k] = seen.meetings[k - 1];
        seen.meetings[k - 1] = earlier;
      }
    return seen;
  }
};

inline std::string piece_words(Scheme const& scheme, int piece) {
  if (scheme.pieces() == 1) return "the sheet";
  if (piece < scheme.sheets()) return scheme.sheets() == 1 ? "the sheet" : "sheet " + std::to_string(piece + 1);
  return std::string{"piece "}.append(scheme.piece_name(piece).view());
}

inline std::string step_words(Scheme const& scheme, int number, StepSeen const& seen) {
  auto const& step = scheme.step(number);
  auto const piece = piece_words(scheme, step.piece);
  std::string text;
  if (step.kind == Step::Kind::cut) {
    text.append("Cut ").append(piece);
    text.append(step.along == Axis::far_near ? " between columns " : " between rows ");
    text.append(std::to_string(step.line)).append(" and ").append(std::to_string(step.line + 1));
    text.append(step.along == Axis::far_near ? ", counted from the left" : ", counted from the far edge");
    text.append(": the ").append(part_name(step, true)).append(" part is ");
    text.append(piece_words(scheme, step.far_or_left_piece)).append(", the ").append(part_name(step, false));
    text.append(" part is ").append(piece_words(scheme, step.near_or_right_piece)).append(".");
    return text;
  }
  text.append("Fold the ").append(part_name(step, step.far_or_left_moves)).append(seen.halves ? " half" : " part");
  text.append(" of ").append(piece).append(step.under ? " underneath the " : " over on the ");
  text.append(part_name(step, !step.far_or_left_moves));
  if (!seen.meetings.empty()) {
    text.append(": page ");
    bool first = true;
    for (std::size_t i = 0; i < seen.meetings.size() && i < 2; ++i, first = false)
      text.append(first ? "" : ", ")
          .append(std::to_string(seen.meetings[i].moved))
          .append(" meets ")
          .append(std::to_string(seen.meetings[i].kept));
  }
  return text += ".";
}

inline std::string gathering_words(Scheme const& scheme, Fold<> const& fold, int g) {
  auto const& line = scheme.gathering(g);
  std::string text = "Gathering ";
  text.append(line.name.view()).append(", ").append(counted(fold.gathering(g).leaves(), "leaf", "leaves"));
  auto const first = fold.first_page(g);
  text.append(", pages ")
      .append(std::to_string(first))
      .append(" to ")
      .append(std::to_string(first + fold.gathering(g).pages() - 1));
  for (int k = 0; k < line.count; ++k) {
    auto const& placed = scheme.placed(line.first + k);
    bool const goes_behind = k > 0 && scheme.placed(line.first + k - 1).opens_pair;
    if (line.count == 1 && scheme.pieces() == 1) break;
    text.append(k == 0        ? ": "
                : goes_behind ? " and behind it "
                              : ", inside it ")
        .append(piece_words(scheme, placed.piece));
  }
  return text += ".";
}

} // namespace detail

/// The steps of a scheme, one a line and numbered, then what is set inside what. Directions are those of the sheet as it
/// lies outer side down, pages those that meet in the fold. error: as `fold`.
inline Expected<std::string> explain_steps(Scheme const& scheme) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  detail::StepWatch watch{scheme, *folded};
  std::string text;
  for (int i = 0; i < scheme.steps(); ++i) {
    text.append(std::to_string(i + 1)).append(". ");
    text.append(detail::step_words(scheme, i, watch.take(i))).append("\n");
  }
  for (int g = 0; g < folded->gatherings(); ++g) text.append(detail::gathering_words(scheme, *folded, g)).append("\n");
  return text;
}

/// Why a page of the scheme stands where it stands, in a few sentences. error: as `fold`. pre: the page stands there.
inline Expected<std::string> explain_page(Scheme const& scheme, int page) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const place = formes.place(page);
  auto const columns = formes.columns(place.sheet);
  std::string text = "Page ";
  text.append(std::to_string(page)).append(" stands ");
  text.append(place.head == Head::near ? "upside down" : "upright").append(" in the ");
  text.append(place.side == Side::outer ? "outer forme" : place.side == Side::inner ? "inner forme" : "one forme");
  if (formes.sheets() > 1) text.append(" of sheet ").append(std::to_string(place.sheet + 1));
  text.append(", in the ").append(detail::row_name(place.row, formes.rows(place.sheet)));
  text.append(", ").append(detail::ordinal(place.column + 1)).append(" from the left.");

  // On the flat sheet the inner forme's columns count from the other side.
  auto const column = place.side == Side::inner ? columns - 1 - place.column : int{place.column};
  auto const at = folded->leaf_at(place.sheet, place.row, column);
  auto const cell = folded->cell(at);
  std::string why;
  int turns = 0;
  detail::StepWatch watch{scheme, *folded};
  for (int i = 0; i < scheme.steps(); ++i) {
    auto const end_for_end = [&] {
      for (int p = 0; p < scheme.pieces(); ++p)
        for (int k = 0; k < watch.layers().count(p); ++k)
          if (auto const& layer = watch.layers().layer(p, k);
              layer.sheet == place.sheet && layer.home_row == place.row && layer.home_column == column)
            return layer.end_for_end;
      return false;
    };
    bool const before = end_for_end();
    watch.take(i);
    if (end_for_end() == before) continue;
    auto const& step = scheme.step(i);
    ++turns;
    why.append(turns == 1 ? " Step " : ", step ").append(std::to_string(i + 1));
    why.append(turns == 1 ? " turns its leaf end for end: the " : " turns it once more: the ");
    why.append(detail::part_name(step, step.far_or_left_moves)).append(" part is what folds ");
    why.append(step.under ? "under" : "over");
  }
  if (turns > 0)
    text.append(why).append(".");
  else
    text.append(" No fold turns its leaf end for end.");
  bool heads_near = false;
  for (int g = 0; g < scheme.gatherings(); ++g)
    for (int k = 0; k < scheme.gathering(g).count; ++k)
      if (auto const& placed = scheme.placed(scheme.gathering(g).first + k); placed.piece == cell.piece)
        heads_near = placed.heads_near;
  if (heads_near) text.append(" The folded piece lies with its heads near, and is turned round to be read.");

  text.append(" On its back is page ")
      .append(std::to_string(page % 2 == folded->first_page(at.gathering) % 2 ? page + 1 : page - 1));
  if (auto const mate = folded->conjugate(at)) {
    auto const first = folded->first_page(at.gathering);
    auto const sum = 2 * first - 1 + folded->gathering(at.gathering).pages();
    text.append("; beside it across the gutter, page ").append(std::to_string(sum - page));
    text.append(", for the two add up to ").append(std::to_string(sum));
  } else {
    text.append("; its leaf is joined to no other at the gutter");
  }
  return text += ".";
}

/// What a printing of `copies` copies of the sheets takes, the rule with the figures. Overs are not counted.
/// error: as `fold`. pre: at least 1 copy.
inline Expected<std::string> explain_count(Scheme const& scheme, long copies) {
  if (copies < 1) broken("at least one copy is printed");
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  std::string text;
  auto const leaves = folded->leaves(), sheets = folded->sheets(), at_once = folded->copies();
  text.append(detail::counted(sheets, "sheet gives ", "sheets give "))
      .append(detail::counted(leaves, "leaf", "leaves"));
  text.append(", ").append(std::to_string(2 * leaves)).append(" pages");
  if (at_once > 1)
    text.append("; they are ")
        .append(std::to_string(at_once))
        .append(" copies of the same ")
        .append(detail::counted(formes.pages(), "page", "pages"));
  auto const needed = (copies + at_once - 1) / at_once * sheets;
  text.append(". ").append(std::to_string(copies)).append(copies == 1 ? " copy takes " : " copies take ");
  text.append(std::to_string(needed)).append(needed == 1 ? " sheet" : " sheets").append(", and ");
  text.append(std::to_string(2 * needed)).append(" impressions: every sheet goes through the press twice");
  return text += formes.one_forme(0) ? ", both times on the same forme." : ", once on each forme.";
}

} // namespace v0
} // namespace bifolium
