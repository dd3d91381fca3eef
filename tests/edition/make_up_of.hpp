// SPDX-License-Identifier: MIT
/// What one sheet of an attested scheme makes, by the scheme's identifier.
#pragma once

#include <bifolium/edition.hpp>
#include <bifolium/fold.hpp>

inline bifolium::SheetMakeUp of(char const* id) {
  return bifolium::make_up(*bifolium::fold(bifolium::Attested::find(id)->scheme()));
}
