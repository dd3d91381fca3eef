// SPDX-License-Identifier: MIT
/// Any bytes as a statement of place: what is named and what is left unread lie in the text, in order, and a name alone is
/// read as the places it had in the statement.
#include <bifolium/paper/read_place.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const place = read_place(text);
  if (!place) {
    fuzz::must_point_into(text, place.error());
    return 0;
  }
  for (auto const& doubt : place->warnings()) fuzz::must_point_into(text, doubt);
  std::size_t told = 0;
  for (auto const span : place->unread) {
    must(told <= span.from && span.from < span.to && span.to <= size, "unread text that is not in the text", text);
    told = span.to;
  }
  must(place->not_known || !place->named.empty(), "a statement of nothing", text);
  told = 0;
  for (auto const& named : place->named) {
    must(told <= named.at.from && named.at.from < named.at.to && named.at.to <= size, "a name elsewhere", text);
    told = named.at.to;
    auto const alone = read_place(named.at.of(text));
    must(alone && alone->named.size() == 1, "a name that is none alone", text);
    for (auto const& one : named.places) {
      bool found = false;
      for (auto const& other : alone->named[0].places) found = found || one == other;
      must(found, "another place of that name", text);
    }
  }
  for (auto const& one : place->places())
    must(is_in(one.region, place->region()), "a region that does not hold it", text);
  return 0;
}
