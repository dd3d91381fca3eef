// SPDX-License-Identifier: MIT
/// Any bytes as a scheme: what reads is written so that it reads back, and what folds prints each page where it says.
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const scheme = read_scheme(text);
  if (!scheme) {
    fuzz::must_point_into(text, scheme.error());
    return 0;
  }
  auto const written = write_scheme(*scheme);
  auto const again = read_scheme(written);
  must(bool{again}, "what was written cannot be read", text + "\n->\n" + written);
  must(*again == *scheme, "what was written is another scheme", text + "\n->\n" + written);
  must(write_scheme(*again) == written, "no fixed point", text + "\n->\n" + written);
  auto const folded = fold(*scheme);
  if (!folded) {
    fuzz::must_point_into(text, folded.error());
    return 0;
  }
  auto const formes = impose(*folded);
  int standing = 0;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto const side : {Side::outer, Side::inner}) {
      if (side == Side::inner && formes.one_forme(sheet)) continue;
      for (auto const& cell : formes.forme(side, sheet)) {
        ++standing;
        auto const place = formes.find_place(cell.page);
        must(place.has_value(), "a page that stands in a forme has no place", text);
        auto const there =
            formes.forme(place->side, place->sheet).begin() + place->row * formes.columns(place->sheet) + place->column;
        must(there->page == cell.page && there->head == place->head, "the place of a page holds another", text);
      }
    }
  must(standing >= formes.pages(), "fewer cells than pages", text);
  return 0;
}
