// SPDX-License-Identifier: MIT
/// A table of ratios from one run. Times of a shared machine mean little by themselves, so each bench says which of its
/// measurements stand beside each other, and the table gives the least time of each and what one comes to in terms of
/// the other. With `--table` a bench prints that alone, as rows of Markdown; all other arguments are Google
/// Benchmark's.
#pragma once

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <initializer_list>
#include <limits>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace bench {

/// One row: our benchmark, the one beside it, and what is asked for, in words. `less` asks for the difference in place
/// of the quotient, where both share a loop.
struct Row {
  char const* what;
  char const* ours;
  char const* beside;
  char const* beside_is;
  char const* asked;
  bool less{};
};

/// Keeps the least time of each benchmark, by item where items are counted.
class Least : public benchmark::ConsoleReporter {
  std::map<std::string, double> nanoseconds_{};
  bool quiet_;

public:
  explicit Least(bool quiet) : quiet_{quiet} {}
  bool ReportContext(Context const& context) override { return quiet_ || ConsoleReporter::ReportContext(context); }
  void ReportRuns(std::vector<Run> const& runs) override {
    if (!quiet_) ConsoleReporter::ReportRuns(runs);
    for (auto const& run : runs) {
      if (run.error_occurred || run.run_type != Run::RT_Iteration) continue;
      auto const items = run.counters.find("items_per_second");
      auto const time = items != run.counters.end()
                            ? 1e9 / items->second.value
                            : run.cpu_accumulated_time * 1e9 / static_cast<double>(run.iterations);
      auto& least = nanoseconds_.try_emplace(run.run_name.str(), std::numeric_limits<double>::max()).first->second;
      least = std::min(least, time);
    }
  }
  /// Nothing when the benchmark was not run.
  [[nodiscard]] double of(char const* name) const {
    auto const found = nanoseconds_.find(name);
    return found == nanoseconds_.end() ? 0 : found->second;
  }
};

inline std::string in_words(double nanoseconds) {
  char text[40];
  if (nanoseconds < 1000)
    std::snprintf(text, sizeof text, "%.2f ns", nanoseconds);
  else if (nanoseconds < 1e6)
    std::snprintf(text, sizeof text, "%.2f µs", nanoseconds / 1e3);
  else
    std::snprintf(text, sizeof text, "%.2f ms", nanoseconds / 1e6);
  return text;
}

inline void print(Row const& row, Least const& least) {
  auto const ours = least.of(row.ours), beside = row.beside != nullptr ? least.of(row.beside) : 0;
  if (!(ours > 0)) return;
  char ratio[60] = "";
  if (beside > 0 && row.less)
    std::snprintf(ratio, sizeof ratio, "%+.2f ns", ours - beside);
  else if (beside > 0)
    std::snprintf(ratio, sizeof ratio, "%.2f", ours / beside);
  std::printf("| %s | %s | %s%s%s | %s | %s |\n", row.what, in_words(ours).c_str(), row.beside_is,
              beside > 0 ? " " : "", beside > 0 ? in_words(beside).c_str() : "", ratio, row.asked);
}

/// The main of a bench.
inline int run(int count, char** arguments, std::initializer_list<Row> rows) {
  std::vector<char*> kept(arguments, arguments + count);
  auto const table =
      std::remove_if(kept.begin(), kept.end(), [](char* one) { return std::string_view{one} == "--table"; });
  bool const quiet = table != kept.end();
  kept.erase(table, kept.end());
  int left = static_cast<int>(kept.size());
  benchmark::Initialize(&left, kept.data());
  if (benchmark::ReportUnrecognizedArguments(left, kept.data())) return 2;
  Least least{quiet};
  benchmark::RunSpecifiedBenchmarks(&least);
  for (auto const& row : rows)
    if (quiet) print(row, least);
  return 0;
}

} // namespace bench
