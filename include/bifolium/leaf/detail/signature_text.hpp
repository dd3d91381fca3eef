// SPDX-License-Identifier: MIT
/// The characters of signatures - which are letters, which may stand as a symbol, how π and χ are spelled - and the marks
/// that consist of one piece: letters, texts, what stands in quotation marks. How marks are put together from such
/// pieces: leaf/detail/scan_signature.hpp.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/problem.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/signature.hpp>

#include <initializer_list>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A symbol may be anything that is set as type and means nothing else in a formula.
constexpr bool is_signature_symbol(char32_t c) noexcept {
  if (c < 0x80) return c == '*' || c == '&' || c == ':' || c == '#' || c == '@' || c == '%';
  if (c == 0xA7 || c == 0xB6) return true; // § ¶
  if (c < 0x250) return false;             // other signs and accented letters of Latin
  if (c >= 0x300 && c < 0x2020) return false;
  if (c == 0x2020 || c == 0x2021 || c == 0x203B || c == 0x204A) return true; // † ‡ ※ and the Tironian et
  if (c == 0x2184) return true;                                              // reversed c, for con
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

/// The character that &amp; &lt; or &gt; at byte `i` stands for, as HTML and TEI have them; `bytes` is 0 where none does.
constexpr char entity(std::string_view text, std::size_t i, std::size_t& bytes) noexcept {
  bytes = 0;
  if (i >= text.size() || text[i] != '&') return '\0';
  auto const rest = text.substr(i);
  if (rest.substr(0, 5) == "&amp;") return bytes = 5, '&';
  if (rest.substr(0, 4) == "&lt;") return bytes = 4, '<';
  if (rest.substr(0, 4) == "&gt;") return bytes = 4, '>';
  return '\0';
}

/// How many bytes a name in brackets may take: twice as many characters as a mark keeps, each perhaps written &amp;.
inline constexpr std::size_t widest_name = 10 * Signature::longest_text;

/// A signature found in a text, or why none was.
struct SignatureScan {
  Signature signature;
  std::size_t end{};    ///< the byte behind it
  bool inferred{};      ///< it stood in square brackets
  bool flat_prefix{};   ///< π or χ stood before another mark
  bool glyph_outside{}; ///< J, U or W of an alphabet without it
  bool multiplied{};    ///< a figure stood before the mark: 2A, which may be ²A
  bool count_inside{};  ///< a raised figure stands at `end`, and the quotation mark that closes the signature behind it
  Problem problem{Problem::none};
  constexpr explicit operator bool() const noexcept { return problem == Problem::none; }
};

/// A text in which signatures are looked for, and the marks that consist of one piece.
class SignatureText {
protected:
  std::string_view text_;
  Letters letters_;

  constexpr SignatureText(std::string_view text, Letters added) noexcept : text_{text}, letters_{added} {}

  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  [[nodiscard]] constexpr char32_t code(std::size_t i) const noexcept {
    return i < text_.size() ? decode(text_, i).value : U'\0';
  }
  [[nodiscard]] constexpr std::size_t skip(std::size_t i) const noexcept {
    while (i < text_.size() && is_blank(code(i))) i += decode(text_, i).bytes;
    return i;
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
  /// The bytes of a symbol printed in parentheses, (*) or (**), and 0 where none stands. (: and (:) are marks of another kind.
  [[nodiscard]] constexpr std::size_t symbol_in_parentheses(std::size_t i) const noexcept {
    if (at(i) != '(' || at(i + 1) == ':' || at(i + 1) == '&' || !is_signature_symbol(code(i + 1))) return 0;
    auto const symbol = text_.substr(i + 1, decode(text_, i + 1).bytes);
    auto close = i + 1 + symbol.size();
    while (begins(close, symbol)) close += symbol.size(); // (**)
    return at(close) == ')' ? close + 1 - i : 0;
  }
  /// Inside square brackets: the byte of the closing one, or npos when it is too far for a name.
  [[nodiscard]] constexpr std::size_t closing(std::size_t i) const noexcept {
    for (auto end = i + widest_name; i < text_.size() && i < end; ++i) {
      if (text_[i] == ']') return i;
      if (text_[i] == '[') break;
    }
    return std::string_view::npos;
  }
  /// What may follow a prefix directly: a letter, a bracketed letter, a multiple of one.
  [[nodiscard]] constexpr bool takes_prefix(std::size_t i) const noexcept {
    auto const c = at(i);
    if (is_latin_letter(c)) return true;
    if (is_digit(c)) {
      while (is_digit(at(i))) ++i;
      bool capital = false;
      return is_latin_letter(at(i)) || (greek_letter(code(i), capital) != 0 && code(i) != 0x3C0 && code(i) != 0x3C7);
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

  static constexpr SignatureScan fail(Problem problem, std::size_t end) {
    SignatureScan scan;
    scan.problem = problem;
    scan.end = end;
    return scan;
  }
  /// A symbol, name or printed mark: the text from `from` to `to`.
  constexpr SignatureScan text_mark(Mark kind, std::size_t from, std::size_t to, std::size_t end,
                                    std::uint32_t multiple) const {
    char bytes[Signature::longest_text + 1]{};
    std::size_t size = 0;
    for (auto k = from; k < to && size <= Signature::longest_text; ++size) {
      std::size_t taken = 0;
      auto const c = entity(text_.substr(0, to), k, taken);
      bytes[size] = taken == 0 ? text_[k] : c;
      k += taken == 0 ? 1 : taken;
    }
    if (size > Signature::longest_text || size == 0) return fail(Problem::mark_too_long, end);
    for (std::size_t k = 0; k < size; ++k) { // &amp;lt; would be written &lt; and read as another mark
      std::size_t taken = 0;
      char const* const kept = bytes;
      entity({kept, size}, k, taken);
      if (taken != 0) return fail(Problem::unknown_mark, from);
    }
    for (auto k = from; k < to; k += decode(text_, k).bytes)
      if (decode(text_, k).malformed) return fail(Problem::not_utf8, k);
    SignatureScan scan;
    scan.signature = Signature::text(kind, bytes, size, multiple);
    scan.end = end;
    return scan;
  }

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

  /// Where the raised figures begin in which the text from `from` to `to` ends; `to` where it does not.
  [[nodiscard]] constexpr std::size_t raised_behind(std::size_t from, std::size_t to) const {
    auto raised = to;
    for (auto k = from; k < to; k += decode(text_, k).bytes)
      if (superscript_digit(code(k)) < 0)
        raised = to;
      else if (raised == to)
        raised = k;
    return raised;
  }
  /// A count or a leaf may begin here.
  [[nodiscard]] constexpr bool counted(std::size_t i) const {
    char const c = at(i);
    return is_digit(c) || c == '/' || c == '^' || c == '<' || c == '(' || superscript_digit(code(i)) >= 0;
  }
  /// A mark in quotation marks: '1', "G&H".
  [[nodiscard]] constexpr SignatureScan quoted(std::size_t i, bool with_count = false) const {
    auto const open = decode(text_, i);
    auto const close = open.value == 0x2018 ? char32_t{0x2019} : open.value == 0x201C ? char32_t{0x201D} : open.value;
    auto const from = i + open.bytes;
    auto to = from;
    constexpr std::size_t most = 5 * Signature::longest_text; // five bytes stand for one where it is &amp;
    while (to < text_.size() && code(to) != close && to - from <= most) to += decode(text_, to).bytes;
    if (to >= text_.size() || code(to) != close) return fail(Problem::unknown_mark, i);
    auto end = to + decode(text_, to).bytes;
    // 'Gg⁶': the count stands inside, and the mark before it
    auto const raised = raised_behind(from, to);
    bool const count_inside = with_count && raised != to && raised != from && !counted(end);
    if (count_inside) to = end = raised;
    bool figures = to > from && to - from <= 6;
    std::uint32_t figure = 0;
    for (auto k = from; k < to && figures; ++k) {
      figures = is_digit(text_[k]);
      figure = figure * 10 + static_cast<std::uint32_t>(text_[k] - '0');
    }
    int round = 0, square = 0; // a parenthesis that is part of the mark must not close another
    for (auto k = from; k < to; ++k) {
      auto const b = static_cast<unsigned char>(text_[k]);
      round += b == '(' ? 1 : b == ')' ? -1 : 0;
      square += b == '[' ? 1 : b == ']' ? -1 : 0;
      if (b < 0x20 || b == '"' || round < 0 || square < 0) return fail(Problem::unknown_mark, i);
    }
    if (round != 0 || square != 0) return fail(Problem::unknown_mark, i);
    auto const dash = [&] { // '1-10' may be meant for '1'-'10'
      auto k = from;
      while (k < to && is_digit(text_[k])) ++k;
      return k > from && k < to && is_dash(code(k)) && is_digit(at(k + decode(text_, k).bytes));
    }();
    if (dash) return fail(Problem::unknown_mark, i);
    SignatureScan scan;
    if (figures && figure > 0) {
      scan.signature = Signature::number(figure).in_quotation_marks();
      scan.end = end;
    } else
      scan = text_mark(Mark::printed, from, to, end, 1);
    scan.count_inside = count_inside;
    return scan;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
