// SPDX-License-Identifier: MIT
/// Reads changes that stand without parentheses, A⁸ −A8, A⁸ A3 ±, A-K⁸ lacking A1, B2. There is always a warning, since a sign
/// outside parentheses may be a mistake.
///
///   outside = ( "−" | "-" | "±" | loss word | wanting word ) , ( leaf | range ) , { joint , ( leaf | range ) }
///           | leaf , "±" | "±" ;
#pragma once

#include <bifolium/collation/detail/grammar/wanting_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class OutsideGrammar : protected WantingGrammar<Sink> {
protected:
  using Base = WantingGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::text_, Base::at, Base::cursor, Base::word, Base::leaf_name, Base::c_, Base::past_word,
      Base::after_leaf_word, Base::is_leaf_beside;

  /// Reads a change that is written without parentheses, A⁸ −A8. Its gathering must have been read before. Returns
  /// false if there is none.
  constexpr bool change_outside() {
    auto const from = c_.token.from;
    auto const to = end_of_change();
    if (to == 0) return false;
    if (c_.at(TokenKind::letter)) {
      auto const end = end_of_remark(to);
      auto const leaves = past_word(c_, word(c_), end);
      // lacking K8 blank, lacking leaf K8: changes() does not know such words
      bool const words = end != to || after_leaf_word(leaves, end).token.from != leaves.token.from;
      if (this->leaves_wanting(from, end, !words, words) || this->failed_) return c_ = cursor(end), !this->failed_;
    }
    warn(Problem::change_outside_parentheses, from, to);
    c_ = cursor(to);
    return this->changes(from, to);
  }

private:
  /// Returns the position after words about blank leaves, which may follow a comma: lacking A1, presumably blank.
  [[nodiscard]] constexpr std::uint32_t end_of_remark(std::uint32_t to) const {
    auto c = cursor(to);
    if (c.at(TokenKind::comma)) c.take();
    for (auto w = word(c); is_blank_word(w) || is_doubting_word(w) || is_linking_word(w); w = word(c)) {
      to = c.token.from + static_cast<std::uint32_t>(w.size());
      c = cursor(to);
    }
    return to;
  }
  /// Returns the position after a change that begins at the cursor, or 0 if there is none.
  [[nodiscard]] constexpr std::uint32_t end_of_change() {
    auto const t = c_.token;
    auto const lost = t.is(TokenKind::letter) && may_begin_loss(t.from) ? word(c_) : std::string_view{};
    bool const loss_word = ChangeSigns::is_loss_before(lost) && c_.token.spaced;
    if (t.kind <= TokenKind::symbol && !loss_word && (!t.is(TokenKind::letter) || !this->has_cancel_sign())) return 0;
    auto const size = static_cast<std::uint32_t>(text_.size());
    if (t.is(TokenKind::plus_minus) && t.spaced) {
      auto const next = c_.ahead();
      if (next.spaced || next.is(TokenKind::end) || is_separator(next)) return t.to;
    }
    auto c = loss_word ? after_leaf_word(cursor(t.from + lost.size()), size) : c_;
    bool const sign = loss_word || (is_loss(t) && t.spaced && !t.raised());
    if (sign && !loss_word)
      c.take();
    else if (!sign && !t.is(TokenKind::letter))
      return 0;
    auto const name = leaf_name(c, size);
    if (!name.found || !name.gathering_named || name.leaf < 1) return 0;
    auto const target = this->find(name.key);
    if (!target || name.leaf > target->leaves) return 0;
    auto const end = cursor(name.end);
    if (!sign) return end.at(TokenKind::plus_minus) && ChangeSigns::sign_follows(end) ? end.token.to : 0; // A3 ±
    return end_of_leaves(name, *target, loss_word);
  }
  /// Returns the position after a list of leaves that begins with this one: E7,8; E7 & 8; E7-8; E7, F2. A number alone
  /// belongs to the list if it touches the comma, or after "and"; a leaf with its name, if the book has its gathering.
  /// `in_words`: after a word of loss the comma may be left out.
  [[nodiscard]] constexpr std::uint32_t end_of_leaves(NamedLeaf name, Target target, bool in_words) {
    auto const size = static_cast<std::uint32_t>(text_.size());
    for (auto to = name.end;;) {
      auto c = cursor(to);
      if (auto const last = this->range_end(c, size, name); last.found && last.leaf <= target.leaves)
        to = last.end, c = cursor(to);
      bool const touching = c.touches(TokenKind::comma) || c.touches(TokenKind::point);
      bool const conjoined = !c.at(TokenKind::comma) && !c.at(TokenKind::point);
      if (!touching && !c.token.spaced) return to;
      if (!this->take_joint(c, size) && !(in_words && is_leaf_beside(c, size))) return to;
      bool const close = touching && !c.token.spaced;
      auto const next = leaf_name(c, size);
      if (!next.found || next.whole || next.leaf < 1) return to;
      if (next.gathering_named) {
        auto const found = this->find(next.key);
        if (!found || !c.token.spaced) return to;
        target = *found;
      } else if (!close && !(conjoined && c.token.spaced))
        return to;
      if (auto const after = cursor(next.end); next.leaf > target.leaves || !ends_list(after))
        return close ? next.end : to;
      auto const key = name.key;
      name = next;
      if (!next.gathering_named) name.gathering_named = true, name.key = key;
      to = next.end;
    }
  }
  /// Returns true if what follows does not go on with words about another thing: & 2 unsigned leaves.
  [[nodiscard]] constexpr bool ends_list(TokenCursor const& c) const {
    auto const w = word(c);
    return w.size() < 2 || w == "and" || this->is_range_word(w) || is_blank_word(w) || is_linking_word(w) ||
           is_doubting_word(w) || !this->is_word(c.token.from);
  }
  /// Returns true if one of the words of loss can begin at this byte: most letters outside parentheses are marks.
  [[nodiscard]] constexpr bool may_begin_loss(std::uint32_t i) const noexcept {
    return (at(i) == 'l' || at(i) == 'm' || at(i) == 'w') && is_small(at(i + 1)) && is_small(at(i + 2));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
