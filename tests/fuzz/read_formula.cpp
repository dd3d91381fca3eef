// SPDX-License-Identifier: MIT
/// Any bytes as a formula; what must hold of them is in tests/collation/formula_laws.hpp. Built with clang when
/// BIFOLIUM_BUILD_FUZZERS is on; the seeds are also run by the ordinary tests (tests/collation/any_text.cpp).
#include "collation/formula_laws.hpp"
#include "must.hpp"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  if (size == 0) return 0;
  // the first byte chooses the dialect
  bifolium::Dialect const dialect{static_cast<bifolium::Omitted>(data[0] % 3),
                                  {(data[0] & 4U) != 0, (data[0] & 8U) != 0, (data[0] & 16U) != 0},
                                  true};
  auto const broken = broken_law(std::string(data + 1, data + size), dialect);
  fuzz::must(broken.empty(), "a law is broken", broken);
  return 0;
}
