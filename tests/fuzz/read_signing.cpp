// SPDX-License-Identifier: MIT
/// Any bytes as a statement of signing: what is read is written so that it reads back as the same statement.
#include <bifolium/collation/read_signing.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const read = read_signing(text);
  if (!read) {
    fuzz::must_point_into(text, read.error());
    return 0;
  }
  for (auto const& doubt : read->warnings) fuzz::must_point_into(text, doubt);
  auto const written = write_signing(*read);
  auto const again = read_signing(written);
  must(bool{again}, "what was written is refused", text + " -> " + written);
  must(again->exceptions.size() == read->exceptions.size() && again->missigned.size() == read->missigned.size(),
       "other exceptions", text + " -> " + written);
  must(write_signing(*again) == written, "writing is not settled", text + " -> " + written);
  return 0;
}
