// SPDX-License-Identifier: MIT
/// Reading signatures. A mark is met in many spellings: 2C is CC or Cc, [par.] names what cannot be set, )( is one
/// symbol of two characters, a raised figure or π and χ before the letter tell a second use of the same letters apart.
/// The same scanner serves single signatures, formulas and references, so that all three take the same marks.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/signature.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
constexpr bool is_capital(char c) noexcept { return c >= 'A' && c <= 'Z'; }
constexpr bool is_small(char c) noexcept { return c >= 'a' && c <= 'z'; }
constexpr bool is_latin_letter(char c) noexcept { return is_capital(c) || is_small(c); }
constexpr char small_letter(char c) noexcept { return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c; }

/// A symbol may be anything that is set as type and means nothing else in a formula.
constexpr bool is_signature_symbol(char32_t c) noexcept {
  if (c < 0x80) return c == '*' || c == '&' || c == ':' || c == '#' || c == '@' || c == '%';
  if (c == 0xA7 || c == 0xB6) return true; // § ¶
  if (c < 0x250) return false;             // other signs and accented letters of Latin
  if (c >= 0x300 && c < 0x2020) return false;
  if (c == 0x2020 || c == 0x2021 || c == 0x203B || c == 0x204A) return true; // † ‡ ※ and the Tironian et
  if (c < 0x2190) return false;                                              // raised figures, dashes, quotation marks
  if (c == 0x2212 || c == 0x2213) return false;                              // minus
  return c < 0xD800 || (c >= 0xF900 && c != 0xFFFD && c != 0xFEFF && c < 0x1FAFF);
}
/// The number of a Greek letter, 0 if it is none; `capital` is set.
constexpr int greek_letter(char32_t c, bool& capital) noexcept {
  capital = c < 0x3B1;
  auto const n = c >= 0x3B1 && c <= 0x3C9   ? static_cast<int>(c - 0x3B1) + 1
                 : c >= 0x391 && c <= 0x3A9 ? static_cast<int>(c - 0x391) + 1
                                            : 0;
  return n == 0 ? 0 : n >= 18 ? n - 1 : n; // final sigma shares the place of sigma
}

/// A signature found in a text, or why none was.
struct SignatureScan {
  Signature signature;
  std::size_t end{};    ///< the byte behind it
  bool inferred{};      ///< it stood in square brackets
  bool flat_prefix{};   ///< π or χ stood before another mark
  bool glyph_outside{}; ///< J, U or W of an alphabet without it
  bool multiplied{};    ///< a figure stood before the mark: 2A, which may be ²A
  Problem problem{Problem::none};
  constexpr explicit operator bool() const noexcept { return problem == Problem::none; }
};

class SignatureScanner {
  std::string_view text_;
  Letters letters_;

  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  [[nodiscard]] constexpr char32_t code(std::size_t i) const noexcept {
    return i < text_.size() ? decode(text_, i).value : U'\0';
  }
  [[nodiscard]] constexpr std::size_t skip(std::size_t i) const noexcept {
    while (i < text_.size() && is_blank(code(i))) i += decode(text_, i).bytes;
    return i;
  }
  static constexpr SignatureScan fail(Problem problem, std::size_t end) {
    SignatureScan scan;
    scan.problem = problem;
    scan.end = end;
    return scan;
  }
  [[nodiscard]] constexpr bool begins(std::size_t i, std::string_view word) const noexcept {
    return text_.substr(i < text_.size() ? i : text_.size(), word.size()) == word;
  }
  /// pi or chi, in Greek or in Latin letters; the bytes it takes, 0 if it is neither.
  [[nodiscard]] constexpr std::size_t unsigned_mark(std::size_t i, bool& chi) const noexcept {
    auto const c = code(i);
    if (c == 0x3C0 || c == 0x3C7) return chi = c == 0x3C7, std::size_t{2};
    if (at(i) != 'p' && at(i) != 'P' && at(i) != 'c' && at(i) != 'C') return 0;
    for (auto word : {std::string_view{"pi"}, std::string_view{"Pi"}, std::string_view{"chi"}, std::string_view{"Chi"}})
      if (begins(i, word) && !is_small(at(i + word.size()))) return chi = word.size() == 3, word.size();
    return 0;
  }
  /// Inside square brackets: the byte of the closing one, or npos when it is too far for a name.
  [[nodiscard]] constexpr std::size_t closing(std::size_t i) const noexcept {
    for (auto end = i + 48; i < text_.size() && i < end; ++i) {
      if (text_[i] == ']') return i;
      if (text_[i] == '[') break;
    }
    return std::string_view::npos;
  }
  constexpr SignatureScan text_mark(Mark kind, std::size_t from, std::size_t to, std::size_t end,
                                    std::uint32_t multiple) const {
    if (to - from > Signature::longest_text || to == from) return fail(Problem::mark_too_long, end);
    for (auto k = from; k < to; k += decode(text_, k).bytes)
      if (decode(text_, k).malformed) return fail(Problem::not_utf8, k);
    SignatureScan scan;
    scan.signature = Signature::text(kind, text_.data() + from, to - from, multiple);
    scan.end = end;
    return scan;
  }

public:
  constexpr SignatureScanner(std::string_view text, Letters letters) : text_{text}, letters_{letters} {}

  /// The latin letter(s) at `i`: A, AA, Aa, aaa.
  [[nodiscard]] constexpr SignatureScan letters(std::size_t i, std::uint32_t multiple) const {
    char const first = text_[i];
    std::uint32_t repeated = 1;
    auto end = i + 1;
    if (small_letter(at(end)) == small_letter(first)) {
      char const again = at(end);
      // aA is no doubled letter: a, then A
      if (!(is_small(first) && is_capital(again)))
        while (at(end) == again && repeated < 9) ++end, ++repeated;
    }
    SignatureScan scan;
    scan.signature = Signature::letter(first, multiple > 1 ? multiple : repeated, letters_);
    auto const glyph = small_letter(first) - 'a' + 1;
    scan.glyph_outside = !Alphabet{letters_}.has(glyph);
    scan.end = end;
    if (multiple > 1 && repeated > 1) scan.end = i + 1;
    return scan;
  }

  /// One mark at byte `i`, no blanks before it.
  [[nodiscard]] constexpr SignatureScan scan(std::size_t i, int depth = 0) const {
    char const c = at(i);
    if (is_latin_letter(c) && c != 'p' && c != 'P' && c != 'c' && c != 'C') return beside(letters(i, 1));
    if (i >= text_.size()) return fail(Problem::text_ends, i);

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
    if (c == '^' || begins(i, "<sup>")) { // the raised figure of a series, without raised figures: ^2A
      bool const html = c == '<';
      i += html ? 5 : 1;
      int series = 0;
      for (; is_digit(at(i)) && series < 100; ++i) series = series * 10 + (at(i) - '0');
      if (html && !begins(i, "</sup>")) return fail(Problem::no_signature, i);
      if (html) i += 6;
      if (!html && at(i) == '^') ++i; // ^2^3A parts the series from the multiple
      if (depth > 0 || series < 1 || series > 99) return fail(Problem::no_signature, i);
      auto inner = scan(i, 1);
      if (inner) inner.signature = inner.signature.in_series(series);
      return inner;
    }
    bool chi = false;
    if (auto const bytes = unsigned_mark(i, chi); bytes != 0) return unsigned_or_duplicate(i + bytes, chi, depth);
    if (is_latin_letter(c)) return beside(letters(i, 1));
    if (c == '[') return bracketed(i, 1, depth);
    if (is_digit(c)) return number_or_multiple(i, depth);
    if (c == '\'' || c == '"' || code(i) == 0x2018 || code(i) == 0x201C) return quoted(i);
    if (c == ')' && at(i + 1) == '(') return text_mark(Mark::symbol, i, i + 2, i + 2, 1);
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
      return scan;
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
  /// What may follow a prefix directly: a letter, a bracketed letter, a multiple of one.
  [[nodiscard]] constexpr bool takes_prefix(std::size_t i) const noexcept {
    auto const c = at(i);
    if (is_latin_letter(c)) return true;
    if (is_digit(c)) {
      while (is_digit(at(i))) ++i;
      return is_latin_letter(at(i));
    }
    if (c == '[') {
      if (closing(i + 1) == std::string_view::npos) return false;
      while (is_digit(at(i + 1))) ++i;
      return is_latin_letter(at(i + 1));
    }
    if (c == '\'' || c == '"') return true;
    bool capital = false;
    return static_cast<unsigned char>(c) >= 0xC2 &&
           (greek_letter(code(i), capital) != 0 && code(i) != 0x3C0 && code(i) != 0x3C7);
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
    // a whole signature by itself is one that was inferred; anything else is the name of a symbol
    auto const c = at(i + 1);
    bool capital = false;
    bool const marked = is_latin_letter(c) || is_digit(c) || greek_letter(code(i + 1), capital) != 0 ||
                        superscript_digit(code(i + 1)) >= 0 || c == '^' || c == '<' || is_signature_symbol(code(i + 1));
    if (depth < 3 && marked && multiple == 1) {
      auto inner = SignatureScanner{text_.substr(0, close), letters_}.scan(i + 1, depth == 0 ? 0 : 3);
      if (inner && inner.end == close) {
        inner.end = close + 1;
        inner.inferred = true;
        return beside(inner);
      }
    }
    for (auto k = i + 1; k < close; ++k)
      if (auto const b = static_cast<unsigned char>(text_[k]); b < 0x20 || b == '(' || b == ')' || b == '$' || b == '=')
        return fail(Problem::no_signature, i);
    return text_mark(Mark::name, i + 1, close, close + 1, multiple);
  }
  [[nodiscard]] constexpr SignatureScan symbol(std::size_t i, std::uint32_t multiple, int depth) const {
    if (begins(i, "&amp;")) return text_mark(Mark::symbol, i, i + 1, i + 5, multiple); // as HTML and TEI have it
    auto const bytes = decode(text_, i).bytes;
    auto end = i + bytes;
    std::uint32_t repeated = 1;
    while (code(end) == code(i) && end < text_.size() && repeated < 9 && multiple == 1) ++repeated, end += bytes;
    if (depth < 3 && multiple == 1 && at(i) != '+' && takes_prefix(end) && at(end) != '[' && at(end) != '\'' &&
        at(end) != '"') {
      auto inner = scan(end, 3);
      if (inner && inner.signature.is_letter() && inner.signature.beside() == Beside::nothing &&
          inner.signature.duplicate() == Duplicate::none && end - i <= Signature::longest_text) {
        inner.signature = inner.signature.with_symbol(Beside::before, text_.data() + i, end - i);
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
      if (c == ':') // a mark only with its count: 2:⁸
        return is_digit(at(end + 1)) || at(end + 1) == '^' || at(end + 1) == '<' ||
               superscript_digit(code(end + 1)) >= 0;
      if (c == '[') return closing(end + 1) != std::string_view::npos && at(end + 1) != '$' && at(end + 1) != '=';
      bool capital = false;
      return static_cast<unsigned char>(c) >= 0xC2 &&
             (greek_letter(code(end), capital) != 0 || is_signature_symbol(code(end)));
    }();
    if (figure == 0) return fail(Problem::count_of_nothing, end);
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
      if (inner && inner.inferred && inner.signature.multiple() == 1 && inner.signature.mark() != Mark::number)
        inner.signature = multiplied_by(inner.signature, figure);
      else if (inner && inner.signature.mark() == Mark::name)
        inner.signature = Signature::text(Mark::name, inner.signature.text(), inner.signature.text_size(), figure);
      else if (inner)
        inner = fail(Problem::no_signature, end);
    } else if (auto const n = greek_letter(code(end), capital); n != 0) {
      inner.signature = Signature::greek(n, capital, figure);
      inner.end = end + 2;
    } else
      inner = symbol(end, figure, depth);
    inner.multiplied = inner && figure > 1;
    return inner;
  }
  [[nodiscard]] constexpr Signature multiplied_by(Signature const& s, std::uint32_t figure) const {
    switch (s.mark()) {
    case Mark::capital:
      return Signature::letter(static_cast<char>('A' + s.letter_number() - 1), figure, letters_);
    case Mark::small:
      return Signature::letter(static_cast<char>('a' + s.letter_number() - 1), figure, letters_);
    case Mark::greek:
      return Signature::greek(s.letter_number(), false, figure);
    case Mark::greek_capital:
      return Signature::greek(s.letter_number(), true, figure);
    case Mark::symbol:
      return Signature::text(Mark::symbol, s.text(), s.text_size(), figure);
    case Mark::chi:
      return Signature::chi(figure);
    default:
      return Signature::pi(figure);
    }
  }
  [[nodiscard]] constexpr SignatureScan quoted(std::size_t i) const {
    auto const open = decode(text_, i);
    auto const close = open.value == 0x2018 ? char32_t{0x2019} : open.value == 0x201C ? char32_t{0x201D} : open.value;
    auto const from = i + open.bytes;
    auto to = from;
    while (to < text_.size() && code(to) != close && to - from <= Signature::longest_text)
      to += decode(text_, to).bytes;
    if (to >= text_.size() || code(to) != close) return fail(Problem::unknown_mark, i);
    auto const end = to + decode(text_, to).bytes;
    bool figures = to > from && to - from <= 6;
    std::uint32_t figure = 0;
    for (auto k = from; k < to && figures; ++k) {
      figures = is_digit(text_[k]);
      figure = figure * 10 + static_cast<std::uint32_t>(text_[k] - '0');
    }
    for (auto k = from; k < to; ++k)
      if (auto const b = static_cast<unsigned char>(text_[k]); b < 0x20 || b == '"')
        return fail(Problem::unknown_mark, i);
    if (figures && figure > 0) {
      SignatureScan scan;
      scan.signature = Signature::number(figure).in_quotation_marks();
      scan.end = end;
      return scan;
    }
    return text_mark(Mark::printed, from, to, end, 1);
  }
};

} // namespace detail

/// Reads one signature and nothing else. error: no_signature, text_goes_on and others, with the column.
constexpr Expected<Signature> read_signature(std::string_view text, Letters added = {}) {
  auto const scan = detail::SignatureScanner{text, added}.scan(0);
  auto const at = scan.end < text.size() ? scan.end : text.size();
  if (!scan)
    return error_at(scan.problem, 1, column_of(text, at), text.data() + at, text.size() - at,
                    scan.problem == Problem::multiple_too_high ? std::int64_t{Signature::highest_multiple} : 23);
  if (at != text.size())
    return error_at(Problem::text_goes_on, 1, column_of(text, at), text.data() + at, text.size() - at);
  return scan.signature;
}

/// The signature as bibliographers write it: 2B, ²πA, [par.]. At most 64 bytes.
constexpr ShortText<64> to_text(Signature const& signature) {
  ShortText<64> text;
  signature.spell(
      [&](char const* bytes, std::size_t size) {
        text.append({bytes, size});
      },
      [&](int figure) {
        char bytes[4]{};
        if (figure > 9) text.append({bytes, encode(superscript(figure / 10), bytes)});
        text.append({bytes, encode(superscript(figure % 10), bytes)});
      });
  return text;
}

} // namespace v0
} // namespace bifolium
