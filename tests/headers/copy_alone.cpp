// SPDX-License-Identifier: MIT
// copy.hpp brings what the functions that it declares are called with: a formula is read and its ideal copy made. (constructed)
#include <bifolium/copy.hpp>

std::int64_t lacking(char const* formula, char const* leaves) {
  auto const read = bifolium::read_formula(formula);
  if (!read) return -1;
  bifolium::IdealCopy const book{*read};
  auto const present = bifolium::read_leaves_present(book, leaves);
  return present ? bifolium::check_copy(book, present->spans).leaves_wanting : -1;
}
