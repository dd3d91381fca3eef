// SPDX-License-Identifier: MIT
// A description examined, beside reading its fields alone: what agrees costs little more; what contradicts pays for the
// search.
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
/// Forty runs of gatherings whose counts change from run to run, and no two fields that agree.
void long_record_that_contradicts(benchmark::State& state) {
  std::string formula = "8°: ";
  for (int run = 0; run < 40; ++run) {
    if (run >= 23) formula += '2';
    formula += "ABCDEFGHIKLMNOPQRSTVXYZ"[run % 23];
    formula.append(raised(run % 3 == 0 ? 8 : run % 3 == 1 ? 4 : 6).view()) += ' ';
  }
  FieldTexts fields;
  fields.formula = formula, fields.pagination = "10, [5], 12, [4], 14, [6], 16, [5], 18, [4], 20, 361 p.";
  fields.leaves = "241";
  for (auto _ : state) benchmark::DoNotOptimize(examine(read_description(fields)));
}
/// Two books with twelve remnants: of many sizes, and cancels that are alike for the most part.
constexpr auto many_sizes = "8°: π1 A2 B3 C-O8(±C3, ±D4) P2 Q4 R5 S6 T7 V1 X1";
constexpr auto cancels = "8°: A4 B-O8(±C3, ±D4, ±E5, ±F2, ±G1, ±H7, ±I3, ±K2) P2 χ1 2χ1";

/// Remnants put on sheets of eight leaves one by one in all ways, and only counted.
std::int64_t counted_one_by_one(SheetsOfBook const& book, std::size_t unit, std::vector<int>& sheets) {
  if (unit == book.units.size()) return 1;
  std::int64_t count = 0;
  auto const leaves = book.units[unit].leaves;
  for (auto& sheet : sheets)
    if (sheet + leaves <= 8) {
      sheet += leaves;
      count += counted_one_by_one(book, unit + 1, sheets);
      sheet -= leaves;
    }
  sheets.push_back(leaves);
  count += counted_one_by_one(book, unit + 1, sheets);
  sheets.pop_back();
  return count;
}
void one_by_one(benchmark::State& state, char const* formula) {
  auto const book = *sheets_of_book(*read_formula(formula), Format::of(8));
  std::vector<int> sheets;
  sheets.reserve(book.units.size());
  if (book.units.size() != 12 || counted_one_by_one(book, 0, sheets) != book.groupings)
    return state.SkipWithError("the two do not count the same");
  for (auto _ : state) benchmark::DoNotOptimize(counted_one_by_one(book, 0, sheets));
}
void sheets(benchmark::State& state, char const* text) {
  auto const formula = *read_formula(text);
  for (auto _ : state) benchmark::DoNotOptimize(sheets_of_book(formula, Format::of(8)));
}

BENCHMARK(fields_read_alone);
BENCHMARK(record_that_agrees);
BENCHMARK(record_that_contradicts);
BENCHMARK(long_record_that_contradicts);
BENCHMARK_CAPTURE(one_by_one, many_sizes, many_sizes);
BENCHMARK_CAPTURE(sheets, many_sizes, many_sizes);
BENCHMARK_CAPTURE(one_by_one, cancels, cancels);
BENCHMARK_CAPTURE(sheets, cancels, cancels);

} // namespace

int main(int count, char** arguments) {
  return bench::run(count, arguments,
                    {{"a record that agrees", "record_that_agrees", "fields_read_alone", "its fields read", "100 µs"},
                     {"a record that contradicts, ten repairs", "record_that_contradicts", "fields_read_alone",
                      "its fields read", "5 ms"},
                     {"a formula of forty runs that contradicts twice", "long_record_that_contradicts",
                      "fields_read_alone", "a short record's fields read", "5 ms"},
                     {"the sheets of a book, twelve remnants of many sizes", "sheets/many_sizes",
                      "one_by_one/many_sizes", "all ways counted one by one", "50 ms"},
                     {"the sheets of a book, twelve remnants with eight cancels", "sheets/cancels",
                      "one_by_one/cancels", "all ways counted one by one", "50 ms"}});
}
