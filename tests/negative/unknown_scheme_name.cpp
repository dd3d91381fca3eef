// SPDX-License-Identifier: MIT
// says: no_attested_scheme_has_this_name
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto scheme = "12_comon"_scheme;
#else
constexpr auto scheme = "12_common"_scheme;
#endif
