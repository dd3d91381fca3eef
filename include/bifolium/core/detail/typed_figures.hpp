// SPDX-License-Identifier: MIT
/// Letters in the place of the figures of a year. Typewriters had no 1 and no 0, and programs that read scanned cards
/// take one for the other: I499, l607, 16o7. Such a year is taken only where no other is found, with a doubt that names both.
#pragma once

#include <bifolium/core/detail/date_reader.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the figure for which a letter is typed, or the character itself.
constexpr char typed_figure(char c) noexcept {
  return c == 'I' || c == 'l' || c == 'i' ? '1' : c == 'O' || c == 'o' ? '0' : c;
}

/// The years of a text that are typed with letters.
class TypedFigures {
  std::vector<char> text_{};
  std::vector<std::size_t> years_{}; // where they begin

public:
  static constexpr std::size_t figures = 4;
  constexpr explicit TypedFigures(std::string_view text) : text_(text.begin(), text.end()) {
    auto const in_word = [&](std::size_t at) {
      return at < text.size() && (is_digit(text[at]) || is_word_letter(decode(text, at).value));
    };
    for (std::size_t at = 0, to = 0; at < text.size(); at = to) {
      to = at + decode(text, at).bytes;
      if (!in_word(at)) continue;
      while (in_word(to)) to += decode(text, to).bytes;
      if (to - at != figures) continue;
      std::size_t digits = 0, typed = 0;
      for (auto i = at; i < to; ++i) {
        digits += is_digit(text[i]) ? 1U : 0U;
        typed += typed_figure(text[i]) != text[i] ? 1U : 0U;
      }
      if (typed == 0 || digits < 2 || digits + typed != figures) continue;
      years_.push_back(at);
      for (auto i = at; i < to; ++i) text_[i] = typed_figure(text[i]);
    }
  }
  [[nodiscard]] constexpr bool empty() const noexcept { return years_.empty(); }
  /// Returns the text with figures for the letters. Each has one byte, so that all places are the same.
  [[nodiscard]] constexpr std::string_view text() const noexcept { return {text_.data(), text_.size()}; }
  /// Adds a doubt for each year that was taken.
  constexpr void tell(std::string_view original, StatedDate& date) const {
    for (auto const at : years_) {
      if (at < date.read.from || at >= date.read.to) continue;
      auto const year = whole_number(text().substr(at, figures), 9999);
      date.warn(error_in(original, {at, at + figures}, Problem::typed_figures, year.value_or(0)));
    }
  }
};

/// Reads the date of a text without references to characters.
constexpr Expected<StatedDate> date_of_characters(std::string_view text) {
  auto date = DateReader{text}.read();
  if (date || date.error().problem != Problem::not_years) return date;
  TypedFigures const typed{text};
  if (typed.empty()) return date;
  auto again = DateReader{typed.text()}.read();
  if (!again || !again->years) return date;
  typed.tell(text, *again);
  return again;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
