// SPDX-License-Identifier: MIT
/// Reads what a statement of pages says beside its runs of numbers: plates, volumes, the unit of a group of numbers, and
/// words about the paging of the whole. None of these reads a run, so each can be tried before it is known whether a
/// number begins one: the 3 of `3 v.` and the 2 of `2 plates` are no pages.
#pragma once

#include <bifolium/fold/read_format.hpp>
#include <bifolium/leaf/leaf_words.hpp>
#include <bifolium/record/detail/page_run_reader.hpp>
#include <bifolium/record/detail/plate_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageRemarkReader : protected PageRunReader {
  std::int64_t volume_named_{}; // the number of the last volume that was named
  bool plates_unstated_{};      // the pages include plates, and it is not said how many

protected:
  using PageRunReader::PageRunReader;
  std::optional<PageUnitWord> unit_in_parenthesis_{}; // the unit that comes first in the parenthesis after volumes

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
  /// Reads [1] leaf of plates, xxii leaves of plates, approximately 55 leaves of plates, or 4 plates.
  std::optional<Error> plates(bool& found) {
    auto const from = cursor_.at();
    found = false;
    bool const bracket = cursor_.take('[');
    if (bracket) cursor_.take_blanks(); // [ 1 ] leaf of plates
    auto const number = figure();
    Plates plates{number.value, PageUnit::leaves, number.numerals, !bracket};
    if (bracket) cursor_.take_blanks();
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
    plates.approximate = approximate_;
    plates.at = {from, cursor_.at()};
    take_folded(plates, folded);
    if (auto const counted = take_inclusion_after(cursor_)) plates.in_pages = *counted, plates.at.to = cursor_.at();
    read_.plates.push_back(plates);
    approximate_ = false;
    return found = any_ = true, std::nullopt;
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
  /// Takes the unit before the numbers in a parenthesis: 1 v. (pp. 205-320).
  void take_unit_in_parenthesis() {
    auto look = cursor_;
    auto const* const unit = take_page_unit(look);
    if (unit == nullptr || unit->only_after) return;
    look.take_blanks();
    if (!look.at_digit() && look.peek() != '[' && !page_numeral(look.rest())) return;
    cursor_ = look;
    unit_in_parenthesis_ = *unit;
  }
  /// Reads 3 v. in 2 or 1 sheet, and the parenthesis after it that contains the pages.
  bool container() {
    auto const from = cursor_.at();
    bool const bracket = cursor_.take('['); // [1] sheet
    auto const number = cursor_.take_number(most);
    bool const closed = !bracket || cursor_.take(']');
    cursor_.take_blanks();
    auto const what = number && closed ? take_container(cursor_) : Container::none;
    if (what == Container::none) return cursor_.go_to(from), false;
    (what == Container::sheets ? read_.sheets : read_.volumes) = number;
    cursor_.take_blanks();
    auto const found = format_at_start(cursor_.rest());
    bool const format = found && !is_digit(cursor_.rest()[found->bytes - 1]); // 2 vol. in 8°, and not 16 v. in 8
    if (auto const here = cursor_.at(); !format && (cursor_.take_word("in") || cursor_.take_word("en"))) {
      cursor_.take_blanks();
      read_.bound_in = cursor_.take_number(most);
      if (!read_.bound_in) cursor_.go_to(here);
      cursor_.take_blanks();
      if (read_.bound_in) static_cast<void>(take_container(cursor_)); // 2 parts in 1 v.
      cursor_.take_blanks();
    }
    if (cursor_.take('(')) {
      ++depth_;
      cursor_.take_blanks();
      take_unit_in_parenthesis();
    }
    return any_ = true;
  }
  /// Reads the unit after a group of numbers, which applies to all of them.
  bool unit() {
    auto const here = cursor_.at();
    auto const* const found = take_page_unit(cursor_);
    if (found == nullptr) return false;
    if (extent_ && group_ == runs().size()) return cursor_.go_to(here), false; // it has no numbers
    take_unit(*found);
    return true;
  }
  /// Takes `folded` between a number and its unit, or after the number of a statement that begins with its unit.
  bool take_folded_of_run() {
    auto look = cursor_;
    if (runs().empty() || (extent_ && group_ == runs().size()) || !take_folded_word(look)) return false;
    look.take_blanks();
    auto after = look;
    if (extent_ && take_page_unit(after) == nullptr) return false;
    cursor_ = look;
    return runs().back().folded = true;
  }
  /// Takes `bl.` as the unit of the numbers before it. With another unit it means blank: 2 ff. bl.
  bool take_bl_for_leaves() {
    auto look = cursor_;
    if (!extent_ || group_ == runs().size() || !look.take("bl.")) return false;
    look.take_blanks();
    if (!look.at_end() && std::string_view{",;:+)"}.find(look.peek()) == std::string_view::npos) return false;
    cursor_ = look;
    take_unit({"bl.", PageUnit::leaves});
    return true;
  }
  void take_unit(PageUnitWord const& found) {
    if (!unit_seen_ && !runs().empty()) units_follow_ = true;
    bool const of_numbers = units_follow_ && group_ < runs().size();
    if (!extent_)
      unit_ = of_numbers ? PageUnitWord{"", PageUnit::pages} : found; // what comes next has a unit of its own
    std::size_t own = 0;
    for (auto r = extent_ || units_follow_ ? group_ : runs().size(); r < runs().size(); ++r) {
      bool const has_own = own < own_unit_.size() && own_unit_[own] == r;
      if (!has_own) set_unit(runs()[r], found);
      own += has_own;
    }
    own_unit_.clear();
    group_ = runs().size();
    unit_seen_ = true;
  }
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
  bool take_approximately() {
    auto look = cursor_;
    // 120 c. are leaves
    if (!take_about(look) || (!look.at_digit() && look.peek() != '[' && !page_numeral(look.rest()))) return false;
    cursor_ = look;
    return approximate_ = true;
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
  [[nodiscard]] static bool ends_statement(char c) noexcept { return c == ',' || c == ';' || c == ':' || c == ')'; }
  [[nodiscard]] std::int64_t volume_after() const noexcept { return volume_named_ + 1; }
  /// `v. 2:` begins a part of its own.
  bool take_name_of_volume() {
    auto number = volume_named_ + 1;
    if (!wanted_extent_ || (!take_volume_number(cursor_, number) && !take_volume_name(cursor_, number))) return false;
    if (!runs().empty() && runs().back().part == part_ && part_ < UINT16_MAX) ++part_, sequences_.begin_part();
    volume_named_ = number;
    if (number > read_.volumes.value_or(0)) read_.volumes = number;
    return true;
  }
  /// Takes the unit before the numbers of a volume, or before numbers that begin again after those of another unit: Vol. I:
  /// pp. xii, 320; 8 leaves, pp. 1-205. It is of all numbers after it without a unit of their own. `p. 24 misnumbered` is
  /// a remark.
  bool take_unit_before() {
    auto look = cursor_;
    if (!wanted_extent_ || !extent_ || (!any_ && volume_named_ == 0) || group_ < runs().size()) return false;
    auto const* const unit = take_page_unit(look);
    if (unit == nullptr || unit->only_after || unit->title) return false;
    look.take_blanks();
    bool const in_part = !runs().empty() && runs().back().part == part_;
    auto const after_unit = look, here = cursor_;
    cursor_ = look;
    bool const bracket = cursor_.take('[');
    auto const first = figure();
    bool const range = !bracket && cursor_.take_dash() && figure().value > first.value;
    bool const ends =
        first.value > 0 && (bracket || cursor_.at_end() || ends_statement(cursor_.peek()) || cursor_.peek() == '.');
    cursor_ = here;
    // pp. 205 numbers pages, and p. 205 is one of them
    bool const plural = std::string_view{unit->word} == "pp." || std::string_view{unit->word} == "pages";
    bool const other = in_part && runs().back().unit != unit->unit;
    bool const begins = bracket || (range && first.value == 1) || (!range && plural && other);
    if (!ends || (in_part && !begins)) return false;
    cursor_ = after_unit;
    unit_ = *unit;
    return unit_seen_ = unit_before_ = true;
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
