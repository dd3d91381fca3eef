// SPDX-License-Identifier: MIT
/// Makes the plan of a book from its formula: how its gatherings went to press. A gathering of 8 in an octavo is a
/// sheet and a gathering of 4 a half-sheet, whatever its neighbours are. Gatherings that stand side by side came from
/// one sheet if an attested scheme makes such gatherings of it: 8 and 4 of a twelve, three 6s of an eighteen; or from
/// two, as three 8s in twelves. If the scheme of the book is known, its gatherings are taken first. Deleted leaves were
/// printed; a leaf in two places was printed once; cancels and separately inserted leaves were printed several to a
/// sheet. With the plan of a formula, `reckon` gives the bill of the edition. A copy takes the sheets that `paper`
/// states.
#pragma once

#include <bifolium/book/detail/sheets/sheet_units.hpp>
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
  SheetMakeUp const* given_;
  std::int64_t whole_{}, single_{}, cancels_{}, printed_{};
  bool first_in_unit_{}, last_in_unit_{};  // the first and the last gathering, of a sheet with others
  std::array<std::int64_t, most> rests_{}; // numbers of gatherings by the number of leaves that are left over

  /// Adds gatherings with `leaves` leaves each.
  void add(int leaves, std::int64_t times) {
    printed_ += leaves * times;
    whole_ += leaves / sheet_ * times;
    auto const rest = leaves % sheet_;
    single_ += rest % 2 * times; // a leaf without its conjugate
    rests_[static_cast<std::size_t>(rest - rest % 2)] += times;
  }
  void add(SheetUnits::Step const& step) {
    if (step.unit == nullptr) return add(step.leaves, step.times);
    printed_ += step.leaves * step.times;
    whole_ += step.unit->workings * step.times;
    rests_[static_cast<std::size_t>(sheet_ / 2)] += step.unit->half_workings * step.times;
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
    if (first_in_unit_ || last_in_unit_) return; // they are of a sheet with their neighbours
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
      if (2 * leaves == sheet_) // folded or not, even or odd
        times[static_cast<std::size_t>(leaves)] += gatherings;
      else if (auto const parts = parts_of_sheet(leaves, sheet_, single, parts_))
        for (auto const part : *parts) times[static_cast<std::size_t>(part)] += gatherings;
      else
        whole_ += gatherings; // an odd sheet has no even parts: the rest of it stays blank
    };
    for (int rest = 2; rest < sheet_; ++rest) count(rest, rests_[static_cast<std::size_t>(rest)], false);
    auto const single = single_ + cancels_;
    whole_ += single / sheet_;
    count(static_cast<int>(single % sheet_), 1, true);
    plan.add({whole_, static_cast<std::uint8_t>(sheet_), Working::Kind::sheet, {}});
    for (int part = sheet_ - 1; part > 0; --part)
      if (auto const of_part = times[static_cast<std::size_t>(part)]; of_part > 0)
        plan.add({of_part, static_cast<std::uint8_t>(part), Working::kind_of(part, sheet_, parts_), {}});
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
  FormulaPlanner(Formula const& formula, int sheet, PartWork parts, SheetMakeUp const* given = nullptr)
      : formula_{formula}, book_{formula}, sheet_{sheet}, parts_{parts}, given_{given} {}
  /// Calls `each` with the gatherings of the runs as they are taken to the sheet. Preliminaries, text and the parts of
  /// a book are apart.
  template <class Each> void each_step(Each each) const {
    std::span<Run const> const runs{formula_.runs()};
    auto const text = first_of_text();
    for (std::size_t from = 0, to = 0; from < runs.size(); from = to) {
      to = from + 1;
      while (to < runs.size() && to != text && !runs[to].begins_part) ++to;
      SheetUnits{runs.subspan(from, to - from), sheet_, given_}.each_step([&, first = true](auto const& step) mutable {
        each(step, first && from == text);
        first = false;
      });
    }
  }
  /// Returns the gatherings that the given scheme makes. A last gathering that is less than the scheme makes counts only
  /// beside whole ones, or if it is all of the text.
  [[nodiscard]] std::int64_t by_scheme() const {
    std::int64_t gatherings = 0;
    bool any = false;
    each_step([&](SheetUnits::Step const& step, bool begins_text) {
      if (!step.by_given) return;
      gatherings += step.gatherings * step.times;
      any = any || !step.broken_off || begins_text;
    });
    return any ? gatherings : 0;
  }
  Plan plan(Sharing sharing) {
    bool first = true;
    each_step([&](SheetUnits::Step const& step, bool) {
      add(step);
      last_in_unit_ = step.unit != nullptr && step.unit->gathering_count > 1;
      if (first) first_in_unit_ = last_in_unit_;
      first = false;
    });
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
/// the cancels. The function allocates memory. Preconditions: 1 to Scheme::most_cells leaves to the sheet; the choices
/// are enumerators.
inline Plan plan_of(Formula const& formula, int leaves_to_sheet, Arranging how = {}) {
  if (leaves_to_sheet < 1 || leaves_to_sheet > Scheme::most_cells)
    broken("a sheet must make from 1 to Scheme::most_cells leaves");
  if (detail::what_is_wrong(how)) broken("a choice of the printer has a number that its type does not name");
  return detail::FormulaPlanner{formula, leaves_to_sheet, how.parts}.plan(how.sharing);
}
/// Returns the number of gatherings in the runs of the formula that a scheme makes: those that stand side by side as
/// the scheme gathers them from its sheets, and a last one that is smaller. 0 if there are none.
inline std::int64_t gatherings_by(Formula const& formula, Attested scheme) {
  auto const by = make_up(scheme);
  return detail::FormulaPlanner{formula, by.leaves_to_sheet, PartWork::turned, &by}.by_scheme();
}
/// Returns the plan of a formula whose scheme is known. Gatherings that the scheme does not make - `gatherings_by`
/// counts the others - are put to press as if it were not known. The function allocates memory. Errors: no_such_value;
/// formats_differ if the formula states another format; scheme_not_in_formula if the scheme makes none of the gatherings.
inline Expected<Plan> plan_of(Formula const& formula, Attested scheme, Arranging how = {}) {
  if (auto const error = detail::what_is_wrong(how)) return *error;
  auto const by = make_up(scheme);
  if (states_paper(formula) && *formula.format()->leaves_to_sheet() != by.leaves_to_sheet)
    return error_in_field(Problem::formats_differ, "scheme");
  if (gatherings_by(formula, scheme) == 0) return error_in_field(Problem::scheme_not_in_formula, "scheme");
  return detail::FormulaPlanner{formula, by.leaves_to_sheet, how.parts, &by}.plan(how.sharing);
}
/// Returns the plan of a formula in the format that it states. The function allocates memory. Errors: no_such_value,
/// format_not_stated.
inline Expected<Plan> plan_of(Formula const& formula, Arranging how = {}) {
  if (auto const error = detail::what_is_wrong(how)) return *error;
  if (!states_paper(formula)) return error_in_field(Problem::format_not_stated, "formula");
  return plan_of(formula, *formula.format()->leaves_to_sheet(), how);
}

} // namespace v0
} // namespace bifolium
