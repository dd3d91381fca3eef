// SPDX-License-Identifier: MIT
// The collation of a copy in the place of a list of its leaves: common practice of card catalogues and dealers, no source. The
// books are made here, and their leaves counted by hand or by their making.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct Collated {
  std::string wanting, doubts;
  friend bool operator==(Collated const&, Collated const&) = default;
};
Collated told(IdealCopy const& book, std::string const& text) {
  auto const read = read_leaves_present(book, text);
  if (!read) return {"refused", std::string{identifier(read.error().problem)}};
  Collated result{wants(book, check_copy(book, read->spans)), ""};
  for (auto const& doubt : read->warnings())
    result.doubts.append(result.doubts.empty() ? "" : ", ").append(identifier(doubt.problem));
  return result;
}
std::string raised_figures(int number) {
  constexpr char const* digits[]{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
  std::string text;
  for (char const c : std::to_string(number)) text += digits[c - '0'];
  return text;
}

} // namespace

TEST_CASE("a formula with its figures on the line, in the place of a list, is the whole copy and is doubted") {
  // every book of up to four runs, in each of which the gatherings have one number of leaves
  struct Run {
    char const *one, *more;
  };
  constexpr Run runs[]{{"π", "π"}, {"A", "A-C"}, {"D", "D-K"}, {"L", "L-M"}};
  constexpr int folded[]{1, 2, 4, 8};
  int books = 0;
  for (int shape = 0; shape < 256; ++shape)
    for (int number = 2; number <= 4; ++number) {
      std::string formula = "8°:", flat;
      int counts = 0;
      bool last_leaf = false;
      for (int k = 0; k < number; ++k) {
        auto const leaves = folded[(shape >> (2 * k)) % 4];
        bool const more = ((shape + number) >> k) % 2 != 0 && k > 0;
        auto const* const name = more ? runs[k].more : runs[k].one;
        formula.append(" ").append(name).append(raised_figures(leaves));
        flat.append(flat.empty() ? "" : " ").append(name).append(std::to_string(leaves));
        counts += leaves > 1 || more ? 1 : 0;
        last_leaf = last_leaf || (leaves > 1 && !more);
      }
      CAPTURE(formula);
      IdealCopy const book{*read_formula(formula)};
      bool const list =
          counts < 2 || !last_leaf; // the figures are leaves as well as counts, with the same meaning, or too few
      for (std::string const& text : {flat, flat + ".", flat + ", complete", "complete: " + flat}) {
        CAPTURE(text);
        if (counts < 2 && last_leaf) continue; // π2 A1 of π² A1 may be two leaves
        auto const read = told(book, text);
        CHECK(read.wanting.empty());
        CHECK(read.doubts == (list ? "" : "counts_of_gatherings"));
        auto const spans = (*read_leaves_present(book, text)).spans;
        CHECK(check_copy(book, spans).repeated.empty());
      }
      if (list) continue;
      ++books;
      auto const lost = told(book, flat + "; wanting A1").wanting;
      CHECK((lost == "wants A1" || lost == "wants A"));
      CHECK(told(book, flat + " (wants π1)").doubts == "counts_of_gatherings");
    }
  CHECK(books > 300);
}

TEST_CASE("figures that are leaves and those that can only be counts") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  CHECK(told(book, "π2 A-K8 L4") == Collated{"", "counts_of_gatherings"});
  CHECK(told(book, "π2 A-K8 L4; wanting A1") == Collated{"wants A1", "counts_of_gatherings"});
  CHECK(told(book, "π2 A-K8 L4; A1 torn") == Collated{"", "counts_of_gatherings"});
  CHECK(told(book, "A8 B8 C8") == Collated{"wants π, D-K, L", "counts_of_gatherings"});
  CHECK(told(book, "π2 A8 B-K8 L4") == Collated{"", "counts_of_gatherings"});
  CHECK(told(book, "π2 A8 B-I8 K7 L4") == Collated{"refused", "counts_differ"}); // which leaf of K?
  CHECK(told(book, "π1 A-K8 L4") == Collated{"refused", "counts_differ"});
  auto const differs = read_leaves_present(book, "π2 A-I8 K7 L4");
  REQUIRE_FALSE(differs);
  CHECK(differs.error().problem == Problem::counts_differ);
  CHECK(differs.error().place->column == 9);
  // leaves
  CHECK(told(book, "leaves A8, B8 and C8").doubts.empty());
  CHECK(check_copy(book, (*read_leaves_present(book, "leaf A8, leaf B8")).spans).leaves_present == 2);
  CHECK(told(book, "wants A8, B8, C8") == Collated{"wants A8, B8, C8", ""});
  CHECK(told(book, "wants π2, A8, L4") == Collated{"wants π2, A8, L4", ""});
  CHECK(told(book, "A8 facsimile, B8 facsimile").wanting == "wants A8, B8");
  CHECK(told(book, "π A-K8 L1-4") == Collated{"", ""});
  CHECK(told(book, "C8, D8") == Collated{"wants π, A-B, C1-7, D1-7, E-K, L", ""});
  CHECK(told(book, "A8, B8, D8").doubts.empty());
  CHECK(told(book, "π2, A-K8, L4") == Collated{"", "counts_of_gatherings"});
  CHECK(told(book, "π2, A8, B8") == Collated{"wants C-K, L", "counts_of_gatherings"});
  CHECK(told(book, "A-K L4") == Collated{"wants π, L1-3", ""});
  CHECK(told(book, "A8") == Collated{"wants π, A1-7, B-K, L", ""});
  auto const read = read_leaves_present(book, "A8 torn, π2 A-K8 L4");
  REQUIRE(read);
  REQUIRE(!read->warnings().empty());
  CHECK(read->warnings()[0].problem == Problem::counts_of_gatherings);
  CHECK(read->warnings()[0].found_text() == "π2");
  CHECK(read->warnings()[0].place->column == 10);
  // inserted gatherings, and leaves that the formula removes
  IdealCopy const other{*read_formula("8°: A⁸(A4+χ², −A8) B⁸ C⁴")};
  CHECK(told(other, "A7 χ2 B8 C4") == Collated{"", "counts_of_gatherings"});
  CHECK(told(other, "A8 B8 C4").wanting.empty());
  CHECK(check_copy(other, (*read_leaves_present(other, "A7 χ2 B8 C4")).spans).repeated.empty());
}

TEST_CASE("a gathering given by its first and last leaf does not make leaves of the counts before it") {
  IdealCopy const book{*read_formula("8°: A-H⁸")};
  std::string const names = "ABCDEFGH";
  // each gathering by its count, or by its leaves; the last also cut
  for (unsigned by_leaves = 0; by_leaves < 256; ++by_leaves)
    for (std::size_t gatherings = 3; gatherings <= 8; ++gatherings)
      for (int last : {0, 3, 7}) {
        std::string text;
        std::size_t counts = 0;
        for (std::size_t i = 0; i < gatherings; ++i) {
          bool const cut = last > 0 && i + 1 == gatherings, leaves = cut || (by_leaves >> i) % 2 != 0;
          counts += leaves ? 0 : 1;
          text +=
              (text.empty() ? "" : " ") + names.substr(i, 1) + (leaves ? "1-" : "") + std::to_string(cut ? last : 8);
        }
        if (counts < 2) continue;
        CAPTURE(text);
        auto const read = read_leaves_present(book, text);
        REQUIRE(read);
        CHECK(check_copy(book, read->spans).leaves_present ==
              static_cast<std::int64_t>(8 * gatherings) - (last > 0 ? 8 - last : 0));
        REQUIRE(read->warnings().size() == 1);
        CHECK(read->warnings()[0].problem == Problem::counts_of_gatherings);
      }
  // with a gap before it, the list is of leaves
  CHECK(told(book, "A8 B8 C8 E1-4") == Collated{"wants A1-7, B1-7, C1-7, D, E5-8, F-H", ""});
  CHECK(told(book, "A8 B8 C3-5").doubts.empty());
}

TEST_CASE("leaves that a list names neither as there nor as wanting are told") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (std::string const word : {"lacks", "wanting", "ohne", "manque", "sin"}) {
    CAPTURE(word);
    for (std::string const between : {", ", "; ", ". ", " "}) {
      auto const read = read_leaves_present(book, "A-K8" + between + word + " L");
      REQUIRE(read);
      REQUIRE(read->warnings().size() == 1);
      CHECK(read->warnings()[0].problem == Problem::leaves_left_out);
      CHECK(read->warnings()[0].limit == 2); // π1 and π2
      CHECK(read->warnings()[0].found_text() == "L");
      CHECK(told(book, "π, A-K8" + between + word + " L") == Collated{"wants L", ""});
      CHECK(told(book, "A-L" + between + word + " B4") == Collated{"wants π, B4", ""}); // B4 out of A-L
      CHECK(told(book, "complete" + between + word + " L") == Collated{"wants L", ""});
    }
  }
  CHECK(told(book, "A-K, lacks B4 and L").doubts == "leaves_left_out");
  CHECK(told(book, "A1 torn, lacks L").doubts.empty());
}
