// SPDX-License-Identifier: MIT
/// Reads the text after the plus of an insertion. A number alone is a number of leaves; a number with a star is a
/// place. After a name, a number is a leaf, and a raised number makes the insertion a gathering.
///
///   inserted = one , [ "?" ] , { "," , one , [ "?" ] } ;
///   one      = figure , [ "*" ] | number | pieces | inserted run , [ lacking ]
///            | signature , [ raised figure , [ lacking ] | pieces | figure , ( "*" | "†" | "‡" ) ] ;
#pragma once

#include <bifolium/collation/detail/grammar/inserted_run_grammar.hpp>
#include <bifolium/collation/detail/scan/leaf_pieces.hpp>
#include <bifolium/core/number_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class InsertionGrammar : protected InsertedRunGrammar<Sink> {
protected:
  using Base = InsertedRunGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::runs_, Base::text_, Base::at, Base::letters_, Base::dialect_, Base::cursor,
      Base::take_count, Base::is_plus, Base::not_understood, Base::take_run, Base::check_run, Base::doubt_inserted;
  using Kind = Change::Kind;

  [[nodiscard]] constexpr TokenCursor within(ChangeState const& s, std::uint32_t from) const {
    return cursor(from, s.end);
  }
  /// Passes a change on, with the separator between it and the change before.
  constexpr void send(ChangeState& s, FoundChange change, std::uint32_t from, std::uint32_t to) {
    using Separator = ChangeForm::Separator;
    change.from = from;
    change.to = to;
    auto const separator = !s.any ? Separator::opens : s.point ? Separator::point : Separator::comma;
    change.form = {runs_.size() - 1, separator, change.leaf_written};
    // if there are too many changes, the caller finds failed_ set after the item
    static_cast<void>(this->add_change(change));
    s.deletions = change.kind == Kind::deletion ? s.deletions + 1 : 0;
    s.before = s.previous;
    s.previous = change;
    s.any = true;
    if (change.kind == Kind::deletion || change.kind == Kind::cancel) s.last_gone = change, s.gone = true;
  }
  /// In the place of a leaf after which something is inserted: no leaf was named. 0 is the place before the first leaf.
  static constexpr int place_not_stated = -1;
  /// Reads what is inserted into `target` after leaf `after`, or `place_not_stated`. `fills`: it replaces a deleted leaf.
  constexpr bool insertion(ChangeState& s, Target const& target, int after, bool fills, std::uint32_t from) {
    FoundChange one;
    one.kind = Kind::insertion;
    one.gathering = target.gathering;
    one.leaves = 1;
    FoundElement run;
    TokenCursor list; // of the numbers of several leaves
    if (is_bare_figure(s.c)) {
      if (!take_figure(s, one, after, list, from)) return false;
    } else if (auto const w = this->word(s.c); w.size() > 2 && number_of_word(w)) { // A3 + two leaves
      one.leaves = *number_of_word(w);
      s.c = within(s, s.c.token.from + static_cast<std::uint32_t>(w.size()));
    } else if (int const leaves = leaves_of_unit(w); leaves != 0) { // B2 + bifolium
      one.leaves = leaves;
      if (leaves == 2) one.joined = Joined::conjugate;
      s.c = within(s, s.c.token.from + static_cast<std::uint32_t>(w.size()));
    } else if (take_run(s, s.c, run)) {
      if (!check_run(run)) return false;
      one.joined = Joined::gathering;
      one.named = true;
    } else if (!take_named(s, one, from, run, list))
      return false;
    LackingLeaves lacking;
    if (one.joined == Joined::gathering && !this->take_lacking(s, run, lacking)) return false;
    if (after < 0) {
      warn(Problem::place_not_stated, from, s.c.token.from);
      after = target.leaves;
    }
    if (after > target.leaves) return fail(Problem::no_such_leaf, from, s.c.token.from, target.leaves);
    one.first = after;
    bool const disjunct = one.named && one.joined == Joined::apart;
    if ((one.leaves > 1 || !run.single) && after == target.leaves && !fills && !disjunct)
      warn(Problem::pair_after_last_leaf, from, s.c.token.from);
    s.sign = Kind::insertion;
    s.list = s.point = false;
    one.doubtful = s.c.at(TokenKind::question);
    if (one.doubtful) {
      s.c.take();
      warn(Problem::doubtful_change, from, s.c.token.from);
    }
    if (one.named) {
      bool const whole = one.joined == Joined::gathering || one.figure == 0;
      this->remember_inserted(run.single ? one.name : run.first.key, run.gatherings, whole ? 0 : one.figure,
                              whole ? 0 : one.figure + one.leaves - 1, from, s.c.token.from);
    }
    if (one.joined != Joined::gathering && one.leaves > 1 && list.at(TokenKind::figure))
      return send_pieces(s, one, list, from);
    for (std::int64_t i = 0; i < run.gatherings && !this->failed_; ++i) {
      if (!run.single) {
        auto const rank = run.first.key.rank(this->alphabet_) + i;
        one.name = i + 1 == run.gatherings ? run.last.key : run.first.key.at_rank(rank, this->alphabet_);
        one.leaves = run.count.cycle.at(i);
        one.inferred = i == 0 ? run.first.inferred : i + 1 == run.gatherings ? run.last.inferred : run.in_brackets;
      }
      if (one.joined == Joined::gathering) this->add_inserted_gathering(one.leaves);
      one.lacking = i == lacking.index ? lacking.bits : 0;
      one.leaves -= std::popcount(one.lacking);
      if (!this->add_leaves(one.leaves, from, s.c.token.from)) return false;
      send(s, one, from, s.c.token.from);
    }
    return true;
  }
  /// Returns true if this item was inserted together with the item before it, as b⁴ in A3+a⁴, b⁴. It was not if it is a
  /// leaf of a gathering that the formula has, as B2 in A3+a⁴, B2.
  constexpr bool continues_insertion(ChangeState const& s) {
    if (!s.after(Kind::insertion) || s.previous.starred || !s.separated || s.semicolon) return false;
    auto c = s.c;
    auto const mark = CountReader{text_.substr(0, s.end), letters_}.take(c);
    if (!mark || is_plus(mark) || mark.key.is_bare_number()) return false;
    FoundElement run;
    if (auto after = s.c; take_run(s, after, run)) return ends_one(after.token) || after.at(TokenKind::open_round);
    if (take_count(c, false).sound()) return ends_one(c.token) || c.at(TokenKind::open_round); // b⁴(−b4)
    if (!c.touches(TokenKind::figure) || this->find(mark.key)) return false;
    c.take();
    return ends_one(c.token);
  }
  /// Returns true for a number alone, which is a number of leaves (+2) or a place (+8*). In 2a⁴ and 1⁸ the number
  /// belongs to a mark.
  [[nodiscard]] constexpr bool is_bare_figure(TokenCursor c) const noexcept {
    if (!c.is_flat_figure()) return false;
    c.take();
    auto const& t = c.token;
    if (t.spaced) return true;
    if (t.is(TokenKind::letter) || t.raised()) return false;
    if (t.is(TokenKind::open_square)) return at(t.to) == '=';
    return static_cast<unsigned char>(at(t.from)) < 0x80;
  }
  /// Returns true if a number alone, which is a number of leaves, may be meant as a leaf after leaf `after`: (−E7+8).
  [[nodiscard]] constexpr bool is_leaves_or_leaf(TokenCursor const& c, int after, int leaves) const noexcept {
    if (!is_bare_figure(c) || (c.ahead().is(TokenKind::symbol) && !c.ahead().spaced)) return false; // +8* is a place
    return after > 0 && static_cast<std::int64_t>(c.token.value) > after &&
           static_cast<std::int64_t>(c.token.value) <= leaves;
  }

private:
  /// Returns how many leaves a word means that stands alone after a plus: 1 for leaf, 2 for bifolium; 0 for another word.
  [[nodiscard]] static constexpr int leaves_of_unit(std::string_view w) noexcept {
    return w == "leaf" || w == "singleton" ? 1 : w == "bifolium" ? 2 : 0;
  }
  /// Returns true if the token may follow one insertion. A list of leaves may continue.
  [[nodiscard]] static constexpr bool ends_one(Token const& t) noexcept {
    return t.is(TokenKind::end) || t.is(TokenKind::comma) || t.is(TokenKind::point) || t.is(TokenKind::semicolon) ||
           t.is(TokenKind::open_square) || t.is(TokenKind::dash) || t.is(TokenKind::plus) || t.is(TokenKind::question);
  }
  /// Reads 1, 2; 8*; 1.2 of one piece; 1,2 as separate leaves.
  constexpr bool take_figure(ChangeState& s, FoundChange& one, int& after, TokenCursor& list, std::uint32_t from) {
    auto const value = s.c.token.value;
    if (value < 1 || value > most_leaves_in_gathering) return not_understood(s, from);
    list = s.c;
    s.c.take();
    if (s.c.touches(TokenKind::symbol) && s.c.token.value == '*') {
      s.c.take();
      one.starred = true;
      one.figure = static_cast<int>(value);
      if (after < 0) after = one.figure;
      return true;
    }
    one.leaves = static_cast<int>(value);
    if (value == 1)
      join_listed(s.c, one, list);
    else
      list = TokenCursor{};
    return true;
  }
  /// Reads a list of inserted leaves that have no name, 1.2 or 1,2, which begins at `list`. Its 1 has been read.
  constexpr void join_listed(TokenCursor& c, FoundChange& one, TokenCursor const& list) const noexcept {
    auto p = list;
    auto const all = take_leaf_pieces(p, true);
    if (all.last > most_leaves_in_gathering) return;
    c = p;
    one.leaves = static_cast<int>(all.last);
    if (all.last > 1) one.joined = all.conjugate ? Joined::conjugate : Joined::apart;
  }
  /// Passes on the leaves of a list, an insertion for each piece.
  constexpr bool send_pieces(ChangeState& s, FoundChange one, TokenCursor list, std::uint32_t from) {
    auto const end = s.c.token.from;
    for (;;) {
      auto const piece = take_leaf_piece(list, !one.named);
      one.leaves = static_cast<int>(piece.last - piece.first + 1);
      one.joined = piece.conjugate ? Joined::conjugate : Joined::apart;
      if (one.named) one.figure = static_cast<int>(piece.first);
      if (piece.conjugate && one.leaves % 2 != 0) warn(Problem::odd_gathering, from, end);
      if (!this->add_leaves(one.leaves, from, end)) return false;
      send(s, one, from, end);
      if (this->failed_ || list.token.from >= end || !list.at(TokenKind::comma)) return true;
      list.take();
    }
  }
  constexpr bool take_named(ChangeState& s, FoundChange& one, std::uint32_t from, FoundElement& gathering,
                            TokenCursor& list) {
    auto const w = this->word(s.c);
    if (w.size() > 3 && this->is_word(s.c.token.from) &&
        !is_digit(at(s.c.token.from + static_cast<std::uint32_t>(w.size()))))
      return fail(Problem::change_not_understood, from, s.end); // C4 + folding table
    auto const mark = CountReader{text_.substr(0, s.end), letters_}.take(s.c);
    if (!mark || is_plus(mark)) return not_understood(s, from);
    one.named = true;
    one.name = mark.key;
    one.inferred = mark.inferred;
    auto c = s.c;
    if (auto const count = take_count(c, false); count.found()) {
      gathering.first = gathering.last = mark;
      gathering.count = count;
      gathering.from = mark.from;
      gathering.end = count.end;
      if (!this->check_count(gathering)) return false;
      doubt_inserted(gathering);
      s.c = c;
      one.joined = Joined::gathering;
      one.leaves = count.cycle.term(0);
    } else if (mark.key.is_bare_number()) { // a number alone is a number of leaves
      if (mark.key.multiple > most_leaves_in_gathering) return not_understood(s, from);
      one.leaves = static_cast<int>(mark.key.multiple);
      one.named = one.inferred = false;
      one.name = SignatureKey{};
    } else if (s.c.touches(TokenKind::figure) && !s.c.token.raised()) {
      if (take_starred(s, one, mark.from)) return true;
      return take_leaves(s, one, list, from);
    }
    return true;
  }
  /// Takes the number and the star of C3*, as a leaf is signed that is added beside C3. The mark is kept as it was printed:
  /// *C3 is another. Returns false if there is no star.
  constexpr bool take_starred(ChangeState& s, FoundChange& one, std::uint32_t from) const {
    auto c = s.c;
    c.take();
    bool const star =
        c.touches(TokenKind::symbol) && (c.token.value == '*' || c.token.value == 0x2020 || c.token.value == 0x2021);
    if (!star) return false;
    auto const to = c.token.to;
    c.take();
    auto const found = this->text_mark(Mark::printed, from, to, to, 1);
    if (!found || !(ends_one(c.token) || c.token.spaced)) return false;
    one.name = found.key;
    one.inferred = false;
    s.c = c;
    return true;
  }
  /// Reads the numbers after a name: χ1, χ1.2, χ1,2, χ1.2,3, χ1-4.
  constexpr bool take_leaves(ChangeState& s, FoundChange& one, TokenCursor& list, std::uint32_t from) {
    list = s.c;
    auto const all = take_leaf_pieces(s.c, false);
    bool const goes_on = s.c.touches(TokenKind::point) || s.c.touches(TokenKind::comma) || s.c.touches(TokenKind::dash);
    if (auto const next = s.c.ahead(); goes_on && next.is_figure_not_raised() && !next.spaced)
      return not_understood(s, from); // χ1,3; χ3-2
    auto const first = all.first, last = all.last;
    one.joined = all.conjugate ? Joined::conjugate : Joined::apart;
    one.leaves = static_cast<int>(last - first < most_leaves_in_gathering ? last - first + 1 : 1);
    if (one.leaves == 1 && first % 2 == 0 && dialect_.flat_counts)
      warn(Problem::inserted_leaf_or_gathering, from, s.c.token.from, first);
    if (first < 1 || last > most_leaves_in_gathering) return not_understood(s, from);
    one.figure = static_cast<int>(first);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
