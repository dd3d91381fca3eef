// SPDX-License-Identifier: MIT
/// Finds one run in the text: a signature, a dash and a second signature if there are any, and a leaf count if there is
/// one. The run is not interpreted here, and nothing is stored. So the grammar uses the same reader to read a run and to
/// look ahead for a count that several runs share (a b⁸).
///
///   run  = signature , [ dash , signature ] , [ count ] | "(" , signature , dash , signature , ")" , count
///        | "(" , letter , ")" , dash , signature , [ count ] ;
///   dash = "-" | blank , ( "to" | "through" ) ;
#pragma once

#include <bifolium/collation/detail/formula_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run with its count, if it has one, or the reason why there is none.
struct FoundElement {
  FoundSignature first{}, last{};
  FoundCount count{};
  std::int64_t gatherings{1};
  std::uint32_t from{}, end{};
  bool apart{};                   ///< true if blanks come before the count
  bool single{true};              ///< true if there is no dash
  bool read_flat{};               ///< true if 2A-G was read as ²A-G
  bool by_sequence{};             ///< 1-210: number and count were separated with the help of the neighbouring runs
  bool first_counted{};           ///< A⁸-E⁸: the first end has its own count
  bool roman{};                   ///< (i-iiii): its numbers are Roman numerals
  bool mixed{};                   ///< 2A-CC: later alphabets are written in two ways
  bool half_enclosed{};           ///< (A)-K: one end alone is in parentheses
  bool in_brackets{};             ///< [a-b]⁴ in an insertion: no gathering of the run is signed
  Problem problem{Problem::none}; ///< why the ends make no run
};

class ElementReader : protected FormulaCursor {
protected:
  using FormulaCursor::FormulaCursor;

  /// Takes the dash of a run, or the word "to". Returns true if it was taken.
  constexpr bool take_dash(TokenCursor& c) const noexcept {
    if (c.at(TokenKind::dash)) {
      c.take();
      if (c.touches(TokenKind::dash)) c.take(); // A--B⁸
      return true;
    }
    if (!c.token.spaced || c.token.value != 't') return false;
    auto const w = word(c);
    if ((w != "to" && w != "through") || !is_blank_at(c.token.from + w.size())) return false;
    c = after_word(c);
    return true;
  }
  [[nodiscard]] constexpr bool is_blank_at(std::size_t i) const noexcept { return at(i) == ' ' || at(i) == '\t'; }
  /// Reads one run with its count, if it has one. Returns false if there is no run; the element has the reason.
  constexpr bool take_element(TokenCursor& c, FoundElement& e) const {
    e.from = c.token.from;
    if (!c.at(TokenKind::open_round) || !take_enclosed(c, e)) {
      if (!c.at(TokenKind::open_round) || !take_enclosed_end(c, e.first)) e.first = take_first(c);
      e.last = e.first;
      e.end = e.first.end;
      if (!e.first || !take_last(c, e)) return false;
    }
    bool const number = e.first.key.mark() == Mark::number && !e.roman;
    if (!e.count.found())
      e.count = take_count(c, (flat_counts_ || c.at(TokenKind::open_round)) && !number, true, !e.single);
    if (e.first.count_inside && e.single && !close_quotation(c, e)) return false;
    if (!number) {
      if (!e.count.found())
        take_count_apart(c, e);
      else if (e.count.sound() && e.count.cycle.size() == 1 && !e.single && c.token.is_raised_figure())
        take_term_apart(c, e);
    }
    take_words(c, e);
    if (e.count.found()) e.end = e.count.end;
    return true;
  }
  /// Takes (a-b)⁴, which means (a)-(b)⁴. Returns false and takes nothing if the text has another form.
  constexpr bool take_enclosed(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    p.take();
    if (!p.touches(TokenKind::letter) && !p.touches(TokenKind::figure)) return false; // (a-b)⁴, (2A-2B)⁴
    auto const from = p.token.from;
    auto first = take(p);
    if (!first || !first.key.is_letter() || !p.touches(TokenKind::dash)) return false;
    p.take();
    auto const to = p.token.from;
    auto last = take(p);
    if (!last || !last.key.is_letter() || !p.touches(TokenKind::close_round)) return false;
    auto const lowest = word_at(text_, from), highest = word_at(text_, to);
    auto const numeral = roman_numeral(lowest), end = roman_numeral(highest);
    e.roman = numeral && end && numeral->bytes == lowest.size() && end->bytes == highest.size() && highest.size() > 1 &&
              numeral->value == 1 && end->value > 1; // (i-iiii)⁸
    first.key = e.roman ? SignatureKey::of(Mark::number, 0, 1) : first.key.in_enclosure();
    last.key =
        e.roman ? SignatureKey::of(Mark::number, 0, static_cast<std::uint32_t>(end->value)) : last.key.in_enclosure();
    last.end = p.token.to;
    p.take();
    if (!p.touches(TokenKind::figure)) return false;
    e.first = first, e.last = last;
    e.end = last.end;
    e.single = false;
    if (!join(e)) return false;
    c = p;
    return true;
  }

  /// Takes the first end of (A)-K⁸, whose last end has no parentheses. Returns false and takes nothing if this is no such end.
  constexpr bool take_enclosed_end(TokenCursor& c, FoundSignature& end) const {
    auto p = c;
    p.take();
    auto found = p.touches(TokenKind::letter) ? take(p) : FoundSignature{};
    if (!found || !found.key.is_letter() || !p.touches(TokenKind::close_round)) return false;
    found.key = found.key.in_enclosure();
    found.from = c.token.from, found.end = p.token.to;
    p.take();
    if (!p.touches(TokenKind::dash) || !is_latin_letter(at(p.token.to))) return false;
    end = found;
    c = p;
    return true;
  }

private:
  /// Takes a leaf count in words after the run: A (four leaves), A-H3, in fours. In the second the 3 is the last signed leaf.
  constexpr void take_words(TokenCursor& c, FoundElement& e) const {
    if (e.count.found()) { // only "in" and "per" may follow, after a comma
      auto k = c.token.from + (c.at(TokenKind::comma) ? 1U : 0U);
      while (is_blank_at(k)) ++k;
      if (at(k) != 'i' && at(k) != 'p') return;
    }
    bool const round = c.at(TokenKind::open_round) && !e.count.found();
    if (!round && !c.at(TokenKind::comma) && !c.at(TokenKind::letter)) {
      if (e.count.found() || !e.single || !c.is_flat_figure()) return;
    }
    auto k = c.at(TokenKind::letter) ? c.token.from : c.token.to;
    if (at(k) == ' ') ++k;
    if (is_latin_letter(at(k)) && !is_small(at(k + 1))) return; // no word
    auto p = c;
    if (round) p.take();
    auto count = take_count_in_words(p, !e.count.found(), e.single);
    if (!count.found()) return;
    if (round) {
      if (!p.at(TokenKind::close_round)) return;
      count.end = p.token.to;
      p.take();
    }
    e.count = count;
    e.apart = false;
    c = p;
  }
  /// Takes the second of two alternating counts if a blank separates it from the first: A-D⁸ ⁴.
  constexpr void take_term_apart(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    auto const term = p.token;
    p.take();
    bool const ends = p.ended() || is_separator(p.token) || p.at(TokenKind::close_square) ||
                      (p.token.spaced && term.value >= 4); // ² A is the second series
    if (!term.spaced || !ends || term.value < 1 || term.value > thick_gathering) return;
    if (!e.count.cycle.push(static_cast<int>(term.value))) return;
    e.count.end = term.to;
    e.apart = true;
    c = p;
  }
  /// Takes the second signature of a run, if there is one. Returns false if the two signatures do not make a run.
  constexpr bool take_last(TokenCursor& c, FoundElement& e) const {
    auto d = c;
    auto const own = e.first.key.mark() == Mark::number ? FoundCount{} : take_count(d, flat_counts_);
    if (own.sound() && !d.at(TokenKind::dash) &&
        !d.at(TokenKind::letter)) { // a count and no dash: the run is one gathering
      e.count = own;
      c = d;
      return true;
    }
    if (!own.sound() || own.cycle.size() != 1) d = c;
    bool const counted = d.token.from != c.token.from;
    if (!take_dash(d)) return true;
    auto const last = take(d);
    if (!last) return true;
    if (counted) { // A⁸-E⁸, where both ends have the same count; 8-6 is alternating counts
      auto p = d;
      auto const other = take_count(p, flat_counts_);
      if (!other.sound() || !(other.cycle == own.cycle)) return true;
    }
    e.first_counted = counted;
    e.single = false;
    e.last = last;
    e.end = last.end;
    c = d;
    return join(e);
  }
  /// Takes the quotation mark after the count of 'Gg⁶'.
  constexpr bool close_quotation(TokenCursor& c, FoundElement& e) const {
    if (!e.count.found() || !c.touches(TokenKind::quote)) return e.problem = Problem::unknown_mark, false;
    e.count.end = c.token.to;
    c.take();
    return true;
  }
  /// Brings the ends of a run into one series and counts its gatherings.
  constexpr bool join(FoundElement& e) const {
    auto &a = e.first.key, &b = e.last.key;
    e.half_enclosed = a.is_letter() && b.is_letter() && a.enclosed() != b.enclosed();
    if (e.half_enclosed) {
      (a.enclosed() ? e.first : e.last).inferred = true;
      a = a.without_enclosure(), b = b.without_enclosure();
    }
    // a prefix applies to both ends; π and χ among Greek letters are letters
    if (b.raised() == 0 && a.raised() != 0) b = b.in_series(a.raised());
    if (b.duplicate() == Duplicate::none && a.duplicate() != Duplicate::none) b = b.duplicated(a.duplicate());
    if (a.beside() == Beside::greek) b = with_greek(b, a.mark() == Mark::capital);
    if (a.is_letter() && b.is_letter() && b.beside() == Beside::none && a.beside() == Beside::before)
      b = b.with_symbol(a.beside(), a.text_from, a.text_size);
    a = among(b, a);
    b = among(a, b);
    e.gatherings = run_length(a, b, alphabet_, text_).value_or(0);
    e.mixed = a.is_latin() && a.multiple > 1 && b.multiple > 1 &&
              (e.first.multiplied != e.last.multiplied || (!e.first.multiplied && e.first.capitals != e.last.capitals));
    bool const flat = e.gatherings == 0 && e.first.multiplied && a.multiple <= 9 && b.multiple == 1 && a.is_letter() &&
                      a.mark() == b.mark() && a.raised() == 0;
    if (flat) { // 2A-G is ²A-G: as 2A to G the run would go backwards
      auto const series = static_cast<int>(a.multiple);
      auto first = a;
      first.multiple = 1;
      e.gatherings = run_length(first, b, alphabet_, text_).value_or(0);
      if (e.gatherings != 0) a = first.in_series(series), b = b.in_series(series);
      e.first.flat_prefix = false;
      e.read_flat = e.gatherings != 0;
    }
    if (e.gatherings != 0) return true;
    bool const unordered = a.has_text_alone() && b.has_text_alone();
    e.problem = same_series(a, b, text_) ? Problem::run_goes_backwards
                : unordered              ? Problem::order_not_known
                                         : Problem::run_crosses_series;
    if (second_letter_is_place(e)) e.problem = Problem::second_letter_is_place, ++e.end;
    return false;
  }
  /// Adds the missing letter to the last signature of a run of double letters: in Aα-Ψ and aα-z it is written with one letter.
  [[nodiscard]] static constexpr SignatureKey with_greek(SignatureKey last, bool capital) {
    if (last.is_latin() && last.beside() == Beside::none) return last.with_greek();
    int const place = last.mark() == Mark::pi                                            ? 16
                      : last.mark() == Mark::chi                                         ? 22
                      : last.mark() == Mark::greek || last.mark() == Mark::greek_capital ? last.letter
                                                                                         : 0;
    if (place == 0 || place > Alphabet{}.size()) return last;
    return SignatureKey::of(capital ? Mark::capital : Mark::small_letter, Alphabet{}.at(place), last.multiple)
        .with_greek();
  }
  /// Returns true for Aa-Az. The first letter names the alphabet there, and the second the gathering; Aa is not 2A.
  [[nodiscard]] constexpr bool second_letter_is_place(FoundElement const& e) const {
    auto const letter = [&](std::size_t i) { return is_latin_letter(at(i)) ? small_letter(at(i)) : '\0'; };
    auto const alphabet = letter(e.from);
    return alphabet != '\0' && letter(e.from + 1) == alphabet && letter(e.last.end - 1) == alphabet &&
           letter(e.last.end) != '\0' && letter(e.last.end) != alphabet;
  }
  /// Takes a count that a blank separates from the run: D ⁸, k 16.
  constexpr void take_count_apart(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    bool const comma = p.at(TokenKind::comma);
    if (comma) p.take();
    if (p.touches(TokenKind::colon) && e.single && e.first.key.is_latin() && flat_counts_)
      return take_count_after_colon(c, e);
    if (p.at(TokenKind::open_round) && p.token.spaced) return take_count_in_parentheses(c, e);
    if (!p.at(TokenKind::figure) || (!comma && !p.token.spaced)) return;
    bool const raised = p.token.raised();
    if (raised ? p.token.style != TokenStyle::sign : !flat_counts_) return;
    auto const begin = p;
    p.token.spaced = false;
    auto count = take_count(p, !raised);
    if (!count.sound()) return;
    count.from = begin.token.from;
    auto const& t = p.token;
    bool const ends = t.is(TokenKind::end) || t.is(TokenKind::point) || t.is(TokenKind::semicolon) ||
                      t.is(TokenKind::close_round) || t.is(TokenKind::close_square) ||
                      (t.is(TokenKind::comma) && !comma);
    bool const no_series = count.cycle.term(0) >= 4 && t.spaced; // & ⁸ ꝯ⁸; ² A is the second series
    bool const belongs = raised ? ends || no_series || t.is(TokenKind::open_round)
                                : ends || (!comma && t.spaced && !t.is(TokenKind::dash) && !is_extent(begin));
    if (!belongs) return;
    e.count = count;
    e.apart = true;
    c = p;
  }
  /// Takes a count after a colon: A:8.
  constexpr void take_count_after_colon(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    p.take();
    if (!p.touches(TokenKind::figure) || p.token.style != TokenStyle::line) return;
    auto const count = take_count(p, true);
    bool const ends = p.ended() || p.token.spaced || is_separator(p.token);
    if (!count.sound() || !ends) return;
    e.count = count;
    e.apart = true;
    c = p;
  }
  /// Takes alternating counts in parentheses: A-D (8/4), A (8, 4).
  constexpr void take_count_in_parentheses(TokenCursor& c, FoundElement& e) const {
    auto p = c;
    auto const from = p.token.from;
    p.take();
    FoundCount count;
    for (;;) {
      bool const figure = p.is_flat_figure() && p.token.value > 0 && p.token.value <= thick_gathering;
      if (!figure || !count.cycle.push(static_cast<int>(p.token.value))) return;
      p.take();
      if (p.at(TokenKind::close_round)) break;
      if (!p.at(TokenKind::slash) && !p.at(TokenKind::comma)) return;
      p.take();
    }
    count.from = from;
    count.end = p.token.to;
    p.take();
    e.count = count;
    e.apart = true;
    c = p;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
