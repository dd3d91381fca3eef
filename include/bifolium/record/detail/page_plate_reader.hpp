// SPDX-License-Identifier: MIT
/// Reads what a statement of pages says of plates: [1] leaf of plates, 12 plates (7 folded), 84 p. incl. 2 plates. Plates
/// are printed apart from the text, so they belong to no gathering; where the pages count them, that many pages may be
/// none of the gatherings, and where it is not said how many they are, all of them may.
#pragma once

#include <bifolium/record/detail/page_bracket_reader.hpp>
#include <bifolium/record/detail/plate_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PagePlateReader : protected PageBracketReader {
  bool plates_unstated_{}; // the pages include plates, and it is not said how many

  /// Reads (7 folded), (folded) or (some folded) after plates.
  void take_folded(Plates& plates, bool all_folded) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    if (cursor_.take('(')) {
      static_cast<void>(cursor_.take_word("some"));
      static_cast<void>(cursor_.take_word("all"));
      cursor_.take_blanks();
      auto const number = figure();
      cursor_.take_blanks();
      if ((cursor_.take_word("folded") || cursor_.take_word("folding")) && cursor_.take(')')) {
        if (number.value > 0 && number.value <= plates.count) plates.folded = number.value;
        plates.at.to = cursor_.at();
        return;
      }
    }
    cursor_.go_to(here);
    if (all_folded) plates.folded = plates.count;
  }
  /// Reads one kind of plates in a list of what the pages include: 2 plates, front. (port.), or plates without a number.
  bool plates_of_list(bool in_pages, bool& unstated) {
    auto const from = cursor_.at();
    bool found = false, folded = false;
    static_cast<void>(take_approximately());
    if (auto const error = plates(found); error || found) {
      if (found) read_.plates.back().in_pages = in_pages;
      return found;
    }
    if (take_frontispiece(cursor_)) {
      read_.plates.push_back({.count = 1, .in_pages = in_pages, .at = {from, cursor_.at()}});
      return true;
    }
    if (!take_plates(cursor_, folded)) return false;
    auto const words = trimmed(cursor_.text().substr(from, cursor_.at() - from), " ");
    for (std::string_view const one : {"plate", "planche", "Tafel", "Kupfertafel", "tavola", "lámina"})
      if (words.ends_with(one)) {
        read_.plates.push_back({.count = 1, .in_pages = in_pages, .at = {from, cursor_.at()}});
        return true;
      }
    return unstated = true;
  }
  /// Leaves words unread, up to a comma, a number or a bracket, and a parenthesis after them.
  bool leave_words() {
    auto const from = cursor_.at();
    auto const ends = [](char32_t c) {
      return c == ',' || c == ';' || c == ':' || c == '[' || c == '(' || c == ')' ||
             (c < 0x80 && is_digit(static_cast<char>(c)));
    };
    cursor_.take_until(ends);
    if (cursor_.peek() == '(' && is_latin_letter(cursor_.peek(1))) {
      cursor_.take_until([](char32_t c) { return c == ')'; });
      static_cast<void>(cursor_.take(')'));
    }
    auto const left = trimmed(cursor_.text(), {from, cursor_.at()}, " ");
    if (!left.empty()) read_.unread.push_back(left);
    return !left.empty();
  }

protected:
  using PageBracketReader::PageBracketReader;

  /// Reads [1] leaf of plates, xxii leaves of plates, approximately 55 leaves of plates, or 4 plates.
  std::optional<Error> plates(bool& found) {
    auto const from = cursor_.at();
    found = false;
    bool const bracket = cursor_.take('[');
    if (bracket) cursor_.take_blanks(); // [ 1 ] leaf of plates
    bool const about = bracket && take_about(cursor_);
    auto const number = figure();
    Plates plates{number.value, PageUnit::leaves, number.numerals, !bracket};
    if (bracket) cursor_.take_blanks();
    bool const asked = bracket && cursor_.take('?');
    if (number.value < 1 || (bracket && !cursor_.take(']'))) return cursor_.go_to(from), std::nullopt;
    cursor_.take_blanks();
    if (!is_latin_letter(cursor_.peek()) && cursor_.peek() != '[' && cursor_.peek() != '(')
      return cursor_.go_to(from), std::nullopt;
    PageRun corrected{Numbering::none};
    if (auto error = correction(corrected); !error && corrected.count > 0) plates.count = corrected.count;
    bool folded = false;
    auto const unit = take_plates(cursor_, folded);
    if (!unit) return cursor_.go_to(from), std::nullopt;
    if (plates.count > most) return cursor_.error_from(from, Problem::number_too_large);
    plates.unit = *unit;
    plates.approximate = approximate_ || about || asked;
    plates.at = {from, cursor_.at()};
    take_folded(plates, folded);
    if (auto const counted = take_inclusion_after(cursor_)) plates.in_pages = *counted, plates.at.to = cursor_.at();
    read_.plates.push_back(plates);
    approximate_ = false;
    return found = any_ = true, std::nullopt;
  }
  /// Reads `incl. 2 plates`, `(including front. and 4 pages of plates)`, `excluding 3 plates`: plates of which it is said
  /// whether the pages count them. Other things in such a list, such as illustrations, are left unread.
  bool plates_in_or_apart() {
    auto const here = cursor_;
    auto const unread_before = read_.unread.size(), plates_before = read_.plates.size();
    bool const parenthesis = cursor_.take('(');
    auto const in_pages = take_inclusion(cursor_);
    bool unstated = false, found = false;
    auto end = cursor_; // of the last plates of the list
    while (in_pages) {
      cursor_.take_blanks();
      if (plates_of_list(*in_pages, unstated))
        found = true, end = cursor_;
      else if (!leave_words())
        break;
      cursor_.take_blanks();
      static_cast<void>(cursor_.take(',') || cursor_.take('&') || cursor_.take_word("and"));
    }
    if (parenthesis && found) end = cursor_, found = end.take(')');
    cursor_ = found ? end : here;
    if (!found) read_.plates.resize(plates_before);
    while (read_.unread.size() > unread_before && (!found || read_.unread.back().from >= end.at()))
      read_.unread.pop_back();
    if (!found) return false;
    plates_unstated_ = plates_unstated_ || (unstated && *in_pages);
    return any_ = true;
  }
  /// Adds up the plates that the pages count.
  void count_plates_in_pages() {
    auto& pages = read_.pagination;
    for (auto const& one : read_.plates)
      if (one.in_pages) pages.plate_pages += one.unit == PageUnit::pages ? one.count : 2 * one.count;
    if (plates_unstated_ || pages.plate_pages > pages.pages()) pages.plate_pages = pages.pages();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
