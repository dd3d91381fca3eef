// SPDX-License-Identifier: MIT
/// Reads a text that consists of plain runs only, perhaps with deleted leaves or a blank leaf after some of them: A-K⁸
/// L⁴(−L4), A-K⁸ (K8 blank). Most formulas are such, and they need no grammar: no change names a gathering far away, and the
/// only doubts are those of runs. What is found is passed to the same sinks that the grammar has, so a count and a reading
/// are the same here too.
///
///   plain   = run , { separators , run } ;
///   run     = marks , [ count ] , [ [ blank ] , "(" , ( minus , leaf , { "," , leaf } , [ ", blank" , [ "?" ] ]
///           | "last leaf blank" | leaf , " blank" ) , ")" ] ;
#pragma once

#include <bifolium/collation/detail/scan/found_change.hpp>
#include <bifolium/collation/detail/scan/scan_plain.hpp>
#include <bifolium/core/limits.hpp>

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
  /// The gatherings of the last run, for what is less frequent than a run. The run itself is then not written to memory.
  struct Gatherings {
    PlainMark first, last;
    int leaves;
    /// Returns the index of the last one.
    [[nodiscard]] constexpr int end() const noexcept { return last.rank - first.rank; }
    /// Returns true if the leaf is one of theirs.
    [[nodiscard]] constexpr bool have(PlainLeaf const& one) const noexcept {
      return one.end != 0 && one.of.is_small() == first.is_small() && one.of.rank >= first.rank &&
             one.of.rank <= last.rank && one.leaf >= 1 && one.leaf <= leaves && !one.of.outside;
    }
    /// Returns true if one leaf of a list comes after another, and the two are not one fold.
    [[nodiscard]] constexpr bool come_in_order(PlainLeaf const& one, PlainLeaf const& other,
                                               bool spaced) const noexcept {
      if (other.named) return other.of.rank > one.of.rank;
      return !spaced && other.leaf > one.leaf && other.leaf + one.leaf != leaves + 1;
    }
  };

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
  /// Passes on a change of the last run, which names leaf `leaf` of its gathering `index`, from byte `from` to `to`.
  constexpr void pass_on(Change::Kind kind, std::int64_t index, int leaf, ChangeForm::Separator separator,
                         std::size_t from, std::size_t to) {
    FoundChange change;
    change.kind = kind;
    change.gathering = {runs_ - 1, index};
    change.first = change.last = leaf;
    change.from = static_cast<std::uint32_t>(from);
    change.to = static_cast<std::uint32_t>(to);
    change.form = {runs_ - 1, separator, false};
    sink_.change(change);
  }
  /// Passes on words from byte `from` to `to` that call one leaf of the last run blank.
  constexpr void pass_on_blank(Gatherings const& of, std::int64_t index, int leaf, ChangeForm::Separator separator,
                               std::size_t from, std::size_t to) {
    if constexpr (Sink::stores) {
      sink_.blank({{runs_ - 1, index}, leaf});
      pass_on(Change::Kind::note, of.end(), 0, separator, from, to);
    }
  }
  constexpr void warn(Problem problem, std::size_t from, std::size_t to, std::int64_t limit = 0) {
    sink_.warn({problem, static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(to), limit});
  }
  /// Tells the doubts of a run from byte `from` to `to`, in the order of the grammar. `reached` is the place of the last
  /// letter before it.
  [[gnu::noinline]] constexpr void doubt(Gatherings of, int reached, std::size_t from, std::size_t to) {
    bool const again = of.first.rank <= reached;
    if (of.leaves % 2 != 0 && of.leaves != 1) warn(Problem::odd_gathering, from, to);
    // a single J or U is a letter that such an alphabet has in another shape
    if ((of.first.outside || of.last.outside) && (of.end() > 0 || again))
      warn(Problem::letter_not_in_alphabet, from, to);
    if (again) warn(Problem::series_starts_again, from, to);
    if (reached != 0 && of.first.rank > reached + 1) warn(Problem::letters_skipped, from, to);
    if (reached == 0 && !of.last.outside && may_be_roman_run(of.first.key(), of.last.key()))
      warn(Problem::letters_or_roman_numbers, from, to, of.end() + 1);
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
    warn(Problem::count_supplied, from, run.end, 8);
    return true;
  }
  /// Returns true if the text continues with these words.
  [[nodiscard]] constexpr bool continues(std::size_t at, std::string_view words) const noexcept {
    return text_.substr(at, words.size()) == words;
  }
  /// Takes a parenthesis about leaves of the run before it. `deleted` is set to the number of those that it deletes.
  [[gnu::noinline]] constexpr bool parenthesis(Gatherings of, std::size_t& at, int& deleted) {
    auto const from = scanner_.after_minus(at);
    if (from == 0 ? !blank_leaf(of, at) : !deletions(of, from, at, deleted)) return false;
    return at == text_.size() || text_[at] == ' ' || text_[at] == '.';
  }
  /// Takes the names of deleted leaves. There may be a doubt of two that are not in order, or that are one fold.
  constexpr bool deletions(Gatherings const& of, std::size_t from, std::size_t& at, int& deleted) {
    PlainLeaf before;
    for (;; ++deleted) {
      auto const one = scanner_.leaf(from, before.of);
      auto const separator = deleted == 0 ? ChangeForm::Separator::opens : ChangeForm::Separator::comma;
      bool const in_order = deleted == 0 ? one.named : of.come_in_order(before, one, text_[from - 1] == ' ');
      if (!of.have(one) || !in_order) return false;
      auto const index = one.of.rank - of.first.rank;
      if constexpr (Sink::stores) pass_on(Change::Kind::deletion, index, one.leaf, separator, from, one.end);
      at = one.end;
      if (deleted == 0 && continues(at, ", blank")) {
        auto const words = at + 2, end = words + (continues(at, ", blank?") ? 6U : 5U);
        pass_on_blank(of, index, one.leaf, ChangeForm::Separator::comma, words, end);
        at = end;
      }
      if (continues(at, ")")) return ++at, ++deleted, true;
      if (at != one.end || !continues(at, ",")) return false;
      from = continues(at, ", ") ? at + 2 : at + 1;
      before = one;
    }
  }
  /// Takes (last leaf blank) or (K8 blank).
  constexpr bool blank_leaf(Gatherings const& of, std::size_t& at) {
    constexpr std::string_view last{"(last leaf blank)"}, blank{" blank)"};
    auto const from = at + 1;
    if (continues(at, last)) {
      at += last.size();
      pass_on_blank(of, of.end(), of.leaves, ChangeForm::Separator::opens, from, at - 1);
      return true;
    }
    auto const one = scanner_.leaf(from, {});
    if (!of.have(one) || !one.named || !continues(one.end, blank)) return false;
    at = one.end + blank.size();
    pass_on_blank(of, one.of.rank - of.first.rank, one.leaf, ChangeForm::Separator::opens, from, at - 1);
    return true;
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
    return text.size() / 3 < limits.runs && text.size() / 2 < limits.changes && !is_too_long(text, limits);
  }
  [[nodiscard]] constexpr PlainCount read() {
    PlainCount count;
    std::size_t first_end = 0;
    bool begins_early = false; // an alphabet begins at A or B
    for (std::size_t at = 0; at < text_.size();) {
      auto run = scanner_.run(at);
      if (run.end == 0 && !supply_count(run, at)) return {};
      auto& reached = reached_[run.first.is_small() ? 1 : 0];
      if (PlainScanner::follows(reached, run) && !run.is_odd() && !run.is_outside())
        reached = run.last.rank;
      else if (run.first.rank == reached && (run.first.outside || (run.first.letter | 0x20) == 'v'))
        return {}; // A-I⁸ J⁸, U⁸ V⁸: the grammar looks whether the alphabet has the letter
      else {
        doubt({run.first, run.last, run.leaves}, reached, at, run.end);
        if (run.last.rank > reached) reached = run.last.rank;
      }
      if constexpr (Sink::stores) pass_on(run);
      // runs of at most 99 alphabets cannot exceed 64 bits in a text that fits in memory
      count.gatherings += run.gatherings();
      count.leaves += run.gatherings() * run.leaves;
      begins_early = begins_early || (run.first.letter | 0x20) <= 'b' || run.last.multiple != run.first.multiple;
      if (first_end == 0) first_end = run.end;
      at = run.end;
      if (at == text_.size()) break;
      if (auto open = text_[at] == ' ' ? at + 1 : at; open < text_.size()) {
        auto const next = text_[open];
        if (open != at && is_latin_letter(next)) { // one blank before the next run, as most runs have
          at = open;
          continue;
        }
        if (next == '(') {
          int deleted = 0;
          if (!parenthesis({run.first, run.last, run.leaves}, open, deleted)) return {};
          count.leaves -= deleted;
          at = open;
        }
      }
      if (!separators(at)) return {};
    }
    count.plain = !text_.empty();
    if (!begins_early && count.gatherings > 1) warn(Problem::alphabet_begins_late, 0, first_end);
    return count;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
