// SPDX-License-Identifier: MIT
/// Reads the text after gatherings: a number of leaves or pages, plates, signing and prose. It is of no gathering but belongs to
/// the description of the book, so it is stored as it stands. Gatherings may follow it: A⁴, 4 leaves, B-K⁸, 72 leaves.
///
///   passage    = [ ":" ] , extent | pagination | plates | label , words ;
///   extent     = [ "[" ] , figure , [ "]" ] , ( "leaves" | "leaf" | "ll." | "l." | "ff." | "f." | "Bl." | "pp." | "p." ) ;
///   plates     = ( "+" | "plus" | "with" | "and" ) , [ figure ] , words ;
///   pagination = ( "pp." | "ff." | "ll." | "p." | "cols." ) , ( figure | roman | "[" | symbol , figure ) , words ;
///   label      = words , ( ":" | "]" ) ;                   (* CW: and RT] *)
#pragma once

#include <bifolium/collation/detail/grammar/text_items.hpp>
#include <bifolium/collation/passage.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class PassageGrammar : protected TextItems<Sink> {
protected:
  using Base = TextItems<Sink>;
  using Base::Base;
  using Base::warn, Base::sink_, Base::text_, Base::at, Base::cursor, Base::word, Base::c_, Base::after_word,
      Base::begins, Base::is_word;

  bool separated_{true}; // true if a separator comes before the present position

  /// Stores the rest of the text, or the text up to gatherings that follow. `prose` is true if it begins with words that do
  /// not state an extent: nothing follows them.
  constexpr bool rest(bool prose) {
    auto const from = c_.token.from, size = static_cast<std::uint32_t>(text_.size());
    auto const end = prose ? typename Base::TextEnd{size, 0, false} : this->end_of_text(c_);
    if (!prose && reads_otherwise(from, end.to))
      return this->fail(Problem::unknown_mark, end.doubted != 0 ? end.doubted : from, end.to);
    auto const kept = prose ? from : this->check_stated(c_, from, end);
    if (kept < end.to) sink_.tail(kept, end.to);
    if (prose || leaves_beside(from, end.to))
      warn(Problem::text_not_read, from, end.to);
    else {
      if (end.doubted != 0) warn(Problem::text_not_read, end.doubted, end.to);
      this->check_items(from, end.doubted != 0 ? end.doubted : end.to, false);
    }
    for (auto c = c_; !c.ended() && c.token.from < end.to;) { // semicolons separate passages
      auto const begin = c;
      auto to = c.token.to;
      bool plates = false;
      for (; !c.ended() && c.token.from < end.to && !c.at(TokenKind::semicolon); c.take()) {
        to = c.token.to;
        if (!prose && c.token.spaced && this->names_part(c))
          warn(Problem::text_not_read, c.token.from, size); // v. 2: A-B⁸
        plates = plates || (c.at(TokenKind::letter) && begins(c.token.from, "plate"));
      }
      auto const kind = plates ? Passage::Kind::plates : kind_of(begin, to);
      sink_.passage(kind, begin.token.from, to);
      if (!prose && begin.token.from != from)
        static_cast<void>(this->check_stated(begin, begin.token.from, {to, 0, false})); // pp. 1-160; 81 leaves
      if (c.at(TokenKind::semicolon)) c.take();
    }
    if (end.goes_on) this->pass_extent();
    c_ = cursor(end.to);
    return true;
  }
  /// Reads pages before the first gathering, 8°. pp. [i-viii] 1-128: π⁴ A-H⁸, up to a colon. Returns false if there are none.
  constexpr bool pages_before() {
    if (!this->is_pagination(c_)) return false;
    auto c = c_;
    auto const from = c.token.from;
    for (; !c.at(TokenKind::colon); c.take())
      if (c.ended() || c.token.raised() || c.at(TokenKind::semicolon)) return false;
    auto const to = this->before_blanks(c.token.from);
    if (!c.ahead().spaced) return false;
    c.take();
    if (c.ended()) return false;
    sink_.tail(from, to);
    sink_.passage(Passage::Kind::pagination, from, to);
    c_ = c;
    return true;
  }
  /// Reads "in half-sheets" after the gatherings, also in brackets: 12°: A-L⁶ in half-sheets. Each gathering is then half a sheet, which is
  /// compared with them. Returns false if there are no such words, or the format does not say how many leaves these are.
  constexpr bool half_sheets() {
    bool const square = c_.at(TokenKind::open_square);
    auto const in = square ? cursor(c_.token.to) : c_;
    if (word(in) != "in" || this->leaves_to_sheet_ < 2) return false;
    TextCursor words{text_, after_word(in).token.from};
    if (!take_half_sheet(words) || (square && !words.take(']'))) return false;
    auto const from = c_.token.from, to = static_cast<std::uint32_t>(words.at());
    Cycle const leaves{this->leaves_to_sheet_ / 2};
    if (!this->has_gathering_of(leaves)) warn(Problem::gathered_otherwise, from, to);
    sink_.gathered(leaves);
    c_ = cursor(to);
    return true;
  }
  /// Reads a statement of signing without brackets, A-K⁸; $4 signed (−A3), up to a semicolon, a full stop before a
  /// blank, a statement of pages, or gatherings.
  constexpr bool signing() {
    auto const begin = c_;
    auto const from = c_.token.from;
    auto to = c_.token.to;
    int depth = 0, square = 0;
    for (; !c_.ended(); c_.take()) {
      auto const& t = c_.token;
      auto after = c_;
      after.take();
      bool const goes_on = depth == 0 && square == 0 &&
                           ((t.is(TokenKind::comma) && this->gatherings_go_on(after)) ||
                            (t.spaced && t.from != from && this->gatherings_go_on(c_)));
      if (goes_on) break;
      depth += t.is(TokenKind::open_round) ? 1 : t.is(TokenKind::close_round) ? -1 : 0;
      square += t.is(TokenKind::open_square) ? 1 : t.is(TokenKind::close_square) ? -1 : 0;
      bool const point = t.is(TokenKind::point) && (c_.ahead().spaced || c_.ahead().is(TokenKind::end));
      bool const pages = t.is(TokenKind::comma) && this->is_extent(after);
      if (depth < 0 || square < 0 || (depth == 0 && (t.is(TokenKind::semicolon) || point || pages))) break;
      to = t.to;
    }
    if (depth > 0 || square > 0) return c_ = begin, this->gathering();
    this->check_items(from, to, true);
    sink_.passage(Passage::Kind::signing, from, to);
    return true;
  }
  /// Returns true for text that only comes after a formula: a label (CW:, RT]) or a fingerprint (tea- se,u (3) 1612A).
  [[nodiscard]] constexpr bool is_labelled_prose() const {
    auto const w = word(c_);
    auto const label = after_word(c_);
    bool const labels =
        label.touches(TokenKind::colon) || (label.touches(TokenKind::close_square) && this->depth_ == 0);
    if (w.size() > 1 && labels && is_word(c_.token.from)) return true;
    auto end = this->before_blanks(static_cast<std::uint32_t>(text_.size()));
    while (end > 0 && (at(end - 1) == '.' || at(end - 1) == ';')) end = this->before_blanks(end - 1);
    if (end > 0 && is_capital(at(end - 1))) --end;
    auto const year = end;
    while (end > 0 && is_digit(at(end - 1))) --end;
    auto const bracket = this->before_blanks(end);
    return year - end == 4 && bracket > c_.token.from + 3 && bracket != end && at(bracket - 1) == ')' &&
           at(bracket - 3) == '(';
  }

private:
  /// Returns true if the words, once their tags are left out, state no extent or have gatherings after them: 12 leaves <sup>x,
  /// h</sup>⁸. Such text is neither words nor gatherings.
  [[nodiscard]] constexpr bool reads_otherwise(std::uint32_t from, std::uint32_t to) {
    if (!may_have_markup(text_.substr(from, to - from))) return false;
    bool const extent = this->is_extent(c_);
    return with_stored_words(text_.substr(from, to - from), [&](std::string_view words) {
      auto const text = text_;
      text_ = words;
      TokenCursor const begin{words};
      bool const otherwise = this->is_extent(begin) != extent || this->end_of_text(begin).goes_on;
      text_ = text;
      return otherwise;
    });
  }
  /// Returns true for leaves that the formula does not have and that are not plates: + 2 leaves, and 4 unsigned leaves.
  [[nodiscard]] constexpr bool leaves_beside(std::uint32_t from, std::uint32_t to) {
    auto const w = word(c_);
    if (!c_.at(TokenKind::plus) && w != "and" && w != "plus" && w != "with") return false;
    bool leaves = this->adds_leaves(from, to);
    for (auto c = cursor(from, to); !c.ended() && !c.at(TokenKind::semicolon); c.take()) {
      if (!c.at(TokenKind::letter)) continue;
      auto const one = word(c);
      if (is_word_of_plates(one)) return false;
      leaves = leaves || one == "leaf" || one == "leaves" || one == "ll" || one == "l";
      if (!one.empty()) c = cursor(c.token.from + one.size() - 1, to);
    }
    return leaves;
  }
  [[nodiscard]] constexpr Passage::Kind kind_of(TokenCursor c, std::uint32_t to) const {
    if (this->is_pagination(c) || this->is_page_sequence(c)) return Passage::Kind::pagination;
    bool const bracket = c.at(TokenKind::open_square);
    if (bracket) c.take();
    if (c.at(TokenKind::plus)) return Passage::Kind::plates;
    if (!c.is_flat_figure()) return Passage::Kind::prose;
    c.take();
    static_cast<void>(this->take_correction(c, 0));
    if (bracket && c.at(TokenKind::close_square)) c.take();
    auto const w = word(c);
    if (w == "p" || w == "pp") return Passage::Kind::pagination;
    return is_unit_of_leaves(w) && after_word(c).token.from <= to ? Passage::Kind::leaves : Passage::Kind::prose;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
