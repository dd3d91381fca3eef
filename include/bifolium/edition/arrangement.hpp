// SPDX-License-Identifier: MIT
/// How a text becomes gatherings: pages fill sheets, and what is left over fills parts of one - a half-sheet worked from
/// one forme with two copies, a quarter-sheet, the third of a sheet of twelves - or shares a sheet with what is left over
/// of the preliminaries, which have gatherings of their own, of the end matter, or with cancels. Such sharing is a saving
/// a printer could make and often did (Bowers, Studies in Bibliography 1); that he did is inference, and a plan says so.
///
/// Method. The least paper is known beforehand: leaves are even in number (every gathering is folded), so a copy takes no
/// less than its leaves by the leaves to the sheet, and part-sheets reach that bound. Among plans of that paper the fewest
/// formes are sought, exactly: with nothing shared, from the table of part_sheets.hpp; with one shared working, by trying
/// every capacity and every way to fill it (at most the product of the leaves left over, halved where they are folded, by
/// the divisors of the sheet), the rest from the table; with free sharing, by pouring all that is left over into the
/// fewest workings that hold it, for any even amounts fill any even workings.
#pragma once

#include <bifolium/core/put.hpp>
#include <bifolium/edition/make_up.hpp>
#include <bifolium/edition/part_sheets.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// What has to be arranged: pages of text, of preliminaries that are gathered apart, of end matter, and leaves to be
/// cancelled in every copy.
struct Pages {
  std::int64_t text{};          ///< pages
  std::int64_t preliminaries{}; ///< pages, gathered apart
  std::int64_t end_matter{};    ///< pages
  std::int64_t cancel_leaves{}; ///< leaves, not pages: both sides of a leaf are printed anew
  friend constexpr bool operator==(Pages const&, Pages const&) = default;
};

/// How far matters that are gathered apart may be worked on one sheet.
enum class Sharing : std::uint8_t {
  none,   ///< each by itself
  once,   ///< one working may be shared, by unequal numbers of leaves, as Bowers allows
  freely, ///< any number, equal or not; cancels stay by themselves
};

/// What the printer decides.
struct Arranging {
  Sharing sharing{Sharing::once};   ///< what may be worked on one sheet with something else
  PartWork parts{PartWork::turned}; ///< how half- and quarter-sheets are printed
  bool end_matter_runs_on{};        ///< the end matter is signed on with the text and has no gatherings of its own
  friend constexpr bool operator==(Arranging, Arranging) = default;
};

namespace detail {

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
  if (by.leaves_to_press() == 1 || leaves % by.leaves() % 2 == 0) return leaves;
  return leaves + 1;
}

constexpr void must_make_leaves(SheetMakeUp const& by) {
  if (by.gathering_count < 1 || by.gathering_count > Scheme::most_gatherings || by.pieces_to_sheet < 1 ||
      by.leaves_to_sheet < by.pieces_to_sheet || by.leaves_to_press() > Scheme::most_cells || by.leaves() < 1)
    broken("a make-up is read off a fold, and has gatherings of some leaves");
}

/// Arranges what is left over when whole sheets are filled.
class Arranger {
  static constexpr auto cancels = static_cast<std::size_t>(Matter::cancels);
  using Rests = std::array<int, matters>;

  SheetMakeUp const& by_;
  Arranging how_;
  int press_; // leaves of what goes to press at once
  Working::Kind whole_kind_, part_kind_;
  int part_cost_;
  PartSheets folded_, single_;
  Rests rests_{};

  [[nodiscard]] constexpr int cost(std::size_t matter, int leaves) const {
    return part_cost_ * (matter == cancels ? single_ : folded_).fewest(leaves);
  }
  [[nodiscard]] constexpr int cost(Rests const& rests) const {
    int sum = 0;
    for (std::size_t m = 0; m < matters; ++m) sum += cost(m, rests[m]);
    return sum;
  }

  struct Shared {
    Working working{};
    Rests rests{}; // what is left beside it
    int formes{};
  };
  /// Tries all shares of matters m, m+1 ... in a working with room for `room` more leaves.
  constexpr void try_shares(Shared& best, Working& working, Rests& rests, std::size_t m, int room) const {
    if (m == matters) {
      if (room != 0 || working.is_equally_shared()) return; // one matter alone counts as equal
      auto const formes = working.formes() + cost(rests);
      if (formes < best.formes) best = {working, rests, formes};
      return;
    }
    auto const step = m == cancels ? 1 : 2;
    auto const most = rests_[m] < room ? rests_[m] : room;
    for (int share = most - most % step; share >= 0; share -= step) {
      working.shares[m] = static_cast<std::uint8_t>(share);
      rests[m] = rests_[m] - share;
      try_shares(best, working, rests, m + 1, room - share);
    }
    working.shares[m] = 0;
    rests[m] = rests_[m];
  }
  constexpr void share_once(Plan& plan) {
    Shared best{{}, rests_, cost(rests_)};
    for (int capacity = press_; capacity > 1; --capacity) {
      if (by_.leaves_to_sheet % capacity != 0) continue;
      Working working{1, static_cast<std::uint8_t>(capacity), capacity == press_ ? whole_kind_ : part_kind_, {}};
      auto rests = rests_;
      try_shares(best, working, rests, 0, capacity);
    }
    plan.add(best.working);
    rests_ = best.rests;
  }
  /// Fewest formes for everything folded together: a table like that of the parts, over at most three sheets.
  constexpr void share_freely(Plan& plan) {
    std::array<std::int16_t, 3 * Scheme::most_cells + 1> fewest{}, last{};
    int total = 0;
    for (std::size_t m = 0; m < cancels; ++m) total += rests_[m];
    for (int leaves = 2; leaves <= total; leaves += 2) {
      auto const at = static_cast<std::size_t>(leaves);
      fewest[at] = 30000;
      for (int capacity = 2; capacity <= press_ && capacity <= leaves; capacity += 2) {
        if (by_.leaves_to_sheet % capacity != 0) continue;
        auto const formes = fewest[static_cast<std::size_t>(leaves - capacity)] +
                            (capacity == press_ && whole_kind_ == Working::Kind::sheet ? 2 : part_cost_);
        if (formes > fewest[at]) continue;
        fewest[at] = static_cast<std::int16_t>(formes);
        last[at] = static_cast<std::int16_t>(capacity);
      }
    }
    std::size_t m = 0;
    while (total > 0) {
      auto const capacity = last[static_cast<std::size_t>(total)];
      Working working{1, static_cast<std::uint8_t>(capacity), capacity == press_ ? whole_kind_ : part_kind_, {}};
      std::size_t used = 0;
      for (int room = capacity; room > 0; ++used) {
        while (rests_[m] == 0) ++m;
        auto const share = rests_[m] < room ? rests_[m] : room;
        working.shares[m] = static_cast<std::uint8_t>(share);
        rests_[m] -= share;
        room -= share;
      }
      if (used == 1) working.shares = {};
      plan.add(working);
      total -= capacity;
    }
  }

public:
  constexpr Arranger(SheetMakeUp const& by, Arranging how)
      : by_{by}, how_{how}, press_{by.leaves_to_press()}, whole_kind_{by.pieces_to_sheet == 1
                                                                          ? Working::Kind::sheet
                                                                          : Working::Kind::cut_first},
        part_kind_{by.pieces_to_sheet == 1 && how.parts == PartWork::turned ? Working::Kind::turned
                                                                            : Working::Kind::cut_first},
        part_cost_{part_kind_ == Working::Kind::turned ? 1 : 2}, folded_{by.leaves_to_sheet, press_, false},
        single_{by.leaves_to_sheet, press_, true} {}

  /// pre: leaves not below 0, and even where they are folded.
  constexpr void arrange(Plan& plan) {
    Working whole{0, static_cast<std::uint8_t>(press_), whole_kind_, {}};
    Working half{0, static_cast<std::uint8_t>(press_ / 2), part_kind_, {}};
    for (std::size_t m = 0; m < matters; ++m) {
      auto rest = plan.leaves_of[m];
      if (m != cancels) {
        whole.times += rest / by_.leaves() * by_.workings;
        half.times += rest / by_.leaves() * by_.half_workings;
        rest %= by_.leaves();
      }
      whole.times += rest / press_;
      rests_[m] = static_cast<int>(rest % press_);
      if (m != cancels && folded_.fewest(rests_[m]) == PartSheets::impossible) { // an odd sheet has no even parts
        ++whole.times;
        rests_[m] = 0;
      }
    }
    plan.add(whole);
    plan.add(half);
    if (how_.sharing == Sharing::once) share_once(plan);
    if (how_.sharing == Sharing::freely) share_freely(plan);
    for (std::size_t m = 0; m < cancels; ++m) folded_.add_to(plan, rests_[m], part_kind_);
    single_.add_to(plan, rests_[cancels], part_kind_);
  }
};

/// Leaves, gatherings and blank pages of a plan, before anything is put to press.
constexpr Plan plan_of(SheetMakeUp const& by, Pages pages, bool runs_on) {
  if (runs_on) pages.text += pages.end_matter, pages.end_matter = 0;
  Plan plan;
  plan.end_matter_runs_on = runs_on;
  plan.leaves_to_sheet = by.leaves_to_sheet;
  plan.leaves_of = {even_leaves(pages.preliminaries, by), even_leaves(pages.text, by),
                    even_leaves(pages.end_matter, by), pages.cancel_leaves};
  for (std::size_t m = 0; m < 3; ++m) plan.gatherings += gatherings_of(plan.leaves_of[m], by);
  plan.blank_pages = 2 * plan.leaves() - pages.text - pages.preliminaries - pages.end_matter;
  return plan;
}

constexpr Room<Error> what_is_wrong(Pages const& pages) {
  constexpr std::int64_t most = 1'000'000'000'000'000;
  std::int64_t sum = 0;
  for (auto number : {pages.text, pages.preliminaries, pages.end_matter, pages.cancel_leaves}) {
    if (number < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
    if (number > most) return error_at(Problem::number_too_large, 1, 1);
    sum += number;
  }
  if (sum == pages.cancel_leaves) return error_at(Problem::nothing_to_print, 1, 1);
  return {};
}

} // namespace detail

/// The plan that takes the least paper and, of those that do and share as `how` allows, the fewest formes; of equals, the
/// one that shares no sheet. error: negative_count, nothing_to_print, number_too_large (more than 10^15 pages).
/// pre (here and below): `by` is read off a fold, by `make_up`.
constexpr Expected<Plan> arrange(SheetMakeUp const& by, Pages const& pages, Arranging how = {}) {
  detail::must_make_leaves(by);
  if (auto const error = detail::what_is_wrong(pages)) return *error;
  auto plan = detail::plan_of(by, pages, how.end_matter_runs_on);
  detail::Arranger{by, how}.arrange(plan);
  return plan;
}

/// The plan that uses nothing but whole sheets: every matter is filled up with blank leaves. error: as `arrange`.
constexpr Expected<Plan> arrange_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how = {}) {
  detail::must_make_leaves(by);
  if (auto const error = detail::what_is_wrong(pages)) return *error;
  auto plan = detail::plan_of(by, pages, how.end_matter_runs_on);
  auto const pages_used = 2 * plan.leaves() - plan.blank_pages;
  auto const sheet = by.leaves_to_sheet;
  std::int64_t sheets = 0;
  plan.gatherings = 0;
  for (std::size_t m = 0; m < matters; ++m) {
    sheets += plan.leaves_of[m] / sheet + (plan.leaves_of[m] % sheet != 0 ? 1 : 0);
    if (m == static_cast<std::size_t>(Matter::cancels)) continue;
    plan.leaves_of[m] = (plan.leaves_of[m] + sheet - 1) / sheet * sheet;
    plan.gatherings += detail::gatherings_of(plan.leaves_of[m], by);
  }
  plan.blank_pages = 2 * plan.leaves() - pages_used;
  plan.in_whole_sheets = true;
  plan.add({sheets, static_cast<std::uint8_t>(sheet), Working::Kind::sheet, {}});
  return plan;
}

/// All plans worth comparing, least paper first, then fewest formes, then fewest blank pages: each way of sharing, end
/// matter apart or run on, and whole sheets throughout. Allocates. error: as `arrange`.
inline Expected<std::vector<Plan>> plans(SheetMakeUp const& by, Pages const& pages, PartWork parts = PartWork::turned) {
  std::vector<Plan> all;
  auto const keep = [&](Plan const& plan) {
    std::size_t at = 0;
    for (; at < all.size(); ++at) {
      auto const& other = all[at];
      if (other == plan) return;
      auto const paper = plan.sheets_a_copy() <=> other.sheets_a_copy();
      if (std::is_lt(paper) ||
          (std::is_eq(paper) && (plan.formes() < other.formes() ||
                                 (plan.formes() == other.formes() && plan.blank_pages < other.blank_pages))))
        break;
    }
    detail::put(all, at, at, plan);
  };
  for (bool runs_on : {false, true}) {
    if (runs_on && pages.end_matter == 0) break;
    for (auto sharing : {Sharing::none, Sharing::once, Sharing::freely}) {
      auto const plan = arrange(by, pages, {sharing, parts, runs_on});
      if (!plan) return plan.error();
      keep(*plan);
    }
    keep(*arrange_in_whole_sheets(by, pages, {Sharing::none, parts, runs_on}));
  }
  return all;
}

/// How far a text is from an even working, in which nothing is left over for a part of a sheet and no page is blank.
struct EvenWorking {
  std::int64_t pages_fewer{}; ///< to be saved so that the last whole sheet is full
  std::int64_t pages_more{};  ///< to be had without another sheet
  friend constexpr bool operator==(EvenWorking, EvenWorking) = default;
};
/// For one matter of so many pages. error: negative_count.
constexpr Expected<EvenWorking> even_working(SheetMakeUp const& by, std::int64_t pages) {
  if (pages < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  detail::must_make_leaves(by);
  auto const sheet = std::int64_t{2} * by.leaves_to_sheet;
  auto const over = pages % sheet;
  return EvenWorking{over, over == 0 ? 0 : sheet - over};
}

} // namespace v0
} // namespace bifolium
