// SPDX-License-Identifier: MIT
/// Words that stand where changes may: kept as words, and warned of where they look like a change.
#pragma once

#include <bifolium/collation/detail/scan_state.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words by which leaves are said to be gone, changed or put in (common practice, no source): what they say is not counted,
/// so it must not pass unseen.
inline constexpr char const* words_of_change[]{
    "added",   "cancel",  "cancelled", "cancels", "cut",     "deleted", "excised", "extra",
    "fehlen",  "fehlt",   "inserted",  "lacking", "lacks",   "manca",   "manque",  "minus",
    "missing", "removed", "replaced",  "want",    "wanting", "wants",   "without",
};
/// Words that are a leaf and nothing else, or have a sign or a word of change in them: perhaps a change written in another way.
template <class Sink> constexpr bool looks_like_change(ScanState<Sink> const& book, std::size_t from, std::size_t to) {
  if (auto const name = leaf_name(book, from, to); name.found && book.skip(name.end) >= to) return true;
  for (auto k = from; k < to; ++k) {
    if (!is_latin_letter(book.at(k)) || (k > from && is_latin_letter(book.at(k - 1)))) continue;
    auto end = k;
    while (end < to && is_latin_letter(book.at(end))) ++end;
    auto const word = book.view().substr(k, end - k);
    for (auto const* const one : words_of_change)
      if (word == one) return true;
  }
  for (auto k = from; k < to; ++k)
    if (auto const c = book.at(k); c == '+' || c == '=' || book.code(k) == 0xB1 || book.code(k) == 0x2212) return true;
  return false;
}

/// Keeps the words from byte `from` to `to`, without the blanks behind them; nothing where they are no UTF-8.
template <class Sink>
constexpr std::optional<ScannedChange> scan_note(ScanState<Sink>& book, std::size_t from, std::size_t to,
                                                 ScannedChange::Joint joint) {
  for (auto k = from; k < to; k += decode(book.view(), k).bytes)
    if (decode(book.view(), k).malformed) {
      static_cast<void>(book.fail(Problem::not_utf8, k, k));
      return {};
    }
  while (to > from &&
         (book.at(to - 1) == ' ' || book.at(to - 1) == '\n' || book.at(to - 1) == '\r' || book.at(to - 1) == '\t'))
    --to;
  ScannedChange change;
  change.kind = ScannedChange::Kind::note;
  change.joint = joint;
  change.stands_after = book.runs_ - 1;
  change.gathering = book.last_gathering().gathering;
  if (looks_like_change(book, from, to)) book.warn(Problem::text_not_read, from, to);
  book.sink_.note(change, from, to);
  return change;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
