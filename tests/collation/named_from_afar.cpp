// SPDX-License-Identifier: MIT
// A change at the end of a formula may name a gathering far to its left: the nearest with that name is meant, found here by
// going through the runs one by one. The formulas are made at random.
#include <bifolium/collation/read_formula.hpp>

#include "check.hpp"

#include <optional>
#include <random>
#include <string>
#include <string_view>
#include <vector>

using namespace bifolium;

namespace {

constexpr std::string_view letters_of_23 = "ABCDEFGHIKLMNOPQRSTVXYZ";

struct RunMade {
  int series; // 1: without a number
  std::size_t first, last;
};

std::string series_mark(int number) { return number == 2 ? "²" : number == 3 ? "³" : number == 4 ? "⁴" : ""; }

/// The nearest run that has the letter, of a series or of any (0), and its gathering in the run.
std::optional<GatheringAt> nearest(std::vector<RunMade> const& runs, int series, std::size_t letter) {
  for (auto r = runs.size(); r-- > 0;)
    if ((series == 0 || runs[r].series == series) && runs[r].first <= letter && letter <= runs[r].last)
      return GatheringAt{static_cast<std::uint32_t>(r), static_cast<std::int64_t>(letter - runs[r].first)};
  return std::nullopt;
}

} // namespace

TEST_CASE("the nearest gathering with a name is meant, however many there are") {
  std::mt19937 random{1623};
  auto const below = [&](std::size_t n) { return std::size_t{random() % n}; };
  int exact = 0, other = 0, none = 0;
  for (int trial = 0; trial < 400; ++trial) {
    auto const number = 1 + below(trial % 2 ? 20 : 150);
    auto const least = trial % 3 ? 2 : 1; // in most formulas every mark has the number of a series
    std::vector<RunMade> runs;
    std::string text;
    for (std::size_t r = 0; r < number; ++r) {
      auto const first = below(20);
      RunMade const run{least + static_cast<int>(below(3)), first, first + below(4)};
      // a run without a number that goes on where the series before it ended would be of that series
      if (run.series == 1 && !runs.empty() && runs.back().last + 1 == run.first) continue;
      runs.push_back(run);
      text.append(series_mark(run.series)).append(1, letters_of_23[run.first]);
      if (run.last > run.first) text.append("-").append(1, letters_of_23[run.last]);
      text += "⁴ ";
    }
    if (runs.empty()) continue;
    auto const letter = below(23);
    auto const series = static_cast<int>(1 + below(2));
    auto const formula = read_formula(text + "(−" + series_mark(series) + letters_of_23[letter] + "1)");
    CAPTURE(text);
    CAPTURE(series);
    CAPTURE(letters_of_23[letter]);
    auto const of_series = nearest(runs, series, letter);
    // a name without a number may leave the number of the series out
    auto const meant = of_series || series != 1 ? of_series : nearest(runs, 0, letter);
    if (!meant) {
      CHECK((!formula || formula->changes().empty()));
      ++none;
      continue;
    }
    REQUIRE(formula);
    REQUIRE(formula->changes().size() == 1);
    CHECK(formula->changes()[0].gathering() == *meant);
    ++(of_series ? exact : other);
  }
  CHECK(exact > 100);
  CHECK(other > 50);
  CHECK(none > 10);
}
