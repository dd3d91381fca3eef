// SPDX-License-Identifier: MIT
// says: a format must be from 1
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Format format = Format::of(256);
#else
constexpr Format format = Format::of(128);
#endif
