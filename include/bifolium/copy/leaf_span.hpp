// SPDX-License-Identifier: MIT
/// Leaves that follow one another in the ideal copy, kept by their ends: a copy is listed in a few spans however many
/// leaves it has. Reading one: "A1-8, B1 B2 C-D".
#pragma once

#include <bifolium/collation/reference.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// From one leaf to another, both counted. The numbers are those of the book; 0 for a leaf the ideal copy lacks, which
/// stands by itself.
struct LeafSpan {
  LeafOfBook first{};  ///< the leaf it begins with
  LeafOfBook last{};   ///< the leaf it ends with, which belongs to it
  std::int64_t from{}; ///< number of the first leaf in the ideal copy, from 1
  std::int64_t to{};   ///< number of the last one
  /// Its leaves are of the ideal copy.
  [[nodiscard]] constexpr bool in_ideal() const noexcept { return from > 0; }
  /// How many leaves it has; 1 where it is not of the ideal copy.
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept { return to - from + 1; }
  friend constexpr bool operator==(LeafSpan const&, LeafSpan const&) = default;
};

/// The span of the leaves numbered so. pre: 1 <= from <= to <= leaves of the formula.
[[nodiscard]] inline LeafSpan span_of_numbers(Formula const& formula, std::int64_t from, std::int64_t to) {
  auto const first = leaf_of_number(formula, from), last = leaf_of_number(formula, to);
  if (!first || !last || to < from) broken("the book has no such leaves");
  return {*first, *last, from, to};
}
/// One leaf. pre: of a gathering of the formula.
[[nodiscard]] inline LeafSpan span_of_leaf(Formula const& formula, LeafOfBook const& leaf) {
  auto const number = leaf_number(formula, leaf).value_or(0);
  return {leaf, leaf, number, number};
}

namespace detail {

/// The numbers of a gathering's leaves; to < from where the ideal copy has none of it.
struct NumbersOfGathering {
  std::int64_t from{}, to{};
};
inline NumbersOfGathering numbers_of(Formula const& formula, GatheringAt at) {
  auto const before = leaves_before(formula, at);
  return {before + 1, before + formula.leaves_folded(at) + leaves_gained(formula, at)};
}
inline std::int64_t whole_number(std::string_view text) {
  std::int64_t n = text.empty() ? -1 : 0;
  for (char c : text) n = n < 0 || !is_digit(c) || n > 999999999999 ? -1 : n * 10 + (c - '0');
  return n;
}

class LeavesReader {
  Formula const& formula_;
  std::string_view text_;
  std::vector<LeafSpan> read_{};

  [[nodiscard]] Error error(Problem problem, std::string_view word, std::int64_t limit = 0) const {
    auto const at = static_cast<std::size_t>(word.data() - text_.data());
    return error_at(problem, 1, column_of(text_, at), word.data(), word.size(), limit);
  }
  /// One end of a run: a leaf, or a gathering (leaf 0).
  [[nodiscard]] Expected<LeafOfBook> end_of_run(std::string_view word) const {
    auto const leaf = find_reference(formula_, word);
    if (leaf) return leaf->leaf;
    auto const mark = SignatureScanner{word, formula_.letters()}.scan(0);
    if (mark && mark.end == word.size())
      if (auto const gathering = find_gathering(formula_, mark.signature)) return LeafOfBook{*gathering, 0, 0};
    return error(leaf.error().problem, word, leaf.error().limit);
  }
  std::optional<Error> add(std::string_view word, std::int64_t from, std::int64_t to) {
    if (from < 1 || to > leaf_count(formula_)) return error(Problem::reference_not_in_book, word);
    if (to < from) return error(Problem::run_goes_backwards, word);
    read_.push_back(span_of_numbers(formula_, from, to));
    return {};
  }
  std::optional<Error> item(std::string_view word) {
    std::size_t dash = word.size(), behind = word.size();
    for (std::size_t i = 0; i < word.size(); i += decode(word, i).bytes)
      if (i > 0 && is_dash(decode(word, i).value) && dash == word.size()) dash = i, behind = i + decode(word, i).bytes;
    auto const head = word.substr(0, dash), tail = word.substr(behind);
    if (head.starts_with("f.")) { // by number
      auto const from = whole_number(head.substr(2)), to = dash == word.size() ? from : whole_number(tail);
      return from < 0 || to < 0 ? error(Problem::not_a_reference, word) : add(word, from, to);
    }
    auto const first = end_of_run(head);
    if (!first) return first.error();
    auto last = *first;
    if (dash < word.size()) {
      if (auto const figure = whole_number(tail); figure >= 0 && first->leaf != 0) { // A1-8
        auto const folded = formula_.leaves_folded(first->gathering);
        if (figure < 1 || figure > folded) return error(Problem::no_such_leaf, word, folded);
        last.leaf = static_cast<int>(figure);
        last.inserted = 0;
      } else {
        auto const end = end_of_run(tail);
        if (!end) return end.error();
        last = *end;
      }
    }
    if (last < *first && last.leaf != 0) return error(Problem::run_goes_backwards, word);
    if (last.leaf == 0 && last.inserted == 0 && last.gathering < first->gathering)
      return error(Problem::run_goes_backwards, word);
    // where the formula takes away a leaf that is named, it stands by itself
    bool const first_gone = first->leaf > 0 && !leaf_number(formula_, *first);
    bool const last_gone = last.leaf > 0 && !leaf_number(formula_, last);
    if (first_gone) read_.push_back(span_of_leaf(formula_, *first));
    auto const from =
        first->leaf == 0 && first->inserted == 0 ? numbers_of(formula_, first->gathering).from : next(*first);
    auto const to = last.leaf == 0 && last.inserted == 0 ? numbers_of(formula_, last.gathering).to
                    : last_gone                          ? next(last) - 1
                                                         : *leaf_number(formula_, last);
    if (from <= to)
      if (auto const wrong = add(word, from, to)) return wrong;
    if (last_gone && last != *first) read_.push_back(span_of_leaf(formula_, last));
    return {};
  }
  /// The number of a leaf, or of the first one behind it that the ideal copy has.
  [[nodiscard]] std::int64_t next(LeafOfBook const& leaf) const {
    if (auto const number = leaf_number(formula_, leaf)) return *number;
    auto const end = numbers_of(formula_, leaf.gathering);
    for (int k = leaf.leaf; k <= formula_.leaves_folded(leaf.gathering); ++k) {
      if (k > leaf.leaf)
        if (auto const number = leaf_number(formula_, {leaf.gathering, k, 0})) return *number;
      if (auto const number = leaf_number(formula_, {leaf.gathering, k, 1})) return *number;
    }
    return end.to + 1;
  }

public:
  LeavesReader(Formula const& formula, std::string_view text) : formula_{formula}, text_{text} {}
  Expected<std::vector<LeafSpan>> read() {
    constexpr char const* parts = " ,;\t\n\r";
    for (std::size_t at = 0; (at = text_.find_first_not_of(parts, at)) != std::string_view::npos;) {
      auto end = text_.find_first_of(parts, at);
      if (end == std::string_view::npos) end = text_.size();
      if (auto const wrong = item(text_.substr(at, end - at))) return *wrong;
      at = end;
    }
    return static_cast<std::vector<LeafSpan>&&>(read_);
  }
};

} // namespace detail

/// Reads the leaves present, in the order of the copy: references and runs of them, parted by blanks, commas or semicolons:
/// "A1-8, B1 B2 C-D f.30-32". A gathering alone means all its leaves. A leaf that the formula takes away may be named, as
/// copies have such leaves. error: as read_reference, run_goes_backwards, with the column.
[[nodiscard]] inline Expected<std::vector<LeafSpan>> read_leaves_present(Formula const& formula,
                                                                         std::string_view text) {
  return detail::LeavesReader{formula, text}.read();
}

namespace detail {

/// A span as the trade writes it: C, C-D, B3, B3-5, A7-B2.
inline std::string span_words(Formula const& formula, LeafSpan const& span) {
  auto const name = [&](LeafOfBook const& leaf) { return write_reference(formula, {leaf, LeafSide::not_said}); };
  if (!span.in_ideal() || span.from == span.to) return name(span.first);
  auto const head = numbers_of(formula, span.first.gathering), tail = numbers_of(formula, span.last.gathering);
  auto const mark = [&](GatheringAt at) { return std::string{to_text(formula.signature(at)).view()}; };
  if (head.from == span.from && tail.to == span.to && head.to > head.from) {
    auto text = mark(span.first.gathering);
    if (span.first.gathering != span.last.gathering) text += '-' + mark(span.last.gathering);
    return text;
  }
  bool const figure = span.first.gathering == span.last.gathering && span.last.inserted == 0;
  return name(span.first) + '-' + (figure ? std::to_string(span.last.leaf) : name(span.last));
}

} // namespace detail

} // namespace v0
} // namespace bifolium
