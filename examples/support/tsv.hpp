// SPDX-License-Identifier: MIT
/// Tables of rows, as the filters read and write them: tab-separated, a header line that names the columns, UTF-8, lines
/// ended by LF or CRLF, blank lines passed over. Cells are taken as they stand; a tab or line end cannot be in one.
#pragma once

#include <cstddef>
#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace support {

using Cells = std::vector<std::string>;

/// A line's cells.
inline Cells split(std::string_view line) {
  Cells cells{""};
  for (char c : line)
    if (c == '\t')
      cells.emplace_back();
    else
      cells.back() += c;
  return cells;
}
/// The next line that is not blank, without its end; nothing at the end of the input.
inline std::optional<std::string> next_line(std::istream& in) {
  for (std::string line; std::getline(in, line);) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    if (line.find_first_not_of(" \t") != line.npos) return line;
  }
  return std::nullopt;
}
/// The header line of a table, without the mark of byte order that some programs put before it; nothing at the end of the input.
inline std::optional<std::string> header_line(std::istream& in) {
  auto line = next_line(in);
  if (line && line->starts_with("\xEF\xBB\xBF")) line->erase(0, 3);
  return line;
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
  explicit Header(std::string_view line) {
    names_ = split(line);
    for (auto& name : names_) name = trimmed(name);
  }
  [[nodiscard]] std::size_t size() const { return names_.size(); }
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
};

/// The cells of a row on exactly as many columns as the header has: filled up with empty ones, or cut.
inline std::string fitted(Cells const& cells, std::size_t width) {
  std::string line;
  for (std::size_t i = 0; i < width; ++i) {
    if (i > 0) line += '\t';
    if (i < cells.size()) line += cells[i];
  }
  return line;
}
/// What is wrong with a row that has more cells than the header; empty when nothing is.
inline std::string too_wide(Cells const& cells, std::size_t width) {
  if (cells.size() <= width) return "";
  return "the row has " + std::to_string(cells.size()) + " cells and the header " + std::to_string(width);
}

} // namespace support
