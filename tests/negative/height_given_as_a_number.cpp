// SPDX-License-Identifier: MIT
// A field that may be missing asks for a length too.
// says: a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline LeafEvidence const leaf{.height = 190};
#else
inline LeafEvidence const leaf{.height = 190_mm};
#endif
