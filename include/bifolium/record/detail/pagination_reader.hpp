// SPDX-License-Identifier: MIT
/// Reads statements of pagination, which begin with their unit, and extents, which end with it. The two differ in what a
/// number alone means: in `pp. 1-7, 8` it is a page, in `8, 205 p.` it is as many pages; the unit at the beginning tells
/// which of the two a text is.
#pragma once

#include <bifolium/record/detail/page_faults.hpp>
#include <bifolium/record/detail/page_sequences.hpp>
#include <bifolium/record/detail/page_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PaginationReader : PageFaultScanner {
  bool extent_;        // the unit comes after the numbers
  bool wanted_extent_; // what the caller asked for: errors name it
  bool ranges_{};      // a run from - to was read: in a statement, numbers alone are then single pages
  bool unit_seen_{}, any_{};
  int depth_{}; // of the parentheses after volumes
  std::uint16_t part_{};
  PageUnitWord unit_{"", PageUnit::pages}; // of the numbers after it, where the unit comes first
  std::size_t group_{};                    // the first run whose unit is not read yet
  bool approximate_{};
  std::size_t approximate_run_{SIZE_MAX}; // the first run said to be approximate; it may yet be left unread
  PageSequences sequences_{};

  [[nodiscard]] std::vector<PageRun>& runs() { return read_.pagination.runs; }
  [[nodiscard]] Problem problem() const { return wanted_extent_ ? Problem::not_an_extent : Problem::not_a_pagination; }
  [[nodiscard]] std::optional<Error> wrong(Figure const& figure, std::size_t from) {
    if (figure.value < 1) return cursor_.error_from(from, problem());
    if (figure.value > most) return cursor_.error_from(from, Problem::number_too_large);
    return std::nullopt;
  }

  // -- corrections ---------------------------------------------------------------------------------------------------

  /// [=152], [i.e. 152], [that is, 152] after a run, perhaps with a comma between.
  std::optional<Error> correction(PageRun& run) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    if (cursor_.take(',')) cursor_.take_blanks();
    auto const from = cursor_.at();
    char const close = cursor_.take('[') ? ']' : cursor_.take('(') ? ')' : '\0';
    cursor_.take_blanks();
    if (close == '\0' || !take_correction_word(cursor_)) return cursor_.go_to(here), std::nullopt;
    cursor_.take_blanks();
    auto const truly = figure();
    cursor_.take_blanks();
    static_cast<void>(cursor_.take('?'));
    if (truly.value < 1 || !cursor_.take(close)) return cursor_.error_from(from, problem());
    if (truly.value > most) return cursor_.error_from(from, Problem::number_too_large);
    run.true_at = truly.at;
    if (run.numbering == Numbering::none)
      run.count = truly.value;
    else {
      run.count = sequences_.corrected_count(run, truly.value);
      run.true_last = truly.value;
    }
    return std::nullopt;
  }
  static void set_unit(PageRun& run, PageUnitWord const& unit) {
    run.unit = unit.unit;
    run.preliminary = unit.preliminary;
    if (!unit.preliminary || run.numbering != Numbering::printed) return;
    run.numbering = Numbering::none; // 4 p. l. are four leaves without numbers
    run.numerals = {}, run.series = 0, run.starred = false;
    run.first = run.last = run.true_last = 0;
  }
  std::optional<Error> finish(PageRun& run, std::size_t from, bool range) {
    if (auto error = correction(run)) return error;
    if (cursor_.take('+')) read_.pagination.incomplete = true; // 142+
    run.at = {from, cursor_.at()};
    run.part = part_;
    set_unit(run, unit_);
    sequences_.add(run, range);
    runs().push_back(run);
    any_ = true;
    return std::nullopt;
  }

  // -- runs ----------------------------------------------------------------------------------------------------------

  /// The number that comes next in the text, looked at only.
  [[nodiscard]] std::int64_t next_number(Numerals numerals) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    while (cursor_.take(',')) cursor_.take_blanks();
    bool const bracket = cursor_.take('[');
    auto const next = figure();
    bool const run = cursor_.take_dash();
    cursor_.go_to(here);
    return next.numerals == numerals && (!bracket || run) ? next.value : -1;
  }
  /// In a statement [206] is a page where it continues the numbers and the number after it, if there is one, continues
  /// from it; else it is so many pages.
  void decide_bracket(PageRun& run, Figure const& figure, std::size_t from) {
    PageRun as_number{Numbering::inferred, figure.numerals, run.series};
    as_number.starred = run.starred;
    auto const next = next_number(figure.numerals);
    if (!sequences_.is_number_of_page(as_number, figure.value, next)) return;
    as_number.first = as_number.last = figure.value;
    as_number.count = 1;
    as_number.last_at = run.last_at;
    run = as_number;
    if (next != figure.value + 1 && figure.value <= 16) warn(Problem::bracket_read_as_number, from);
  }
  std::optional<Error> bracketed(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    cursor_.skip(1);
    cursor_.take_blanks();
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::none};
    run.series = series, run.starred = starred;
    run.count = first.value, run.last_at = first.at;
    bool lone = true, said = false;
    if (cursor_.take_dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
      if (auto error = wrong(last, from)) return error;
      run.numbering = Numbering::inferred, run.numerals = first.numerals;
      run.first = first.value, run.last = last.value, run.count = last.value - first.value + 1;
      run.first_at = first.at, run.last_at = last.at;
      lone = false;
    } else
      run.series = 0, run.starred = false;
    if (cursor_.take('+')) read_.pagination.incomplete = true; // [48+]
    cursor_.take_blanks();
    for (char const* word : {"unnumbered", "unpaged", "unfoliated", "pages", "pp.", "p.", "leaves", "ll."})
      if (cursor_.take(word)) said = true, cursor_.take_blanks();
    if (lone && take_correction_word(cursor_)) { // [12 i.e. 14]
      cursor_.take_blanks();
      auto const truly = figure();
      if (auto error = wrong(truly, from)) return error;
      run.count = truly.value, run.true_at = truly.at;
    }
    if (!cursor_.take(']')) return cursor_.error_from(from, problem());
    if (lone && cursor_.take_dash()) return opened_range(first, series, starred, from);
    if (lone && !said && !extent_) {
      run.series = series, run.starred = starred;
      decide_bracket(run, first, from);
      if (run.numbering == Numbering::none) run.series = 0, run.starred = false;
    }
    return finish(run, from, !lone);
  }
  /// [3]-40: the first page bears no number.
  std::optional<Error> opened_range(Figure const& first, std::uint8_t series, bool starred, std::size_t from) {
    PageRun head{Numbering::inferred, first.numerals, series, starred};
    head.first = head.last = first.value, head.count = 1, head.last_at = first.at;
    head.at = {from, cursor_.at()}, head.part = part_;
    set_unit(head, unit_);
    auto const last = figure();
    if (last.value <= first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    sequences_.add(head, true);
    runs().push_back(head);
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = first.value + 1, run.last = last.value, run.count = last.value - first.value, run.last_at = last.at;
    ranges_ = true;
    return finish(run, last.at.from, true);
  }
  /// 1-205, or 1-[206] of which the last page bears no number.
  std::optional<Error> range(PageRun& run, Figure const& first, std::size_t from) {
    cursor_.take('*');
    bool const unprinted = cursor_.take('[');
    auto const last = figure();
    if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    if (unprinted && !cursor_.take(']')) return cursor_.error_from(from, problem());
    ranges_ = true;
    run.last = last.value, run.count = last.value - first.value + 1;
    run.first_at = first.at, run.last_at = last.at;
    if (!unprinted) return finish(run, from, true);
    auto tail = run;
    if (run.count > 1) {
      run.last = last.value - 1, --run.count, run.last_at = {}, run.at = {from, last.at.from};
      run.part = part_;
      set_unit(run, unit_);
      sequences_.add(run, true);
      runs().push_back(run);
    }
    tail.numbering = Numbering::inferred;
    tail.first = tail.last, tail.count = 1, tail.first_at = {};
    return finish(tail, last.at.from, true);
  }
  /// A number alone is one page, or in an extent the last of its sequence: 205 for 1-205.
  std::optional<Error> numbered(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = run.last = first.value, run.count = 1, run.last_at = first.at;
    if (cursor_.take_dash()) return range(run, first, from);
    if (sequences_.is_one_page(run, first.value, extent_, ranges_)) return finish(run, from, extent_);
    run.first = 1, run.count = first.value;
    if (!extent_ && ranges_) warn(Problem::number_read_as_total, from);
    return finish(run, from, false);
  }

  // -- plates, volumes, units ----------------------------------------------------------------------------------------

  /// (7 folded), (folded), (some folded) after plates.
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
  /// [1] leaf of plates, xxii leaves of plates, approximately 55 leaves of plates, 4 plates.
  std::optional<Error> plates(bool& found) {
    auto const from = cursor_.at();
    found = false;
    bool const bracket = cursor_.take('[');
    auto const number = figure();
    Plates plates{number.value, PageUnit::leaves, number.numerals, !bracket};
    if (number.value < 1 || (bracket && !cursor_.take(']'))) return cursor_.go_to(from), std::nullopt;
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
    read_.plates.push_back(plates);
    approximate_ = false;
    return found = any_ = true, std::nullopt;
  }
  /// 3 v. in 2, 1 sheet, and the parenthesis after them that holds the pages.
  bool container() {
    auto const from = cursor_.at();
    auto const number = cursor_.take_number(most);
    cursor_.take_blanks();
    auto const what = number ? take_container(cursor_) : Container::none;
    if (what == Container::none) return cursor_.go_to(from), false;
    (what == Container::sheets ? read_.sheets : read_.volumes) = number;
    cursor_.take_blanks();
    if (auto const here = cursor_.at(); cursor_.take_word("in")) {
      cursor_.take_blanks();
      read_.bound_in = cursor_.take_number(most);
      if (!read_.bound_in) cursor_.go_to(here);
      cursor_.take_blanks();
    }
    if (cursor_.take('(')) ++depth_;
    return any_ = true;
  }
  /// The unit after a group of numbers is the unit of all of them.
  bool unit() {
    auto const* found = take_page_unit(cursor_);
    if (found == nullptr) return false;
    if (!extent_) unit_ = *found;
    if (extent_ || !unit_seen_)
      for (auto r = group_; r < runs().size(); ++r) set_unit(runs()[r], *found);
    group_ = runs().size();
    return unit_seen_ = true;
  }
  /// Words that say how the whole is paged.
  bool take_remark() {
    auto const here = cursor_.at();
    bool const bracket = cursor_.take('[') || cursor_.take('(');
    bool found = false;
    for (char const* word : {"unpaged", "unfoliated", "unnumbered", "unp."})
      found = found || (cursor_.take(word) && (read_.pagination.unpaged = true));
    for (char const* words : {"in various pagings", "various pagings", "various foliations", "in various foliations"})
      found = found || (wanted_extent_ && cursor_.take(words) && (read_.various_pagings = true));
    found = found || (cursor_.take("incomplete") && (read_.pagination.incomplete = true));
    if (!found) return cursor_.go_to(here), false;
    if (bracket && !cursor_.take(']')) static_cast<void>(cursor_.take(')'));
    return any_ = true;
  }
  bool take_approximately() {
    for (char const* word : {"approximately", "approx.", "about", "ca.", "circa"})
      if (cursor_.take(word)) return approximate_ = true;
    return false;
  }
  bool take_separator() {
    if (cursor_.peek() == ';' && !size_follows()) {
      cursor_.skip(1);
      if (!runs().empty() && runs().back().part == part_ && part_ < UINT16_MAX) ++part_, sequences_.begin_part();
      return true;
    }
    if (depth_ > 0 && cursor_.take(')')) return --depth_, true;
    if (depth_ > 0 && cursor_.take('(')) return ++depth_, true;
    return cursor_.take(',') || cursor_.take('+') || cursor_.take('&') || cursor_.take_word("and");
  }

  // -- the whole -----------------------------------------------------------------------------------------------------

  [[nodiscard]] bool at_run() const {
    auto const c = cursor_.peek();
    auto const roman = roman_numeral(cursor_.rest().substr(0, 40)).bytes;
    return c == '[' || c == '*' || cursor_.at_digit() || superscript_digit(cursor_.character().value) >= 0 ||
           (roman > 0 && !is_latin_letter(cursor_.peek(roman)));
  }
  /// True before `; 20 cm` and `19 x 12 cm`: the extent ends there.
  [[nodiscard]] bool size_follows() const {
    auto look = cursor_;
    static_cast<void>(look.take(';'));
    look.take_blanks();
    for (int numbers = 0; numbers < 3 && look.at_digit(); ++numbers) {
      while (look.at_digit() || ((look.peek() == '.' || look.peek() == ',') && is_digit(look.peek(1)))) look.skip(1);
      look.take_blanks();
      for (char const* unit : {"cm", "mm", "in", "inches"})
        if (look.take_word(unit)) return true;
      if (!look.take('x') && !look.take("×") && !look.take_dash()) return false;
      look.take_blanks();
    }
    return false;
  }
  std::optional<Error> run() {
    auto const from = cursor_.at();
    auto const of_series = series();
    bool const starred = cursor_.take('*');
    auto const number = cursor_.at(), runs_before = runs().size();
    auto const error = cursor_.peek() == '[' ? bracketed(of_series, starred) : numbered(of_series, starred);
    if (error) return error;
    if (from < number) runs()[runs_before].at.from = from;
    if (approximate_ && approximate_run_ > runs_before) approximate_run_ = runs_before;
    approximate_ = false;
    return error;
  }
  /// What cannot be read after the pages is left unread; before them it is an error.
  std::optional<Error> leave_rest() {
    auto from = cursor_.at();
    if (!any_) return cursor_.error_from(from, problem());
    if (extent_ && unit_seen_ && group_ < runs().size()) { // [124] p., [2] folded maps
      from = runs()[group_].at.from;
      runs().resize(group_);
    }
    auto to = cursor_.text().size();
    while (to > from && cursor_.text()[to - 1] == ' ') --to;
    cursor_.go_to(cursor_.text().size());
    if (cursor_.text().substr(from, to - from) == ".") return std::nullopt;
    read_.unread.push_back({from, to});
    if (!extent_) warn(Problem::text_not_read, from);
    return std::nullopt;
  }
  std::optional<Error> next() {
    if (take_separator() || take_remark() || take_approximately()) return std::nullopt;
    if (any_ && unit()) return std::nullopt;
    if (any_ && !extent_ && begins_faults()) return faults();
    if (wanted_extent_ && container()) return std::nullopt;
    bool found = false;
    if (auto error = plates(found); error || found) return error;
    if (!at_run() || size_follows()) return leave_rest();
    auto const here = cursor_.at();
    auto error = run();
    if (error && unit_seen_ && extent_) return cursor_.go_to(here), leave_rest(); // "... p. [see note]"
    return error;
  }

public:
  PaginationReader(std::string_view text, bool extent)
      : PageFaultScanner{text}, extent_{extent}, wanted_extent_{extent} {}

  Expected<Extent> read() {
    cursor_.take_blanks();
    if (auto const* first = take_page_unit(cursor_)) extent_ = false, unit_seen_ = true, unit_ = *first;
    while (true) {
      cursor_.take_blanks();
      if (cursor_.at_end()) break;
      if (auto error = next()) return *error;
    }
    if (!any_) return cursor_.error_from(0, problem());
    if (auto error = end_groups()) return *error;
    read_.approximate = approximate_run_ < runs().size();
    apply_faults();
    if (read_.pages() > 99'999'999) return cursor_.error_from(0, Problem::number_too_large);
    return static_cast<Extent&&>(read_);
  }

private:
  /// Numbers after the last unit: of the same unit, with a doubt; without any unit there is no extent.
  std::optional<Error> end_groups() {
    if (!extent_ || group_ == runs().size()) return std::nullopt;
    if (!unit_seen_) return wanted_extent_ ? std::optional{cursor_.error_here(Problem::unexpected_end)} : std::nullopt;
    auto const unit = group_ > 0 ? runs()[group_ - 1].unit : PageUnit::pages;
    for (auto r = group_; r < runs().size(); ++r) {
      runs()[r].unit = unit;
      read_.pagination.warn(cursor_.error(Problem::pages_without_unit, runs()[r].at));
    }
    return std::nullopt;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
