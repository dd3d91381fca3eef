// SPDX-License-Identifier: MIT
/// Reads a plus or minus outside parentheses. Cataloguers write it after a count, A⁸+1, c⁸⁻¹, or before leaves in words, + 4
/// unsigned leaves, and do not say where in the gathering the leaves are. The number of leaves is then sure and their place is
/// not: they are taken at the end, with a warning. A plus alone says that the book had more leaves than are known.
///
///   imperfect   = "+" | "⁺" ;
///   unplaced    = ( "+" | "-" ) , figure | ( "⁺" | "⁻" ) , raised figure ;   (* A⁸+1, A8-1: it does not say where *)
#pragma once

#include <bifolium/collation/detail/grammar/quotation_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class UnplacedGrammar : protected QuotationGrammar<Sink> {
protected:
  using Base = QuotationGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::last_, Base::word, Base::cursor, Base::take_count, Base::begun,
      Base::c_, Base::depth_, Base::failed_, Base::dialect_, Base::after_word, Base::is_extent, Base::rest;

  /// Reads a mark with a count, leaves or plates beside the formula, or the sign that the book is imperfect.
  constexpr bool plus() {
    auto const t = c_.token;
    if (t.raised()) return begun() ? raised_sign() : this->gathering();
    if (t.style == TokenStyle::lowered) return fail(Problem::unknown_mark, t.from, t.to);
    if (begun() && is_extent(c_)) return this->unsigned_leaves() || (!failed_ && rest(false));
    if (on_line_after_count(true)) return true;
    if (failed_) return false;
    auto c = c_;
    for (int signs = 0; signs < 9 && (signs == 0 || c.touches(TokenKind::plus)); ++signs) c.take(); // ++⁸
    bool const counted = !c.at(TokenKind::open_round) && take_count(c, dialect_.flat_counts).found();
    if (counted) {
      // a bracket that opens with a plus contains a change; it is opened again where a part is named in it
      bool const opens = !last_.unsigned_throughout || this->part_is_named();
      bool const change = depth_ > 0 && begun() && opens;
      return change ? fail(Problem::unknown_mark, t.from, c.token.from) : this->gathering();
    }
    if (!begun()) return fail(Problem::no_signature, t.from, t.to);
    if (joins(cursor(t.to))) return c_.take(), true;
    return imperfect();
  }
  /// Reads leaves that belong to no gathering: a-c⁸ + 4 unsigned leaves. Returns false if there are none.
  constexpr bool unsigned_leaves() {
    auto c = c_;
    auto const from = c.token.from;
    c.take();
    if (!c.is_flat_figure()) return false;
    auto const leaves = c.token.value;
    c.take();
    auto const w = word(c);
    if (w != "unsigned" && w != "unnumbered") return false;
    c = after_word(c);
    auto const what = word(c);
    if ((what != "leaves" && what != "leaf") || leaves < 1 || leaves > most_leaves_in_gathering) return false;
    c_ = after_word(c);
    return unplaced(true, static_cast<int>(leaves), from, c_.token.from);
  }
  /// Reads a raised sign: ⁺ alone, or with a number, as in A⁸⁻¹.
  constexpr bool raised_sign() {
    auto const t = c_.token;
    auto const next = c_.ahead();
    if (!next.is_raised_figure()) return t.is(TokenKind::plus) ? imperfect() : this->gathering();
    auto const leaves = static_cast<int>(next.value < 4096 ? next.value : 4096);
    if (!this->unplaced(t.is(TokenKind::plus), leaves, t.from, next.to)) return false;
    c_ = cursor(next.to);
    return true;
  }
  /// Reads leaves inserted or lost, written on the line at the end of a count: A⁸+1, A8-1. The sign of another gathering stands
  /// apart; an even number after a hyphen is a second count, A-D8-4. Returns false if there is none.
  constexpr bool on_line_after_count(bool inserted) {
    auto const t = c_.token;
    auto c = c_;
    c.take();
    if (!begun() || t.spaced || depth_ > 0 || !c.touches(TokenKind::figure) || !c.is_flat_figure()) return false;
    if (c.token.value < 1 || c.token.value > thick_gathering || (!inserted && c.token.value % 2 == 0)) return false;
    c_ = cursor(c.token.to);
    return this->unplaced(inserted, static_cast<int>(c.token.value), t.from, c.token.to);
  }
  /// Adds the change of c⁸⁻¹ or a⁸⁺¹, which does not say which leaf is removed or where one is inserted.
  constexpr bool unplaced(bool inserted, int leaves, std::uint32_t from, std::uint32_t to) {
    auto const target = this->last_gathering();
    warn(Problem::place_not_stated, from, to);
    FoundChange change;
    change.kind = inserted ? Change::Kind::insertion : Change::Kind::deletion;
    change.gathering = target.gathering;
    change.leaves = leaves;
    change.last = target.leaves;
    change.first = inserted ? target.leaves : target.leaves - leaves + 1;
    change.from = from;
    change.to = to;
    change.form = {this->runs_.size() - 1, ChangeForm::Separator::opens, false};
    if (!inserted && leaves > target.leaves) return this->fail(Problem::no_such_leaf, from, to, target.leaves);
    if (!inserted && !this->take_out(target, change.first, change.last, from, to)) return false;
    if (!this->add_leaves(inserted ? leaves : -leaves, from, to)) return false;
    return this->add_change(change);
  }

private:
  /// Returns true if a plus joins two runs: A⁸ + B⁸. Without a run after it, A⁸+ means that leaves are lost.
  [[nodiscard]] constexpr bool joins(TokenCursor next) const {
    FoundElement e;
    if (!c_.token.spaced || !next.token.spaced) return false;
    return this->begins_group(next, e) || (this->take_element(next, e) && e.count.found());
  }
  constexpr bool imperfect() {
    warn(Problem::imperfect, c_.token.from, c_.token.to);
    sink_.imperfect();
    c_.take();
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
