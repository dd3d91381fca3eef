// SPDX-License-Identifier: MIT
/// What is wrong with a row: sentences for people, each after the name of its column, and the identifiers of the problems
/// for programs. Two problems are no `Problem` of the library, as they are of tables: `row_too_wide` and `line_too_long`.
#pragma once

#include <bifolium/core/message.hpp>

#include "tsv.hpp"

#include <string>
#include <string_view>

namespace support {

/// A sentence with its identifier for programs after it: `line 2, column 14: no piece has the name 'off' [no_such_piece]`.
inline std::string with_identifier(bifolium::Error const& error) {
  return bifolium::message(error).append(" [").append(bifolium::identifier(error.problem)).append("]");
}

/// Sentences and identifiers, both parted by semicolons.
class Wrong {
  std::string words_{}, problems_{};

public:
  /// A sentence about a column; about the row where the column is empty.
  void add(std::string_view column, std::string_view sentence, std::string_view identifier) {
    words_.append(words_.empty() ? "" : "; ").append(column).append(column.empty() ? "" : ": ").append(sentence);
    problems_.append(problems_.empty() ? "" : ";").append(identifier);
  }
  void add(std::string_view column, std::string_view sentence, bifolium::Problem problem) {
    add(column, sentence, bifolium::identifier(problem));
  }
  void add(std::string_view column, bifolium::Error const& error) {
    add(column, bifolium::sentence_of(error), error.problem);
  }
  /// What is wrong with the line on which `lines` is, before its cells are read.
  void add_line(Lines const& lines, Cells const& cells, std::size_t width) {
    if (lines.too_long())
      add("", lines.length_told(), "line_too_long");
    else if (cells.size() > width)
      add("", too_wide(cells, width), "row_too_wide");
  }
  [[nodiscard]] bool empty() const { return words_.empty(); }
  /// For a cell: no tabs or line ends, nor what a terminal would obey.
  [[nodiscard]] std::string words() const { return cell_of(words_); }
  [[nodiscard]] std::string const& problems() const { return problems_; }
};

} // namespace support
