// SPDX-License-Identifier: MIT
/// What evidence is worth: every number of the inference that is neither geometry nor counted by the fitting program (see
/// paper_model.hpp), in one place, with where it comes from. "Proposed" means common practice of bibliographers, without a
/// measurement. The table is a value: who has better figures, or other opinions, hands in another.
#pragma once

#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/seen.hpp>

namespace bifolium {
inline namespace v0 {

/// How a state of the leaf changes what binders are thought to have taken.
struct LossOfState {
  double larger{}; ///< the leaf is larger by so much, as a logarithm; below 0: smaller
  double tail{1};  ///< further loss falls off so many times as fast as usual
};

/// What evidence gives by chance, on a leaf that is none of the kinds known. Proposed, all of it: no leaf of no sheet was
/// ever measured.
struct ChanceOfEvidence {
  double both_sides{0.15};  ///< height and width: density in logarithms, one in 6.65
  double one_side{0.286};   ///< height or width alone: one in 3.5
  double chain_lines{0.5};  ///< either direction
  double no_mark{0.6};      ///< no mark in the leaf; a mark is in any of its six places alike
  double gathering{0.08};   ///< so many leaves to the gathering
  double type_page{0.3};    ///< a type page of that height
  double edge{0.3};         ///< one edge that is a bolt or a deckle
  double tranchefile{0.15}; ///< one edge beside a tranchefile
  double point_hole{0.2};   ///< each of its five places alike

  /// A mark seen in one place of the leaf, or looked for in vain.
  [[nodiscard]] constexpr double mark(bool seen) const noexcept { return seen ? (1 - no_mark) / 6 : no_mark; }
};

/// What the evidence is worth.
struct EvidenceParameters {
  /// Proposed, by `LeafState`, after copies measured against uncut ones: one binding costs 5-10 % of height, a
  /// rebinding to 16 %, cropping to 30 %; an inlaid leaf is smaller than its page.
  LossOfState loss_of_state[6]{{0, 1}, {0.05, 6}, {0.01, 1.5}, {-0.03, 1}, {-0.06, 0.3}, {-0.10, 0.3}};
  /// How many copies have been cropped or inlaid though nobody says so: chosen on books held out.
  double cropped_unsaid{0.015};
  /// Each halving of the leaf costs so much more of it, as a logarithm: what is cut is a larger part of a small leaf.
  /// Chosen on books held out.
  double loss_of_halving{0.02};
  /// Vellum: skins have no sheet sizes, so their variance is this many times as large (proposed).
  double vellum_variance{300};
  /// How much higher and broader a binding is than its leaves. 13 copies of which both are given differ by 3 to 7 mm, mean
  /// 4.9; of 0, 3, 6 and 10 mm, 6 fits catalogue heights best, by little.
  millimetres boards{6};

  /// Mean logarithm of type page over uncut leaf: 361 books of the catalogue of incunables that give both.
  double type_of_uncut{-0.41};
  /// Its variance beyond that of the sheets. The same books have .0043 with that of their sheets; widened a little, as later
  /// books were set in more ways (proposed).
  double type_variance{0.0030};

  /// How often chain lines of one leaf do not run as its paper has them. Proposed.
  double chain_slip{0.002};
  /// How often a mark that is seen is where the format says. Proposed.
  double mark_in_place{0.95};
  /// How often after the act of 1794, which moved marks in British moulds (McMullin, Studies in Bibliography 56).
  double mark_in_place_1794{0.5};
  /// How often the paper has a mark at all. Proposed.
  double paper_is_marked{0.9};
  /// How often a marked sheet has a second mark, early and late (common practice, no source).
  double second_mark_early{0.05}, second_mark_late{0.4};
  /// How often the pattern of marks and chain lines over a gathering is the fold's; the rest are cancels and mixed
  /// stocks. Proposed.
  double pattern_right{0.98};
  /// How often one leaf among several of a gathering shows what its sheet does not. Proposed.
  double leaf_slip{0.005};
  /// How often an edge or a point-hole is what it was taken for. Proposed.
  double edge_right{0.97};
  /// How often a tranchefile at an edge can be seen, on single and on double paper. Proposed.
  double tranchefile_visible[2]{0.5, 0.9};
  /// How often point-holes can be seen where the leaf had them; it moves only what to look at next. Proposed.
  double holes_visible{0.3};

  /// How often a book is gathered as no scheme of its format is, in an even number and otherwise: made-up and uneven books.
  double odd_gathering{0.003}, odder_gathering{0.0006};
  /// How often a sheet was cut in two before it was printed. Fourteen of 3,038 incunables are printed on such paper in part;
  /// those that are wholly so cannot be told by size (proposed).
  double cut_halves{0.01};
  /// How often a book mixes whole and cut sheets: the same fourteen of 3,038.
  double mixed_formats{14.0 / 3038};

  ChanceOfEvidence chance{}; ///< what evidence gives by chance
};
/// The parameters as proposed and chosen.
inline constexpr EvidenceParameters usual_parameters{};

/// Degrees of freedom of the ratio of type page to leaf, whose tails are heavy: against the bell curve, t with seven
/// degrees makes 361 books likelier 46 times over.
inline constexpr int type_tails = 7;

/// What the years and the place of a book say of its paper and make-up: parts, 0 to 1. All change smoothly, since no mould
/// was broken on a New Year's Eve.
struct PaperAge {
  double twofold{};      ///< paper of double moulds, or double sheets cut in two: its chain lines are turned
  double after_1794{};   ///< paper under the British act of 1794
  double second_mark{};  ///< paper of the time when second marks are common
  double late_make_up{}; ///< books gathered as later books are

  /// In one year. Double paper: met at all times, thickest in Britain and the Low Countries about 1722 (Povey & Foster and
  /// Tanselle, Studies in Bibliography 53; the curve is proposed). On paper of machines chain lines follow the web.
  [[nodiscard]] static PaperAge of(int year, Region place);
  /// The mean over a range of years, or over all years of the hand press.
  [[nodiscard]] static PaperAge of(std::optional<YearRange> years, Region place);
};

} // namespace v0
} // namespace bifolium

#include <bifolium/evidence/detail/paper_age.hpp>
