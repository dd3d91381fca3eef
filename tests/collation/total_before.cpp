// SPDX-License-Identifier: MIT
// The number of leaves before the gatherings: GW and BMC write it so (80 Bl. a-k⁸), and so do dealers (common practice, no
// source). Leaves counted by hand.
#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a total before the gatherings is compared with them") {
  for (std::string const unit : {"leaves", "ll.", "l.", "ff.", "f.", "Bl.", "Bll.", "cc.", "lvs.", "fols.", "folios",
                                 "feuillets", "carte", "hojas", "Blatt"})
    for (std::string const joint : {". ", ", ", ": ", "; ", ", sign. ", ": signatures: "})
      for (std::string const format : {"4°: ", "4°. ", ""})
        for (bool const square : {false, true})
          for (long const stated : {80L, 81L, 160L}) {
            auto const number = std::to_string(stated);
            auto end = joint;
            if (unit.back() == '.' && joint[0] == '.') end = joint.substr(1);
            auto const text = format + (square ? "[" + number + "]" : number) + " " + unit + end + "a–k⁸";
            CAPTURE(text);
            auto const formula = read_lawfully(text);
            REQUIRE(formula);
            CHECK(formula->leaves() == 80);
            CHECK(formula->gatherings() == 10);
            if (stated == 80)
              CHECK(formula->warnings().empty());
            else {
              REQUIRE(formula->warnings().size() == 1);
              CHECK(formula->warnings()[0].problem == Problem::total_contradicts);
              CHECK(formula->warnings()[0].limit == 80);
            }
          }
}

TEST_CASE("a total whose word has no full point is written so that it reads back") {
  for (std::string const unit : {"leaves", "leaf", "ll", "l", "ff", "f", "Bl", "Bll", "cc", "lvs", "fols", "folios",
                                 "feuillets", "carte", "hojas", "Blatt"})
    for (std::string const blank : {" ", ""})
      for (std::string const joint : {". ", ", ", ": ", "; "})
        for (bool const before : {true, false}) {
          auto const total = "80" + blank + unit;
          auto const text = before ? total + joint + "a–k⁸" : "a–k⁸" + joint + total;
          CAPTURE(text);
          auto const formula = read_lawfully(text);
          if (!formula) continue; // 80l, a-k⁸
          CHECK(formula->leaves() == 80);
          auto const again = read_formula(write_formula(*formula));
          REQUIRE(again);
          CHECK(again->leaves() == 80);
          CHECK(write_formula(*again) == write_formula(*formula));
        }
}

TEST_CASE("a few leaves before the gatherings are a total if the gatherings have as many") {
  for (int stated = 1; stated <= 48; ++stated)
    for (std::string const unit : {" leaves, ", " ff., ", " l., ", " Bl. "}) {
      auto const text = "4°: " + std::to_string(stated) + unit + "a-b⁸";
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == (stated == 16 ? 16 : 16 + stated));
      CHECK(formula->warnings().empty() == (stated == 16));
      if (stated != 16) CHECK(formula->warnings()[0].problem == Problem::unsigned_leaves_as_gathering);
    }
  // called unsigned, they are leaves of their own, however many the others are
  CHECK((*read_formula("4°: 16 unsigned leaves, a-b⁸")).leaves() == 32);
  CHECK((*read_formula("4°: 82 leaves. 2 unsigned leaves, a-k⁸")).leaves() == 82);
  CHECK((*read_formula("4°: 82 leaves. 2 unsigned leaves, a-k⁸")).warnings().size() == 1);
}

TEST_CASE("a total stands before the format too, and alone it is not a formula") {
  auto const before = read_formula("80 Bl. 4°: a-k⁸");
  REQUIRE(before);
  CHECK(write_formula(*before) == "4°: a-k⁸, 80 Bl.");
  CHECK(before->warnings().empty());
  CHECK_FALSE(read_formula("4°: 80 leaves"));
  CHECK_FALSE(read_formula("80 f⁸"));
  // the same unit after the gatherings
  CHECK((*read_formula("a-k⁸, 79 feuillets")).warnings()[0].problem == Problem::total_contradicts);
  CHECK((*read_formula("a-k⁸, 80 cc.")).warnings().empty());
}
