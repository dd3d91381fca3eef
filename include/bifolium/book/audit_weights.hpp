// SPDX-License-Identifier: MIT
/// The statistics of descriptions and of cataloguers' slips, by which `examine` ranks possible mistakes. They are data:
/// a caller who knows a catalogue better passes other numbers.
///
/// The sizes of gatherings, the pages without numbers and the places where numbers begin were counted by
/// bench/fit_audit_weights.cpp in the rows of tests/data that agree: EEBO-TCP headers 1473-1700 and later catalogues
/// (formula and pagination), and the Catalogue of Books printed in the XVth century now in the British Museum (formula
/// and leaves). All have open licences, which are named in the files. The frequency of each kind of slip is estimated
/// and not counted, because there is no open corpus of slips with their corrections.
#pragma once

#include <bifolium/book/field.hpp>
#include <bifolium/book/slip_kind.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Frequencies of the numbers of leaves in a gathering, by the place of the gathering and by the number that most
/// gatherings of the book have.
struct GatheringCounts {
  /// Counts of gatherings with 1, 2, 3, 4, 5, 6, 7, 8, 10 and 12 leaves, and others.
  using Row = std::array<std::int32_t, 11>;
  /// Rows for books whose gatherings have mostly 2, 4, 6, 8, 10 or 12 leaves, and others.
  using Books = std::array<Row, 7>;
  Books first{};  ///< the first gathering
  Books middle{}; ///< the gatherings in between
  Books last{};   ///< the last gathering
  Books aside{};  ///< gatherings of other series than the main one: preliminaries, appendices
};

/// The assumptions of `examine`.
struct AuditWeights {
  GatheringCounts early{};                     ///< books printed before 1501
  GatheringCounts late{};                      ///< books printed from 1501 on
  std::array<double, slip_count> in_formula{}; ///< probability of each kind of slip among those of a formula
  std::array<double, slip_count> in_pages{};   ///< probability of each kind of slip among those of a pagination
  std::array<double, slip_count> in_leaves{};  ///< probability of each kind of slip among those of a number of leaves
  double field_wrong{};                        ///< probability that a field has a slip
  /// number of runs without page numbers that have 0 to 24 pages, and more
  std::array<std::int32_t, 26> unnumbered{};
  /// frequencies of page 1 at the beginning of the text, of a gathering, or inside a gathering
  std::array<double, 3> numbers_begin{};
  double without_a{};         ///< frequency of formulas whose letters begin with B
  double blank_not_counted{}; ///< probability that a blank leaf is neither counted nor mentioned
  double odd_total{};         ///< frequency of an unnumbered recto as the last page
  /// frequency of pages before page 1 if there are gatherings before the text
  double preliminaries_in_both{};
  double preliminaries_in_pages{}; ///< frequency of pages before page 1 if there are none
  /// In books whose first gathering is smaller than most: how many have a last gathering that makes up the difference
  /// (A² and K² in a book of fours), for one that would have it by chance. The two were often printed on one sheet.
  double ends_make_one{};
  /// probability that the last gathering is left out too if the first one is, and the letters begin with B
  double ends_together{};
  double none_of_these{}; ///< probability of a mistake that no kind of slip explains
};

namespace detail {
struct SlipShare {
  SlipKind kind;
  double share;
};
template <std::size_t N> constexpr std::array<double, slip_count> shares(SlipShare const (&rows)[N]) {
  std::array<double, slip_count> all{};
  for (auto const& row : rows) all[static_cast<std::size_t>(row.kind)] = row.share;
  return all;
}
/// The probabilities are estimates without a source: copying by hand most often confuses similar digits and
/// neighbouring letters.
inline constexpr SlipShare formula_slips[]{
    {SlipKind::exponent, .10},          {SlipKind::omitted_exponent, .07}, {SlipKind::end_letter, .10},
    {SlipKind::start_letter, .02},      {SlipKind::shifted_letters, .06},  {SlipKind::multiple_lost, .04},
    {SlipKind::gathering_missing, .05}, {SlipKind::last_missing, .07},     {SlipKind::first_missing, .10},
    {SlipKind::gathering_twice, .02},   {SlipKind::change_missing, .05},   {SlipKind::change_twice, .03},
    {SlipKind::alphabet, .04}};
inline constexpr SlipShare page_slips[]{{SlipKind::unnumbered_missing, .08},
                                        {SlipKind::unnumbered_value, .05},
                                        {SlipKind::unnumbered_extra, .02},
                                        {SlipKind::roman, .03},
                                        {SlipKind::unit, .03},
                                        {SlipKind::leaf_as_page, .02},
                                        {SlipKind::restarted, .03},
                                        {SlipKind::misnumbered, .03},
                                        {SlipKind::transposed, .05},
                                        {SlipKind::dropped, .04},
                                        {SlipKind::doubled, .02},
                                        {SlipKind::substituted, .08}};
inline constexpr SlipShare leaf_slips[]{{SlipKind::transposed, .05},      {SlipKind::dropped, .03},
                                        {SlipKind::doubled, .02},         {SlipKind::substituted, .08},
                                        {SlipKind::plates_counted, .04},  {SlipKind::blank_not_counted, .05},
                                        {SlipKind::pages_for_leaves, .03}};
} // namespace detail

/// The numbers counted in 901 books, and the estimates explained above. That 8 of 359 descriptions leave out a blank
/// leaf without a word is counted too, in the EEBO-TCP headers.
inline constexpr AuditWeights audit_weights{
    .early =
        {
            .first = {{{{0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 2, 0, 0, 0, 1, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 61, 0, 19, 0, 0, 0}},
                      {{0, 1, 0, 1, 0, 2, 0, 207, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
            .middle = {{{{0, 13, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 20, 0, 0, 0, 5, 0, 0, 0}},
                      {{0, 0, 0, 6, 0, 258, 0, 11, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 20, 0, 1335, 1, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 1, 22, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
            .last = {{{{0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 2, 0, 0, 0, 1, 0, 0, 0}},
                      {{0, 0, 0, 8, 0, 65, 0, 7, 0, 0, 0}},
                      {{0, 0, 0, 18, 0, 52, 0, 134, 5, 2, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
            .aside = {{{{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 95, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
        },
    .late =
        {
            .first = {{{{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{1, 59, 0, 279, 0, 1, 0, 1, 0, 0, 0}},
                      {{0, 1, 0, 1, 0, 5, 0, 0, 0, 0, 0}},
                      {{2, 3, 0, 17, 0, 0, 0, 80, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 3, 0, 2, 0, 3, 0, 1, 0, 3, 0}},
                      {{0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0}},
                      }},
            .middle = {{{{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 8, 0, 2202, 0, 0, 0, 1, 0, 0, 0}},
                      {{0, 0, 0, 1, 0, 64, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 3, 0, 1, 0, 586, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 88, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
            .last = {{{{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{7, 93, 2, 235, 0, 4, 0, 0, 0, 0, 0}},
                      {{0, 1, 0, 0, 0, 6, 0, 0, 0, 0, 0}},
                      {{1, 8, 0, 35, 0, 5, 2, 50, 1, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 1, 0, 1, 0, 1, 0, 4, 0, 5, 0}},
                      {{0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0}},
                      }},
            .aside = {{{{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 8, 0, 31, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 2, 0, 0, 0, 9, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      {{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
                      }},
        },
    .in_formula = detail::shares(detail::formula_slips),
    .in_pages = detail::shares(detail::page_slips),
    .in_leaves = detail::shares(detail::leaf_slips),
    .field_wrong = .05,
    .unnumbered = {{0, 11, 8, 2, 6, 0, 4, 1, 7, 0, 1, 1, 4, 0, 1, 0, 2, 0, 0, 0, 0, 0, 0, 0, 1, 3}},
    .numbers_begin = {.5714, .1714, .2571},
    .without_a = .001663,
    .blank_not_counted = .02,
    .odd_total = .0210,
    .preliminaries_in_both = .9348,
    .preliminaries_in_pages = .4630,
    .ends_make_one = 1.310,
    .ends_together = .5,
    .none_of_these = 1e-5,
};

} // namespace v0
} // namespace bifolium
