// SPDX-License-Identifier: MIT
/// The text of a formula with the questions every part of the reader asks of it: which character stands at a byte, where
/// the blanks end, whether these letters are a word, whether the formula is over and an extent begins. It knows the
/// dialect, because a word is told from signatures standing close together (ab, lm) by the alphabet.
#pragma once

#include <bifolium/collation/detail/scan_counts.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/leaf/detail/scan_signature.hpp>
#include <bifolium/leaf/named_leaves.hpp>

#include <initializer_list>

namespace bifolium {
inline namespace v0 {
namespace detail {

constexpr bool is_minus(char32_t c) noexcept { return is_dash(c) || c == 0x2212; }

class FormulaText {
protected:
  std::string_view text_;
  Dialect dialect_;
  Alphabet alphabet_;

public:
  constexpr FormulaText(std::string_view text, Dialect dialect)
      : text_{text}, dialect_{dialect}, alphabet_{dialect.letters} {}

  [[nodiscard]] constexpr std::string_view view() const noexcept { return text_; }
  [[nodiscard]] constexpr Dialect const& dialect() const noexcept { return dialect_; }
  [[nodiscard]] constexpr Alphabet alphabet() const noexcept { return alphabet_; }

  // -- characters ----------------------------------------------------------------------------------------------------

  /// The byte at `i`; behind the end a zero.
  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  [[nodiscard]] constexpr char32_t code(std::size_t i) const noexcept {
    return i < text_.size() ? decode(text_, i).value : U'\0';
  }
  [[nodiscard]] constexpr std::size_t skip(std::size_t i) const noexcept {
    for (; i < text_.size();) {
      auto const c = static_cast<unsigned char>(text_[i]);
      if (c == ' ' || c == '\t' || c == '\r' || c == '\n')
        ++i;
      else if (c >= 0xC2 && (is_blank(code(i)) || code(i) == 0xFEFF))
        i += decode(text_, i).bytes;
      else
        break;
    }
    return i;
  }
  [[nodiscard]] constexpr bool is_any(std::size_t i, std::initializer_list<std::string_view> words) const noexcept {
    if (i >= text_.size()) return false;
    for (auto word : words)
      if (text_[i] == word[0] && text_.substr(i, word.size()) == word) return true;
    return false;
  }
  /// A scanner of signatures that sees nothing from byte `end` on.
  [[nodiscard]] constexpr SignatureScanner signatures(std::size_t end = std::string_view::npos) const noexcept {
    return {text_.substr(0, end), dialect_.letters};
  }
  /// The count at byte `i`, raised or, where the dialect allows it, on the line.
  [[nodiscard]] constexpr CountScan count_at(std::size_t i) const {
    return CountScanner{text_}.scan(i, dialect_.flat_counts, false);
  }
  /// The dash of a run, or the word "to": the byte behind it, or `i` when there is none.
  [[nodiscard]] constexpr std::size_t dash(std::size_t i) const noexcept {
    auto const next = skip(i);
    auto const c = code(next);
    if (is_dash(c)) return skip(next + decode(text_, next).bytes);
    if (next != i && is_any(next, {"to ", "to\t"})) return skip(next + 2);
    if (next != i && is_any(next, {"through "})) return skip(next + 7);
    return i;
  }
  /// The mark )( directly behind the sign of a change: (-)(4).
  [[nodiscard]] constexpr bool is_mark_in_change(std::size_t i) const noexcept {
    if (at(i) != ')' || at(i + 1) != '(' || !is_digit(at(i + 2)) || i == 0) return false;
    char const before = text_[i - 1];
    auto const ends_in = [&](std::string_view sign) { return text_.substr(0, i).ends_with(sign); };
    return before == '-' || before == '+' || before == '=' || ends_in("−") || ends_in("±");
  }
  /// The parenthesis that closes the one at `i`, or npos.
  [[nodiscard]] constexpr std::size_t closing(std::size_t i) const noexcept {
    int open = 0;
    for (; i < text_.size(); ++i) {
      if (open > 0 && is_mark_in_change(i)) {
        ++i;
        continue;
      }
      if (text_[i] == '(') ++open;
      if (text_[i] == ')' && --open == 0) return i;
    }
    return std::string_view::npos;
  }

  /// The text ends as the TEI element does.
  [[nodiscard]] constexpr bool is_tei_end() const noexcept {
    auto const end = text_.rfind("</formula>");
    return end != std::string_view::npos && skip(end + 10) == text_.size();
  }

  // -- what kind of thing stands here ----------------------------------------------------------------------------------

  /// The letters from `i` on are a word, not signatures standing close together (ab, lm, zaa, zA).
  [[nodiscard]] constexpr bool is_word(std::size_t i) const {
    auto end = i;
    while (is_latin_letter(at(end))) ++end;
    if (end < i + 2) return false;
    auto const scanner = signatures(end);
    auto scan = scanner.scan(i);
    if (!scan) return true;
    if (scan.signature.mark() == Mark::pi || scan.signature.mark() == Mark::chi) return false;
    while (scan.end < end) {
      auto const next = scanner.letters(scan.end, 1);
      auto const& a = scan.signature;
      auto const& b = next.signature;
      bool const follows = a.mark() == b.mark() && b.rank(alphabet_) == a.rank(alphabet_) + 1;
      bool const begins = a.mark() != b.mark() && b.rank(alphabet_) == 1;
      if (!follows && !begins) return true;
      scan = next;
    }
    return false;
  }
  /// An extent, a count of plates or leaves: 50 Bl., [404] leaves, pp. [4] 1-234, + 4 plates.
  [[nodiscard]] constexpr bool is_extent(std::size_t i) const {
    auto k = i;
    if (at(k) == '+') k = skip(k + 1);
    bool const bracket = at(k) == '[';
    if (bracket) ++k;
    auto const digits = k;
    while (is_digit(at(k))) ++k;
    bool const number = k != digits;
    if (bracket && (!number || at(k) != ']')) return false;
    if (bracket) ++k;
    auto const words = skip(k);
    if (number && words == k && !bracket) return false;
    if (!number && is_any(words, {"pp.", "ff.", "ll.", "p."})) {
      auto const figures = skip(words + (at(words + 1) == '.' ? 2 : 3));
      if (at(figures) == '[' || is_digit(at(figures))) return true;
    }
    if (is_any(words, {"p.", "p ", "pp.", "l.", "ll.", "ff.", "Bl.", "Bl "})) return number;
    if (auto const last = text_.substr(words < text_.size() ? words : text_.size()); last == "p" || last == "Bl")
      return number;
    return (number || at(i) == '+') && is_latin_letter(at(words)) && is_word(words);
  }
  /// The bytes of the sign of a deletion (-, −) or, then `cancels` is true, of a cancel (±, +-, -/+); 0 where none stands.
  [[nodiscard]] constexpr std::size_t sign_of_loss(std::size_t i, bool& cancels) const {
    cancels = true;
    if (code(i) == 0xB1 || is_any(i, {"+-", "-+"})) return 2;
    if (is_any(i, {"+/-", "-/+"})) return 3;
    cancels = false;
    return is_minus(code(i)) ? decode(text_, i).bytes : std::size_t{0};
  }
  /// What stands in these brackets is several gatherings or one with its count, not a single mark.
  [[nodiscard]] constexpr bool is_group(std::size_t i) const {
    auto const content = i + 1;
    auto const close = [&] {
      for (auto k = content; k < text_.size() && k < content + widest_name; ++k) {
        if (text_[k] == ']') return k;
        if (text_[k] == '[') break;
      }
      return std::string_view::npos;
    }();
    if (close == std::string_view::npos) return true;
    auto const scan = signatures(close).scan(content);
    if (scan && scan.end == close) return named_leaves(scan.signature).count > 0; // ['gg3.4'] has its count
    if (scan && !is_latin_letter(at(content)) && is_dash(code(scan.end)) &&
        signatures(close).scan(scan.end + decode(text_, scan.end).bytes))
      return true; // [1-9¹⁰ 10¹²], [π-σ²]
    if (scan && !is_latin_letter(at(content)) &&
        CountScanner{text_.substr(0, close)}.scan(scan.end, true, true).found())
      return true;
    bool words = false;
    for (auto k = content; k < close; k += decode(text_, k).bytes) {
      std::size_t bytes = 0;
      if (entity(text_, k, bytes) != '\0') { // &amp; in a name is one character
        k += bytes - 1;
        continue;
      }
      if (superscript_digit(code(k)) >= 0 || text_[k] == '^' || text_.substr(k, 5) == "<sup>" || text_[k] == '(' ||
          text_[k] == ';')
        return true;
      if (is_latin_letter(at(k)) && (k == content || !is_latin_letter(at(k - 1)))) words = words || is_word(k);
      if (k > content && is_digit(at(k)) && is_latin_letter(at(k - 1))) return true;
    }
    return !words && is_latin_letter(at(content)) && at(close - 1) != '.';
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
