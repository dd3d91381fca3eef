// SPDX-License-Identifier: MIT
// J, U and W written beside I and V. The alphabet of 23 letters lacks them; a book that signs with them is described so
// that the letter is written out, A-V W Y-Z (ICCU, Guida alla catalogazione in SBN, Materiale antico, Appendix C; the
// STCV manual wants it said). The formulas are made from all 26 letters, so that it is known what they sign.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

/// Writes a formula of the letters of an alphabet, with runs that break at each letter that the 23 do not have.
std::string signed_with(Letters const& letters, char first, int alphabets, bool written_out, std::int64_t& gatherings) {
  std::string text;
  gatherings = 0;
  for (int multiple = 1; multiple <= alphabets; ++multiple) {
    char from = '\0', to = '\0';
    auto const before = multiple == 1 ? std::string{} : std::to_string(multiple);
    auto const put = [&] {
      if (from == '\0') return;
      text += (text.empty() ? "" : " ") + before + from;
      if (to != from) text += "-" + before + to;
      text += "⁸";
      from = '\0';
    };
    for (char letter = first; letter < first + 26; ++letter) {
      auto const place = letter - first + 1;
      bool const more = place == Alphabet::j || place == Alphabet::u || place == Alphabet::w;
      if (!Alphabet{letters}.has(place)) continue;
      if ((more && written_out) || place == Alphabet::j + 1 || place == Alphabet::v || place == Alphabet::w + 1) put();
      if (from == '\0') from = letter;
      to = letter;
      ++gatherings;
      if (more && written_out) put();
    }
    put();
  }
  return text;
}

} // namespace

TEST_CASE("a formula that writes out J, U or W has the letter in its alphabet") {
  for (int set = 1; set < 8; ++set)
    for (char const first : {'A', 'a'})
      for (int alphabets = 1; alphabets <= 3; ++alphabets) {
        Letters const letters{(set & 1) != 0, (set & 2) != 0, (set & 4) != 0};
        std::int64_t gatherings = 0;
        auto const text = signed_with(letters, first, alphabets, true, gatherings);
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->gatherings() == gatherings);
        CHECK(formula->warnings().empty());
        CHECK(formula->letters() == letters);
        CHECK(write_formula(*formula) == text);
        // each gathering has its own letter
        IdealCopy const book{*formula};
        for (auto const one : book.gatherings()) {
          auto const found = book.find(book.signature(one.at));
          REQUIRE(found);
          CHECK(found->gathering == one.at);
          CHECK_FALSE(found->several);
        }
      }
}

TEST_CASE("what may be another shape of I or V, or is passed over elsewhere, adds no letter and is doubted") {
  struct Doubted {
    char const* text;
    std::int64_t gatherings;
  };
  for (auto const& one :
       {Doubted{"A-J⁸ K⁸", 10}, {"A-W⁸", 21}, {"A-U⁸ X⁸", 21}, {"A-Z⁸ 2A-2V⁸ 2W⁸ 2X⁸", 45}, {"A-V⁸ W⁸ X-2Z⁸", 47}}) {
    CAPTURE(one.text);
    auto const formula = read_lawfully(one.text);
    REQUIRE(formula);
    CHECK(formula->gatherings() == one.gatherings);
    CHECK(formula->letters() == Letters{});
    REQUIRE_FALSE(formula->warnings().empty());
    CHECK(formula->warnings()[0] == Problem::letter_not_in_alphabet);
  }
  // the example of the Guida leaves out X
  auto const skips = read_lawfully("A-V⁸ W⁸ Y-Z⁸");
  REQUIRE(skips);
  CHECK(skips->gatherings() == 23);
  REQUIRE(skips->warnings().size() == 1);
  CHECK(skips->warnings()[0] == Problem::letters_skipped);
  // a single J or U in the place of I or V is that letter
  for (char const* text : {"A-H⁸ J⁸ K⁸", "A-T⁸ U⁸ X⁸"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->warnings().empty());
    CHECK(formula->letters() == Letters{});
  }
}

TEST_CASE("X follows W in every alphabet") {
  for (char const* text :
       {"B-U⁴ W⁴ X²", "A-V⁸ W⁸ X-Z⁸", "A-W⁸ X⁸", "A-I⁸ K-T⁸ V-W⁸ X⁸", "A-Z⁸ 2A-2V⁸ 2W⁸ 2X-2Z⁸", "a-v⁸ w⁸ x⁸"})
    for (bool const w : {false, true}) {
      CAPTURE(text);
      auto const formula = read_formula(text, {Omitted::error, {false, false, w}, true});
      REQUIRE(formula);
      for (auto const& doubt : formula->warnings()) {
        CHECK(doubt != Problem::series_starts_again);
        CHECK((w || doubt != Problem::letters_skipped));
      }
    }
}
