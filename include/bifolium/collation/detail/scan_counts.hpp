// SPDX-License-Identifier: MIT
/// The leaf count behind a signature, in every notation met: A⁸, A^8, A^{8}, A<sup>8</sup>, A8, 12(4), and counts that
/// take turns: 8/4, 8.6.8.6.6, 12,6 - and 8-6, which scanned catalogues have for 8.6.
#pragma once

#include <bifolium/collation/parts.hpp>
#include <bifolium/core/ascii.hpp>
#include <bifolium/core/problem.hpp>
#include <bifolium/core/utf8.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

struct CountScan {
  Cycle cycle;
  std::size_t end{};
  bool flat{};   ///< it stood on the line
  bool hyphen{}; ///< its terms were joined by a hyphen
  Problem problem{Problem::none};
  [[nodiscard]] constexpr bool found() const noexcept { return problem != Problem::none || cycle.size() != 0; }
};

class CountScanner {
  std::string_view text_;
  CountScan scan_{};

  enum class Style : std::uint8_t { raised, line };

  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  [[nodiscard]] constexpr int raised_digit(std::size_t i, std::size_t& bytes) const noexcept {
    if (static_cast<unsigned char>(at(i)) < 0xC2) return -1;
    auto const c = decode(text_, i);
    bytes = c.bytes;
    return superscript_digit(c.value);
  }
  /// Reads one number; false when none stands there.
  constexpr bool number(std::size_t& i, Style style) {
    int value = 0;
    auto const from = i;
    for (;;) {
      std::size_t bytes = 1;
      int const digit = style == Style::raised ? raised_digit(i, bytes) : is_digit(at(i)) ? at(i) - '0' : -1;
      if (digit < 0) break;
      if (value <= most_leaves_in_gathering) value = value * 10 + digit;
      i += bytes;
    }
    if (i == from) return false;
    if (value == 0)
      scan_.problem = Problem::zero_leaf_count;
    else if (value > most_leaves_in_gathering)
      scan_.problem = Problem::number_too_large;
    else if (!scan_.cycle.push(value))
      scan_.problem = Problem::cycle_too_long;
    return true;
  }
  /// Numbers with signs of alternation between them.
  constexpr void numbers(std::size_t& i, Style style, bool hyphens) {
    if (!number(i, style)) return;
    while (scan_.problem == Problem::none && i < text_.size()) {
      auto next = i;
      if (style == Style::line && at(next) == '^' && (at(next + 1) == '/' || at(next + 1) == '.')) ++next; // 8^/4^
      char const c = at(next);
      bool const hyphen = hyphens && is_dash(decode(text_, next).value);
      if (c == '/' || c == '.' || c == ',' || c == '-')
        next += 1;
      else if (static_cast<unsigned char>(c) >= 0xC2 &&
               (hyphen || decode(text_, next).value == 0xB7 || decode(text_, next).value == 0x2044))
        next += decode(text_, next).bytes;
      else
        break;
      if (c == '-' && !hyphen) break;
      if (at(next) == '^') ++next;
      if (!number(next, style)) break;
      scan_.hyphen = scan_.hyphen || hyphen;
      i = next;
    }
  }

  [[nodiscard]] constexpr bool begins(std::size_t i, std::string_view word) const noexcept {
    return text_.substr(i < text_.size() ? i : text_.size(), word.size()) == word;
  }
  /// The bytes of <sup> or of TEI's <hi rend="superscript"> at `i`, 0 if neither opens there.
  [[nodiscard]] constexpr std::size_t opening_tag(std::size_t i) const noexcept {
    if (begins(i, "<sup>")) return 5;
    if (!begins(i, "<hi ")) return 0;
    for (auto k = i; k < text_.size() && k < i + 48; ++k)
      if (text_[k] == '>') return k + 1 - i;
    return 0;
  }
  /// A caret here begins another mark (^2A) and does not close this count (8^).
  [[nodiscard]] constexpr bool goes_on_raised(std::size_t i) const noexcept {
    return is_digit(at(i)) || is_small(at(i)) || static_cast<unsigned char>(at(i)) >= 0xC2;
  }

public:
  constexpr explicit CountScanner(std::string_view text) : text_{text} {}

  /// The count at byte `i`. `line`: it may stand on the line; `hyphens`: 8-6 may be an alternation.
  [[nodiscard]] constexpr CountScan scan(std::size_t i, bool line, bool hyphens) {
    char const c = at(i);
    if (is_digit(c)) {
      if (!line) return scan_;
      scan_.flat = true;
      numbers(i, Style::line, hyphens);
    } else if (c == '^') {
      bool const brace = at(i + 1) == '{';
      i += brace ? 2 : 1;
      numbers(i, Style::line, false);
      if (!brace && scan_.found() && at(i) == '^' && !goes_on_raised(i + 1)) ++i; // A^8^
      if (brace && scan_.found() && scan_.problem == Problem::none) {
        if (at(i) != '}') scan_.cycle = Cycle{};
        ++i;
      }
    } else if (auto const tag = opening_tag(i); tag != 0) {
      i += tag;
      numbers(i, Style::line, false);
      for (;;) {
        auto const close = begins(i, "</sup>") ? 6U : begins(i, "</hi>") ? 5U : 0U;
        if (close == 0 && scan_.problem == Problem::none) scan_.cycle = Cycle{};
        i += close;
        auto const next = opening_tag(i + 1); // <sup>8</sup>/<sup>4</sup>
        if (close == 0 || next == 0 || scan_.problem != Problem::none || (at(i) != '/' && at(i) != '.' && at(i) != ','))
          break;
        auto more = i + 1 + next;
        if (!number(more, Style::line)) break;
        i = more;
      }
    } else if (c == '(' && is_digit(at(i + 1))) {
      ++i;
      numbers(i, Style::line, false);
      if (at(i) == ')')
        ++i;
      else {
        scan_.cycle = Cycle{};
        scan_.problem = Problem::none;
      }
    } else if (static_cast<unsigned char>(c) >= 0xC2) {
      if (decode(text_, i).value == 0xB7) i += 2; // a stray middle dot: D·⁴
      numbers(i, Style::raised, false);
    }
    scan_.end = i;
    return scan_;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
