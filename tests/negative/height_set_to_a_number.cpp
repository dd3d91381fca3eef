// SPDX-License-Identifier: MIT
// And where it is assigned later.
// says: a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
#include <bifolium/record.hpp>
using namespace bifolium;
inline Measured measured(double height) {
  Measured book{.height = 190_mm};
#ifdef MISUSE
  book.binding = height;
#else
  book.binding = millimetres{height};
#endif
  return book;
}
