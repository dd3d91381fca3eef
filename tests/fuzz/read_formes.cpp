// SPDX-License-Identifier: MIT
/// Any bytes as formes: what reads has whole rows; what is found for it gives its pages when it is folded.
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/read_formes.hpp>

#include "must.hpp"

using namespace bifolium;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const text(data, data + size);
  auto const formes = read_formes(text);
  if (!formes) {
    fuzz::must_point_into(text, formes.error());
    return 0;
  }
  std::size_t cells = 0;
  for (auto const& forme : *formes) {
    auto const whole = static_cast<std::size_t>(forme.rows) * static_cast<std::size_t>(forme.columns);
    must(forme.pages.size() == whole, "a forme with a part of a row", text);
    cells += whole;
  }
  if (cells > 48) return 0; // the search is exercised with less
  auto const found = find_foldings(*formes, {.most = 2});
  if (!found) return 0;
  for (auto const& one : *found) {
    auto const folded = fold(one.scheme);
    must(folded.has_value(), "a folding that does not fold", text);
    must(gives(*folded, *formes), "a folding that does not give the pages", text);
  }
  return 0;
}
