// SPDX-License-Identifier: MIT
/// Values in a row that somebody else keeps: a table made once a program, a part of one. A std::span is the same; but to
/// make one of a type of ours, g++ 12 asks of every pointer to it whether it is an iterator, which costs each unit that
/// includes the header some 12 ms a type. Callers can make a std::span of it, as of every contiguous range.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>

namespace bifolium {
inline namespace v0 {

/// Looks at values, and lives no longer than they do. pre of all that names a place: it is there.
template <class T> class View {
  T* first_{};
  std::size_t size_{};

public:
  constexpr View() = default;
  /// The `size` values from `first` on.
  constexpr View(T* first, std::size_t size) noexcept : first_{first}, size_{size} {}

  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
  [[nodiscard]] constexpr T* data() const noexcept { return first_; }
  [[nodiscard]] constexpr T* begin() const noexcept { return first_; }
  [[nodiscard]] constexpr T* end() const noexcept { return first_ + size_; }
  [[nodiscard]] constexpr T& operator[](std::size_t i) const { return first_[i]; }
  [[nodiscard]] constexpr T& front() const { return *first_; }
};

} // namespace v0
} // namespace bifolium
