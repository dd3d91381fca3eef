// SPDX-License-Identifier: MIT
// A name belongs to one gathering, an alphabet begins with A, and π and χ stand for unsigned leaves before the others and
// elsewhere (Bowers, as manuals report him). That a name is not given twice is common practice, no source.
#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

using Problems = std::vector<Problem>;
Problems doubts_of_names(std::string const& text) {
  CAPTURE(text);
  auto const formula = read_lawfully(text);
  REQUIRE(formula);
  Problems all;
  for (auto const& doubt : formula->warnings()) all.push_back(doubt.problem);
  return all;
}

/// Returns how often the text is doubted for this reason.
long times_told(std::string const& text, Problem problem) {
  long times = 0;
  for (auto const one : doubts_of_names(text)) times += one == problem ? 1 : 0;
  return times;
}
/// Returns one of many names of symbols.
std::string many_names(int i) {
  return std::string{"[k"} + static_cast<char>('a' + i / 20) + static_cast<char>('a' + i % 20) + ".]";
}
constexpr auto name_repeated = Problem::series_starts_again, name_taken = Problem::inserted_name_taken;

} // namespace

TEST_CASE("a gathering that has the name of one before it is doubted, whatever the mark") {
  for (std::string const mark :
       {"A",  "a", "²A", "χA", "πA",     "A*",        "*A", "(a)", "α",   "Γ",   "Д", "ж", "7",    "'7'", "*",
        "2*", "†", "¶",  "§",  "[par.]", "[fleuron]", ")(", "):(", "(*)", "(?)", "&", "ã", "'Gg'", "aα"}) {
    CAPTURE(mark);
    auto const one = mark + "⁴";
    CHECK(times_told("B⁸ " + one + " Z⁸ " + mark + "²", name_repeated) == (mark == "A" ? 2 : 1)); // A after B
    CHECK(times_told("[" + one + " " + mark + "²]", name_repeated) == 1);
    CHECK(times_told("Y⁸; " + one + " Z⁸; " + one + " Z⁸; " + one, name_repeated) == 0); // of several volumes
  }
  for (std::string const mark : {"A", "α", "*", "[par.]", "π", "χA"}) { // the raised figure tells them apart
    CAPTURE(mark);
    CHECK(times_told(mark + "⁴ ²" + mark + "⁴ ³" + mark + "⁴ 2²B⁴", name_repeated) == 0);
  }
  CHECK(doubts_of_names("π² 2π⁴ A⁸ χ1 2χ²").empty());
  CHECK(doubts_of_names("π² π⁴ A⁸") == Problems{Problem::series_starts_again});
  CHECK(doubts_of_names("A⁸ χ1 B⁸ χ1") == Problems{Problem::series_starts_again});
  CHECK(doubts_of_names("A⁸ ²A-C⁸ ²B⁴") == Problems{Problem::series_starts_again}); // within a run
  CHECK(doubts_of_names("α-γ⁸ β⁴") == Problems{Problem::series_starts_again});
  CHECK(doubts_of_names("2*⁴ *⁴ A⁸") == Problems{Problem::series_starts_again}); // out of order
  CHECK(doubts_of_names("*⁴ 2*⁴ 3*⁴ A⁸").empty());
  CHECK(doubts_of_names("א⁸ ב⁸ א⁸").back() == Problem::series_starts_again);
}

TEST_CASE("of many names the one that comes again is found") {
  std::string text;
  for (int i = 0; i < 400; ++i) text += many_names(i) + "⁴ ";
  CHECK(doubts_of_names(text).empty());
  for (int i = 0; i < 400; i += 57)
    CHECK(doubts_of_names(text + many_names(i) + "²") == Problems{Problem::series_starts_again});
}

TEST_CASE("an inserted leaf has a name of its own") {
  for (std::string const place : {"A3+", "A8+", "B1+", "C2+"}) {
    CAPTURE(place);
    for (int leaf = 1; leaf <= 8; ++leaf) { // no leaf after the eighth
      auto const name = std::to_string(leaf);
      CHECK(times_told("A-C⁸(" + place + "B" + name + ") D⁸", name_taken) == 1);
      CHECK(times_told("A-C⁸(" + place + "D" + name + ") D⁸", name_taken) == 1);
      CHECK(times_told("A-C⁸(" + place + "*B" + name + ") D⁸", name_taken) == 0);
    }
    CHECK(times_told("A-C⁸(" + place + "B9) D⁸", name_taken) == 0);
    CHECK(times_told("A-C⁸(" + place + "χ1) D⁸", name_taken) == 0);
    CHECK(times_told("A-C⁸(" + place + "χ1) χ² D⁸", name_taken) == 1);
    CHECK(times_told("A-C⁸(" + place + "χ1) D⁸(D1+χ1)", name_taken) == 1);
    CHECK(times_told("A-C⁸(" + place + "χ1) D⁸(D1+χ3)", name_taken) == 0);
    CHECK(times_told("A-C⁸(" + place + "χ⁴) D⁸(D1+χ3)", name_taken) == 1);
    CHECK(times_told("A-C⁸(" + place + "χ1) D⁸(D1+²χ1)", name_taken) == 0);
    CHECK(times_told("A-C⁸(" + place + "χ1); A-C⁸(" + place + "χ1)", name_taken) == 0); // of two volumes
  }
  // a leaf that was cut out left its name
  CHECK(doubts_of_names("A-C⁸(−B3, B2+B3)").empty());
  CHECK(doubts_of_names("A-C⁸(−B3 +B3)").empty());
  CHECK(doubts_of_names("A-C⁸(B2+B3) D⁸(−B3)").empty());
  CHECK(doubts_of_names("A-C⁸(−B) D⁸(D1+B⁴)").empty());
  CHECK(doubts_of_names("A-C⁸(A1+B⁴)") == Problems{Problem::inserted_name_taken});
}

TEST_CASE("π stands before the other gatherings, and χ after some") {
  for (std::string const before : {"A⁸", "*⁴", "[A]⁴", "²A⁸", "χA⁴ A⁸"}) {
    CAPTURE(before);
    CHECK(doubts_of_names("B²; " + before + " π² B⁸") == Problems{Problem::unsigned_mark_misplaced});
    CHECK(doubts_of_names("π² " + before + " χ² B⁸").empty());
  }
  CHECK(doubts_of_names("χ² A⁸") == Problems{Problem::unsigned_mark_misplaced});
  CHECK(doubts_of_names("χ1 A⁸ χ1") == Problems{Problem::unsigned_mark_misplaced, Problem::series_starts_again});
  CHECK(doubts_of_names("π² A-C⁸; π⁴ A-C⁸").empty());
  CHECK(doubts_of_names("α-ο⁸ π⁸ ρ⁸").empty()); // a letter
}

TEST_CASE("an alphabet that begins after B is doubted, if no other begins before") {
  for (char letter = 'A'; letter <= 'T'; ++letter) {
    if (letter == 'J') continue;
    std::string const first{letter}, small{static_cast<char>(letter - 'A' + 'a')};
    CAPTURE(first);
    bool const late = letter > 'B';
    Problems const told = late ? Problems{Problem::alphabet_begins_late} : Problems{};
    if (letter != 'I') {
      CHECK(doubts_of_names(first + "-X⁸") == told); // I-X may be numbers
      CHECK(doubts_of_names("8°: " + small + "-x⁸") == told);
    }
    CHECK(doubts_of_names("π² " + first + "-Y⁸ *⁴") == told);
    CHECK(doubts_of_names("2" + first + "-2Y⁸") == told);
    CHECK(doubts_of_names(first + "⁸").empty()); // one gathering
    CHECK(doubts_of_names(first + "-2C⁸").empty());
    CHECK(doubts_of_names(first + "-Z⁸ 2A-2C⁸").empty());
    CHECK(doubts_of_names(first + "-Y⁸; a-c⁸").empty());
    CHECK(doubts_of_names("[A]⁴ ²" + first + "-Y⁸").empty());
  }
}
