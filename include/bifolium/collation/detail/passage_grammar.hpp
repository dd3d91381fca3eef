// SPDX-License-Identifier: MIT
/// Reads the text around the gatherings: remarks about a leaf, and after the formula a number of leaves or pages,
/// plates and prose. The text is stored. If it states another number of leaves than the formula has, there is a
/// warning. Gatherings may follow it: A⁴, 4 leaves, B-K⁸, 72 leaves.
///
///   passage    = [ ":" ] , extent | pagination | plates | label , words ;
///   extent     = [ "[" ] , figure , [ "]" ] , ( "leaves" | "leaf" | "ll." | "l." | "ff." | "f." | "Bl." | "pp." | "p." ) ;
///   plates     = ( "+" | "plus" | "with" | "and" ) , [ figure ] , words ;
///   pagination = ( "pp." | "ff." | "ll." | "p." | "cols." ) , ( figure | roman | "[" | symbol , figure ) , words ;
///   label      = words , ( ":" | "]" ) ;                   (* CW: and RT] *)
#pragma once

#include <bifolium/collation/detail/gatherings_beyond.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class PassageGrammar : protected GatheringsBeyond<Sink> {
protected:
  using Base = GatheringsBeyond<Sink>;
  using Base::Base;
  using Base::warn, Base::sink_, Base::text_, Base::at, Base::cursor, Base::word, Base::c_, Base::after_word,
      Base::begins, Base::is_word, Base::leaf_name, Base::begun, Base::part_, Base::leaves_, Base::leaves_at_extent_;

  bool separated_{true}; // true if a separator comes before the present position

  /// Stores the rest of the text, or the text up to gatherings that follow. `prose` is true if it begins with words that do
  /// not state an extent: nothing follows them.
  constexpr bool rest(bool prose) {
    auto const from = c_.token.from, size = static_cast<std::uint32_t>(text_.size());
    auto const end = prose ? typename Base::TextEnd{size, 0, false} : this->end_of_text(c_);
    auto const kept = prose ? from : check_stated(c_, from, end);
    if (kept < end.to) sink_.tail(kept, end.to);
    if (prose || leaves_beside(from, end.to))
      warn(Problem::text_not_read, from, end.to);
    else if (end.doubted != 0)
      warn(Problem::text_not_read, end.doubted, end.to);
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
        static_cast<void>(check_stated(begin, begin.token.from, {to, 0, false})); // pp. 1-160; 81 leaves
      if (c.at(TokenKind::semicolon)) c.take();
    }
    if (end.goes_on)
      leaves_at_extent_ = leaves_, gatherings_at_extent_ = this->gatherings_ + this->gatherings_inserted_;
    c_ = cursor(end.to);
    return true;
  }
  /// Warns if a total in parentheses, (90 leaves), differs from the formula.
  constexpr void check_total(TokenCursor c, std::uint32_t from, std::uint32_t to) {
    bool const bracket = c.at(TokenKind::open_square);
    if (bracket) c.take();
    if (!c.is_flat_figure()) return;
    std::int64_t const stated = c.token.value;
    c.take();
    if (bracket && c.at(TokenKind::close_square)) c.take();
    auto const w = word(c);
    bool const total = is_unit_of_leaves(w) && after_word(c).token.from + 1 >= to;
    if (total && stated != leaves_) warn(Problem::total_contradicts, from, to, leaves_);
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
                           ((t.is(TokenKind::comma) && this->gatherings_begin(after)) ||
                            (t.spaced && t.from != from && this->gatherings_begin(c_)));
      depth += t.is(TokenKind::open_round) ? 1 : t.is(TokenKind::close_round) ? -1 : 0;
      square += t.is(TokenKind::open_square) ? 1 : t.is(TokenKind::close_square) ? -1 : 0;
      bool const point = t.is(TokenKind::point) && (c_.ahead().spaced || c_.ahead().is(TokenKind::end));
      bool const pages = t.is(TokenKind::comma) && this->is_extent(after);
      if (depth < 0 || square < 0 || goes_on || (depth == 0 && (t.is(TokenKind::semicolon) || point || pages))) break;
      to = t.to;
    }
    if (depth > 0 || square > 0) return c_ = begin, this->gathering();
    sink_.passage(Passage::Kind::signing, from, to);
    return true;
  }
  /// Reads words about a leaf that are not in parentheses: A-K⁸; K8 blank. Returns false if there are none.
  constexpr bool remark() {
    auto const from = c_.token.from;
    if (at(from) == '(' && (at(from + 1) == '-' || static_cast<unsigned char>(at(from + 1)) == 0xE2))
      return false;     // (−K8)
    auto figure = from; // K8 and a word: most text here is neither
    while (figure - from < 47 && (is_latin_letter(at(figure)) || is_digit(at(figure)) || at(figure) == '-')) ++figure;
    // A-K, in eights: words after a comma are not about the leaf before it
    bool const ends = at(figure) == ',' || at(figure) == ';' || at(figure) == ':';
    if (ends && this->is_blank_at(figure + 1)) return false;
    while (figure < text_.size() && figure - from < 48 && !this->is_blank_at(figure)) ++figure;
    auto const next = this->after_blanks(figure);
    bool const sign = at(next) == '&' && this->is_blank_at(next + 1);
    bool const article = at(next) == 'a' && this->is_blank_at(next + 1); // B2 a cancel
    if (figure == from || (!sign && !article && (!is_small(at(next)) || !is_small(at(next + 1))))) return false;
    auto const size = static_cast<std::uint32_t>(text_.size());
    bool const opens = at(from) == '(' && figure - from < 48;
    if (opens && text_.substr(from, figure - from).find(')') == text_.npos) return false; // (last leaf blank)
    auto const name = leaf_name(c_, size);
    if (!name.found || !name.gathering_named || name.leaf < 1) return false;
    auto c = cursor(name.end);
    auto const range = this->range_end(c, size, name);
    if (range.found) c = cursor(range.end);
    bool const several = take_joined_leaves(c) || range.found;
    auto const w = word(c);
    bool const words = c.token.spaced && !w.empty() && is_small(w[0]) && (article || is_word(c.token.from)) &&
                       !this->is_range_word(w) && w != "and";
    bool const of_several =
        is_blank_word(w) || is_wanting_word(w) || w == "are" || w == "both" || cancel_word(w) != CancelWord::none;
    if (!words || (several && !of_several)) return false;
    auto const target = this->find(name.key);
    if (!target || name.leaf > target->leaves) return false;
    for (; !c.ended(); c.take()) {
      auto const& t = c.token;
      if (is_separator(t) || t.is(TokenKind::open_round) || t.is(TokenKind::close_round) ||
          t.is(TokenKind::open_square) || t.is(TokenKind::close_square))
        break;
    }
    if (this->signs(c.token.from).cancels(c_, c.token.from).said != CancelWord::none) { // B2 a cancel
      warn(Problem::change_outside_parentheses, from, c.token.from);
      c_ = c;
      return this->changes(from, c.token.from);
    }
    if (article) return false;
    c_ = c;
    if (this->leaves_wanting(from, c.token.from)) return true;
    this->note(from, c.token.from, ChangeForm::Separator::opens, {}, true);
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
  /// Reads a remark after a dash: A-K⁸ -- K8 blank. Returns false if there is none.
  constexpr bool dashed_remark() {
    auto const before = c_;
    while (c_.at(TokenKind::dash)) c_.take();
    if (remark()) return true;
    c_ = before;
    return false;
  }

private:
  std::int64_t gatherings_at_extent_{0}; // the same as leaves_at_extent_, of gatherings

  /// Warns if a stated number of gatherings, 11 gatherings or 11 quires, is not that of the formula. Returns false if the
  /// word is none for gatherings. (common practice, no source)
  constexpr bool check_gatherings(std::int64_t stated, std::string_view unit, std::uint32_t from, std::uint32_t to) {
    bool known = false;
    for (auto const* const one : {"gatherings", "gathering", "quires", "quire", "signatures", "sigs", "Lagen",
                                  "cahiers", "fascicoli", "cuadernos"})
      known = known || unit == one;
    auto const all = this->gatherings_ + this->gatherings_inserted_;
    bool const agrees = stated == this->gatherings_ || stated == all || stated == all - gatherings_at_extent_;
    if (known && !agrees) warn(Problem::gatherings_contradict, from, to, all);
    return known;
  }
  /// Warns if a stated number of sheets, 11 sheets or 10½ sheets, is not what the leaves make in the stated format. Where
  /// leaves were cut out or put in, less than a sheet is not a contradiction: they may be printed with others.
  constexpr void check_sheets(std::int64_t stated, int quarters, std::uint32_t from, std::uint32_t to) {
    if (this->leaves_to_sheet_ == 0 || stated > 1'000'000 || leaves_ > 100'000'000) return;
    auto const sheet = 4 * std::int64_t{this->leaves_to_sheet_}, least = this->has_changes() ? sheet : 1;
    auto const differs = [&](std::int64_t leaves) {
      auto const difference = stated * sheet + quarters * this->leaves_to_sheet_ - 4 * leaves;
      return difference >= least || difference <= -least;
    };
    if (differs(leaves_) && differs(leaves_ - leaves_at_extent_)) warn(Problem::sheets_contradict, from, to, leaves_);
  }
  /// Takes the leaves that are joined to one before them: A1 and E8 blank. Returns true if there are any.
  [[nodiscard]] constexpr bool take_joined_leaves(TokenCursor& c) {
    bool any = false;
    for (;;) {
      auto const end = static_cast<std::uint32_t>(text_.size());
      auto next = c;
      if (is_separator(c.token) || !this->take_joint(next, end)) return any;
      auto const name = leaf_name(next, end);
      if (!name.found || name.whole || name.leaf < 1) return any;
      c = cursor(name.end);
      any = true;
    }
  }
  /// Returns true for leaves that the formula does not have and that are not plates: + 2 leaves, and 4 unsigned leaves.
  [[nodiscard]] constexpr bool leaves_beside(std::uint32_t from, std::uint32_t to) const {
    auto const w = word(c_);
    if (!c_.at(TokenKind::plus) && w != "and" && w != "plus" && w != "with") return false;
    bool leaves = false;
    for (auto c = cursor(from, to); !c.ended() && !c.at(TokenKind::semicolon); c.take()) {
      if (!c.at(TokenKind::letter)) continue;
      auto const one = word(c);
      if (one == "plate" || one == "plates") return false;
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
    if (bracket && c.at(TokenKind::close_square)) c.take();
    auto const w = word(c);
    if (w == "p" || w == "pp") return Passage::Kind::pagination;
    return is_unit_of_leaves(w) && after_word(c).token.from <= to ? Passage::Kind::leaves : Passage::Kind::prose;
  }
  /// Warns if a stated number of leaves, 90 leaves or [90] ll., is neither that of the formula nor that of the gatherings
  /// since the extent before it. Returns where the text begins that is kept: a number for a part of the formula agrees with
  /// it and is not a statement about the book.
  constexpr std::uint32_t check_stated(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    while (takes_number_of_pieces(c) && c.at(TokenKind::comma)) c.take(); // 10 gatherings, 80 leaves
    if (c.token.from != from) return check_leaves(c, c.token.from, end), from;
    return check_leaves(c, from, end);
  }
  /// Takes a number of gatherings or sheets, and warns if it is not that of the formula. Returns false if there is none.
  constexpr bool takes_number_of_pieces(TokenCursor& c) {
    if (!c.is_flat_figure()) return false;
    auto p = c;
    auto const from = p.token.from;
    std::int64_t const stated = p.token.value;
    p.take();
    auto const quarters = this->take_fraction(p);
    auto const w = word(p);
    auto const to = p.token.from + static_cast<std::uint32_t>(w.size());
    if (w == "sheets" || w == "sheet")
      check_sheets(stated, quarters, from, to);
    else if (!check_gatherings(stated, w, from, to))
      return false;
    c = after_word(p);
    return true;
  }
  constexpr std::uint32_t check_leaves(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    if (c.at(TokenKind::open_square)) c.take();
    if (!c.is_flat_figure()) return from;
    std::int64_t const stated = c.token.value;
    c.take();
    if (c.at(TokenKind::close_square)) c.take();
    static_cast<void>(this->take_adjectives(c));
    auto const w = word(c);
    if (!is_unit_of_leaves(w)) return from;
    auto const of = this->after_word(c);
    bool const parted = of.token.spaced && begins(of.token.from, "of");
    bool const of_plates = parted && this->is_plate_word(word(this->after_word(of)));
    if (of_plates && (w == "leaves" || w == "leaf")) return from;
    bool const of_formula = stated == leaves_, of_part = stated == leaves_ - leaves_at_extent_;
    if (!of_formula && !of_part) {
      // nobody states a total of 2 for 80 leaves
      if (parted || stated * 8 < leaves_)
        warn(Problem::text_not_read, from, end.to);
      else
        warn(Problem::total_contradicts, from, end.to, leaves_);
      return from;
    }
    if (of_formula && !end.goes_on) return from;
    c = of;
    if (c.touches(TokenKind::point) || c.touches(TokenKind::close_square)) c.take();
    while (is_separator(c.token)) c.take();
    return c.token.from < end.to ? c.token.from : end.to;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
