// SPDX-License-Identifier: MIT
/// The record of a book with its values read: what `describe_book` knows. What is wrong with a value is said by line.
#pragma once

#include <bifolium/bifolium.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/paper/read_length.hpp>

#include "record.hpp"

#include <algorithm>
#include <cstdint>
#include <initializer_list>
#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace support {

struct Book {
  std::string title, formula;
  std::optional<bifolium::millimetres> height, width;
  std::optional<bifolium::ChainLines> chain_lines;
  bifolium::Region region{bifolium::Region::anywhere};
  std::optional<bifolium::Years> years;
  std::optional<bifolium::Attested> scheme;
  std::optional<bifolium::FormulaCount> leaves;
  std::optional<std::int64_t> copies;
  std::optional<bifolium::ReamCount> ream;
};

/// Reads the fields of a record one by one; each reader gives nothing where the field is missing or wrong.
class BookReader {
  Record const& record_;
  std::vector<RecordError>& errors_;

  void wrong(Field const& field, std::string const& sentence) {
    errors_.push_back({field.line, field.column, field.name + ": " + sentence});
  }
  void wrong(Field const& field, bifolium::Error const& error) {
    errors_.push_back({field.line, field.column + error.column - 1, field.name + ": " + bifolium::sentence_of(error)});
  }

  static std::optional<std::int64_t> whole_number(std::string_view text) {
    if (text.empty() || text.size() > 15) return std::nullopt;
    std::int64_t value = 0;
    for (char c : text) {
      if (c < '0' || c > '9') return std::nullopt;
      value = value * 10 + (c - '0');
    }
    return value;
  }

public:
  BookReader(Record const& record, std::vector<RecordError>& errors) : record_{record}, errors_{errors} {}

  [[nodiscard]] std::string text(std::string_view name) const {
    auto const field = record_.find(name);
    return field ? field->value : "";
  }
  std::optional<bifolium::millimetres> length(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const read = bifolium::read_length(field->value);
    if (read && read->count() > 0) return *read;
    if (read)
      wrong(*field, "'" + field->value + "' should be more than nothing");
    else
      wrong(*field, read.error());
    return std::nullopt;
  }
  std::optional<std::int64_t> number(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    if (auto const value = whole_number(field->value)) return value;
    wrong(*field, "found '" + field->value + "' where a whole number should stand");
    return std::nullopt;
  }
  /// A year, or a range such as 1450-1500.
  std::optional<bifolium::Years> years(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const dash = field->value.find('-');
    auto const from = whole_number(field->value.substr(0, dash));
    auto const to = dash == std::string::npos ? from : whole_number(field->value.substr(dash + 1));
    if (from && to && *from <= *to && *to <= 2100)
      return bifolium::Years{static_cast<int>(*from), static_cast<int>(*to)};
    wrong(*field, "'" + field->value + "' is neither a year nor a range such as 1450-1500");
    return std::nullopt;
  }
  /// One of some words, and what it stands for.
  template <class T>
  std::optional<T> word(std::string_view name, std::initializer_list<std::pair<std::string_view, T>> known) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    std::string sentence = "'" + field->value + "' is none of: ";
    for (auto const& [one, meaning] : known) {
      if (one == field->value) return meaning;
      sentence.append(sentence.ends_with(": ") ? "" : ", ").append(one);
    }
    wrong(*field, sentence);
    return std::nullopt;
  }
  std::optional<bifolium::Attested> scheme(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const found = bifolium::Attested::find(field->value);
    if (!found) wrong(*field, "there is no scheme '" + field->value + "': show_formes --list names them all");
    return found;
  }
  std::optional<bifolium::FormulaCount> formula(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const read = bifolium::count_formula(field->value);
    if (read) return *read;
    wrong(*field, read.error());
    return std::nullopt;
  }
};

/// Reads a record; what is wrong with it goes to `errors`, and then the book is not whole.
inline Book read_book(std::istream& in, std::vector<RecordError>& errors) {
  using namespace bifolium;
  auto const record = Record::read(
      in, {"title", "place", "year", "height", "width", "chain lines", "formula", "scheme", "copies", "ream"}, errors);
  BookReader read{record, errors};
  Book book;
  book.title = read.text("title");
  book.formula = read.text("formula");
  book.height = read.length("height");
  book.width = read.length("width");
  book.chain_lines = read.word<ChainLines>(
      "chain lines", {{"vertical", ChainLines::vertical}, {"horizontal", ChainLines::horizontal}});
  book.region = read.word<Region>("place", {{"Europe", Region::europe},
                                            {"Italy", Region::italy},
                                            {"Britain", Region::britain},
                                            {"France", Region::france},
                                            {"Germany", Region::germany},
                                            {"Netherlands", Region::netherlands},
                                            {"USA", Region::usa}})
                    .value_or(Region::anywhere);
  book.years = read.years("year");
  book.scheme = read.scheme("scheme");
  book.leaves = read.formula("formula");
  book.copies = read.number("copies");
  book.ream = read.word<ReamCount>("ream", {{"480", reams::of_480}, {"500", reams::of_500}, {"516", reams::of_516}});
  std::stable_sort(errors.begin(), errors.end(), [](auto const& a, auto const& b) { return a.line < b.line; });
  return book;
}

} // namespace support
