// SPDX-License-Identifier: MIT
// Folds and single leaves in one list of inserted leaves, A⁸(A3+χ1.2,3). That a point joins the two leaves of a fold and
// a comma parts leaves that are not joined is the rule of Bowers, Principles of Bibliographical Description (from
// memory). The lists are made from their folds and leaves, so that it is known which leaf is joined to which.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

/// A list of leaves as it is written, and the leaf to which each is joined, or 0.
struct ListOfPieces {
  std::string text{};
  std::vector<int> joined{};
  bool folds{}, alone{}; // whether it has folds, and single leaves
};

/// Returns the list whose pieces have these numbers of leaves, with numbers from `first`.
ListOfPieces list_of_pieces(std::vector<int> const& sizes, int first) {
  ListOfPieces list;
  for (int const size : sizes) {
    auto const before = static_cast<int>(list.joined.size());
    if (before > 0) list.text += ',';
    for (int k = 1; k <= size; ++k) {
      list.text += (k > 1 ? "." : "") + std::to_string(first + before + k - 1);
      list.joined.push_back(size == 1 ? 0 : before + size + 1 - k);
    }
    (size == 1 ? list.alone : list.folds) = true;
  }
  return list;
}
/// Calls `use` with all lists of folds and single leaves that have at most `most` leaves.
template <class Use> void for_lists_of_pieces(std::vector<int>& sizes, int most, Use use) {
  if (!sizes.empty()) use(sizes);
  for (int const size : {1, 2, 4}) {
    if (size > most) continue;
    sizes.push_back(size);
    for_lists_of_pieces(sizes, most - size, use);
    sizes.pop_back();
  }
}

void check_pieces(ListOfPieces const& list, std::string const& before, std::string const& after) {
  auto const text = before + list.text + after;
  CAPTURE(text);
  auto const formula = read_lawfully(text);
  REQUIRE(formula);
  CHECK(formula->warnings().empty());
  auto const size = static_cast<std::int64_t>(list.joined.size());
  CHECK(formula->leaves() == 8 + size);
  // without a name, single leaves are written by their number
  if (list.folds || before.ends_with("χ")) CHECK(write_formula(*formula) == text);
  IdealCopy const book{*formula};
  for (std::int64_t k = 1; k <= size; ++k) {
    auto const leaf = book.leaf_of_number(3 + k);
    REQUIRE(leaf);
    auto const other = book.conjugate(*leaf);
    CHECK((other ? *book.leaf_number(*other) - 3 : 0) == list.joined[static_cast<std::size_t>(k - 1)]);
  }
}

} // namespace

TEST_CASE("a point joins inserted leaves and a comma parts them, in every list of folds and leaves") {
  std::vector<int> sizes;
  int lists = 0;
  for_lists_of_pieces(sizes, 6, [&](std::vector<int> const& pieces) {
    ++lists;
    auto const list = list_of_pieces(pieces, 1);
    bool const singles_alone = !list.folds && pieces.size() > 4; // written χ1-5
    if (!singles_alone) check_pieces(list, "8°: A⁸(A3+χ", ")");
    check_pieces(list, "8°: A⁸(A3+", ")");
    if (!singles_alone) check_pieces(list_of_pieces(pieces, 3), "8°: A⁸(A3+χ", ")");
  });
  CHECK(lists == 1 + 2 + 3 + 6 + 10 + 18); // of 1 to 6 leaves
}

TEST_CASE("the leaves of a list with folds are found by their names") {
  std::vector<int> sizes;
  for_lists_of_pieces(sizes, 6, [&](std::vector<int> const& pieces) {
    auto const list = list_of_pieces(pieces, 1);
    CAPTURE(list.text);
    auto const formula = read_formula("A⁸(A3+χ" + list.text + ") B⁸");
    REQUIRE(formula);
    IdealCopy const book{*formula};
    auto const size = static_cast<int>(list.joined.size());
    for (int k = 1; k <= size; ++k) {
      auto const found = book.find(*read_signature("χ"), k);
      REQUIRE(found);
      CHECK_FALSE(found->doubtful);
      CHECK(book.leaf_number(found->leaf) == 3 + k);
    }
    CHECK_FALSE(book.find(*read_signature("χ"), size + 1));
    auto const all = book.find_inserted(*read_signature("χ"));
    REQUIRE(all);
    CHECK(all->from == 4);
    CHECK(all->to == 3 + size);
  });
  // at another place the name is of several, and no one insertion has it
  for (char const* text : {"A⁸(A3+χ1.2,3) B⁸(B1+χ4)", "A⁸(A3+χ1) B⁸(B1+χ2)", "A⁸(A3+χ1,2, A5+χ3.4)"})
    CHECK_FALSE(IdealCopy{*read_formula(text)}.find_inserted(*read_signature("χ")));
}

TEST_CASE("leaves that are the same as those of a list are told one by one") {
  auto const formula = read_lawfully("8°: A⁸(A3+χ1.2,3[=B4.5,8]) B⁸(−B4.5,8)");
  REQUIRE(formula);
  CHECK(paper(*formula).sheets.stated == Fraction{2}); // all printed with B
  CHECK(write_formula(*formula) == "8°: A⁸(A3+χ1.2,3[=B4.5,8]) B⁸(−B4.5,8)");
  std::vector<std::pair<std::uint32_t, int>> told; // the insertion and its leaf
  for (auto const& change : formula->changes())
    if (auto const* const same = change.identity()) told.emplace_back(same->insertion.value(), same->leaf);
  CHECK(told == std::vector<std::pair<std::uint32_t, int>>{{0, 1}, {0, 2}, {1, 1}});
  // written apart, it is of the insertion before it alone
  auto const apart = read_lawfully("8°: A⁸(A3+χ1.2, A3+χ3[=B8]) B⁸(−B8)");
  REQUIRE(apart);
  CHECK(apart->changes()[2].identity()->insertion == 1U);
}

TEST_CASE("numbers of inserted leaves that make no list are told") {
  // a fold has two leaves, a gathering an even number
  for (char const* text : {"A⁸(A3+χ1.2.3)", "A⁸(A3+1.2.3)", "A⁸(A3+χ1,2.3.4)"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0] == Problem::odd_gathering);
  }
  for (char const* text : {"A⁸(A3+χ1,3)", "A⁸(A3+χ1.3)", "A⁸(A3+χ1.2,4)", "A⁸(A3+χ1.2,2)", "A⁸(A3+χ3-2)",
                           "A⁸(A3+χ1.2,3-2)", "A⁸(A3+χ1-3.4)"}) {
    CAPTURE(text);
    CHECK(read_formula(text).error() == Problem::change_not_understood);
    CHECK(count_formula(text).error() == Problem::change_not_understood);
  }
  for (char const* text : {"A⁸(A3+1,3.8)", "A⁸(A3+1, 2.8)", "A⁸(A3+1.2,8)", "A⁸(A3+2, 5.6)", "A⁸(A3+χ1, 5.6)"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0] == Problem::text_not_read);
  }
}

TEST_CASE(
    "counts after one gathering are a list of its leaves only from the first leaf on") { // common practice, no source
  // nothing alternates in a single gathering; a list that begins elsewhere is the count and another that is doubted
  for (auto const& [text, leaves] : {std::pair{"4°: A1.2", 2},
                                     {"4°: χ1.2.3 A⁴", 7},
                                     {"4°: χ1,2 A⁴", 6},
                                     {"4°: A8.2", 8},
                                     {"4°: π3.2", 3},
                                     {"4°: χ4.2.3 A⁴", 8},
                                     {"8°: A⁸ B8.2 C⁸", 24}}) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
    CHECK_FALSE(formula->warnings().empty());
  }
}
