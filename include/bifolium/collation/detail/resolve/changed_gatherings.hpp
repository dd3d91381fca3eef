// SPDX-License-Identifier: MIT
/// The gatherings that a formula changes, each as a list of stretches. A stretch is leaves of the gathering that follow
/// one another, or leaves inserted together. An insertion of thousands of leaves is one stretch, so the lists are no
/// longer than the text.
#pragma once

#include <bifolium/collation/detail/resolve/name_stretches.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/core/partition_point.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The changes of a formula that concern leaves, in the order of the book.
class ChangesOfFormula {
public:
  struct One {
    GatheringAt at{};
    int leaf{};       // the first leaf of a deletion or a cancel; the leaf before an insertion
    bool insertion{}; // an insertion comes after the change of its leaf
    Change const* change{};
  };

private:
  std::vector<One> all_;
  std::size_t next_{};

public:
  explicit ChangesOfFormula(Formula const& formula) {
    for (auto const& change : formula.changes())
      if (auto const* const deletion = change.deletion())
        all_.push_back({deletion->gathering, deletion->leaves.first(), false, &change});
      else if (auto const* const cancel = change.cancel())
        all_.push_back({cancel->gathering, cancel->leaves.first(), false, &change});
      else if (auto const* const insertion = change.insertion())
        all_.push_back({insertion->gathering, insertion->after, true, &change});
    merge_sort(all_, [](One const& a, One const& b) {
      if (a.at != b.at) return a.at < b.at;
      return a.leaf != b.leaf ? a.leaf < b.leaf : a.insertion < b.insertion;
    });
  }
  /// Returns the run of the next change, or a number that no run has if there are no more changes.
  [[nodiscard]] std::uint32_t next_run() const noexcept {
    return next_ < all_.size() ? all_[next_].at.run : static_cast<std::uint32_t>(-1);
  }
  /// Returns the gathering of the next change. Precondition: there is a next change.
  [[nodiscard]] GatheringAt next_gathering() const { return all_[next_].at; }
  [[nodiscard]] One const& take() { return all_[next_++]; }
  [[nodiscard]] bool more_of(GatheringAt at) const { return next_ < all_.size() && all_[next_].at == at; }
};

class ChangedGatherings {
public:
  /// The state of a leaf of the gathering as folded.
  struct Fate {
    int leaf{}, last{}; // the leaves from one to another
    bool deleted{}, cancelled{}, of_fold{};
    /// Returns true if the leaf is no longer joined to its other half.
    [[nodiscard]] constexpr bool is_single() const noexcept { return deleted || (cancelled && !of_fold); }
  };
  struct Changed {
    GatheringAt at{};
    std::int64_t before{}, leaves{}; // leaves of the book before it, and in it
    std::uint32_t from{}, to{};      // its stretches
    std::uint32_t fate_from{}, fate_to{};
    Fate whole{}; // the state of the gathering as a whole
    [[nodiscard]] std::int64_t last_number() const noexcept { return before + leaves; }
  };
  struct Named {
    int first{}, count{}; // the number of its first leaf, and how many numbers follow without a gap
    LeafOfBook leaf{};    // the first of its leaves
    bool several{};       // true if other insertions have such a leaf too
  };

private:
  struct Stretch {
    int leaf{}; // the first leaf of the stretch
    std::optional<int> inserted{};
    int count{};
    std::int64_t before{};     // leaves of the gathering before it
    std::uint32_t insertion{}; // index of the insertion, if it is one
  };
  std::vector<Changed> changed_;
  std::vector<Stretch> stretches_;
  std::vector<Fate> fates_;
  std::vector<InsertedLeaf> insertions_;
  /// A row for each stretch of numbers of an insertion with a name. An insertion that lacks leaves can have several.
  std::vector<Named> named_;
  /// The row for each name and number. Number 0, which no leaf has, stands for an insertion that is named as a whole.
  NameStretches<Signature> figures_;

  /// Returns the number of sorted values before the first for which `before` is false.
  template <class Many, class Before>
  static std::size_t count_before(Many const& all, std::size_t from, std::size_t to, Before before) {
    return from + partition_point(to - from, [&](std::size_t i) { return before(all[from + i]); });
  }
  void stretch(Changed& here, int leaf, std::optional<int> inserted, int count, std::uint32_t insertion = 0) {
    if (count < 1) return;
    stretches_.push_back({leaf, inserted, count, here.leaves, insertion});
    here.leaves += count;
  }
  /// Returns true if an insertion goes on with the numbers of the one before it, under its name and at its place.
  [[nodiscard]] bool is_next_piece(std::size_t i) const {
    if (i == 0) return false;
    auto const &one = insertions_[i], &before = insertions_[i - 1];
    auto const in_gathering = [](InsertedLeaf const& leaf) { return leaf.insertion.joined == Joined::gathering; };
    if (in_gathering(one) || in_gathering(before)) return false;
    return one.insertion.gathering == before.insertion.gathering && one.insertion.after == before.insertion.after &&
           one.insertion.name && one.insertion.name == before.insertion.name &&
           one.first_figure() == before.first_figure() + before.insertion.leaves;
  }
  static constexpr int other_figures = -1; // in figures_, for a name whose leaves are not numbered from 1
  void insert(Changed& here, Insertion const& insertion, int earlier) {
    insertions_.push_back({insertion, 1});
    stretch(here, insertion.after, earlier + 1, insertion.leaves, static_cast<std::uint32_t>(insertions_.size() - 1));
    if (!insertion.name) return;
    auto const& name = *insertion.name;
    auto const before = insertions_.back().first_figure() - 1;
    auto const folded = insertion.leaves_folded();
    // A stretch that begins with leaf 1 takes number 0 too: a row the less for each insertion.
    bool const whole = before == 0;
    auto const next = static_cast<std::uint32_t>(named_.size());
    if (!whole && !is_next_piece(insertions_.size() - 1)) figures_.add(name, other_figures, other_figures, next);
    if (whole && insertion.lacks(1)) figures_.add(name, 0, 0, next);
    for (int leaf = 1, inserted = earlier + 1; leaf <= folded; ++leaf) {
      if (insertion.lacks(leaf)) continue;
      auto last = insertion.lacking == 0 ? folded : leaf;
      while (last < folded && !insertion.lacks(last + 1)) ++last;
      auto const first = whole && leaf == 1 ? 0 : before + leaf;
      figures_.add(name, first, before + last, static_cast<std::uint32_t>(named_.size()));
      named_.push_back({before + leaf, last - leaf + 1, {here.at, insertion.after, inserted}});
      inserted += last - leaf + 1;
      leaf = last;
    }
  }
  [[nodiscard]] Stretch const* stretch_of(Changed const& in, LeafOfBook const& leaf) const {
    auto const at = count_before(stretches_, in.from, in.to, [&](Stretch const& one) {
      return one.leaf != leaf.leaf ? one.leaf < leaf.leaf : one.inserted <= leaf.inserted;
    });
    if (at == in.from) return nullptr;
    auto const& one = stretches_[at - 1];
    bool const within = one.inserted ? leaf.leaf == one.leaf && leaf.inserted >= one.inserted &&
                                           leaf.inserted < *one.inserted + one.count
                                     : !leaf.inserted && leaf.leaf >= one.leaf && leaf.leaf < one.leaf + one.count;
    return within ? &one : nullptr;
  }
  [[nodiscard]] Stretch const* stretch_of(LeafOfBook const& leaf) const {
    auto const* const in = find(leaf.gathering);
    return in == nullptr ? nullptr : stretch_of(*in, leaf);
  }

public:
  /// Adds the next gathering with its changes. Returns the number of its leaves. `before` is the number of leaves of
  /// the book before it.
  std::int64_t add(ChangesOfFormula& changes, int folded, std::int64_t before) {
    Changed here;
    here.at = changes.next_gathering();
    here.before = before;
    here.from = static_cast<std::uint32_t>(stretches_.size());
    here.fate_from = static_cast<std::uint32_t>(fates_.size());
    int next = 1, after = -1,
        earlier = 0; // the next leaf to write; number of leaves inserted so far after leaf `after`
    while (changes.more_of(here.at)) {
      auto const& one = changes.take();
      if (auto const* const inserted = one.change->insertion()) {
        stretch(here, next, {}, one.leaf + 1 - next);
        if (one.leaf >= next) next = one.leaf + 1;
        if (one.leaf != after) after = one.leaf, earlier = 0;
        insert(here, *inserted, earlier);
        earlier += inserted->leaves;
        continue;
      }
      auto const* const deletion = one.change->deletion();
      auto const* const cancel = one.change->cancel();
      if (deletion == nullptr && cancel == nullptr) continue; // no other kind is in the list
      bool const deleted = deletion != nullptr;
      auto const leaves = deleted ? deletion->leaves : cancel->leaves;
      auto const last = leaves.last(folded);
      Fate const fate{leaves.first(), last, deleted, !deleted, !deleted && cancel->of_fold};
      if (leaves.are_every()) {
        here.whole = fate;
        if (deleted) next = folded + 1;
        continue;
      }
      fates_.push_back(fate);
      if (!deleted) continue;
      stretch(here, next, {}, one.leaf - next);
      if (last >= next) next = last + 1;
    }
    stretch(here, next, {}, folded + 1 - next);
    here.to = static_cast<std::uint32_t>(stretches_.size());
    here.fate_to = static_cast<std::uint32_t>(fates_.size());
    changed_.push_back(here);
    return here.leaves;
  }
  /// Ends the list after the last gathering. From then on inserted leaves can be found by name.
  void settle() { figures_.settle(); }

  [[nodiscard]] Changed const* find(GatheringAt at) const {
    auto const i = count_before(changed_, 0, changed_.size(), [&](Changed const& one) { return one.at < at; });
    return i < changed_.size() && changed_[i].at == at ? &changed_[i] : nullptr;
  }
  /// Returns the last changed gathering of the same run before this one.
  [[nodiscard]] Changed const* last_before(GatheringAt at) const {
    auto const i = count_before(changed_, 0, changed_.size(), [&](Changed const& one) { return one.at < at; });
    return i > 0 && changed_[i - 1].at.run == at.run ? &changed_[i - 1] : nullptr;
  }
  /// Returns the last changed gathering that begins before the leaf with this number.
  [[nodiscard]] Changed const* last_to_begin_before(std::int64_t number) const {
    auto const i = count_before(changed_, 0, changed_.size(), [&](Changed const& one) { return one.before < number; });
    return i > 0 ? &changed_[i - 1] : nullptr;
  }
  /// Returns the number of the leaf in its gathering in the ideal copy, from 1.
  [[nodiscard]] std::optional<std::int64_t> place(Changed const& in, LeafOfBook const& leaf) const {
    auto const* one = stretch_of(in, leaf);
    if (one == nullptr) return std::nullopt;
    return one->before + 1 + (one->inserted ? *leaf.inserted - *one->inserted : leaf.leaf - one->leaf);
  }
  /// Returns the leaf with a number in its gathering. Precondition: 1 to the number of its leaves.
  [[nodiscard]] LeafOfBook leaf(Changed const& in, std::int64_t place) const {
    auto const at = count_before(stretches_, in.from, in.to, [&](Stretch const& one) { return one.before < place; });
    auto const& one = stretches_[at - 1];
    auto const within = static_cast<int>(place - one.before - 1);
    return one.inserted ? LeafOfBook{in.at, one.leaf, *one.inserted + within} : LeafOfBook{in.at, one.leaf + within};
  }
  [[nodiscard]] Fate fate(LeafOfBook const& leaf) const {
    auto const* in = find(leaf.gathering);
    if (in == nullptr) return {};
    auto const at =
        count_before(fates_, in->fate_from, in->fate_to, [&](Fate const& one) { return one.last < leaf.leaf; });
    return at < in->fate_to && fates_[at].leaf <= leaf.leaf ? fates_[at] : in->whole;
  }
  [[nodiscard]] std::optional<InsertedLeaf> inserted(LeafOfBook const& leaf) const {
    auto const* one = leaf.inserted ? stretch_of(leaf) : nullptr;
    if (one == nullptr) return std::nullopt;
    auto result = insertions_[one->insertion];
    result.number = *leaf.inserted - *one->inserted + 1;
    return result;
  }
  /// Returns an insertion that has a leaf with this name and number.
  [[nodiscard]] std::optional<Named> find_named(Signature const& name, int figure) const {
    auto const* const stretch = figures_.find(name, figure);
    if (stretch == nullptr) return std::nullopt;
    auto found = named_[stretch->owner];
    found.several = stretch->several;
    return found;
  }
  /// Returns true if leaves are inserted under this name, whatever their numbers.
  [[nodiscard]] bool has_name(Signature const& name) const {
    return figures_.find(name, 0) != nullptr || figures_.find(name, other_figures) != nullptr;
  }
  /// Returns all leaves inserted under a name, if they are numbered from 1: those of one insertion, and of the pieces of
  /// one list that follow it (χ1.2,3).
  [[nodiscard]] std::optional<Named> find_all_named(Signature const& name) const {
    auto found = find_named(name, 0);
    if (!found) return found;
    auto const* const stretch = stretch_of(found->leaf);
    if (stretch == nullptr) return std::nullopt;
    auto at = stretch->insertion;
    found->count = insertions_[at].insertion.leaves;
    while (++at < insertions_.size() && is_next_piece(at)) found->count += insertions_[at].insertion.leaves;
    found->several = found->several || figures_.find(name, other_figures) != nullptr;
    return found;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
