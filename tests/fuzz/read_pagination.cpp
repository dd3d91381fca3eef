// SPDX-License-Identifier: MIT
/// Any bytes as a statement of pagination or foliation: what is read is written so that it reads back as the same pages,
/// and the extent made of it has as many.
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>
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
  for (auto const& doubt : read->warnings()) fuzz::must_point_into(text, doubt);
  auto const written = write_pagination(*read);
  auto const again = read_pagination(written);
  must(bool{again}, "what was written is refused", text + " -> " + written);
  must(*again == *read, "another pagination", text + " -> " + written);
  must(write_pagination(*again) == written, "writing is not settled", text + " -> " + written);
  auto const line = extent_line(*read);
  if (line.empty()) return 0;
  auto const extent = read_extent(line);
  must(extent && extent->pages() == read->pages(), "an extent of other pages", text + " -> " + line);
  must(extent->pagination.total() == read->total(), "an extent with another total", text + " -> " + line);
  return 0;
}
