// SPDX-License-Identifier: MIT
// Cancels that a description names in words. A cancel, or cancellans, is the leaf that was put in the place of another;
// that is a word of the trade (common practice, no source). The texts are constructed; what they mean is read by hand.
#include <bifolium/collation.hpp>
#include <bifolium/collation/detail/words/words_of_change.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"
#include "typed.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a leaf that words call a cancel is a cancel as ± makes it, in every form of the words") {
  struct Said {
    char const *words, *written;
  };
  for (auto const& one : std::initializer_list<Said>{{"A1 a cancel", "(±A1)"},
                                                     {"A1 cancel", "(±A1)"},
                                                     {"A1 cancel.", "(±A1)"},
                                                     {"A1 is a cancel", "(±A1)"},
                                                     {"A1 is cancel", "(±A1)"},
                                                     {"A1 being a cancel", "(±A1)"},
                                                     {"A1 A CANCEL", "(±A1)"},
                                                     {"with A1 a cancel", "(±A1)"},
                                                     {"cancel A1", "(±A1)"},
                                                     {"cancels A1, A8", "(±A1,8)"},
                                                     {"A1 cancellans", "(±A1)"},
                                                     {"A1 cancelled and replaced", "(±A1)"},
                                                     {"A1 a cancel?", "(±A1?)"},
                                                     {"A1 possibly a cancel", "(±A1?)"},
                                                     {"A1 is probably a cancel", "(±A1?)"},
                                                     {"A1.8 cancels", "(±A1.8)"},
                                                     {"A1.8 are cancels", "(±A1.8)"},
                                                     {"A1,2 cancels", "(±A1,2)"},
                                                     {"A1, A8 cancels", "(±A1,8)"},
                                                     {"A1 and A8 cancels", "(±A1,8)"},
                                                     {"A1 & 8 cancels", "(±A1,8)"},
                                                     {"A1-3 cancels", "(±A1-3)"},
                                                     {"A1 to 3 are cancels", "(±A1-3)"},
                                                     {"A1 and B2 both cancels", "(±A1, B2)"},
                                                     {"A1 a cancel, signed '*A1'", "(±A1, signed '*A1')"},
                                                     {"A1 a cancel; B2 a cancel", "(±A1, B2)"},
                                                     {"A1 blank, A8 a cancel", "(A1 blank, ±A8)"},
                                                     {"A1 title, A8 a cancel, B8 blank", "(A1 title, ±A8; B8 blank)"},
                                                     {"−B8, A1 a cancel", "(−B8, ±A1)"},
                                                     {"A1 a cancel, −B8", "(±A1, −B8)"},
                                                     {"A1 a cancel, B8 blank", "(±A1; B8 blank)"}}) {
    std::string const text = "A-B⁸ (" + std::string{one.words} + ")";
    CAPTURE(text);
    for (auto const dialect : {dialects::strict, dialects::bmc, dialects::stc}) CHECK(broken_law(text, dialect) == "");
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->warnings().empty());
    auto const written = write_formula(*formula);
    std::string const expected = "A-B⁸" + std::string{one.written};
    CHECK(written == expected);
    // the sign and the words are one formula
    auto const by_sign = read_formula(expected);
    REQUIRE(by_sign);
    CHECK(*by_sign == *formula);
  }
}

TEST_CASE("whether a leaf that is cancelled was replaced is doubted, and what words may mean otherwise is kept") {
  for (auto const& [words, written] : {std::pair{"A1 cancelled", "(±A1)"},
                                       {"A1 canceled", "(±A1)"},
                                       {"A1.8 cancelled", "(±A1.8)"},
                                       {"A4 and A5 are cancelled", "(±A4,5)"},
                                       {"cancelled A1", "(±A1)"}}) {
    std::string const text = "A-B⁸ (" + std::string{words} + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(write_formula(*formula) == "A-B⁸" + std::string{written});
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0].problem == Problem::cancelled_read_as_replaced);
    CHECK(formula->leaves() == 16);
  }
  for (std::string const words : {"6 cancels", "a cancel", "A cancelled", "A1, B2 a cancel", "title a cancel",
                                  "A1r a cancel", "A1 a cancel of B2", "A1 not a cancel", "two cancels"}) {
    std::string const text = "A-B⁸ (" + words + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0].problem == Problem::text_not_read);
  }
  CHECK(read_lawfully("A-B⁸ (C1 a cancel)").error().problem == Problem::no_such_gathering);
  CHECK(read_lawfully("A-B⁸ (B9 a cancel)").error().problem == Problem::no_such_leaf);
  CHECK(read_lawfully("A-B⁸ (−A1, A1 a cancel)").error().problem == Problem::leaf_changed_twice);
}

TEST_CASE("a cancel named outside parentheses is read, and it is told where to write it") {
  for (std::string const text : {"A-B⁸; B2 a cancel", "A-B⁸; B2 is a cancel.", "A-B⁸. B2 cancel", "A-B⁸ B2 a cancel"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(write_formula(*formula) == "A-B⁸(±B2)");
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0].problem == Problem::change_outside_parentheses);
  }
}

TEST_CASE("a figure after a deleted leaf and a plus is a number of leaves, and doubted if it may be the next leaf") {
  struct Filled {
    char const* text;
    std::int64_t leaves;
    bool doubted;
  };
  for (auto const& [text, leaves, doubted] : std::initializer_list<Filled>{{"A-E⁸ (−E7+8)", 47, true},
                                                                           {"A-E⁸ (-E7 +8)", 47, true},
                                                                           {"A-E⁸ (−E7+1)", 40, false},
                                                                           {"A-E⁸ (−E7+9)", 48, false},
                                                                           {"A-E⁸ (−E7+χ1)", 40, false},
                                                                           {"A-E⁸ (−E7,8)", 38, false},
                                                                           {"A-E⁸ (±E7+8)", 48, false},
                                                                           {"A-E⁸ (E6+8)", 48, false},
                                                                           {"A-E⁸ (−E7+8*)", 40, false}}) {
    CAPTURE(std::string{text});
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
    CHECK(formula->warnings().size() == (doubted ? 1U : 0U));
    if (doubted) CHECK(formula->warnings()[0].problem == Problem::inserted_or_deleted_too);
  }
}

TEST_CASE(
    "leaves that are named and nothing said of them, after words about a cancel, do not become cancels when written") {
  for (auto const& [text, written] : // constructed
       {std::pair{"A8 B8 (A1 a cancel; B2)", "A⁸ B⁸(±A1)(B2)"}, std::pair{"A8(A1 cancels; A1.8)", "A⁸(±A1)(A1.8)"},
        std::pair{"A8 B8 (A1 a cancel; B2 and B3)", "A⁸ B⁸(±A1)(B2 and B3)"},
        std::pair{"A8 B8 (A1 is a cancel, B2)", "A⁸ B⁸(±A1)(B2)"},
        std::pair{"A8 B8 (A1 a cancel; B2 blank)", "A⁸ B⁸(±A1; B2 blank)"}}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(write_formula(*formula) == written);
    CHECK(broken_law(text, dialects::strict) == "");
  }
}

TEST_CASE("words about cancels and blanks mean the same with other blanks between them") { // common practice, no source
  for (auto const* const text : {"A8(A1 cancelled and replaced)", "A8 B8(A1 and A8 are cancels)", "A8 (A8: blank)"})
    for (auto const* const blank : {"  ", "\u00a0", "\t"}) {
      auto const formula = read_formula(text), other = read_formula(with(text, " ", blank));
      REQUIRE(formula);
      REQUIRE(other);
      CAPTURE(std::string{text});
      CHECK(formula->changes().size() == other->changes().size());
      CHECK(formula->warnings().size() == other->warnings().size());
      CHECK(formula->blanks().size() == other->blanks().size());
    }
}

TEST_CASE("each word about leaves is found in a text, and makes it a text with words of its kind alone") {
  struct Kinds {
    bool cancel{}, absence{}, omission{};
    bool operator==(Kinds const&) const = default;
  };
  auto const has = [](std::string const& words) {
    detail::WordsInText const found{words};
    return Kinds{found.cancel, found.absence, found.omission};
  };
  auto const is_found = [&](std::string const& word, Kinds kinds) {
    CAPTURE(word);
    auto capitals = word;
    for (auto& c : capitals) c = capital_letter(c);
    CHECK(has(word) == kinds);
    CHECK(has("A-K8 (K8 " + capitals + ", blank)") == kinds);
  };
  for (auto const* const word : {"cancel", "cancellans", "cancels", "cancellantia", "cancelled", "canceled"})
    is_found(word, {true, false, false});
  for (auto const& row : detail::absence_rows) is_found(row.word, {false, true, false});
  for (auto const* const word : detail::words_of_omission) is_found(word, {false, false, true});
  for (auto const* const word : {"no", "not"}) is_found(word, {false, false, true});
  for (auto const* const text : {"", "A-K8", "(last leaf blank)", "[n o]", "(-A1)", "present", "nothing", "unusual"})
    CHECK(has(text) == Kinds{});
}
