// SPDX-License-Identifier: MIT
/// Writes a correction of the stated number of leaves as an edit of its text.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/slips/count_findings.hpp>
#include <bifolium/book/detail/slips/leaves_slips.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Gives a repair the text of the stated number of leaves after an edit, or as it is if the variant has none. Returns
/// false if the number does not stand in the text in arabic digits.
inline bool write_leaves_edit(Stated<std::int64_t> const& stated, LeavesVariant const& variant, Repair& repair) {
  repair.leaves_text = stated.text;
  if (variant.count == 0) return true;
  auto const figure = std::to_string(stated.value);
  auto const at = stated.text.find(figure);
  if (at == stated.text.npos) return false;
  TextEdit const edit{{at, at + figure.size()}, std::to_string(variant.leaves)};
  repair.leaves_text = edited(stated.text, {edit});
  repair.edits.push_back(edit_of(Field::leaves, variant.kind, stated, edit));
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
