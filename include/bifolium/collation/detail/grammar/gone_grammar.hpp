// SPDX-License-Identifier: MIT
/// Takes out or replaces the leaves that a list names after its sign, −A1,4 and ±B2.7, or a number of leaves of which it is
/// not said which they are, −2 leaves.
#pragma once

#include <bifolium/collation/detail/grammar/identity_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class GoneGrammar : protected IdentityGrammar<Sink> {
protected:
  using Base = IdentityGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::at, Base::word, Base::take_count, Base::not_understood, Base::within, Base::send,
      Base::resolve;
  using Kind = Change::Kind;

  /// Reads one leaf of a list, or the leaves up to another: −D2-4.
  constexpr bool list_of_leaves(ChangeState& s, Kind kind, NamedLeaf const& name, bool signed_here) {
    auto const from = s.c.token.from;
    bool const in_list = s.any && s.list && !signed_here;
    s.sign = kind;
    if (!resolve(name, s.current, from)) return false;
    s.c = within(s, name.end);
    auto last = name.leaf;
    auto end = name.end;
    if (auto const page = this->take_page(s.c, name, s.end)) warn(Problem::page_read_as_leaf, from, page);
    if (name.whole)
      take_own_count(s);
    else if (auto const to = this->range_end(s.c, s.end, name); to.found) {
      if (to.leaf > s.current.leaves) return fail(Problem::no_such_leaf, to.end - 1, to.end, s.current.leaves);
      last = to.leaf;
      end = to.end;
      s.c = within(s, end);
    }
    bool doubtful = s.c.at(TokenKind::question);
    if (doubtful) s.c.take();
    doubtful = doubtful || s.doubtful;
    bool const hyphens = signed_here && s.after(kind) && !s.separated && at(from - 1) == '-';
    if (hyphens && !name.whole && s.previous.gathering == s.current.gathering && name.leaf > s.previous.last + 1)
      warn(Problem::two_leaves_or_range, from, end); // −B5-B8
    if (!gone(s, kind, name, last, doubtful, in_list, from, end)) return false;
    if (kind == Kind::cancel && ChangeSigns::sign_follows(s.c) && s.c.at(TokenKind::plus_minus)) s.c.take(); // A3 ±
    if (kind == Kind::cancel && !name.whole && !doubtful && last == name.leaf && !cancelled_by_several(s, last))
      return false;
    s.list = true;
    return true;
  }
  /// Reads the number of leaves that replace one leaf: ±A3².
  constexpr bool cancelled_by_several(ChangeState& s, int after) {
    auto const figure = s.c.token;
    if (!s.c.touches(TokenKind::figure) || !figure.raised()) return true;
    auto const leaves = figure.value < most_leaves_in_gathering ? static_cast<int>(figure.value) : 0;
    if (leaves < 2) return not_understood(s, figure.from);
    warn(Problem::cancelled_by_several, figure.from, figure.to, leaves);
    s.c.take();
    FoundChange more;
    more.kind = Kind::insertion;
    more.gathering = s.current.gathering;
    more.first = after;
    more.leaves = leaves - 1;
    if (!this->add_leaves(more.leaves, figure.from, figure.to)) return false;
    send(s, more, figure.from, figure.to);
    return true;
  }
  /// Takes the leaf count of a gathering that is changed as a whole, if it has this count: ±B⁸.
  constexpr void take_own_count(ChangeState& s) const {
    auto c = s.c;
    auto const count = take_count(c, false);
    if (count.sound() && count.cycle.size() == 1 && count.cycle.term(0) == s.current.leaves) s.c = c;
  }
  constexpr bool gone(ChangeState& s, Kind kind, NamedLeaf const& name, int last, bool doubtful, bool in_list,
                      std::uint32_t from, std::uint32_t end) {
    auto const& current = s.current;
    FoundChange change;
    change.kind = kind;
    change.gathering = current.gathering;
    change.first = name.whole ? FoundChange::every_leaf : name.leaf;
    change.last = name.whole ? FoundChange::every_leaf : last;
    change.doubtful = doubtful;
    if (s.any && s.previous.kind != kind) s.point = false;
    if (!this->take_out(current, name.whole ? 1 : name.leaf, name.whole ? current.leaves : last, from, end,
                        kind == Kind::cancel))
      return false;
    if (in_list && s.after(kind) && s.previous.gathering == current.gathering && !name.whole && last == name.leaf) {
      bool const pair = s.previous.last + name.leaf == current.leaves + 1;
      if (!pair && s.point) warn(Problem::apart_leaves_listed_joined, from, end);
      // two single cancels are two changes; but two leaves that are both deleted are one deleted fold
      if (pair && !s.point && kind == Kind::deletion && !name.gathering_named)
        warn(Problem::joined_leaves_listed_apart, from, end);
    }
    auto const leaves = name.whole ? current.leaves : last - name.leaf + 1;
    if (kind == Kind::deletion && !this->add_leaves(-leaves, from, end)) return false;
    if (kind == Kind::deletion && doubtful) warn(Problem::doubtful_change, from, end);
    send(s, change, from, end);
    return true;
  }
  /// Returns true for a number of leaves and not the name of one: −2 leaves, less 2 blank leaves. The cursor is after the
  /// number.
  [[nodiscard]] constexpr bool is_number_of_leaves(NamedLeaf const& name, TokenCursor const& next) const {
    if (name.gathering_named || name.whole || !next.at(TokenKind::letter)) return false;
    auto const w = word(next);
    auto const unit = is_blank_word(w) ? word(this->after_word(next)) : w;
    return unit.size() > 1 && is_unit_of_leaves(unit);
  }
  /// Takes out or replaces so many leaves at the end of the gathering, since it is not said which.
  constexpr bool number_of_leaves(ChangeState& s, Kind kind, NamedLeaf const& number, std::uint32_t from) {
    warn(Problem::place_not_stated, from, s.end);
    if (number.leaf < 1 || number.leaf > s.current.leaves)
      return fail(Problem::no_such_leaf, from, number.end, s.current.leaves);
    NamedLeaf first;
    first.found = true;
    first.leaf = s.current.leaves - number.leaf + 1;
    s.sign = kind;
    s.c = within(s, number.end);
    if (auto const w = word(s.c); !is_blank_word(w))
      s.c = within(s, s.c.token.from + static_cast<std::uint32_t>(w.size()));
    s.list = true;
    return gone(s, kind, first, s.current.leaves, s.doubtful, false, from, number.end);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
