// SPDX-License-Identifier: MIT
/// One mark at one place of a text. The same scanner serves single signatures, formulas and references, so that all three
/// take the same marks. What a mark may consist of nests only so far (a raised figure, then π or χ, then a multiple, then
/// the letter): `depth` says what has gone before.
#pragma once

#include <bifolium/leaf/detail/signature_text.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SignatureScanner : SignatureText {

public:
  using SignatureText::letters, SignatureText::symbol_in_parentheses;
  constexpr SignatureScanner(std::string_view text, Letters letters) : SignatureText{text, letters} {}

  /// The same at the beginning of a run, where the count may stand in the quotation marks of a mark: 'Gg⁶'.
  [[nodiscard]] constexpr SignatureScan scan_first(std::size_t i) const {
    return opens_quotation(code(i)) ? quoted(i, true) : scan(i);
  }
  /// One mark at byte `i`, no blanks before it.
  [[nodiscard]] constexpr SignatureScan scan(std::size_t i, int depth = 0) const {
    char const c = at(i);
    if (is_latin_letter(c) && c != 'p' && c != 'P' && c != 'c' && c != 'C') return beside(letters(i, 1));
    if (i >= text_.size()) return fail(Problem::unexpected_end, i);

    if (int const digit = static_cast<unsigned char>(c) >= 0xC2 ? superscript_digit(code(i)) : -1; digit >= 0) {
      int series = 0;
      while (superscript_digit(code(i)) >= 0 && series < 100) {
        series = series * 10 + superscript_digit(code(i));
        i += decode(text_, i).bytes;
      }
      if (depth > 0 || series < 1 || series > 99) return fail(Problem::no_signature, i);
      auto inner = scan(skip(i), 1);
      if (inner) inner.signature = inner.signature.in_series(series);
      return inner;
    }
    if (c == '^' || begins(i, "<sup>")) return raised_prefix(i, depth);
    bool chi = false;
    if (auto const bytes = unsigned_mark(i, chi); bytes != 0) return unsigned_or_duplicate(i + bytes, chi, depth);
    if (is_latin_letter(c)) return beside(letters(i, 1));
    if (c == '[') return bracketed(i, 1, depth);
    if (is_digit(c)) return number_or_multiple(i, depth);
    if (opens_quotation(code(i))) return quoted(i);
    if (c == ')' && at(i + 1) == '(') {
      auto end = i + 2;
      std::uint32_t repeated = 1; // )()( is )( doubled
      for (; begins(end, ")(") && repeated < 9; ++repeated) end += 2;
      return text_mark(Mark::symbol, i, i + 2, end, repeated);
    }
    if (auto const bytes = symbol_in_parentheses(i); bytes != 0)
      return text_mark(Mark::symbol, i, i + bytes, i + bytes, 1);
    if (c == '(' && at(i + 1) == ':')
      return text_mark(Mark::symbol, i, i + (at(i + 2) == ')' ? 3 : 2), i + (at(i + 2) == ')' ? 3 : 2), 1);
    if (c == ':' && at(i + 1) == ')') return text_mark(Mark::symbol, i, i + 2, i + 2, 1);
    bool capital = false;
    if (auto const n = greek_letter(code(i), capital); n != 0) {
      SignatureScan scan;
      std::uint32_t repeated = 1;
      auto const here = code(i);
      i += 2;
      while (code(i) == here && repeated < 9) ++repeated, i += 2;
      scan.signature = Signature::greek(n, capital, repeated);
      scan.end = i;
      return beside(scan);
    }
    if (is_signature_symbol(code(i)) || (c == '+' && depth == 0)) return symbol(i, 1, depth);
    return fail(Problem::no_signature, i);
  }

  /// A letter may have a symbol behind it: H*, O**.
  [[nodiscard]] constexpr SignatureScan beside(SignatureScan scan) const {
    if (!scan.signature.is_letter() || scan.signature.beside() != Beside::nothing) return scan; // [2]* is two marks
    auto end = scan.end;
    if (auto const c = at(end); c != '*' && static_cast<unsigned char>(c) < 0xC2) return scan;
    auto const is_affix = [&](char32_t code) {
      return code == '*' || code == 0x2020 || code == 0x2021 || code == 0xA7 || code == 0xB6 || code == 0x261E;
    };
    while (is_affix(code(end))) end += decode(text_, end).bytes;
    auto const size = end - scan.end;
    if (size == 0 || size > Signature::longest_text) return scan;
    scan.signature = scan.signature.with_symbol(Beside::behind, text_.data() + scan.end, size);
    scan.end = end;
    return scan;
  }

private:
  /// The number of "2nd", "3rd", "4th" if just that stands between two bytes, else 0.
  [[nodiscard]] constexpr int ordinal(std::size_t i, std::size_t end) const noexcept {
    if (end != i + 3 || at(i) < '2' || at(i) > '9') return 0;
    bool const ends = begins(i + 1, at(i) == '2' ? "nd" : at(i) == '3' ? "rd" : "th");
    return ends ? at(i) - '0' : 0;
  }
  /// What is raised before a mark where raised figures cannot be set: ^2A, <sup>2</sup>A, <sup>π</sup>A.
  [[nodiscard]] constexpr SignatureScan raised_prefix(std::size_t i, int depth) const {
    bool const html = at(i) == '<';
    i += html ? 5 : 1;
    bool chi = false;
    if (auto const bytes = unsigned_mark(i, chi); bytes != 0 && depth < 2) {
      i += bytes;
      if (html && !begins(i, "</sup>")) return fail(Problem::no_signature, i);
      if (!takes_prefix(html ? i + 6 : i)) return fail(Problem::no_signature, i); // what πA may be written before
      auto duplicate = scan(html ? i + 6 : i, 2);
      auto const of = duplicate.signature.mark(); // π before a figure is written like leaf 5 of π
      if (of == Mark::pi || of == Mark::chi || (of == Mark::number && !duplicate.signature.is_quoted()))
        return fail(Problem::no_signature, i);
      if (duplicate) duplicate.signature = duplicate.signature.duplicated(chi ? Duplicate::chi : Duplicate::pi);
      return duplicate;
    }
    int series = 0;
    for (; is_digit(at(i)) && series < 100; ++i) series = series * 10 + (at(i) - '0');
    if (html && !begins(i, "</sup>")) return fail(Problem::no_signature, i);
    if (html) i += 6;
    if (!html && at(i) == '^' && is_digit(at(i + 1))) ++i; // ^2^3A parts the series from the multiple
    if (depth > 0 || series < 1 || series > 99) return fail(Problem::no_signature, i);
    auto inner = scan(i, 1);
    if (inner) inner.signature = inner.signature.in_series(series);
    return inner;
  }
  [[nodiscard]] constexpr SignatureScan unsigned_or_duplicate(std::size_t end, bool chi, int depth) const {
    if (depth < 2 && takes_prefix(end)) {
      auto inner = scan(end, 2);
      auto const mark = inner.signature.mark();
      bool const follows = mark != Mark::pi && mark != Mark::chi; // ππ is two gatherings, not a duplicate
      if (inner && follows) {
        inner.signature = inner.signature.duplicated(chi ? Duplicate::chi : Duplicate::pi);
        inner.flat_prefix = true;
      }
      if (!inner || follows) return inner;
    }
    SignatureScan scan;
    scan.signature = chi ? Signature::chi() : Signature::pi();
    scan.end = end;
    return scan;
  }
  [[nodiscard]] constexpr SignatureScan bracketed(std::size_t i, std::uint32_t multiple, int depth) const {
    auto const close = closing(i + 1);
    if (close == std::string_view::npos || close == i + 1) return fail(Problem::no_signature, i);
    bool chi = false;
    if (auto const bytes = unsigned_mark(i + 1, chi); bytes != 0 && i + 1 + bytes == close && multiple == 1)
      return unsigned_or_duplicate(close + 1, chi, depth);
    // [2nd]A is ²A
    if (auto const raised = ordinal(i + 1, close);
        raised != 0 && depth == 0 && multiple == 1 && takes_prefix(close + 1)) {
      auto inner = scan(close + 1, 1);
      if (inner) inner.signature = inner.signature.in_series(raised);
      return inner;
    }
    // a whole signature by itself is one that was inferred; anything else is the name of a symbol
    auto const c = at(i + 1);
    bool capital = false;
    bool const marked = is_latin_letter(c) || is_digit(c) || greek_letter(code(i + 1), capital) != 0 ||
                        superscript_digit(code(i + 1)) >= 0 || c == '^' || c == '<' || is_signature_symbol(code(i + 1));
    if (depth < 3 && marked && multiple == 1) {
      auto inner = SignatureScanner{text_.substr(0, close), letters_}.scan(i + 1, depth == 0 ? 0 : 3);
      if (inner && inner.end == close) {
        inner.end = close + 1;
        // π and χ are a bibliographer's marks in any case
        inner.inferred = inner.signature.mark() != Mark::pi && inner.signature.mark() != Mark::chi;
        return beside(inner);
      }
    }
    if (depth > 0 && marked) // as a name it would be read as a mark again
      if (auto const mark = SignatureScanner{text_.substr(0, close), letters_}.scan(i + 1); mark && mark.end == close)
        return fail(Problem::no_signature, i);
    if (auto const sign = code(i + 1); is_dash(sign) || sign == '+' || sign == 0x2212 || sign == 0xB1)
      return fail(Problem::no_signature, i); // a change in the wrong brackets
    for (auto k = i + 1; k < close;) {
      std::size_t bytes = 0; // the semicolon of &amp; is no semicolon
      auto const meant = entity(text_, k, bytes);
      auto const letter = bytes != 0 ? static_cast<char32_t>(meant) : code(k);
      // these are of gatherings in brackets with their counts, of changes and of statements, not of a name
      if (letter < 0x20 || letter == '(' || letter == ')' || letter == '$' || letter == '=' || letter == ';' ||
          letter == '^' || letter == '<' || superscript_digit(letter) >= 0)
        return fail(Problem::no_signature, i);
      k += bytes != 0 ? bytes : decode(text_, k).bytes;
    }
    return text_mark(Mark::name, i + 1, close, close + 1, multiple);
  }
  [[nodiscard]] constexpr SignatureScan symbol(std::size_t i, std::uint32_t multiple, int depth) const {
    std::size_t bytes = 0;
    auto const meant = entity(text_, i, bytes); // &amp; as HTML and TEI have it
    if (bytes != 0 && meant != '&') return fail(Problem::no_signature, i);
    std::size_t const kept = bytes == 0 ? decode(text_, i).bytes : 1;
    if (bytes == 0) bytes = kept;
    auto end = i + bytes;
    std::uint32_t repeated = 1;
    for (; repeated < 9 && multiple == 1; ++repeated) {
      std::size_t more = 0;
      auto const again = entity(text_, end, more);
      if (again != '\0' ? at(i) != '&' || again != '&' : !begins(end, text_.substr(i, at(i) == '&' ? 1 : bytes))) break;
      end += again != '\0' ? more : at(i) == '&' ? 1 : bytes;
    }
    if (depth < 3 && multiple == 1 && at(i) != '+' && takes_prefix(end) && at(end) != '[' && at(end) != '\'' &&
        at(end) != '"') {
      auto inner = scan(end, 3);
      if (inner && inner.signature.is_letter() && inner.signature.beside() == Beside::nothing &&
          inner.signature.duplicate() == Duplicate::none && kept * repeated <= Signature::longest_text) {
        auto const before = text_mark(Mark::symbol, i, end, end, 1);
        if (!before) return before;
        inner.signature =
            inner.signature.with_symbol(Beside::before, before.signature.text(), before.signature.text_size());
        return inner;
      }
    }
    return text_mark(Mark::symbol, i, i + bytes, end, multiple > 1 ? multiple : repeated);
  }
  [[nodiscard]] constexpr SignatureScan number_or_multiple(std::size_t i, int depth) const {
    std::uint32_t figure = 0;
    auto end = i;
    for (; is_digit(at(end)); ++end)
      figure = figure > Signature::highest_number ? figure : figure * 10 + static_cast<std::uint32_t>(at(end) - '0');
    bool const multiplies = [&] {
      auto const c = at(end);
      if (is_latin_letter(c) || c == '*' || c == '&' || c == '#' || c == '@' || c == '%') return true;
      auto const counted = [&](std::size_t k) { // a mark only with its count or leaf: 2:⁸, 2)(⁴, 2:/3; 2)( alone too
        return is_digit(at(k)) || at(k) == '/' || at(k) == '^' || at(k) == '<' || superscript_digit(code(k)) >= 0;
      };
      if (c == ':') return counted(end + 1) || is_dash(code(end + 1));
      if (c == ')' && at(end + 1) == '(') return figure > 1 && (end + 2 == text_.size() || counted(end + 2));
      if (c == '[')
        return figure > 1 && closing(end + 1) != std::string_view::npos && at(end + 1) != '$' && at(end + 1) != '=';
      bool capital = false;
      return static_cast<unsigned char>(c) >= 0xC2 &&
             (greek_letter(code(end), capital) != 0 || is_signature_symbol(code(end)));
    }();
    if (figure == 0) return fail(Problem::zero_leaf_count, end);
    if (!multiplies) {
      if (figure > Signature::highest_number) return fail(Problem::number_too_large, end);
      SignatureScan scan;
      scan.signature = Signature::number(figure);
      scan.end = end;
      return scan;
    }
    if (figure > Signature::highest_multiple) return fail(Problem::multiple_too_high, end);
    SignatureScan inner;
    bool chi = false, capital = false;
    if (auto const bytes = unsigned_mark(end, chi); bytes != 0) {
      inner.signature = chi ? Signature::chi(figure) : Signature::pi(figure);
      inner.end = end + bytes;
    } else if (is_latin_letter(at(end)))
      inner = beside(letters(end, figure));
    else if (at(end) == '[') {
      inner = bracketed(end, 1, depth + 3);
      if (inner && inner.signature.mark() == Mark::name)
        inner.signature = Signature::text(Mark::name, inner.signature.text(), inner.signature.text_size(), figure);
      else if (inner)
        inner = fail(Problem::no_signature, end);
    } else if (auto const n = greek_letter(code(end), capital); n != 0) {
      inner.signature = Signature::greek(n, capital, figure);
      inner.end = end + 2;
      inner = beside(inner);
    } else if (at(end) == ')')
      inner = text_mark(Mark::symbol, end, end + 2, end + 2, figure);
    else
      inner = symbol(end, figure, depth);
    inner.multiplied = inner && figure > 1;
    return inner;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
