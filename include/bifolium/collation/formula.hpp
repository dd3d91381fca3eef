// SPDX-License-Identifier: MIT
/// The collation formula of a book: the gatherings of the ideal copy, their numbers of leaves, and the changes to
/// single leaves. collation/read_formula.hpp makes a `Formula` from a text. It stores runs of gatherings, not single
/// gatherings. Doubts from reading are stored as warnings, and comparison ignores them.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/detail/emptied.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/collation/passage.hpp>
#include <bifolium/core/character_references.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/leaf/signature_run.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {
class FormulaReader;
}

/// A part of a formula: a volume, or a part separated by a semicolon.
struct FormulaPart {
  std::optional<std::string> label{}; ///< "Vol. I", as written, if the part has a label
  std::uint32_t first_run{};          ///< index of the first run of the part
  std::uint32_t end_run{};            ///< index after the last run of the part
  std::int64_t leaves{};              ///< leaves of the ideal copy in the part
  friend bool operator==(FormulaPart const&, FormulaPart const&) = default;
};

/// A formula as read. Comparison looks at the meaning, and ignores the spelling and the warnings. One that was moved from has no
/// runs and no leaves.
class Formula {
  std::vector<Run> runs_;
  std::vector<Change> changes_;
  std::vector<ChangeForm> forms_;
  std::vector<std::string> notes_;
  std::vector<LeafOfBook> blanks_; // in the order of the book, each once
  std::vector<Passage> passages_;
  std::vector<FormulaPart> parts_; // empty if there is one part without a label
  std::vector<Error> warnings_;
  detail::Emptied<std::optional<Format>> format_, second_format_;
  detail::Emptied<std::optional<Cycle>> gathered_;
  std::string paper_class_, signing_, tail_;
  detail::Emptied<Letters> letters_;
  detail::Emptied<std::int64_t> leaves_, gatherings_;

  friend class detail::FormulaReader;
  /// Only the reader has this key, with which a formula is made in its place.
  class Key {
    friend class detail::FormulaReader;
    constexpr Key() noexcept {}
  };

public:
  /// Makes a formula that the reader fills.
  explicit Formula(Key) {}

  /// Moves its places from a text of characters into the text with the references. Readers of formulas call it.
  void move_back(TextOfCharacters const& text) {
    for (auto& one : changes_) one = one.at(text.original(one.text()));
    for (auto& one : passages_) one.text = text.original(one.text);
    text.move_back(warnings_);
  }

  /// Marks a type whose members return references into it: `->` of a temporary `Expected` of it does not compile.
  using gives_views = void;

  /// Returns the runs, in the order of the book.
  [[nodiscard]] std::vector<Run> const& runs() const& noexcept BIFOLIUM_LIFETIMEBOUND { return runs_; }
  /// Returns the runs of a temporary formula by value.
  [[nodiscard]] std::vector<Run> runs() && { return static_cast<std::vector<Run>&&>(runs_); }
  /// Returns the parts, which together have all runs. A formula that is not divided has one part.
  [[nodiscard]] std::vector<FormulaPart> parts() const {
    if (!parts_.empty()) return parts_;
    return {FormulaPart{{}, 0, static_cast<std::uint32_t>(runs_.size()), leaves_.value}};
  }
  /// Returns the changes, in the order of the text.
  [[nodiscard]] std::vector<Change> const& changes() const& noexcept BIFOLIUM_LIFETIMEBOUND { return changes_; }
  /// Returns the changes of a temporary formula by value.
  [[nodiscard]] std::vector<Change> changes() && { return static_cast<std::vector<Change>&&>(changes_); }
  /// Returns the way in which each change was written.
  [[nodiscard]] std::vector<ChangeForm> const& change_forms() const& noexcept BIFOLIUM_LIFETIMEBOUND { return forms_; }
  /// Returns the change forms of a temporary formula by value.
  [[nodiscard]] std::vector<ChangeForm> change_forms() && { return static_cast<std::vector<ChangeForm>&&>(forms_); }
  /// Returns the words of the notes, to which Note::words points.
  [[nodiscard]] std::vector<std::string> const& notes() const& noexcept BIFOLIUM_LIFETIMEBOUND { return notes_; }
  /// Returns the words of the notes of a temporary formula by value.
  [[nodiscard]] std::vector<std::string> notes() && { return static_cast<std::vector<std::string>&&>(notes_); }
  /// Returns the leaves that notes call blank (K8 blank), perhaps with a question mark, in the order of the book.
  /// Deleted ones are among them. A note of which it is not clear which leaves it calls blank is doubted, and none of
  /// them is taken.
  [[nodiscard]] std::vector<LeafOfBook> const& blanks() const& noexcept BIFOLIUM_LIFETIMEBOUND { return blanks_; }
  /// Returns the blank leaves of a temporary formula by value.
  [[nodiscard]] std::vector<LeafOfBook> blanks() && { return static_cast<std::vector<LeafOfBook>&&>(blanks_); }
  /// Returns the doubts, with columns. `message` makes a sentence of each.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return warnings_; }
  /// Returns the doubts of a temporary formula by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(warnings_); }
  /// Returns the format statement, or no value if there is none. A book of two formats ("2° and 4°") also has a second
  /// one.
  [[nodiscard]] std::optional<Format> format() const noexcept { return format_.value; }
  /// Returns the second of two formats, as in `4° and 8°`, or no value if there is none.
  [[nodiscard]] std::optional<Format> second_format() const noexcept { return second_format_.value; }
  /// Returns the leaves of the gatherings as the statement of format gives them, in `8° in fours` or `12° (8/4)`, or no
  /// value if it does not. Of several volumes it is the first statement.
  [[nodiscard]] std::optional<Cycle> gathered() const noexcept { return gathered_.value; }
  /// Returns the class of paper, such as "Royal" or "median", if it is stated.
  [[nodiscard]] std::optional<std::string_view> paper_class() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return paper_class_.empty() ? std::nullopt : std::optional<std::string_view>{paper_class_};
  }
  /// Returns the class of paper of a temporary formula by value.
  [[nodiscard]] std::optional<std::string> paper_class() && {
    return paper_class_.empty() ? std::nullopt : std::optional{static_cast<std::string&&>(paper_class_)};
  }
  /// Returns the statement of signing as written, with its brackets, if there is one. record/read_signing.hpp reads it.
  [[nodiscard]] std::optional<std::string_view> signing() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return signing_.empty() ? std::nullopt : std::optional<std::string_view>{signing_};
  }
  /// Returns the statement of signing of a temporary formula by value.
  [[nodiscard]] std::optional<std::string> signing() && {
    return signing_.empty() ? std::nullopt : std::optional{static_cast<std::string&&>(signing_)};
  }
  /// Returns the passages beside the gatherings, with their places in the text that was read. Comparison ignores them.
  [[nodiscard]] std::vector<Passage> const& passages() const& noexcept BIFOLIUM_LIFETIMEBOUND { return passages_; }
  /// Returns the passages of a temporary formula by value.
  [[nodiscard]] std::vector<Passage> passages() && { return static_cast<std::vector<Passage>&&>(passages_); }
  /// Returns the text after the formula, as written: a total, pagination, plates, prose.
  [[nodiscard]] std::string const& tail() const& noexcept BIFOLIUM_LIFETIMEBOUND { return tail_; }
  /// Returns the text after the formula of a temporary formula by value.
  [[nodiscard]] std::string tail() && { return static_cast<std::string&&>(tail_); }
  /// Returns the alphabet of the signatures.
  [[nodiscard]] Alphabet alphabet() const noexcept { return Alphabet{letters_.value}; }
  /// Returns which of J, U and W are used.
  [[nodiscard]] Letters letters() const noexcept { return letters_.value; }

  /// Returns the number of leaves of the ideal copy: those of the runs, less deleted leaves, plus inserted ones.
  [[nodiscard]] std::int64_t leaves() const noexcept { return leaves_.value; }
  /// Returns the number of pages of the ideal copy, two for each leaf.
  [[nodiscard]] std::int64_t pages() const noexcept { return 2 * leaves_.value; }
  /// Returns the number of gatherings, including inserted ones.
  [[nodiscard]] std::int64_t gatherings() const noexcept { return gatherings_.value; }
  /// Returns an iterator to the first run; a formula is a range of its runs: `for (Run const& run : formula)`.
  [[nodiscard]] auto begin() const& noexcept BIFOLIUM_LIFETIMEBOUND { return runs_.begin(); }
  void begin() const&& = delete; // it would look at what goes
  /// Returns an iterator past the last run.
  [[nodiscard]] auto end() const& noexcept BIFOLIUM_LIFETIMEBOUND { return runs_.end(); }
  void end() const&& = delete; // it would look at what goes

  /// Returns the signature of a gathering. Precondition: the formula has the gathering.
  [[nodiscard]] Signature signature(GatheringAt at) const {
    auto const& run = checked(at);
    return run_member(run.first, run.last, at.index, alphabet());
  }
  /// Returns the number of leaves of a gathering as folded, before any change. Precondition: the formula has the
  /// gathering.
  [[nodiscard]] int leaves_folded(GatheringAt at) const { return checked(at).leaves.at(at.index); }

  friend bool operator==(Formula const& a, Formula const& b) {
    return a.runs_ == b.runs_ && a.changes_ == b.changes_ && a.notes_ == b.notes_ && a.parts_ == b.parts_ &&
           a.format_ == b.format_ && a.second_format_ == b.second_format_ && a.gathered_ == b.gathered_ &&
           a.paper_class_ == b.paper_class_ && a.signing_ == b.signing_ && a.tail_ == b.tail_ &&
           a.letters_ == b.letters_;
  }

  // Compilers show the line of a deleted function, so the sentence is on it.
  // clang-format off
  /// Does not compile, because a formula has several notations.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>&, Formula const&) = delete; // which notation? write out << write_formula(formula)
  // clang-format on

private:
  [[nodiscard]] Run const& checked(GatheringAt at) const {
    if (at.run >= runs_.size() || at.index < 0 || at.index >= runs_[at.run].gatherings)
      broken("the formula has no such gathering");
    return runs_[at.run];
  }
};

} // namespace v0
} // namespace bifolium

// Of the gatherings and their leaves, and of how many changes there are. Equal formulas hash alike, however they are
// written.
template <> struct std::hash<bifolium::Formula> {
  std::size_t operator()(bifolium::Formula const& formula) const {
    auto all = formula.changes().size();
    for (auto const& run : formula) {
      all = all * 31U + std::hash<bifolium::Signature>{}(run.first);
      all = (all * 31U + static_cast<std::size_t>(run.gatherings)) * 31U + static_cast<std::size_t>(run.leaf_total());
    }
    return all;
  }
};
