// SPDX-License-Identifier: MIT
/// Writing a statement of pagination or foliation.
#pragma once

#include <bifolium/record/pagination.hpp>

namespace bifolium {
inline namespace v0 {

/// The statement set down in one way; reading it gives the same again.
[[nodiscard]] inline std::string write_pagination(Pagination const& pagination) {
  std::string text = pagination.by_leaf ? "ff." : "pp.";
  if (pagination.unpaged) text += " [unnumbered]";
  auto const series = [](int figure) { return figure == 0 ? std::string{} : std::string{raised(figure).view()}; };
  PageRun const* before = nullptr;
  for (auto const& run : pagination.runs) {
    text += ' ';
    bool const goes_on = before != nullptr && before->numbering != Numbering::none &&
                         before->numerals == run.numerals && before->series == run.series &&
                         run.first == before->last + 1;
    auto const lone = run.first == run.last && (goes_on || (run.first == 1 && run.numbering == Numbering::printed));
    auto const ends = [&] {
      return page_figure(run.first, run.numerals) + (lone ? "" : "-" + page_figure(run.last, run.numerals));
    };
    if (run.numbering == Numbering::none) {
      bool const like_a_page = run.count == 1 || (before != nullptr && before->numbering != Numbering::none &&
                                                  run.count == before->last + 1);
      text += '[' + std::to_string(run.count) + (like_a_page ? " unnumbered]" : "]");
    } else if (run.numbering == Numbering::inferred)
      text += series(run.series) + '[' + ends() + ']';
    else
      text += series(run.series) + ends();
    if (run.numbering != Numbering::none && run.true_last != 0)
      text += " [=" + page_figure(run.true_last, run.numerals) + ']';
    before = &run;
  }
  for (auto const& wrong : pagination.misprints) {
    text += &wrong == pagination.misprints.data() ? " [misprinting " : ", ";
    text += series(wrong.series) + page_figure(wrong.should_be, wrong.numerals) + " as " +
            page_figure(wrong.printed, wrong.numerals);
  }
  if (!pagination.misprints.empty()) text += ']';
  return text;
}

} // namespace v0
} // namespace bifolium
