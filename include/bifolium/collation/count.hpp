// SPDX-License-Identifier: MIT
/// Counts the leaves of a formula directly from its text. A formula of ordinary length needs no allocation, and the
/// time grows linearly with the text. The result is equal to that of read_formula. The functions work in constant
/// expressions.
#pragma once

#include <bifolium/collation/detail/count_sink.hpp>
#include <bifolium/collation/detail/grammar/grammar.hpp>
#include <bifolium/collation/detail/plain_text.hpp>
#include <bifolium/core/character_references.hpp>
#include <bifolium/core/expected.hpp>

namespace bifolium {
inline namespace v0 {

/// The totals of a formula.
struct FormulaCount {
  std::int64_t leaves{};        ///< leaves of the ideal copy
  std::int64_t gatherings{};    ///< gatherings, without inserted ones
  std::int64_t warning_count{}; ///< number of warnings; read_formula gives the warnings

  /// Returns the number of pages, two for each leaf.
  [[nodiscard]] constexpr std::int64_t pages() const noexcept { return 2 * leaves; }
  friend constexpr bool operator==(FormulaCount const&, FormulaCount const&) = default;
};

namespace detail {
namespace compiled {
Expected<FormulaCount> count_in_full(std::string_view text, Dialect dialect, Limits const& limits);
}
/// Counts by reading the whole formula, for a text that is not entirely plain.
constexpr Expected<FormulaCount> count_in_full(std::string_view text, Dialect dialect, Limits const& limits) {
  if (is_too_long(text, limits)) return too_long(limits);
  auto const count = [&](std::string_view plain) -> Expected<FormulaCount> {
    CountSink sink;
    Grammar<CountSink> grammar{plain, dialect, limits, sink};
    if (grammar.read()) {
      FormulaCount const read{grammar.leaves(), grammar.gatherings(), sink.warnings};
      if (!grammar.shows_letters()) return read;
      CountSink other;
      Grammar<CountSink> again{plain, grammar.dialect_shown(), limits, other};
      bool const same = again.read() && again.leaves() == read.leaves && again.gatherings() == read.gatherings;
      return same && other.warnings < read.warning_count ? FormulaCount{read.leaves, read.gatherings, other.warnings}
                                                         : read;
    }
    auto const wrong = grammar.error().of_whole_characters(plain);
    return error_in(plain, {wrong.from, wrong.to}, wrong.problem, wrong.limit);
  };
  auto const stays = [](FormulaCount const&, TextOfCharacters const&) {};
  return read_characters(text, count, stays, TextOfCharacters::Escapes::kept);
}
} // namespace detail

/// Counts the leaves and gatherings of a formula. Errors: those of read_formula, with the column.
/// Example: `count_formula("A-C8 D4")->leaves == 28`.
constexpr Expected<FormulaCount> count_formula(std::string_view text, Dialect dialect = {}, Limits const& limits = {}) {
  using Plain = detail::PlainText<detail::CountSink>;
  if (detail::CountSink sink; Plain::is_within(text, limits))
    if (auto const plain = Plain{text, dialect, sink}.read(); plain.plain)
      return FormulaCount{plain.leaves, plain.gatherings, sink.warnings};
  BIFOLIUM_WHEN_RUN(detail::compiled::count_in_full(text, dialect, limits));
  return detail::count_in_full(text, dialect, limits);
}

} // namespace v0
} // namespace bifolium
