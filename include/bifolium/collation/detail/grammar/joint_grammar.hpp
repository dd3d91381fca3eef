// SPDX-License-Identifier: MIT
/// Takes what joins two runs: A-C⁸ & D⁶, A-K⁸ e a-b⁸, A-K⁸ then L-M⁸. Most of these may be signatures as well, or
/// begin words about the book. So they join only if a run with its count, or a group of runs, follows.
#pragma once

#include <bifolium/collation/detail/grammar/run_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class JointGrammar : protected RunGrammar<Sink> {
protected:
  using Base = RunGrammar<Sink>;
  using Base::Base;
  using Base::begun, Base::last_, Base::dialect_, Base::alphabet_, Base::c_, Base::cursor, Base::take_element;

  /// Returns true for a stroke between gatherings: A-K⁸ | L⁴; A-K⁸ / a-b⁸. `separated`: another was directly before.
  [[nodiscard]] constexpr bool is_stroke(bool separated) const {
    auto const& t = c_.token;
    if (!(t.is(TokenKind::slash) || t.is(TokenKind::other)) || !begun() || t.style != TokenStyle::line) return false;
    if (t.is(TokenKind::slash)) {
      auto const next = c_.ahead();
      return t.value == '/' && (t.spaced || separated) && (next.spaced || next.is(TokenKind::slash));
    }
    return t.value == '|';
  }
  /// Takes & between two runs: A-C⁸ & D⁶, A-K⁸ & a-b⁸. Returns false if & is a signature, as after the last letter of an
  /// alphabet.
  constexpr bool joining_sign() {
    auto const t = c_.token;
    auto c = c_;
    c.take();
    if (t.value != '&' || !t.spaced || !c.token.spaced || !begun() || ends_alphabet(last_.last)) return false;
    if (!is_element(c)) return false;
    c_ = cursor(t.to);
    return true;
  }
  /// Takes the letter e, y or u that means "and" in Italian, Spanish or German: A-K⁸ e a-b⁸. Returns false if it may be a
  /// signature: it continues the letters before it, or others continue it.
  constexpr bool joining_letter() {
    auto const t = c_.token;
    if ((t.value != 'e' && t.value != 'y' && t.value != 'u') || !t.spaced || dialect_.omitted != Omitted::error)
      return false;
    auto c = cursor(t.to);
    if (t.value == 'u' && !c.touches(TokenKind::point)) return false; // u.
    if (t.value == 'u') c.take();
    if (!c.token.spaced) return false;
    FoundElement e;
    auto next = c;
    if (!take_element(next, e) || !e.count.sound()) return false;
    auto const rank = std::int64_t{alphabet_.place(rank_of_letter(static_cast<char>(t.value)))};
    auto const beside = [&](SignatureKey mark, std::int64_t place) {
      return mark.mark() == Mark::small_letter && mark.is_plain_latin() && mark.rank(alphabet_) == place;
    };
    if (beside(last_.last, rank - 1) || beside(e.first.key, rank + 1)) return false;
    c_ = c;
    return true;
  }
  /// Takes words that join two runs: then L-M⁸; followed by a-b⁸. Returns false if there are none.
  constexpr bool joining_phrase() {
    auto const c = after_phrase(c_);
    if (c.token.from == c_.token.from || !is_element(c)) return false;
    c_ = c;
    return true;
  }
  /// Returns the cursor after such words, or the same cursor if there are none.
  [[nodiscard]] constexpr TokenCursor after_phrase(TokenCursor const& c) const {
    auto const w = this->word(c);
    if (w == "then" || w == "dann" || w == "puis" || w == "poi") return this->after_word(c);
    if (w != "followed") return c;
    auto const by = this->after_word(c);
    return this->word(by) == "by" ? this->after_word(by) : c;
  }
  /// Returns true if a run with its count, or a group of runs, begins at the cursor, which is after a blank.
  [[nodiscard]] constexpr bool is_element(TokenCursor c) const {
    if (!c.token.spaced || (c.at(TokenKind::letter) && this->is_word(c.token.from))) return false;
    FoundElement e;
    if (begins_group(c, e)) return true;
    return take_element(c, e) && (e.count.sound() || !e.single);
  }
  /// Returns true if square brackets with a run and its count begin at the cursor, [L-M⁸ N⁴], and reads the run.
  [[nodiscard]] constexpr bool begins_group(TokenCursor c, FoundElement& e) const {
    if (!c.at(TokenKind::open_square)) return false;
    c.take();
    if (!c.token.spaced && take_element(c, e) && e.count.sound()) return true;
    e = {};
    return false;
  }

private:
  /// Returns true for the last letter of an alphabet, after which & and others are signatures.
  [[nodiscard]] constexpr bool ends_alphabet(SignatureKey mark) const {
    return mark.is_latin() && mark.rank(alphabet_) % alphabet_.size() == 0;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
