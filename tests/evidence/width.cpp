// SPDX-License-Identifier: MIT
#include <bifolium/evidence/width.hpp>

#include "check.hpp"

#include <algorithm>
#include <cmath>

using namespace bifolium;

TEST_CASE("a probability that rests on many books is narrower than one that rests on few") { // leaves constructed
  auto const range = [](LeafEvidence const& seen) {
    auto const observation = *observe(seen);
    auto const first = infer_format(observation).front();
    auto const ranked = probability_range(observation, first.format);
    REQUIRE(ranked);
    auto const found = *ranked;
    CHECK(found.stated == doctest::Approx(first.probability).epsilon(0.01));
    CHECK(found.low <= found.stated);
    CHECK(found.high >= found.stated);
    CHECK(found.low >= 0);
    CHECK(found.high <= 1);
    return found;
  };
  // hundreds of chancery folios and quartos lie about this height in 1490; a handful of books of 1560
  auto const many = range({.height = 262_mm, .width = 190_mm, .year = 1490, .place = Region::germany});
  auto const few = range({.height = 165_mm, .width = 105_mm, .year = 1560, .place = Region::france});
  CHECK(many.high - many.low > 0.01);
  CHECK(few.high - few.low > many.high - many.low);
  // what is sure stays so
  auto const sure = range({.height = 200_mm, .width = 140_mm, .chain_lines = ChainLines::horizontal, .year = 1490});
  CHECK(sure.low > 0.98);
  CHECK_FALSE(probability_range(*observe({.height = 200_mm}), Format::of(10)));
}

TEST_CASE("the models of the range are fits of books like those of the model") {
  for (auto const& model : detail::resampled_models()) {
    double sum = 0;
    for (auto const share : model.shares(Region::venice, 1485)) sum += share;
    CHECK(sum == doctest::Approx(1));
    CHECK(model.tail() == doctest::Approx(fitted_paper_model().tail()).epsilon(0.2));
    for (std::size_t k = 0; k < population_count; ++k)
      CHECK(std::abs(model.populations()[k].log_long - fitted_paper_model().populations()[k].log_long) < 0.08);
    CHECK(model.populations()[2].log_long != fitted_paper_model().populations()[2].log_long);
  }
}
