// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "true_book.hpp"

#include <doctest/doctest.h>
#include <ostream>
#include <set>

using namespace bifolium;

namespace {

/// A copy of a book: which leaves it has, by their numbers from 1, in the order in which they are bound.
std::vector<int> copy_of(truth::Draw& draw, int leaves) {
  std::vector<int> all;
  for (int number = 1; number <= leaves; ++number) all.push_back(number);
  auto const at = [&](std::size_t size) { return all.begin() + draw.number(static_cast<int>(size)); };
  for (auto times = draw.number(5); times > 0 && all.size() > 4; --times) { // lost
    auto const first = at(all.size() - 2);
    all.erase(first, first + draw.from_to(1, 2));
  }
  for (auto times = draw.number(3); times > 0; --times) { // bound in another place
    auto const from = at(all.size());
    auto const moved = *from;
    all.erase(from);
    all.insert(at(all.size() + 1), moved);
  }
  for (auto times = draw.number(3); times > 0; --times) { // there twice
    auto const again = *at(all.size());
    all.insert(at(all.size() + 1), again);
  }
  if (draw.one_in(40)) std::reverse(all.begin(), all.end());
  if (draw.one_in(40)) std::rotate(all.begin(), at(all.size()), all.end());
  return all;
}
/// The copy as a list of leaves, with spans where numbers follow one another.
std::string listed(truth::Draw& draw, std::vector<truth::Leaf> const& leaves, std::vector<int> const& copy) {
  auto const name = [&](int number) { return leaves[static_cast<std::size_t>(number) - 1].name(); };
  std::string text;
  for (std::size_t i = 0; i < copy.size(); ++i) {
    auto end = i;
    while (end + 1 < copy.size() && copy[end + 1] == copy[end] + 1 && !draw.one_in(12)) ++end;
    text.append(text.empty() ? "" : " ").append(name(copy[i]));
    if (end > i) text.append(draw.one_in(2) ? "-" : "–").append(name(copy[end]));
    i = end;
  }
  return text;
}
/// Of the leaves that are there for the first time, the most that can stay where they are: by trying each as the last.
int most_in_place(std::vector<int> const& copy) {
  std::vector<int> fresh, best;
  std::set<int> seen;
  for (auto const number : copy)
    if (seen.insert(number).second) fresh.push_back(number);
  int most = 0;
  for (std::size_t i = 0; i < fresh.size(); ++i) {
    int here = 1;
    for (std::size_t k = 0; k < i; ++k)
      if (fresh[k] < fresh[i]) here = std::max(here, best[k] + 1);
    best.push_back(here);
    most = std::max(most, here);
  }
  return most;
}
std::int64_t leaves_of(std::vector<LeafSpan> const& spans) {
  std::int64_t sum = 0;
  for (auto const& span : spans) sum += span.leaves();
  return sum;
}

} // namespace

TEST_CASE("copies made from books want what was taken from them") {
  truth::Draw draw{1684};
  int lost = 0, twice = 0, moved = 0, backwards = 0;
  for (int round = truth::rounds(2000); round > 0; --round) {
    truth::Book const made{draw, truth::manner(draw)};
    auto const leaves = made.leaves();
    if (leaves.size() < 5) continue;
    auto const copy = copy_of(draw, static_cast<int>(leaves.size()));
    auto const text = listed(draw, leaves, copy);
    CAPTURE(made.text());
    CAPTURE(text);
    IdealCopy const book{*read_formula(made.text())};
    auto const present = read_leaves_present(book, text);
    REQUIRE(present);
    auto const checked = check_copy(book, present->spans);

    std::set<int> const there{copy.begin(), copy.end()};
    REQUIRE(checked.leaves_ideal == static_cast<std::int64_t>(leaves.size()));
    REQUIRE(checked.leaves_present == static_cast<std::int64_t>(copy.size()));
    REQUIRE(checked.leaves_wanting == static_cast<std::int64_t>(leaves.size() - there.size()));
    CHECK(checked.complete() == (there.size() == leaves.size()));
    CHECK(checked.not_in_ideal.empty());
    std::set<int> wanting;
    for (auto const& span : checked.wanting)
      for (auto number = span.from; number <= span.to; ++number) wanting.insert(static_cast<int>(number));
    for (int number = 1; number <= static_cast<int>(leaves.size()); ++number)
      REQUIRE(wanting.contains(number) != there.contains(number));
    REQUIRE(leaves_of(checked.repeated) == static_cast<std::int64_t>(copy.size() - there.size()));
    std::multiset<int> again{copy.begin(), copy.end()};
    for (auto const number : there) again.erase(again.find(number));
    for (auto const& span : checked.repeated)
      for (auto number = span.from; number <= span.to; ++number) {
        auto const at = again.find(static_cast<int>(number));
        REQUIRE(at != again.end());
        again.erase(at);
      }
    // no more leaves are called misplaced than must be, and the others are in order
    std::set<int> misplaced;
    for (auto const& one : checked.misplaced)
      for (auto number = one.leaves.from; number <= one.leaves.to; ++number) misplaced.insert(static_cast<int>(number));
    CHECK(static_cast<int>(there.size() - misplaced.size()) == most_in_place(copy));
    std::set<int> seen;
    int last = 0;
    for (auto const number : copy) {
      if (!seen.insert(number).second || misplaced.contains(number)) continue;
      REQUIRE(number > last);
      last = number;
    }
    // what it wants, in words, reads back to the leaves that are missing
    if (!wanting.empty()) {
      auto const words = wants(book, checked);
      CAPTURE(words);
      REQUIRE(words.starts_with("wants "));
      auto const read = read_leaves_present(book, words.substr(6));
      REQUIRE(read);
      std::set<int> named;
      for (auto const& span : read->spans)
        for (auto number = span.from; number <= span.to; ++number) named.insert(static_cast<int>(number));
      CHECK(named == wanting);
      // and as a statement of what is wanting it is the book without them
      auto const rest = read_leaves_present(book, words);
      REQUIRE(rest);
      CHECK(rest->doubts.size() == read->doubts.size());
      auto const again_checked = check_copy(book, rest->spans);
      CHECK(again_checked.wanting == checked.wanting);
      CHECK(again_checked.leaves_present == static_cast<std::int64_t>(there.size()));
    }
    lost += !wanting.empty(), twice += !checked.repeated.empty(), moved += !misplaced.empty();
    backwards += checked.backwards;
  }
  CHECK(lost > 1000);
  CHECK(twice > 700);
  CHECK(moved > 700);
  CHECK(backwards > 0);
}
