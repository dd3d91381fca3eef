// SPDX-License-Identifier: MIT
/// Reads the leaves that an inserted gathering lacks, which cataloguers write in several ways: (A1+a⁴(−a4)),
/// (A1+a⁴[−a4]), (A1+a⁴ −a4), (A1+a⁴, −a4). Without brackets the leaf must be named with its gathering, and no
/// gathering of the book may have this name, because the leaf would be that of the book. Of a run (a-b⁴) one gathering
/// can lack leaves. Another change of inserted leaves, such as ±a2, is an error that says so wherever it is written: a
/// formula has no place for it.
///
///   lacking = ( "(" | "[" ) , minus , leaf list , ( ")" | "]" ) | [ "," | ";" ] , minus , leaf list ;
///   leaf list = ( leaf | range ) , { joint , ( leaf | range ) } ;
///   minus   = "−" | "-" ;
#pragma once

#include <bifolium/collation/detail/grammar/change_state.hpp>
#include <bifolium/collation/detail/grammar/roman_run_grammar.hpp>

#include <bit>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The leaves that one gathering of an inserted run lacks.
struct LackingLeaves {
  std::int64_t index{}; ///< the number of the gathering in its run, from 0
  std::uint64_t bits{}; ///< as in Insertion::lacking
};

template <class Sink> class LackingGrammar : protected RomanRunGrammar<Sink> {
protected:
  using Base = RomanRunGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::text_, Base::at, Base::cursor, Base::leaf_name, Base::alphabet_;

  /// Reads the leaves that the inserted gatherings `run` lack, if the text at the cursor names some.
  constexpr bool take_lacking(ChangeState& s, FoundElement const& run, LackingLeaves& found) {
    auto c = s.c;
    auto const from = c.token.from;
    bool const round = c.at(TokenKind::open_round), square = c.at(TokenKind::open_square);
    if (square && !is_loss(c.ahead())) return true; // [=B2]
    auto const close = round ? this->closing_round(c) : square ? this->bracket_end(c.token.from, s.end) : s.end;
    if (close == 0) return fail(Problem::parenthesis_not_closed, from, s.end);
    if (round || square)
      c = cursor(c.token.to, close);
    else if (c.at(TokenKind::comma) || c.at(TokenKind::semicolon))
      c.take();
    bool const minus = c.at(TokenKind::minus) || c.at(TokenKind::dash);
    if (!minus && (round || square) && has_sign(c)) return fail(Problem::change_in_insertion, from, s.end);
    if (!minus) return true; // words, or another change
    c.take();
    if (!round && !square && !is_of_run(run, leaf_name(c, close))) return true;
    found.index = run.gatherings - 1;
    if (!take_list(c, close, run, found, round || square)) return false;
    if (square) warn(Problem::change_in_square_brackets, from, close + 1);
    if (!round && !square) return s.c = c, true;
    if (!c.ended()) return fail(Problem::change_in_insertion, from, s.end);
    s.c = cursor(close + 1U, s.end);
    return true;
  }

private:
  /// Returns the number from 0 of the gathering of the run that the leaf names, or no value if it names none of them.
  [[nodiscard]] constexpr std::optional<std::int64_t> index_of(FoundElement const& run, NamedLeaf const& name) const {
    auto const place = run_length(run.first.key, name.key, alphabet_, text_);
    return place && *place >= 1 && *place <= run.gatherings ? std::optional{*place - 1} : std::nullopt;
  }
  [[nodiscard]] constexpr bool is_of_run(FoundElement const& run, NamedLeaf const& name) {
    return name.found && name.gathering_named && index_of(run, name) && !this->find(name.key);
  }
  /// Returns true if the rest of the brackets has the sign of a change: ±a2, a2+1.
  [[nodiscard]] static constexpr bool has_sign(TokenCursor c) noexcept {
    for (; !c.ended(); c.take())
      if (c.at(TokenKind::plus) || c.at(TokenKind::plus_minus) || c.at(TokenKind::equals)) return true;
    return false;
  }
  constexpr bool take_list(TokenCursor& c, std::uint32_t end, FoundElement const& run, LackingLeaves& found,
                           bool in_brackets) {
    for (bool any = false;; any = true) {
      auto const name = leaf_name(c, end);
      auto const from = c.token.from;
      if (!name.found || name.whole || name.leaf < 1) return fail(Problem::change_in_insertion, from, end);
      auto const index = name.gathering_named ? index_of(run, name) : std::optional{found.index};
      if (!index) return fail(Problem::no_such_gathering, from, name.end);
      if (any && *index != found.index) return fail(Problem::change_in_insertion, from, end);
      found.index = *index;
      c = cursor(name.end, end);
      auto last = name.leaf;
      if (auto const to = this->range_end(c, end, name); to.found) last = to.leaf, c = cursor(to.end, end);
      if (!take_out_of(run.count.cycle.at(*index), name.leaf, last, found, from, c.token.from)) return false;
      auto next = c;
      if (!this->take_joint(next, end)) return true;
      auto const other = leaf_name(next, end);
      if (!in_brackets && !(other.found && !other.gathering_named) && !is_of_run(run, other)) return true;
      c = next;
    }
  }
  constexpr bool take_out_of(int folded, int leaf, int last, LackingLeaves& found, std::uint32_t from,
                             std::uint32_t to) {
    if (last > folded) return fail(Problem::no_such_leaf, from, to, folded);
    constexpr auto most = Insertion::most_leaves_lacking_some;
    if (folded > most) return fail(Problem::inserted_too_thick, from, to, most);
    for (auto k = leaf; k <= last; ++k) {
      auto const bit = std::uint64_t{1} << static_cast<unsigned>(k - 1);
      if ((found.bits & bit) != 0) return fail(Problem::leaf_changed_twice, from, to);
      found.bits |= bit;
    }
    return folded > std::popcount(found.bits) || fail(Problem::inserted_not_there, from, to);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
