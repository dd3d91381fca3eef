// SPDX-License-Identifier: MIT
/// Finds a leaf count that several runs share. BMC and GW write one count after several gatherings (a b⁸ is a⁸ b⁸). All
/// catalogues can write one after a bracket ([a b]⁸) or at the end of a list (A-Z, Aa-Zz, in fours). For a run without
/// a count this reader looks ahead. It remembers how far it has looked without finding a count, so that no text is
/// slow.
#pragma once

#include <bifolium/collation/detail/scan/leaf_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SharedCount : protected LeafReader {
  Omitted omitted_;
  Cycle cycle_{};
  std::int64_t sharing_{0};            // number of gatherings that have got it
  std::uint32_t barren_until_{0};      // there is no shared count before this byte
  std::uint32_t list_barren_until_{0}; // the same, for the count of a list
  bool in_figures_{false};             // true if it is at the end of a list and in figures

protected:
  std::uint32_t shared_until_{0}; // the position after the shared count

  constexpr SharedCount(std::string_view text, Dialect dialect) noexcept
      : LeafReader{text, dialect}, omitted_{dialect.omitted} {}

  /// Returns true if no shared count is known for this byte or a later one.
  [[nodiscard]] constexpr bool shares_nothing(std::uint32_t from) const noexcept {
    return sharing_ == 0 && shared_until_ <= from;
  }
  /// Looks for a shared count for the run `e`, which has no own count. Returns true if there is one. `depth` is the
  /// number of open brackets.
  constexpr bool find_shared(FoundElement const& e, TokenCursor const& after, int depth) {
    if (shared_until_ <= e.end) {
      sharing_ = 0;
      in_figures_ = false;
      bool const only_bracket = omitted_ != Omitted::next;
      if (e.end >= barren_until_ && !(only_bracket && depth == 0)) look_for_shared(after, only_bracket);
    }
    if (shared_until_ <= e.end && omitted_ != Omitted::next && e.end >= list_barren_until_) look_for_list(after);
    return shared_until_ > e.end;
  }
  /// Returns the shared count for the next `gatherings` gatherings. `listed` becomes true if it may not be meant for
  /// them.
  constexpr Cycle take_shared(std::int64_t gatherings, bool& listed) {
    listed = in_figures_;
    auto const leaves = cycle_.size() == 1 ? cycle_ : cycle_.turned(sharing_);
    sharing_ += gatherings;
    return leaves;
  }
  /// Returns the own count of a run that runs before it share. Alternating counts continue from those runs.
  constexpr Cycle own_of_shared(Cycle leaves, std::uint32_t end) {
    auto const own = sharing_ > 0 && shared_until_ >= end && leaves.size() > 1 ? leaves.turned(sharing_) : leaves;
    if (end >= shared_until_) sharing_ = 0;
    return own;
  }
  /// Returns true for "and" between two runs, also in other languages.
  [[nodiscard]] constexpr bool is_and(TokenCursor const& c) const noexcept {
    if (!c.token.spaced || !joins_runs(word(c))) return false;
    auto const next = after_word(c);
    return next.token.spaced && !(next.at(TokenKind::letter) && is_word(next.token.from));
  }

private:
  /// Looks for a count that a later gathering shares with those before it. `only_bracket`: only a count after a
  /// bracket.
  constexpr void look_for_shared(TokenCursor c, bool only_bracket) {
    for (;;) {
      if (c.at(TokenKind::close_square)) { // [a b]⁸
        auto p = c;
        p.take();
        bool const round = p.at(TokenKind::open_round);
        if (auto const found = take_count(p, flat_counts_); found.sound() && !round) {
          cycle_ = found.cycle, shared_until_ = found.end;
          return;
        }
        if (only_bracket) break;
      }
      bool const group = c.at(TokenKind::open_square) && is_group(c);
      if (is_separator(c.token) || c.at(TokenKind::close_square) || group || is_and(c)) {
        if (c.at(TokenKind::letter))
          c = after_word(c);
        else
          c.take();
        continue;
      }
      if (c.at(TokenKind::open_round)) {
        auto const close = closing_round(c);
        if (close == 0) break;
        c = cursor(close + 1U);
        continue;
      }
      if (c.ended() || (c.at(TokenKind::letter) && is_word(c.token.from))) break;
      FoundElement e;
      auto const from = c.token.from;
      if (!take_element(c, e) || e.end <= from) break;
      if (!e.count.found()) continue;
      if (e.count.problem == Problem::none && !only_bracket)
        cycle_ = may_be_signed_leaf(e) ? e.said.cycle : leaves_of_count(e), shared_until_ = e.end;
      if (e.count.problem == Problem::none && !only_bracket) return;
      break;
    }
    barren_until_ = c.token.from;
  }
  /// Looks for the count at the end of a list, which is the count of all its runs: A-Z, Aa-Zz, and Aaa-Ccc, in fours. A
  /// count in figures is shared only if an omitted count would be a mistake.
  constexpr void look_for_list(TokenCursor c) {
    for (;;) {
      bool const comma = c.at(TokenKind::comma), joined = is_and(c);
      bool const blank = !comma && !joined; // A-Z Aa-Zz in fours
      if (blank && !(c.token.spaced && (c.at(TokenKind::letter) || c.at(TokenKind::figure)))) break;
      if (comma) c.take();
      if (joins_runs(word(c))) c = after_word(c);
      FoundElement e;
      if (c.ended() || (c.at(TokenKind::letter) && is_word(c.token.from)) || !take_element(c, e)) break;
      if (!e.count.found()) continue;
      bool const figures = !e.count.in_words && !e.said.sound(); // A-C, D⁴, in eights: D alone has its own
      if (!e.count.sound() || (figures && (omitted_ != Omitted::error || blank))) break;
      cycle_ = e.said.sound() ? e.said.cycle : leaves_of_count(e);
      shared_until_ = e.end;
      in_figures_ = figures;
      return;
    }
    list_barren_until_ = c.token.from;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
