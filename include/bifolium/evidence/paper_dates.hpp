// SPDX-License-Identifier: MIT
/// Years in which paper changed, for those who reason from the date to the paper (how far chain lines and marks can be
/// trusted) and for those who reason from the paper to the date. One table, so that they cannot disagree.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {
namespace paper_dates {

/// The first book on wove paper, the Virgil of 1757 (McMullin, Studies in Bibliography 56).
inline constexpr int first_wove = 1757;
/// Double moulds, whose sheets were cut in two so that the chain lines run the other way, late 17th and 18th century
/// (Povey & Foster, The Library 5/5, by way of Tanselle, Studies in Bibliography 53). Thickest to 1760: proposed.
inline constexpr int turned_chains_from = 1680;
inline constexpr int turned_chains_common_to = 1760; ///< the last year they are thickest
inline constexpr int turned_chains_to = 1800;        ///< the last year they are met
/// The British act 34 Geo. III c. 20, in force 1794, moved the marks in the moulds and put dates into them (McMullin).
inline constexpr int act_of_1794 = 1794;
/// By about 1830 paper was made by machine (McMullin).
inline constexpr int machine_made_by = 1830;

} // namespace paper_dates
} // namespace v0
} // namespace bifolium
