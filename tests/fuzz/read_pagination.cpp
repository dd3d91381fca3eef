// SPDX-License-Identifier: MIT
/// Any bytes as a statement of pagination or foliation: what is read is written so that it reads back as the same pages.
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_pagination.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const read = read_pagination(text);
  if (!read) {
    fuzz::must_point_into(text, read.error());
    return 0;
  }
  for (auto const& doubt : read->warnings) fuzz::must_point_into(text, doubt);
  auto const written = write_pagination(*read);
  auto const again = read_pagination(written);
  must(bool{again}, "what was written is refused", text + " -> " + written);
  must(again->runs.size() == read->runs.size() && again->by_leaf == read->by_leaf, "other runs",
       text + " -> " + written);
  for (std::size_t i = 0; i < read->runs.size(); ++i)
    must(again->runs[i].count == read->runs[i].count, "another number of pages", text + " -> " + written);
  must(write_pagination(*again) == written, "writing is not settled", text + " -> " + written);
  return 0;
}
