// SPDX-License-Identifier: MIT
/// Writing a formula in one canonical way: a blank between runs, a semicolon between parts, changes directly behind the
/// run, an en dash never (records are searched with the hyphen), a true minus and a plus-minus in changes. Reading what was
/// written gives the formula again.
#pragma once

#include <bifolium/collation/detail/leaf_name.hpp>
#include <bifolium/collation/detail/write_mark.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/leaf/named_leaves.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class FormulaWriter : MarkWriter {
  Formula const& formula_;

  /// Whether a mark is one of these: in the inside of a parenthesis they mean something else.
  static bool has_any(Signature const& mark, char const* signs) {
    return mark.mark() == Mark::symbol && std::string_view{mark.text()}.find_first_of(signs) != std::string_view::npos;
  }
  void leaf(Signature const& gathering, int position) {
    if (has_any(gathering, "+()"))
      return number(position); // such a mark cannot be named in a parenthesis: the figure means the gathering before it
    if (gathering.text()[0] == ':' && !text_.empty() && text_.back() == '(') text_ += ' '; // (: is a mark of its own
    // a figure alone would be a leaf
    mark(gathering, position == 0 && gathering.mark() == Mark::number && !gathering.is_quoted());
    if (position == 0) return;
    if (gathering.mark() == Mark::number) text_ += '/';
    number(position);
  }
  void sign(Change::Kind kind) {
    if (kind == Change::Kind::deletion)
      text_ += plain() ? "-" : "−";
    else if (kind == Change::Kind::cancel)
      text_ += plain() ? "+-" : "±";
  }
  /// The identity before change `i` names the same gathering.
  [[nodiscard]] bool figure_is_enough(std::size_t i) const {
    auto const& change = formula_.changes()[i];
    auto const& before = formula_.changes()[i - 1];
    return before.kind == Change::Kind::identity && change.named == before.named && change.name_leaf != 0 &&
           change.name == before.name;
  }
  /// An identity that brackets would not hold: B1=C2 has its leaf, and of )( the sign must be all that stands before it.
  static bool is_bare(Change const& identity) {
    return identity.leaf != 0 || (identity.named && has_any(identity.name, "()"));
  }
  /// Where a list of identities ends that begins with change `i`; what has no name of its own would take the last one.
  [[nodiscard]] std::size_t end_of_list(std::size_t i) const {
    auto const& changes = formula_.changes();
    auto const first = i;
    for (++i; i < changes.size(); ++i)
      if (is_bare(changes[first]) && !figure_is_enough(i))
        break; // without brackets a list goes on with figures only
      else if (changes[i].kind != Change::Kind::identity || changes[i].joint == Change::Joint::opens ||
               changes[i].leaf != 0 || (!changes[i].named && changes[i - 1].named))
        break;
    return i;
  }
  /// From change `i` on as many identities as stand in one list: [=B2], [=L4.5]; and the change behind them.
  std::size_t identities(std::size_t i) {
    auto const& changes = formula_.changes();
    auto const end = end_of_list(i);
    if (changes[i].leaf != 0) leaf(formula_.signature(changes[i].gathering), changes[i].leaf);
    text_ += is_bare(changes[i]) ? "=" : "[=";
    auto const first = i;
    for (;; ++i) {
      auto const& change = changes[i];
      if (!change.named || (i != first && figure_is_enough(i)))
        number(change.name_leaf);
      else if (i == first && has_any(change.name, "()")) {
        mark(change.name);
        number(change.name_leaf);
      } else
        leaf(change.name, change.name_leaf);
      if (change.doubtful) text_ += '?';
      if (i + 1 == end) break;
      text_ += changes[i + 1].joint == Change::Joint::conjugate ? "." : ",";
    }
    if (!is_bare(changes[first])) text_ += ']';
    return i + 1;
  }
  /// `first`: the first of its parenthesis; behind a deletion +2* would take the place of the leaf that has gone.
  void insertion(Change const& change, bool first) {
    auto const& run = formula_.runs()[change.stands_after];
    bool const current = change.gathering == GatheringAt{change.stands_after, run.gatherings - 1};
    if (!(change.place_named && first && current && change.leaf == change.name_leaf))
      leaf(formula_.signature(change.gathering), change.leaf);
    text_ += '+';
    if (change.place_named) {
      number(change.name_leaf);
      text_ += '*';
    } else if (!change.named && change.joined == Change::Joined::conjugate)
      for (int i = 1; i <= change.added; ++i) { // 1.2: no name, and of one piece
        if (i != 1) text_ += '.';
        number(i);
      }
    else if (!change.named)
      number(change.added);
    else {
      auto const& name = change.name;
      // +2* would be the leaf 2*, and +2& two leaves
      if (name.mark() == Mark::symbol && name.multiple() > 1 && name.series() == 0 &&
          name.duplicate() == Duplicate::none && static_cast<unsigned char>(name.text()[0]) < 0x80)
        for (std::uint32_t i = 0; i < name.multiple(); ++i) put(name.text());
      else
        mark(name);
      if (change.joined == Change::Joined::gathering) {
        if (notation_ == Notation::flat) text_ += '^';
        raised(change.added, true);
      } else if (change.name_leaf > 0)
        for (int i = 0; i < change.added; ++i) {
          if (i != 0) text_ += change.joined == Change::Joined::conjugate ? '.' : ',';
          number(change.name_leaf + i);
        }
    }
  }
  /// One parenthesis, and how many changes it took.
  std::size_t parenthesis(std::size_t first) {
    auto const& changes = formula_.changes();
    if (changes[first].kind == Change::Kind::identity && !is_bare(changes[first])) {
      auto const end = end_of_list(first);
      if (end == changes.size() || changes[end].joint == Change::Joint::opens) return identities(first) - first;
    }
    if (text_.ends_with("+)") || text_.ends_with("-)") || text_.ends_with("=)") || text_.ends_with("±)") ||
        text_.ends_with("−)"))
      text_ += ' '; // words may end so, and -)( has a mark in it
    text_ += '(';
    auto i = first;
    while (i < changes.size() && (i == first || changes[i].joint != Change::Joint::opens)) {
      auto const& change = changes[i];
      if (change.kind == Change::Kind::identity) {
        bool const apart = i != first && (changes[i - 1].kind == Change::Kind::note || change.leaf != 0);
        if (apart) text_ += ", "; // words go to the next comma
        i = identities(i);
        continue;
      }
      if (i != first) text_ += change.joint == Change::Joint::conjugate ? "." : ",";
      bool const listed = i != first && changes[i - 1].kind == change.kind && change.leaf != 0;
      switch (change.kind) {
      case Change::Kind::deletion:
      case Change::Kind::cancel:
        if (listed && changes[i - 1].gathering == change.gathering) {
          number(change.leaf);
        } else {
          if (i != first) text_ += ' ';
          if (!listed) sign(change.kind);
          leaf(formula_.signature(change.gathering), change.leaf);
        }
        break;
      case Change::Kind::insertion:
        if (i != first) text_ += ' ';
        insertion(change, i == first);
        break;
      case Change::Kind::note: {
        auto const& words = formula_.notes()[change.note];
        // behind a comma a leaf would be of the list: (−K8; A1 blank)
        if (i != first && leaf_name(FormulaText{words, {}}, 0, words.size()).found) text_.back() = ';';
        if (i != first || words.starts_with(':')) text_ += ' '; // (: is a mark
        put(words);
        break;
      }
      case Change::Kind::identity:
        break;
      }
      ++i;
    }
    text_ += ')';
    return i - first;
  }

  /// 'gg3.4' needs no count.
  static bool says_its_leaves(Run const& run) {
    return run.gatherings == 1 && run.leaves.size() == 1 && run.leaves.term(0) == named_leaves(run.first).count;
  }

public:
  FormulaWriter(Formula const& formula, Notation notation) : MarkWriter{notation}, formula_{formula} {}

  void signatures() {
    auto const& runs = formula_.runs();
    std::size_t change = 0;
    bool open = false;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      auto const& run = runs[r];
      if (open && !run.unsigned_throughout) text_ += ']', open = false;
      if (r != 0) text_ += run.begins_part ? "; " : " ";
      if (!open && run.unsigned_throughout) text_ += '[', open = true;
      mark(run.first, run.first_inferred);
      if (run.gatherings > 1 || run.first != run.last) {
        text_ += '-';
        mark(run.last, run.last_inferred);
      }
      if (!says_its_leaves(run)) cycle(run.leaves, run.last.mark() == Mark::number);
      if (run.imperfect) text_ += '+';
      while (change < formula_.changes().size() && formula_.changes()[change].stands_after == r)
        change += parenthesis(change);
    }
    if (open) text_ += ']';
  }
  std::string whole() {
    if (notation_ == Notation::tei) text_ += "<formula>";
    if (formula_.format()) {
      if (!formula_.paper_class().empty()) put(formula_.paper_class()), text_ += ' ';
      text_ += formula_.format()->symbol().view();
      if (formula_.second_format()) text_ += " and ", text_ += formula_.second_format()->symbol().view();
      text_ += ": ";
    }
    signatures();
    if (!formula_.signing().empty()) text_ += ' ', put(formula_.signing());
    if (!formula_.tail().empty()) text_ += ", ", put(formula_.tail());
    if (notation_ == Notation::tei) text_ += "</formula>";
    return static_cast<std::string&&>(text_);
  }
  std::string signatures_only() {
    signatures();
    return static_cast<std::string&&>(text_);
  }
};

} // namespace detail

/// The whole formula with format, statement of signing and what follows.
/// write(read(x)) is a fixed point, and reading what was written gives the formula, in every notation.
[[nodiscard]] inline std::string write_formula(Formula const& formula, Notation notation = Notation::unicode) {
  return detail::FormulaWriter{formula, notation}.whole();
}
/// The gatherings and changes alone, as for a note on signatures.
[[nodiscard]] inline std::string write_signatures(Formula const& formula, Notation notation = Notation::unicode) {
  return detail::FormulaWriter{formula, notation}.signatures_only();
}

} // namespace v0
} // namespace bifolium
