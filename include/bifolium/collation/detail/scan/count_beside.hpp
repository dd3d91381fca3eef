// SPDX-License-Identifier: MIT
/// Takes leaf counts that are not directly after the marks of a run, as cataloguers and scanned texts have them: after
/// a blank (D ⁸), after a colon (A:8), in parentheses (A-D (8/4)), or in words (A-D, in fours).
#pragma once

#include <bifolium/collation/detail/scan/bracket_cursor.hpp>
#include <bifolium/collation/detail/scan/found_element.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class CountBeside : protected BracketCursor {
protected:
  using BracketCursor::BracketCursor;

  /// Takes a leaf count in words after the run: A (four leaves). After a count in figures it is kept beside that one: in
  /// A-H3, in fours, the 3 is the last leaf that is signed, but in B-I8 K4, in eights, the words are said of most
  /// gatherings. Only the grammar knows which is meant.
  constexpr void take_words(TokenCursor& c, FoundElement& e) const {
    if (e.count.found()) { // only "in" and "per" may follow, after a comma
      auto const first = c.at(TokenKind::comma) ? c.ahead() : c.token;
      if (!may_begin_counts(at(first.from), at(first.from + 1))) return;
    }
    bool const round = c.at(TokenKind::open_round) && !e.count.found();
    if (!round && !c.at(TokenKind::comma) && !c.at(TokenKind::letter)) {
      if (e.count.found() || !c.is_flat_figure()) return;
    }
    auto const k = c.at(TokenKind::letter) ? c.token.from : c.ahead().from;
    if (is_latin_letter(at(k)) && !is_small(at(k + 1))) return; // no word
    auto p = c;
    if (round) p.take();
    auto count = take_count_in_words(p, !e.count.found(), e.single ? 1 : e.gatherings);
    if (!count.found()) return;
    if (round) {
      if (!p.at(TokenKind::close_round)) return;
      count.end = p.token.to;
      p.take();
    }
    (e.count.found() ? e.said : e.count) = count;
    e.apart = e.apart && e.said.found();
    c = p;
  }
  /// Takes the second of two alternating counts if a blank separates it from the first: A-D⁸ ⁴.
  constexpr void take_term_apart(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    auto const term = p.token;
    p.take();
    bool const ends = p.ended() || is_separator(p.token) || p.at(TokenKind::close_square) ||
                      (p.token.spaced && term.value >= 4); // 2 and 3 may be the series of the next mark
    if (!term.spaced || !ends || term.value < 1 || term.value > thick_gathering) return;
    if (!e.count.cycle.push(static_cast<int>(term.value))) return;
    e.count.end = term.to;
    e.apart = true;
    c = p;
  }
  /// Takes a count that a blank separates from the run: D ⁸, k 16.
  constexpr void take_count_apart(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    bool const comma = p.at(TokenKind::comma);
    if (comma) p.take();
    if (p.touches(TokenKind::colon) && e.single && e.first.key.is_latin() && flat_counts_)
      return take_count_after_colon(c, e);
    if (p.at(TokenKind::open_round) && p.token.spaced) return take_count_in_parentheses(c, e);
    if (!p.at(TokenKind::figure) || (!comma && !p.token.spaced)) return;
    bool const raised = p.token.raised();
    if (!raised && !flat_counts_) return;
    bool const sign = p.token.style == TokenStyle::sign; // & ^8: where a mark follows, 8 is its series
    auto const begin = p;
    p.token.spaced = false;
    auto count = take_count(p, !raised);
    if (!count.sound()) return;
    count.from = begin.token.from;
    auto const& t = p.token;
    bool const ends = t.is(TokenKind::end) || t.is(TokenKind::point) || t.is(TokenKind::semicolon) ||
                      t.is(TokenKind::close_round) || t.is(TokenKind::close_square) ||
                      (t.is(TokenKind::comma) && !comma);
    // & ⁸ ꝯ⁸: the first 8 is a count; but in z⁸ ² A the 2 may begin the next mark, A of the second series
    bool const no_series = count.cycle.term(0) >= 4 && t.spaced;
    bool const belongs = raised ? ends || (sign && (no_series || t.is(TokenKind::open_round)))
                                : ends || (!comma && t.spaced && !t.is(TokenKind::dash) && !is_extent(begin));
    if (!belongs) return;
    e.count = count;
    e.apart = true;
    c = p;
  }

private:
  /// Takes a count after a colon: A:8.
  constexpr void take_count_after_colon(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    p.take();
    if (!p.touches(TokenKind::figure) || p.token.style != TokenStyle::line) return;
    auto const count = take_count(p, true);
    bool const ends = p.ended() || p.token.spaced || is_separator(p.token);
    if (!count.sound() || !ends) return;
    e.count = count;
    e.apart = true;
    c = p;
  }
  /// Takes alternating counts in parentheses: A-D (8/4), A (8, 4).
  constexpr void take_count_in_parentheses(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    auto const from = p.token.from;
    p.take();
    FoundCount count;
    for (;;) {
      bool const figure = p.is_flat_figure() && p.token.value > 0 && p.token.value <= thick_gathering;
      if (!figure || !count.cycle.push(static_cast<int>(p.token.value))) return;
      p.take();
      if (p.at(TokenKind::close_round)) break;
      if (!p.at(TokenKind::slash) && !p.at(TokenKind::comma)) return;
      p.take();
    }
    count.from = from;
    count.end = p.token.to;
    p.take();
    e.count = count;
    e.apart = true;
    c = p;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
