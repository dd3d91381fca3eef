// SPDX-License-Identifier: MIT
/// Reading a statement of pagination, "pp. [8] 1-205 [206] [misprinting 45 as 54]", or of foliation, "ff. [2] 1-152".
/// A figure in brackets is so many pages without numbers - but a page whose number is inferred where it goes on from the
/// number before and the next number, if there is one, goes on from it. "[=152]" and "[i.e. 152]" correct the last number
/// of a run: what it would be, counted on from the run before. Library extents ("[8], 205, [3] p.") are the same thing
/// shortened: there 205 means 1-205. What is doubtful is a warning.
#pragma once

#include <bifolium/record/detail/scan_page_faults.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads both: the statement that begins with its unit, and the extent that ends with it.
class PaginationReader : PageFaultScanner {
  /// The last run with numbers of a kind.
  [[nodiscard]] PageRun const* last_numbered(Numerals numerals, int series) const {
    for (auto i = read_.runs.size(); i-- > 0;)
      if (read_.runs[i].numbering != Numbering::none)
        return read_.runs[i].numerals == numerals && read_.runs[i].series == series ? &read_.runs[i] : nullptr;
    return nullptr;
  }
  /// The number the last page of what was read should bear, counted on through pages without numbers.
  [[nodiscard]] std::int64_t counted_to() const {
    std::int64_t without = 0;
    for (auto i = read_.runs.size(); i-- > 0;) {
      auto const& run = read_.runs[i];
      if (run.numbering != Numbering::none) return without + (run.true_last != 0 ? run.true_last : run.last);
      without += run.count;
    }
    return 0; // pages before the first number are outside the numbers
  }
  /// How many pages a corrected run has. A "true" number below its first can only be how many there are.
  [[nodiscard]] static std::int64_t corrected_count(PageRun const& run, std::int64_t counted, std::int64_t truly) {
    auto const first = counted > 0 && counted + 1 < run.first ? counted + 1 : run.first;
    return truly >= first ? truly - first + 1 : truly;
  }
  /// The number that comes next in the text, looked at only.
  [[nodiscard]] std::int64_t next_number(Numerals numerals) {
    auto const here = at_;
    blanks();
    while (take(",")) blanks();
    bool const bracket = take("[");
    auto const next = figure();
    bool const run = dash();
    at_ = here;
    return next.numerals == numerals && (!bracket || run) ? next.value : -1;
  }
  /// [=152], [i.e. 152], [recte 152] behind a run, perhaps with a comma between.
  std::optional<Error> correction(PageRun& run, std::int64_t counted) {
    auto const here = at_;
    blanks();
    if (byte() == ',') ++at_, blanks();
    auto const from = at_;
    bool const opened = take("[");
    blanks();
    if (!opened || !(take("=") || take("i.e.") || take("i. e.") || take("recte")))
      return at_ = here, std::optional<Error>{};
    blanks();
    auto const truly = figure();
    blanks();
    if (truly.value < 1 || !take("]")) return error(extent_ ? Problem::not_an_extent : Problem::not_a_pagination, from);
    if (truly.value > most) return error(Problem::number_too_large, from);
    if (run.numbering == Numbering::none) return run.count = truly.value, std::optional<Error>{};
    run.count = corrected_count(run, counted, truly.value);
    run.true_last = truly.value;
    return {};
  }

  std::optional<Error> bracketed(int series) {
    auto const from = at_;
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    ++at_;
    blanks();
    auto const first = figure();
    if (first.value < 1) return error(problem, from);
    if (first.value > most) return error(Problem::number_too_large, from);
    PageRun run{Numbering::none, {}, {}, 0, 0, first.value, 0};
    auto const inferred = [&](std::int64_t last) {
      run = {Numbering::inferred,
             first.numerals,
             static_cast<std::uint8_t>(series),
             first.value,
             last,
             last - first.value + 1,
             0};
    };
    bool lone = true, said = false;
    if (dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return error(problem, from);
      if (last.value > most) return error(Problem::number_too_large, from);
      inferred(last.value);
      lone = false;
    }
    take("+"); // [48+] p.: an imperfect copy
    blanks();
    for (std::string_view word : {"unnumbered", "unpaged", "unfoliated", "pages", "pp.", "p.", "leaves", "ll."})
      if (take(word)) said = true, blanks();
    if (!take("]")) return error(problem, from);
    if (lone && !said && !extent_) {
      auto const* before = last_numbered(first.numerals, series);
      auto const next = next_number(first.numerals);
      bool const goes_on = before != nullptr && !read_.runs.empty() && read_.runs.back().numbering != Numbering::none &&
                           first.value == before->last + 1;
      bool const opens = first.value == 1 && next == 2; // [1] 2-205
      if (opens || (goes_on && next != before->last + 1)) {
        inferred(first.value);
        if (next != first.value + 1 && first.value <= 16) warn(Problem::bracket_read_as_number, from);
      }
    }
    auto const counted = counted_to();
    if (auto wrong = correction(run, counted)) return wrong;
    read_.runs.push_back(run);
    return {};
  }
  std::optional<Error> numbered(int series) {
    auto const from = at_;
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    auto const first = figure();
    if (first.value < 0) return error(problem, from);
    if (first.value > most || first.value == 0)
      return error(first.value == 0 ? problem : Problem::number_too_large, from);
    PageRun run{Numbering::printed, first.numerals, static_cast<std::uint8_t>(series), first.value, first.value, 1, 0};
    if (dash()) {
      auto const last = figure();
      if (last.value < first.value || last.numerals != first.numerals) return error(problem, from);
      if (last.value > most) return error(Problem::number_too_large, from);
      run.last = last.value;
      run.count = last.value - first.value + 1;
      ranges_ = true;
    } else {
      auto const* before = last_numbered(first.numerals, series);
      bool const one_page =
          !extent_ && (first.value == 1 || (before != nullptr && (ranges_ || first.value == before->last + 1)));
      if (!one_page) {
        run.first = 1;
        run.count = first.value;
        if (!extent_ && ranges_) warn(Problem::number_read_as_total, from);
      }
    }
    auto const counted = counted_to();
    if (auto wrong = correction(run, counted)) return wrong;
    read_.runs.push_back(run);
    return {};
  }

  /// Plates are listed apart and bear no pages: "4 plates", "[2] leaves of plates", "plates".
  [[nodiscard]] bool plates_follow() const {
    auto i = at_;
    while (i < text_.size() && (is_digit(text_[i]) || text_[i] == '[' || text_[i] == ']' || text_[i] == ' ')) ++i;
    for (std::string_view word : {"leaves of ", "leaf of ", "engraved ", "folding ", "folded "})
      if (text_.substr(i).starts_with(word)) i += word.size();
    return text_.substr(i).starts_with("plate");
  }

public:
  PaginationReader(std::string_view text, bool extent) : PageFaultScanner{text, extent} {}

  Expected<Pagination> read() {
    auto const problem = extent_ ? Problem::not_an_extent : Problem::not_a_pagination;
    blanks();
    if (unit()) extent_ = false;
    blanks();
    bool any = false;
    bool const bracket = byte() == '[' && !is_digit(byte(1));
    auto const here = at_;
    if (bracket) ++at_;
    if (take("unpaged") || take("unfoliated") || take("unnumbered")) {
      read_.unpaged = any = true;
      if (bracket) static_cast<void>(take("]"));
    } else
      at_ = here;
    bool ended = false;
    while (!ended) {
      blanks();
      if (at_ == text_.size()) break;
      if (byte() == ',' || byte() == ';' || byte() == '+') {
        ++at_;
        continue;
      }
      if (any && byte() == '.' && at_ + 1 == text_.size()) {
        ++at_;
        continue;
      }
      if (any && unit()) { // "[8], 205, [3] p.": what follows is not of the pages
        ended = true;
        continue;
      }
      if (any && !extent_ && begins_faults()) {
        if (auto const wrong = faults()) return *wrong;
        continue;
      }
      if (any && plates_follow()) break;
      auto const series = raised();
      if (any && series == 0 && byte() != '[' && !is_digit(byte()) && roman_numeral(text_.substr(at_)).bytes == 0) {
        auto const from = at_;
        at_ = text_.size();
        if (extent_) return error(problem, from);
        warn(Problem::text_not_read, from);
        break;
      }
      if (auto const wrong = byte() == '[' ? bracketed(series) : numbered(series)) return *wrong;
      any = true;
    }
    if (!any) return error(problem, 0);
    if (extent_ && !unit_seen_) return error(Problem::unexpected_end, at_);
    if (page_count(read_) > 99999999) return error(Problem::number_too_large, 0);
    return static_cast<Pagination&&>(read_);
  }
};

} // namespace detail

/// Reads a statement of pagination or foliation; the unit in front ("pp.", "ff.") may be missing.
/// error: not_a_pagination, number_too_large, with the column.
[[nodiscard]] inline Expected<Pagination> read_pagination(std::string_view text) {
  return detail::PaginationReader{text, false}.read();
}

/// The statement in what follows a formula ("86 leaves, pp. [4] 1-32 35-154[=152] [16]"). Columns are those of
/// formula.tail(). error: as `read_pagination`; not_stated.
[[nodiscard]] inline Expected<Pagination> pagination_of(Formula const& formula) {
  std::string_view const text = formula.tail();
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i > 0 && text[i - 1] != ' ' && text[i - 1] != ',' && text[i - 1] != ';') continue;
    for (std::string_view unit : {"pp. ", "p. ", "ff. ", "foll. ", "fol. ", "ll. "}) {
      if (!text.substr(i).starts_with(unit)) continue;
      auto const next = i + unit.size() < text.size() ? text[i + unit.size()] : '\0';
      // "50 ll. plates" states leaves; "ff. [2] 1-152" numbers them
      if (next != '[' && !is_digit(next) && roman_numeral(text.substr(i + unit.size())).bytes == 0) continue;
      auto read = read_pagination(text.substr(i));
      if (read) return read;
      auto error = read.error();
      error.column += column_of(text, i) - 1;
      return error;
    }
  }
  return error_at(Problem::not_stated, 1, 1);
}

} // namespace v0
} // namespace bifolium
