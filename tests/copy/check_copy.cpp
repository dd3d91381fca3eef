// SPDX-License-Identifier: MIT
// Constructed copies: regression, but for the arithmetic of conjugate leaves.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"
#include "typed.hpp"

using namespace bifolium;

namespace {
IdealCopy book_of(char const* text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
CopyChecked check(IdealCopy const& formula, char const* present) {
  auto const leaves = read_leaves_present(formula, present);
  REQUIRE(leaves);
  return check_copy(formula, leaves->spans);
}
} // namespace

TEST_CASE("A leaf lost with its conjugate is a lost bifolium") {
  auto const book = book_of("8°: A-C⁸");
  auto const copy = check(book, "A1-8, B1-2 B4-5 B7-C8");
  CHECK(wants(book, copy) == "wants B3.6");
  REQUIRE(copy.wanting.size() == 2);
  CHECK(missing_leaf(book, copy, 8 + 3).conjugate_missing);
  CHECK(missing_leaf(book, copy, 8 + 3).conjugate == read_reference(book, "B6")->leaf);
  CHECK(wants(book, check(book, "A B C1-7")) == "wants C8");
  CHECK(!missing_leaf(book, check(book, "A B C1-7"), 24).conjugate_missing);
  CHECK(wants(book, check(book, "A-C")).empty());
  CHECK(check(book, "A-C").complete());
}

TEST_CASE("What is wanting is said as the trade says it") {
  auto const book = book_of("8°: π² A-K⁸ L⁴");
  auto const says = [&](char const* present) { return wants(book, check(book, present)); };
  CHECK(says("π A-B D-K L") == "wants C");
  CHECK(says("A1-8 C1-8 G-K L") == "wants π, B, D-F");
  CHECK(says("π A-B C1-2 C7-8 D-L") == "wants C3-6");
  CHECK(says("π A B1-3 B6-8 C-L") == "wants B4.5");
  CHECK(says("π2 A-L") == "wants π1");
  CHECK(says("π A7-8 B-L") == "wants A1-6");
  CHECK(says("π A2-K8") == "wants A1, L");
  CHECK(says("") == "wants π, A-K, L");
  CHECK(says("π A1-5 A8 B-L") == "wants A6, A7");
  CHECK(says("f.1-50 f.52-86") == "wants G1"); // leaf 51 is the first of the seventh gathering: 2 + 6 * 8 + 1
}

TEST_CASE("An inserted gathering that is wanting is named as one") {
  auto const book = book_of("8°: A⁸(A1+a-b⁴, A4+χ1) B⁸");
  auto const says = [&](char const* present) { return wants(book, check(book, present)); };
  CHECK(says("A1-B8").empty());
  CHECK(says("A1 a1-4 A2-B8") == "wants b");
  CHECK(says("A1 A2-4 χ1 A5-B8") == "wants a, b");
  CHECK(says("A1 a2-4 b A2-4 χ1 A5-B8") == "wants a1");
  CHECK(says("a2 A2-4 χ1 A5-B8") == "wants A1, a1.a4, a3, b");
  CHECK(says("A5-B8") == "wants A1, a, b, A2-χ1");
  CHECK(says("B") == "wants A");
}

TEST_CASE("The ideal copy does not want what the formula deletes") {
  auto const book = book_of("A⁸ B⁸(−B8)");
  CHECK(check(book, "A1-B7").complete());
  CHECK(check(book, "A1-B7 B5").repeated.size() == 1);
  auto const uncorrected = check(book, "A-B B8");
  CHECK(uncorrected.complete());
  REQUIRE(uncorrected.not_in_ideal.size() == 1);
  CHECK(uncorrected.leaves_ideal == 15);
  CHECK(uncorrected.leaves_present == 16);
  auto const by_ends = check(book, "A1-8 B1-8");
  CHECK(by_ends.complete());
  CHECK(by_ends.not_in_ideal == uncorrected.not_in_ideal);
  // a blank leaf is named at the beginning, in the middle and at the end of what is wanting
  for (auto const& [blank, told] :
       {std::pair{"A1", "wants A (A1 blank)"}, {"A4", "wants A (A4 blank)"}, {"A8", "wants A (A8 blank)"}}) {
    auto const with_blank = book_of((std::string{"A-B⁸ ("} + blank + " blank)").c_str());
    CHECK(wants(with_blank, check(with_blank, "B")) == told);
  }
  // it stays where others are taken out
  for (auto const* const list : {"A-B, B8; wanting A3", "A-B, B8; wants A", "A-B, B8; wanting A7-B1"}) {
    auto const with_less = check(book, list);
    CHECK_FALSE(with_less.complete());
    CHECK(with_less.not_in_ideal == uncorrected.not_in_ideal);
  }
}

TEST_CASE("Gatherings bound out of order, and books collated from the back") {
  auto const book = book_of("A-C⁴");
  auto const copy = check(book, "A C B");
  CHECK(copy.complete());
  REQUIRE(copy.misplaced.size() == 1);
  CHECK(misbound(book, copy) == "B bound after C4");
  CHECK(misbound(book, check(book, "A4 A1-3 B-C")) == "A4 bound at the front");
  CHECK(misbound(book, check(book, "A1 A3 A2 A4 B-C")) == "A2 bound after A3"); // or A3 too early: as many leaves
  CHECK(misbound(book, check(book, "A-C")).empty());
  CHECK(misbound(book, check(book, "A C B1-2 B4")) == "B1-2, B4 bound after C4");
  auto const twice = check(book, "A B A1-2 C");
  CHECK(twice.misplaced.empty());
  REQUIRE(twice.repeated.size() == 1);
  CHECK(twice.repeated[0].leaves() == 2);
  std::vector<LeafSpan> backwards;
  for (int n = 12; n > 0; --n) backwards.push_back(span_of_numbers(book, n, n));
  CHECK(check_copy(book, backwards).backwards);
  CHECK(!copy.backwards);
}

TEST_CASE("Any order of single leaves is cleared up, and nothing is lost or found") { // a law
  auto const book = book_of("π² A-C⁸ D⁴(−D4)");
  std::uint32_t dice = 1;
  for (int round = 0; round < 300; ++round) {
    std::vector<LeafSpan> present;
    std::vector<int> times(static_cast<std::size_t>(book.leaves()) + 1);
    for (int i = 0; i < 25; ++i) {
      dice = dice * 1664525U + 1013904223U;
      auto const number = static_cast<int>((dice >> 8U) % static_cast<std::uint32_t>(book.leaves())) + 1;
      present.push_back(span_of_numbers(book, number, number));
      ++times[static_cast<std::size_t>(number)];
    }
    auto const copy = check_copy(book, present);
    std::int64_t wanting = 0, repeated = 0, absent = 0;
    for (auto const& span : copy.wanting) {
      wanting += span.leaves();
      for (auto n = span.from; n <= span.to; ++n) CHECK(times[static_cast<std::size_t>(n)] == 0);
    }
    for (auto const& span : copy.repeated) repeated += span.leaves();
    for (std::size_t n = 1; n < times.size(); ++n) absent += times[n] == 0 ? 1 : 0;
    CHECK(wanting == absent);
    CHECK(copy.leaves_present - repeated + wanting == book.leaves());
    // what is left in place rises
    std::int64_t last = 0;
    std::vector<bool> out(times.size()), met(times.size());
    for (auto const& one : copy.misplaced)
      for (auto n = one.leaves.from; n <= one.leaves.to; ++n) out[static_cast<std::size_t>(n)] = true;
    for (auto const& span : present) {
      auto const n = static_cast<std::size_t>(span.from);
      if (out[n] || met[n]) continue;
      met[n] = true;
      CHECK(span.from > last);
      last = span.from;
    }
  }
}

TEST_CASE("A formula of absurd size costs what its text costs") {
  auto const book = book_of("A-9999Z⁴⁰⁹⁶");
  auto const copy = check(book, "A-B 500C7-9998Z");
  CHECK(copy.leaves_ideal == std::int64_t{9999} * 23 * 4096);
  CHECK(copy.wanting.size() == 2);
  CHECK(wants(book, copy) == "wants C-500B, 500C1-6, 9999A-9999Z");
  CHECK(wants(book, check(book, "")) == "wants A-9999Z");
}

TEST_CASE("Joints agree with the formula or speak against it") {
  auto const book = book_of("A⁴ B⁴(±B2)");
  auto const read =
      read_joints(book, "A1.4 conjugate; B2 stub; A2 stub, A2 sewing\nA1.3 chain lines run on; "
                        "A1.4 disjunct; A2.3 mark halves meet; A1.B1 chain lines break; A1 sewing; B1.4 conjugate");
  REQUIRE(read);
  auto const judged = check_copy(book, {}, *read).joints;
  REQUIRE(judged.size() == 10);
  CHECK(judged[0].words == "A1.4 conjugate: agrees");
  CHECK(judged[1].words == "B2 on a stub: agrees");
  CHECK(judged[2].words == "A2 on a stub: contradicts the formula; a cancel?");
  CHECK(judged[3].agrees);
  CHECK(judged[4].words == "A1.3 chain lines run on: contradicts the formula, by which A4 is conjugate with it");
  CHECK(judged[5].words == "A1.4 disjunct: contradicts the formula; is one of them a cancel?");
  CHECK(judged[6].agrees);
  CHECK(judged[7].words == "A1.B1 chain lines do not meet: agrees");
  CHECK(judged[8].words == "A1 followed by the sewing: contradicts the formula, whose middle is after leaf 2");
  CHECK(judged[9].agrees);
}

TEST_CASE("Evidence that cannot be read says where") {
  auto const book = book_of("A-C⁴");
  CHECK(read_joints(book, "A1.4 conjugate; A1.9 disjunct").error().place->column == 17);
  CHECK(read_joints(book, "A1.9 disjunct").error().limit == 4);
  CHECK(read_joints(book, "A1 conjugate").error().problem == Problem::not_evidence);
  CHECK(read_joints(book, "A1.4 glued").error().problem == Problem::not_evidence);
  // the words are the whole of what is said of the leaves
  for (auto const* said :
       {"A1.4", "A1.4 ", "A1.4 conjugated", "A1.4 conjugate now", "A1.4 disjunct stub", "A2 stubs"}) {
    INFO(std::string{said});
    REQUIRE(!read_joints(book, said));
    CHECK(read_joints(book, said).error().problem == Problem::not_evidence);
  }
  CHECK((*read_joints(book, "A1.4 disjunct ")).at(0).what == Joint::disjunct);
  CHECK(read_joints(book, "D1.4 conjugate").error().problem == Problem::gathering_not_in_book);
  CHECK((*read_joints(book, " ; ")).empty());
}

TEST_CASE("Leaves that cannot be read say where") {
  auto const book = book_of("A-C⁴");
  CHECK(read_leaves_present(book, "A1-4, D1").error().place->column == 7);
  CHECK(read_leaves_present(book, "A1-9").error().limit == 4);
  CHECK(read_leaves_present(book, "C-A").error().problem == Problem::run_goes_backwards);
  CHECK(read_leaves_present(book, "A4-1").error().problem == Problem::run_goes_backwards);
  CHECK(read_leaves_present(book, "f.2-13").error().problem == Problem::reference_not_in_book);
  CHECK(read_leaves_present(book, "f.2-").error().problem == Problem::not_a_reference);
  CHECK(read_leaves_present(book, "A1-").error().place->column == 4);
}

TEST_CASE("A fold cancelled as one is one piece of paper") {
  auto const judged = [](char const* formula, char const* joint) {
    auto const book = book_of(formula);
    return check_copy(book, {}, *read_joints(book, joint)).joints[0].words;
  };
  CHECK(judged("8°: A8(±A4.5)", "A4.5 conjugate") == "A4.5 conjugate: agrees");
  CHECK(judged("8°: A8(±A4.5)", "A4.5 disjunct") == "A4.5 disjunct: contradicts the formula; is one of them a cancel?");
  CHECK(judged("8°: A8(±A4,5)", "A4.5 disjunct") == "A4.5 disjunct: agrees");
  CHECK(judged("A⁸(A3+χ1.2) B⁸", "χ1.2 conjugate") == "χ1.χ2 conjugate: agrees");
  CHECK(judged("A⁸(A3+1.2) B⁸", "A3+1.2 conjugate") == "A3+1.A3+2 conjugate: agrees");
  CHECK(judged("A⁸(A3+χ1,2) B⁸", "χ1.2 conjugate") ==
        "χ1.χ2 conjugate: contradicts the formula, by which it is a single leaf");
}

TEST_CASE("Inserted leaves are listed as the formula prints them") {
  auto const book = book_of("A⁸ (A3+a⁴) B⁸");
  CHECK(check(book, "A1-3 a1-4 A4-8 B1-8").complete());
  CHECK(check(book, "A1-3 a A4-8 B").complete());
  CHECK(check(book, "A B").complete()); // the inserted gathering is within A
  CHECK(wants(book, check(book, "A1-3 a1 a4 A4-8 B")) == "wants a2.a3");
  CHECK(wants(book, check(book, "A1-3 A4-8 B")) == "wants a");
  CHECK(read_leaves_present(book, "a1-5").error().limit == 4);
}

TEST_CASE("A blank that is lacking is told as a blank") {
  auto const says = [](char const* formula, char const* present) {
    auto const book = book_of(formula);
    return wants(book, check(book, present));
  };
  CHECK(says("A8 (A8 blank)", "A1-7") == "wants the blank A8");
  CHECK(says("A-B8 (B7,8 blank)", "A B1-6") == "wants the blank B7, the blank B8");
  CHECK(says("A-B8 (B1.8 blank)", "A B2-7") == "wants B1.8 (both blank)");
  CHECK(says("A-B8 (A1, B8 blank?)", "A2-B7") == "wants the blank A1, the blank B8");
  CHECK(says("A-B8 (last two leaves blank)", "A B1-5") == "wants B6-8 (B7, B8 blank)");
  CHECK(says("A-B8 C4 (C4 blank)", "A B") == "wants C (C4 blank)");
  CHECK(says("A-B8 C1 (C1 blank)", "A B") == "wants the blank C1");
  CHECK(says("A-B8 (B8 blank)", "A B1-6 B8") == "wants B7");
  auto const book = book_of("A-B8 (B8 blank)");
  CHECK(check(book, "A B1-7").text_complete());
  CHECK(!check(book, "A B1-7").complete());
  CHECK(!check(book, "A B1-6 B8").text_complete());
  CHECK(!book_of("A-B8 (B8 with errata)").is_blank({{0, 1}, 8}));
  CHECK(book_of("A-B8 (A1 blank except for signature)").is_blank({{0, 0}, 1})); // its text is not lost
  CHECK(!book_of("A-B8 (A1 blank except for a woodcut)").is_blank({{0, 0}, 1}));
}

TEST_CASE("The states of a leaf have the words of a list") {
  for (auto const& [state, word] : {std::pair{LeafInCopy::original, "original"},
                                    {LeafInCopy::blank, "blank"},
                                    {LeafInCopy::damaged, "damaged"},
                                    {LeafInCopy::mounted, "mounted"},
                                    {LeafInCopy::supplied, "supplied"},
                                    {LeafInCopy::facsimile, "facsimile"},
                                    {LeafInCopy::manuscript, "manuscript"},
                                    {LeafInCopy::typescript, "typescript"}})
    CHECK(to_words(state) == word);
}

TEST_CASE("Blank leaves of a lost bifolium are named") { // constructed
  auto const formula = *read_formula("8°: A⁸ (A1 blank) B⁸ (B8 blank) C⁸ (C1, C8 blank) D⁸");
  IdealCopy const book{formula};
  auto const lacks = [&](char const* there) {
    auto const leaves = read_leaves_present(book, there);
    REQUIRE(leaves);
    return wants(book, check_copy(book, leaves->spans));
  };
  CHECK(lacks("A2-7 B-D") == "wants A1.8 (A1 blank)");
  CHECK(lacks("A B2-7 C-D") == "wants B1.8 (B8 blank)");
  CHECK(lacks("A B C2-7 D") == "wants C1.8 (both blank)");
  CHECK(lacks("A B C D2-7") == "wants D1.8");
  CHECK(lacks("A2-8 B-D") == "wants the blank A1");
  CHECK(lacks("A-D").empty());
}

TEST_CASE("Leaves of a copy may be facsimiles, supplied, mounted or blank") {
  auto const book = book_of("A-B⁸");
  auto const copy = check(book, "A1 facsimile, A2-8 B1-2 mounted B3-7 B8 (supplied)");
  CHECK(wants(book, copy) == "wants A1");
  CHECK(copy.leaves_present == 15);
  CHECK(noted(book, copy) == "A1 in facsimile; B1-2 mounted; B8 supplied from another copy");
  CHECK(wants(book, check(book, "A B1-8 in facsimile")) == "wants B");
  CHECK(read_leaves_present(book, "facsimile A1").error().problem == Problem::not_a_reference);
}

// What catalogues write beside leaves, or in their place: common practice, no source.
TEST_CASE("A remark on what is printed on a leaf is read over; what names no leaf of the formula is refused as such") {
  auto const book = book_of("8°: A-K⁸");
  auto const spans = [&](std::string const& text) {
    auto const read = read_leaves_present(book, text);
    CAPTURE(text);
    REQUIRE(read);
    return read->spans;
  };
  for (std::string const remark :
       {" (title)", " (Title)", " (title-page)", " (title page)", " (half-title)", " (half title)", " (t.p.)",
        " (errata leaf)", " (title and imprint)", " (colophon)"}) {
    CHECK(spans("wants A1" + remark) == spans("wants A1"));
    CHECK(spans("wants A1" + remark + ", K8") == spans("wants A1, K8"));
    CHECK(spans("A1" + remark + " A2-K8") == spans("A1 A2-K8"));
    CHECK(spans("A1" + remark + " facsimile, A2-K8") == spans("A1 facsimile, A2-K8"));
  }
  CHECK_FALSE(read_leaves_present(book, "wants A1 (with a long remark)"));
  CHECK_FALSE(read_leaves_present(book, "wants A1 (title"));
  struct Unnamed {
    char const* text;
    std::uint32_t column;
  };
  for (auto const& one : std::initializer_list<Unnamed>{{"wants p. 5-6", 7},
                                                        {"wants pp. 5-6", 7},
                                                        {"wants p.5", 7},
                                                        {"wants pages 5-6", 7},
                                                        {"wants Page 5", 7},
                                                        {"p. 5-6", 1},
                                                        {"2 leaves", 1},
                                                        {"wants 2 leaves", 7},
                                                        {"wants two leaves", 7},
                                                        {"lacks one leaf", 7},
                                                        {"wants title", 7},
                                                        {"A-K, wants the title-page", 16},
                                                        {"A1 2 leaves", 4}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const read = read_leaves_present(book, text);
    REQUIRE(!read);
    CHECK(read.error().problem == Problem::leaves_not_named);
    CHECK(read.error().place->column == one.column);
  }
  CHECK((*read_leaves_present(book_of("1-4⁸"), "2")).spans.size() == 1); // a gathering of that name
}

// How catalogues say what a copy lacks: common practice, no source.
TEST_CASE("A list may say what the copy lacks, and then it is the book without it") {
  auto const book = book_of("8°: A-K⁸ L⁴ (−L4)");
  auto const spans = [&](std::string const& text) {
    CAPTURE(text);
    auto const leaves = read_leaves_present(book, text);
    REQUIRE(leaves);
    CHECK(leaves->doubts.empty());
    return leaves->spans;
  };
  // a word for wanting, in capitals or not, with a colon or not; a full stop at the end
  for (std::string const word : {"wants", "wanting", "want", "lacks", "lacking", "lack", "missing", "without", "except",
                                 "less", "Wants", "Lacking:", "imperfect: wanting", "Imperfect, lacks", "(wanting"}) {
    CHECK(spans(word + " C3.6, K8") == spans("A1-C2 C4-5 C7-K7 L"));
    CHECK(spans(word + " A1 and K8.") == spans("A2-K7 L"));
    CHECK(spans(word + " the blank K8") == spans("A1-K7 L"));
    CHECK(spans("A-D " + word + " B2") == spans("A1-B1 B3-D8"));
  }
  CHECK(spans("wants leaf A1") == spans("A2-L3"));
  CHECK(spans("wants leaves A1 and A2") == spans("A3-L3"));
  CHECK(spans("wants E-G (G4 blank), L1") == spans("A-D H-K L2-3"));
  CHECK(spans("wants A1.8 (both blank)") == spans("A2-7 B-L"));
  CHECK(spans("wants B3-5, B4") == spans("A1-B2 B6-L3"));
  CHECK(spans("wants B3-5, B4-6") == spans("A1-B2 B7-L3"));
  CHECK(spans("wants A-L").empty());
  // what is before or after a leaf or a gathering
  CHECK(spans("wants all after H8") == spans("A-H"));
  CHECK(spans("wants everything after I") == spans("A-I"));
  CHECK(spans("wants all before B3") == spans("B3-L3"));
  CHECK(spans("wants all before B, all after I4") == spans("B1-I4"));
  CHECK(spans("wants all after L3") == spans("A-L"));
  // the first and the last leaf of the book; a name after them is the leaf itself
  for (auto const* last : {"wants last leaf", "wants the last leaf", "lacks the final leaf.", "Lacks Final Leaf",
                           "wants final blank", "wants the last blank leaf", "wants last leaf (blank)"})
    CHECK(spans(last) == spans("A1-L2"));
  CHECK(spans("wants first leaf") == spans("A2-L3"));
  CHECK(spans("wants the last two leaves") == spans("A1-L1"));
  CHECK(spans("wants first and last two leaves") == spans("A2-L1"));
  CHECK(spans("wants last bl.") == spans("A1-L2"));
  CHECK(spans("wants the first and last leaves, C3") == spans("A2-C2 C4-L2"));
  CHECK(spans("wants the first leaf and K8") == spans("A2-K7 L"));
  CHECK(spans("wants the final blank K8") == spans("A1-K7 L"));
  CHECK(spans("wants last leaf K8") == spans("A1-K7 L"));
  for (auto const* whole :
       {"complete", "perfect", "Perfect.", "all", "all leaves", "all leaves present", "All present"})
    CHECK(spans(whole) == spans("A-L"));
  for (auto const* but :
       {"all but B3.6", "All leaves but B3.6", "complete but for B3.6", "complete except B3,6",
        "perfect save for B3 and B6", "all leaves present, excepting B3.6", "complete, wants only B3,6"})
    CHECK(spans(but) == spans("wants B3.6"));
  CHECK(spans("wants A1 (blank?), B2") == spans("wants A1, B2"));
  // figures after a comma are of the gathering before it
  CHECK(spans("wants B3,6") == spans("wants B3 B6"));
  CHECK(spans("wants B1-3,5-7,8; C2,4 and K8") == spans("wants B1-3 B5-8 C2 C4 K8"));
  CHECK(spans("A1,2,3,4 B-C8 K1-2,5") == spans("A1 A2 A3 A4 B-C K1-2 K5"));
  CHECK(spans("B3.6,8") == spans("B3 B6 B8"));
  struct Figures {
    char const* list;
    Problem problem;
    std::uint32_t column;
  };
  for (auto const& one : {Figures{"wants B3,2", Problem::run_goes_backwards, 10},
                          {"wants B3,3", Problem::run_goes_backwards, 10},
                          {"wants B3,9", Problem::no_such_leaf, 10},
                          {"wants B3,6-5", Problem::run_goes_backwards, 10},
                          {"wants B3,6-C1", Problem::not_a_reference, 10},
                          {"wants B,6", Problem::leaves_not_named, 9},
                          {"wants B3,6 leaves,7", Problem::leaves_not_named, 10}}) {
    CAPTURE(one.list);
    auto const read = read_leaves_present(book, one.list);
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == one.problem);
    CHECK(read.error().place->column == one.column);
  }
  // leaves by number, with a blank after the f. or not, as the message for what names no leaf writes them
  CHECK(spans("wants f. 3-4") == spans("wants A3-4"));
  CHECK(spans("wants ff. 3-4, f.9") == spans("wants A3-4 B1"));
  CHECK(spans("f. 1-82, f. 83") == spans("f.1-82 f.83"));
  CHECK(spans("complete") == spans("A-L"));
  CHECK(spans("Complete.") == spans("A-L"));
  // after a list, and in parentheses within one
  CHECK(spans("A-K (wanting C3.6) L") == spans("A1-C2 C4-5 C7-K8 L"));
  // C is not among A-B, so the list may not name all that is there
  auto const left_out = *read_leaves_present(book, "A-B; wanting B8; C");
  CHECK(left_out.spans == spans("A1-B7"));
  REQUIRE(left_out.doubts.size() == 1);
  CHECK(left_out.doubts[0].problem == Problem::leaves_left_out);
  CHECK(left_out.doubts[0].limit == 7 * 8 + 3); // D to K, and L without its last leaf
  CHECK(spans("B A C-L, wants A3") == spans("B A1-2 A4-8 C-L"));
  // in another form, or of another copy
  CHECK(spans("lacking A1 (facsimile)") == spans("A1 facsimile A2-L3"));
  CHECK(spans("A-K, lacking A1, supplied in facsimile") == spans("A1 facsimile A2-K8"));
  CHECK(spans("lacking C3-4 (supplied), K8") == spans("A1-C2 C3-4 supplied C5-K7 L"));
  CHECK(noted(book, check(book, "wants A1 in facsimile, K8")) == "A1 in facsimile");
  CHECK(wants(book, check(book, "wants A1 in facsimile, K8")) == "wants A1, K8");

  // a leaf that no copy has is no loss
  auto const gone = read_leaves_present(book, "wants K8, L4");
  REQUIRE(gone);
  CHECK(wants(book, check_copy(book, gone->spans)) == "wants K8");
  REQUIRE(gone->doubts.size() == 1);
  CHECK(gone->doubts[0].problem == Problem::wanting_in_every_copy);
  CHECK(gone->doubts[0].place->column == 11);

  for (auto const* text : {"wants", "A-K wants", "lacks.", "wants (", "A (wanting)"}) {
    CAPTURE(text);
    CHECK_FALSE(read_leaves_present(book, text));
  }
  CHECK(read_leaves_present(book, "wants").error().problem == Problem::not_a_reference);
  for (auto const* const list : {"A-K wants", "K8 wanting", "K8 lacking.", "A1, K8 missing", "A1-K7, K8 wanting"}) {
    INFO(list);
    if (*list == 'K') continue; // of K8, because no other leaf is named
    auto const error = read_leaves_present(book, list).error();
    CHECK(error.problem == Problem::wanting_after_leaves); // of one leaf or of all?
    CHECK(std::string_view{list}.find(error.found_text()) != std::string_view::npos);
    CHECK(!error.found_text().empty());
  }
  for (auto const* const list : {"A1 A2 A3 lacking", "A-C, E8 lacking", "K8 wants"})
    CHECK(read_leaves_present(book, list).error().problem == Problem::wanting_after_leaves);
  // a word after the leaves, where it can only mean them: no others are named, they are named again, or in parentheses
  for (std::string const word :
       {"wanting", "lacking",   "missing",      "is wanting", "is lacking", "Wanting",   "fehlt",
        "fehlen",  "manque",    "manca",        "mancano",    "falta",      "ontbreekt", "deest",
        "desunt",  "is absent", "est manquant", "removed",    "excised",    "mancante",  "deleted"}) {
    CAPTURE(word);
    CHECK(spans("K8 " + word) == spans("wants K8"));
    CHECK(spans("K8 " + word + ".") == spans("wants K8"));
    CHECK(spans("(K8 " + word + ")") == spans("wants K8"));
    CHECK(spans("A-L, K8 " + word) == spans("wants K8"));
    CHECK(spans("A-L (K8 " + word + ")") == spans("wants K8"));
    CHECK(spans("A-K (C3 and C6 " + word + ") L") == spans("A1-C2 C4-5 C7-K8 L"));
    CHECK(spans("complete, K8 " + word) == spans("wants K8"));
    CHECK(spans("A1 and K8 " + word) == spans("wants A1, K8"));
    CHECK(wants(book, check(book, ("A-L; A1 & K8 " + word + "; B3 torn").c_str())) == "wants A1, K8");
    CHECK(spans("C3.6 " + word) == spans("wants C3.6"));
    CHECK(spans("the final blank K8 " + word) == spans("wants K8"));
    CHECK(spans("last leaf " + word) == spans("wants the last leaf"));
    CHECK(spans("K8 (blank) " + word) == spans("wants K8"));
    CHECK(spans("imperfect: all after K4 " + word) == spans("A1-K4"));
  }
  // a word before the leaves
  for (std::string const word :
       {"lacks", "wanting", "less", "minus", "without", "missing", "absent:", "fehlt", "Fehlen", "manque", "manquent",
        "manca", "mancano", "falta", "faltan", "ontbreekt", "ontbreken", "deest", "desunt"}) {
    CAPTURE(word);
    CHECK(spans(word + " K8") == spans("wants K8"));
    CHECK(spans("A-L, " + word + " K8") == spans("A-L, wants K8"));
    CHECK(spans("A-L (" + word + " K8)") == spans("A-L (wants K8)"));
  }
  // a remark that a leaf that is wanting is blank
  for (std::string const word : {"blank", "leer", "weiß", "blanche", "bianca"}) {
    CAPTURE(word);
    CHECK(spans("wants K8 (K8 " + word + "), A1") == spans("wants K8, A1"));
    CHECK(spans("wants the final " + word + " K8") == spans("wants K8"));
    CHECK(spans("last leaf " + word + " wanting") == spans("wants the last leaf"));
  }
  // the sign of a deletion
  for (std::string const list : {"-E8", "−E8", "(-E8)", "(−E8)", "A-L (-E8)", "A-L (−E8)", "A-L −E8", "A-D (-E8) E-L"})
    CHECK(spans(list).size() >= 2);
  for (std::string const list : {"-E8", "−E8", "(-E8)", "(−E8)", "A-L (-E8)", "A-L (−E8)", "A-L −E8"}) {
    CAPTURE(list);
    CHECK(wants(book, check_copy(book, spans(list))) == "wants E8");
  }
  CHECK_FALSE(read_leaves_present(book, "A1 -A8")); // a run with a blank, or a leaf that is wanting?
  // two signs of a deletion are refused, as in a formula
  for (std::string const before : {"", "A-L ", "A-L (", "(", "imperfect: ", "A-L −A1 ", "wants A1, "})
    for (std::string const signs : {"−−", "−-", "−−−−", "−(−", "−(-"}) {
      auto const list = before + signs + "E8" + (signs.find('(') != signs.npos ? ")" : "") +
                        (before.find('(') != before.npos ? ")" : "");
      CAPTURE(list);
      CHECK_FALSE(read_leaves_present(book, list));
    }
  // figures and words between leaves
  CHECK(spans("wants B3,6") == spans("wants B3, B6"));
  CHECK(spans("wants B3, 4, 6, C1") == spans("wants B3, B4, B6, C1"));
  CHECK(spans("wants B3 and 6") == spans("wants B3, B6"));
  CHECK(spans("wants B3 & B6") == spans("wants B3, B6"));
  CHECK(spans("wants B1,3-5") == spans("wants B1, B3-5"));
  CHECK(spans("wants B3 to 6") == spans("wants B3-6"));
  CHECK(spans("wants B3 through C2") == spans("wants B3-C2"));
  CHECK(spans("A1-4,6-8, B-L") == spans("A1-4 A6-8 B-L"));
  CHECK(spans("wants f. 3") == spans("wants A3"));
  CHECK(spans("wants ff. 3-4, 9") == spans("wants A3-4, B1"));
  CHECK(spans("wants fol. 3") == spans("wants A3"));
  CHECK(spans("wants leaves 3-4") == spans("wants A3-4"));
  CHECK(spans("wants all of B, C3") == spans("wants B, C3"));
  CHECK(spans("wants bifolium A1.8") == spans("wants A1.8"));
  CHECK(spans("wants title leaf A1") == spans("wants A1"));
  CHECK(spans("wants title page (A1)") == spans("wants A1"));
  CHECK(spans("wants nothing") == spans("complete"));
  CHECK(spans("complete except for A1") == spans("wants A1"));
  CHECK(spans("complete but for A1") == spans("wants A1"));
  CHECK(spans("Copy imperfect: lacks A1") == spans("wants A1"));
  CHECK(spans("defective: wants A1") == spans("wants A1"));
  for (std::string const list : {"wants A1 and 2 leaves", "wants B3, 2", "wants B3,9", "wants B, 3", "wants 3"}) {
    CAPTURE(list);
    CHECK_FALSE(read_leaves_present(book, list));
  }
  // that a leaf is torn says that it is there
  CHECK(wants(book, check(book, "wants A1, B4; C2 mutilated")) == "wants A1, B4");
  CHECK(wants(book, check(book, "wants A1; C2 and C3 torn")) == "wants A1");
  CHECK(wants(book, check_copy(book, spans("A-L, C2 stained"))).empty());
  CHECK(noted(book, check(book, "A-L, C2 and C3 stained")) == "C2 damaged; C3 damaged");
  CHECK(spans("A-L; A1 in facsimile") == spans("A1 facsimile A2-L3"));
  CHECK(spans("complete, K8 mounted") == spans("A1-K7 K8 mounted L"));
  // a state of single leaves that "and" joins is that of each
  CHECK(spans("A1 and K8 facsimile, A2-K7") == spans("A1 facsimile K8 facsimile A2-K7"));
  CHECK(spans("A-C and D1 facsimile") == spans("A-C D1 facsimile"));
  CHECK(spans("wants A1, which is supplied in manuscript facsimile") == spans("wants A1 in facsimile"));
  CHECK(spans("wants A1 (in facsimile)") == spans("wants A1 in facsimile"));
  CHECK(spans("wants A1 (blank?)") == spans("wants A1"));
  // a list of states alone is of a whole copy
  for (std::string const state : {"facsimile", "in facsimile", "supplied from another copy", "mounted", "torn"}) {
    CAPTURE(state);
    auto const only = read_leaves_present(book, "B3 " + state);
    REQUIRE(only);
    CHECK(check_copy(book, only->spans).wanting.size() == (state.ends_with("facsimile") ? 1U : 0U));
    REQUIRE(only->doubts.size() == 1);
    CHECK(only->doubts[0].problem == Problem::only_states_of_leaves);
    CHECK(only->doubts[0].found_text() == ("B3 " + state).substr(0, only->doubts[0].found_text().size()));
  }
  CHECK((*read_leaves_present(book, "A-L facsimile")).doubts.empty());
  for (std::string const word : {"gathering", "quire", "signature", "sig.", "the gathering"})
    CHECK(spans("wants " + word + " C") == spans("wants C"));
  for (auto const* text : {"wants all", "lacks all after", "wants everything before ", "wants facsimile",
                           "wants, and A1", "wants first", "wants first and leaves", "wants the last", "last leaf",
                           "wants complete", "wants the last twenty leaves of forty"}) {
    CAPTURE(text);
    CHECK(read_leaves_present(book, text).error().problem == Problem::not_a_reference);
  }
  CHECK(read_leaves_present(book, "A-C, wants Q1").error().place->column == 12);
  CHECK(read_leaves_present(book, "all after C1").error().place->column == 1); // only of what is wanting
}

// How catalogues say that a copy is not whole: common practice, no source.
TEST_CASE("a word that a copy is imperfect names no leaf") {
  auto const book = book_of("8°: A-K⁸ L⁴ (−L4)");
  auto const wanting = [&](std::string const& text) {
    CAPTURE(text);
    auto const leaves = read_leaves_present(book, text);
    REQUIRE(leaves);
    CHECK(leaves->doubts.empty());
    return wants(book, check_copy(book, leaves->spans));
  };
  for (std::string const word :
       {"imperfect",     "imperf",      "incomplete",   "defective",   "fragment",   "fragments",  "fragmentary",
        "unvollständig", "unvollst",    "unvollkommen", "inkomplett",  "defekt",     "incomplet",  "incomplète",
        "imparfait",     "imparfaite",  "défectueux",   "défectueuse", "incompleto", "incompleta", "imperfetto",
        "imperfetta",    "scompleto",   "difettoso",    "mutilo",      "mutila",     "frammento",  "imperfecto",
        "imperfecta",    "defectuoso",  "fragmento",    "onvolledig",  "onvolkomen", "incompleet", "defect",
        "imperfectus",   "imperfectum", "mutilus",      "mutilum",     "fragmentum", "Imperfect",  "IMPERF",
        "acefalo",       "acefala",     "acéfalo",      "acéphale",    "acephalus"}) {
    CAPTURE(word);
    // it says by itself neither what is there nor what is not
    for (std::string const before : {"", "(", "A1,", "A1, ", "A-L; ", "B3 ", "A-L (", "complete, ", "copy ",
                                     "wants A1; ", "wants A1; B3 ", "wants "})
      for (std::string const after : {"", ".", ")", " A1", ": A-L", "; complete", " copy", "?"}) {
        CAPTURE(before);
        CAPTURE(after);
        auto const list = read_leaves_present(book, before + word + after);
        REQUIRE_FALSE(list);
        CHECK(list.error().problem == Problem::leaves_not_named);
        CHECK(list.error().found_text() == word);
        CHECK(list.error().place->column == 1 + before.size());
      }
    // before the leaves that are wanting it adds nothing to them
    for (std::string const list :
         {": wants A1", ", lacks A1", "; wanting A1", " (wants A1)", ". Lacks A1", "? wants A1", ", A1 wanting",
          " (A1 lacking)", ", -A1", ": −A1", " copy: wants A1", ", imperfect: wants A1"})
      CHECK(wanting(word + list) == "wants A1");
    CHECK(wanting("A-L; " + word + ": wants A1") == "wants A1");
    CHECK(wanting("(" + word + ", A1 wanting)") == "wants A1");
    CHECK(wanting("A-L (" + word + ", A1 wanting)") == "wants A1");
    CHECK(wanting("A-K (" + word + ": wants A1) L") == "wants A1");
    CHECK(wanting("A-K (" + word + ": -A1) L") == "wants A1");
    CHECK(wanting("A-K (" + word + "), wants A1") == "wants A1, L");
  }
  CHECK_FALSE(read_leaves_present(book, "A1, fragmentaire")); // a word that is not known
  // words that a copy is described, and no leaf
  for (std::string const text : {"this copy", "the copy", "Copy", "the", ",", ".", "; ,"}) {
    CAPTURE(text);
    auto const list = read_leaves_present(book, " " + text + " ");
    REQUIRE_FALSE(list);
    CHECK(list.error().problem == Problem::leaves_not_named);
    CHECK(list.error().place->column == 2);
    CHECK(list.error().found_text() == text);
  }
  for (auto const* text : {"torn", "damaged", "mutilated copy", "not complete", "not perfect", "nothing", "none"})
    CHECK_FALSE(read_leaves_present(book, text));
  for (auto const* text : {"", "  ", "\t\n", "\u00A0"}) CHECK((*read_leaves_present(book, text)).spans.empty());
}

// The notation of bifolia by leaves with a point, A3.6: Bowers, Principles of Bibliographical Description (1949), ch. 5,
// from memory. Bifolia of a gathering lie inside one another.
TEST_CASE("A list of leaves may name bifolia") {
  auto const book = book_of("8°: π² A-C⁸ (C3+χ1.2) D⁸ (−D3)");
  auto const spans = [&](char const* text) {
    CAPTURE(text);
    auto const leaves = read_leaves_present(book, text);
    REQUIRE(leaves);
    return leaves->spans;
  };
  CHECK(spans("B3.4") == spans("B3 B4"));
  CHECK(spans("B3.6") == spans("B3 B6"));
  CHECK(spans("π1.2, χ1.2") == spans("π1 π2 χ1 χ2"));
  CHECK(spans("B1.8 B2.7 B3.6 B4.5 C1") == spans("B1 B2 B3 B4 B5 B6 B7 B8 C1"));
  CHECK(spans("B1.8 B2.3 B5 B7 C1") == spans("B1 B2 B3 B5 B7 B8 C1"));
  CHECK(spans("B1.8 B2-7 A1.8") == spans("B1 B2-7 B8 A1 A8"));
  CHECK(spans("B3.B6 χ1.χ2") == spans("B3 B6 χ1 χ2"));
  CHECK(spans("B1.8 C1.8") == spans("B1 B8 C1 C8"));
  CHECK(spans("B3.6 B1.8") == spans("B3 B6 B1 B8")); // in the order of the list
  CHECK(spans("C3.6 χ1.2") == spans("C3 χ1 χ2 C6"));
  CHECK(spans("D3.6") == spans("D3 D6")); // a copy with the leaf that the others lack
  CHECK(spans("B1.8 facsimile B2.7 B3.6 mounted") == spans("B1 facsimile B2 B3 mounted B6 mounted B7 B8 facsimile"));
  CHECK(wants(book, check(book, "π A B1.8 B2.7 B4.5 C1-3 C4-8 D1-2 D4-8")) == "wants B3.6, χ1.χ2");
  CHECK(wants(book, check(book, "π A B1.8 B2.7 B4.5 C D1-2 D4-8 B3.6")).empty());
  for (auto const* text : {"B3.9", "χ1.3", "B3.0"})
    CHECK(read_leaves_present(book, text).error().problem == Problem::no_such_leaf);
  CHECK(read_leaves_present(book, "A, B3.9").error().place->column == 4);
  CHECK(read_leaves_present(book, "B3.9").error().limit == 8);
  for (auto const* text : {"B6.3", "B3.3"})
    CHECK(read_leaves_present(book, text).error().problem == Problem::run_goes_backwards);
  for (auto const* text : {"B3r.6", "B3.B6r", "B.3.6.7", "B3.x", "B3.6-7", "B.6.."}) {
    INFO(text);
    CHECK_FALSE(read_leaves_present(book, text));
  }
}

// The Unicode Standard, General Punctuation and Latin-1 Supplement: U+00A0, U+2009, U+202F are spaces.
TEST_CASE("Every kind of blank parts leaves and evidence") {
  auto const book = book_of("8°: A-C⁸");
  for (std::string const blank : {" ", "\t", "\r\n", "\u00A0", "\u2009", "\u202F"}) {
    CAPTURE(blank);
    CHECK((*read_leaves_present(book, "A1" + blank + "B2" + blank)).spans ==
          (*read_leaves_present(book, "A1 B2")).spans);
    if (blank != "\r\n")
      CHECK(*read_joints(book, "A1.8" + blank + "conjugate") == *read_joints(book, "A1.8 conjugate"));
  }
}

TEST_CASE("A list may end with a full stop and with blanks of every kind") {
  auto const formula = *read_formula("8°: A-D⁸");
  IdealCopy const book{formula};
  for (std::string const list : {"A-B D", "A B D1-8", "A-D, wants C", "wants C"})
    for (std::string const end : {"", ".", " ", "\n", "\t", "\r\n", "\u00A0", ". ", ".\n", ".\t", ".\r\n", ".\u00A0",
                                  " \n\n", ". \n \n", ",", ";"}) {
      CAPTURE(list + end);
      auto const leaves = read_leaves_present(book, list + end);
      REQUIRE(leaves);
      CHECK(wants(book, check_copy(book, leaves->spans)) == "wants C");
      CHECK(leaves->doubts.empty());
    }
  CHECK_FALSE(read_leaves_present(book, "A-B D.."));
}

TEST_CASE("Leaves out of order are one stretch unless another leaf lies between them") { // constructed
  auto const formula = *read_formula("8°: A-E⁸ (−C8)");
  IdealCopy const book{formula};
  auto const misplaced = [&](std::string const& between) {
    auto const leaves = read_leaves_present(book, "A C1-7 D B1-3 " + between + " B4-8 E");
    REQUIRE_MESSAGE(leaves, between);
    return check_copy(book, leaves->spans).misplaced.size();
  };
  CHECK(misplaced("") == 1);
  CHECK(misplaced("E5 (facsimile)") == 2);
  CHECK(misplaced("A1") == 2); // a second one
  CHECK(misplaced("C8") == 2); // a leaf that the ideal copy does not have
}

TEST_CASE("A name of several leaves in a list is told") {
  auto const book = book_of("A-B⁸; A-B⁸");
  auto const leaves = read_leaves_present(book, "f.1-16 A1-8");
  REQUIRE(leaves);
  REQUIRE(leaves->warnings().size() == 1);
  CHECK(leaves->warnings()[0].problem == Problem::name_of_several);
  CHECK(leaves->warnings()[0].place->column == 8);
}

TEST_CASE(
    "Missing leaves are told in portions, an inserted gathering as a whole") { // constructed; the leaves are counted by hand
  auto const book = book_of("A⁴ (A2+a⁴) B⁴"); // A1-2 are 1 and 2, a1-4 are 3 to 6, A3-4 are 7 and 8, B1-4 are 9 to 12
  auto const of = [&](std::int64_t from, std::int64_t to, std::int64_t number) {
    return wanting_portion(book, span_of_numbers(book, from, to), number);
  };
  CHECK(of(1, 12, 1) == WantingPortion{1, 2, false});
  for (std::int64_t number : {3, 4, 5, 6}) CHECK(of(1, 12, number) == WantingPortion{3, 6, true});
  CHECK(of(1, 12, 8) == WantingPortion{7, 8, false});
  CHECK(of(1, 12, 10) == WantingPortion{9, 12, false});
  CHECK(of(3, 6, 3) == WantingPortion{3, 6, true});
  CHECK(of(4, 8, 4) == WantingPortion{4, 8, false}); // a1 is there, so the gathering is not missing as a whole
  CHECK(of(2, 5, 2) == WantingPortion{2, 5, false});
}

TEST_CASE(
    "leaves that a word after them calls wanting are the same with other blanks between") { // common practice, no source
  auto const formula = *read_formula("A-L8");
  IdealCopy const book{formula};
  for (auto const* const text : {"A-L, E8 is wanting", "A-L, E8 and F1 are also wanting", "A-L (E8 lacking)"})
    for (auto const* const blank : {"  ", "\u00a0", "\t"}) {
      CAPTURE(std::string{text});
      auto const read = read_leaves_present(book, text), other = read_leaves_present(book, with(text, " ", blank));
      REQUIRE(read);
      REQUIRE(other);
      CHECK(read->spans == other->spans);
    }
}
