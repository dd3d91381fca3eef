// SPDX-License-Identifier: MIT
/// What is added up while kinds of leaf, sheets and periods are asked one after another: a line for each format, and one
/// set of lines for each way to read the chain lines. A book whose leaves differ in them is read three ways: all leaves
/// together, those with vertical lines, those with horizontal ones.
#pragma once

#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/priors.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What speaks for one format, added up over its kinds of leaf, its sheets and the periods.
struct Tally {
  LeafShape const* kind{}; ///< of its kinds the one that explains most, with scheme and sheet
  Attested scheme{SchemeRow::broadside};
  char const* sheet_name{""};
  millimetres long_side{}, short_side{};
  double prior{}, best{};
  std::array<double, sign_count> likelihood{}; ///< of each sign by itself, weighted by the prior
  double together{};                           ///< prior times likelihood of all that was seen
  double vertical{};                           ///< part of `together` with vertical chain lines
  std::array<double, 8> marks{};               ///< of `together` by the place of the mark, as long as none was seen
  double log_height{};                         ///< of the uncut leaf on the sheet that explains it best
};
using Tallies = std::array<Tally, 32>;

/// All formats, the chain lines read one way.
struct Reading {
  ChainLines chain_lines{};
  Tallies tallies{};
  std::size_t formats{}; ///< how many of the tallies are in use
  double none{};         ///< that it is none of these, in the unit of `together`
  std::array<double, std::tuple_size_v<PriorsByPeriod>> of_period{}; ///< how much of the answer comes from each

  [[nodiscard]] double together() const {
    double all = 0;
    for (std::size_t i = 0; i < formats; ++i) all += tallies[i].together;
    return all;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
