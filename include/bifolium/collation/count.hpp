// SPDX-License-Identifier: MIT
/// Counting the leaves of a formula straight from its text: formulas of ordinary length need no allocation, the cost is linear in the text, and the
/// answer is that of read_formula. Works in constant expressions.
#pragma once

#include <bifolium/collation/detail/grammar.hpp>
#include <bifolium/core/expected.hpp>

namespace bifolium {
inline namespace v0 {

/// What a formula adds up to.
struct FormulaCount {
  std::int64_t leaves{};     ///< with what was changed
  std::int64_t gatherings{}; ///< without insertions
  std::int64_t warnings{};   ///< read_formula says which

  /// Two to a leaf.
  [[nodiscard]] constexpr std::int64_t pages() const noexcept { return 2 * leaves; }
  friend constexpr bool operator==(FormulaCount const&, FormulaCount const&) = default;
};

namespace detail {
/// The long way, for whatever is not wholly plain.
constexpr Expected<FormulaCount> count_in_full(std::string_view text, Dialect dialect) {
  CountSink sink;
  Grammar<CountSink> grammar{text, dialect, sink};
  if (grammar.read()) return FormulaCount{grammar.leaves(), grammar.gatherings(), sink.warnings};
  auto const wrong = grammar.error();
  auto to = wrong.to;
  while (to > wrong.from && to < text.size() && (static_cast<unsigned char>(text[to]) & 0xC0U) == 0x80U) --to;
  return error_at(wrong.problem, 1, column_of(text, wrong.from), text.data() + wrong.from,
                  to > wrong.from ? to - wrong.from : 0, wrong.limit);
}
} // namespace detail

/// Counts a formula. error: as read_formula, with the column.
constexpr Expected<FormulaCount> count_formula(std::string_view text, Dialect dialect = {}) {
  if (auto const plain = detail::count_plain(text, dialect); plain.plain)
    return FormulaCount{plain.leaves, plain.gatherings, 0};
  return detail::count_in_full(text, dialect);
}

} // namespace v0
} // namespace bifolium
