// SPDX-License-Identifier: MIT
/// What it costs to ask one leaf for its format: all kinds of leaf on all sheets of its place and time, reasons and
/// what to look at next included. Beside it, in the same run, the same question asked by brute force (every scheme on
/// every sheet, nothing grouped, size and chain lines and mark alone, no reasons) and by the two height thresholds
/// people use instead. Then a table of rows, text to answer, on one thread and on two, and the part of it that is
/// reading text.
#include <bifolium/evidence.hpp>
#include <bifolium/explain.hpp>

#include "ratios.hpp"
#include "support/answers.hpp"
#include "support/observed.hpp"
#include "support/tsv.hpp"

#include <algorithm>
#include <array>
#include <benchmark/benchmark.h>
#include <cmath>
#include <cstddef>
#include <random>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

using namespace bifolium;

namespace {

/// The leaf of the README, as much of its time and place told as the question allows.
enum Known : std::int64_t { placed, dated, neither, incunable, typeset, every_sign, both_ways };
Observation leaf_with(std::int64_t known) {
  LeafEvidence seen{.height = 188_mm,
                    .width = 114_mm,
                    .chain_lines = ChainLines::vertical,
                    .watermark = MarkPlace::head_of_gutter,
                    .gathering_leaves = 8};
  if (known == placed || known == dated) seen.year = 1725;
  if (known == placed) seen.place = Region::britain;
  if (known == incunable) seen.year = 1490;
  if (known == typeset || known == every_sign || known == both_ways) seen.type_height = 152_mm;
  if (known == every_sign || known == both_ways) {
    seen.head = EdgeSeen::bolt;
    seen.fore_edge = EdgeSeen::deckle;
    seen.point_hole = HolePlace::fore_edge;
  }
  // the mark on leaves 2 and 7 of eight; chain lines of the leaves, or of the book, which then is read three ways
  auto const chains = known == every_sign ? ChainLines::vertical : ChainLines::unknown;
  if (known == every_sign || known == both_ways)
    seen.leaves = {{{1, MarkPlace::absent, chains},
                    {2, MarkPlace::head_of_gutter, chains},
                    {3, MarkPlace::absent, chains},
                    {7, MarkPlace::head_of_gutter, ChainLines::unknown}}};
  if (known == both_ways) seen.chain_lines = ChainLines::both;
  return *observe(seen);
}
char const* label(std::int64_t known) {
  constexpr char const* labels[]{"dated and placed",
                                 "dated",
                                 "nothing known",
                                 "before 1501",
                                 "nothing known, type page measured",
                                 "nothing known, every sign",
                                 "nothing known, every sign, chain lines both ways"};
  return labels[known];
}
SheetSizes sheets_for(LeafEvidence const& seen) {
  auto const when = seen.year.value_or(YearRange{1500, 1850});
  return usable_for(when, seen.place);
}

void one_leaf(benchmark::State& state) {
  auto const observation = leaf_with(state.range(0));
  for (auto _ : state) benchmark::DoNotOptimize(infer_format(observation));
  state.SetLabel(label(state.range(0)));
}
BENCHMARK(one_leaf)->DenseRange(placed, both_ways);

/// What a scheme's leaves show, looked at beforehand so that folding is not measured.
struct SchemeSeen {
  Format format;
  SheetLine lay;
  ChainLines chain_lines;
  std::array<double, 8> marks{};
};
std::vector<SchemeSeen> const& all_schemes() {
  static auto const schemes = [] {
    std::vector<SchemeSeen> all;
    for (auto const& facts : scheme_facts()) {
      SchemeSeen one{facts.format, facts.lay, facts.leaves[0].chain_lines, {}};
      double leaves = 0;
      for (auto const& leaf : facts.leaves)
        for (auto place : leaf.watermark) one.marks[static_cast<std::size_t>(place)] += 1, leaves += 1;
      for (auto& share : one.marks) share /= leaves;
      all.push_back(one);
    }
    return all;
  }();
  return schemes;
}

/// Every scheme on every sheet, one normal density for each side.
void brute_force(benchmark::State& state) {
  auto const observation = leaf_with(state.range(0));
  auto const& schemes = all_schemes();
  for (auto _ : state) {
    auto const& seen = observation.seen();
    std::array<double, 129> weight{};
    for (auto const& scheme : schemes)
      for (auto const& size : sheets_for(seen)) {
        auto const uncut = leaf_size(scheme.lay, size.sheet());
        auto const height = std::log(*seen.height / uncut.height) + 0.085;
        auto const width = std::log(*seen.width / uncut.width) + 0.085;
        auto likelihood = std::exp(-(height * height + width * width) / (2 * 0.0042));
        likelihood *= scheme.chain_lines == seen.chain_lines ? 0.985 : 0.015;
        likelihood *= 0.02 + 0.95 * scheme.marks[static_cast<std::size_t>(seen.watermark)];
        weight[static_cast<std::size_t>(scheme.format.leaves_to_sheet().value_or(0))] += likelihood;
      }
    benchmark::DoNotOptimize(std::max_element(weight.begin(), weight.end()));
  }
  state.SetLabel(label(state.range(0)));
}
BENCHMARK(brute_force)->DenseRange(placed, neither);

/// Folio above 250 mm, quarto above 190, octavo below, turned by the chain lines: what is asked without a library.
void if_else_chain(benchmark::State& state) {
  auto const observation = leaf_with(placed);
  for (auto _ : state) {
    auto const& seen = observation.seen();
    auto const height = seen.height ? seen.height->count() : 0;
    bool const across = seen.chain_lines == ChainLines::horizontal;
    int format = 0;
    if (height > 250)
      format = across ? 4 : 2;
    else if (height > 190)
      format = across ? 4 : 8;
    else if (height > 130)
      format = across ? 12 : 8;
    else
      format = across ? 16 : 18;
    benchmark::DoNotOptimize(format);
  }
}
BENCHMARK(if_else_chain);

/// A table as the filter `name_format` reads it: constructed, all sizes, years, places and chain lines in turn.
std::vector<std::string> const& table() {
  static auto const rows = [] {
    constexpr char const *chains[]{"vertical", "horizontal", ""}, *places[]{"Paris", "London", "Venice", ""};
    std::vector<std::string> all;
    for (std::size_t i = 0; i < 4096; ++i) {
      auto const height = 100 + i * 7 % 320;
      auto row = std::to_string(height).append("\t").append(std::to_string(height * 2 / 3 + i % 9)).append("\t");
      row.append(std::to_string(1470 + i * 11 % 380)).append("\t").append(chains[i % 3]).append("\t");
      all.push_back(row.append(places[i % 4]));
    }
    return all;
  }();
  return rows;
}
support::Header const& header() {
  static support::Header const names{"height_mm\twidth_mm\tyear\tchain_lines\tplace"};
  return names;
}
Expected<Observation> read_row(std::string const& row) {
  support::Wrong wrong, doubts;
  auto const cells = support::split(row);
  return observe(support::read_seen([&](std::string_view name) { return header().cell(cells, name); }, wrong, doubts));
}

void rows_answered(benchmark::State& state) {
  auto const& rows = table();
  auto const threads = static_cast<std::size_t>(state.range(0));
  benchmark::DoNotOptimize(leaf_shapes().size()); // folded before the clock runs
  for (auto _ : state) {
    std::vector<std::thread> workers;
    for (std::size_t t = 0; t < threads; ++t)
      workers.emplace_back([&rows, t, threads] {
        for (auto i = rows.size() * t / threads; i < rows.size() * (t + 1) / threads; ++i) {
          auto const observation = read_row(rows[i]);
          benchmark::DoNotOptimize(infer_format(*observation));
        }
      });
    for (auto& worker : workers) worker.join();
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(rows.size()));
  state.SetLabel(threads == 1 ? "one thread" : "two threads");
}
BENCHMARK(rows_answered)->Arg(1)->Arg(2)->MeasureProcessCPUTime()->Unit(benchmark::kMillisecond);

/// The same rows read and checked and not asked: its time over that of `rows_answered/1` is the share of reading text.
void rows_read(benchmark::State& state) {
  auto const& rows = table();
  for (auto _ : state)
    for (auto const& row : rows) benchmark::DoNotOptimize(read_row(row));
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(rows.size()));
}
BENCHMARK(rows_read)->Unit(benchmark::kMillisecond);

/// A library's catalogue, made up: heights in whole centimetres, as its rules want them, a year and a place. So the
/// same is asked of many books: of a million rows one in seventeen asks something new.
std::string const& catalogue() {
  static auto const text = [] {
    constexpr char const* places[]{"Paris", "London", "Venice", "Leipzig", "Antwerp", ""};
    std::mt19937 draw{1755};
    std::discrete_distribution<std::size_t> format{10, 25, 40, 18, 7};
    std::normal_distribution<double> spread, year{1700, 80};
    std::string all = "key\theight_mm\tyear\tplace\ttitle\n";
    for (int i = 0; i < 1'000'000; ++i) {
      constexpr double heights[]{32, 22, 18, 15, 11};
      auto const height = heights[format(draw)] * (1 + 0.08 * spread(draw));
      all.append(std::to_string(i)).append("\t").append(std::to_string(static_cast<int>(height + 0.5) * 10));
      all.append("\t").append(std::to_string(std::clamp(static_cast<int>(year(draw)), 1470, 1850)));
      all.append("\t").append(places[draw() % 6]).append("\tThe title of a book\n");
    }
    return all;
  }();
  return text;
}

/// As the filter `name_format` goes about it.
void catalogue_named(benchmark::State& state) {
  benchmark::DoNotOptimize(leaf_shapes().size());
  for (auto _ : state) {
    support::TextSource source{catalogue()};
    support::Lines lines{source};
    std::ostringstream out;
    support::Header const names{support::header_line(lines)};
    support::Answers answers{
        names, {"height_mm", "year", "place"}, static_cast<std::size_t>(state.range(0)), [](auto const& question) {
          auto wrong = question.wrong();
          support::Wrong doubts;
          auto const observation =
              observe(support::read_seen([&](std::string_view name) { return question.cell(name); }, wrong, doubts));
          auto const inference = infer_format(*observation);
          return format_statement(inference).append("\t").append(why(inference));
        }};
    answers.write(lines, out);
    benchmark::DoNotOptimize(out.view().size());
  }
  state.SetItemsProcessed(state.iterations() * 1'000'000);
}
BENCHMARK(catalogue_named)->Arg(1)->Arg(2)->MeasureProcessCPUTime()->UseRealTime()->Unit(benchmark::kMillisecond);

/// The same rows read, checked and written out again, and not asked.
void catalogue_read(benchmark::State& state) {
  for (auto _ : state) {
    support::TextSource source{catalogue()};
    support::Lines lines{source};
    std::ostringstream out;
    support::Header const names{support::header_line(lines)};
    while (support::next_row(lines, names)) {
      auto const cells = names.cells(lines.text());
      support::Wrong wrong, doubts;
      wrong.add_line(lines, cells, names.size());
      benchmark::DoNotOptimize(
          observe(support::read_seen([&](std::string_view name) { return names.cell(cells, name); }, wrong, doubts)));
      out << support::fitted(cells, names.size()) << '\n';
    }
    benchmark::DoNotOptimize(out.view().size());
  }
  state.SetItemsProcessed(state.iterations() * 1'000'000);
}
BENCHMARK(catalogue_read)->UseRealTime()->Unit(benchmark::kMillisecond);

/// The sheets behind one leaf, for every kind of leaf.
void leaf_to_sheets(benchmark::State& state) {
  auto const sizes = usable_for({1725, 1725}, Region::britain);
  for (auto _ : state)
    benchmark::DoNotOptimize(
        leaf_origins({188_mm, 114_mm}, sizes, loss_limits(LeafState::trimmed), ChainLines::vertical));
}
BENCHMARK(leaf_to_sheets);

} // namespace

int main(int count, char** arguments) {
  return bench::run(
      count, arguments,
      {{"a leaf named, dated and placed, reasons included", "one_leaf/0", "brute_force/0",
        "every scheme on every sheet, no reasons", "at most 3 µs"},
       {"a leaf named, dated", "one_leaf/1", "brute_force/1", "the same", "at most 6 µs"},
       {"a leaf named, nothing known", "one_leaf/2", "brute_force/2", "the same", "at most 6 µs"},
       {"a leaf named, nothing known, type page measured", "one_leaf/4", nullptr, "", "at most 6 µs"},
       {"a leaf named, nothing known, every sign", "one_leaf/5", nullptr, "", "at most 6 µs"},
       {"the same, chain lines both ways, ranked three times", "one_leaf/6", nullptr, "", ""},
       {"a leaf named, before 1501", "one_leaf/3", "if_else_chain", "two height thresholds and the chain lines", ""},
       {"a row of a table, text to answer, one thread", "rows_answered/1/process_time", "rows_read",
        "reading and checking the row alone", ""},
       {"a row, two threads, processor time of both", "rows_answered/2/process_time", "rows_answered/1/process_time",
        "one thread", "1"},
       {"a row of a library's catalogue, text to answer", "catalogue_named/1/process_time/real_time",
        "catalogue_read/real_time", "reading, checking and writing the row alone", "at most 2"},
       {"the same on two threads, by the clock", "catalogue_named/2/process_time/real_time", "catalogue_read/real_time",
        "reading, checking and writing the row alone", "at most 2"},
       {"the sheets behind a leaf, for all kinds of leaf", "leaf_to_sheets", nullptr, "", ""}});
}
