// SPDX-License-Identifier: MIT
// What is saved by asking only once must not move an answer. Measures are of the copies in tests/data (sources there);
// everything else about the leaves is constructed.
#include <bifolium/evidence.hpp>

#include "check.hpp"
#include "data.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

/// Every 40th of the measured copies, all else in turn.
std::vector<LeafEvidence> copies() {
  constexpr MarkPlace marks[]{MarkPlace::unknown, MarkPlace::gutter, MarkPlace::head_of_gutter, MarkPlace::absent};
  std::vector<LeafEvidence> all;
  std::size_t number = 0;
  for (auto const& row : data::rows("bmc_leaf_sizes.tsv", 6)) {
    if (number++ % 40 != 0) continue;
    auto const i = all.size();
    LeafEvidence seen{.height = millimetres{std::atof(row[2].c_str())},
                      .width = millimetres{std::atof(row[3].c_str())}};
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

} // namespace

// The law of total probability: an answer over periods is the mean of the answers of each, weighted by how likely each
// makes what was seen. How likely that is, up to a factor common to all, follows from `none_of_these`, whose likelihood
// no period moves.
TEST_CASE("periods asked together give what they give asked apart") {
  int asked = 0;
  for (auto const& seen : copies()) {
    auto const observation = *observe(seen);
    auto const together = infer_format(observation);
    std::map<std::size_t, double> apart;
    double none = 0, all = 0;
    for (auto const& period : all_periods()) {
      auto one = all_periods();
      double priors = period.priors.none_of_these;
      for (auto const& weight : period.priors.weights) priors += weight.weight;
      for (auto& other : one)
        if (!(other.years == period.years)) other.weight = 0;
      auto const answer = infer_format(observation, {.priors = one});
      auto const none_here = period.weight * period.priors.none_of_these / priors;
      auto const all_here = none_here / answer.none_of_these;
      for (auto const& candidate : answer) apart[candidate.kind->format_number] += all_here * candidate.probability;
      none += none_here, all += all_here;
    }
    CHECK(together.none_of_these == doctest::Approx(none / all).epsilon(1e-10));
    for (auto const& candidate : together) {
      CHECK(std::abs(candidate.probability - apart[candidate.kind->format_number] / all) < 1e-10);
      ++asked;
    }
  }
  CHECK(asked > 1000);
}

TEST_CASE("a book of two chain lines is read as its leaves are by themselves") {
  for (auto seen : copies()) {
    seen.leaves = {};
    auto const with = [&](ChainLines lines) {
      seen.chain_lines = lines;
      return infer_format(*observe(seen));
    };
    auto const vertical = with(ChainLines::vertical).candidates.front(),
               horizontal = with(ChainLines::horizontal).candidates.front();
    auto const both = with(ChainLines::both);
    CHECK(both.mixed.has_value() == !(vertical.format == horizontal.format));
    if (!both.mixed) continue;
    CHECK(both.mixed->vertical.format == vertical.format);
    CHECK(both.mixed->vertical.sheet == vertical.sheet);
    CHECK(both.mixed->vertical.probability == doctest::Approx(vertical.probability).epsilon(1e-12));
    CHECK(both.mixed->horizontal.probability == doctest::Approx(horizontal.probability).epsilon(1e-12));
    for (std::size_t i = 0; i < sign_count; ++i)
      CHECK(std::abs(both.mixed->horizontal.reasons[i].weight - horizontal.reasons[i].weight) < 1e-9);
  }
}

TEST_CASE("what answers an observation does not depend on what was asked before") {
  std::vector<Inference> first;
  auto const seen = copies();
  for (auto const& one : seen) first.push_back(infer_format(*observe(one)));
  for (auto i = seen.size(); i-- > 0;) {
    auto const again = infer_format(*observe(seen[i]));
    REQUIRE(again.candidates.size() == first[i].candidates.size());
    for (std::size_t k = 0; k < again.candidates.size(); ++k) {
      CHECK(again.candidates[k].format == first[i].candidates[k].format);
      CHECK(again.candidates[k].probability == first[i].candidates[k].probability);
    }
  }
}

// Every lie and turn of every sheet taken by itself, as the model is stated: 64 cases for a gathering of three sheets.
TEST_CASE("leaves of a gathering weigh as the sum over how each sheet may lie") {
  EvidenceOfLeaves const seen{{{1, MarkPlace::gutter, ChainLines::horizontal},
                               {2, MarkPlace::absent, ChainLines::horizontal},
                               {4, MarkPlace::unknown, ChainLines::vertical},
                               {7, MarkPlace::gutter, ChainLines::unknown}}};
  constexpr auto slip = fitted_parameters.leaf_slip, marked = fitted_parameters.paper_is_marked;
  detail::Trusts trusts;
  trusts.add(0, {0.985, 0.95, 0.05});
  trusts.add(1, {0.94, 0.95, 0.4});
  trusts.add(2, {0.9, 0.5, 0.4});
  detail::LeavesLikelihood likelihood{seen, fitted_parameters};
  likelihood.ask(8, trusts);
  int asked = 0;
  auto const& schemes = scheme_facts();
  for (std::size_t number = 0; number < schemes.size(); ++number)
    for (std::size_t t = 0; t < trusts.size(); ++t) {
      double sum = 0;
      int fitting = 0;
      for (int g = 0; g < schemes[number].gatherings; ++g) {
        auto const gathering = schemes[number].gathering(g);
        auto const unit = static_cast<int>(gathering.size());
        if (unit != 8) continue;
        ++fitting;
        auto const sheets = static_cast<unsigned>(schemes[number].sheets);
        for (int paper = 0; paper < 3; ++paper) { // unmarked, one mark, two
          auto const two = trusts[t].second_mark;
          auto const share = paper == 0 ? 1 - marked : marked * (paper == 1 ? 1 - two : two);
          for (unsigned cases = 0; cases < 1U << (2 * sheets); ++cases) {
            double p = share;
            for (unsigned s = 0; s < sheets; ++s)
              p *= ((cases >> (2 * s) & 1U) != 0 ? 1 - trusts[t].chains : trusts[t].chains) / 2;
            for (auto const& one : seen) {
              if (one.leaf == 0) break;
              auto const& leaf = gathering[static_cast<std::size_t>(one.leaf - 1)];
              auto const bits = cases >> (2 * static_cast<unsigned>(leaf.sheet));
              bool const turned = (bits & 1U) != 0;
              auto const lie = bits >> 1 & 1U;
              if (one.chain_lines != ChainLines::unknown)
                p *= (leaf.chain_lines == one.chain_lines) != turned ? 1 - slip : slip;
              if (one.mark == MarkPlace::unknown) continue;
              auto there = paper == 0 ? MarkPlace::absent : leaf.watermark[lie];
              if (paper == 2 && there == MarkPlace::absent) there = leaf.countermark[lie];
              if (there == MarkPlace::absent || one.mark == MarkPlace::absent)
                p *= there == one.mark ? 1 - slip : slip;
              else
                p *= there == one.mark ? trusts[t].mark_in_place : (1 - trusts[t].mark_in_place) / 5;
            }
            sum += p;
          }
        }
      }
      auto smaller = false; // quired schemes are asked elsewhere
      for (auto const leaves : schemes[number].gathered)
        smaller = smaller || (schemes[number].sheets == 1 && leaves > 0 && leaves < 8 && 8 % leaves == 0);
      if (fitting == 0 || smaller) continue;
      CHECK(likelihood.of(number)[t] == doctest::Approx(sum / fitting).epsilon(1e-12));
      ++asked;
    }
  CHECK(asked >= 30);
}

TEST_CASE("a period weighs the sheets that can be had in its years and its place") { // as the table itself is asked
  auto const& p = fitted_parameters;
  constexpr Region places[]{Region::anywhere, Region::europe,  Region::italy,       Region::britain,
                            Region::france,   Region::germany, Region::netherlands, Region::usa};
  int with_sheets = 0;
  for (auto const place : places)
    for (int from = 1300; from <= 1980; from += 7)
      for (int const years : {0, 3, 40, 300}) {
        auto const usable = usable_for({from, from + years}, place);
        std::vector<std::pair<millimetres, millimetres>> sides; // each size once
        for (auto const& size : usable) {
          std::pair const both{size.long_side(), size.short_side()};
          if (size.is_of_sheets() && std::find(sides.begin(), sides.end(), both) == sides.end()) sides.push_back(both);
        }
        if (sides.empty()) continue; // other sheets are taken then
        ++with_sheets;
        detail::PossibleSheets sheets;
        detail::SheetGatherer{sheets, p}.take(0, When{from, from + years}, place);
        REQUIRE(sheets.count == sides.size());
        for (std::size_t i = 0; i < sheets.count; ++i) {
          CHECK(sheets.long_side[i] == sides[i].first);
          CHECK(sheets.short_side[i] == sides[i].second);
          CHECK(sheets.of_period[0].weight[i] > 0);
        }
      }
  CHECK(with_sheets > 2000);
}
