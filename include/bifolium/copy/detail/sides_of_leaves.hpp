// SPDX-License-Identifier: MIT
/// Sides of leaves in a list: A1v blank, lacks A1r, B3r-5v in facsimile. A list is of paper, which has two sides, so a leaf is
/// there or is wanting with both of them. That the verso of a title leaf is blank says nothing of the leaf, and it is not a
/// blank; a leaf of which one side is said to be wanting is doubted, unless the list says it of the other side, too.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/copy/detail/leaves_taken_out.hpp>
#include <bifolium/core/merge_sort.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A leaf of which a list names one side: the only leaf of its span, or one end of it.
struct HalfLeaf {
  LeafOfBook leaf{};
  LeafSide side{};
  std::string_view word{};
  std::size_t span{};
  bool last{};  ///< true for the last leaf of its span, false for the first
  bool whole{}; ///< true if the list says the same of the other side
};

/// A number with the side of a leaf after it, or without one.
struct NumberAndSide {
  std::int64_t number{};
  LeafSide side{};
};
/// Reads the number of a leaf and perhaps its side: 3, 3v, 3 verso.
[[nodiscard]] constexpr std::optional<NumberAndSide> number_and_side(std::string_view word) noexcept {
  ReferenceScan scan{word};
  auto const number = scan.figures();
  if (number < 0) return std::nullopt;
  auto const side = scan.at_end() ? LeafSide::not_said : scan.side();
  return scan.at_end() ? std::optional{NumberAndSide{number, side}} : std::nullopt;
}
/// Returns true for a numeral that can be a leaf after another of its gathering: the iij of A1, iij. One letter, or a capital, is
/// rather a gathering that the book does not have.
[[nodiscard]] constexpr bool is_roman_leaf(std::string_view word) noexcept {
  return word.size() > 1 && word.find_first_not_of("ivxj") == word.npos && is_roman_numeral(word);
}
/// Returns the side that a word is: recto, v, (verso), ᵛ.
[[nodiscard]] constexpr LeafSide side_word(std::string_view word) noexcept {
  if (word.empty() || word.size() > 16) return LeafSide::not_said;
  ReferenceScan scan{word};
  auto const side = scan.side();
  return scan.at_end() ? side : LeafSide::not_said;
}
/// Returns true if what is said of one side cannot be said of half a leaf: a leaf of paper is mounted or replaced as one.
[[nodiscard]] constexpr bool is_of_whole_leaf(LeafInCopy state) noexcept {
  return state == LeafInCopy::mounted || state == LeafInCopy::supplied || is_substitute(state);
}

/// The sides that a list has named, when it has ended.
class SidesOfLeaves {
  IdealCopy const& book_;
  std::vector<HalfLeaf> halves_;

  [[nodiscard]] LeafSpan part(LeafSpan const& span, std::int64_t from, std::int64_t to, LeafInCopy state) const {
    if (span.in_ideal()) return span_of_numbers(book_, from, to, state);
    auto same = span;
    same.state = state;
    return same;
  }

public:
  SidesOfLeaves(IdealCopy const& book, std::vector<HalfLeaf> const& halves, std::vector<LeafSpan> const& spans)
      : book_{book}, halves_{halves} {
    std::vector<std::size_t> order(halves_.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    merge_sort(order, [&](std::size_t a, std::size_t b) { return halves_[a].leaf < halves_[b].leaf; });
    auto const state = [&](HalfLeaf const& half) { return spans[half.span].state; };
    for (std::size_t i = 0, end = 0; i < order.size(); i = end) { // the halves of one leaf
      for (end = i + 1; end < order.size() && halves_[order[end]].leaf == halves_[order[i]].leaf;) ++end;
      for (auto k = i + 1; k < end; ++k) {
        auto& one = halves_[order[k - 1]];
        auto& other = halves_[order[k]];
        if (one.side != other.side && state(one) == state(other)) one.whole = other.whole = true;
      }
    }
  }
  /// Calls `doubt(word)` for each side that stands for a leaf of which the other side is not named. In a list of leaves that
  /// are wanting each does.
  template <class Doubt> void doubt(std::vector<LeafSpan> const& spans, bool wanting, Doubt doubt) const {
    for (auto const& half : halves_)
      if (!half.whole && (wanting || is_of_whole_leaf(spans[half.span].state))) doubt(half.word);
  }
  /// Makes one leaf of a recto and a verso that are named beside one another, and takes the word blank from a leaf of which
  /// one side is blank. If the leaf is also named without it, nothing more is said of it.
  [[nodiscard]] std::vector<LeafSpan> settle(std::vector<LeafSpan> const& spans) const {
    std::vector<LeafSpan> others, settled;
    for (std::size_t i = 0, h = 0; i < spans.size(); ++i) {
      while (h < halves_.size() && halves_[h].span < i) ++h;
      bool const half_blank = h < halves_.size() && halves_[h].span == i && spans[i].state == LeafInCopy::blank;
      if (!half_blank) others.push_back(spans[i]);
    }
    SpansByNumber const named{others};
    HalfLeaf const* recto = nullptr; // with which the span before ends
    for (std::size_t i = 0, h = 0; i < spans.size(); ++i) {
      auto const span = spans[i];
      auto from = span.from, to = span.to;
      HalfLeaf const *first = nullptr, *last = nullptr;
      for (; h < halves_.size() && halves_[h].span <= i; ++h)
        if (halves_[h].span == i) (halves_[h].last ? last : first) = &halves_[h];
      if (first == nullptr && last != nullptr && from == to) first = last;
      bool const again = recto != nullptr && first != nullptr && first->side == LeafSide::verso &&
                         first->leaf == recto->leaf && span.state == settled.back().state;
      recto = nullptr;
      bool const blank = span.state == LeafInCopy::blank;
      auto const place_half = [&](std::int64_t number) {
        auto const leaf = part(span, number, number, LeafInCopy::original);
        if (!named.have(leaf)) settled.push_back(leaf);
      };
      if (again) { // A1r, A1v
        if (++from > to || !span.in_ideal()) continue;
        first = nullptr;
      }
      if (blank && first != nullptr && !first->whole) {
        place_half(from);
        if (first == last || !span.in_ideal()) continue;
        ++from;
      }
      bool const half = blank && last != nullptr && !last->whole;
      if (half) --to;
      if (from <= to) settled.push_back(part(span, from, to, span.state));
      if (half) place_half(to + 1);
      if (!half && last != nullptr && last->side == LeafSide::recto && !settled.empty()) recto = last;
    }
    return settled;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
