// SPDX-License-Identifier: MIT
/// The weights of evidence: every number of the inference that comes neither from geometry nor from the fitting program
/// (see paper_model.hpp), with its source. "Proposed" means common practice of bibliographers without a measurement. A
/// caller with better numbers passes another table.
#pragma once

#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/seen.hpp>

namespace bifolium {
inline namespace v0 {

/// The change of the expected loss for a state of the leaf.
struct LossOfState {
  double larger{}; ///< the leaf is larger by this logarithm; smaller if below 0
  double tail{1};  ///< factor of the rate at which further loss falls off
};

/// Probabilities of evidence by chance, on a leaf of none of the known kinds. All are proposed, since no such leaf was
/// ever measured.
struct ChanceOfEvidence {
  double both_sides{0.15};  ///< height and width: density in logarithms, one in 6.65
  double one_side{0.286};   ///< height or width alone: one in 3.5
  double chain_lines{0.5};  ///< one direction
  double no_mark{0.6};      ///< no mark in the leaf; a mark is at each of its six places equally often
  double gathering{0.08};   ///< a gathering of this size
  double type_page{0.3};    ///< a type page of this height
  double edge{0.3};         ///< one edge that is a bolt or a deckle
  double tranchefile{0.15}; ///< one edge beside a tranchefile
  double point_hole{0.2};   ///< each of its five places

  /// Returns the probability of a mark at one place of the leaf, or of no mark.
  [[nodiscard]] constexpr double mark(bool seen) const noexcept { return seen ? (1 - no_mark) / 6 : no_mark; }
};

/// The weights of evidence.
struct EvidenceParameters {
  /// Loss for each `LeafState`. Proposed, after copies measured against uncut ones: one binding costs 5-10 % of height,
  /// a rebinding up to 16 %, cropping up to 30 %; an inlaid leaf is smaller than its page.
  LossOfState loss_of_state[6]{{0, 1}, {0.05, 6}, {0.01, 1.5}, {-0.03, 1}, {-0.06, 0.3}, {-0.10, 0.3}};
  /// Share of copies that were cropped or inlaid although the record does not say so. Chosen on books that were left
  /// out.
  double cropped_unsaid{0.015};
  /// Additional loss, as a logarithm, for each halving of the leaf, since a cut takes a larger part of a small leaf.
  /// Chosen on books that were left out.
  double loss_of_halving{0.02};
  /// Factor of the variance for vellum, since skins have no sheet sizes (proposed).
  double vellum_variance{300};
  /// The difference in height and width between a binding and its leaves. In 13 copies for which both are given it is 3
  /// to 7 mm, 4.9 on average. Of 0, 3, 6 and 10 mm, 6 fits catalogue heights best, by a small margin.
  millimetres boards{6};

  /// Mean logarithm of type page over uncut leaf, from 361 books of the catalogue of incunables that give both.
  double type_of_uncut{-0.41};
  /// Variance of this logarithm beyond that of the sheets. The same books have .0043 including that of their sheets;
  /// slightly widened, since later books were set in more ways (proposed).
  double type_variance{0.0030};

  /// Probability that chain lines of one leaf do not run as its paper has them. Proposed.
  double chain_slip{0.002};
  /// Probability that a visible mark is at the place that the format gives. Proposed.
  double mark_in_place{0.95};
  /// Probability that a visible mark is at the place that the format gives, after the act of 1794 moved marks in
  /// British moulds (McMullin, Studies in Bibliography 56).
  double mark_in_place_1794{0.5};
  /// Probability that the paper has a mark. Proposed.
  double paper_is_marked{0.9};
  /// Probability that a marked sheet has a second mark, early and late (common practice, no source).
  double second_mark_early{0.05}, second_mark_late{0.4};
  /// Probability that the pattern of marks and chain lines over a gathering is that of the fold; the others are cancels
  /// and mixed stocks. Proposed.
  double pattern_right{0.98};
  /// Probability that one leaf among several of a gathering shows what its sheet does not. Proposed.
  double leaf_slip{0.005};
  /// Probability that an edge or a point-hole is what it was taken for. Proposed.
  double edge_right{0.97};
  /// Probability that a tranchefile at an edge is visible, on single and on double paper. Proposed.
  double tranchefile_visible[2]{0.5, 0.9};
  /// Probability that point-holes are visible if the leaf has them; it only affects what to look at next. Proposed.
  double holes_visible{0.3};

  /// Probability of gatherings that no scheme of the format makes, of an even size and of another: made-up and uneven
  /// books.
  double odd_gathering{0.003}, odder_gathering{0.0006};
  /// Probability that a sheet was cut in two before printing. Fourteen of 3,038 incunables are partly on such paper;
  /// books entirely on it cannot be recognised by size (proposed).
  double cut_halves{0.01};
  /// Probability that a book mixes whole and cut sheets: the same fourteen of 3,038.
  double mixed_formats{14.0 / 3038};

  ChanceOfEvidence chance{}; ///< probabilities of evidence by chance
};
/// The usual weights, proposed or chosen as stated above.
inline constexpr EvidenceParameters usual_parameters{};

/// Degrees of freedom of the t distribution for the ratio of type page to leaf, which has heavy tails. Compared with
/// the normal distribution, t with seven degrees makes 361 books 46 times more likely.
inline constexpr int type_tails = 7;

/// What the years and the place of a book say about its paper and gatherings: shares, 0 to 1. All change smoothly,
/// since practice did not change on a single day.
struct PaperAge {
  double twofold{};      ///< paper whose chain lines are turned: of double moulds, double sheets cut in two, machines
  double by_web{};       ///< the part of it that is from machines: chain lines follow the web
  double after_1794{};   ///< paper under the British act of 1794
  double second_mark{};  ///< paper of the time when second marks are common
  double late_make_up{}; ///< books whose gatherings are like those of later books

  /// Returns the shares in one year. Double paper occurs at all times and most often in Britain and the Low Countries
  /// about 1722 (Povey & Foster and Tanselle, Studies in Bibliography 53; the curve is proposed). On machine-made paper
  /// chain lines follow the web.
  [[nodiscard]] static PaperAge of(int year, Region place);
  /// Returns the mean over a range of years, or over all years of the hand press.
  [[nodiscard]] static PaperAge of(std::optional<YearRange> years, Region place);
};

} // namespace v0
} // namespace bifolium

#include <bifolium/evidence/detail/paper_age.hpp>
