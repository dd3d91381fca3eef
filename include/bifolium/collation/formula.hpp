// SPDX-License-Identifier: MIT
/// The collation formula of a book: what gatherings the ideal copy has, how many leaves each, and what was done to single
/// leaves. A `Formula` is made by reading one (collation/read_formula.hpp). It keeps runs, not gatherings; doubts met in
/// reading stay beside it as warnings and take no part in comparison.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/collation/passage.hpp>
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

/// A part of a formula: a volume, or what a semicolon separates.
struct FormulaPart {
  std::string label{};       ///< "Vol. I", as written; empty where it has none
  std::uint32_t first_run{}; ///< the runs of the formula that belong to it: the first
  std::uint32_t end_run{};   ///< and the one after the last
  std::int64_t leaves{};     ///< leaves of the ideal copy in it
  friend bool operator==(FormulaPart const&, FormulaPart const&) = default;
};

/// A formula as read. Equality compares what it says, not how it was spelled nor the warnings.
class Formula {
  std::vector<Run> runs_;
  std::vector<Change> changes_;
  std::vector<ChangeForm> forms_;
  std::vector<std::string> notes_;
  std::vector<Passage> passages_;
  std::vector<FormulaPart> parts_; // none where there is one without a label
  std::vector<Error> warnings_;
  std::optional<Format> format_, second_format_;
  std::string paper_class_, signing_, tail_;
  Letters letters_{};
  std::int64_t leaves_{}, gatherings_{};

  friend class detail::FormulaReader;
  Formula() = default;

public:
  /// In the order of the book.
  [[nodiscard]] std::vector<Run> const& runs() const noexcept { return runs_; }
  /// The parts, which have all runs between them; one for a formula that is not divided.
  [[nodiscard]] std::vector<FormulaPart> parts() const {
    if (!parts_.empty()) return parts_;
    return {FormulaPart{{}, 0, static_cast<std::uint32_t>(runs_.size()), leaves_}};
  }
  /// In the order of the text.
  [[nodiscard]] std::vector<Change> const& changes() const noexcept { return changes_; }
  /// How each change was written, for writing it so again.
  [[nodiscard]] std::vector<ChangeForm> const& change_forms() const noexcept { return forms_; }
  /// The words of the notes, to which Note::words points.
  [[nodiscard]] std::vector<std::string> const& notes() const noexcept { return notes_; }
  /// What was doubtful, with column; `message` makes the sentence.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return warnings_; }
  /// The format statement, if there was one; a book of two formats ("2° and 4°") has a second.
  [[nodiscard]] std::optional<Format> format() const noexcept { return format_; }
  /// The second of two formats, as in `4° and 8°`.
  [[nodiscard]] std::optional<Format> second_format() const noexcept { return second_format_; }
  /// "Royal", "median"; empty when not stated.
  [[nodiscard]] std::string const& paper_class() const noexcept { return paper_class_; }
  /// The statement of signing with its brackets, as written; record/read_signing.hpp reads it.
  [[nodiscard]] std::string const& signing() const noexcept { return signing_; }
  /// What is beside the gatherings, one passage after another, by its place in the text that was read. Not compared.
  [[nodiscard]] std::vector<Passage> const& passages() const noexcept { return passages_; }
  /// What follows the formula: a total, pagination, plates, prose. As written.
  [[nodiscard]] std::string const& tail() const noexcept { return tail_; }
  /// The alphabet the signatures follow.
  [[nodiscard]] Alphabet alphabet() const noexcept { return Alphabet{letters_}; }
  /// Which of J, U and W are used.
  [[nodiscard]] Letters letters() const noexcept { return letters_; }

  /// Leaves of the ideal copy: the runs, less deletions, and insertions.
  friend std::int64_t leaf_count(Formula const& formula) noexcept { return formula.leaves_; }
  friend std::int64_t page_count(Formula const& formula) noexcept { return 2 * formula.leaves_; }
  /// Gatherings, inserted ones included.
  friend std::int64_t gathering_count(Formula const& formula) noexcept { return formula.gatherings_; }

  /// The signature of a gathering. pre: it is one of this formula.
  [[nodiscard]] Signature signature(GatheringAt at) const {
    auto const& run = checked(at);
    return run_member(run.first, run.last, at.index, alphabet());
  }
  /// The leaves with which a gathering was folded, before any change. pre: it is one of this formula.
  [[nodiscard]] int leaves_folded(GatheringAt at) const { return checked(at).leaves.at(at.index); }

  friend bool operator==(Formula const& a, Formula const& b) {
    return a.runs_ == b.runs_ && a.changes_ == b.changes_ && a.notes_ == b.notes_ && a.parts_ == b.parts_ &&
           a.format_ == b.format_ && a.second_format_ == b.second_format_ && a.paper_class_ == b.paper_class_ &&
           a.signing_ == b.signing_ && a.tail_ == b.tail_ && a.letters_ == b.letters_;
  }

private:
  [[nodiscard]] Run const& checked(GatheringAt at) const {
    if (at.run >= runs_.size() || at.index < 0 || at.index >= runs_[at.run].gatherings)
      broken("the formula has no such gathering");
    return runs_[at.run];
  }
};

} // namespace v0
} // namespace bifolium
