// SPDX-License-Identifier: MIT
/// The grammar of a collation formula. It reads tokens (leaf/token.hpp) by recursive descent. What the elements mean
/// together is worked out in collation/detail/resolve/resolver.hpp, and what a change names in named_targets.hpp.
///
///   description = [ heading ] , [ format ] , [ total ] , [ engraved ] , { part } ;
///   total       = [ "[" ] , figure , [ "]" ] , ( "leaves" | "leaf" | "ll." | "l." | "ff." | "f." | "Bl." ) , [ separator | ":" ]
///               , [ heading ] , [ format ] ;
///   part        = [ volume | appendix ] , { element | separator } ;            (* ";" and a volume begin a part *)
///   separator   = "," | "." | ";" | "|" | "/" | joint of runs ;
///   joint of runs = "and" | "und" | "et" | "ed" | "en" | "og" | "och" | "e" | "y" | "u." | "&" | "+" | "then"
///               | "followed by" | "dann" | "puis" | "poi" ;         (* between two runs *)
///   element     = run | unsigned | empty | group | changes | outside | identity | imperfect | unplaced | equation
///               | "±" , signature , raised figure                   (* a gathering that was cancelled as a whole *)
///               | signing | remark | note | passage | quotation ;
///   quotation   = quote , description , quote ;                     (* "A-K⁸"; at the beginning, or of a whole part *)
///   equation    = "=" , description ;                               (* the same book written a second way *)
///   remark      = [ "-" ] , ( leaf | range ) , { joint , ( leaf | range ) } , words ;
///
/// Each function takes all of its text, or leaves the cursor where it was. No text is corrected: if it can be read with
/// a doubt, it is read and there is a warning; otherwise there is an error with its position.
#pragma once

#include <bifolium/collation/detail/grammar/formula_element.hpp>
#include <bifolium/collation/detail/grammar/unplaced_grammar.hpp>
#include <bifolium/collation/passage.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class Grammar : UnplacedGrammar<Sink> {
  using Base = UnplacedGrammar<Sink>;
  using Base::fail, Base::warn, Base::sink_, Base::text_, Base::at, Base::cursor, Base::word, Base::is_word,
      Base::take_count, Base::begun, Base::c_, Base::part_, Base::depth_, Base::failed_, Base::dialect_, Base::leaves_,
      Base::error_, Base::after_word, Base::is_extent, Base::rest, Base::begins, Base::separated_, Base::limits_;

  bool second_{false};       // true for the second formula of A = B, and for one that is only counted
  TextSpan total_{};         // a total of leaves before the first gathering
  std::int64_t in_total_{0}; // the number that it states

public:
  constexpr Grammar(std::string_view text, Dialect dialect, Limits const& limits, Sink& sink)
      : Grammar{text, formula_element(text), dialect, limits, sink} {}

  /// Reads the whole text. Returns false if it cannot be read; error() has the reason.
  constexpr bool read() {
    // the functions below treat a zero byte as the end, so the text after it would be ignored
    if (auto const zero = text_.find('\0'); zero != text_.npos)
      return fail(Problem::not_utf8, to_32(zero), to_32(zero));
    this->take_format();
    if (failed_) return false;
    take_total();
    for (;;) {
      separators();
      if (c_.ended()) {
        if (!this->out_of_quotation()) break;
        continue;
      }
      if (c_.at(TokenKind::quote) && this->into_quotation()) {
        if (!begun()) this->take_format();
        continue;
      }
      bool const may_be_plain = c_.at(TokenKind::letter) || c_.at(TokenKind::figure);
      if (!(may_be_plain && this->plain()) && (failed_ || !step())) return false;
      if (failed_) return false;
    }
    auto const size = to_32(text_.size());
    if (!begun()) return fail(Problem::no_signature, size, size);
    this->check_identities();
    if (in_total_ != 0 && in_total_ != leaves_)
      warn(Problem::total_contradicts, to_32(total_.from), to_32(total_.to), leaves_);
    this->check_total_ahead();
    this->check_gathered();
    this->check_inserted();
    this->check_alphabet();
    if (depth_ > 0 && !this->misread_) warn(Problem::bracket_not_closed, this->open_at_, this->open_at_ + 1);
    return true;
  }
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return leaves_; }
  [[nodiscard]] constexpr std::int64_t gatherings() const noexcept {
    return this->gatherings_ + this->gatherings_inserted_;
  }
  /// Returns true if the formula has letters that its alphabet lacks, each in its place.
  [[nodiscard]] constexpr bool shows_letters() const noexcept { return this->shown_ != Letters{}; }
  /// Returns the dialect with these letters.
  [[nodiscard]] constexpr Dialect dialect_shown() const noexcept {
    auto all = dialect_;
    all.letters.j = all.letters.j || this->shown_.j;
    all.letters.u = all.letters.u || this->shown_.u;
    all.letters.w = all.letters.w || this->shown_.w;
    return all;
  }
  /// Returns the reason. Precondition: read() returned false.
  [[nodiscard]] constexpr Doubt error() const noexcept { return error_; }

private:
  constexpr Grammar(std::string_view text, TextSpan content, Dialect dialect, Limits const& limits, Sink& sink)
      : Base{text.substr(0, content.to), dialect, limits, sink} {
    if (content.from != 0) c_ = cursor(content.from);
  }
  static constexpr std::uint32_t to_32(std::size_t i) noexcept { return static_cast<std::uint32_t>(i); }

  /// Takes a total of leaves before the gatherings: 4°. 80 Bl. a-k⁸. So few leaves that they could be one gathering are a
  /// total only if the gatherings after them have as many: 2 l., A-K⁸ begins with two leaves that are not signed.
  constexpr void take_total() {
    auto c = c_;
    auto const from = c.token.from;
    bool const square = c.at(TokenKind::open_square);
    if (square) c.take();
    if (!c.is_flat_figure() || c.token.value == 0) return;
    auto const stated = c.token.value;
    c.take();
    if (square && !c.touches(TokenKind::close_square)) return;
    if (square) c.take();
    auto const unit = word(c);
    if (!is_unit_of_leaves(unit)) return;
    c = after_word(c);
    bool const stop = c.touches(TokenKind::point) || c.touches(TokenKind::comma) || c.touches(TokenKind::colon) ||
                      c.touches(TokenKind::semicolon);
    if (!stop && unit.size() < 3) return; // 2 f⁸
    auto const to = c.touches(TokenKind::point) && unit.size() < 4 ? c.token.to : this->before_blanks(c.token.from);
    while (is_separator(c.token) || c.at(TokenKind::colon)) c.take();
    if (c.ended() || (stated <= thick_gathering && (second_ || count_after(c) != std::int64_t{stated}))) return;
    total_ = {from, to};
    in_total_ = stated;
    sink_.tail(from, to);
    sink_.passage(Passage::Kind::leaves, from, to);
    c_ = c;
    this->take_format(); // 80 leaves. 4°: sign. a-k⁸
  }
  /// Returns the number of leaves of the formula that begins here, or 0 if it cannot be read.
  [[nodiscard]] constexpr std::int64_t count_after(TokenCursor const& c) const {
    Sink none = sink_.nobody();
    Grammar other{text_.substr(c.token.from), dialect_, limits_, none};
    other.second_ = true;
    return other.read() ? other.leaves() : 0;
  }
  constexpr void separators() {
    separated_ = !begun();
    auto const from = c_.token.from;
    int points = 0;
    for (; is_separator(c_.token) || this->is_stroke(separated_); c_.take()) {
      part_ = part_ || c_.at(TokenKind::semicolon);
      points = c_.at(TokenKind::point) ? points + 1 : 0;
      separated_ = true;
    }
    if (c_.token.from != from) c_.token.spaced = true; // A8,lacking A8: a blank after a comma may be left out
    if (points > 2) warn(Problem::text_not_read, from, c_.token.from);                  // A-K⁸ ...
    if (begun() && c_.at(TokenKind::colon) && c_.ahead().is(TokenKind::end)) c_.take(); // of the record, not a mark
  }
  constexpr bool step() {
    if (begun() && (this->remark() || this->change_outside())) return !failed_;
    if (failed_) return false;
    auto const t = c_.token;
    switch (t.kind) {
    case TokenKind::letter:
      if (this->volume() || (!begun() && this->engraved_before())) return true;
      return (separated_ && this->begins_number_word(t.from) && this->leaves_before()) || (!failed_ && letter());
    case TokenKind::open_round:
      return ((is_latin_letter(at(t.to)) || is_digit(at(t.to))) && this->volume()) || this->open_round();
    case TokenKind::close_round:
    case TokenKind::close_square:
      return this->close_bracket();
    case TokenKind::open_square:
      if (is_digit(at(t.to)) && this->leaves_before()) return !failed_;
      if (failed_) return false;
      if (begun() && is_extent(c_)) return rest(false);
      if (begun() && at(t.to) == 'i' && this->half_sheets()) return true;
      return this->volume() || (!failed_ && this->bracket());
    case TokenKind::equals:
      return equation();
    case TokenKind::colon:
      return colon();
    case TokenKind::dash:
      return (begun() && this->dashed_remark()) ||
             (!failed_ && (this->on_line_after_count(false) || (!failed_ && this->gathering())));
    case TokenKind::plus:
      return this->plus();
    case TokenKind::minus:
      return t.raised() && begun() ? this->raised_sign() : this->gathering();
    case TokenKind::figure:
      if (!t.raised() && (this->volume() || this->leaves_before())) return !failed_;
      return !t.raised() && begun() && is_extent(c_) ? rest(false) : this->gathering();
    case TokenKind::malformed:
      return fail(Problem::not_utf8, t.from, t.from);
    case TokenKind::symbol:
      return this->joining_sign() || this->gathering();
    case TokenKind::plus_minus:
      return cancelled_gathering() || (!failed_ && this->gathering());
    case TokenKind::dollar:
      return begun() ? this->signing() : this->gathering();
    case TokenKind::quote:
      return this->lone_quotation_mark() || this->gathering();
    default:
      return this->gathering();
    }
  }
  /// Reads signatures, a bare name with its count, or words after the gatherings.
  constexpr bool letter() {
    auto const from = c_.token.from;
    auto const next = at(from + 1);
    if (this->roman_run()) return true;
    if (failed_) return false;
    if (begun() && this->joining_letter()) return true;
    if (!is_latin_letter(next) && begun() && this->goes_on_after_tag(c_)) // M<sup>r</sup>s
      return separated_ && begins_prose(from) ? rest(true) : fail(Problem::unknown_mark, from, from + 12);
    if (!is_latin_letter(next) && next != '.') return this->gathering();
    if (begun() && is_extent(c_)) return rest(false);
    if (is_small(next) && !begun() && this->pages_before()) return true;
    if (at(from) == 'J' && !begun() && depth_ == 0 && is_small(next) && next != 'j' && !is_word(from + 1))
      return this->misread_bracket();
    if (begun() && separated_ && this->is_title_page(from)) return rest(true);
    if (!is_latin_letter(next) || !is_word(from)) return this->gathering();
    auto const w = word(c_);
    auto const end = from + to_32(w.size());
    auto c = cursor(end);
    auto const count = take_count(c, dialect_.flat_counts);
    if (begun() && (w == "plus" || w == "with" || joins_runs(w)) && is_extent(cursor(end))) return rest(false);
    if (at(from) == 'i' && begun() && this->half_sheets()) return true;
    if (begun() && this->is_and(c_)) return c_ = cursor(end), true;
    if (begun() && (this->joining_phrase() || this->appendix())) return true;
    if (begun() && this->is_labelled_prose()) return rest(true);
    // fehlt A1: a word of loss begins words about the copy, also without a comma
    bool const exception = w == "except" || w == "excepting"; // in fours except K, which has two
    bool const loss = begun() && (absence_word(w).before || exception) && after_word(c_).token.kind > TokenKind::end &&
                      !is_separator(after_word(c_).token);
    if (begun() && (separated_ || loss) && !count.found()) return rest(true);
    if (w.size() >= 3 && count.sound()) return this->named(end, count);
    return fail(begun() ? Problem::unknown_mark : Problem::no_signature, from, end);
  }
  /// Reads ±H⁴, a whole gathering that was cancelled, as H⁴(±H). Returns false if there is none.
  constexpr bool cancelled_gathering() {
    auto const from = c_.token.from, to = c_.token.to;
    auto const before = c_;
    c_.take();
    FoundElement e;
    auto c = c_;
    bool const one = !c_.token.spaced && this->take_element(c, e) && e.single && e.count.sound() && !e.count.flat &&
                     !this->is_plus(e.first);
    if (!one) return c_ = before, false;
    if (!this->gathering()) return false;
    warn(Problem::change_outside_parentheses, from, c_.token.from < e.end ? c_.token.from : e.end);
    return this->changes(from, to);
  }
  /// Returns true if the text without its tags, as it will be written, begins with a word and not with gatherings.
  [[nodiscard]] constexpr bool begins_prose(std::uint32_t from) const {
    return with_stored_words(text_.substr(from), [&](std::string_view words) {
      return Prose{words, dialect_}.begins();
    });
  }
  /// Reads a colon. Before a number of leaves or pages it separates (A-C⁸: 24 leaves); otherwise it is a mark.
  constexpr bool colon() {
    auto c = c_;
    c.take();
    // A-M8:4: a colon between two figures is neither the sign of a count nor a mark
    auto const before = at(c_.token.from - 1);
    bool const after_figure = is_digit(before) || static_cast<unsigned char>(before) >= 0x80;
    if (begun() && after_figure && c.touches(TokenKind::figure) && c.is_flat_figure())
      return fail(Problem::unknown_mark, c_.token.from, c.token.to);
    if (!begun() || !c.token.spaced || !(is_extent(c) || this->is_page_sequence(c))) return this->gathering();
    c_ = c;
    return extent();
  }
  /// Reads leaves without a signature, or an extent.
  constexpr bool extent() {
    bool const number = c_.at(TokenKind::figure) || c_.at(TokenKind::open_square);
    return (number && this->leaves_before()) || (!failed_ && rest(false));
  }
  /// Reads A = B: the same book in a second notation.
  constexpr bool equation() {
    auto const t = c_.token;
    if (!begun() || second_) return fail(Problem::unknown_mark, t.from, t.from + 12);
    auto c = c_;
    c.take();
    if (c.token.is_raised_figure() && !c.token.spaced) return fail(Problem::unknown_mark, t.from, c.token.to); // =⁴
    if (is_extent(c) && !c.at(TokenKind::plus)) { // A-K⁸ = 80 leaves
      c_ = c;
      return extent();
    }
    Sink none = sink_.nobody();
    auto const from = c.token.from;
    Grammar other{text_.substr(from), dialect_, limits_, none};
    other.second_ = true;
    auto const size = to_32(text_.size());
    if (!other.read()) {
      auto const& e = other.error();
      return fail(e.problem, e.from + from, e.to + from, e.limit);
    }
    if (other.leaves() != leaves_) warn(Problem::second_statement_differs, from, size, other.leaves());
    c_ = cursor(size);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
