// SPDX-License-Identifier: MIT
// What the height of the type page says: the density against Boost.Math, the numbers of it against the rows they were fitted
// on, and the sums over sheets against asking every sheet by itself.
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

/// The density of a type page, made 1 where it is as usual.
double falls_off(double x, EvidenceParameters const& p) {
  static boost::math::students_t const t{type_tails};
  auto const variance_of_t = type_tails / (type_tails - 2);
  return pdf(t, x / std::sqrt(p.type_of_uncut_variance / variance_of_t)) / pdf(t, 0.0);
}

/// Logarithms of type page over uncut leaf, of the early sheet and its usual loss that the leaf fits best.
std::vector<double> ratios() {
  // tests/data/bmc_type_pages.tsv
  constexpr SchemeRow schemes[]{SchemeRow::folio, SchemeRow::quarto, SchemeRow::octavo};
  std::vector<double> all;
  for (auto const& row : data::rows("bmc_type_pages.tsv", 5)) {
    std::size_t const format = row[1] == "2°" ? 0 : row[1] == "4°" ? 1 : 2;
    auto const lay = fold(Attested{schemes[format]}.scheme())->sheet(0);
    auto const& loss = fitted_parameters.early_trim[format][0];
    double least = 1e9, uncut = 0;
    for (std::size_t s = 0; s < 4; ++s) {
      auto const size =
          leaf_size(lay, Sheet{millimetres{early_sheets[s].short_side}, millimetres{early_sheets[s].long_side}});
      auto const x = std::log(std::stod(row[2]) / size.height.count()) - loss.height;
      auto const y = std::log(std::stod(row[3]) / size.width.count()) - loss.width;
      // as common as the sheet is with the format, and as usual as the loss
      auto const far = x * x / loss.height_variance + y * y / loss.width_variance -
                       2 * std::log(fitted_parameters.undated_shares.of[format][s]);
      if (far < least) least = far, uncut = size.height.count();
    }
    all.push_back(std::log(std::stod(row[4]) / uncut));
  }
  return all;
}

} // namespace

TEST_CASE("a type page falls off as the t density does, and is looked for by it") { // Boost.Math, students_t
  boost::math::students_t const t{type_tails};
  for (double x = -6; x < 6; x += 0.37) CHECK(detail::left_of_type(x) == doctest::Approx(cdf(t, x)).epsilon(1e-12));
}

TEST_CASE("type pages are as the rows of the catalogue have them, heavy tails and all") {
  auto const& p = fitted_parameters;
  auto const seen = ratios();
  CHECK(seen.size() == 361);
  double mean = 0, variance = 0;
  for (auto const x : seen) mean += x / static_cast<double>(seen.size());
  for (auto const x : seen) variance += (x - mean) * (x - mean) / static_cast<double>(seen.size());
  CHECK(mean == doctest::Approx(p.type_of_uncut).epsilon(0.02));
  CHECK(variance < p.type_of_uncut_variance);
  CHECK(variance > p.type_of_uncut_variance / 2);
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

TEST_CASE("type pages weigh as if every sheet were asked by itself") { // the density from Boost.Math
  auto const& p = fitted_parameters;
  detail::PossibleSheets sheets;
  detail::SheetGatherer{sheets, p}.take(0, usable_for({1701, 1900}, Region::anywhere));
  sheets.fill_up();
  auto const& shares = sheets.of_period[0];
  for (double const type : {30.0, 60.0, 95.0, 140.0, 200.0, 320.0}) {
    detail::SheetsAsked question{{.type_height = millimetres{type}}, p};
    for (auto const& shape : leaf_shapes()) {
      question.ask(sheets, shape, detail::OneLoss{detail::LossDensity{p.trim_by_state[0]}}, 0);
      bool const upright = shape.lay.long_side == Axis::left_right;
      double sum = 0;
      for (std::size_t i = 0; i < shares.end; ++i) {
        auto const uncut = upright ? sheets.across[i] - shape.log_short : sheets.along[i] - shape.log_long;
        sum += shares.weight[i] * (falls_off(std::log(type) - uncut - p.type_of_uncut, p) + p.least_type);
      }
      CHECK(question.answer(shares).type == doctest::Approx(sum / shares.all).epsilon(1e-12));
    }
  }
}
