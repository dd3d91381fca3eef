// SPDX-License-Identifier: MIT
/// Reads the name of a volume: Vol. I:, 2:, (Bd. 3). A book of several volumes has the same signatures several times, so the
/// formula must say where each volume begins. A number alone names a volume only if the volumes are numbered in order from 1
/// on: it may as well be a format, a gathering or a number of leaves.
///
///   volume   = [ "(" | "[" ] , name of part , [ ")" | "]" ] , [ ":" | "," | "." ]
///            | figure , ( ":" | "." ) | "(" , figure , ")" , [ ":" | "." ] | roman , ( ":" | "." ) ;
///   name of part = ( "v." | "vol." | "volume" | "tome" | "tom." | "tomo" | "tomus" | "t." | "Bd." | "Band" | "Teil"
///                | "Theil" | "pt." | "part" | "parte" | "pars" | "partie" ) , ( figure | roman | ordinal )
///                | figure , "." , ( "Teil" | "Theil" | "Band" | "Bd" ) , [ "." ] , ":" ;
#pragma once

#include <bifolium/collation/detail/grammar/format_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Words for a part of a book (common practice, no source).
inline constexpr std::string_view words_of_parts[]{"v"sv,     "vol"sv,  "volume"sv, "tome"sv, "tom"sv,   "tomo"sv,
                                                   "tomus"sv, "t"sv,    "bd"sv,     "band"sv, "teil"sv,  "theil"sv,
                                                   "pt"sv,    "part"sv, "parte"sv,  "pars"sv, "partie"sv};

template <class Sink> class VolumeGrammar : protected FormatGrammar<Sink> {
protected:
  using Base = FormatGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::sink_, Base::text_, Base::at, Base::cursor, Base::word, Base::c_, Base::after_word,
      Base::is_word, Base::begun, Base::part_;

  /// Returns true at the name of a part: v. 2:
  [[nodiscard]] constexpr bool names_part(TokenCursor c) const {
    return c.at(TokenKind::letter) && take_volume_word(c) && take_number(c) != 0 && c.touches(TokenKind::colon);
  }
  /// Reads the name of a part of the book: Vol. I:, v. 2, (Bd. 3), [Part 1]. It comes before or after the gatherings of
  /// the part. Returns false if there is none.
  constexpr bool volume() {
    if (!may_begin_part(c_.token)) return false;
    auto c = c_;
    if (c.is_flat_figure()) return numbered_part();
    bool const round = c.at(TokenKind::open_round), square = c.at(TokenKind::open_square);
    if (round || square) c.take();
    auto const from = c.token.from;
    if (auto const figure = c.token; round && c.is_flat_figure()) {
      c.take();
      if (!c.touches(TokenKind::close_round)) return false;
      c.take();
      if (c.touches(TokenKind::colon) || c.touches(TokenKind::point)) c.take();
      return numbered_in_order(c, figure);
    }
    if (!round && !square && roman_part()) return true;
    if (!take_volume_word(c)) return false;
    auto const to = take_number(c);
    if (to == 0) return false;
    bool const stopped = take_stop(c);
    if (round || square) {
      if (!c.at(round ? TokenKind::close_round : TokenKind::close_square)) return false;
      c.take();
      take_stop(c);
    } else if (!stopped)
      return false;
    bool const named_after = round && begun() && (c.at(TokenKind::semicolon) || c.ended() || c.at(TokenKind::point));
    begin_named(from, to, c, !named_after);
    return true;
  }
  /// Begins a part that the text names from `from` to `to`, at the cursor; or names the part before it.
  constexpr void begin_named(std::uint32_t from, std::uint32_t to, TokenCursor const& c, bool begins) {
    sink_.label(from, to, begins);
    c_ = c;
    if (!begins) return; // A4 B-M12 (v. 1); ...
    run_named_ = this->runs_.size();
    part_ = true;
    this->take_format();
  }
  /// Returns true if the name of a part is the last that was read.
  [[nodiscard]] constexpr bool part_is_named() const noexcept { return run_named_ == this->runs_.size(); }

private:
  /// Returns true if a name of a part can begin here. It looks at one byte only, because it is called for every
  /// gathering.
  [[nodiscard]] constexpr bool may_begin_part(Token const& t) const noexcept {
    auto const next = at(t.to);
    if (t.is(TokenKind::letter)) return (is_latin_letter(next) || next == '.' || next == ':') && may_name_part(t.value);
    if (t.is(TokenKind::figure)) return next == ':' || next == '.';
    return may_name_part(static_cast<unsigned char>(next)) || (t.is(TokenKind::open_round) && is_digit(next));
  }
  /// Returns true for the first letter of a word for a part or of a Roman numeral.
  [[nodiscard]] static constexpr bool may_name_part(std::uint32_t initial) noexcept {
    auto const lower = initial | 0x20U;
    return lower == 'v' || lower == 't' || lower == 'b' || lower == 'p' || initial == 'I' || initial == 'X';
  }
  std::uint32_t run_named_{0};   // the run before which a part was named last
  std::uint32_t part_number_{0}; // of the last part that only has a Roman numeral as its name

  static constexpr bool take_stop(TokenCursor& c) noexcept {
    if (!c.at(TokenKind::colon) && !c.at(TokenKind::comma) && !c.at(TokenKind::point)) return false;
    c.take();
    return true;
  }
  /// Reads the number of a part: 1: A-C⁸ 2: A-C⁸; 1. Teil: A⁸. Returns false if there is none.
  constexpr bool numbered_part() {
    auto c = c_;
    auto const figure = c.token;
    c.take();
    auto to = figure.to;
    if (c.touches(TokenKind::point)) {
      c.take();
      auto const w = word(c);
      if (w.empty() || w.size() == 1) return numbered_in_order(c, figure);
      if (w != "Teil" && w != "Theil" && w != "Band" && w != "Bd") return false;
      to = c.token.from + static_cast<std::uint32_t>(w.size());
      c = after_word(c);
      if (c.touches(TokenKind::point)) c.take();
    }
    if (!c.touches(TokenKind::colon)) return false;
    c.take();
    if (!c.token.spaced || c.ended() || c.token.is_raised_figure() || c.at(TokenKind::colon)) return false;
    if (!begun() && to == figure.to && may_be_format(figure.value))
      warn(Problem::figure_read_as_part, figure.from, figure.to);
    sink_.label(figure.from, to, true);
    run_named_ = this->runs_.size();
    part_ = true;
    c_ = c;
    return true;
  }
  /// Returns true for the figure of a format that books have: at the beginning, 8: may be 8°.
  [[nodiscard]] static constexpr bool may_be_format(std::uint32_t figure) noexcept {
    for (auto const leaves : {2U, 4U, 6U, 8U, 12U, 16U, 18U, 24U, 32U, 48U, 64U})
      if (figure == leaves) return true;
    return false;
  }
  /// Returns true if gatherings begin at the cursor with which a book or volume begins: at A or B, or with a mark that is no
  /// letter; or if there is a run of several.
  [[nodiscard]] constexpr bool begins_book(TokenCursor const& c) const {
    FoundElement e;
    auto next = c;
    bool const number = c.at(TokenKind::figure) && !c.token.raised();
    if (number || !this->take_element(next, e)) return false;
    if (!e.single) return true;
    return e.count.sound() && (!e.first.key.is_latin() || e.first.key.letter <= 2);
  }
  /// Takes (1) or 1. before the gatherings of a part, if the parts are numbered so from 1 on. Returns false if there is none.
  constexpr bool numbered_in_order(TokenCursor const& c, Token const& figure) {
    bool const first = figure.value == 1 && !begun();
    if (!first && (figure.value != part_number_ + 1 || part_number_ == 0)) return false;
    if (!c.token.spaced || c.ended() || !begins_book(c)) return false;
    part_number_ = figure.value;
    begin_named(figure.from, figure.to, c, true);
    return true;
  }
  /// Reads the Roman number of a part: I: A-K⁸ II: A-L⁸. The parts are numbered from I. Returns false if there is none.
  constexpr bool roman_part() {
    auto const initial = c_.token.value;
    bool const may_be = (initial == 'I' || initial == 'V' || initial == 'X') && (!begun() || part_number_ != 0);
    if (!may_be) return false;
    auto const w = word(c_);
    auto const numeral = roman_numeral(w);
    if (!numeral || numeral->bytes != w.size() || numeral->value != std::int64_t{part_number_} + 1) return false;
    auto c = after_word(c_);
    if (!c.touches(TokenKind::colon) && !c.touches(TokenKind::point)) return false;
    bool const colon = c.at(TokenKind::colon);
    c.take();
    if (!c.token.spaced || c.ended() || c.token.is_raised_figure()) return false;
    if (!colon && !begins_book(c)) return false; // I. A-K⁸ begins a part; I. 8 is a gathering
    auto const from = c_.token.from;
    ++part_number_;
    begin_named(from, from + static_cast<std::uint32_t>(w.size()), c, true);
    return true;
  }
  /// Takes a word for a part and its full stop: v., vol., Parte. Returns false if there is none.
  constexpr bool take_volume_word(TokenCursor& c) const {
    if (!may_name_part(c.token.value)) return false;
    auto const w = word(c);
    bool known = false;
    for (auto const one : words_of_parts) known = known || equal_in_any_case(w, one);
    if (!known) return false;
    c = after_word(c);
    bool const stop = c.touches(TokenKind::point);
    if (stop) c.take();
    return stop || w.size() > 2;
  }
  /// Takes the number of a volume: a figure, a Roman numeral or a word. Returns the position after it, or 0 if there is
  /// none.
  constexpr std::uint32_t take_number(TokenCursor& c) const {
    auto const from = c.token.from;
    if (c.is_flat_figure()) {
      auto const to = c.token.to;
      c.take();
      return to;
    }
    auto const numeral = word(c);
    if (numeral.empty()) return 0;
    bool known = is_roman_numeral(numeral);
    for (std::string_view const one :
         {"first"sv, "second"sv, "third"sv, "fourth"sv, "prima"sv, "seconda"sv, "secunda"sv, "terza"sv, "tertia"sv,
          "primus"sv, "secundus"sv, "tertius"sv, "primo"sv, "secondo"sv, "terzo"sv, "premier"sv, "seconde"sv})
      known = known || equal_in_any_case(numeral, one);
    if (!known) return 0;
    c = after_word(c);
    return from + static_cast<std::uint32_t>(numeral.size());
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
