// SPDX-License-Identifier: MIT
/// Look-ahead questions of the grammar: are these letters a word or several signatures; does an extent begin here; are
/// there several gatherings in these brackets; where does this parenthesis close? These functions do not move the
/// cursor.
#pragma once

#include <bifolium/collation/detail/scan/count_reader.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/leaf/named_leaves.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

[[nodiscard]] constexpr bool is_loss(Token const& t) noexcept {
  return t.is(TokenKind::dash) || t.is(TokenKind::minus) || t.is(TokenKind::plus_minus);
}
/// Returns true for a comma, semicolon or full point between the parts of a formula.
[[nodiscard]] constexpr bool is_separator(Token const& t) noexcept {
  return t.is(TokenKind::comma) || t.is(TokenKind::semicolon) ||
         (t.is(TokenKind::point) && t.value == '.'); // and not ·
}
/// Words with which catalogues count the leaves of a book: 80 leaves, 80 ll., 80 f., 80 Bl., 80 cc. (common practice, no
/// source).
inline constexpr std::string_view catalogued_units[]{
    "leaves"sv, "leaf"sv, "ll"sv,   "l"sv,      "ff"sv,        "f"sv,     "Bl"sv,    "Bll"sv,
    "cc"sv,     "lvs"sv,  "fols"sv, "folios"sv, "feuillets"sv, "carte"sv, "hojas"sv, "Blatt"sv};
/// Returns true for one of these words.
[[nodiscard]] constexpr bool is_unit_of_leaves(std::string_view word) noexcept {
  for (auto const one : catalogued_units)
    if (word == one) return true;
  return false;
}

/// Returns true for a word that joins two runs: and, und, et (common practice, no source). The Italian and Spanish letters e
/// and y may be signatures, and are none of these.
[[nodiscard]] constexpr bool joins_runs(std::string_view word) noexcept {
  for (std::string_view const one : {"and", "und", "et", "ed", "en", "og", "och"})
    if (word == one) return true;
  return false;
}

/// Looks at the text of a formula. It uses the dialect, because letters side by side are signatures if the alphabet has
/// them in this order.
class FormulaCursor : protected CountReader {
  /// Returns true if two letters show that the letters are a word: the second is not the same, nor A, nor the next in the
  /// alphabet, where J, U and W may be missing. This is true of most words. P and C may begin pi and chi.
  [[nodiscard]] static constexpr bool is_word_at_once(char a, char b) noexcept {
    auto const first = small_letter(a), second = small_letter(b);
    if (!is_latin_letter(a) || !is_latin_letter(b) || first == second || first == 'p' || first == 'c') return false;
    return second != 'a' && (is_small(a) != is_small(b) || second < first || second > first + 3);
  }

protected:
  Alphabet alphabet_;
  bool flat_counts_;

  constexpr FormulaCursor(std::string_view text, Dialect dialect) noexcept
      : CountReader{text, dialect.letters}, alphabet_{dialect.letters}, flat_counts_{dialect.flat_counts} {}

  [[nodiscard]] constexpr TokenCursor cursor(std::size_t at, std::size_t end = std::string_view::npos) const noexcept {
    return TokenCursor{text_, at < text_.size() ? at : text_.size(), end};
  }
  [[nodiscard]] constexpr std::string_view word(TokenCursor const& c) const noexcept {
    return c.at(TokenKind::letter) ? word_at(text_, c.token.from) : std::string_view{};
  }
  [[nodiscard]] constexpr bool begins(std::uint32_t i, std::string_view words) const noexcept {
    return text_.substr(i < text_.size() ? i : text_.size(), words.size()) == words;
  }
  /// Returns the position after the blanks at byte `i`.
  [[nodiscard]] constexpr std::uint32_t after_blanks(std::uint32_t i) const noexcept {
    return static_cast<std::uint32_t>(bifolium::after_blanks(text_, i));
  }
  /// Returns the position at which the blanks before byte `i` begin.
  [[nodiscard]] constexpr std::uint32_t before_blanks(std::uint32_t i) const noexcept {
    return static_cast<std::uint32_t>(bifolium::before_blanks(text_, i));
  }
  /// Returns true if a blank is at byte `i`.
  [[nodiscard]] constexpr bool is_blank_at(std::uint32_t i) const noexcept { return blank_at(text_, i) != 0; }
  /// Returns the cursor after the word at its position.
  [[nodiscard]] constexpr TokenCursor after_word(TokenCursor const& c) const noexcept {
    return cursor(c.token.from + word(c).size());
  }
  /// Returns true if the letters at byte `i` are a word and not signatures side by side (ab, lm, zaa, zA).
  [[nodiscard]] constexpr bool is_word(std::uint32_t i) const noexcept {
    if (is_word_at_once(at(i), at(i + 1U))) return true;
    auto const letters_together = word_at(text_, i);
    if (letters_together.size() < 2) return false;
    TokenCursor c{text_, i, i + letters_together.size()};
    SignatureReader const reader{text_.substr(0, i + letters_together.size()), letters_};
    auto one = reader.take(c);
    if (!one) return true;
    if (one.key.mark() == Mark::pi || one.key.mark() == Mark::chi) return false;
    while (c.at(TokenKind::letter)) {
      auto const next = reader.letters(c);
      auto const rank = next.key.rank(alphabet_);
      bool const follows = one.key.mark() == next.key.mark() ? rank == one.key.rank(alphabet_) + 1 : rank == 1;
      if (!follows) return true;
      one = next;
    }
    return false;
  }
  /// Returns true if a pagination begins: pp., ff., ll., p. or cols. before numbers.
  [[nodiscard]] constexpr bool is_pagination(TokenCursor const& unit) const noexcept {
    auto const w = word(unit);
    if (w != "pp" && w != "Pp" && w != "ff" && w != "ll" && w != "p" && w != "cols") return false;
    auto c = after_word(unit);
    if (!c.touches(TokenKind::point)) return false;
    c.take();
    if (c.at(TokenKind::open_square) || c.is_flat_figure()) return true;
    if (c.at(TokenKind::symbol)) { // pp. *367-*432
      while (c.at(TokenKind::symbol)) c.take();
      return c.touches(TokenKind::figure) && c.is_flat_figure();
    }
    auto const numeral = word(c);
    return is_roman_numeral(numeral) && is_small(numeral[0]) && !goes_on_after_tag(c);
  }
  /// Returns true if letters follow the word at the cursor after a tag: p. xi<sup>th</sup>. Words are stored without
  /// tags, so that these letters belong to the word.
  [[nodiscard]] constexpr bool goes_on_after_tag(TokenCursor const& c) const noexcept {
    return after_word(c).touches(TokenKind::letter);
  }
  /// Returns true for [12], 128 p.; xii, 128, [2] p.; or [1-4] 5-70 leaves: numbers, also Roman, and a unit at the end.
  [[nodiscard]] constexpr bool is_page_sequence(TokenCursor c) const noexcept {
    int figures = 0;
    auto last = TokenKind::end;
    for (int tokens = 0; tokens < 32; ++tokens) {
      auto const& t = c.token;
      auto const w = word(c);
      if (t.raised() || t.is(TokenKind::end)) return false;
      if (t.is(TokenKind::letter)) {
        if (figures > 0 && !t.spaced && last == TokenKind::figure) return false; // 2i8 is a gathering
        bool const unit = w == "p" || w == "pp" || w == "pages" || (is_unit_of_leaves(w) && w != "leaf" && w != "Bl");
        if (!unit && (w.empty() || !is_small(w[0]) || !is_roman_numeral(w))) return false;
        if (goes_on_after_tag(c)) return false;
        if (unit) return figures > 1 && !is_digit(at(t.from + w.size()));
        last = TokenKind::letter;
        c = after_word(c);
        ++figures;
        continue;
      }
      bool const mark = t.is(TokenKind::open_square) || t.is(TokenKind::close_square) || t.is(TokenKind::comma) ||
                        t.is(TokenKind::dash) || t.is(TokenKind::figure);
      if (!mark) return false;
      figures += t.is(TokenKind::figure) ? 1 : 0;
      last = t.kind;
      c.take();
    }
    return false;
  }
  /// Returns true if an extent without a number before it may begin with this letter: with a unit of pages or leaves, or
  /// with a Roman numeral.
  [[nodiscard]] static constexpr bool may_begin_extent(char letter) noexcept {
    return letter == 'P' || std::string_view{"pflcivxdmj"}.find(letter) != std::string_view::npos;
  }
  /// Takes the fraction after a number of sheets, 10½ or 10 1/2. Returns its quarters, or 0 if there is none.
  [[nodiscard]] static constexpr int take_fraction(TokenCursor& c) noexcept {
    if (c.at(TokenKind::symbol) || c.at(TokenKind::other)) {
      auto const sign = c.token.value; // ¼, ½, ¾
      if (sign < 0xBC || sign > 0xBE) return 0;
      c.take();
      return static_cast<int>(sign - 0xBBU);
    }
    if (!c.is_flat_figure() || !c.token.spaced) return 0;
    auto p = c;
    auto const above = static_cast<int>(p.token.value < 4 ? p.token.value : 0);
    p.take();
    if (!p.touches(TokenKind::slash)) return 0;
    p.take();
    auto const below = p.token.value;
    if (!p.touches(TokenKind::figure) || (below != 2 && below != 4)) return 0;
    p.take();
    c = p;
    return below == 2 ? 2 * above : above;
  }
  /// Returns true for a number of leaves, pages or plates, or a pagination: 50 Bl., [404] leaves, pp. [4] 1-234, + 4
  /// plates.
  [[nodiscard]] constexpr bool is_extent(TokenCursor const& begin) const noexcept {
    auto const& t = begin.token;
    bool const plus = t.is(TokenKind::plus);
    if (t.is(TokenKind::open_square) && is_capital(at(t.to))) return false; // [A]
    if (t.is(TokenKind::letter) && !may_begin_extent(static_cast<char>(t.value))) return false;
    auto c = begin;
    if (plus) c.take();
    if (plus && c.at(TokenKind::open_square) && is_capital(at(c.token.to))) return false; // + [A]
    if (is_pagination(c) || (!plus && is_page_sequence(c))) return true;
    bool const bracket = c.at(TokenKind::open_square);
    if (bracket) c.take();
    bool const number = c.is_flat_figure();
    if (number) c.take();
    if (number && take_fraction(c) != 0) return word(c) == "sheets" || word(c) == "sheet";
    if (bracket) {
      if (!number) return false;
      if (auto const end = after_word(c); c.at(TokenKind::letter) && end.at(TokenKind::close_square)) // [24 leaves]
        return word(c) == "leaves" || word(c) == "ll";
      if (!c.touches(TokenKind::close_square)) return false;
      c.take();
    }
    if (!c.at(TokenKind::letter)) return false;
    auto const w = word(c);
    auto const end = static_cast<std::uint32_t>(c.token.from + w.size());
    auto const after = at(end);
    if (number && !bracket && !c.token.spaced) { // 24ff.
      bool const ends =
          after == '\0' || (after == '.' && at(end + 1) == '\0'); // and no letter is left to be a signature
      return (is_unit_of_leaves(w) && (ends || w.size() > 3)) ||
             ((w == "ff" || w == "ll" || w == "pp") && after_word(c).touches(TokenKind::point) &&
              !after_word(c).ahead().raised());
    }
    if (w == "p" || w == "pp" || (is_unit_of_leaves(w) && w.size() < 3)) {
      bool const open_end = after == '\0' || ((w == "p" || w == "Bl") && is_blank_at(end));
      if (after == '.' || open_end) return number;
    }
    return (number || plus) && is_word(c.token.from);
  }
  /// Returns the position of the bracket that closes the square bracket at this byte, with others inside it:
  /// [$3 (−[par.]2) signed]. Returns 0 if there is none before `end`.
  [[nodiscard]] constexpr std::uint32_t bracket_end(std::uint32_t i,
                                                    std::size_t end = std::string_view::npos) const noexcept {
    int open = 0;
    for (; i < text_.size() && i < end; ++i) {
      open += at(i) == '[' ? 1 : at(i) == ']' ? -1 : 0;
      if (open == 0) return i;
    }
    return 0;
  }
  /// Returns true if the brackets at the cursor contain several gatherings, or one with its count, and not a single
  /// mark.
  [[nodiscard]] constexpr bool is_group(TokenCursor const& c) const {
    auto const close = closing_square(c.token.to);
    if (close == 0) return true;
    CountReader const inner{text_.substr(0, close), letters_};
    auto const in = cursor(c.token.to, close);
    auto const first = in.token;
    auto p = in;
    auto const mark = inner.take(p);
    if (mark && p.ended()) {
      return mark.key.mark() == Mark::printed && // ['gg3.4'] has its count
             named_leaves(text_.substr(mark.key.text_from, mark.key.text_size)).has_value();
    }
    if (mark && !first.is(TokenKind::letter)) {
      auto q = p;
      if (q.touches(TokenKind::dash)) {
        q.take();
        if (inner.take(q)) return true; // [1-9¹⁰ 10¹²], [π-σ²]
      }
      if (inner.take_count(p, true, true).found()) return true;
    }
    return looks_like_group(in, close);
  }
  [[nodiscard]] constexpr bool looks_like_group(TokenCursor const& in, std::uint32_t close) const {
    bool words = false;
    auto const first = in.token;
    Token previous{};
    for (auto q = in; !q.ended(); previous = q.token, q.take()) {
      if (q.token.raised() || q.at(TokenKind::open_round) || q.at(TokenKind::semicolon)) return true;
      if (q.at(TokenKind::letter) && (!previous.is(TokenKind::letter) || q.token.spaced))
        words = words || is_word(q.token.from);
      if (q.touches(TokenKind::figure) && previous.is(TokenKind::letter)) return true;
    }
    return !words && first.is(TokenKind::letter) && !first.spaced && at(close - 1) != '.';
  }
  /// Returns true if the mark )( is directly after the sign of a change: (-)(4).
  [[nodiscard]] constexpr bool is_cross_in_change(TokenCursor const& c, Token const& before) const noexcept {
    return c.touches(TokenKind::close_round) && at(c.token.to) == '(' && is_digit(at(c.token.to + 1)) &&
           (is_loss(before) || before.is(TokenKind::plus) || before.is(TokenKind::equals));
  }
  /// Returns the position of the parenthesis that closes the one at the cursor, or 0 if there is none.
  [[nodiscard]] constexpr std::uint32_t closing_round(TokenCursor const& round) const noexcept {
    auto i = round.token.to; // most parentheses have no other in them, nor markup, and )( does not end them
    while (i < text_.size() && text_[i] != '(' && text_[i] != ')' && text_[i] != '<') ++i;
    if (at(i) == ')' && at(i + 1) != '(') return i;
    int open = 0;
    auto c = round;
    for (Token before{}; !c.ended(); before = c.token, c.take()) {
      if (open > 0 && is_cross_in_change(c, before)) {
        c.take();
        continue;
      }
      if (c.at(TokenKind::open_round)) ++open;
      if (c.at(TokenKind::close_round) && --open == 0) return c.token.from;
    }
    return 0;
  }
};

/// Asks of words whether they can be taken for gatherings.
class Prose : FormulaCursor {
public:
  constexpr Prose(std::string_view words, Dialect dialect) noexcept : FormulaCursor{words, dialect} {}
  /// Returns true if a word is at the beginning that is neither several signatures nor a name with a count.
  [[nodiscard]] constexpr bool begins() const {
    auto c = cursor(word_at(text_, 0).size());
    return is_word(0) && !take_count(c, flat_counts_).found();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
