// SPDX-License-Identifier: MIT
/// The sink that makes a `Formula` of what the grammar finds, and read_formula, which puts the two together.
#pragma once

#include <bifolium/collation/detail/grammar/grammar.hpp>
#include <bifolium/collation/detail/plain_text.hpp>
#include <bifolium/collation/detail/resolve/identity_list.hpp>
#include <bifolium/collation/detail/resolve/leaves_of_parts.hpp>
#include <bifolium/collation/detail/words/stored_words.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/merge_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Receives the elements of a formula and stores them.
class FormulaReader {
  std::string_view text_;
  Formula* formula_; // null if nothing is stored
  Letters letters_;
  PlaceCounter places_{};
  IdentityList identities_{};
  TextSpan next_label_{}; // the label of the part that begins with the next run

  FormulaReader(std::string_view text, Formula* formula, Letters letters)
      : text_{text}, formula_{formula}, letters_{letters} {
    if (formula_ != nullptr) formula_->runs_.reserve(text.size() < 80 ? text.size() / 4 + 1 : runs_at_most(text));
  }

  /// Returns an upper bound of the number of runs, which are separated by one or more blanks. A vector that grows by
  /// copying would make reading a long text take twice as long.
  static std::size_t runs_at_most(std::string_view text) noexcept {
    std::size_t blanks = 0;
    for (std::size_t i = 1; i < text.size(); ++i) blanks += text[i - 1] == ' ' && text[i] != ' ' ? 1U : 0U;
    return blanks < text.size() / 4 ? blanks + 1 : text.size() / 4 + 1;
  }
  [[nodiscard]] Error error(Doubt doubt) {
    doubt = doubt.of_whole_characters(text_);
    auto const quoted = text_.substr(doubt.from, doubt.to - doubt.from);
    return error_at(doubt.problem, places_.place(text_, doubt.from), quoted, doubt.limit);
  }
  void begin_part() {
    auto const run = static_cast<std::uint32_t>(formula_->runs_.size() - 1);
    if (formula_->parts_.empty() && run > 0) formula_->parts_.push_back({{}, 0, run, 0});
    formula_->parts_.push_back({{}, run, run, 0});
    if (!next_label_.empty()) formula_->parts_.back().label = words(next_label_.from, next_label_.to);
    next_label_ = {};
  }
  [[nodiscard, gnu::always_inline]] Run& add_run(SignatureKey first, SignatureKey last, std::int64_t gatherings) {
    static constexpr Run blank{};
    formula_->runs_.push_back(blank); // constructed in its place
    auto& run = formula_->runs_.back();
    set_signature(run.first, first, text_, letters_);
    set_signature(run.last, gatherings == 1 ? first : last, text_, letters_);
    run.gatherings = gatherings;
    return run;
  }
  /// Counts the last run to its part.
  void add_to_part(bool begins) {
    auto& parts = formula_->parts_;
    if (begins || !next_label_.empty()) begin_part();
    if (!parts.empty()) ++parts.back().end_run;
  }
  /// Puts the blank leaves in the order of the book. Notes may name a leaf twice.
  void order_blanks() {
    auto& blanks = formula_->blanks_;
    if (blanks.size() < 2) return;
    merge_sort(blanks, [](LeafOfBook const& a, LeafOfBook const& b) { return a < b; });
    keep_each_once(blanks);
  }
  template <class One> void keep(One const& one, FoundChange const& found) {
    if (formula_->changes_.empty()) formula_->changes_.reserve(2), formula_->forms_.reserve(2); // many come in pairs
    formula_->changes_.push_back(Change{one, {found.from, found.to}, found.doubtful});
    formula_->forms_.push_back(found.form);
  }
  /// Returns the leaves of a deletion or a cancel.
  [[nodiscard]] static FoldedLeaves leaves_of(FoundChange const& found) {
    return found.first == FoundChange::every_leaf ? FoldedLeaves::every() : FoldedLeaves{found.first, found.last};
  }
  /// Returns true if the two are single leaves that were one fold.
  [[nodiscard]] static bool are_fold(FoldedLeaves one, FoldedLeaves other, int folded) {
    return !one.are_every() && !other.are_every() && one.count(folded) == 1 && other.count(folded) == 1 &&
           one.first() + other.first() == folded + 1;
  }
  /// Adds a cancel. The two leaves of a fold that are cancelled together become one change.
  void cancel(FoundChange const& found) {
    auto const leaves = leaves_of(found);
    Cancel one{found.gathering, leaves, leaves.are_every()};
    auto const* const before = formula_->changes_.empty() ? nullptr : formula_->changes_.back().cancel();
    if (before != nullptr && found.form.separator == ChangeForm::Separator::point &&
        before->gathering == one.gathering &&
        are_fold(before->leaves, leaves, formula_->leaves_folded(one.gathering))) {
      one.of_fold = true;
      auto both = *before;
      both.of_fold = true;
      auto& last = formula_->changes_.back();
      last = Change{both, last.text(), last.doubtful()};
    }
    keep(one, found);
  }

public:
  static constexpr bool stores = true;
  /// Returns a receiver for text that is read a second time and not stored.
  [[nodiscard]] FormulaReader nobody() const { return {text_, nullptr, letters_}; }

  void run(FoundRun const& found) {
    if (formula_ == nullptr) return;
    auto& run = add_run(found.first, found.last, found.gatherings);
    run.leaves = found.leaves;
    run.first_inferred = found.first_inferred;
    run.last_inferred = found.last_inferred;
    run.unsigned_throughout = found.unsigned_throughout;
    run.begins_part = found.begins_part;
    add_to_part(found.begins_part);
  }
  /// Adds a plain run of a text that is stored. Most runs are plain, and need not become a FoundRun on their way.
  void run(PlainRun const& found, bool begins_part) {
    auto& run = add_run(found.first.key(), found.last.key(), found.gatherings());
    run.leaves.push(found.leaves);
    run.first_inferred = found.inferred;
    run.last_inferred = found.inferred && run.gatherings == 1;
    run.begins_part = begins_part;
    add_to_part(begins_part);
  }
  void change(FoundChange const& found) {
    if (formula_ == nullptr) return;
    switch (found.kind) {
    case Change::Kind::deletion:
      return keep(Deletion{found.gathering, leaves_of(found)}, found);
    case Change::Kind::cancel:
      return cancel(found);
    case Change::Kind::insertion: {
      Insertion one{found.gathering, found.first, found.leaves,         found.joined, found.inferred,
                    found.starred,   {},          stated_figure(found), found.lacking};
      if (found.named) one.name = signature_of(found.name, text_, letters_);
      return keep(one, found);
    }
    case Change::Kind::identity:
      return keep(identities_.next(found, formula_->changes_, text_, letters_), found);
    case Change::Kind::note:
      break;
    }
    auto const number = static_cast<std::uint32_t>(formula_->notes_.size());
    formula_->notes_.push_back(words(found.from, found.to));
    keep(Note{found.gathering, number}, found);
  }
  /// Returns the words of a part of the text, without tags and entities.
  [[nodiscard]] std::string words(std::size_t from, std::size_t to) const {
    return stored_words(text_.substr(from, to - from));
  }
  void blank(LeafOfBook const& leaf) {
    if (formula_ != nullptr) formula_->blanks_.push_back(leaf);
  }
  void warn(Doubt const& doubt) {
    if (formula_ == nullptr) return;
    if (formula_->warnings_.empty()) formula_->warnings_.reserve(4); // one doubt seldom comes alone
    formula_->warnings_.push_back(error(doubt));
  }
  void format(Format format) {
    if (formula_ != nullptr && !formula_->format_.value) formula_->format_.value = format;
  }
  void second_format(Format format) {
    if (formula_ != nullptr && !formula_->second_format_.value) formula_->second_format_.value = format;
  }
  void paper_class(std::size_t from, std::size_t to) {
    if (formula_ != nullptr) formula_->paper_class_ = text_.substr(from, to - from);
  }
  void gathered(Cycle const& leaves) {
    if (formula_ != nullptr && !formula_->gathered_.value) formula_->gathered_.value = leaves;
  }
  /// Takes the name of a volume, for the part that begins or for the part before it.
  void label(std::uint32_t from, std::uint32_t to, bool begins) {
    if (formula_ == nullptr) return;
    if (begins)
      next_label_ = {from, to};
    else {
      auto& parts = formula_->parts_;
      if (parts.empty()) parts.push_back({{}, 0, static_cast<std::uint32_t>(formula_->runs_.size()), 0});
      if (!parts.back().label) parts.back().label = words(from, to);
    }
  }
  void passage(Passage::Kind kind, std::uint32_t from, std::uint32_t to) {
    if (formula_ == nullptr) return;
    formula_->passages_.push_back({kind, {from, to}});
    if (kind != Passage::Kind::signing) return;
    if (!formula_->signing_.empty()) formula_->signing_ += ' ';
    auto const said = words(from, to);
    formula_->signing_ += said[0] == '[' ? said : '[' + said + ']'; // it is written in one way
  }
  void tail(std::size_t from, std::size_t to) {
    if (formula_ == nullptr) return;
    to = trimmed(text_, {from, to}, " ").to;
    if (auto& before = formula_->tail_; !before.empty()) before += before.back() == '.' ? " " : "; ";
    formula_->tail_ += words(from, to);
  }
  void imperfect() {
    if (formula_ != nullptr) formula_->runs_.back().imperfect = true;
  }

  /// Reads a formula. The result is constructed in the return value, because moving it twice means moving seven vectors
  /// and strings. `plain_first`: a text that is entirely plain need not be read by the grammar.
  static Expected<Formula> read(std::string_view text, Dialect dialect, Limits const& limits, bool plain_first = true) {
    if (is_too_long(text, limits)) return too_long(limits);
    auto const read_plain = [&](std::string_view plain) {
      return read_within(plain, dialect, limits, plain_first && PlainText<FormulaReader>::is_within(plain, limits));
    };
    return read_characters(text, read_plain, TextOfCharacters::Escapes::kept);
  }

private:
  // a function of its own, so that every return is of one object, which is then constructed where the caller has it
  static Expected<Formula> read_within(std::string_view text, Dialect dialect, Limits const& limits, bool plain_first) {
    Expected<Formula> result{std::in_place, Formula::Key{}};
    FormulaReader reader{text, &*result, dialect.letters};
    if (plain_first)
      if (auto const plain = PlainText<FormulaReader>{text, dialect, reader}.read(); plain.plain) {
        reader.finish(plain.leaves, plain.gatherings);
        return result;
      }
    reader.begin_again();
    Grammar<FormulaReader> grammar{text, dialect, limits, reader};
    if (grammar.read()) {
      reader.finish(grammar.leaves(), grammar.gatherings());
      if (grammar.shows_letters()) read_again(*result, text, grammar.dialect_shown(), limits);
    } else
      result = reader.error(grammar.error());
    return result;
  }
  /// Reads the formula in an alphabet with the letters that it has. This is the better reading if the numbers are the same
  /// and there is less to doubt: a run that passes over the letter may lack it (A-Z⁸ 2A-2V⁸ 2W⁸), and is then of 23.
  static void read_again(Formula& first, std::string_view text, Dialect dialect, Limits const& limits) {
    Formula second{Formula::Key{}};
    FormulaReader reader{text, &second, dialect.letters};
    Grammar<FormulaReader> grammar{text, dialect, limits, reader};
    if (!grammar.read() || grammar.leaves() != first.leaves_.value || grammar.gatherings() != first.gatherings_.value)
      return;
    if (second.warnings_.size() >= first.warnings_.size()) return;
    reader.finish(grammar.leaves(), grammar.gatherings());
    first = static_cast<Formula&&>(second);
  }
  /// Forgets what was read of a text that turned out not to be plain.
  void begin_again() noexcept {
    formula_->runs_.clear();
    formula_->changes_.clear();
    formula_->forms_.clear();
    formula_->notes_.clear();
    formula_->blanks_.clear();
    formula_->parts_.clear();
    formula_->warnings_.clear();
  }
  void finish(std::int64_t leaves, std::int64_t gatherings) {
    formula_->letters_.value = letters_;
    formula_->leaves_.value = leaves;
    formula_->gatherings_.value = gatherings;
    if (!formula_->parts_.empty()) count_leaves_of_parts(formula_->parts_, *formula_);
    order_blanks();
  }
};

BIFOLIUM_INLINE Expected<Formula> read_by_grammar(std::string_view text, Dialect dialect, Limits const& limits) {
  return FormulaReader::read(text, dialect, limits, false);
}

} // namespace detail

BIFOLIUM_INLINE Expected<Formula> read_formula(std::string_view text, Dialect dialect, Limits const& limits) {
  return detail::FormulaReader::read(text, dialect, limits);
}

} // namespace v0
} // namespace bifolium
