// SPDX-License-Identifier: MIT
/// A formula as numbers: for each run the positions of its two ends in their series and its leaf counts. Repairs change
/// these numbers, so that no formula is copied until the ten best are written.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/read_formula.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The order of the marks of a run.
enum class MarkOrder : std::uint8_t { letters, numbers, none };

/// A run as numbers.
struct RunShape {
  std::int64_t first{1}, last{1}; ///< positions in the series; A is 1
  std::int16_t series{};          ///< runs of one series have the same number
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

/// Returns the formula as numbers.
inline FormulaShape shape_of(Formula const& formula) {
  FormulaShape shape;
  auto const alphabet = formula.alphabet();
  shape.letters = alphabet.size();
  shape.added = formula.letters();
  auto const& runs = formula.runs();
  shape.runs.reserve(runs.size() + 2);
  for (std::size_t r = 0; r < runs.size(); ++r) {
    auto const& run = runs[r];
    RunShape one;
    one.first = run.first.rank(alphabet);
    one.last = one.first + run.gatherings - 1;
    one.order = run.first.is_letter()              ? MarkOrder::letters
                : run.first.mark() == Mark::number ? MarkOrder::numbers
                                                   : MarkOrder::none;
    one.series = static_cast<std::int16_t>(r);
    for (std::size_t k = 0; k < r; ++k)
      if (runs[k].first.same_series_as(run.first)) {
        one.series = shape.runs[k].series;
        break;
      }
    one.foreign = run.first.is_latin() && !alphabet.has(run.first.letter_number());
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
