// SPDX-License-Identifier: MIT
/// Lists the possible mistakes in a formula: every slip of writing, undone. An edit is a few numbers, so that it can be
/// applied to a formula that another edit has already changed.
#pragma once

#include <bifolium/book/audit_weights.hpp>
#include <bifolium/book/detail/slips/formula_editor.hpp>
#include <bifolium/book/detail/slips/slip_forms.hpp>
#include <bifolium/core/real.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the probability that the formula has its last gathering if the first one was left out and the letters begin
/// with B. If the caller's weights say that it never has, .001 is returned, so that the logarithm is a number.
inline double last_kept_share(AuditWeights const& weights) {
  constexpr double least = .001;
  return 1 - weights.ends_together > least ? 1 - weights.ends_together : least;
}

/// Finds the edits of one formula.
class FormulaSlips {
  FormulaShape const& shape_;
  std::vector<FormulaEdit>& edits_;
  AuditWeights const& weights_;

  void add(SlipKind kind, FormulaEdit::What what, std::size_t run, std::int32_t a, std::int32_t b, double share) {
    auto const kinds = weights_.in_formula[static_cast<std::size_t>(kind)] * weights_.field_wrong;
    edits_.push_back(
        {kind, what, static_cast<std::int16_t>(run), static_cast<std::int16_t>(b), a, real::log(share * kinds)});
  }
  /// Returns how often one leaf count is written for another; 4 and 8 are confused most, as neighbours.
  static double exponent_share(int seen, int truth) {
    constexpr int alike[][2]{{4, 8}, {6, 8}, {2, 4}, {4, 6}, {8, 12}, {6, 12}, {8, 10}};
    for (auto const& pair : alike)
      if ((pair[0] == seen && pair[1] == truth) || (pair[1] == seen && pair[0] == truth))
        return slip_form::neighbouring_count;
    return truth % 2 == 0 ? slip_form::even_count : slip_form::odd_count;
  }
  void exponents(std::size_t r, double runs) {
    auto const& run = shape_.runs[r];
    if (run.omitted) {
      for (int leaves : {1, 2, 4, 6, 8, 10, 12})
        if (!run.plain() || leaves != run.leaves.term(0))
          add(SlipKind::omitted_exponent, FormulaEdit::What::supply, r, leaves, 0, slip_form::count_supplied / runs);
      return;
    }
    for (std::size_t t = 0; t < run.leaves.size(); ++t)
      for (int leaves : {1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 16})
        if (leaves != run.leaves.term(t))
          add(SlipKind::exponent, FormulaEdit::What::leaves, r, leaves, static_cast<std::int32_t>(t),
              exponent_share(run.leaves.term(t), leaves) / runs / static_cast<double>(run.leaves.size()));
  }
  void ends(std::size_t r, double runs) {
    using What = FormulaEdit::What;
    auto const& run = shape_.runs[r];
    if (run.order == MarkOrder::none || run.first == run.last) return;
    struct Step {
      int by;
      double share;
    };
    for (auto const [by, share] : {Step{1, slip_form::one_letter},
                                   {-1, slip_form::one_letter},
                                   {2, slip_form::two_letters},
                                   {-2, slip_form::two_letters},
                                   {3, slip_form::three_letters},
                                   {-3, slip_form::three_letters}})
      if (run.last + by >= run.first) add(SlipKind::end_letter, What::last, r, by, 0, share / runs);
    if (run.order == MarkOrder::numbers) return;
    for (int by : {1, -1})
      if (run.first + by >= 1 && run.first + by <= run.last)
        add(SlipKind::start_letter, What::first, r, by, 0, slip_form::first_letter / runs);
  }
  void multiples(std::size_t r, double runs) {
    auto const& run = shape_.runs[r];
    if (run.order != MarkOrder::letters) return;
    for (int alphabets : {1, 2, -1})
      if (run.last + alphabets * shape_.letters > run.first)
        add(SlipKind::multiple_lost, FormulaEdit::What::last, r, alphabets * shape_.letters, 0,
            slip_form::alphabets_lost / runs);
  }
  void between(std::size_t r, double gatherings) {
    using What = FormulaEdit::What;
    auto const &run = shape_.runs[r], &next = shape_.runs[r + 1];
    if (run.series == next.series && run.order == MarkOrder::letters) {
      auto const skipped = next.first - run.last - 1;
      if (skipped >= 1 && skipped <= 3)
        for (int leaves : {2, 4, 6, 8, 10, 12})
          add(SlipKind::gathering_missing, What::insert_between, r, leaves, 0,
              slip_form::where_a_letter_is_skipped / gatherings);
      if (skipped == 0)
        for (int by : {1, -1}) add(SlipKind::shifted_letters, What::shift, r, by, 0, slip_form::shifted);
    }
    if (run == next) add(SlipKind::gathering_twice, What::remove, r, 0, 0, slip_form::run_twice);
  }
  void first_and_last() {
    using What = FormulaEdit::What;
    auto const &first = shape_.runs.front(), &last = shape_.runs.back();
    if (last.order == MarkOrder::letters) {
      for (int leaves : {1, 2, 3, 4, 6, 8, 10, 12})
        if (!last.plain() || leaves != last.leaves.term(0))
          add(SlipKind::last_missing, What::append, 0, leaves, 0, slip_form::last_lost);
      if (last.gatherings() == 1 && shape_.gatherings() > 1)
        add(SlipKind::last_missing, What::remove, shape_.runs.size() - 1, 0, 0, slip_form::last_added);
    }
    bool const without_a = begins_with_b(shape_);
    auto const last_kept = last_kept_share(weights_);
    for (int leaves : {1, 2, 3, 4, 6, 8, 10, 12}) {
      bool const like_b = without_a && first.plain() && first.leaves.term(0) == leaves;
      add(SlipKind::first_missing, What::prepend, 0, leaves, 0,
          like_b      ? slip_form::a_like_b * last_kept
          : without_a ? slip_form::preliminaries_without_a * last_kept
                      : slip_form::preliminaries_before_a);
      if (!without_a) add(SlipKind::first_missing, What::second, 0, leaves, 0, slip_form::preliminaries_after_first);
    }
    if (shape_.runs.size() > 1 && first.gatherings() == 1)
      add(SlipKind::gathering_twice, What::remove, 0, 0, 0, slip_form::first_run_added);
  }
  void omitted_together() {
    std::size_t omitted = shape_.runs.size(), count = 0;
    for (std::size_t r = shape_.runs.size(); r-- > 0;)
      if (shape_.runs[r].omitted) omitted = r, ++count;
    if (count == 0) return;
    if (count > 1)
      for (int leaves : {2, 4, 6, 8, 12})
        if (leaves != shape_.runs[omitted].leaves.term(0))
          add(SlipKind::omitted_exponent, FormulaEdit::What::supply_all, omitted, leaves, 0,
              slip_form::same_count_supplied);
    if (!shape_.runs.back().omitted)
      add(SlipKind::omitted_exponent, FormulaEdit::What::supply_next, omitted, 0, 0, slip_form::next_count_meant);
  }

public:
  FormulaSlips(FormulaShape const& shape, AuditWeights const& weights, std::vector<FormulaEdit>& edits)
      : shape_{shape}, edits_{edits}, weights_{weights} {}

  /// Finds the edits. `changes` has the number of leaves that each parenthesis of the formula adds.
  void find(std::vector<std::int32_t> const& changes) {
    using What = FormulaEdit::What;
    auto const runs = static_cast<double>(shape_.runs.size());
    auto const gatherings = static_cast<double>(shape_.gatherings());
    for (std::size_t r = 0; r < shape_.runs.size(); ++r) {
      exponents(r, runs);
      ends(r, runs);
      multiples(r, runs);
      if (r + 1 < shape_.runs.size()) between(r, gatherings);
    }
    first_and_last();
    omitted_together();
    add(SlipKind::change_missing, What::change, 0, -1, 0, slip_form::last_leaf_removed);
    add(SlipKind::change_missing, What::change, 0, -1, 1, slip_form::first_leaf_removed);
    add(SlipKind::change_missing, What::change, 0, 1, 0, slip_form::leaf_inserted);
    add(SlipKind::change_missing, What::change, 0, -2, 0, slip_form::two_leaves_removed);
    for (std::size_t c = 0; c < changes.size(); ++c) {
      if (changes[c] == 0) continue;
      auto const share = 1 / static_cast<double>(changes.size());
      add(SlipKind::change_twice, What::drop_change, c, changes[c], 0, slip_form::change_dropped * share);
      if (changes[c] < -1 || changes[c] > 1)
        add(SlipKind::change_twice, What::drop_change, c, changes[c], 1, slip_form::change_of_several_reduced * share);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
