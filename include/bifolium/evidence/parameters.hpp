// SPDX-License-Identifier: MIT
/// Every number of the inference that is not geometry, in one place, with where it comes from. "Fitted" means on 3,024
/// trimmed copies in folio, quarto and octavo of the British Museum's Catalogue of Books printed in the XVth century (open
/// data, CC0), by expectation-maximisation over the early sheets: the uncut leaf of a sheet by geometry, a loss in height
/// and width whose logarithms are correlated and heavy-tailed. The program that fits is
/// tests/evidence/fit.cpp. "Proposed" means common practice of bibliographers, no measurement behind it.
///
/// The table is a value: who has better copies to fit on, or other opinions, hands in another.
#pragma once

#include <array>
#include <cstddef>

namespace bifolium {
inline namespace v0 {

/// What trimming does to the logarithms of height and width: means (below 0) and covariance. The spread of sheets of one
/// name is part of it.
struct TrimModel {
  double height{}, width{};                                 ///< means: how much of the leaf is left, as a logarithm
  double height_variance{}, covariance{}, width_variance{}; ///< how far copies differ
};

/// One of the four sheets of the first printers.
struct EarlySheet {
  char const* name;             ///< as the trade calls it
  double short_side, long_side; ///< mm
};
/// The Bologna stone of 1389 (recute 315 x 445-450, realle 445 x 610-615, imperialle 500 x 740; mecane 345 x 500-515),
/// rounded between its published readings.
///
/// The fifth is chancery again, for what is not as usual: copies cut down hard or hardly at all, and odd paper.
inline constexpr std::array<EarlySheet, 5> early_sheets{
    EarlySheet{"chancery", 315, 450}, EarlySheet{"median", 350, 510}, EarlySheet{"royal", 440, 615},
    EarlySheet{"imperial", 500, 740}, EarlySheet{"chancery", 315, 450}};
/// Joint shares: for 2°, 4° and 8° the early sheets.
struct EarlyShares {
  double of[3][5]{}; ///< by format (2°, 4°, 8°), then by row of `early_sheets`; all fifteen add up to 1
};
/// The years with shares of their own end in these; the first begin with printing.
inline constexpr std::array<int, 5> early_periods{1475, 1481, 1487, 1494, 1500};

/// Sheets are weighed in four classes of their long side, which end at these, in mm: midway between the sheets of the
/// first printers. The last class is of all that is longer.
inline constexpr std::array<double, 3> sheet_classes{480, 560, 680};

/// What signs are worth on a leaf that is none of the kinds known, or of which nothing is told: as they come. Proposed, all
/// of it: no leaf of no sheet was ever measured.
struct ChanceOfSigns {
  double size{0.38};       ///< height and width: one in 2.9 of logarithm of height times 0.9 of their ratio
  double one_side{0.35};   ///< height or width alone
  double chain_lines{0.5}; ///< either way alike
  double no_mark{0.6};     ///< no mark in the leaf; a mark stands in any of its six places alike
  double gathering{0.1};   ///< so many leaves to the gathering
  double type_page{0.3};   ///< a type page of that height
  double edge{0.3};        ///< one edge as the maker or the press left it
  double point_hole{0.2};  ///< each of its five places alike

  /// A mark seen in one place of the leaf, or looked for in vain.
  [[nodiscard]] constexpr double mark(bool seen) const noexcept { return seen ? (1 - no_mark) / 6 : no_mark; }
};

/// What the evidence is worth.
struct EvidenceParameters {
  /// Fitted. Joint shares of format and sheet, by `early_periods`.
  EarlyShares early_shares[5]{};
  /// Fitted. The same for undated books of the fifteenth century.
  EarlyShares undated_shares{};
  /// Fitted. What copies in 2°, 4°, 8° have lost, whatever their history (they were not described as trimmed, and all
  /// are): as usual on any of the four sheets, and what is not as usual.
  TrimModel early_trim[3][2]{};
  /// Fitted. Density below which no size falls: rows that fit nothing, by a slip of the catalogue or of a ruler, say
  /// nothing.
  double least_size{0.02};
  /// The same for later books: proposed, lower, as rare small formats must be able to speak.
  double least_size_late{0.001};
  /// Proposed. Of later copies not described, this share has been cropped or inlaid.
  double cropped_unsaid{0.01};
  /// How common sheets were by `sheet_classes`, 1601-1800 and after 1800: proposed; paper is paid by weight, and large
  /// paper is the exception until machines make it. To 1600: as in the fifteenth century, all formats together (assumed).
  double late_sheets[2][4]{{1, 1, 0.25, 0.1}, {1, 1, 0.6, 0.3}};
  /// Proposed. What a sheet counts for whose size is remembered only, against one that a source states.
  double from_memory{0.7};
  /// Vellum: skins have no sheet sizes, so the spread is this many times as wide (proposed).
  double vellum_spread{300};

  /// Proposed, after the losses of copies measured against uncut ones (one binding 5-10 % of height, a rebinding to 16 %,
  /// cropping to 30 %). By `LeafState`.
  TrimModel trim_by_state[6]{
      {-0.085, -0.085, 0.0042, 0.0026, 0.0042}, // unknown
      {-0.005, -0.005, 0.0010, 0.0003, 0.0010}, // uncut; sheets of one name differ by 2-3 %
      {-0.070, -0.070, 0.0022, 0.0011, 0.0022}, // trimmed
      {-0.110, -0.110, 0.0042, 0.0026, 0.0042}, // rebound
      {-0.220, -0.220, 0.0120, 0.0080, 0.0120}, // cropped
      {-0.280, -0.280, 0.0140, 0.0090, 0.0140}, // inlaid: the leaf itself is smaller than its page
  };

  /// Fitted on the 361 rows of the same catalogue that give both: mean logarithm of type page over uncut leaf (2° -.43,
  /// 4° -.45, 8° -.44).
  double type_of_uncut{-0.44};
  /// Its variance. The rows have .0044; widened, as later books were set in more ways (proposed).
  double type_of_uncut_variance{0.0064};
  /// The least a type page may count for.
  double least_type{2e-4};

  // Proposed. How often chain lines run as the format says:
  /// in the fifteenth century (fourteen of 3,038 rows of the same catalogue are of both folio and quarto, printed in part on
  /// cut sheets, whose chain lines are turned);
  double chains_incunable{0.995};
  /// before 1680;
  double chains_early{0.985};
  /// in Britain and the Low Countries 1680-1760 (turned chains, Tanselle, Studies in Bibliography 53);
  double chains_turned{0.94};
  /// 1794-1830;
  double chains_1794{0.90};
  /// and on machine-made paper after that, where they follow the web.
  double chains_machine{0.52};
  /// Proposed. How often a mark that is seen is where the format says.
  double mark_in_place{0.95};
  /// Britain 1794-1830 put marks elsewhere in the mould (McMullin, Studies in Bibliography 56).
  double mark_in_place_1794{0.5};
  /// Proposed. How often the paper has a mark at all.
  double paper_is_marked{0.9};
  /// How often a marked sheet has a second mark: rare before the seventeenth century (common practice, no source),
  double second_mark_early{0.05};
  /// common from then on (common practice, no source).
  double second_mark_late{0.4};
  /// Proposed. How often the pattern of marks and chain lines over a gathering is the fold's; the rest are cancels and mixed
  /// stocks.
  double pattern_right{0.98};
  /// Proposed. How often one leaf among several of a gathering shows what its sheet does not.
  double leaf_slip{0.005};
  /// Proposed. How often an edge or a point-hole is what it was taken for.
  double edge_right{0.97};
  /// Proposed. How often point-holes can be seen where the leaf had them; it moves only what to look at next.
  double holes_visible{0.3};
  /// Proposed. The least that a gathering may count for, so that nothing is a veto,
  double least_gathering{0.01};
  /// and what one counts for that a scheme of the format makes and `gathering_share` does not know.
  double made_gathering{0.2};
  /// What signs are worth by chance.
  ChanceOfSigns chance{};
};

// clang-format off
/// The parameters as fitted; a test fits them again.
inline constexpr EvidenceParameters fitted_parameters{
    .early_shares{{{{0.3279, 0.0692, 0.1580, 0.0041, 0.0539}, {0.1709, 0.0395, 0.0985, 0.0029, 0.0183}, {0.0167, 0.0008, 0.0349, 0.0038, 0.0003}}},
                  {{{0.3533, 0.0207, 0.1037, 0.0001, 0.0333}, {0.3102, 0.0178, 0.0784, 0.0003, 0.0309}, {0.0044, 0.0048, 0.0312, 0.0107, 0.0001}}},
                  {{{0.3699, 0.0086, 0.0601, 0.0001, 0.0374}, {0.4718, 0.0044, 0.0134, 0.0001, 0.0057}, {0.0168, 0.0006, 0.0087, 0.0003, 0.0022}}},
                  {{{0.2986, 0.0029, 0.0313, 0.0001, 0.0342}, {0.5273, 0.0195, 0.0043, 0.0063, 0.0017}, {0.0563, 0.0107, 0.0029, 0.0036, 0.0002}}},
                  {{{0.2270, 0.0081, 0.0474, 0.0001, 0.0086}, {0.5661, 0.0259, 0.0024, 0.0001, 0.0126}, {0.0848, 0.0005, 0.0160, 0.0004, 0.0001}}}},
    .undated_shares{{{0.2688, 0.0141, 0.0637, 0.0010, 0.0260}, {0.4927, 0.0180, 0.0308, 0.0017, 0.0145}, {0.0441, 0.0046, 0.0164, 0.0028, 0.0010}}},
    .early_trim{{{-0.0981, -0.1067, 0.00225, 0.00143, 0.00161}, {-0.1237, -0.1445, 0.02845, 0.03067, 0.03818}},
                {{-0.1204, -0.1274, 0.00217, 0.00174, 0.00237}, {-0.1476, -0.1722, 0.06441, 0.07111, 0.08766}},
                {{-0.1373, -0.1528, 0.00349, 0.00286, 0.00339}, {-0.1413, -0.1557, 0.02269, 0.01775, 0.02188}}}};
// clang-format on

/// Degrees of freedom of the tails. Whole powers follow from it, so it is no parameter.
inline constexpr double trim_tails = 6;
/// The same for type pages, whose ratios to the leaf are heavy-tailed as well: against the bell curve, t with seven degrees of
/// freedom makes the 361 rows likelier 46 times over; a test weighs them again.
inline constexpr double type_tails = 7;

/// How often a format is gathered in so many leaves. 15th century: of the quires of the same catalogue quarto 75 % eights, 22
/// % sixes, 3 % fours; folio 60 % eights, 36 % sixes; octavo 97 % eights. Later: proposed.
constexpr double gathering_share(int format_leaves, int gathering, bool early) {
  struct Row {
    int format, gathering;
    double early, later;
  };
  constexpr Row rows[]{
      {2, 2, 0.002, 0.22}, {2, 4, 0.01, 0.30},  {2, 6, 0.36, 0.30},  {2, 8, 0.60, 0.14},  {2, 10, 0.02, 0.03},
      {4, 2, 0.002, 0.06}, {4, 4, 0.03, 0.56},  {4, 6, 0.21, 0.04},  {4, 8, 0.75, 0.33},  {8, 2, 0.002, 0.01},
      {8, 4, 0.01, 0.25},  {8, 6, 0.01, 0.01},  {8, 8, 0.97, 0.70},  {8, 16, 0.01, 0.02}, {12, 12, 0.7, 0.58},
      {12, 6, 0.1, 0.22},  {12, 8, 0.1, 0.10},  {12, 4, 0.1, 0.08},  {16, 8, 0.8, 0.72},  {16, 16, 0.2, 0.26},
      {18, 6, 0.3, 0.40},  {18, 12, 0.3, 0.30}, {18, 18, 0.3, 0.20}, {18, 9, 0.05, 0.05}, {24, 12, 0.6, 0.55},
      {24, 8, 0.3, 0.35},  {24, 24, 0.1, 0.08}, {32, 8, 0.7, 0.66},  {32, 16, 0.3, 0.32}};
  for (auto const& row : rows)
    if (row.format == format_leaves && row.gathering == gathering) return early ? row.early : row.later;
  return 0;
}
/// How often a format is gathered in two sizes by turns, such as 8.4.8.4. Twelves were (proposed); folios and quartos
/// quired unevenly are met (sixes and eights by turns in incunables).
constexpr double alternating_share(int format_leaves, int one, int other) {
  int const larger = one > other ? one : other, smaller = one > other ? other : one;
  if (format_leaves == 12 && larger == 8 && smaller == 4) return 0.15;
  if (format_leaves == 24 && ((larger == 16 && smaller == 8) || (larger == 8 && smaller == 4))) return 0.05;
  if (format_leaves == 18 && larger == 12 && smaller == 6) return 0.3;
  if (format_leaves <= 4 && smaller > 0 && larger - smaller == 2) return 0.1;
  return 0;
}

} // namespace v0
} // namespace bifolium
