// SPDX-License-Identifier: MIT
// What an Expected holds is made, copied, moved and let go as often as it should be, whichever of its three kinds of room it
// has: for bytes, for what starts empty, for what does not.
#include <bifolium/core/expected.hpp>

#include "check.hpp"

#include <memory>
#include <string>
#include <type_traits>
#include <utility>

using namespace bifolium;

namespace {

struct Bytes {
  int number{};
};
struct StartsEmpty {
  std::shared_ptr<int> held{};
};
struct NeverEmpty {
  std::shared_ptr<int> held;
  explicit NeverEmpty(std::shared_ptr<int> one) : held{std::move(one)} {}
};
struct MovesOnly {
  std::unique_ptr<int> held;
  explicit MovesOnly(int number) : held{std::make_unique<int>(number)} {}
};

Error wrong() { return error_at(Problem::not_a_number, 1, 3, "x", 1); }

template <class T> void holds_as_often(T (*make)(std::shared_ptr<int> const&)) {
  auto const held = std::make_shared<int>(7);
  {
    Expected<T> one{make(held)};
    CHECK(held.use_count() == 2);
    auto copy = one;
    CHECK(held.use_count() == 3);
    auto moved = std::move(copy);
    CHECK(held.use_count() == 3);
    moved = Expected<T>{wrong()};
    CHECK(held.use_count() == 2);
    CHECK_FALSE(moved);
    CHECK(moved.error() == wrong());
    moved = one;
    CHECK(held.use_count() == 3);
    CHECK(*moved->held == 7);
    auto& same = moved;
    moved = same;
    CHECK(held.use_count() == 3);
    auto const failed = Expected<T>{wrong()};
    auto const copy_of_failed = failed;
    CHECK_FALSE(copy_of_failed);
    auto const taken = *std::move(moved);
    CHECK(*taken.held == 7);
    CHECK_THROWS_AS(static_cast<void>(*failed), BrokenPrecondition);
  }
  CHECK(held.use_count() == 1);
}

TEST_CASE("what is expected is let go as often as it was made") {
  holds_as_often<StartsEmpty>([](std::shared_ptr<int> const& held) { return StartsEmpty{held}; });
  holds_as_often<NeverEmpty>([](std::shared_ptr<int> const& held) { return NeverEmpty{held}; });
}

TEST_CASE("what is expected can be as much as what is held") {
  static_assert(std::is_trivially_copyable_v<Expected<Bytes>>);
  static_assert(std::is_copy_constructible_v<Expected<NeverEmpty>>);
  static_assert(!std::is_copy_constructible_v<Expected<MovesOnly>>);
  Expected<MovesOnly> one{MovesOnly{3}};
  auto two = std::move(one);
  CHECK(*two->held == 3);
  two = Expected<MovesOnly>{MovesOnly{4}};
  CHECK(*std::move(two).value().held == 4);
}

} // namespace
