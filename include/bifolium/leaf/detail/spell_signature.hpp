// SPDX-License-Identifier: MIT
/// Signature::spell, which writes a signature piece by piece: its series, its prefix, what encloses it, its multiple,
/// and its mark with what is beside it, in the order in which leaf/signature_reader.hpp reads them.
#pragma once

#include <bifolium/leaf/detail/spell_letters.hpp>
#include <bifolium/leaf/signature.hpp>

namespace bifolium {
inline namespace v0 {

template <class Put, class Raised> constexpr void Signature::spell(Put&& put, Raised&& raised) const {
  if (series_ != 0) raised(series_);
  if (duplicate_ != Duplicate::none) put(duplicate_ == Duplicate::pi ? "π" : "χ", 2);
  if (enclosed_) put(is_letter() ? "(" : "'", 1);
  if (beside_ == Beside::before) put(text_, size_);
  // A digit before a colon would be read as a numbered gathering, before a cross as a sum, so these symbols are
  // repeated.
  bool const repeated = mark_ == Mark::symbol && size_ == 1 && (text_[0] == ':' || text_[0] == '+') && multiple_ < 10;
  for (std::uint32_t i = 1; repeated && i < multiple_; ++i) put(text_, size_);
  if ((multiple_ > 1 && !repeated && mark_ != Mark::hebrew) || mark_ == Mark::number) {
    detail::spell_number(put, multiple_);
  }
  spell_mark(put);
  if (beside_ == Beside::greek) detail::spell_greek(put, Alphabet{}.place(letter_), false);
  if (beside_ == Beside::after) put(text_, size_);
  if (enclosed_) put(is_letter() ? ")" : "'", 1);
}

template <class Put> constexpr void Signature::spell_mark(Put& put) const {
  switch (mark_) {
  case Mark::capital:
  case Mark::small_letter: {
    char const glyph = static_cast<char>((mark_ == Mark::capital ? 'A' : 'a') + letter_ - 1);
    put(&glyph, 1);
    break;
  }
  case Mark::greek:
  case Mark::greek_capital:
    detail::spell_greek(put, letter_, mark_ == Mark::greek_capital);
    break;
  case Mark::cyrillic:
  case Mark::cyrillic_capital:
    detail::spell_cyrillic(put, letter_, mark_ == Mark::cyrillic_capital);
    break;
  case Mark::hebrew:
    detail::spell_hebrew(put, multiple_);
    break;
  case Mark::symbol:
    put(text_, size_);
    break;
  case Mark::name:
    put("[", 1), put(text_, size_), put("]", 1);
    break;
  case Mark::printed:
    put("\"", 1), put(text_, size_), put("\"", 1);
    break;
  case Mark::pi:
    put("π", 2);
    break;
  case Mark::chi:
    put("χ", 2);
    break;
  case Mark::number:
    break;
  }
}

} // namespace v0
} // namespace bifolium
