// SPDX-License-Identifier: MIT
// Where is a page; folding, imposing and reading afresh; filling a whole forme; from pages and leaves back to the
// folding.
#include <bifolium/fold.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/seen_formes.hpp>

#include "ratios.hpp"

#include <array>
#include <benchmark/benchmark.h>
#include <map>
#include <random>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

/// Pages of an octavo in an order no compiler and no predictor knows.
std::vector<int> const& pages() {
  static std::vector<int> const all = [] {
    std::mt19937 random{8};
    std::vector<int> drawn(4096);
    for (auto& page : drawn) page = 1 + static_cast<int>(random() % 16);
    return drawn;
  }();
  return all;
}
/// The answers in a plain array, as somebody who knows one format would type them in.
std::array<FormePosition, 17> const& typed_in() {
  static std::array<FormePosition, 17> const table = [] {
    std::array<FormePosition, 17> places{};
    for (int page = 1; page <= 16; ++page)
      places[static_cast<std::size_t>(page)] = impose<schemes::octavo>().place(page);
    return places;
  }();
  return table;
}

template <class Find> void find_places(benchmark::State& state, Find find) {
  for (auto _ : state)
    for (int page : pages()) benchmark::DoNotOptimize(find(page));
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(pages().size()));
}

void place_array_load(benchmark::State& state) {
  auto const* table = typed_in().data();
  benchmark::DoNotOptimize(table);
  find_places(state, [table](int page) { return table[page]; });
}
void place_known_while_compiling(benchmark::State& state) {
  find_places(state, [](int page) { return impose<schemes::octavo>().place(page); });
}
void place_known_when_run(benchmark::State& state) {
  Imposition<> const formes = impose(*fold(schemes::octavo.scheme()));
  auto const* at = &formes;
  benchmark::DoNotOptimize(at);
  find_places(state, [at](int page) { return at->place(page); });
}
void place_std_map(benchmark::State& state) {
  std::map<int, FormePosition> places;
  for (int page = 1; page <= 16; ++page) places[page] = typed_in()[static_cast<std::size_t>(page)];
  find_places(state, [&](int page) { return places.find(page)->second; });
}
BENCHMARK(place_array_load);
BENCHMARK(place_known_while_compiling);
BENCHMARK(place_known_when_run);
BENCHMARK(place_std_map);

/// A whole forme copied out, page by page; the limit is copying the table.
void forme_copied(benchmark::State& state) {
  std::array<ImposedPage, 8> forme{}, to{};
  for (int c = 0; c < 8; ++c) forme[static_cast<std::size_t>(c)] = impose<schemes::octavo>().outer(c / 4, c % 4);
  for (auto _ : state) {
    benchmark::DoNotOptimize(forme);
    to = forme;
    benchmark::DoNotOptimize(to);
  }
  state.SetItemsProcessed(state.iterations() * 8);
}
void forme_filled(benchmark::State& state) {
  constexpr auto const& formes = impose<schemes::octavo>();
  std::array<ImposedPage, 8> to{};
  for (auto _ : state) {
    auto const forme = formes.forme(Side::outer);
    std::copy(forme.begin(), forme.end(), to.begin());
    benchmark::DoNotOptimize(to);
  }
  state.SetItemsProcessed(state.iterations() * 8);
}
BENCHMARK(forme_copied);
BENCHMARK(forme_filled);

/// Folding as it is first thought of: a stack of leaves on every place of the grid, moved stack by stack.
void fold_naively(benchmark::State& state) {
  struct Lying {
    int cell;
    bool up;
  };
  for (auto _ : state) {
    std::map<std::pair<int, int>, std::vector<Lying>> stacks;
    for (int r = 0; r < 2; ++r)
      for (int c = 0; c < 4; ++c) stacks[{r, c}] = {{4 * r + c, false}};
    auto const move = [&](std::pair<int, int> from, std::pair<int, int> to) {
      auto moved = stacks[from];
      stacks.erase(from);
      for (auto i = moved.rbegin(); i != moved.rend(); ++i) stacks[to].push_back({i->cell, !i->up});
    };
    for (int r = 0; r < 2; ++r) move({r, 2}, {r, 1}), move({r, 3}, {r, 0});
    for (int c = 0; c < 2; ++c) move({0, c}, {1, c});
    move({1, 1}, {1, 0});
    benchmark::DoNotOptimize(stacks);
  }
}
void fold_afresh(benchmark::State& state, Attested attested) {
  auto const scheme = attested.scheme();
  for (auto _ : state) {
    benchmark::DoNotOptimize(&scheme);
    benchmark::DoNotOptimize(fold(scheme));
    benchmark::ClobberMemory();
  }
}
void fold_all(benchmark::State& state) {
  std::vector<Scheme> all;
  for (auto const attested : Attested::all()) all.push_back(attested.scheme());
  for (auto _ : state)
    for (auto const& scheme : all) benchmark::DoNotOptimize(fold(scheme));
  state.SetItemsProcessed(state.iterations() * Attested::count);
}
void impose_afresh(benchmark::State& state, Attested attested) {
  auto const folded = *fold(attested.scheme());
  for (auto _ : state) {
    benchmark::DoNotOptimize(&folded);
    benchmark::DoNotOptimize(impose(folded));
    benchmark::ClobberMemory();
  }
}
void read_text(benchmark::State& state, Attested attested) {
  auto const text = attested.text();
  for (auto _ : state) benchmark::DoNotOptimize(read_scheme(text));
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}
std::vector<SeenForme> formes_of(Attested attested) { return seen_formes(impose(*fold(attested.scheme()))); }
void unfold_afresh(benchmark::State& state, Attested attested) {
  auto const formes = formes_of(attested);
  for (auto _ : state) benchmark::DoNotOptimize(find_foldings(formes));
}
void unfold_all(benchmark::State& state) {
  std::vector<std::vector<SeenForme>> all;
  for (auto const attested : Attested::all()) all.push_back(formes_of(attested));
  for (auto _ : state)
    for (auto const& formes : all) benchmark::DoNotOptimize(find_foldings(formes));
}
void find_exchanged_pages(benchmark::State& state, Attested attested) {
  auto formes = formes_of(attested);
  std::swap(formes[0].pages.front().page, formes[0].pages.back().page);
  for (auto _ : state) benchmark::DoNotOptimize(find_misprints(formes));
}
void unfold_from_leaves(benchmark::State& state, char const* text) {
  auto const gatherings = *read_seen_leaves(text);
  for (auto _ : state) benchmark::DoNotOptimize(foldings_showing(gatherings));
}
constexpr char const* marks_of_octavo =
    "gathering of 8; 1 head-of-gutter vertical; 2 absent; 3 absent; 4 head-of-gutter; "
    "5 head-of-gutter; 6 absent; 7 absent; 8 head-of-gutter; 1 bolt head 4";
constexpr char const* marks_of_twelves = "gathering of 12; 1 absent horizontal; 7 fore-edge; 8 fore-edge; 11 absent; "
                                         "12 absent; 1 bolt head 4; 9 bolt head 12";
constexpr Attested hundred_twenty_eights{SchemeRow::centesimo_vicesimo_octavo_in_eights};
BENCHMARK(fold_naively);
BENCHMARK_CAPTURE(fold_afresh, octavo, schemes::octavo);
BENCHMARK_CAPTURE(fold_afresh, twelves, schemes::duodecimo);
BENCHMARK_CAPTURE(fold_afresh, hundred_twenty_eights, hundred_twenty_eights);
BENCHMARK(fold_all);
BENCHMARK_CAPTURE(impose_afresh, octavo, schemes::octavo);
BENCHMARK_CAPTURE(impose_afresh, hundred_twenty_eights, hundred_twenty_eights);
BENCHMARK_CAPTURE(read_text, octavo, schemes::octavo);
BENCHMARK_CAPTURE(read_text, hundred_twenty_eights, hundred_twenty_eights);
BENCHMARK_CAPTURE(unfold_afresh, octavo, schemes::octavo);
BENCHMARK_CAPTURE(unfold_afresh, hundred_twenty_eights, hundred_twenty_eights);
BENCHMARK(unfold_all);
BENCHMARK_CAPTURE(find_exchanged_pages, octavo, schemes::octavo);
BENCHMARK_CAPTURE(find_exchanged_pages, hundred_twenty_eights, hundred_twenty_eights);
BENCHMARK_CAPTURE(unfold_from_leaves, octavo, marks_of_octavo);
BENCHMARK_CAPTURE(unfold_from_leaves, twelves, marks_of_twelves);

} // namespace

int main(int count, char** arguments) {
  return bench::run(
      count, arguments,
      {{"where a page is, scheme known while compiling", "place_known_while_compiling", "place_array_load",
        "a load from an array in the same loop", "at most +1 ns", true},
       {"where a page is, scheme known when run", "place_known_when_run", "place_array_load",
        "a load from an array in the same loop", "at most +1 ns", true},
       {"where a page is", "place_known_when_run", "place_std_map", "std::map", ""},
       {"a page of a forme filled from its table", "forme_filled", "forme_copied", "copying the bytes",
        "at least 5 pages a nanosecond"},
       {"an octavo folded afresh", "fold_afresh/octavo", "fold_naively", "folding stack by stack in a std::map",
        "at most 0.4 µs"},
       {"a 128° folded afresh", "fold_afresh/hundred_twenty_eights", nullptr, "", "at most 5 µs"},
       {"one of all 61 schemes folded", "fold_all", nullptr, "", ""},
       {"an octavo imposed", "impose_afresh/octavo", nullptr, "", ""},
       {"the text of an octavo read", "read_text/octavo", nullptr, "", ""},
       {"an octavo unfolded", "unfold_afresh/octavo", "fold_afresh/octavo", "folding it", ""},
       {"a 128° unfolded", "unfold_afresh/hundred_twenty_eights", "fold_afresh/hundred_twenty_eights", "folding it",
        "at most 50 ms"},
       {"all 61 schemes unfolded", "unfold_all", nullptr, "", "at most 100 ms"},
       {"two pages exchanged in an octavo, found", "find_exchanged_pages/octavo", "unfold_afresh/octavo",
        "unfolding it", ""},
       {"two pages exchanged in a 128°, found", "find_exchanged_pages/hundred_twenty_eights",
        "unfold_afresh/hundred_twenty_eights", "unfolding it", ""},
       {"foldings that show the marks of 8 leaves", "unfold_from_leaves/octavo", nullptr, "", "at most 100 ms"},
       {"foldings that show the marks of 12 leaves", "unfold_from_leaves/twelves", nullptr, "", ""}});
}
