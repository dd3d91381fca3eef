// SPDX-License-Identifier: MIT
/// Compares the numbers that a text states beside its gatherings, 80 leaves, 10 quires, 10½ sheets, with what the formula has.
/// Cataloguers count the leaves of the book in their hands, so such a number is the best test that the formula was copied
/// without a slip. It may be that of the whole formula or of the part since the number before it; in a parenthesis, (12
/// sheets), also that of the run before it.
#pragma once

#include <bifolium/collation/detail/grammar/gatherings_beyond.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words of a remark that do not stop a number of sheets or gatherings from being that of the book: printed on 12 sheets of
/// paper (common practice, no source).
inline constexpr char const* words_of_totals[]{"paper", "printed"};

/// Words before a total (common practice, no source).
inline constexpr char const* words_before_total[]{"in",       "all",    "total",      "of",         "totalling",
                                                  "together", "making", "comprising", "containing", "consisting",
                                                  "i",        "e",      "viz",        "altogether", "or"};

template <class Sink> class StatedNumbers : protected GatheringsBeyond<Sink> {
protected:
  using Base = GatheringsBeyond<Sink>;
  using Base::Base;
  using Base::warn, Base::begins, Base::word, Base::after_word, Base::last_, Base::leaves_, Base::leaves_at_extent_;

  /// Warns if a total in parentheses, (90 leaves), (12 sheets) or (in 12 quires), differs from the formula.
  constexpr void check_total(TokenCursor const& c, std::uint32_t from, std::uint32_t to) {
    check_total_of_leaves(c, from, to);
    for (auto item = c; !item.ended();) check_pieces(item, to);
  }
  /// Warns if a stated number of leaves, 90 leaves or [90] ll., is neither that of the formula nor that of the gatherings
  /// since the extent before it. Returns where the text begins that is kept: a number for a part of the formula agrees with
  /// it and is not a statement about the book.
  constexpr std::uint32_t check_stated(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    while (takes_number_of_pieces(c) && c.at(TokenKind::comma)) c.take(); // 10 gatherings, 80 leaves
    if (c.token.from != from) return check_leaves(c, c.token.from, end), from;
    return check_leaves(c, from, end);
  }
  /// Warns if a number of leaves, sheets or gatherings from the cursor to byte `to`, beside another statement, is not that of
  /// the formula: 160 pages, 82 leaves; 80 leaves, in 11 quires.
  constexpr void check_numbers(TokenCursor c, std::uint32_t to) {
    check_total_among(c, to);
    auto item = this->cursor(c.token.from, to);
    check_pieces(item, to);
  }
  /// Warns if a total that stands before gatherings is not that of the whole formula either.
  constexpr void check_total_ahead() {
    if (total_ahead_ != 0 && total_ahead_ != leaves_) warn(Problem::total_contradicts, ahead_from_, ahead_to_, leaves_);
    total_ahead_ = 0;
  }
  /// Remembers how many leaves and gatherings there are where a number is stated and gatherings follow.
  constexpr void pass_extent() noexcept {
    leaves_at_extent_ = leaves_, gatherings_at_extent_ = this->gatherings_ + this->gatherings_inserted_;
  }

private:
  std::int64_t gatherings_at_extent_{0}; // the same as leaves_at_extent_, of gatherings
  std::int64_t total_ahead_{0};          // a total before gatherings that it may count; 0 for none
  std::uint32_t ahead_from_{0}, ahead_to_{0};
  std::uint32_t told_at_{0}; // where the last number is that was told; 0 for none

  /// Warns of a number once, also if it is looked at twice.
  constexpr void tell(Problem problem, std::uint32_t from, std::uint32_t to, std::int64_t limit) {
    if (from > told_at_) warn(problem, from, to, limit), told_at_ = from;
  }

  /// Warns of a total of leaves among other statements: 82 leaves, in all 82 leaves. A small number is not a total.
  constexpr void check_total_among(TokenCursor c, std::uint32_t to) {
    auto const from = c.token.from;
    skip_words_before_total(c);
    auto const stated = take_number_of_leaves(c);
    if (stated * 8 < leaves_ || (c.token.from < to && begins(c.token.from, "of"))) return;
    if (stated != leaves_ && stated != leaves_ - leaves_at_extent_) tell(Problem::total_contradicts, from, to, leaves_);
  }
  /// Takes the words of "in all 82 leaves", "making 82 leaves", "= 82 leaves".
  constexpr void skip_words_before_total(TokenCursor& c) const {
    for (;;) {
      if (auto const w = word(c); !w.empty() && is_one_of(w, words_before_total))
        c = after_word(c);
      else if (c.at(TokenKind::equals) || c.at(TokenKind::colon) || c.at(TokenKind::point))
        c.take();
      else
        return;
    }
  }
  constexpr void check_total_of_leaves(TokenCursor c, std::uint32_t from, std::uint32_t to) {
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
  /// A number of sheets or gatherings in words: 12 sheets, twelve half-sheets, 12 and a half sheets.
  struct Pieces {
    std::int64_t number{-1}; ///< -1: none came
    int quarters{0};
    bool half{}; ///< half-sheets
    std::uint32_t from{}, to{};
    bool gatherings{}, sheets{}; ///< the unit, once it came
    bool remark{};               ///< a remark on some of them: 2 sheets unsigned
  };
  /// Reads words up to the next comma or semicolon, and warns if they state a number of sheets or gatherings that is not that
  /// of the formula. A remark on so many of them states none.
  constexpr void check_pieces(TokenCursor& c, std::uint32_t to) {
    Pieces p;
    bool article = false;
    while (!c.ended() && !c.at(TokenKind::comma) && !c.at(TokenKind::semicolon)) {
      bool const stated = p.gatherings || p.sheets;
      auto const w = word(c);
      if (w.empty()) {
        auto const before = this->at(c.token.from - 1); // the 3 of C3 is not a number
        bool const apart = c.token.spaced || !(is_latin_letter(before) || static_cast<unsigned char>(before) >= 0x80);
        bool const number = c.is_flat_figure() && apart && !stated;
        if (number) p.number = c.token.value, p.quarters = 0, p.half = false, p.from = c.token.from;
        c.take();
        if (number) p.quarters = this->take_fraction(c);
        continue;
      }
      auto const number = number_of_word(w);
      if (number && !stated) p.number = *number, p.quarters = 0, p.half = false, p.from = c.token.from;
      auto const end = static_cast<std::uint32_t>(c.token.from + w.size());
      if (!number && p.number >= 0 && !stated) {
        bool const sheets = equal_in_any_case(w, "sheets") || equal_in_any_case(w, "sheet");
        if (equal_in_any_case(w, "half"))
          article ? p.quarters = 2 : p.half = true;
        else if (p.sheets = sheets; sheets || is_word_for_gatherings(w))
          p.gatherings = !sheets, p.to = end;
        else if (!is_harmless(w) && !is_joining(w) && !equal_in_any_case(w, "full"))
          p.number = -1;
      } else if (is_harmless(w) && !is_one_of(w, words_of_totals)) {
        p.remark = true;
      }
      article = equal_in_any_case(w, "a");
      c = this->cursor(end, to);
    }
    if (!c.ended()) c.take();
    if (p.remark) return;
    if (p.sheets) check_sheets_of(p);
    if (p.gatherings && p.number != last_.gatherings) check_gatherings(p.number, p.from, p.to);
  }
  /// Warns if so many sheets are neither those of the formula, nor of the run before the words, nor of each of its gatherings.
  constexpr void check_sheets_of(Pieces const& p) {
    auto const quarters = (4 * p.number + p.quarters) / (p.half ? 2 : 1);
    if (p.number > 1'000'000 || !sheets_differ(quarters, last_.leaves.total(last_.gatherings))) return;
    for (std::size_t i = 0; i < last_.leaves.size(); ++i)
      if (!sheets_differ(quarters, last_.leaves.term(i))) return;
    check_sheets(quarters / 4, static_cast<int>(quarters % 4), p.from, p.to);
  }
  /// Warns if a stated number of gatherings, 11 gatherings or 11 quires, is not that of the formula. Returns false if the
  /// word is none for gatherings.
  constexpr bool check_gatherings(std::int64_t stated, std::string_view unit, std::uint32_t from, std::uint32_t to) {
    return is_word_for_gatherings(unit) && (check_gatherings(stated, from, to), true);
  }
  constexpr void check_gatherings(std::int64_t stated, std::uint32_t from, std::uint32_t to) {
    auto const all = this->gatherings_ + this->gatherings_inserted_;
    bool const agrees = stated == this->gatherings_ || stated == all || stated == all - gatherings_at_extent_;
    if (!agrees) tell(Problem::gatherings_contradict, from, to, all);
  }
  /// Warns if a stated number of sheets, 11 sheets or 10½ sheets, is not what the leaves make in the stated format. Where
  /// leaves were cut out or put in, less than a sheet is not a contradiction: they may be printed with others.
  constexpr void check_sheets(std::int64_t stated, int quarters, std::uint32_t from, std::uint32_t to) {
    if (this->leaves_to_sheet_ == 0 || stated > 1'000'000 || leaves_ > 100'000'000) return;
    auto const all = stated * 4 + quarters;
    if (sheets_differ(all, leaves_) && sheets_differ(all, leaves_ - leaves_at_extent_))
      tell(Problem::sheets_contradict, from, to, leaves_);
  }
  [[nodiscard]] constexpr bool sheets_differ(std::int64_t quarters, std::int64_t leaves) const noexcept {
    auto const difference = quarters * this->leaves_to_sheet_ - 4 * leaves;
    std::int64_t const least = this->has_changes() ? 4 * std::int64_t{this->leaves_to_sheet_} : 1;
    return difference >= least || difference <= -least;
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
  /// Takes [80] leaves, 80 unsigned ll., 80 numb. leaves. Returns the number, or -1 if there is none.
  [[nodiscard]] constexpr std::int64_t take_number_of_leaves(TokenCursor& c) const {
    auto p = c;
    if (p.at(TokenKind::open_square)) p.take();
    if (!p.is_flat_figure()) return -1;
    auto const printed = p.token.value;
    p.take();
    if (p.at(TokenKind::close_square)) p.take();
    std::int64_t const stated = this->take_correction(p, printed); // 192 [i.e. 184] leaves
    static_cast<void>(this->take_adjectives(p));
    if (auto const w = word(p); w == "numbered" || w == "numb" || w == "foliated") p = after_word(p);
    if (p.touches(TokenKind::point)) p.take();
    if (!is_unit_of_leaves(word(p))) return -1;
    c = after_word(p);
    return stated;
  }
  constexpr std::uint32_t check_leaves(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    auto const stated = take_number_of_leaves(c);
    if (stated < 0) return from;
    auto const of = c;
    bool const parted = of.token.spaced && begins(of.token.from, "of");
    bool const of_plates = parted && is_word_of_plates(word(this->after_word(of)));
    if (of_plates) return from;
    bool const of_formula = stated == leaves_, of_part = stated == leaves_ - leaves_at_extent_;
    bool const of_run = end.goes_on && stated == last_.leaves.total(last_.gatherings); // π² A⁴, 4 leaves, B-K⁸
    if (!of_formula && !of_part && !of_run) {
      // a total may stand before the last gatherings: π², 82 leaves, A-K⁸
      if (end.goes_on && !parted && stated > leaves_ && total_ahead_ == 0) {
        total_ahead_ = stated, ahead_from_ = from, ahead_to_ = end.to;
        return from;
      }
      // nobody states a total of 2 for 80 leaves
      if (parted || stated * 8 < leaves_)
        warn(Problem::text_not_read, from, end.to);
      else
        tell(Problem::total_contradicts, from, end.to, leaves_);
      return from;
    }
    if (of_formula && !end.goes_on) return from;
    c = of;
    if (c.touches(TokenKind::point) || c.touches(TokenKind::close_square)) c.take();
    while (is_separator(c.token)) c.take();
    if (c.token.from >= end.to) return end.to;
    return this->is_extent(c) ? c.token.from : from; // other text may need the number before it
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
