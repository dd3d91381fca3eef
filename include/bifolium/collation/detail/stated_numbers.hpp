// SPDX-License-Identifier: MIT
/// Compares the numbers that a text states beside its gatherings, 80 leaves, 10 quires, 10½ sheets, with what the formula has.
/// Cataloguers count the leaves of the book in their hands, so such a number is the best test that the formula was copied
/// without a slip. It may be that of the whole formula or of the part since the number before it.
#pragma once

#include <bifolium/collation/detail/gatherings_beyond.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class StatedNumbers : protected GatheringsBeyond<Sink> {
protected:
  using Base = GatheringsBeyond<Sink>;
  using Base::Base;
  using Base::warn, Base::begins, Base::word, Base::after_word, Base::last_, Base::leaves_, Base::leaves_at_extent_;

  /// Warns if a total in parentheses, (90 leaves), differs from the formula.
  constexpr void check_total(TokenCursor c, std::uint32_t from, std::uint32_t to) {
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
  /// Warns if a stated number of leaves, 90 leaves or [90] ll., is neither that of the formula nor that of the gatherings
  /// since the extent before it. Returns where the text begins that is kept: a number for a part of the formula agrees with
  /// it and is not a statement about the book.
  constexpr std::uint32_t check_stated(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    while (takes_number_of_pieces(c) && c.at(TokenKind::comma)) c.take(); // 10 gatherings, 80 leaves
    if (c.token.from != from) return check_leaves(c, c.token.from, end), from;
    return check_leaves(c, from, end);
  }
  /// Remembers how many leaves and gatherings there are where a number is stated and gatherings follow.
  constexpr void pass_extent() noexcept {
    leaves_at_extent_ = leaves_, gatherings_at_extent_ = this->gatherings_ + this->gatherings_inserted_;
  }

private:
  std::int64_t gatherings_at_extent_{0}; // the same as leaves_at_extent_, of gatherings

  /// Warns if a stated number of gatherings, 11 gatherings or 11 quires, is not that of the formula. Returns false if the
  /// word is none for gatherings.
  constexpr bool check_gatherings(std::int64_t stated, std::string_view unit, std::uint32_t from, std::uint32_t to) {
    if (!is_word_for_gatherings(unit)) return false;
    auto const all = this->gatherings_ + this->gatherings_inserted_;
    bool const agrees = stated == this->gatherings_ || stated == all || stated == all - gatherings_at_extent_;
    if (!agrees) warn(Problem::gatherings_contradict, from, to, all);
    return true;
  }
  /// Warns if a stated number of sheets, 11 sheets or 10½ sheets, is not what the leaves make in the stated format. Where
  /// leaves were cut out or put in, less than a sheet is not a contradiction: they may be printed with others.
  constexpr void check_sheets(std::int64_t stated, int quarters, std::uint32_t from, std::uint32_t to) {
    if (this->leaves_to_sheet_ == 0 || stated > 1'000'000 || leaves_ > 100'000'000) return;
    auto const sheet = 4 * std::int64_t{this->leaves_to_sheet_}, least = this->has_changes() ? sheet : 1;
    auto const differs = [&](std::int64_t leaves) {
      auto const difference = stated * sheet + quarters * this->leaves_to_sheet_ - 4 * leaves;
      return difference >= least || difference <= -least;
    };
    if (differs(leaves_) && differs(leaves_ - leaves_at_extent_)) warn(Problem::sheets_contradict, from, to, leaves_);
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
  constexpr std::uint32_t check_leaves(TokenCursor c, std::uint32_t from, typename Base::TextEnd const& end) {
    if (c.at(TokenKind::open_square)) c.take();
    if (!c.is_flat_figure()) return from;
    std::int64_t const stated = c.token.value;
    c.take();
    if (c.at(TokenKind::close_square)) c.take();
    static_cast<void>(this->take_adjectives(c));
    auto const w = word(c);
    if (!is_unit_of_leaves(w)) return from;
    auto const of = this->after_word(c);
    bool const parted = of.token.spaced && begins(of.token.from, "of");
    bool const of_plates = parted && is_word_of_plates(word(this->after_word(of)));
    if (of_plates && (w == "leaves" || w == "leaf")) return from;
    bool const of_formula = stated == leaves_, of_part = stated == leaves_ - leaves_at_extent_;
    bool const of_run = end.goes_on && stated == last_.leaves.total(last_.gatherings); // π² A⁴, 4 leaves, B-K⁸
    if (!of_formula && !of_part && !of_run) {
      // nobody states a total of 2 for 80 leaves
      if (parted || stated * 8 < leaves_)
        warn(Problem::text_not_read, from, end.to);
      else
        warn(Problem::total_contradicts, from, end.to, leaves_);
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
