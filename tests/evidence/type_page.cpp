// SPDX-License-Identifier: MIT
// What the height of the type page says: its numbers against the rows they were taken from.
#include <bifolium/evidence.hpp>

#include "check.hpp"
#include "data.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// Logarithms of type page over uncut leaf, of the likeliest population of each book.
std::vector<double> ratios() {
  // tests/data/bmc_type_pages.tsv
  std::vector<double> all;
  for (auto const& row : data::rows("bmc_type_pages.tsv", 5)) {
    int const leaves = row[1] == "2°" ? 2 : row[1] == "4°" ? 4 : 8;
    Priors known;
    known.shares = {{{static_cast<std::uint8_t>(leaves), 1}}};
    known.shapes = {1, 0, 0, 0, 0};
    auto const inference = infer_format(*observe({.height = millimetres{std::stod(row[2])},
                                                  .width = millimetres{std::stod(row[3])},
                                                  .year = YearRange{1450, 1500}}),
                                        known);
    all.push_back(std::log(std::stod(row[4]) / inference.candidates.front().uncut.height.count()));
  }
  return all;
}

} // namespace

TEST_CASE("type pages are as the rows of the catalogue have them, heavy tails and all") {
  auto const& p = usual_parameters;
  auto const seen = ratios();
  CHECK(seen.size() == 361);
  double mean = 0, variance = 0;
  for (auto const x : seen) mean += x / static_cast<double>(seen.size());
  for (auto const x : seen) variance += (x - mean) * (x - mean) / static_cast<double>(seen.size());
  CHECK(mean == doctest::Approx(p.type_of_uncut).epsilon(0.02));
  CHECK(variance < p.type_variance + fitted_paper_model().populations()[2].short_variance);
  CHECK(variance > p.type_variance / 2);
  // each density with the spread that suits it best
  double bell = -1e9, heavy = -1e9;
  for (double spread = 0.03; spread < 0.1; spread += 0.0005) {
    boost::math::normal const normal;
    boost::math::students_t const t{type_tails};
    double of_bell = 0, of_heavy = 0;
    for (auto const x : seen) {
      of_bell += std::log(pdf(normal, (x - mean) / spread) / spread);
      of_heavy += std::log(pdf(t, (x - mean) / spread) / spread);
    }
    bell = std::max(bell, of_bell), heavy = std::max(heavy, of_heavy);
  }
  CHECK(heavy - bell > 3);
  MESSAGE("rows ", seen.size(), ", mean ", mean, ", variance ", variance, "; t over the bell curve e^", heavy - bell);
}
