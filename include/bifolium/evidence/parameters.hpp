// SPDX-License-Identifier: MIT
/// Every number of the inference that is not geometry, in one place, with where it comes from. "Fitted" means on 3,024
/// trimmed copies in folio, quarto and octavo of the British Museum's Catalogue of Books printed in the XVth century (open
/// data, CC0), by expectation-maximisation over the four sheet classes: the uncut leaf of a class by geometry, a loss in
/// height and width that is log-normal with correlated parts and heavy tails. The program that fits is
/// tests/evidence/fit.cpp. "Proposed" means common practice of bibliographers, no measurement behind it.
#pragma once

#include <bifolium/evidence/observation.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// What trimming does to the logarithms of height and width: means (below 0) and covariance. The spread of sheets of one
/// name is part of it.
struct TrimModel {
  double height{}, width{};
  double height_variance{}, covariance{}, width_variance{};
};

/// One of the four sheets of the first printers.
struct EarlySheet {
  char const* name;
  double short_side, long_side; ///< mm
};

namespace evidence_parameters {

// The Bologna stone of 1389 (recute 315 x 445-450, realle 445 x 610-615, imperialle 500 x 740; mecane 345 x 500-515),
// rounded between its published readings.
inline constexpr std::array<EarlySheet, 4> early_sheets{EarlySheet{"chancery", 315, 450},
                                                        EarlySheet{"median", 350, 510}, EarlySheet{"royal", 440, 615},
                                                        EarlySheet{"imperial", 500, 740}};

// Fitted. Shares of the sheet classes within each format, 1450-1500 (rows 2°, 4°, 8°).
inline constexpr double early_sheet_shares[3][4]{
    {0.788, 0.032, 0.179, 0.001}, {0.911, 0.027, 0.057, 0.005}, {0.652, 0.058, 0.246, 0.044}};
// Fitted. Joint shares of format and sheet class by years: to 1475, 1485, 1494, 1500; for each 2°, 4°, 8° the four sheets.
inline constexpr int early_periods[4]{1475, 1485, 1494, 1500};
inline constexpr double early_shares[4][3][4]{
    {{0.381, 0.066, 0.166, 0.001}, {0.185, 0.037, 0.100, 0.008}, {0.017, 0.001, 0.035, 0.004}},
    {{0.408, 0.012, 0.092, 0.0005}, {0.388, 0.006, 0.053, 0.004}, {0.006, 0.003, 0.022, 0.006}},
    {{0.337, 0.003, 0.035, 0.0005}, {0.530, 0.014, 0.007, 0.004}, {0.054, 0.008, 0.004, 0.003}},
    {{0.237, 0.006, 0.048, 0.0005}, {0.581, 0.023, 0.003, 0.0005}, {0.085, 0.001, 0.016, 0.001}}};
// Fitted. Undated books of the fifteenth century.
inline constexpr double undated_shares[3][4]{
    {0.294, 0.012, 0.067, 0.0005}, {0.508, 0.015, 0.032, 0.003}, {0.045, 0.004, 0.017, 0.003}};

// Fitted. What copies in 2°, 4°, 8° of 1450-1500 have lost, whatever their history (they were not described as trimmed).
inline constexpr TrimModel early_trim[3]{{-0.0991, -0.1078, 0.00278, 0.00198, 0.00225},
                                         {-0.1203, -0.1273, 0.00246, 0.00207, 0.00280},
                                         {-0.1377, -0.1529, 0.00375, 0.00309, 0.00362}};
// Proposed. Of copies not described, this share has been cropped or inlaid.
inline constexpr double cropped_unsaid = 0.01;
// Fitted. Density below which no size falls: rows that fit nothing, by a slip of the catalogue or of a ruler, say nothing.
inline constexpr double least_size = 0.02;
// Vellum: skins have no sheet sizes, so the spread is this many times as wide (proposed).
inline constexpr double vellum_spread = 30;
// Fitted. Degrees of freedom of the tails.
inline constexpr double tails = 6;

// Proposed, after the losses of copies measured against uncut ones (later_leaf: one binding 5-10 % of height, a
// rebinding to 16 %, cropping to 30 %). By `LeafState`.
inline constexpr TrimModel trim_by_state[6]{
    {-0.085, -0.085, 0.0042, 0.0026, 0.0042}, // unknown
    {-0.005, -0.005, 0.0010, 0.0003, 0.0010}, // uncut; sheets of one name differ by 2-3 %
    {-0.070, -0.070, 0.0022, 0.0011, 0.0022}, // trimmed
    {-0.110, -0.110, 0.0042, 0.0026, 0.0042}, // rebound
    {-0.220, -0.220, 0.0120, 0.0080, 0.0120}, // cropped
    {-0.250, -0.250, 0.0160, 0.0100, 0.0160}, // inlaid: the leaf itself is smaller than its page
};

// Fitted on the 361 rows of the same catalogue that give both: logarithm of type page over uncut leaf (2° -.42, 4° -.45, 8°
// -.44; spread .05 to .09).
inline constexpr double type_of_uncut = -0.44, type_of_uncut_variance = 0.0064, least_type = 2e-4;

// Proposed. How often chain lines run as the format says: before 1680, in Britain and the Low Countries 1680-1760 (turned
// chains, Tanselle, Studies in Bibliography 53), 1794-1830, and on machine-made paper after that, where they follow the web.
// In the fifteenth century: fourteen of 3,038 rows of the same catalogue are of both folio and quarto, the books printed in
// part on cut sheets, whose chain lines are turned.
inline constexpr double chains_incunable = 0.995, chains_early = 0.985, chains_turned = 0.94, chains_1794 = 0.90,
                        chains_machine = 0.55;
// Proposed. How often a mark that is seen is where the format says; Britain 1794-1830 put marks elsewhere in the mould
// (McMullin, Studies in Bibliography 56). And how often the paper has a mark at all.
inline constexpr double mark_in_place = 0.95, mark_in_place_1794 = 0.5, paper_is_marked = 0.9;

// The least that evidence of one kind may count for, so that nothing is a veto.
inline constexpr double least_gathering = 0.01;

} // namespace evidence_parameters

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

} // namespace v0
} // namespace bifolium
