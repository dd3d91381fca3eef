// SPDX-License-Identifier: MIT
/// What stands behind the gatherings and is none: an extent, words of a leaf, prose. It is kept, and an extent that says
/// another number of leaves than the formula is warned of.
#pragma once

#include <bifolium/collation/detail/scan_note.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// All that is left of the text.
template <class Sink> constexpr void scan_tail(ScanState<Sink>& book, Passage passage) {
  auto const from = book.at_, size = book.view().size();
  book.sink_.passage(passage, from, size);
  book.at_ = size;
  if (passage == Passage::prose) {
    book.warn(Problem::text_not_read, from, size);
    return;
  }
  bool const bracket = book.at(from) == '[';
  auto const figures = bracket ? from + 1 : from;
  std::int64_t stated = 0;
  auto k = figures;
  for (; is_digit(book.at(k)) && stated < 100000000; ++k) stated = stated * 10 + (book.at(k) - '0');
  if (k == figures) return;
  if (bracket && book.at(k) == ']') ++k;
  k = book.skip(k);
  if (book.is_any(k, {"leaves", "leaf", "ll.", "ff.", "Bl", "l."}) && !book.is_any(k, {"leaves of", "leaf of"}) &&
      stated != book.leaves_)
    book.warn(Problem::total_contradicts, from, size, book.leaves_);
}

/// A leaf of the book and words, without a parenthesis: A-K⁸; K8 blank. False when no such thing stands here.
template <class Sink> constexpr bool scan_remark(ScanState<Sink>& book) {
  auto const text = book.view();
  auto const from = book.at_;
  auto figure = from; // K8 and a word: most of what stands here is neither
  while (figure < from + 48 && book.at(figure) != ' ' && figure < text.size()) ++figure;
  if (figure == from || !is_small(book.at(figure + 1)) || !is_small(book.at(figure + 2))) return false;
  auto const name = leaf_name(book, from, text.size());
  auto const word = book.skip(name.end);
  if (!name.found || !name.gathering_named || name.leaf < 1 || word == name.end || !is_small(book.at(word)) ||
      !book.is_word(word) || book.is_any(word, {"to ", "through ", "and "}))
    return false;
  auto const target = book.known_.find(book, name.signature, book.runs_, book.last_);
  if (!target || name.leaf > target->leaves) return false;
  auto end = word;
  while (end < text.size()) {
    if (char const c = text[end]; c == ',' || c == ';' || c == '.' || c == '(' || c == ')' || c == '[' || c == ']')
      break;
    std::size_t bytes = 0; // the semicolon of &amp; ends nothing
    entity(text, end, bytes);
    end += bytes == 0 ? 1 : bytes;
  }
  book.warn(Problem::text_not_read, from, end);
  if (scan_note(book, from, end, ScannedChange::Joint::opens)) book.at_ = end;
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
