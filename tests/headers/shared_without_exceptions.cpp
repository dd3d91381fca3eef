// SPDX-License-Identifier: MIT
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>

/// The conjugate of a leaf of eight, through functions that the other half of the program uses too.
int leaf_of_eight(int number) {
  auto const sheet = bifolium::Sheet<bifolium::millimetres>{bifolium::millimetres{1}, bifolium::millimetres{2}};
  return sheet.halved() == sheet.halved() ? bifolium::Gathering<>{8}.leaf(number).conjugate()->number() : 0;
}
