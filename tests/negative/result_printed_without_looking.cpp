// SPDX-License-Identifier: MIT
// What a reader gives may be an error, so it is not printed as if it were the value.
// says: it may be an error: look first, then write out << *result or out << result.error()
#include <bifolium/fold.hpp>

#include <iostream>
using namespace bifolium;
inline void show(std::string_view text) {
#ifdef MISUSE
  std::cout << read_format(text);
#else
  if (auto const format = read_format(text))
    std::cout << *format;
  else
    std::cout << format.error();
#endif
}
