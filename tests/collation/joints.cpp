// SPDX-License-Identifier: MIT
// What catalogues write between two runs: a sign, a word of their language, or the name of a part (common practice, no
// source). Leaves counted by hand.
#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a joint between two runs loses none of them") {
  struct Second {
    char const* text;
    int leaves;
  };
  for (std::string const first : {"A-K⁸", "*⁴ A-K⁸", "π² A-K⁸", "A-J⁸ K⁸(−K8)", "A-I⁸ K⁸ (K8 blank)", "a-k⁸", "1-10⁸"})
    for (std::string const joint : {"&", "&amp;", "and", "und", "et", "ed", "en", "og", "och", "e", "y", "u.", "then",
                                    "followed by", "dann", "puis", "poi", ", then", "; followed by"})
      for (Second const second : {Second{"α-β⁸", 16},
                                  {"²A-B⁸", 16},
                                  {"†⁴", 4},
                                  {"χ1", 1},
                                  {"[par.]⁴", 4},
                                  {"L-M⁸", 16},
                                  {"l-m⁸", 16},
                                  {"Aa-Bb⁸", 16},
                                  {"3A⁶", 6}}) {
        auto const text = "8°: " + first + (joint[0] == ',' || joint[0] == ';' ? "" : " ") + joint + " " + second.text;
        auto const without = "8°: " + first + " " + second.text;
        CAPTURE(text);
        auto const formula = read_lawfully(text), plain = read_formula(without);
        REQUIRE(formula);
        REQUIRE(plain);
        CHECK(formula->leaves() == plain->leaves());
        CHECK(formula->gatherings() == plain->gatherings());
        CHECK(formula->leaves() == read_formula(first).value().leaves() + second.leaves);
      }
}

TEST_CASE("a sign or letter that is a signature joins nothing") {
  CHECK((*read_formula("a-z⁸ &⁸ A⁸")).leaves() == 200);
  CHECK((*read_formula("a-z⁸ & ⁸ A⁸")).leaves() == 200);
  CHECK((*read_formula("a-z⁸ & ꝯ⁸ A⁸", dialects::bmc)).leaves() == 208); // & has the count of the next
  for (char const* text : {"a-z⁸ & A-K⁸", "a-d⁸ e f⁶", "a-d⁸ e A⁶", "a-x⁸ y z⁶", "a-x⁸ y A⁸"}) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE_FALSE(formula);
    CHECK(formula.error().problem == Problem::no_leaf_count);
  }
  CHECK((*read_formula("a-d⁸ e f⁶", dialects::bmc)).leaves() == 44);
  CHECK((*read_formula("A-K⁸ e a-b⁶", dialects::bmc)).leaves() == 98); // e is a gathering of six there
  CHECK((*read_formula("A-K⁸ et 2 plates")).leaves() == 80);
}

TEST_CASE("the name of a part after the others begins a part") {
  for (std::string const name : {"supplement", "Supplement", "suppl.", "appendix", "Appendice", "Anhang", "Index"})
    for (std::string const between : {"; ", ", ", " ", ". "}) {
      auto const text = "8°: A-K⁸" + between + name + ": A-C⁸";
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == 104);
      CHECK(formula->parts().size() == 2);
      CHECK(formula->warnings().empty()); // its letters begin again
    }
  CHECK((*read_formula("8°: A-K⁸; appendix a-b⁸")).leaves() == 96);
  auto const place = read_formula("8°: A-K⁸; index K⁸"); // where the index is
  REQUIRE(place);
  CHECK(place->leaves() == 80);
  CHECK(place->warnings()[0].problem == Problem::text_not_read);
}
