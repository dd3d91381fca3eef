// SPDX-License-Identifier: MIT
// Repairs and plans of small books to the letter: what is put, and where. The books are constructed; their leaves are
// counted by hand in the comments.
#include "book_of.hpp"

using namespace book;

namespace {

struct Repaired {
  char const *formula, *pagination, *leaves; ///< as described
  char const *put, *formula_after;           ///< what the likeliest repair puts, and the formula that it leaves
};
/// The likeliest repair that leaves the other fields as they are.
Repair const* of_formula(Audit const& audit) {
  for (auto const& repair : audit.repairs)
    if (std::all_of(repair.edits.begin(), repair.edits.end(),
                    [](auto const& edit) { return edit.field == Field::formula; }))
      return &repair;
  return nullptr;
}
std::string put_by(Repair const& repair) {
  std::string all;
  for (auto const& edit : repair.edits) all += (&edit == &repair.edits.front() ? "" : " | ") + edit.put;
  return all;
}

} // namespace

TEST_CASE("what is put into a formula, to the letter") {
  for (auto const& [formula, pagination, leaves, put, after] : {
           Repaired{"A-C D4", "32 p.", "", "A-C4", "A-C4 D4"},                    // 3 · 4 + 4 = 16 leaves
           {"A-C D4 E-F G8", "", "40", "A-C4 | E-F8", "A-C4 D4 E-F8 G8"},         // 12 + 4 + 16 + 8
           {"A-G8 K4", "", "76", " H-I8", "A-G8 H-I8 K4"},                        // 56 + 2 · 8 + 4
           {"A-F8 K4", "", "76", " G-I8", "A-F8 G-I8 K4"},                        // 48 + 3 · 8 + 4
           {"A-G8 I4", "", "68", " H8", "A-G8 H8 I4"},                            // 56 + 8 + 4
           {"A-C8", "", "23", " (−C8)", "A-C8 (−C8)"},                            // 24 - 1
           {"A-C8", "", "25", " (C8+1)", "A-C8 (C8+1)"},                          // 24 + 1
           {"A-C8 (-A1,2,3,4)", "", "22", "", "A-C8 (-A3,4)"},                    // 24 - 2: half of the list
           {"A-C8(-A1,2,3,4)", "44 p.", "22", " D2", "A-C8(-A1,2,3,4) D2"},       // 24 - 4 + 2
           {"A-H8; A-C8;", "128 p. ; 50 p.", "", " (C8+1)", "A-H8; A-C8 (C8+1);"} // 64; 24 + 1
       }) {
    INFO(std::string{formula});
    auto const audit = examined({formula, pagination, leaves});
    auto const* const repair = of_formula(audit);
    REQUIRE(repair != nullptr);
    CHECK(put_by(*repair) == put);
    CHECK(repair->formula == after);
  }
  CHECK(examined({"A-H8; A-C8;", "128 p. ; 48 p.", ""}).agrees());
}

TEST_CASE("leaves of a gathering in the words of a field") { // common practice, no source
  for (auto const& [words, leaves] :
       {std::pair{"gatherings of 12", 12}, {"in 8s", 8}, {"8", 8}, {"gatherings: 6", 6}, {"in fours", 4}}) {
    INFO(words);
    FieldTexts texts;
    texts.gatherings = words;
    auto const described = read_description(texts);
    REQUIRE(described.gatherings);
    CHECK(described.gatherings->value == leaves);
    CHECK(described.unread.empty());
  }
  // two numbers that alternate
  for (auto const* words : {"8.4", "8;4", "8/4", "8,4", "8, 4", "8 and 4", "8 & 4", "8s and 4s", "in 8s and 4s",
                            "in eights and fours", "8.4.8.4", "gatherings of 8 and 4", "In eights and in fours"}) {
    INFO(words);
    FieldTexts texts;
    texts.gatherings = words;
    auto const described = read_description(texts);
    REQUIRE(described.gatherings);
    CHECK(described.gatherings->value == 8);
    CHECK(described.gatherings_alternating_with == 4);
    CHECK(described.unread.empty());
    CHECK(evidence_of(described).alternating_with == 4);
  }
  // the same beside the format, in its own field or in that of the size
  struct Beside {
    std::string_view words;
    int leaves;
    OptionalNumber<int> other;
  };
  for (auto const& [words, leaves, other] :
       {Beside{"8vo in 8s", 8, {}}, Beside{"8vo in 8s and 4s", 8, 4}, Beside{"8vo (8/4)", 8, 4},
        Beside{"8vo in 4s & 8s", 4, 8}, Beside{"12mo in eights and fours", 8, 4},
        Beside{"12mo, gathered in 8s and 4s", 8, 4}, Beside{"8vo (8/8/4)", 8, 4}}) {
    INFO(words);
    auto const size = "19 cm (" + std::string{words} + ")";
    FieldTexts own, beside;
    own.format = words;
    beside.height = size;
    for (auto const& texts : {own, beside}) {
      if (!texts.height.empty() && words.find('(') != words.npos) continue;
      auto const described = read_description(texts);
      REQUIRE(described.gatherings);
      CHECK(described.gatherings->value == leaves);
      CHECK(described.gatherings->in == (texts.height.empty() ? Field::format : Field::height));
      CHECK(described.gatherings_alternating_with.value_or(0) == other.value_or(0));
      CHECK(described.unread.empty());
      CHECK(described.again.empty());
      auto stated = texts;
      stated.gatherings = other ? "in fours and eights" : "in eights";
      CHECK(read_description(stated).again.empty());
      stated.gatherings = "in sixes";
      CHECK(read_description(stated).again.size() == 1);
    }
  }
  // what is not a second number, or a third one, is left
  for (auto const* words : {"8.", "8.4.6", "8 and", "8 plates", "8.4 signed", "8.0"}) {
    INFO(words);
    FieldTexts texts;
    texts.gatherings = words;
    auto const described = read_description(texts);
    REQUIRE(described.gatherings);
    CHECK_FALSE(described.gatherings_alternating_with);
  }
  for (auto const* words : {"none", "0"}) {
    INFO(words);
    FieldTexts texts;
    texts.gatherings = words;
    auto const described = read_description(texts);
    CHECK(!described.gatherings);
    REQUIRE(described.unread.size() == 1);
    CHECK(described.unread[0].error.problem == Problem::not_a_gathering_size);
  }
}

TEST_CASE("leaves that are in two places of a formula are printed once") {
  // π² was printed as the last half of C⁴: two sheets, and half of one, turned, for C
  for (auto const* text : {"8°: π²(=C3.4) A-B⁸ C⁴(−C3.4)", "8°: π²(=C3,4) A-B⁸ C⁴(−C3,4)"}) {
    INFO(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 2 + 16 + 2);
    auto const plan = plan_of(*formula, {.sharing = Sharing::none});
    REQUIRE(plan);
    CHECK(plan->sheets_a_copy() == Fraction{5, 2});
    CHECK(plan->formes() == 2 + 2 + 1);
  }
}

TEST_CASE("a unit that one part borrows from the other is not edited in its own") { // constructed
  auto const audit = examined({"A-P⁸; A-Q⁸ R⁴", "120; 246 p.", ""});
  REQUIRE(!audit.repairs.empty());
  for (auto const& repair : audit.repairs)
    for (auto const& edit : repair.edits)
      CHECK(std::string{edit.field == Field::formula ? "A-P⁸; A-Q⁸ R⁴" : "120; 246 p."}.substr(
                edit.from, edit.to - edit.from) == edit.old);
}

TEST_CASE("the letters of a part are those of the book") { // 26 letters of eight leaves are 416 pages; constructed
  auto const audit = examined({"A-Z⁸; A-C⁸", "416; 46 p.", ""});
  REQUIRE(!audit.repairs.empty());
  auto const& first = audit.repairs[0];
  CHECK(first.letters == Letters{true, true, true});
  CHECK(first.says.find("the letters of the book include J U W") != std::string::npos);
  CHECK(first.leaves == 8 * 26 + 8 * 3);
}
