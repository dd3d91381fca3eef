// SPDX-License-Identifier: MIT
/// Text of a small fixed capacity, for names and fragments that must live in constant expressions: clang with the
/// common standard library evaluates no short std::string there. It holds UTF-8 bytes and never half a code point.
#pragma once

#include <bifolium/core/config.hpp>

#include <compare>
#include <cstddef>
#include <iosfwd>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Up to `Capacity` bytes of UTF-8. A longer text is cut at the last whole code point; `assign` says so.
template <std::size_t Capacity> class ShortText {
  static_assert(Capacity > 0 && Capacity < 256);
  char bytes_[Capacity]{};
  unsigned char size_{};

public:
  constexpr ShortText() = default;
  /// Cut where it does not fit.
  constexpr ShortText(std::string_view text) { assign(text); }
  /// Text ended by a zero; cut where it does not fit.
  constexpr ShortText(char const* text) { assign(text); }

  /// Takes `text`; false when it had to be cut to fit.
  constexpr bool assign(std::string_view text) {
    auto size = text.size() <= Capacity ? text.size() : Capacity;
    if (size < text.size())
      while (size > 0 && (static_cast<unsigned char>(text[size]) & 0xC0U) == 0x80U) --size;
    for (std::size_t i = size; i < size_; ++i) bytes_[i] = '\0'; // equal texts are equal byte for byte
    for (std::size_t i = 0; i < size; ++i) bytes_[i] = text[i];
    size_ = static_cast<unsigned char>(size);
    return size == text.size();
  }
  /// Adds `text` at the end. False, without a change, where it does not fit.
  constexpr bool append(std::string_view text) { return append(text.data(), text.size()); }
  /// Adds the `size` bytes from `text` on. (Making a std::string_view of a pointer that is not to const asks the compiler
  /// for as much as all of this header.)
  constexpr bool append(char const* text, std::size_t size) {
    if (size > Capacity - size_) return false;
    for (std::size_t i = 0; i < size; ++i) bytes_[size_++] = text[i];
    return true;
  }
  /// The text; it lives as long as this object.
  [[nodiscard]] constexpr std::string_view view() const noexcept BIFOLIUM_LIFETIMEBOUND { return {bytes_, size_}; }
  /// The text; it lives as long as this object.
  constexpr operator std::string_view() const noexcept BIFOLIUM_LIFETIMEBOUND { return view(); }
  /// True where there are no elements.
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  /// The most bytes it can hold.
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
