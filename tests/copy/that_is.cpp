// SPDX-License-Identifier: MIT
// Words between leaves that name them again, i. e. and the like, in books of which their letters are gatherings (common practice,
// no source). The leaves are counted by hand or by the making of the list.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {
std::string said(IdealCopy const& book, std::string const& text) {
  auto const read = read_leaves_present(book, text);
  if (!read) return "refused " + std::string{identifier(read.error().problem)};
  auto result = wants(book, check_copy(book, read->spans));
  for (auto const& doubt : read->warnings()) result += " ? " + std::string{identifier(doubt.problem)};
  return result;
}
} // namespace

TEST_CASE("i. e. and the like are never gatherings") {
  for (std::string const formula : {"8°: a-k⁸", "8°: a-z⁸ 2a-2k⁸", "8°: A-K⁸"}) {
    CAPTURE(formula);
    IdealCopy const book{*read_formula(formula)};
    std::string const a = formula.find('a') != std::string::npos ? "a" : "A";
    auto const last = std::string{formula.find("2k") != std::string::npos    ? "2k8"
                                  : formula.find("a-z") != std::string::npos ? "z8"
                                                                             : (a == "a" ? "k8" : "K8")};
    for (std::string const phrase :
         {"i. e.",    "i.e.",  "that is",   "that is to say", "namely",  "viz.",     "viz",
          "d. h.",    "d.h.",  "das heißt", "und zwar",       "nämlich", "c.-à-d.",  "c'est-à-dire",
          "à savoir", "cioè",  "ossia",     "es decir",       "o sea",   "id est",   "Id est",
          "scil.",    "nempe", "d.w.z.",    "namelijk",       "Namely",  "videlicet"})
      for (std::string const after : {" ", ", ", ": "}) {
        if (after == ": " && phrase == "viz") continue; // a blank is wanting
        auto const that = phrase + after;
        CAPTURE(that);
        for (std::string const lacks : {"lacks ", "es fehlt "}) {
          CHECK(said(book, lacks + that + a + '1') == "wants " + a + '1');
          CHECK(said(book, lacks + "two leaves, " + that + a + "1 and " + a + '3') == "wants " + a + "1, " + a + '3');
          CHECK(said(book, lacks + "two leaves (" + that + a + "1 and " + a + "3), " + a + '5') ==
                "wants " + a + "1, " + a + "3, " + a + '5');
          CHECK(said(book, lacks + "the last leaf, " + that + last) == "wants " + last);
          CHECK(said(book, lacks + "the last leaf (" + that + last + ')') == "wants " + last);
          CHECK(said(book, lacks + a + "1-3, " + that + a + "1, " + a + "2, " + a + '3') == "wants " + a + "1-3");
          CHECK(said(book, lacks + a + "1 " + that + a + "1, " + a + '3') == "wants " + a + "1, " + a + '3');
          // another leaf than the one before
          CHECK(said(book, lacks + a + "1, " + that + a + '3') == "wants " + a + "1, " + a + "3 ? said_in_two_ways");
          CHECK(said(book, lacks + a + "1 (" + that + a + "3)") == "wants " + a + "1, " + a + "3 ? said_in_two_ways");
        }
        CHECK(said(book, "lacks " + phrase).starts_with("refused"));
        CHECK(said(book, "Imperfect, " + that + "lacks " + a + '1') == "wants " + a + '1');
      }
  }
  IdealCopy const book{*read_formula("8°: a-k⁸")};
  auto const other = read_leaves_present(book, "lacks b1, i. e. b3");
  REQUIRE(other);
  REQUIRE(other->warnings().size() == 1);
  CHECK(other->warnings().front().problem == Problem::said_in_two_ways);
  CHECK(other->warnings().front().place->column == 11);
  CHECK(other->warnings().front().found_text() == "i. e.");
  CHECK(said(book, "lacks i, e") == "wants e, i");
  CHECK(said(book, "lacks d, h") == "wants d, h");
  CHECK(said(book, "lacks i.") == "wants i");
  CHECK(said(book, "wants d h") == "wants d, h");
}

TEST_CASE("leaves that are there and are named again are there once") {
  IdealCopy const book{*read_formula("8°: a-k⁸")};
  CHECK(said(book, "a-k, i. e. a-k").empty());
  CHECK(check_copy(book, (*read_leaves_present(book, "a1-8, i. e. a")).spans).repeated.empty());
}
