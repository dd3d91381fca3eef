// SPDX-License-Identifier: MIT
/// Reads the leaf count after a signature in every known notation: A⁸, A^8, A<sup>8</sup>, A8, 12(4). Counts can alternate:
/// 8/4, 8.6.8.6.6, 12,6, ⁸⁻⁴, and 8-6, which scanned catalogues have instead of 8.6. Counts can be words: A-K, in eights;
/// A, three leaves.
///
///   count    = terms | "(" , terms , ")" | in words ;
///   terms    = figure , { ( "/" | "." | "·" | "," | "-" ) , figure } ;  (* all raised, or all on the line *)
///   in words = [ "," ] , ( in plurals | [ "in" ] , number , ( "leaves" | "leaf" ) , [ "each" ] ) ;
///   in plurals = ( "in" | "per" ) , [ "alternate" ] , plural , [ ( "and" | "&" ) , plural , [ "alternately" ] ] ;
///   plural   = "fours" | "eights" | number | figure , [ [ "'" ] , "s" ] ;
///   gathered = in plurals | "(" , ( in plurals | plural | terms ) , ")" ; (* after a format: 8° in fours, 12° (8/4) *)
///
/// All terms of a count are written in the same notation.
#pragma once

#include <bifolium/collation/detail/found_run.hpp>
#include <bifolium/collation/detail/word_at.hpp>
#include <bifolium/core/number_words.hpp>
#include <bifolium/leaf/signature_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// A count found in a text, or the reason why there is none.
struct FoundCount {
  Cycle cycle{};
  std::uint32_t from{}, end{};
  bool hyphen{};   ///< its terms were joined by a hyphen
  bool in_words{}; ///< in eights
  bool each{};     ///< two leaves each
  bool flat{};     ///< it is on the line
  Problem problem{Problem::none};
  [[nodiscard]] constexpr bool found() const noexcept { return problem != Problem::none || cycle.size() != 0; }
  /// Returns true if there is a valid count.
  [[nodiscard]] constexpr bool sound() const noexcept { return problem == Problem::none && cycle.size() != 0; }
};

class CountReader : public SignatureReader {
public:
  using SignatureReader::SignatureReader;

  /// Takes a leaf count. If there is none, takes nothing and returns an empty count. `line`: the count may be on the line.
  /// `hyphens`: 8-6 may be two alternating counts. `several`: ⁸⁻⁴ may be, because the run has several gatherings.
  constexpr FoundCount take_count(TokenCursor& c, bool line, bool hyphens = false, bool several = false) const {
    auto p = c;
    if (p.touches(TokenKind::point) && p.token.value == 0xB7) p.take(); // a stray middle dot: D·⁴
    if (!p.touches(TokenKind::figure) && !p.touches(TokenKind::open_round)) return {};
    if (p.token.style == TokenStyle::lowered) return {}; // A₄ is a leaf
    bool const round = p.at(TokenKind::open_round);
    if (round) {
      p.take();
      if (!p.touches(TokenKind::figure)) return {};
    } else if (!p.token.raised() && !line)
      return {};
    auto count = terms(p, hyphens && !round, several);
    if (round) count.flat = false;
    if (round) {
      if (!p.touches(TokenKind::close_round) || count.problem != Problem::none) return {};
      count.end = p.token.to;
      p.take();
    }
    c = p;
    return count;
  }
  /// Takes a leaf count in words: ", in eights"; "in eights and fours"; ", six leaves"; "six leaves each". If there is none,
  /// takes nothing and returns an empty count. `or_leaves`: forms without "in" are counts too. `single`: the run is one
  /// gathering, so "6 leaves" in figures may be its count.
  constexpr FoundCount take_count_in_words(TokenCursor& c, bool or_leaves, bool single = false) const {
    auto p = c;
    FoundCount count;
    count.from = p.token.from;
    if (p.at(TokenKind::comma)) p.take();
    if (!p.at(TokenKind::letter) && !(or_leaves && single && p.is_flat_figure())) return {};
    bool const in = take_word(p, "in") || take_word(p, "per");
    if (!in && !or_leaves) return {};
    if (in) static_cast<void>(take_word(p, "alternate"));
    auto number = take_number(p, in || single);
    if (number.value < 1) return {};
    count.cycle = Cycle{number.value};
    count.end = number.end;
    if (auto const leaves = take_leaves_word(p, count.each); leaves != 0)
      count.end = leaves;
    else if (!in)
      return {};
    else
      count.end = take_alternation(p, count.cycle, number.end);
    count.in_words = true;
    c = TokenCursor{text_, count.end};
    return count;
  }

  /// Takes the statement of how a format is gathered: in fours; (in 4s); (4s); (8/4). If there is none, takes nothing and
  /// returns an empty count. A single figure, 8° (4), is not such a statement, because it can mean anything.
  constexpr FoundCount take_gathered(TokenCursor& c) const {
    auto p = c;
    bool const round = p.at(TokenKind::open_round);
    if (round) p.take();
    FoundCount count;
    if (p.at(TokenKind::letter))
      count = take_count_in_words(p, false);
    else if (round && p.is_flat_figure()) {
      auto q = p;
      if (auto const number = take_number(q, true); number.plural && number.value > 0)
        count.cycle = Cycle{number.value}, p = TokenCursor{text_, number.end};
      else if (count = terms(p, false, false); count.cycle.size() < 2)
        return {};
    }
    if (!count.sound()) return {};
    if (round && !p.at(TokenKind::close_round)) return {};
    if (round) p.take();
    count.from = c.token.from;
    count.end = p.token.from;
    c = p;
    return count;
  }

  /// Takes a number word from "one" to "twenty" and returns its value, or 0 if there is none.
  constexpr int number_word(TokenCursor& c) const {
    return begins_number_word(c.token.from) ? take_number(c, false).value : 0;
  }
  /// Returns true if a number word can begin at this byte. Most letters are followed by something else.
  [[nodiscard]] constexpr bool begins_number_word(std::uint32_t i) const noexcept {
    return is_small(at(i + 1)) && is_small(at(i + 2));
  }

private:
  struct Number {
    int value{}; // 0 if there is none
    std::uint32_t end{};
    bool plural{}; // true for eights and 8s
  };

  /// Takes this word. Returns true if it was at the cursor.
  constexpr bool take_word(TokenCursor& p, std::string_view word) const {
    if (!p.at(TokenKind::letter) || word_at(text_, p.token.from) != word) return false;
    p = TokenCursor{text_, p.token.from + word.size()};
    return true;
  }
  /// Takes "leaf", "leaves" or "leaves each". Returns the position after it, or 0 if there is none.
  constexpr std::uint32_t take_leaves_word(TokenCursor& p, bool& each) const {
    auto end = p.token.from;
    if (take_word(p, "leaves"))
      end += 6;
    else if (take_word(p, "leaf"))
      end += 4;
    else
      return 0;
    auto const word = p.token.from;
    each = take_word(p, "each");
    return each ? word + 4 : end;
  }
  /// Adds the second count of "in eights and fours [alternately]". Returns the position after it, or `end` if there is none.
  constexpr std::uint32_t take_alternation(TokenCursor p, Cycle& cycle, std::uint32_t end) const {
    bool const sign = p.at(TokenKind::symbol) && p.token.value == '&';
    if (sign) p.take();
    if (!sign && !take_word(p, "and")) return end;
    auto const number = take_number(p, true);
    if (number.value < 1 || !number.plural || !cycle.push(number.value)) return end;
    auto const word = p.token.from;
    return take_word(p, "alternately") ? word + 11 : number.end;
  }

  constexpr FoundCount terms(TokenCursor& p, bool hyphens, bool several) const {
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
      bool const raised_dash = p.at(TokenKind::minus) && p.token.raised() && several;
      bool const separator = p.at(TokenKind::slash) || p.at(TokenKind::point) || p.at(TokenKind::comma) || raised_dash;
      if (!separator && !hyphen) break;
      auto next = p;
      next.take();
      bool const same_style =
          next.token.style == style || (style == TokenStyle::caret && !next.token.raised()); // ^8/4, ^8^/4^
      if (!next.touches(TokenKind::figure) || !same_style) break;
      if (raised_dash && next.token.value % 2 != 0) break; // c⁸⁻¹ has a leaf less
      count.hyphen = count.hyphen || hyphen;
      p = next;
      if (style == TokenStyle::caret && !p.token.raised() && at(p.token.to) == '^' && closes(p.token.to))
        p = after_caret(p);
    }
    return count;
  }
  /// Returns true if a caret at this byte ends a count (8^/4^) and does not begin a mark.
  [[nodiscard]] constexpr bool closes(std::uint32_t caret) const noexcept {
    auto const c = at(caret + 1);
    return !is_digit(c) && !is_small(c) && static_cast<unsigned char>(c) < 0xC2;
  }
  /// Returns the cursor after the caret that ends a number.
  [[nodiscard]] constexpr TokenCursor after_caret(TokenCursor p) const noexcept {
    ++p.token.to;
    p.lexer = Lexer{text_, p.token.to};
    return p;
  }
  /// Reads eight or eights, or in digits 8 or 8s.
  constexpr Number take_number(TokenCursor& p, bool plural) const {
    if (p.token.is_flat_figure() && plural) {
      Number number{p.token.value <= most_leaves_in_gathering ? static_cast<int>(p.token.value) : 0, p.token.to};
      p.take();
      if (auto q = p; q.touches(TokenKind::quote)) { // 8's
        q.take();
        if (q.touches(TokenKind::letter) && q.token.value == 's') p = q;
      }
      if (p.touches(TokenKind::letter) && word_at(text_, p.token.from) == "s")
        number.end = p.token.to, number.plural = true, p.take();
      return number;
    }
    if (!p.at(TokenKind::letter) || !begins_number_word(p.token.from)) return {};
    auto const word = word_at(text_, p.token.from);
    auto const several = plural ? number_of_plural(word) : std::nullopt;
    auto const value = several ? several : number_of_word(word);
    if (!value) return {};
    Number const number{*value, p.token.from + static_cast<std::uint32_t>(word.size()), several.has_value()};
    p = TokenCursor{text_, number.end};
    return number;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
