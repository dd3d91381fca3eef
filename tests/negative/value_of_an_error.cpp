// SPDX-License-Identifier: MIT
// says: there is no value: look at error() first
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Format format = *read_format("8");
#else
constexpr Format format = *read_format("8°");
#endif
