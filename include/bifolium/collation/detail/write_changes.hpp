// SPDX-License-Identifier: MIT
/// Writes the changes of a formula: (−A4), (±B2), (A3+χ1.2), [=B2], (K8 blank). A change is written as the reader would
/// read it again: a list names its gathering once, and inserted gatherings that follow one another make a run.
#pragma once

#include <bifolium/collation/detail/blank_words.hpp>
#include <bifolium/collation/detail/found_run.hpp>
#include <bifolium/collation/detail/leaf_reader.hpp>
#include <bifolium/collation/detail/write_mark.hpp>
#include <bifolium/collation/formula.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ChangeWriter : protected MarkWriter {
protected:
  Formula const& formula_;

  ChangeWriter(Formula const& formula, Notation notation) : MarkWriter{notation}, formula_{formula} {}

  /// Returns true if a mark is one of these signs, which have another meaning inside a parenthesis.
  static bool has_any(Signature const& mark, char const* signs) {
    return mark.mark() == Mark::symbol && std::string_view{mark.text()}.find_first_of(signs) != std::string_view::npos;
  }
  void leaf(Signature const& gathering, int position) {
    // such a mark cannot be named in a parenthesis: a figure, or the sign alone, means the gathering before it
    bool const named = !has_any(gathering, "+()") && (position != 0 || !gathering.is_in_parentheses());
    if (!named && position != 0) number(position);
    if (!named) return;
    if (gathering.text()[0] == ':' && !text_.empty() && text_.back() == '(') text_ += ' '; // (: is a mark of its own
    // a number alone would be a leaf
    mark(gathering, position == 0 && gathering.mark() == Mark::number && !gathering.is_quoted());
    if (position == 0) return;
    if (gathering.mark() == Mark::number) text_ += '/';
    number(position);
  }
  /// Returns true if the identity before change `i` names the same gathering.
  [[nodiscard]] bool figure_is_enough(std::size_t i) const {
    auto const* const here = formula_.changes()[i].identity();
    auto const* const before = formula_.changes()[i - 1].identity();
    return here != nullptr && before != nullptr && here->named == before->named && here->other_leaf &&
           here->name == before->name;
  }
  [[nodiscard]] ChangeForm const& form(std::size_t i) const { return formula_.change_forms()[i]; }
  [[nodiscard]] bool opens(std::size_t i) const { return form(i).separator == ChangeForm::Separator::opens; }
  /// Returns true for an identity that cannot be in brackets: B1=C2 has its leaf, and the sign must be the only text
  /// before )(.
  [[nodiscard]] bool is_bare(std::size_t i) const {
    auto const& identity = *formula_.changes()[i].identity();
    return form(i).leaf_written || (identity.named && has_any(identity.name, "()"));
  }
  /// Returns the end of a list of identities that begins with change `i`. An identity without a name of its own would
  /// get the last name.
  [[nodiscard]] std::size_t end_of_list(std::size_t i) const {
    auto const& changes = formula_.changes();
    auto const first = i;
    for (++i; i < changes.size(); ++i) {
      if (is_bare(first) && !figure_is_enough(i)) break; // without brackets a list continues with numbers only
      auto const* const one = changes[i].identity();
      if (one == nullptr || opens(i) || form(i).leaf_written || (!one->named && changes[i - 1].identity()->named))
        break;
    }
    return i;
  }
  /// Writes the identities of one list from change `i` on: [=B2], [=L4.5]. Returns the change after them.
  std::size_t identities(std::size_t i) {
    auto const& changes = formula_.changes();
    auto const end = end_of_list(i);
    auto const first = i;
    if (form(i).leaf_written) leaf(formula_.signature(changes[i].gathering()), changes[i].identity()->leaf);
    text_ += is_bare(i) ? "=" : "[=";
    for (;; ++i) {
      auto const& one = *changes[i].identity();
      if (!one.named || (i != first && figure_is_enough(i)))
        number(one.other_leaf.value_or(0));
      else if (i == first && has_any(one.name, "()")) {
        mark(one.name);
        number(one.other_leaf.value_or(0));
      } else
        leaf(one.name, one.other_leaf.value_or(0));
      if (changes[i].doubtful()) text_ += '?';
      if (i + 1 == end) break;
      separator(i + 1);
    }
    if (!is_bare(first)) text_ += ']';
    return i + 1;
  }
  void separator(std::size_t i) { text_ += form(i).separator == ChangeForm::Separator::point ? '.' : ','; }
  /// Writes the leaf of a deletion or cancel: A4 in −A4 or ±B2. Only a number is written if the leaf before it has the
  /// same gathering and kind.
  void loss(std::size_t i, bool first, GatheringAt gathering, int position, int last) {
    auto const& changes = formula_.changes();
    bool const cancels = changes[i].cancel() != nullptr;
    bool const listed = !first && changes[i - 1].kind() == changes[i].kind() && position != 0;
    if (listed && changes[i - 1].gathering() == gathering) {
      number(position);
    } else {
      if (!first) text_ += ' ';
      if (!listed) text_ += cancels ? (plain() ? "+-" : "±") : plain() ? "-" : "−";
      leaf(formula_.signature(gathering), position);
    }
    if (last > position) text_ += '-', number(last);
    if (changes[i].doubtful()) text_ += '?';
  }
  /// Writes an insertion. `first`: it is the first in its parenthesis; after a deletion, +2* would replace the deleted
  /// leaf.
  void insertion(std::size_t i, Insertion const& one, bool first) {
    place_of_insertion(i, one, first);
    if (one.named)
      inserted_name(one);
    else if (one.named_by_place) {
      number(*one.first_figure);
      text_ += '*';
    } else if (one.joined == Joined::conjugate)
      for (int k = 1; k <= one.leaves; ++k) { // 1.2: without a name, and one piece of paper
        if (k != 1) text_ += '.';
        number(k);
      }
    else
      number(one.leaves);
    if (formula_.changes()[i].doubtful()) text_ += '?';
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
    if (name.mark() == Mark::symbol && name.multiple() > 1 && name.series() == 0 &&
        name.duplicate() == Duplicate::none && static_cast<unsigned char>(name.text()[0]) < 0x80)
      for (std::uint32_t k = 0; k < name.multiple(); ++k) put(name.text());
    else
      mark(name, inferred);
  }
  void inserted_name(Insertion const& one) {
    inserted_mark(one.name, one.inferred);
    if (one.joined == Joined::gathering) {
      if (notation_ == Notation::flat) text_ += '^';
      raised(one.leaves_folded(), true);
      if (one.lacking != 0) lacking_leaves(one);
    } else if (one.first_figure)
      inserted_figures(one);
  }
  /// Writes the leaves that an inserted gathering lacks: (−a3,4).
  void lacking_leaves(Insertion const& one) {
    text_ += plain() ? "(-" : "(−";
    for (int k = 1, written = 0; k <= one.leaves_folded(); ++k) {
      if (!one.lacks(k)) continue;
      if (written++ == 0)
        leaf(one.name, k);
      else
        text_ += ',', number(k);
    }
    text_ += ')';
  }
  /// Returns the insertion after those that make one run from change `i` on, a-b⁴: gatherings at one place, each with
  /// the name that follows the name before it.
  [[nodiscard]] std::size_t end_of_inserted_run(std::size_t i) const {
    auto const& changes = formula_.changes();
    auto const& first = *changes[i].insertion();
    auto end = i + 1;
    auto const follows = [&](std::size_t k) {
      auto const* const one = changes[k].insertion();
      return one != nullptr && form(k).separator == ChangeForm::Separator::comma &&
             changes[k].doubtful() == changes[i].doubtful() && one->gathering == first.gathering &&
             one->after == first.after && one->joined == Joined::gathering && one->named && one->lacking == 0 &&
             one->inferred == first.inferred &&
             run_length(first.name, one->name, formula_.alphabet()) == static_cast<std::int64_t>(k - i + 1);
    };
    bool const named = first.named && first.joined == Joined::gathering && first.lacking == 0 &&
                       first.name.mark() != Mark::hebrew &&
                       (first.name.mark() != Mark::number || first.name.is_quoted());
    while (named && end < changes.size() && end - i < most_inserted_gatherings && follows(end)) ++end;
    auto same = i + 1; // a-b⁴, c²: those with one count, unless the counts alternate from the first on
    while (same < end && changes[same].insertion()->leaves == first.leaves) ++same;
    return same > i + 1 ? same : end;
  }
  /// Returns the counts of the insertions from change `i` to `end` as a cycle, or an empty one if they do not
  /// alternate.
  [[nodiscard]] Cycle cycle_of_inserted(std::size_t i, std::size_t end) const {
    auto const leaves = [&](std::size_t k) { return formula_.changes()[k].insertion()->leaves; };
    Cycle cycle;
    for (auto k = i; k < end && cycle.push(leaves(k)); ++k) {
      bool fits = (end - i) % cycle.size() == 0 && cycle.size() < end - i;
      for (auto m = i; m < end && fits; ++m) fits = leaves(m) == cycle.term((m - i) % cycle.size());
      if (fits) return cycle;
    }
    return Cycle{};
  }
  /// Writes the insertions that make a run, if there are any. Returns the change after those that were written.
  std::size_t inserted_run(std::size_t i, bool first) {
    auto const end = end_of_inserted_run(i);
    auto const leaves = end - i > 1 ? cycle_of_inserted(i, end) : Cycle{};
    if (leaves.size() == 0) return i;
    auto one = *formula_.changes()[i].insertion();
    bool const inferred = one.inferred;
    one.inferred = false;
    place_of_insertion(i, one, first);
    if (inferred) text_ += '[';
    inserted_mark(one.name, false);
    text_ += '-';
    mark(formula_.changes()[end - 1].insertion()->name);
    if (inferred) text_ += ']';
    cycle(leaves, false, true);
    if (formula_.changes()[end - 1].doubtful()) text_ += '?';
    return end;
  }
  /// Writes χ1.2 or χ1,2, or χ1-5 for a long list of single leaves.
  void inserted_figures(Insertion const& one) {
    auto const figure = *one.first_figure;
    number(figure);
    if (one.joined == Joined::apart && one.leaves > most_listed) {
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
  /// Writes words. `first`: they are the first in their parenthesis; `after_note`: other words come before them.
  void note(Note const& one, bool first, bool after_note) {
    auto const& words = formula_.notes()[one.words];
    // after a comma words may be read as a count (a⁴, in eights), a leaf as one of the list (−K8; A1 blank), and "blank"
    // as said of what the words before it name
    if (!first && (is_word_before_counts(word_at(words, 0)) || LeafInWords{words, {}}.find(0).found ||
                   (after_note && has_blank_word(words))))
      text_.back() = ';';
    if (!first || words.starts_with(':')) text_ += ' '; // (: is a mark
    put(words);
  }
  /// Returns true if words name leaves and say nothing of them: after a change they would be of its list (±A1; B2).
  [[nodiscard]] static bool only_names_leaves(std::string_view words) {
    auto const name = LeafInWords{words, {}}.find(0);
    bool const marked = words.starts_with('[') || words.starts_with('\'') || words.starts_with('"');
    if (!name.found || !name.gathering_named || name.leaf < 1 || marked) return false;
    for (auto i = std::size_t{name.end}; i < words.size();) {
      auto const word = word_at(words, i);
      if (word.size() > 2 && word != "and") return false;
      i += word.empty() ? 1 : word.size();
    }
    return true;
  }
  /// Returns true if nothing but notes is in the parenthesis that begins with a change.
  [[nodiscard]] bool only_notes(std::size_t first) const {
    auto const& changes = formula_.changes();
    auto i = first;
    while (i < changes.size() && (i == first || !opens(i)) && changes[i].note() != nullptr) ++i;
    return i == changes.size() || (i > first && opens(i));
  }
  /// Writes one parenthesis. Returns the change after it.
  std::size_t parenthesis(std::size_t first) {
    auto const& changes = formula_.changes();
    if (changes[first].identity() != nullptr && !is_bare(first)) {
      auto const end = end_of_list(first);
      if (end == changes.size() || opens(end)) return identities(first);
    }
    for (char const* end : {"+)", "-)", "=)", "±)", "−)"})
      if (text_.ends_with(end)) {
        text_ += ' '; // words may end with a sign, and -)( contains a mark
        break;
      }
    text_ += '(';
    auto i = first;
    while (i < changes.size() && (i == first || !opens(i))) {
      if (changes[i].identity() != nullptr) {
        bool const apart = i != first && (changes[i - 1].note() != nullptr || form(i).leaf_written);
        if (apart) text_ += ", "; // words end at the next comma
        i = identities(i);
        continue;
      }
      if (i != first && changes[i].note() != nullptr && (changes[i - 1].deletion() || changes[i - 1].cancel()) &&
          only_names_leaves(formula_.notes()[changes[i].note()->words]))
        break;
      if (i == first + 1 && only_notes(first)) break; // a parenthesis of words is one note
      if (i != first) separator(i);
      if (changes[i].insertion() != nullptr)
        if (auto const end = inserted_run(i, i == first); end != i) {
          i = end;
          continue;
        }
      if (auto const* const deletion = changes[i].deletion())
        loss(i, i == first, deletion->gathering, deletion->leaf, deletion->last);
      else if (auto const* const cancel = changes[i].cancel())
        loss(i, i == first, cancel->gathering, cancel->leaf, cancel->last);
      else if (auto const* const inserted = changes[i].insertion())
        insertion(i, *inserted, i == first);
      else
        note(*changes[i].note(), i == first, i != first && changes[i - 1].note() != nullptr);
      ++i;
    }
    text_ += ')';
    return i;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
