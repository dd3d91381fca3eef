// SPDX-License-Identifier: MIT
/// Reads engraved leaves before the first gathering: engr. ti. + A⁸; portrait, A⁸. They were printed from plates on other paper and
/// belong to no gathering, so they are stored as plates and not counted.
///
///   engraved = ( "engr." | "port." | "front." | "title" | "t.p." | "plate" | "map" ) , words , ( "+" | "," | ";" ) ;
#pragma once

#include <bifolium/collation/detail/grammar/unsigned_leaves_grammar.hpp>
#include <bifolium/collation/passage.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words with which a description of engraved leaves begins, beside those for plates (common practice, no source).
inline constexpr char const* words_of_engraving[]{"engr",    "engraved",     "port", "front",
                                                  "frontis", "frontispiece", "title"};

template <class Sink> class EngravedGrammar : protected UnsignedLeavesGrammar<Sink> {
protected:
  using Base = UnsignedLeavesGrammar<Sink>;
  using Base::Base;
  using Base::warn, Base::sink_, Base::text_, Base::at, Base::word, Base::c_;

  /// Returns true for t.p. at this byte, a title-page and not the gatherings t and p.
  [[nodiscard]] constexpr bool is_title_page(std::uint32_t from) const noexcept {
    return text_.substr(from, 4) == "t.p.";
  }
  /// Reads words for plates before the first gathering: engr. ti. + A⁸; portrait, A⁸. Returns false if there are none.
  constexpr bool engraved_before() {
    auto const next = at(c_.token.from + 1);
    if (!is_small(next) && next != '.') return false;
    auto const w = word(c_);
    bool const known = w.size() > 2 && (is_one_of(w, words_of_engraving) || is_word_of_plates(w));
    if (!known && !is_title_page(c_.token.from)) return false;
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
};

} // namespace detail
} // namespace v0
} // namespace bifolium
