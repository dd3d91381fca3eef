// SPDX-License-Identifier: MIT
/// Any bytes as a statement of date: years in order and of at most four digits and a half century, spans inside the text,
/// and the written year read again is the same.
#include <bifolium/core/read_date.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const date = read_date(text);
  if (!date) {
    fuzz::must_point_into(text, date.error());
    return 0;
  }
  for (auto const& doubt : date->warnings()) fuzz::must_point_into(text, doubt);
  must(date->years.has_value() == date->written.has_value(), "years without years written", text);
  std::size_t told = 0;
  for (auto const span : date->unread) {
    must(told <= span.from && span.from < span.to && span.to <= size, "unread text that is not in the text", text);
    told = span.to;
  }
  if (!date->years) return 0;
  must(date->read.from < date->read.to && date->read.to <= size, "a date read nowhere", text);
  must(date->years->from <= date->years->to && date->written->from <= date->written->to, "years that run back", text);
  must(date->written->from >= 0 && date->written->to <= 9999, "a year of five digits", text);
  auto const years = date->written->size() == 1
                         ? std::to_string(date->written->from)
                         : std::to_string(date->written->from) + "-" + std::to_string(date->written->to);
  if (date->written->from >= 1000)
    must((*read_date(years)).written == date->written, "the years read again are others", text + " -> " + years);
  return 0;
}
