// SPDX-License-Identifier: MIT
/// Writes a pagination as a statement, in one notation: pp. [8] 1-205 [206] [misprinting 45 as 54].
#pragma once

#include <bifolium/record/detail/page_sequences.hpp>
#include <bifolium/record/printed_number.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the words for the plates that the pages count, after a blank, as a number of pages of plates; empty if the
/// pages count none.
inline std::string plates_in_pages(Pagination const& pagination) {
  if (pagination.plate_pages == 0) return {};
  if (pagination.plate_pages == pagination.pages()) return " (including plates)";
  return " (including " + std::to_string(pagination.plate_pages) + (pagination.plate_pages == 1 ? " page" : " pages") +
         " of plates)";
}

/// Whether pages with one number are told apart by letters, and those letters: 24a-24d.
inline bool has_letters(PageRun const& run) {
  return run.starred && run.numerals == Numerals::arabic && run.numbering != Numbering::none && run.first == run.last &&
         run.count > 1 && run.count <= 26 && !run.true_last;
}
inline std::string lettered_pages(std::int64_t number, std::int64_t count) {
  auto const figures = std::to_string(number);
  auto text = figures + 'a';
  if (count > 1) text.append("-").append(figures) += static_cast<char>('a' + count - 1);
  return text;
}
constexpr char const* unit_before(PageRun const& run) {
  if (run.preliminary) return "p. l.";
  return run.unit == PageUnit::leaves    ? "ff."
         : run.unit == PageUnit::columns ? "cols."
         : run.unit == PageUnit::panels  ? "panels"
                                         : "pp.";
}

class PaginationWriter {
  Pagination const& pagination_;
  PageSequences sequences_{};
  std::string text_{};

  [[nodiscard]] static std::string series(int number) {
    return number == 0 ? std::string{} : std::string{raised(number).view()};
  }
  /// Returns the next number that a reader finds after run `r`, if it has the numerals of that run and no mark of a
  /// sequence.
  [[nodiscard]] std::int64_t next_number(std::size_t r, Numerals numerals) const {
    if (r + 1 == pagination_.runs.size()) return -1;
    auto const& here = pagination_.runs[r];
    auto const& next = pagination_.runs[r + 1];
    bool const marked = next.series != 0 || next.starred || next.part != here.part ||
                        std::string_view{unit_before(next)} != unit_before(here);
    bool const lone_bracket = next.numbering != Numbering::printed && next.first == next.last;
    return marked || lone_bracket || next.numerals != numerals ? -1 : next.first;
  }
  void write(std::size_t r) {
    auto const& run = pagination_.runs[r];
    auto const mark = series(run.series) + (run.starred ? "*" : "");
    auto const first = page_figure(run.first, run.numerals), last = page_figure(run.last, run.numerals);
    bool range = true;
    if (has_letters(run)) {
      auto const pages = series(run.series) + lettered_pages(run.first, run.count);
      text_ += run.numbering == Numbering::inferred ? '[' + pages + ']' : pages;
    } else if (run.numbering == Numbering::none) {
      bool const like_a_page = sequences_.is_number_of_page({}, run.count, next_number(r, Numerals::arabic));
      text_ += '[' + std::to_string(run.count) + (run.count == 1 || like_a_page ? " unnumbered]" : "]");
    } else if (run.numbering == Numbering::inferred) {
      range = run.first != run.last || run.numerals == Numerals::letters ||
              !sequences_.is_number_of_page(run, run.first, next_number(r, run.numerals));
      text_ += mark + '[' + first + (range ? "-" + last : "") + ']';
    } else {
      range = run.first != run.last || run.numerals == Numerals::letters || // a-a: a letter alone is not a page
              !sequences_.is_one_page(run, run.first, false, false);
      text_ +=
          mark + first + (range ? "-" + (run.starred && run.numerals != Numerals::letters ? "*" + last : last) : "");
    }
    if (run.numbering != Numbering::none && run.true_last)
      text_ += " [=" + page_figure(*run.true_last, run.numerals) + ']';
    if (r + 1 == pagination_.runs.size() && pagination_.incomplete) text_ += '+'; // directly after the number
    if (run.folded) text_ += " folded";
    sequences_.add(run, range);
  }
  void write_misprints() {
    bool first = true;
    for (auto const& wrong : pagination_.misprints) {
      text_ += first ? " [misprinting " : ", ";
      text_ += series(wrong.series) + page_figure(wrong.should_be, wrong.numerals) + " as " +
               page_figure(wrong.printed, wrong.numerals);
      first = false;
    }
    if (!first) text_ += ']';
  }

public:
  explicit PaginationWriter(Pagination const& pagination) : pagination_{pagination} {}

  std::string write() {
    auto const& runs = pagination_.runs;
    text_ = runs.empty() ? "pp." : unit_before(runs[0]);
    if (pagination_.unpaged) text_ += " [unnumbered]";
    for (std::size_t r = 0; r < runs.size(); ++r) {
      if (r > 0 && runs[r].part != runs[r - 1].part) text_ += ';', sequences_.begin_part();
      text_ += ' ';
      if (r > 0 && std::string_view{unit_before(runs[r])} != unit_before(runs[r - 1]))
        text_.append(unit_before(runs[r])) += ' ';
      write(r);
    }
    if (pagination_.incomplete && runs.empty()) text_ += " (incomplete)";
    if (pagination_.approximate && !runs.empty()) text_ += " (approximately)";
    text_ += detail::plates_in_pages(pagination_);
    write_misprints();
    return static_cast<std::string&&>(text_);
  }
};

} // namespace detail

/// Writes the statement in one notation. Reading it gives the same pagination.
[[nodiscard]] inline std::string write_pagination(Pagination const& pagination) {
  return detail::PaginationWriter{pagination}.write();
}

} // namespace v0
} // namespace bifolium
