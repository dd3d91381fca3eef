// SPDX-License-Identifier: MIT
/// Finds one run in the text: a signature, a dash and a second signature if there are any, and a leaf count if there is
/// one. What the run means in the formula is not decided here, and nothing is stored. So the grammar uses the same
/// reader to read a run and to look ahead for a count that several runs share (a b⁸).
///
///   run  = signature , [ dash , signature ] , [ count ] | signature , count , dash , signature , count
///        | "(" , signature , dash , signature , ")" , count | "(" , letter , ")" , dash , signature , [ count ] ;
///   dash = "-" | "−" | blank , ( "to" | "through" ) ;
#pragma once

#include <bifolium/collation/detail/scan/count_beside.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ElementReader : protected CountBeside {
protected:
  using CountBeside::CountBeside;

  /// Takes the dash of a run, or the word "to". Returns true if it was taken.
  constexpr bool take_dash(TokenCursor& c) const noexcept {
    if (c.at(TokenKind::dash)) {
      c.take();
      if (c.touches(TokenKind::dash)) c.take(); // A--B⁸
      return true;
    }
    if (!c.token.spaced || c.token.value != 't') return false;
    auto const w = word(c);
    if ((w != "to" && w != "through") || !is_blank_at(static_cast<std::uint32_t>(c.token.from + w.size())))
      return false;
    c = after_word(c);
    return true;
  }
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
    if (e.count.found()) e.end = e.said.found() ? e.said.end : e.count.end;
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

  /// Takes the first end of (A)-K⁸, whose last end has no parentheses. Returns false and takes nothing if this is no
  /// such end.
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
    // A−K⁸: between two marks the sign of a loss is a dash; after a count it takes a leaf away
    bool const minus = !counted && d.touches(TokenKind::minus) && d.token.style == TokenStyle::line;
    if (minus)
      d.take();
    else if (!take_dash(d))
      return true;
    if (minus && d.token.spaced) return true;
    auto const last = take(d);
    if (!last) return true;
    if (counted) { // A⁸-E⁸, where both ends have the same count; 8-6 is alternating counts
      auto p = d;
      auto const other = take_count(p, flat_counts_);
      if (!other.sound() || !(other.cycle == own.cycle)) return true;
      bool const apart = is_blank_at(own.end);
      auto const name = [&](FoundSignature const& of) { return text_.substr(of.from, of.end - of.from); };
      if (name(last) == name(e.first) && other.flat && apart && !is_blank_at(last.from - 1U))
        return true; // L⁴ -L4: the last leaf is gone
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
    // a prefix is written once and applies to both ends; in a run of Greek letters π and χ are letters, and not the
    // marks of unsigned gatherings
    if (!b.raised() && a.raised()) b = b.in_series(*a.raised());
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
                      a.mark() == b.mark() && !a.raised();
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
  /// Returns the last signature of a run of double letters (Aα to Zψ) with both letters. It may be written with one of
  /// them: Aα-Ψ, aα-z.
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
  /// Returns true for Aa-Az. In such a book the first letter is that of an alphabet, and the second that of a gathering
  /// in it; elsewhere Aa means 2A.
  [[nodiscard]] constexpr bool second_letter_is_place(FoundElement const& e) const {
    auto const letter = [&](std::size_t i) { return is_latin_letter(at(i)) ? small_letter(at(i)) : '\0'; };
    auto const alphabet = letter(e.from);
    return alphabet != '\0' && letter(e.from + 1) == alphabet && letter(e.last.end - 1) == alphabet &&
           letter(e.last.end) != '\0' && letter(e.last.end) != alphabet;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
