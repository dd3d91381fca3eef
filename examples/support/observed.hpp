// SPDX-License-Identifier: MIT
/// What was seen of a leaf, from the cells of a row or the fields of a record. Dates and places are read as catalogues
/// write them; a place that is not known is told and otherwise taken as none.
#pragma once

#include <bifolium/core/message.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/paper/read_place.hpp>

#include "decimal.hpp"
#include "wrong.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace support {

/// The years of a date that must name some. error: not_years.
inline bifolium::Expected<bifolium::YearRange> read_years(std::string_view text) {
  auto const date = bifolium::read_date(text);
  if (!date) return date.error();
  if (date->years) return *date->years;
  return bifolium::error_at(bifolium::Problem::not_years, 1, 1, text.data(), text.size());
}
/// The region of a place; anywhere, where it is not known or not named.
inline bifolium::Region region(std::string_view place) {
  auto const read = bifolium::read_place(place);
  return read ? read->region() : bifolium::Region::anywhere;
}

/// The words for a T, as a sentence lists them: laid, wove, vellum or unknown.
template <class T> std::string one_of() {
  auto const& words = bifolium::words_of<T>();
  std::string list;
  for (auto const& one : words)
    list.append(&one == std::begin(words) ? "" : &one + 1 == std::end(words) ? " or " : ", ").append(one.word);
  return list;
}

/// Reads all that is there; `cell(name)` gives the text of a column, empty when there is none. What is wrong goes to
/// `wrong`, each with the name of its column; what is only doubtful, to `doubts`.
template <class Cell> bifolium::LeafEvidence read_seen(Cell cell, Wrong& wrong, Wrong& doubts) {
  using namespace bifolium;
  LeafEvidence seen;
  auto const say = [&](std::string_view name, std::string const& text, std::string_view what, Problem problem) {
    wrong.add(name, "found '" + text + "' where " + std::string{what} + " is expected", problem);
  };
  auto const measure = [&](std::string_view name, std::optional<millimetres>& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const number = decimal(text); number.value)
      to = millimetres{number.value->as_double()};
    else
      say(name, text, "a number of millimetres", Problem::not_a_fraction);
  };
  // Catalogues give whole centimetres, rounded up, of the leaf or of the binding; with decimals it is a measurement.
  bool catalogued = false;
  auto const centimetres_of = [&](std::string_view name, std::string_view in_mm, std::optional<millimetres>& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    auto const number = decimal(text);
    if (!number.value) return say(name, text, "a number of centimetres", Problem::not_a_fraction);
    if (to) return wrong.add(name, "the measure is given as " + std::string{in_mm} + " too", Problem::trailing_text);
    to = millimetres{number.value->as_double() * 10};
    if (number.value->is_whole()) seen.rounded_up_to = 10_mm;
    catalogued = true;
  };
  auto const word = [&]<class T>(std::string_view name, T& to) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = read_word<T>(text))
      to = *value;
    else
      say(name, text, one_of<T>(), Problem::unknown_word);
  };
  measure("height_mm", seen.height);
  measure("width_mm", seen.width);
  centimetres_of("height_cm", "height_mm", seen.height);
  centimetres_of("width_cm", "width_mm", seen.width);
  if (catalogued) seen.of = MeasureOf::either;
  word("of", seen.of);
  measure("type_height_mm", seen.type_height);
  word("material", seen.material);
  word("chain_lines", seen.chain_lines);
  word("watermark", seen.watermark);
  word("state", seen.state);
  word("countermark", seen.countermark);
  word("head_edge", seen.head);
  word("tail_edge", seen.tail);
  word("fore_edge", seen.fore_edge);
  word("point_hole", seen.point_hole);
  auto const text_of = [&](std::string_view name, auto read, auto keep) {
    auto const text = cell(name);
    if (text.empty()) return;
    if (auto const value = read(text))
      keep(*value);
    else
      wrong.add(name, value.error());
  };
  text_of("gathering_leaves", read_gathering_sizes, [&](GatheringSizes const& sizes) {
    seen.gathering_leaves = sizes.leaves;
    seen.alternating_with = sizes.alternating_with;
  });
  text_of("leaves", read_leaves_seen, [&](EvidenceOfLeaves const& leaves) { seen.leaves = leaves; });
  text_of("year", read_date, [&](StatedDate const& date) {
    seen.year = date.years;
    for (auto const& doubt : date.warnings()) doubts.add("year", doubt);
  });
  if (auto const text = cell("place"); !text.empty()) {
    auto const place = read_place(text);
    if (place)
      seen.place = place->region();
    else
      doubts.add("place", place.error());
  }
  return seen;
}

} // namespace support
