// SPDX-License-Identifier: MIT
/// What the fuzzers have in common: a property that does not hold ends the program, and an error must point into the text.
#pragma once

#include <bifolium/core/message.hpp>
#include <bifolium/core/utf8.hpp>

#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace fuzz {

inline void must(bool holds, char const* what, std::string const& text) {
  if (holds) return;
  std::fprintf(stderr, "\n%s:\n%s\n", what, text.c_str());
  std::abort();
}

/// The line and the column of an error are in the text, or just after its end, and it has a sentence.
inline void must_point_into(std::string_view text, bifolium::Error const& error) {
  std::string const shown{text};
  must(error.problem != bifolium::Problem::none, "an error without a problem", shown);
  must(bifolium::sentence(error.problem) != "an unknown problem", "an error without a sentence", shown);
  must(error.place && error.place->line >= 1 && error.place->column >= 1, "a line or column before the first", shown);
  std::size_t start = 0;
  for (std::uint32_t line = 1; line < error.place->line; ++line) {
    auto const end = text.find('\n', start);
    must(end != text.npos, "a line after the last", shown);
    start = end + 1;
  }
  auto const line = text.substr(start, text.find('\n', start) - start);
  must(error.place->column <= bifolium::column_of(line, line.size()), "a column after the end of its line", shown);
  static_cast<void>(bifolium::message(error));
}

} // namespace fuzz
