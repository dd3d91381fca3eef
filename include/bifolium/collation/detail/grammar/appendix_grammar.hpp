// SPDX-License-Identifier: MIT
/// Reads the name of a part that comes after the others: Supplement: a-b⁸. Such a part has no number, so only the word shows
/// that it begins. Without a colon the word may say where something is, as in index K⁸: then gatherings that the formula has
/// not yet must follow.
///
///   appendix = ( "supplement" | "suppl." | "supplementum" | "supplemento" | "appendix" | "appendice" | "Anhang" | "index" ) ,
///              [ ":" ] ;
#pragma once

#include <bifolium/collation/detail/grammar/volume_grammar.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Words for a part that comes after the others (common practice, no source).
inline constexpr std::string_view words_of_appendices[]{
    "supplement"sv, "suppl"sv, "supplementum"sv, "supplemento"sv, "appendix"sv, "appendice"sv, "anhang"sv, "index"sv};

template <class Sink> class AppendixGrammar : protected VolumeGrammar<Sink> {
protected:
  using Base = VolumeGrammar<Sink>;
  using Base::Base;
  using Base::c_, Base::word, Base::after_word;

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
    this->begin_named(from, from + static_cast<std::uint32_t>(w.size()), c, true);
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
