// SPDX-License-Identifier: MIT
// A formula can be written with raised figures, in ASCII, or for TEI: `<<` cannot know which is meant.
// says: which notation? write out << write_formula(formula)
#include <bifolium/collation.hpp>

#include <iostream>
using namespace bifolium;
inline void show(Formula const& formula) {
#ifdef MISUSE
  std::cout << formula;
#else
  std::cout << write_formula(formula);
#endif
}
