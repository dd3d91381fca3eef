// SPDX-License-Identifier: MIT
/// Any bytes as sizes of gatherings and as leaves seen: the answer is in range, or the error points into the text.
#include <bifolium/evidence/read_seen.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  if (auto const sizes = read_gathering_sizes(text)) {
    must(sizes->leaves > 0 && sizes->alternating_with.value_or(1) > 0 && sizes->alternating_with != sizes->leaves,
         "a size that is none", text);
    auto written = std::to_string(sizes->leaves);
    if (sizes->alternating_with) written += "." + std::to_string(*sizes->alternating_with);
    auto const again = read_gathering_sizes(written);
    must(again && *again == *sizes, "the sizes read as others", text + " -> " + written);
  } else {
    fuzz::must_point_into(text, sizes.error());
  }
  if (auto const leaves = read_leaves_seen(text))
    must((*leaves)[0].leaf > 0, "leaves without a leaf", text);
  else
    fuzz::must_point_into(text, leaves.error());
  return 0;
}
