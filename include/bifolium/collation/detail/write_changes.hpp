// SPDX-License-Identifier: MIT
/// Writes the changes of a formula: (−A4), (±B2), (A3+χ1.2), [=B2], (K8 blank). A change is written as the reader would
/// read it again: a list names its gathering once.
#pragma once

#include <bifolium/collation/detail/scan/leaf_reader.hpp>
#include <bifolium/collation/detail/words/blank_words.hpp>
#include <bifolium/collation/detail/write_insertions.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ChangeWriter : protected InsertionWriter {
protected:
  using InsertionWriter::InsertionWriter;

  /// Returns true if the identity before change `i` names the same gathering.
  [[nodiscard]] bool figure_is_enough(std::size_t i) const {
    auto const* const here = formula_.changes()[i].identity();
    auto const* const before = formula_.changes()[i - 1].identity();
    return here != nullptr && before != nullptr && here->other_leaf && here->name == before->name;
  }
  [[nodiscard]] bool opens(std::size_t i) const { return form(i).separator == ChangeForm::Separator::opens; }
  /// Returns true for an identity that cannot be in brackets: B1=C2 has its leaf, and the sign must be the only text
  /// before )(.
  [[nodiscard]] bool is_bare(std::size_t i) const {
    auto const* const one = formula_.changes()[i].identity();
    return form(i).leaf_written || (one != nullptr && one->name && has_any(*one->name, "()"));
  }
  /// Returns the end of a list of identities that begins with change `i`. An identity without a name of its own would
  /// get the last name.
  [[nodiscard]] std::size_t end_of_list(std::size_t i) const {
    auto const& changes = formula_.changes();
    auto const first = i;
    auto const* before = changes[i].identity();
    for (++i; i < changes.size(); ++i) {
      if (is_bare(first) && !figure_is_enough(i)) break; // without brackets a list continues with numbers only
      auto const* const one = changes[i].identity();
      if (one == nullptr || opens(i) || form(i).leaf_written) break;
      if (!one->name && before != nullptr && before->name) break;
      before = one;
    }
    return i;
  }
  /// Writes the leaf that an identity says to be the same: B2 in [=B2], 5 in [=L4.5].
  void same_leaf(std::size_t i, Identity const& one, bool first) {
    bool const beside = one.name && first && has_any(*one.name, "()");
    if (one.name && (first || !figure_is_enough(i)) && !beside) {
      leaf(*one.name, one.other_leaf);
    } else {
      if (beside) mark(*one.name);
      if (one.other_leaf) number(*one.other_leaf);
    }
  }
  /// Writes the identities of one list from change `first`, which is `head`, on: [=B2], [=L4.5]. Returns the change
  /// after them.
  std::size_t identities(std::size_t first, Identity const& head) {
    auto const& changes = formula_.changes();
    auto const end = end_of_list(first);
    if (form(first).leaf_written) leaf(formula_.signature(head.gathering), head.leaf);
    text_ += is_bare(first) ? "=" : "[=";
    for (auto i = first; i < end; ++i) {
      if (i != first) separator(i);
      if (auto const* const one = changes[i].identity()) same_leaf(i, *one, i == first);
      if (changes[i].doubtful()) text_ += '?';
    }
    if (!is_bare(first)) text_ += ']';
    return end;
  }
  void separator(std::size_t i) { text_ += form(i).separator == ChangeForm::Separator::point ? '.' : ','; }
  /// Writes the leaf of a deletion or cancel: A4 in −A4 or ±B2. Only a number is written if the leaf before it has the
  /// same gathering and kind.
  void loss(std::size_t i, bool first, GatheringAt gathering, FoldedLeaves leaves) {
    auto const& changes = formula_.changes();
    bool const cancels = changes[i].cancel() != nullptr;
    bool const listed = !first && changes[i - 1].kind() == changes[i].kind() && !leaves.are_every();
    if (listed && changes[i - 1].gathering() == gathering) {
      number(leaves.first());
    } else {
      if (!first) text_ += ' ';
      if (!listed) text_ += cancels ? (plain() ? "+-" : "±") : plain() ? "-" : "−";
      leaf(formula_.signature(gathering), leaves.are_every() ? std::nullopt : std::optional{leaves.first()});
    }
    auto const last = leaves.last(formula_.leaves_folded(gathering));
    if (!leaves.are_every() && last > leaves.first()) text_ += '-', number(last);
    if (changes[i].doubtful()) text_ += '?';
  }
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
    if (auto const* const head = changes[first].identity(); head != nullptr && !is_bare(first)) {
      auto const end = end_of_list(first);
      if (end == changes.size() || opens(end)) return identities(first, *head);
    }
    for (char const* end : {"+)", "-)", "=)", "±)", "−)"})
      if (text_.ends_with(end)) {
        text_ += ' '; // words may end with a sign, and -)( contains a mark
        break;
      }
    text_ += '(';
    auto i = first;
    while (i < changes.size() && (i == first || !opens(i))) {
      if (auto const* const head = changes[i].identity()) {
        bool const apart = i != first && (changes[i - 1].note() != nullptr || form(i).leaf_written);
        if (apart) text_ += ", "; // words end at the next comma
        i = identities(i, *head);
        continue;
      }
      auto const* const words = changes[i].note();
      if (i != first && words != nullptr && (changes[i - 1].deletion() || changes[i - 1].cancel()) &&
          only_names_leaves(formula_.notes()[words->words]))
        break;
      if (i == first + 1 && only_notes(first)) break; // a parenthesis of words is one note
      if (i != first) separator(i);
      auto const* const inserted = changes[i].insertion();
      if (inserted != nullptr)
        if (auto const end = inserted_run(i, *inserted, i == first); end != i) {
          i = end;
          continue;
        }
      if (auto const* const deletion = changes[i].deletion())
        loss(i, i == first, deletion->gathering, deletion->leaves);
      else if (auto const* const cancel = changes[i].cancel())
        loss(i, i == first, cancel->gathering, cancel->leaves);
      else if (inserted != nullptr) {
        i = insertion(i, *inserted, i == first);
        continue;
      } else if (words != nullptr)
        note(*words, i == first, i != first && changes[i - 1].note() != nullptr);
      ++i;
    }
    text_ += ')';
    return i;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
