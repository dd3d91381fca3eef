// SPDX-License-Identifier: MIT
/// The gatherings of a formula that came from one sheet. Some schemes make several gatherings of a sheet - three sixes
/// of an eighteen, an eight and a four of a twelve - and one makes three eights of two twelves. Where such gatherings
/// stand side by side they are taken as one unit of the scheme, be they written as a run (A-F⁸/⁴) or one by one
/// (A⁸ B⁴). The alternative, each cut from a sheet by itself, needs formes that nobody can impose.
///
/// Nothing but the counts of leaves is known here. If two schemes make the same counts, the first of the table of
/// schemes is taken: half-sheets in quarto, octavo and duodecimo, two gatherings to the sheet in smaller formats. Paper
/// and formes are the same in both. The gatherings of a unit may stand in any order, since an off-cut can be gathered
/// before the rest of its sheet.
#pragma once

#include <bifolium/collation/parts.hpp>
#include <bifolium/edition/attested_make_up.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Divides the gatherings of runs into units of schemes.
class SheetUnits {
public:
  /// Gatherings that are printed in one way, one after another or in repetitions of a run.
  struct Step {
    SheetMakeUp const* unit{}; ///< null if they are no unit of a scheme
    int leaves{};              ///< of all gatherings of the step together
    int gatherings{};          ///< 1 if they are no unit
    std::int64_t times{};      ///< how often the step is repeated
    bool by_given{};           ///< true if they are a unit of the scheme that was given, or the beginning of one
    bool broken_off{};         ///< true if the unit of the given scheme is broken off by the end of the text
  };

private:
  static constexpr auto most = std::int64_t{Scheme::most_gatherings};
  std::span<Run const> runs_;
  std::vector<SheetMakeUp> units_{}; // a given scheme first, then those with the most leaves
  bool given_;

  /// Returns true if one gathering after another of these leaves is known by arithmetic: it fills sheets, or it is a
  /// half-sheet by a scheme that comes earlier in the table.
  [[nodiscard]] static constexpr bool is_plain(SheetMakeUp const& unit, bool half_sheets) {
    if (unit.gathering_count == 1) return unit.sizes[0] % 2 == 0;
    for (int g = 0; g < unit.gathering_count; ++g)
      if (!half_sheets || 2 * unit.sizes[static_cast<std::size_t>(g)] != unit.leaves_to_sheet) return false;
    return true;
  }
  void add_attested(int leaves_to_sheet) {
    bool half_sheets = false;
    for (auto const& unit : make_up_rows) {
      if (unit.leaves_to_sheet != leaves_to_sheet || unit.pieces_to_sheet != 1) continue;
      half_sheets = half_sheets || (unit.gathering_count == 1 && unit.half_workings == 1);
      if (is_plain(unit, half_sheets)) continue;
      units_.push_back(unit);
      for (auto at = units_.size() - 1; at > (given_ ? 1U : 0U) && units_[at - 1].leaves() < unit.leaves(); --at)
        units_[at] = units_[at - 1], units_[at - 1] = unit;
    }
  }

  /// Copies the leaves of the next gatherings, at most `wanted`, and returns their number.
  int next(std::size_t run, std::int64_t index, int wanted, std::span<int> leaves) const {
    int found = 0;
    for (; run < runs_.size(); ++run, index = 0)
      for (; index < runs_[run].gatherings; ++index) {
        if (found == wanted) return found;
        leaves[static_cast<std::size_t>(found++)] = runs_[run].leaves.at(index);
      }
    return found;
  }
  /// Returns true if the leaves are those of the gatherings of a unit, in any order.
  [[nodiscard]] static bool are_of(SheetMakeUp const& unit, std::span<int const> leaves) {
    std::array<bool, Scheme::most_gatherings> taken{};
    for (auto const wanted : leaves) {
      std::size_t g = 0;
      while (g < leaves.size() && (taken[g] || unit.sizes[g] != wanted)) ++g;
      if (g == leaves.size()) return false;
      taken[g] = true;
    }
    return true;
  }
  /// Returns true if the leaves are what is left of a unit that the end of the text breaks off.
  [[nodiscard]] static bool begins(SheetMakeUp const& unit, std::span<int const> leaves) {
    for (std::size_t g = 0; g < leaves.size(); ++g)
      if (g + 1 < leaves.size() ? leaves[g] != unit.sizes[g] : leaves[g] > unit.sizes[g]) return false;
    return !leaves.empty();
  }
  [[nodiscard]] Step step_at(std::size_t run, std::int64_t index) const {
    std::array<int, Scheme::most_gatherings + 1> ahead{};
    auto const there = static_cast<std::size_t>(next(run, index, static_cast<int>(ahead.size()), ahead));
    bool const broken_off =
        given_ && there <= static_cast<std::size_t>(most) && begins(units_[0], std::span{ahead}.first(there));
    for (auto const& unit : units_) {
      auto const count = static_cast<std::size_t>(unit.gathering_count);
      bool const given = given_ && &unit == units_.data();
      if (count <= there && are_of(unit, std::span{ahead}.first(count)))
        return {&unit, unit.leaves(), unit.gathering_count, 1, given, !given && broken_off};
    }
    return {nullptr, ahead[0], 1, 1, false, broken_off};
  }

public:
  /// Prepares the units of all schemes of a sheet, and of the given scheme before them.
  SheetUnits(std::span<Run const> runs, int leaves_to_sheet, SheetMakeUp const* given)
      : runs_{runs}, given_{given != nullptr} {
    if (given != nullptr) units_.push_back(*given);
    add_attested(leaves_to_sheet);
  }
  /// Calls `each` with the steps. A run is a cycle of counts, so its steps come again: they are counted, not repeated.
  template <class Each> void each_step(Each each) const {
    std::int64_t index = 0;
    bool broken_off = false; // and what comes after it is the rest of the same unit
    for (std::size_t run = 0; run < runs_.size(); index -= runs_[run++].gatherings) {
      auto const gatherings = runs_[run].gatherings;
      std::array<std::int64_t, Cycle::most_terms> seen_at{}, seen_step{};
      seen_at.fill(-1);
      std::vector<Step> steps;
      for (bool counted = false; index < gatherings;) {
        auto const term = static_cast<std::size_t>(index) % runs_[run].leaves.size();
        if (!counted && seen_at[term] >= 0) { // from here the steps since then come again
          counted = true;
          auto const period = index - seen_at[term];
          auto const times = gatherings - index > most ? (gatherings - index - most) / period : 0;
          for (auto s = static_cast<std::size_t>(seen_step[term]); times > 0 && s < steps.size(); ++s) {
            auto again = steps[s];
            again.times = times;
            each(again);
          }
          index += times * period;
          continue;
        }
        auto step = step_at(run, index);
        broken_off = broken_off || step.broken_off;
        step.broken_off = broken_off;
        step.by_given = step.by_given || broken_off;
        each(step);
        if (!counted) seen_at[term] = index, seen_step[term] = static_cast<std::int64_t>(steps.size());
        steps.push_back(step);
        index += step.gatherings;
      }
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
