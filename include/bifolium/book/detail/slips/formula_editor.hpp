// SPDX-License-Identifier: MIT
/// An edit of a formula, and the formula after it. An edit is a few numbers, so that it can be applied to a formula
/// that another edit has already changed.
#pragma once

#include <bifolium/book/detail/slips/formula_shape.hpp>
#include <bifolium/book/field.hpp>
#include <bifolium/book/slip_kind.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// An edit of a formula, with the logarithm of the probability that its slip was made, given the kind of slip.
struct FormulaEdit {
  /// The kind of edit. Several kinds of slip can have one, and one kind can have several.
  enum class What : std::uint8_t {
    none,
    leaves,         ///< term `b` of the counts of run `run` becomes `a`
    supply,         ///< the missing count of the run is `a`
    supply_all,     ///< all missing counts are `a`
    supply_next,    ///< a missing count is that of the next run
    last,           ///< the last mark of the run moves by `a`
    first,          ///< the first mark moves by `a`
    shift,          ///< the last mark of the run moves by `a`, and the following runs of the series move with it
    insert_between, ///< a gathering of `a` leaves for the letters skipped after the run
    append,         ///< one more gathering at the end, of `a` leaves
    prepend,        ///< a gathering of `a` leaves before the first run
    second,         ///< a gathering of `a` leaves after the first run
    remove,         ///< the run is removed
    change,         ///< `a` leaves added by a change in the last gathering, or in the first if `b` is 1
    drop_change,    ///< parenthesis `run` counts for zero, or for half if `b` is 1; it had added `a` leaves
    alphabet        ///< other letters; the shape is given
  };
  SlipKind kind{};
  What what{};
  std::int16_t run{};
  std::int16_t b{};
  std::int32_t a{};
  double weight{};
};

/// Carries out one edit of a formula. Each function returns false if the edit is not possible.
class FormulaEditor {
  using What = FormulaEdit::What;
  FormulaShape& shape_;
  FormulaEdit const& edit_;
  std::size_t run_;

  [[nodiscard]] auto place(std::size_t i) const { return shape_.runs.begin() + static_cast<std::ptrdiff_t>(i); }
  /// Returns a run like another with other letters and the edited number of leaves.
  [[nodiscard]] RunShape made(RunShape run, std::int64_t first, std::int64_t last) const {
    run.first = first, run.last = last;
    run.omitted = run.foreign = false;
    run.leaves = Cycle{edit_.a};
    return run;
  }
  void change_one_term() const {
    auto const old = shape_.runs[run_].leaves;
    shape_.runs[run_].leaves = {};
    for (std::size_t t = 0; t < old.size(); ++t)
      shape_.runs[run_].leaves.push(static_cast<int>(t) == edit_.b ? edit_.a : old.term(t));
  }
  /// Gives every run without a leaf count that of the run after it.
  [[nodiscard]] bool supply_next() const {
    for (auto i = shape_.runs.size(); i-- > 0;)
      if (shape_.runs[i].omitted) {
        if (i + 1 == shape_.runs.size()) return false;
        shape_.runs[i].leaves = shape_.runs[i + 1].leaves;
      }
    return true;
  }
  /// Moves the end of the run, and all later runs of its series with it.
  void shift() const {
    shape_.runs[run_].last += edit_.a;
    for (auto i = run_ + 1; i < shape_.runs.size() && shape_.runs[i].series == shape_.runs[run_].series; ++i)
      shape_.runs[i].first += edit_.a, shape_.runs[i].last += edit_.a;
  }
  [[nodiscard]] bool insert_between() const {
    if (run_ + 1 >= shape_.runs.size()) return false;
    auto const run = made(shape_.runs[run_], shape_.runs[run_].last + 1, shape_.runs[run_ + 1].first - 1);
    if (run.last < run.first) return false;
    shape_.runs.insert(place(run_ + 1), run);
    return true;
  }
  void append() const {
    auto const& last = shape_.runs.back();
    shape_.runs.push_back(made(last, last.last + 1, last.last + 1));
  }
  /// Adds preliminaries: in front, where they are an A if the book begins with B, or after the first run.
  void add_preliminaries(bool in_front) const {
    RunShape run;
    run.series = -1;
    run.order = MarkOrder::none;
    run.leaves = Cycle{edit_.a};
    if (in_front && begins_with_b(shape_)) run.series = shape_.runs[0].series, run.order = MarkOrder::letters;
    shape_.runs.insert(place(in_front ? 0 : 1), run);
  }
  [[nodiscard]] bool remove() const {
    if (shape_.runs.size() < 2) return false;
    shape_.runs.erase(place(run_));
    return true;
  }
  void change() const {
    shape_.changed += edit_.a;
    if (edit_.b == 1) shape_.changed_first += edit_.a;
  }
  void drop_change() const {
    auto const leaves = edit_.b == 1 ? edit_.a / 2 : edit_.a;
    shape_.changed -= leaves;
    if (shape_.changed_first != 0) shape_.changed_first -= leaves;
  }
  /// An edit of leaf counts.
  [[nodiscard]] bool change_leaves() const {
    switch (edit_.what) {
    case What::leaves:
      return change_one_term(), true;
    case What::supply:
      return shape_.runs[run_].leaves = Cycle{edit_.a}, true;
    case What::supply_all:
      for (auto& run : shape_.runs)
        if (run.omitted) run.leaves = Cycle{edit_.a};
      return true;
    default:
      return supply_next();
    }
  }

public:
  FormulaEditor(FormulaShape& shape, FormulaEdit const& edit)
      : shape_{shape}, edit_{edit}, run_{static_cast<std::size_t>(edit.run)} {}

  [[nodiscard]] bool apply() const {
    switch (edit_.what) {
    case What::none:
    case What::alphabet:
      return true;
    case What::leaves:
    case What::supply:
    case What::supply_all:
    case What::supply_next:
      return change_leaves();
    case What::last:
      return shape_.runs[run_].last += edit_.a, true;
    case What::first:
      return shape_.runs[run_].first += edit_.a, true;
    case What::shift:
      return shift(), true;
    case What::insert_between:
      return insert_between();
    case What::append:
      return append(), true;
    case What::prepend:
    case What::second:
      return add_preliminaries(edit_.what == What::prepend), true;
    case What::remove:
      return remove();
    case What::change:
      return change(), true;
    case What::drop_change:
      return drop_change(), true;
    }
    return false;
  }
};

/// Returns the formula after the edit, or no value if the edit is not possible. Precondition: the edit is not
/// `alphabet`.
inline std::optional<FormulaShape> applied(FormulaShape const& before, FormulaEdit const& edit) {
  FormulaShape shape = before;
  if (!FormulaEditor{shape, edit}.apply()) return std::nullopt;
  for (auto const& run : shape.runs)
    if (run.first < 1 || run.gatherings() < 1) return std::nullopt;
  return shape;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
