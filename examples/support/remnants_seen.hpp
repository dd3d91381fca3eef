// SPDX-License-Identifier: MIT
// What was seen of the units of a book, as a cell of a table writes it.
#pragma once

#include <bifolium/book/sheet_grouping.hpp>

#include <sstream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace support {

/// Reads `A=pot P=crown`, or `A=4 P=2` if the cell is of marks, and adds it to what was seen, which sheets_of_book joins.
/// Returns what is wrong; empty if nothing is.
inline std::string take_remnants(std::string_view cell, bool marks, std::vector<bifolium::RemnantEvidence>& seen) {
  std::istringstream words{std::string{cell}};
  for (std::string word; words >> word;) {
    auto const equals = word.find('=');
    auto value = equals == word.npos ? std::string{} : word.substr(equals + 1);
    bool const number = !value.empty() && value.size() < 3 && value.find_first_not_of("0123456789") == value.npos;
    if (value.empty() || (marks && !number))
      return "'" + word + "' is not a unit and what was seen of it: write " + (marks ? "A=4" : "A=pot");
    auto& one = seen.emplace_back(bifolium::RemnantEvidence{word.substr(0, equals), {}, {}});
    if (marks)
      one.marked_leaves = std::stoi(value);
    else
      one.stock = std::move(value);
  }
  return {};
}

} // namespace support
