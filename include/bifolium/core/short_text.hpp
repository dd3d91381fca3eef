// SPDX-License-Identifier: MIT
/// Text of a small fixed capacity, for names and fragments that are used in constant expressions: clang with libstdc++
/// evaluates no short std::string there. The text is UTF-8 and never ends inside a character.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/config.hpp>

#include <compare>
#include <cstddef>
#include <iosfwd>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A text of up to `Capacity` bytes of UTF-8. A longer text is cut after the last whole character that fits; `assign`
/// returns false in that case.
template <std::size_t Capacity> class ShortText {
  static_assert(Capacity > 0 && Capacity < 256);
  char bytes_[Capacity]{};
  unsigned char size_{};

public:
  constexpr ShortText() = default;
  /// Stores `text`, cut if it does not fit.
  constexpr ShortText(std::string_view text) { assign(text); }
  /// Stores a text that ends with a zero byte, cut if it does not fit.
  constexpr ShortText(char const* text) { assign(text); }

  /// Stores `text`. Returns false if the text was cut to fit.
  constexpr bool assign(std::string_view text) {
    auto size = text.size() <= Capacity ? text.size() : Capacity;
    if (size < text.size())
      while (size > 0 && continues_character(text[size])) --size;
    // equal texts are equal byte for byte; compilers do not see by themselves that no text is longer than Capacity
    for (std::size_t i = size; i < size_ && i < Capacity; ++i) bytes_[i] = '\0';
    for (std::size_t i = 0; i < size; ++i) bytes_[i] = text[i];
    size_ = static_cast<unsigned char>(size);
    return size == text.size();
  }
  /// Adds `text` at the end. If it does not fit, returns false and changes nothing.
  constexpr bool append(std::string_view text) { return append(text.data(), text.size()); }
  /// Adds `size` bytes that begin at `text`. If they do not fit, returns false and changes nothing.
  constexpr bool append(char const* text, std::size_t size) {
    if (size > Capacity - size_) return false;
    for (std::size_t i = 0; i < size; ++i) bytes_[size_++] = text[i];
    return true;
  }
  /// Returns the text. The view is valid as long as this object.
  [[nodiscard]] constexpr std::string_view view() const noexcept BIFOLIUM_LIFETIMEBOUND { return {bytes_, size_}; }
  /// Returns the text. The view is valid as long as this object.
  constexpr operator std::string_view() const noexcept BIFOLIUM_LIFETIMEBOUND { return view(); }
  /// Returns true if the text is empty.
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  /// Returns the greatest number of bytes that the text can have.
  [[nodiscard]] static constexpr std::size_t capacity() noexcept { return Capacity; }

  friend constexpr bool operator==(ShortText const&, ShortText const&) = default;
  friend constexpr bool operator==(ShortText const& a, std::string_view b) noexcept { return a.view() == b; }
  friend constexpr bool operator==(ShortText const& a, char const* b) noexcept { return a.view() == b; }
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, ShortText const& text) {
    return out << text.view();
  }
};

} // namespace v0
} // namespace bifolium

template <std::size_t Capacity> struct std::hash<bifolium::ShortText<Capacity>> {
  std::size_t operator()(bifolium::ShortText<Capacity> const& text) const noexcept {
    return std::hash<std::string_view>{}(text.view());
  }
};
