// SPDX-License-Identifier: MIT
/// Writes an extent by the rules for rare books (DCRM(B) area 5B): each sequence by its last number, pages without
/// numbers in brackets, and a wrong last number corrected with "i.e.": "[8], 205, [3] p., [2] leaves of plates".
#pragma once

#include <bifolium/record/detail/page_sequences.hpp>
#include <bifolium/record/extent.hpp>
#include <bifolium/record/printed_number.hpp>
#include <bifolium/record/write_pagination.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Writes the pages. The short form leaves out the number of each page. It keeps the number of pages of each unit.
class ExtentWriter {
  Pagination const& pagination_;
  PageSequences sequences_{}; // the sequences as a reader of the text finds them
  std::string text_{};
  bool group_open_{}; // true if numbers are written, but their unit is not yet

  [[nodiscard]] static bool same_unit(PageRun const& a, PageRun const& b) {
    return a.unit == b.unit && a.preliminary == b.preliminary && a.folded == b.folded && a.part == b.part;
  }
  void add(std::string const& words) {
    text_ += (text_.empty() || text_.ends_with("; ") ? "" : ", ") + words;
    group_open_ = true;
  }
  /// `next`: the number after the pages without numbers, or -1.
  void add_unnumbered(std::int64_t count, std::int64_t next = -1) {
    PageRun run;
    // 1-205, [206] p.; 12, [13], 14-320 p.
    bool const like_a_page = sequences_.is_number_of_page(run, count, -1) || next == count + 1;
    add('[' + std::to_string(count) + (like_a_page ? " unnumbered]" : "]"));
    run.numbering = Numbering::none, run.count = count;
    sequences_.add(run, false);
  }
  /// Writes one sequence: `first` to `last`, with `count` pages. The correction is written so that a reader gets this
  /// count.
  void add_numbered(std::int64_t first, std::int64_t last, std::int64_t count, Numerals numerals) {
    PageRun run{Numbering::printed, numerals};
    run.first = first, run.last = last, run.count = last - first + 1;
    bool const lone = first == 1 && numerals != Numerals::letters && !sequences_.is_one_page(run, last, true, false);
    auto words = (lone ? "" : page_figure(first, numerals) + '-') + page_figure(last, numerals);
    if (run.count != count) {
      std::int64_t const candidates[]{first - 1 + count, sequences_.counted_to(run) + count, count};
      std::int64_t truly = 0;
      for (auto const one : candidates)
        if (truly == 0 && one > 0 && sequences_.corrected_count(run, one) == count) truly = one;
      if (truly == 0) return add_unnumbered(count);
      words += " [i.e. " + page_figure(truly, numerals) + ']';
      run.true_last = truly;
    }
    run.count = count;
    add(words);
    sequences_.add(run, !lone);
  }
  /// Writes pages that repeat a number: 24a, 24a-24d.
  void add_repeated(PageRun const& of, std::int64_t count) {
    PageRun run{Numbering::printed, Numerals::arabic, 0, true};
    run.first = run.last = of.first, run.count = count;
    add(lettered_pages(run.first, count));
    sequences_.add(run, true);
  }
  void close_group(PageRun const& run, bool one) {
    if (!group_open_) return;
    if (run.folded) text_ += " folded";
    text_ += run.preliminary                 ? " p. l."
             : run.unit == PageUnit::leaves  ? (one ? " leaf" : " leaves")
             : run.unit == PageUnit::columns ? " columns"
             : run.unit == PageUnit::panels  ? " panels"
                                             : " p.";
    group_open_ = false;
  }

public:
  explicit ExtentWriter(Pagination const& pagination) : pagination_{pagination} {}

  std::string write() {
    auto const& runs = pagination_.runs;
    std::int64_t group = 0; // number of pages in the group of one unit
    for (std::size_t r = 0; r < runs.size();) {
      // one sequence of numbers: the runs that continue in it, without unnumbered pages at its end
      auto const first = r;
      auto end = r;
      for (; r < runs.size() && runs[r].numbering != Numbering::none && same_unit(runs[r], runs[first]); ++r) {
        if (r > first && runs[r].unit == PageUnit::columns) break; // half a page of each run is a page
        bool const opens = r == first + 1 && runs[first].numbering == Numbering::inferred && runs[first].count == 1 &&
                           runs[r].first == runs[first].last + 1;                // [A]-H
        if (r > first && runs[r].numerals == Numerals::letters && !opens) break; // letters are not corrected
        if (r > first && runs[r].folded) break;                                  // the word is said of one number
        bool const same = runs[r].numerals == runs[first].numerals && runs[r].series == runs[first].series &&
                          runs[r].starred == runs[first].starred;
        bool const new_sequence = r > first && (runs[r].first == 1 || runs[r].last < runs[first].first);
        if (!same || new_sequence) break;
        if (runs[r].numbering == Numbering::printed) end = r + 1;
      }
      auto const numbers = [&](std::size_t from, std::size_t to) {
        std::int64_t count = 0;
        for (auto i = from; i < to; ++i) count += runs[i].count;
        return count;
      };
      bool const repeated = end > first && runs[first].starred && runs[first].numerals == Numerals::arabic &&
                            runs[first].first == runs[end - 1].last && numbers(first, end) <= 26;
      if (repeated)
        add_repeated(runs[first], numbers(first, end));
      else if (end > first)
        add_numbered(runs[first].first, runs[end - 1].last, numbers(first, end), runs[first].numerals);
      auto without = numbers(end, r);
      bool const more = r < runs.size() && same_unit(runs[r], runs[first]) &&
                        (r == first || (runs[r].unit != PageUnit::columns && !runs[r].folded));
      if (more && runs[r].numbering == Numbering::none) without += runs[r++].count;
      bool const number_follows =
          r < runs.size() && runs[r].numbering != Numbering::none && runs[r].part == runs[first].part;
      if (without > 0) add_unnumbered(without, number_follows ? runs[r].first : -1);
      group += numbers(first, r);
      bool const last = r == runs.size();
      if (last && pagination_.incomplete) text_ += '+';
      if (!last && same_unit(runs[r - 1], runs[r]) && !runs[r].folded) continue;
      close_group(runs[r - 1], group == 1);
      group = 0;
      if (!last && runs[r].part != runs[r - 1].part) text_ += "; ", sequences_.begin_part();
    }
    return static_cast<std::string&&>(text_);
  }
};

} // namespace detail

/// Writes the pages as an extent: "[8], 205, [3] p.", "viii, 154 [i.e. 152] p.", "[2], 152 leaves". Reading it gives
/// the same number of pages in the same units. The text is empty if the pages have no numbers and their number is not
/// stated.
[[nodiscard]] inline std::string extent_line(Pagination const& pagination) {
  return detail::ExtentWriter{pagination}.write() + detail::plates_in_pages(pagination);
}
/// Writes plates as they follow the pages: "[3] leaves of plates (1 folded)", "[2] leaves of plates (included in the
/// pagination)".
[[nodiscard]] inline std::string plates_line(Plates const& plates) {
  std::string text = plates.approximate ? "approximately " : "";
  auto const number = page_figure(plates.count, plates.numerals);
  text += plates.numbered ? number : '[' + number + ']';
  auto const unit = plates.unit == PageUnit::pages ? (plates.count == 1 ? " page" : " pages")
                                                   : (plates.count == 1 ? " leaf" : " leaves");
  text.append(unit).append(" of plates");
  if (plates.folded) text += " (" + std::to_string(*plates.folded) + " folded)";
  if (plates.in_pages) text += " (included in the pagination)";
  return text;
}
/// Writes the whole extent: "2 v. (vi, 200, [4] p., [2] leaves of plates)". Reading it gives the same numbers of pages,
/// plates and volumes.
[[nodiscard]] inline std::string extent_line(Extent const& extent) {
  auto text = detail::ExtentWriter{extent.pagination}.write();
  if (extent.pagination.approximate && !text.empty()) text.insert(0, "approximately ");
  auto const add = [&](std::string const& words) { text += (text.empty() ? "" : ", ") + words; };
  if (extent.pagination.unpaged && text.empty()) add("unpaged");
  if (extent.various_pagings) add("various pagings");
  if (extent.pagination.incomplete && extent.pagination.runs.empty()) add("incomplete");
  std::int64_t listed = 0; // pages of the plates that the pages count
  for (auto const& plates : extent.plates)
    if (plates.in_pages) listed += plates.unit == PageUnit::pages ? plates.count : 2 * plates.count;
  if (listed < extent.pagination.plate_pages) text += " (including plates)";
  for (auto const& plates : extent.plates) add(plates_line(plates));
  if (!extent.volumes && !extent.sheets) return text;
  std::string whole;
  if (extent.volumes) whole = std::to_string(*extent.volumes) + " v.";
  if (extent.bound_in) whole += " in " + std::to_string(*extent.bound_in);
  if (extent.sheets) {
    whole += (whole.empty() ? "" : ", ") + std::to_string(*extent.sheets);
    whole += *extent.sheets == 1 ? " sheet" : " sheets";
  }
  return text.empty() ? whole : whole + " (" + text + ')';
}

} // namespace v0
} // namespace bifolium
