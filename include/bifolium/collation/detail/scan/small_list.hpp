// SPDX-License-Identifier: MIT
/// A growing row of values. The first N values need no allocation, so that counting a formula of ordinary length needs
/// none, and the number of values is not limited. It works in constant expressions.
#pragma once

#include <cstddef>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A list. Precondition of every function with an index: the element exists. T can be left without a value and is
/// copied as bytes.
template <class T, std::size_t N> class SmallList {
  T near_[N]; // without initialisers: only written elements are read
  T* far_{};
  std::size_t size_{}, room_{};

public:
  constexpr SmallList() {}
  SmallList(SmallList const&) = delete;
  SmallList& operator=(SmallList const&) = delete;
  constexpr ~SmallList() { delete[] far_; }

  constexpr void push_back(T const& value) { add() = value; }
  /// Adds an element without a value and returns it.
  constexpr T& add() {
    if (size_ >= N && size_ - N == room_) {
      auto const room = room_ == 0 ? N : 2 * room_;
      auto* const moved = new T[room];
      for (std::size_t i = 0; i < room_; ++i) moved[i] = far_[i];
      delete[] far_;
      far_ = moved;
      room_ = room;
    }
    return (*this)[size_++];
  }
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  [[nodiscard]] constexpr T const& operator[](std::size_t i) const { return i < N ? near_[i] : far_[i - N]; }
  [[nodiscard]] constexpr T& operator[](std::size_t i) { return i < N ? near_[i] : far_[i - N]; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
