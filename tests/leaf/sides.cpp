// SPDX-License-Identifier: MIT
#include <bifolium/leaf.hpp>

#include "check.hpp"

using namespace bifolium;

TEST_CASE("the recto is the side read first, and the verso the other") {
  for (int leaves : {1, 2, 4, 7, 8}) {
    Gathering<> const gathering{leaves};
    for (int number = 1; number <= leaves; ++number) {
      Leaf<> const leaf{number, gathering};
      auto const recto = leaf.recto(), verso = leaf.verso();
      CHECK(recto.is_recto());
      CHECK_FALSE(recto.is_verso());
      CHECK(verso.is_verso());
      CHECK_FALSE(verso.is_recto());
      CHECK(recto.page_in_gathering() == 2 * number - 1);
      CHECK(verso.page_in_gathering() == 2 * number);
      CHECK(recto.other_side() == verso);
      CHECK(verso.other_side() == recto);
    }
  }
  STATIC_CHECK(Leaf<8>{3}.recto().is_recto() && !Leaf<8>{3}.verso().is_recto());
}
