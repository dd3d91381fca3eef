// SPDX-License-Identifier: MIT
/// Any bytes as what leaves show: errors point into the text, and what reads can be asked about.
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const gatherings = read_seen_leaves(text);
  if (!gatherings) {
    fuzz::must_point_into(text, gatherings.error());
    return 0;
  }
  int leaves = 0;
  for (auto const& gathering : *gatherings) {
    must(gathering.leaves >= 1, "a gathering of no leaves", text);
    leaves += gathering.leaves;
    for (auto const& leaf : gathering.seen)
      must(leaf.leaf >= 1 && leaf.leaf <= gathering.leaves, "a leaf outside its gathering", text);
  }
  if (leaves > 4) return 0; // the search is exercised with little
  auto const left = foldings_showing(*gatherings, {.most_rows = 2, .most_columns = 4, .most_leaves = 8});
  must(left.has_value(), "what was read cannot be asked about", text);
  for (auto const& blamed : left->blamed)
    must(blamed.leaf >= 1 && blamed.leaf <= (*gatherings)[static_cast<std::size_t>(blamed.gathering)].leaves,
         "a leaf is blamed that is not there", text);
  return 0;
}
