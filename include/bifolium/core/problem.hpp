// SPDX-License-Identifier: MIT
/// The problems that a text or a measurement from outside can have. Every problem has a number that never changes its
/// meaning, an identifier for programs, and a sentence for people. A program stores or compares the number or the
/// identifier, because the wording of a sentence may change in a later version. The problems are in one table,
/// core/detail/problem_table.hpp, in which each part of the library has a hundred numbers of its own.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A problem. `identifier(problem)` returns the name of the enumerator, `sentence(problem)` its sentence.
enum class Problem : std::uint16_t {
#define BIFOLIUM_PROBLEM(number, identifier, sentence) identifier = (number),
#include <bifolium/core/detail/problem_table.hpp>
};

namespace detail {
/// A row of the table of problems. Rows are bare pointers: a switch of as many cases costs each unit that calls it.
struct ProblemRow {
  Problem problem;
  char const* identifier;
  char const* sentence;
};
inline constexpr ProblemRow problem_rows[] = {
#define BIFOLIUM_PROBLEM(number, identifier, sentence) {Problem::identifier, #identifier, sentence},
#include <bifolium/core/detail/problem_table.hpp>
};
constexpr ProblemRow problem_row(Problem problem) noexcept {
  for (auto const& row : problem_rows)
    if (row.problem == problem) return row;
  return {problem, "unknown", "an unknown problem"};
}
} // namespace detail

/// Returns the name of the enumerator, for columns and fields that programs read: `no_leaf_count`. The identifier of a
/// number never changes. A number that has no problem gives "unknown".
constexpr std::string_view identifier(Problem problem) noexcept { return detail::problem_row(problem).identifier; }

/// Returns the problem that has an identifier, such as one that was stored, or no value if none has it.
/// Example: `find_problem("no_leaf_count") == Problem::no_leaf_count`.
constexpr std::optional<Problem> find_problem(std::string_view text) noexcept {
  for (auto const& row : detail::problem_rows)
    if (row.identifier == text) return row.problem;
  return std::nullopt;
}

/// Returns the sentence of a problem. In it `{found}` marks the place for the text that was found, or for the name of
/// the field, `{limit}` the place for the number or bound of the problem, and `{leaf|leaves}` the noun of that number;
/// `message(error)` fills them in.
constexpr std::string_view sentence(Problem problem) noexcept { return detail::problem_row(problem).sentence; }

} // namespace v0
} // namespace bifolium
