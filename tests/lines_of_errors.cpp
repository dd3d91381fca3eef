// SPDX-License-Identifier: MIT
// Errors and doubts about a text of several lines: every reader tells the line, and the column in that line.
#include <bifolium/bifolium.hpp>
#include <bifolium/book.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record.hpp>

#include "check.hpp"
#include "data.hpp"
#include "marked_text.hpp"
#include "true_book.hpp"

#include <set>
#include <string>

using namespace bifolium;

namespace {

/// What a reader tells of a text.
struct Told : std::vector<Error> {
  bool refused{}; ///< true for an error; otherwise they are doubts
};
template <class T> Told told_by(Expected<T> const& read) {
  if (!read) return {{read.error()}, true};
  if constexpr (requires { read->warnings(); })
    return {{read->warnings().begin(), read->warnings().end()}};
  else
    return {};
}

/// A text in which `@` marks the place of what is wrong, and a reader of it. The mark is not a part of the text.
struct Marked {
  char const* reader;
  char const* text;
  Told (*read)(std::string_view);
};

IdealCopy const& some_book() {
  static Formula const formula = *read_formula("8°: A-C8 D4");
  static IdealCopy const book{formula};
  return book;
}

Told doubts_of_leaves(std::string_view text) {
  static Formula const formula = *read_formula("8°: A8 B8; A8 C8");
  static IdealCopy const book{formula};
  auto const read = read_leaves_present(book, text);
  return told_by(read);
}

Marked const marked_texts[]{
    {"read_formula", "8°: A8\nB8\n@C(", [](auto text) { return told_by(read_formula(text)); }},
    {"read_formula, a doubt", "8°: π⁴\nA8\n@B3", [](auto text) { return told_by(read_formula(text)); }},
    {"count_formula", "8°: A8\nB8\n@C(", [](auto text) { return told_by(count_formula(text)); }},
    {"read_signature_note", "Signatures:\nA8 B8\n@C(", [](auto text) { return told_by(read_signature_note(text)); }},
    {"read_reference", "\n@Q1", [](auto text) { return told_by(read_reference(some_book(), text)); }},
    {"read_leaves_present", "A1-8\nB1,\n@Q9",
     [](auto text) { return told_by(read_leaves_present(some_book(), text)); }},
    {"read_leaves_present, a doubt", "C1\n@A1", doubts_of_leaves},
    {"read_joints", "A1.8 conjugate\n@A2 torn", [](auto text) { return told_by(read_joints(some_book(), text)); }},
    {"read_paper_seen, a leaf", "A1 absent\nA2 absent\n@Q1 absent",
     [](auto text) { return told_by(read_paper_seen(some_book(), text)); }},
    {"read_paper_seen, a word", "A1 absent\nA2 @blue",
     [](auto text) { return told_by(read_paper_seen(some_book(), text)); }},
    {"read_signing", "[$4\n@?]", [](auto text) { return told_by(read_signing(text)); }},
    {"read_pagination", "pp. [8]\n@x-", [](auto text) { return told_by(read_pagination(text)); }},
    {"read_extent", "[8],\n1@z", [](auto text) { return told_by(read_extent(text)); }},
    {"read_physical_description", "[8],\n1@z", [](auto text) { return told_by(read_physical_description(text)); }},
    {"read_size", "\n@tall", [](auto text) { return told_by(read_size(text)); }},
    {"read_date", "printed in\nMDCCXXV [@1752]", [](auto text) { return told_by(read_date(text)); }},
    {"read_place", "printed in\n@Bennington", [](auto text) { return told_by(read_place(text)); }},
    {"read_length", "187\n@furlongs", [](auto text) { return told_by(read_length(text)); }},
    {"read_fraction", "\n@x", [](auto text) { return told_by(read_fraction(text)); }},
    {"read_format", "8°@\ndoormat", [](auto text) { return told_by(read_format(text)); }},
    {"read_format_statement", " \n@small\ndoormat", [](auto text) { return told_by(read_format_statement(text)); }},
    {"read_gathering_sizes", "8;\n@0", [](auto text) { return told_by(read_gathering_sizes(text)); }},
    {"read_leaves_seen", "1 gutter;\n2 @blue", [](auto text) { return told_by(read_leaves_seen(text)); }},
    {"read_seen_leaves", "gathering of 8\n1 absent\n2 @blue",
     [](auto text) { return told_by(read_seen_leaves(text)); }},
    {"read_formes", "outer\n@blue", [](auto text) { return told_by(read_formes(text)); }},
    {"read_scheme", "scheme own 8°\nsheet S rows 2 @blue", [](auto text) { return told_by(read_scheme(text)); }},
    {"read_signature", "²\n@?", [](auto text) { return told_by(read_signature(text)); }},
    {"read_word", "@blue", [](auto text) { return told_by(read_word<Material>(text)); }},
};

/// Returns true if a place is in the text, or just after its end.
bool is_in(std::string_view text, std::optional<TextPlace> place) {
  if (!place) return false;
  std::size_t start = 0;
  for (std::uint32_t line = 1; line < place->line; ++line) {
    auto const end = text.find('\n', start);
    if (end == text.npos) return false;
    start = end + 1;
  }
  auto const line = text.substr(start, text.find('\n', start) - start);
  return place->column >= 1 && place->column <= column_of(line, line.size());
}
/// What is wrong with what a description tells of a text that is in each of its fields: the first place or part that is not in
/// this text.
std::string not_in_field(std::string_view text) {
  FieldTexts const fields{text, text, text, text, text, text, text, text,
                          text, text, text, text, text, text, text, text};
  auto const book = read_description(fields, {});
  for (auto const& one : book.unread) {
    if (!is_in(text, one.error.place)) return message(one.error);
    bool const same = text.find('&') == text.npos; // references are told as the characters they mean
    if (same && text.substr((std::min)(one.from, text.size()), one.text.size()) != one.text)
      return one.text + " is not at byte " + std::to_string(one.from);
  }
  for (auto const& one : book.doubts)
    if (!is_in(text, one.doubt.place)) return message(one.doubt);
  return {};
}
/// Returns true if what an error quotes stands in the text at the place that it tells.
bool is_quoted(std::string_view text, Error const& error) {
  if (!is_in(text, error.place)) return false;
  return text.substr(position_of(text, *error.place)).starts_with(error.found_text());
}
/// The cells of the tables in tests/data, each once.
std::set<std::string> const& texts_of_tables() {
  static std::set<std::string> const all = [] {
    std::set<std::string> cells;
    for (char const* file :
         {"bmc_formulas.tsv", "bmc_formulas_ocr.tsv", "catalogue_examples.tsv", "catalogue_heights.tsv",
          "collation_examples.tsv", "contradicting_descriptions.tsv", "formula_variants.tsv", "formulas_as_written.tsv",
          "height_scales.tsv", "later_extents.tsv", "later_formulas.tsv", "leaf_evidence.tsv", "paper_sizes.tsv",
          "places.tsv", "sheet_sizes.tsv", "tcp_extents.tsv", "tcp_formulas.tsv"})
      for (auto const& row : data::rows_of_any_width(file))
        for (auto const& cell : row) cells.insert(cell);
    return cells;
  }();
  return all;
}

} // namespace

TEST_CASE("an error about a text of several lines has the line, and the column in that line") {
  for (auto const& one : marked_texts) {
    MarkedText const marked{one.text};
    CAPTURE(std::string{one.reader});
    auto const told = one.read(marked.text);
    REQUIRE_FALSE(told.empty());
    INFO(told.back());
    CHECK(told.back().place->line == marked.line);
    CHECK(told.back().place->column == marked.column);
  }
}

TEST_CASE("the error of an empty text, and of a blank one, says what was expected") {
  for (auto const& one : marked_texts)
    for (char const* text : {"", " ", "\n"})
      for (auto const& error : one.read(text)) {
        CAPTURE(std::string{one.reader});
        // a scheme and a place have no better word for it
        bool const of_one_kind =
            std::string_view{one.reader} == "read_place" || std::string_view{one.reader} == "read_scheme";
        if (!of_one_kind) CHECK(error.problem != Problem::unexpected_end);
        CHECK(message(error).find("''") == std::string::npos);
      }
}

TEST_CASE("a byte that is no character is what a reader says of a text that it refuses, with its place") {
  int refused = 0;
  for (auto const& one : marked_texts) {
    CAPTURE(std::string{one.reader});
    MarkedText const marked{one.text};
    int by_this = 0;
    // a lone byte, one that only goes on, a character cut short, an overlong one, half of a pair
    for (std::string const bad : {"\xFF", "\x80", "\xE2\x82", "\xC3", "\xC0\xAF", "\xED\xA0\x80"})
      for (std::size_t at = 0; at <= marked.text.size(); ++at) {
        if (at < marked.text.size() && continues_character(marked.text[at])) continue;
        auto text = std::string{marked.text};
        text.insert(at, bad);
        CAPTURE(text);
        auto const told = one.read(text);
        if (!told.refused) continue; // the byte is in what it need not read, and told as such
        ++by_this;
        auto const place = place_in(text, at);
        REQUIRE(told.size() == 1);
        CHECK(told[0].problem == Problem::not_utf8);
        CHECK(told[0].place->line == place.line);
        CHECK(told[0].place->column == place.column);
      }
    CHECK((by_this > 0 || std::string_view{one.reader} == "read_date")); // whose years stay readable
    refused += by_this;
  }
  CHECK(refused > 1000);
  Limits few; // a limit is told first: what is too long is not looked through
  few.text_bytes = 3;
  CHECK(read_formula("8°: A8 \xFF", {}, few).error().problem == Problem::text_too_long);
  CHECK(read_formula("8°: A\xFF⁸ B⁸").error().place->column == 6);
  CHECK(read_date("&nosuch; \xFF").error().problem == Problem::not_utf8);
}

TEST_CASE("what a reader says is one line of UTF-8, whatever bytes the text has") {
  auto const sound = [](std::string const& words) { return words == one_line(words); };
  for (auto const& one : marked_texts)
    for (char const* bad : {"\xFF", "\xE2\x82", "\x01", "\x1B[2J", "\x7F", "\xC2\x85", "\t", "\r\n"}) {
      CAPTURE(std::string{one.reader});
      std::string text{one.text};
      text.replace(text.find('@'), 1, bad);
      for (auto const& error : one.read(text)) CHECK_MESSAGE(sound(message(error)), message(error));
      for (auto const& error : one.read(bad)) CHECK_MESSAGE(sound(message(error)), message(error));
      text = "A8 " + std::string{bad} + " 8vo 19 cm 1725, 12 p.";
      for (auto const field : {0, 1, 2, 3, 4, 5, 6, 7, 8}) {
        std::string_view const given{text.data() + (field % 3 == 0 ? 0 : 3)}, other = field % 2 == 0 ? given : "8vo";
        auto const described = examine(read_description({.formula = field == 0 ? given : "8°: A-C8 D",
                                                         .pagination = field == 1 ? given : "40 p.",
                                                         .leaves = field == 2 ? given : "",
                                                         .plates = field == 3 ? given : other,
                                                         .format = field == 4 ? given : other,
                                                         .signing = field == 5 ? given : "",
                                                         .gatherings = field == 6 ? given : "",
                                                         .height = field == 7 ? given : "",
                                                         .year = given,
                                                         .place = given}));
        for (auto const& finding : described.findings) CHECK_MESSAGE(sound(finding.says), finding.says);
        for (auto const& repair : described.repairs) CHECK_MESSAGE(sound(repair.says), repair.says);
      }
    }
}

// What a reader tells of a text cut anywhere lies in what is left of it. A reader that looks beyond the end of its text is seen
// by the checked standard library, or in memory of just its size.
TEST_CASE("every reader reads every beginning and every end of a text, and points into it") {
  auto const part = static_cast<std::size_t>((std::max)(1, 12 / truth::rounds(1))); // one in so many
  std::size_t read = 0, number = 0;
  auto const read_all = [&](std::string_view cut) {
    std::vector<char> const exact{cut.begin(), cut.end()};
    std::string_view const text{exact.data(), exact.size()};
    CAPTURE(std::string{text});
    for (auto const& one : marked_texts)
      for (auto const& error : one.read(text)) CHECK_MESSAGE(is_in(text, error.place), one.reader << message(error));
    CHECK(not_in_field(text) == "");
    auto const book = read_description({.formula = text, .pagination = text, .leaves = text, .height = text}, {});
    auto const audit = examine(book);
    CHECK(audit.left_unread() == !book.unread.empty());
    if (audit.agrees()) CHECK(book.is_complete());
    ++read;
  };
  for (auto const& cell : texts_of_tables()) {
    std::string_view const text{cell};
    for (std::size_t at = 0; at <= text.size(); ++at) {
      if (++number % part != 0) continue;
      read_all(text.substr(0, at));
      read_all(text.substr(at));
    }
  }
  for (auto const text :
       {"in four", "four", "in six", "in fours and", "in twenty-", "in twenty-four", "8s in", "1/2 in"})
    for (std::string_view rest{text}; !rest.empty(); rest.remove_suffix(1)) read_all(rest);
  CHECK(read > 10000);
}

// A parenthesis that names a leaf which is not there, after any gathering of any formula: it is left out and told, and every
// other place is that of the whole text. The signs of change have two or three bytes and are one character.
TEST_CASE("places in a formula are those of the text, whichever parenthesis of it was left out") {
  int left_out = 0, doubts = 0, number = 0;
  for (auto const& cell : texts_of_tables()) {
    if (!count_formula(cell)) continue;
    for (std::size_t at = 1; at <= cell.size(); ++at) {
      bool const ends = at == cell.size() || cell[at] == ' ' || cell[at] == ',' || cell[at] == ';';
      bool const after_count =
          is_digit(cell[at - 1]) || superscript_digit(decode(cell, at - 3 < at ? at - 3 : 0).value);
      if (!ends || !after_count) continue;
      for (std::string const broken : {"(−A99)", "(±A99)", "(−A99,\n±B98)", "(A99+χ¹)"}) {
        if (++number % 3 != 0) continue;
        auto text = cell;
        text.insert(at, broken);
        text += ", und so weiter. Vide etiam indicem";
        CAPTURE(text);
        auto const book = read_description({.formula = text}, {});
        bool told = false;
        for (auto const& one : book.unread) {
          told = told || (one.rest && one.text == broken && one.from == at);
          CHECK(text.substr((std::min)(one.from, text.size()), one.text.size()) == one.text);
          CHECK_MESSAGE(is_in(text, one.error.place), message(one.error));
        }
        if (!told) continue;
        ++left_out;
        std::string blanks; // what was left out is read as blanks, and may be quoted so
        for (std::size_t i = 0; i < broken.size(); i += decode(broken, i).bytes)
          blanks += broken[i] == '\n' ? '\n' : ' ';
        auto const as_read = text.substr(0, at) + blanks + text.substr(at + broken.size());
        for (auto const& one : book.doubts)
          CHECK_MESSAGE((is_quoted(text, one.doubt) || is_quoted(as_read, one.doubt)), message(one.doubt));
        doubts += static_cast<int>(book.doubts.size());
      }
    }
  }
  MESSAGE(left_out << " parentheses left out, with " << doubts << " doubts beside them");
  CHECK(left_out > 1000);
}

TEST_CASE("places after a parenthesis that was left out") { // counted by hand
  auto const book = [](char const* formula) { return read_description({.formula = formula}, {}); };
  auto const two = book("8°: A8(−A9) B8(−B9) C8");
  REQUIRE(two.unread.size() == 2);
  CHECK((two.unread[0].error.place->column == 9 && two.unread[0].from == 7 && two.unread[0].text == "(−A9)"));
  CHECK((two.unread[1].error.place->column == 17 && two.unread[1].from == 17 && two.unread[1].text == "(−B9)"));
  auto const words = book("8°: A8(±A10) B4 ; vide");
  REQUIRE(words.unread.size() == 2);
  CHECK((words.unread[1].text == "vide" && words.unread[1].error.place->column == 19));
  CHECK(book("8°: A8(−A9) B8, lacking Vv8,lacking Vv8").unread.back().error.place->column <= 39);
}
