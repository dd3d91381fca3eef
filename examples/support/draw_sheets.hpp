// SPDX-License-Identifier: MIT
/// A drawing for each sheet of a scheme: FILE, or FILE-1.svg, FILE-2.svg where there are several.
#pragma once

#include <bifolium/fold/scheme.hpp>

#include "program.hpp"

#include <string>

namespace support {

/// `drawing(sheet)` gives the text of each, the sheets counted from 0.
template <class Drawing> void draw_sheets(bifolium::Scheme const& scheme, std::string const& file, Drawing drawing) {
  auto const stem = file.ends_with(".svg") ? file.substr(0, file.size() - 4) : file;
  for (int sheet = 0; sheet < scheme.sheets(); ++sheet)
    write_file(scheme.sheets() > 1 ? stem + "-" + std::to_string(sheet + 1) + ".svg" : file, drawing(sheet));
}

} // namespace support
