// SPDX-License-Identifier: MIT
/// Counting the leaves of a formula straight from its text: nothing is allocated, the cost is linear in the text, and the
/// answer is that of read_formula. Works in constant expressions.
#pragma once

#include <bifolium/collation/detail/scan_formula.hpp>

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
  FormulaScanner<CountSink> scanner{text, dialect, sink};
  if (!scanner.scan()) return scanner.error();
  return FormulaCount{scanner.leaves(), scanner.gatherings(), sink.warnings};
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
