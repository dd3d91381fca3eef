// SPDX-License-Identifier: MIT
/// Puts the leaves to press that are left over when whole sheets are filled.
///
/// Method. The least paper is known in advance: the number of leaves is even (every gathering is folded), so a copy
/// takes at least its leaves divided by the leaves to the sheet, and part-sheets reach this bound. Among the plans with
/// this paper, the search finds exactly those with the fewest formes. Without sharing they come from the table of
/// part_sheets.hpp. With one shared working, every capacity and every way to fill it is tried (at most the product of
/// the leaves left over, halved if they are folded, and the divisors of the sheet), and the rest comes from the table.
/// With free sharing, all leaves left over go into the fewest workings that hold them, since any even amounts fill any
/// even workings.
#pragma once

#include <bifolium/edition/detail/part_sheets.hpp>
#include <bifolium/edition/make_up.hpp>
#include <bifolium/edition/plan.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the number of gatherings for `leaves` leaves, if they are filled one after another as the scheme makes them;
/// the last may be smaller.
constexpr std::int64_t gatherings_of(std::int64_t leaves, SheetMakeUp const& by) {
  auto const unit = by.leaves();
  auto count = leaves / unit * by.gathering_count;
  auto rest = leaves % unit;
  for (std::size_t g = 0; rest > 0; ++g, ++count) rest -= rest < by.sizes[g] ? rest : by.sizes[g];
  return count;
}

/// Returns the number of leaves for pages. It is even, because a gathering is folded; for a broadside it can be odd,
/// and if the scheme has odd gatherings, whole gatherings keep their size.
constexpr std::int64_t even_leaves(std::int64_t pages, SheetMakeUp const& by) {
  auto const leaves = pages / 2 + pages % 2;
  if (by.leaves_to_press() == 1 || leaves % by.leaves() % 2 == 0) return leaves;
  return leaves + 1;
}

constexpr void must_make_leaves(SheetMakeUp const& by) {
  if (by.gathering_count < 1 || by.gathering_count > Scheme::most_gatherings || by.pieces_to_sheet < 1 ||
      by.leaves_to_sheet < by.pieces_to_sheet || by.leaves_to_press() > Scheme::most_cells || by.leaves() < 1)
    broken("the make-up of a sheet must come from make_up(fold)");
}

/// Arranges the leaves that are left over when whole sheets are filled.
class Arranger {
  static constexpr auto cancels = static_cast<std::size_t>(Matter::cancels);
  using Rests = std::array<int, matters>;

  SheetMakeUp const& by_;
  Arranging how_;
  int press_;     // leaves of the paper that goes to press at once
  PartWork work_; // of parts
  PartSheets folded_, single_;
  Rests rests_{};

  [[nodiscard]] constexpr int cost(std::size_t matter, int leaves) const {
    return (matter == cancels ? single_ : folded_).fewest(leaves);
  }
  [[nodiscard]] constexpr int cost(Rests const& rests) const {
    int sum = 0;
    for (std::size_t m = 0; m < matters; ++m) sum += cost(m, rests[m]);
    return sum;
  }

  /// Returns a working that takes `leaves` leaves of the paper that goes to press at once, or all of them.
  [[nodiscard]] constexpr Working working_of(std::int64_t times, int leaves) const {
    auto const kind = leaves == press_ && by_.pieces_to_sheet == 1 ? Working::Kind::sheet
                      : leaves == press_                           ? Working::Kind::cut_first
                                         : Working::kind_of(leaves, by_.leaves_to_sheet, work_);
    return {times, static_cast<std::uint8_t>(leaves), kind, {}};
  }

  struct Shared {
    Working working{};
    Rests rests{}; // leaves left over beside it
    int formes{};
  };
  /// Tries all shares of matters m, m+1 and so on in a working with room for `room` more leaves.
  constexpr void try_shares(Shared& best, Working& working, Rests& rests, std::size_t m, int room) const {
    if (m == matters) {
      if (room != 0 || working.is_equally_shared()) return; // one matter alone counts as equal
      auto const formes = working.formes() + cost(rests);
      if (formes < best.formes) best = {working, rests, formes};
      return;
    }
    auto const step = m == cancels ? 1 : 2;
    auto const most = rests_[m] < room ? rests_[m] : room;
    for (int share = most - most % step; share >= 0;
         share -= step) { // the last share is 0, so that all leaves are put back
      working.shares[m] = static_cast<std::uint8_t>(share);
      rests[m] = rests_[m] - share;
      try_shares(best, working, rests, m + 1, room - share);
    }
  }
  constexpr void share_once(Plan& plan) {
    Shared best{{}, rests_, cost(rests_)};
    for (int capacity = press_; capacity > 1; --capacity) {
      if (by_.leaves_to_sheet % capacity != 0) continue;
      auto working = working_of(1, capacity);
      auto rests = rests_;
      try_shares(best, working, rests, 0, capacity);
    }
    plan.add(best.working);
    rests_ = best.rests;
  }
  /// Finds the fewest formes if all folded leaves share workings: a table like that of the parts, over at most three
  /// sheets.
  constexpr void share_freely(Plan& plan) {
    std::array<std::int16_t, 3 * Scheme::most_cells + 1> fewest{}, last{};
    int total = 0;
    for (std::size_t m = 0; m < cancels; ++m) total += rests_[m];
    for (int leaves = 2; leaves <= total; leaves += 2) {
      auto const at = static_cast<std::size_t>(leaves);
      fewest[at] = 30000;
      for (int capacity = 2; capacity <= press_ && capacity <= leaves; capacity += 2) {
        if (by_.leaves_to_sheet % capacity != 0) continue;
        auto const formes = fewest[static_cast<std::size_t>(leaves - capacity)] + working_of(1, capacity).formes();
        if (formes > fewest[at]) continue;
        fewest[at] = static_cast<std::int16_t>(formes);
        last[at] = static_cast<std::int16_t>(capacity);
      }
    }
    std::size_t m = 0;
    while (total > 0) {
      auto const capacity = last[static_cast<std::size_t>(total)];
      auto working = working_of(1, capacity);
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
      : by_{by}, how_{how}, press_{by.leaves_to_press()}, work_{by.pieces_to_sheet == 1 ? how.parts
                                                                                        : PartWork::cut_first},
        folded_{by.leaves_to_sheet, press_, false, work_}, single_{by.leaves_to_sheet, press_, true, work_} {}

  /// Adds the workings for the leaves of a plan. `one_sided` of the leaves have a blank verso, each on a sheet (or
  /// piece) by itself. Precondition: the numbers of leaves are at least 0, and even if the leaves are folded.
  constexpr void arrange(Plan& plan, int one_sided) {
    auto whole = working_of(0, press_);
    Working half{0, static_cast<std::uint8_t>(press_ / 2), {}, {}};
    if (by_.half_workings > 0) half = working_of(0, press_ / 2);
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
    whole.times -= one_sided;
    plan.add(whole);
    plan.add({one_sided, static_cast<std::uint8_t>(press_), Working::Kind::one_side, {}});
    plan.add(half);
    if (how_.sharing == Sharing::once) share_once(plan);
    if (how_.sharing == Sharing::freely) share_freely(plan);
    for (std::size_t m = 0; m < cancels; ++m) folded_.add_to(plan, rests_[m]);
    single_.add_to(plan, rests_[cancels]);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
