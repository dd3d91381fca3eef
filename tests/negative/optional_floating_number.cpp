// SPDX-License-Identifier: MIT
// An optional number would be converted by std::optional itself, and lose its fraction without a word.
// says: a whole number is wanted, as a fraction would be lost
#include <bifolium/evidence.hpp>

#include <optional>
using namespace bifolium;
inline std::optional<double> const from_table = 8.4;
inline std::optional<int> const checked_before = 8;
#ifdef MISUSE
inline LeafEvidence const leaf{.gathering_leaves = from_table};
#else
inline LeafEvidence const leaf{.gathering_leaves = checked_before};
#endif
