// SPDX-License-Identifier: MIT
// Blank leaves in the words of descriptions (common practice, no source); which leaves they mean is plain from the words.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <string>

using namespace bifolium;

namespace {

struct BlankLeaves {
  char const* text;
  char const* blanks; ///< the leaves, with a blank between them
  bool doubted = false;
};

} // namespace

TEST_CASE("blank leaves are known in every form of words, or it is told that the words were not read") {
  for (auto const& one :
       std::initializer_list<BlankLeaves>{{"A-K⁸ (K8 blank)", "K8"},
                                          {"A-K⁸ (K8 blank?)", "K8"},
                                          {"A-K⁸ (K8, blank)", "K8"},
                                          {"A-K⁸ (K8 bl.)", "K8"},
                                          {"A-K⁸ (K8 probably blank)", "K8"},
                                          {"A-K⁸ (A1 and K8 are blank)", "A1 K8"},
                                          {"A-K⁸ (A1, K7-8 blank)", "A1 K7 K8"},
                                          {"A-K⁸ (K7 & 8 blanks)", "K7 K8"},
                                          {"A-K⁸ (A1 blank, K8 blank)", "A1 K8"},
                                          {"A-K⁸ (A1 blank; K8 blank?)", "A1 K8"},
                                          {"A-K⁸ (last two leaves blank)", "K7 K8"},
                                          {"A-K⁸ (with the final blank K8)", "K8"},
                                          {"A-K⁸ (including the final blank)", "K8"},
                                          {"A-K⁸ (blank leaves A1, K8)", "A1 K8"},
                                          {"A-K⁸ (-K8 blank)", "K8"},
                                          {"A-K⁸ (-K8, blank)", "K8"},
                                          {"A⁸ B⁸(first leaf blank)", "B1"},
                                          {"A-K⁸ (K8v blank)", ""}, // a page, and not the leaf
                                          {"A-K⁸ (A1r, K8 blank)", "K8"},
                                          {"A-K⁸ (first leaf blank)", "", true}, // of the gathering, or of the book
                                          {"A-K⁸ (verso of K8 blank)", "", true},
                                          {"A-K⁸ (K8 blank, not seen)", "K8"},
                                          {"A-K⁸ (K7 verso, K8 blank)", "K8"},
                                          {"A-K⁸ (K8 recto blank)", ""},
                                          {"A-K⁸ (K8 blank; K2,3 missigned I2,3)", "K8"},
                                          {"A-K⁸ (A1 blank, B2 torn)", "A1"},
                                          {"A-K⁸ (K9 blank)", "", true},
                                          {"A-K⁸ (L1 blank)", "", true},
                                          {"A-K⁸ (K8 blank but for a line)", "", true},
                                          {"A-K⁸ (A1 blank, and so the last page of K8, blank)", "", true}}) {
    std::string const text{one.text};
    CAPTURE(text);
    CHECK(broken_law(text, dialects::strict) == "");
    auto const formula = read_formula(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    std::string blanks;
    for (auto const& leaf : book.blanks())
      blanks.append(blanks.empty() ? "" : " ").append(write_reference(book, Reference{leaf}));
    CHECK(blanks == one.blanks);
    CHECK(formula->warnings().empty() != one.doubted);
    if (one.doubted) CHECK(formula->warnings()[0].problem == Problem::text_not_read);
  }
}
