// SPDX-License-Identifier: MIT
/// The probability of a description that agrees. It uses what no list of rules has: most gatherings of a book are
/// equal, the first and the last differ in known ways, letters follow one another, the numbered pages begin with the
/// text, odd numbers are on rectos, and runs of pages without numbers have usual lengths. All probabilities are
/// logarithms.
#pragma once

#include <bifolium/book/audit_weights.hpp>
#include <bifolium/book/detail/slips/main_sequence.hpp>
#include <bifolium/book/detail/slips/page_shape.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The weights as logarithms, computed once for a record.
class Likelihood {
  static constexpr std::size_t books = 7, sizes = 11;
  AuditWeights const& weights_;
  double table_[4][books][sizes]{};
  double unnumbered_[26]{};
  double begin_[3]{};
  double without_a_{};
  int blanks_noted_;

  /// General frequencies of gatherings, for cases with few counted books. Estimated.
  static constexpr double usual[sizes]{.03, .14, .003, .3, .003, .15, .003, .3, .03, .05, .003};

  /// Logarithms of the frequencies of what is rare in a description that agrees. All are estimated, without a source: a
  /// letter is skipped in one formula of fifty, an odd number is on a verso in less than one pagination of a hundred.
  static constexpr double size_goes_on = -1; ///< the last gathering has the unusual size of the one before it
  static constexpr double letter_skipped = -4, letters_again = -2, letters_repeated = -3; ///< again: from A
  static constexpr double unnumbered_runs_in_succession = -3;
  static constexpr double numbers_again = -1.5, numbers_repeated = -4, numbers_missing = -3, odd_number_on_verso = -5;
  static constexpr double blank_verso_counted = .5;  ///< share that count the blank verso of a numbered page
  static constexpr double noted_blank_left_out = .3; ///< share of those that do not count a leaf noted as blank

  void take(GatheringCounts::Books const& counts, std::size_t place) {
    for (std::size_t book = 0; book < books; ++book) {
      double total = 0;
      for (auto const count : counts[book]) total += count;
      for (std::size_t size = 0; size < sizes; ++size)
        table_[place][book][size] = real::log((counts[book][size] + 3 * usual[size]) / (total + 3));
    }
  }
  [[nodiscard]] double unnumbered(std::int64_t pages) const { return unnumbered_[pages < 25 ? pages : 25]; }

public:
  /// Takes the weights. `early`: the book was printed before 1501.
  Likelihood(AuditWeights const& weights, bool early, int blanks_noted)
      : weights_{weights}, blanks_noted_{blanks_noted} {
    auto const& counts = early ? weights.early : weights.late;
    take(counts.first, 0), take(counts.middle, 1), take(counts.last, 2), take(counts.aside, 3);
    double total = 0;
    for (auto const count : weights.unnumbered) total += count;
    for (std::size_t i = 0; i < 26; ++i) {
      // beyond 24 pages all lengths are equally rare
      auto const length = i == 25 ? weights.unnumbered[25] / 60.0 : weights.unnumbered[i];
      unnumbered_[i] = real::log((length + .2) / (total + 20));
    }
    for (std::size_t i = 0; i < 3; ++i) begin_[i] = real::log(weights.numbers_begin[i]);
    without_a_ = real::log(weights.without_a);
  }

  /// Returns the probability of the formula by itself.
  [[nodiscard]] double of(FormulaShape const& shape) const {
    auto const main = main_leaves(shape);
    auto const book = book_row(main);
    double sum = 0;
    each_stretch(shape, [&](GatheringPlace place, int leaves, std::int64_t stretches, std::int64_t) {
      if (place == GatheringPlace::middle && leaves == main) return;
      // an unusual size of several gatherings is one fact, and the last gathering often goes on with it
      auto const weight = table_[static_cast<std::size_t>(place)][book][size_column(leaves)];
      bool const goes_on = place == GatheringPlace::last && leaves != main && leaves == last_leaves(shape, 1);
      sum += goes_on && weight < size_goes_on ? size_goes_on : static_cast<double>(stretches) * weight;
    });
    sum += ends(shape, main, book);
    if (begins_with_b(shape)) sum += without_a_;
    for (std::size_t r = 0; r + 1 < shape.runs.size(); ++r) {
      auto const &run = shape.runs[r], &next = shape.runs[r + 1];
      if (run.series != next.series || run.order != MarkOrder::letters) continue;
      if (next.first > run.last + 1) sum += letter_skipped;
      if (next.first <= run.last) sum += next.first == 1 ? letters_again : letters_repeated;
    }
    return sum;
  }

  /// Returns the probability of the pagination by itself.
  [[nodiscard]] double of(PageShape const& shape) const {
    using Kind = PageRunShape::Kind;
    double sum = 0;
    std::int64_t last = 0, between = 0, total = 0;
    bool arabic_before = false, unnumbered_before = false;
    for (auto const& run : shape.runs) {
      if (run.kind == Kind::unnumbered && shape.runs.size() > 1) {
        sum += unnumbered(run.last);
        if (unnumbered_before) sum += unnumbered_runs_in_succession;
      }
      if (run.kind == Kind::arabic && run.first == 0 && arabic_before) sum += numbers_again;
      if (run.first > 0 && last > 0 && run.first <= last) sum += numbers_repeated;
      if (run.first > last + between + 1 && last > 0) sum += numbers_missing;
      // odd numbers are on rectos
      auto const first = run.first == 0 ? 1 : run.first;
      if (run.kind != Kind::unnumbered && !shape.by_leaf && (total + first) % 2 == 0) sum += odd_number_on_verso;
      if (run.kind != Kind::unnumbered)
        last = run.truly != 0 ? run.truly : run.last, between = 0;
      else
        between += run.count;
      arabic_before = arabic_before || run.kind == Kind::arabic;
      unnumbered_before = run.kind == Kind::unnumbered;
      total += run.count;
    }
    if (shape.by_leaf) return sum;
    // the last page without a number is usually counted; the blank verso of a numbered page is left out in about half
    // the cases
    if (unnumbered_before) return total % 2 == 0 ? sum : sum + real::log(weights_.odd_total);
    return sum + real::log(blank_verso_counted);
  }

  /// Returns the probability of the two together, or no value if they contradict each other.
  [[nodiscard]] std::optional<double> of(FormulaShape const& formula, PageShape const& pages) const {
    auto const missing = pages.missing(formula.leaves());
    double sum = 0;
    if (blanks_noted_ > 0 && missing > Pagination::blank_verso &&
        missing <= 2 * blanks_noted_ + Pagination::blank_verso && !pages.by_leaf)
      sum = real::log(noted_blank_left_out / blanks_noted_);
    else if (missing < 0 || missing > Pagination::blank_leaf || (pages.by_leaf && missing % 2 != 0))
      return std::nullopt;
    else if (missing > Pagination::blank_verso)
      sum = real::log(weights_.blank_not_counted);
    return sum + beginning(formula, pages) + preliminaries(formula, pages);
  }

private:
  /// Returns by how much the two ends together are more or less likely than each by itself. If the first gathering is
  /// smaller than most, the last often makes up the difference, since both were printed on one sheet.
  [[nodiscard]] double ends(FormulaShape const& shape, int main, std::size_t book) const {
    constexpr double most = .95;
    auto const two = unequal_ends(shape, main);
    if (!two) return 0;
    auto const alone =
        real::exp(table_[static_cast<std::size_t>(GatheringPlace::last)][book][size_column(two->missing)]);
    auto const here = alone * weights_.ends_make_one < most ? alone * weights_.ends_make_one : most;
    return two->completed ? real::log(here / alone) : real::log((1 - here) / (1 - alone));
  }
  /// Returns the probability of the place where the numbers begin. If they begin with the text, the formula gives the
  /// number of pages before them.
  [[nodiscard]] double beginning(FormulaShape const& formula, PageShape const& pages) const {
    std::int64_t before = 0;
    std::size_t k = 0, unnumbered_runs = 0, the_run = 0;
    for (; k < pages.runs.size() && pages.runs[k].kind != PageRunShape::Kind::arabic; ++k) {
      before += pages.runs[k].count;
      if (pages.runs[k].kind == PageRunShape::Kind::unnumbered) ++unnumbered_runs, the_run = k;
    }
    if (k == 0 || k == pages.runs.size()) return 0;
    auto const begin = numbers_begin(formula, pages.by_leaf ? 2 * before : before);
    auto const weight = begin_[static_cast<std::size_t>(begin)];
    return begin == NumbersBegin::with_the_text && unnumbered_runs > 0 ? weight - unnumbered(pages.runs[the_run].last)
                                                                       : weight;
  }
  [[nodiscard]] double preliminaries(FormulaShape const& formula, PageShape const& pages) const {
    if (pages.runs.size() == 1 && pages.runs[0].kind == PageRunShape::Kind::unnumbered) return 0;
    auto const share = has_preliminaries(formula) ? weights_.preliminaries_in_both : weights_.preliminaries_in_pages;
    return real::log(pages.runs[0].kind != PageRunShape::Kind::arabic ? share : 1 - share);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
