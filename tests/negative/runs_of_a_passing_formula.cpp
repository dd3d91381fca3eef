// SPDX-License-Identifier: MIT
// The runs would belong to a formula that has ended. Of a formula that is not kept, they are a value.
// says: keep the Expected in a variable, or write (*read(text)).member()
#include <bifolium/collation.hpp>
using namespace bifolium;
inline std::size_t count(char const* text) {
  std::size_t runs = 0;
#ifdef MISUSE
  for (auto const& run : read_formula(text)->runs()) runs += run.leaves.size();
#else
  for (auto const& run : (*read_formula(text)).runs()) runs += run.leaves.size();
#endif
  return runs;
}
