// SPDX-License-Identifier: MIT
/// A list that is a formula without raised figures: "π2 A-K8 L4". Card catalogues and dealers write the collation of a
/// copy so, and every item of it is also the name of a leaf: π2 is the second leaf of π, or π in two leaves (common
/// practice, no source). If each item has the number of the last leaf, and there are two or more, the numbers are taken
/// for counts: few copies have the last leaves of several gatherings and no other leaf of them. A8 B8 C8 D1-8 is not another
/// case, since D1-8 is the whole of D either way, and neither is A8 B8 C8 D1-4 of a copy that ends early.
#pragma once

#include <bifolium/copy/leaf_span.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The items of a list, and whether they can be gatherings with the number of their leaves.
class FlatCounts {
public:
  /// What an item can be.
  enum class Form : std::uint8_t {
    leaves,       ///< only leaves, or gatherings without a number: A1-3, f. 5, A-C
    only_leaf,    ///< the one leaf of a gathering: π1
    last_leaf,    ///< the last leaf of a gathering: A8
    other_leaf,   ///< another leaf: A5
    run_to_last,  ///< A-C8
    run_to_other, ///< A-C5
    whole,        ///< the leaves of a whole gathering, which decide nothing: D1-8
    beginning,    ///< the first leaves of a gathering: D1-4
  };
  /// What is wrong with the numbers, if they are counts.
  struct Found {
    std::string_view
        word{};     ///< the first number that is a count; or the first that cannot be the count of its gathering
    bool differs{}; ///< true if there is such a number
  };

private:
  struct Item {
    Form form{};
    std::size_t span{}; // the first of its spans
    std::string_view word{};
  };
  std::vector<Item> items_{};

  /// Returns true if only blanks are between two words of one text.
  [[nodiscard]] static bool beside(std::string_view first, std::string_view second) noexcept {
    std::string_view const all{first.data(), static_cast<std::size_t>(second.data() - first.data())};
    TextCursor cursor{all, first.size()};
    cursor.take_blanks();
    return cursor.at_end();
  }
  /// Returns true if the second gathering is the next one of the book after the first.
  [[nodiscard]] static bool follows(IdealCopy const& book, GatheringAt first, GatheringAt second) {
    bool const ends = first.index + 1 >= book.runs()[first.run].gatherings;
    return second == (ends ? GatheringAt{first.run + 1, 0} : GatheringAt{first.run, first.index + 1});
  }

public:
  /// Returns the leaves of a gathering or an inserted gathering if this leaf is the last one of it; no value if it is not.
  [[nodiscard]] static std::optional<NumbersOfLeaves> counted_to(IdealCopy const& book, LeafOfBook const& leaf) {
    auto const number = book.leaf_number(leaf);
    if (auto const one = book.inserted(leaf)) {
      if (!number || one->number != one->insertion.leaves) return std::nullopt;
      return NumbersOfLeaves{*number + 1 - one->number, *number};
    }
    auto const all = book.numbers_of(leaf.gathering);
    if (leaf.leaf != book.leaves_folded(leaf.gathering) && number != all.to) return std::nullopt;
    return all;
  }
  /// Returns the form of an item that is one leaf or ends with one.
  [[nodiscard]] static Form form_of(IdealCopy const& book, LeafOfBook const& leaf, bool run) {
    auto const all = counted_to(book, leaf);
    if (run) return all ? Form::run_to_last : Form::run_to_other;
    if (!all) return Form::other_leaf;
    return all->count() == 1 ? Form::only_leaf : Form::last_leaf;
  }
  void add(Form form, std::size_t span, std::string_view word) { items_.push_back({form, span, word}); }

  /// Looks at the items of which nothing else is said. Returns no value if they are leaves. Leaves with commas between them,
  /// C8, D8, are a formula only if a run is among them, or if they go on from the beginning of the book.
  [[nodiscard]] std::optional<Found> find(IdealCopy const& book, std::vector<LeafSpan> const& spans) const {
    std::size_t last = 0, runs = 0, others = 0;
    bool blanks = true, go_on = true; // only blanks are between the items; each is of the gathering after the last one
    bool in_row = true, cut = false; // the same, from any gathering on; the beginning of a gathering is among the items
    Found found;
    Item const* before = nullptr;
    for (auto const& item : items_) {
      if (item.span >= spans.size() || spans[item.span].state != LeafInCopy::original) continue;
      if (item.form == Form::leaves) return std::nullopt;
      auto const here = spans[item.span].first.gathering;
      if (before != nullptr) {
        if (before->word == item.word) return std::nullopt; // A8 A8 is of two parts
        blanks = blanks && beside(before->word, item.word);
        in_row = in_row && follows(book, spans[before->span].last.gathering, here);
        go_on = go_on && in_row;
      } else {
        go_on = here == GatheringAt{};
      }
      before = &item;
      cut = cut || item.form == Form::beginning;
      last += item.form == Form::last_leaf ? 1U : 0U;
      runs += item.form == Form::run_to_last ? 1U : 0U;
      bool const other = item.form == Form::other_leaf || item.form == Form::run_to_other;
      others += other ? 1U : 0U;
      if (other && !found.differs) found = {item.word, true};
      if (item.form == Form::last_leaf && found.word.empty()) found.word = item.word;
    }
    if (last == 0 || last + runs < 2 || (cut && !in_row)) return std::nullopt;
    // with a number that is not a count the list is a formula only if most others are counts
    if (others > 0 && (runs == 0 || last + runs <= others)) return std::nullopt;
    if (runs == 0 && !blanks && !(go_on && last > 2)) return std::nullopt;
    return found;
  }
  /// Makes whole gatherings of the last leaves.
  void expand(IdealCopy const& book, std::vector<LeafSpan>& spans) const {
    std::vector<LeafSpan> whole;
    std::size_t next = 0;
    for (std::size_t i = 0; i < spans.size(); ++i) {
      while (next < items_.size() && items_[next].span < i) ++next;
      bool const item = next < items_.size() && items_[next].span == i && items_[next].form == Form::last_leaf;
      auto const all = item ? counted_to(book, spans[i].first) : std::nullopt;
      bool const expands = all && all->from <= all->to && spans[i].state == LeafInCopy::original;
      auto const span = expands ? span_of_numbers(book, all->from, all->to) : spans[i];
      bool const in_last = !whole.empty() && span.in_ideal() && whole.back().from <= span.from &&
                           span.to <= whole.back().to && span.first.inserted && !whole.back().first.inserted;
      if (!in_last) whole.push_back(span); // an inserted gathering is in the one before it
    }
    spans = static_cast<std::vector<LeafSpan>&&>(whole);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
