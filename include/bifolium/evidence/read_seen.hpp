// SPDX-License-Identifier: MIT
/// Readers for what records say of a leaf in a few characters: the sizes of its gatherings, and what the leaves of one
/// gathering show. Dates and places are read by core/read_date.hpp and paper/read_place.hpp.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/evidence/words.hpp>

namespace bifolium {
inline namespace v0 {

/// The sizes of gatherings: one, or two by turns.
struct GatheringSizes {
  int leaves{};                          ///< of most gatherings, or of the first of two
  std::optional<int> alternating_with{}; ///< the other of two sizes by turns
  friend constexpr bool operator==(GatheringSizes const&, GatheringSizes const&) = default;
};

/// Reads sizes as records write them: `8`, `8s`, `in 8s`, or two by turns: `8;4`, `8/4`, `8.4`, `8,4`. A size repeated says
/// no more than once: `8.4.8.4` is 8 and 4 by turns. error: not_a_gathering_size, with the column.
constexpr Expected<GatheringSizes> read_gathering_sizes(std::string_view text) {
  TextCursor cursor{text};
  GatheringSizes sizes;
  cursor.take_blanks();
  if (cursor.take_in_any_case("in ")) cursor.take_blanks();
  for (int i = 0;; ++i) {
    cursor.take_blanks();
    auto const start = cursor.at();
    auto const number = cursor.take_number(9999);
    if (!number || *number == 0) return cursor.error_from(start, Problem::not_a_gathering_size);
    auto const n = static_cast<int>(*number);
    auto const new_one = n != sizes.leaves && n != sizes.alternating_with;
    if (i == 0)
      sizes.leaves = n;
    else if (new_one && !sizes.alternating_with)
      sizes.alternating_with = n;
    else if (new_one)
      return cursor.error_from(start, Problem::not_a_gathering_size);
    cursor.take_word("s");
    cursor.take_blanks();
    if (cursor.at_end()) return sizes;
    if (!cursor.take(';') && !cursor.take('/') && !cursor.take('.') && !cursor.take(','))
      return cursor.error_here(Problem::not_a_gathering_size);
  }
}

/// Reads leaves of a gathering and what each shows: `1 gutter; 2 absent; 3 absent; 4 gutter`, `7 fore-edge horizontal`. The
/// words are those for marks and for chain lines. error: not_leaves_seen, too_many_leaves_seen, with the column.
constexpr Expected<EvidenceOfLeaves> read_leaves_seen(std::string_view text) {
  TextCursor cursor{text};
  EvidenceOfLeaves leaves{};
  for (std::size_t i = 0;; ++i) {
    cursor.take_blanks();
    auto const start = cursor.at();
    auto const number = cursor.take_number(9999);
    if (!number || *number == 0) return cursor.error_from(start, Problem::not_leaves_seen);
    if (i == leaves.size()) return cursor.error_from(start, Problem::too_many_leaves_seen);
    leaves[i].leaf = static_cast<int>(*number);
    bool said = false;
    for (;;) {
      cursor.take_blanks();
      auto const from = cursor.at();
      while (is_latin_letter(cursor.peek()) || cursor.peek() == '-') cursor.skip(1);
      auto const word = text.substr(from, cursor.at() - from);
      if (word.empty()) break;
      if (auto const mark = read_word<MarkPlace>(word); mark && leaves[i].mark == MarkPlace::unknown)
        leaves[i].mark = *mark;
      else if (auto const lines = read_word<ChainLines>(word); lines && leaves[i].chain_lines == ChainLines::unknown)
        leaves[i].chain_lines = *lines;
      else
        return cursor.error_from(from, Problem::not_leaves_seen);
      said = true;
    }
    if (!said) return cursor.error_here(Problem::not_leaves_seen);
    if (cursor.at_end()) return leaves;
    if (!cursor.take(';') && !cursor.take(',')) return cursor.error_here(Problem::not_leaves_seen);
  }
}

} // namespace v0
} // namespace bifolium
