// SPDX-License-Identifier: MIT
/// How a text becomes gatherings: pages fill sheets, and what is left over fills parts of one - a half-sheet worked from
/// one forme with two copies, a quarter-sheet, the third of a sheet of twelves - or shares a sheet with what is left over
/// of the preliminaries, which have gatherings of their own. Such sharing is a saving a printer could make and often did
/// (Bowers, Studies in Bibliography 1); that he did is inference, and a plan says so.
///
/// The least paper is known beforehand: leaves are even in number (every gathering is folded), so a copy takes no less than
/// its even leaves by the leaves to the sheet, and part-sheets reach that bound. Among plans of that paper the fewest formes
/// are found by trying every way to share a sheet and, for what is left, the fewest parts that add up (a table over at most
/// 128 leaves): exact, and small.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>

#include <array>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What has to be arranged: pages of text, and of preliminaries that are gathered apart.
struct Pages {
  std::int64_t text{};
  std::int64_t preliminaries{};
};

/// How a scheme divides the sheet and gathers the leaves; found by folding.
struct SheetMakeUp {
  int leaves_to_sheet{};                                     ///< of the whole sheet of paper
  int gathering_count{};                                     ///< gatherings of one copy of the scheme's pages
  std::array<std::uint8_t, Scheme::most_gatherings> sizes{}; ///< their leaves, in the order of the pages

  /// Leaves of one copy of the scheme's pages.
  [[nodiscard]] constexpr int leaves() const noexcept {
    int all = 0;
    for (int g = 0; g < gathering_count; ++g) all += sizes[static_cast<std::size_t>(g)];
    return all;
  }
};

/// Reads it off a fold. Of several copies of a gathering the first counts.
template <int N> constexpr SheetMakeUp make_up(Fold<N> const& fold) {
  SheetMakeUp result;
  auto const& lay = fold.sheet(0);
  result.leaves_to_sheet = lay.rows * lay.columns * static_cast<int>(lay.part);
  for (int g = 0; g < fold.gatherings(); ++g) {
    bool copy = false;
    for (int h = 0; h < fold.gatherings(); ++h) {
      auto const inside =
          fold.first_page(h) <= fold.first_page(g) &&
          fold.first_page(g) + fold.gathering(g).pages() <= fold.first_page(h) + fold.gathering(h).pages();
      bool const same =
          fold.first_page(h) == fold.first_page(g) && fold.gathering(h).leaves() == fold.gathering(g).leaves();
      copy = copy || (h != g && inside && (!same || h < g));
    }
    if (!copy)
      result.sizes[static_cast<std::size_t>(result.gathering_count++)] =
          static_cast<std::uint8_t>(fold.gathering(g).leaves());
  }
  return result;
}

/// One way to print a copy.
struct Plan {
  static constexpr std::size_t most_parts = 16;

  int leaves_to_sheet{};
  std::int64_t text_leaves{}, preliminary_leaves{}; ///< blank leaves included
  std::int64_t gatherings{};
  std::int64_t blank_pages{};
  std::int64_t whole_sheets{};                  ///< each of two formes, or two half-sheets of one forme each
  int shared_text{}, shared_preliminaries{};    ///< leaves of the one sheet they share, 0 when they share none
  std::array<std::uint8_t, most_parts> parts{}; ///< part-sheets by their leaves, each of one forme
  std::uint8_t part_count{};

  /// The plan saves by working preliminaries and text on one sheet: possible, and inferred.
  [[nodiscard]] constexpr bool shares_a_sheet() const noexcept { return shared_text != 0; }
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return text_leaves + preliminary_leaves; }
  [[nodiscard]] constexpr std::int64_t formes() const noexcept { return 2 * whole_sheets + part_count; }
  /// Sheets of paper in one copy, exactly.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const {
    std::int64_t in_parts = 0;
    for (std::size_t i = 0; i < part_count; ++i) in_parts += parts[i];
    return Fraction{whole_sheets} + Fraction{in_parts, leaves_to_sheet};
  }
  /// Sheets for `copies` of it: part-sheets are worked several to a sheet, and an odd copy takes a sheet of its own.
  /// Nothing when that does not fit in 64 bits.
  [[nodiscard]] constexpr std::optional<std::int64_t> sheets_for(std::int64_t copies) const {
    auto sum = checked_multiply(whole_sheets, copies);
    for (std::size_t i = 0; sum && i < part_count; ++i) {
      auto const leaves_worked = checked_multiply(copies, parts[i]);
      sum = leaves_worked ? checked_add(*sum, Fraction{*leaves_worked, leaves_to_sheet}.ceil()) : std::nullopt;
    }
    return sum;
  }
  friend constexpr bool operator==(Plan const&, Plan const&) = default;
};

namespace detail {

/// The fewest part-sheets that add up to so many leaves. A part is an even number of leaves that divides the sheet, or its
/// half where the scheme gathers in odd halves.
class PartSheets {
  std::array<std::uint8_t, Scheme::most_cells + 1> fewest_{}, first_{};

public:
  static constexpr std::uint8_t impossible = 255;

  constexpr explicit PartSheets(SheetMakeUp const& by) {
    auto const leaves_to_sheet = by.leaves_to_sheet;
    bool const halves_are_odd = 2 * by.leaves() == leaves_to_sheet && by.leaves() % 2 != 0; // eighteens in nines
    for (int leaves = 1; leaves < leaves_to_sheet; ++leaves) {
      auto const at = static_cast<std::size_t>(leaves);
      fewest_[at] = impossible;
      for (int part = 2; part <= leaves; ++part) {
        if (leaves_to_sheet % part != 0 || (part % 2 != 0 && !(halves_are_odd && 2 * part == leaves_to_sheet)))
          continue;
        auto const rest = fewest_[static_cast<std::size_t>(leaves - part)];
        if (rest == impossible || rest + 1 > fewest_[at]) continue;
        fewest_[at] = static_cast<std::uint8_t>(rest + 1);
        first_[at] = static_cast<std::uint8_t>(part); // of equal ways the one with the largest part
      }
    }
  }
  [[nodiscard]] constexpr int fewest(int leaves) const { return fewest_[static_cast<std::size_t>(leaves)]; }
  constexpr void add_to(Plan& plan, int leaves) const {
    while (leaves > 0) {
      auto const part = first_[static_cast<std::size_t>(leaves)];
      plan.parts[plan.part_count++] = part;
      leaves -= part;
    }
  }
};

/// Gatherings of so many leaves, filled one after another as the scheme makes them; the last may be smaller.
constexpr std::int64_t gatherings_of(std::int64_t leaves, SheetMakeUp const& by) {
  auto const unit = by.leaves();
  auto count = leaves / unit * by.gathering_count;
  auto rest = leaves % unit;
  for (std::size_t g = 0; rest > 0; ++g, ++count) rest -= rest < by.sizes[g] ? rest : by.sizes[g];
  return count;
}

/// Leaves for pages: even, as a gathering is folded; a broadside is a leaf by itself, and where the scheme has odd
/// gatherings whole ones keep their size.
constexpr std::int64_t even_leaves(std::int64_t pages, SheetMakeUp const& by) {
  auto const leaves = pages / 2 + pages % 2;
  if (by.leaves_to_sheet == 1 || leaves % by.leaves() % 2 == 0) return leaves;
  return leaves + 1;
}

constexpr Plan plan_for(Pages pages, SheetMakeUp const& by, std::int64_t text, std::int64_t preliminaries) {
  Plan plan;
  plan.leaves_to_sheet = by.leaves_to_sheet;
  plan.text_leaves = text;
  plan.preliminary_leaves = preliminaries;
  plan.gatherings = gatherings_of(text, by) + gatherings_of(preliminaries, by);
  plan.blank_pages = 2 * (text + preliminaries) - pages.text - pages.preliminaries;
  plan.whole_sheets = text / by.leaves_to_sheet + preliminaries / by.leaves_to_sheet;
  return plan;
}

} // namespace detail

/// The plan that takes the least paper and, of those that do, the fewest formes; of equals, the one that shares no sheet.
/// error: negative_count, nothing_to_print, number_too_large (more than 10^15 pages).
constexpr Expected<Plan> arrange(SheetMakeUp const& by, Pages pages, bool may_share = true) {
  if (pages.text < 0 || pages.preliminaries < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  if (pages.text == 0 && pages.preliminaries == 0) return error_at(Problem::nothing_to_print, 1, 1);
  constexpr std::int64_t most = 1'000'000'000'000'000;
  if (pages.text > most || pages.preliminaries > most) return error_at(Problem::number_too_large, 1, 1);

  auto const n = by.leaves_to_sheet;
  detail::PartSheets const parts{by};
  auto const text = detail::even_leaves(pages.text, by), preliminaries = detail::even_leaves(pages.preliminaries, by);
  auto const text_rest = static_cast<int>(text % n), rest = static_cast<int>(preliminaries % n);
  auto plan = detail::plan_for(pages, by, text, preliminaries);
  auto best = parts.fewest(text_rest) + parts.fewest(rest);
  int shared = 0; // leaves of text on the shared sheet
  for (int of_text = 2; may_share && of_text <= text_rest; of_text += 2) {
    auto const of_rest = n - of_text;
    if (of_rest < 2 || of_rest > rest) continue;
    auto const formes = 2 + parts.fewest(text_rest - of_text) + parts.fewest(rest - of_rest);
    if (formes < best) best = formes, shared = of_text;
  }
  if (shared != 0) {
    plan.shared_text = shared;
    plan.shared_preliminaries = n - shared;
    ++plan.whole_sheets;
    parts.add_to(plan, text_rest - shared);
    parts.add_to(plan, rest - (n - shared));
  } else {
    parts.add_to(plan, text_rest);
    parts.add_to(plan, rest);
  }
  return plan;
}

/// All plans worth comparing, least paper first, then fewest formes: part-sheets apart, a shared sheet, and whole sheets
/// throughout, with blanks at the end. Allocates.
inline Expected<std::vector<Plan>> plans(SheetMakeUp const& by, Pages pages) {
  std::vector<Plan> all;
  for (bool share : {false, true}) {
    auto const plan = arrange(by, pages, share);
    if (!plan) return plan.error();
    if (all.empty() || all.back() != *plan) all.push_back(*plan);
  }
  auto const whole = [&](std::int64_t leaves) {
    return (leaves + by.leaves_to_sheet - 1) / by.leaves_to_sheet * by.leaves_to_sheet;
  };
  auto const text = detail::even_leaves(pages.text, by), preliminaries = detail::even_leaves(pages.preliminaries, by);
  auto const in_whole_sheets = detail::plan_for(pages, by, whole(text), whole(preliminaries));
  if (in_whole_sheets != all.front()) all.push_back(in_whole_sheets);
  for (std::size_t i = 1; i < all.size(); ++i)
    for (auto k = i; k > 0; --k) {
      auto const paper = all[k].sheets_a_copy() <=> all[k - 1].sheets_a_copy();
      if (std::is_gt(paper) || (std::is_eq(paper) && all[k].formes() >= all[k - 1].formes())) break;
      auto const moved = all[k];
      all[k] = all[k - 1];
      all[k - 1] = moved;
    }
  return all;
}

} // namespace v0
} // namespace bifolium
