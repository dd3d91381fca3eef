// SPDX-License-Identifier: MIT
/// Reads whole statements of pagination and extents: runs of pages, their units, plates, volumes, and the words about
/// the paging. A unit at the beginning makes the text a statement of pagination, a unit after the numbers an extent.
#pragma once

#include <bifolium/record/detail/page_separator_reader.hpp>
#include <bifolium/record/detail/pagination_doubts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PaginationReader : PageSeparatorReader {
  /// Takes `with` or a word like it before a number of plates.
  bool take_word_before_plates() {
    auto const here = cursor_.at();
    bool found = false;
    for (std::string_view const word : {"with", "mit", "avec", "con", "med"})
      if (!found && cursor_.take_word(word)) {
        cursor_.take_blanks();
        auto const error = plates(found);
        if (error) found = false;
      }
    if (!found) cursor_.go_to(here);
    return found;
  }
  /// Takes the title leaf that is listed without a number.
  bool title_leaf() {
    auto const from = cursor_.at();
    auto const before = before_blanks(cursor_.text(), from);
    bool const of_numbers = group_ < runs().size() && cursor_.text()[before - 1] != ','; // 1 Titelbl.
    if (!extent_ || !wanted_extent_ || of_numbers || !take_title_leaf(cursor_)) return false;
    PageRun run{Numbering::none};
    run.count = 1, run.unit = PageUnit::leaves;
    run.at = {from, cursor_.at()}, run.part = part_;
    sequences_.add(run, false);
    runs().push_back(run);
    if (group_ + 1 == runs().size())
      group_ = runs().size();
    else
      own_unit_.push_back(runs().size() - 1);
    return any_ = true;
  }
  [[nodiscard]] bool at_run() const {
    auto const c = cursor_.peek();
    auto const roman = numeral_bytes(cursor_);
    return c == '[' || c == '*' || cursor_.at_digit() || superscript_digit(cursor_.character().value) ||
           (roman > 0 && !is_latin_letter(cursor_.peek(roman))) || letter_run().bytes > 0 || parenthesis_of_number();
  }
  std::optional<Error> run() {
    auto const from = cursor_.at();
    auto const of_series = series();
    bool const starred = cursor_.take('*');
    auto const number = cursor_.at(), runs_before = runs().size();
    bool const bracket = cursor_.peek() == '[' || cursor_.peek() == '(';
    bool const letters = bracket ? letters_in_bracket() : letter_run().bytes > 0;
    auto const error = letters   ? lettered(of_series, starred)
                       : bracket ? bracketed(of_series, starred)
                                 : numbered(of_series, starred);
    if (error) return approximate_ = false, error;
    if (runs().size() == runs_before) return error; // pages that were stated before
    if (from < number) runs()[runs_before].at.from = from;
    if (approximate_ && approximate_run_ > runs_before) approximate_run_ = runs_before;
    approximate_ = false;
    return error;
  }
  /// Returns true if numbers of pages with their unit follow: `205 p.`, `[4], 12 leaves`.
  [[nodiscard]] bool pages_follow() {
    auto const here = cursor_.at();
    bool found = false;
    for (int numbers = 0; numbers < 8 && !found; ++numbers) {
      cursor_.take_blanks();
      if (size_follows()) break;
      char const close = cursor_.take('[') ? ']' : cursor_.take('(') ? ')' : '\0';
      if (figure().value < 1 || (cursor_.take_dash() && figure().value < 1)) break;
      if (close != '\0' && !cursor_.take(close)) break;
      cursor_.take_blanks();
      bool unnumbered = false;
      while (take_numbering_words(cursor_, unnumbered) || take_folded_word(cursor_)) cursor_.take_blanks();
      found = take_page_unit(cursor_) != nullptr;
      cursor_.take(',');
    }
    return cursor_.go_to(here), found;
  }
  /// Where in what is not read plates or pages are listed again, as in `front., 12 pl.` and `1 map, 4 p.`: their comma,
  /// or the end of the text.
  [[nodiscard]] std::size_t extent_after(std::size_t from) {
    auto const text = cursor_.text();
    auto const here = cursor_.at();
    auto end = text.size();
    int depth = 0;
    // what ` : ` and ` ; ` begin does not belong to the extent
    for (auto at = from; at < text.size() && end == text.size() && text[at] != ':' && text[at] != ';'; ++at) {
      depth += text[at] == '(' || text[at] == '[' ? 1 : text[at] == ')' || text[at] == ']' ? -1 : 0;
      if (text[at] != ',' || depth != 0) continue;
      cursor_.go_to(at + 1);
      cursor_.take_blanks();
      bool found = false;
      auto const error = plates(found);
      if (!error && found) read_.plates.pop_back(), end = at;
      if (!error && !found && extent_ && unit_seen_ && pages_follow()) end = at;
    }
    cursor_.go_to(here);
    return end;
  }
  /// Takes the same pages in other runs or units, in a parenthesis after their unit: 124 leaves ([8], 240 p.). They are told
  /// as unread, and doubted where they are others. One number is looked at as a run, which may be added: 240 p. (4 ff.).
  bool take_pages_again() {
    auto const from = cursor_.at(), before = before_blanks(cursor_.text(), from);
    auto const text = cursor_.text();
    if (runs().empty() || runs().back().part != part_ || (extent_ && group_ < runs().size()) || before == 0)
      return false;
    if (std::string_view{",+&;"}.find(text[before - 1]) != std::string_view::npos) return false;
    auto const close = text.find_first_of("()", from + 1);
    if (close == std::string_view::npos || text[close] != ')') return false;
    auto const inside = text.substr(from + 1, close - from - 1);
    if (inside.find(',') == std::string_view::npos) return false;
    auto const read = PaginationReader{inside, true, limits_}.read();
    if (!read || !read->unread.empty() || !read->plates.empty() || read->volumes || read->sheets) return false;
    auto const& pages = read->pagination;
    if (pages.parts() != 1 || !pages.warnings().empty()) return false;
    auto again = said_again(pages.pages());
    if (again == Again::added) { // 960 columns (480 p., 240 leaves): each run has all of them
      for (auto const& run : pages.runs)
        if (said_again(run.pages()) == Again::added) return false;
      again = Again::doubtful;
    }
    bool each = pages.runs.size() > 1;
    for (auto const& run : pages.runs) each = each && said_again(run.pages()) == Again::stated_again;
    cursor_.go_to(close + 1);
    read_.unread.push_back({from, close + 1});
    if (again != Again::stated_again && !each) tell_said_again({from, close + 1});
    return true;
  }
  /// What cannot be read after the pages is left unread; before them it is an error.
  std::optional<Error> leave_rest() {
    auto from = cursor_.at();
    if (!any_) return cursor_.error_from(from, problem());
    if (extent_ && unit_seen_ && group_ < runs().size()) { // [124] p., [2] folded maps
      from = runs()[group_].at.from;
      runs().resize(group_);
    }
    auto const end = extent_after(from);
    auto const before = before_blanks(cursor_.text(), end), to = before > from ? before : from;
    cursor_.go_to(end);
    if (cursor_.text().substr(from, to - from) == ".") return std::nullopt;
    read_.unread.push_back({from, to});
    if (!extent_) warn(Problem::text_not_read, from);
    return std::nullopt;
  }
  /// Takes the colon or stop between a number of volumes and their pages: 2 vols.: viii, 240; iv, 300 pp. A colon comes
  /// before illustrations too, so that the rest is read first.
  bool take_sign_after_volumes() {
    bool const sign = cursor_.peek() == ':' || cursor_.peek() == '.';
    if (!sign || !wanted_extent_ || !any_ || after_volumes_ || !runs().empty() || (!read_.volumes && !read_.sheets))
      return false;
    PaginationReader rest{cursor_.rest().substr(1), true, limits_, pages_if_missing_};
    rest.after_volumes_ = after_volumes_ = true;
    auto const read = rest.read();
    bool const pages = read ? !read->pagination.runs.empty() : read.error().problem == Problem::unit_of_pages_missing;
    if (pages) cursor_.skip(1);
    return pages;
  }
  std::optional<Error> next() {
    if (take_sign_after_volumes() || take_open_end()) return std::nullopt;
    if (cursor_.peek() == '(' && take_pages_again()) return std::nullopt;
    if (take_separator()) return std::nullopt;
    auto const c = cursor_.peek();
    bool const letter = is_latin_letter(c) || static_cast<unsigned char>(c) >= 0x80, bracket = c == '[' || c == '(';
    if ((letter || (bracket && is_latin_letter(cursor_.peek(1)))) && take_remark()) return std::nullopt;
    if ((letter || is_digit(c)) && take_name_of_volume()) return std::nullopt;
    if (letter && take_unit_before()) return std::nullopt;
    if (letter && (title_leaf() || take_approximately() || leave_frontispiece())) return std::nullopt;
    if (letter && numbers_described()) return leave_rest();
    if ((letter || (c == '(' && is_latin_letter(cursor_.peek(1)))) && plates_in_or_apart()) return std::nullopt;
    if (letter && any_ && take_word_before_plates()) return std::nullopt;
    bool unnumbered = false; // the run before has taken it into account
    if (letter && any_ && take_folded_of_run()) return std::nullopt;
    if ((letter || bracket || c == '?') && any_ && take_approximately_after()) return std::nullopt;
    if (letter && any_ && (take_bl_for_leaves() || take_numbering_words(cursor_, unnumbered) || unit()))
      return std::nullopt;
    if (any_ && !extent_ && begins_faults()) return faults();
    if (bracket && leave_note()) return std::nullopt;
    if (wanted_extent_ && (is_digit(c) || c == '[') && container()) return std::nullopt;
    bool found = false;
    if (auto error = plates(found); error || found) return error;
    if (!at_run() || size_follows()) return leave_rest();
    auto const here = cursor_.at();
    if (letter && here > 0 && is_digit(cursor_.text()[here - 1])) // the d of 25d is not a numeral
      return cursor_.error_from(here - 1, problem());
    auto error = run();
    if (error && unit_seen_ && extent_) return cursor_.go_to(here), leave_rest(); // "... p. [see note]"
    return error;
  }

public:
  /// `pages_if_missing`: numbers without any unit are pages, with a doubt.
  PaginationReader(std::string_view text, bool extent, Limits const& limits, bool pages_if_missing = false)
      : PageSeparatorReader{text, extent}, limits_{limits}, pages_if_missing_{pages_if_missing} {}

  Expected<Extent> read() {
    if (is_too_long(cursor_.text(), limits_)) return too_long(limits_);
    cursor_.take_blanks();
    auto const begin = cursor_.at();
    if (auto const* first = take_page_unit(cursor_); first != nullptr && !first->only_after)
      extent_ = false, unit_seen_ = true, unit_ = *first;
    else
      cursor_.go_to(begin);
    while (true) {
      cursor_.take_blanks();
      if (cursor_.at_end()) break;
      auto const from = cursor_.at();
      if (auto error = next()) return *error;
      TextSpan const last{from, cursor_.at()};
      if (runs().size() > limits_.runs) return cursor_.error(Problem::too_many_runs, last, limits_.runs);
      if (fault_count() > limits_.changes) return cursor_.error(Problem::too_many_changes, last, limits_.changes);
    }
    if (!any_) return cursor_.error_from(0, problem());
    if (auto error = end_groups()) return *error;
    if (wanted_extent_) doubt_range_of_volumes(cursor_, read_);
    doubt_equal_sums(cursor_, read_);
    if (approximate_run_ < runs().size()) {
      read_.pagination.approximate = true;
      read_.pagination.warn(cursor_.error(Problem::pages_approximate, runs()[approximate_run_].at));
    }
    count_plates_in_pages();
    apply_faults();
    if (read_.pages() > 99'999'999) return cursor_.error_from(0, Problem::number_too_large);
    return static_cast<Extent&&>(read_);
  }

private:
  Limits limits_;
  bool pages_if_missing_;
  bool after_volumes_{}; // the text after a number of volumes is being read, or was

  /// Numbers after the last unit: of the same unit, with a doubt. Numbers without any unit are not an extent, unless the
  /// caller says that they are pages.
  std::optional<Error> end_groups() {
    bool const unit_comes_first = !extent_ && (!units_follow_ || *unit_.word != '\0');
    if (unit_comes_first || group_ == runs().size()) return std::nullopt;
    if (!unit_seen_ && !wanted_extent_) return std::nullopt;
    if (!unit_seen_) {
      if (auto const word = unknown_unit(cursor_.text(), read_); !word.empty())
        return cursor_.error(Problem::not_a_unit_of_pages, word);
      TextSpan const numbers{runs().front().at.from, runs().back().at.to};
      if (!pages_if_missing_) return cursor_.error(Problem::unit_of_pages_missing, numbers);
      read_.pagination.warn(cursor_.error(Problem::pages_taken, numbers));
      return std::nullopt;
    }
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