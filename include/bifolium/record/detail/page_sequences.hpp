// SPDX-License-Identifier: MIT
/// The position that each sequence of numbers has reached while a statement is read. A corrected last number is the
/// number that counting from the sequence before gives, over pages without numbers. So the last run of every kind of
/// number is stored, and no text is read twice. The meaning of a number depends on what came before it. Reader and
/// writers use the same functions, so that a written statement reads back.
#pragma once

#include <bifolium/record/pagination.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PageSequences {
  struct Sequence {
    Numerals numerals{};
    std::uint8_t series{};
    bool starred{}, range{};      // range: its last run was written as from - to
    std::int64_t last{}, truly{}; // the last number as printed, and as it should be
    std::int64_t unnumbered{};    // pages without numbers before it
  };
  std::vector<Sequence> all_{}; // at most one for each kind of number
  std::size_t latest_{};        // the one that was read last; all_.size() if there is none
  std::int64_t unnumbered_{};
  bool open_{}; // true if the run before this one had numbers

  [[nodiscard]] Sequence const* find(PageRun const& run) const {
    for (auto const& one : all_)
      if (one.numerals == run.numerals && one.series == run.series && one.starred == run.starred) return &one;
    return nullptr;
  }

  /// Returns true if a number of the kind follows the last number, which has other numerals: xii [13].
  [[nodiscard]] bool goes_on_in_other_numerals(PageRun const& run, std::int64_t number) const {
    if (!open_ || run.series != 0 || run.starred) return false;
    auto const& one = all_[latest_];
    bool const plain = one.series == 0 && !one.starred && one.numerals != Numerals::letters;
    return plain && one.numerals != run.numerals && number == one.last + 1;
  }

public:
  /// Returns the last number of the kind, or no value if a number of another kind came after it.
  [[nodiscard]] std::optional<std::int64_t> latest(PageRun const& run) const {
    auto const* one = find(run);
    if (one == nullptr || one != &all_[latest_]) return std::nullopt;
    return one->last;
  }
  /// Returns true if the run before this one had numbers.
  [[nodiscard]] bool open() const noexcept { return open_; }
  /// Returns true if the last run of the kind was written as from - to.
  [[nodiscard]] bool latest_is_range(PageRun const& run) const {
    auto const* one = find(run);
    return one != nullptr && one == &all_[latest_] && one->range;
  }
  /// Returns the number that the last page before this run should have, counted in its kind, or 0 if there is no number
  /// before it.
  [[nodiscard]] std::int64_t counted_to(PageRun const& run) const {
    auto const* one = find(run);
    return one == nullptr ? 0 : one->truly + unnumbered_ - one->unnumbered;
  }
  /// Returns true if a number alone is one page. In a statement it is one page if it continues the numbers, or after a
  /// range was written (`ranges`). In an extent it is one page only directly after a range: 13-19, 21.
  [[nodiscard]] bool is_one_page(PageRun const& run, std::int64_t number, bool extent, bool ranges) const {
    auto const before = latest(run);
    if (extent) return before && open_ && latest_is_range(run) && number >= *before && number <= *before + 2;
    return number == 1 || (before && (ranges || number == *before + 1));
  }
  /// Returns true if a number in brackets is the number of a page and not a number of pages: it continues the numbers,
  /// and the next number in the text (`next`, or -1 for none) continues from it. 1 is the number of a page if 2
  /// follows.
  [[nodiscard]] bool is_number_of_page(PageRun const& run, std::int64_t number, std::int64_t next) const {
    if (number == 1 && next == 2) return true;
    auto const before = latest(run);
    if (!before && goes_on_in_other_numerals(run, number))
      return next == number + 1 ||
             (next == -1 && number % 2 != 0); // leaves without numbers have an even number of pages
    return before && open_ && number == *before + 1 && next != *before + 1;
  }
  /// Returns the number of pages of a run whose last number should be `truly`. The correct number counts from the run
  /// before if that makes the numbers continuous, otherwise from the first number of this run. A number below the first
  /// can only be a number of pages.
  [[nodiscard]] std::int64_t corrected_count(PageRun const& run, std::int64_t truly) const {
    auto const counted = counted_to(run);
    if (counted > 0 && truly == counted + run.count) return run.count;
    auto const first = counted > 0 && counted + 1 < run.first ? counted + 1 : run.first;
    return truly >= first ? truly - first + 1 : truly;
  }
  void add(PageRun const& run, bool range) {
    open_ = run.numbering != Numbering::none;
    if (!open_) {
      unnumbered_ += run.count;
      return;
    }
    auto const* known = find(run);
    latest_ = known == nullptr ? all_.size() : static_cast<std::size_t>(known - all_.data());
    if (known == nullptr) all_.push_back({run.numerals, run.series, run.starred});
    auto& one = all_[latest_];
    one.last = run.last;
    one.truly = run.true_last.value_or(run.last);
    one.unnumbered = unnumbered_;
    one.range = range;
  }
  /// Begins a volume or part, with new numbers.
  void begin_part() { *this = {}; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
