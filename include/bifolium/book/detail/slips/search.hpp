// SPDX-License-Identifier: MIT
/// Finds the cheapest edits after which formula, pagination and number of leaves agree. Every edit of the formula leads
/// to a number of leaves. For each number there are edits of the pagination and of the stated leaves that fit it; the
/// three are combined. Edits that lead to the same description are one proposal.
#pragma once

#include <bifolium/book/detail/slips/formula_pairs.hpp>
#include <bifolium/book/detail/slips/leaves_slips.hpp>
#include <bifolium/book/detail/slips/likelihood.hpp>
#include <bifolium/book/detail/slips/proposal_groups.hpp>
#include <bifolium/core/insertion_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class Search {
  static constexpr std::size_t formulas_kept = 6, pages_kept = 8, proposals_kept = 60;
  // the time for pairs of edits of the pagination grows with the square of its runs
  static constexpr std::size_t most_runs_for_pairs = 12;
  SearchInput const& in_;
  AuditWeights const& weights_;
  Likelihood likelihood_;
  SearchVariants variants_{};
  std::vector<FormulaVariant>& formulas_{variants_.formulas};
  std::vector<PageVariant>& pages_{variants_.pages};
  std::vector<LeavesVariant>& leaves_{variants_.leaves};
  std::vector<FormulaEdit> edits_{};
  std::vector<Proposal> found_{};
  std::string left_out_{};

  void formula_variants() {
    for (std::size_t i = 0; i < in_.formulas.size(); ++i) {
      FormulaVariant as_read{in_.formulas[i], i, {}, 0, 0, in_.formulas[i].leaves()};
      as_read.score = likelihood_.of(as_read.shape) + in_.formula_weights[i];
      if (in_.formula_is_edit[i]) {
        as_read.count = 1;
        as_read.edits[0].kind = SlipKind::alphabet;
        as_read.edits[0].what = FormulaEdit::What::alphabet;
      }
      formulas_.push_back(static_cast<FormulaVariant&&>(as_read));
    }
    for (std::size_t i = 0; i < in_.formulas.size(); ++i) {
      if (in_.formula_is_edit[i]) continue;
      edits_.clear();
      FormulaSlips{in_.formulas[i], weights_, edits_}.find(in_.changes);
      for (auto const& edit : edits_)
        if (auto shape = applied(in_.formulas[i], edit)) {
          auto const leaves = shape->leaves();
          if (leaves < 1) continue;
          auto const score = likelihood_.of(*shape) + edit.weight + in_.formula_weights[i];
          formulas_.push_back({static_cast<FormulaShape&&>(*shape), i, {edit, {}}, 1, score, leaves});
        }
    }
  }
  /// Offers an edited pagination. Its place among the others is that of its probability together with a formula.
  void offer_pages(std::vector<PageVariant>& best, PageVariant&& one, FormulaShape const* formula) const {
    if (formula != nullptr) {
      auto const together = likelihood_.of(*formula, one.shape);
      if (!together) return;
      one.with_formula = *together;
      one.score += *together;
    }
    offer(best, pages_kept, static_cast<PageVariant&&>(one));
  }
  std::size_t keep_pages(std::vector<PageVariant>& best) {
    auto const first = pages_.size();
    for (auto& one : best) {
      one.score -= one.with_formula;
      pages_.push_back(static_cast<PageVariant&&>(one));
    }
    return first;
  }
  /// Adds the best edited paginations for `leaves` leaves, together with a formula if there is one. Returns the index
  /// of the first.
  std::size_t page_variants(std::int64_t leaves, FormulaShape const* formula) {
    auto const& pages = *in_.pages;
    std::vector<PageVariant> best;
    auto const missing = pages.missing(leaves);
    if (missing >= 0 && missing <= 2 * in_.blanks_noted + Pagination::blank_leaf)
      offer_pages(best, PageVariant{pages, {}, 0, likelihood_.of(pages), 0}, formula);
    page_edits_.clear();
    PageSlips{pages, weights_, page_edits_}.find(leaves);
    for (auto const& edit : page_edits_) {
      auto shape = applied(pages, edit);
      auto const score = likelihood_.of(shape) + edit.weight;
      offer_pages(best, PageVariant{static_cast<PageShape&&>(shape), {edit, {}}, 1, score, 0}, formula);
    }
    return keep_pages(best);
  }
  /// Finds pairs of edits of the pagination: a number that one slip made of another, and one edit of the other runs.
  /// `formula` may be null.
  std::size_t pairs_of_page_edits(std::int64_t leaves, FormulaShape const* formula) {
    auto const& pages = *in_.pages;
    std::vector<PageVariant> best;
    for (std::size_t r = 0; r < pages.runs.size(); ++r) {
      if (pages.runs[r].kind == PageRunShape::Kind::roman || pages.runs[r].truly != 0) continue;
      auto const seen = pages.runs[r].last;
      each_truth(seen, [&](std::int64_t truth) {
        auto const slip = figure_slip(seen, truth);
        if (!slip || (pages.runs[r].first > 0 && truth < pages.runs[r].first)) return;
        auto const share = weights_.in_pages[static_cast<std::size_t>(slip->kind)] * weights_.field_wrong;
        PageEdit const first{slip->kind, PageEdit::What::last, static_cast<std::int16_t>(r), truth,
                             slip->weight + real::log(share / static_cast<double>(pages.runs.size()))};
        auto const once = applied(pages, first);
        page_edits_.clear();
        PageSlips{once, weights_, page_edits_}.find(leaves);
        for (auto const& second : page_edits_) {
          bool const of_figures = second.what == PageEdit::What::last;
          if ((of_figures && second.run <= first.run) ||
              (!of_figures && second.what != PageEdit::What::unit && second.run == first.run))
            continue; // a pair of numbers occurs once, and one run is not corrected twice
          auto shape = applied(once, second);
          auto const score = likelihood_.of(shape) + first.weight + second.weight;
          offer_pages(best, PageVariant{static_cast<PageShape&&>(shape), {first, second}, 2, score, 0}, formula);
        }
      });
    }
    return keep_pages(best);
  }
  /// Adds the ways in which the stated number can mean `leaves` leaves. Returns the index of the first.
  std::size_t leaves_variants(std::int64_t leaves) {
    auto const first = leaves_.size();
    LeavesSlips{*in_.leaves, in_.plates, weights_, leaves_}.find(leaves);
    return first;
  }

  /// Combines the fields. The edited paginations and stated numbers for this number of leaves are those from
  /// `first_page` and `first_leaves` to the end of their lists.
  void join(std::int32_t formula, std::size_t first_page, std::size_t first_leaves) {
    auto const* variant = formula >= 0 ? &formulas_[static_cast<std::size_t>(formula)] : nullptr;
    auto const of_formula = variant != nullptr ? variant->count : 0;
    auto const end_of_pages = in_.pages ? pages_.size() : first_page + 1;
    auto const end_of_leaves = in_.leaves ? leaves_.size() : first_leaves + 1;
    for (auto p = first_page; p < end_of_pages; ++p) {
      auto const edits = of_formula + (in_.pages ? pages_[p].count : 0);
      if (edits > 2) continue;
      double sum = (variant != nullptr ? variant->score : 0) + (in_.pages ? pages_[p].score : 0);
      if (variant != nullptr && in_.pages) {
        auto const together = likelihood_.of(variant->shape, pages_[p].shape);
        if (!together) continue;
        sum += *together;
      }
      for (auto s = first_leaves; s < end_of_leaves; ++s) {
        auto const all = edits + (in_.leaves ? leaves_[s].count : 0);
        if (all > 2) continue;
        offer(found_, proposals_kept,
              Proposal{formula, in_.pages ? static_cast<std::int32_t>(p) : -1,
                       in_.leaves ? static_cast<std::int32_t>(s) : -1, all, sum + (in_.leaves ? leaves_[s].score : 0),
                       0});
      }
    }
  }
  /// Combines the edited formulas from an index on, those of one number of leaves together, the best of each.
  void join_from(std::size_t from) {
    struct Bucket {
      std::int64_t leaves;
      std::vector<Ranked> best;
    };
    std::vector<Bucket> buckets;
    for (auto i = from; i < formulas_.size(); ++i) {
      Bucket* bucket = nullptr;
      for (auto& one : buckets)
        if (one.leaves == formulas_[i].leaves) bucket = &one;
      if (bucket == nullptr) buckets.push_back({formulas_[i].leaves, {}}), bucket = &buckets.back();
      offer(bucket->best, formulas_kept, Ranked{static_cast<std::int32_t>(i), formulas_[i].score});
    }
    insertion_sort(buckets,
                   [](Bucket const& a, Bucket const& b) { return a.best.front().score > b.best.front().score; });
    for (auto const& bucket : buckets) {
      if (found_.size() == proposals_kept && bucket.best.front().score + most_gain < found_.back().score) break;
      auto const& likeliest = formulas_[static_cast<std::size_t>(bucket.best.front().formula)].shape;
      auto const pages = in_.pages ? page_variants(bucket.leaves, &likeliest) : 0;
      auto const leaves = in_.leaves ? leaves_variants(bucket.leaves) : 0;
      for (auto const& one : bucket.best) join(one.formula, pages, leaves);
    }
  }
  /// Combines pairs of edits of the pagination with a formula; -1 if there is none.
  void join_pairs_of_pages(std::int32_t formula, std::int64_t leaves) {
    if (in_.pages->runs.size() > most_runs_for_pairs)
      return leave_out("two slips in the pagination are not searched for: it has more than " +
                       std::to_string(most_runs_for_pairs) + " runs of pages");
    auto const* const shape = formula >= 0 ? &formulas_[static_cast<std::size_t>(formula)].shape : nullptr;
    auto const pages = pairs_of_page_edits(leaves, shape);
    join(formula, pages, in_.leaves ? leaves_variants(leaves) : 0);
  }
  /// Returns true if no proposal is much more likely than an unknown mistake, so that two edits of one field are
  /// searched for.
  [[nodiscard]] bool nothing_likely() const {
    auto const enough = score_of_none() + pairs_below;
    for (auto const& one : found_)
      if (one.score >= enough) return false;
    return true;
  }
  void leave_out(std::string const& what) { left_out_ += (left_out_.empty() ? "" : "; ") + what; }
  struct Ranked {
    std::int32_t formula;
    double score;
  };
  /// The most that the other fields can add to the score of a formula: pages before the text whose number the formula
  /// gives are counted once and not twice. Estimated: an unusual number of them has a frequency of about e^-4.
  static constexpr double most_gain = 4;
  std::vector<PageEdit> page_edits_{};
  [[nodiscard]] std::vector<std::int64_t> numbers_wanted() const {
    std::vector<std::int64_t> wanted;
    auto const add = [&](std::int64_t leaves) {
      for (auto const other : wanted)
        if (other == leaves) return;
      if (leaves > 0) wanted.push_back(leaves);
    };
    if (in_.leaves) add(*in_.leaves);
    if (in_.pages)
      for (std::int64_t blank = 0; blank <= Pagination::blank_leaf; ++blank) add((in_.pages->pages() + blank) / 2);
    return wanted;
  }

public:
  Search(SearchInput const& in, AuditWeights const& weights)
      : in_{in}, weights_{weights}, likelihood_{weights, in.early, in.blanks_noted} {}
  Search(Search const&) = delete;
  Search& operator=(Search const&) = delete;
  ~Search() = default;

  /// Returns the proposals, the most likely first. The one without edits is the description as it is.
  std::vector<Proposal> const& find() {
    if (in_.formulas.empty()) {
      std::vector<std::int64_t> const wanted = numbers_wanted();
      for (auto const leaves : wanted) {
        auto const pages = in_.pages ? page_variants(leaves, nullptr) : 0;
        join(-1, pages, in_.leaves ? leaves_variants(leaves) : 0);
      }
      if (in_.pages && in_.leaves && nothing_likely()) join_pairs_of_pages(-1, *in_.leaves);
    } else {
      formula_variants();
      FormulaPairs pairs{formulas_, weights_, likelihood_};
      pairs.find_ends(numbers_wanted());
      join_from(0);
      if (nothing_likely()) {
        auto const singles = formulas_.size();
        if (!pairs.find(numbers_wanted()))
          leave_out(
              "of two slips in the formula only a missing first and a missing last gathering are searched for: it "
              "has more than " +
              std::to_string(FormulaPairs::most_singles) + " possible single ones");
        join_from(singles);
        if (in_.pages) join_pairs_of_pages(0, formulas_[0].leaves);
      }
    }
    ProposalGroups groups{variants_, found_};
    groups.join_alike(proposals_kept);
    groups.drop_needless();
    return found_;
  }
  /// Returns what was not searched for because a field is too long, in words; empty if everything was.
  [[nodiscard]] std::string const& left_out() const { return left_out_; }
  /// Returns the score of a mistake that no kind of slip explains. Before such a mistake the description was as likely
  /// as it is now, or as the best proposal if that is more likely.
  [[nodiscard]] double score_of_none() const {
    double sum = 0;
    if (!in_.formulas.empty()) sum += likelihood_.of(in_.formulas[0]);
    if (in_.pages) sum += likelihood_.of(*in_.pages);
    if (!found_.empty()) {
      double best = 0;
      if (found_[0].formula >= 0) best += likelihood_.of(formula(found_[0]).shape);
      if (found_[0].pages >= 0) best += likelihood_.of(pages(found_[0]).shape);
      sum = best > sum ? best : sum;
    }
    return sum + real::log(weights_.none_of_these);
  }
  /// Two edits of one field are searched if no proposal is this much more likely than an unknown mistake.
  static constexpr double pairs_below = 2;
  /// Returns the edited pagination of a proposal. Precondition: it has an edit, or a reading, of this field.
  [[nodiscard]] PageVariant const& pages(Proposal const& one) const { return variants_.of_pages(one); }
  [[nodiscard]] LeavesVariant const& leaves(Proposal const& one) const { return variants_.of_leaves(one); }
  [[nodiscard]] FormulaVariant const& formula(Proposal const& one) const { return variants_.of_formula(one); }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
