// SPDX-License-Identifier: MIT
/// What was read of a list of leaves so far. Each part of the reader - names, numbers, states, ends of the book - has one
/// idea, and what a word means depends on the words before it, so they all go on with this.
#pragma once

#include <bifolium/copy/detail/flat_counts.hpp>
#include <bifolium/copy/detail/placed_leaves.hpp>
#include <bifolium/core/error.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What a number alone after the last item is: of the gathering of its last leaf, B3,6, or of the book, f. 3, 6.
enum class FiguresAfter : std::uint8_t { none, of_leaf, of_book };

/// Leaves that are bound elsewhere than in the order of the formula.
struct MovedLeaves {
  enum class At : std::uint8_t { unknown, in_place, front, back, before, after };
  LeafSpan leaves{};
  At at{};
  std::int64_t number{};    ///< the number of the leaf before or after which they are bound
  std::string_view words{}; ///< the words that say so
};

struct ListSoFar {
  IdealCopy const& book;
  std::string_view text;
  bool wanting; ///< true in a list of leaves that are wanting
  bool begun{}; ///< true if leaves were read, be they none
  bool only{};  ///< the list says that no other leaves are there
  PlacedLeaves leaves{};
  std::vector<MovedLeaves> moved{};
  std::size_t moved_from{};   ///< where the last of these begin
  std::size_t passage_from{}; ///< where the spans of the passage begin
  std::vector<Error> doubts{};
  FlatCounts counts{};
  FiguresAfter figures{};
  std::optional<LeafOfBook> last{};            ///< the last leaf read
  std::optional<LeafOfBook> beside{};          ///< the leaf of the last item, of whose gathering a number alone is
  PlaceCounter doubt_places{}, error_places{}; ///< an error of what may be read in another way is only one of many

  [[nodiscard]] bool has_leaves() const noexcept { return !leaves.empty() || !moved.empty(); }
  [[nodiscard]] std::size_t position(std::string_view word) const {
    return static_cast<std::size_t>(word.data() - text.data());
  }
  [[nodiscard]] Error error(Problem problem, std::string_view word, std::int64_t limit = 0) {
    return error_at(problem, error_places.place(text, position(word)), word, limit);
  }
  void doubt(std::string_view word, Problem problem) {
    doubts.push_back(error_at(problem, doubt_places.place(text, position(word)), word));
  }
  /// Adds leaves of the ideal copy by their numbers, which are inside no bifolium.
  void place_numbers(std::int64_t from, std::int64_t to) {
    leaves.close();
    LeafSpan const all[]{span_of_numbers(book, from, to)};
    leaves.place(all);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
