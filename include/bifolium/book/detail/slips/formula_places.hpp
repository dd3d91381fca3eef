// SPDX-License-Identifier: MIT
/// Finds the place of each run and of each parenthesis in the text of a formula. The reader gives the meaning of a
/// formula without these places. So the pieces of the text are read again one by one until each run is found, and no
/// second grammar is needed. What is read again is limited, since in the text of a stranger each run may be looked for in
/// all the rest: places that were not found by then are missing, and are told to be.
#pragma once

#include <bifolium/book/detail/slips/text_edit.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/utf8.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A parenthesis that changes the number of leaves.
struct ChangePlace {
  TextSpan span{};
  std::int32_t added{};
};

class FormulaPlaces {
  std::string_view text_;
  Dialect dialect_;
  std::size_t left_; // bytes that may still be read again
  bool all_changes_{true};
  std::vector<TextSpan> runs_{};
  std::vector<ChangePlace> changes_{};
  std::vector<bool> omitted_{};
  std::size_t end_{};
  std::vector<std::size_t> closed_{}; // of each byte: the end of the parenthesis that begins there

  /// Returns the end of a parenthesis that begins at `at`, or `at` if there is none. )( and (: are marks.
  [[nodiscard]] std::size_t parenthesis(std::size_t at) const {
    if (text_[at] != '(' || (at > 0 && text_[at - 1] == ')' && at + 1 < text_.size() && text_[at + 1] != '-' &&
                             static_cast<unsigned char>(text_[at + 1]) >= 0x80))
      return at;
    return closed_[at];
  }
  /// Finds where each parenthesis ends. One that is not closed ends where it begins. They are found together, as a text may
  /// open many and close none.
  void close_parentheses() {
    closed_.resize(text_.size());
    std::vector<std::size_t> open;
    for (std::size_t at = 0; at < text_.size(); ++at) {
      closed_[at] = at;
      if (text_[at] == '(') open.push_back(at);
      if (text_[at] != ')' || open.empty()) continue;
      closed_[open.back()] = at + 1;
      open.pop_back();
    }
  }
  [[nodiscard]] static bool separates(char32_t c) { return is_blank(c) || c == ',' || c == ';' || c == '\n'; }
  [[nodiscard]] std::size_t item_begin(std::size_t at) const {
    while (at < text_.size()) {
      if (auto const end = parenthesis(at); end != at) {
        at = end;
        continue;
      }
      auto const point = decode(text_, at);
      if (!separates(point.value)) break;
      at += point.bytes;
    }
    return at;
  }
  [[nodiscard]] std::size_t item_end(std::size_t at) const {
    auto const from = at;
    while (at < text_.size()) {
      if (at > from && parenthesis(at) != at) break;
      auto const point = decode(text_, at);
      if (separates(point.value)) break;
      at += point.bytes;
    }
    return at;
  }
  [[nodiscard]] static bool same_mark(Signature const& a, Signature const& b) {
    return a.mark() == b.mark() && a.letter_number() == b.letter_number() && a.multiple() == b.multiple();
  }
  /// Returns true if these bytes are the run. Sets `omitted` to true if they have no count.
  [[nodiscard]] bool reads_as(std::size_t from, std::size_t to, Run const& run, bool& omitted) {
    if (!may_read(to - from)) return false;
    auto alone = dialect_;
    alone.omitted = Omitted::eight;
    auto const read = read_formula(text_.substr(from, to - from), alone);
    if (!read || read->runs().size() != 1 || read->format())
      return false; // a format statement does not belong to a run
    auto const& found = read->runs()[0];
    omitted = false;
    for (auto const& warning : read->warnings())
      if (warning.problem == Problem::count_supplied) omitted = true;
    return same_mark(found.first, run.first) && same_mark(found.last, run.last) &&
           (omitted || found.leaves == run.leaves);
  }
  /// Returns how many bytes may be read in all: any number of times a text of ordinary length, so many times a long one.
  [[nodiscard]] std::size_t allowed(std::size_t times) const { return times * text_.size() + (std::size_t{1} << 16U); }
  [[nodiscard]] bool may_read(std::size_t bytes) {
    if (bytes > left_) return left_ = 0, false;
    left_ -= bytes;
    return true;
  }
  void find_runs(Formula const& formula) {
    std::size_t at = 0;
    for (auto const& run : formula.runs()) {
      TextSpan place;
      bool omitted = false;
      for (auto from = item_begin(at); from < text_.size() && place.empty() && left_ > 0;
           from = item_begin(item_end(from))) {
        auto to = item_end(from);
        for (int items = 0; items < 4 && to <= text_.size(); ++items) {
          if (reads_as(from, to, run, omitted)) {
            // the full stop of a note does not belong to its last run
            if (to > from && text_[to - 1] == '.' && reads_as(from, to - 1, run, omitted)) --to;
            place = {from, to};
            break;
          }
          if (to == text_.size()) break;
          to = item_end(item_begin(to));
        }
        if (item_end(from) == from) break;
      }
      runs_.push_back(place);
      omitted_.push_back(!place.empty() && omitted);
      if (!place.empty()) at = end_ = place.to;
    }
  }
  void find_changes(std::int64_t leaves) {
    for (std::size_t at = 0; at < text_.size(); ++at) {
      auto const end = parenthesis(at);
      if (end == at) continue;
      if (may_read(text_.size())) {
        std::string without{text_};
        without.replace(at, end - at, end - at, ' ');
        auto const count = count_formula(without, dialect_);
        if (count && count->leaves != leaves)
          changes_.push_back({{at, end}, static_cast<std::int32_t>(leaves - count->leaves)});
      } else
        all_changes_ = false;
      if (end_ != 0 && at >= end_ && end > end_ && after_blanks(text_, end_) == at) end_ = end;
      at = end - 1;
    }
  }

public:
  /// What is looked for.
  enum class Of : std::uint8_t { runs, runs_and_changes };
  FormulaPlaces(std::string_view text, Formula const& formula, Dialect dialect, Of of = Of::runs_and_changes)
      : text_{text}, dialect_{dialect}, left_{allowed(64)} {
    if (text_.find('(') != text_.npos) close_parentheses();
    find_runs(formula);
    left_ = allowed(16); // each reads the whole text
    if (of == Of::runs_and_changes && text_.find('(') != text_.npos) find_changes(formula.leaves());
  }
  /// Returns true if every parenthesis that changes the number of leaves was found.
  [[nodiscard]] bool has_all_changes() const { return all_changes_; }
  /// Adds a parenthesis that could not be read, but seems to change the number of leaves.
  void add(ChangePlace const& change) {
    changes_.push_back(change);
    if (change.span.from >= end_) end_ = change.span.to;
  }
  [[nodiscard]] std::vector<TextSpan> const& runs() const { return runs_; }
  [[nodiscard]] std::vector<ChangePlace> const& changes() const { return changes_; }
  /// Returns true if the run has no leaf count in the text.
  [[nodiscard]] bool omitted(std::size_t run) const { return omitted_[run]; }
  /// Returns the end of the last run including the parentheses after it.
  [[nodiscard]] std::size_t end() const { return end_; }
  [[nodiscard]] bool complete() const {
    for (auto const& run : runs_)
      if (run.empty()) return false;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
