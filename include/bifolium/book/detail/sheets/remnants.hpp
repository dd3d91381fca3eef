// SPDX-License-Identifier: MIT
/// The leaves of a formula that are left after whole sheets. If an attested scheme makes several gatherings of a sheet -
/// 8 and 4 of a duodecimo - the gatherings of a run that stand side by side are taken as its sheets, unless something
/// was seen of a gathering of the run, which could tell that they are not. A leaf that the formula has in two places ([=B2]) was
/// printed once, where it was deleted. It is not a remnant in the place where it is bound, and leaves no room in the
/// place from which it came.
#pragma once

#include <bifolium/book/detail/sheets/sheet_units.hpp>
#include <bifolium/book/sheet_grouping.hpp>
#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include <array>
#include <unordered_map>

namespace bifolium {
inline namespace v0 {
namespace detail {

class Remnants {
  Formula const& formula_;
  SheetsOfBook& book_;
  std::uint32_t likes_{};
  /// The origin of a unit or a free place. `leaf` has no value if the unit is not of one leaf, or of no leaf as folded.
  struct From {
    GatheringAt gathering{};
    std::optional<std::uint32_t> insertion{};
    std::optional<int> leaf{}; // the first of its leaves
    friend bool operator==(From const&, From const&) = default;
  };
  std::vector<From> units_from_{}, places_from_{};

  [[nodiscard]] std::string name(GatheringAt at) const { return std::string{to_text(formula_.signature(at)).view()}; }
  [[nodiscard]] std::string leaf_name(GatheringAt at, int leaf) const {
    auto const numbered = formula_.runs()[at.run].first.mark() == Mark::number;
    return name(at) + (numbered ? "/" : "") + std::to_string(leaf);
  }
  void add(std::string name, int leaves, Remnant::Kind kind, std::uint32_t likes, From const& from) {
    units_from_.push_back(from);
    Remnant unit;
    unit.name = static_cast<std::string&&>(name);
    unit.leaves = leaves, unit.kind = kind, unit.likes = likes;
    book_.units.push_back(static_cast<Remnant&&>(unit));
  }
  /// Takes the sheets that a scheme makes of gatherings of a run from its beginning, and returns their number.
  std::int64_t taken_by_schemes(Run const& run) {
    std::int64_t taken = 0;
    bool goes_on = true;
    SheetUnits{{&run, 1}, book_.leaves_to_sheet, nullptr}.each_step([&](SheetUnits::Step const& step) {
      goes_on = goes_on && step.unit != nullptr && step.unit->half_workings == 0;
      if (!goes_on) return;
      taken += step.gatherings * step.times;
      book_.whole += step.unit->workings * step.times;
    });
    return taken;
  }
  void part_sheets(std::vector<bool> const& seen_of) {
    auto const& runs = formula_.runs();
    for (std::uint32_t r = 0; r < runs.size(); ++r) {
      for (std::int64_t i = seen_of[r] ? 0 : taken_by_schemes(runs[r]); i < runs[r].gatherings; ++i) {
        auto const leaves = runs[r].leaves.at(i);
        book_.whole += leaves / book_.leaves_to_sheet;
        auto const left = leaves % book_.leaves_to_sheet;
        if (left == 0 && runs[r].leaves.size() == 1) { // and so do all others of the run
          book_.whole += (runs[r].gatherings - 1) * (leaves / book_.leaves_to_sheet);
          break;
        }
        if (left > 0 && book_.units.size() <= most_kept)
          add(name({r, i}), left, Remnant::Kind::part_sheet, likes_, {{r, i}, {}, {}});
      }
      ++likes_;
    }
  }
  /// Adds the place of leaves that are deleted side by side.
  void deleted(Deletion const& deletion, Deletion const* before) {
    auto const folded = formula_.leaves_folded(deletion.gathering);
    auto const leaves = deletion.leaves.count(folded), first = deletion.leaves.first();
    bool const goes_on = before != nullptr && !book_.places.empty() && before->gathering == deletion.gathering &&
                         before->leaves.last(folded) + 1 == first;
    if (goes_on)
      book_.places.back().leaves += leaves;
    else {
      auto const every = deletion.leaves.are_every();
      book_.places.push_back({every ? name(deletion.gathering) : leaf_name(deletion.gathering, first),
                              leaves,
                              name(deletion.gathering),
                              {}});
      places_from_.push_back({deletion.gathering, {}, first});
    }
  }
  /// Adds the leaves that were printed for a cancel: the whole gathering, a fold, or one after another.
  void cancelled(Cancel const& cancel, std::uint32_t likes) {
    constexpr From beside{{UINT32_MAX, 0}, {}, {}};
    auto const folded = formula_.leaves_folded(cancel.gathering);
    if (cancel.leaves.are_every())
      return add("±" + name(cancel.gathering), folded, Remnant::Kind::cancellans, likes, beside);
    for (auto leaf = cancel.leaves.first(); leaf <= cancel.leaves.last(folded); ++leaf)
      add("±" + leaf_name(cancel.gathering, leaf), cancel.of_fold ? 2 : 1, Remnant::Kind::cancellans, likes, beside);
  }
  void changes() {
    auto const cancels = likes_++, inserted = likes_++;
    Deletion const* before = nullptr;
    bool second_of_fold = false;
    for (std::uint32_t c = 0; c < formula_.changes().size(); ++c) {
      auto const& change = formula_.changes()[c];
      auto const* deletion = change.deletion();
      if (deletion != nullptr) deleted(*deletion, before);
      before = deletion;
      if (auto const* cancel = change.cancel()) {
        if (cancel->of_fold && second_of_fold) { // the fold is already a unit
          second_of_fold = false;
          continue;
        }
        second_of_fold = cancel->of_fold && !cancel->leaves.are_every();
        cancelled(*cancel, cancels);
      }
      if (auto const* insertion = change.insertion()) {
        auto name =
            '+' + (insertion->name ? std::string{to_text(*insertion->name).view()} +
                                         (insertion->first_figure ? std::to_string(*insertion->first_figure) : "")
                                   : leaf_name(insertion->gathering, insertion->after) + "+1");
        if (insertion->joined == Joined::apart)
          for (int i = 0; i < insertion->leaves; ++i)
            add(i == 0 ? name : name + '.' + std::to_string(i + 1), 1, Remnant::Kind::inserted, inserted,
                {insertion->gathering, c, i + 1});
        else
          add(static_cast<std::string&&>(name), insertion->leaves, Remnant::Kind::inserted, inserted,
              {insertion->gathering, c, {}});
      }
    }
  }

  /// Returns the free place of a leaf, or null if it is not deleted.
  [[nodiscard]] FreePlace* place_of(GatheringAt at, int leaf) {
    for (std::size_t p = 0; p < book_.places.size(); ++p)
      if (auto const& from = places_from_[p];
          from.gathering == at && from.leaf && *from.leaf <= leaf && leaf < *from.leaf + book_.places[p].leaves)
        return &book_.places[p];
    return nullptr;
  }
  /// Records that one leaf of a gathering was not printed there.
  void not_printed(GatheringAt at) {
    for (std::size_t u = 0; u < book_.units.size(); ++u)
      if (units_from_[u].gathering == at && !units_from_[u].insertion && book_.units[u].leaves > 0) {
        --book_.units[u].leaves;
        return;
      }
    --book_.whole; // it seemed to fill whole sheets
    add(name(at), book_.leaves_to_sheet - 1, Remnant::Kind::part_sheet, likes_++, {at, {}, {}});
  }
  void not_printed(Identity const& one) {
    for (std::size_t u = 0; u < book_.units.size(); ++u)
      if (auto const& from = units_from_[u];
          from.insertion == one.insertion && (!from.leaf || from.leaf == one.leaf) && book_.units[u].leaves > 0) {
        --book_.units[u].leaves;
        return;
      }
  }
  /// Records that the cancel of a leaf was printed with another leaf.
  void cancel_not_printed(std::string const& name) {
    for (auto& unit : book_.units)
      if (unit.name == name && unit.leaves > 0) {
        --unit.leaves;
        return;
      }
  }
  /// Returns a number that seldom is that of another origin.
  static std::uint64_t number_of(From const& from) {
    auto const leaf = static_cast<std::uint64_t>(from.leaf.value_or(0)),
               insertion = std::uint64_t{from.insertion.value_or(0)};
    return ((from.gathering.run * 1'000'003 + static_cast<std::uint64_t>(from.gathering.index)) * 4099 + leaf) *
               65'537 +
           insertion;
  }
  void identities() {
    IdealCopy const copy{formula_};
    // both leaves may state it; those with the same sum of runs and leaves are looked through
    std::unordered_multimap<std::uint64_t, std::array<From, 2>> done;
    for (auto const& change : formula_.changes()) {
      auto const* one = change.identity();
      if (one == nullptr) continue;
      if (book_.units.size() > most_compared) return; // see `find`
      auto const other = one->name ? copy.find(*one->name) : std::nullopt;
      if (one->name && !other) continue;
      auto const there = one->name ? other->gathering : one->gathering;
      auto const leaf_there = one->other_leaf.value_or(1);
      From const a{one->gathering, one->insertion, one->leaf}, b{there, {}, leaf_there};
      bool again = a == b;
      auto const place_of_pair = number_of(a) + number_of(b);
      for (auto [at, end] = done.equal_range(place_of_pair); at != end; ++at)
        again = again || at->second == std::array{a, b} || at->second == std::array{b, a};
      if (again) continue;
      done.insert({place_of_pair, {a, b}});
      bool const cancel = !one->insertion && copy.is_cancel({one->gathering, one->leaf});
      auto* place = place_of(there, leaf_there);
      bool const left_here = place == nullptr && !one->insertion && !cancel;
      if (left_here) place = place_of(one->gathering, one->leaf);
      if (place != nullptr) --place->leaves;
      if (one->insertion)
        not_printed(*one);
      else if (cancel)
        cancel_not_printed("±" + leaf_name(one->gathering, one->leaf));
      else
        not_printed(left_here && place != nullptr ? there : one->gathering);
    }
  }

  /// A gathering has no room for itself where its own leaves are not. So it is not interchangeable with the others of its
  /// run, which may be printed there.
  void part_from_likes() {
    for (std::size_t p = 0; p < book_.places.size(); ++p)
      for (std::size_t u = 0; u < book_.units.size(); ++u) {
        bool const own = units_from_[u].gathering == places_from_[p].gathering && !units_from_[u].insertion;
        if (own && book_.units[u].leaves <= book_.places[p].leaves) book_.units[u].likes = likes_++;
      }
  }

public:
  /// More units than can be counted. Further ones are not stored.
  static constexpr std::size_t most_kept = 64;
  /// Changed leaves that are looked through for each of the others.
  static constexpr std::size_t most_compared = 256;
  Remnants(Formula const& formula, SheetsOfBook& book) : formula_{formula}, book_{book} {}
  /// Finds the units and places. `seen_of` says for each run whether something was seen of it.
  void find(std::vector<bool> const& seen_of) {
    part_sheets(seen_of);
    changes();
    // what is compared with one another below must be few; so much cannot be counted
    if (book_.units.size() > most_compared || book_.places.size() > most_compared) return;
    identities();
    part_from_likes();
    for (auto& unit : book_.units) { // a fold or gathering of more than a sheet takes whole sheets first
      book_.whole += unit.leaves / book_.leaves_to_sheet;
      unit.leaves %= book_.leaves_to_sheet;
    }
    std::size_t kept = 0;
    for (auto& unit : book_.units)
      if (unit.leaves > 0) {
        if (&book_.units[kept] != &unit) book_.units[kept] = unit;
        ++kept;
      }
    book_.units.resize(kept);
    kept = 0;
    for (auto& place : book_.places)
      if (place.leaves > 0) {
        if (&book_.places[kept] != &place) book_.places[kept] = place;
        ++kept;
      }
    book_.places.resize(kept);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
