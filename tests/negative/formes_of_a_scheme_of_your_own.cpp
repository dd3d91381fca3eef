// SPDX-License-Identifier: MIT
// An attested scheme folds; one of your own may not.
// says: it may not fold: look at fold(scheme) first, then write forme_text(impose(*folded))
#include <bifolium/core/message.hpp>
#include <bifolium/explain.hpp>
using namespace bifolium;
#ifdef MISUSE
inline std::string formes(Scheme const& mine) { return forme_text(mine); }
#else
inline std::string formes(Scheme const& mine) {
  auto const folded = fold(mine);
  return folded ? forme_text(impose(*folded)) : message(folded.error());
}
#endif
