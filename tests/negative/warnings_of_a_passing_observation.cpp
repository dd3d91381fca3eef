// SPDX-License-Identifier: MIT
// The warnings would belong to an observation that has ended.
// says: keep the Expected in a variable, or write (*read(text)).member()
#include <bifolium/evidence.hpp>
using namespace bifolium;
inline std::size_t count(LeafEvidence const& seen) {
#ifdef MISUSE
  return observe(seen)->warnings().size();
#else
  auto const observation = observe(seen);
  return observation ? observation->warnings().size() : 0;
#endif
}
