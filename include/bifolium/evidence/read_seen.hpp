// SPDX-License-Identifier: MIT
/// Readers for what records say of a leaf in a few characters: the years of a book, the sizes of its gatherings, and what the
/// leaves of one gathering show.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/evidence/detail/seen_words.hpp>

namespace bifolium {
inline namespace v0 {

/// The sizes of gatherings: one, or two by turns.
struct GatheringSizes {
  int leaves{};                          ///< of most gatherings, or of the first of two
  std::optional<int> alternating_with{}; ///< the other of two sizes by turns
  friend constexpr bool operator==(GatheringSizes const&, GatheringSizes const&) = default;
};

namespace detail {

/// A place in a short text.
struct SeenScan {
  std::string_view text;
  std::size_t at{0};

  constexpr void skip_blanks() {
    while (at < text.size() && is_blank(decode(text, at).value)) at += decode(text, at).bytes;
  }
  [[nodiscard]] constexpr bool done() {
    skip_blanks();
    return at == text.size();
  }
  constexpr bool take(std::string_view word) {
    if (!text.substr(at).starts_with(word)) return false;
    at += word.size();
    return true;
  }
  /// A whole number of up to four digits; nothing when there is none.
  constexpr std::optional<int> number() {
    int n = 0;
    auto const start = at;
    for (; at < text.size() && is_digit(text[at]) && at - start < 5; ++at) n = n * 10 + (text[at] - '0');
    if (at == start || at - start > 4) return at = start, std::nullopt;
    return n;
  }
  constexpr bool dash() {
    for (auto one : {"-"sv, "\xE2\x80\x93"sv, "\xE2\x80\x94"sv, "/"sv}) // hyphen, en and em dash
      if (take(one)) return true;
    return false;
  }
  [[nodiscard]] constexpr Error error(Problem problem) const {
    auto const rest = text.substr(at);
    return error_at(problem, 1, column_of(text, at), rest.data(), rest.size());
  }
};

} // namespace detail

/// Years as records write them: `1490`, `1450-1500`, and what a cataloguer supplies, `[1490]`, `[1490?]`, `c. 1490`. A year
/// that is doubted or about right is taken as five years to either side, the rule by which the table of sheets reads `c.`
/// error: not_years at the character where it stops making sense; impossible_years.
constexpr Expected<When> read_years(std::string_view text) {
  detail::SeenScan scan{text};
  scan.skip_blanks();
  bool const bracket = scan.take("[");
  bool about = false;
  for (std::string_view word : {"circa", "ca.", "ca", "c.", "c", "about"})
    if (scan.take(word)) {
      about = true;
      break;
    }
  scan.skip_blanks();
  auto start = scan.at;
  auto const from = scan.number();
  if (!from || *from < 100) return scan.at = start, scan.error(Problem::not_years);
  about = scan.take("?") || about;
  auto to = from;
  scan.skip_blanks();
  if (scan.dash()) {
    scan.skip_blanks();
    start = scan.at;
    to = scan.number();
    if (!to || *to < 100) return scan.at = start, scan.error(Problem::not_years);
    about = scan.take("?") || about;
  }
  if (bracket && !scan.take("]")) return scan.error(Problem::not_years);
  if (!scan.done()) return scan.error(Problem::not_years);
  if (*from > *to) return error_at(Problem::impossible_years, 1, 1);
  return about ? When{*from - 5, *to + 5} : When{*from, *to};
}

/// `8`, or two sizes by turns: `8;4`, `8/4`, `8.4`, `8,4`. A size met again is nothing new: `8.4.8.4` is 8 and 4 by turns.
/// error: not_a_gathering_size.
constexpr Expected<GatheringSizes> read_gathering_sizes(std::string_view text) {
  detail::SeenScan scan{text};
  GatheringSizes sizes;
  for (int i = 0;; ++i) {
    scan.skip_blanks();
    auto const start = scan.at;
    auto const n = scan.number();
    scan.at = n && *n > 0 ? scan.at : start;
    if (!n || *n == 0) return scan.error(Problem::not_a_gathering_size);
    auto const new_one = *n != sizes.leaves && *n != sizes.alternating_with;
    if (i == 0)
      sizes.leaves = *n;
    else if (new_one && !sizes.alternating_with)
      sizes.alternating_with = *n;
    else if (new_one)
      return scan.at = start, scan.error(Problem::not_a_gathering_size);
    if (scan.done()) return sizes;
    if (!scan.take(";") && !scan.take("/") && !scan.take(".") && !scan.take(","))
      return scan.error(Problem::not_a_gathering_size);
  }
}

/// Leaves of a gathering and what each shows: `1 gutter; 2 absent; 3 absent; 4 gutter`, `7 fore-edge horizontal`. The words
/// are those for marks and for chain lines. error: not_leaves_seen, too_many_leaves_seen.
constexpr Expected<EvidenceOfLeaves> read_leaves_seen(std::string_view text) {
  detail::SeenScan scan{text};
  EvidenceOfLeaves leaves{};
  for (std::size_t i = 0;; ++i) {
    scan.skip_blanks();
    auto const start = scan.at;
    auto const n = scan.number();
    if (!n || *n == 0) return scan.at = start, scan.error(Problem::not_leaves_seen);
    if (i == leaves.size()) return scan.at = start, scan.error(Problem::too_many_leaves_seen);
    leaves[i].leaf = *n;
    bool said = false;
    for (;;) {
      scan.skip_blanks();
      auto end = scan.at;
      while (end < text.size() && (is_small(text[end]) || text[end] == '-')) ++end;
      auto const word = text.substr(scan.at, end - scan.at);
      if (word.empty()) break;
      if (auto const mark = detail::find_word<MarkPlace>(word); mark && leaves[i].mark == MarkPlace::unknown)
        leaves[i].mark = mark->value;
      else if (auto const lines = detail::find_word<ChainLines>(word);
               lines && leaves[i].chain_lines == ChainLines::unknown)
        leaves[i].chain_lines = lines->value;
      else
        return scan.error(Problem::not_leaves_seen);
      said = true;
      scan.at = end;
    }
    if (!said) return scan.error(Problem::not_leaves_seen);
    if (scan.done()) return leaves;
    if (!scan.take(";") && !scan.take(",")) return scan.error(Problem::not_leaves_seen);
  }
}

} // namespace v0
} // namespace bifolium
