// SPDX-License-Identifier: MIT
/// From the formula to the picture: any gathering of any formula as a `DrawnGathering`, with the leaves that were
/// cancelled, put in and cut away, and - when a copy was checked - those that it wants, has loose or has in excess. The
/// formula tells of the ideal copy, the check of the one in the hand; the picture shows both at once and its words keep
/// them apart.
#pragma once

#include <bifolium/copy/check_copy.hpp>
#include <bifolium/core/raised.hpp>
#include <bifolium/drawing/gathering_svg.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Builds the drawing of one gathering; `leaves_` says which leaf of the book each drawn leaf is.
class GatheringOfFormula {
  Formula const& formula_;
  GatheringAt at_;
  DrawnGathering drawn_{};
  List<LeafOfBook> leaves_{};

  [[nodiscard]] int find(LeafOfBook const& leaf) const {
    for (std::size_t i = 0; i < leaves_.size(); ++i)
      if (leaves_[i] == leaf) return static_cast<int>(i);
    return -1;
  }
  [[nodiscard]] DrawnLeaf& leaf(int i) { return drawn_.leaves[static_cast<std::size_t>(i)]; }
  static void add_note(DrawnLeaf& leaf, std::string_view words) {
    leaf.note.append(leaf.note.empty() ? "" : "; ").append(words);
  }
  [[nodiscard]] static std::string named(Signature const& name, int number) {
    std::string text{to_text(name).view()};
    if (name.mark() == Mark::number) text += '/';
    return number > 0 ? text.append(std::to_string(number)) : text;
  }

  /// What stands beside leaf `number` of an insertion, from 1: its own name, or its place.
  [[nodiscard]] std::string label_of(Change const& change, int number, LeafOfBook const& place) const {
    if (change.place_named) return named(formula_.signature(at_), change.name_leaf).append("*");
    if (!change.named) return leaf_words(formula_, place);
    bool const alone = change.added == 1 && change.name_leaf == 0;
    return named(change.name, alone ? 0 : change.name_leaf > 0 ? change.name_leaf + number - 1 : number);
  }
  void put_inserted(int behind) {
    int before = 0;
    for (auto const& change : formula_.changes()) {
      if (change.kind != Change::Kind::insertion || change.gathering != at_ || change.leaf != behind) continue;
      for (int k = 1; k <= change.added; ++k) {
        LeafOfBook const place{at_, behind, before + k};
        leaves_.push_back(place);
        drawn_.leaves.push_back({label_of(change, k, place), LeafFate::inserted});
      }
      before += change.added;
    }
  }
  void put_leaves() {
    put_inserted(0);
    for (int k = 1; k <= formula_.leaves_folded(at_); ++k) {
      leaves_.push_back({at_, k, 0});
      drawn_.leaves.push_back({leaf_words(formula_, leaves_.back())});
      put_inserted(k);
    }
  }
  void join() {
    auto const folded = formula_.leaves_folded(at_);
    for (std::size_t i = 0; i < leaves_.size(); ++i) {
      auto const& here = leaves_[i];
      if (here.inserted > 0) {
        if (auto const mate = conjugate(formula_, here)) drawn_.leaves[i].conjugate = find(*mate);
      } else if (auto const mate = folded + 1 - here.leaf; mate != here.leaf) {
        drawn_.leaves[i].conjugate = find({at_, mate, 0});
      } else {
        drawn_.leaves[i].state = LeafFate::single;
      }
    }
  }
  /// Whether the cancel `i` replaces a bifolium: its other half is in the list, after a point (±B4.5).
  [[nodiscard]] bool of_bifolium(std::size_t i) const {
    auto const& changes = formula_.changes();
    auto const mate = formula_.leaves_folded(at_) + 1 - changes[i].leaf;
    auto const is_mate = [&](std::size_t k) {
      return changes[k].kind == Change::Kind::cancel && changes[k].gathering == at_ && changes[k].leaf == mate;
    };
    if (i > 0 && changes[i].joint == Change::Joint::conjugate && is_mate(i - 1)) return true;
    return i + 1 < changes.size() && changes[i + 1].joint == Change::Joint::conjugate && is_mate(i + 1);
  }
  /// The drawn leaf that an identity or a note speaks of; -1: the gathering, or a leaf elsewhere.
  [[nodiscard]] int spoken_of(std::size_t i) const {
    auto const& changes = formula_.changes();
    if (!changes[i].of_change) return changes[i].leaf > 0 ? find({at_, changes[i].leaf, 0}) : -1;
    while (i > 0 && changes[i].of_change) --i;
    if (changes[i].kind != Change::Kind::insertion) return find({at_, changes[i].leaf, 0});
    int before = 0;
    for (std::size_t k = 0; k < i; ++k)
      if (changes[k].kind == Change::Kind::insertion && changes[k].gathering == at_ &&
          changes[k].leaf == changes[i].leaf)
        before += changes[k].added;
    return find({at_, changes[i].leaf, before + 1});
  }
  void change() {
    auto const& changes = formula_.changes();
    for (std::size_t i = 0; i < changes.size(); ++i) {
      auto const& one = changes[i];
      if (one.gathering != at_) continue;
      if (one.kind == Change::Kind::deletion || one.kind == Change::Kind::cancel) {
        bool const cancel = one.kind == Change::Kind::cancel, whole = one.leaf == 0;
        auto const state = !cancel                   ? LeafFate::removed
                           : whole || of_bifolium(i) ? LeafFate::replaced
                                                     : LeafFate::cancel;
        for (std::size_t k = 0; k < leaves_.size(); ++k)
          if (leaves_[k].inserted == 0 && (whole || leaves_[k].leaf == one.leaf)) {
            drawn_.leaves[k].state = state;
            if (one.doubtful) add_note(drawn_.leaves[k], "doubtful");
          }
      }
      std::string words;
      if (one.kind == Change::Kind::note) words = formula_.notes()[one.note];
      if (one.kind == Change::Kind::identity) {
        auto const name = one.named ? one.name : formula_.signature(at_);
        words.append("= ").append(named(name, one.name_leaf)).append(one.doubtful ? "?" : "");
      }
      if (words.empty()) continue;
      if (auto const place = spoken_of(i); place >= 0)
        add_note(leaf(place), words);
      else
        drawn_.title.append("; ").append(words);
    }
  }

public:
  GatheringOfFormula(Formula const& formula, GatheringAt at) : formula_{formula}, at_{at} {
    drawn_.title.append("Gathering ").append(to_text(formula.signature(at)).view());
    drawn_.title.append(raised(formula.leaves_folded(at)).view());
    put_leaves();
    join();
    change();
  }

  /// Lays what was found in a copy over it.
  void compare(CopyChecked const& copy) {
    drawn_.title += ", in this copy";
    for (std::size_t i = 0; i < leaves_.size(); ++i) {
      auto const number = leaf_number(formula_, leaves_[i]);
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
      if (auto const i = find(extra.first); i >= 0) leaf(i).state = LeafFate::left_in;
    for (auto const& joint : copy.joints) {
      if (joint.agrees) continue;
      auto const i = find(joint.seen.first);
      if (i < 0 || !is_there(leaf(i).state)) continue;
      if (joint.seen.what == Joint::stub && leaf(i).state == LeafFate::present) {
        leaf(i).state = LeafFate::cancel;
        add_note(leaf(i), "not so in the formula");
      } else if (joint.seen.what == Joint::disjunct || joint.seen.what == Joint::chain_lines_break) {
        auto const mate = leaf(i).conjugate;
        if (mate < 0 || find(joint.seen.second) != mate || !is_there(leaf(mate).state)) continue;
        for (auto const half : {i, mate}) leaf(half).state = LeafFate::loose, leaf(half).conjugate = -1;
      }
    }
  }
  [[nodiscard]] DrawnGathering take() && { return static_cast<DrawnGathering&&>(drawn_); }
};

} // namespace detail

/// A gathering as the formula tells of it. Allocates. pre: it is one of the formula (find_gathering, `gatherings`).
[[nodiscard]] inline DrawnGathering drawn_gathering(Formula const& formula, GatheringAt at) {
  return detail::GatheringOfFormula{formula, at}.take();
}
/// The same with what `check_copy` found in a copy. pre: as above; the check was made against this formula.
[[nodiscard]] inline DrawnGathering drawn_gathering(Formula const& formula, GatheringAt at, CopyChecked const& copy) {
  detail::GatheringOfFormula drawn{formula, at};
  drawn.compare(copy);
  return static_cast<detail::GatheringOfFormula&&>(drawn).take();
}

} // namespace v0
} // namespace bifolium
