// SPDX-License-Identifier: MIT
/// Reads the leaf count after a signature, in every notation in use: A⁸, A^8, A<sup>8</sup>, A8, 12(4), counts that
/// alternate (8/4, 8.6.8.6.6, 12,6, and 8-6, which scanned catalogues have for 8.6), and counts in words: A-K, in
/// eights; A, three leaves.
///
///   count   = term , { ( "/" | "." | "·" | "," | "-" ) , term } | "(" , term , { ... } , ")" | words ;
///   words   = [ "," ] , ( ( "in" | "per" ) , plural | number , ( "leaves" | "leaf" ) , [ "each" ] ) ;
///   plural  = "fours" | "4s" | "8" ... ;
///
/// All terms of one count have one notation.
#pragma once

#include <bifolium/collation/parts.hpp>
#include <bifolium/leaf/signature_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// A count found in a text, or why it is none.
struct FoundCount {
  Cycle cycle{};
  std::uint32_t from{}, end{};
  bool hyphen{};   ///< its terms were joined by a hyphen
  bool in_words{}; ///< in eights
  bool flat{};     ///< it is on the line
  Problem problem{Problem::none};
  [[nodiscard]] constexpr bool found() const noexcept { return problem != Problem::none || cycle.size() != 0; }
  /// There is a count, and it is one.
  [[nodiscard]] constexpr bool sound() const noexcept { return problem == Problem::none && cycle.size() != 0; }
};

/// Returns the letters together that begin at the cursor's token; empty if it is no letter.
[[nodiscard]] constexpr std::string_view word_at(std::string_view text, std::uint32_t from) noexcept {
  auto end = from;
  while (end < text.size() && is_latin_letter(text[end])) ++end;
  return text.substr(from, end - from);
}

class CountReader : public SignatureReader {
public:
  using SignatureReader::SignatureReader;

  /// Returns the count at the cursor, which goes after it; nothing is taken if there is none. `line`: it may be on the
  /// line; `hyphens`: 8-6 may be an alternation.
  constexpr FoundCount take_count(TokenCursor& c, bool line, bool hyphens = false) const {
    auto p = c;
    if (p.touches(TokenKind::point) && p.token.value == 0xB7) p.take(); // a stray middle dot: D·⁴
    if (!p.touches(TokenKind::figure) && !p.touches(TokenKind::open_round)) return {};
    bool const round = p.at(TokenKind::open_round);
    if (round) {
      p.take();
      if (!p.touches(TokenKind::figure)) return {};
    } else if (!p.token.raised() && !line)
      return {};
    auto count = terms(p, hyphens && !round);
    if (round) count.flat = false;
    if (round) {
      if (!p.touches(TokenKind::close_round) || count.problem != Problem::none) return {};
      count.end = p.token.to;
      p.take();
    }
    c = p;
    return count;
  }
  /// ", in eights"; ", six leaves"; "six leaves each": taken, or nothing is. `or_leaves`: the second form may be meant.
  constexpr FoundCount take_count_in_words(TokenCursor& c, bool or_leaves) const {
    auto p = c;
    FoundCount count;
    count.from = p.token.from;
    if (p.at(TokenKind::comma)) p.take();
    if (!p.at(TokenKind::letter)) return {};
    auto const word = word_at(text_, p.token.from);
    bool const in = word == "in" || word == "per";
    if (!in && !or_leaves) return {};
    if (in) p = TokenCursor{text_, p.token.from + word.size()};
    auto const number = take_number(p, in);
    if (number.value < 1) return {};
    if (in)
      count.end = number.end;
    else {
      auto const leaves = p.at(TokenKind::letter) ? word_at(text_, p.token.from) : std::string_view{};
      if (leaves != "leaves" && leaves != "leaf") return {};
      count.end = p.token.from + static_cast<std::uint32_t>(leaves.size());
      p = TokenCursor{text_, count.end};
      if (p.at(TokenKind::letter) && word_at(text_, p.token.from) == "each") count.end = p.token.from + 4;
    }
    count.cycle = Cycle{number.value};
    count.in_words = true;
    c = TokenCursor{text_, count.end};
    return count;
  }

private:
  struct Number {
    int value{}; // 0 where there is none
    std::uint32_t end{};
  };

  constexpr FoundCount terms(TokenCursor& p, bool hyphens) const {
    FoundCount count;
    count.from = p.token.from;
    auto const style = p.token.style;
    count.flat = style == TokenStyle::line;
    for (;;) {
      if (p.token.value == 0)
        count.problem = Problem::zero_leaf_count;
      else if (p.token.value > most_leaves_in_gathering)
        count.problem = Problem::number_too_large;
      else if (!count.cycle.push(static_cast<int>(p.token.value)))
        count.problem = Problem::cycle_too_long;
      count.end = p.token.to;
      p.take();
      if (count.problem != Problem::none || p.token.spaced) break;
      bool const hyphen = p.at(TokenKind::dash) && hyphens && style == TokenStyle::line;
      bool const separator = p.at(TokenKind::slash) || p.at(TokenKind::point) || p.at(TokenKind::comma);
      if (!separator && !hyphen) break;
      auto next = p;
      next.take();
      bool const same_style =
          next.token.style == style || (style == TokenStyle::caret && !next.token.raised()); // ^8/4, ^8^/4^
      if (!next.touches(TokenKind::figure) || !same_style) break;
      count.hyphen = count.hyphen || hyphen;
      p = next;
      if (style == TokenStyle::caret && !p.token.raised() && at(p.token.to) == '^' && closes(p.token.to))
        p = after_caret(p);
    }
    return count;
  }
  /// A caret at this byte closes a count (8^/4^) and begins no mark.
  [[nodiscard]] constexpr bool closes(std::uint32_t caret) const noexcept {
    auto const c = at(caret + 1);
    return !is_digit(c) && !is_small(c) && static_cast<unsigned char>(c) < 0xC2;
  }
  /// Returns the same figure with the caret that closes it.
  [[nodiscard]] constexpr TokenCursor after_caret(TokenCursor p) const noexcept {
    ++p.token.to;
    p.lexer = Lexer{text_, p.token.to};
    return p;
  }
  /// eight, eights; as a figure 8, 8s: taken, or nothing is.
  constexpr Number take_number(TokenCursor& p, bool plural) const {
    constexpr std::string_view words[]{"one"sv,     "two"sv,       "three"sv,    "four"sv,     "five"sv,
                                       "six"sv,     "seven"sv,     "eight"sv,    "nine"sv,     "ten"sv,
                                       "eleven"sv,  "twelve"sv,    "thirteen"sv, "fourteen"sv, "fifteen"sv,
                                       "sixteen"sv, "seventeen"sv, "eighteen"sv, "nineteen"sv, "twenty"sv};
    if (p.token.is_flat_figure() && plural) {
      Number number{p.token.value <= most_leaves_in_gathering ? static_cast<int>(p.token.value) : 0, p.token.to};
      p.take();
      if (p.touches(TokenKind::letter) && word_at(text_, p.token.from) == "s") number.end = p.token.to, p.take();
      return number;
    }
    if (!p.at(TokenKind::letter)) return {};
    auto const word = word_at(text_, p.token.from);
    auto const says = [&](std::string_view number) {
      if (!plural) return word == number;
      if (!word.starts_with(number)) return false;
      auto const ending = word.substr(number.size());
      return ending == "s" || (ending == "es" && number == "six");
    };
    for (int n = 1; n <= 20; ++n)
      if (says(words[n - 1])) {
        Number const number{n, p.token.from + static_cast<std::uint32_t>(word.size())};
        p = TokenCursor{text_, number.end};
        return number;
      }
    return {};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
