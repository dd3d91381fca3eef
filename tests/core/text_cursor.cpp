// SPDX-License-Identifier: MIT
// The cursor of the readers: what it takes, where it stays, and which place an error has.
#include <bifolium/core/text_cursor.hpp>

#include "check.hpp"

#include <limits>
#include <random>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

template <class Take> constexpr std::size_t after(std::string_view text, Take take) {
  TextCursor cursor{text};
  take(cursor);
  return cursor.at();
}

TEST_CASE("a cursor takes what is there, and stays where it is otherwise") {
  STATIC_CHECK(after("pp. 12", [](TextCursor& c) { c.take("pp."); }) == 3);
  STATIC_CHECK(after("pp. 12", [](TextCursor& c) { c.take("p. "); }) == 0);
  STATIC_CHECK(after("", [](TextCursor& c) { c.take('a'); }) == 0);
  STATIC_CHECK(after(std::string_view{"\0b", 2}, [](TextCursor& c) { c.take('\0'); }) == 1); // not the end
  STATIC_CHECK(after("leafs", [](TextCursor& c) { c.take_word("leaf"); }) == 0);
  STATIC_CHECK(after("leaf 3", [](TextCursor& c) { c.take_word("leaf"); }) == 4);
  STATIC_CHECK(after("leaf", [](TextCursor& c) { c.take_word("leaf"); }) == 4);
  STATIC_CHECK(after("FoLio", [](TextCursor& c) { c.take_in_any_case("fol"); }) == 3);
  STATIC_CHECK(after("fo", [](TextCursor& c) { c.take_in_any_case("fol"); }) == 0);
  STATIC_CHECK(TextCursor{"mm 3"}.take_letters() == "mm");
  STATIC_CHECK(TextCursor{"3 mm"}.take_letters().empty());
  STATIC_CHECK(TextCursor{"A1\u2009B"}.take_until(is_space) == "A1");
  STATIC_CHECK(TextCursor{" B"}.take_until(is_space).empty());
  STATIC_CHECK(after("A1é", [](TextCursor& c) { c.take_until(is_space); }) == 4);
  STATIC_CHECK(TextCursor{"A\xE2\x80 B"}.take_until(is_space) == "A\xE2\x80"); // cut off
}

TEST_CASE("a cursor looks ahead without moving, and never beyond the text") {
  constexpr TextCursor cursor{"a⁸", 1};
  STATIC_CHECK(cursor.text() == "a⁸" && cursor.at() == 1 && cursor.rest() == "⁸");
  STATIC_CHECK(TextCursor{"ab"}.peek() == 'a' && TextCursor{"ab"}.peek(1) == 'b');
  STATIC_CHECK(TextCursor{"ab"}.peek(2) == '\0' && TextCursor{"ab"}.peek(SIZE_MAX) == '\0');
  STATIC_CHECK(TextCursor{"ab", 2}.peek() == '\0' && TextCursor{"ab", 2}.at_end() && !TextCursor{"ab", 1}.at_end());
  STATIC_CHECK(cursor.character().value == 0x2078 && cursor.character().bytes == 3); // U+2078, superscript eight
  STATIC_CHECK(TextCursor{""}.character().bytes == 0);
  STATIC_CHECK(cursor.starts_with("⁸") && !cursor.starts_with("⁸b") && cursor.starts_with(""));
  STATIC_CHECK(TextCursor{"0"}.at_digit() && TextCursor{"9"}.at_digit() && !TextCursor{"a"}.at_digit());
  STATIC_CHECK(after("abc", [](TextCursor& c) { c.skip(2); }) == 2);
  STATIC_CHECK(after("abc", [](TextCursor& c) { c.skip(2), c.go_to(1); }) == 1);
  STATIC_CHECK(after("ab", [](TextCursor& c) { c.take("ab"); }) == 2); // the whole text
  STATIC_CHECK(after("ab", [](TextCursor& c) { c.take_in_any_case("AB"); }) == 2);
  STATIC_CHECK(after("ab", [](TextCursor& c) { c.take_in_any_case("abc"); }) == 0);
  STATIC_CHECK(after("\xFFx", [](TextCursor& c) { c.take_one([](char32_t) { return true; }); }) == 0); // no character
  TextCursor taken{"ab 12"};
  CHECK(taken.take('a'));
  CHECK_FALSE(taken.take('a'));
  CHECK(taken.take("b"));
  CHECK_FALSE(taken.take_word("b"));
  CHECK(taken.take_blanks());
  CHECK(taken.take_in_any_case("1"));
  CHECK_FALSE(taken.take_in_any_case("1"));
  CHECK(taken.take_number() == 2);
  CHECK(taken.at_end());
  CHECK_FALSE(taken.take('\0'));
  CHECK(TextCursor{"9"}.take_number(9) == 9);
  CHECK_FALSE(TextCursor{"10"}.take_number(9));
  CHECK(TextCursor{"²"}.take_raised_number(2) == 2);
  CHECK(after("²¹", [](TextCursor& c) { c.take_raised_number(20); }) == 0);
  auto const error = TextCursor{"ab\ncd"}.error(Problem::number_too_large, {4, 5}, 7);
  CHECK(error.place->line == 2);
  CHECK(error.place->column == 2);
  CHECK(error.found_text() == "d");
  CHECK(error.limit == 7);
  CHECK(TextCursor{"abc"}.error_from(1, Problem::number_too_large, 8).limit == 8);
  CHECK(TextCursor{"abc", 2}.error_here(Problem::number_too_large, 9).limit == 9);
  CHECK(TextCursor{"abc", 2}.error_here(Problem::number_too_large).place == TextPlace{1, 3});
  CHECK(TextCursor{"abc", 2}.error_here(Problem::number_too_large).limit == 0);
  CHECK(TextCursor{"abc"}.error_from(1, Problem::number_too_large).limit == 0);
  CHECK(TextCursor{"abc"}.error(Problem::number_too_large, {1, 2}).limit == 0);
}

TEST_CASE("every kind of blank, dash and quotation mark is taken whole") {
  // The Unicode Standard, General Punctuation and Latin-1 Supplement: spaces U+2000-200A, U+00A0, U+202F
  for (std::string const blank : {" ", "\t", "\n", "\r\n", "\u00A0", "\u2002", "\u2009", "\u200A", "\u202F"})
    CHECK(after(blank + blank + "x", [](TextCursor& c) { CHECK(c.take_blanks()); }) == 2 * blank.size());
  CHECK_FALSE(TextCursor{"x"}.take_blanks());
  CHECK(after("\u00A0 \n x", [](TextCursor& c) { CHECK(c.take_while(is_blank)); }) == 3); // not the end of a line
  CHECK(after("x ", [](TextCursor& c) { CHECK_FALSE(c.take_while(is_blank)); }) == 0);
  CHECK_FALSE(TextCursor{""}.take_blanks());
  for (std::string const dash : {"-", "\u2010", "\u2011", "\u2013", "\u2014"})
    CHECK(after(dash + "x", [](TextCursor& c) { CHECK(c.take_dash()); }) == dash.size());
  for (std::string const mark : {"'", "\"", "\u2018", "\u2019", "\u201C", "\u201D", "\u201E"})
    CHECK(after(mark + "x", [](TextCursor& c) { CHECK(c.take_quotation_mark()); }) == mark.size());
  CHECK(after("\xE2\x80", [](TextCursor& c) { CHECK_FALSE(c.take_dash()); }) == 0); // cut off
}

TEST_CASE("a blank in the words that are asked for stands for all blanks there are") {
  for (std::string_view const blank : {" ", "  ", "\t", "\n", "\u00a0", "\u2009", " \u00a0 ", "\r\n"}) {
    std::string const text = std::string{"Not"}.append(blank).append("after").append(blank).append("1492");
    TextCursor cursor{text};
    CHECK(!cursor.take("not after "));
    CHECK(!cursor.take_in_any_case("notafter"));
    CHECK(cursor.at() == 0);
    CHECK(cursor.take_in_any_case("not after "));
    CHECK(cursor.take_number() == 1492);
    cursor.go_to(0);
    CHECK(cursor.starts_with("Not after 1492"));
    CHECK(cursor.take_word("Not after"));
    CHECK(cursor.take(" "));
    CHECK(cursor.peek() == '1');
    cursor.go_to(0);
    CHECK(!cursor.take_word("Not a"));
    CHECK(cursor.at() == 0);

    auto const bytes = blank == "\r\n" ? 1U : decode(blank, 0).bytes;
    CHECK(blank_at(text, 3) == bytes);
    CHECK(blank_at(text, 2) == 0);
    CHECK(after_blanks(text, 3) == 3 + blank.size());
    CHECK(after_blanks(text, 2) == 2);
    CHECK(before_blanks(text, 3 + blank.size()) == 3);
    CHECK(blank_before(text, 3) == 0);
    CHECK(blank_before(text, 4) == (bytes == 1 ? 1 : 0)); // in the middle of a character there is none
    CHECK(trimmed(std::string{blank}.append("A8,").append(blank), " ,") == "A8");
    CHECK(trimmed(std::string{blank}.append(","), ",") == std::string{blank});
  }
  STATIC_CHECK(blank_at("", 0) == 0);
  STATIC_CHECK(after_blanks("A", 1) == 1);
  STATIC_CHECK(before_blanks("  ", 2) == 0);
  STATIC_CHECK(trimmed("\u00a0 ,", " ,").empty());
}

TEST_CASE("a number up to the bound is read, and one above it is not") {
  constexpr auto most = std::numeric_limits<std::int64_t>::max();
  STATIC_CHECK(TextCursor{"9223372036854775807"}.take_number(most) == most);
  STATIC_CHECK(!TextCursor{"9223372036854775808"}.take_number(most));
  STATIC_CHECK(after("99999999999999999999", [](TextCursor& c) { c.take_number(most); }) == 0);
  STATIC_CHECK(!TextCursor{"x"}.take_number() && !TextCursor{""}.take_number());
  STATIC_CHECK(TextCursor{"0007b"}.take_number(7) == 7);
  STATIC_CHECK(!TextCursor{"8"}.take_number(7));
  STATIC_CHECK(TextCursor{"0"}.take_number(0) == 0);
  STATIC_CHECK(whole_number("0012", 12) == 12 && !whole_number("13", 12) && !whole_number("12b", 12));
  STATIC_CHECK(!whole_number("", 12) && !whole_number("-1", 12) && !whole_number(" 1", 12));
  STATIC_CHECK(TextCursor{"0012b"}.take_capped_number(12) == 12);
  STATIC_CHECK(TextCursor{"13"}.take_capped_number(12) == 13 && TextCursor{"14"}.take_capped_number(12) == 13);
  STATIC_CHECK(TextCursor{"1"}.take_capped_number(0) == 1 && TextCursor{"0"}.take_capped_number(0) == 0);
  STATIC_CHECK(after("99999999999999999999b", [](TextCursor& c) { c.take_capped_number(12); }) == 20);
  STATIC_CHECK(TextCursor{"99999999999999999999"}.take_capped_number(99999999999999999) == 100000000000000000);
  STATIC_CHECK(!TextCursor{"x1"}.take_capped_number(9) && !TextCursor{""}.take_capped_number(9));
  STATIC_CHECK(TextCursor{"¹²⁰A"}.take_raised_number() == 120);
  STATIC_CHECK(after("¹²⁰A", [](TextCursor& c) { c.take_raised_number(); }) == 7);
  STATIC_CHECK(!TextCursor{"¹²⁰A"}.take_raised_number(119));
  STATIC_CHECK(!TextCursor{"12"}.take_raised_number());
  std::mt19937 draw{1501};
  for (int i = 0; i < 20000; ++i) { // against the standard library's reader
    auto const number = static_cast<std::int64_t>(draw()) * (draw() % 2 == 0 ? 1 : 1000000007);
    auto const bound = static_cast<std::int64_t>(draw()) * (draw() % 2 == 0 ? 1 : 1000000007);
    TextCursor cursor{"", 0};
    auto const text = std::to_string(number) + "x";
    cursor = TextCursor{text};
    auto const read = cursor.take_number(bound);
    REQUIRE(read.has_value() == (number <= bound));
    if (read) REQUIRE(*read == std::stoll(text));
    REQUIRE(cursor.at() == (read ? text.size() - 1 : 0));
  }
}

TEST_CASE("an error has the line and the column in characters, in whatever order errors are asked for") {
  std::string const text = "8°: A–K⁸\nzweite Zeile: é\n\n³";
  auto const place = [&](TextCursor& cursor, std::size_t at) {
    auto const error = cursor.error_from(at, Problem::trailing_text);
    return std::pair{error.place->line, error.place->column};
  };
  // the truth, one character after the other
  std::vector<std::pair<std::uint32_t, std::uint32_t>> truth(text.size() + 1);
  std::uint32_t line = 1, column = 1;
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if ((static_cast<unsigned char>(text[i]) & 0xC0U) == 0x80U) continue;
    truth[i] = {line, column};
    starts.push_back(i);
    if (text[i] == '\n')
      ++line, column = 1;
    else
      ++column;
  }
  truth[text.size()] = {line, column};
  starts.push_back(text.size());
  TextCursor in_order{text}, any_order{text};
  for (auto at : starts) CHECK(place(in_order, at) == truth[at]);
  std::mt19937 draw{7};
  for (int i = 0; i < 200; ++i) {
    auto const at = starts[draw() % starts.size()];
    CHECK(place(any_order, at) == truth[at]);
  }
  auto const trailing = in_order.error(Problem::trailing_text, {0, 3});
  CHECK(trailing.found_text() == "8°");
  in_order.go_to(text.size());
  auto const end = in_order.error_here(Problem::unexpected_end);
  CHECK(end.found_text().empty());
}

} // namespace

TEST_CASE("a place and its position in a text are found from one another") {
  std::string const text = "8°: A⁸\nzweite: é\n\n³";
  for (std::size_t at = 0; at <= text.size(); at += at < text.size() ? decode(text, at).bytes : 1U)
    CHECK(position_of(text, place_in(text, at)) == at);
  STATIC_CHECK(place_in("A⁸\nB", 99) == TextPlace{2, 2});
  STATIC_CHECK(position_of("A⁸\nB", {2, 9}) == 6);
  STATIC_CHECK(position_of("A⁸\nB", {1, 9}) == 6);
}

TEST_CASE("an error of a part of a text gets its place in the whole text") {
  std::string_view const text = "pp. 8;\nsigned $4 ?";
  auto const start = text.find('$');
  auto const part = TextCursor{text.substr(start)}.error_from(3, Problem::trailing_text);
  CHECK(error_after(place_in(text, start), part) == error_in(text, {start + 3, text.size()}, Problem::trailing_text));
  auto const in_line_two = TextCursor{text}.error_from(text.find("signed"), Problem::trailing_text);
  CHECK(error_after({5, 30}, in_line_two) == error_at(Problem::trailing_text, TextPlace{6, 1}, "signed $4 ?"));
  CHECK(error_after({5, 30}, error_in_field(Problem::not_stated, "signing")) ==
        error_in_field(Problem::not_stated, "signing"));
}

TEST_CASE("trimming leaves what is not at an end") {
  STATIC_CHECK(trimmed(" A8, B8 ,", " ,") == "A8, B8");
  STATIC_CHECK(trimmed(" , ", " ,").empty());
  STATIC_CHECK(trimmed("", " ,").empty());
  STATIC_CHECK(trimmed("x A8 y", {1, 5}, " ") == TextSpan{2, 4});
}

TEST_CASE("a word is compared with a row of a table, which ends with a zero byte, as with any other text") {
  char const* const rows[]{"", "a", "blank", "blanks", "thirty-two"};
  for (std::string_view const word : {"", "a", "A", "BLANK", "Blanks", "blankss", "blan", "thirty-Two", "thirty"})
    for (auto const* const row : rows) {
      CAPTURE(std::string{word});
      CAPTURE(std::string{row});
      CHECK(equal_in_any_case(word, row) == equal_in_any_case(word, std::string_view{row}));
    }
  CHECK_FALSE(equal_in_any_case(std::string_view{"a\0", 2}, "a"));
}
