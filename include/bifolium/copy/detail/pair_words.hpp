// SPDX-License-Identifier: MIT
/// Words for a pair of conjugate leaves by its place in the gathering: the inner bifolium of B (common practice, no source).
/// A pair that is lost leaves no trace, so catalogues name it as one thing.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words for the middle of a gathering.
inline constexpr char const* inmost_words[]{"inner", "inmost", "innermost", "central", "middle"};
/// Words for the outside of a gathering.
inline constexpr char const* outmost_words[]{"outer", "outmost", "outermost"};

/// A pair of conjugate leaves of a gathering, by its place.
struct PairOfGathering {
  bool inner{};               ///< true for the inmost, false for the outmost
  std::string_view gathering; ///< the name of the gathering
};
/// Takes "inner bifolium of B". An outer sheet is such a pair only in a folio, so it is not taken.
[[nodiscard]] inline std::optional<PairOfGathering> take_pair_of_gathering(TextCursor& cursor, IdealCopy const& book) {
  auto c = cursor;
  auto const word = [&] {
    c.take_blanks();
    return c.take_until(is_between_items);
  };
  if (c.starts_with("the ")) c.take("the");
  auto const place = word();
  bool const is_inner = is_row(place, inmost_words);
  if (!is_inner && !is_row(place, outmost_words)) return std::nullopt;
  if (!equal_in_any_case(word(), "bifolium") || word() != "of") return std::nullopt;
  auto name = word();
  if (is_row(without_point(name), gathering_nouns)) name = word();
  if (!names_gathering(book, name)) return std::nullopt;
  cursor = c;
  return PairOfGathering{is_inner, name};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
