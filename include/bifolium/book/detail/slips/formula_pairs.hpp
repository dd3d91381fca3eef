// SPDX-License-Identifier: MIT
/// Finds pairs of edits of a formula: two slips that a cataloguer made in one field. Only pairs that lead to a number
/// of leaves in another field are of interest.
#pragma once

#include <bifolium/book/detail/slips/likelihood.hpp>
#include <bifolium/book/detail/slips/proposal.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FormulaPairs {
  static constexpr std::size_t pairs_kept = 40, pairs_tried = 160;
  std::vector<FormulaVariant>& formulas_;
  AuditWeights const& weights_;
  Likelihood const& likelihood_;

  /// A pair of edits, by the index of each alone, and about how likely it is.
  struct Pair {
    std::int32_t first, second;
    std::int64_t leaves;
    double score;
  };
  /// Returns the leaves of the formula after the edits of two variants with one edit each.
  [[nodiscard]] std::int64_t leaves_of_both(FormulaVariant const& one, FormulaVariant const& other) const {
    using What = FormulaEdit::What;
    auto const base = formulas_[0].leaves;
    if (!are_count_and_letter(one.edits[0], other.edits[0])) return one.leaves + other.leaves - base;
    auto const r = static_cast<std::size_t>(one.edits[0].run);
    auto const& run = formulas_[0].shape.runs[r];
    if (!run.plain()) return -1;
    bool const count_first = one.edits[0].what == What::leaves || one.edits[0].what == What::supply;
    auto const& letters = count_first ? other.shape : one.shape;
    return base - run.leaf_total() + letters.runs[r].gatherings() * (count_first ? one : other).edits[0].a;
  }
  /// Returns true for a leaf count and a letter of one run: what the two change does not add up.
  static bool are_count_and_letter(FormulaEdit const& a, FormulaEdit const& b) {
    using What = FormulaEdit::What;
    auto const counts = [](FormulaEdit const& one) { return one.what == What::leaves || one.what == What::supply; };
    auto const letters = [](FormulaEdit const& one) {
      return one.what == What::last || one.what == What::first || one.what == What::shift;
    };
    return a.run == b.run && ((counts(a) && letters(b)) || (counts(b) && letters(a)));
  }
  /// Returns the logarithm of the probability that both slips were made.
  [[nodiscard]] double both(FormulaEdit const& first, FormulaEdit const& second) const {
    auto const are = [&](SlipKind a, SlipKind b) { return first.kind == a && second.kind == b; };
    bool const ends = begins_with_b(formulas_[0].shape) && (are(SlipKind::first_missing, SlipKind::last_missing) ||
                                                            are(SlipKind::last_missing, SlipKind::first_missing));
    if (!ends) return first.weight + second.weight;
    // the weight of the first has the probability that the last is there
    auto const last = weights_.in_formula[static_cast<std::size_t>(SlipKind::last_missing)] * weights_.field_wrong;
    return first.weight + second.weight + real::log(weights_.ends_together / last_kept_share(weights_) / last);
  }
  void pair(FormulaEdit first, FormulaEdit second, std::int64_t target, std::vector<FormulaVariant>& pairs) {
    // the later run is edited first, so that added or removed text does not move the other
    if (second.run > first.run) {
      auto const other = first;
      first = second, second = other;
    }
    if (first.run == second.run && first.what == second.what) return;
    auto once = applied(formulas_[0].shape, first);
    if (!once) return;
    auto twice = applied(*once, second);
    if (!twice || twice->leaves() != target) return;
    auto const score = likelihood_.of(*twice) + both(first, second);
    offer(pairs, pairs_kept, FormulaVariant{static_cast<FormulaShape&&>(*twice), 0, {first, second}, 2, score, target});
  }

  /// Adds pairs to the formulas.
  void add(std::vector<FormulaVariant>& pairs) {
    for (auto& one : pairs) formulas_.push_back(static_cast<FormulaVariant&&>(one));
  }
  /// Returns true for a variant of the formula as read, with one edit of its text.
  static bool is_single(FormulaVariant const& one) {
    return one.count == 1 && one.reading == 0 && one.edits[0].what != FormulaEdit::What::alphabet;
  }
  /// Returns true for a gathering before the first run and one after the last.
  static bool are_ends(FormulaEdit const& a, FormulaEdit const& b) {
    using What = FormulaEdit::What;
    return (a.what == What::prepend && b.what == What::append) || (a.what == What::append && b.what == What::prepend);
  }
  /// Returns the indices of the variants with one edit for which `wanted` is true.
  template <class Wanted> [[nodiscard]] std::vector<std::int32_t> singles(Wanted wanted) const {
    std::vector<std::int32_t> found;
    for (std::size_t i = 0; i < formulas_.size(); ++i)
      if (is_single(formulas_[i]) && wanted(formulas_[i].edits[0])) found.push_back(static_cast<std::int32_t>(i));
    return found;
  }
  [[nodiscard]] FormulaVariant const& at(std::int32_t index) const {
    return formulas_[static_cast<std::size_t>(index)];
  }

public:
  /// The pairs of a formula with more possible slips are not searched for, except those of its ends: they would take
  /// more time than everything else.
  static constexpr std::size_t most_singles = 600;

  /// `formulas`: the formula as read, then its variants with one edit. The pairs are added to them.
  FormulaPairs(std::vector<FormulaVariant>& formulas, AuditWeights const& weights, Likelihood const& likelihood)
      : formulas_{formulas}, weights_{weights}, likelihood_{likelihood} {}

  /// Finds pairs of edits of the formula that lead to one of the numbers of leaves in other fields, without those that
  /// `find_ends` finds. What two edits of different runs change adds up, nearly so in probability too, so that only the
  /// most likely pairs are ever made. Returns false if the formula has too many possible slips.
  bool find(std::vector<std::int64_t> const& wanted) {
    auto const alone = singles([](FormulaEdit const&) { return true; });
    if (alone.size() > most_singles) return false;
    std::vector<Pair> likely;
    for (std::size_t i = 0; i < alone.size(); ++i)
      for (std::size_t k = i + 1; k < alone.size(); ++k) {
        auto const &one = at(alone[i]), &other = at(alone[k]);
        auto const leaves = leaves_of_both(one, other);
        for (auto const target : wanted)
          if (leaves == target && !are_ends(one.edits[0], other.edits[0]))
            offer(likely, pairs_tried, Pair{alone[i], alone[k], target, one.score + other.score});
      }
    std::vector<FormulaVariant> pairs;
    for (auto const& one : likely) pair(at(one.first).edits[0], at(one.second).edits[0], one.leaves, pairs);
    add(pairs);
    return true;
  }
  /// Finds pairs of a gathering before the first run and one after the last, which are often lost together. They are
  /// few, and searched for in every formula.
  void find_ends(std::vector<std::int64_t> const& wanted) {
    using What = FormulaEdit::What;
    auto const before = singles([](FormulaEdit const&one) { return one.what == What::prepend; }),
               after = singles([](FormulaEdit const&one) { return one.what == What::append; });
    std::vector<FormulaVariant> pairs;
    for (auto const i : before)
      for (auto const k : after)
        for (auto const target : wanted)
          if (leaves_of_both(at(i), at(k)) == target) pair(at(i).edits[0], at(k).edits[0], target, pairs);
    add(pairs);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
