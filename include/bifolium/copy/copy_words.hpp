// SPDX-License-Identifier: MIT
/// Describes a checked copy in the words of the trade: "wants B3.6, C8, E-G (G4 blank)"; "B bound after C4".
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaves of one gathering that a copy lacks and that are named together.
struct WantingPortion {
  std::int64_t from{}; ///< number of the first leaf in the ideal copy
  std::int64_t to{};   ///< number of the last leaf
  bool inserted{};     ///< true for a gathering that was inserted and is lacking as a whole
  friend constexpr bool operator==(WantingPortion const&, WantingPortion const&) = default;
};

/// Returns the portion with leaf `number` of the lacking leaves `wanting`. An inserted gathering of which every leaf is
/// lacking is a portion of its own. Precondition: the leaf is one of them, and the ideal copy has it.
[[nodiscard]] inline WantingPortion wanting_portion(IdealCopy const& book, LeafSpan const& wanting,
                                                    std::int64_t number) {
  auto const here = book.numbers_of(book.leaf_of_number(number)->gathering);
  auto const first = here.from > wanting.from ? here.from : wanting.from;
  auto const last = here.to < wanting.to ? here.to : wanting.to;
  // the leaves inserted together with leaf n, or that leaf alone, as far as they are lacking
  auto const together = [&](std::int64_t n) {
    auto const one = book.inserted(*book.leaf_of_number(n));
    if (!one) return WantingPortion{n, n};
    auto const from = n + 1 - one->number, to = n + one->insertion.leaves - one->number;
    bool const whole = one->insertion.joined == Joined::gathering && from >= first && to <= last;
    return WantingPortion{from > first ? from : first, to < last ? to : last, whole};
  };
  auto portion = together(number);
  while (!portion.inserted && portion.from > first) {
    auto const before = together(portion.from - 1);
    if (before.inserted) break;
    portion.from = before.from;
  }
  while (!portion.inserted && portion.to < last) {
    auto const after = together(portion.to + 1);
    if (after.inserted) break;
    portion.to = after.to;
  }
  return portion;
}

namespace detail {

/// Returns true if the leaves are named by the first and the last, because they are more than the two leaves of a
/// bifolium, or by the name of their gathering.
inline bool named_by_ends(IdealCopy const& book, CopyChecked const& copy, std::int64_t number) {
  auto const wanting = wanting_at(copy, number);
  if (!wanting) return false;
  auto const portion = wanting_portion(book, *wanting, number);
  return portion.inserted || portion.to - portion.from >= 2;
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
/// Returns true if the name of a gathering is a number and nothing else.
inline bool is_named_by_number(IdealCopy const& book, GatheringAt at) {
  auto const name = book.signature(at);
  return name.mark() == Mark::number && !name.series() && name.duplicate() == Duplicate::none && !name.is_quoted();
}
/// Writes the lacking leaves of a portion.
inline void append_wanting(IdealCopy const& book, CopyChecked const& copy, WantingPortion const& portion,
                           std::string& text) {
  auto const [from, to, inserted] = portion;
  auto const part = [&] { text += text.empty() ? "" : ", "; };
  if (inserted) {
    part();
    text += to_text(*book.inserted(*book.leaf_of_number(from))->insertion.name).view();
    return;
  }
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
    text += '.' + (missing.conjugate->inserted ? leaf_words(book, *missing.conjugate)
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
/// last; a blank leaf is called blank. A gathering whose name is a number is named by its leaves if leaves come before it,
/// "wants 2/1, 3/1-8", because in "2/1, 3" the 3 may be a leaf.
[[nodiscard]] inline std::string wants(IdealCopy const& book, CopyChecked const& copy) {
  std::string text;
  bool after_leaves = false; // the last item is leaves, and not whole gatherings
  for (auto const& span : copy.wanting)
    for (auto n = span.from; n <= span.to;) {
      auto const at = book.leaf_of_number(n)->gathering;
      auto const here = book.numbers_of(at);
      if (here.from < n || here.to > span.to) { // part of a gathering
        auto const portion = wanting_portion(book, span, n);
        auto const before = text.size();
        detail::append_wanting(book, copy, portion, text);
        if (text.size() > before) after_leaves = !portion.inserted;
        n = portion.to + 1;
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
      auto const all = span_of_numbers(book, n, end);
      bool const blank = n == end && book.is_blank(all.first);
      after_leaves = n == end || (after_leaves && detail::is_named_by_number(book, all.first.gathering));
      text += blank ? "the blank " : "";
      text += after_leaves ? detail::span_by_leaves(book, all) : detail::span_words(book, all);
      text += blank ? "" : detail::blanks_among(book, n, end);
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
    if (is_substitute(span.state)) text += " in";
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
