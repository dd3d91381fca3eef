// SPDX-License-Identifier: MIT
/// Reads the leaf count after a signature in every known notation: A⁸, A^8, A<sup>8</sup>, A8, 12(4). Counts can
/// alternate: 8/4, 8.6.8.6.6, 12,6, ⁸⁻⁴, and 8-6, which scanned catalogues have instead of 8.6. Counts can be words:
/// A-K, in eights; A, three leaves.
///
///   count    = terms | "(" , terms , ")" | in words ;
///   terms    = figure , { ( "/" | "." | "·" | "," | "-" ) , figure } ;  (* all raised, or all on the line *)
///   in words = [ "," ] , ( before counts , plurals | "of" , number
///            | [ "in" | "per" | "of" ] , number , ( "leaves" | "leaf" ) , [ "each" ] ) ;
///
/// All terms of a count are written in the same notation.
#pragma once

#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/collation/detail/scan/word_at.hpp>
#include <bifolium/leaf/counts_in_words.hpp>
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
  bool flat{};     ///< it is on the line
  Problem problem{Problem::none};
  [[nodiscard]] constexpr bool found() const noexcept { return problem != Problem::none || cycle.size() != 0; }
  /// Returns true if there is a valid count.
  [[nodiscard]] constexpr bool sound() const noexcept { return problem == Problem::none && cycle.size() != 0; }
};

class CountReader : public SignatureReader {
public:
  using SignatureReader::SignatureReader;

  /// Takes a leaf count. If there is none, takes nothing and returns an empty count. `line`: the count may be on the
  /// line. `hyphens`: 8-6 may be two alternating counts; 8-1 is a leaf less. `several`: ⁸⁻⁴ may be, because the run has
  /// several gatherings.
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
  /// Takes a leaf count in words: ", in eights"; "in eights and fours"; ", six leaves"; "six leaves each". If there is
  /// none, takes nothing and returns an empty count. `or_leaves`: forms without "in" are counts too, and "of 8". "6 leaves" in
  /// figures is the count of one gathering, or of each if it is less than two for each of the `gatherings` of the run; "6 leaves
  /// each" is that of any run.
  constexpr FoundCount take_count_in_words(TokenCursor& c, bool or_leaves, std::int64_t gatherings = 0) const {
    auto p = c;
    FoundCount count;
    count.from = p.token.from;
    if (p.at(TokenKind::comma)) p.take();
    if (!p.at(TokenKind::letter) && !(or_leaves && p.is_flat_figure())) return {};
    TextCursor words{text_, p.token.from};
    bool const in = (may_begin_counts(words.peek(), words.peek(1)) && take_word_before_counts(words)) ||
                    (or_leaves && words.peek() == 'o' && take_word_of_counts(words, "of"));
    if (!in && !or_leaves) return {};
    auto numbered = words;
    auto const number = take_number_in_words(numbered);
    auto leaved = numbered;
    bool each = false;
    bool const leaves =
        number && number->value > 0 && number->value <= most_leaves_in_gathering && take_leaves_word(leaved, each);
    CountsRead read;
    if (leaves &&
        (in || each || number->value < 2 * gatherings || gatherings == 1 || !(number->figures || number->plural)))
      read.add(number->value), words = leaved;
    else if (in && number)
      read = take_second_count(numbered, *number, small_letter(at(p.token.from)) == 'a'), words = numbered;
    else if (in)
      read = take_counts_in_words(words); // alternate eights and fours
    if (!read.found()) return {};
    count.cycle = read.leaves;
    count.problem = read.problem;
    count.end = static_cast<std::uint32_t>(words.at());
    count.in_words = true;
    c = TokenCursor{text_, count.end};
    return count;
  }

  /// Takes a number word such as "one" or "twenty" and returns its value, or 0 if there is none.
  constexpr int number_word(TokenCursor& c) const {
    if (!c.at(TokenKind::letter) || !begins_number_word(c.token.from)) return 0;
    TextCursor words{text_, c.token.from};
    auto const number = take_number_in_words(words);
    if (!number || number->plural) return 0;
    c = TokenCursor{text_, words.at()};
    return static_cast<int>(number->value);
  }
  /// Returns true if a number word can begin at this byte. Most letters are followed by something else.
  [[nodiscard]] constexpr bool begins_number_word(std::uint32_t i) const noexcept {
    return is_small(at(i + 1)) && is_small(at(i + 2));
  }

private:
  /// Takes "leaf", "leaves" or "leaves each", and the blanks before it. Returns true if there is one.
  static constexpr bool take_leaves_word(TextCursor& cursor, bool& each) {
    auto c = cursor;
    c.take_blanks();
    if (!c.take_word("leaves") && !c.take_word("leaf")) return false;
    cursor = c;
    c.take_blanks();
    each = c.take_word("each");
    if (each) cursor = c;
    return true;
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
        count.problem = Problem::leaf_count_too_high;
      else if (!count.cycle.push(static_cast<int>(p.token.value)))
        count.problem = Problem::cycle_too_long;
      count.end = p.token.to;
      auto const term = p.token.value;
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
      // A-Z8,2A-2M8: a number directly before a letter is of the next signature
      if (p.at(TokenKind::comma) && count.flat && is_latin_letter(at(next.token.to))) break;
      // c⁸⁻¹ and c8-1 have a leaf less; m1-3 has its first three
      if ((raised_dash || (hyphen && next.token.value < term)) && next.token.value % 2 != 0) break;
      count.hyphen = count.hyphen || hyphen;
      p = next;
      if (style == TokenStyle::caret && !p.token.raised() && ends_caret_number(text_, p.token.to)) p = after_caret(p);
    }
    return count;
  }
  /// Returns the cursor after the caret that ends a number.
  [[nodiscard]] constexpr TokenCursor after_caret(TokenCursor p) const noexcept {
    ++p.token.to;
    p.lexer = Lexer{text_, p.token.to};
    return p;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
