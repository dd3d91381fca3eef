// SPDX-License-Identifier: MIT
/// Reads the contents of a parenthesis after a run: leaves deleted (−A4), cancelled (±B2) or inserted (A3+χ1.2), leaves
/// that are the same as others [=B2], and words. A list continues with the last sign: (−A1,4). A leaf that the
/// gathering does not have, or that is already deleted, is an error. Words are stored as words, with a warning if they
/// look like a change.
///
///   changes  = "(" , item , { join , item } , ")" ;            join   = "," | ";" | "." | "&" | "and" | blank ;
///   item     = loss , leaves , [ "+" , inserted ] | leaf , "+" , inserted | "+" , inserted
///            | [ leaf ] , "=" , same | "[=" , same , "]" | words ;
///   loss     = "−" | "-" | "±" ;                               leaves = leaf , { join , leaf } | leaf , "-" , figure ;
///   same     = leaf , { ( "." | "," ) , leaf } ;               a leaf may have "?" after it
///   inserted = one , { "," , one } ;                           (collation/detail/insertion_grammar.hpp)
#pragma once

#include <bifolium/collation/detail/insertion_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Words by which leaves are said to be gone, changed or put in (common practice, no source): what they say is not counted,
/// so it must not pass unseen.
inline constexpr std::string_view words_of_change[]{
    "added"sv,   "cancel"sv,  "cancelled"sv, "cancels"sv, "cut"sv,     "deleted"sv, "excised"sv, "extra"sv,
    "fehlen"sv,  "fehlt"sv,   "inserted"sv,  "lacking"sv, "lacks"sv,   "manca"sv,   "manque"sv,  "minus"sv,
    "missing"sv, "removed"sv, "replaced"sv,  "want"sv,    "wanting"sv, "wants"sv,   "without"sv,
};

template <class Sink> class ChangeGrammar : protected InsertionGrammar<Sink> {
protected:
  using Base = InsertionGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::runs_, Base::last_, Base::text_, Base::at, Base::letters_,
      Base::cursor, Base::word, Base::is_word, Base::leaf_name, Base::take_count, Base::not_understood, Base::within,
      Base::send, Base::insertion, Base::continues_insertion;
  using Kind = Change::Kind;

  /// The inside of a parenthesis that changes leaves, from byte `from` to `end`.
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
  /// Words, kept from byte `from` to `to` without the blanks after them. False if they are no UTF-8.
  constexpr bool note(std::uint32_t from, std::uint32_t to, bool opens) {
    for (auto k = from; k < to; k += decode(text_, k).bytes)
      if (decode(text_, k).malformed) return fail(Problem::not_utf8, k, k);
    while (to > from && (at(to - 1) == ' ' || at(to - 1) == '\n' || at(to - 1) == '\r' || at(to - 1) == '\t')) --to;
    if (looks_like_change(from, to)) warn(Problem::text_not_read, from, to);
    FoundChange change;
    change.kind = Kind::note;
    change.gathering = this->last_gathering().gathering;
    change.from = from;
    change.to = to;
    change.form = {runs_.size() - 1, opens ? ChangeForm::Separator::opens : ChangeForm::Separator::comma, false};
    return this->add_change(change);
  }
  constexpr bool resolve(NamedLeaf const& name, Target& target, std::uint32_t from) {
    if (name.gathering_named) {
      auto const found = this->find(name.key);
      if (!found) return fail(Problem::no_such_gathering, from, name.end);
      target = *found;
      bool const last = target.gathering.run + 1 == runs_.size(); // directly after its run it is meant
      if (target.other_series && !last) warn(Problem::name_of_several, from, name.end);
    }
    if (name.leaf > target.leaves || (name.leaf < 1 && !name.whole))
      return fail(Problem::no_such_leaf, from, name.end, target.leaves);
    if (name.letter_l) warn(Problem::letter_read_as_figure, from, name.end);
    return true;
  }
  [[nodiscard]] static constexpr bool ends_item(Token const& t) noexcept {
    switch (t.kind) {
    case TokenKind::end:
    case TokenKind::comma:
    case TokenKind::semicolon:
    case TokenKind::point:
    case TokenKind::question:
    case TokenKind::equals:
    case TokenKind::open_square:
    case TokenKind::plus:
      return true;
    default:
      return is_loss(t);
    }
  }

private:
  constexpr void separators(ChangeState& s) const {
    s.point = s.spaced = s.semicolon = false;
    s.separated = !s.any;
    for (;; s.c.take()) {
      auto const& t = s.c.token;
      if (t.spaced) s.spaced = s.separated = true; // blanks separate the leaves of a list as commas do
      if (t.is(TokenKind::point)) s.point = true;
      if (t.is(TokenKind::semicolon)) s.semicolon = true;
      bool const and_sign = t.is(TokenKind::symbol) && t.value == '&' && s.any && s.c.ahead().spaced;
      bool const and_word = t.is(TokenKind::letter) && this->begins(t.from, "and ");
      if (and_word)
        s.c = within(s, t.from + 2U);
      else if (!and_sign && !is_separator(t))
        break;
      s.separated = true;
    }
    if (s.after_words) s.point = false; // a full stop is one of the words
    s.after_words = false;
  }
  /// The sign of a change: taken, and whether there was one.
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
    auto kind = s.sign;
    bool const signed_here = take_sign(s, kind);
    if (signed_here && kind == Kind::insertion) return fill(s, from);
    auto const name = of_named_leaves(leaf_name(s.c, s.end));
    auto const next = name.found ? within(s, name.end) : s.c;
    bool const listed = s.list && s.separated && !signed_here && !is_remark(name, next);
    if (name.found && !signed_here && !next.ended()) {
      // A3+1: the leaf it follows, then what is inserted; but the 8 of −A1.8 +χ1.2 belongs to the list
      bool const of_list = listed && !name.gathering_named && !s.spaced;
      bool const plus = next.at(TokenKind::plus) && !of_list;
      if (plus || (next.at(TokenKind::equals) && !listed)) return of_leaf(s, name, next, plus, from);
    }
    bool const loss = kind == Kind::deletion || kind == Kind::cancel;
    bool const in_list = listed && (!name.whole || s.last_gone.first == 0) && (!s.semicolon || ends_item(next.token));
    if (name.found && loss && (signed_here || in_list)) return list_of_leaves(s, kind, name, signed_here);
    if (!signed_here && continues_insertion(s)) return insertion(s, s.current, s.previous.first, false, from);
    return words(s, from, signed_here);
  }
  /// = or [=, taken.
  constexpr bool take_equals(ChangeState& s, bool& bracket) const {
    auto c = s.c;
    bracket = c.at(TokenKind::open_square);
    if (bracket) c.take();
    if (!c.at(TokenKind::equals)) return false;
    c.take();
    s.c = c;
    return true;
  }
  /// What fills the place of a leaf comes directly after it: −B3+χ1. Without such a leaf the place is not stated.
  constexpr bool fill(ChangeState& s, std::uint32_t from) {
    if (s.after(Kind::insertion)) { // A2+²A²+χ1: both after the same leaf
      if (!s.separated) return not_understood(s, from);
      return insertion(s, s.current, s.previous.starred ? -1 : s.previous.first, false, from);
    }
    auto const after = !s.gone ? -1 : s.last_gone.last == 0 ? s.current.leaves : s.last_gone.last;
    return insertion(s, s.current, after, after >= 0, from);
  }
  /// (±D2, D3 blank): the second leaf has words of its own.
  [[nodiscard]] constexpr bool is_remark(NamedLeaf const& name, TokenCursor const& next) const {
    auto const w = word(next);
    return name.found && next.token.spaced && w.size() > 1 && is_word(next.token.from) && w != "and" && w != "to" &&
           w != "through";
  }
  /// A3+χ1, B1=C2: what is said of a leaf that is named first. `next`: at the sign.
  constexpr bool of_leaf(ChangeState& s, NamedLeaf const& name, TokenCursor const& next, bool plus,
                         std::uint32_t from) {
    if (!s.separated) return not_understood(s, from);
    if (!resolve(name, s.current, s.c.token.from)) return false;
    s.c = next;
    s.c.take();
    if (plus) return insertion(s, s.current, name.whole ? s.current.leaves : name.leaf, false, from);
    // a gathering is a leaf only if it has no other
    if (name.whole && s.current.leaves != 1) return not_understood(s, from);
    return identity(s, from, false, name.whole ? 1 : name.leaf);
  }
  /// Words go to the next comma or semicolon, and begin as words do (a quotation mark would begin a mark: '1').
  constexpr bool words(ChangeState& s, std::uint32_t from, bool signed_here) {
    auto const& t = s.c.token;
    bool const wordy =
        t.is(TokenKind::letter) || t.is(TokenKind::figure) || t.is(TokenKind::open_round) ||
        (static_cast<unsigned char>(at(t.from)) > 0x80 && !(t.is(TokenKind::quote) && opens_quotation(t.value)));
    if (signed_here || (s.any && (!s.separated || !wordy))) return not_understood(s, from);
    auto const begin = t.from;
    auto to = s.end;
    int open = 0; // a bracket that does not close among its words would with what comes after them
    for (auto c = s.c; !c.ended() && open >= 0; c.take()) {
      if (c.at(TokenKind::comma) || c.at(TokenKind::semicolon)) {
        to = c.token.from;
        break;
      }
      open += c.at(TokenKind::open_square) ? 1 : c.at(TokenKind::close_square) ? -1 : 0;
    }
    if (open != 0) return not_understood(s, from);
    if (!note(begin, to, !s.any)) return false;
    s.previous = FoundChange{};
    s.previous.kind = Kind::note;
    s.any = s.after_words = true;
    s.c = within(s, to);
    return true;
  }
  /// Words that are a leaf and nothing else, or have a sign or a word of change: perhaps a change written in another way.
  [[nodiscard]] constexpr bool looks_like_change(std::uint32_t from, std::uint32_t to) const {
    auto const begin = cursor(from, to);
    if (auto const name = leaf_name(begin, to); name.found && cursor(name.end, to).ended()) return true;
    if (auto c = begin; !c.at(TokenKind::letter) && !c.is_flat_figure()) { // «G4: a sign that was misread
      while (!c.ended() && !c.at(TokenKind::letter) && !c.is_flat_figure()) c.take();
      if (auto const name = leaf_name(c, to); name.found && name.leaf > 0) return true;
    }
    for (auto c = begin; !c.ended(); c.take()) {
      if (c.at(TokenKind::plus) || c.at(TokenKind::equals) || c.at(TokenKind::plus_minus) || c.at(TokenKind::minus))
        return true;
      if (!c.at(TokenKind::letter)) continue;
      auto const w = word_at(text_.substr(0, to), c.token.from);
      for (auto const one : words_of_change)
        if (w == one) return true;
      if (!w.empty()) c = cursor(c.token.from + w.size() - 1, to);
    }
    return false;
  }
  /// (±'gg3') after 'gg3.4': a leaf of that, though it has the form of a mark.
  [[nodiscard]] constexpr NamedLeaf of_named_leaves(NamedLeaf name) const {
    if (!name.found || !name.whole || name.key.mark() != Mark::printed || last_.first.mark() != Mark::printed)
      return name;
    auto const mark = [&](SignatureKey key) { return text_.substr(key.text_from, key.text_size); };
    auto const of = named_leaves(mark(last_.first)), one = named_leaves(mark(name.key));
    auto const place = one.first - of.first;
    if (of.count < 2 || one.count != 1 || one.stem != of.stem || place < 0 || place >= of.count) return name;
    if (mark(last_.first).substr(0, of.stem) != mark(name.key).substr(0, of.stem)) return name;
    name.key = last_.first;
    name.whole = false;
    name.leaf = place + 1;
    return name;
  }
  /// One leaf of a list, or the leaves to another: −D2-4.
  constexpr bool list_of_leaves(ChangeState& s, Kind kind, NamedLeaf const& name, bool signed_here) {
    auto const from = s.c.token.from;
    bool const in_list = s.any && s.list && !signed_here;
    s.sign = kind;
    if (!resolve(name, s.current, from)) return false;
    s.c = within(s, name.end);
    auto last = name.leaf;
    auto end = name.end;
    if (name.whole)
      take_own_count(s);
    else if (auto const to = range_end(s, name.leaf); to.found) {
      if (to.leaf > s.current.leaves) return fail(Problem::no_such_leaf, to.end - 1, to.end, s.current.leaves);
      last = to.leaf;
      end = to.end;
      s.c = within(s, end);
    }
    bool const doubtful = s.c.touches(TokenKind::question);
    if (doubtful) s.c.take();
    if (!gone(s, kind, name, last, doubtful, in_list, from, end)) return false;
    s.list = true;
    return true;
  }
  /// ±B⁸: the whole gathering, with the count it has.
  constexpr void take_own_count(ChangeState& s) const {
    auto c = s.c;
    auto const count = take_count(c, false);
    if (count.sound() && count.cycle.size() == 1 && count.cycle.term(0) == s.current.leaves) s.c = c;
  }
  /// Returns the last leaf of −D2-4, if a range is written.
  [[nodiscard]] constexpr NamedLeaf range_end(ChangeState const& s, int first) const {
    auto c = s.c;
    if (!c.at(TokenKind::dash)) return {};
    c.take();
    if (!c.is_flat_figure()) return {};
    auto const last = leaf_name(c, s.end);
    return last.found && !last.gathering_named && last.leaf > first ? last : NamedLeaf{};
  }
  constexpr bool gone(ChangeState& s, Kind kind, NamedLeaf const& name, int last, bool doubtful, bool in_list,
                      std::uint32_t from, std::uint32_t end) {
    auto const& current = s.current;
    FoundChange change;
    change.kind = kind;
    change.gathering = current.gathering;
    change.first = name.leaf;
    change.last = last;
    change.doubtful = doubtful;
    if (s.any && s.previous.kind != kind) s.point = false;
    if (!this->take_out(current, name.whole ? 1 : name.leaf, name.whole ? current.leaves : last, from, end))
      return false;
    if (in_list && s.after(kind) && s.previous.gathering == current.gathering && !name.whole && last == name.leaf) {
      bool const pair = s.previous.last + name.leaf == current.leaves + 1;
      if (!pair && s.point) warn(Problem::apart_leaves_listed_joined, from, end);
      // two single cancels are two; but two leaves that are both gone are a fold gone
      if (pair && !s.point && kind == Kind::deletion && !name.gathering_named)
        warn(Problem::joined_leaves_listed_apart, from, end);
    }
    auto const leaves = name.whole ? current.leaves : last - name.leaf + 1;
    if (kind == Kind::deletion && !this->add_leaves(-leaves, from, end)) return false;
    if (kind == Kind::deletion && doubtful) warn(Problem::doubtful_change, from, end);
    send(s, change, from, end);
    return true;
  }
  /// After the sign of equality: one leaf, or several in a list. `leaf` is that on the left of the sign, if there is one.
  constexpr bool identity(ChangeState& s, std::uint32_t from, bool bracket, int leaf) {
    bool const of_change = leaf == 0 && s.any && s.previous.kind != Kind::note &&
                           (s.previous.kind != Kind::identity || s.previous.of_change);
    if (!of_change) s.sign = Kind::identity, s.list = false;
    auto const gathering = of_change ? s.previous.gathering : s.current.gathering;
    if (s.any && s.previous.kind != Kind::identity) s.point = false;
    for (bool first = true;; first = false) {
      auto const name = leaf_name(s.c, s.end);
      bool const no_such_leaf = (name.leaf == 0 && !name.whole) || name.leaf > most_leaves_in_gathering;
      if (!name.found || no_such_leaf) return not_understood(s, from);
      FoundChange change;
      change.kind = Kind::identity;
      change.gathering = gathering;
      change.first = change.last = first ? leaf : 0;
      change.leaf_written = first && leaf > 0;
      change.named = name.gathering_named;
      change.name = name.key;
      if (!first && !change.named) change.named = s.previous.named, change.name = s.previous.name;
      change.figure = name.leaf;
      change.of_change = of_change;
      if (first) s.point = false;
      auto const begin = s.c.token.from;
      s.c = within(s, name.end);
      change.doubtful = s.c.touches(TokenKind::question);
      if (change.doubtful) s.c.take();
      if (!change.named && change.figure > this->last_gathering().leaves)
        warn(Problem::identity_not_in_formula, begin, name.end);
      else if (change.named)
        this->identity_named(change.name, change.figure, begin, name.end);
      send(s, change, begin, name.end);
      if (!continues_identity(s, bracket)) break;
    }
    return end_of_identity(s, from, bracket);
  }
  /// Another leaf of the list [=L4.5]; then the separator is taken.
  constexpr bool continues_identity(ChangeState& s, bool bracket) const {
    bool const point = s.c.touches(TokenKind::point);
    if (!point && !s.c.touches(TokenKind::comma)) return false;
    auto next = s.c;
    next.take();
    auto const more = leaf_name(next, s.end);
    if (!more.found) return false;
    bool const figure = !more.gathering_named && !next.token.spaced && ends_item(within(s, more.end).token);
    if (!bracket && !figure) return false;
    s.point = point;
    s.c = next;
    return true;
  }
  constexpr bool end_of_identity(ChangeState& s, std::uint32_t from, bool bracket) {
    bool const closed = s.c.at(TokenKind::close_square) && (bracket || !s.c.token.spaced);
    if (bracket && !closed) return fail(Problem::bracket_not_closed, from, s.c.token.from);
    if (closed) s.c.take();
    if (!s.c.ended() && (!ends_item(s.c.token) || s.c.at(TokenKind::equals))) // A=v 1
      return not_understood(s, from);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
