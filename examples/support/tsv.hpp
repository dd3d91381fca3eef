// SPDX-License-Identifier: MIT
/// Tables of rows, as the filters read and write them: tab-separated, a header line that names the columns, UTF-8. Cells are
/// taken as they are; a tab or line end cannot be in one. A line of empty cells is a row. An empty line is passed over, but in a
/// table of one column it is a row with an empty cell.
#pragma once

#include <bifolium/core/number_of.hpp>

#include "input.hpp"
#include "name_meant.hpp"
#include "shown.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace support {

using Cells = std::vector<std::string>;

/// More columns than a table may have.
inline constexpr std::size_t most_columns = 4096;

/// A line's cells, `most` of them; with the last one is all that follows it.
inline Cells split(std::string_view line, std::size_t most = most_columns + 1) {
  Cells cells;
  while (cells.size() + 1 < most) {
    auto const tab = line.find('\t');
    cells.emplace_back(line.substr(0, tab));
    if (tab == line.npos) return cells;
    line.remove_prefix(tab + 1);
  }
  cells.emplace_back(line);
  return cells;
}
/// A header line as it is told on the command line, for a piece of a table that has none: `height_mm,width_mm,year`. Where
/// tabs part the names, commas belong to them.
inline std::string header_told(std::string names) {
  if (names.find('\t') == names.npos)
    for (auto& c : names) c = c == ',' ? '\t' : c;
  return names;
}
inline std::string trimmed(std::string_view text) {
  auto const first = text.find_first_not_of(' ');
  return first == text.npos ? "" : std::string{text.substr(first, text.find_last_not_of(' ') - first + 1)};
}

/// The header of a table: where each column is.
class Header {
  Cells names_;

public:
  /// Throws a Failure where there are too many columns to keep their rows in memory.
  explicit Header(std::string_view line) : names_{split(line)} {
    if (names_.size() > most_columns)
      throw Failure{"the header has more than " + std::to_string(most_columns) + " columns"};
    for (auto& name : names_) name = trimmed(name);
  }
  [[nodiscard]] std::size_t size() const { return names_.size(); }
  [[nodiscard]] Cells const& names() const { return names_; }
  [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const {
    for (std::size_t i = 0; i < names_.size(); ++i)
      if (names_[i] == name) return i;
    return std::nullopt;
  }
  /// The cell of a column, trimmed; empty where the column or the cell is missing.
  [[nodiscard]] std::string cell(Cells const& row, std::string_view name) const {
    auto const at = column(name);
    return at && *at < row.size() ? trimmed(row[*at]) : "";
  }
  /// The cells of a row; all that is over the header's columns is in one more cell.
  [[nodiscard]] Cells cells(std::string_view line) const { return split(line, size() + 1); }
};

/// The header line of a table. Throws a Failure where there is none.
inline std::string header_line(Lines& lines) {
  while (lines.next()) {
    if (lines.too_long()) throw Failure{lines.length_told()};
    if (!lines.text().empty()) return lines.text();
  }
  throw Failure{"the input is empty: there is no header line"};
}
/// Whether the line is a row, and not an empty line between rows.
inline bool is_row(Lines const& lines, Header const& header) {
  return !lines.text().empty() || lines.too_long() || header.size() == 1;
}
/// Goes to the next row of a table; false at the end.
inline bool next_row(Lines& lines, Header const& header) {
  while (lines.next())
    if (is_row(lines, header)) return true;
  return false;
}

/// The cells of a row on exactly as many columns as the header has: filled up with empty ones, or cut.
inline std::string fitted(Cells const& cells, std::size_t width) {
  std::string line;
  for (std::size_t i = 0; i < width; ++i) {
    if (i > 0) line += '\t';
    if (i < cells.size()) line += cells[i];
  }
  return line;
}
/// What is wrong with a row that has more cells than the header; empty when it fits.
inline std::string too_wide(Cells const& cells, std::size_t width) {
  if (cells.size() <= width) return "";
  auto const more = static_cast<std::size_t>(std::count(cells.back().begin(), cells.back().end(), '\t'));
  return "the row has " + bifolium::number_of(static_cast<std::int64_t>(cells.size() + more), "cell", "cells") +
         " and the header " + std::to_string(width);
}

/// The header line of the columns that a program adds, `names` with tabs between. A name that the table has already gets a
/// number, `format_2`, and standard error says so: programs that choose columns by name find each of them.
inline std::string added_columns(Header const& header, std::string_view names) {
  std::string line;
  Cells taken = header.names();
  for (auto const& name : split(names)) {
    auto free = name;
    for (int number = 2; std::find(taken.begin(), taken.end(), free) != taken.end(); ++number)
      free = name + "_" + std::to_string(number);
    if (free != name)
      tell("the table has a column '" + name + "' already: the one that is added is called '" + free + "'");
    line.append(line.empty() ? "" : "\t").append(free);
    taken.push_back(free);
  }
  return line;
}

/// The character that may part the cells of a table that has no tabs; none where the header looks like one name.
inline std::string other_separator(Header const& header) {
  if (header.size() != 1) return "";
  for (auto const* separator : {",", ";", "|"})
    if (header.names()[0].find(separator) != std::string::npos) return separator;
  return "";
}

/// Says on standard error what a user may not have meant: a column whose name is close to one that is read, a name that
/// appears twice. Throws a Failure for a table without any column that is read: every row would have the same answer.
inline void tell_columns(Header const& header, Cells const& known) {
  bool any = false;
  auto const& names = header.names();
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (std::find(known.begin(), known.end(), names[i]) != known.end()) {
      any = true;
      if (header.column(names[i]) != i) tell("the column '" + names[i] + "' appears twice: the first is read");
    } else if (auto const meant = name_meant(names[i], known); meant && !header.column(*meant)) {
      tell("the column '" + names[i] + "' is not read; is it '" + *meant + "'?");
    }
  }
  if (any) return;
  std::string list;
  for (auto const& name : known) list.append(list.empty() ? "" : ", ").append(name);
  auto const separator = other_separator(header);
  if (!separator.empty()) tell("the header line has '" + separator + "' and no tab: columns are separated by tabs");
  throw Failure{"no column of the table is read; those that can be are: " + list};
}

/// A cell of words about a row: no tabs or line ends in it, nor what a terminal would obey.
inline std::string cell_of(std::string_view words) { return shown(words); }

} // namespace support
