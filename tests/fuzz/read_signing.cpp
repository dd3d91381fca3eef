// SPDX-License-Identifier: MIT
/// Any bytes as a statement of signing: what is read is written so that it reads back as the same statement.
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/write_signing.hpp>

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
  std::size_t before = 0; // places are kept in the order they have in the text
  auto const must_come_next = [&](SigningPlace const& place) {
    auto const at = position_of(text, place.at);
    must(at >= before && at < text.size(), "a place that is elsewhere", text);
    before = at;
  };
  for (auto const& exception : read->exceptions) must_come_next(exception.place);
  before = 0;
  for (auto const& wrong : read->missigned) must_come_next(wrong.place);
  auto const written = write_signing(*read);
  auto const again = read_signing(written);
  must(bool{again}, "what was written is refused", text + " -> " + written);
  must(*again == *read, "another statement", text + " -> " + written);
  must(write_signing(*again) == written, "writing is not settled", text + " -> " + written);
  return 0;
}
