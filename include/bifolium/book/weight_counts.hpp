// SPDX-License-Identifier: MIT
/// Learns from descriptions that agree: how many leaves gatherings have at each place, how many pages have no numbers,
/// and where the numbers begin. The numbers of book/audit_weights.hpp were counted in this way
/// (bench/fit_audit_weights.cpp). If you have a catalogue of another kind, count its correct records, and examine the
/// others with the result.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/slips/main_sequence.hpp>
#include <bifolium/book/detail/slips/page_places.hpp>

namespace bifolium {
inline namespace v0 {

/// Counts over descriptions.
class WeightCounts {
  GatheringCounts early_{}, late_{};
  std::array<std::int32_t, 26> unnumbered_{};
  std::array<std::int32_t, 3> begin_{};               // by detail::NumbersBegin
  std::array<std::int32_t, 2> both_{}, only_pages_{}; // pages before page 1: no, yes
  std::array<std::int32_t, 2> without_a_{};           // the letters begin with A or another letter, with B
  std::array<std::int32_t, 2> last_{};                // the last page without a number is a verso, a recto
  GatheringCounts::Books completing_[2]{}; // late, early: books by the last gathering that would complete the first
  std::int32_t completed_{};               // those that have it
  std::int32_t books_{};

  /// Counts a book whose first gathering is smaller than most.
  void count_ends(detail::FormulaShape const& shape, bool early) {
    auto const main = detail::main_leaves(shape);
    auto const ends = detail::unequal_ends(shape, main);
    if (!ends) return;
    ++completing_[early ? 1 : 0][detail::book_row(main)][detail::size_column(ends->missing)];
    if (ends->completed) ++completed_;
  }
  /// Returns how many of them would have it if the two ends had nothing to do with each other.
  [[nodiscard]] double completed_by_chance() const {
    double all = 0;
    for (int early = 0; early < 2; ++early)
      for (std::size_t book = 0; book < completing_[early].size(); ++book) {
        auto const& last = (early != 0 ? early_ : late_).last[book];
        double books = 0;
        for (auto const count : last) books += count;
        for (std::size_t size = 0; size < last.size() && books > 0; ++size)
          all += completing_[early][book][size] * last[size] / books;
      }
    return all;
  }
  static double share(std::array<std::int32_t, 2> const& of) {
    return (of[1] + .5) / (of[0] + of[1] + 1); // half a book is added to each side, so that no share is 0 or 1
  }
  void count(detail::PageShape const& pages, detail::FormulaShape const& formula) {
    using Kind = detail::PageRunShape::Kind;
    std::int64_t before = 0, total = 0;
    auto const& runs = pages.runs;
    auto arabic = runs.size();
    for (std::size_t r = 0; r < runs.size(); ++r) {
      if (runs[r].kind == Kind::arabic && arabic == runs.size()) arabic = r, before = total;
      if (runs[r].kind == Kind::unnumbered && runs.size() > 1)
        ++unnumbered_[static_cast<std::size_t>(runs[r].last < 25 ? runs[r].last : 25)];
      total += runs[r].count;
    }
    if (runs.back().kind == Kind::unnumbered) ++last_[total % 2 == 0 ? 0 : 1];
    if (runs.size() > 1 || runs[0].kind != Kind::unnumbered)
      ++(detail::has_preliminaries(formula) ? both_ : only_pages_)[runs[0].kind != Kind::arabic ? 1 : 0];
    if (arabic > 0 && arabic < runs.size()) ++begin_[static_cast<std::size_t>(detail::numbers_begin(formula, before))];
  }

public:
  /// Counts a description. Returns false, and counts nothing, if it has no formula, or a pagination that does not agree
  /// with the formula to the page. A description without a year counts as early if it has no pagination.
  bool add(Description const& sound) {
    if (!sound.formula) return false;
    auto const shape = detail::shape_of(sound.formula->value);
    bool const by_pages = sound.pagination && !sound.pagination->value.runs.empty();
    if (by_pages) {
      auto const missing = 2 * shape.leaves() - sound.pagination->value.pages();
      if (missing < 0 || missing > Pagination::blank_verso) return false;
    }
    auto const early = sound.year ? sound.year->value.to <= last_incunable_year : !by_pages;
    auto& counts = early ? early_ : late_;
    GatheringCounts::Books* const places[]{&counts.first, &counts.middle, &counts.last, &counts.aside};
    auto const row = detail::book_row(detail::main_leaves(shape));
    detail::each_stretch(shape, [&](detail::GatheringPlace place, int leaves, std::int64_t, std::int64_t gatherings) {
      (*places[static_cast<std::size_t>(place)])[row][detail::size_column(leaves)] +=
          static_cast<std::int32_t>(gatherings);
    });
    count_ends(shape, early);
    if (by_pages && !sound.pagination->value.by_leaf())
      count(detail::PagePlaces{sound.pagination->text, sound.pagination->value}.shape(), shape);
    ++without_a_[detail::begins_with_b(shape) ? 1 : 0];
    ++books_;
    return true;
  }

  /// Returns the number of counted descriptions.
  [[nodiscard]] std::int32_t books() const noexcept { return books_; }
  /// Returns the weights. Numbers that are not counted are taken from `others`.
  [[nodiscard]] AuditWeights weights(AuditWeights const& others = audit_weights) const {
    auto all = others;
    all.early = early_, all.late = late_;
    all.unnumbered = unnumbered_;
    double const begins = begin_[0] + begin_[1] + begin_[2] + 3;
    for (std::size_t i = 0; i < 3; ++i) all.numbers_begin[i] = (begin_[i] + 1) / begins;
    all.without_a = share(without_a_);
    all.odd_total = share(last_);
    // ten books of the kind that chance makes are added, so that a few books say little
    all.ends_make_one = (completed_ + 10) / (completed_by_chance() + 10);
    all.preliminaries_in_both = share(both_);
    all.preliminaries_in_pages = share(only_pages_);
    return all;
  }
};

} // namespace v0
} // namespace bifolium
