// SPDX-License-Identifier: MIT
/// Reads the evidence of leaves from text: a line `gathering of 8`, then one leaf a line (or separated by `;` or `,`), or
/// several leaves with the same evidence, such as `2-7`:
///
///     gathering of 8
///     1 head-of-gutter vertical    # where the watermark is, and how the chain lines run
///     2 absent                     # somebody looked for a mark: there is none
///     1.8 conjugate                # joined at the gutter
///     3 disjunct                   # joined to no leaf
///     2 bolt head 3                # its head is folded, with leaf 3 on the other side
///     5 deckle tail
///     8 hole at tail fore-edge     # a hole of the press points, near the lower outer corner
///
/// Words for the place of the mark: centre, gutter, head-of-gutter, fore-edge, head-edge, tail-edge, marked
/// (somewhere), absent. For chain lines: vertical, horizontal. For edges: bolt, deckle or cut, then head, tail or
/// fore-edge, then for a bolt the leaf on its other side if it is known. For the holes of the press points: no-hole,
/// or hole, and if its place was noted, `at` and one or two of head, tail, gutter and fore-edge. Another `gathering of`
/// line begins another gathering of the same sheet. A leaf may be described in several lines; if they contradict one
/// another, this is an error.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/seen_leaf.hpp>
#include <bifolium/leaf/counts_in_words.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Reads the text item by item. A function that fails returns false and stores the reason in `error_`.
class SeenLeavesReader {
  static constexpr int most_leaves = 4096, most_together = 64; ///< in a range, and gatherings
  TextCursor cursor_;
  std::vector<SeenGathering> gatherings_{};
  Error error_{};

  bool fail(Problem problem, TextSpan where, std::int64_t limit = 0) {
    error_ = cursor_.error(problem, where, limit);
    return false;
  }
  void pass_blanks() {
    cursor_.take_while([](char32_t c) { return is_space(c) && c != '\n'; });
  }
  static bool is_end(char32_t c) { return c == ';' || c == ',' || c == '#'; }
  [[nodiscard]] bool at_end_of_item() {
    pass_blanks();
    return cursor_.at_end() || cursor_.peek() == '\n' || is_end(cursor_.character().value);
  }
  /// Returns the next word of the item, or an empty span at the end of the item.
  TextSpan next() {
    if (at_end_of_item()) return {cursor_.at(), cursor_.at()};
    auto const from = cursor_.at();
    cursor_.take_until([](char32_t c) { return is_space(c) || is_end(c); });
    return {from, cursor_.at()};
  }
  [[nodiscard]] std::string_view words(TextSpan span) const { return span.of(cursor_.text()); }
  bool leaf_number(int& leaf, TextSpan word) {
    auto const number = whole_number(words(word), most_leaves);
    if (!number) return fail(Problem::not_leaves_seen, word);
    leaf = static_cast<int>(*number);
    auto const leaves = gatherings_.back().leaves;
    return (leaf >= 1 && leaf <= leaves) || fail(Problem::leaf_outside_gathering, word, leaves);
  }
  SeenLeaf& seen(int leaf) {
    auto& all = gatherings_.back().seen;
    for (auto& one : all)
      if (one.leaf == leaf) return one;
    all.push_back({});
    all.back().leaf = leaf;
    return all.back();
  }

  /// Stores one thing that is seen of a leaf. Fails if another value of it was read before.
  template <class Optional, class Value> bool keep(int leaf, Optional& kept, Value const& value, TextSpan word) {
    if (kept && *kept != value) return fail(Problem::leaf_seen_twice, word, leaf);
    kept = value;
    return true;
  }

  /// Stores the place of a mark or a hole. A place that was not noted agrees with any.
  bool keep_mark(int leaf, std::optional<SeenMark>& kept, SeenMark const& place, TextSpan word) {
    if (kept && kept->there && place == seen_marks::somewhere) return true;
    if (kept == seen_marks::somewhere && place.there) kept.reset();
    return keep(leaf, kept, place, word);
  }

  bool gathering_line() {
    auto const of = next(), number = next();
    TextCursor counted{words(number)};
    auto const leaves = take_number_in_words(counted);
    if (words(of) != "of" || !leaves || !counted.at_end() || leaves->value < 1 || leaves->value > most_leaves)
      return fail(Problem::gathering_without_leaves, words(of) == "of" ? number : of);
    auto after = cursor_;
    if (auto const word = words(next()); word != "leaves" && word != "leaf") cursor_ = after;
    if (gatherings_.size() == most_together) return fail(Problem::gathering_too_large, number, 32);
    gatherings_.push_back({static_cast<int>(leaves->value), {}});
    return true;
  }
  bool edge(SeenLeaf& leaf, Edge::Kind kind, TextSpan word) {
    auto const which = next();
    auto* const place = words(which) == "head"        ? &leaf.head
                        : words(which) == "tail"      ? &leaf.tail
                        : words(which) == "fore-edge" ? &leaf.fore_edge
                                                      : nullptr;
    if (place == nullptr) return fail(Problem::not_leaves_seen, which);
    SeenEdge seen{kind, *place ? (*place)->mate : std::nullopt}; // "bolt head" may come after "bolt head 3"
    if (kind == Edge::Kind::bolt && !at_end_of_item() && cursor_.at_digit()) {
      int mate{};
      auto const number = next();
      if (!leaf_number(mate, number)) return false;
      if (!keep(leaf.leaf, seen.mate, mate, number)) return false;
    }
    if (*place && (*place)->kind != kind) return fail(Problem::leaf_seen_twice, word, leaf.leaf);
    *place = seen;
    return true;
  }
  /// Reads the words after `hole`, if there are any.
  bool hole(SeenLeaf& leaf, TextSpan word) {
    auto place = seen_marks::somewhere;
    auto const before = cursor_;
    if (words(next()) != "at") {
      cursor_ = before;
      return keep_mark(leaf.leaf, leaf.point_hole, place, word);
    }
    for (int edges = 0;; ++edges) {
      auto const here = cursor_;
      auto const span = next();
      auto const edge = near_edge(words(span));
      if (!edge) {
        if (edges == 0) return fail(Problem::not_leaves_seen, span);
        cursor_ = here;
        return keep_mark(leaf.leaf, leaf.point_hole, place, word);
      }
      place = both(place, *edge);
    }
  }
  static std::optional<SeenMark> near_edge(std::string_view word) {
    if (word == "head") return seen_marks::near_head;
    if (word == "tail") return seen_marks::near_tail;
    if (word == "gutter") return seen_marks::near_gutter;
    if (word == "fore-edge") return seen_marks::fore_edge;
    return std::nullopt;
  }
  static std::optional<SeenMark> mark(std::string_view word) {
    if (word == "centre") return seen_marks::centre;
    if (word == "gutter") return seen_marks::gutter;
    if (word == "head-of-gutter") return seen_marks::head_of_gutter;
    if (word == "fore-edge") return seen_marks::fore_edge;
    if (word == "head-edge") return seen_marks::head_edge;
    if (word == "tail-edge") return seen_marks::tail_edge;
    if (word == "marked") return seen_marks::somewhere;
    if (word == "absent") return seen_marks::absent;
    return std::nullopt;
  }
  bool fact(int leaf, std::optional<int> joined, TextSpan span) {
    auto const word = words(span);
    auto& here = seen(leaf);
    if (joined) {
      if (word != "conjugate") return fail(Problem::not_leaves_seen, span);
      if (here.disjunct || !keep(leaf, here.conjugate, *joined, span))
        return fail(Problem::leaf_seen_twice, span, leaf);
      auto& other = seen(*joined);
      return other.disjunct ? fail(Problem::leaf_seen_twice, span, *joined)
                            : keep(*joined, other.conjugate, leaf, span);
    }
    if (word == "bolt") return edge(here, Edge::Kind::bolt, span);
    if (word == "deckle") return edge(here, Edge::Kind::deckle, span);
    if (word == "cut") return edge(here, Edge::Kind::cut, span);
    if (word == "vertical") return keep(leaf, here.chain_lines, ChainLines::vertical, span);
    if (word == "horizontal") return keep(leaf, here.chain_lines, ChainLines::horizontal, span);
    if (word == "hole") return hole(here, span);
    if (word == "no-hole") return keep_mark(leaf, here.point_hole, seen_marks::absent, span);
    if (word == "disjunct") {
      here.disjunct = true;
      return !here.conjugate || fail(Problem::leaf_seen_twice, span, leaf);
    }
    auto const place = mark(word);
    return place ? keep_mark(leaf, here.watermark, *place, span) : fail(Problem::not_leaves_seen, span);
  }
  bool item() {
    auto first = next();
    if (first.empty()) return true;
    if (equal_in_any_case(words(first), "gathering")) return gathering_line();
    if (equal_in_any_case(words(first), "leaf") || equal_in_any_case(words(first), "leaves")) first = next();
    if (gatherings_.empty()) return fail(Problem::gathering_size_needed, first);
    auto const mark = words(first).find_first_of(".-");
    int leaf{}, other{};
    bool const two = mark != std::string_view::npos, range = two && words(first)[mark] == '-';
    if (!leaf_number(leaf, {first.from, two ? first.from + mark : first.to})) return false;
    if (two && !leaf_number(other, {first.from + mark + 1, first.to})) return false;
    if (range && (other < leaf || other - leaf >= most_together)) return fail(Problem::not_leaves_seen, first);
    auto const facts = cursor_;
    for (int last = range ? other : leaf; leaf <= last; ++leaf) {
      cursor_ = facts;
      auto word = next();
      if (word.empty()) return fail(Problem::not_leaves_seen, word);
      for (; !word.empty(); word = next())
        if (!fact(leaf, two && !range ? std::optional{other} : std::nullopt, word)) return false;
    }
    return true;
  }

public:
  explicit SeenLeavesReader(std::string_view text) : cursor_{text} {}
  Expected<std::vector<SeenGathering>> read() {
    while (!cursor_.at_end()) {
      if (!item()) return error_;
      if (cursor_.peek() == '#')
        while (!cursor_.at_end() && cursor_.peek() != '\n') cursor_.skip(1);
      if (!cursor_.at_end()) cursor_.skip(1); // the end of a line, or a semicolon
    }
    if (gatherings_.empty()) return cursor_.error_here(Problem::gathering_size_needed);
    return static_cast<std::vector<SeenGathering>&&>(gatherings_);
  }
};

} // namespace detail

/// Reads the evidence of leaves. The function allocates memory. Errors, with line and column: gathering_size_needed if
/// a leaf comes before the first `gathering of` line; leaf_seen_twice if what is said of a leaf contradicts an earlier
/// line; gathering_without_leaves, leaf_outside_gathering, not_leaves_seen.
inline Expected<std::vector<SeenGathering>> read_seen_leaves(std::string_view text) {
  return read_utf8(text, [](std::string_view given) { return detail::SeenLeavesReader{given}.read(); });
}

} // namespace v0
} // namespace bifolium
