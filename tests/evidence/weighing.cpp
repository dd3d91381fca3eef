// SPDX-License-Identifier: MIT
// The closed forms against integrals, the sums against every case asked by itself, and laws that hold whatever the
// numbers. Measures are of the copies in tests/data (sources there); everything else about the leaves is constructed.
#include <bifolium/evidence.hpp>

#include "check.hpp"
#include "data.hpp"
#include "evidence/inference_of.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <map>
#include <numbers>
#include <string>
#include <vector>

using namespace bifolium;
using boost::math::quadrature::gauss_kronrod;

namespace {

double probability(Inference const& inference, int leaves) {
  double p = 0;
  for (auto const& one : inference)
    if (one.format.leaves_to_sheet() == leaves) p += one.probability;
  return p;
}

/// Every 40th of the measured copies, all else in turn.
std::vector<LeafEvidence> copies() {
  constexpr MarkPlace marks[]{MarkPlace::unknown, MarkPlace::gutter, MarkPlace::head_of_gutter, MarkPlace::absent};
  std::vector<LeafEvidence> all;
  std::size_t number = 0;
  for (auto const& row : data::rows("bmc_leaf_sizes.tsv", 7)) {
    if (number++ % 40 != 0) continue;
    auto const i = all.size();
    LeafEvidence seen{.height = millimetres{std::stod(row[2])}, .width = millimetres{std::stod(row[3])}};
    if (i % 3 == 0) seen.chain_lines = i % 2 == 0 ? ChainLines::vertical : ChainLines::horizontal;
    seen.watermark = marks[i % 4];
    if (i % 7 == 0) seen.countermark = marks[(i + 1) % 4];
    if (i % 5 < 3) seen.gathering_leaves = 4 + 4 * static_cast<int>(i % 3);
    if (i % 4 == 0) seen.type_height = *seen.height * 0.7;
    if (i % 6 == 0) seen.head = EdgeSeen::bolt;
    if (i % 9 == 0) seen.point_hole = HolePlace::head;
    if (i % 10 == 1) seen.width.reset();
    if (i % 10 == 2) seen.height.reset();
    if (i % 8 == 1 && seen.gathering_leaves)
      seen.leaves = {{{1, MarkPlace::gutter, ChainLines::horizontal}, {2, MarkPlace::absent, {}}}};
    all.push_back(seen);
  }
  return all;
}

/// The density of one sheet, or 0 if it is not near.
double density(detail::NearSheets const& near) { return near.count > 0 ? near.density[0] : 0; }
double of_both(detail::SheetDensity const& sheets, double log_long, double log_short, detail::LossLaw const& loss) {
  detail::NearSheets near;
  sheets.of_both({{log_long}, {log_short}}, 1, loss, near);
  return density(near);
}
double of_short_side(detail::SheetDensity const& sheets, double length, detail::LossLaw const& loss) {
  detail::NearSheets near;
  sheets.of_side({{1}, {length}, {}, 0}, 1, loss, near);
  return density(near);
}
double of_short_side(detail::SheetDensity const& sheets, double low, double high, detail::LossLaw const& loss) {
  detail::NearSheets near;
  sheets.of_side_between({{1}, {high}, {low}, std::exp(-loss.tail * (high - low))}, 1, loss, near);
  return density(near);
}

} // namespace

TEST_CASE("the tail of the normal distribution is that of Boost.Math") {
  boost::math::normal const normal;
  auto const& tail = detail::normal_tail();
  for (double u = 0; u < 11.9; u += 0.0371)
    CHECK(tail(u) == doctest::Approx(std::exp(u * u / 2) * cdf(complement(normal, u))).epsilon(2e-6));
  for (double u = 12; u < 30;
       u += 1.3) // its series: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.12
    CHECK(tail(u) ==
          doctest::Approx((1 - 1 / (u * u) + 3 / (u * u * u * u)) / u / std::sqrt(2 * std::numbers::pi)).epsilon(2e-4));
}

TEST_CASE("sizes are as likely as the integral over what was cut off has them") { // gauss_kronrod of Boost.Math
  constexpr double v0 = 0.0019, c = 0.0009, v1 = 0.0027, tail = 25.7;
  detail::SheetDensity const sheets{6.28, 6.03, v0, c, v1};
  constexpr detail::LossLaw loss{tail, 0, tail};
  auto const det = v0 * v1 - c * c;
  auto const bell = [&](double x, double y) {
    return std::exp(-(v1 * x * x - 2 * c * x * y + v0 * y * y) / (2 * det)) / (2 * std::numbers::pi * std::sqrt(det));
  };
  auto const side = [](double x, double v) { return std::exp(-x * x / (2 * v)) / std::sqrt(2 * std::numbers::pi * v); };
  auto const over_losses = [&](auto density) {
    return gauss_kronrod<double, 61>::integrate([&](double t) { return tail * std::exp(-tail * t) * density(t); }, 0,
                                                1.5, 12, 1e-9);
  };
  for (double x = -0.4; x < 0.16; x += 0.043)
    for (double y = -0.4; y < 0.16; y += 0.057) {
      auto const expected = over_losses([&](double t) { return bell(x + t, y + t); });
      if (expected > 1e-12) CHECK(of_both(sheets, 6.28 + x, 6.03 + y, loss) == doctest::Approx(expected).epsilon(1e-5));
    }
  for (double x = -0.5; x < 0.2; x += 0.031) {
    auto const expected = over_losses([&](double t) { return side(x + t, v1); });
    CHECK(of_short_side(sheets, 6.03 + x, loss) == doctest::Approx(expected).epsilon(1e-5));
    // and an interval is the integral over its points
    auto const between = gauss_kronrod<double, 61>::integrate(
        [&](double z) { return of_short_side(sheets, 6.03 + z, loss); }, x, x + 0.05, 12, 1e-10);
    CHECK(std::abs(of_short_side(sheets, 6.03 + x, 6.08 + x, loss) - between) < 1e-6);
  }
}

TEST_CASE("a range of years answers within what its years answer") {
  std::uint32_t state = 20260;
  auto const draw = [&](double from, double to) {
    state = state * 1664525U + 1013904223U;
    return from + (to - from) * (state >> 8U) / 16777216.0;
  };
  constexpr Region places[]{Region::france, Region::britain, Region::venice, Region::germany, Region::anywhere};
  for (int i = 0; i < 200; ++i) {
    auto const height = draw(90, 400);
    LeafEvidence seen{
        .height = millimetres{height}, .width = millimetres{height * draw(.55, .78)}, .place = places[i % 5]};
    auto const from = static_cast<int>(draw(1455, 1840)), to = from + static_cast<int>(draw(2, 40));
    seen.year = YearRange{from, to};
    auto const range = of(seen);
    std::map<int, std::pair<double, double>> least_most;
    for (int year = from; year <= to; ++year) {
      seen.year = year;
      auto const one = of(seen);
      for (auto const leaves : ranked_leaves) {
        auto const p = probability(one, leaves);
        auto& [least, most] = least_most.try_emplace(leaves, p, p).first->second;
        least = std::min(least, p), most = std::max(most, p);
      }
    }
    for (auto const& [leaves, bounds] : least_most) {
      auto const p = probability(range, leaves);
      CHECK(p >= bounds.first - 1e-9);
      CHECK(p <= bounds.second + 1e-9);
    }
  }
}

TEST_CASE("no year is a cliff") {
  double most = 0;
  int over = 0, scans = 0;
  std::string where;
  for (auto const place : {Region::anywhere, Region::france, Region::britain, Region::italy})
    for (int const height : {100, 125, 150, 165, 190, 220, 260, 300, 340, 400})
      for (double const ratio : {.56, .62, .68, .75}) {
        LeafEvidence seen{.height = millimetres(height), .width = millimetres(height * ratio), .place = place};
        std::map<Format const*, double> none;
        Inference before;
        double here = 0;
        for (int year = 1455; year <= 1850; ++year) {
          seen.year = year;
          auto const now = of(seen);
          for (auto const leaves : ranked_leaves)
            if (year > 1455) {
              auto const step = std::abs(probability(now, leaves) - probability(before, leaves));
              if (step > here) here = step;
              if (step > most)
                most = step,
                where = std::to_string(year) + ", " + std::to_string(height) + " mm, " + std::to_string(leaves) + "°";
            }
          before = now;
        }
        ++scans, over += here > 0.03;
      }
  MESSAGE("largest step of a year: " << most << " (" << where << "), over .03 in " << over << " of " << scans);
  CHECK(most <= 0.045);
  CHECK(over <= 2);
}

TEST_CASE("no leaf is larger than its sheet, and what no sheet gives is none of these") {
  for (int const height : {900, 1200, 1500, 2000})
    CHECK(of({.height = millimetres(height), .width = millimetres(height * 2 / 3), .year = 1490}).none_of_these >= 0.9);
  CHECK(of({.height = 100_mm, .width = 20_mm, .year = 1700}).none_of_these >= 0.9);
  // constructed: an octavo of 320 mm would need a sheet of 640 mm by more than 800, and nobody made one by 1600
  for (int const year : {1480, 1550, 1600})
    CHECK(probability(of({.height = 320_mm, .width = 210_mm, .year = year}), 8) < 0.001);
}

TEST_CASE("a book whose chain lines run both ways is of a pair of formats, or of one on two papers") {
  int pairs = 0, one = 0;
  for (auto seen : copies()) {
    seen.leaves = {};
    seen.year = 1475;
    auto const with = [&](ChainLines lines) {
      seen.chain_lines = lines;
      return of(seen);
    };
    auto const vertical = with(ChainLines::vertical), horizontal = with(ChainLines::horizontal);
    auto const both = with(ChainLines::both);
    if (!both.mixed) {
      ++one;
      continue;
    }
    ++pairs;
    CHECK(both.mixed->probability >= 0.5);
    CHECK(both.mixed->probability <= 1);
    CHECK(both.mixed->vertical.probability ==
          doctest::Approx(probability(vertical, *both.mixed->vertical.format.leaves_to_sheet())).epsilon(0.02));
    CHECK(both.mixed->horizontal.format != both.mixed->vertical.format);
  }
  CHECK(pairs > 5);
  CHECK(one > 3);
  // London 1722: octavo on paper of which some is double is likelier than two formats in one book
  CHECK_FALSE(of({.height = 200_mm,
                  .width = 125_mm,
                  .chain_lines = ChainLines::both,
                  .gathering_leaves = 8,
                  .year = 1722,
                  .place = Region::britain})
                  .mixed);
}

TEST_CASE("what answers an observation does not depend on what was asked before") {
  std::vector<Inference> first;
  auto const seen = copies();
  for (auto const& one : seen) first.push_back(of(one));
  for (auto i = seen.size(); i-- > 0;) {
    auto const again = of(seen[i]);
    REQUIRE(again.candidates.size() == first[i].candidates.size());
    for (std::size_t k = 0; k < again.candidates.size(); ++k) {
      CHECK(again.candidates[k].format == first[i].candidates[k].format);
      CHECK(again.candidates[k].probability == first[i].candidates[k].probability);
    }
  }
}

TEST_CASE("chain lines, tranchefile and mark of one leaf are of one paper") {
  // On single paper and on double paper each is likely by itself; together they are likelier than apart, since what
  // turns the chain lines moves the tranchefile too (Heawood's quarto of 1696, in Tanselle, Studies in Bibliography
  // 53).
  LeafEvidence seen{.height = 225_mm, .width = 170_mm, .gathering_leaves = 4, .year = 1696};
  auto const quarto = [&] { return probability(of(seen), 4) / (1 - probability(of(seen), 4)); };
  auto const neither = quarto();
  seen.chain_lines = ChainLines::vertical;
  auto const chains = quarto();
  seen.fore_edge = EdgeSeen::tranchefile;
  auto const both = quarto();
  seen.chain_lines = ChainLines::unknown;
  auto const tranchefile = quarto();
  CHECK(both * neither > 1.5 * chains * tranchefile);
  seen.chain_lines = ChainLines::vertical;
  CHECK(of(seen).candidates.front().format == Format::of(4));
  CHECK(of(seen).candidates.front().twofold > 0.9);
}

/// The leaves of a gathering of eight, each with the number of its sheet: as they are, or single sheets that make
/// smaller gatherings, folded and laid one inside another. No leaves if it cannot be made so.
static std::vector<LeafFacts> in_eights(SchemeFacts const& scheme, int g) {
  auto const facts = scheme.gathering(g);
  auto const all = std::vector<LeafFacts>(facts.begin(), facts.end());
  if (all.size() == 8) return all;
  std::vector<LeafFacts> quired;
  if (scheme.sheets != 1 || all.size() % 2 != 0 || 8 % all.size() != 0) return quired;
  auto const half = static_cast<std::ptrdiff_t>(all.size() / 2);
  for (auto sheet = static_cast<int>(8 / all.size()); sheet-- > 0;) { // the inmost is laid first
    auto here = all;
    for (auto& leaf : here) leaf.sheet = sheet;
    quired.insert(quired.begin(), here.begin(), here.begin() + half);
    quired.insert(quired.end(), here.begin() + half, here.end());
  }
  return quired;
}

// Every lie and paper of every sheet taken by itself, as the model is stated: 256 cases for a gathering of four sheets.
TEST_CASE("leaves of a gathering weigh as the sum over how each sheet may lie") {
  EvidenceOfLeaves const seen{{{1, MarkPlace::gutter, ChainLines::horizontal},
                               {2, MarkPlace::absent, ChainLines::horizontal},
                               {4, MarkPlace::unknown, ChainLines::vertical},
                               {7, MarkPlace::gutter, ChainLines::unknown}}};
  constexpr auto p = usual_parameters;
  int asked = 0, quired = 0;
  for (int const year : {1480, 1610, 1722, 1800}) {
    auto const age = PaperAge::of(year, Region::britain);
    detail::MarkTrust const trust{age, p};
    detail::LeavesLikelihood const likelihood{seen, 8, age, p};
    auto const& schemes = scheme_facts();
    for (std::size_t number = 0; number < schemes.size(); ++number) {
      double sum = 0;
      int fitting = 0;
      for (int g = 0; g < schemes[number].gatherings; ++g) {
        auto const gathering = in_eights(schemes[number], g);
        if (gathering.empty()) continue;
        ++fitting;
        unsigned sheets = 1;
        for (auto const& leaf : gathering)
          if (leaf.sheet >= static_cast<int>(sheets)) sheets = static_cast<unsigned>(leaf.sheet) + 1;
        quired += schemes[number].gathering(g).size() < 8 ? 1 : 0;
        for (int paper = 0; paper < 3; ++paper) { // unmarked, one mark, two
          auto const share = paper == 0   ? 1 - p.paper_is_marked
                             : paper == 1 ? p.paper_is_marked * (1 - trust.second)
                                          : p.paper_is_marked * trust.second;
          for (unsigned cases = 0; cases < 1U << (2 * sheets); ++cases) {
            double here = share;
            for (unsigned s = 0; s < sheets; ++s)
              here *= ((cases >> (2 * s) & 1U) != 0 ? age.twofold : 1 - age.twofold) / 2;
            for (auto const& one : seen) {
              if (one.leaf == 0) break;
              auto const& leaf = gathering[static_cast<std::size_t>(one.leaf - 1)];
              auto const bits = cases >> (2 * static_cast<unsigned>(leaf.sheet));
              bool const turned = (bits & 1U) != 0;
              auto const lie = bits >> 1 & 1U;
              if (one.chain_lines != ChainLines::unknown)
                here *= (leaf.chain_lines == one.chain_lines) != turned ? 1 - p.leaf_slip : p.leaf_slip;
              if (one.mark == MarkPlace::unknown) continue;
              auto there = paper == 0 ? MarkPlace::absent : leaf.watermark[lie];
              if (paper == 2 && there == MarkPlace::absent) there = leaf.countermark[lie];
              if (there == MarkPlace::absent || one.mark == MarkPlace::absent)
                here *= there == one.mark ? 1 - p.leaf_slip : p.leaf_slip;
              else
                here *= there == one.mark ? trust.in_place : (1 - trust.in_place) / 5;
            }
            sum += here;
          }
        }
      }
      if (fitting == 0) continue;
      auto const expected = p.pattern_right * sum / fitting + (1 - p.pattern_right) * likelihood.by_chance();
      CAPTURE(schemes[number].scheme.id());
      CHECK(likelihood.of(number) == doctest::Approx(expected).epsilon(1e-12));
      ++asked;
    }
  }
  CHECK(asked >= 40);
  CHECK(quired >= 8);
}

TEST_CASE("a stock of paper is believed as far as it is said to be") {
  // constructed: 400 x 620 mm is like no population; a quarto of it is 310 x 200
  PaperStock stock{"mill of the bishop", {400_mm, 620_mm}, 0.5};
  auto const seen = *observe({.height = 305_mm, .width = 196_mm, .chain_lines = ChainLines::horizontal, .year = 1600});
  auto const without = infer_format(seen), with = infer_format(seen, Assumptions{.stocks = {&stock, 1}});
  CHECK(probability(with, 4) > probability(without, 4));
  CHECK(with.candidates.front().format == Format::of(4));
  REQUIRE(with.candidates.front().stock);
  CHECK(*with.candidates.front().stock == "mill of the bishop");
  CHECK_FALSE(without.candidates.front().stock);
  stock.share = 0;
  auto const unbelieved = infer_format(seen, Assumptions{.stocks = {&stock, 1}});
  CHECK(probability(unbelieved, 4) == doctest::Approx(probability(without, 4)).epsilon(1e-12));
}
