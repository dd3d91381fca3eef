// SPDX-License-Identifier: MIT
/// One run as it stands in the text - a signature, perhaps a dash and a second one, perhaps a count - before anything is
/// decided about it. Looking at a run changes nothing, so the same scanner serves to read it, to look ahead for the count
/// that several runs share (a b⁸), and to read an earlier run again when a change names it.
#pragma once

#include <bifolium/collation/detail/formula_text.hpp>
#include <bifolium/leaf/signature_run.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run with its count, if it has one; or why there is none.
struct Element {
  SignatureScan first, last;
  CountScan count;
  std::int64_t gatherings{1};
  std::size_t from{}, end{};
  bool apart{};                   ///< blanks stood before the count
  bool single{true};              ///< no dash
  bool read_flat{};               ///< 2A-G was read as ²A-G
  bool by_sequence{};             ///< 1-210: number and count were parted by the runs beside it
  Problem problem{Problem::none}; ///< why the ends make no run
};

/// A count to which earlier runs have a right, and the byte behind it; 0 when there is none.
struct SharedCount {
  Cycle cycle;
  std::size_t until{};
  std::size_t reached{}; ///< how far was looked in vain: a run before this byte shares nothing either
};

class ElementScanner {
  FormulaText const& text_;

public:
  constexpr explicit ElementScanner(FormulaText const& text) noexcept : text_{text} {}

  /// One run with its count, if it has one; false when there is no run, and the element says why.
  constexpr bool scan(std::size_t from, Element& e) const {
    auto const scanner = text_.signatures();
    e.from = from;
    e.first = scanner.scan_first(from);
    if (!e.first) return false;
    e.end = e.first.end;
    e.last = e.first;
    bool const numeric = e.first.signature.mark() == Mark::number;
    if (auto const to = text_.dash(e.end); to != e.end && !is_minus(text_.code(to)) && text_.at(to) != '\0') {
      auto last = scanner.scan(to);
      if (last) {
        e.single = false;
        e.last = last;
        e.end = last.end;
        if (!join(e)) return false;
      }
    }
    bool const flat = text_.dialect().flat_counts || text_.at(e.end) == '(';
    e.count = CountScanner{text_.view()}.scan(e.end, flat && !numeric, true);
    if (e.first.count_inside && e.single) {
      if (!e.count.found() || !is_quotation_mark(text_.code(e.count.end))) {
        e.problem = Problem::unknown_mark;
        return false;
      }
      e.count.end += decode(text_.view(), e.count.end).bytes;
    }
    if (!e.count.found() && !numeric) count_apart(e);
    if (e.count.found()) e.end = e.count.end;
    return true;
  }
  /// Brings the ends of a run into one series and counts what lies between.
  constexpr bool join(Element& e) const {
    auto& a = e.first.signature;
    auto& b = e.last.signature;
    // a prefix holds for both ends; π and χ among Greek letters are letters
    if (b.series() == 0 && a.series() != 0) b = b.in_series(a.series());
    if (b.duplicate() == Duplicate::none && a.duplicate() != Duplicate::none) b = b.duplicated(a.duplicate());
    if (a.is_letter() && b.is_letter() && b.beside() == Beside::nothing && a.beside() == Beside::before)
      b = b.with_symbol(a.beside(), a.text(), a.text_size());
    a = among(b, a);
    b = among(a, b);
    auto number = run_length(a, b, text_.alphabet());
    if (!number && e.first.multiplied && a.multiple() <= 9 && b.multiple() == 1 && a.is_letter() &&
        a.mark() == b.mark() && a.series() == 0) {
      // 2A-G is ²A-G: as 2A to G the run would go backwards
      auto const series = static_cast<int>(a.multiple());
      auto const first =
          a.at_rank(a.rank(text_.alphabet()) - (series - 1) * (a.is_latin() ? text_.alphabet().size() : greek_letters),
                    text_.alphabet());
      number = run_length(first, b, text_.alphabet());
      if (number) a = first.in_series(series), b = b.in_series(series);
      e.first.flat_prefix = false;
      e.first.problem = Problem::none;
      e.read_flat = number.has_value();
    }
    if (!number) {
      e.problem = a.same_series_as(b) ? Problem::run_goes_backwards : Problem::run_crosses_series;
      if (second_letter_is_place(e)) e.problem = Problem::second_letter_is_place, ++e.end;
      return false;
    }
    e.gatherings = *number;
    return true;
  }
  /// Aa-Az: Aa is no doubled letter there, but the first gathering of an alphabet named by its first letter.
  [[nodiscard]] constexpr bool second_letter_is_place(Element const& e) const {
    auto const letter = [&](std::size_t i) { return is_latin_letter(text_.at(i)) ? small_letter(text_.at(i)) : '\0'; };
    auto const alphabet = letter(e.from);
    return alphabet != '\0' && letter(e.from + 1) == alphabet && letter(e.last.end - 1) == alphabet &&
           letter(e.last.end) != '\0' && letter(e.last.end) != alphabet;
  }
  /// A count with blanks before it: D ⁸ at the end of an element, k 16.
  constexpr void count_apart(Element& e) const {
    auto const next = text_.skip(text_.at(text_.skip(e.end)) == ',' ? text_.skip(e.end) + 1 : e.end);
    if (next == e.end) return;
    bool const comma = text_.at(text_.skip(e.end)) == ',';
    bool const raised = static_cast<unsigned char>(text_.at(next)) >= 0xC2 && superscript_digit(text_.code(next)) >= 0;
    if (!raised && !(is_digit(text_.at(next)) && text_.dialect().flat_counts)) return;
    auto const count = CountScanner{text_.view()}.scan(next, !raised, false);
    if (!count.found() || count.problem != Problem::none) return;
    auto const behind = count.end;
    auto const after = text_.skip(behind);
    char const c = text_.at(after);
    bool const ends = c == '\0' || c == '.' || c == ';' || c == ')' || c == ']' || (c == ',' && !comma);
    if (raised ? ends || c == '('
               : (ends || (!comma && after != behind && !is_dash(text_.code(after)) && !text_.is_extent(next)))) {
      e.count = count;
      e.apart = true;
    }
  }

  /// The count that a later gathering shares with those before it; `only_bracket`: only one behind a bracket does.
  [[nodiscard]] constexpr SharedCount shared(std::size_t i, bool only_bracket) const {
    while (i < text_.view().size()) {
      i = text_.skip(i);
      char const c = text_.at(i);
      if (c == ']') { // [a b]⁸
        auto const count = text_.count_at(i + 1);
        if (count.found() && count.problem == Problem::none && text_.at(i + 1) != '(') return {count.cycle, count.end};
        if (only_bracket) break;
      }
      bool const marked = c == '[' && !text_.is_group(i);
      if (!marked && (c == ',' || c == ';' || c == '.' || c == '[' || c == ']')) {
        ++i;
        continue;
      }
      if (c == '(') {
        auto const close = text_.closing(i);
        if (close == std::string_view::npos) break;
        i = close + 1;
        continue;
      }
      if (is_latin_letter(c) && text_.is_word(i)) break;
      Element e;
      if (!scan(i, e) || e.end <= i) break;
      if (e.count.found()) {
        if (e.count.problem != Problem::none || only_bracket) break;
        return {e.count.cycle, e.end};
      }
      i = e.end;
    }
    return {{}, 0, i};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
