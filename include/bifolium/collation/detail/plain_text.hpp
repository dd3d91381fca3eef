// SPDX-License-Identifier: MIT
/// Reads a text that consists of plain runs only, perhaps with a deleted leaf after some of them: A-K⁸ L⁴(−L4). Most
/// formulas are such, and they need no grammar: no change names a gathering far away, and the only doubt is a count that
/// is omitted and means eight. What is found is passed to the same sinks that the grammar has, so a count and a reading
/// are the same here too.
#pragma once

#include <bifolium/collation/detail/resolver.hpp>
#include <bifolium/collation/detail/scan_plain.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The totals of a text that is entirely plain; of any other text `plain` is false.
struct PlainCount {
  bool plain{};
  std::int64_t leaves{}, gatherings{};
};

/// Reads a text that is entirely plain, and passes on its runs and changes. At the first part that is not plain it stops,
/// and the grammar must read the text from its beginning.
template <class Sink> class PlainText {
  std::string_view text_;
  PlainScanner scanner_;
  bool omitted_is_eight_;
  Sink& sink_;
  int reached_[2]{}; // the highest places of the capitals and the small letters of this part
  std::uint32_t runs_{};
  bool part_{false}; // true after a semicolon since the last run

  constexpr void pass_on(PlainRun const& run) {
    sink_.run(run, part_);
    part_ = false;
    ++runs_;
  }
  constexpr void pass_on(PlainDeletion const& deletion, PlainRun const& of) {
    FoundChange change;
    change.kind = Change::Kind::deletion;
    change.gathering = {runs_ - 1, deletion.of.rank - of.first.rank};
    change.first = change.last = deletion.leaf;
    change.from = static_cast<std::uint32_t>(deletion.from);
    change.to = static_cast<std::uint32_t>(deletion.end - 1);
    change.form = {runs_ - 1, ChangeForm::Separator::opens, false};
    sink_.change(change);
  }
  /// Gives a run eight leaves if it has no count and the dialect means this. What comes next in a plain text is the end,
  /// a change or another run, and none of them is the count of this one. But a full point may make it a heading, and 8o at
  /// the beginning is a format.
  constexpr bool supply_count(PlainRun& run, std::size_t from) {
    if (!omitted_is_eight_ || run.marks_end == 0 || (from == 0 && is_digit(text_[0]))) return false;
    auto const rest = text_.substr(run.marks_end);
    bool const blank = rest.size() > 1 && rest[0] == ' ' &&
                       (is_latin_letter(rest[1]) || is_digit(rest[1]) || rest[1] == '[' || rest[1] == '(');
    if (!blank && !rest.empty() && rest[0] != ';' && rest[0] != '(' && rest != ".") return false;
    run.leaves = 8;
    run.end = run.marks_end;
    sink_.warn({Problem::count_supplied, static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(run.end), 8});
    return true;
  }
  /// Takes the deleted leaf of the run before it. A second one could be the same leaf.
  constexpr bool deletion(PlainRun const& run, std::size_t& at) {
    auto const found = scanner_.deletion(at);
    if (found.end == 0 || found.of.is_small() != run.first.is_small() || found.of.rank < run.first.rank ||
        found.of.rank > run.last.rank || found.leaf < 1 || found.leaf > run.leaves)
      return false;
    if constexpr (Sink::stores) pass_on(found, run);
    at = found.end;
    return at == text_.size() || text_[at] == ' ' || text_[at] == '.';
  }
  /// Takes blanks, full stops, commas and semicolons between runs. A semicolon begins a part, whose letters begin again.
  constexpr bool separators(std::size_t& at) noexcept {
    int points = 0;
    for (; at < text_.size(); ++at) {
      auto const c = text_[at];
      if (c == ' ' || c == ',') continue;
      if (c == '.') {
        if (++points > 2) return false; // A-K⁸ ...: more gatherings are left out
      } else if (c == ';')
        reached_[0] = reached_[1] = 0, part_ = true;
      else
        break;
    }
    return true;
  }

public:
  constexpr PlainText(std::string_view text, Dialect dialect, Sink& sink) noexcept
      : text_{text}, scanner_{text, dialect}, omitted_is_eight_{dialect.omitted == Omitted::eight}, sink_{sink} {}

  /// Returns true if a text of this size is so short that no plain text exceeds these limits.
  [[nodiscard]] static constexpr bool is_within(std::string_view text, Limits const& limits) noexcept {
    return text.size() / 3 < limits.runs && text.size() / 3 < limits.changes && !is_too_long(text, limits);
  }
  [[nodiscard]] constexpr PlainCount read() {
    PlainCount count;
    for (std::size_t at = 0; at < text_.size();) {
      auto run = scanner_.run(at);
      if (run.end == 0 && !supply_count(run, at)) return {};
      auto& reached = reached_[run.first.is_small() ? 1 : 0];
      if (!PlainScanner::follows(reached, run)) return {};
      reached = run.last.rank;
      if constexpr (Sink::stores) pass_on(run);
      // runs of at most 99 alphabets cannot exceed 64 bits in a text that fits in memory
      count.gatherings += run.gatherings();
      count.leaves += run.gatherings() * run.leaves;
      at = run.end;
      if (at == text_.size()) break;
      if (auto open = text_[at] == ' ' ? at + 1 : at; open < text_.size()) {
        auto const next = text_[open];
        if (open != at && is_latin_letter(next)) { // one blank before the next run, as most runs have
          at = open;
          continue;
        }
        if (next == '(') {
          if (!deletion(run, open)) return {};
          --count.leaves;
          at = open;
        }
      }
      if (!separators(at)) return {};
    }
    count.plain = !text_.empty();
    return count;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
