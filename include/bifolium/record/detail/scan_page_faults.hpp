// SPDX-License-Identifier: MIT
/// Faults of numbering, as statements list them: "misprinting 45 as 54, '207' for 197; 33-34 omitted; repeating 95-96". A
/// misprint is kept beside the runs; numbers that come twice or not at all part a run in two.
#pragma once

#include <bifolium/record/detail/scan_pagination.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageFaultScanner : protected PaginationScanner {
  std::vector<std::size_t> misprint_at_{}; // the bytes where the misprints are stated

protected:
  using PaginationScanner::PaginationScanner;

  [[nodiscard]] bool begins_faults() const {
    auto i = at_;
    if (i < text_.size() && (text_[i] == '[' || text_[i] == '(')) ++i;
    auto const rest = text_.substr(i);
    for (std::string_view word : {"mis", "omit", "repeat", "numbers", "with "})
      if (rest.starts_with(word)) return true;
    // 33-34 omitted, '207' for 197: a figure and then a word of faults
    for (auto k = i; k < text_.size() && k < i + 24; ++k) {
      for (std::string_view word : {" as ", " for ", " mis", " omitted", " repeated", " numbered"})
        if (text_.substr(k).starts_with(word)) return true;
      if (text_[k] == ',' || text_[k] == ';' || text_[k] == ']' || text_[k] == '[' || text_[k] == ')') return false;
    }
    return false;
  }
  /// Numbers from a to b come twice, or not at all: the run is parted there, if the statement has not parted it already.
  bool part(std::int64_t a, std::int64_t b, Numerals numerals, int series, bool repeated) {
    for (std::size_t r = 0; r < read_.runs.size(); ++r) {
      auto const run = read_.runs[r];
      if (run.numbering != Numbering::printed || run.numerals != numerals || run.series != series) continue;
      auto const* next = r + 1 < read_.runs.size() ? &read_.runs[r + 1] : nullptr;
      if (repeated && next != nullptr && run.last == b && next->first == a) return true;
      if (!repeated && next != nullptr && run.last + 1 == a && next->first == b + 1) return true;
      bool const inside = repeated ? run.first <= a && b <= run.last : run.first < a && b < run.last;
      if (!inside || !run.regular()) continue;
      auto head = run, tail = run;
      head.last = repeated ? b : a - 1;
      tail.first = repeated ? a : b + 1;
      head.count = head.last - head.first + 1;
      tail.count = tail.last - tail.first + 1;
      read_.runs[r] = head;
      read_.runs.insert(read_.runs.begin() + static_cast<std::ptrdiff_t>(r + 1), tail);
      return true;
    }
    return false;
  }
  [[nodiscard]] bool has_page(Misprint const& wrong) const {
    for (auto const& run : read_.runs)
      if (run.numbering == Numbering::printed && run.numerals == wrong.numerals && run.series == wrong.series &&
          run.first <= wrong.should_be && wrong.should_be <= run.last)
        return true;
    return false;
  }
  /// Keeps the misprints of pages there are. A page may be gone by what was read behind its misprint: 2 as 3, omitting 2.
  void keep_misprints_of_pages() {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < misprint_at_.size(); ++i) {
      if (has_page(read_.misprints[i])) {
        read_.misprints[kept] = read_.misprints[i];
        misprint_at_[kept++] = misprint_at_[i];
      } else
        warn(Problem::fault_of_no_page, misprint_at_[i]);
    }
    while (misprint_at_.size() > kept) read_.misprints.pop_back(), misprint_at_.pop_back();
  }
  /// misprinting 45 as 54, '207' for 197; 33-34 omitted; repeating 95-96
  std::optional<Error> faults() {
    enum class Verb : std::uint8_t { misprinting, omitting, repeating } verb{};
    char const close = byte() == '[' ? ']' : byte() == '(' ? ')' : '\0';
    if (close != '\0') ++at_;
    while (true) {
      blanks();
      while (byte() == ',' || byte() == ';') ++at_, blanks();
      if (at_ == text_.size() || (close != '\0' && byte() == close)) break;
      if (take_word("with") || take_word("and") || take_word("numbers") || take("pages") || take("pp.") || take("p."))
        continue;
      if (take_word("misprinting") || take_word("misnumbering") || take_word("mispaging") || take_word("misprinted") ||
          take_word("misnumbered")) {
        verb = Verb::misprinting;
        continue;
      }
      if (take_word("omitting")) {
        verb = Verb::omitting;
        continue;
      }
      if (take_word("repeating")) {
        verb = Verb::repeating;
        continue;
      }
      auto const from = at_;
      auto const first = quoted();
      if (first.number.value < 1) return error(Problem::not_a_pagination, from);
      auto last = first.number;
      if (dash()) last = figure();
      if (last.value < first.number.value || last.value > most || last.numerals != first.number.numerals)
        return error(Problem::not_a_pagination, from);
      blanks();
      bool const printed_first = take_word("for");
      bool const says = printed_first || take_word("as") || take_word("misprinted") || take_word("misnumbered") ||
                        take_word("numbered") || take_word("printed");
      bool known = true;
      if (!says && (take_word("omitted") || (verb == Verb::omitting && !begins("repeated"))))
        known = part(first.number.value, last.value, last.numerals, first.series, false);
      else if (!says && (take_word("repeated") || verb == Verb::repeating))
        known = part(first.number.value, last.value, last.numerals, first.series, true);
      else {
        blanks();
        static_cast<void>(take_word("as"));
        blanks();
        auto const second = quoted();
        if (!says || second.number.value < 0 || second.number.numerals != first.number.numerals ||
            last.value != first.number.value)
          return error(Problem::not_a_pagination, from);
        auto const series = static_cast<std::uint8_t>(printed_first ? second.series : first.series);
        read_.misprints.push_back(printed_first ? Misprint{second.number.value, last.value, last.numerals, series}
                                                : Misprint{last.value, second.number.value, last.numerals, series});
        misprint_at_.push_back(from);
      }
      if (!known) warn(Problem::fault_of_no_page, from);
    }
    keep_misprints_of_pages();
    if (close != '\0' && at_ < text_.size()) ++at_; // the text may end before it
    return {};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
