// SPDX-License-Identifier: MIT
// Pieces of lists in every order, with blanks between them and without: each is read or refused at a place in the text, and
// nothing outside the text is looked at (the tests run with a checked standard library).
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/copy/read_leaves_present.hpp>

#include "check.hpp"

#include <string>
#include <string_view>

using namespace bifolium;

TEST_CASE("pieces of lists in every order are read or refused at a place in the text") {
  IdealCopy const book{*read_formula("8°: π² A⁸(A3+1.2) B-Z⁸ 2A-2Z⁸ (−B4)")};
  constexpr std::string_view pieces[]{
      ",",         " ",           ";",        ":",           ".",        "(",       ")",     "[",
      "]",         "\"",          "-",        "−",           "±",        "A1",      "A3.6",  "π1",
      "2A",        "f. 3",        "blank",    "and",         "except",   "wanting", "wants", "is lacking,",
      "imperfect", "first leaf",  "2 leaves", "Ex.",         "complete", "title",   "torn",  "in facsimile",
      "only",      "bound after", "misbound", "last leaf of"};
  auto const read = [&](std::string const& text) {
    auto const is_there = [&](auto const& answer) {
      return answer || !answer.error().place || position_of(text, *answer.error().place) <= text.size();
    };
    if (auto const present = read_leaves_present(book, text); present) {
      for (auto const& span : present->spans)
        if (!(span.first <= span.last) || span.first.leaf < 1) FAIL_CHECK(text);
    } else if (!is_there(present)) {
      FAIL_CHECK(text);
    }
    if (!is_there(read_joints(book, text)) || !is_there(read_paper_seen(book, text))) FAIL_CHECK(text);
  };
  std::size_t times = 0;
  for (auto const first : pieces)
    for (auto const second : pieces)
      for (auto const third : pieces)
        for (auto const* const between : {++times % 3 == 0 ? "" : " "})
          read(std::string{first}.append(between).append(second).append(between).append(third));
  CHECK(read_leaves_present(book, "A1, B2"));
}
