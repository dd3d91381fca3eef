// SPDX-License-Identifier: MIT
/// What can be wrong with a text or a measurement that comes from outside. Every problem has a number that never changes
/// its meaning, an identifier for programs, and a sentence for people. A program stores or compares the number or the
/// identifier; the sentence may be worded better in a later version. The problems are in one table,
/// core/detail/problem_table.hpp, where each part of the library has its own hundred of numbers.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// What is wrong. `identifier(problem)` is the name of the enumerator, `sentence(problem)` its sentence.
enum class Problem : std::uint16_t {
#define BIFOLIUM_PROBLEM(number, identifier, sentence) identifier = number,
#include <bifolium/core/detail/problem_table.hpp>
};

/// The name of the enumerator, for columns and fields that programs read: `no_leaf_count`. It never changes for a number.
/// A number without a problem is "unknown".
constexpr std::string_view identifier(Problem problem) noexcept {
  switch (problem) {
#define BIFOLIUM_PROBLEM(number, identifier, sentence)                                                                 \
  case Problem::identifier:                                                                                            \
    return #identifier;
#include <bifolium/core/detail/problem_table.hpp>
  }
  return "unknown";
}

/// The sentence of a problem. `message(error)` puts the text that was found, or the name of the field, in the
/// place of `{found}`, and the number or bound that belongs to the problem in the place of `{limit}`.
constexpr std::string_view sentence(Problem problem) noexcept {
  switch (problem) {
#define BIFOLIUM_PROBLEM(number, identifier, sentence)                                                                 \
  case Problem::identifier:                                                                                            \
    return sentence;
#include <bifolium/core/detail/problem_table.hpp>
  }
  return "an unknown problem";
}

} // namespace v0
} // namespace bifolium
