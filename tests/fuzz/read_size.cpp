// SPDX-License-Identifier: MIT
/// Any bytes as a statement of size, of format, and as a physical description: intervals in order, places in the text.
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

namespace {
void must_be_ranges(SizeStatement const& size, std::string const& text) {
  for (auto const& range : {size.height, size.width, size.tallest, size.binding, size.binding_width, size.folded_height,
                            size.folded_width, size.leaf_height()})
    must(!range || (range->above >= 0 && range->above < range->to), "a range that holds no length", text);
  must(size.height.has_value(), "a size without a height", text);
}
void must_lie_in(std::string const& text, TextSpan span) {
  must(span.from <= span.to && span.to <= text.size(), "a place that is not in the text", text);
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t bytes) {
  std::string const text(data, data + bytes);
  if (auto const size = read_size(text)) {
    must_be_ranges(*size, text);
    for (auto const span : size->unread) must_lie_in(text, span);
  } else
    fuzz::must_point_into(text, size.error());
  if (auto const format = read_format_statement(text)) {
    must(!format->formats.empty(), "a statement of no format", text);
    for (auto const span : format->unread) must_lie_in(text, span);
  } else
    fuzz::must_point_into(text, format.error());
  if (auto const whole = read_physical_description(text)) {
    must(whole->extent || whole->size, "a description of nothing", text);
    must_lie_in(text, whole->details);
    must_lie_in(text, whole->accompanying);
    if (whole->size) must_be_ranges(*whole->size, text);
    if (whole->extent)
      for (auto const& run : whole->extent->pagination.runs) must_lie_in(text, run.at);
  } else
    fuzz::must_point_into(text, whole.error());
  if (auto const note = read_signature_note(text))
    must_lie_in(text, note->formula_at);
  else
    fuzz::must_point_into(text, note.error());
  return 0;
}
