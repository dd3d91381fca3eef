// SPDX-License-Identifier: MIT
/// What a description says of its leaves, as evidence of the format: sizes as they were rounded, chain lines, marks, edges,
/// paper, the gatherings of the formula, date and place. The format statement is left out, so that the two can be compared.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/slips/formula_shape.hpp>
#include <bifolium/book/detail/slips/main_sequence.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/evidence/seen.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A catalogue's whole centimetres, counted up; of the binding as often as of the leaf, unless the binding is stated
/// apart.
inline bool is_rounded_up(std::optional<Stated<SizeRange>> const& size) {
  return size && size->value.to - size->value.above > 9.5 && size->value.to - size->value.above < 10.5;
}
/// A size that was measured to the millimetre or two.
inline bool is_measured(std::optional<Stated<SizeRange>> const& size) {
  return size && size->value.to - size->value.above <= 2;
}
inline void take_size(Description const& book, LeafEvidence& seen) {
  auto const middle = [](Stated<SizeRange> const& size) { return millimetres{(size.value.above + size.value.to) / 2}; };
  if (is_measured(book.height) || is_measured(book.width)) {
    if (is_measured(book.height)) seen.height = middle(*book.height);
    if (is_measured(book.width)) seen.width = middle(*book.width);
    return;
  }
  if (!is_rounded_up(book.height)) return;
  seen.rounded_up_to = millimetres{10.0};
  seen.of = book.binding ? MeasureOf::leaf : MeasureOf::either;
  seen.height = millimetres{book.height->value.to};
  if (is_rounded_up(book.width)) seen.width = millimetres{book.width->value.to};
}

} // namespace detail

/// The evidence of a description, for `observe` and `infer_format`. A height in whole centimetres is taken as
/// catalogues give it. The leaves of most gatherings are those stated, else those of a formula of more than two
/// gatherings.
[[nodiscard]] inline LeafEvidence evidence_of(Description const& book) {
  LeafEvidence seen;
  detail::take_size(book, seen);
  if (book.chain_lines) seen.chain_lines = book.chain_lines->value;
  if (book.watermark) seen.watermark = book.watermark->value;
  if (book.countermark) seen.countermark = book.countermark->value;
  if (book.head_edge) seen.head = book.head_edge->value;
  if (book.tail_edge) seen.tail = book.tail_edge->value;
  if (book.fore_edge) seen.fore_edge = book.fore_edge->value;
  if (book.point_hole) seen.point_hole = book.point_hole->value;
  if (book.leaves_seen) seen.leaves = book.leaves_seen->value;
  if (book.material) seen.material = book.material->value;
  if (book.gatherings)
    seen.gathering_leaves = book.gatherings->value, seen.alternating_with = book.gatherings_alternating_with;
  else if (book.formula && book.formula->value.gatherings() > 2)
    seen.gathering_leaves = detail::main_leaves(detail::shape_of(book.formula->value));
  if (book.year) seen.year = {book.year->value.from, book.year->value.to};
  if (book.place) seen.place = book.place->value;
  return seen;
}

} // namespace v0
} // namespace bifolium
