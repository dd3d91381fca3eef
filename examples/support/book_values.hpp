// SPDX-License-Identifier: MIT
/// The values of the fields of a record, each read as its kind: a length, a number, a word, a formula. A book has the values
/// that could be read, and what is wrong with the others is said by line, so that one slip does not hide the next.
#pragma once

#include <bifolium/bifolium.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/record/read_signature_note.hpp>
#include <bifolium/record/read_size.hpp>

#include "decimal.hpp"
#include "reams.hpp"
#include "record.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace support {

/// An error of the library in the value of a field, with the place in the record; that of the field if it is not about a
/// place in its text.
inline RecordError record_error(Field const& field, bifolium::Error const& error) {
  auto const within = error.place.value_or(bifolium::TextPlace{}).column - 1;
  return {field.line, field.column + within, field.name + ": " + bifolium::sentence_of(error),
          bifolium::identifier(error.problem)};
}

/// Reads the fields of a record one by one; a field that is missing or wrong has no value.
class BookReader {
  Record const& record_;
  std::vector<RecordError>& errors_;

  void wrong(Field const& field, std::string const& sentence, bifolium::Problem problem) {
    errors_.push_back({field.line, field.column, field.name + ": " + sentence, identifier(problem)});
  }
  void wrong(Field const& field, bifolium::Error const& error) { errors_.push_back(record_error(field, error)); }

public:
  BookReader(Record const& record, std::vector<RecordError>& errors) : record_{record}, errors_{errors} {}

  [[nodiscard]] std::string text(std::string_view name) const {
    auto const field = record_.find(name);
    return field ? field->value : "";
  }
  std::optional<bifolium::millimetres> length(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto read = bifolium::read_length(field->value);
    // a size as catalogues write it: 19 x 12 cm (8vo). The height of it is taken, of several the tallest; whole centimetres
    // are counted up
    if (auto const size = bifolium::read_size(field->value); !read && size && size->unread.empty()) {
      auto const height = size->tallest.value_or(*size->height);
      bool const rounded = height.to - height.above == 10.0;
      auto const middle = (height.above + height.to) / 2;
      read = bifolium::Expected{bifolium::millimetres{rounded ? height.to : middle}};
    }
    if (read && bifolium::is_measure(*read)) return *read;
    if (read)
      wrong(*field,
            "'" + field->value + "' measures no leaf or book: more than zero and less than a kilometre is expected",
            bifolium::Problem::impossible_measure);
    else
      wrong(*field, read.error());
    return std::nullopt;
  }
  /// The distance of the chain lines. In paper of moulds they are 12 to 60 mm apart (common practice, no source), so that
  /// another number is of another unit.
  std::optional<bifolium::millimetres> chain_spacing(std::string_view name) {
    auto const spacing = length(name);
    if (!spacing || (spacing->count() >= 12 && spacing->count() <= 60)) return spacing;
    auto const field = record_.find(name);
    wrong(*field,
          "'" + field->value +
              "' is not a distance of chain lines, which are 12 to 60 mm apart: check the unit and the digits",
          bifolium::Problem::unlikely_measure);
    return std::nullopt;
  }
  std::optional<std::int64_t> count(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const read = decimal(field->value);
    if (read.value && read.value->is_whole() && *read.value >= bifolium::Fraction{}) return read.value->floor();
    wrong(*field, "found '" + field->value + "' where a whole number is expected", bifolium::Problem::not_a_number);
    return std::nullopt;
  }
  /// One of some words, and what it means.
  template <class T> void word(std::string_view name, T& to) {
    auto const field = record_.find(name);
    if (!field) return;
    if (auto const value = bifolium::read_word<T>(field->value))
      to = *value;
    else
      wrong(*field, value.error());
  }
  /// What one of the library's readers makes of the field.
  template <class Read>
  auto value(std::string_view name, Read read)
      -> std::optional<std::remove_cvref_t<decltype(*read(std::string_view{}))>> {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const found = read(std::string_view{field->value});
    if (found) return *found;
    wrong(*field, found.error());
    return std::nullopt;
  }
  /// A percentage, with decimals or without; zero where it is missing.
  bifolium::Fraction percent(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return {};
    auto const percentage = decimal(field->value);
    if (percentage.value && *percentage.value >= bifolium::Fraction{} && *percentage.value <= bifolium::Fraction{100})
      return *percentage.value;
    wrong(*field, "found '" + field->value + "' where a percentage from 0 to 100 is expected",
          bifolium::Problem::too_many_overs);
    return {};
  }
  std::optional<bifolium::ReamCount> ream(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const found = ream_of(field->value);
    if (!found) wrong(*field, "'" + field->value + "' is none of: " + reams_known, bifolium::Problem::unknown_word);
    return found;
  }
  std::optional<bifolium::Attested> scheme(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const found = bifolium::find_scheme(field->value);
    if (!found)
      wrong(*field, bifolium::no_scheme_message(field->value) + "; show_formes --list names them all",
            bifolium::Problem::unknown_word);
    return found;
  }
  /// Tells that a scheme makes another number of leaves of the sheet than the format says.
  void scheme_divides(std::string_view name, bifolium::Attested scheme, bifolium::Format format) {
    auto const of_scheme = make_up(scheme).leaves_to_sheet;
    auto const of_format = format.leaves_to_sheet();
    if (!of_format || *of_format == of_scheme || format.kind() != bifolium::Format::Kind::leaves) return;
    wrong(*record_.find(name),
          "folds the sheet into " + bifolium::number_of(of_scheme, "leaf", "leaves") +
              ", but the format is stated as " + std::string{format.symbol().view()},
          bifolium::Problem::formats_differ);
  }
  std::optional<bifolium::Formula> formula(std::string_view name) {
    auto const field = record_.find(name);
    if (!field) return std::nullopt;
    auto const read = bifolium::read_signature_note(field->value); // with its first words or without
    if (read) return read->formula;
    wrong(*field, read.error());
    return std::nullopt;
  }
};

} // namespace support
