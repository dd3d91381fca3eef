// SPDX-License-Identifier: MIT
// The sheets of a book. The table was worked out by a program of another kind that lists all groupings one by one; the
// small cases are counted here by brute force once more.
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>

#include "check.hpp"

#include <algorithm>
#include <climits>
#include <doctest/doctest.h>
#include <random>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

SheetsOfBook sheets(std::string_view text, std::vector<RemnantEvidence> const& seen = {}) {
  auto const formula = read_formula(text);
  REQUIRE_MESSAGE(formula, text);
  auto const book = sheets_of_book(*formula, *formula->format(), seen);
  REQUIRE_MESSAGE(book, text);
  return *book;
}
std::string names(SheetsOfBook const& book, SheetGrouping const& grouping) {
  std::string text;
  for (auto const& sheet : grouping.sheets) {
    text += text.empty() ? "{" : " {";
    for (auto const unit : sheet) text += (text.back() == '{' ? "" : " ") + book.units[unit].name;
    text += '}';
  }
  for (auto const& [unit, place] : grouping.in_places)
    text += ' ' + book.units[unit].name + "=" + book.places[place].name;
  return text;
}

struct Row {
  char const* formula;
  std::vector<RemnantEvidence> seen;
  std::int64_t whole;
  std::size_t units;
  std::int64_t groupings, of_likes;
  int fewest;
  std::int64_t with_fewest, least_left_over;
};

} // namespace

TEST_CASE("groupings of what is left after whole sheets") {
  std::vector<Row> const rows{
      {"4°: A2 B-I4 K2", {}, 8, 2, 2, 2, 1, 1, 1},
      {"4°: A2 B-I4 K2", {{"A", "one", {}}, {"K", "two", {}}}, 8, 2, 1, 1, 2, 1, 1},
      {"4°: A2 B-I4 K2", {{"A", "", 2}, {"K", "", 2}}, 8, 2, 1, 1, 2, 1, 1},
      {"4°: A2 B-I4 K2", {{"A", "", 0}, {"K", "", 0}}, 8, 2, 1, 1, 2, 1, 1},
      {"8°: π2 A-K8 L4(-L4)", {}, 10, 2, 2, 2, 1, 1, 1},
      {"8°: A4 B-O8(±C3) P2", {}, 13, 3, 5, 5, 1, 1, 1},
      {"8°: A4 B-O8(±C3) P2", {{"A", "", 4}, {"P", "", 2}}, 13, 3, 3, 3, 2, 2, 1},
      {"8°: A4 B-O8(±C3) P4(-P4)", {}, 13, 3, 6, 6, 1, 1, 1},
      {"8°: A4 a2 B-O8(±C3, ±H7) P2", {}, 13, 5, 49, 34, 2, 13, 3},
      {"12°: A6 B-M12(±D5) N4(N4+χ1)", {}, 11, 4, 15, 15, 1, 1, 1},
      {"8°: π1 A-S8(±B2, ±D4, ±K7, ±M1) T4 U2 χ1", {}, 18, 8, 3990, 557, 2, 79, 31},
      {"8°: A4 B-O8(±B2, ±C3, ±D4, ±E5, ±F6, ±G7) P2(P2+χ1,2)", {}, 13, 10, 110654, 0, 2, 191, 191},
  };
  for (auto const& row : rows) {
    CAPTURE(std::string{row.formula});
    auto const book = sheets(row.formula, row.seen);
    CHECK(book.whole == row.whole);
    CHECK(book.units.size() == row.units);
    CHECK(book.groupings == row.groupings);
    if (row.of_likes != 0) CHECK(book.groupings_of_likes == row.of_likes);
    CHECK(book.fewest_pieces == row.fewest);
    CHECK(book.with_fewest_pieces == row.with_fewest);
    CHECK(book.with_least_left_over == row.least_left_over);
    REQUIRE(!book.likeliest.empty());
    CHECK(book.likeliest.size() <= 20);
    for (auto const& one : book.likeliest) CHECK(one.pieces == row.fewest);
  }
  auto const cancel_in_place = sheets("8°: A4 B-O8(±C3) P4(-P4)");
  CHECK(names(cancel_in_place, cancel_in_place.likeliest[0]) == "{A P} ±C3=P4");
  CHECK(cancel_in_place.likeliest[0].paper == Fraction{14});
  auto const all_together = sheets("8°: A4 B-O8(±C3) P2");
  CHECK(names(all_together, all_together.likeliest[0]) == "{A P ±C3}");
  CHECK(all_together.likeliest[0].left_over == 1);
}

TEST_CASE("what decides, in words") {
  auto const book = sheets("4°: A2 B-I4 K2");
  REQUIRE(book.decides);
  CHECK(book.decides->together == 1);
  CHECK(book.decides->of == 2);
  CHECK(to_words(book, *book.decides) ==
        "whether A and K were printed on one sheet (as in 1 of 2 ways): one fold of the "
        "sheet has the mark in its gutter and the "
        "other has none; a mark in both, or in neither, excludes it");
  auto const title = sheets("4°: π1 A-K⁴ L⁴(−L4)"); // a title leaf, and a place for it in the last gathering
  REQUIRE(title.decides);
  CHECK(
      to_words(title, *title.decides) ==
      "whether π was printed in the place of L4 (as in 1 of 2 ways): compare its paper with that of L: stock, distance "
      "of the chain lines, and that each sheet has one mark in all");
  CHECK(!sheets("4°: A2 B-I4 K2", {{"A", "one", {}}, {"K", "two", {}}}).decides);
  CHECK(!sheets("8°: A-K8").decides);
  CHECK(sheets("8°: A-K8").groupings == 1);
  CHECK(sheets("8°: A-K8").whole == 10);
}

namespace {

/// All partitions of units into sheets, listed one by one; places of deleted leaves too.
class BruteForce {
  SheetsOfBook const& book_;
  std::vector<RemnantEvidence> const& seen_;
  std::vector<std::vector<std::uint32_t>> sheets_{};
  std::vector<std::vector<std::uint32_t>> in_places_{}; // the units in each place
  std::vector<int> room_{};                             // leaves left in each place
  static int marks_of(int leaves) { return leaves == 2 ? 1 : leaves == 8 ? 4 : leaves == 16 ? 8 : 2; }
  bool sound(std::vector<std::uint32_t> const& sheet) const {
    int leaves = 0, marked = 0, open = 0;
    std::set<std::string> stocks;
    for (auto const u : sheet) {
      auto const& unit = book_.units[u];
      leaves += unit.leaves;
      if (unit.stock) stocks.insert(*unit.stock);
      if (unit.marked_leaves)
        marked += *unit.marked_leaves;
      else
        open += unit.leaves;
    }
    auto const all = book_.leaves_to_sheet;
    if (leaves > all || stocks.size() > 1) return false;
    auto const wanted = marks_of(all);
    open += all - leaves;
    if (leaves > all / 2) return marked <= wanted && wanted <= marked + open;
    return marked == 0 || (marked <= wanted && wanted <= marked + open - (all - all / 2));
  }
  /// The stock of the gathering in which a place is, here named by one letter.
  std::optional<std::string> stock_of(FreePlace const& there) const {
    for (auto const& one : seen_)
      if (one.unit == there.name.substr(0, 1)) return one.stock;
    return std::nullopt;
  }
  void place(std::uint32_t u) {
    if (u == book_.units.size()) {
      if (!std::all_of(sheets_.begin(), sheets_.end(), [&](auto const& one) { return sound(one); })) return;
      ++count;
      if (auto const& asked = book_.decides) {
        auto const has = [](auto const& units, std::uint32_t asked_for) {
          return std::find(units.begin(), units.end(), asked_for) != units.end();
        };
        if (asked->place)
          answered += has(in_places_[*asked->place], asked->first) ? 1 : 0;
        else
          for (auto const& sheet : sheets_) answered += has(sheet, asked->first) && has(sheet, asked->second) ? 1 : 0;
      }
      if (fewest == -1 || static_cast<int>(sheets_.size()) < fewest)
        fewest = static_cast<int>(sheets_.size()), with_fewest = 0;
      with_fewest += static_cast<int>(sheets_.size()) == fewest ? 1 : 0;
      return;
    }
    for (std::size_t s = 0; s < sheets_.size(); ++s) {
      sheets_[s].push_back(u);
      place(u + 1);
      sheets_[s].pop_back();
    }
    sheets_.push_back({u});
    place(u + 1);
    sheets_.pop_back();
    for (std::size_t p = 0; p < book_.places.size(); ++p) {
      auto const& unit = book_.units[u];
      auto const& place_of = book_.places[p];
      bool const own = unit.kind == Remnant::Kind::part_sheet && place_of.name.starts_with(unit.name);
      bool const stocks = unit.stock && stock_of(place_of) && *unit.stock != *stock_of(place_of);
      if (unit.leaves > room_[p] || own || stocks) continue;
      room_[p] -= unit.leaves;
      in_places_[p].push_back(u);
      place(u + 1);
      in_places_[p].pop_back();
      room_[p] += unit.leaves;
    }
  }

public:
  std::int64_t count{}, with_fewest{};
  std::int64_t answered{}; // ways in which the question is answered by yes
  int fewest{-1};
  BruteForce(SheetsOfBook const& book, std::vector<RemnantEvidence> const& seen) : book_{book}, seen_{seen} {
    in_places_.resize(book.places.size());
    for (auto const& one : book.places) room_.push_back(one.leaves);
    place(0);
  }
};

} // namespace

TEST_CASE("brute force counts the same, with places, stocks and marks") {
  std::mt19937 random{17};
  auto const below = [&](unsigned n) { return random() % n; };
  int looked_at = 0, asked_of_places = 0;
  for (int round = 0; round < 250; ++round) {
    constexpr int formats[]{2, 4, 8, 12, 16};
    auto const format = formats[below(5)];
    std::string text = std::to_string(format) + "°: ";
    constexpr char const* first[]{"π1 ", "π2 ", "A4 ", "A6 ", ""};
    text += first[below(5)];
    text += "B-G" + std::to_string(format) + (below(2) == 0 ? "" : below(2) == 0 ? "(±C1)" : "(±C1, ±D2)");
    constexpr char const* lacks[]{"", "(-H2)", "(-H1,2)", "(-H)"};
    if (below(3) != 0) text += " H" + std::to_string(2 + 2 * below(3)) + lacks[below(4)];
    if (below(3) == 0) text += " I2(I2+χ1)";
    auto const formula = read_formula(text);
    if (!formula) continue; // such as leaf 2 of a folio
    std::vector<RemnantEvidence> seen;
    for (auto const* name : {"A", "H", "I", "±C1", "+χ1", "π"}) // those that the formula has
      if (below(3) == 0 && sheets_of_book(*formula, Format::of(format), {{name, "", {}}})) {
        auto& one = seen.emplace_back(RemnantEvidence{name, below(2) == 0 ? (below(2) == 0 ? "one" : "two") : "", {}});
        if (below(2) == 0) one.marked_leaves = static_cast<int>(below(3));
        while (!sheets_of_book(*formula, Format::of(format), {one})) // more than the leaves of the unit
          one.marked_leaves = *one.marked_leaves - 1;
      }
    auto const book = sheets_of_book(*formula, Format::of(format), seen);
    REQUIRE(book);
    if (book->units.size() > 7) continue;
    CAPTURE(text);
    BruteForce const listed{*book, seen};
    CHECK(book->groupings == listed.count);
    // two ways differ in what is on one sheet or in what is in a place, so that a look can always tell some of them apart
    CHECK(book->decides.has_value() == (listed.count > 1));
    if (book->decides) {
      CHECK(book->decides->of == listed.count);
      CHECK(book->decides->together == listed.answered);
      CHECK((0 < listed.answered && listed.answered < listed.count));
      asked_of_places += book->decides->place ? 1 : 0;
    }
    if (listed.count > 0) {
      CHECK(book->fewest_pieces == listed.fewest);
      CHECK(book->with_fewest_pieces == listed.with_fewest);
    }
    ++looked_at;
  }
  CHECK(looked_at > 150);
  CHECK(asked_of_places > 10);
}

TEST_CASE("preliminaries may have been printed where a leaf is missing, as cancels may") {
  // a title leaf printed as the last leaf of the last gathering is the usual case of it: Bowers, Studies in Bibliography 1;
  // Tanselle, Studies in Bibliography 59 (with cancels). The sheets by arithmetic
  struct {
    char const *text, *likeliest;
    std::int64_t groupings;
    Fraction paper;
  } const rows[]{{"4°: π1 A-K⁴ L⁴(−L4)", "π=L4", 2, 11},     {"4°: π1 A-K⁴(−K4)", "π=K4", 2, 10},
                 {"4°: [A]1 B-K⁴ L⁴(−L4)", "A=L4", 2, 10},   {"8°: A-K⁸ χ1 L⁸(−L8)", "χ=L8", 2, 11},
                 {"8°: π² A-K⁸(−K7,8)", "π=K7", 2, 10},      {"8°: π² A-K⁸(−K4.5)", "π=K4", 2, 10},
                 {"8°: A-K⁸(±C3) L⁸(−L8)", "±C3=L8", 2, 11}, {"8°: A-K⁸(±C3, ±D4) L⁸(−L7,8)", "±C3=L7 ±D4=L7", 5, 11},
                 {"8°: π⁴ A-K⁸ L⁴(−L)", "π=L", 3, {21, 2}},  {"8°: A² B-K⁸ L²(−L)", "A=L", 3, {37, 4}}};
  for (auto const& row : rows) {
    CAPTURE(std::string{row.text});
    auto const book = sheets(row.text);
    CHECK(book.groupings == row.groupings);
    CHECK(names(book, book.likeliest[0]).ends_with(row.likeliest));
    CHECK(book.likeliest[0].paper == row.paper);
    CHECK(book.paper.stated == row.paper);
  }
  auto const both = sheets("8°: π1 A-K⁸(±C3) L⁸(−L8)"); // on one piece of paper each, or one of the two in L8
  std::string listed;
  for (auto const& one : both.likeliest) listed += names(both, one) + "; ";
  CHECK(listed.find("{±C3} π=L8") != std::string::npos);
  CHECK(listed.find("{π} ±C3=L8") != std::string::npos);
  CHECK(both.paper.stated == Fraction{89, 8});
  // the leaf is of other paper than the gathering that lacks one, which fills whole sheets or not
  CHECK(sheets("4°: π1 A-K⁴ L⁴(−L4)", {{"π", "pot", {}}, {"L", "crown", {}}}).groupings == 1);
  CHECK(sheets("4°: π1 A-K⁴ L²(−L2)", {{"π", "pot", {}}, {"L", "crown", {}}}).groupings == 1);
  CHECK(sheets("4°: π1 A-K⁴ L⁴(−L4)", {{"π", "pot", {}}, {"L", "pot", {}}}).groupings == 2);
  // one of a run is not interchangeable with the others if it lacks leaves where they had room
  CHECK(sheets("8°: A-B⁴(−B)").groupings == 3);
}

TEST_CASE("a leaf in two places was printed once, and its place is not free") { // by arithmetic
  auto const title = sheets("8°: π1(=L4) A-K8 L4(-L4)"); // ten sheets and the half-sheet that L and the title make
  CHECK(title.units.size() == 1);
  CHECK(title.places.empty());
  CHECK(title.likeliest[0].paper == Fraction{21, 2});
  for (auto const* text : {"8°: A-B⁸ C⁴(−C4[=π1]) π1", "8°: π1[=C4] A-B⁸ C⁴(−C4[=π1])"}) {
    CAPTURE(text);
    CHECK(sheets(text).likeliest[0].paper == Fraction{5, 2});
  }
  CHECK(sheets("8°: π² A-K8 L4(-L4=π2)").units[0].leaves == 1);
  // The Wild Gallant, 1684: eight whole sheets, the epilogue being the leaf A4 (Bowers, Studies in Bibliography 1)
  auto const gallant = sheets("4°: A4(-A4) B-G4 H4(H4+1[=A4?])");
  CHECK(gallant.units.empty());
  CHECK(gallant.groupings == 1);
  CHECK(gallant.paper == Range<Fraction>{8, 8, 8});
  // B2 of a whole sheet is the title: three leaves of the quarto sheet are left
  CHECK(sheets("4°: pi1[=B2] A^8 [B]^2(-B2)").likeliest[0].paper == Fraction{5, 2});
}

TEST_CASE("no grouping takes less than the paper of the formula, and its numbers are reached") {
  // the three numbers of `paper`, and of the sheets: least, of the fewest pieces, most. By arithmetic
  struct Tie {
    char const* formula;
    Range<Fraction> sheets;
  };
  for (auto const& [text, range] :
       {Tie{"4°: A2 B-I4 K2", {9, 9, 9}},                   // whether on one sheet or on two half-sheets
        Tie{"8°: A4 B-O8(±C3) P4(-P4)", {14, 14, {29, 2}}}, // C3 in the place of P4; or with A on a sheet of its own
        Tie{"8°: A-K8 L6", {11, 11, 11}},                   // two leaves of L's sheet are white
        Tie{"12°: A6 B-M12 N3", {{71, 6}, 12, 12}}}) {
    CAPTURE(text);
    auto const book = sheets(text);
    CHECK(book.paper == range);
    auto const alone = paper(*read_formula(text)).sheets;
    CHECK(alone.low <= book.paper.low);
    CHECK(alone.stated <= book.paper.high);
  }
  CHECK(paper(*read_formula("8°: A4 B-O8(±C3) P4(-P4)")).sheets.low == Fraction{111, 8}); // P4 is bound elsewhere, too
  std::mt19937 random{5};
  auto const below = [&](unsigned n) { return random() % n; };
  int reached_low = 0, reached_stated = 0, looked_at = 0;
  for (int round = 0; round < 400; ++round) {
    constexpr int formats[]{2, 4, 8, 12};
    auto const format = formats[below(4)];
    std::string text = std::to_string(format) + "°: ";
    constexpr char const* first[]{"π1 ", "π2 ", "A4 ", "A6 ", "π1(=H2) "};
    text += first[below(5)];
    text += "B-G" + std::to_string(format) + (below(2) == 0 ? "" : below(2) == 0 ? "(±C1)" : "(±C1, ±D2)");
    text += " H" + std::to_string(2 + 2 * below(3)) + (below(2) == 0 ? "(-H2)" : "");
    if (below(3) == 0) text += " I2(I2+χ1)";
    auto const formula = read_formula(text);
    if (!formula) continue; // such as leaf 2 of a folio
    auto const book = sheets_of_book(*formula, Format::of(format));
    REQUIRE(book);
    CAPTURE(text);
    auto const alone = paper(*formula).sheets;
    CHECK(alone.low <= book->paper.low);
    CHECK(alone.stated <= book->paper.high);
    CHECK(book->paper.low <= book->paper.stated);
    CHECK(book->paper.stated <= book->paper.high);
    for (auto const& one : book->likeliest) {
      // paper is leaves: what is printed for nothing is over, what is in a free place takes none
      auto leaves = alone.stated * Fraction{format} + Fraction{one.left_over};
      for (auto const& placed : one.in_places) leaves = leaves - Fraction{book->units[placed.first].leaves};
      CHECK(one.paper * Fraction{format} == leaves);
    }
    reached_low += alone.low == book->paper.low ? 1 : 0;
    reached_stated += alone.stated == book->paper.low ? 1 : 0;
    ++looked_at;
  }
  CHECK(looked_at > 250);
  CHECK(reached_low > 30);
  CHECK(reached_stated > 30);
}

TEST_CASE("what is left is printed on equal parts of a sheet, in every format") {
  // Parts into which a sheet is cut so that nothing is left: by arithmetic, not less than a twelfth, folds of two leaves; one
  // leaf, and half the sheet, as they come. Two thirds of a sheet are no part: a third of it would be white
  struct {
    int format;
    std::vector<int> parts;
  } const rows[]{{2, {1, 2}},          {4, {1, 2, 4}},          {6, {1, 2, 3, 6}},
                 {8, {1, 2, 4, 8}},    {12, {1, 2, 4, 6, 12}},  {16, {2, 4, 8, 16}},
                 {18, {2, 6, 9, 18}},  {20, {2, 4, 10, 20}},    {24, {2, 4, 6, 8, 12, 24}},
                 {32, {4, 8, 16, 32}}, {36, {4, 6, 12, 18, 36}}};
  std::mt19937 random{1707};
  auto const below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  for (auto const& row : rows)
    for (int round = 0; round < 25; ++round) {
      auto const n = row.format;
      auto text = std::to_string(n) + "°: ";
      if (below(2) == 0) text += "π" + std::to_string(n <= 2 ? 1 : 2 * (1 + below(n / 2))) + " ";
      text += "A-C" + std::to_string(n) + (below(2) == 0 ? "(±A1)" : "(±A1, ±B2, ±C1)");
      if (n > 2) text += " D" + std::to_string(2 * (1 + below(n / 2)));
      CAPTURE(text);
      auto const book = sheets(text);
      for (auto const& one : book.likeliest) {
        int over = 0;
        auto paper = Fraction{book.whole};
        for (auto const& sheet : one.sheets) {
          int leaves = 0;
          for (auto const unit : sheet) leaves += book.units[unit].leaves;
          auto const part = *std::lower_bound(row.parts.begin(), row.parts.end(), leaves);
          over += part - leaves;
          paper = paper + Fraction{part, n};
        }
        CHECK(one.left_over == over);
        CHECK(one.paper == paper);
      }
    }
  // a third of an eighteen is a third, and two thirds of a twelve take its sheet
  CHECK(sheets("18°: A-C18 D6").paper == Range<Fraction>{{10, 3}, {10, 3}, {10, 3}});
  CHECK(sheets("12°: A-C12 D8").paper == Range<Fraction>{4, 4, 4});
}

TEST_CASE("several gatherings that a scheme makes of a sheet are whole sheets, if nothing was seen of them") {
  // Cim, Le Livre III (1907), table of signatures: 18° in three, 16° in two, 32° in four; Voet, The Golden Compasses II, App. 8:
  // 12° as 8 and 4; McKerrow (1927), quoted by Bühler, Studies in Bibliography 7: 12° in eights, three to two sheets
  struct {
    char const* text;
    std::int64_t whole;
    std::size_t units;
  } const rows[]{{"18°: A-F6", 2, 0},
                 {"18°: A-G6", 2, 1},
                 {"18°: A-D12/6", 2, 0},
                 {"16°: A-2Z8", 23, 0},
                 {"32°: A-Z8", 5, 3},
                 {"12°: π2 A-2Z8/4 3A2", 23, 2},
                 {"12°: A-2Z8", 30, 1},
                 {"24°: A-Z12", 11, 1},
                 {"24°: A-Z8", 7, 2},
                 {"8°: A-Z4", 0, 23},
                 {"12°: A-Z6", 0, 23},
                 {"12°: A8 B4", 0, 2},
                 {"12°: A-9998Z8/4", 9998 * 23 / 2, 0},
                 {"12°: A-F8/8/4", 0, 6}};
  for (auto const& row : rows) {
    CAPTURE(std::string{row.text});
    auto const book = sheets(row.text);
    CHECK(book.whole == row.whole);
    CHECK(book.units.size() == row.units);
    CHECK(book.paper.low >= paper(*read_formula(row.text)).sheets.low);
  }
  // two stocks of paper are not one sheet
  auto const two = sheets("16°: A-B8", {{"A", "pot", {}}, {"B", "crown", {}}});
  CHECK(two.whole == 0);
  CHECK(two.units.size() == 2);
  CHECK(two.fewest_pieces == 2);
  CHECK(sheets("16°: A-B8", {{"B", "crown", {}}}).groupings == 2);
  // a leaf of such a sheet that is bound elsewhere was printed once
  CHECK(sheets("16°: π1[=B2] A-D8(−B2)").likeliest[0].paper == Fraction{2});
}

TEST_CASE("what was seen of a unit that is not there is an error") {
  auto const formula = *read_formula("8°: A4 B-O8(±C3) P2");
  CHECK(sheets_of_book(formula, Format::of(8), {{"Q", "pot", {}}}).error().problem == Problem::no_such_remnant);
  CHECK(sheets_of_book(formula, Format::of(8), {{"±C4", "pot", {}}}).error().problem == Problem::no_such_remnant);
  CHECK(sheets_of_book(formula, Format::of(8), {{"C", "pot", {}}})); // whole sheets, of which nothing is asked
}

TEST_CASE("more than can be counted is an error") {
  auto const many = read_formula("8°: A4 B2 C6 D4 E2 F6 G4 H2 I6 K4 L2 M6 N4 O2 P6 Q4 R2 S6 T4 V2");
  REQUIRE(many);
  auto const book = sheets_of_book(*many, Format::of(8));
  REQUIRE(!book);
  CHECK(book.error().problem == Problem::number_too_large);
  // gatherings of one run are alike, so that many of them can be counted
  auto const alike = read_formula("8°: A-Z4");
  REQUIRE(alike);
  auto const sheets = sheets_of_book(*alike, Format::of(8));
  REQUIRE(sheets);
  CHECK(sheets->units.size() == 23);
  CHECK(sheets->fewest_pieces == 12);
  // with places of missing leaves, which may hold any of them, the number is limited too
  struct {
    char const* text;
    bool counted;
  } const rows[]{{"8°: π1 a-s4 A-K8(-A8, -B8, -C8)", true},
                 {"8°: π1 a-s4 A-K8(-A1,2,3,4, -B1,2,3,4, -C1,2,3,4)", true},
                 {"8°: π1 a-z4 A-K8(-A8)", true},
                 {"8°: π1 a-z4 A-K8(-A8, -B8)", false},
                 {"8°: π1 A-K8(-A8, -B8, -C8, -D8, -E8, -F8)", true},
                 {"8°: π1 A-K8(-A8, -B8, -C8, -D8, -E8, -F8, -G8)", false}};
  for (auto const& row : rows) {
    CAPTURE(std::string{row.text});
    auto const formula = read_formula(row.text);
    REQUIRE(formula);
    auto const read = sheets_of_book(*formula, Format::of(8));
    CHECK(read.has_value() == row.counted);
    if (!read) CHECK(read.error().problem == Problem::number_too_large);
    if (read) CHECK(read->groupings > 0);
  }
}

namespace {
/// What was seen as a whole, and each fact of it alone, in any order and some of them twice.
std::vector<RemnantEvidence> in_parts(std::vector<RemnantEvidence> const& seen, std::mt19937& random) {
  std::vector<RemnantEvidence> parts;
  for (auto const& one : seen) {
    if (one.stock) parts.push_back({one.unit, one.stock, {}});
    if (one.marked_leaves) parts.push_back({one.unit, {}, one.marked_leaves});
    if (random() % 3 == 0) parts.push_back(one);
  }
  std::shuffle(parts.begin(), parts.end(), random);
  return parts;
}
constexpr char const* formulas_with_remnants[]{"4°: A2 B-I4 K2",           "8°: A4 B-O8(±C3) P2",
                                               "8°: A4 B-O8(±C3) P4(-P4)", "12°: A6 B-M12(±D5) N4(N4+χ1)",
                                               "4°: π1 A-K⁴ L⁴(−L4)",      "4°: A⁶ B-D⁴ E²"};
} // namespace

TEST_CASE("what was seen of one unit in several places is what was seen of it in one") {
  std::mt19937 random{1600};
  for (auto const* text : formulas_with_remnants)
    for (int round = 0; round < 30; ++round) {
      CAPTURE(std::string{text});
      std::vector<RemnantEvidence> seen;
      for (auto const& unit : sheets(text).units) {
        auto& one = seen.emplace_back(RemnantEvidence{unit.name, {}, {}});
        if (random() % 2 == 0) one.stock = random() % 2 == 0 ? "pot" : "crown";
        if (random() % 2 == 0) one.marked_leaves = static_cast<int>(random() % static_cast<unsigned>(unit.leaves + 1));
      }
      CHECK(sheets(text, in_parts(seen, random)) == sheets(text, seen));
      auto backwards = seen;
      std::reverse(backwards.begin(), backwards.end());
      CHECK(sheets(text, backwards) == sheets(text, seen));
    }
  // a gathering has one name, however it is spelt
  auto const twice = sheets("4°: A² B-2I⁴ 2K²", {{"A", "pot", {}}, {"2K", "crown", {}}});
  CHECK(twice.groupings == 1);
  CHECK(sheets("4°: A² B-2I⁴ 2K²", {{"A", "pot", {}}, {"Kk", "crown", {}}}) == twice);
  CHECK(sheets("4°: A² B-2I⁴ 2K²", {{"A", "pot", {}}, {"Kk", "crown", {}}, {"2K", {}, 2}}).groupings == 1);
}

TEST_CASE("two things seen of one unit that contradict each other are an error that names it") {
  for (auto const* text : formulas_with_remnants) {
    auto const formula = *read_formula(text);
    auto names = std::vector<std::string>{"B"}; // a gathering of whole sheets, too
    for (auto const& unit : sheets(text).units) names.push_back(unit.name);
    for (auto const& name : names)
      for (auto const& [one, other] : {std::pair{RemnantEvidence{name, "pot", {}}, RemnantEvidence{name, "crown", {}}},
                                       {RemnantEvidence{name, {}, 0}, RemnantEvidence{name, {}, 1}},
                                       {RemnantEvidence{name, "pot", 1}, RemnantEvidence{name, "crown", 1}},
                                       {RemnantEvidence{name, "pot", 1}, RemnantEvidence{name, "pot", 0}}})
        for (auto const& seen : {std::vector{one, other}, std::vector{other, one},
                                 std::vector{one, RemnantEvidence{name, {}, {}}, other}}) {
          CAPTURE(std::string{text});
          CAPTURE(name);
          auto const book = sheets_of_book(formula, *formula.format(), seen);
          REQUIRE_FALSE(book);
          CHECK(book.error().problem == Problem::remnant_seen_twice);
          CHECK(found_in(book.error()) == name);
        }
  }
}

TEST_CASE("a unit has no more marked leaves than leaves, and not less than none") {
  for (auto const* text : formulas_with_remnants) {
    auto const formula = *read_formula(text);
    for (auto const& unit : sheets(text).units)
      for (int const marked : {INT_MIN, -1, 0, 1, unit.leaves, unit.leaves + 1, 99, INT_MAX}) {
        CAPTURE(std::string{text});
        CAPTURE(unit.name);
        CAPTURE(marked);
        // the same of all units, whose sum must not be too large either
        std::vector<RemnantEvidence> seen{{unit.name, {}, marked}};
        for (auto const& other : sheets(text).units)
          seen.push_back({other.name, {}, other.name == unit.name ? marked : 0});
        auto const book = sheets_of_book(formula, *formula.format(), seen);
        CHECK(book.has_value() == (marked >= 0 && marked <= unit.leaves));
        if (book) continue;
        CHECK(book.error().problem == (marked < 0 ? Problem::negative_count : Problem::too_many_marked_leaves));
        CHECK(found_in(book.error()) == unit.name);
        if (marked > 0) CHECK(book.error().limit == unit.leaves);
      }
  }
  // a gathering of whole sheets has its leaves
  auto const formula = *read_formula("4°: A2 B-I4 K2");
  CHECK(sheets_of_book(formula, Format::of(4), {{"B", {}, 4}}));
  CHECK(sheets_of_book(formula, Format::of(4), {{"B", {}, 5}}).error().problem == Problem::too_many_marked_leaves);
  CHECK(sheets_of_book(formula, Format::of(4), {{"B", {}, -1}}).error().problem == Problem::negative_count);
}
