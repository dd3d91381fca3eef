// SPDX-License-Identifier: MIT
/// The paper for one copy of a formula: its leaves divided by the leaves of a sheet of the format. The result is a
/// range. (−L4) says only that the leaf is not in this place: it may have been blank and cut away, or it may be a leaf
/// that is bound elsewhere; a cancel may have been printed in the free place, several to a sheet, or on paper of its
/// own. So the answer has three numbers, each with its assumption. An identity ([=L4]) decides the question for its
/// leaf: two places, one leaf.
#pragma once

#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/range.hpp>

namespace bifolium {
inline namespace v0 {

/// Two runs whose parts of sheets are printed on one sheet. It is observed if the formula states an identity. It is
/// inferred if only the arithmetic suggests it: first and last gathering together make whole sheets (Bowers, Studies in
/// Bibliography 1, allows this if their numbers of leaves are unequal, and asks for evidence otherwise).
struct SharedSheet {
  std::uint32_t first_run{}, second_run{}; ///< indices of the two runs in the formula, from 0
  bool observed{};                         ///< true if observed, false if inferred
  friend constexpr bool operator==(SharedSheet, SharedSheet) = default;
};

/// Sheets of paper for one copy, and the assumption of each of the three numbers.
struct PaperOfFormula {
  Range<Fraction> sheets{};                                    ///< sheets of one copy
  std::string low_assumes{}, stated_assumes{}, high_assumes{}; ///< the assumptions of the three numbers, in words
  std::vector<SharedSheet> shared{};                           ///< sheets that two runs share
  friend bool operator==(PaperOfFormula const&, PaperOfFormula const&) = default;
};

/// Returns true if the formula states exactly one format, and this format says how many leaves a sheet makes.
[[nodiscard]] inline bool states_paper(Formula const& formula) noexcept {
  return formula.format() && !formula.second_format() && formula.format()->leaves_to_sheet();
}

namespace detail {

/// A leaf by its place in the runs; an `inserted` leaf by the number of the change that adds it.
struct PaperLeaf {
  bool inserted{};
  GatheringAt gathering{};
  int leaf{};
  friend constexpr auto operator<=>(PaperLeaf const&, PaperLeaf const&) = default;
};

class PaperReckoner {
public:
  struct Link { // two places that are one leaf, the lesser first
    PaperLeaf a{}, b{};
    friend constexpr auto operator<=>(Link const&, Link const&) = default;
  };

private:
  Formula const& formula_;
  IdealCopy book_;
  std::vector<Link> links_{};

  void link(PaperLeaf const& a, PaperLeaf const& b) { links_.push_back(b < a ? Link{b, a} : Link{a, b}); }
  /// Sorts the links and removes repeated ones.
  void settle() {
    merge_sort(links_, [](Link const& a, Link const& b) { return a < b; });
    keep_each_once(links_);
  }
  [[nodiscard]] std::optional<GatheringAt> named(Signature const& name) const {
    auto const found = book_.find(name);
    return found ? std::optional{found->gathering} : std::nullopt;
  }
  void find_links() {
    auto const& changes = formula_.changes();
    for (std::uint32_t i = 0; i < changes.size(); ++i) {
      auto const* const one = changes[i].identity();
      if (one == nullptr) continue;
      auto const at = one->name ? named(*one->name) : std::optional{one->gathering};
      if (!at) continue;
      // if only a gathering is named, its first leaf is meant, as in (=π)
      PaperLeaf const there{false, *at, one->other_leaf.value_or(1)};
      // an inserted leaf and a cancel are leaves in addition to those that were folded
      bool const beside = one->insertion || book_.is_cancel({one->gathering, one->leaf});
      PaperLeaf const here{beside, one->gathering, beside ? static_cast<int>(i) : one->leaf};
      if (here != there) link(here, there);
    }
  }

public:
  explicit PaperReckoner(Formula const& formula) : formula_{formula}, book_{formula} {
    find_links();
    settle();
  }
  [[nodiscard]] std::int64_t links() const noexcept { return static_cast<std::int64_t>(links_.size()); }
  [[nodiscard]] std::vector<SharedSheet> shared(int leaves_to_sheet) const {
    std::vector<SharedSheet> all;
    for (auto const& link : links_) {
      auto const a = link.a.gathering.run, b = link.b.gathering.run;
      if (a != b) all.push_back({a < b ? a : b, a < b ? b : a, true});
    }
    if (!all.empty() || formula_.runs().size() < 2) return all;
    auto const& first = formula_.runs().front();
    auto const& last = formula_.runs().back();
    auto const a = first.leaf_total() % leaves_to_sheet, b = last.leaf_total() % leaves_to_sheet;
    if (first.gatherings == 1 && last.gatherings == 1 && a != 0 && b != 0 && a + b == leaves_to_sheet &&
        first.leaf_total() != last.leaf_total())
      all.push_back({0, static_cast<std::uint32_t>(formula_.runs().size() - 1), false});
    return all;
  }
};

} // namespace detail

/// Returns the paper for one copy in sheets of `format`. Precondition: the format says how many leaves a sheet makes.
[[nodiscard]] inline PaperOfFormula paper(Formula const& formula, Format format) {
  auto const leaves_to_sheet = format.leaves_to_sheet();
  if (!leaves_to_sheet) broken("paper can be counted only for a format that says how many leaves a sheet makes");
  detail::PaperReckoner const reckoner{formula};
  std::int64_t deleted = 0, cancels = 0;
  for (auto const& change : formula.changes()) {
    auto const leaves = [&](auto const& one) { return one.leaves.count(formula.leaves_folded(one.gathering)); };
    if (auto const* const one = change.deletion()) deleted += leaves(*one);
    if (auto const* const one = change.insertion()) deleted += one->leaves_folded() - one->leaves;
    if (auto const* const one = change.cancel()) cancels += leaves(*one);
  }
  auto const links = reckoner.links();
  // every place was printed: the leaves of the book, deleted leaves, and leaves cut out for cancels
  auto const printed = formula.leaves() + deleted + cancels - links;
  auto const unexplained = deleted > links ? deleted - links : 0;
  auto const free_cancels = cancels > links ? cancels - links : 0;

  PaperOfFormula result;
  result.sheets.stated = Fraction{printed, *leaves_to_sheet};
  result.sheets.low = Fraction{printed - unexplained - free_cancels, *leaves_to_sheet};
  result.sheets.high = Fraction{result.sheets.stated.ceil()};
  result.shared = reckoner.shared(*leaves_to_sheet);

  result.stated_assumes = "every leaf the formula names was printed once, deleted leaves in their places";
  if (cancels > 0) result.stated_assumes += ", every cancel on paper of its own";
  if (links > 0) result.stated_assumes += "; leaves said to be the same are counted once";
  if (unexplained > 0) result.low_assumes = "the deleted leaves are leaves bound elsewhere in the book";
  if (free_cancels > 0) {
    if (unexplained > 0) result.low_assumes += "; ";
    result.low_assumes += "the cancels were printed on paper that would otherwise be left blank";
  }
  if (result.low_assumes.empty()) result.low_assumes = "no leaf is unaccounted for";
  result.high_assumes =
      result.sheets.stated.is_whole() ? "the sheets come out even" : "the rest of the last sheet was left blank";
  return result;
}
/// Returns the paper for one copy in the format that the formula states. Precondition: states_paper(formula).
[[nodiscard]] inline PaperOfFormula paper(Formula const& formula) {
  if (!states_paper(formula)) broken("the formula states no format, or more than one: pass the format to count with");
  return paper(formula, *formula.format());
}

} // namespace v0
} // namespace bifolium
