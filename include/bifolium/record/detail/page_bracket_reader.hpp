// SPDX-License-Identifier: MIT
/// Reads one run of pages that begins with a bracket: [8], [206], [1 v.], [3]-40. What is in the bracket bears no number, so
/// the number may count pages, be that of a page that bears none, or state again in another unit what was counted before;
/// words in the bracket say which, or the runs beside it.
#pragma once

#include <bifolium/record/detail/page_run_reader.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageBracketReader : protected PageRunReader {
  /// Takes further numbers in the bracket, [1 bl., 2]. Without a word about them they may be the numbers of pages, [1, 2],
  /// and the bracket is refused.
  bool list_in_bracket(char close, PageRun& run, bool& said) {
    auto const here = cursor_;
    auto const count = run.count;
    while (cursor_.take(',')) {
      cursor_.take_blanks();
      auto const next = figure();
      if (next.value < 1 || next.value > most || words_in_bracket(close, true, said) != nullptr) {
        cursor_ = here, run.count = count;
        return true;
      }
      run.count += next.value;
    }
    return run.count == count || said;
  }
  /// Takes the words after a number in brackets, up to the end: `[8 unnumbered pages]`, `[4 ll.]`, `[1, blank]`, `[2 ads]`.
  /// Returns the unit among them, if there is one; words about what is printed there are left unread.
  PageUnitWord const* words_in_bracket(char close, bool lone, bool& said) {
    PageUnitWord const* own = nullptr;
    cursor_.take_blanks();
    for (bool more = true; more;) {
      auto const from = cursor_.at();
      bool unnumbered = false;
      if (take_numbering_words(cursor_, unnumbered)) said = true;
      if (own == nullptr && (own = take_page_unit(cursor_)) != nullptr) said = true;
      cursor_.take_blanks();
      more = cursor_.at() > from;
    }
    auto const here = cursor_.at();
    if (!lone || take_correction_word(cursor_, true)) return cursor_.go_to(here), own;
    auto const from = cursor_;
    if (cursor_.take(',')) cursor_.take_blanks();
    int depth = 0;
    bool const words = names_matter();
    auto const is_word = [&](char c) { return !is_digit(c) && c != '[' && !(depth == 0 && c == close); };
    while (words && !cursor_.at_end() && is_word(cursor_.peek())) {
      depth += cursor_.peek() == '(' ? 1 : cursor_.peek() == ')' ? -1 : 0;
      cursor_.skip(1);
    }
    if (!words || cursor_.peek() != close) return cursor_ = from, own;
    said = true;
    auto const text = cursor_.text().substr(from.at(), cursor_.at() - from.at());
    if (text.find("blank") == text.npos) read_.unread.push_back({from.at(), cursor_.at()});
    return own;
  }
  /// Takes a question mark or a word for `about` after a number in brackets: [240?], [240 ca.]. After a number `c.` are leaves.
  void take_doubt_in_bracket() {
    auto look = cursor_;
    look.take_blanks();
    bool const letter_alone = is_latin_letter(look.peek()) && !is_latin_letter(look.peek(1));
    if (!look.take('?') && (letter_alone || !take_about(look))) return;
    if (look.at_digit() || is_latin_letter(look.peek())) return;
    cursor_ = look;
    approximate_ = true;
  }
  /// Gives the last run the unit written inside its brackets; the unit after its group is not its own.
  void keep_unit(PageUnitWord const& unit) {
    set_unit(runs().back(), unit);
    if (group_ + 1 == runs().size())
      group_ = runs().size(), unit_seen_ = true;
    else
      own_unit_.push_back(runs().size() - 1);
  }
  /// Reads [3]-40, where the first page has no number.
  std::optional<Error> opened_range(Figure const& first, std::uint8_t series, bool starred, std::size_t from) {
    PageRun head{Numbering::inferred, first.numerals, series, starred};
    head.first = head.last = first.value, head.count = 1, head.last_at = first.at;
    TextSpan const at{from, cursor_.at()};
    auto const last = figure();
    if (last.value <= first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
    if (auto error = wrong(last, from)) return error;
    keep_beginning(head, at);
    PageRun run{Numbering::printed, first.numerals, series, starred};
    run.first = first.value + 1, run.last = last.value, run.count = last.value - first.value, run.last_at = last.at;
    ranges_ = true;
    return finish(run, last.at.from, true);
  }

protected:
  using PageRunReader::PageRunReader;

  /// Doubts whether numbers in a second unit are pages that were counted before.
  void tell_said_again(TextSpan span) {
    read_.pagination.warn(cursor_.error(Problem::pages_stated_again, span, pages_of_part()));
  }

  /// [8], and (8) as dealers write it.
  std::optional<Error> bracketed(std::uint8_t series, bool starred) {
    auto const from = cursor_.at();
    char const close = cursor_.peek() == '(' ? ')' : ']';
    cursor_.skip(1);
    cursor_.take_blanks();
    static_cast<void>(take_approximately());
    auto const first = figure();
    if (auto error = wrong(first, from)) return error;
    PageRun run{Numbering::none};
    run.series = series, run.starred = starred;
    run.count = first.value, run.last_at = first.at;
    bool lone = true, said = false;
    if (auto const pages = starred ? 0 : take_letters_of_number(first); pages > 0) { // [24a-d]
      run.numbering = Numbering::inferred, run.numerals = first.numerals, run.starred = true;
      run.first = run.last = first.value, run.count = pages;
      lone = false;
    } else if (auto const here = cursor_; take_mark_of_repetition()) {
      if (cursor_.peek() == close || !cursor_.take_dash())
        cursor_ = here;
      else
        cursor_ = here, static_cast<void>(take_mark_of_repetition()), run.starred = true;
    }
    if (cursor_.take_dash()) {
      auto const last = figure();
      if (run.starred) static_cast<void>(cursor_.take('*') || take_mark_of_repetition());
      if (last.value < first.value || last.numerals != first.numerals) return cursor_.error_from(from, problem());
      if (auto error = wrong(last, from)) return error;
      run.numbering = Numbering::inferred, run.numerals = first.numerals;
      run.first = first.value, run.last = last.value, run.count = last.value - first.value + 1;
      run.first_at = first.at, run.last_at = last.at;
      lone = false;
    } else if (lone)
      run.series = 0, run.starred = false;
    if (cursor_.take('+')) read_.pagination.incomplete = true; // [48+]
    take_doubt_in_bracket();
    auto const* const own = words_in_bracket(close, lone, said);
    take_doubt_in_bracket();
    if (lone && extent_ && own == nullptr && !list_in_bracket(close, run, said))
      return cursor_.error_from(from, problem());
    if (lone && take_correction_word(cursor_, true)) { // [12 i.e. 14]
      cursor_.take_blanks();
      auto const truly = figure();
      if (auto error = wrong(truly, from)) return error;
      run.count = truly.value, run.true_at = truly.at;
    }
    if (!cursor_.take(close)) return cursor_.error_from(from, problem());
    bool parts = lone && dash_parts(first);
    if (lone && !parts && series == 0 && !starred && before_sequence(first)) {
      parts = true;
      read_.pagination.warn(cursor_.error(Problem::bracket_read_as_count, {from, cursor_.at()}, first.value));
    }
    if (lone && !parts && cursor_.take_dash()) return opened_range(first, series, starred, from);
    if (lone && !said && !parts && !said_unnumbered()) {
      run.series = series, run.starred = starred;
      if (bracket_may_be_number(run, first)) decide_bracket(run, first, from);
      if (run.numbering == Numbering::none) run.series = 0, run.starred = false;
    }
    if (own != nullptr && lone)
      if (auto const again = said_again(run, *own, from); again != Again::added) {
        read_.unread.push_back({from, cursor_.at()});
        if (again == Again::doubtful) tell_said_again({from, cursor_.at()});
        return std::nullopt;
      }
    auto const error = finish(run, from, !lone);
    if (!error && parts) cursor_.take_dash();
    if (!error && own != nullptr) keep_unit(*own);
    return error;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
