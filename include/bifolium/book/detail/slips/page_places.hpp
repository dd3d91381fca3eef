// SPDX-License-Identifier: MIT
/// Finds the place of each number of a pagination in its text, and writes an edit of a pagination as an edit of that
/// text.
#pragma once

#include <bifolium/book/detail/slips/page_shape.hpp>
#include <bifolium/book/detail/slips/text_edit.hpp>
#include <bifolium/record/printed_number.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// One run of pages in the text.
struct PageRunPlace {
  TextSpan whole{};
  std::optional<TextSpan> first{}, last{}, truly{}; // of those that are written
};

class PagePlaces {
  std::string_view text_;
  Pagination const& pagination_;
  std::vector<PageRunPlace> runs_{};

public:
  PagePlaces(std::string_view text, Pagination const& pagination) : text_{text}, pagination_{pagination} {
    for (auto const& run : pagination.runs) runs_.push_back({run.at, run.first_at, run.last_at, run.true_at});
  }
  [[nodiscard]] std::vector<PageRunPlace> const& runs() const { return runs_; }
  /// Returns true if every number is in the text and all are counted in one unit, so that an edit can be written.
  [[nodiscard]] bool complete() const {
    for (auto const& run : runs_)
      if (!run.last) return false;
    return !runs_.empty() && one_unit();
  }

  /// Returns the pagination as numbers.
  [[nodiscard]] PageShape shape() const {
    PageShape shape;
    shape.by_leaf = pagination_.by_leaf();
    auto const total = pagination_.total();
    shape.may_not_count = total.stated - total.low;
    for (std::size_t r = 0; r < pagination_.runs.size(); ++r) {
      auto const& run = pagination_.runs[r];
      PageRunShape one;
      one.kind = run.numbering == Numbering::none  ? PageRunShape::Kind::unnumbered
                 : run.numerals == Numerals::roman ? PageRunShape::Kind::roman
                                                   : PageRunShape::Kind::arabic;
      one.first = run.numbering != Numbering::none && runs_[r].first ? run.first : 0;
      one.last = run.numbering == Numbering::none ? run.count : run.last;
      // a number that the description corrects is not corrected again: not that of pages without numbers either
      one.truly = run.numbering == Numbering::none && run.true_at ? run.count : run.true_last.value_or(0);
      one.count = one_unit() ? run.count : run.pages();
      shape.runs.push_back(one);
    }
    return shape;
  }

  /// Returns an edit of the pagination, in the text. Precondition: complete().
  [[nodiscard]] std::optional<TextEdit> of(PageEdit const& edit) const {
    auto const r = static_cast<std::size_t>(edit.run);
    auto const number = [&](std::int64_t value) { return page_figure(value, pagination_.runs[r].numerals); };
    bool const commas = text_.find(',') != text_.npos || !begins_with_unit();
    std::string const gap = commas ? ", " : " ";
    switch (edit.what) {
    case PageEdit::What::none:
      return std::nullopt;
    case PageEdit::What::last:
      return TextEdit{*runs_[r].last,
                      pagination_.runs[r].numbering == Numbering::none ? std::to_string(edit.a) : number(edit.a)};
    case PageEdit::What::truly:
      return TextEdit{{runs_[r].last->to, runs_[r].last->to}, " [i.e. " + number(edit.a) + ']'};
    case PageEdit::What::first:
      if (edit.a == 0) return TextEdit{{runs_[r].whole.from, runs_[r].last->from}, ""};
      if (runs_[r].first) return TextEdit{*runs_[r].first, number(edit.a)};
      return TextEdit{{runs_[r].last->from, runs_[r].last->from}, number(edit.a) + '-'};
    case PageEdit::What::insert: {
      auto const pages = '[' + std::to_string(edit.a) + ']';
      if (r == runs_.size()) return TextEdit{{runs_.back().whole.to, runs_.back().whole.to}, gap + pages};
      return TextEdit{{runs_[r].whole.from, runs_[r].whole.from}, pages + gap};
    }
    case PageEdit::What::remove:
      if (r + 1 < runs_.size()) return TextEdit{{runs_[r].whole.from, runs_[r + 1].whole.from}, ""};
      if (r > 0) return TextEdit{{runs_[r - 1].whole.to, runs_[r].whole.to}, ""};
      return std::nullopt;
    case PageEdit::What::unit:
      return of_unit();
    }
    return std::nullopt;
  }

private:
  [[nodiscard]] bool one_unit() const {
    for (auto const& run : pagination_.runs)
      if (run.unit != pagination_.runs.front().unit || run.unit == PageUnit::columns || run.starred ||
          run.numerals == Numerals::letters)
        return false;
    return true;
  }
  [[nodiscard]] bool begins_with_unit() const {
    auto const place = runs_.empty() ? TextSpan{} : runs_[0].whole;
    return !trimmed(text_, {0, place.from}, " [").empty();
  }
  [[nodiscard]] std::optional<TextEdit> of_unit() const {
    auto from = begins_with_unit() ? 0 : runs_.back().whole.to;
    from = after_blanks(text_, from);
    auto to = from;
    while (to < text_.size() && (is_latin_letter(text_[to]) || text_[to] == '.')) ++to;
    if (to == from) return std::nullopt;
    if (begins_with_unit()) return TextEdit{{from, to}, pagination_.by_leaf() ? "pp." : "ff."};
    return TextEdit{{from, to}, pagination_.by_leaf() ? "p." : "leaves"};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
