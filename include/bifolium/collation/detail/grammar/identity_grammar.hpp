// SPDX-License-Identifier: MIT
/// Reads leaves that are said to be the same as other leaves: [=B2], (A8=π1), (−A4, =χ1?). A list names several:
/// [=L4.5].
///
///   identity = [ leaf ] , "=" , same | "[=" , same , "]" | "(=" , same , ")" ;
///   same     = leaf , { ( "." | "," ) , leaf } ;
#pragma once

#include <bifolium/collation/detail/grammar/same_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class IdentityGrammar : protected SameLeaves<Sink> {
protected:
  using Base = SameLeaves<Sink>;
  using Base::Base;
  using Base::fail, Base::leaf_name, Base::not_understood, Base::within, Base::send, Base::ends_item;
  using Kind = Change::Kind;

  /// Takes = or [=. Returns false if there is neither.
  constexpr bool take_equals(ChangeState& s, bool& bracket) const {
    auto c = s.c;
    bracket = c.at(TokenKind::open_square) || c.at(TokenKind::open_round); // A3+χ1(=H8)
    if (bracket) c.take();
    if (!c.at(TokenKind::equals)) return false;
    c.take();
    s.c = c;
    return true;
  }
  /// Reads the leaves after the equals sign. `leaf` is the leaf before the sign, or 0 if there is none.
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
      change.doubtful = s.c.at(TokenKind::question);
      if (change.doubtful) s.c.take();
      if (first && !of_change) said_of_ = leaf > 0 ? leaf : 1;
      if (first && of_change && s.previous.kind != Kind::identity)
        said_of_ = s.previous.kind == Kind::deletion ? Base::same_deleted : Base::same_added;
      this->same_leaf(change, said_of_, begin, name.end);
      if (said_of_ > 0) ++said_of_; // π²[=H3.4]
      send(s, change, begin, name.end);
      if (!continues_identity(s, bracket)) break;
    }
    return end_of_identity(s, from, bracket);
  }

private:
  int said_of_{}; // of what the last identity was said, as same_leaf takes it

  /// Takes the separator if another leaf of the list follows: [=L4.5].
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
    bool const round = bracket && s.c.at(TokenKind::close_round);
    bool const closed = round || (s.c.at(TokenKind::close_square) && (bracket || !s.c.token.spaced));
    if (bracket && !closed) return fail(Problem::bracket_not_closed, from, s.c.token.from);
    if (closed) s.c.take();
    bool const range = s.c.touches(TokenKind::dash) && !s.c.ahead().spaced;            // =a-c⁴
    if (!s.c.ended() && (!ends_item(s.c.token) || s.c.at(TokenKind::equals) || range)) // A=v 1
      return not_understood(s, from);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
