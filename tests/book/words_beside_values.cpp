// SPDX-License-Identifier: MIT
// No text is dropped without a word: in every field, words that do not belong to its value are in the description, as a
// part that was not read, as a doubt, or as a field that is not read at all. Constructed.
#include "book_of.hpp"

using namespace book;

namespace {

struct ValueOfField {
  Field field;
  std::string_view FieldTexts::*text;
  std::string_view value;
};
constexpr ValueOfField values_of_fields[]{{Field::formula, &FieldTexts::formula, "8°: A-C8"},
                                          {Field::pagination, &FieldTexts::pagination, "[8], 205, [3] p."},
                                          {Field::leaves, &FieldTexts::leaves, "24"},
                                          {Field::leaves, &FieldTexts::leaves, "24 leaves"},
                                          {Field::plates, &FieldTexts::plates, "4"},
                                          {Field::plates, &FieldTexts::plates, "4 plates"},
                                          {Field::format, &FieldTexts::format, "8vo"},
                                          {Field::signing, &FieldTexts::signing, "$4 signed"},
                                          {Field::gatherings, &FieldTexts::gatherings, "8"},
                                          {Field::gatherings, &FieldTexts::gatherings, "in fours"},
                                          {Field::height, &FieldTexts::height, "187"},
                                          {Field::height, &FieldTexts::height, "19 cm"},
                                          {Field::width, &FieldTexts::width, "12 cm"},
                                          {Field::binding, &FieldTexts::binding, "200"},
                                          {Field::chain_lines, &FieldTexts::chain_lines, "vertical"},
                                          {Field::material, &FieldTexts::material, "laid"},
                                          {Field::year, &FieldTexts::year, "1725"},
                                          {Field::coded_year, &FieldTexts::coded_year, "1725"},
                                          {Field::place, &FieldTexts::place, "Venice"}};

bool is_told(Description const& book, Field field) {
  for (auto const& one : book.unread)
    if (one.field == field) return true;
  for (auto const& one : book.doubts)
    if (one.field == field) return true;
  return false;
}

} // namespace

TEST_CASE("words beside the value of any field are told") {
  for (auto const& row : values_of_fields) {
    FieldTexts alone;
    alone.*row.text = row.value;
    CAPTURE(row.value);
    CHECK(!is_told(read_description(alone), row.field));
    for (std::string_view const words :
         {"foo", "Quux", "handsome copy", "unless rebound", "Ontario", "Smith", "wormed"})
      for (std::string_view const between : {" ", ", ", "; ", " and "}) {
        auto const text = std::string{row.value}.append(between).append(words);
        CAPTURE(text);
        FieldTexts texts;
        texts.*row.text = text;
        CHECK(is_told(read_description(texts), row.field));
      }
  }
}

TEST_CASE("the year 0 of a coded date is none") { // MARC 21 writes u for figures that are not known
  auto const book = read_description({.year = "1725", .coded_year = "0000"});
  CHECK(!book.coded_year);
  REQUIRE(book.unread.size() == 1);
  CHECK(book.unread[0].field == Field::coded_year);
  CHECK(!examine(book).contradicts());
}

TEST_CASE("a date that is denied or left open is not compared") {
  for (auto const* text : {"not 1725", "1725 or thereabouts", "1725 [false date]", "1725 (not 1726)", "nicht 1725"}) {
    CAPTURE(text);
    auto const book = read_description({.year = text, .coded_year = "1752"});
    CHECK(!book.year);
    REQUIRE(book.unread.size() == 1);
    CHECK(!book.unread[0].rest);
    CHECK(!examine(book).contradicts());
  }
  for (auto const* text : {"Printed in the year of our Lord 1725", "anno Domini MDCCXXV", "1725", "[1725]"}) {
    CAPTURE(text);
    auto const book = read_description({.year = text});
    REQUIRE(book.year);
    CHECK(book.year->value == YearRange{1725, 1725});
    CHECK(book.unread.empty());
  }
}
