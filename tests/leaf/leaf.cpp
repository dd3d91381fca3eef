// SPDX-License-Identifier: MIT
#include <bifolium/leaf.hpp>

#include "check.hpp"

#include <sstream>
#include <type_traits>

using namespace bifolium;

namespace {
template <class A, class B>
concept comparable = requires(A a, B b) {
  a == b;
};
template <class T> constexpr bool plain = std::is_trivially_copyable_v<T>&& std::regular<T>;
} // namespace

TEST_CASE("the four values are small, and a size known while compiling costs no byte") {
  STATIC_CHECK(sizeof(Gathering<8>) == 1 && sizeof(Gathering<>) == 2);
  STATIC_CHECK(sizeof(Leaf<8>) == 2 && sizeof(Leaf<>) == 4);
  STATIC_CHECK(sizeof(PageSide<8>) == 4 && sizeof(PageSide<>) == 6);
  STATIC_CHECK(std::is_trivially_copyable_v<Leaf<>> && std::is_trivially_copyable_v<PageSide<8>>);
  STATIC_CHECK(plain<Gathering<8>>);
}

TEST_CASE("what must not be compared does not compile") {
  STATIC_CHECK(comparable<Leaf<8>, Leaf<8>> && comparable<Leaf<8>, Leaf<>>);
  STATIC_CHECK(!comparable<Leaf<8>, Leaf<4>>);
  STATIC_CHECK(!comparable<Leaf<8>, int> && !comparable<PageSide<8>, int>);
  STATIC_CHECK(!comparable<Leaf<8>, Gathering<8>> && !comparable<PageSide<8>, Leaf<8>>);
}

// A gathering is a range of its leaves, whether its size is known while compiling or when run (constructed).
TEST_CASE("a gathering is walked through leaf by leaf") {
  STATIC_CHECK([] {
    int sum = 0;
    for (auto const leaf : Gathering<8>{}) sum = sum * 10 + leaf.number();
    return sum;
  }() == 12345678);
  for (int size : {1, 2, 5, 8, 4096}) {
    int expected = 0;
    for (auto const leaf : Gathering(size)) {
      CHECK(leaf.number() == ++expected);
      CHECK(leaf.leaves() == size);
    }
    CHECK(expected == size);
  }
}

TEST_CASE("pages side by side on a bifolium add up to twice the leaves and one") {
  // Savage, Dictionary of the Art of Printing (1841), s.v. Imposing, p. 329:
  // 5 folio, 9 quarto, 17 octavo, 25 twelves, 33 sixteens, 37 eighteens
  int const sums[][2]{{2, 5}, {4, 9}, {8, 17}, {12, 25}, {16, 33}, {18, 37}};
  for (auto const& [leaves, sum] : sums) {
    Gathering const gathering{leaves};
    CHECK(gathering.conjugate_sum() == sum);
    for (int k = 1; k <= leaves; ++k)
      for (auto page : {gathering.leaf(k).recto(), gathering.leaf(k).verso()})
        CHECK(page.page_in_gathering() + page.conjugate()->page_in_gathering() == sum);
  }
}

TEST_CASE("an opening is a verso and the recto of the next leaf") {
  STATIC_CHECK(Gathering<8>{}.leaf(3).verso().facing() == Gathering<8>{}.leaf(4).recto());
  STATIC_CHECK(Gathering<8>{}.leaf(4).recto().facing() == Gathering<8>{}.leaf(3).verso());
  STATIC_CHECK(!Gathering<8>{}.leaf(1).recto().facing());
  STATIC_CHECK(!Gathering<8>{}.leaf(8).verso().facing());
  STATIC_CHECK(Gathering<8>{}.leaf(8).recto().other_side().page_in_gathering() == 16);
}

TEST_CASE("the middle leaf of an odd gathering has no conjugate") {
  STATIC_CHECK(!Gathering<9>{}.leaf(5).conjugate());
  STATIC_CHECK(Gathering{9}.leaf(4).conjugate()->number() == 6);
  CHECK(!Gathering{9}.leaf(5).verso().conjugate());
}

TEST_CASE("a leaf that is not there is a broken precondition") {
  CHECK_THROWS_AS((void)Gathering{8}.leaf(9), BrokenPrecondition);
  CHECK_THROWS_AS((void)Gathering{8}.leaf(0), BrokenPrecondition);
  CHECK_THROWS_AS(Gathering{0}, BrokenPrecondition);
  CHECK_THROWS_AS(Gathering{4097}, BrokenPrecondition);
}

TEST_CASE("values print themselves and hash") {
  std::ostringstream out;
  out << Gathering<8>{} << "; " << Gathering{8}.leaf(3).verso();
  CHECK(out.str() == "gathering of 8; verso of leaf 3 of 8");
  CHECK(std::hash<Leaf<>>{}(Leaf<8>{3}) == std::hash<Leaf<8>>{}(Leaf<8>{3}));
}
