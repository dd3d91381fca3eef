// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("what has no gathering is not a formula") {
  for (std::string const& text :
       std::initializer_list<std::string>{"", " ", "\t", "8°:", "8°: ", "[$4 signed]", "8°: [$4 signed]", "()", "(−A1)",
                                          "8°: (−A1)", "²", "⁸", "8°: ⁸", ", 16 leaves", "8°: , 16 leaves"}) {
    CAPTURE(text);
    CHECK_FALSE(read_formula(text));
    CHECK_FALSE(count_formula(text));
    for (auto const& dialect : {dialects::strict, dialects::bmc, dialects::stc}) {
      CHECK_FALSE(read_formula(text, dialect));
      CHECK_FALSE(count_formula(text, dialect));
    }
  }
}

TEST_CASE("a deletion by a tripled letter is of that gathering") {
  // aaa is the third alphabet: 3a, with leaf 3 or with the gathering, as the text says
  auto const deleted = [](char const* text, char const* leaf) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    CHECK(book.leaves() == 7);
    auto const reference = read_reference(book, leaf);
    CHECK((!reference || !book.leaf_number(reference->leaf)));
    int left = 0;
    for (auto const one : book) left += one.leaf > 0 ? 1 : 0;
    CHECK(left == 7);
  };
  deleted("aaa8(-aaa3)", "3a3");
  deleted("aaa⁸(−aaa3)", "3a3");
  deleted("3a⁸(−3a3)", "3a3");
  deleted("AA⁸(−AA3)", "2A3");
}

TEST_CASE("a full stop joins conjugates and a comma parts leaves, when written as well as read") {
  auto const written = [](char const* text) { return write_formula(*read_formula(text), Notation::unicode); };
  CHECK(written("8°: A⁸(−A1.8)") == "8°: A⁸(−A1.8)");
  CHECK(written("8°: A⁸(−A1,8)") == "8°: A⁸(−A1,8)");
  CHECK(written("8°: A⁸(−A3.6, A2)") == "8°: A⁸(−A3.6,2)");
  CHECK(written("8°: A⁸(A4+χ1.2)") == "8°: A⁸(A4+χ1.2)");
  CHECK(written("8°: A⁸(A4+χ1,2)") == "8°: A⁸(A4+χ1,2)");
  CHECK(written("8°: A⁸(±A4.5)") == "8°: A⁸(±A4.5)");
}
