// SPDX-License-Identifier: MIT
// Everything after headers that define common words as macros, as those of Windows do. What the standard library has is included
// before, because it need not bear them. (constructed)
#include <algorithm>
#include <array>
#include <cmath>
#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <exception>
#include <functional>
#include <initializer_list>
#include <iosfwd>
#include <iterator>
#include <limits>
#include <locale>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <sstream>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>
#include <version>
#ifdef __cpp_lib_format
#include <format>
#endif

#define far
#define near
#define small char
#define min(a, b) (((a) < (b)) ? (a) : (b))
#define max(a, b) (((a) > (b)) ? (a) : (b))
#define interface struct

#include <every_header.hpp>

int pages_of_octavo();
int pages_of_octavo() { return bifolium::impose<bifolium::schemes::octavo>().pages(); }
