// SPDX-License-Identifier: MIT
/// Reads the contents of a parenthesis after a run: leaves deleted (−A4), cancelled (±B2) or inserted (A3+χ1.2), leaves
/// that are the same as others [=B2], and words. A list continues with the last sign: (−A1,4). A leaf that the
/// gathering does not have, or that is already deleted, is an error. Words are stored as words, with a warning if they
/// look like a change.
///
///   changes  = "(" , ( item , { join , item } | wanting ) , ")" ;
///   join     = "," | ";" | "." | "&" | "and" | blank ;
///   item     = loss , leaves , [ raised figure ] , [ quoted ] , [ "+" , inserted ] | leaves , "±" | "±"
///            | leaf , "+" , inserted | "+" , inserted | identity | blanks | cancels | words ;
///   loss     = "−" | "-" | "±" | "less" | "minus" | "without" | wanting word ;
///   leaves   = leaf , [ "?" ] , { join , leaf , [ "?" ] } | range ;
#pragma once

#include <bifolium/collation/detail/grammar/gone_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

template <class Sink> class ChangeGrammar : protected GoneGrammar<Sink> {
protected:
  using Base = GoneGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::runs_, Base::last_, Base::text_, Base::at, Base::letters_,
      Base::cursor, Base::word, Base::is_word, Base::leaf_name, Base::not_understood, Base::within, Base::send,
      Base::insertion, Base::continues_insertion, Base::take_equals, Base::identity, Base::words, Base::resolve,
      Base::ends_item, Base::gone, Base::list_of_leaves, Base::number_of_leaves, Base::is_number_of_leaves;
  using Kind = Change::Kind;

  /// Reads the contents of a parenthesis that changes leaves, from byte `from` to `end`.
  constexpr bool changes(std::uint32_t from, std::uint32_t end) {
    ChangeState s;
    s.c = cursor(from, end);
    s.from = from;
    s.end = end;
    s.current = this->last_gathering();
    for (;;) {
      separators(s);
      if (s.c.ended()) break;
      if (!item(s) || this->failed_) return false;
    }
    return s.any || fail(Problem::change_not_understood, from, end);
  }

private:
  constexpr void separators(ChangeState& s) const {
    s.point = s.spaced = s.semicolon = s.conjoined = false;
    s.separated = !s.any;
    for (;; s.c.take()) {
      auto const& t = s.c.token;
      if (t.spaced) s.spaced = s.separated = true; // blanks separate the leaves of a list as commas do
      if (t.is(TokenKind::point)) s.point = true;
      if (t.is(TokenKind::semicolon)) s.semicolon = true;
      bool const colon = t.is(TokenKind::colon) && s.any && !t.spaced && s.c.ahead().spaced; // −K8: blank
      bool const and_sign = this->is_and_sign(t) && s.any && s.c.ahead().spaced;
      bool const and_word = t.is(TokenKind::letter) && this->begins(t.from, "and") && this->is_blank_at(t.from + 3U);
      if (and_word)
        s.c = within(s, t.from + 2U);
      else if (!and_sign && !colon && !is_separator(t))
        break;
      s.conjoined = s.conjoined || and_word || and_sign;
      s.separated = true;
    }
    if (s.after_words) s.point = false; // the full stop belongs to the words
    s.after_words = false;
  }
  /// Takes the sign of a change. Returns true if there was one.
  constexpr bool take_sign(ChangeState& s, Kind& kind) const {
    if (s.c.at(TokenKind::plus_minus))
      kind = Kind::cancel;
    else if (is_loss(s.c.token))
      kind = Kind::deletion;
    else if (s.c.at(TokenKind::plus))
      kind = Kind::insertion;
    else
      return false;
    s.c.take();
    return true;
  }
  constexpr bool item(ChangeState& s) {
    auto const from = s.c.token.from;
    if (bool bracket = false; take_equals(s, bracket)) return identity(s, from, bracket, 0);
    if (this->blanks_after_list(s)) return true;
    if (this->failed_) return false;
    auto kind = s.sign;
    bool signed_here = take_sign(s, kind);
    if (signed_here && kind == Kind::insertion) {
      if (auto const end = plates_end(s, s.c); end != 0) return this->no_leaf_changed(s, from, end);
      if (auto const end = letter_end(s); end != 0) return this->no_leaf_changed(s, from, end);
      return fill(s, from);
    }
    if (signed_here && kind == Kind::cancel && !s.any && s.c.ended()) return sign_alone(s, from);
    if (!signed_here && !s.any && this->signs(s.end).begins_with_loss(s.c, s.end)) { // less K8
      s.c = within(s, s.c.token.from + static_cast<std::uint32_t>(word(s.c).size()));
      warn(Problem::wanting_read_as_deletion, from, s.end);
      kind = Kind::deletion;
      signed_here = true;
    }
    auto const name = of_named_leaves(leaf_name(s.c, s.end));
    auto const next = name.found ? within(s, name.end) : s.c;
    if (!signed_here && s.separated && (!s.list || next.at(TokenKind::letter)))
      if (auto const found = this->signs(s.end).cancels(s.c, s.end); found.said != CancelWord::none)
        return cancels(s, found);
    bool const listed = s.list && s.separated && !signed_here && !is_remark(s, name, next);
    if (name.found && !signed_here && !next.ended()) {
      // A3+1: the leaf before the insertion, then the inserted leaves; but the 8 of −A1.8 +χ1.2 belongs to the list
      bool const of_list = listed && !name.gathering_named && !s.spaced;
      bool const plus = next.at(TokenKind::plus) && !of_list;
      if (plus && this->signs(s.end).joins_blanks(s.c, s.end)) return words(s, from, false); // F7+8 blank
      if (plus)
        if (auto const plates = plates_end(s, within(s, next.token.to)); plates != 0)
          return this->no_leaf_changed(s, from, plates);
      if (plus || (next.at(TokenKind::equals) && !listed)) return of_leaf(s, name, next, plus, from);
    }
    if (name.found && !signed_here && !listed && ChangeSigns::sign_follows(next))
      return list_of_leaves(s, Kind::cancel, name, true);
    bool const loss = kind == Kind::deletion || kind == Kind::cancel;
    bool const in_list = listed && (!name.whole || s.last_gone.first == FoundChange::every_leaf) &&
                         (!s.semicolon || ends_item(next.token));
    if (name.found && loss && signed_here && is_number_of_leaves(name, next))
      return number_of_leaves(s, kind, name, from);
    if (name.whole && name.outside && signed_here && kind == Kind::deletion)
      return this->no_leaf_changed(s, from, name.end);
    if (name.found && loss && (signed_here || in_list)) return list_of_leaves(s, kind, name, signed_here);
    if (!signed_here && continues_insertion(s)) return insertion(s, s.current, s.previous.first, false, from);
    // (−E7, E8 blank): is E8 deleted too?
    bool const comma = s.list && !s.semicolon && s.after(Kind::deletion);
    bool const too = comma && name.gathering_named && name.leaf > 0 && is_blank_word(word(next));
    return words(s, from, signed_here, too);
  }
  /// Returns where the item ends that adds plates, if the text after its plus says so: 2 plates, folding table, 2 leaves of
  /// plates. Returns 0 if it does not.
  [[nodiscard]] constexpr std::uint32_t plates_end(ChangeState const& s, TokenCursor c) const {
    constexpr std::string_view between[]{"a"sv,        "an"sv,     "the"sv,   "folding"sv,  "folded"sv,    "engraved"sv,
                                         "unsigned"sv, "double"sv, "of"sv,    "leaf"sv,     "leaves"sv,    "extra"sv,
                                         "coloured"sv, "etched"sv, "large"sv, "inserted"sv, "unnumbered"sv};
    if (c.is_flat_figure() && c.ahead().spaced) c.take();
    for (int n = 0; n < 5; ++n) {
      auto const w = word(c);
      if (w.size() > 2 && (is_word_of_plates(w) || w == "table" || w == "tables" || w == "frontispiece")) {
        while (!c.ended() && !c.at(TokenKind::comma) && !c.at(TokenKind::semicolon)) c.take();
        return c.token.from;
      }
      bool known = number_of_word(w).has_value();
      for (auto const one : between) known = known || w == one;
      if (!known) return 0;
      c = within(s, c.token.from + static_cast<std::uint32_t>(w.size()));
    }
    return 0;
  }
  /// Returns where a letter ends that comes alone after a plus and that the alphabet does not have: (+W). Returns 0 if there
  /// is none.
  [[nodiscard]] constexpr std::uint32_t letter_end(ChangeState const& s) const {
    auto const name = leaf_name(s.c, s.end);
    if (!name.found || !name.whole || !name.outside || name.key.multiple != 1) return 0;
    auto const next = within(s, name.end);
    return next.ended() || next.at(TokenKind::comma) || next.at(TokenKind::semicolon) ? name.end : 0;
  }
  /// Adds the cancels that words name.
  constexpr bool cancels(ChangeState& s, CancelWords const& found) {
    if (found.said == CancelWord::cancelled) warn(Problem::cancelled_read_as_replaced, s.c.token.from, found.end);
    auto const end = s.end;
    s.end = found.leaves_to;
    s.doubtful = found.doubtful;
    s.c = within(s, found.leaves_from);
    for (bool first = true; first || !s.c.ended(); first = false) {
      if (!list_of_leaves(s, Kind::cancel, leaf_name(s.c, s.end), first)) return false;
      separators(s);
    }
    s.end = end;
    s.list = s.doubtful = false;
    s.c = within(s, found.end);
    if (s.c.at(TokenKind::point)) s.c.take();
    return true;
  }
  /// Adds a cancel of the whole gathering before the parenthesis: (±).
  constexpr bool sign_alone(ChangeState& s, std::uint32_t from) {
    if (last_.gatherings > 1) warn(Problem::change_of_which_gathering, from, s.c.token.from);
    NamedLeaf name;
    name.found = name.whole = true;
    name.end = s.c.token.from;
    return gone(s, Kind::cancel, name, 0, false, false, from, name.end);
  }
  /// Reads an insertion without a leaf before its plus. It takes the place of the leaf deleted before it (−B3+χ1);
  /// without such a leaf its place is not stated.
  constexpr bool fill(ChangeState& s, std::uint32_t from) {
    if (s.after(Kind::insertion)) { // A2+²A²+χ1: both after the same leaf
      if (!s.separated) return not_understood(s, from);
      return insertion(s, s.current, s.previous.starred ? Base::place_not_stated : s.previous.first, false, from);
    }
    auto const after = !s.gone                                       ? Base::place_not_stated
                       : s.last_gone.last == FoundChange::every_leaf ? s.current.leaves
                                                                     : s.last_gone.last;
    if (auto const& figure = s.c.token;
        s.after(Kind::deletion) && this->is_leaves_or_leaf(s.c, after, s.current.leaves))
      warn(Problem::inserted_or_deleted_too, s.previous.from, figure.to, figure.value); // −E7+8
    return insertion(s, s.current, after, after >= 0, from);
  }
  /// Returns true for (±D2, D3 blank), where the second leaf has words of its own. A number alone has none if it touches
  /// the list, and it is never only blank: (−E7,8 blank), (−E7, 8 blank); nor has what `and` joins: (−E7 and E8 blank).
  [[nodiscard]] constexpr bool is_remark(ChangeState const& s, NamedLeaf const& name, TokenCursor const& next) const {
    auto const w = word(next);
    if (!name.found || !next.token.spaced || w.size() < 2 || !is_word(next.token.from) || w == "and" ||
        this->is_range_word(w))
      return false;
    if ((w == "recto" || w == "verso") && ends_item(within(s, next.token.from + 5U).token))
      return false; // −B8, A1 recto
    if (name.gathering_named) return !s.conjoined || s.sign != Kind::deletion;
    return s.spaced && !is_blank_word(w);
  }
  /// Reads a change whose leaf comes first: A3+χ1, B1=C2. `next` is at the sign.
  constexpr bool of_leaf(ChangeState& s, NamedLeaf const& name, TokenCursor const& next, bool plus,
                         std::uint32_t from) {
    if (!s.separated) return not_understood(s, from);
    if (!resolve(name, s.current, s.c.token.from)) return false;
    if (plus && name.of_page && !name.verso) // A1r+1: nothing comes between the two pages of a leaf
      warn(Problem::page_read_as_leaf, from, name.end);
    s.c = next;
    s.c.take();
    if (plus) return insertion(s, s.current, name.whole ? s.current.leaves : name.leaf, false, from);
    // a gathering is a leaf only if it has no other leaf
    if (name.whole && s.current.leaves != 1) return not_understood(s, from);
    return identity(s, from, false, name.whole ? 1 : name.leaf);
  }
  /// Returns the leaf that is named in (±'gg3') after the gathering 'gg3.4', although its name has the form of a mark.
  [[nodiscard]] constexpr NamedLeaf of_named_leaves(NamedLeaf name) const {
    if (!name.found || !name.whole || name.key.mark() != Mark::printed || last_.first.mark() != Mark::printed)
      return name;
    auto const mark = [&](SignatureKey key) { return text_.substr(key.text_from, key.text_size); };
    auto const of = named_leaves(mark(last_.first)), one = named_leaves(mark(name.key));
    if (!of || !one) return name;
    auto const place = one->first - of->first;
    if (of->count < 2 || one->count != 1 || one->stem != of->stem || place < 0 || place >= of->count) return name;
    if (mark(last_.first).substr(0, of->stem) != mark(name.key).substr(0, of->stem)) return name;
    name.key = last_.first;
    name.whole = false;
    name.leaf = place + 1;
    return name;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
