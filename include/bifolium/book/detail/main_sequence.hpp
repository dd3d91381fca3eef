// SPDX-License-Identifier: MIT
/// The parts of a book as its formula shows them: preliminaries, one long sequence of letters, perhaps an appendix. The
/// part to which a gathering belongs says how many leaves it probably has.
#pragma once

#include <bifolium/book/detail/formula_shape.hpp>

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

/// Returns the run with which the main sequence begins: the run with most gatherings, or the run before it from which
/// its letters continue. A single A before B is a preliminary.
inline std::size_t main_sequence(FormulaShape const& shape) {
  std::size_t most = 0;
  for (std::size_t r = 1; r < shape.runs.size(); ++r)
    if (shape.runs[r].gatherings() > shape.runs[most].gatherings()) most = r;
  auto begin = most;
  for (auto r = most; r-- > 0;) {
    auto const &run = shape.runs[r], &next = shape.runs[begin];
    if (run.series != next.series) continue;
    bool const an_a = run.first == 1 && run.last == 1 && !(run.leaves == next.leaves);
    if (run.last + 1 != next.first || run.order != MarkOrder::letters || an_a) break;
    begin = r;
  }
  return begin;
}

/// Returns the leaf count of most gatherings of the main sequence, without its first and last if there are others.
inline int main_leaves(FormulaShape const& shape) {
  std::int64_t count[16]{};
  int best = 0;
  auto const all = shape.gatherings();
  std::int64_t index = 0;
  for (auto const& run : shape.runs) {
    auto const gatherings = run.gatherings();
    auto const terms = static_cast<std::int64_t>(run.leaves.size());
    for (std::int64_t t = 0; t < terms; ++t) {
      auto const leaves = run.leaves.term(static_cast<std::size_t>(t));
      auto times = gatherings / terms + (t < gatherings % terms ? 1 : 0);
      if (all > 2 && index == 0 && t == 0) --times;
      if (all > 2 && index + gatherings == all && t == (gatherings - 1) % terms) --times;
      count[leaves < 15 ? leaves : 15] += times;
    }
    index += gatherings;
  }
  for (int i = 1; i < 16; ++i)
    if (count[i] >= count[best] && count[i] > 0) best = i; // of two equal counts the larger
  return best == 0 ? 8 : best;
}

/// Returns the leaves of the first gathering.
inline int first_leaves(FormulaShape const& shape) { return shape.runs.front().leaves.at(0); }
/// Returns the leaves of the last gathering.
inline int last_leaves(FormulaShape const& shape) {
  auto const& last = shape.runs.back();
  return last.leaves.at(last.gatherings() - 1);
}

/// Calls `act(place, leaves, times)` for all gatherings. For a formula of one gathering it makes no call.
template <class Act> void each_gathering(FormulaShape const& shape, Act act) {
  auto const all = shape.gatherings();
  if (all < 2) return;
  auto const main = shape.runs[main_sequence(shape)].series;
  std::int64_t index = 0;
  for (auto const& run : shape.runs) {
    auto const count = run.gatherings();
    auto const inside = run.series == main ? GatheringPlace::middle : GatheringPlace::aside;
    std::int64_t from = 0, to = count;
    if (index == 0) act(GatheringPlace::first, run.leaves.at(from++), std::int64_t{1});
    if (index + count == all && to > from) act(GatheringPlace::last, run.leaves.at(--to), std::int64_t{1});
    if (run.plain() && to > from)
      act(inside, run.leaves.at(from), to - from);
    else
      for (auto i = from; i < to && i < from + 16; ++i) act(inside, run.leaves.at(i), std::int64_t{1});
    index += count;
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
  for (std::size_t r = 0; r < shape.runs.size(); ++r) {
    if (reached == before && r == main && r > 0) return NumbersBegin::with_the_text;
    auto const& run = shape.runs[r];
    auto const whole = 2 * run.leaf_total();
    if (reached + whole > before) {
      for (std::int64_t i = 0; i < run.gatherings() && reached < before; ++i) {
        if (run.plain()) {
          auto const step = 2 * run.leaves.at(0);
          return (before - reached) % step == 0 ? NumbersBegin::with_a_gathering : NumbersBegin::inside_a_gathering;
        }
        reached += 2 * run.leaves.at(i);
      }
      return reached == before && before > 0 ? NumbersBegin::with_a_gathering : NumbersBegin::inside_a_gathering;
    }
    reached += whole;
  }
  return NumbersBegin::inside_a_gathering;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
