// SPDX-License-Identifier: MIT
/// Years in which paper changed. Both kinds of inference use this table: from the date to the paper (how reliable chain
/// lines and marks are), and from the paper to the date. So they cannot disagree.
#pragma once

#include <bifolium/core/year_range.hpp>

namespace bifolium {
inline namespace v0 {
/// The years of which paper and formats are known to the inference. For others it carries on what it knows of the nearest.
inline constexpr YearRange years_of_paper{1450, 1850};

namespace paper_dates {

/// The first book on wove paper, the Virgil of 1757 (McMullin, Studies in Bibliography 56).
inline constexpr int first_wove = 1757;
/// The first year of double moulds, whose sheets were cut in two so that the chain lines run in the other direction;
/// late 17th and 18th century (Povey & Foster, The Library 5/5, by way of Tanselle, Studies in Bibliography 53). The
/// end of the most frequent use in 1760 is proposed.
inline constexpr int turned_chains_from = 1680;
inline constexpr int turned_chains_common_to = 1760; ///< the last year of their most frequent use
inline constexpr int turned_chains_to = 1800;        ///< the last year of their use
/// The British act 34 Geo. III c. 20, in force 1794, moved the marks in the moulds and put dates into them (McMullin).
inline constexpr int act_of_1794 = 1794;
/// The first year of books in publishers' covers, from which a binder cut little and evenly. Grant, Books and Documents
/// (1937), 41-44, has cloth from about 1830; the years before are from memory.
inline constexpr int publishers_covers_from = 1826;
/// The year by which paper was made by machine, about 1830 (McMullin).
inline constexpr int machine_made_by = 1830;

} // namespace paper_dates
} // namespace v0
} // namespace bifolium
