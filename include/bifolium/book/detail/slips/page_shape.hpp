// SPDX-License-Identifier: MIT
/// A pagination as numbers, and the possible mistakes in one. As with formulas, an edit is a few numbers. Edits are
/// searched only when the correct number of pages is known.
#pragma once

#include <bifolium/book/audit_weights.hpp>
#include <bifolium/book/detail/slips/figure_slip.hpp>
#include <bifolium/record/pagination.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run of pages as numbers.
struct PageRunShape {
  enum class Kind : std::uint8_t { unnumbered, arabic, roman };
  Kind kind{};
  std::int64_t first{}; ///< 0 if only the last number is in the text
  std::int64_t last{};  ///< as printed; for pages without numbers, their number
  std::int64_t truly{}; ///< the correct last number; 0 if it is not stated
  std::int64_t count{}; ///< number of pages
};

/// A pagination as numbers.
struct PageShape {
  std::vector<PageRunShape> runs{};
  bool by_leaf{};
  std::int64_t may_not_count{}; ///< pages that may be counted twice, or be plates: not all pages are of the gatherings

  /// Returns the number of pages, or of leaves for a foliation.
  [[nodiscard]] std::int64_t total() const {
    std::int64_t sum = 0;
    for (auto const& run : runs) sum += run.count;
    return sum;
  }
  [[nodiscard]] std::int64_t pages() const { return by_leaf ? 2 * total() : total(); }
  /// Returns by how many pages it has fewer than `leaves` leaves; less than zero if it has more.
  [[nodiscard]] std::int64_t missing(std::int64_t leaves) const {
    auto const short_of = 2 * leaves - pages();
    return short_of >= 0 ? short_of : short_of + may_not_count < 0 ? short_of + may_not_count : 0;
  }
};

/// An edit of a pagination.
struct PageEdit {
  enum class What : std::uint8_t {
    none,
    last,   ///< the last number of the run (or its number of pages) becomes `a`
    truly,  ///< "[i.e. a]" after the run
    first,  ///< the run begins with `a`; 0: with 1, which is not written
    insert, ///< `a` pages without numbers before run `run`
    remove, ///< the run is removed
    unit    ///< leaves for pages, or pages for leaves
  };
  SlipKind kind{};
  What what{};
  std::int16_t run{};
  std::int64_t a{};
  double weight{};
};

/// Returns the pagination after the edit.
inline PageShape applied(PageShape const& before, PageEdit const& edit) {
  PageShape shape = before;
  auto const r = static_cast<std::size_t>(edit.run);
  auto const place = [&](std::size_t i) { return shape.runs.begin() + static_cast<std::ptrdiff_t>(i); };
  switch (edit.what) {
  case PageEdit::What::none:
    break;
  case PageEdit::What::last:
    shape.runs[r].count += edit.a - shape.runs[r].last;
    shape.runs[r].last = edit.a;
    break;
  case PageEdit::What::truly:
    shape.runs[r].count += edit.a - shape.runs[r].last;
    shape.runs[r].truly = edit.a;
    break;
  case PageEdit::What::first: {
    auto const was = shape.runs[r].first == 0 ? 1 : shape.runs[r].first, is = edit.a == 0 ? 1 : edit.a;
    shape.runs[r].count -= is - was;
    shape.runs[r].first = edit.a;
    break;
  }
  case PageEdit::What::insert:
    shape.runs.insert(place(r), PageRunShape{PageRunShape::Kind::unnumbered, 0, edit.a, 0, edit.a});
    break;
  case PageEdit::What::remove:
    shape.runs.erase(place(r));
    break;
  case PageEdit::What::unit:
    shape.by_leaf = !shape.by_leaf;
    break;
  }
  return shape;
}

/// Finds the edits after which a pagination agrees with a number of leaves.
class PageSlips {
  using Kind = PageRunShape::Kind;
  using What = PageEdit::What;
  PageShape const& shape_;
  AuditWeights const& weights_;
  std::vector<PageEdit>& edits_;
  std::int64_t total_;
  double runs_;

  void add(SlipKind kind, What what, std::size_t run, std::int64_t a, double weight) {
    auto const share = weights_.in_pages[static_cast<std::size_t>(kind)] * weights_.field_wrong;
    edits_.push_back({kind, what, static_cast<std::int16_t>(run), a, weight + real::log(share)});
  }
  /// Adds edits for a wrong last number of a run.
  void figures(std::size_t r, std::int64_t need) {
    auto const& run = shape_.runs[r];
    auto const truth = run.last + need;
    if (truth < 1 || (run.kind == Kind::roman && truth > most_roman) || run.truly != 0) return;
    auto const slip = run.kind == Kind::roman ? roman_slip(run.last, truth) : figure_slip(run.last, truth);
    bool const several = shape_.runs.size() > 1;
    if (slip) {
      bool const value = run.kind == Kind::unnumbered && several && slip->kind == SlipKind::substituted;
      add(value ? SlipKind::unnumbered_value : slip->kind, What::last, r, truth,
          slip->weight + (value ? 1.0 : 0.0) - real::log(runs_));
    } else if (run.kind == Kind::unnumbered && truth <= 24 && several) {
      auto const by = need < 0 ? -need : need;
      add(SlipKind::unnumbered_value, What::last, r, truth,
          real::log((by == 1 || by == 2 || by == 4 ? slip_form::pages_1_2_or_4 : slip_form::other_pages) / runs_));
    }
    if (run.kind == Kind::unnumbered) return;
    auto const by = need < 0 ? -need : need;
    if (by <= run.last) add(SlipKind::misnumbered, What::truly, r, truth, real::log(misnumbered_share(need) / runs_));
  }
  /// Returns how often a book is misnumbered by this number of pages. Of 14 corrections ("i.e.") in the rows of
  /// tests/data, five concern two pages with repeated numbers; the others are spread.
  static double misnumbered_share(std::int64_t by) {
    if (by == 2) return .25;
    auto const amount = by < 0 ? -by : by;
    if (amount == 2 || amount == 4) return .06;
    if (amount == 1 || amount == 8 || amount == 10 || amount == 20 || amount == 100) return .04;
    return amount % 10 == 0 ? .02 : .004;
  }
  /// Adds edits for a run that continues the run before it, or begins again.
  void beginnings(std::size_t r, std::int64_t need, std::int64_t before) {
    auto const& run = shape_.runs[r];
    if (run.first > 0) {
      auto const truth = run.first - need;
      if (truth > 0)
        if (auto const slip = figure_slip(run.first, truth))
          add(slip->kind, What::first, r, truth, slip->weight + real::log(slip_form::first_number / runs_));
      if (run.first > 1 && need == run.first - 1)
        add(SlipKind::restarted, What::first, r, 0, real::log(slip_form::begins_again));
      return;
    }
    if (r == 0 || run.kind != Kind::arabic) return;
    if (need == -before) add(SlipKind::restarted, What::first, r, before + 1, real::log(slip_form::continues_all));
    for (auto k = r; k-- > 0;)
      if (shape_.runs[k].kind == Kind::roman) {
        auto const roman = shape_.runs[k].last;
        if (need == -roman && need != -before)
          add(SlipKind::restarted, What::first, r, roman + 1, real::log(slip_form::continues_roman));
        break;
      }
  }
  void missing(std::int64_t need) {
    auto const n = shape_.runs.size();
    if (shape_.by_leaf) {
      if (need > 0 && need <= 4)
        for (std::size_t at : {std::size_t{0}, n})
          add(SlipKind::unnumbered_missing, What::insert, at, need, real::log(slip_form::leaves_at_an_end));
      return;
    }
    if (need <= 0 || need > 40) return;
    auto const unnumbered = [&](std::size_t i) { return shape_.runs[i].kind == Kind::unnumbered; };
    if (!unnumbered(0)) add(SlipKind::unnumbered_missing, What::insert, 0, need, real::log(slip_form::run_before));
    if (!unnumbered(n - 1)) add(SlipKind::unnumbered_missing, What::insert, n, need, real::log(slip_form::run_after));
    for (std::size_t at = 1; at < n; ++at)
      if (!unnumbered(at) && !unnumbered(at - 1))
        add(SlipKind::unnumbered_missing, What::insert, at, need, real::log(slip_form::run_between / runs_));
  }
  void for_total(std::int64_t goal) {
    auto const need = goal - total_;
    if (need == 0) return;
    std::int64_t before = 0;
    for (std::size_t r = 0; r < shape_.runs.size(); ++r) {
      figures(r, need);
      beginnings(r, need, before);
      auto const& run = shape_.runs[r];
      if (run.kind == Kind::unnumbered && need == -run.last && shape_.runs.size() > 1)
        add(SlipKind::unnumbered_extra, What::remove, r, 0, real::log(slip_form::run_added / runs_));
      before += run.count;
    }
    missing(need);
  }

public:
  PageSlips(PageShape const& shape, AuditWeights const& weights, std::vector<PageEdit>& edits)
      : shape_{shape}, weights_{weights}, edits_{edits}, total_{shape.total()}, runs_{static_cast<double>(
                                                                                    shape.runs.size())} {}

  /// Adds the edits after which the pagination agrees with a book of `leaves` leaves.
  void find(std::int64_t leaves) {
    if (shape_.by_leaf) {
      for (auto goal : {leaves, leaves - 1}) for_total(goal);
      if (auto const missing = 2 * leaves - total_; missing >= 0 && missing <= Pagination::blank_leaf)
        add(SlipKind::unit, What::unit, 0, 0, real::log(slip_form::unit_exchanged));
      return;
    }
    for (std::int64_t blank = 0; blank <= Pagination::blank_leaf; ++blank) for_total(2 * leaves - blank);
    if (shape_.runs.size() == 1 && total_ == leaves && shape_.runs[0].truly == 0)
      add(SlipKind::leaf_as_page, What::last, 0, 2 * leaves, real::log(slip_form::every_leaf_one_page));
    if (total_ == leaves || total_ == leaves - 1)
      add(SlipKind::unit, What::unit, 0, 0, real::log(slip_form::unit_exchanged));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
