// SPDX-License-Identifier: MIT
/// The ideal copy is the book that a formula describes, leaf by leaf. A formula says how each gathering was folded and
/// what was then done to single leaves; the ideal copy is the result. Deleted leaves are absent and inserted ones are
/// in place, so leaf B4 need not be the fourth leaf of B. This type answers questions about leaves: the number of a
/// leaf in the book, the leaf with a number, the conjugate of a leaf, the leaf with a name.
///
/// The leaves are never listed one by one. Sums over the runs and lists of the changed gatherings are made once, in
/// time and space that grow with the text of the formula; each question is then a search in sorted rows.
#pragma once

#include <bifolium/collation/detail/resolve/changed_gatherings.hpp>
#include <bifolium/collation/detail/resolve/name_index.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {

/// A gathering found by its signature.
struct FoundGathering {
  GatheringAt gathering{}; ///< the first gathering of the book with that signature
  bool several{};          ///< true if several gatherings have it
  /// true if the formula has the mark only with a raised digit, π or χ that the name does not have
  bool other_series{};
  /// Returns true if more than one gathering may be meant.
  [[nodiscard]] constexpr bool doubtful() const noexcept { return several || other_series; }
  friend constexpr bool operator==(FoundGathering, FoundGathering) = default;
};
/// A leaf found by its gathering and its number in it, or by the name of an inserted leaf.
struct FoundLeaf {
  LeafOfBook leaf{}; ///< the first leaf of the book with that name
  bool doubtful{};   ///< true if more than one leaf may be meant
  friend constexpr bool operator==(FoundLeaf, FoundLeaf) = default;
};

/// The book that a formula describes. It is independent of the formula, which may be destroyed. A function that takes
/// an ideal copy also takes a formula and makes the ideal copy for the call; to call several functions, make the ideal
/// copy first. As a range it has the leaves of the book, in order.
class IdealCopy {
  std::vector<Run> runs_;
  std::vector<std::int64_t> start_; // leaves before each run, and the total at the end
  detail::Emptied<Letters> letters_;
  detail::Emptied<Alphabet> alphabet_;
  detail::ChangedGatherings changed_;
  detail::NameIndex names_;
  std::vector<LeafOfBook> blanks_; // in order
  detail::Emptied<std::int64_t> gatherings_;

public:
  /// Makes the ideal copy of a formula.
  IdealCopy(Formula const& formula); // NOLINT(google-explicit-constructor): what takes the one takes the other

  // -- how many ------------------------------------------------------------------------------------------------------

  /// Returns the number of leaves of the ideal copy; 0 for one that was moved from.
  [[nodiscard]] std::int64_t leaves() const noexcept { return start_.empty() ? 0 : start_.back(); }
  /// Returns the number of pages, two for each leaf.
  [[nodiscard]] std::int64_t pages() const noexcept { return 2 * leaves(); }
  /// Returns the number of gatherings in the runs, without inserted ones, which `Formula` counts.
  [[nodiscard]] std::int64_t gatherings_of_runs() const noexcept { return gatherings_.value; }
  /// Returns the number of leaves of a gathering as folded, before any change. Precondition: the formula has the
  /// gathering.
  [[nodiscard]] int leaves_folded(GatheringAt at) const { return checked(at).leaves.at(at.index); }
  /// Returns the numbers of a gathering's leaves in the book, including insertions. `to` is less than `from` if the
  /// ideal copy has none of them. Precondition: the formula has the gathering.
  [[nodiscard]] NumbersOfLeaves numbers_of(GatheringAt at) const;

  // -- names ----------------------------------------------------------------------------------------------------------

  /// Returns the runs of the formula.
  [[nodiscard]] std::vector<Run> const& runs() const& noexcept BIFOLIUM_LIFETIMEBOUND { return runs_; }
  std::vector<Run> const& runs() const&& = delete; // it would look at what goes
  /// Returns the alphabet of the signatures.
  [[nodiscard]] Alphabet alphabet() const noexcept { return alphabet_.value; }
  /// Returns which of J, U and W are used.
  [[nodiscard]] Letters letters() const noexcept { return letters_.value; }
  /// Returns the signature of a gathering. Precondition: the formula has the gathering.
  [[nodiscard]] Signature signature(GatheringAt at) const {
    auto const& run = checked(at);
    return run_member(run.first, run.last, at.index, alphabet());
  }
  /// Returns the gathering with a signature, or no value if there is none. A gathering with exactly this signature is
  /// preferred to one of another series.
  [[nodiscard]] std::optional<FoundGathering> find(Signature const& name) const;
  /// Returns the next gathering after `at` with exactly this signature, or no value if there is none: in a book of two
  /// volumes, both signed A to K, B of the second. The time grows with the number of runs between the two.
  /// Precondition: the formula has the gathering `at`.
  [[nodiscard]] std::optional<GatheringAt> find_after(Signature const& name, GatheringAt at) const;
  /// Returns the leaf with a name: leaf `leaf` of a gathering, or an inserted leaf by its name in the formula (χ1, a3).
  /// It is found even if the ideal copy does not have it because it was deleted. Precondition: `leaf` is at least 1.
  [[nodiscard]] std::optional<FoundLeaf> find(Signature const& name, int leaf) const;
  /// Returns the numbers of all leaves inserted under a name, such as a⁴ in (A3+a⁴), or no value if no insertion or
  /// more than one has the name. They are fewer if the inserted gathering lacks leaves.
  [[nodiscard]] std::optional<NumbersOfLeaves> find_inserted(Signature const& name) const;
  /// Returns true if the formula inserts leaves under this name: χ of (A3+χ3.4).
  [[nodiscard]] bool inserts(Signature const& name) const { return changed_.has_name(name); }
  /// Returns the insertion of an inserted leaf, or no value for a leaf of the gathering itself. Precondition: the
  /// formula has the gathering.
  [[nodiscard]] std::optional<InsertedLeaf> inserted(LeafOfBook const& leaf) const {
    static_cast<void>(checked(leaf.gathering));
    return changed_.inserted(leaf);
  }

  // -- leaves ---------------------------------------------------------------------------------------------------------

  /// Returns the number of a leaf in the book, from 1, or no value if the ideal copy does not have the leaf.
  /// Precondition: the formula has the gathering.
  [[nodiscard]] std::optional<std::int64_t> leaf_number(LeafOfBook const& leaf) const;
  /// Returns the leaf with a number in the book, or no value if the book has no such leaf.
  [[nodiscard]] std::optional<LeafOfBook> leaf_of_number(std::int64_t number) const;
  /// Returns the page of the book, from 1: page 2n-1 is the recto and 2n the verso of leaf n. If no side is given, the
  /// recto is meant.
  [[nodiscard]] std::optional<std::int64_t> page(LeafOfBook const& leaf, LeafSide side = LeafSide::not_said) const {
    auto const number = leaf_number(leaf);
    return number ? std::optional{2 * *number - (side == LeafSide::verso ? 0 : 1)} : std::nullopt;
  }
  /// Returns the leaf that is one piece of paper with this one, joined at the gutter. There is no value for the middle
  /// leaf of an odd gathering, for a single cancel, and for a leaf whose other half was deleted or cancelled
  /// separately. The leaves of a fold that was cancelled as one (±A4.5), and of an inserted fold or gathering, are
  /// conjugate.
  [[nodiscard]] std::optional<LeafOfBook> conjugate(LeafOfBook const& leaf) const;
  /// Returns true if the formula deletes the leaf.
  [[nodiscard]] bool is_deleted(LeafOfBook const& leaf) const { return is_folded(leaf) && changed_.fate(leaf).deleted; }
  /// Returns true if the leaf was cut out and replaced.
  [[nodiscard]] bool is_cancel(LeafOfBook const& leaf) const {
    return is_folded(leaf) && changed_.fate(leaf).cancelled;
  }
  /// Returns true if the formula notes that the leaf is blank (K8 blank), perhaps with a question mark.
  [[nodiscard]] bool is_blank(LeafOfBook const& leaf) const;
  /// Returns the leaves that are noted as blank, in order, including deleted ones: those of the formula.
  [[nodiscard]] std::vector<LeafOfBook> const& blanks() const& noexcept BIFOLIUM_LIFETIMEBOUND { return blanks_; }
  std::vector<LeafOfBook> const& blanks() const&& = delete; // it would look at what goes

  // -- ranges ---------------------------------------------------------------------------------------------------------

  class leaf_iterator;
  class gathering_iterator;
  /// The gatherings of the runs, in order.
  class Gatherings;
  /// Returns the gatherings as a range, in order. It is valid as long as this ideal copy.
  [[nodiscard]] Gatherings gatherings() const&;
  Gatherings gatherings() const&& = delete; // it would look at what goes
  /// Returns an iterator to the first leaf.
  [[nodiscard]] leaf_iterator begin() const&;
  /// Returns an iterator past the last leaf.
  [[nodiscard]] leaf_iterator end() const&;
  leaf_iterator begin() const&& = delete;
  leaf_iterator end() const&& = delete;

private:
  [[nodiscard]] Run const& checked(GatheringAt at) const {
    if (at.run >= runs_.size() || at.index < 0 || at.index >= runs_[at.run].gatherings)
      broken("the formula has no such gathering");
    return runs_[at.run];
  }
  /// Returns true for a leaf of the gathering itself, whether deleted or not.
  [[nodiscard]] bool is_folded(LeafOfBook const& leaf) const {
    return !leaf.inserted && leaf.leaf >= 1 && leaf.leaf <= leaves_folded(leaf.gathering);
  }
  /// Returns the leaves of the book before gathering `index` of a run. `index` may be the number of its gatherings.
  [[nodiscard]] std::int64_t before(GatheringAt at) const {
    auto const& run = runs_[at.run];
    auto const earlier = changed_.last_before(at); // in the same run
    if (earlier) return earlier->last_number() + run.leaves.total(at.index) - run.leaves.total(earlier->at.index + 1);
    return start_[at.run] + run.leaves.total(at.index);
  }
};

inline IdealCopy::IdealCopy(Formula const& formula)
    : runs_{formula.runs()}, letters_{formula.letters()}, alphabet_{formula.alphabet()}, names_{runs_, alphabet()},
      blanks_{formula.blanks()} {
  detail::ChangesOfFormula changes{formula};
  start_.reserve(runs_.size() + 1);
  std::int64_t number = 0;
  for (std::uint32_t r = 0; r < runs_.size(); ++r) {
    auto const& run = runs_[r];
    start_.push_back(number);
    gatherings_.value += run.gatherings;
    std::int64_t done = 0; // gatherings of the run that are counted
    while (changes.next_run() == r) {
      auto const at = changes.next_gathering();
      number += run.leaves.total(at.index) - run.leaves.total(done);
      number += changed_.add(changes, run.leaves.at(at.index), number);
      done = at.index + 1;
    }
    number += run.leaves.total(run.gatherings) - run.leaves.total(done);
  }
  start_.push_back(number);
  changed_.settle();
}

inline NumbersOfLeaves IdealCopy::numbers_of(GatheringAt at) const {
  auto const folded = leaves_folded(at);
  if (auto const* changed = changed_.find(at)) return {changed->before + 1, changed->last_number()};
  auto const first = before(at) + 1;
  return {first, first + folded - 1};
}

inline std::optional<std::int64_t> IdealCopy::leaf_number(LeafOfBook const& leaf) const {
  auto const folded = leaves_folded(leaf.gathering);
  if (auto const* changed = changed_.find(leaf.gathering)) {
    auto const place = changed_.place(*changed, leaf);
    return place ? std::optional{changed->before + *place} : std::nullopt;
  }
  if (leaf.inserted || leaf.leaf < 1 || leaf.leaf > folded) return std::nullopt;
  return before(leaf.gathering) + leaf.leaf;
}

inline std::optional<LeafOfBook> IdealCopy::leaf_of_number(std::int64_t number) const {
  if (number < 1 || number > leaves()) return std::nullopt;
  auto const begun = partition_point(runs_.size(), [&](std::size_t run) { return start_[run] < number; });
  auto const r = static_cast<std::uint32_t>(begun - 1);
  auto const& cycle = runs_[r].leaves;
  std::int64_t base = start_[r], index = 0;
  if (auto const* changed = changed_.last_to_begin_before(number); changed != nullptr && changed->at.run == r) {
    if (number <= changed->last_number()) return changed_.leaf(*changed, number - changed->before);
    base = changed->last_number(), index = changed->at.index + 1;
  }
  auto left = number - base;
  auto const size = static_cast<std::int64_t>(cycle.size());
  auto const round = cycle.total(index + size) - cycle.total(index); // leaves of one turn of the cycle
  index += (left - 1) / round * size;
  left -= (left - 1) / round * round;
  for (; left > cycle.at(index); ++index) left -= cycle.at(index); // at most eight
  return LeafOfBook{{r, index}, static_cast<int>(left)};
}

inline std::optional<LeafOfBook> IdealCopy::conjugate(LeafOfBook const& leaf) const {
  auto const folded = leaves_folded(leaf.gathering);
  if (leaf.inserted) {
    auto const here = changed_.inserted(leaf);
    if (!here || here->insertion.joined == Joined::apart) return std::nullopt;
    auto const& one = here->insertion;
    auto const leaf_here = one.leaf_at(here->number), other = one.leaves_folded() + 1 - leaf_here;
    if (other == leaf_here || one.lacks(other)) return std::nullopt;
    return LeafOfBook{leaf.gathering, leaf.leaf, *leaf.inserted + one.place_of(other) - here->number};
  }
  if (leaf.leaf < 1 || leaf.leaf > folded) return std::nullopt;
  auto const other = folded + 1 - leaf.leaf;
  if (other == leaf.leaf) return std::nullopt;
  if (changed_.fate(leaf).is_single() || changed_.fate({leaf.gathering, other}).is_single()) return std::nullopt;
  return LeafOfBook{leaf.gathering, other};
}

inline std::optional<FoundGathering> IdealCopy::find(Signature const& name) const {
  if (auto const exact = names_.find(runs_, name, alphabet())) return FoundGathering{exact->gathering, exact->several};
  if (name.series() || name.duplicate() != Duplicate::none) return std::nullopt;
  auto const other = names_.find_in_any_series(runs_, name, alphabet());
  return other ? std::optional{FoundGathering{other->gathering, other->several, true}} : std::nullopt;
}

inline std::optional<GatheringAt> IdealCopy::find_after(Signature const& name, GatheringAt at) const {
  static_cast<void>(checked(at));
  for (auto r = at.run; r < runs_.size(); ++r) {
    auto const& run = runs_[r];
    auto const place = detail::place_in_run(run.first, run.last, run.gatherings, name, alphabet());
    if (place && (r != at.run || *place > at.index)) return GatheringAt{r, *place};
  }
  return std::nullopt;
}

inline std::optional<FoundLeaf> IdealCopy::find(Signature const& name, int leaf) const {
  auto const inserted = changed_.find_named(name, leaf);
  auto const gathering = find(name);
  bool const fits = gathering && leaf <= leaves_folded(gathering->gathering);
  if (fits && !gathering->other_series)
    return FoundLeaf{{gathering->gathering, leaf}, gathering->several || inserted.has_value()};
  if (inserted) {
    auto at = inserted->leaf;
    at.inserted = *at.inserted + leaf - inserted->first;
    return FoundLeaf{at, inserted->several || fits};
  }
  return fits ? std::optional{FoundLeaf{{gathering->gathering, leaf}, true}} : std::nullopt;
}

inline bool IdealCopy::is_blank(LeafOfBook const& leaf) const {
  auto const i = partition_point(blanks_.size(), [&](std::size_t k) { return blanks_[k] < leaf; });
  return i < blanks_.size() && blanks_[i] == leaf;
}

inline std::optional<NumbersOfLeaves> IdealCopy::find_inserted(Signature const& name) const {
  auto const found = changed_.find_all_named(name);
  if (!found || found->several) return std::nullopt;
  auto const from = *leaf_number(found->leaf);
  return NumbersOfLeaves{from, from + found->count - 1};
}

} // namespace v0
} // namespace bifolium

#include <bifolium/collation/detail/ranges_of_copy.hpp>
