// SPDX-License-Identifier: MIT
/// The facts in tests/data: tab-separated, '#' begins a comment line.
#pragma once

#include <cstddef>
#include <doctest/doctest.h>
#include <fstream>
#include <string>
#include <vector>

namespace data {

using Row = std::vector<std::string>;

/// The rows of a file of tests/data, each of as many cells as it has.
inline std::vector<Row> rows_of_any_width(std::string const& file) {
  std::string path{BIFOLIUM_TEST_DATA};
  path.append("/").append(file); // g++ 12 warns of operator+ at -O1 (GCC bug 105329)
  std::ifstream in{path};
  REQUIRE_MESSAGE(in, file);
  std::vector<Row> all;
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line[0] == '#') continue;
    Row row{""};
    for (char c : line)
      if (c == '\t')
        row.emplace_back();
      else
        row.back() += c;
    all.push_back(row);
  }
  return all;
}
/// The rows of a file of tests/data, each of `columns` cells.
inline std::vector<Row> rows(std::string const& file, std::size_t columns) {
  auto all = rows_of_any_width(file);
  for (auto const& row : all) REQUIRE_MESSAGE(row.size() == columns, file << ": " << row[0]);
  return all;
}

} // namespace data
