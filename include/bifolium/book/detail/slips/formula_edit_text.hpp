// SPDX-License-Identifier: MIT
/// Writes an edit of a formula as an edit of its text. Everything else stays as the cataloguer wrote it: counts raised
/// or on the line, brackets, dashes.
#pragma once

#include <bifolium/book/detail/slips/formula_places.hpp>
#include <bifolium/book/detail/slips/formula_slips.hpp>
#include <bifolium/leaf/write_signature.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FormulaEditText {
  std::string_view text_;
  Formula const& formula_;
  FormulaPlaces const& places_;
  FormulaShape const& shape_;
  enum class Style : std::uint8_t { raised, caret, flat } style_{Style::raised};

  [[nodiscard]] std::string count(int leaves) const {
    if (style_ == Style::raised) return std::string{raised(leaves).view()};
    return (style_ == Style::caret ? "^" : "") + std::to_string(leaves);
  }
  [[nodiscard]] std::string counts(Cycle const& leaves) const {
    std::string text;
    for (std::size_t t = 0; t < leaves.size(); ++t) text += (t == 0 ? "" : "/") + count(leaves.term(t));
    return text;
  }
  [[nodiscard]] Signature mark(Signature const& of_series, std::int64_t place) const {
    return of_series.at_rank(place, formula_.alphabet());
  }
  [[nodiscard]] static std::string spelled(Signature const& mark, bool inferred) {
    auto const text = std::string{to_text(mark).view()};
    return inferred ? '[' + text + ']' : text;
  }
  [[nodiscard]] std::string marks(RunShape const& shape, Run const& run) const {
    auto text = spelled(mark(run.first, shape.first), run.first_inferred);
    if (shape.last != shape.first || shape.foreign)
      text += '-' + spelled(mark(run.first, shape.last), run.last_inferred);
    return text;
  }
  /// Returns the place of the counts of a run in its text.
  [[nodiscard]] TextSpan count_place(std::size_t r) const {
    auto const place = places_.runs()[r];
    auto to = place.to;
    while (to > place.from && (text_[to - 1] == '.' || text_[to - 1] == ']')) --to;
    if (places_.omitted(r)) return {place.to, place.to};
    auto from = to;
    auto const terms = formula_.runs()[r].leaves.size();
    for (std::size_t t = 0; t < terms; ++t) {
      auto const start = digits_before(place.from, from);
      if (start == from) return {};
      from = start;
      if (t + 1 < terms) { // the separator of the counts
        while (from > place.from && (static_cast<unsigned char>(text_[from - 1]) & 0xC0U) == 0x80U) --from;
        --from;
      }
    }
    if (from > place.from && text_[from - 1] == '^') --from;
    return {from, to};
  }
  [[nodiscard]] std::size_t digits_before(std::size_t from, std::size_t to) const {
    while (to > from) {
      auto begin = to - 1;
      while (begin > from && (static_cast<unsigned char>(text_[begin]) & 0xC0U) == 0x80U) --begin;
      auto const c = decode(text_, begin).value;
      if (!(c < 0x80 && is_digit(static_cast<char>(c))) && !superscript_digit(c)) break;
      to = begin;
    }
    return to;
  }
  [[nodiscard]] std::optional<TextEdit> of_counts(std::size_t r, Cycle const& leaves, bool with_marks = true) const {
    auto const place = count_place(r);
    if (place.to == 0 || place.from <= places_.runs()[r].from) return std::nullopt;
    // on the line, the digits of counts and of numbered gatherings would run together
    bool const raise = places_.omitted(r) && style_ == Style::flat && formula_.runs()[r].last.mark() == Mark::number;
    // the whole run, so that a person sees the meaning, unless another edit changes its marks
    auto const run = with_marks ? places_.runs()[r] : place;
    auto const put = std::string{text_.substr(run.from, place.from - run.from)} +
                     (raise ? std::string{raised(leaves.term(0)).view()} : counts(leaves)) +
                     std::string{text_.substr(place.to, run.to - place.to)};
    return TextEdit{run, put};
  }
  [[nodiscard]] std::optional<TextEdit> of_marks(std::size_t r, RunShape const& shape) const {
    auto const place = places_.runs()[r];
    auto const from_count = count_place(r);
    if (from_count.to == 0) return std::nullopt;
    return TextEdit{{place.from, from_count.from}, marks(shape, formula_.runs()[r])};
  }
  [[nodiscard]] Signature new_mark(FormulaEdit const& edit) const {
    auto const& runs = formula_.runs();
    if (edit.what == FormulaEdit::What::prepend && begins_with_b(shape_)) return mark(runs[0].first, 1);
    bool any_pi = false, any_chi = false;
    for (auto const& run : runs) {
      any_pi = any_pi || run.first.mark() == Mark::pi;
      any_chi = any_chi || run.first.mark() == Mark::chi;
    }
    auto const chi = Signature::chi(any_chi ? 2 : 1);
    return edit.what == FormulaEdit::What::prepend && !any_pi ? Signature::pi() : chi;
  }
  /// Writes a mark in words, as rules for catalogues require (DCRMR 6.215.44.3), unless the text has the letters.
  [[nodiscard]] std::string name(Signature const& mark) const {
    bool const letters = text_.find("π") != text_.npos || text_.find("χ") != text_.npos;
    if (!letters && mark.mark() == Mark::pi) return "pi";
    if (!letters && mark.mark() == Mark::chi) return mark.multiple() > 1 ? "2chi" : "chi";
    return std::string{to_text(mark).view()};
  }
  [[nodiscard]] std::string new_run(Signature const& first, Signature const& last, int leaves) const {
    auto text = name(first);
    if (!(first == last)) text += '-' + name(last);
    return text + count(leaves);
  }
  /// Returns the end of a run including the parentheses after it.
  [[nodiscard]] std::size_t end_of(std::size_t r) const {
    auto end = places_.runs()[r].to;
    for (auto const& change : places_.changes())
      if (change.span.from >= end && after_blanks(text_, end) == change.span.from) end = change.span.to;
    return end;
  }
  [[nodiscard]] std::optional<TextEdit> of_removal(std::size_t r) const {
    auto place = places_.runs()[r];
    if (r > 0 && r + 1 == places_.runs().size())
      place.from = places_.runs()[r - 1].to == 0 ? place.from : end_of(r - 1);
    else
      for (bool more = true; more; more = place.to < text_.size() && text_[place.to] == ',')
        place.to = after_blanks(text_, place.to + (place.to < text_.size() && text_[place.to] == ',' ? 1 : 0));
    return TextEdit{place, ""};
  }
  [[nodiscard]] std::optional<TextEdit> of_shift(FormulaEdit const& edit) const {
    auto const after = applied(shape_, edit);
    if (!after) return std::nullopt;
    auto const r = static_cast<std::size_t>(edit.run);
    std::vector<TextEdit> all;
    auto to = places_.runs()[r].to;
    for (auto i = r; i < shape_.runs.size() && (i == r || shape_.runs[i].series == shape_.runs[r].series); ++i) {
      auto one = of_marks(i, after->runs[i]);
      if (!one) return std::nullopt;
      all.push_back(*one);
      to = places_.runs()[i].to;
    }
    auto const from = places_.runs()[r].from;
    auto const old = text_.substr(from, to - from);
    for (auto& one : all) one.span.from -= from, one.span.to -= from;
    return TextEdit{{from, to}, edited(old, all)};
  }

public:
  FormulaEditText(std::string_view text, Formula const& formula, FormulaPlaces const& places, FormulaShape const& shape)
      : text_{text}, formula_{formula}, places_{places}, shape_{shape} {
    bool any_raised = false;
    for (std::size_t i = 0; i < text.size();) {
      auto const point = decode(text, i);
      any_raised = any_raised || superscript_digit(point.value);
      i += point.bytes;
    }
    if (!any_raised && text.find('^') != text.npos)
      style_ = Style::caret;
    else if (!any_raised && text.find_first_of("123456789") != text.npos)
      style_ = Style::flat;
  }

  /// Returns the edit of the text. `try_number` counts attempts from 0 if a leaf must be named that no other change
  /// names. `beside`: another edit changes the marks of the same run.
  [[nodiscard]] std::optional<TextEdit> of(FormulaEdit const& edit, int try_number = 0, bool beside = false) const {
    using What = FormulaEdit::What;
    auto const r = static_cast<std::size_t>(edit.run);
    auto const after = edit.what == What::drop_change || edit.what == What::change || edit.what == What::alphabet
                           ? std::optional{shape_}
                           : applied(shape_, edit);
    if (!after || (edit.what != What::drop_change && !places_.complete())) return std::nullopt;
    switch (edit.what) {
    case What::leaves:
    case What::supply:
      return of_counts(r, after->runs[r].leaves, !beside);
    case What::last:
    case What::first:
      return of_marks(r, after->runs[r]);
    case What::shift:
      return of_shift(edit);
    case What::insert_between: {
      auto const& run = after->runs[r + 1];
      auto const& series = formula_.runs()[r].first;
      return TextEdit{{end_of(r), end_of(r)}, ' ' + new_run(mark(series, run.first), mark(series, run.last), edit.a)};
    }
    case What::append: {
      auto const& run = after->runs.back();
      auto const next = mark(formula_.runs().back().first, run.first);
      return TextEdit{{places_.end(), places_.end()}, ' ' + new_run(next, next, edit.a)};
    }
    case What::prepend: {
      auto const next = new_mark(edit);
      auto const at = places_.runs()[0].from;
      return TextEdit{{at, at}, new_run(next, next, edit.a) + ' '};
    }
    case What::second: {
      auto const next = new_mark(edit);
      return TextEdit{{end_of(0), end_of(0)}, ' ' + new_run(next, next, edit.a)};
    }
    case What::remove:
      return of_removal(r);
    case What::change:
      return of_change(edit, try_number);
    case What::drop_change:
      return of_dropped(edit);
    case What::none:
    case What::alphabet:
    case What::supply_all:
    case What::supply_next:
      return std::nullopt;
    }
    return std::nullopt;
  }
  /// Returns the edits for several runs: all missing counts.
  [[nodiscard]] std::vector<TextEdit> of_all_counts(FormulaEdit const& edit) const {
    std::vector<TextEdit> all;
    auto const after = applied(shape_, edit);
    if (!after || !places_.complete()) return all;
    for (std::size_t r = 0; r < shape_.runs.size(); ++r)
      if (shape_.runs[r].omitted)
        if (auto one = of_counts(r, after->runs[r].leaves)) all.push_back(*one);
    return all;
  }

private:
  [[nodiscard]] std::optional<TextEdit> of_change(FormulaEdit const& edit, int try_number) const {
    auto const r = edit.b == 1 ? 0 : shape_.runs.size() - 1;
    auto const& run = formula_.runs()[r];
    auto const index = edit.b == 1 ? 0 : run.gatherings - 1;
    auto const leaves = run.leaves.at(index);
    auto const name = std::string{to_text(formula_.signature({static_cast<std::uint32_t>(r), index})).view()} +
                      (run.first.mark() == Mark::number ? "/" : "");
    auto const leaf = edit.b == 1 ? 1 + try_number : leaves - try_number;
    if (leaf < 1 || leaf > leaves || (edit.a == -2 && leaf < 2)) return std::nullopt;
    auto const at = edit.b == 1 ? end_of(0) : places_.end();
    auto change = edit.a > 0 ? '(' + name + std::to_string(leaf) + '+' + std::to_string(edit.a) + ')'
                             : "(−" + name + std::to_string(edit.a == -2 ? leaf - 1 : leaf);
    if (edit.a == -2) change += ',' + std::to_string(leaf);
    if (edit.a < 0) change += ')';
    return TextEdit{{at, at}, ' ' + change};
  }
  /// Returns the edit that removes the parenthesis, or leaves only the second of two leaves in a list.
  [[nodiscard]] std::optional<TextEdit> of_dropped(FormulaEdit const& edit) const {
    auto const span = places_.changes()[static_cast<std::size_t>(edit.run)].span;
    if (edit.b == 0) {
      return TextEdit{{before_blanks(text_, span.from), span.to}, ""};
    }
    // the second half of a list stays: (-A1,2,3,4) becomes (-A3,4)
    std::size_t figures = 0, begin = 0;
    for (auto i = span.from; i < span.to; ++i)
      if (is_digit(text_[i]) && !is_digit(text_[i - 1])) {
        if (figures == 0) begin = i;
        ++figures;
      }
    if (figures < 2 || figures % 2 != 0) return std::nullopt;
    std::size_t passed = 0, at = begin;
    for (; at < span.to && passed < figures / 2; ++at)
      if (text_[at] == ',' || text_[at] == '.') ++passed;
    return TextEdit{{begin, after_blanks(text_, at)}, ""};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
