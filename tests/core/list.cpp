// SPDX-License-Identifier: MIT
// The row of values that headers work with, against std::vector: the same pushes and pops leave the same values.
#include <bifolium/core/list.hpp>
#include <bifolium/core/put.hpp>
#include <bifolium/core/view.hpp>

#include "check.hpp"

#include <algorithm>
#include <memory>
#include <random>
#include <string>
#include <vector>

namespace {
using bifolium::View;
using bifolium::detail::List;

template <class T> bool same(List<T> const& list, std::vector<T> const& values) {
  return std::equal(list.begin(), list.end(), values.begin(), values.end()) && list.empty() == values.empty() &&
         list.size() == values.size();
}

TEST_CASE("a list keeps what is put into it") {
  std::mt19937 draw{1477};
  List<std::string> list;
  std::vector<std::string> values;
  for (int i = 0; i < 5000; ++i) {
    auto const what = draw() % 8;
    if (what < 2 && !values.empty()) {
      list.pop_back();
      values.pop_back();
    } else if (what == 2 && !values.empty()) { // one of its own, which may have to move while it is put in
      list.push_back(list.back());
      values.push_back(values.back());
    } else if (what == 3) {
      auto const at = draw() % (values.size() + 1);
      auto const to = at + draw() % (values.size() + 1 - at);
      auto const value = std::to_string(draw());
      bifolium::detail::put(list, at, to, value);
      auto const first = values.begin() + static_cast<std::ptrdiff_t>(at);
      values.insert(values.erase(first, first + static_cast<std::ptrdiff_t>(to - at)), value);
    } else {
      auto const value = std::string(draw() % 40, 'a') + std::to_string(i);
      list.push_back(value);
      values.push_back(value);
    }
    REQUIRE(same(list, values));
  }
  auto moved = std::move(list);
  CHECK(same(moved, values));
  List<std::string> other;
  other.push_back("left");
  other = std::move(moved);
  CHECK(same(other, values));
  for (auto& text : other) text += '!';
  CHECK(other[0] == values[0] + "!");
}

TEST_CASE("what leaves a list is let go at once") {
  List<std::shared_ptr<int>> list;
  auto const held = std::make_shared<int>(1);
  for (int i = 0; i < 20; ++i) list.push_back(held);
  CHECK(held.use_count() == 21);
  for (int i = 0; i < 5; ++i) list.pop_back();
  CHECK(held.use_count() == 16);
  { auto const gone = std::move(list); }
  CHECK(held.use_count() == 1);
}

TEST_CASE("a view is the values it looks at") {
  std::vector<int> const values{3, 1, 4, 1, 5};
  View<int const> const view{values.data(), values.size()};
  CHECK(std::ranges::equal(view, values));
  CHECK(view.front() == 3);
  CHECK(view[2] == 4);
  CHECK(View<int>{}.empty());
}

} // namespace
