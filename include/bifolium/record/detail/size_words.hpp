// SPDX-License-Identifier: MIT
/// The words of statements of size: units, and labels that say what was measured. The same two numbers are the leaf, the
/// binding, the type page or a box, and a label may stand before them or after them, so the words are apart from the
/// reader of the numbers.
///
/// Rules: DCRMR 6.24 (cm, mm, bound to, folded to). The labels of dealers and of other languages: common practice, no
/// source.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/paper/sheet_size.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is measured.
enum class SizeOf : std::uint8_t { book, leaf, width, binding, folded, other };

/// Takes the unit of a length, with its full stop.
inline std::optional<SheetUnit> take_size_unit(TextCursor& cursor) {
  struct Row {
    char const* word;
    SheetUnit unit;
  };
  auto const here = cursor.at();
  cursor.take_blanks();
  for (auto const& row :
       {Row{"cm", SheetUnit::cm}, Row{"centimetres", SheetUnit::cm}, Row{"centimeters", SheetUnit::cm},
        Row{"mm", SheetUnit::mm}, Row{"millimetres", SheetUnit::mm}, Row{"millimeters", SheetUnit::mm},
        Row{"inches", SheetUnit::inch}, Row{"inch", SheetUnit::inch}, Row{"pouces", SheetUnit::pouce},
        Row{"pouce", SheetUnit::pouce}, Row{"in", SheetUnit::inch}}) {
    // in-8 is a format, and the `in` of `in binding` is not the unit inches
    bool const other_word = std::string_view{row.word} == "in" && cursor.peek(2) != '.' &&
                            (cursor.peek(2) == '-' || cursor.starts_with("in binding") || cursor.starts_with("in box"));
    if (other_word || !cursor.take_word(row.word)) continue;
    static_cast<void>(cursor.take('.'));
    return row.unit;
  }
  if (cursor.take("″") || cursor.take('"')) return SheetUnit::inch;
  cursor.go_to(here);
  return std::nullopt;
}

/// Takes words before a measure, such as `bound to` and `page size:`.
inline SizeOf take_size_label(TextCursor& cursor) {
  struct Row {
    char const* words;
    SizeOf of;
  };
  auto const end = [&](SizeOf of) {
    cursor.take_blanks();
    if (cursor.take_word("size") || cursor.take_word("height")) cursor.take_blanks();
    static_cast<void>(cursor.take(':'));
    cursor.take_blanks();
    return of;
  };
  for (auto const& row :
       {Row{"bound to", SizeOf::binding}, Row{"in binding", SizeOf::binding}, Row{"binding", SizeOf::binding},
        Row{"folded to", SizeOf::folded}, Row{"text block", SizeOf::leaf},    Row{"leaves", SizeOf::leaf},
        Row{"leaf", SizeOf::leaf},        Row{"page", SizeOf::leaf},          Row{"height", SizeOf::book},
        Row{"Height", SizeOf::book},      Row{"width", SizeOf::width},        Row{"Width", SizeOf::width},
        Row{"type page", SizeOf::other},  Row{"type-page", SizeOf::other},    Row{"type area", SizeOf::other},
        Row{"text area", SizeOf::other},  Row{"printed area", SizeOf::other}, Row{"in box", SizeOf::other},
        Row{"in case", SizeOf::other},    Row{"in slipcase", SizeOf::other},  Row{"in container", SizeOf::other}})
    if (cursor.take_word(row.words)) return end(row.of);
  for (auto const& row :
       {Row{"h.", SizeOf::book}, Row{"H.", SizeOf::book}, Row{"w.", SizeOf::width}, Row{"W.", SizeOf::width}})
    if (cursor.take(row.words)) return end(row.of);
  return SizeOf::book;
}

/// Takes the label of one of two numbers, `(h)` or `(w)`, or of both after them, `(w x h)`. Returns its first letter in
/// small, or 0.
inline char take_side_label(TextCursor& cursor) {
  auto const here = cursor.at();
  cursor.take_blanks();
  if (!cursor.take('(')) return cursor.go_to(here), '\0';
  auto const first = small_letter(cursor.peek());
  cursor.skip(cursor.at_end() ? 0 : 1);
  auto const other = first == 'h' ? 'w' : 'h';
  cursor.take_blanks();
  if (cursor.take('x') || cursor.take("×")) {
    cursor.take_blanks();
    if (small_letter(cursor.peek()) == other) cursor.skip(1);
  }
  if ((first != 'h' && first != 'w') || !cursor.take(')')) return cursor.go_to(here), '\0';
  return first;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
