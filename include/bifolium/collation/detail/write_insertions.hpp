// SPDX-License-Identifier: MIT
/// Writes inserted leaves and gatherings: A3+χ1.2, A1+a⁴, A1+a-b⁴. Inserted gatherings that follow one another, each with
/// the name after the one before, are written as one run.
#pragma once

#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/collation/detail/write_mark.hpp>
#include <bifolium/collation/formula.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class InsertionWriter : protected MarkWriter {
protected:
  Formula const& formula_;

  InsertionWriter(Formula const& formula, Notation notation) : MarkWriter{notation}, formula_{formula} {}

  /// Returns true if a mark is one of these signs, which have another meaning inside a parenthesis.
  static bool has_any(Signature const& mark, char const* signs) {
    return mark.mark() == Mark::symbol && std::string_view{mark.text()}.find_first_of(signs) != std::string_view::npos;
  }
  /// Writes a leaf of a gathering, or the gathering alone if there is no position.
  void leaf(Signature const& gathering, std::optional<int> position) {
    // such a mark cannot be named in a parenthesis: a figure, or the sign alone, means the gathering before it
    bool const named = !has_any(gathering, "+()") && (position || !gathering.is_in_parentheses());
    if (!named && position) number(*position);
    if (!named) return;
    if (gathering.text()[0] == ':' && !text_.empty() && text_.back() == '(') text_ += ' '; // (: is a mark of its own
    // a number alone would be a leaf
    mark(gathering, !position && gathering.mark() == Mark::number && !gathering.is_quoted());
    if (!position) return;
    if (gathering.mark() == Mark::number) text_ += '/';
    number(*position);
  }
  [[nodiscard]] ChangeForm const& form(std::size_t i) const { return formula_.change_forms()[i]; }
  /// Writes an insertion and the pieces of its list, if it has more than one. `first`: it is the first in its
  /// parenthesis; after a deletion, +2* would replace the deleted leaf. Returns the change after those that were written.
  std::size_t insertion(std::size_t i, Insertion const& one, bool first) {
    place_of_insertion(i, one, first);
    auto const end = end_of_pieces(i, one);
    if (one.name)
      inserted_name(one);
    else if (one.named_by_place) {
      number(*one.first_figure);
      text_ += '*';
    } else if (one.joined == Joined::conjugate || end - i > 1)
      inserted_figures(one, 1); // 1.2: without a name, and one piece of paper
    else
      number(one.leaves);
    auto figure = one.first_figure.value_or(1) + one.leaves;
    for (auto k = i + 1; k < end; ++k) {
      auto const* const piece = formula_.changes()[k].insertion();
      if (piece == nullptr) break;
      text_ += ',';
      inserted_figures(*piece, figure);
      figure += piece->leaves;
    }
    if (formula_.changes()[i].doubtful()) text_ += '?';
    return end;
  }
  /// Returns the change after the insertions that are pieces of one list from change `i`, which is `first`, on, as in
  /// χ1.2,3: numbers at one place that follow one another, of which folds part the single leaves.
  [[nodiscard]] std::size_t end_of_pieces(std::size_t i, Insertion const& first) const {
    auto const& changes = formula_.changes();
    if (first.joined == Joined::gathering || first.named_by_place || (first.name && !first.first_figure)) return i + 1;
    auto figure = first.first_figure.value_or(1) + first.leaves;
    auto end = i + 1;
    bool after_fold = first.joined == Joined::conjugate;
    for (; end < changes.size(); ++end) {
      auto const* const one = changes[end].insertion();
      bool const same_place = one != nullptr && form(end).separator == ChangeForm::Separator::comma &&
                              changes[end].doubtful() == changes[i].doubtful() && one->gathering == first.gathering &&
                              one->after == first.after && !one->named_by_place;
      if (!same_place || one->name != first.name || one->inferred != first.inferred ||
          (first.name && one->first_figure != figure))
        break;
      bool const fold = one->joined == Joined::conjugate;
      if (one->joined == Joined::gathering || (!fold && !after_fold)) break;
      figure += one->leaves;
      after_fold = fold;
    }
    // an identity after a list is of its first leaf
    auto const* const same = end < changes.size() ? changes[end].identity() : nullptr;
    return same != nullptr && same->insertion && *same->insertion != i ? i + 1 : end;
  }
  /// Writes the leaf before an insertion, and the plus.
  void place_of_insertion(std::size_t i, Insertion const& one, bool first) {
    auto const& run = formula_.runs()[form(i).after_run];
    bool const current = one.gathering == GatheringAt{form(i).after_run, run.gatherings - 1};
    if (!first) text_ += ' ';
    if (!(one.named_by_place && first && current && one.after == one.first_figure))
      leaf(formula_.signature(one.gathering), one.after);
    text_ += '+';
  }
  /// Writes the name of inserted leaves.
  void inserted_mark(Signature const& name, bool inferred) {
    // +2* would be the leaf 2*, and +2& two leaves
    if (name.mark() == Mark::symbol && name.multiple() > 1 && !name.series() && name.duplicate() == Duplicate::none &&
        static_cast<unsigned char>(name.text()[0]) < 0x80)
      for (std::uint32_t k = 0; k < name.multiple(); ++k) put(name.text());
    else
      mark(name, inferred);
  }
  void inserted_name(Insertion const& one) {
    inserted_mark(*one.name, one.inferred);
    if (one.joined == Joined::gathering) {
      if (notation_ == Notation::flat) text_ += '^';
      raised(one.leaves_folded(), true);
      if (one.lacking != 0) lacking_leaves(one);
    } else if (one.first_figure)
      inserted_figures(one, *one.first_figure);
  }
  /// Writes the leaves that an inserted gathering lacks: (−a3,4).
  void lacking_leaves(Insertion const& one) {
    text_ += plain() ? "(-" : "(−";
    for (int k = 1, written = 0; k <= one.leaves_folded(); ++k) {
      if (!one.lacks(k)) continue;
      if (written++ == 0)
        leaf(*one.name, k);
      else
        text_ += ',', number(k);
    }
    text_ += ')';
  }
  /// Returns the number of leaves that a change inserts: 0 if it is of another kind.
  [[nodiscard]] int leaves_inserted(std::size_t i) const {
    auto const* const one = formula_.changes()[i].insertion();
    return one == nullptr ? 0 : one->leaves;
  }
  /// Returns the insertion after those that make one run from change `i`, which is `first`, on, a-b⁴: gatherings at one
  /// place, each with the name that follows the name before it.
  [[nodiscard]] std::size_t end_of_inserted_run(std::size_t i, Insertion const& first) const {
    auto const& changes = formula_.changes();
    auto end = i + 1;
    auto const follows = [&](std::size_t k) {
      auto const* const one = changes[k].insertion();
      return one != nullptr && form(k).separator == ChangeForm::Separator::comma &&
             changes[k].doubtful() == changes[i].doubtful() && one->gathering == first.gathering &&
             one->after == first.after && one->joined == Joined::gathering && one->name && one->lacking == 0 &&
             one->inferred == first.inferred &&
             run_length(*first.name, *one->name, formula_.alphabet()) == static_cast<std::int64_t>(k - i + 1);
    };
    bool const named = first.name && first.joined == Joined::gathering && first.lacking == 0 &&
                       first.name->mark() != Mark::hebrew &&
                       (first.name->mark() != Mark::number || first.name->is_quoted());
    while (named && end < changes.size() && end - i < most_inserted_gatherings && follows(end)) ++end;
    auto same = i + 1; // a-b⁴, c²: those with one count, unless the counts alternate from the first on
    while (same < end && leaves_inserted(same) == first.leaves) ++same;
    return same > i + 1 ? same : end;
  }
  /// Returns the counts of the insertions from change `i` to `end` as a cycle, or an empty one if they do not
  /// alternate.
  [[nodiscard]] Cycle cycle_of_inserted(std::size_t i, std::size_t end) const {
    Cycle cycle;
    for (auto k = i; k < end && cycle.push(leaves_inserted(k)); ++k) {
      bool fits = (end - i) % cycle.size() == 0 && cycle.size() < end - i;
      for (auto m = i; m < end && fits; ++m) fits = leaves_inserted(m) == cycle.term((m - i) % cycle.size());
      if (fits) return cycle;
    }
    return Cycle{};
  }
  /// Writes the insertions that make a run from change `i`, which is `head`, on, if there are any. Returns the change
  /// after those that were written.
  std::size_t inserted_run(std::size_t i, Insertion const& head, bool first) {
    auto const end = end_of_inserted_run(i, head);
    auto const leaves = end - i > 1 ? cycle_of_inserted(i, end) : Cycle{};
    if (leaves.size() == 0) return i;
    auto one = head;
    bool const inferred = one.inferred;
    one.inferred = false;
    place_of_insertion(i, one, first);
    if (inferred) text_ += '[';
    inserted_mark(*one.name, false);
    text_ += '-';
    if (auto const* const last = formula_.changes()[end - 1].insertion(); last != nullptr && last->name)
      mark(*last->name);
    if (inferred) text_ += ']';
    cycle(leaves, false, true);
    if (formula_.changes()[end - 1].doubtful()) text_ += '?';
    return end;
  }
  /// Writes 1.2 or 1,2, or 1-5 for a long list of single leaves with a name.
  void inserted_figures(Insertion const& one, int figure) {
    number(figure);
    if (one.joined == Joined::apart && one.name && one.leaves > most_listed) {
      text_ += '-';
      number(figure + one.leaves - 1);
      return;
    }
    for (int k = 1; k < one.leaves; ++k) {
      text_ += one.joined == Joined::conjugate ? '.' : ',';
      number(figure + k);
    }
  }
  static constexpr int most_listed = 4;
};

} // namespace detail
} // namespace v0
} // namespace bifolium
