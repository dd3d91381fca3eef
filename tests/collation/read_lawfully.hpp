// SPDX-License-Identifier: MIT
/// Reads a text of which every law of formula_laws.hpp must hold.
#pragma once

#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <string>

inline bifolium::Expected<bifolium::Formula> read_lawfully(std::string const& text) {
  CHECK(broken_law(text, bifolium::dialects::strict) == "");
  return bifolium::read_formula(text);
}
