// SPDX-License-Identifier: MIT
/// Reads the list of the leaves that a copy has: "A1-8, B1 B2 C-D K8 facsimile".
#pragma once

#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {

/// The leaves of a copy, in its order.
struct LeavesPresent {
  std::vector<LeafSpan> spans{}; ///< the leaves as listed
  std::vector<Error> doubts{};   ///< names that can mean more than one leaf or gathering, with column
  /// Returns the doubts, with column: names that can mean more than one leaf or gathering.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept { return doubts; }
  friend bool operator==(LeavesPresent const&, LeavesPresent const&) = default;
};

namespace detail {

class LeavesReader {
  IdealCopy const& book_;
  std::string_view text_;
  Limits limits_;
  LeavesPresent read_{};
  std::size_t item_from_{}; // the first span of the last item
  // doubts come in the order of the text, so columns are counted from the last one
  std::size_t column_at_{0};
  std::uint32_t column_{1};

  /// One end of a run. `numbers` are those of its leaves in the ideal copy. For a leaf that the formula removes the
  /// range is empty and begins with the next leaf of the book.
  struct End {
    NumbersOfLeaves numbers{};
    std::optional<LeafOfBook> leaf{}; // no value for a whole gathering
    bool doubtful{};
    [[nodiscard]] bool gone() const noexcept { return leaf && numbers.to < numbers.from; }
  };

  [[nodiscard]] Error error(Problem problem, std::string_view word, std::int64_t limit = 0) const {
    auto const at = static_cast<std::size_t>(word.data() - text_.data());
    return error_at(problem, 1, column_of(text_, at), word.data(), word.size(), limit);
  }
  void doubt(std::string_view word) {
    auto const at = static_cast<std::size_t>(word.data() - text_.data());
    for (; column_at_ < at; column_at_ += decode(text_, column_at_).bytes) ++column_;
    read_.doubts.push_back(error_at(Problem::name_of_several, 1, column_, word.data(), word.size()));
  }
  /// Returns the number of the first leaf after one that the formula removes.
  [[nodiscard]] std::int64_t next(LeafOfBook const& leaf) const {
    auto const all = book_.numbers_of(leaf.gathering);
    auto from = all.from, to = all.to + 1;
    while (from < to)
      if (auto const middle = from + (to - from) / 2; *book_.leaf_of_number(middle) < leaf)
        from = middle + 1;
      else
        to = middle;
    return from;
  }
  [[nodiscard]] End end_of(LeafOfBook const& leaf, bool doubtful) const {
    auto const number = book_.leaf_number(leaf);
    auto const from = number ? *number : next(leaf);
    return {{from, number ? from : from - 1}, leaf, doubtful};
  }
  [[nodiscard]] Expected<End> end_of_run(std::string_view word) const {
    auto const leaf = find_reference(book_, word);
    if (leaf) return end_of(leaf->leaf, leaf->doubtful);
    if (auto const mark = read_signature(word, book_.letters())) {
      auto const gathering = book_.find(*mark);
      auto const inserted = book_.find_inserted(*mark);
      if (inserted && (!gathering || gathering->other_series)) return End{*inserted, {}, gathering.has_value()};
      if (gathering) return End{book_.numbers_of(gathering->gathering), {}, gathering->doubtful()};
    }
    return error(leaf.error().problem, word, leaf.error().limit);
  }
  /// Returns the end of a run such as A1-8 or a1-4: a number in the gathering or insertion of the first leaf.
  [[nodiscard]] Expected<End> figure_end(LeafOfBook const& leaf, std::int64_t figure, std::string_view word) const {
    int most = 0;
    if (auto const same = leaf_of_figure(book_, leaf, figure, most)) return end_of(*same, false);
    return error(Problem::no_such_leaf, word, most);
  }
  std::optional<Error> add(std::string_view word, std::int64_t from, std::int64_t to) {
    if (from < 1 || to > book_.leaves()) return error(Problem::reference_not_in_book, word);
    if (to < from) return error(Problem::run_goes_backwards, word);
    read_.spans.push_back(span_of_numbers(book_, from, to));
    return {};
  }
  static std::int64_t whole_number(std::string_view text) {
    std::int64_t n = text.empty() ? -1 : 0;
    for (char c : text) n = n < 0 || !is_digit(c) || n > 999999999999 ? -1 : n * 10 + (c - '0');
    return n;
  }
  /// Reads a word for the leaves before it, with or without parentheses: facsimile, (facsimile).
  [[nodiscard]] static std::optional<LeafInCopy> state_of(std::string_view word) {
    if (word.starts_with('(')) word.remove_prefix(1);
    while (word.ends_with(')') || word.ends_with('.')) word.remove_suffix(1);
    if (word == "facs") return LeafInCopy::facsimile;
    for (auto const state : {LeafInCopy::blank, LeafInCopy::mounted, LeafInCopy::supplied, LeafInCopy::facsimile})
      if (word == to_words(state)) return state;
    return std::nullopt;
  }
  std::optional<Error> run(std::string_view word, std::string_view head, std::string_view tail) {
    auto const first = end_of_run(head);
    if (!first) return first.error();
    auto last = *first;
    if (tail.data() != nullptr) {
      auto const figure = whole_number(tail);
      auto const end = figure >= 0 && first->leaf ? figure_end(*first->leaf, figure, word) : end_of_run(tail);
      if (!end) return end.error();
      last = *end;
    }
    if (first->doubtful || last.doubtful) doubt(word);
    if (first->leaf && last.leaf && *last.leaf < *first->leaf) return error(Problem::run_goes_backwards, word);
    if (last.numbers.to + 1 < first->numbers.from) return error(Problem::run_goes_backwards, word);
    // a leaf that the formula removes is a span by itself
    if (first->gone()) read_.spans.push_back(span_of_leaf(book_, *first->leaf));
    if (first->numbers.from <= last.numbers.to)
      if (auto wrong = add(word, first->numbers.from, last.numbers.to)) return wrong;
    if (last.gone() && last.leaf != first->leaf) read_.spans.push_back(span_of_leaf(book_, *last.leaf));
    return {};
  }
  std::optional<Error> item(std::string_view word) {
    if (word == "in" && !read_.spans.empty()) return {}; // K8 in facsimile
    if (auto const state = state_of(word)) {
      if (read_.spans.empty()) return error(Problem::not_a_reference, word);
      for (auto i = item_from_; i < read_.spans.size(); ++i) read_.spans[i].state = *state;
      return {};
    }
    item_from_ = read_.spans.size();
    auto dash = word.size();
    std::string_view tail;
    for (std::size_t i = 0; i < word.size() && dash == word.size(); i += decode(word, i).bytes)
      if (i > 0 && is_dash(decode(word, i).value)) dash = i, tail = word.substr(i + decode(word, i).bytes);
    auto const head = word.substr(0, dash);
    if (!head.starts_with("f.")) return run(word, head, tail);
    auto const from = whole_number(head.substr(2)), to = dash == word.size() ? from : whole_number(tail); // by number
    return from < 0 || to < 0 ? error(Problem::not_a_reference, word) : add(word, from, to);
  }

public:
  LeavesReader(IdealCopy const& book, std::string_view text, Limits const& limits)
      : book_{book}, text_{text}, limits_{limits} {}
  Expected<LeavesPresent> read() {
    if (is_too_long(text_, limits_)) return too_long(limits_);
    constexpr char const* separators = " ,;\t\n\r";
    for (std::size_t at = 0; (at = text_.find_first_not_of(separators, at)) != std::string_view::npos;) {
      auto end = text_.find_first_of(separators, at);
      if (end == std::string_view::npos) end = text_.size();
      auto const word = text_.substr(at, end - at);
      if (auto const wrong = item(word)) return *wrong;
      if (read_.spans.size() > limits_.runs) return error(Problem::too_many_runs, word, limits_.runs);
      at = end;
    }
    return static_cast<LeavesPresent&&>(read_);
  }
};

} // namespace detail

/// Reads the leaves of a copy, in the order of the copy: references and runs of them, separated by blanks, commas or
/// semicolons: "A1-8, B1 B2 C-D f.30-32". A gathering alone means all its leaves. Inserted leaves are named as the
/// formula prints them (χ1, a1-4) or by the leaf before them (A3+1). The list may name a leaf that the formula removes,
/// since some copies still have it. A word after leaves gives their state: facsimile, supplied, blank, mounted. Errors,
/// with the column: those of read_reference; run_goes_backwards; the limits of core/limits.hpp.
[[nodiscard]] inline Expected<LeavesPresent> read_leaves_present(IdealCopy const& book, std::string_view text,
                                                                 Limits const& limits = {}) {
  return detail::LeavesReader{book, text, limits}.read();
}

} // namespace v0
} // namespace bifolium
