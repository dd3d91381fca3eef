// SPDX-License-Identifier: MIT
// edition.hpp brings what the functions that it declares are called with: a scheme is found by its name. (constructed)
#include <bifolium/edition.hpp>

std::int64_t sheets(char const* scheme) {
  auto const found = bifolium::find_scheme(scheme);
  if (!found) return -1;
  auto const bill = bifolium::reckon({.scheme = *found, .pages = 160, .copies = 500, .ream = bifolium::reams::of_500});
  return bill ? bill->sheets.stated : -1;
}
