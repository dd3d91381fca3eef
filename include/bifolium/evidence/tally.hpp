// SPDX-License-Identifier: MIT
/// What is added up while kinds of leaf, sheets and periods are asked one after another: a line for each format.
#pragma once

#include <bifolium/evidence/inference.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What speaks for one format, added up over its kinds of leaf, its sheets and the periods.
struct Tally {
  FormatCandidate candidate{};
  double prior{}, best{};
  std::array<double, sign_count> likelihood{}; ///< of each sign by itself, weighted by the prior
  double together{};                           ///< prior times likelihood of all that was seen
  double vertical{};                           ///< part of `together` with vertical chain lines
  std::array<double, 8> marks{};               ///< of `together` by the place of the mark
  double log_height{};                         ///< of the uncut leaf on the sheet that explains it best
};
using Tallies = std::array<Tally, 32>;

} // namespace detail
} // namespace v0
} // namespace bifolium
