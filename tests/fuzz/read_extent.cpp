// SPDX-License-Identifier: MIT
/// Any bytes as a catalogue's extent: the sum that is shown adds up, and read as an extent it is the same number.
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/extent.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const extent = read_extent(text);
  if (!extent) {
    fuzz::must_point_into(text, extent.error());
    return 0;
  }
  std::int64_t sum = 0;
  std::string again;
  if (extent->sum.empty()) return 0; // said in words, without a figure
  for (std::size_t at = 0; at <= extent->sum.size();) {
    auto const end = std::min(extent->sum.find(" + ", at), extent->sum.size());
    sum += std::stoll(extent->sum.substr(at, end - at));
    again += (again.empty() ? "" : ", ") + extent->sum.substr(at, end - at);
    at = end + 3;
  }
  must(sum == extent->number && sum >= 0, "the sum does not add up", text + " -> " + extent->sum);
  auto const second = read_extent(again + (extent->in_leaves ? " leaves" : " p."));
  must(second && second->number == extent->number && second->in_leaves == extent->in_leaves &&
           second->sum == extent->sum,
       "the sum reads as another extent", text + " -> " + again);
  static Formula const book = *read_formula("8°: A–K⁸");
  must(!compare_extent(book, *extent).words.empty(), "a comparison without words", text);
  return 0;
}
