// SPDX-License-Identifier: MIT
// Evidence is checked before anything is inferred from it.
// says: nobody checked it: write infer_format(*observe(evidence))
#include <bifolium/evidence.hpp>
using namespace bifolium;
inline LeafEvidence const evidence{.height = 190_mm};
#ifdef MISUSE
inline auto const named = infer_format(evidence);
#else
inline auto const named = infer_format(*observe(evidence));
#endif
