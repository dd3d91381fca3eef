// SPDX-License-Identifier: MIT
/// Reads what comes before the gatherings of a part: the name of a volume, leaves without signatures, an engraved
/// title. Leaves without signatures are counted as one gathering π, with a warning, because the text does not say how
/// they are joined. Engraved leaves do not belong to the gatherings and are stored as plates.
///
///   volume   = [ "(" | "[" ] , name of part , [ ")" | "]" ] , [ ":" | "," | "." ]
///            | figure , ( ":" | "." ) | "(" , figure , ")" , [ ":" | "." ] | roman , ( ":" | "." ) ;
///   name of part = ( "v." | "vol." | "volume" | "tome" | "tom." | "tomo" | "tomus" | "t." | "Bd." | "Band" | "Teil"
///                | "Theil" | "pt." | "part" | "parte" | "pars" | "partie" ) , ( figure | roman | ordinal )
///                | figure , "." , ( "Teil" | "Theil" | "Band" | "Bd" ) , [ "." ] , ":" ;
///   appendix = ( "supplement" | "suppl." | "supplementum" | "supplemento" | "appendix" | "appendice" | "Anhang" | "index" ) ,
///              [ ":" ] ;
///   unsigned = ( [ "[" ] , figure , [ "]" ] | number ) , [ adjective ] ,
///              ( "leaves" | "leaf" | "l." | "ll." | "f." | "ff." | "Bl." | "p.l." ) ,
///              [ [ "," ] , adjective | "(" , adjective , ")" | "of" , contents , words ] ;
///   contents = [ "the" ] , ( "errata" | "index" | "contents" | "advertisements" | "dedication" | "title" | "table" ) ;
///   adjective = "unsigned" | "unnumbered" | "preliminary" | "prelim." | "without signatures" | blank word ;
///   engraved = ( "engr." | "port." | "front." | "title" | "t.p." | "plate" | "map" ) , words , ( "+" | "," | ";" ) ;
#pragma once

#include <bifolium/collation/detail/format_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Words with which engraved leaves before the gatherings are described (common practice, no source).
inline constexpr std::string_view words_of_engraving[]{"engr"sv,  "engraved"sv, "port"sv,         "portrait"sv,
                                                       "front"sv, "frontis"sv,  "frontispiece"sv, "title"sv,
                                                       "plate"sv, "map"sv};
/// Words for leaves that are printed apart from the gatherings, as in 4 leaves of plates (common practice, no source).
inline constexpr std::string_view words_of_plates[]{
    "plate"sv,         "plates"sv,   "engraving"sv, "engravings"sv, "map"sv,    "maps"sv, "illustration"sv,
    "illustrations"sv, "portrait"sv, "portraits"sv, "print"sv,      "prints"sv, "plan"sv, "plans"sv};
/// Words for leaves of the text that are described by their contents, as in 1 leaf of errata (common practice, no source).
inline constexpr std::string_view words_of_contents[]{
    "advertisement"sv, "advertisements"sv, "adverts"sv, "ads"sv,     "contents"sv,      "corrigenda"sv, "dedication"sv,
    "errata"sv,        "index"sv,          "preface"sv, "prelims"sv, "preliminaries"sv, "privilege"sv,  "register"sv,
    "subscribers"sv,   "table"sv,          "tables"sv,  "title"sv,   "titles"sv,        "verse"sv,      "verses"sv};
/// Returns true if a word is in a table, in capitals or small letters.
template <std::size_t N>
[[nodiscard]] constexpr bool is_in(std::string_view const (&table)[N], std::string_view word) noexcept {
  for (auto const one : table)
    if (equal_in_any_case(word, one)) return true;
  return false;
}
/// Words for a part of a book (common practice, no source).
inline constexpr std::string_view words_of_parts[]{"v"sv,     "vol"sv,  "volume"sv, "tome"sv, "tom"sv,   "tomo"sv,
                                                   "tomus"sv, "t"sv,    "bd"sv,     "band"sv, "teil"sv,  "theil"sv,
                                                   "pt"sv,    "part"sv, "parte"sv,  "pars"sv, "partie"sv};
/// Words for a part that comes after the others (common practice, no source).
inline constexpr std::string_view words_of_appendices[]{
    "supplement"sv, "suppl"sv, "supplementum"sv, "supplemento"sv, "appendix"sv, "appendice"sv, "anhang"sv, "index"sv};

template <class Sink> class PartHeadGrammar : protected FormatGrammar<Sink> {
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
    begin(from, to, c, !named_after);
    return true;
  }
  std::int64_t leaves_at_extent_{0}; // how many leaves came before the last extent after which gatherings follow

  [[nodiscard]] static constexpr bool is_plate_word(std::string_view w) noexcept { return is_in(words_of_plates, w); }
  /// Reads leaves without a signature: 2 unsigned leaves; [2] leaves; 4 p.l. They become a gathering π, or χ after
  /// other gatherings, where the text must call them unsigned or say what is on them, and where their number is not a total: 80
  /// unnumbered leaves. Returns false if there are none.
  constexpr bool leaves_before() {
    bool const square = c_.at(TokenKind::open_square);
    if (square && !is_digit(at(c_.token.to))) return false;
    auto c = c_;
    auto const from = c.token.from;
    if (square) c.take();
    bool const figure = c.is_flat_figure();
    auto const leaves = figure ? static_cast<int>(c.token.value) : this->number_word(c);
    if (figure) c.take();
    if (leaves < 1 || leaves > thick_gathering || (square && !c.touches(TokenKind::close_square))) return false;
    if (square) c.take();
    bool const may_be_total = begun() && leaves > 4 && word(c).starts_with("un");
    bool said = take_adjectives(c);
    if (!take_leaves(c)) return false;
    bool const after = begun() && may_be_total && (c.ended() || is_separator(c.token));
    if (after && (leaves == this->leaves_ || leaves == this->leaves_ - leaves_at_extent_)) return false;
    auto p = c;
    bool const round = p.at(TokenKind::open_round);
    if (p.at(TokenKind::comma) || round) p.take();
    if (take_adjectives(p) && (!round || p.at(TokenKind::close_round))) {
      if (round) p.take();
      c = p, said = true;
    } else if (begun() && !said)
      said = take_contents(c);
    if (begun() && !said) return false;
    auto const to = end_before(c.token.from);
    if (is_separator(c.token) || c.at(TokenKind::plus) || c.at(TokenKind::colon)) c.take();
    if (c.ended() && !begun()) return false;
    warn(Problem::unsigned_leaves_as_gathering, from, to);
    c_ = c;
    return this->unsigned_gathering(begun(), leaves, from, to);
  }
  /// Reads the name of a part after the others: Supplement: a-b⁸. Returns false if there is none. Without a colon, index
  /// K⁸ may say where the index is.
  constexpr bool appendix() {
    auto const from = c_.token.from;
    auto const w = word(c_);
    bool known = false;
    for (auto const one : words_of_appendices) known = known || equal_in_any_case(w, one);
    auto c = after_word(c_);
    if (!known) return false;
    if (c.touches(TokenKind::point)) c.take();
    bool const colon = c.touches(TokenKind::colon);
    if (colon) c.take();
    if (!this->is_element(c)) return false;
    FoundElement e;
    if (auto next = c; !colon && (!this->take_element(next, e) || e.count.flat || this->find(e.first.key)))
      return false;
    begin(from, from + static_cast<std::uint32_t>(w.size()), c, true);
    return true;
  }
  /// Takes all words such as unsigned, unnumbered, preliminary. Returns true if there was one.
  constexpr bool take_adjectives(TokenCursor& c) const {
    bool any = false;
    for (;;) {
      auto const w = word(c);
      bool const one = w == "unsigned" || w == "unnumbered" || w == "preliminary" || w == "prelim" ||
                       (is_blank_word(w) && w != "Bl") || w == "without" ||
                       (any && (w == "signature" || w == "signatures"));
      if (!one) return any;
      c = after_word(c);
      if (w == "prelim" && c.touches(TokenKind::point)) c.take();
      any = true;
    }
  }
  /// Returns true for t.p. at this byte, a title-page and not the gatherings t and p.
  [[nodiscard]] constexpr bool is_title_page(std::uint32_t from) const noexcept {
    return text_.substr(from, 4) == "t.p.";
  }
  /// Reads words for plates before the first gathering: engr. ti. + A⁸; portrait, A⁸. Returns false if there are none.
  constexpr bool engraved_before() {
    auto const next = at(c_.token.from + 1);
    if (!is_small(next) && next != '.') return false;
    bool known = is_title_page(c_.token.from);
    auto const w = word(c_);
    for (auto const one : words_of_engraving) known = known || equal_in_any_case(w, one);
    if (!known) return false;
    auto const from = c_.token.from;
    auto to = from;
    for (auto c = c_; c.token.from < from + 60; c.take()) {
      if (c.at(TokenKind::plus) || c.at(TokenKind::comma) || c.at(TokenKind::semicolon)) {
        c.take();
        if (c.ended()) return false;
        sink_.tail(from, to);
        sink_.passage(Passage::Kind::plates, from, to);
        warn(Problem::text_not_read, from, to);
        c_ = c;
        return true;
      }
      bool const wordy =
          (c.at(TokenKind::letter) && !c.token.raised()) || c.at(TokenKind::point) || c.at(TokenKind::dash);
      if (!wordy) return false;
      to = c.token.to;
    }
    return false;
  }

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
  std::uint32_t part_number_{0}; // of the last part that only has a Roman numeral as its name

  static constexpr bool take_stop(TokenCursor& c) noexcept {
    if (!c.at(TokenKind::colon) && !c.at(TokenKind::comma) && !c.at(TokenKind::point)) return false;
    c.take();
    return true;
  }
  [[nodiscard]] constexpr std::uint32_t end_before(std::uint32_t i) const noexcept {
    for (i = this->before_blanks(i); i > 0 && (at(i - 1) == ',' || at(i - 1) == ';'); i = this->before_blanks(i)) --i;
    return i;
  }
  constexpr void begin(std::uint32_t from, std::uint32_t to, TokenCursor const& c, bool begins) {
    sink_.label(from, to, begins);
    c_ = c;
    if (!begins) return; // A4 B-M12 (v. 1); ...
    part_ = true;
    this->take_format();
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
    begin(figure.from, figure.to, c, true);
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
    begin(from, from + static_cast<std::uint32_t>(w.size()), c, true);
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
  /// Takes "of" and what is on leaves of the text, with the words up to a separator: of errata. Returns false if something
  /// else is there, as in 4 leaves of plates.
  constexpr bool take_contents(TokenCursor& c) const {
    if (word(c) != "of") return false;
    auto p = after_word(c);
    if (word(p) == "the") p = after_word(p);
    if (!is_in(words_of_contents, word(p))) return false;
    for (p = after_word(p); p.at(TokenKind::letter) && word(p).size() > 1 && is_word(p.token.from);) p = after_word(p);
    if (!p.ended() && !is_separator(p.token)) return false;
    c = p;
    return true;
  }
  /// Takes a word for leaves: leaves, leaf, l., ll., f., ff., Bl., p.l. Returns true if there was one.
  constexpr bool take_leaves(TokenCursor& c) const {
    auto p = c;
    if (word(p) == "p") {
      p = after_word(p);
      if (!p.touches(TokenKind::point)) return false;
      p.take();
    }
    auto const w = word(p);
    bool const full = w == "leaves" || w == "leaf";
    if (!full && !is_unit_of_leaves(w)) return false;
    p = after_word(p);
    bool const point = p.touches(TokenKind::point);
    if (!full && !point) return false;
    if (point && !full) p.take();
    c = p;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
