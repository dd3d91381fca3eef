// SPDX-License-Identifier: MIT
/// A plan: how the pages of a copy are put to press. Its parts are workings - what is locked up and printed together - and
/// everything else is counted off them: paper, formes, impressions.
///
/// "Half-sheet" is four different things (Tanselle, Studies in Bibliography 53, note 65), and a working tells them apart:
/// one forme turned on itself, two copies to the sheet; two half-sheets of different gatherings worked together; a
/// half-sheet together with odd leaves, a cancel or two; and paper cut before it was printed, which takes two formes and a
/// pull for every copy.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>

#include <array>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// What leaves belong to. Cancels are single leaves and may be odd in number; all others are folded and even.
enum class Matter : std::uint8_t {
  preliminaries, ///< what stands before the text and is gathered apart
  text,          ///< the book itself
  end_matter,    ///< index, errata, advertisements gathered apart
  cancels        ///< leaves printed to take the place of others
};
/// How many matters there are: the length of an array by `Matter`.
inline constexpr std::size_t matters = 4;

/// How a part of a sheet is worked.
enum class PartWork : std::uint8_t {
  turned,   ///< one forme prints both sides, so a sheet gives several copies
  cut_first ///< the paper is cut before printing: two formes, every copy worked by itself
};

/// The four things called half-sheet.
enum class HalfSheet : std::uint8_t {
  turned,              ///< half-sheet work: one forme, the paper turned, two copies to the sheet
  two_worked_together, ///< two unlike half-sheets of one book on one sheet
  with_odd_leaves,     ///< a part of the sheet, the rest of which bears other leaves of the book
  cut_first            ///< half a sheet of paper, cut before it was printed
};

/// What is printed together, and how many times that happens in a copy.
struct Working {
  /// What paper goes through the press and how often it is printed.
  enum class Kind : std::uint8_t {
    sheet,    ///< two formes, one copy to the sheet
    turned,   ///< part of a sheet, one forme, several copies to the sheet
    cut_first ///< part of a sheet cut before printing, two formes, one copy to the piece
  };
  std::int64_t times{};                       ///< in one copy: eight sheets alike are one working, eight times
  std::uint8_t leaves{};                      ///< of one copy
  Kind kind{};                                ///< what paper it takes
  std::array<std::uint8_t, matters> shares{}; ///< leaves of each matter where several share it, else all 0

  /// Formes to be imposed each time: two, or one that prints both sides.
  [[nodiscard]] constexpr int formes() const noexcept { return kind == Kind::turned ? 1 : 2; }
  /// Leaves of several matters are printed together in it.
  [[nodiscard]] constexpr bool is_shared() const noexcept { return shares != std::array<std::uint8_t, matters>{}; }
  /// Shared half and half: then half-sheets worked apart explain the book as well, and Bowers (Studies in Bibliography 1)
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

/// One way to print a copy.
struct Plan {
  /// The most kinds of working a plan can hold.
  static constexpr std::size_t most_workings = 40;

  int leaves_to_sheet{};                         ///< of the scheme: 8 for an octavo
  std::array<std::int64_t, matters> leaves_of{}; ///< by matter, blank leaves included
  std::int64_t gatherings{};                     ///< of one copy, cancels left out
  std::int64_t blank_pages{};                    ///< at the ends of the matters, to fill their last gatherings
  bool end_matter_runs_on{};                     ///< in the gatherings of the text, where it then counts
  bool in_whole_sheets{};                        ///< parts of sheets are printed on whole ones and the rest left blank
  std::array<Working, most_workings>
      all_workings{};           ///< the first `working_count` of them hold; go through begin(), end()
  std::uint8_t working_count{}; ///< kinds of working

  [[nodiscard]] constexpr Working const* begin() const noexcept { return all_workings.data(); }
  [[nodiscard]] constexpr Working const* end() const noexcept { return all_workings.data() + working_count; }
  /// Puts a working behind the others; nothing when it happens no times. pre: not more than most_workings.
  constexpr void add(Working const& working) {
    if (working.times == 0) return;
    if (working_count == most_workings) broken("a plan has no room for so many workings");
    all_workings[working_count++] = working;
  }

  /// Leaves of the book; cancels take the places of others.
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return leaves_of[0] + leaves_of[1] + leaves_of[2]; }
  /// Works preliminaries, text, end matter or cancels on one sheet: possible, and inferred.
  [[nodiscard]] constexpr bool shares_a_sheet() const noexcept { return shared() != nullptr; }
  /// The first shared working, or none.
  [[nodiscard]] constexpr Working const* shared() const noexcept {
    for (auto const& working : *this)
      if (working.is_shared()) return &working;
    return nullptr;
  }
  /// Even working: nothing but whole sheets, each of one matter.
  [[nodiscard]] constexpr bool is_even_working() const noexcept {
    for (auto const& working : *this)
      if (working.kind != Working::Kind::sheet || working.is_shared()) return false;
    return true;
  }
  /// pre: fits in 64 bits, as every plan that `arrange` makes.
  [[nodiscard]] constexpr std::int64_t formes() const noexcept {
    std::int64_t sum = 0;
    for (auto const& working : *this) sum += working.times * working.formes();
    return sum;
  }
  /// Sheets of paper in one copy, exactly.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const {
    std::int64_t sum = 0;
    for (auto const& working : *this) sum += working.times * working.leaves;
    return Fraction{sum, leaves_to_sheet};
  }

private:
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_of(Working const& working, std::int64_t copies) const {
    if (working.leaves == leaves_to_sheet) return copies;
    auto const worked = checked_multiply(copies, working.leaves);
    return worked ? std::optional{*worked / leaves_to_sheet + (*worked % leaves_to_sheet != 0 ? 1 : 0)} : std::nullopt;
  }
  template <class Each> [[nodiscard]] constexpr std::optional<std::int64_t> sum_of(Each each) const {
    std::optional<std::int64_t> sum = 0;
    for (auto const& working : *this) {
      auto const one = each(working);
      auto const all = one ? checked_multiply(*one, working.times) : std::nullopt;
      sum = all ? checked_add(*sum, *all) : std::nullopt;
      if (!sum) return sum;
    }
    return sum;
  }

public:
  /// Sheets for `copies`: parts of sheets are worked several to a sheet, and what is left over - an odd copy of a
  /// half-sheet - takes a sheet of its own. Nothing when that does not fit in 64 bits. pre: not below 0.
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_for(std::int64_t copies) const {
    return sum_of([&](Working const& working) { return sheets_of(working, copies); });
  }
  /// Impressions, one side of one sheet (or piece) each: N copies of a half-sheet take N where it is turned, 2N where it
  /// was cut first. Nothing when that does not fit.
  [[nodiscard]] constexpr std::optional<std::int64_t> impressions_for(std::int64_t copies) const {
    return sum_of([&](Working const& working) {
      auto const perfected =
          working.kind == Working::Kind::cut_first ? std::optional{copies} : sheets_of(working, copies);
      return perfected ? checked_multiply(*perfected, 2) : std::nullopt;
    });
  }
  /// Which of the four a working is, where half a sheet of a gathering is in it.
  [[nodiscard]] constexpr std::optional<HalfSheet> half_sheet(Working const& working) const noexcept {
    auto const half = leaves_to_sheet / 2;
    if (working.kind == Working::Kind::sheet) {
      auto const odd = working.shares[static_cast<std::size_t>(Matter::cancels)];
      int halves = 0;
      for (auto share : working.shares) halves += share == half ? 1 : 0;
      if (halves > 0 && odd > 0) return HalfSheet::with_odd_leaves;
      return halves == 2 ? std::optional{HalfSheet::two_worked_together} : std::nullopt;
    }
    if (working.leaves != half) return std::nullopt;
    return working.kind == Working::Kind::turned ? HalfSheet::turned : HalfSheet::cut_first;
  }
  friend constexpr bool operator==(Plan const&, Plan const&) = default;
};

} // namespace v0
} // namespace bifolium
