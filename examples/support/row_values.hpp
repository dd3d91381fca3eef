// SPDX-License-Identifier: MIT
/// The cells of a row of a table as values: numbers, words, the one column of several that is filled. A row is told all that is
/// wrong with it at once, so that it is mended once.
#pragma once

#include <bifolium/core/fraction.hpp>
#include <bifolium/core/problem.hpp>

#include "decimal.hpp"
#include "tsv.hpp"
#include "wrong.hpp"

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace support {

/// Reads the cells of a row one by one, each as its kind. What is wrong with a cell is added to `wrong`, with its column.
class RowValues {
  Header const& header_;
  Cells const& cells_;
  Wrong& wrong_;

  void say(std::string const& column, std::string const& what, bifolium::Problem problem) {
    wrong_.add(column, what, problem);
  }

public:
  RowValues(Header const& header, Cells const& cells, Wrong& wrong) : header_{header}, cells_{cells}, wrong_{wrong} {}

  [[nodiscard]] std::string cell(std::string_view name) const { return header_.cell(cells_, name); }
  /// A number of 0 or more; no value if the cell is empty or wrong.
  std::optional<bifolium::Fraction> number(std::string const& column) {
    auto const text = cell(column);
    if (text.empty()) return std::nullopt;
    auto const read = decimal(text);
    if (!read.value)
      say(column, read.wrong, read.problem);
    else if (*read.value < bifolium::Fraction{})
      say(column, "'" + text + "' must not be less than zero", bifolium::Problem::negative_count);
    else
      return read.value;
    return std::nullopt;
  }
  std::optional<std::int64_t> whole(std::string const& column) {
    auto const value = number(column);
    if (value && !value->is_whole())
      say(column, "found '" + cell(column) + "' where a whole number is expected", bifolium::Problem::not_a_number);
    return value && value->is_whole() ? std::optional{value->numerator()} : std::nullopt;
  }
  void whole(std::string const& column, std::int64_t& to) { to = whole(column).value_or(to); }
  void whole(std::string const& column, std::int32_t& to) {
    auto const value = whole(column);
    if (!value) return;
    if (*value > INT32_MAX)
      say(column, "'" + cell(column) + "' is too large to calculate with", bifolium::Problem::number_too_large);
    else
      to = static_cast<std::int32_t>(*value);
  }
  /// One of some words, and what it stands for.
  template <class T, std::size_t N>
  void word(std::string const& column, T& to, std::pair<char const*, T> const (&words)[N]) {
    auto const text = cell(column);
    if (text.empty()) return;
    std::string known;
    for (auto const& [name, value] : words) {
      if (text == name) {
        to = value;
        return;
      }
      known += (known.empty() ? "" : ", ") + std::string{name};
    }
    say(column, "'" + text + "' is none of: " + known, bifolium::Problem::unknown_word);
  }

  /// The one column of several that is filled; empty where none is. More than one are refused, since none of them could be
  /// chosen in silence.
  std::string one_of(std::initializer_list<char const*> columns) {
    std::string filled;
    for (auto const* column : columns) {
      if (cell(column).empty()) continue;
      if (!filled.empty())
        say(column, filled + " is filled too: leave one of them empty", bifolium::Problem::trailing_text);
      if (filled.empty()) filled = column;
    }
    return filled;
  }
};

} // namespace support
