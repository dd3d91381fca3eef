// SPDX-License-Identifier: MIT
/// A small value that stands beside vectors and says something of them, such as the number of leaves beside the runs. A vector
/// is empty after its contents were moved away, but a number is only copied: it would go on counting what is no longer there.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A value that becomes T{} when it is moved from.
template <class T> struct Emptied {
  T value{};

  constexpr Emptied() noexcept = default;
  constexpr explicit Emptied(T const& one) noexcept : value{one} {}
  constexpr Emptied(Emptied const&) noexcept = default;
  constexpr Emptied(Emptied&& other) noexcept : value{other.value} { other.value = T{}; }
  constexpr Emptied& operator=(Emptied const&) noexcept = default;
  constexpr Emptied& operator=(Emptied&& other) noexcept {
    value = other.value;
    if (this != &other) other.value = T{};
    return *this;
  }
  constexpr ~Emptied() = default;
  friend constexpr bool operator==(Emptied const&, Emptied const&) = default;
};

} // namespace detail
} // namespace v0
} // namespace bifolium
