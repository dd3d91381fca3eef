// SPDX-License-Identifier: MIT
/// Reads text in brackets. Parentheses contain changes, words, or a mark that is printed so; square brackets contain a group
/// of unsigned gatherings, a statement of signing, changes or words. In scanned texts brackets are missing or have the
/// wrong form; such text is read with a warning.
///
///   empty   = "[" , "]" , count ;                       (* a gathering without a signature *)
///   group   = "[" , { element | separator } , "]" , [ count ] ;
///             (* unsigned; the count is shared by runs without one *)
///   signing = "[" , "$" , words , "]" | "(" , "$" , words , ")" | "$" , words ;
///   note    = "(" , ( blanks | words ) , ")" | "[" , words , "]" ;
#pragma once

#include <bifolium/collation/detail/grammar/passage_grammar.hpp>
#include <bifolium/collation/passage.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class BracketGrammar : protected PassageGrammar<Sink> {
protected:
  using Base = PassageGrammar<Sink>;
  using Base::Base;
  using Base::fail, Base::warn, Base::sink_, Base::last_, Base::text_, Base::at, Base::cursor, Base::word,
      Base::is_word, Base::leaf_name, Base::take_count, Base::begun, Base::c_, Base::depth_, Base::failed_,
      Base::dialect_, Base::is_group, Base::separated_;

  bool misread_{false}; // true if the bracket that is open was lost in scanning
  std::uint32_t open_at_{0};

  /// Reads J as an opening bracket. Scans of BMC have this mistake: Ja-d⁸.
  constexpr bool misread_bracket() {
    auto const from = c_.token.from;
    warn(Problem::bracket_misread, from, from + 2);
    open_at_ = from;
    depth_ = 1;
    misread_ = true;
    c_.take();
    return true;
  }
  /// Reads a parenthesis: a mark that is printed in parentheses, with its count; changes; or words.
  constexpr bool open_round() {
    auto const inside = c_.token.to;
    if (at(inside) == ':') return this->gathering();
    if (!may_be_mark(inside)) return this->parenthesis(); // a change or words
    auto c = c_;
    auto const mark =
        this->take(c); // (*)⁴: with a count, a symbol in parentheses is a mark; without one, these are words
    bool const counted = mark && !c.at(TokenKind::open_round) && take_count(c, dialect_.flat_counts).found();
    bool const run = mark && c.at(TokenKind::dash);
    if (counted || run) return this->gathering();
    FoundElement e;
    c = c_;
    return this->take_enclosed(c, e) || this->take_enclosed_end(c, e.first) ? this->gathering() : this->parenthesis();
  }
  /// Reads changes or words in a parenthesis.
  constexpr bool parenthesis() {
    auto const from = c_.token.from;
    auto const close = this->closing_round(c_);
    if (close == 0) return fail(Problem::parenthesis_not_closed, from, from + 12);
    auto const in = cursor(c_.token.to, close);
    if (!begun()) {
      bool const changing = ChangeSigns::begins_with_sign(in) || this->signs(close).begins_with_loss(in, close);
      return fail(changing ? Problem::change_without_gathering : Problem::no_signature, from, close + 1);
    }
    c_ = cursor(close + 1);
    if (in.ended()) return fail(Problem::change_not_understood, from, close + 1);
    return changes_or_words(in, from, close);
  }
  /// Reads what brackets from byte `from` to `close` contain, which begins at `in`: changes, leaves that are wanting,
  /// or a note. Square brackets are read as round ones are, in which what they say is written: [K8 wanting] as
  /// (K8 wanting).
  constexpr bool changes_or_words(TokenCursor const& in, std::uint32_t from, std::uint32_t close) {
    bool const square = at(from) == '[';
    auto const i = in.token.from;
    if (in.at(TokenKind::letter) && this->leaves_wanting(i, close, true)) return !failed_;
    if (failed_) return false;
    if (!square && in.at(TokenKind::equals) && states_extent(in, close)) { // (= 80 leaves), (= 10 sheets)
      this->check_total(after_sign(in, close), i, close);
      return this->note(i, close, ChangeForm::Separator::opens, {}, false, true);
    }
    if (ChangeSigns::begins_with_sign(in) || this->signs(close).are_changes(in, close)) {
      if (square) warn(Problem::change_in_square_brackets, from, close + 1);
      return this->changes(i, close);
    }
    bool const signing = in.at(TokenKind::dollar) && text_.substr(i, close - i).find_first_of("[]") == text_.npos;
    if (signing) return sink_.passage(Passage::Kind::signing, i, close), true; // ($4 signed)
    if (this->leaves_wanting(i, close)) return !failed_;
    if (square)
      warn(Problem::text_not_read, from, close + 1);
    else
      this->check_total(in, i, close);
    return this->note(i, close, ChangeForm::Separator::opens, {}, false, square);
  }
  [[nodiscard]] constexpr TokenCursor after_sign(TokenCursor const& sign, std::uint32_t close) const noexcept {
    return cursor(sign.token.to, close);
  }
  /// Returns true if a number of leaves, pages, sheets or gatherings is all that comes after the sign at the cursor, and no
  /// leaf: [=B2] says which leaf one is.
  [[nodiscard]] constexpr bool states_extent(TokenCursor const& sign, std::uint32_t close) const {
    auto c = after_sign(sign, close);
    if (!c.is_flat_figure()) return false;
    c.take();
    static_cast<void>(this->take_fraction(c));
    auto const unit = word(c);
    bool const known = is_unit_of_leaves(unit) || unit == "sheets" || unit == "sheet" || unit == "pp" || unit == "p" ||
                       unit == "pages" || is_word_for_gatherings(unit);
    c = cursor(c.token.from + unit.size(), close);
    if (c.touches(TokenKind::point)) c.take();
    return known && c.ended();
  }
  /// Reads a square bracket: a statement of signing, changes, a mark, or the beginning of a group.
  constexpr bool bracket() {
    auto const from = c_.token.from;
    auto const first = c_.ahead();
    if (first.is(TokenKind::close_square)) return empty_brackets();
    bool const identity = first.is(TokenKind::equals);
    bool const changing = begun() && (identity || first.is(TokenKind::plus) || is_loss(first));
    if (first.is(TokenKind::dollar) || changing) {
      auto const close = this->bracket_end(c_.token.to - 1);
      if (close == 0) return fail(Problem::parenthesis_not_closed, from, from + 12);
      c_ = cursor(close + 1);
      if (first.is(TokenKind::dollar)) return sink_.passage(Passage::Kind::signing, from, close + 1), true;
      for (auto k = first.from; k < close; ++k) // its words would not be in a parenthesis
        if (at(k) == '(' || at(k) == ')' || (at(k) == '[' && !identity))
          return fail(Problem::change_not_understood, from, close + 1);
      if (identity) return this->changes(from, close + 1);
      warn(Problem::change_in_square_brackets, from, close + 1);
      return this->changes(first.from, close);
    }
    bool const one_letter = first.is(TokenKind::letter) && first.from == from + 1 && at(first.to) == ']';
    if (one_letter && !first.raised()) return this->gathering(); // [A]: neither words nor a group
    if (begun() && words_in_brackets()) return !failed_;
    if (failed_) return false;
    if (!is_group(c_)) return this->gathering();
    // brackets round runs are not within each other, so the first was not closed
    if (depth_ > 0) return fail(Problem::bracket_not_closed, open_at_, open_at_ + 12);
    depth_ = 1;
    open_at_ = from;
    c_.take();
    return true;
  }
  /// Reads [ ]², a gathering without a signature, as it is written for want of π.
  constexpr bool empty_brackets() {
    auto const from = c_.token.from;
    auto c = c_;
    c.take(), c.take();
    auto const count = take_count(c, dialect_.flat_counts);
    if (!count.sound() || count.cycle.size() != 1) return this->gathering();
    warn(Problem::unsigned_leaves_as_gathering, from, count.end);
    c_ = c;
    return this->unsigned_gathering(begun(), count.cycle.term(0), from, count.end);
  }
  /// Reads words in square brackets: [K8 blank], [K8 wanting], [no A], and any words after a full stop at the end of
  /// a statement. Returns false if the brackets contain something else.
  constexpr bool words_in_brackets() {
    auto const from = c_.token.from;
    auto const close = this->closing_square(c_.token.to);
    if (close == 0) return false;
    auto const in = cursor(c_.token.to, close);
    auto const inside = text_.substr(c_.token.to, close - c_.token.to);
    bool const plain = !may_be_raised(inside); // no sign that is not ASCII either
    if (!plain || inside.find_first_of("()+=") != inside.npos)
      for (auto c = in; !c.ended(); c.take()) // in a parenthesis, in which words are written, these have a meaning
        if (c.at(TokenKind::open_round) || c.at(TokenKind::close_round) || c.at(TokenKind::plus) ||
            c.at(TokenKind::equals) || c.at(TokenKind::plus_minus))
          return false;
    FoundElement e;
    auto p = in;
    bool const marked = p.at(TokenKind::quote) && this->take_element(p, e); // ["fol1"1]
    if (marked && e.count.found() && e.end == close) return false;
    auto const after = cursor(close + 1U);
    p = after;
    if (take_count(p, dialect_.flat_counts).found()) return false;
    auto const second = this->after_word(in);
    bool const letter_and_words =
        word(in).size() == 1 && second.token.spaced && is_word(second.token.from); // E omitted
    bool words = letter_and_words || (word(in) == "no" && in.ahead().is(TokenKind::letter));
    if (auto const name = leaf_name(in, close); !words && name.found && name.leaf > 0) {
      auto const next = cursor(name.end, close);
      words = next.at(TokenKind::letter) && next.token.spaced && is_word(next.token.from);
    }
    bool const last = after.ended() || after.at(TokenKind::point) || after.at(TokenKind::semicolon);
    bool const figures = !plain || inside.find_first_of("0123456789") != inside.npos;
    words = words || (figures && (last || after.token.spaced) && has_word_and_figure(in)); // [advts. H1-2]
    if (!words && separated_ && last)                                                      // . [Library Co]
      words = word(in).size() > 1 && is_word(in.token.from) && second.at(TokenKind::letter) && second.token.spaced;
    if (!words) return false;
    c_ = after;
    return changes_or_words(in, from, close);
  }
  [[nodiscard]] constexpr bool has_word_and_figure(TokenCursor c) const {
    bool words = false, figures = false;
    for (; !c.ended(); c.take()) {
      if (c.token.raised() || c.at(TokenKind::open_round) || c.at(TokenKind::close_round)) return false;
      figures = figures || c.at(TokenKind::figure);
      words = words || (c.at(TokenKind::letter) && word(c).size() > 2 && is_word(c.token.from));
    }
    return words && figures;
  }
  constexpr bool close_bracket() {
    auto const t = c_.token;
    if (t.is(TokenKind::close_round) && is_cross()) return this->gathering();
    if (depth_ == 0) {
      if (!begun()) return fail(Problem::bracket_not_opened, t.from, t.to);
      warn(Problem::bracket_not_opened, t.from, t.to);
      c_.take();
      return true;
    }
    if (t.is(TokenKind::close_round) && !misread_) warn(Problem::bracket_misread, t.from, t.to);
    --depth_;
    misread_ = false;
    c_.take();
    this->after_group(t.to);
    return true;
  }
  /// Returns false if the first bytes in a parenthesis show that it does not contain a mark: it begins with the sign of
  /// a change, or its first letters, digits and stars are followed neither by a dash nor by the closing parenthesis.
  [[nodiscard]] constexpr bool may_be_mark(std::uint32_t inside) const noexcept {
    auto const lead = static_cast<unsigned char>(at(inside)), next = static_cast<unsigned char>(at(inside + 1));
    if (lead == '+' && (next == ')' || next == '+')) return true;                 // (+)⁴
    bool const sign = lead == 0xE2 ? next == 0x88 : lead == 0xC2 && next == 0xB1; // −, ±
    if (sign || lead == '-' || lead == '+' || lead == '=' || lead == '[') return false;
    auto i = inside;
    while (is_latin_letter(at(i)) || is_digit(at(i)) || at(i) == '*') ++i; // H*
    auto const after = static_cast<unsigned char>(at(i));
    return i == inside || after == ')' || after == '-' || after >= 0x80;
  }
  /// Returns true if )( is a mark here, and not the end of one parenthesis and the beginning of another: (A4)(−A3).
  [[nodiscard]] constexpr bool is_cross() const noexcept {
    auto const to = c_.token.to;
    if (detail::cross_size(text_, c_.token.from) > 2) return true;
    if (at(to) != '(' || (depth_ > 0 && at(to + 1) == '-')) return false;
    auto k = to + 1;
    if (at(k) == '-')
      for (++k; is_digit(at(k));) ++k; // )(-3)( is a run
    bool const run = k != to + 1 && at(k) == ')' && at(k + 1) == '(';
    auto const next = at(to + 1);
    return run || (next != '-' && next != '+' && next != '=');
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
