// SPDX-License-Identifier: MIT
// One side of a leaf in a list: a list is of paper, so that a leaf is there or wanting with both sides (common practice, no
// source). The right answer is counted here side by side, from the leaves of a book that is made by hand.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// A side of the book, from 0: 2n - 2 is the recto of leaf n, and 2n - 1 its verso.
struct LeafInBook {
  std::string gathering;
  int number{}; // in the gathering
};
std::vector<LeafInBook> leaves_of_book() { // of 8°: π² A-K⁸ L⁴
  std::vector<LeafInBook> all{{"π", 1}, {"π", 2}};
  for (char const c : std::string_view{"ABCDEFGHIK"})
    for (int n = 1; n <= 8; ++n) all.push_back({{c}, n});
  for (int n = 1; n <= 4; ++n) all.push_back({"L", n});
  return all;
}
/// How the recto and the verso are written after a leaf.
struct Signs {
  char const *recto, *verso;
};
constexpr Signs side_signs[]{{"r", "v"},
                             {"ʳ", "ᵛ"},
                             {"^r", "^v"},
                             {"<sup>r</sup>", "<sup>v</sup>"},
                             {"a", "b"},
                             {"ᵃ", "ᵇ"},
                             {"r°", "v°"},
                             {"(r)", "(v)"},
                             {" recto", " verso"},
                             {" r°", " v°"},
                             {" (recto)", " (verso)"}};
/// Sides in a row, and how they are written.
struct PartOfBook {
  int from{}, to{};
  std::string text;
};
std::vector<PartOfBook> parts_of(Signs const& sign) {
  static auto const all = leaves_of_book();
  auto const name = [](int side) {
    auto const& leaf = all[static_cast<std::size_t>(side / 2)];
    return leaf.gathering + std::to_string(leaf.number);
  };
  auto const word = [&](int side) { return side % 2 == 0 ? sign.recto : sign.verso; };
  std::vector<PartOfBook> parts;
  for (int const leaf : {0, 2, 9, 85})
    for (int const side : {0, 1}) {
      auto const from = 2 * leaf + side;
      parts.push_back({from, from, name(from) + word(from)});
      for (int const more : {1, 2, 30}) {
        auto const to = from + more;
        if (to >= 2 * static_cast<int>(all.size())) continue;
        for (std::string const between : {"–", " to "})
          parts.push_back({from, to, name(from) + word(from) + between + name(to) + word(to)});
        auto const &first = all[static_cast<std::size_t>(leaf)], last = all[static_cast<std::size_t>(to / 2)];
        if (first.gathering != last.gathering || word(to)[0] == ' ') continue;
        parts.push_back({from, to, name(from) + word(from) + '-' + std::to_string(last.number) + word(to)});
        if (leaf == to / 2 && side == 0) parts.push_back({from, to, name(from) + word(from) + '-' + word(to)});
      }
    }
  return parts;
}
std::string leaf_name(int leaf) {
  static auto const all = leaves_of_book();
  auto const& one = all[static_cast<std::size_t>(leaf)];
  return one.gathering + std::to_string(one.number);
}
/// Which leaves of some sides have both, and how many have one.
struct CountedSides {
  std::set<int> whole, half;
  explicit CountedSides(std::set<int> const& sides) {
    for (int const side : sides) (sides.contains(side ^ 1) ? whole : half).insert(side / 2);
  }
  [[nodiscard]] std::set<int> all() const {
    auto both = whole;
    both.insert(half.begin(), half.end());
    return both;
  }
};
std::set<int> sides_of(std::vector<PartOfBook> const& parts) {
  std::set<int> sides;
  for (auto const& part : parts)
    for (int side = part.from; side <= part.to; ++side) sides.insert(side);
  return sides;
}
struct SidesTold {
  std::set<int> wanting;
  std::map<std::string, std::set<int>> noted;
  int doubts{}, sides{};
  bool repeated{};
};
SidesTold sides_told(IdealCopy const& book, std::string const& text) {
  CAPTURE(text);
  auto const read = read_leaves_present(book, text);
  REQUIRE(read);
  auto const copy = check_copy(book, read->spans);
  SidesTold all;
  for (auto const& span : copy.wanting)
    for (auto n = span.from; n <= span.to; ++n) all.wanting.insert(static_cast<int>(n) - 1);
  for (auto const& span : copy.noted)
    for (auto n = span.from; n <= span.to; ++n)
      all.noted[std::string{to_words(span.state)}].insert(static_cast<int>(n) - 1);
  for (auto const& doubt : read->warnings()) {
    ++all.doubts;
    all.sides += doubt.problem == Problem::side_of_leaf ? 1 : 0;
  }
  all.repeated = !copy.repeated.empty() || !copy.misplaced.empty();
  return all;
}

} // namespace

TEST_CASE("a leaf of which one side is said to be wanting is doubted, and both sides are the leaf") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (auto const& sign : side_signs)
    for (auto const& part : parts_of(sign)) {
      auto const sides = sides_of({part});
      CountedSides const counted{sides};
      for (std::string const begins : {"lacks ", "π-L, wants ", "Es fehlen ", "lacks the "}) {
        auto const text = begins + part.text;
        CAPTURE(text);
        auto const all = sides_told(book, text);
        CHECK(all.wanting == counted.all());
        CHECK(all.sides == static_cast<int>(counted.half.size()));
        CHECK(all.doubts == all.sides);
      }
      auto const after = sides_told(book, part.text + " wanting");
      CHECK(after.wanting == counted.all());
      CHECK(after.doubts == static_cast<int>(counted.half.size()));
    }
}

TEST_CASE("a blank side makes no blank leaf and is nothing that is wanting") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (auto const& sign : side_signs)
    for (auto const& part : parts_of(sign))
      for (std::string const word : {" blank", " (blank)", " leer", ", blank"}) {
        CountedSides const counted{sides_of({part})};
        for (std::string const before : {"", "π-L, "}) {
          auto const text = before + part.text + word;
          CAPTURE(text);
          auto const all = sides_told(book, text);
          CHECK(all.wanting.empty());
          CHECK(!all.repeated);
          CHECK(all.sides == 0);
          CHECK(all.doubts == (before.empty() ? 1 : 0)); // which leaves there are is not said
          auto const found = all.noted.find("blank");
          CHECK((found == all.noted.end() ? std::set<int>{} : found->second) == counted.whole);
        }
        if (part.from != part.to) continue;
        auto const lacks = sides_told(book, "lacks K8; " + part.text + word);
        CHECK(lacks.wanting == std::set<int>{81});
        CHECK(lacks.doubts == 0);
      }
  for (std::string const remark :
       {"A1, verso blank", "A1 (verso blank)", "A1 (blank on verso)", "A1, blank verso", "A1 (with blank verso)"}) {
    CAPTURE(remark);
    auto const all = sides_told(book, remark);
    CHECK(all.wanting.empty());
    CHECK(all.noted.empty());
    CHECK(sides_told(book, "lacks " + remark).wanting == std::set<int>{2});
    CHECK(sides_told(book, "lacks " + remark).doubts == 0);
    CHECK(sides_told(book, "lacks K8; " + remark + ", B4").wanting == std::set<int>{2, 13, 81});
  }
  for (std::string const remark : {" (title, verso blank)", " (title; verso blank)", " (title-page, blank on verso)"}) {
    CHECK(sides_told(book, "lacks A1" + remark).wanting == std::set<int>{2});
    CHECK(sides_told(book, "π A1" + remark + " A2-8 B-L").wanting.empty());
  }
}

TEST_CASE("a word for what stands in the place of a leaf is said of the leaf, with a doubt if one side is named") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  struct Word {
    std::string text, state;
    bool gone, doubted;
  };
  for (auto const& sign : side_signs)
    for (auto const& part : parts_of(sign)) {
      CountedSides const counted{sides_of({part})};
      for (auto const& [text, state, gone, doubted] :
           std::initializer_list<Word>{{"facsimile", "facsimile", true, true},
                                       {"in facsimile", "facsimile", true, true},
                                       {"supplied in manuscript", "manuscript", true, true},
                                       {"supplied", "supplied", false, true},
                                       {"mounted", "mounted", false, true},
                                       {"torn", "damaged", false, false}, // the paper of both sides
                                       {"stained", "damaged", false, false}}) {
        auto const list = part.text + ' ' + text;
        CAPTURE(list);
        auto const all = sides_told(book, list);
        CHECK(all.wanting == (gone ? counted.all() : std::set<int>{}));
        CHECK(all.sides == (doubted ? static_cast<int>(counted.half.size()) : 0));
        CHECK(all.doubts == all.sides + 1);
        REQUIRE(all.noted.size() == 1);
        CHECK(all.noted.begin()->first == state);
        CHECK(all.noted.begin()->second == counted.all());
      }
    }
}

TEST_CASE("leaves by their number in the book have sides, too") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (auto const& sign : side_signs)
    for (int from = 1; from <= 6; ++from)
      for (int const more : {0, 1, 2, 5})
        for (std::string const word : {"f. ", "ff. ", "fol. ", "leaf ", "Bl. ", "cc. "}) {
          auto const to = from + more; // sides, from 1
          auto const text = [&](int side) {
            return std::to_string((side + 1) / 2) + (side % 2 == 1 ? sign.recto : sign.verso);
          };
          auto const list = "lacks " + word + text(from) + (more > 0 ? "-" + text(to) : "");
          CAPTURE(list);
          CountedSides const counted{sides_of({{from - 1, to - 1, ""}})};
          auto const all = sides_told(book, list);
          CHECK(all.wanting == counted.all());
          CHECK(all.sides == static_cast<int>(counted.half.size()));
          CHECK(all.doubts == all.sides);
        }
  CHECK(sides_told(book, "lacks 10b-12a").wanting == std::set<int>{9, 10, 11});
  CHECK(sides_told(book, "lacks 10b, 12a, 14").wanting == std::set<int>{9, 11, 13});
  CHECK(sides_told(book, "lacks ff. 3r, 4v, 6").wanting == std::set<int>{2, 3, 5});
}

TEST_CASE("sides that are named one by one are counted together") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (auto const& sign : side_signs) {
    auto const parts = parts_of(sign);
    for (std::size_t i = 0; i < parts.size(); i += 17)
      for (std::size_t k = 0; k < parts.size(); k += 23)
        for (std::string const between : {", ", " and "}) {
          auto const list = "lacks " + parts[i].text + between + parts[k].text;
          CAPTURE(list);
          // the sides of a leaf that is named whole are not looked at again
          CountedSides const one{sides_of({parts[i]})}, other{sides_of({parts[k]})},
              both{sides_of({parts[i], parts[k]})};
          auto const all = sides_told(book, list);
          CHECK(all.wanting == both.all());
          CHECK(all.sides >= static_cast<int>(both.half.size()));
          CHECK(all.sides <= static_cast<int>(one.half.size() + other.half.size()));
        }
    // in the order of the book a leaf that is named by its recto and its verso is there once
    for (int leaf = 0; leaf + 1 < 86; leaf += 7) {
      auto const name = leaf_name(leaf);
      auto const all = sides_told(book, (leaf > 0 ? "π1-" + leaf_name(leaf - 1) + ' ' : "") + name + sign.recto + ", " +
                                            name + sign.verso + ", " + leaf_name(leaf + 1) + "-L4");
      CHECK(all.wanting.empty());
      CHECK(!all.repeated);
      CHECK(all.doubts == 0);
    }
  }
  CHECK(sides_told(book, "π1r-A3r, A3v-L4v").wanting.empty());
  CHECK(!sides_told(book, "π1r-A3r, A3v-L4v").repeated);
  CHECK(sides_told(book, "lacks B3r, 4v").wanting == std::set<int>{12, 13});
  CHECK(sides_told(book, "lacks B3r, 3v").doubts == 0);
  CHECK(sides_told(book, "A1r and A1v blank").noted["blank"] == std::set<int>{2});
  CHECK(sides_told(book, "A1r blank, A1v blank").noted["blank"] == std::set<int>{2});
  CHECK(sides_told(book, "A1r, A1v blank").noted.empty());
}

TEST_CASE("all after a verso and all before a recto are whole leaves") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (auto const& sign : side_signs) {
    CHECK(sides_told(book, std::string{"lacks all after L2"} + sign.verso).wanting == std::set<int>{84, 85});
    CHECK(sides_told(book, std::string{"lacks all after L2"} + sign.verso).doubts == 0);
    CHECK(sides_told(book, std::string{"lacks all before A1"} + sign.recto).wanting == std::set<int>{0, 1});
    CHECK(sides_told(book, std::string{"lacks all before A1"} + sign.recto).doubts == 0);
    CHECK(sides_told(book, std::string{"lacks all after L2"} + sign.recto).sides == 1);
    CHECK(sides_told(book, std::string{"lacks all before A1"} + sign.verso).sides == 1);
  }
}

TEST_CASE("the doubt names the side and the leaf") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  auto const read = read_leaves_present(book, "lacks A1, B3v-B5r; K8 torn");
  REQUIRE(read);
  REQUIRE(read->warnings().size() == 2);
  CHECK(read->warnings()[0].found_text() == "B3v");
  CHECK(read->warnings()[0].place->column == 11);
  CHECK(read->warnings()[1].found_text() == "B5r");
  CHECK(read->warnings()[1].place->column == 15);
  auto const before = read_leaves_present(book, "lacks the verso of A1");
  REQUIRE(before);
  REQUIRE(before->warnings().size() == 1);
  CHECK(before->warnings()[0].found_text() == "verso of A1");
}
