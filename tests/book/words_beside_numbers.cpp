// SPDX-License-Identifier: MIT
// Numbers with words about them in the fields that count leaves and in those that measure: a number is taken only where the
// words say that it counts leaves, and all of them, or where it stands alone. Every number is put beside every word of its
// kind; what is true of the text is known from the words. Constructed; the words of other languages are common practice, no
// source.
#include "book_of.hpp"

using namespace book;

namespace {

Description with_field(Field field, std::string const& text) {
  FieldTexts texts;
  (field == Field::leaves       ? texts.leaves
   : field == Field::plates     ? texts.plates
   : field == Field::gatherings ? texts.gatherings
   : field == Field::height     ? texts.height
   : field == Field::width      ? texts.width
                                : texts.binding) = text;
  return read_description(texts);
}
/// The whole field is unread, and the audit says so.
void is_refused(Description const& book, Field field) {
  REQUIRE(book.unread.size() == 1);
  CHECK(book.unread[0].field == field);
  CHECK(!book.unread[0].rest);
  CHECK(!book.is_complete());
  auto const audit = examine(book);
  CHECK(audit.left_unread());
  CHECK(!audit.agrees());
  CHECK(!audit.contradicts());
}
std::string with_words(std::string_view before, int number, std::string_view after) {
  return std::string{before} + std::to_string(number) + std::string{after};
}

} // namespace

TEST_CASE("a number of leaves is one only with words for leaves, or alone") {
  for (int const number : {6, 85, 170})
    for (auto const& [before, after] : {std::pair{"", ""},
                                        {"", "."},
                                        {"[", "]"},
                                        {"", " leaves"},
                                        {"", " LEAVES"},
                                        {"", " ff."},
                                        {"", " Bl."},
                                        {"", " carte"},
                                        {"", " unnumbered leaves"},
                                        {"[", "] ll."},
                                        {"ff. ", ""},
                                        {"", ", uncut"},
                                        {"", " leaves, the last blank"},
                                        {"", " leaves (the last blank)"},
                                        {"", " leaves, 30 lines"}}) {
      auto const text = with_words(before, number, after);
      CAPTURE(text);
      auto const book = with_field(Field::leaves, text);
      REQUIRE(book.leaves);
      CHECK(book.leaves->value == number);
      CHECK(!book.pagination);
      CHECK(book.unread.size() == (std::string_view{after}.find_first_of(",(") == std::string_view::npos ? 0 : 1));
    }
  // what is no leaf, a sign, and more than the number: the total is not known
  for (int const number : {6, 85, 170})
    for (auto const& [before, after] : {std::pair{"", " quires"},
                                        {"", " v."},
                                        {"", " vols."},
                                        {"", " gatherings"},
                                        {"", " sheets of 8"},
                                        {"", " Lagen"},
                                        {"-", ""},
                                        {"−", ""},
                                        {"–", " leaves"},
                                        {"", " + 1"},
                                        {"", " and 1 blank"},
                                        {"", " & 2"},
                                        {"", ", 1 blank"},
                                        {"", " or 87"},
                                        {"", "-90"},
                                        {"", "/90"},
                                        {"", " [i.e. 86]"},
                                        {"", " to 90"},
                                        {"", " plus 2"},
                                        {"", " + [2]"},
                                        {"", " und 1 weißes"},
                                        {"", " figures"}}) {
      auto const text = with_words(before, number, after);
      CAPTURE(text);
      auto const book = with_field(Field::leaves, text);
      CHECK(!book.leaves);
      is_refused(book, Field::leaves);
    }
}

TEST_CASE("pages in the field of leaves are the pagination, and are repaired where they stand") {
  for (std::string_view const unit : {" p.", " pp.", " pages", " Seiten", " S.", " páginas"}) {
    auto const text = "170" + std::string{unit};
    CAPTURE(text);
    // K is the tenth letter: 10 · 8 + 4 + 1 leaves
    auto const book = read_description({.formula = "8°: A-K8 L4 (L4+1)", .leaves = text});
    CHECK(!book.leaves);
    REQUIRE(book.pagination);
    CHECK(book.pagination->value.pages() == 170);
    CHECK(book.pagination->in == Field::leaves);
    CHECK(examine(book).agrees());
    auto const slip = read_description({.formula = "8°: A-K8 L4 (L4+1)", .leaves = "107" + std::string{unit}});
    auto const audit = examine(slip);
    CHECK(audit.contradicts());
    REQUIRE(!audit.repairs.empty());
    CHECK(edited("107" + std::string{unit}, Field::leaves, audit.repairs[0].edits) == text);
    CHECK(audit.repairs[0].pagination == text);
  }
  auto const twice = examine(read_description({.pagination = "[8], 80 p.", .leaves = "170 p."}));
  CHECK(has(twice, FindingId::stated_twice));
  CHECK(!has(examine(read_description({.pagination = "[8], 80 p.", .leaves = "88 p."})), FindingId::stated_twice));
}

TEST_CASE("plates and gatherings: what is not read is told, and a sign is no number") {
  for (std::string_view const text : {"-4", "−4", "4 pages", "4 + 1", "4 and 2 maps", "4-6", "4 [i.e. 5]"}) {
    CAPTURE(text);
    auto const book = with_field(Field::plates, std::string{text});
    CHECK(!book.plates);
    is_refused(book, Field::plates);
  }
  for (std::string_view const text : {"4 maps", "4 engravings", "4, uncoloured", "4 leaves, uncoloured"}) {
    CAPTURE(text);
    auto const book = with_field(Field::plates, std::string{text});
    REQUIRE(book.plates);
    CHECK(book.plates->value == 4);
    CHECK(book.unread.size() == 1);
  }
  for (std::string_view const text : {"-8", "−8s", "gatherings of -8"}) {
    CAPTURE(text);
    is_refused(with_field(Field::gatherings, std::string{text}), Field::gatherings);
  }
  CHECK(with_field(Field::gatherings, "in-8s").gatherings->value == 8);
}

TEST_CASE("a measure without its unit is one of millimetres only where the number is alone") {
  for (auto const field : {Field::height, Field::width, Field::binding}) {
    auto const read = [&](Description const& book) {
      return field == Field::height ? book.height : field == Field::width ? book.width : book.binding;
    };
    for (int const number : {8, 19, 84, 187}) {
      for (std::string_view const after :
           {" Zoll",       " lines",  " Linien",   " ft",    " feet",   " foo",       " m",         " dm",
            "'",           " %",      " or 20 cm", "/20 cm", ", 20 cm", "; 20 cm",    " and 20 cm", " & 20 cm",
            " oder 20 cm", " + 2 cm", " (cm)",     " [cm]",  ", cm",    ", or 20 cm", ", 20"}) {
        auto const text = with_words("", number, after);
        CAPTURE(text);
        auto const book = with_field(field, text);
        CHECK(!read(book));
        is_refused(book, field);
        auto const problem = book.unread.at(0).error.problem;
        CHECK((problem == Problem::unknown_unit || problem == Problem::unit_missing));
      }
      for (std::string_view const after :
           {"", ".", " (8vo)", ", uncut", "; rebound in 1890", " (rebacked)", " x 114", "?"}) {
        auto const text = with_words("", number, after);
        CAPTURE(text);
        auto const book = with_field(field, text);
        REQUIRE(read(book));
        CHECK(read(book)->value.contains(millimetres{static_cast<double>(number)}));
      }
    }
    for (std::string_view const text : {"18-19 cm", "18 to 19 cm", "cm 19", "19 cm, 33 lines", "19 cm"}) {
      CAPTURE(text);
      auto const book = with_field(field, std::string{text});
      REQUIRE(read(book));
      CHECK(read(book)->value.to >= 180);
    }
  }
}
