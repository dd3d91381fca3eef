// SPDX-License-Identifier: MIT
/// Reads the units of a statement of pages, and the volumes that they are counted in. A unit is said of a group of numbers:
/// in an extent of those before it, in a statement that begins with its unit of those after it, and inside the parenthesis
/// of `1 v. (pp. 205-320)` of those in it. A new volume begins new numbers.
#pragma once

#include <bifolium/fold/read_format.hpp>
#include <bifolium/record/detail/page_plate_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageUnitReader : protected PagePlateReader {
  std::int64_t volume_named_{}; // the number of the last volume that was named

protected:
  using PagePlateReader::PagePlateReader;
  std::optional<PageUnitWord> unit_in_parenthesis_{}; // the unit that comes first in the parenthesis after volumes

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
  /// Takes the number of volumes as they are bound: in 1 v., bound in one, rel. en 1 vol.
  void take_bound_in() {
    auto const here = cursor_.at();
    for (std::string_view const word : {"bound", "bd.", "reliés", "reliées", "rel.", "geb.", "legati", "leg."})
      if (word.back() == '.' ? cursor_.take(word) : cursor_.take_word(word)) {
        cursor_.take_blanks();
        break;
      }
    bool const in = cursor_.take_word("in") || cursor_.take_word("en");
    cursor_.take_blanks();
    if (in) read_.bound_in = cursor_.take_number(most);
    if (in && !read_.bound_in)
      for (std::string_view const one : {"one", "einem", "un", "uno"})
        if (!read_.bound_in && cursor_.take_word(one)) read_.bound_in = 1;
    if (!read_.bound_in) return cursor_.go_to(here);
    cursor_.take_blanks();
    static_cast<void>(take_container(cursor_)); // 2 parts in 1 v.
    cursor_.take_blanks();
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
    if (!format) take_bound_in();
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
    if (!unit_seen_ && !runs().empty()) units_follow_ = true, counted_ = 0, counted_pages_ = 0;
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
  [[nodiscard]] std::int64_t volume_after() const noexcept { return volume_named_ + 1; }
  /// `v. 2:` begins a part of its own.
  bool take_name_of_volume() {
    auto number = volume_named_ + 1;
    auto const from = cursor_.at();
    if (wanted_extent_ && take_only_volume(cursor_)) { // of a set of which one volume is described
      read_.unread.push_back({from, cursor_.at()});
      read_.volumes = 1;
      cursor_.take_blanks();
      if (!cursor_.take(',') && !cursor_.take(':') && !cursor_.take('.') && cursor_.take('(')) ++depth_;
      return any_ = true;
    }
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
};

} // namespace detail
} // namespace v0
} // namespace bifolium
