// SPDX-License-Identifier: MIT
/// A plan is the way in which the pages of a copy are put to press: a list of workings (edition/working.hpp), each with how
/// often it happens. Paper, formes and impressions are counted from the workings only, so that no two numbers of a plan can
/// contradict each other.
///
/// `settings` says how often a page stands in type. That a printer set pages more than once, and did not work them together
/// with others, is an assumption wherever it is not one.
#pragma once

#include <bifolium/core/fraction.hpp>
#include <bifolium/edition/working.hpp>

#include <array>
#include <cstdint>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// One way to print a copy. A plan is a range of its workings.
struct Plan {
  /// The greatest number of different workings of a plan.
  static constexpr std::size_t most_workings = 40;

  int leaves_to_sheet{};                         ///< leaves to the sheet in the scheme: 8 for an octavo
  std::array<std::int64_t, matters> leaves_of{}; ///< leaves of each matter, including blank leaves
  std::int64_t gatherings{};                     ///< gatherings of one copy, without cancels
  /// blank pages at the ends of the matters, which fill their last gatherings
  std::int64_t blank_pages{};
  std::int64_t blank_leaves{}; ///< the leaves among them that are blank on both sides
  /// true if the end matter is in the gatherings of the text, and counts as text
  bool end_matter_runs_on{};
  /// true if parts of sheets are printed on whole sheets and the rest stays blank
  bool in_whole_sheets{};

private:
  std::array<Working, most_workings> workings_{};
  std::uint8_t count_{};

  // defined before the functions that call it, because clang 16 needs it there when a plan is a constant
  template <class Each> [[nodiscard]] constexpr std::optional<std::int64_t> sum_of(Each each) const {
    std::optional<std::int64_t> sum = 0;
    for (std::size_t i = 0; i < count_; ++i) {
      auto const one = each(workings_[i]);
      auto const all = one ? checked_multiply(*one, workings_[i].times) : std::nullopt;
      sum = all ? checked_add(*sum, *all) : std::nullopt;
      if (!sum) return sum;
    }
    return sum;
  }

public:
  /// Returns a pointer to the first working.
  [[nodiscard]] constexpr Working const* begin() const& noexcept BIFOLIUM_LIFETIMEBOUND { return workings_.data(); }
  Working const* begin() const&& = delete; // it would look at what goes
  /// Returns a pointer past the last working.
  [[nodiscard]] constexpr Working const* end() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return workings_.data() + count_;
  }
  Working const* end() const&& = delete; // it would look at what goes
  /// Returns the number of different workings.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return count_; }
  /// Adds a working after the others. A working that happens zero times is left out. Precondition: `working.times` is
  /// at least 0, and the plan has fewer than most_workings.
  constexpr void add(Working const& working) {
    if (working.times == 0) return;
    if (working.times < 0) broken("a working must happen zero times or more");
    if (count_ == most_workings) broken("a plan has at most 40 workings");
    workings_[count_++] = working;
  }

  /// Returns the leaves of the book. Cancels replace other leaves and are not counted. Precondition: the sum fits in 64
  /// bits.
  [[nodiscard]] constexpr std::int64_t leaves() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return fitting(front ? checked_add(*front, leaves_of[2]) : std::nullopt);
  }
  /// Returns true if preliminaries, text, end matter or cancels share a sheet. That a printer did this is possible, but
  /// an inference.
  [[nodiscard]] constexpr bool shares_a_sheet() const noexcept { return shared().has_value(); }
  /// Returns the first shared working, or no value if there is none.
  [[nodiscard]] constexpr std::optional<Working> shared() const noexcept {
    for (auto const& working : *this)
      if (working.is_shared()) return working;
    return std::nullopt;
  }
  /// Returns true for an even working: the plan has whole sheets only, each with one matter.
  [[nodiscard]] constexpr bool is_even_working() const noexcept {
    for (auto const& working : *this)
      if (working.leaves != leaves_to_sheet || working.is_shared()) return false;
    return true;
  }
  /// Returns true if leaves, formes and sheets fit in 64 bits, as in every plan that `arrange` makes.
  [[nodiscard]] constexpr bool fits() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return front && checked_add(*front, leaves_of[2]) && sum_of(leaves_each) && sum_of(formes_each);
  }
  /// Returns the number of formes. Precondition: the sum fits in 64 bits.
  [[nodiscard]] constexpr std::int64_t formes() const { return fitting(sum_of(formes_each)); }
  /// Returns the sheets of paper in one copy, exactly. Precondition: leaves_to_sheet is above zero, and the sum fits in
  /// 64 bits.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const {
    if (leaves_to_sheet <= 0) broken("leaves_to_sheet of a plan must be more than zero");
    return Fraction{fitting(sum_of(leaves_each)), leaves_to_sheet};
  }

private:
  static constexpr std::optional<std::int64_t> leaves_each(Working const& working) { return working.leaves; }
  static constexpr std::optional<std::int64_t> formes_each(Working const& working) { return working.formes(); }
  static constexpr std::int64_t fitting(std::optional<std::int64_t> number) {
    if (!number) broken("the leaves of the plan do not fit in 64 bits");
    return *number;
  }
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_of(Working const& working, std::int64_t copies) const {
    if (working.leaves == leaves_to_sheet) return copies;
    // all leaves need not fit in 64 bits, although the sheets do
    auto const whole = checked_multiply(copies / leaves_to_sheet, working.leaves);
    auto const rest = copies % leaves_to_sheet * working.leaves;
    return whole ? checked_add(*whole, rest / leaves_to_sheet + (rest % leaves_to_sheet != 0 ? 1 : 0)) : std::nullopt;
  }
  /// Returns the sheets or pieces of paper that go to press for one working.
  [[nodiscard]] constexpr std::optional<std::int64_t> pieces_of(Working const& working, std::int64_t copies) const {
    return working.is_printed_copy_by_copy() ? std::optional{copies} : sheets_of(working, copies);
  }
  constexpr void must_be_for(std::int64_t copies) const {
    if (leaves_to_sheet <= 0) broken("leaves_to_sheet of a plan must be more than zero");
    if (copies < 0) broken("the number of copies must not be less than zero");
  }

public:
  /// Returns the sheets for `copies` copies. Parts of sheets are printed several to a sheet; a part that is left over,
  /// such as the half-sheet of an odd copy, takes a sheet of its own. Returns no value if the number does not fit in 64
  /// bits. Precondition: leaves_to_sheet is above zero, and `copies` is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) { return sheets_of(working, copies); });
  }
  /// Returns the impressions for `copies` copies. An impression prints one side of one sheet or piece. N copies of a
  /// half-sheet take N impressions if it is turned, 2N if the paper was cut first, and N if the other side stays blank. N
  /// copies of a smaller part take fewer than N, because each impression has its pages several times.
  /// Returns no value if the number does not fit in 64 bits. Precondition: leaves_to_sheet is above zero, and `copies`
  /// is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> impressions_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      auto const pieces = pieces_of(working, copies);
      return pieces ? checked_multiply(*pieces, working.impressions()) : std::nullopt;
    });
  }
  /// Returns the sheets or pieces that are printed on both sides for `copies` copies, or no value if the number does
  /// not fit in 64 bits. Precondition: leaves_to_sheet is above zero, and `copies` is at least 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> perfected_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      return working.impressions() == 2 ? pieces_of(working, copies) : std::optional<std::int64_t>{0};
    });
  }
  /// Returns how often each page of a working stands in its formes: 1 for a sheet, a half-sheet or paper that was cut
  /// first, 2 for a quarter of a sheet that is turned, 3 for a third. The price of a forme does not count type that is
  /// set again. Precondition: the working is of this plan.
  [[nodiscard]] constexpr int settings(Working const& working) const {
    if (working.leaves == 0) broken("a working must have leaves");
    auto const copies = leaves_to_sheet / working.leaves;
    if (working.kind == Working::Kind::turned) return copies / 2;
    return working.kind == Working::Kind::repeated ? copies : 1;
  }
  /// Returns the pages of each forme of a working, counting a page as often as it is set. An impression prints so many.
  /// Precondition: the working is of this plan.
  [[nodiscard]] constexpr int pages_to_forme(Working const& working) const {
    return 2 * working.leaves * settings(working) / (working.kind == Working::Kind::turned ? 1 : 2);
  }
  /// Returns the meaning of "half-sheet" that applies to a working, or no value if it has no half-sheet of a gathering.
  [[nodiscard]] constexpr std::optional<HalfSheet> half_sheet(Working const& working) const noexcept {
    auto const half = leaves_to_sheet / 2;
    if (working.kind == Working::Kind::sheet) {
      auto const odd = working.shares[static_cast<std::size_t>(Matter::cancels)];
      int halves = 0;
      for (auto share : working.shares) halves += share == half ? 1 : 0;
      if (halves > 0 && odd > 0) return HalfSheet::with_odd_leaves;
      return halves == 2 ? std::optional{HalfSheet::two_worked_together} : std::nullopt;
    }
    if (working.leaves != half || half == 0) return std::nullopt;
    return working.kind == Working::Kind::turned ? HalfSheet::turned : HalfSheet::cut_first;
  }
  friend constexpr bool operator==(Plan const&, Plan const&) = default;
};

} // namespace v0
} // namespace bifolium
