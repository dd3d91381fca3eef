// SPDX-License-Identifier: MIT
/// Makes the plan of a book from its formula: how its gatherings went to press. A gathering of 8 in an octavo is a
/// sheet and a gathering of 4 a half-sheet, whatever its neighbours are. If leaf counts alternate and together fill
/// sheets, as 8/4 do in twelves, the gatherings came from one sheet. Deleted leaves were printed; a leaf in two places
/// was printed once; cancels and separately inserted leaves were printed several to a sheet. With the plan of a
/// formula, `reckon` gives the bill of the edition. A copy takes the sheets that `paper` states.
#pragma once

#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/edition/bill.hpp>

#include <array>
#include <cstdint>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Counts workings - whole sheets and parts - from gatherings.
class FormulaPlanner {
  static constexpr auto most = static_cast<std::size_t>(Scheme::most_cells) + 1;

  Formula const& formula_;
  IdealCopy book_;
  int sheet_;
  PartWork parts_;
  std::int64_t whole_{}, single_{}, cancels_{}, printed_{};
  std::array<std::int64_t, most> rests_{}; // numbers of gatherings by the number of leaves that are left over

  /// Adds gatherings with `leaves` leaves each.
  void add(int leaves, std::int64_t times) {
    printed_ += leaves * times;
    whole_ += leaves / sheet_ * times;
    auto const rest = leaves % sheet_;
    single_ += rest % 2 * times; // a leaf without its conjugate
    rests_[static_cast<std::size_t>(rest - rest % 2)] += times;
  }
  void add(Run const& run) {
    auto const size = static_cast<std::int64_t>(run.leaves.size());
    auto const turn = run.leaves.total(size);
    std::int64_t done = 0;
    if (size > 1 && turn % sheet_ == 0) {
      auto const turns = run.gatherings / size;
      whole_ += turn / sheet_ * turns;
      printed_ += turn * turns;
      done = turns * size;
    }
    for (std::int64_t i = 0; i < size; ++i) {
      auto const left = run.gatherings - done - i;
      if (left > 0) add(run.leaves.at(done + i), (left + size - 1) / size);
    }
  }
  void add(Insertion const& one) {
    if (one.joined != Joined::apart) return add(one.leaves_folded(), 1);
    printed_ += one.leaves;
    single_ += one.leaves;
  }
  /// Removes leaves that are in two places of the formula: single ones first, then those of the smallest parts.
  void take(std::int64_t leaves) {
    auto const take_from = [&](std::int64_t& there) {
      auto const taken = leaves < there ? leaves : there;
      there -= taken;
      leaves -= taken;
    };
    take_from(cancels_);
    take_from(single_);
    while (leaves > 0) {
      std::size_t rest = 2;
      while (rest < most && rests_[rest] == 0) ++rest;
      auto room = static_cast<std::int64_t>(rest);
      if (rest == most) // no parts are left: a sheet is divided
        --whole_, room = sheet_;
      else
        --rests_[rest];
      auto const left = room > leaves ? room - leaves : 0;
      leaves -= room - left;
      single_ += left % 2;
      rests_[static_cast<std::size_t>(left - left % 2)] += 1;
    }
  }
  /// Adds a sheet that the first and the last gathering share, inferred from their numbers of leaves.
  void share(Plan& plan) {
    for (auto const& shared : paper(formula_, Format::of(sheet_)).shared) {
      if (shared.observed) continue; // the identity has counted its leaves once already
      auto const a = formula_.runs()[shared.first_run].leaf_total() % sheet_;
      auto const b = formula_.runs()[shared.second_run].leaf_total() % sheet_;
      auto const first = static_cast<std::size_t>(a), second = static_cast<std::size_t>(b);
      if (a + b != sheet_ || a % 2 != 0 || b % 2 != 0 || rests_[first] == 0 || rests_[second] == 0) continue;
      --rests_[first], --rests_[second];
      plan.add({1,
                static_cast<std::uint8_t>(sheet_),
                Working::Kind::sheet,
                {static_cast<std::uint8_t>(a), static_cast<std::uint8_t>(b), 0, 0}});
    }
  }
  void put_to_press(Plan& plan) {
    std::array<std::int64_t, most> times{};
    auto const count = [&](int leaves, std::int64_t gatherings, bool single) {
      if (leaves == 0 || gatherings == 0) return;
      if (auto const parts = parts_of_sheet(leaves, sheet_, single))
        for (auto const part : *parts) times[static_cast<std::size_t>(part)] += gatherings;
      else
        whole_ += gatherings; // an odd sheet has no even parts: the rest of it stays blank
    };
    for (int rest = 2; rest < sheet_; ++rest) count(rest, rests_[static_cast<std::size_t>(rest)], false);
    auto const single = single_ + cancels_;
    whole_ += single / sheet_;
    count(static_cast<int>(single % sheet_), 1, true);
    plan.add({whole_, static_cast<std::uint8_t>(sheet_), Working::Kind::sheet, {}});
    auto const kind = parts_ == PartWork::turned ? Working::Kind::turned : Working::Kind::cut_first;
    for (int part = sheet_ - 1; part > 0; --part)
      plan.add({times[static_cast<std::size_t>(part)], static_cast<std::uint8_t>(part), kind, {}});
  }
  /// Returns the first run of the text. The runs before it are signed with other marks than the longest run.
  [[nodiscard]] std::uint32_t first_of_text() const {
    auto const& runs = formula_.runs();
    std::size_t longest = 0;
    for (std::size_t r = 1; r < runs.size(); ++r)
      if (runs[r].gatherings > runs[longest].gatherings) longest = r;
    std::size_t first = 0;
    while (first < longest && runs[first].first.mark() != runs[longest].first.mark()) ++first;
    return static_cast<std::uint32_t>(first);
  }
  void count_leaves(Plan& plan) const {
    auto const front = formula_.runs().empty() ? 0 : book_.numbers_of({first_of_text(), 0}).from - 1;
    plan.leaves_of = {front, book_.leaves() - front, 0, cancels_};
    plan.gatherings = book_.gatherings_of_runs();
    for (auto const& change : formula_.changes())
      if (auto const* const one = change.insertion(); one != nullptr && one->joined == Joined::gathering)
        ++plan.gatherings;
    for (auto const& leaf : book_.blanks())
      if (!book_.is_deleted(leaf)) ++plan.blank_leaves, plan.blank_pages += 2;
  }

public:
  FormulaPlanner(Formula const& formula, int sheet, PartWork parts)
      : formula_{formula}, book_{formula}, sheet_{sheet}, parts_{parts} {}
  Plan plan(Sharing sharing) {
    for (auto const& run : formula_.runs()) add(run);
    for (auto const& change : formula_.changes()) {
      if (auto const* const one = change.insertion()) add(*one);
      if (auto const* const one = change.cancel())
        cancels_ += one->leaves.count(formula_.leaves_folded(one->gathering));
    }
    auto const stated = paper(formula_, Format::of(sheet_)).sheets.stated * Fraction{sheet_};
    take(printed_ + cancels_ - stated.floor());
    Plan plan;
    plan.leaves_to_sheet = sheet_;
    count_leaves(plan);
    if (sharing != Sharing::none) share(plan);
    put_to_press(plan);
    return plan;
  }
};

} // namespace detail

/// Returns the plan of a formula on sheets of `leaves_to_sheet` leaves. `how` says how parts of sheets are printed, and
/// whether the first and the last gathering may share a sheet that their leaves fill, which is an inference. Matters
/// are the preliminaries (the runs before the text that are signed with other marks than its longest run), the text and
/// the cancels. The function allocates memory. Precondition: 1 to Scheme::most_cells leaves to the sheet.
inline Plan plan_of(Formula const& formula, int leaves_to_sheet, Arranging how = {}) {
  if (leaves_to_sheet < 1 || leaves_to_sheet > Scheme::most_cells)
    broken("a sheet must make from 1 to Scheme::most_cells leaves");
  return detail::FormulaPlanner{formula, leaves_to_sheet, how.parts}.plan(how.sharing);
}
/// Returns the plan of a formula in the format that it states. The function allocates memory. Error: format_not_stated.
inline Expected<Plan> plan_of(Formula const& formula, Arranging how = {}) {
  if (!states_paper(formula)) return error_in_field(Problem::format_not_stated, "formula");
  return plan_of(formula, *formula.format()->leaves_to_sheet(), how);
}

} // namespace v0
} // namespace bifolium
