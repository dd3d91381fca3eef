// SPDX-License-Identifier: MIT
/// A plan: how the pages of a copy are put to press. It consists of workings; a working is what is locked up and printed
/// together. Paper, formes and impressions are counted from the workings and from nowhere else.
///
/// "Half-sheet" has four meanings (Tanselle, Studies in Bibliography 53, note 65), and a working tells them apart: one forme
/// on both sides of the sheet, which then holds two copies; two half-sheets of different gatherings printed together; a
/// half-sheet together with odd leaves, a cancel or two; and paper cut before it was printed, which takes two formes and
/// a pull for each copy.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// What leaves belong to. Cancels are single leaves and may be odd in number; all others are folded and even.
enum class Matter : std::uint8_t {
  preliminaries, ///< what precedes the text and is gathered apart
  text,          ///< the book itself
  end_matter,    ///< index, errata, advertisements gathered apart
  cancels        ///< leaves printed to take the place of others
};
/// How many matters there are: the length of an array by `Matter`.
inline constexpr std::size_t matters = 4;
/// The identifier of a matter: "preliminaries", "text", "end_matter", "cancels".
constexpr std::string_view identifier(Matter matter) noexcept {
  constexpr std::string_view identifiers[matters]{"preliminaries", "text", "end_matter", "cancels"};
  auto const i = static_cast<std::size_t>(matter);
  return i < matters ? identifiers[i] : std::string_view{};
}

/// How a part of a sheet is printed.
enum class PartWork : std::uint8_t {
  turned,   ///< one forme prints both sides, so a sheet gives several copies
  cut_first ///< the paper is cut before printing: two formes, each copy printed by itself
};

/// The four meanings of half-sheet.
enum class HalfSheet : std::uint8_t {
  turned,              ///< half-sheet work: one forme, the paper turned, two copies to the sheet
  two_worked_together, ///< two unlike half-sheets of one book on one sheet
  with_odd_leaves,     ///< a part of the sheet, the rest of which holds other leaves of the book
  cut_first            ///< half a sheet of paper, cut before it was printed
};

/// What is to be arranged: pages of text, of preliminaries that are gathered apart, of end matter, and leaves to be
/// cancelled in every copy.
struct Pages {
  std::int64_t text{};          ///< pages
  std::int64_t preliminaries{}; ///< pages, gathered apart
  std::int64_t end_matter{};    ///< pages
  std::int64_t cancel_leaves{}; ///< leaves, not pages: both sides of a leaf are printed anew
  friend constexpr bool operator==(Pages const&, Pages const&) = default;
};

/// How far matters that are gathered apart may be printed on one sheet.
enum class Sharing : std::uint8_t {
  none,   ///< each by itself
  once,   ///< one working may be shared, by unequal numbers of leaves, as Bowers allows
  freely, ///< any number, equal or not; cancels remain by themselves
};

/// What the printer decides.
struct Arranging {
  Sharing sharing{Sharing::once};   ///< what may be printed on one sheet with another matter
  PartWork parts{PartWork::turned}; ///< how half- and quarter-sheets are printed
  bool end_matter_runs_on{}; ///< the end matter continues the signatures of the text and has no gatherings of its own
  friend constexpr bool operator==(Arranging, Arranging) = default;
};

/// What is printed together, and how many times that happens in a copy.
struct Working {
  /// What paper goes through the press and how often it is printed.
  enum class Kind : std::uint8_t {
    sheet,     ///< two formes, one copy to the sheet
    turned,    ///< part of a sheet, one forme, several copies to the sheet
    cut_first, ///< part of a sheet cut before printing, two formes, one copy to the piece
    one_side   ///< a sheet or piece of which one side is blank, as a broadside has it: one forme, one impression
  };
  std::int64_t times{};                       ///< in one copy: eight sheets alike are one working, eight times
  std::uint8_t leaves{};                      ///< of one copy
  Kind kind{};                                ///< what paper it takes
  std::array<std::uint8_t, matters> shares{}; ///< leaves of each matter where several share it, else all 0

  /// Formes to be imposed each time: two, or one.
  [[nodiscard]] constexpr int formes() const noexcept { return kind == Kind::turned || kind == Kind::one_side ? 1 : 2; }
  /// Impressions for each sheet or piece that goes to press.
  [[nodiscard]] constexpr int impressions() const noexcept { return kind == Kind::one_side ? 1 : 2; }
  /// The paper goes to press as it is, not in parts that several copies share.
  [[nodiscard]] constexpr bool is_printed_copy_by_copy() const noexcept {
    return kind == Kind::cut_first || kind == Kind::one_side;
  }
  /// Leaves of several matters are printed together in it.
  [[nodiscard]] constexpr bool is_shared() const noexcept { return shares != std::array<std::uint8_t, matters>{}; }
  /// Shared half and half: then half-sheets printed apart explain the book as well, and Bowers (Studies in Bibliography 1)
  /// asks for positive evidence.
  [[nodiscard]] constexpr bool is_equally_shared() const noexcept {
    int first = 0;
    for (auto share : shares) {
      if (share == 0) continue;
      if (first != 0 && share != first) return false;
      first = share;
    }
    return first != 0;
  }
  friend constexpr bool operator==(Working const&, Working const&) = default;
};

/// One way to print a copy. A range of its workings.
struct Plan {
  /// The most kinds of working a plan can hold.
  static constexpr std::size_t most_workings = 40;

  int leaves_to_sheet{};                         ///< of the scheme: 8 for an octavo
  std::array<std::int64_t, matters> leaves_of{}; ///< by matter, blank leaves included
  std::int64_t gatherings{};                     ///< of one copy, cancels left out
  std::int64_t blank_pages{};                    ///< at the ends of the matters, to fill their last gatherings
  bool end_matter_runs_on{};                     ///< in the gatherings of the text, where it then counts
  bool in_whole_sheets{};                        ///< parts of sheets are printed on whole ones and the rest left blank

private:
  std::array<Working, most_workings> workings_{};
  std::uint8_t count_{};

  // before those that call it, so that clang 16 has it where a plan is a constant
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
  /// An iterator to the first element.
  [[nodiscard]] constexpr Working const* begin() const noexcept { return workings_.data(); }
  /// An iterator past the last element.
  [[nodiscard]] constexpr Working const* end() const noexcept { return workings_.data() + count_; }
  /// Kinds of working.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return count_; }
  /// Adds a working after the others; one that happens zero times is left out. pre: it happens no fewer than zero times, and
  /// the plan holds fewer than most_workings.
  constexpr void add(Working const& working) {
    if (working.times == 0) return;
    if (working.times < 0) broken("a working happens no fewer than zero times");
    if (count_ == most_workings) broken("a plan has no room for so many workings");
    workings_[count_++] = working;
  }

  /// Leaves of the book; cancels take the places of others. pre: the sum fits in 64 bits.
  [[nodiscard]] constexpr std::int64_t leaves() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return fitting(front ? checked_add(*front, leaves_of[2]) : std::nullopt);
  }
  /// Prints preliminaries, text, end matter or cancels on one sheet: possible, and inferred.
  [[nodiscard]] constexpr bool shares_a_sheet() const noexcept { return shared().has_value(); }
  /// The first shared working, if there is one.
  [[nodiscard]] constexpr std::optional<Working> shared() const noexcept {
    for (auto const& working : *this)
      if (working.is_shared()) return working;
    return std::nullopt;
  }
  /// Even working: whole sheets only, each of one matter.
  [[nodiscard]] constexpr bool is_even_working() const noexcept {
    for (auto const& working : *this)
      if (working.leaves != leaves_to_sheet || working.is_shared()) return false;
    return true;
  }
  /// Whether leaves, formes and sheets fit in 64 bits, as in every plan that `arrange` makes.
  [[nodiscard]] constexpr bool fits() const {
    auto const front = checked_add(leaves_of[0], leaves_of[1]);
    return front && checked_add(*front, leaves_of[2]) && sum_of(leaves_each) && sum_of(formes_each);
  }
  /// pre: the sum fits in 64 bits.
  [[nodiscard]] constexpr std::int64_t formes() const { return fitting(sum_of(formes_each)); }
  /// Sheets of paper in one copy, exactly. pre: a plan of some scheme (leaves_to_sheet above zero), and the sum fits.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const {
    if (leaves_to_sheet <= 0) broken("a plan has leaves to the sheet");
    return Fraction{fitting(sum_of(leaves_each)), leaves_to_sheet};
  }

private:
  static constexpr std::optional<std::int64_t> leaves_each(Working const& working) { return working.leaves; }
  static constexpr std::optional<std::int64_t> formes_each(Working const& working) { return working.formes(); }
  static constexpr std::int64_t fitting(std::optional<std::int64_t> number) {
    if (!number) broken("the leaves of a plan fit in 64 bits");
    return *number;
  }
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_of(Working const& working, std::int64_t copies) const {
    if (working.leaves == leaves_to_sheet) return copies;
    auto const worked = checked_multiply(copies, working.leaves);
    return worked ? std::optional{*worked / leaves_to_sheet + (*worked % leaves_to_sheet != 0 ? 1 : 0)} : std::nullopt;
  }
  /// Sheets or pieces of paper that go to press for one working.
  [[nodiscard]] constexpr std::optional<std::int64_t> pieces_of(Working const& working, std::int64_t copies) const {
    return working.is_printed_copy_by_copy() ? std::optional{copies} : sheets_of(working, copies);
  }
  constexpr void must_be_for(std::int64_t copies) const {
    if (leaves_to_sheet <= 0) broken("a plan has leaves to the sheet");
    if (copies < 0) broken("copies are no fewer than zero");
  }

public:
  /// Sheets for `copies`: parts of sheets are printed several to a sheet, and what is left over - an odd copy of a
  /// half-sheet - takes a sheet of its own. None when that does not fit in 64 bits. pre: a plan of some scheme, and copies
  /// no fewer than zero (here and below).
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) { return sheets_of(working, copies); });
  }
  /// Impressions, one side of one sheet (or piece) each: N copies of a half-sheet take N where it is turned, 2N where it
  /// was cut first, and N where the other side stays blank. None when that does not fit.
  [[nodiscard]] constexpr std::optional<std::int64_t> impressions_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      auto const pieces = pieces_of(working, copies);
      return pieces ? checked_multiply(*pieces, working.impressions()) : std::nullopt;
    });
  }
  /// Sheets (or pieces) printed on both sides. None when that does not fit.
  [[nodiscard]] constexpr std::optional<std::int64_t> perfected_for(std::int64_t copies) const {
    must_be_for(copies);
    return sum_of([&](Working const& working) {
      return working.impressions() == 2 ? pieces_of(working, copies) : std::optional<std::int64_t>{0};
    });
  }
  /// Which of the four meanings a working has, where half a sheet of a gathering is in it.
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
