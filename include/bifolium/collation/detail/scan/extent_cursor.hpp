// SPDX-License-Identifier: MIT
/// Looks for extents in a formula: does a number of leaves or pages, or a pagination, begin here? These functions do not move
/// the cursor, apart from those that take a number.
#pragma once

#include <bifolium/collation/detail/scan/formula_cursor.hpp>
#include <bifolium/leaf/book_nouns.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ExtentCursor : protected FormulaCursor {
protected:
  using FormulaCursor::FormulaCursor;

  /// Returns true if a pagination begins: pp., ff., ll., p. or cols. before numbers.
  [[nodiscard]] constexpr bool is_pagination(TokenCursor const& unit) const noexcept {
    auto const w = word(unit);
    if (w != "pp" && w != "Pp" && w != "ff" && w != "ll" && w != "p" && w != "cc" && w != "cols") return false;
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
  /// Returns true for [12], 128 p.; xii, 128, [2] p.; or [1-4] 5-70 leaves: numbers, also Roman, and a unit at the end.
  [[nodiscard]] constexpr bool is_page_sequence(TokenCursor c) const noexcept {
    int figures = 0;
    auto last = TokenKind::end;
    for (int tokens = 0; tokens < 32; ++tokens) {
      if (auto p = c; figures > 0 && take_correction(p, 0) != 0) c = p; // 365 [i.e. 364]
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
  /// Takes the true number after one that is printed wrongly, [i.e. 184], and returns it, or `printed` if there is none.
  [[nodiscard]] constexpr std::uint32_t take_correction(TokenCursor& c, std::uint32_t printed) const noexcept {
    if (!c.at(TokenKind::open_square) || !begins(c.token.to, "i.e. ")) return printed;
    auto p = cursor(c.token.to + 5U);
    auto const truly = p.token;
    if (!p.is_flat_figure()) return printed;
    p.take();
    if (!p.touches(TokenKind::close_square)) return printed;
    p.take();
    c = p;
    return truly.value;
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
    if (number) c.take(), static_cast<void>(take_correction(c, 0));
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
      if (ends && (w == "p" || w == "pp")) return true;           // 368p.
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
};

} // namespace detail
} // namespace v0
} // namespace bifolium
