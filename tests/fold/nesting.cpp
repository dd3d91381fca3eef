// SPDX-License-Identifier: MIT
// Sets of pieces that nest, by how they are made, and sets made at random, judged by every way of sharing them out among
// gatherings.
#include <bifolium/fold/detail/nester.hpp>
#include <bifolium/fold/detail/number_set.hpp>

#include "check.hpp"

#include <algorithm>
#include <random>
#include <set>
#include <vector>

using namespace bifolium;
using detail::Nester;
using detail::Part;
using detail::Piece;

namespace {

Part part(int first, int leaves, int gap) {
  Part made;
  made.piece = Piece{true, first, leaves, gap, Head::far_edge, 0, 1};
  return made;
}
/// Cuts the leaves of a gathering into pieces that nest, from outside inwards.
void cut(std::mt19937& random, int from, int to, std::vector<Part>& parts) {
  while (from < to) {
    auto const size = to - from;
    int const kind = static_cast<int>(random() % 3);
    if (kind == 0 || size == 1) {
      parts.push_back(part(from++, 1, 0));
    } else if (kind == 1) { // a pair of single leaves
      parts.push_back(part(from++, 1, 0));
      parts.push_back(part(--to, 1, 0));
    } else {
      int const half = 1 + static_cast<int>(random() % static_cast<unsigned>(size / 2));
      parts.push_back(part(from, 2 * half, size - 2 * half));
      from += half, to -= half;
    }
  }
}
/// Whether pieces fill the leaves of one gathering, one inside another.
bool fill_gathering(std::vector<Part> const& parts, int from, int to) {
  if (from == to) return parts.empty();
  auto const without = [&](std::size_t one, std::size_t other) {
    std::vector<Part> rest;
    for (std::size_t i = 0; i < parts.size(); ++i)
      if (i != one && i != other) rest.push_back(parts[i]);
    return rest;
  };
  for (std::size_t i = 0; i < parts.size(); ++i) {
    auto const& piece = parts[i].piece;
    if (piece.first != from) continue;
    if (piece.leaves > 1) {
      if (piece.end() == to && fill_gathering(without(i, i), from + piece.front(), from + piece.front() + piece.gap))
        return true;
      continue;
    }
    if (fill_gathering(without(i, i), from + 1, to)) return true;
    for (std::size_t k = 0; k < parts.size(); ++k)
      if (k != i && parts[k].piece.leaves == 1 && parts[k].piece.first == to - 1 && to - 1 > from &&
          fill_gathering(without(i, k), from + 1, to - 1))
        return true;
  }
  return false;
}
/// Whether pieces can be shared out among gatherings, of which those that begin with one leaf are equal: every way is tried.
bool share_out(std::vector<Part> const& parts, std::size_t next, std::vector<std::vector<Part>>& heaps) {
  if (next == parts.size()) {
    std::vector<std::pair<int, int>> ends;
    for (auto const& heap : heaps) {
      int from = 1000, to = 0;
      for (auto const& one : heap) from = (std::min)(from, one.piece.first), to = (std::max)(to, one.piece.end());
      if (!fill_gathering(heap, from, to)) return false;
      for (auto const& [first, end] : ends)
        if (first == from && end != to) return false;
      ends.emplace_back(from, to);
    }
    return heaps.size() <= Scheme::most_gatherings;
  }
  for (std::size_t h = 0; h <= heaps.size(); ++h) {
    bool const fresh = h == heaps.size();
    if (fresh) heaps.emplace_back();
    heaps[h].push_back(parts[next]);
    if (share_out(parts, next + 1, heaps)) return true;
    heaps[h].pop_back();
    if (fresh) {
      heaps.pop_back();
      break;
    }
  }
  return false;
}
bool nests(std::vector<Part> const& parts) {
  return Nester{parts, 1'000'000}.nest([](std::vector<detail::Nested> const&) { return true; });
}

} // namespace

TEST_CASE("pieces cut from gatherings nest again") {
  std::mt19937 random{1701};
  for (int i = 0; i < 400; ++i) {
    std::vector<Part> parts;
    int const copies = 1 + i % 2, gatherings = 1 + i % 5;
    for (int g = 0, leaf = 0; g < gatherings; ++g) {
      int const leaves = 2 + static_cast<int>(random() % 6);
      for (int copy = 0; copy < copies; ++copy) cut(random, leaf, leaf + leaves, parts);
      leaf += leaves;
    }
    if (parts.size() > 20) continue;
    std::shuffle(parts.begin(), parts.end(), random);
    CAPTURE(i);
    CHECK(Nester{parts}.may_nest());
    CHECK(nests(parts));
  }
}

TEST_CASE("a set of pieces nests if some way of sharing it out does, and not otherwise") {
  std::mt19937 random{1702};
  int both[2]{};
  for (int i = 0; i < 3000; ++i) {
    std::vector<Part> parts;
    int const size = 2 + static_cast<int>(random() % 4);
    if (i % 2 == 0) { // changed at one place from a set that nests
      for (int copy = 0; copy <= i / 2 % 2; ++copy) cut(random, 0, 3 + i % 4, parts);
      auto& one = parts[random() % parts.size()].piece;
      one.first = (std::max)(0, one.first + static_cast<int>(random() % 3) - 1);
      if (parts.size() > 7) continue;
    } else {
      for (int k = 0; k < size; ++k) {
        int const leaves = random() % 2 == 0 ? 1 : 2 + 2 * static_cast<int>(random() % 2);
        parts.push_back(part(static_cast<int>(random() % 4), leaves, leaves > 1 ? static_cast<int>(random() % 3) : 0));
      }
    }
    std::vector<std::vector<Part>> heaps;
    bool const right = share_out(parts, 0, heaps);
    CAPTURE(i);
    CHECK(nests(parts) == right);
    if (right) CHECK(Nester{parts}.may_nest());
    ++both[right ? 1 : 0];
  }
  CHECK(both[0] > 300);
  CHECK(both[1] > 300);
}

TEST_CASE("a scheme has no more gatherings than it can name") {
  std::vector<Part> parts;
  for (int g = 0; g < Scheme::most_gatherings; ++g) parts.push_back(part(g == 0 ? 0 : 4 * g, 2, 0));
  CHECK(nests(parts));
  parts.push_back(part(4 * Scheme::most_gatherings, 2, 0));
  CHECK_FALSE(nests(parts));
}

TEST_CASE("a set of numbers has each number once, be they few or many") {
  std::mt19937_64 random{1703};
  for (int const most : {3, 16, 17, 40, 1000}) {
    detail::NumberSet numbers;
    std::set<std::uint64_t> known;
    for (int i = 0; i < most; ++i) {
      auto const number = i % 5 == 4 ? *known.begin() : random();
      CHECK(numbers.has(number) == (known.count(number) == 1));
      CHECK(numbers.insert(number) == known.insert(number).second);
      CHECK(numbers.has(number));
    }
    for (auto const number : known) CHECK(numbers.has(number));
    CHECK_FALSE(numbers.has(random()));
  }
  detail::NumberSet numbers;
  CHECK(numbers.insert(0));
  CHECK_FALSE(numbers.insert(1)); // 0 counts as 1
}
