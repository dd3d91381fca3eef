// SPDX-License-Identifier: MIT
// Leaves that a formula says to be the same, π1[=B8]. Bowers explains the sign by such books (Studies in Bibliography 1,
// 1948): a leaf was printed with one gathering and bound with another, so that the formula deletes it in the one place
// and has it in the other. The formulas are made from a book of two gatherings of eight leaves, of which it is known
// what was printed: two sheets of octavo, and nothing else.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

std::vector<Problem> doubts_of_same(std::string const& text) {
  auto const formula = read_lawfully(text);
  REQUIRE(formula);
  std::vector<Problem> problems;
  for (auto const& doubt : formula->warnings()) problems.push_back(doubt.problem);
  return problems;
}
bool is_made_of_two_sheets(std::string const& text) { return paper(*read_formula(text)).sheets.stated == Fraction{2}; }
using Doubts = std::vector<Problem>;

} // namespace

TEST_CASE("a leaf that is the same as another is in one of the two places alone") {
  for (int leaf = 1; leaf <= 8; ++leaf) {
    auto const b = "B" + std::to_string(leaf);
    struct Place {
      std::string before, after; // the identity is written between the two
      bool is_added;             // paper of its own, if the leaf is not that of B
    };
    std::vector<Place> const places{{"8°: π1", " A-B⁸", true},     {"8°: A⁸(A3+χ1", ") B⁸", true},
                                    {"8°: A⁸(A3+1", ") B⁸", true}, {"8°: A⁸(±A3", ") B⁸", true},
                                    {"8°: A-B⁸ χ1", "", true},     {"8°: A⁸(−A3", ") B⁸", false}};
    for (auto const& place : places) {
      auto const told = place.before + "[=" + b + "]" + place.after;
      auto const deleted = place.after.empty() ? "8°: A-B⁸(−" + b + ") χ1[=" + b + "]" : told + "(−" + b + ")";
      CAPTURE(told);
      CAPTURE(deleted);
      if (place.is_added) {
        CHECK(doubts_of_same(deleted).empty());
        CHECK(is_made_of_two_sheets(deleted));
        CHECK(doubts_of_same(told) == Doubts{Problem::identity_in_both_places});
        CHECK(doubts_of_same(told + (place.after.empty() ? "" : "(±" + b + ")")) ==
              (place.after.empty() ? Doubts{Problem::identity_in_both_places} : Doubts{}));
      } else { // A3 is gone and B has its eight leaves, or neither has it
        CHECK(doubts_of_same(deleted) == Doubts{Problem::identity_in_both_places});
        CHECK(doubts_of_same(told) == Doubts{Problem::identity_of_half_fold});
        CHECK(doubts_of_same(told + "(±" + b + ")").empty()); // printed as A3, it replaces a leaf of B
        CHECK(is_made_of_two_sheets(told + "(±" + b + ")"));
      }
    }
  }
}

TEST_CASE("a leaf that went elsewhere left its other half, or took it with it") {
  for (int leaf = 1; leaf <= 4; ++leaf) {
    auto const other = 9 - leaf;
    auto const one = std::to_string(leaf), fold = one + "." + std::to_string(other);
    CAPTURE(fold);
    auto const whole = "8°: π²[=B" + fold + "] A-B⁸(−B" + fold + ")";
    CHECK(doubts_of_same(whole).empty());
    CHECK(is_made_of_two_sheets(whole));
    auto const inserted = "8°: A⁸(A3+χ1.2[=B" + fold + "]) B⁸(−B" + fold + ")";
    CHECK(doubts_of_same(inserted).empty());
    // one leaf of the fold π² was printed with B, the other with nothing
    CHECK(doubts_of_same("8°: π²[=B" + one + "] A-B⁸(−B" + one + ")") == Doubts{Problem::identity_of_half_fold});
    CHECK(doubts_of_same("8°: π²(−π2)[=B" + one + "] A-B⁸(−B" + one + ")").empty());
    CHECK(doubts_of_same("8°: A-B⁸(−B" + one + ") χ1[=B" + one + "]").empty());
  }
  // a whole gathering of four was printed as the middle of another
  CHECK(doubts_of_same("12°: π⁴[=B5,6,7,8] A-B¹²(−B5-8)").empty());
  CHECK(doubts_of_same("12°: π⁴[=B5,6,7] A-B¹²(−B5-7)") == Doubts{Problem::identity_of_half_fold});
}

TEST_CASE("formulas of published descriptions do not contradict their identities") {
  // The first three: Bowers, Studies in Bibliography 1 (1948); the others: headers of EEBO-TCP (CC0)
  for (char const* text :
       {"pi1[=B2] A^8 [B]^2(-B2)", "4°: A4(-A4) B-G4 H4(H4+1[=A4?])", "A1[=O4?] B-N4 O4(-O4)",
        "A⁴ (-A1.4) B-G⁴ g1 (=A4) ²G-I⁴", "[A]¹ B-G⁴ (-G4; =A1?)", "pi¹ (=L4) A² B-K⁴ L⁴ (-L4, = pi)"}) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    for (auto const& doubt : formula->warnings()) {
      CHECK(doubt != Problem::identity_in_both_places);
      CHECK(doubt != Problem::identity_of_half_fold);
      CHECK(doubt != Problem::identity_not_in_formula);
    }
  }
}

TEST_CASE("a leaf that is the same is one that the formula has, folded or inserted") {
  CHECK(doubts_of_same("8°: A⁸(−A8[=χ1]) B⁸(B1+χ1)").empty());
  CHECK(doubts_of_same("8°: A⁸ B⁸(B1+χ1, −B8[=χ1])").empty());
  for (char const* text : {"8°: π1[=Z8] A⁸", "8°: π1[=A9] A⁸", "8°: A⁸(−A1[=9])", "8°: A⁸(−A8[=χ1])"}) {
    CAPTURE(text);
    CHECK(doubts_of_same(text) == Doubts{Problem::identity_not_in_formula});
  }
  // more leaves than the gathering has, however many
  std::string many = "8°: π1[=A8";
  for (int i = 0; i < 200; ++i) many += ",8";
  auto const doubts = doubts_of_same(many + "](−π1) A⁸(−A8)");
  REQUIRE(doubts.size() == 201);
  for (std::size_t i = 1; i < doubts.size(); ++i) CHECK(doubts[i] == Problem::identity_not_in_formula);
}
