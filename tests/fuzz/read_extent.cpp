// SPDX-License-Identifier: MIT
/// Any bytes as a catalogue's extent: places lie in the text, and what is written from it has as many pages, plates and
/// volumes when it is read again.
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

namespace {
void must_lie_in(std::string const& text, TextSpan span) {
  must(span.from <= span.to && span.to <= text.size(), "a place that is not in the text", text);
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const extent = read_extent(text);
  if (!extent) {
    fuzz::must_point_into(text, extent.error());
    return 0;
  }
  for (auto const& doubt : extent->warnings()) fuzz::must_point_into(text, doubt);
  for (auto const span : extent->unread) must_lie_in(text, span);
  std::int64_t pages = 0;
  for (auto const& run : extent->pagination.runs) {
    for (auto const& span : {std::optional{run.at}, run.first_at, run.last_at, run.true_at})
      if (span) must_lie_in(text, *span);
    must(run.count > 0 && run.pages() > 0, "a run of no pages", text);
    pages += run.pages();
  }
  must(pages == extent->pages(), "the runs do not add up", text);
  auto const line = extent_line(*extent);
  if (line.empty()) return 0;
  auto const again = read_extent(line);
  must(bool{again}, "what was written is refused", text + " -> " + line);
  must(again->pages() == pages, "another number of pages", text + " -> " + line);
  must(again->unread.empty(), "what was written is not all read", text + " -> " + line);
  for (auto const& doubt : again->warnings()) // letters and `ca.` are doubtful however they are written
    must(doubt.problem == Problem::pages_lettered || doubt.problem == Problem::pages_approximate,
         "what was written is doubtful", text + " -> " + line);
  must(again->plates == extent->plates, "other plates", text + " -> " + line);
  must(again->volumes == extent->volumes && again->bound_in == extent->bound_in && again->sheets == extent->sheets,
       "other volumes", text + " -> " + line);
  must(again->pagination.total() == extent->pagination.total(), "another total", text + " -> " + line);
  must(again->various_pagings == extent->various_pagings &&
           again->pagination.approximate == extent->pagination.approximate,
       "other remarks", text + " -> " + line);
  static Formula const book = *read_formula("8°: A–K⁸");
  auto const compared = compare_extent(book, *extent);
  must(bool{compared} == !extent->pagination.runs.empty(), "a comparison with no pages", text);
  return 0;
}
