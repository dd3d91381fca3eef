// SPDX-License-Identifier: MIT
/// Asks of each item of a text after gatherings whether it says something of their leaves. 80 leaves, C omitted; 160 pp.,
/// lacking K8; 80 leaves (with 2 leaves more): such words are stored and not counted, so that they must be told. Most items
/// say nothing of leaves: they are about pages, plates or the signing.
#pragma once

#include <bifolium/collation/detail/grammar/remark_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words of items about pages, plates, signing or type, in which a letter names no gathering and a loss is one of numbers:
/// 160 pp., pages 65-66 omitted (common practice, no source).
inline constexpr char const* words_of_other_items[]{
    "p",          "pp",        "page",         "pages",     "pag",      "paged",      "pagination", "paginated",
    "foliation",  "foliated",  "numbering",    "numbered",  "numb",     "number",     "numbers",    "misnumbered",
    "type",       "types",     "line",         "lines",     "col",      "cols",       "columns",    "table",
    "tables",     "front",     "frontispiece", "folding",   "engraved", "signed",     "missigned",  "signing",
    "missigning", "catchword", "catchwords",   "misprints", "misprint", "misprinted", "misprinting"};

template <class Sink> class TextItems : protected RemarkGrammar<Sink> {
protected:
  using Base = RemarkGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::text_, Base::at, Base::cursor, Base::word;

  /// Warns of each item from byte `from` to `to` that says something of the leaves. In a statement of `signing` a leaf that is
  /// named is one that is signed or not.
  constexpr void check_items(std::uint32_t from, std::uint32_t to, bool signing) {
    if (!signing && text_.substr(from, to - from).find_first_of(",;(.") == std::string_view::npos && is_short(from, to))
      return;
    bool number = false; // the item before is only a number, or that of a part: [2], 80 leaves; 2 leaves, 80 leaves
    bool counted = true; // a number with which this item begins is compared elsewhere
    auto dollar = to;    // where a statement of signing begins among the items
    for (auto c = cursor(from, to); !c.ended();) {
      auto const begin = c;
      while (!c.ended() && !ends_item(c)) c.take();
      auto const end = this->before_blanks(c.token.from);
      if (begin.at(TokenKind::dollar)) dollar = begin.token.from;
      bool const of_signing = signing || dollar < end;
      if (end > begin.token.from && !(signing && begin.token.from == from)) {
        auto const said = of_signing ? begin : after_extent(begin, end);
        if (said.token.from < end && item_says(said.token.from, end, of_signing))
          warn(Problem::text_not_read, said.token.from, end);
        else if (!(counted && begins_with_number(begin)) && !number && !of_signing)
          this->check_numbers(begin, end);
      }
      number = is_number(begin, end) || is_part(begin, end);
      for (counted = false; !c.ended() && ends_item(c); c.take()) counted = c.at(TokenKind::semicolon);
      if (counted) dollar = to;
    }
  }

private:
  /// Returns true for a text of a number and a unit: 80 leaves.
  [[nodiscard]] constexpr bool is_short(std::uint32_t from, std::uint32_t to) const noexcept {
    int blanks = 0;
    for (auto i = from; i < to; ++i) blanks += at(i) == ' ' ? 1 : 0;
    return blanks < 2;
  }
  [[nodiscard]] constexpr bool ends_item(TokenCursor const& c) const noexcept {
    auto const& t = c.token;
    if (t.is(TokenKind::comma) || t.is(TokenKind::semicolon) || t.is(TokenKind::open_round) ||
        t.is(TokenKind::close_round))
      return true;
    auto const next = c.ahead();
    return t.is(TokenKind::point) && next.spaced && is_capital(at(next.from)); // 80 leaves. C omitted
  }
  /// Returns true for numbers without a unit: [2]; xii; 1-24.
  [[nodiscard]] constexpr bool is_number(TokenCursor c, std::uint32_t to) const noexcept {
    for (; c.token.from < to; c.take())
      if (c.at(TokenKind::letter) && !is_roman_numeral(word_at(text_.substr(0, to), c.token.from))) return false;
    return true;
  }
  [[nodiscard]] static constexpr bool begins_with_number(TokenCursor const& c) noexcept {
    return c.is_flat_figure() || c.at(TokenKind::open_square);
  }
  /// Returns true for a number of leaves that are a part of those of the formula: 2 leaves.
  [[nodiscard]] constexpr bool is_part(TokenCursor const& begin, std::uint32_t to) const noexcept {
    auto const figure = begin.at(TokenKind::open_square) ? begin.ahead() : begin.token;
    return figure.is(TokenKind::figure) && figure.value < this->leaves_ && after_extent(begin, to).token.from >= to;
  }
  /// Returns the cursor after a number and its unit, if the item begins with these: 80 leaves + errata.
  [[nodiscard]] constexpr TokenCursor after_extent(TokenCursor const& begin, std::uint32_t to) const noexcept {
    auto c = begin;
    while (c.at(TokenKind::open_square) || c.at(TokenKind::close_square) || c.is_flat_figure()) c.take();
    auto const w = word(c);
    if (c.token.from == begin.token.from || !(is_unit_of_leaves(w) || w == "p" || w == "pp" || w == "pages"))
      return begin;
    c = cursor(c.token.from + w.size(), to);
    if (c.touches(TokenKind::point)) c.take();
    return c;
  }
  /// What the words of an item are.
  struct Item {
    bool leaf{};      ///< it names a leaf of the book
    bool gathering{}; ///< it names a gathering
    bool strange{};   ///< it names a leaf that the book does not have
    bool other{};     ///< it is about something else
    bool blank{};
    bool lost{};    ///< a word for leaves that are not there
    bool of_lost{}; ///< a word for what can be lost: leaf, last
  };
  [[nodiscard]] constexpr Item words_of(std::uint32_t from, std::uint32_t to) {
    Item found;
    auto const words = text_.substr(0, to);
    for (auto c = cursor(from, to); !c.ended();) {
      auto const w = c.at(TokenKind::letter) ? word_at(words, c.token.from) : std::string_view{};
      if (w.empty()) { // also at a letter in a tag
        c.take();
        continue;
      }
      auto const next = cursor(c.token.from + w.size(), to);
      auto const name = this->name_at(c.token.from, to);
      if (name.found && name.gathering_named && !this->find(name.key)) found.strange = found.strange || name.leaf > 0;
      if (name.found && name.gathering_named && this->find(name.key)) {
        found.leaf = found.leaf || !name.whole;
        found.gathering = found.gathering || (name.whole && names_gathering(c, w, next));
        if (!name.whole || w.size() < 2) {
          c = cursor(name.end, to);
          continue;
        }
      }
      found.other = found.other || is_word_of_plates(w) || is_one_of(w, words_of_other_items);
      found.blank = found.blank || is_blank_word(w);
      found.lost = found.lost || absence_word(w).says != Absence::none;
      found.of_lost = found.of_lost || this->is_unit(w) || equal_in_any_case(w, "last") ||
                      equal_in_any_case(w, "first") || equal_in_any_case(w, "final");
      c = next;
    }
    return found;
  }
  /// Returns true if a letter is the name of a gathering. A small one may be a word or a Roman number, and one before a point
  /// an abbreviation.
  [[nodiscard]] constexpr bool names_gathering(TokenCursor const& c, std::string_view w,
                                               TokenCursor const& next) const noexcept {
    auto const letter = at(c.token.from);
    if (next.touches(TokenKind::point) && !next.ahead().is(TokenKind::end)) return false;
    bool const article =
        (letter == 'A' || letter == 'I') && next.at(TokenKind::letter) && is_small(at(next.token.from));
    if (is_capital(letter)) return !article || absence_word(word(next)).after || is_word_of_omission(word(next));
    return w.size() == 1 && std::string_view{"bghknqrstwz"}.find(letter) != std::string_view::npos;
  }
  [[nodiscard]] constexpr bool item_says(std::uint32_t from, std::uint32_t to, bool signing) {
    auto const item = words_of(from, to);
    if (item.other) return false;
    if (this->adds_leaves(from, to)) return true;
    auto const changes = [&] { return says_change(text_.substr(from, to - from)) || this->omits_gathering(from, to); };
    if (signing) return item.gathering && !item.leaf && changes();
    if (item.lost && (item.of_lost || item.blank)) return true;
    if (!item.leaf && !item.gathering) return item.strange && changes();
    return changes() || (!item.blank && (this->says_of_gatherings(from, to, false) || this->says_of_leaves(from, to)));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
