// SPDX-License-Identifier: MIT
/// Finds the foldings that agree with evidence seen in leaves: which sheets, cut and folded in which way, give a
/// gathering with these chain lines, marks, bolts and rough edges? Every sheet within the limits is tried with every
/// way of folding it, so the answer does not depend on a table of formats. If nothing fits, or only something
/// complicated, the search names a leaf without which something simple fits: a cancel, a leaf put in the place of
/// another, shows by its paper.
///
/// A few facts leave many foldings. So the answer is in groups of one format. Groups with an attested scheme come first,
/// the most common ones before the others (fold/folding_weights.hpp), then groups without one, the simplest first
/// (fold/folding_prices.hpp). The answer says what to look at next.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/fold/folding_weights.hpp>
#include <bifolium/fold/foldings_left.hpp>
#include <bifolium/fold/seen_leaf.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// Returns the foldings that agree with the evidence of one gathering, or of several that were made of one sheet.
/// `weights` says how common each attested scheme was. The function allocates memory. The work grows with the number of
/// leaves and with the number of unknown facts: a tenth of a second at most for 8 leaves, a second or two for 24.
/// Precondition: `allowed` is within its limits, and no weight is less than 0. Errors: gathering_size_needed if there is
/// no gathering; gathering_too_large for more than 32 leaves in one gathering or more than 63 in all;
/// leaf_outside_gathering, leaf_seen_twice; too_many_arrangements if so little is known of so many gatherings that they
/// can lie on the sheet in too many ways.
BIFOLIUM_INLINE Expected<FoldingsLeft> foldings_showing(std::span<SeenGathering const> gatherings,
                                                        SheetsAllowed const& allowed = {},
                                                        FoldingWeights const& weights = weights_by_price());

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/fold/detail/foldings_showing.hpp>
#endif
