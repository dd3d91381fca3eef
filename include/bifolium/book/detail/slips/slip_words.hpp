// SPDX-License-Identifier: MIT
/// Describes a slip for a person who has the book: what is written, what is probably meant, why, and where to look.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/core/ascii.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns where a text is missing: "after 240" or "before 260", by the word of the field that it joins or, between two
/// words, by the one before it.
inline std::string place_in_words(Edit const& edit, std::string_view text) {
  constexpr std::string_view ends = " ,;:\n\r\t";
  auto const is_end = [&](char c) { return ends.find(c) != ends.npos; };
  auto before = text.substr(0, edit.from), after = text.substr(edit.from);
  bool const joins_next =
      !after.empty() && !is_end(after[0]) && after[0] != '.' && !edit.put.empty() && !is_end(edit.put.back());
  bool const joins_last = !before.empty() && !is_end(before.back()) && !edit.put.empty() && !is_end(edit.put[0]);
  before = trimmed(before, " ,;:.\n\r\t"), after = trimmed(after, ends);
  if (!before.empty() && (joins_last || !joins_next)) {
    auto from = before.size();
    for (int depth = 0; from > 0 && (depth > 0 || !is_end(before[from - 1])); --from) {
      auto const c = before[from - 1];
      depth += c == ')' || c == ']' ? 1 : (c == '(' || c == '[') && depth > 0 ? -1 : 0;
    }
    return " after " + std::string{before.substr(from)};
  }
  std::size_t to = 0;
  for (int depth = 0; to < after.size() && (depth > 0 || !is_end(after[to])); ++to)
    depth += after[to] == '(' || after[to] == '[' ? 1 : (after[to] == ')' || after[to] == ']') && depth > 0 ? -1 : 0;
  return to == 0 ? "" : " before " + std::string{after.substr(0, to)};
}
/// Returns which of several places is meant if the removed text stands in several: " (number 2 of 4)".
inline std::string which_in_words(Edit const& edit, std::string_view old, std::string_view text) {
  auto const joins = [&](std::size_t at) { // two letters, figures or characters that are not ASCII
    auto const is_other = [](char c) { return static_cast<unsigned char>(c) >= 0x80; };
    if (at == 0 || at >= text.size()) return false;
    char const a = text[at - 1], b = text[at];
    return (is_digit(a) && is_digit(b)) || (is_latin_letter(a) && is_latin_letter(b)) || (is_other(a) && is_other(b));
  };
  std::size_t number = 0, all = 0;
  for (auto at = text.find(old); at != text.npos; at = text.find(old, at + old.size())) {
    if (joins(at) || joins(at + old.size())) continue;
    ++all;
    if (at <= edit.from || at < edit.to) number = all;
  }
  return all < 2 ? "" : " (number " + std::to_string(number) + " of " + std::to_string(all) + ')';
}
/// Describes an edit of a text that begins at byte `begins` of its field: 'B-G⁴' should be 'B-H⁴'; '[2]' is missing after
/// '240'; '(−A1)' is one too many.
inline std::string in_words(Edit edit, std::string_view text, std::size_t begins) {
  edit.from -= begins, edit.to -= begins;
  std::string const old{trimmed(edit.old, " ,")}, put{trimmed(edit.put, " ,")};
  std::string words;
  if (old.empty() && put.empty())
    words = "";
  else if (old.empty())
    words = put + " is missing" + place_in_words(edit, text);
  else if (put.empty())
    words = old + which_in_words(edit, old, text) + " is one too many";
  else
    words = old + which_in_words(edit, old, text) + " should be " + put;
  auto const reason = std::string{row_of(edit.kind).reason};
  return words.empty() ? reason : words + " (" + reason + ')';
}

} // namespace detail
} // namespace v0
} // namespace bifolium
