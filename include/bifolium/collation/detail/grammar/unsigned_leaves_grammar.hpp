// SPDX-License-Identifier: MIT
/// Reads leaves without a signature that the text describes in words: 2 unsigned leaves; 4 p.l.; 1 leaf of errata. They are
/// counted as one gathering, with a warning, because the text does not say how they are joined.
///
///   unsigned = ( [ "[" ] , figure , [ "]" ] | number ) , [ adjective ] ,
///              ( "leaves" | "leaf" | "l." | "ll." | "f." | "ff." | "Bl." | "p.l." ) ,
///              [ [ "," ] , adjective | "(" , adjective , ")" | "of" , contents , words ] ;
///   contents = [ "the" ] , ( "errata" | "index" | "contents" | "advertisements" | "dedication" | "title" | "table" ) ;
///   adjective = "unsigned" | "unnumbered" | "preliminary" | "prelim." | "without signatures" | blank word ;
#pragma once

#include <bifolium/collation/detail/grammar/appendix_grammar.hpp>
#include <bifolium/collation/detail/words/book_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class UnsignedLeavesGrammar : protected AppendixGrammar<Sink> {
protected:
  using Base = AppendixGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::at, Base::word, Base::is_word, Base::c_, Base::after_word, Base::begun;

  std::int64_t leaves_at_extent_{0}; // how many leaves came before the last extent after which gatherings follow

  /// Reads leaves without a signature: 2 unsigned leaves; [2] leaves; 4 p.l. They become a gathering π, or χ after
  /// other gatherings, where the text must call them unsigned or say what is on them, and where their number is not a total: 80
  /// unnumbered leaves. Returns false if there are none.
  constexpr bool leaves_before() {
    bool const square = c_.at(TokenKind::open_square);
    if (square && !is_digit(at(c_.token.to))) return false;
    auto c = c_;
    auto const from = c.token.from;
    if (square) c.take();
    bool const figure = c.is_flat_figure();
    auto const leaves = figure ? static_cast<int>(c.token.value) : this->number_word(c);
    if (figure) c.take();
    if (leaves < 1 || leaves > thick_gathering || (square && !c.touches(TokenKind::close_square))) return false;
    if (square) c.take();
    bool const may_be_total = begun() && leaves > 4 && word(c).starts_with("un");
    bool said = take_adjectives(c);
    if (!take_leaves(c)) return false;
    bool const after = begun() && may_be_total && (c.ended() || is_separator(c.token));
    if (after && (leaves == this->leaves_ || leaves == this->leaves_ - leaves_at_extent_)) return false;
    auto p = c;
    bool const round = p.at(TokenKind::open_round);
    if (p.at(TokenKind::comma) || round) p.take();
    if (take_adjectives(p) && (!round || p.at(TokenKind::close_round))) {
      if (round) p.take();
      c = p, said = true;
    } else if (begun() && !said)
      said = take_contents(c);
    if (begun() && !said) return false;
    auto const to = end_before(c.token.from);
    if (is_separator(c.token) || c.at(TokenKind::plus) || c.at(TokenKind::colon)) c.take();
    if (c.ended() && !begun()) return false;
    warn(Problem::unsigned_leaves_as_gathering, from, to);
    c_ = c;
    return this->unsigned_gathering(begun(), leaves, from, to);
  }
  /// Takes all words such as unsigned, unnumbered, preliminary. Returns true if there was one.
  constexpr bool take_adjectives(TokenCursor& c) const {
    bool any = false;
    for (;;) {
      auto const w = word(c);
      bool const one = w == "unsigned" || w == "unnumbered" || w == "preliminary" || w == "prelim" ||
                       (is_blank_word(w) && w != "Bl") || w == "without" ||
                       (any && (w == "signature" || w == "signatures"));
      if (!one) return any;
      c = after_word(c);
      if (w == "prelim" && c.touches(TokenKind::point)) c.take();
      any = true;
    }
  }

private:
  [[nodiscard]] constexpr std::uint32_t end_before(std::uint32_t i) const noexcept {
    for (i = this->before_blanks(i); i > 0 && (at(i - 1) == ',' || at(i - 1) == ';'); i = this->before_blanks(i)) --i;
    return i;
  }
  /// Takes "of" and what is on leaves of the text, with the words up to a separator: of errata. Returns false if something
  /// else is there, as in 4 leaves of plates.
  constexpr bool take_contents(TokenCursor& c) const {
    if (word(c) != "of") return false;
    auto p = after_word(c);
    if (word(p) == "the") p = after_word(p);
    if (!is_word_of_contents(word(p))) return false;
    for (p = after_word(p); p.at(TokenKind::letter) && word(p).size() > 1 && is_word(p.token.from);) p = after_word(p);
    if (!p.ended() && !is_separator(p.token)) return false;
    c = p;
    return true;
  }
  /// Takes a word for leaves: leaves, leaf, l., ll., f., ff., Bl., p.l. Returns true if there was one.
  constexpr bool take_leaves(TokenCursor& c) const {
    auto p = c;
    if (word(p) == "p") {
      p = after_word(p);
      if (!p.touches(TokenKind::point)) return false;
      p.take();
    }
    auto const w = word(p);
    bool const full = w == "leaves" || w == "leaf";
    if (!full && !is_unit_of_leaves(w)) return false;
    p = after_word(p);
    bool const point = p.touches(TokenKind::point);
    if (!full && !point) return false;
    if (point && !full) p.take();
    c = p;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
