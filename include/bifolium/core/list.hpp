// SPDX-License-Identifier: MIT
/// Values in a row that grows, for what a header keeps to itself while it works. A std::vector does the same and more;
/// but each type put into one costs every unit that includes the header some 6 to 10 ms with g++ 12, ten times what this
/// does, and the headers would need a dozen of them that no caller ever sees. What is handed to callers stays a
/// std::vector.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// pre of all that names a place: it is there. T can be made from nothing, and moving it does not throw.
template <class T> class List {
  T* first_{};
  std::size_t size_{}, room_{};

public:
  using value_type = T;

  List() = default;
  List(List&& other) noexcept : first_{other.first_}, size_{other.size_}, room_{other.room_} {
    other.first_ = nullptr;
    other.size_ = other.room_ = 0;
  }
  List& operator=(List&& other) noexcept {
    auto* const first = first_;
    auto const size = size_, room = room_;
    first_ = other.first_, size_ = other.size_, room_ = other.room_;
    other.first_ = first, other.size_ = size, other.room_ = room;
    return *this;
  }
  ~List() { delete[] first_; }

  void push_back(T value) {
    if (size_ == room_) {
      auto const room = room_ == 0 ? 8 : 2 * room_;
      auto* const moved = new T[room];
      for (std::size_t i = 0; i < size_; ++i) moved[i] = static_cast<T&&>(first_[i]);
      delete[] first_;
      first_ = moved;
      room_ = room;
    }
    first_[size_++] = static_cast<T&&>(value);
  }
  void pop_back() { first_[--size_] = T{}; }

  [[nodiscard]] std::size_t size() const noexcept { return size_; }
  [[nodiscard]] bool empty() const noexcept { return size_ == 0; }
  [[nodiscard]] T const* data() const noexcept { return first_; }
  [[nodiscard]] T const* begin() const noexcept { return first_; }
  [[nodiscard]] T const* end() const noexcept { return first_ + size_; }
  [[nodiscard]] T* begin() noexcept { return first_; }
  [[nodiscard]] T* end() noexcept { return first_ + size_; }
  [[nodiscard]] T const& operator[](std::size_t i) const { return first_[i]; }
  [[nodiscard]] T& operator[](std::size_t i) { return first_[i]; }
  [[nodiscard]] T const& back() const { return first_[size_ - 1]; }
  [[nodiscard]] T& back() { return first_[size_ - 1]; }
};

/// Whether two rows hold the same values. As for == of two vectors, which takes three more templates a type.
template <class Values> constexpr bool same_values(Values const& a, Values const& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (!(a[i] == b[i])) return false;
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
