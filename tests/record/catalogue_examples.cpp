// SPDX-License-Identifier: MIT
// The worked examples of the rules for cataloguing, rule by rule, each through the reader of its field. tests/data/
// catalogue_examples.tsv has rule, source, field, text and reading; what a reader leaves unread is a part of the reading, so
// that no text is dropped without a word.
#include <bifolium/core/read_date.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record.hpp>

#include "check.hpp"
#include "data.hpp"
#include "typed.hpp"

#include <algorithm>
#include <map>
#include <string>

using namespace bifolium;

namespace {

/// The parts of a reading, separated as in the file.
class Reading {
  std::string text_{};

public:
  void part(std::string const& words) { text_.append(text_.empty() ? "" : "; ").append(words); }
  void left(std::string_view whole, std::vector<TextSpan> const& spans) {
    for (auto const& span : spans) part("left '" + std::string{span.of(whole)} + "'");
  }
  void doubts(std::vector<Error> const& all) {
    for (auto const& doubt : all) part("doubt " + std::string{identifier(doubt.problem)});
  }
  [[nodiscard]] std::string const& text() const { return text_; }
};
std::string failed(Error const& error) {
  return "error " + std::string{identifier(error.problem)} + " at " + std::to_string(error.place->column);
}
std::string figure(double number) {
  auto text = std::to_string(number);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}
std::string years(YearRange range) {
  return range.is_one_year() ? std::to_string(range.from) : std::to_string(range.from) + '-' + std::to_string(range.to);
}
std::string date_reading(std::string const& text) {
  auto const read = read_date(text);
  if (!read) return failed(read.error());
  auto words = read->years ? years(*read->years) : std::string{"no year"};
  for (auto const& [is, name] : {std::pair{read->supplied, " supplied"}, std::pair{read->corrected, " corrected"},
                                 std::pair{read->probable, " probable"}, std::pair{read->approximate, " approximate"},
                                 std::pair{read->double_dated, " double dated"}, std::pair{read->open, " open"}})
    if (is) words += name;
  Reading reading;
  reading.part(words);
  if (read->printed) reading.part("printed " + years(*read->printed));
  reading.doubts(read->warnings());
  reading.left(text, read->unread);
  return reading.text();
}
void pages_reading(Reading& reading, Extent const& read) {
  reading.part(std::to_string(read.pages()) + " pages");
  auto const total = read.pagination.total();
  if (total.low != total.stated) reading.part("at least " + std::to_string(total.low));
  for (auto const& plates : read.plates) {
    auto words = "plates " + std::to_string(plates.leaves());
    if (plates.folded) words += " folded " + std::to_string(*plates.folded);
    if (plates.approximate) words += " approximately";
    reading.part(words);
  }
  if (read.volumes)
    reading.part("volumes " + std::to_string(*read.volumes) +
                 (read.bound_in ? " in " + std::to_string(*read.bound_in) : std::string{}));
  if (read.sheets) reading.part("sheets " + std::to_string(*read.sheets));
  if (read.pagination.parts() > 1) reading.part("parts " + std::to_string(read.pagination.parts()));
  for (auto const& [is, name] :
       {std::pair{read.pagination.approximate, "approximately"}, std::pair{read.various_pagings, "various"},
        std::pair{read.pagination.unpaged, "unpaged"}, std::pair{read.pagination.incomplete, "incomplete"}})
    if (is) reading.part(name);
  reading.doubts(read.warnings());
}
std::string extent_reading(std::string const& text) {
  auto const read = read_extent(text);
  if (!read) return failed(read.error());
  Reading reading;
  pages_reading(reading, *read);
  reading.left(text, read->unread);
  return reading.text();
}
std::string format_words(std::vector<Format> const& formats) {
  std::string words;
  for (auto const format : formats) words.append(words.empty() ? "" : " and ").append(format.name().view());
  return words;
}
void size_parts(Reading& reading, SizeStatement const& read) {
  auto const range = [](SizeRange of) { return figure(of.above) + '-' + figure(of.to); };
  if (read.height) reading.part("height " + range(*read.height));
  if (read.width) reading.part("width " + range(*read.width));
  if (read.tallest) reading.part("tallest " + range(*read.tallest));
  if (read.binding) reading.part("binding " + range(*read.binding));
  if (read.folded_height) reading.part("folded " + range(*read.folded_height) + " x " + range(*read.folded_width));
  if (read.of_leaf) reading.part("of the leaf");
  if (!read.formats.empty()) reading.part(format_words(read.formats));
}
std::string size_reading(std::string const& text) {
  auto const read = read_size(text);
  if (!read) return failed(read.error());
  Reading reading;
  size_parts(reading, *read);
  reading.left(text, read->unread);
  return reading.text();
}
std::string format_reading(std::string const& text) {
  auto const read = read_format_statement(text);
  if (!read) return failed(read.error());
  Reading reading;
  reading.part(format_words(read->formats));
  if (!read->paper.empty()) reading.part("paper " + read->paper);
  if (read->gatherings_of) reading.part("gatherings of " + std::to_string(*read->gatherings_of));
  if (read->probable) reading.part("probable");
  reading.left(text, read->unread);
  return reading.text();
}
std::string signatures_reading(std::string const& text) {
  auto const read = read_signature_note(text, dialects::stc);
  if (!read) return failed(read.error());
  Reading reading;
  reading.part(std::to_string(read->formula.leaves()) + " leaves");
  if (read->formula.format()) reading.part(std::string{read->formula.format()->name().view()});
  if (read->script) reading.part("script " + *read->script);
  if (read->pages) reading.part(std::to_string(read->pages->pages()) + " pages");
  if (read->signing) reading.part(write_signing(*read->signing));
  for (auto const& note : read->formula.notes()) reading.part("note '" + note + "'");
  reading.doubts(read->formula.warnings());
  if (!read->formula.tail().empty()) reading.part("left '" + std::string{read->formula.tail()} + "'");
  return reading.text();
}
std::string signing_reading(std::string const& text) {
  auto const read = read_signing(text);
  return read ? write_signing(*read) : failed(read.error());
}
std::string place_reading(std::string const& text) {
  auto const read = read_place(text);
  if (!read) return failed(read.error());
  std::string names;
  for (auto const& place : read->places()) names.append(names.empty() ? "" : " or ").append(place.name);
  Reading reading;
  reading.part(read->not_known ? "not known" : names.empty() ? "no place" : names);
  for (auto const& named : read->named) // what is named beside the place that is meant
    for (auto const& place : named.places)
      if (std::find(read->places().begin(), read->places().end(), place) == read->places().end())
        reading.part("also " + std::string{place.name});
  reading.doubts(read->warnings());
  reading.left(text, read->unread);
  return reading.text();
}
std::string description_reading(std::string const& text) {
  auto const read = read_physical_description(text);
  if (!read) return failed(read.error());
  Reading reading;
  if (read->extent) {
    pages_reading(reading, *read->extent);
    reading.left(text, read->extent->unread);
  }
  if (!read->details.empty()) reading.part("details '" + std::string{read->details.of(text)} + "'");
  if (read->size) {
    size_parts(reading, *read->size);
    reading.left(text, read->size->unread);
  }
  if (!read->accompanying.empty()) reading.part("with '" + std::string{read->accompanying.of(text)} + "'");
  return reading.text();
}

struct Field {
  char const* name;
  std::string (*read)(std::string const& text);
  int least; // how many examples the file has at least
};
constexpr Field fields[]{
    {"date", date_reading, 75},     {"extent", extent_reading, 50},         {"size", size_reading, 18},
    {"format", format_reading, 35}, {"signatures", signatures_reading, 35}, {"signing", signing_reading, 4},
    {"place", place_reading, 25},   {"description", description_reading, 5}};
} // namespace

TEST_CASE("every worked example of the rules is read as the rules mean it") {
  std::map<std::string, int> count;
  for (auto const& row : data::rows("catalogue_examples.tsv", 5)) {
    INFO(row[0] << ' ' << row[1] << ' ' << row[2] << ": " << row[3]);
    Field const* field = nullptr;
    for (auto const& one : fields)
      if (row[2] == one.name) field = &one;
    REQUIRE(field != nullptr);
    ++count[row[2]];
    CHECK(field->read(row[3]) == row[4]);
  }
  for (auto const& field : fields) CHECK_MESSAGE(count[field.name] >= field.least, field.name);
}

TEST_CASE("other blanks and dashes in a field change nothing that is read") { // common practice, no source
  std::vector<std::pair<Field, std::string>> all;
  for (auto const& row : data::rows("catalogue_examples.tsv", 5))
    for (auto const& field : fields)
      if (row[2] == field.name) all.emplace_back(field, row[3]);
  for (auto const& row : data::rows("later_extents.tsv", 5)) all.emplace_back(fields[1], row[3]);
  for (auto const& row : data::rows("tcp_extents.tsv", 3)) all.emplace_back(fields[1], row[2]);
  struct Way {
    char const *from, *to;
    int at_least; // texts that it changes
  };
  for (auto const& way : {Way{" ", "  ", 600}, Way{" ", "\t", 600}, Way{" ", "\u00a0", 600}, Way{" ", "\u2009", 600},
                          Way{"-", "\u2010", 80}, Way{"-", "\u2011", 80}, Way{"-", "\u2013", 80}}) {
    int changed = 0;
    for (auto const& [field, text] : all) {
      auto const other = with(text, way.from, way.to);
      if (other == text) continue;
      ++changed;
      CAPTURE(std::string{field.name});
      CAPTURE(other);
      auto const read = field.read(text);
      if (!read.starts_with("error")) CHECK(with(field.read(other), way.to, way.from) == read);
    }
    CHECK(changed >= way.at_least);
  }
}

TEST_CASE("character references in a field change nothing that is read") { // HTML Living Standard, 13.5
  for (auto const& row : data::rows("catalogue_examples.tsv", 5))
    for (auto const& field : fields) {
      if (row[2] != field.name) continue;
      auto const decimal = [](std::uint32_t c) { return "&#" + std::to_string(c) + ";"; };
      auto const hex = [](std::uint32_t c) {
        char text[16]{};
        std::snprintf(text, sizeof text, "&#x%X;", c);
        return std::string{text};
      };
      auto const read = field.read(row[3]);
      if (read.starts_with("error")) continue;
      for (auto const& other : {with_references(
                                    row[3], [](char32_t) { return true; }, decimal),
                                with_references(
                                    row[3], [](char32_t c) { return c == ' ' || c > 0x7F; }, hex)}) {
        CAPTURE(std::string{field.name});
        CAPTURE(other);
        auto const there = field.read(other);
        TextOfCharacters const there_in_characters{there};
        CHECK(std::string{there_in_characters.text()} == read);
      }
      auto const broken = field.read(row[3] + " &#8312 &sup8;");
      bool const in_words =
          read.find("; left ") != std::string::npos; // words after a formula are handed on as they are
      CHECK_MESSAGE(
          (broken.starts_with("error bad_character_reference at ") || (in_words && broken.ends_with("&#8312 &sup8;'"))),
          broken);
    }
}

TEST_CASE("blanks within the brackets of an extent, and its words in capitals, change nothing that is read") {
  std::vector<std::string> all; // common practice, no source
  for (auto const& row : data::rows("catalogue_examples.tsv", 5))
    if (row[2] == "extent") all.push_back(row[3]);
  for (auto const& row : data::rows("later_extents.tsv", 5)) all.push_back(row[3]);
  for (auto const& row : data::rows("tcp_extents.tsv", 3)) all.push_back(row[2]);
  for (auto const& text : all) {
    auto const other = with(with(text, "[", "[ "), "]", " ]");
    CAPTURE(other);
    auto const read = extent_reading(text);
    if (!read.starts_with("error")) CHECK(with(with(extent_reading(other), "[ ", "["), " ]", "]") == read);
  }
  for (auto const& [text, capitals] :
       {std::pair{"18 cm", "18 CM"}, std::pair{"99 mm.", "99 Mm."}, std::pair{"Height 20 cm", "HEIGHT 20 CM"},
        std::pair{"12 cm bound to 20 cm", "12 Cm Bound To 20 Cm"}})
    CHECK(size_reading(text) == size_reading(capitals));
  for (auto const& [text, capitals] :
       {std::pair{"18th century", "18TH CENTURY"}, std::pair{"1490s", "1490S"}, std::pair{"17uu", "17UU"}})
    CHECK(date_reading(text) == date_reading(capitals));
}
