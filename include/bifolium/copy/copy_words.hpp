// SPDX-License-Identifier: MIT
/// Describes a checked copy in the words of the trade: "wants B3.6, C8, E-G (G4 blank)"; "B bound after C4".
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Returns the last of the lacking leaves that follow one another in one gathering, beginning with `number`.
inline std::int64_t last_of_portion(IdealCopy const& book, LeafSpan const& wanting, std::int64_t number) {
  auto const end = book.numbers_of(book.leaf_of_number(number)->gathering).to;
  return end < wanting.to ? end : wanting.to;
}
/// Returns true if the leaves are named by the first and the last, because they are more than the two leaves of a
/// bifolium.
inline bool named_by_ends(IdealCopy const& book, CopyChecked const& copy, std::int64_t number) {
  auto const wanting = wanting_at(copy, number);
  if (!wanting) return false;
  auto const here = book.numbers_of(book.leaf_of_number(number)->gathering);
  auto const from = here.from > wanting->from ? here.from : wanting->from;
  return last_of_portion(book, *wanting, number) - from >= 2;
}
/// Writes the blanks among leaves that are named by the first and the last: " (A8 blank)".
inline std::string blanks_among(IdealCopy const& book, std::int64_t from, std::int64_t to) {
  std::string text;
  auto const& all = book.blanks();
  auto const first = *book.leaf_of_number(from), last = *book.leaf_of_number(to);
  auto i = partition_point(all.size(), [&](std::size_t k) { return all[k] < first; });
  for (; i < all.size() && all[i] <= last; ++i)
    if (book.leaf_number(all[i])) text += (text.empty() ? " (" : ", ") + leaf_words(book, all[i]);
  return text.empty() ? text : text + " blank)";
}
/// Writes the lacking leaves of one gathering, from `from` to `to`.
inline void append_wanting(IdealCopy const& book, CopyChecked const& copy, std::int64_t from, std::int64_t to,
                           std::string& text) {
  auto const part = [&] { text += text.empty() ? "" : ", "; };
  if (to - from >= 2) {
    part();
    text += span_words(book, span_of_numbers(book, from, to)) + blanks_among(book, from, to);
    return;
  }
  for (auto n = from; n <= to; ++n) {
    auto const missing = missing_leaf(book, copy, n);
    auto const other = missing.conjugate_missing ? book.leaf_number(*missing.conjugate) : std::nullopt;
    bool const bifolium = other && !named_by_ends(book, copy, *other);
    if (bifolium && *other < n) continue; // named together with its conjugate
    part();
    if (!bifolium && missing.blank) text += "the blank ";
    text += leaf_words(book, missing.leaf);
    if (!bifolium) continue;
    text += '.' + (missing.conjugate->inserted > 0 ? leaf_words(book, *missing.conjugate)
                                                   : std::to_string(missing.conjugate->leaf));
    bool const second = book.is_blank(*missing.conjugate);
    if (missing.blank && second)
      text += " (both blank)";
    else if (missing.blank || second)
      text += " (" + leaf_words(book, missing.blank ? missing.leaf : *missing.conjugate) + " blank)";
  }
}

} // namespace detail

/// Describes the leaves that the copy lacks: "wants B3.6, C8, E-G". The text is empty for a complete copy. The leaves
/// of a lost bifolium have a full point between them; three or more leaves in sequence are named by the first and the
/// last; a blank leaf is called blank.
[[nodiscard]] inline std::string wants(IdealCopy const& book, CopyChecked const& copy) {
  std::string text;
  for (auto const& span : copy.wanting)
    for (auto n = span.from; n <= span.to;) {
      auto const at = book.leaf_of_number(n)->gathering;
      auto const here = book.numbers_of(at);
      if (here.from < n || here.to > span.to) { // part of a gathering
        auto const end = here.to < span.to ? here.to : span.to;
        detail::append_wanting(book, copy, n, end, text);
        n = end + 1;
        continue;
      }
      // whole gatherings, as long as they belong to one run
      auto last = GatheringAt{at.run, book.runs()[at.run].gatherings - 1};
      if (book.numbers_of(last).to > span.to) {
        last = book.leaf_of_number(span.to)->gathering;
        if (book.numbers_of(last).to > span.to) --last.index;
      }
      auto const end = book.numbers_of(last).to;
      if (!text.empty()) text += ", ";
      if (n == end && book.is_blank(*book.leaf_of_number(n)))
        text += "the blank " + detail::leaf_words(book, *book.leaf_of_number(n));
      else
        text += detail::span_words(book, span_of_numbers(book, n, end)) + detail::blanks_among(book, n, end);
      n = end + 1;
    }
  return text.empty() ? text : "wants " + text;
}

/// Describes the leaves that were listed with a word: "A1 in facsimile; B3-4 mounted". The text is empty if there are
/// none.
[[nodiscard]] inline std::string noted(IdealCopy const& book, CopyChecked const& copy) {
  std::string text;
  for (auto const& span : copy.noted) {
    if (!text.empty()) text += "; ";
    text += detail::span_words(book, span);
    if (span.state == LeafInCopy::facsimile) text += " in";
    (text += ' ') += to_words(span.state);
    if (span.state == LeafInCopy::supplied) text += " from another copy";
  }
  return text;
}

/// Describes the leaves that are out of order: "B bound after C4; A8 bound at the front". The text is empty if all are
/// in order.
[[nodiscard]] inline std::string misbound(IdealCopy const& book, CopyChecked const& copy) {
  std::string text;
  auto const& all = copy.misplaced;
  for (std::size_t i = 0; i < all.size();) {
    if (!text.empty()) text += "; ";
    text += detail::span_words(book, all[i].leaves);
    auto const& after = all[i].after;
    for (++i; i < all.size() && all[i].after == all[i - 1].leaves.last; ++i) // bound after one another
      text += ", " + detail::span_words(book, all[i].leaves);
    text += after ? " bound after " + detail::leaf_words(book, *after) : " bound at the front";
  }
  return text;
}

} // namespace v0
} // namespace bifolium
