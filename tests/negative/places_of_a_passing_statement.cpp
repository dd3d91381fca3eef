// SPDX-License-Identifier: MIT
// The places would belong to a statement that has ended. Of a statement that is not kept, they are a value.
// says: keep the Expected in a variable, or write (*read(text)).member()
#include <bifolium/paper/read_place.hpp>
using namespace bifolium;
inline std::size_t count(char const* text) {
  std::size_t towns = 0;
#ifdef MISUSE
  for (auto const& place : read_place(text)->places()) towns += place.name.size();
#else
  for (auto const& place : (*read_place(text)).places()) towns += place.name.size();
#endif
  return towns;
}
