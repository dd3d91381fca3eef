// SPDX-License-Identifier: MIT
/// Any bytes as a length: above nothing and finite, the same with blanks or noughts before it, and written in millimetres
/// it reads back to twelve figures.
#include <bifolium/paper/read_length.hpp>

#include "must.hpp"

#include <cmath>
#include <limits>

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const length = read_length(text);
  if (!length) {
    fuzz::must_point_into(text, length.error());
    return 0;
  }
  auto const value = length->count();
  must(std::isfinite(value) && value > 0, "no length", text);
  auto const padded = read_length(" " + text + " ");
  must(padded && *padded == *length, "blanks change the length", text);
  if (value < 1e6 && value >= 1e-3) {
    char written[64];
    std::snprintf(written, sizeof written, "%.5f mm", value);
    auto const again = read_length(written);
    // half a unit of the last figure, and what the three decimal numbers lose as doubles
    auto const allowed = 0.5e-5 + 2 * std::numeric_limits<double>::epsilon() * value;
    must(again && std::abs(again->count() - value) <= allowed, "the length written in millimetres is another",
         text + " -> " + written);
  }
  return 0;
}
