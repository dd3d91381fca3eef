// SPDX-License-Identifier: MIT
/// The words of the units of length, for lengths alone and for statements of size: mm, cm, inches and the inches and lines
/// of Paris, in English, German, French, Italian and Spanish (common practice, no source).
#pragma once

#include <bifolium/core/text_cursor.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
/// A unit of length that texts name.
enum class WrittenUnit : std::uint8_t {
  mm,    ///< millimetre
  cm,    ///< centimetre
  inch,  ///< inch of 25.4 mm
  pouce, ///< inch of Paris
  ligne  ///< line of Paris, a twelfth of its inch
};

namespace detail {
struct LengthWord {
  char const* word; // the length of the word is not measured before it is compared
  WrittenUnit unit;
};
inline constexpr LengthWord length_words[]{
    {"mm", WrittenUnit::mm},          {"millimetres", WrittenUnit::mm}, {"millimetre", WrittenUnit::mm},
    {"millimeters", WrittenUnit::mm}, {"millimeter", WrittenUnit::mm},  {"millimètres", WrittenUnit::mm},
    {"millimètre", WrittenUnit::mm},  {"millimetri", WrittenUnit::mm},  {"millimetro", WrittenUnit::mm},
    {"milímetros", WrittenUnit::mm},  {"milímetro", WrittenUnit::mm},   {"cm", WrittenUnit::cm},
    {"cms", WrittenUnit::cm},         {"centimetres", WrittenUnit::cm}, {"centimetre", WrittenUnit::cm},
    {"centimeters", WrittenUnit::cm}, {"centimeter", WrittenUnit::cm},  {"Zentimeter", WrittenUnit::cm},
    {"centimètres", WrittenUnit::cm}, {"centimètre", WrittenUnit::cm},  {"centimetri", WrittenUnit::cm},
    {"centimetro", WrittenUnit::cm},  {"centímetros", WrittenUnit::cm}, {"centímetro", WrittenUnit::cm},
    {"in", WrittenUnit::inch},        {"inches", WrittenUnit::inch},    {"inch", WrittenUnit::inch},
    {"pouces", WrittenUnit::pouce},   {"pouce", WrittenUnit::pouce},    {"lignes", WrittenUnit::ligne},
    {"ligne", WrittenUnit::ligne},    {"lig", WrittenUnit::ligne}};
} // namespace detail

/// Takes a unit with its full stop, in capitals or small letters: mm, cm., Inches, ". No letter may follow a word.
constexpr std::optional<WrittenUnit> take_length_word(TextCursor& cursor) {
  if (cursor.take("″") || cursor.take('"')) return WrittenUnit::inch;
  for (auto const& [word, unit] : detail::length_words) {
    if (!cursor.take_word_in_any_case(word)) continue;
    static_cast<void>(cursor.take('.'));
    return unit;
  }
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
