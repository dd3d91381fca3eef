// SPDX-License-Identifier: MIT
// A description examined, beside reading its fields alone: what agrees costs little more; what contradicts pays for the search.
#include <bifolium/book.hpp>

#include "ratios.hpp"

using namespace bifolium;

namespace {

FieldTexts record(bool agrees) {
  FieldTexts fields;
  fields.formula = "8°: π² A⁴ B-Z⁸ 2A⁸ 2B⁴ (−2B4)";
  fields.pagination = agrees ? "[12], 372, [2] p." : "[12], 327, [2] p.";
  fields.leaves = "193";
  fields.year = "1725";
  return fields;
}
/// Formula and extent read, and their leaves compared, as a program without this library would end.
void fields_read_alone(benchmark::State& state) {
  auto const fields = record(true);
  for (auto _ : state) {
    auto const formula = read_formula(fields.formula);
    auto const extent = read_extent(fields.pagination);
    benchmark::DoNotOptimize(2 * formula->leaves() == extent->pages());
  }
}
void record_that_agrees(benchmark::State& state) {
  auto const fields = record(true);
  for (auto _ : state) benchmark::DoNotOptimize(examine(read_description(fields)));
}
void record_that_contradicts(benchmark::State& state) {
  auto const fields = record(false);
  for (auto _ : state) benchmark::DoNotOptimize(examine(read_description(fields)));
}
void sheets_of_twelve_remnants(benchmark::State& state) {
  auto const formula = *read_formula("8°: π1 A2 B3 C-O8(±C3, ±D4) P2 Q4 R5 S6 T7 V1 X1");
  for (auto _ : state) benchmark::DoNotOptimize(sheets_of_book(formula, Format::of(8)));
}

BENCHMARK(fields_read_alone);
BENCHMARK(record_that_agrees);
BENCHMARK(record_that_contradicts);
BENCHMARK(sheets_of_twelve_remnants);

} // namespace

int main(int count, char** arguments) {
  return bench::run(count, arguments,
                    {{"a record that agrees", "record_that_agrees", "fields_read_alone", "its fields read", "100 µs"},
                     {"a record that contradicts, ten repairs", "record_that_contradicts", "fields_read_alone",
                      "its fields read", "5 ms"},
                     {"the sheets of a book with twelve remnants", "sheets_of_twelve_remnants", nullptr, "", "50 ms"}});
}
