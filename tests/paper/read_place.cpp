// SPDX-License-Identifier: MIT
// Places of printing against the Latin Place Names File, and the examples of the rules. Rule numbers are those of DCRMR
// (RDA edition of the rules for rare materials, 2023).
#include <bifolium/core/message.hpp>
#include <bifolium/paper/read_place.hpp>

#include "check.hpp"
#include "data.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {
std::vector<std::string> parted(std::string const& text, std::string const& by) {
  std::vector<std::string> parts;
  for (std::size_t from = 0; from <= text.size();) {
    auto const end = std::min(text.find(by, from), text.size());
    if (end > from) parts.push_back(text.substr(from, end - from));
    from = end + by.size();
  }
  return parts;
}
bool has(std::vector<Place> const& places, std::string const& name) {
  for (auto const& place : places)
    if (place.name == name) return true;
  return false;
}
/// The region for what the file calls one. Where nothing is known to depend on the region alone, it is Europe or
/// anywhere.
Region region_of_file(std::string const& name, std::string const& country) {
  struct Row {
    char const* name;
    Region region;
  };
  for (auto const& row : {Row{"Italy, part V", Region::venice},
                          {"Italy, part IV", Region::rome},
                          {"Italy, part VI", Region::north_italy},
                          {"Italy, part VII", Region::other_italy},
                          {"Britain", Region::britain},
                          {"Ireland", Region::ireland},
                          {"France", Region::france},
                          {"Low Countries", Region::netherlands},
                          {"Germany", Region::germany},
                          {"Switzerland", Region::switzerland},
                          {"Austria", Region::germany},
                          {"Spain", Region::spain},
                          {"Portugal", Region::spain},
                          {"Bohemia/Poland", Region::europe},
                          {"Hungary", Region::europe},
                          {"Scandinavia", Region::europe},
                          {"Russia", Region::europe},
                          {"other", Region::europe}})
    if (row.name == name) return row.region;
  REQUIRE(name == "America");
  return country == "United States" ? Region::usa : Region::anywhere;
}
std::string place(char const* text) {
  auto const read = read_place(text);
  REQUIRE_MESSAGE(read, text);
  std::string names;
  for (auto const& one : read->places()) names += (names.empty() ? "" : " | ") + std::string{one.name};
  return names;
}
} // namespace

TEST_CASE("every name of the file is read as its town, and an ambiguous one as all of its towns") {
  int names = 0, ambiguous = 0;
  for (auto const& row : data::rows("places.tsv", 6)) {
    for (auto const& cell : {row[3], row[4]})
      for (auto const& form : parted(cell, "; ")) {
        auto const bracket = form.find(" [ambiguous: ");
        auto const name = form.substr(0, bracket);
        INFO(name, " of ", row[0]);
        auto const read = read_place(name);
        REQUIRE(read);
        ++names;
        REQUIRE(has(read->places(), row[0]));
        CHECK(read->unread.empty());
        for (auto const& one : read->places())
          if (one.name == row[0]) {
            CHECK(one.country == row[1]);
            CHECK(one.region == region_of_file(row[2], row[1]));
          }
        if (bracket == form.npos) continue;
        ++ambiguous;
        // how many places the file names, false imprints apart
        std::size_t places = 0;
        bool fictitious = false;
        for (auto const& other : parted(form.substr(bracket + 13, form.size() - bracket - 14), " | "))
          (other.find("imprint") == other.npos ? places += 1 : places += 0,
           fictitious |= other.find("imprint") != other.npos);
        CHECK(read->places().size() >= places);
        REQUIRE(!read->warnings().empty());
        CHECK(fictitious == (read->warnings().back().problem == Problem::fictitious_place));
      }
  }
  CHECK(names == 1826);
  CHECK(ambiguous == 70);
}

TEST_CASE("names are compared without case, accents, points, and with u as v and i as j") {
  CHECK(place("Lugduni Batavorum") == "Leiden");
  CHECK(place("LVGDVNI BATAVORVM") == "Leiden");
  CHECK(place("Lvgd. Batau.") == "Leiden");
  CHECK(place("koln") == "Cologne");
  CHECK(place("VVittebergae") == "Wittenberg");
  CHECK(place("'s-Gravenhage") == "The Hague");
  CHECK(place("Pont a Mousson") == "Pont-à-Mousson");
  // ligatures in both cases
  CHECK(place("Moguntiæ") == "Mainz");
  CHECK(place("MOGVNTIÆ") == "Mainz");
  CHECK(place("Œniponte") == place("Oeniponte"));
  CHECK(place("œniponte") == place("Oeniponte"));
  CHECK(place("Straßburg") == "Strasbourg");
  CHECK(place("Dĳon") == "Dijon");
  CHECK(place("DĲON") == "Dijon");
}

TEST_CASE("statements of place as the rules have them") {
  // DCRMR 5.21.31: as printed, with prepositions
  CHECK(place("A Lyon") == "Lyon");
  CHECK(place("In London") == "London");
  CHECK(place("Impressum fuit hoc opus Venetiis") == "Venice");
  // .32: the modern name in brackets
  CHECK(place("Eboracum [York]") == "York"); // York in Pennsylvania is not Eboracum
  CHECK(place("Monachii [Munich]") == "Munich");
  CHECK(place("Mocuntiae [Mainz]") == "Mainz");
  // .36: false and fictitious places
  CHECK(place("A Cantorbery [that is, Amsterdam]") == "Amsterdam");
  CHECK(place("Philadelphia [that is, Frankfurt]") == "Frankfurt am Main | Frankfurt an der Oder");
  CHECK((*read_place("A Londres")).warnings().front().problem == Problem::fictitious_place);
  // .385: conjectures
  CHECK(place("[Amsterdam?]") == "Amsterdam");
  CHECK((*read_place("[Amsterdam?]")).named[0].probable);
  CHECK((*read_place("[Amsterdam?]")).named[0].supplied);
  CHECK(place("[England?]") == "England");
  // .33: several places
  CHECK(place("London ; York") == "London");
  CHECK((*read_place("London ; York")).named.size() == 2);
  CHECK(place("London printed and Dublin re-printed") == "Dublin");
  // .385.4, and from memory the older S.l.
  for (auto text : {"[Place of publication not identified]", "[S.l.]", "[s.l.]", "s. l."}) {
    auto const read = read_place(text);
    REQUIRE(read);
    CHECK(read->not_known);
    CHECK(read->places().empty());
  }
}

TEST_CASE("what is ambiguous stays so, unless the statement settles it") {
  auto const lugduni = read_place("Lugduni");
  REQUIRE(lugduni);
  CHECK(lugduni->places().size() == 2);
  CHECK(lugduni->region() == Region::europe);
  CHECK((*read_place("Cambridge")).region() == Region::anywhere); // England or New England
  REQUIRE(lugduni->warnings().size() == 1);
  CHECK(lugduni->warnings()[0].problem == Problem::ambiguous_place);
  CHECK(lugduni->warnings()[0].limit == 2);
  // constructed: two towns of one region still have the region
  CHECK((*read_place("Frankfurt")).places().size() == 2);
  CHECK((*read_place("Frankfurt")).region() == Region::germany);
  CHECK(place("Lugduni [Leiden]") == "Leiden");
  CHECK(place("Cambridge, Mass.") == "Cambridge (Massachusetts)");
  CHECK(place("Cambridge (England)") == "Cambridge");
  CHECK(place("Cologne [Amsterdam]") == "Amsterdam");
  CHECK(place("Brussels (false Cologne)") == "Brussels");
}

TEST_CASE("an unknown place is told, and words that are no place") {
  auto const unknown = read_place("Printed at Bennington"); // DCRMR 5.21.31; the table has no such town
  REQUIRE(!unknown);
  CHECK(unknown.error().problem == Problem::unknown_place);
  CHECK(unknown.error().place->column == 12);
  CHECK(message(unknown.error()) == "line 1, column 12: no place of printing is known as 'Bennington'");
  CHECK(read_place("").error().problem == Problem::unexpected_end);
  CHECK(read_place("[?]").error().problem == Problem::unexpected_end);
  constexpr std::string_view text = "Parisiis, apud Simonem Colinaeum";
  auto const paris = read_place(text);
  REQUIRE(paris);
  REQUIRE(paris->unread.size() == 1);
  CHECK(paris->unread[0].of(text) == "apud Simonem Colinaeum");
  CHECK(paris->named[0].at.of(text) == "Parisiis");
  auto const nowhere = read_place("Cosmopoli"); // DCRMR 5.21.36; fictitious in the Latin Place Names File
  REQUIRE(nowhere);
  CHECK(nowhere->places().empty());
  CHECK(nowhere->warnings().front().problem == Problem::fictitious_place);
}

TEST_CASE("the region of several places is the smallest that holds them") {
  STATIC_CHECK(common_region(Region::rome, Region::venice) == Region::italy);
  STATIC_CHECK(common_region(Region::venice, Region::italy) == Region::italy);
  STATIC_CHECK(common_region(Region::italy, Region::venice) == Region::italy);
  STATIC_CHECK(common_region(Region::france, Region::venice) == Region::europe);
  STATIC_CHECK(common_region(Region::france, Region::usa) == Region::anywhere);
  for (int i = 0; i < region_count; ++i)
    for (int k = 0; k < region_count; ++k) {
      auto const a = static_cast<Region>(i), b = static_cast<Region>(k), both = common_region(a, b);
      CHECK(both == common_region(b, a));
      CHECK(is_in(a, both));
      CHECK(is_in(b, both));
    }
  CHECK((*read_place("Venetiis")).region() == Region::venice);
  CHECK((*read_place("Dublin")).region() == Region::ireland);
  CHECK((*read_place("New York")).region() == Region::usa);
  CHECK((*read_place("[S.l.]")).region() == Region::anywhere);
}

TEST_CASE("words beside a name can make it that of another place, and then none is meant") {
  // every town of the table whose name is its own, beside words with capitals; that the new towns are named after the old
  // ones is common knowledge, no source
  int towns = 0;
  for (auto const& row : data::rows("places.tsv", 6)) {
    auto const& town = row[0];
    auto const alone = read_place(town);
    if (!alone || alone->places().size() != 1 || row[1] == "United States" || town.find('(') != town.npos) continue;
    ++towns;
    for (auto const& text :
         {"New " + town, "Nova " + town, "Fort " + town, town + ", Ontario", town + ", Kentucky", town + ", N.Y.",
          town + ", Massachusetts", town + " Ontario", town + " (Ontario)", town + " or elsewhere"}) {
      CAPTURE(text);
      auto const read = read_place(text);
      if (!read) continue;
      // a longer name can be another town that is known: Frankfurt am Main, New York
      bool const other = !read->places().empty() && read->named[0].at.of(text) != town;
      if (other) continue;
      CHECK(read->places().empty());
      CHECK(read->region() == Region::anywhere);
      REQUIRE(!read->warnings().empty());
      CHECK(read->warnings()[0].problem == Problem::place_qualified);
      CHECK(read->warnings()[0].place->column ==
            (text[0] == '\'' ? 2U : 1U)); // 's-Hertogenbosch: from its first letter
    }
    for (auto const& text :
         {"Printed at " + town, "Impressum " + town, town + " : J. Smith", town + ", by J. Smith", town + ", 1725",
          "[" + town + "]", "At " + town + " in the year 1725", town + ", " + row[1]}) {
      CAPTURE(text);
      auto const read = read_place(text);
      REQUIRE(read);
      CHECK(has(read->places(), town));
    }
  }
  CHECK(towns > 150);
}

TEST_CASE("a place that is doubted, denied, or one of two") { // constructed
  for (auto const* text : {"Venice?", "[Venice?]", "perhaps Venice", "probably Venice", "vielleicht Venetiis",
                           "forse Venetia", "presumably at Venice"}) {
    CAPTURE(text);
    auto const read = read_place(text);
    REQUIRE(read);
    CHECK(read->region() == Region::venice);
    REQUIRE(read->warnings().size() == 1);
    CHECK(read->warnings()[0].problem == Problem::place_doubted);
    CHECK(std::string_view{text}.substr(read->warnings()[0].place->column - 1).starts_with("Ven"));
    CHECK(read->named[0].probable);
  }
  for (auto const* text : {"not Venice", "not at Venice", "nicht in Venedig", "non Venetiis"}) {
    CAPTURE(text);
    auto const read = read_place(text);
    REQUIRE(read);
    CHECK(read->places().empty());
    CHECK(read->named[0].called_false);
    CHECK(read->unread.size() == 1);
  }
  for (auto const* text : {"Venice or Paris", "Venetiis vel Parisiis", "Venedig oder Paris", "Venise ou Paris"}) {
    CAPTURE(text);
    auto const read = read_place(text);
    REQUIRE(read);
    CHECK(place(text) == "Venice | Paris");
    CHECK(read->region() == Region::europe);
    REQUIRE(read->warnings().size() == 1);
    CHECK(read->warnings()[0].problem == Problem::ambiguous_place);
    CHECK(read->warnings()[0].limit == 2);
  }
  CHECK(place("New York, N.Y.") == "New York");
  CHECK(place("Philadelphia, Pa.") == "Philadelphia");
  CHECK(place("Paris, Massachusetts") == "");
  CHECK(place("Argentorati, Germania") == "Strasbourg"); // of which the country was another
}
