// SPDX-License-Identifier: MIT
/// Reads short statements of records about a leaf: the sizes of its gatherings, and the evidence of single leaves of
/// one gathering. core/read_date.hpp reads dates, paper/read_place.hpp places.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/evidence/words.hpp>

namespace bifolium {
inline namespace v0 {

/// The sizes of gatherings: one, or two that alternate.
struct GatheringSizes {
  int leaves{};                          ///< leaves of most gatherings, or of the first of two sizes
  std::optional<int> alternating_with{}; ///< the other of two alternating sizes
  friend constexpr bool operator==(GatheringSizes const&, GatheringSizes const&) = default;
};

namespace detail {
constexpr Expected<GatheringSizes> gathering_sizes_of_text(std::string_view text) {
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
    if (!cursor.take(';') && !cursor.take('/') && !cursor.take('.') && !cursor.take(',') && !cursor.take('&') &&
        !cursor.take_word_in_any_case("and"))
      return cursor.error_here(Problem::not_a_gathering_size);
  }
}
constexpr Expected<EvidenceOfLeaves> leaves_seen_of_text(std::string_view text) {
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
} // namespace detail

/// Reads sizes as records write them: `8`, `8s`, `in 8s`, or two that alternate: `8;4`, `8/4`, `8.4`, `8,4`, `8 and 4`. A repeated
/// size adds nothing: `8.4.8.4` is 8 and 4 alternating. Error, with the column: not_a_gathering_size.
constexpr Expected<GatheringSizes> read_gathering_sizes(std::string_view text) {
  return read_utf8(text, detail::gathering_sizes_of_text);
}

/// Reads leaves of a gathering with their evidence: `1 gutter; 2 absent; 3 absent; 4 gutter`, `7 fore-edge horizontal`.
/// The words are those for places of the watermark and for chain lines. Errors, with the column: not_leaves_seen,
/// too_many_leaves_seen.
constexpr Expected<EvidenceOfLeaves> read_leaves_seen(std::string_view text) {
  return read_utf8(text, detail::leaves_seen_of_text);
}

} // namespace v0
} // namespace bifolium
