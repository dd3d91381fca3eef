// SPDX-License-Identifier: MIT
// says: there_is_no_scheme_of_that_name
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto scheme = "12_comon"_scheme;
#else
constexpr auto scheme = "12_common"_scheme;
#endif
