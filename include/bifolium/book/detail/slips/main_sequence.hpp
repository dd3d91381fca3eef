// SPDX-License-Identifier: MIT
/// The parts of a book as its formula shows them: preliminaries, one long sequence of letters, perhaps an appendix. The
/// part to which a gathering belongs says how many leaves it probably has.
#pragma once

#include <bifolium/book/detail/slips/formula_shape.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The place of a gathering in the book.
enum class GatheringPlace : std::uint8_t {
  first,
  middle, ///< in the main sequence
  last,
  aside ///< in another series: preliminaries after the first gathering, or an appendix
};

/// Returns the gathering after `at` in its series, or no value if the letters do not go on. Other series may stand
/// between.
inline std::optional<GatheringAt> next_in_series(FormulaShape const& shape, GatheringAt at) {
  auto const& run = shape.runs[at.run];
  if (at.index + 1 < run.gatherings()) return GatheringAt{at.run, at.index + 1};
  for (auto r = at.run + 1; r < shape.runs.size(); ++r)
    if (shape.runs[r].series == run.series)
      return shape.runs[r].first == run.last + 1 ? std::optional{GatheringAt{r, 0}} : std::nullopt;
  return std::nullopt;
}

/// Returns the gathering with which the main sequence begins. The sequence is the longest row of gatherings that follow
/// one another in one series, with what comes before it in the series. It begins after A if A is a preliminary: its
/// leaf count is neither that of B nor that of C. How the row is divided into runs makes no difference.
inline GatheringAt main_sequence(FormulaShape const& shape) {
  auto const& runs = shape.runs;
  std::uint32_t begin = 0;
  std::int64_t most = 0;
  for (std::uint32_t r = 0; r < runs.size();) {
    auto const from = r;
    auto gatherings = runs[r].gatherings();
    while (++r < runs.size() && runs[r].series == runs[from].series && runs[r].first == runs[r - 1].last + 1)
      gatherings += runs[r].gatherings();
    if (gatherings > most) most = gatherings, begin = from;
  }
  for (auto r = begin; r-- > 0;) {
    if (runs[r].series != runs[begin].series) continue;
    if (runs[r].last + 1 != runs[begin].first) break;
    begin = r;
  }
  GatheringAt const at{begin, 0};
  if (runs[begin].order != MarkOrder::letters || runs[begin].first != 1) return at;
  auto const leaves = [&](GatheringAt of) { return runs[of.run].leaves.at(of.index); };
  auto const b = next_in_series(shape, at);
  if (!b || leaves(*b) == leaves(at)) return at;
  auto const c = next_in_series(shape, *b);
  return c && leaves(*c) == leaves(at) ? at : *b;
}
/// Returns true if gatherings come before the main sequence.
inline bool has_preliminaries(FormulaShape const& shape) { return main_sequence(shape) != GatheringAt{}; }

/// Returns how many gatherings from `from` to before `to` have the leaf count `term` of their run.
inline std::int64_t gatherings_of_term(RunShape const& run, std::size_t term, std::int64_t from, std::int64_t to) {
  auto const terms = static_cast<std::int64_t>(run.leaves.size()), at = static_cast<std::int64_t>(term);
  auto const before = [&](std::int64_t end) { return end > at ? (end - at - 1) / terms + 1 : 0; };
  return to > from ? before(to) - before(from) : 0;
}

/// Returns the leaf count of most gatherings of the book, without its first and last if there are others.
inline int main_leaves(FormulaShape const& shape) {
  std::vector<std::int64_t> count(16); // by number of leaves
  std::size_t best = 0;
  auto const all = shape.gatherings();
  std::int64_t index = 0;
  for (auto const& run : shape.runs) {
    auto const gatherings = run.gatherings();
    std::int64_t const from = all > 2 && index == 0 ? 1 : 0;
    std::int64_t const to = all > 2 && index + gatherings == all ? gatherings - 1 : gatherings;
    for (std::size_t t = 0; t < run.leaves.size(); ++t) {
      auto const leaves = static_cast<std::size_t>(run.leaves.term(t));
      if (leaves >= count.size()) count.resize(leaves + 1);
      count[leaves] += gatherings_of_term(run, t, from, to);
    }
    index += gatherings;
  }
  for (std::size_t i = 1; i < count.size(); ++i)
    if (count[i] >= count[best] && count[i] > 0) best = i; // of two equal counts the larger
  return best == 0 ? 8 : static_cast<int>(best);
}

/// Returns the leaves of the first gathering.
inline int first_leaves(FormulaShape const& shape) { return shape.runs.front().leaves.at(0); }
/// Returns the leaves of the last gathering, or of one before it. Precondition: the formula has so many gatherings.
inline int last_leaves(FormulaShape const& shape, std::int64_t before = 0) {
  auto run = shape.runs.size() - 1;
  for (; before >= shape.runs[run].gatherings(); --run) before -= shape.runs[run].gatherings();
  return shape.runs[run].leaves.at(shape.runs[run].gatherings() - 1 - before);
}

/// A first gathering that is smaller than most, and the last gathering: A² and K² in a book of fours are often one
/// sheet.
struct UnequalEnds {
  int missing{};    ///< leaves that the first gathering lacks of a usual one
  bool completed{}; ///< true if the last gathering has as many
};
/// Returns the two ends, or no value if the first gathering is not smaller than `main` or nothing is between them.
inline std::optional<UnequalEnds> unequal_ends(FormulaShape const& shape, int main) {
  auto const missing = main - first_leaves(shape);
  if (shape.gatherings() < 3 || missing <= 0) return std::nullopt;
  return UnequalEnds{missing, last_leaves(shape) == missing};
}

/// Calls `act(place, leaves, stretches, gatherings)` until all gatherings are told. A stretch is gatherings of one leaf
/// count that follow one another in one series, so it does not depend on the runs in which they are written. The calls
/// are in no particular order. For a formula of one gathering it makes no call.
template <class Act> void each_stretch(FormulaShape const& shape, Act act) {
  auto const all = shape.gatherings();
  if (all < 2) return;
  auto const main = shape.runs[main_sequence(shape).run].series;
  act(GatheringPlace::first, first_leaves(shape), std::int64_t{1}, std::int64_t{1});
  act(GatheringPlace::last, last_leaves(shape), std::int64_t{1}, std::int64_t{1});
  std::int64_t index = 0;
  int before = 0; // leaves and series of the gathering before; none after the first gathering
  std::int32_t series_before = -1;
  for (auto const& run : shape.runs) {
    auto const count = run.gatherings();
    std::int64_t const from = index == 0 ? 1 : 0, to = index + count == all ? count - 1 : count;
    index += count;
    if (from >= to) continue;
    auto const place = run.series == main ? GatheringPlace::middle : GatheringPlace::aside;
    auto const terms = run.leaves.size();
    for (std::size_t t = 0; t < terms; ++t) {
      auto const gatherings = gatherings_of_term(run, t, from, to);
      if (gatherings == 0) continue;
      auto const leaves = run.leaves.term(t);
      bool const other_before = leaves != run.leaves.term((t + terms - 1) % terms);
      auto stretches = other_before ? gatherings_of_term(run, t, from + 1, to) : 0;
      if (from % static_cast<std::int64_t>(terms) == static_cast<std::int64_t>(t) &&
          (run.series != series_before || leaves != before))
        ++stretches;
      act(place, leaves, stretches, gatherings);
    }
    before = run.leaves.at(to - 1), series_before = run.series;
  }
}

/// Columns and rows of the tables of counts.
constexpr std::size_t book_row(int main) {
  return main == 2 ? 0U : main == 4 ? 1U : main == 6 ? 2U : main == 8 ? 3U : main == 10 ? 4U : main == 12 ? 5U : 6U;
}
constexpr std::size_t size_column(int leaves) {
  return leaves >= 1 && leaves <= 8 ? static_cast<std::size_t>(leaves - 1)
         : leaves == 10             ? 8U
         : leaves == 12             ? 9U
                                    : 10U;
}

/// The place of the first page with an arabic number, if pages come before it.
enum class NumbersBegin : std::uint8_t {
  with_the_text, ///< with the main sequence
  with_a_gathering,
  inside_a_gathering,
  nothing_before ///< with the first page of the book, or the numbers are not arabic
};

/// Returns the number of pages before the first run of arabic numbers, or no value if there is no such run or no page
/// before it.
inline std::optional<std::int64_t> pages_before_numbers(std::vector<std::int64_t> const& counts,
                                                        std::size_t first_arabic) {
  if (first_arabic == 0 || first_arabic >= counts.size()) return std::nullopt;
  std::int64_t before = 0;
  for (std::size_t i = 0; i < first_arabic; ++i) before += counts[i];
  return before;
}

/// Returns the place of a page that has `before` pages before it.
inline NumbersBegin numbers_begin(FormulaShape const& shape, std::int64_t before) {
  auto const main = main_sequence(shape);
  std::int64_t reached = 2 * (shape.changed_first < 0 ? shape.changed_first : 0);
  for (std::uint32_t r = 0; r < shape.runs.size(); ++r) {
    auto const& run = shape.runs[r];
    if (r == main.run && main != GatheringAt{} && reached + 2 * run.leaves.total(main.index) == before)
      return NumbersBegin::with_the_text;
    auto const whole = 2 * run.leaf_total();
    if (reached + whole > before) {
      auto const cycle = 2 * run.leaves.total(static_cast<std::int64_t>(run.leaves.size()));
      if (before > reached) reached += (before - reached) / cycle * cycle;
      for (std::int64_t i = 0; reached < before; ++i) reached += 2 * run.leaves.at(i);
      return reached == before && before > 0 ? NumbersBegin::with_a_gathering : NumbersBegin::inside_a_gathering;
    }
    reached += whole;
  }
  return NumbersBegin::inside_a_gathering;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
