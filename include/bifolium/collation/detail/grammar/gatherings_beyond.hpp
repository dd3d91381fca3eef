// SPDX-License-Identifier: MIT
/// Finds where gatherings go on after text that is not of them: A⁴, 4 leaves, B-K⁸, 72 leaves. Catalogues state leaves,
/// pages, plates and signing after each part of a formula as well as at its end (common practice, no source). Text that
/// looks like gatherings and is not clearly such makes the whole rest doubtful, since leaves may be lost in it.
#pragma once

#include <bifolium/collation/detail/grammar/engraved_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true for a word with which an extent ends, after which gatherings may follow without a comma: 4 plates L-M⁸.
[[nodiscard]] constexpr bool ends_extent(std::string_view word) noexcept {
  return is_unit_of_leaves(word) || word == "pages" || word == "pp" || word == "p" || word == "signed" ||
         word == "sheets" || word == "sheet" || is_word_of_plates(word) || is_word_for_gatherings(word);
}

template <class Sink> class GatheringsBeyond : protected EngravedGrammar<Sink> {
protected:
  using Base = EngravedGrammar<Sink>;
  using Base::Base;
  using Base::text_, Base::at, Base::cursor, Base::word, Base::is_word, Base::after_word;

  /// Where a text between gatherings ends.
  struct TextEnd {
    std::uint32_t to{};      ///< where it ends: at a separator, or at the gatherings
    std::uint32_t doubted{}; ///< where text begins that looks like gatherings and is kept as words; 0 for none
    bool goes_on{};          ///< gatherings follow
  };
  /// Returns the end of the text that begins at the cursor with an extent.
  [[nodiscard]] constexpr TextEnd end_of_text(TokenCursor c) {
    TextEnd end{static_cast<std::uint32_t>(text_.size()), 0, false};
    Before before;
    int depth = 0;
    for (bool first = true; !c.ended(); first = false) {
      auto const t = c.token;
      if (t.is(TokenKind::point) && !t.spaced && before.is_unit()) { // 80 ll. A-B⁸
        c.take();
        continue;
      }
      if (is_separator(t)) {
        if (!before.separated || t.is(TokenKind::point)) before.end = t.is(TokenKind::point) ? t.to : t.from;
        before.separated = true;
        before.point = t.is(TokenKind::point);
        c.take();
        continue;
      }
      if (before.point && !t.spaced) before.separated = false; // p.24
      auto const w = word(c);
      bool const word_here = w.size() > 1 && is_word(t.from);
      if (first && !w.empty() && ends_extent(w)) { // pp. 1-160: what follows the unit is what it counts
        c = after_word(c);
        if (c.touches(TokenKind::point)) c.take();
        before.kind = TokenKind::letter;
        continue;
      }
      bool const may_begin = !first && depth == 0 && (before.separated || t.spaced) && !word_here;
      if (auto const found = may_begin ? looks_like(c) : Looks::no; found != Looks::no) {
        if (!follows(c, found, before)) return end.doubted = t.from, end;
        return {before.separated ? before.end : t.from, 0, true};
      }
      if (depth == 0 && !first && (before.separated || t.spaced) && joint_and_gatherings(c))
        return {before.separated ? before.end : this->before_blanks(t.from), 0, true};
      if (t.is_raised_figure() && !t.spaced && before.is_mark()) return end.doubted = before.from, end;
      depth += t.is(TokenKind::open_round) ? 1 : t.is(TokenKind::close_round) ? -1 : 0;
      bool const named = t.is(TokenKind::figure) && !t.spaced && before.kind == TokenKind::letter;
      before = {t.kind,
                t.from,
                word_here || t.is(TokenKind::letter) ? w : std::string_view{},
                0,
                false,
                false,
                before.named || named};
      if (word_here)
        c = after_word(c);
      else
        c.take();
    }
    return end;
  }
  /// Returns true if gatherings with their count, or a joint and gatherings, begin at the cursor, which is after a comma or a
  /// blank in a statement of signing.
  [[nodiscard]] constexpr bool gatherings_go_on(TokenCursor const& c) {
    return gatherings_begin(c) || joint_and_gatherings(c);
  }

private:
  [[nodiscard]] constexpr bool gatherings_begin(TokenCursor const& c) {
    if (c.at(TokenKind::letter) && word(c).size() > 1 && is_word(c.token.from)) return false;
    auto const found = looks_like(c);
    Before before;
    before.separated = true;
    return (found == Looks::raised || found == Looks::run) && follows(c, found, before);
  }
  /// Returns true if words or a sign that join two runs are at the cursor, and a run with its count after them: then L-M⁸.
  [[nodiscard]] constexpr bool joint_and_gatherings(TokenCursor const& c) {
    auto next = joins_runs(word(c)) ? after_word(c) : this->after_phrase(c);
    bool const sign = c.at(TokenKind::plus) || this->is_and_sign(c.token);
    if (sign) next.take();
    return next.token.from != c.token.from && next.token.spaced && gatherings_begin(next);
  }
  /// What text looks like: nothing; a gathering or run with a raised count; a run with another count, L-M8; a run without
  /// one, L-M; a gathering with its count on the line, L4, which may be a leaf.
  enum class Looks : std::uint8_t { no, raised, run, uncounted, single };
  /// What comes before a place in the text.
  struct Before {
    TokenKind kind{TokenKind::end};
    std::uint32_t from{};
    std::string_view word{};
    std::uint32_t end{};                // where the text before the separator ends
    bool separated{}, point{}, named{}; // named: a leaf may have been named
    [[nodiscard]] constexpr bool is_mark() const noexcept {
      return (kind >= TokenKind::letter && kind <= TokenKind::hebrew) || kind == TokenKind::symbol ||
             kind == TokenKind::close_square || kind == TokenKind::close_round;
    }
    [[nodiscard]] constexpr bool is_unit() const noexcept { return ends_extent(word); }
  };
  /// Returns true if a mark may begin with this token. Of brackets only short ones are asked, so that no text is slow.
  [[nodiscard]] constexpr bool may_begin_mark(Token const& t) const noexcept {
    if (t.is(TokenKind::open_square)) {
      for (auto i = t.to; i < t.to + 12U; ++i)
        if (at(i) == ']') return true;
      return false;
    }
    return t.kind >= TokenKind::letter && t.kind <= TokenKind::symbol;
  }
  /// Takes the run at the cursor, or the first run of a group: [L-M⁸ N⁴].
  constexpr bool element_at(TokenCursor& c, FoundElement& e) const {
    if (!this->begins_group(c, e)) return may_begin_mark(c.token) && this->take_element(c, e);
    c = cursor(e.end);
    return true;
  }
  [[nodiscard]] constexpr Looks looks_like(TokenCursor const& begin) const {
    FoundElement e;
    auto c = begin;
    if (!element_at(c, e) || e.end <= begin.token.from) return Looks::no;
    bool const number = e.first.key.mark() == Mark::number, symbol = e.first.key.mark() == Mark::symbol;
    bool const run = !e.single && e.gatherings > 1;
    if (e.count.sound()) {
      if (has_raised_count(e)) return Looks::raised;
      if (number || (symbol && run) || (e.apart && !e.count.in_words)) return Looks::no; // pp. *367-*432
      if (run) return Looks::run;
      bool const apart = c.token.spaced && !c.at(TokenKind::dash) && !is_prose(c);
      bool const ends =
          c.ended() || is_separator(c.token) || c.at(TokenKind::open_round) || c.at(TokenKind::close_square) || apart;
      return !e.count.in_words && ends ? Looks::single : Looks::no;
    }
    bool const capitals = is_capital(at(e.from)) && e.first.key.is_plain_latin() && e.last.key.is_plain_latin();
    return run && capitals && !is_roman(e) && !e.count.found() ? Looks::uncounted : Looks::no;
  }
  /// Returns true if the element has a count that is not on the line.
  [[nodiscard]] constexpr bool has_raised_count(FoundElement const& e) const noexcept {
    auto const count = at(e.count.from);
    return e.count.sound() && !e.count.in_words && !is_digit(count) && count != '(';
  }
  /// Returns true if both ends may be Roman numbers of pages: I-X.
  [[nodiscard]] constexpr bool is_roman(FoundElement const& e) const noexcept {
    constexpr std::string_view numerals{"IVXLCDM"};
    return numerals.find(at(e.from)) != numerals.npos && numerals.find(at(e.last.end - 1)) != numerals.npos;
  }
  /// Returns true if words follow, and no gathering.
  [[nodiscard]] constexpr bool is_prose(TokenCursor const& c) const {
    auto const w = word(c);
    return w.size() > 1 && is_word(c.token.from) && w != "and" && w != "with" && w != "plus";
  }
  /// Returns true if what looks like gatherings follows those before it. The letter of a single gathering must be the next
  /// one if its count is on the line: otherwise it may be a leaf.
  [[nodiscard]] constexpr bool follows(TokenCursor const& begin, Looks found, Before const& before) {
    if (!before.separated) {
      bool const ends = before.kind == TokenKind::figure || before.kind == TokenKind::close_square || before.is_unit();
      return ends && found == Looks::raised;
    }
    if (found == Looks::raised) return true;
    FoundElement e;
    auto c = begin;
    static_cast<void>(element_at(c, e));
    if (is_prose(c)) return false;
    if (found == Looks::run) return true;
    bool const next =
        e.first.key.is_plain_latin() && e.first.key.rank(this->alphabet_) == this->reached(e.first.key) + 1;
    return next && (found == Looks::uncounted || !before.named);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
