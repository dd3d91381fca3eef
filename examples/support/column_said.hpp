// SPDX-License-Identifier: MIT
/// An error in the text of one cell, for an answer in one line: the column and the sentence. A cell has one line, so only the
/// column is said; an error that is not about a place in the text, such as a text that is too long, has the sentence alone.
#pragma once

#include <bifolium/core/message.hpp>

#include <string>

namespace support {

/// Returns `column 14: no piece has the name 'off'`.
inline std::string column_and_sentence(bifolium::Error const& error) {
  auto const sentence = bifolium::sentence_of(error);
  return error.place ? "column " + std::to_string(error.place->column) + ": " + sentence : sentence;
}

} // namespace support
