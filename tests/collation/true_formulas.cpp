// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>

#include "true_book.hpp"

#include <doctest/doctest.h>
#include <ostream>

using namespace bifolium;

TEST_CASE("formulas made of books, with changes in every notation, have the leaves of the books") {
  truth::Draw draw{1949};
  int insertions = 0, deletions = 0, cancels = 0;
  for (int round = truth::rounds(2000); round > 0; --round) {
    truth::Book const book{draw, truth::manner(draw)};
    auto const leaves = book.leaves();
    CAPTURE(book.text());
    auto const formula = read_formula(book.text());
    REQUIRE(formula);
    IdealCopy const copy{*formula};
    REQUIRE(copy.leaves() == static_cast<std::int64_t>(leaves.size()));
    CHECK(count_formula(book.text())->leaves == copy.leaves());
    CHECK(copy.gatherings_of_runs() == static_cast<std::int64_t>(book.gatherings().size()));
    // each leaf is found under its name, has its number, and is the leaf of that number
    for (std::size_t i = 0; i < leaves.size(); ++i) {
      auto const number = static_cast<std::int64_t>(i) + 1;
      CAPTURE(leaves[i].name());
      auto const reference = read_reference(copy, leaves[i].name());
      REQUIRE(reference);
      REQUIRE(copy.leaf_number(reference->leaf) == number);
      REQUIRE(copy.leaf_of_number(number) == reference->leaf);
      CHECK(write_reference(copy, *reference) == leaves[i].name());
      CHECK(copy.is_cancel(reference->leaf) == leaves[i].cancel);
      CHECK(copy.inserted(reference->leaf).has_value() == leaves[i].inserted);
      insertions += leaves[i].inserted, cancels += leaves[i].cancel;
    }
    for (auto const& gathering : book.gatherings())
      for (auto const& leaf : gathering.leaves) {
        if (!leaf.deleted) continue;
        CAPTURE(leaf.name());
        auto const found = copy.find(*read_signature(leaf.gathering), leaf.number);
        REQUIRE(found);
        CHECK(copy.is_deleted(found->leaf));
        CHECK_FALSE(copy.leaf_number(found->leaf));
        ++deletions;
      }
    // written in any notation and read again, the book is the same
    for (auto notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
      auto const written = write_formula(*formula, notation);
      CAPTURE(written);
      auto const again = read_formula(written);
      REQUIRE(again);
      CHECK(again->runs().size() == formula->runs().size());
      CHECK(again->changes().size() == formula->changes().size());
      IdealCopy const same{*again};
      REQUIRE(same.leaves() == copy.leaves());
      for (std::size_t i = 0; i < leaves.size(); i += 7)
        CHECK(same.leaf_of_number(static_cast<std::int64_t>(i) + 1) ==
              copy.leaf_of_number(static_cast<std::int64_t>(i) + 1));
    }
  }
  CHECK(insertions > 1000);
  CHECK(deletions > 1000);
  CHECK(cancels > 1000);
}

TEST_CASE("formulas are written letter by letter as the field writes them") {
  // a round trip cannot see a sign that is written wrong and read back, so the text itself is looked at
  struct {
    char const *text, *unicode, *caret, *flat;
  } const rows[]{{"8°: A-K8(-K8)", "8°: A-K⁸(−K8)", "8°: A-K^8(-K8)", "8°: A-K8(-K8)"},
                 {"8°: A-K8 (-A1,3 B4.5)", "8°: A-K⁸(−A1,3, B4.5)", "8°: A-K^8(-A1,3, B4.5)", "8°: A-K8(-A1,3, B4.5)"},
                 {"4°: A-B4(+/-A2)", "4°: A-B⁴(±A2)", "4°: A-B^4(+-A2)", "4°: A-B4(+-A2)"},
                 {"8°: A8(A3+χ1.2)", "8°: A⁸(A3+χ1.2)", "8°: A^8(A3+chi1.2)", "8°: A8(A3+chi1.2)"},
                 {"8°: pi2 A8(A8=pi1)", "8°: π² A⁸(A8=π1)", "8°: pi^2 A^8(A8=pi1)", "8°: pi2 A8(A8=pi1)"}};
  for (auto const& row : rows) {
    CAPTURE(row.text);
    auto const formula = read_formula(row.text);
    REQUIRE(formula);
    CHECK(write_formula(*formula, Notation::unicode) == row.unicode);
    CHECK(write_formula(*formula, Notation::caret) == row.caret);
    CHECK(write_formula(*formula, Notation::flat) == row.flat);
  }
}
