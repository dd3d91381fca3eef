// SPDX-License-Identifier: MIT
// A bill beside what a spreadsheet would do in floating point; the search over all plans, and how it grows with pages.
#include <bifolium/edition.hpp>

#include "ratios.hpp"

#include <cmath>
#include <vector>

using namespace bifolium;

namespace {

Edition an_edition() {
  return {.scheme = schemes::octavo,
          .pages = 340,
          .prelim_pages = 12,
          .copies = 750,
          .overs_percent = Fraction{16, 5},
          .ream = reams::of_500,
          .price_of_ream = 1200};
}

/// Six cells of a table: no range, no odd half-sheet, no check of anything.
void spreadsheet(benchmark::State& state) {
  double pages = 352, copies = 750, overs = 3.2, price = 1200;
  for (auto _ : state) {
    benchmark::DoNotOptimize(pages), benchmark::DoNotOptimize(copies), benchmark::DoNotOptimize(overs);
    double const sheets = std::ceil(pages / 16 * copies * (1 + overs / 100)), reams = std::floor(sheets / 500),
                 quires = std::floor((sheets - reams * 500) / 25), cost = std::ceil(sheets / 500 * price);
    benchmark::DoNotOptimize(sheets + reams + quires + cost + 2 * sheets / 250 + std::ceil(pages / 8));
  }
}
void bill_for_a_plan(benchmark::State& state) {
  auto const edition = an_edition();
  auto const plan = *arrange(make_up(*fold(edition.scheme.scheme())), pages_of(edition));
  for (auto _ : state) benchmark::DoNotOptimize(reckon(edition, plan));
}
void plans_in_every_scheme(benchmark::State& state) {
  std::vector<SheetMakeUp> all;
  for (int row = 0; row < Attested::count; ++row)
    all.push_back(make_up(*fold(Attested{static_cast<SchemeRow>(row)}.scheme())));
  for (auto _ : state)
    for (auto const& by : all)
      benchmark::DoNotOptimize(plans(by, {.text = state.range(0), .preliminaries = 13, .end_matter = 7}));
}
void compare_octavo_and_twelves(benchmark::State& state) {
  auto octavo = an_edition(), twelves = an_edition();
  octavo.price_of_forme = twelves.price_of_forme = 100;
  twelves.scheme = schemes::duodecimo;
  twelves.price_of_ream = 1300;
  std::vector<PrintingOption> const ways{*printing_option(octavo), *printing_option(twelves)};
  for (auto _ : state) benchmark::DoNotOptimize(compare(ways, 1, 100'000));
}

BENCHMARK(spreadsheet);
BENCHMARK(bill_for_a_plan);
BENCHMARK(plans_in_every_scheme)->Arg(10)->Arg(100)->Arg(1000)->Arg(10'000)->Arg(100'000)->Arg(1'000'000);
BENCHMARK(compare_octavo_and_twelves);

} // namespace

int main(int count, char** arguments) {
  return bench::run(
      count, arguments,
      {{"a bill for a given plan", "bill_for_a_plan", "spreadsheet", "six cells in floating point", "1 µs"},
       {"all plans of 1,000 pages in every scheme", "plans_in_every_scheme/1000", "plans_in_every_scheme/1000000",
        "of 1,000,000 pages", "10 ms"},
       {"octavo or twelves at every run to 100,000", "compare_octavo_and_twelves", nullptr, "", ""}});
}
