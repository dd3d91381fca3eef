// SPDX-License-Identifier: MIT
// The text that was found belongs to the error. Keep the error, and ask it.
// says: it looks at the error, which goes: keep it in a variable
#include <bifolium/fold/read_format.hpp>
using namespace bifolium;
inline bool is_empty(char const* text) {
#ifdef MISUSE
  std::string_view const found = read_format(text).error().found_text();
#else
  auto const error = read_format(text).error();
  std::string_view const found = error.found_text();
#endif
  return found.empty();
}
