// SPDX-License-Identifier: MIT
/// Reads words about the paging of the whole in a statement of pages: unpaged, ca., (incomplete), [sic]. They stand beside
/// the numbers and count nothing. What is only a note on a number is left unread, and told.
#pragma once

#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/record/detail/page_unit_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageRemarkReader : protected PageUnitReader {
protected:
  using PageUnitReader::PageUnitReader;

  /// Takes words about the paging of the whole.
  bool take_remark() {
    auto const here = cursor_.at();
    bool const bracket = cursor_.take('[') || cursor_.take('(');
    if (begins_no_word(cursor_.peek())) return cursor_.go_to(here), false;
    bool found = false;
    for (char const* word : {"unpaged", "unpaginated", "unpag.", "not paginated", "unfoliated", "unnumbered", "unp."})
      found = found || cursor_.take(word);
    if (found && runs().empty()) read_.pagination.unpaged = true; // after a number it says of that number alone
    for (char const* words :
         {"in various pagings", "various pagings", "various paginations", "various pagination", "multiple pagings",
          "in multiple pagings", "in various paginations", "various foliations", "in various foliations"})
      found = found || (wanted_extent_ && cursor_.take(words) && (read_.various_pagings = true));
    if (!found && take_imperfect_word(cursor_)) found = read_.pagination.incomplete = true;
    if (!found) return cursor_.go_to(here), false;
    if (bracket && !cursor_.take(']')) static_cast<void>(cursor_.take(')'));
    return any_ = true;
  }
  /// Takes `approx.`, `(ca.)` or a question mark after a number: 200 p. approx., 200 p. (?). After a number `c.` are leaves.
  bool take_approximately_after() {
    auto look = cursor_;
    bool const bracket = look.take('(') || look.take('[');
    bool const letter_alone = small_letter(look.peek()) == 'c' && !is_latin_letter(look.peek(1));
    bool const asked = look.take('?');
    if (runs().empty() || letter_alone || (!asked && !take_about(look))) return false;
    if (bracket && !look.take(')') && !look.take(']')) return false;
    auto end = look;
    end.take_blanks();
    if (!bracket && !asked && !end.at_end() && !ends_statement(end.peek())) return false;
    cursor_ = look;
    if (approximate_run_ >= runs().size()) approximate_run_ = runs().size() - 1;
    return true;
  }
  /// Takes a plus after the last number or its unit, of a copy that lacks its end: 240 [+] p., 240 + p., 240 p.+. A plus
  /// between two numbers joins them, and one before other words begins what accompanies the book.
  bool take_open_end() {
    auto look = cursor_;
    char const close = look.take('[') ? ']' : look.take('(') ? ')' : '\0';
    if (runs().empty() || !look.take('+') || (close != '\0' && !look.take(close))) return false;
    auto end = look;
    end.take_blanks();
    bool const unit = (!extent_ || group_ < runs().size()) && take_page_unit(end) != nullptr;
    if (close == '\0' && !unit && !end.at_end() && !ends_statement(end.peek())) return false;
    cursor_ = look;
    return read_.pagination.incomplete = true;
  }
  /// Returns true before an approximate number of pages or plates in brackets: [ca. 240] p. After the unit, [ca. 1650] is a remark.
  [[nodiscard]] bool approximate_bracket_follows() {
    auto look = cursor_;
    if (!look.take('[') || !take_about(look)) return false;
    auto const roman = page_numeral(look.rest());
    if (!look.take_number()) look.skip(roman ? roman->bytes : 0);
    if (!look.take(']')) return false;
    look.take_blanks();
    bool folded = false;
    return (extent_ && group_ < runs().size()) || take_page_unit(look) != nullptr || take_plates(look, folded);
  }
  /// Leaves `front. (port.),` before the pages unread, as old cards have it.
  bool leave_frontispiece() {
    auto const from = cursor_.at();
    if (!wanted_extent_ || any_ || !take_frontispiece(cursor_)) return cursor_.go_to(from), false;
    if (cursor_.take(" (")) {
      while (!cursor_.at_end() && cursor_.peek() != ')') cursor_.skip(1);
      static_cast<void>(cursor_.take(')'));
    }
    if (cursor_.peek() != ',') return cursor_.go_to(from), false;
    return read_.unread.push_back({from, cursor_.at()}), true;
  }
  /// Leaves a remark in brackets after a number unread: 205 [sic], [1] (errata), [2] p.
  bool leave_note() {
    if (approximate_bracket_follows() || letters_in_bracket()) return false;
    auto const from = cursor_.at();
    bool const square = cursor_.take('[');
    if (!any_ || (!square && !cursor_.take('(')) || !is_latin_letter(cursor_.peek()) || figure().value > 0)
      return cursor_.go_to(from), false;
    char const close = square ? ']' : ')';
    while (!cursor_.at_end() && cursor_.peek() != close && cursor_.peek() != '[' && cursor_.peek() != '(')
      cursor_.skip(1);
    if (!cursor_.take(close)) return cursor_.go_to(from), false;
    read_.unread.push_back({from, cursor_.at()});
    if (!extent_) warn(Problem::text_not_read, from);
    return true;
  }
  /// `80 leaves, 3-78 numbered I-LXXVI`: which of the leaves bear numbers, and no more leaves.
  [[nodiscard]] bool numbers_described() {
    if (!extent_ || !unit_seen_ || group_ == runs().size() || runs().back().last <= runs().back().first) return false;
    auto look = cursor_;
    bool unnumbered = false;
    if (!take_numbering_words(look, unnumbered) || unnumbered) return false;
    look.take_blanks();
    return take_page_unit(look) == nullptr;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
