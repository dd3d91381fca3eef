// SPDX-License-Identifier: MIT
/// A formula as numbers: for each run the positions of its two ends in their series and its leaf counts. Repairs change
/// these numbers, so that no formula is copied until the ten best are written.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/merge_sort.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The order of the marks of a run.
enum class MarkOrder : std::uint8_t { letters, numbers, none };

/// A run as numbers.
struct RunShape {
  std::int64_t first{1}, last{1}; ///< positions in the series; A is 1
  std::int32_t series{};          ///< runs of one series have the same number
  MarkOrder order{};
  bool omitted{}; ///< true if its leaf count is not in the text
  bool foreign{}; ///< true if it begins with a letter that the alphabet does not have
  Cycle leaves{};

  [[nodiscard]] std::int64_t gatherings() const { return last - first + 1 + (foreign ? 1 : 0); }
  [[nodiscard]] std::int64_t leaf_total() const { return leaves.total(gatherings()); }
  /// Returns true for a run with one count.
  [[nodiscard]] bool plain() const { return leaves.size() == 1; }
  friend bool operator==(RunShape const& a, RunShape const& b) {
    return a.first == b.first && a.last == b.last && a.series == b.series && a.order == b.order && a.leaves == b.leaves;
  }
};

/// A formula as numbers.
struct FormulaShape {
  std::vector<RunShape> runs{};
  std::int32_t changed{};       ///< leaves that changes add, less those they remove
  std::int32_t changed_first{}; ///< the part of it in the first gathering
  std::int32_t letters{};       ///< number of letters of the alphabet
  Letters added{};              ///< the letters in addition to the 23

  [[nodiscard]] std::int64_t leaves() const {
    std::int64_t total = changed;
    for (auto const& run : runs) total += run.leaf_total();
    return total;
  }
  [[nodiscard]] std::int64_t gatherings() const {
    std::int64_t total = 0;
    for (auto const& run : runs) total += run.gatherings();
    return total;
  }
};

/// Returns true if the letters begin with B: its A is missing, or is not signed and not in the formula.
inline bool begins_with_b(FormulaShape const& shape) {
  return shape.runs.front().order == MarkOrder::letters && shape.runs.front().first == 2;
}

/// Returns the number of leaves that a change adds; it is negative if the change removes leaves.
inline std::int32_t leaves_added(Formula const& formula, Change const& change) {
  if (auto const* insertion = change.insertion()) return insertion->leaves;
  auto const* deletion = change.deletion();
  if (deletion == nullptr) return 0;
  return -deletion->leaves.count(formula.leaves_folded(deletion->gathering));
}

/// Returns for each run the number of its series, which is that of the first run of the series.
inline std::vector<std::int32_t> series_of_runs(Formula const& formula) {
  auto const& runs = formula.runs();
  std::vector<std::int32_t> order, series(runs.size());
  for (std::size_t r = 0; r < runs.size(); ++r) order.push_back(static_cast<std::int32_t>(r));
  auto const mark = [&](std::int32_t r) -> Signature const& { return runs[static_cast<std::size_t>(r)].first; };
  merge_sort(order, [&](std::int32_t a, std::int32_t b) { return mark(a) < mark(b); }); // a series stands together
  for (std::size_t from = 0, to = 0; from < order.size(); from = to) {
    auto first = order[from];
    for (to = from; to < order.size() && mark(order[to]).same_series_as(mark(order[from])); ++to)
      first = order[to] < first ? order[to] : first;
    for (auto i = from; i < to; ++i) series[static_cast<std::size_t>(order[i])] = first;
  }
  return series;
}

/// Returns the formula as numbers.
inline FormulaShape shape_of(Formula const& formula) {
  FormulaShape shape;
  auto const alphabet = formula.alphabet();
  shape.letters = alphabet.size();
  shape.added = formula.letters();
  auto const& runs = formula.runs();
  shape.runs.reserve(runs.size() + 2);
  auto const series = series_of_runs(formula);
  for (std::size_t r = 0; r < runs.size(); ++r) {
    auto const& run = runs[r];
    RunShape one;
    one.first = run.first.rank(alphabet);
    one.last = one.first + run.gatherings - 1;
    one.order = run.first.is_letter()              ? MarkOrder::letters
                : run.first.mark() == Mark::number ? MarkOrder::numbers
                                                   : MarkOrder::none;
    one.series = series[r];
    one.foreign = run.first.is_latin() && !alphabet.has(*run.first.letter_number());
    if (one.foreign) one.last -= 1;
    one.leaves = run.leaves;
    shape.runs.push_back(one);
  }
  for (auto const& change : formula.changes()) {
    auto const added = leaves_added(formula, change);
    shape.changed += added;
    if (change.gathering() == GatheringAt{0, 0}) shape.changed_first += added;
  }
  return shape;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
