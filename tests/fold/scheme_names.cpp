// SPDX-License-Identifier: MIT
// Schemes by the names people use. Names of formats: De Vinne, The Practice of Typography (1904), and MacKellar, The
// American Printer (1893), as in format.cpp; what is said beside them is common practice, no source.
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "typed.hpp"

#include <set>
#include <string>
#include <string_view>

using namespace bifolium;

namespace {

struct Named {
  std::string_view name, id;
};
constexpr Named names[]{
    {"octavo", "8_octavo"},
    {"Octavo", "8_octavo"},
    {"8vo", "8_octavo"},
    {"8vo.", "8_octavo"},
    {"8°", "8_octavo"},
    {"8º", "8_octavo"},
    {"8", "8_octavo"},
    {"in-8", "8_octavo"},
    {" octavo ", "8_octavo"},
    {"common octavo", "8_octavo"},
    {"octavo in eights", "8_octavo"},
    {"octavo in 16s", "8_in_16s"},
    {"octavo from the centre", "8_from_centre"},
    {"half-sheet of octavo", "8_half_sheet"},
    {"half sheet octavo", "8_half_sheet"},
    {"octavo in half-sheets", "8_half_sheet"},
    {"8vo half-sheet", "8_half_sheet"},
    {"octavo_half_sheet", "8_half_sheet"},
    {"oblong octavo", "8_oblong"},
    {"broadside", "1_broadside"},
    {"folio", "2_folio"},
    {"fol.", "2_folio"},
    {"2°", "2_folio"},
    {"folio in sixes", "2_quired_6s"},
    {"folio quired in sixes", "2_quired_6s"},
    {"2° in 8s", "2_quired_8s"},
    {"fol. in tens", "2_quired_10s"},
    {"quarto", "4_quarto"},
    {"4to", "4_quarto"},
    {"oblong 4to", "4_oblong"},
    {"4° oblong", "4_oblong"},
    {"quarto in eights", "4_quarto_in_8s"},
    {"quarto-in-eights", "4_quarto_in_8s"},
    {"12°", "12_common"},
    {"12mo", "12_common"},
    {"duodecimo", "12_common"},
    {"twelves", "12_common"},
    {"common twelves", "12_common"},
    {"half-sheet of twelves", "12_half_sheet"},
    {"twelves in eight and four", "12_8_plus_4"},
    {"12mo in 8s and 4s", "12_8_plus_4"},
    {"long twelves", "12_long_accordion"},
    {"long 12°", "12_long_accordion"},
    {"12° long", "12_long_accordion"},
    {"sixteens in eights", "16_two_8s"},
    {"8° in 8s", "8_octavo"},
    {"8° in 4s", "8_half_sheet"},
    {"12° in 12s", "12_common"},
    {"12° in 6s", "12_half_sheet"},
    {"16° in 16s", "16_one_gathering"},
    {"16mo in 16s", "16_one_gathering"},
    {"18° in 18s", "18_one_rolled"},
    {"18° in 9s", "18_half_sheet_9_transposed"},
    {"24° in 8s", "24_three_8s_french"},
    {"24° in 12s", "24_two_12s"},
    {"16mo in one gathering", "16_one_gathering"},
    {"eighteens", "18_three_6s"},
    {"half-sheet of eighteens", "18_half_sheet_9_transposed"},
    {"twenty-fours in twelves", "24_two_12s"},
    {"24° in 16 and 8", "24_16_plus_8"},
    {"thirty-twos", "32_four_8s"},
    {"sixty-fours", "64_eight_8s"},
    {"octavo, work-and-turn", "8_half_sheet"},
    {"octavo work and turn", "8_half_sheet"},
    {"octavo worked and turned", "8_half_sheet"},
    {"half-sheet of octavo, work-and-turn", "8_half_sheet"},
    {"twelves, work-and-turn", "12_half_sheet"},
    {"octavo sheetwise", "8_octavo"},
    {"octavo, work-and-back", "8_octavo"},
    {"whole-sheet octavo", "8_octavo"},
    {"12° by cutting", "12_common"},
    {"twelves without cutting", "12_without_cutting"},
    {"16° in two signatures", "16_two_8s"},
    {"18° in one signature", "18_one_rolled"},
    {"18° in two signatures", "18_12_plus_6"},
    {"18° in three signatures", "18_three_6s"},
    {"18° in two", "18_12_plus_6"},
    {"18mo in 3", "18_three_6s"},
    {"18mo in 12s and 6s", "18_12_plus_6"},
    {"24° in two quires", "24_two_12s"},
    {"twenty-fours in three gatherings", "24_three_8s_french"},
    {"32° in two gatherings", "32_two_16s"},
    {"thirty-twos in four gatherings", "32_four_8s"},
    {"forty-eights in six sections", "48_six_8s"},
    {"48° in four sections", "48_four_12s"},
    {"18° in gatherings of six", "18_three_6s"},
    {"12 COMMON", "12_common"},
    {"12-8-plus-4", "12_8_plus_4"},
};
constexpr std::string_view nobodys[]{"",
                                     " ",
                                     "xyz",
                                     "10°",
                                     "in-8s",
                                     "octavo in nines",
                                     "half-sheet",
                                     "in",
                                     "8vo8",
                                     "7",
                                     "18° in six gatherings",
                                     "48° in eight gatherings",
                                     "octavo work",
                                     "octavo work and",
                                     "32° in eight signatures"};

static_assert(find_scheme("8vo") == schemes::octavo);
static_assert(find_scheme("half-sheet of twelves") == schemes::duodecimo_half_sheet);
static_assert(likely_scheme("octvo") == schemes::octavo);

std::string id(std::optional<Attested> scheme) { return scheme ? std::string{scheme->id()} : "none"; }

} // namespace

TEST_CASE("a scheme is found by the names people use") {
  for (auto const& [name, expected] : names) {
    CAPTURE(name);
    CHECK(id(find_scheme(name)) == expected);
    for (char const* blank : {"  ", "\u00a0", "\u2009", "\t"})
      CHECK(id(find_scheme(with(std::string{name}, " ", blank))) == expected);
  }
  for (auto const name : nobodys) {
    CAPTURE(name);
    CHECK(id(find_scheme(name)) == "none");
  }
}

TEST_CASE("every scheme has its id as a name, and every format of the table means a scheme of that format") {
  std::set<int> formats;
  for (auto const scheme : Attested::all()) {
    CHECK(find_scheme(scheme.id()) == scheme);
    formats.insert(*scheme.scheme().format().leaves_to_sheet());
  }
  for (int const leaves : formats)
    for (auto const& name :
         {Format::of(leaves).name(), Format::of(leaves).abbreviation(), Format::of(leaves).symbol()}) {
      CAPTURE(name.view());
      auto const found = find_scheme(name);
      REQUIRE(found);
      CHECK(found->scheme().format().leaves_to_sheet() == leaves);
    }
}

TEST_CASE("so many gatherings mean a scheme with so many, and no other") {
  std::set<int> formats;
  for (auto const scheme : Attested::all()) formats.insert(*scheme.scheme().format().leaves_to_sheet());
  int found = 0;
  for (int const leaves : formats)
    for (int gatherings = 1; gatherings <= 20; ++gatherings)
      for (auto const* noun : {"gatherings", "signatures", "quires", "sections", "gathering", "Signature"}) {
        auto const name = std::to_string(leaves) + "° in " + std::to_string(gatherings) + " " + noun;
        CAPTURE(name);
        auto const scheme = find_scheme(name);
        if (!scheme) continue;
        ++found;
        auto const folded = *fold(scheme->scheme());
        int different = 0;
        for (int g = 0; g < folded.gatherings(); ++g) different += folded.is_copy(g) ? 0 : 1;
        CHECK(different == gatherings);
        CHECK(scheme->scheme().format().leaves_to_sheet() == leaves);
      }
  CHECK(found >= 6 * 15);
}

TEST_CASE("the schemes of a format are all that make so many leaves") {
  std::size_t all = 0;
  for (int leaves = 1; leaves <= 128; ++leaves) {
    auto const ids = ids_of_schemes(leaves);
    all += ids.size();
    for (auto const one : ids) CHECK(find_scheme(one)->scheme().format().leaves_to_sheet() == leaves);
  }
  CHECK(all == static_cast<std::size_t>(Attested::count));
}

TEST_CASE("where no scheme has the name, one spelt almost so is offered") {
  CHECK(id(likely_scheme("octvo")) == "8_octavo");
  CHECK(id(likely_scheme("oktavo")) == "8_octavo");
  CHECK(id(likely_scheme("follio")) == "2_folio");
  CHECK(id(likely_scheme("quatro")) == "4_quarto");
  CHECK(id(likely_scheme("12_comon")) == "12_common");
  CHECK(id(likely_scheme("octavo in nines")) == "8_octavo"); // a format, and words that fit none
  CHECK(id(likely_scheme("quarto quired in tens")) == "4_quarto");
  for (auto const name : {"", "xyz", "leaf", "10°"}) CHECK(id(likely_scheme(name)) == "none");
  for (auto const scheme : Attested::all()) // any one letter left out
    for (std::size_t at = 2; at < scheme.id().size(); ++at) {
      auto name = std::string{scheme.id()};
      name.erase(at, 1);
      if (find_scheme(name)) continue;
      auto const likely = likely_scheme(name);
      CAPTURE(name);
      REQUIRE(likely);
      CHECK(letters_apart(likely->id(), name) == 1);
    }
}

TEST_CASE("the sentence names what is likely meant") {
  CHECK(no_scheme_message("octvo") == "no scheme is called 'octvo'; perhaps '8_octavo' is meant (common octavo)");
  CHECK(no_scheme_message("xyz") == "no scheme is called 'xyz'");
  CHECK(
      no_scheme_message("16° in threes") ==
      "no scheme is called '16° in threes'; the schemes of this format are 16_one_gathering, 16_two_8s, 16_half_sheet, "
      "16_half_sheet_side");
}
