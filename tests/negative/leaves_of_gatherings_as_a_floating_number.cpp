// SPDX-License-Identifier: MIT
// Gatherings of 8.4 are two numbers that alternate, and no fraction.
// says: a whole number is wanted, as a fraction would be lost: round it, or take a smaller unit
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline LeafEvidence const leaf{.gathering_leaves = 8.4};
#else
inline LeafEvidence const leaf{.gathering_leaves = 8, .alternating_with = 4};
#endif
