// SPDX-License-Identifier: MIT
/// Finds what a change names. A change may name a gathering far before it, or a leaf that another change put in or took out, so
/// the runs, the deleted leaves and the names of what was inserted are kept while the text is read. The first error is kept
/// here too: what cannot be found is one.
#pragma once

#include <bifolium/collation/detail/resolve/gone_leaves.hpp>
#include <bifolium/collation/detail/resolve/names_met.hpp>
#include <bifolium/collation/detail/resolve/runs_so_far.hpp>
#include <bifolium/collation/detail/scan/found_change.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

template <class Sink> class NamedTargets {
  struct InsertedNames { // a gathering or leaves, or a run of gatherings; without initialisers
    std::uint32_t multiple, text_from;
    std::uint16_t series;
    std::uint8_t letter, text_size;
    std::int64_t gatherings;
    int first, last; // the leaves, or both 0 for gatherings
    std::uint32_t from, to;
    [[nodiscard]] constexpr SignatureKey name() const { return {series, letter, text_size, multiple, text_from}; }
  };

protected:
  std::string_view text_;
  Dialect dialect_;
  Alphabet alphabet_;
  Sink& sink_;
  Limits limits_;
  Doubt error_{};
  bool failed_{false};
  std::int64_t leaves_{}, gatherings_{}, gatherings_inserted_{};
  FoundRun last_{};
  RunsSoFar runs_;
  GoneLeaves gone_;
  std::uint32_t part_number_{}, part_run_{}; // the number of this part and of its first run

private:
  SmallList<InsertedNames, 64> inserted_names_;
  std::size_t inserted_checked_{}; // this number of them
  NamesMet leaves_inserted_;       // bits of the leaves that are inserted under a name
  std::uint32_t changes_{};

protected:
  constexpr NamedTargets(std::string_view text, Dialect dialect, Limits const& limits, Sink& sink)
      : text_{text}, dialect_{dialect}, alphabet_{dialect.letters}, sink_{sink}, limits_{limits} {}

  constexpr bool fail(Problem problem, std::uint32_t from, std::uint32_t to, std::int64_t limit = 0) {
    auto const size = static_cast<std::uint32_t>(text_.size());
    if (!failed_) error_ = {problem, from < size ? from : size, to < size ? to : size, limit};
    failed_ = true;
    return false;
  }
  constexpr void warn(Problem problem, std::uint32_t from, std::uint32_t to, std::int64_t limit = 0) {
    auto const size = static_cast<std::uint32_t>(text_.size());
    sink_.warn({problem, from, to < size ? to : size, limit});
  }
  /// Returns true if a leaf was deleted, cancelled or inserted.
  [[nodiscard]] constexpr bool has_changes() const noexcept { return changes_ != 0; }
  /// A change that is understood is counted and handed on.
  constexpr bool add_change(FoundChange const& change) {
    if (changes_ == limits_.changes) return fail(Problem::too_many_changes, change.from, change.to, limits_.changes);
    ++changes_;
    sink_.change(change);
    return true;
  }
  [[nodiscard]] constexpr Target last_gathering() const {
    auto const index = last_.gatherings - 1;
    return {{runs_.size() - 1, index}, gatherings_ - 1, last_.leaves.at(index), false};
  }
  [[nodiscard]] constexpr std::optional<Target> find(SignatureKey name) { return runs_.find(name, text_, alphabet_); }
  /// Remembers the names of what was inserted, so that a change of it is told as such, and warns if a name has come
  /// before. `first` and `last`: the leaves, or both 0 for whole gatherings.
  constexpr void remember_inserted(SignatureKey mark, std::int64_t gatherings, int first, int last, std::uint32_t from,
                                   std::uint32_t to) {
    inserted_names_.push_back(
        {mark.multiple, mark.text_from, mark.series, mark.letter, mark.text_size, gatherings, first, last, from, to});
    std::uint64_t bits = first == 0 ? ~std::uint64_t{0} : 0;
    for (auto leaf = first; leaf > 0 && leaf <= last && leaf <= 64; ++leaf)
      bits |= std::uint64_t{1} << static_cast<unsigned>(leaf - 1);
    auto const rank = mark.rank(alphabet_);
    bool again = false;
    for (std::int64_t i = 0; i < gatherings; ++i) {
      auto& met = leaves_inserted_.of(mark, rank + i, part_number_, text_);
      again = again || (met & bits) != 0;
      met |= bits;
    }
    if (again) warn(Problem::inserted_name_taken, from, to);
  }
  /// Warns at the end of a part if a leaf was inserted under the name of one that the part has.
  constexpr void check_inserted() {
    for (; inserted_checked_ < inserted_names_.size(); ++inserted_checked_) {
      auto const one = inserted_names_[inserted_checked_];
      auto const name = one.name();
      auto const rank = name.rank(alphabet_);
      bool taken = false;
      for (std::int64_t i = 0; i < one.gatherings && !taken; ++i)
        if (auto const target = find(one.gatherings == 1 ? name : name.at_rank(rank + i, alphabet_));
            target && !target->other_series && target->gathering.run >= part_run_)
          taken = has_leaf(*target, one.first, one.last);
      if (taken) warn(Problem::inserted_name_taken, one.from, one.to);
    }
  }
  /// Returns true if leaves were inserted under this name.
  [[nodiscard]] constexpr bool is_inserted(SignatureKey name) const {
    for (std::size_t i = 0; i < inserted_names_.size(); ++i) {
      auto const& one = inserted_names_[i];
      auto const place =
          run_length({one.series, one.letter, one.text_size, one.multiple, one.text_from}, name, alphabet_, text_);
      if (place && *place <= one.gatherings) return true;
    }
    return false;
  }
  constexpr bool take_out(Target const& target, int first, int last, std::uint32_t from, std::uint32_t to,
                          bool cancelled = false) {
    if (!gone_.take_out(target.ordinal, target.leaves, first, last)) return fail(Problem::leaf_changed_twice, from, to);
    if (cancelled) static_cast<void>(gone_.take_out(as_cancelled(target.ordinal), target.leaves, first, last));
    return true;
  }
  /// Returns the number under which cancelled leaves are kept a second time. No gathering has it.
  [[nodiscard]] static constexpr std::int64_t as_cancelled(std::int64_t ordinal) noexcept { return -1 - ordinal; }
  /// Returns true if the leaf is deleted or cancelled. Precondition: the gathering has it.
  [[nodiscard]] constexpr bool is_out(Target const& target, int leaf) const {
    return gone_.is_out(target.ordinal, leaf);
  }

private:
  /// Returns true if the gathering has one of the leaves, or for 0 any leaf, in its place.
  [[nodiscard]] constexpr bool has_leaf(Target const& target, int first, int last) const {
    auto const to = first == 0 || last > target.leaves ? target.leaves : last;
    for (auto leaf = first == 0 ? 1 : first; leaf <= to; ++leaf)
      if (!is_out(target, leaf)) return true;
    return false;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
