// SPDX-License-Identifier: MIT
/// Where in its text each number of a pagination is, and an edit of a pagination as an edit of that text.
#pragma once

#include <bifolium/book/detail/page_shape.hpp>
#include <bifolium/book/detail/text_edit.hpp>
#include <bifolium/core/ascii.hpp>
#include <bifolium/record/pagination.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// One run of pages in the text.
struct PageRunPlace {
  TextSpan whole{}, first{}, last{}, truly{};
};

class PagePlaces {
  std::string_view text_;
  Pagination const& pagination_;
  std::vector<PageRunPlace> runs_{};

  struct FigurePlace {
    TextSpan span{};
    std::int64_t value{};
    bool roman{};
  };
  /// The next number from `at` on, arabic or roman.
  [[nodiscard]] std::optional<FigurePlace> figure_from(std::size_t at) const {
    for (; at < text_.size(); ++at) {
      bool const inside = at > 0 && (is_latin_letter(text_[at - 1]) || is_digit(text_[at - 1]));
      if (inside) continue;
      auto end = at;
      std::int64_t value = 0;
      for (; end < text_.size() && is_digit(text_[end]) && value < 100000000; ++end)
        value = value * 10 + (text_[end] - '0');
      if (end > at) return FigurePlace{{at, end}, value, false};
      auto const roman = roman_numeral(text_.substr(at));
      if (roman.bytes > 0 && (at + roman.bytes == text_.size() || !is_latin_letter(text_[at + roman.bytes])))
        return FigurePlace{{at, at + roman.bytes}, roman.value, true};
    }
    return std::nullopt;
  }
  [[nodiscard]] TextSpan find(std::size_t from, std::int64_t value) const {
    for (auto place = figure_from(from); place; place = figure_from(place->span.to))
      if (place->value == value) return place->span;
    return {};
  }
  /// The number, with its brackets.
  [[nodiscard]] TextSpan in_brackets(TextSpan span) const {
    if (span.from > 0 && text_[span.from - 1] == '[') --span.from;
    while (span.to < text_.size() && text_[span.to] != ']' && text_[span.to] != ',') ++span.to;
    if (span.to < text_.size() && text_[span.to] == ']') ++span.to;
    return span;
  }

public:
  PagePlaces(std::string_view text, Pagination const& pagination) : text_{text}, pagination_{pagination} {
    std::size_t at = 0;
    for (auto const& run : pagination.runs) {
      PageRunPlace place;
      if (run.numbering == Numbering::none) {
        place.last = find(at, run.count);
        if (!place.last.empty()) place.whole = in_brackets(place.last);
      } else {
        auto const next = figure_from(at);
        if (next && next->value == run.first && run.first != run.last) place.first = next->span;
        place.last = find(!place.first.empty() ? place.first.to : at, run.last);
        if (!place.last.empty())
          place.whole = {!place.first.empty() ? place.first.from : place.last.from, place.last.to};
        if (!place.whole.empty() && place.whole.from > 0 && text_[place.whole.from - 1] == '[') --place.whole.from;
        if (!place.last.empty() && run.true_last != 0) place.truly = find(place.last.to, run.true_last);
        if (!place.truly.empty()) place.whole.to = in_brackets(place.truly).to;
      }
      if (!place.whole.empty()) at = place.whole.to;
      runs_.push_back(place);
    }
  }
  [[nodiscard]] std::vector<PageRunPlace> const& runs() const { return runs_; }
  [[nodiscard]] bool complete() const {
    for (auto const& run : runs_)
      if (run.last.empty()) return false;
    return !runs_.empty();
  }

  /// The pagination as numbers.
  [[nodiscard]] PageShape shape() const {
    PageShape shape;
    shape.by_leaf = pagination_.by_leaf;
    for (std::size_t r = 0; r < pagination_.runs.size(); ++r) {
      auto const& run = pagination_.runs[r];
      PageRunShape one;
      one.kind = run.numbering == Numbering::none  ? PageRunShape::Kind::unnumbered
                 : run.numerals == Numerals::roman ? PageRunShape::Kind::roman
                                                   : PageRunShape::Kind::arabic;
      one.first = run.numbering != Numbering::none && !runs_[r].first.empty() ? run.first : 0;
      one.last = run.numbering == Numbering::none ? run.count : run.last;
      one.truly = run.true_last;
      one.count = run.count;
      one.origin = static_cast<std::int32_t>(r);
      shape.runs.push_back(one);
    }
    return shape;
  }

  /// An edit of the pagination, in the text. pre: complete().
  [[nodiscard]] std::optional<TextEdit> of(PageEdit const& edit) const {
    auto const r = static_cast<std::size_t>(edit.run);
    auto const number = [&](std::int64_t value) { return page_figure(value, pagination_.runs[r].numerals); };
    bool const commas = text_.find(',') != text_.npos || !begins_with_unit();
    std::string const gap = commas ? ", " : " ";
    switch (edit.what) {
    case PageEdit::What::none:
      return std::nullopt;
    case PageEdit::What::last:
      return TextEdit{runs_[r].last,
                      pagination_.runs[r].numbering == Numbering::none ? std::to_string(edit.a) : number(edit.a)};
    case PageEdit::What::truly:
      return TextEdit{{runs_[r].last.to, runs_[r].last.to}, " [i.e. " + number(edit.a) + ']'};
    case PageEdit::What::first:
      if (edit.a == 0) return TextEdit{{runs_[r].whole.from, runs_[r].last.from}, ""};
      if (!runs_[r].first.empty()) return TextEdit{runs_[r].first, number(edit.a)};
      return TextEdit{{runs_[r].last.from, runs_[r].last.from}, number(edit.a) + '-'};
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
  [[nodiscard]] bool begins_with_unit() const {
    auto const place = runs_.empty() ? TextSpan{} : runs_[0].whole;
    return text_.substr(0, place.from).find_first_not_of(" [") != text_.npos;
  }
  [[nodiscard]] std::optional<TextEdit> of_unit() const {
    auto from = begins_with_unit() ? 0 : runs_.back().whole.to;
    while (from < text_.size() && text_[from] == ' ') ++from;
    auto to = from;
    while (to < text_.size() && (is_latin_letter(text_[to]) || text_[to] == '.')) ++to;
    if (to == from) return std::nullopt;
    if (begins_with_unit()) return TextEdit{{from, to}, pagination_.by_leaf ? "pp." : "ff."};
    auto const end = to < text_.size() ? to : to;
    return TextEdit{{from, end}, pagination_.by_leaf ? "p." : "leaves"};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
