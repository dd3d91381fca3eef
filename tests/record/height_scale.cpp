// SPDX-License-Identifier: MIT
// Library height classes, against the tables that stated them.
#include <bifolium/evidence/infer.hpp>
#include <bifolium/record/height_scale.hpp>

#include "check.hpp"
#include "data.hpp"

#include <cstdlib>
#include <string>
#include <string_view>

using namespace bifolium;

namespace {
constexpr std::string_view symbol(HeightScale scale, millimetres height) {
  auto const classes = height_classes(scale, height);
  return classes.size() == 1 ? classes[0].symbol : "";
}
} // namespace

TEST_CASE("a height class is a height, and the scales disagree about it") {
  // Library Journal 3 (1878): each class up to and with its upper limit
  STATIC_CHECK(symbol(HeightScale::american_1878, 100_mm) == "Fe");
  STATIC_CHECK(symbol(HeightScale::american_1878, 125_mm) == "Tt");
  STATIC_CHECK(symbol(HeightScale::american_1878, 125.1_mm) == "T");
  STATIC_CHECK(symbol(HeightScale::american_1878, 200_mm) == "D");
  STATIC_CHECK(symbol(HeightScale::american_1878, 250_mm) == "O");
  STATIC_CHECK(symbol(HeightScale::american_1878, 300_mm) == "Q");
  STATIC_CHECK(symbol(HeightScale::american_1878, 401_mm) == "F5");
  STATIC_CHECK(height_classes(HeightScale::american_1878, 900_mm).empty());
  // Cutter (1891) counts by the lower ten in rule 196, by the upper in Appendices III and V: one book, two names
  STATIC_CHECK(symbol(HeightScale::cutter_rule_196, 450_mm) == "F4");
  STATIC_CHECK(symbol(HeightScale::american_1878, 450_mm) == "F5");
  // T is 24° in 1878 and 18° in the dictionaries
  STATIC_CHECK(height_classes(HeightScale::american_1878, 140_mm)[0].borrowed_name() == "24°");
  STATIC_CHECK(height_classes(HeightScale::american_later, 140_mm)[0].borrowed_name() == "octodecimo");
  // 27 cm: quarto in Boston and to the German trade, Lexikon-Oktav to the German library, in 8 in Italy
  STATIC_CHECK(symbol(HeightScale::american_1878, 270_mm) == "Q");
  STATIC_CHECK(symbol(HeightScale::german_trade, 270_mm) == "4°");
  STATIC_CHECK(symbol(HeightScale::german_library, 270_mm) == "Lex.8°");
  STATIC_CHECK(symbol(HeightScale::italian, 270_mm) == "in 8");
  // University of Illinois: Q from 28.1 to 42 cm, F above
  STATIC_CHECK(height_classes(HeightScale::illinois, 280_mm).empty());
  STATIC_CHECK(symbol(HeightScale::illinois, 281_mm) == "Q");
  STATIC_CHECK(symbol(HeightScale::illinois, 421_mm) == "F");
}

TEST_CASE("the British scale overlaps and leaves gaps, since it wants shape and chain lines too") {
  // Quinn, Manual of Library Cataloguing (1899), Appendix B
  STATIC_CHECK(height_classes(HeightScale::british_association, 10.75_in).size() == 3); // Sm. fo., 4°, Imp. 8°
  STATIC_CHECK(height_classes(HeightScale::british_association, 5.25_in).empty());
  STATIC_CHECK(height_classes(HeightScale::british_association, 9_in).size() == 3); // the limits are in their classes
}

TEST_CASE("every scale runs on without a gap or an overlap, but the British") {
  for (auto scale : {HeightScale::american_1878, HeightScale::cutter_rule_196, HeightScale::spofford_1900,
                     HeightScale::american_later, HeightScale::german_trade, HeightScale::german_library,
                     HeightScale::italian, HeightScale::french_trade})
    for (int mm = 1; mm < 400; ++mm) CHECK(height_classes(scale, millimetres{mm}).size() == 1);
  // and at no height are there more classes than an answer holds
  for (int scale = 0; scale < height_scale_count; ++scale)
    for (int tenth = 1; tenth < 300; ++tenth)
      CHECK(height_classes(static_cast<HeightScale>(scale), inches{tenth / 10.0}).size() <= 3);
}

TEST_CASE("every scale has classes, a name and a source") {
  for (int i = 0; i < height_scale_count; ++i) {
    auto const scale = static_cast<HeightScale>(i);
    CHECK(!std::string_view{to_words(scale)}.empty());
    CHECK(!std::string_view{source_of(scale)}.empty());
    bool any = false;
    for (int mm = 1; mm < 900 && !any; ++mm) any = !height_classes(scale, millimetres{mm}).empty();
    CHECK(any);
  }
  // the Library Journal is the source of 1878, not of its neighbours in the table
  CHECK(std::string_view{source_of(HeightScale::american_1878)}.starts_with("Library Journal 3"));
  CHECK(std::string_view{source_of(HeightScale::british_association)}.find("Quinn") != std::string_view::npos);
  CHECK(std::string_view{to_words(HeightScale::illinois)} == "University of Illinois");
}

TEST_CASE("the French trade counts 'under', so that a book of exactly 20 cm is an in-8") {
  // bibliophilie.com and bibliophileheurtebise.com: under 10 in-32, 14 in-18, 16 in-16, 20 in-12, 25 in-8, 30 in-4, 40 folio
  STATIC_CHECK(symbol(HeightScale::french_trade, 99.9_mm) == "in-32");
  STATIC_CHECK(symbol(HeightScale::french_trade, 139_mm) == "in-18");
  STATIC_CHECK(symbol(HeightScale::french_trade, 199.9_mm) == "in-12");
  STATIC_CHECK(symbol(HeightScale::french_trade, 200_mm) == "in-8");
  STATIC_CHECK(symbol(HeightScale::american_1878, 200_mm) == "D");
  STATIC_CHECK(height_classes(HeightScale::french_trade, 400_mm).empty());
}

TEST_CASE("formats named by dealers may be height classes, and are disputed more often") {
  // tests/data/later_leaf_sizes.tsv: copies of 1501-1820 with the format their describers give. A label that is also the
  // French height class of the leaf may come of the tape measure; one that is not cannot.
  int of_class = 0, class_disputed = 0, other = 0, other_disputed = 0;
  for (auto const& row : data::rows("later_leaf_sizes.tsv", 9)) {
    if (row[1].empty() || row[2].empty() || row[6].empty()) continue;
    LeafEvidence seen{.height = millimetres{std::stod(row[1])},
                      .width = millimetres{std::stod(row[2])},
                      .year = YearRange{std::atoi(row[6].c_str())}};
    if (std::atoi(row[5].c_str()) > 0) seen.gathering_leaves = std::atoi(row[5].c_str());
    auto const format = std::atoi(row[0].c_str());
    auto const name = format == 2 ? std::string{"in-folio"} : "in-" + std::to_string(format);
    bool const is_class = symbol(HeightScale::french_trade, *seen.height) == name;
    bool const disputed = infer_format(*observe(seen)).candidates.front().format.leaves_to_sheet() != format;
    (is_class ? of_class : other) += 1;
    (is_class ? class_disputed : other_disputed) += disputed;
  }
  MESSAGE("the label is the height class in " << of_class << " rows, of which " << class_disputed
                                              << " are disputed; it is not in " << other << " rows, of which "
                                              << other_disputed << " are disputed");
  CHECK(of_class + other == 130);
}
