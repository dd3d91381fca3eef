// SPDX-License-Identifier: MIT
/// Makes a `DrawnGathering` of any gathering of a formula, with the leaves that were cancelled, inserted and removed.
/// If a copy was checked, it also marks the leaves that the copy lacks, has loose or has in addition. The formula
/// describes the ideal copy and the check describes the copy in hand; the picture shows both, and its words keep them
/// apart.
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/partition_point.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/drawing/gathering_svg.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Builds the drawing of one gathering. `leaves_` has the leaf of the book for each drawn leaf.
class GatheringOfFormula {
  Formula const& formula_;
  IdealCopy const& book_;
  GatheringAt at_;
  DrawnGathering drawn_{};
  std::vector<LeafOfBook> leaves_{};

  /// The drawn leaves are in the order of the book.
  [[nodiscard]] std::optional<int> find(LeafOfBook const& leaf) const {
    auto const i = partition_point(leaves_.size(), [&](std::size_t k) { return leaves_[k] < leaf; });
    return i < leaves_.size() && leaves_[i] == leaf ? std::optional{static_cast<int>(i)} : std::nullopt;
  }
  [[nodiscard]] DrawnLeaf& leaf(int i) { return drawn_.leaves[static_cast<std::size_t>(i)]; }
  static void add_note(DrawnLeaf& leaf, std::string_view words) {
    leaf.note.append(leaf.note.empty() ? "" : "; ").append(words);
  }
  [[nodiscard]] static std::string named(Signature const& name, std::optional<int> number) {
    std::string text{to_text(name).view()};
    if (name.mark() == Mark::number) text += '/';
    return number ? text.append(std::to_string(*number)) : text;
  }

  /// Returns the text beside an inserted leaf: its own name, or its place.
  [[nodiscard]] std::string label_of(InsertedLeaf const& leaf, LeafOfBook const& place) const {
    auto const& one = leaf.insertion;
    if (one.named_by_place) return named(book_.signature(at_), one.first_figure).append("*");
    if (!one.name) return leaf_words(book_, place);
    bool const alone = one.leaves == 1 && !one.first_figure;
    return named(*one.name, alone ? std::nullopt : std::optional{leaf.figure()});
  }
  void put_inserted(int after) {
    for (LeafOfBook place{at_, after, 1};; ++*place.inserted) {
      auto const one = book_.inserted(place);
      if (!one) return;
      leaves_.push_back(place);
      drawn_.leaves.push_back({label_of(*one, place), LeafFate::inserted});
    }
  }
  void put_leaves() {
    put_inserted(0);
    for (int k = 1; k <= book_.leaves_folded(at_); ++k) {
      leaves_.push_back({at_, k});
      drawn_.leaves.push_back({leaf_words(book_, leaves_.back())});
      put_inserted(k);
    }
  }
  void join() {
    auto const folded = book_.leaves_folded(at_);
    for (std::size_t i = 0; i < leaves_.size(); ++i) {
      auto const& here = leaves_[i];
      if (here.inserted) {
        if (auto const mate = book_.conjugate(here)) drawn_.leaves[i].conjugate = find(*mate);
      } else if (auto const mate = folded + 1 - here.leaf; mate != here.leaf) {
        drawn_.leaves[i].conjugate = find({at_, mate});
      } else {
        drawn_.leaves[i].state = LeafFate::single;
      }
    }
  }
  /// Returns the index of the drawn leaf that an identity names, or no value if it is not in this gathering.
  [[nodiscard]] std::optional<int> spoken_of(Identity const& identity) const {
    if (!identity.insertion) return find({at_, identity.leaf});
    auto const& changes = formula_.changes();
    auto const& of = *changes[*identity.insertion].insertion();
    int before = 0; // inserted at the same place by earlier changes
    for (std::size_t k = 0; k < *identity.insertion; ++k)
      if (auto const* const one = changes[k].insertion();
          one != nullptr && one->gathering == at_ && one->after == of.after)
        before += one->leaves;
    return find({at_, of.after, before + identity.leaf});
  }
  /// Sets the states of the leaves of the gathering itself.
  void set_fates() {
    for (std::size_t i = 0; i < leaves_.size(); ++i) {
      auto const& here = leaves_[i];
      if (book_.is_deleted(here))
        drawn_.leaves[i].state = LeafFate::removed;
      else if (book_.is_cancel(here))
        drawn_.leaves[i].state = book_.conjugate(here) ? LeafFate::replaced : LeafFate::cancel;
    }
    for (auto const& change : formula_.changes()) { // with a question mark
      if (!change.doubtful() || change.gathering() != at_) continue;
      if (auto const* const inserted = change.insertion())
        for (std::size_t i = 0; i < leaves_.size(); ++i)
          if (auto const one = book_.inserted(leaves_[i]); one && one->insertion == *inserted)
            add_note(drawn_.leaves[i], "doubtful");
      auto const* const deletion = change.deletion();
      auto const* const cancel = change.cancel();
      if (deletion == nullptr && cancel == nullptr) continue;
      auto const meant = deletion != nullptr ? deletion->leaves : cancel->leaves;
      for (std::size_t i = 0; i < leaves_.size(); ++i)
        if (!leaves_[i].inserted && meant.has(leaves_[i].leaf)) add_note(drawn_.leaves[i], "doubtful");
    }
  }
  void note_words() {
    for (auto const& change : formula_.changes()) {
      if (change.gathering() != at_) continue;
      if (auto const* const note = change.note()) drawn_.title.append("; ").append(formula_.notes()[note->words]);
      auto const* const identity = change.identity();
      if (identity == nullptr) continue;
      auto const name = identity->name.value_or(formula_.signature(at_));
      auto const words = "= " + named(name, identity->other_leaf) + (change.doubtful() ? "?" : "");
      if (auto const place = spoken_of(*identity))
        add_note(leaf(*place), words);
      else
        drawn_.title.append("; ").append(words);
    }
  }

public:
  /// Draws a gathering. Precondition: the ideal copy is that of the formula.
  GatheringOfFormula(Formula const& formula, IdealCopy const& book, GatheringAt at)
      : formula_{formula}, book_{book}, at_{at} {
    drawn_.title.append("Gathering ").append(to_text(formula.signature(at)).view());
    drawn_.title.append(raised(book_.leaves_folded(at)).view());
    put_leaves();
    join();
    set_fates();
    note_words();
  }

  /// Adds the results of checking a copy.
  void compare(CopyChecked const& copy) {
    drawn_.title += ", in this copy";
    for (std::size_t i = 0; i < leaves_.size(); ++i) {
      auto const number = book_.leaf_number(leaves_[i]);
      if (!number) continue;
      auto& here = drawn_.leaves[i];
      auto const within = [&](LeafSpan const& span) { return span.from <= *number && *number <= span.to; };
      for (auto const& span : copy.wanting)
        if (within(span)) here.state = is_on_stub(here.state) ? LeafFate::cancel_missing : LeafFate::missing;
      for (auto const& span : copy.repeated)
        if (within(span)) add_note(here, "twice in this copy");
      for (auto const& one : copy.misplaced)
        if (within(one.leaves)) add_note(here, "misbound");
    }
    for (auto const& extra : copy.not_in_ideal)
      if (auto const i = find(extra.first)) leaf(*i).state = LeafFate::left_in;
    for (auto const& joint : copy.joints) {
      if (joint.agrees) continue;
      auto const i = find(joint.seen.first);
      if (!i || !is_there(leaf(*i).state)) continue;
      if (joint.seen.what == Joint::stub && leaf(*i).state == LeafFate::present) {
        leaf(*i).state = LeafFate::cancel;
        add_note(leaf(*i), "not so in the formula");
      } else if (joint.seen.what == Joint::disjunct || joint.seen.what == Joint::chain_lines_break) {
        auto const mate = leaf(*i).conjugate;
        if (!mate || find(joint.seen.second) != mate || !is_there(leaf(*mate).state)) continue;
        for (auto const half : {*i, *mate}) leaf(half).state = LeafFate::loose, leaf(half).conjugate.reset();
      }
    }
  }
  [[nodiscard]] DrawnGathering take() && { return static_cast<DrawnGathering&&>(drawn_); }
};

/// Leaves that are drawn of a gathering: those that the ideal copy has, and those taken away.
inline std::int64_t leaves_to_draw(IdealCopy const& book, GatheringAt at) {
  auto leaves = book.numbers_of(at).count();
  for (int leaf = 1; leaf <= book.leaves_folded(at); ++leaf) leaves += book.is_deleted({at, leaf}) ? 1 : 0;
  return leaves;
}
inline std::optional<Error> too_many_leaves(IdealCopy const& book, GatheringAt at, Limits const& limits) {
  if (leaves_to_draw(book, at) <= limits.leaves_drawn) return std::nullopt;
  return error_in_field(Problem::too_many_leaves_drawn, "leaves_drawn", limits.leaves_drawn);
}

} // namespace detail

/// Makes the drawing of a gathering of a formula. The function allocates memory. Precondition: the formula has the
/// gathering (IdealCopy::find, IdealCopy::gatherings). Error:
/// too_many_leaves_drawn, since a formula may insert any number of leaves at one place.
[[nodiscard]] inline Expected<DrawnGathering> drawn_gathering(Formula const& formula, GatheringAt at,
                                                              Limits const& limits = {}) {
  IdealCopy const book{formula};
  if (auto const wrong = detail::too_many_leaves(book, at, limits)) return *wrong;
  return detail::GatheringOfFormula{formula, book, at}.take();
}
/// Makes the drawing of a gathering of a formula together with the result of `check_copy` for a copy. The function
/// allocates memory. Precondition: the formula has the gathering, and the copy was compared with this formula. Error:
/// too_many_leaves_drawn.
[[nodiscard]] inline Expected<DrawnGathering> drawn_gathering(Formula const& formula, GatheringAt at,
                                                              CopyChecked const& copy, Limits const& limits = {}) {
  IdealCopy const book{formula};
  if (auto const wrong = detail::too_many_leaves(book, at, limits)) return *wrong;
  detail::GatheringOfFormula drawn{formula, book, at};
  drawn.compare(copy);
  return static_cast<detail::GatheringOfFormula&&>(drawn).take();
}

} // namespace v0
} // namespace bifolium
