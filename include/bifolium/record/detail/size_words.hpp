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

/// Words that say what is measured.
struct SizeLabel {
  char const* words;
  SizeOf of;
};
inline constexpr SizeLabel size_labels[]{{"bound to", SizeOf::binding},
                                         {"in binding", SizeOf::binding},
                                         {"binding", SizeOf::binding},
                                         {"bound", SizeOf::binding},
                                         {"covers", SizeOf::binding},
                                         {"cover", SizeOf::binding},
                                         {"boards", SizeOf::binding},
                                         {"Einband", SizeOf::binding},
                                         {"reliure", SizeOf::binding},
                                         {"legatura", SizeOf::binding},
                                         {"folded to", SizeOf::folded},
                                         {"fold. to", SizeOf::folded},
                                         {"text block", SizeOf::leaf},
                                         {"textblock", SizeOf::leaf},
                                         {"leaves", SizeOf::leaf},
                                         {"leaf", SizeOf::leaf},
                                         {"pages", SizeOf::leaf},
                                         {"page", SizeOf::leaf},
                                         {"on sheet", SizeOf::leaf},
                                         {"sheet", SizeOf::leaf},
                                         {"Blattgröße", SizeOf::leaf},
                                         {"Blatt", SizeOf::leaf},
                                         {"feuillets", SizeOf::leaf},
                                         {"feuillet", SizeOf::leaf},
                                         {"height", SizeOf::book},
                                         {"Höhe", SizeOf::book},
                                         {"hauteur", SizeOf::book},
                                         {"haut.", SizeOf::book},
                                         {"altezza", SizeOf::book},
                                         {"alt.", SizeOf::book},
                                         {"altura", SizeOf::book},
                                         {"alto", SizeOf::book},
                                         {"h.", SizeOf::book},
                                         {"h", SizeOf::book},
                                         {"width", SizeOf::width},
                                         {"Breite", SizeOf::width},
                                         {"largeur", SizeOf::width},
                                         {"larg.", SizeOf::width},
                                         {"larghezza", SizeOf::width},
                                         {"ancho", SizeOf::width},
                                         {"w.", SizeOf::width},
                                         {"type page", SizeOf::other},
                                         {"type-page", SizeOf::other},
                                         {"type area", SizeOf::other},
                                         {"text area", SizeOf::other},
                                         {"printed area", SizeOf::other},
                                         {"printed surface", SizeOf::other},
                                         {"Satzspiegel", SizeOf::other},
                                         {"plate mark", SizeOf::other},
                                         {"platemark", SizeOf::other},
                                         {"image", SizeOf::other},
                                         {"in box", SizeOf::other},
                                         {"box", SizeOf::other},
                                         {"in case", SizeOf::other},
                                         {"case", SizeOf::other},
                                         {"in slipcase", SizeOf::other},
                                         {"slipcase", SizeOf::other},
                                         {"in container", SizeOf::other},
                                         {"container", SizeOf::other}};

/// Takes words that say what is measured, such as `bound to` and `page size:`. No value if there are none.
constexpr std::optional<SizeOf> take_size_label(TextCursor& cursor) {
  auto const initial = small_letter(cursor.peek()); // most rows begin otherwise
  for (auto const& [words, of] : size_labels) {
    if (small_letter(words[0]) != initial) continue;
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
