// SPDX-License-Identifier: MIT
// Lists of the leaves of a copy of a book whose parts are signed alike (common practice, no source). The leaves are counted by hand.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

struct ListOfParts {
  char const *formula, *list, *leaves; ///< the numbers of the leaves of each span
  std::size_t doubts = 0;
};

} // namespace

TEST_CASE("a name that comes again in a list is that of the next part of the book") {
  auto const* const two = "A-B⁸; A-B⁸"; // A 1-8, B 9-16; A 17-24, B 25-32
  for (auto const& one : std::initializer_list<ListOfParts>{
           {two, "A-B A-B", "1-16 17-32"},
           {two, "A-B; A-B", "1-16 17-32"},
           {two, "A B A B", "1-8 9-16 17-24 25-32"},
           {two, "A1-8 B A1-8 B", "1-8 9-16 17-24 25-32"},
           {two, "A5-B2 A5-B2", "5-10 21-26"},
           {two, "A1 A1", "1-1 17-17"},
           {two, "A2.7 A2.7", "2-2 7-7 18-18 23-23"},
           {two, "wants B8, B8", "1-15 17-31"},
           {two, "A1-3 A4-8", "1-3 4-8", 2},           // of the first part, or of the second
           {two, "A-B", "1-16", 1},                    // which one?
           {two, "A-B A", "1-16 17-24", 2},            //
           {two, "A-B A-B A-B", "1-16 17-32 1-16", 3}, // there is no third
           {two, "B-A", "9-24", 1},                    // the A after B
           {two, "f.1-16 A1-8", "1-16 17-24", 1},      //
           {two, "A-B, A-B (wanting A1)", "2-16 17-32", 1},
           {"A-B⁸; A-B⁴; A-B⁸", "A-B A-B A-B", "1-16 17-24 25-40"},
           {"A-B⁸; A-B⁴; A-B⁸", "A-B A-B", "1-16 17-24", 2}, // the third may be meant
           {"A-B⁸; A-B⁴; A-B⁸", "A8 A8", "8-8 32-32", 2},    // A of the second part has four leaves
           {"π² A-B⁸; π² A-B⁸", "π-B π-B", "1-18 19-36"}}) {
    CAPTURE(std::string{one.formula});
    CAPTURE(std::string{one.list});
    IdealCopy const book{*read_formula(one.formula)};
    auto const list = read_leaves_present(book, one.list);
    REQUIRE(list);
    std::string leaves;
    for (auto const& span : list->spans)
      leaves.append(leaves.empty() ? "" : " ").append(std::to_string(span.from) + '-' + std::to_string(span.to));
    CHECK(leaves == one.leaves);
    CHECK(list->warnings().size() == one.doubts);
    for (auto const& doubt : list->warnings()) CHECK(doubt.problem == Problem::name_of_several);
  }
  // with a raised figure the name itself says which part is meant
  IdealCopy const series{*read_formula("A-B⁸; ²A-B⁸")};
  CHECK((*read_leaves_present(series, "A-B ²A-²B")).warnings().empty());
  CHECK((*read_leaves_present(series, "A-B ²A-²B")).spans[1].from == 17);
}

TEST_CASE("a whole copy of many parts that are signed alike is complete and without a doubt") {
  std::string formula = "A-B⁸", list = "A-B";
  for (int part = 1; part < 40; ++part) formula += "; A-B⁸", list += " A-B";
  IdealCopy const book{*read_formula(formula)};
  auto const read = read_leaves_present(book, list);
  REQUIRE(read);
  CHECK(read->warnings().empty());
  CHECK(check_copy(book, read->spans).complete());
}

TEST_CASE("the next gathering with a name is found") {
  IdealCopy const book{*read_formula("A-C⁸ D⁴; A-C⁸; ²B⁸ B²")};
  auto const b = *read_signature("B");
  auto at = book.find(b)->gathering;
  CHECK(at == GatheringAt{0, 1});
  at = *book.find_after(b, at);
  CHECK(at == GatheringAt{2, 1});
  at = *book.find_after(b, at);
  CHECK(at == GatheringAt{4, 0});
  CHECK(!book.find_after(b, at));
  CHECK(!book.find_after(*read_signature("E"), {0, 0}));
  CHECK(book.find_after(*read_signature("C"), {0, 0}) == GatheringAt{0, 2});
}
