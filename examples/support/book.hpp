// SPDX-License-Identifier: MIT
/// The record of a book with its values read: what `describe_book` knows. What is wrong with a value is said by line.
#pragma once

#include <bifolium/bifolium.hpp>
#include <bifolium/book/read_description.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/read_size.hpp>

#include "book_values.hpp"
#include "observed.hpp"
#include "record.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace support {

/// The names of the fields, in the order in which messages list them.
inline constexpr std::string_view book_fields[]{"title",
                                                "author",
                                                "publisher",
                                                "place",
                                                "year",
                                                "format",
                                                "height",
                                                "width",
                                                "type height",
                                                "material",
                                                "chain lines",
                                                "watermark",
                                                "countermark",
                                                "head edge",
                                                "tail edge",
                                                "fore-edge",
                                                "point-hole",
                                                "gatherings of",
                                                "leaves",
                                                "state",
                                                "binding",
                                                "chain spacing",
                                                "year in watermark",
                                                "formula",
                                                "pagination",
                                                "plates",
                                                "signing",
                                                "scheme",
                                                "copies",
                                                "overs",
                                                "ream"};

struct Book {
  std::string title, formula;
  Record record;                               ///< the texts of the fields, as written
  std::optional<bifolium::Extent> extent;      ///< of the field `pagination`
  std::optional<bifolium::Signing> signing;    ///< of the field `signing`
  bifolium::LeafEvidence seen;                 ///< of the leaf
  std::optional<bifolium::millimetres> lowest; ///< of several copies or volumes, of which `seen` has the tallest
  std::optional<bifolium::millimetres> binding, chain_spacing;
  std::optional<int> year_in_watermark;
  /// What may tell of the date.
  [[nodiscard]] bifolium::PeriodSigns signs() const {
    auto all = bifolium::period_signs(seen);
    all.chain_spacing = chain_spacing;
    all.year_in_watermark = year_in_watermark;
    return all;
  }
  std::optional<bifolium::Attested> scheme;
  std::optional<bifolium::Formula> collation;
  std::optional<std::int64_t> copies;
  bifolium::Fraction overs{};
  std::optional<bifolium::ReamCount> ream;
};

/// Whether the text is a number of leaves: 85, 85 leaves.
inline bool is_leaf_count(std::string_view text) {
  bifolium::TextCursor cursor{text};
  if (!cursor.take_number()) return false;
  cursor.take_blanks();
  return cursor.at_end() || cursor.take("leaves") || cursor.take("leaf") || cursor.take("ll.");
}

/// The texts of a record as a description reads them. They live as long as the book.
inline bifolium::FieldTexts texts_of(Book const& book) {
  auto const text = [&](std::string_view name) {
    auto const* field = book.record.look_up(name);
    return field != nullptr ? std::string_view{field->value} : std::string_view{};
  };
  bifolium::FieldTexts texts;
  texts.formula = text("formula"), texts.pagination = text("pagination"), texts.plates = text("plates");
  (is_leaf_count(text("leaves")) ? texts.leaves : texts.leaves_seen) = text("leaves");
  texts.format = text("format"), texts.signing = text("signing"), texts.gatherings = text("gatherings of");
  texts.height = text("height"), texts.width = text("width"), texts.binding = text("binding");
  texts.chain_lines = text("chain lines"), texts.watermark = text("watermark"), texts.material = text("material");
  texts.countermark = text("countermark"), texts.point_hole = text("point-hole");
  texts.head_edge = text("head edge"), texts.tail_edge = text("tail edge"), texts.fore_edge = text("fore-edge");
  texts.year = text("year"), texts.place = text("place");
  return texts;
}

/// Leaves of a gathering of which nobody says how many it has: the rest of the book is described without them.
inline void leaves_of_no_gathering(Book& book, std::vector<RecordError>& errors) {
  auto const* const field = book.record.look_up("leaves");
  if (field == nullptr) return;
  errors.push_back(
      {field->line, field->column,
       "leaves: how many leaves their gathering has is needed too, and was not stated: write it in the field "
       "'gatherings of', or a formula",
       bifolium::identifier(bifolium::Problem::gathering_size_needed)});
  book.seen.leaves = {};
}

/// The lowest of several heights: 17 of 17-19 cm.
inline std::optional<bifolium::millimetres> lowest_height(bifolium::Description const& description) {
  if (!description.height) return std::nullopt;
  auto const size = bifolium::read_size(description.height->text, bifolium::SheetUnit::mm);
  if (!size || !size->tallest) return std::nullopt;
  bool const rounded = size->height->to - size->height->above == 10.0;
  return bifolium::millimetres{rounded ? size->height->to : (size->height->above + size->height->to) / 2};
}

/// Adds the fields that only the description reads, and cannot, to what is wrong with the record.
inline void unread_fields(Book const& book, bifolium::Description const& description,
                          std::vector<RecordError>& errors) {
  for (auto const& one : description.unread) {
    std::string name{identifier(one.field)};
    std::replace(name.begin(), name.end(), '_', ' ');
    auto const* field = book.record.look_up(one.field == bifolium::Field::gatherings ? "gatherings of" : name);
    if (one.rest || field == nullptr) continue;
    bool told = false;
    for (auto const& error : errors) told = told || error.line == field->line;
    if (told) continue;
    errors.push_back(record_error(*field, one.error));
  }
}

/// Reads a record; what is wrong with it goes to `errors`. A field that is wrong has no value in the book.
inline Book read_book(Lines& lines, std::vector<RecordError>& errors) {
  using namespace bifolium;
  auto const record = Record::read(lines, book_fields, errors);
  BookReader read{record, errors};
  Book book;
  book.record = record;
  book.title = read.text("title");
  book.formula = read.text("formula");
  book.seen.height = read.length("height");
  // catalogues count a part of a centimetre as a whole one, and measure a bound book by its binding
  if (auto const size = bifolium::read_size(read.text("height"));
      size && size->height->to - size->height->above == 10.0) {
    book.seen.rounded_up_to = 10_mm;
    if (read.text("binding").empty()) book.seen.of = MeasureOf::either;
  }
  book.seen.width = read.length("width");
  book.seen.type_height = read.length("type height");
  read.word("material", book.seen.material);
  read.word("chain lines", book.seen.chain_lines);
  read.word("watermark", book.seen.watermark);
  read.word("state", book.seen.state);
  read.word("countermark", book.seen.countermark);
  read.word("head edge", book.seen.head);
  read.word("tail edge", book.seen.tail);
  read.word("fore-edge", book.seen.fore_edge);
  read.word("point-hole", book.seen.point_hole);
  if (auto const sizes = read.value("gatherings of", read_gathering_sizes)) {
    book.seen.gathering_leaves = sizes->leaves;
    book.seen.alternating_with = sizes->alternating_with;
  }
  // a number is how many leaves the book has; else it is what leaves of one gathering show
  if (!is_leaf_count(read.text("leaves")))
    book.seen.leaves = read.value("leaves", read_leaves_seen).value_or(EvidenceOfLeaves{});
  // what the description cannot read of it either is told there
  if (auto const extent = read_extent(read.text("pagination"))) book.extent = *extent;
  book.signing = read.value("signing", [](std::string_view text) { return read_signing(text); });
  auto const format = read.value("format", read_format_statement);
  if (auto const date = read.value("year", [](std::string_view text) { return bifolium::read_date(text); }))
    book.seen.year = date->years; // none of n.d., which is an answer too
  book.binding = read.length("binding");
  book.chain_spacing = read.chain_spacing("chain spacing");
  if (auto const year = read.value("year in watermark", read_years)) book.year_in_watermark = year->from;
  book.seen.place = region(read.text("place"));
  book.scheme = read.scheme("scheme");
  book.collation = read.formula("formula");
  auto const stated = format           ? std::optional{format->formats.front()}
                      : book.collation ? book.collation->format()
                                       : std::nullopt;
  if (book.scheme && stated) read.scheme_divides("scheme", *book.scheme, *stated);
  book.copies = read.count("copies");
  book.overs = read.percent("overs");
  book.ream = read.ream("ream");
  std::sort(errors.begin(), errors.end(),
            [](auto const& a, auto const& b) { return a.line != b.line ? a.line < b.line : a.column < b.column; });
  return book;
}

} // namespace support
