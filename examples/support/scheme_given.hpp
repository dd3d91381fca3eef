// SPDX-License-Identifier: MIT
/// The scheme that a program is asked for on its command line: a name, or `-` for a text on standard input.
#pragma once

#include <bifolium/fold/scheme_names.hpp>

#include "input.hpp"

#include <optional>
#include <string>

namespace support {

/// The text of the scheme in the language of folding. None where no scheme has the name, which is then said on standard
/// error, with one that may be meant.
inline std::optional<std::string> scheme_given(std::string const& name) {
  if (name == "-") {
    Input input;
    return whole_text(input);
  }
  if (auto const found = bifolium::find_scheme(name)) return std::string{found->text()};
  tell(bifolium::no_scheme_message(name) + "; show_formes --list names them all");
  return std::nullopt;
}

} // namespace support
