// SPDX-License-Identifier: MIT
/// Words that add leaves to those of the formula: with 2 half-sheets, followed by a leaf, + errata. It is not said where they
/// are or what they are, so they are not counted, and must be told.
#pragma once

#include <bifolium/collation/detail/grammar/words_of_gatherings.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words with which leaves are added to those before: with 2 leaves, followed by a bifolium (common practice, no source).
inline constexpr char const* words_for_adding[]{"and", "with", "plus", "then", "followed", "preceded",
                                                "und", "mit",  "et",   "avec", "con",      "met"};
/// Words between such a word and the word for leaves (common practice, no source).
inline constexpr char const* words_of_added_leaf[]{"by",       "extra",      "additional",  "added",    "another",
                                                   "single",   "unsigned",   "unnumbered",  "further",  "more",
                                                   "separate", "disjunct",   "preliminary", "prelim",   "final",
                                                   "half",     "unfoliated", "inserted",    "conjugate"};

template <class Sink> class AddedLeaves : protected WordsOfGatherings<Sink> {
protected:
  using Base = WordsOfGatherings<Sink>;
  using Base::Base;
  using Base::text_, Base::cursor, Base::name_at;

  /// Returns true if the words begin with leaves that come to those before: with 2 half-sheets, followed by a leaf, + errata,
  /// with L4 where the book has no L.
  [[nodiscard]] constexpr bool adds_leaves(std::uint32_t from, std::uint32_t to) {
    auto c = cursor(from, to);
    bool const plus = c.at(TokenKind::plus);
    auto const first = word_at(text_.substr(0, to), from);
    if (!plus && !is_one_of(first, words_for_adding)) return false;
    if (plus)
      c.take();
    else
      c = cursor(from + first.size(), to);
    for (bool half = false; !c.ended();) {
      auto const w = c.at(TokenKind::letter) ? word_at(text_.substr(0, to), c.token.from) : std::string_view{};
      if (w.empty()) {
        bool const number = c.is_flat_figure() || (half && c.at(TokenKind::dash)) || c.at(TokenKind::open_square) ||
                            c.at(TokenKind::close_square);
        if (!number) return false;
        c.take();
        continue;
      }
      auto const next = cursor(c.token.from + w.size(), to);
      if (is_one_of(w, words_for_added_leaves) || is_unit_of_two_letters(w)) return !names_blanks_or_plates(next, to);
      if (plus && half && equal_in_any_case(w, "title")) return true;
      if (auto const name = name_at(c.token.from, to); name.found && name.gathering_named && name.leaf > 0)
        return !this->find(name.key) && cursor(name.end, to).ended();
      bool const contents = is_word_of_contents(w);
      if (contents && plus) return true;
      half = equal_in_any_case(w, "half");
      bool const known = contents || half || is_one_of(w, words_for_one) || is_one_of(w, words_of_added_leaf) ||
                         number_of_word(w).has_value();
      if (!known) return false;
      c = next;
    }
    return false;
  }
  /// Returns true for a word for leaves or gatherings.
  [[nodiscard]] static constexpr bool is_unit(std::string_view w) noexcept {
    return is_one_of(w, words_for_added_leaves) || is_noun(w, leaf_noun_rows, NounUse::note) ||
           is_word_for_gatherings(w);
  }

private:
  /// Returns true for ll. and ff., with which leaves are counted.
  [[nodiscard]] static constexpr bool is_unit_of_two_letters(std::string_view w) noexcept {
    return w.size() == 2 && is_unit_of_leaves(w);
  }
  /// Returns true if the words after a word for leaves call them blank, or leaves of plates.
  [[nodiscard]] constexpr bool names_blanks_or_plates(TokenCursor c, std::uint32_t to) const {
    while (!c.ended()) {
      auto const w = c.at(TokenKind::letter) ? word_at(text_.substr(0, to), c.token.from) : std::string_view{};
      if (is_blank_word(w) || is_word_of_plates(w)) return true;
      if (w.empty())
        c.take();
      else
        c = cursor(c.token.from + w.size(), to);
    }
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
