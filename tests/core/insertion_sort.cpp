// SPDX-License-Identifier: MIT
// The sorts of short and of long rows, against std::stable_sort.
#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/partition_point.hpp>

#include "check.hpp"

#include <algorithm>
#include <array>
#include <memory>
#include <random>
#include <span>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

constexpr bool by_first(std::pair<int, int> const& a, std::pair<int, int> const& b) { return a.first < b.first; }

TEST_CASE("a short row is sorted as std::stable_sort sorts it") {
  std::mt19937 draw{1440};
  for (int round = 0; round < 2000; ++round) {
    std::vector<std::pair<int, int>> row(draw() % 40);
    for (std::size_t i = 0; i < row.size(); ++i) row[i] = {static_cast<int>(draw() % 12), static_cast<int>(i)};
    auto expected = row;
    std::stable_sort(expected.begin(), expected.end(), by_first);
    auto other = row;
    insertion_sort(row, by_first);
    REQUIRE(row == expected);
    merge_sort(other, by_first);
    REQUIRE(other == expected);
  }
}

TEST_CASE("a long row is sorted in n log n comparisons, and in n if it is in order") {
  std::mt19937 draw{1455};
  std::vector<std::pair<int, int>> row(1 << 14);
  for (std::size_t i = 0; i < row.size(); ++i) row[i] = {static_cast<int>(draw() % 5000), static_cast<int>(i)};
  auto expected = row;
  std::stable_sort(expected.begin(), expected.end(), by_first);
  std::size_t comparisons = 0;
  auto const counted = [&](auto const& a, auto const& b) { return ++comparisons, by_first(a, b); };
  merge_sort(row, counted);
  CHECK(row == expected);
  CHECK(comparisons <= row.size() * 14);
  comparisons = 0;
  merge_sort(row, counted);
  CHECK(comparisons == row.size() - 1);
}

TEST_CASE("values that can only be moved are sorted, in constant expressions too, and through a span") {
  std::vector<std::unique_ptr<int>> row;
  for (int value : {3, 1, 2}) row.push_back(std::make_unique<int>(value));
  insertion_sort(std::span{row}.subspan(1), [](auto const& a, auto const& b) { return *a > *b; });
  CHECK((*row[0] == 3 && *row[1] == 2 && *row[2] == 1));
  constexpr auto sorted = [] {
    std::array values{5, 4, 9, 1};
    insertion_sort(values, [](int a, int b) { return a < b; });
    return values;
  }();
  STATIC_CHECK(sorted == std::array{1, 4, 5, 9});
}

} // namespace

TEST_CASE("of equal rows in a sorted list the first is kept") {
  struct Row {
    int key, number;
    bool operator!=(Row const& other) const { return key != other.key; }
  };
  std::vector<Row> rows{{1, 0}, {1, 1}, {2, 2}, {5, 3}, {5, 4}, {5, 5}};
  bifolium::keep_each_once(rows);
  REQUIRE(rows.size() == 3);
  CHECK(rows[0].number == 0);
  CHECK(rows[1].number == 2);
  CHECK(rows[2].number == 3);
  std::vector<int> none, different{1, 2, 3};
  bifolium::keep_each_once(none);
  bifolium::keep_each_once(different);
  CHECK(none.empty());
  CHECK(different == std::vector{1, 2, 3});
}
