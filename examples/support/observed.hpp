// SPDX-License-Identifier: MIT
/// What was seen of a leaf, from the cells of a row or the fields of a record. Dates and places are read as catalogues
/// write them; a place that is not known is told and otherwise taken as none.
#pragma once

#include <bifolium/core/message.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record/read_size.hpp>

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
  return bifolium::error_at(bifolium::Problem::not_years, bifolium::TextPlace{}, text);
}
/// The region of a place; anywhere, where it is not known or not named.
inline bifolium::Region region(std::string_view place) {
  auto const read = bifolium::read_place(place);
  return read ? read->region() : bifolium::Region::anywhere;
}

/// Reads the columns of a leaf one by one; `cell(name)` gives the text of a column, empty when there is none.
template <class Cell> class LeafReader {
  using millimetres = bifolium::millimetres;
  Cell cell_;
  Wrong &wrong_, &doubts_;

  /// A cell that is not a number in the unit of its column, height_mm. The column height takes any unit.
  void say_not_in(std::string_view unit, std::string_view name, std::string const& text) {
    auto const any_unit = std::string{name.substr(0, name.rfind('_'))};
    wrong_.add(name,
               "found '" + text + "' where a number of " + std::string{unit} + " is expected; a column '" + any_unit +
                   "' takes 201 mm, 20 cm or 7 3/4 in",
               bifolium::Problem::not_a_fraction);
  }

public:
  LeafReader(Cell cell, Wrong& wrong, Wrong& doubts) : cell_{cell}, wrong_{wrong}, doubts_{doubts} {}

  void measure(std::string_view name, bifolium::OptionalLength& to) {
    auto const text = cell_(name);
    if (text.empty()) return;
    if (auto const number = decimal(text); number.value)
      to = millimetres{number.value->as_double()};
    else
      say_not_in("millimetres", name, text);
  }
  /// A measure as catalogues have it, in centimetres. True if it is whole: such are rounded up, others measured.
  bool centimetres(std::string_view name, std::string_view in_mm, bifolium::OptionalLength& to) {
    auto const text = cell_(name);
    if (text.empty()) return false;
    auto const number = decimal(text);
    if (!number.value) {
      say_not_in("centimetres", name, text);
      return false;
    }
    if (to) {
      wrong_.add(name, "the measure is given as " + std::string{in_mm} + " too", bifolium::Problem::trailing_text);
      return false;
    }
    to = millimetres{number.value->as_double() * 10};
    return number.value->is_whole();
  }
  [[nodiscard]] std::string text_of(std::string_view name) { return cell_(name); }
  /// A measure with its unit, `text`, unless another column has it. True if it is in whole centimetres.
  bool with_unit(std::string_view name, std::string const& text, bifolium::OptionalLength& to) {
    if (text.empty() || to) return false;
    auto const length = bifolium::read_length(text);
    if (!length) {
      wrong_.add(name, length.error());
      return false;
    }
    to = *length;
    auto const size = bifolium::read_size(text);
    return size && size->height->to - size->height->above == 10.0;
  }
  template <class T> void word(std::string_view name, T& to) {
    auto const text = cell_(name);
    if (text.empty()) return;
    if (auto const value = bifolium::read_word<T>(text))
      to = *value;
    else
      wrong_.add(name, value.error());
  }
  /// What one of the library's readers makes of the column.
  template <class Read, class Keep> void text(std::string_view name, Read read, Keep keep) {
    auto const text = cell_(name);
    if (text.empty()) return;
    if (auto const value = read(text))
      keep(*value);
    else
      wrong_.add(name, value.error());
  }
  void place(std::string_view name, bifolium::Region& to) {
    auto const text = cell_(name);
    if (text.empty()) return;
    auto const place = bifolium::read_place(text);
    if (!place) return doubts_.add(name, place.error());
    to = place->region();
    for (auto const& doubt : place->warnings()) doubts_.add(name, doubt);
  }
};

/// Height and width, in millimetres, with their unit, or as catalogues have them: then of the leaf or of the binding, unless
/// it is told.
template <class Cell> void read_size(LeafReader<Cell>& read, bifolium::LeafEvidence& seen) {
  using namespace bifolium;
  auto const height_told = read.text_of("height"), width_told = read.text_of("width");
  read.measure("height_mm", seen.height);
  read.measure("width_mm", seen.width);
  bool in_mm = seen.height || seen.width;
  bool height = read.centimetres("height_cm", "height_mm", seen.height);
  bool width = read.centimetres("width_cm", "width_mm", seen.width);
  bool const height_is_told = !seen.height && !height_told.empty(), width_is_told = !seen.width && !width_told.empty();
  if (height_is_told) height = read.with_unit("height", height_told, seen.height);
  if (width_is_told) width = read.with_unit("width", width_told, seen.width);
  in_mm = in_mm || (height_is_told && seen.height && !height) || (width_is_told && seen.width && !width);
  if (height || width) seen.of = in_mm ? MeasureOf::leaf : MeasureOf::either;
  if (height && (width || !seen.width)) seen.rounded_up_to = 10_mm;
  if (width && !seen.height) seen.rounded_up_to = 10_mm;
  // of two sides of which one was measured, the other is taken in the middle of its centimetre
  if (height && !width && seen.width && *seen.height > 5_mm) *seen.height = *seen.height - 5_mm;
  if (width && !height && seen.height && *seen.width > 5_mm) *seen.width = *seen.width - 5_mm;
  read.word("of", seen.of);
}

/// Reads all that is there of a leaf. What is wrong goes to `wrong`, each with the name of its column; what is only doubtful, to
/// `doubts`.
template <class Cell> bifolium::LeafEvidence read_seen(Cell cell, Wrong& wrong, Wrong& doubts) {
  using namespace bifolium;
  LeafEvidence seen;
  LeafReader<Cell> read{cell, wrong, doubts};
  read_size(read, seen);
  auto const type_told = read.text_of("type_height");
  read.measure("type_height_mm", seen.type_height);
  read.with_unit("type_height", type_told, seen.type_height);
  read.word("material", seen.material);
  read.word("chain_lines", seen.chain_lines);
  read.word("watermark", seen.watermark);
  read.word("state", seen.state);
  read.word("countermark", seen.countermark);
  read.word("head_edge", seen.head);
  read.word("tail_edge", seen.tail);
  read.word("fore_edge", seen.fore_edge);
  read.word("point_hole", seen.point_hole);
  read.text("gathering_leaves", read_gathering_sizes, [&](GatheringSizes const& sizes) {
    seen.gathering_leaves = sizes.leaves;
    seen.alternating_with = sizes.alternating_with;
  });
  read.text("leaves", read_leaves_seen, [&](EvidenceOfLeaves const& leaves) { seen.leaves = leaves; });
  read.text("year", read_date, [&](StatedDate const& date) {
    seen.year = date.years;
    for (auto const& doubt : date.warnings()) doubts.add("year", doubt);
  });
  read.place("place", seen.place);
  return seen;
}

} // namespace support
