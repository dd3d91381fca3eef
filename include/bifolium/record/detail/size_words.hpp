// SPDX-License-Identifier: MIT
/// The words of statements of size: units, and labels that say what was measured. The same two numbers are the leaf, the
/// binding, the type page or a box, and a label may stand before them or after them, so the words are apart from the
/// reader of the numbers.
///
/// Rules: DCRMR 6.24 (cm, mm, bound to, folded to). The labels of dealers and of other languages: common practice, no
/// source.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/paper/length_words.hpp>
#include <bifolium/paper/sheet_size.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is measured.
enum class SizeOf : std::uint8_t { book, leaf, width, binding, folded, other };

/// Takes `in` for inches. in-8 and in 8° are formats, and `in binding`, `in slipcase` say where the book is.
constexpr bool take_in_for_inches(TextCursor& cursor) {
  auto look = cursor;
  if (!look.take_word_in_any_case("in") || is_dash(look.character().value)) return false;
  if (look.peek() != '.' && look.take_blanks()) {
    auto const word = look.take_letters();
    bool const of_size = word.empty() || word == "x" || word == "X" || word == "by" || word == "and" || word == "or" ||
                         word == "high" || word == "tall" || word == "wide";
    if (!of_size) return false;
  }
  return cursor.take_in_any_case("in");
}

/// Takes the unit of a length, with its full stop. A number in lignes alone is no size.
constexpr std::optional<SheetUnit> take_size_unit(TextCursor& cursor) {
  auto look = cursor;
  look.take_blanks();
  auto in = look;
  bool const inches = in.take_word_in_any_case("in");
  if (inches && !take_in_for_inches(look)) return std::nullopt;
  auto const unit = inches ? std::optional{WrittenUnit::inch} : take_length_word(look);
  if (!unit || *unit == WrittenUnit::ligne) return std::nullopt;
  if (inches) static_cast<void>(look.take('.'));
  cursor = look;
  return *unit == WrittenUnit::mm     ? SheetUnit::mm
         : *unit == WrittenUnit::cm   ? SheetUnit::cm
         : *unit == WrittenUnit::inch ? SheetUnit::inch
                                      : SheetUnit::pouce;
}

/// Takes words that say what is measured, such as `bound to` and `page size:`. No value if there are none.
constexpr std::optional<SizeOf> take_size_label(TextCursor& cursor) {
  struct Row {
    char const* words;
    SizeOf of;
  };
  for (auto const& [words, of] : {Row{"bound to", SizeOf::binding},
                                  Row{"in binding", SizeOf::binding},
                                  Row{"binding", SizeOf::binding},
                                  Row{"bound", SizeOf::binding},
                                  Row{"covers", SizeOf::binding},
                                  Row{"cover", SizeOf::binding},
                                  Row{"boards", SizeOf::binding},
                                  Row{"Einband", SizeOf::binding},
                                  Row{"reliure", SizeOf::binding},
                                  Row{"legatura", SizeOf::binding},
                                  Row{"folded to", SizeOf::folded},
                                  Row{"fold. to", SizeOf::folded},
                                  Row{"text block", SizeOf::leaf},
                                  Row{"textblock", SizeOf::leaf},
                                  Row{"leaves", SizeOf::leaf},
                                  Row{"leaf", SizeOf::leaf},
                                  Row{"pages", SizeOf::leaf},
                                  Row{"page", SizeOf::leaf},
                                  Row{"on sheet", SizeOf::leaf},
                                  Row{"sheet", SizeOf::leaf},
                                  Row{"Blattgröße", SizeOf::leaf},
                                  Row{"Blatt", SizeOf::leaf},
                                  Row{"feuillets", SizeOf::leaf},
                                  Row{"feuillet", SizeOf::leaf},
                                  Row{"height", SizeOf::book},
                                  Row{"Höhe", SizeOf::book},
                                  Row{"hauteur", SizeOf::book},
                                  Row{"haut.", SizeOf::book},
                                  Row{"altezza", SizeOf::book},
                                  Row{"alt.", SizeOf::book},
                                  Row{"altura", SizeOf::book},
                                  Row{"alto", SizeOf::book},
                                  Row{"h.", SizeOf::book},
                                  Row{"h", SizeOf::book},
                                  Row{"width", SizeOf::width},
                                  Row{"Breite", SizeOf::width},
                                  Row{"largeur", SizeOf::width},
                                  Row{"larg.", SizeOf::width},
                                  Row{"larghezza", SizeOf::width},
                                  Row{"ancho", SizeOf::width},
                                  Row{"w.", SizeOf::width},
                                  Row{"type page", SizeOf::other},
                                  Row{"type-page", SizeOf::other},
                                  Row{"type area", SizeOf::other},
                                  Row{"text area", SizeOf::other},
                                  Row{"printed area", SizeOf::other},
                                  Row{"printed surface", SizeOf::other},
                                  Row{"Satzspiegel", SizeOf::other},
                                  Row{"plate mark", SizeOf::other},
                                  Row{"platemark", SizeOf::other},
                                  Row{"image", SizeOf::other},
                                  Row{"in box", SizeOf::other},
                                  Row{"box", SizeOf::other},
                                  Row{"in case", SizeOf::other},
                                  Row{"case", SizeOf::other},
                                  Row{"in slipcase", SizeOf::other},
                                  Row{"slipcase", SizeOf::other},
                                  Row{"in container", SizeOf::other},
                                  Row{"container", SizeOf::other}}) {
    auto look = cursor;
    if (!look.take_word_in_any_case(words)) continue;
    look.take_blanks();
    if (look.take_word_in_any_case("size") || look.take_word_in_any_case("height")) look.take_blanks();
    static_cast<void>(look.take(':'));
    look.take_blanks();
    cursor = look;
    return of;
  }
  return std::nullopt;
}

/// Takes a label in parentheses after a measure, `(leaf)`, `(type page)`. No value if there is none.
constexpr std::optional<SizeOf> take_size_label_after(TextCursor& cursor) {
  auto look = cursor;
  look.take_blanks();
  if (!look.take('(')) return std::nullopt;
  look.take_blanks();
  auto const of = take_size_label(look);
  if (!of || !look.take(')')) return std::nullopt;
  cursor = look;
  return of;
}

/// Takes the label of one of two numbers, `(h)` or `(w)`, or of both after them, `(w x h)`. Returns its first letter in
/// small, or 0.
constexpr char take_side_label(TextCursor& cursor) {
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
