// SPDX-License-Identifier: MIT
/// A set of numbers that are spread at random, such as hashes. The searches of this folder ask of each step whether it was made
/// before; a list would be walked from its beginning each time.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Numbers, each once. 0 counts as 1. A few are a list.
class NumberSet {
  static constexpr std::size_t few = 16;
  std::vector<std::uint64_t> places_{}; ///< of many, as many places as a power of two; 0 is an empty one
  std::size_t size_{};

  [[nodiscard]] constexpr bool is_list() const { return size_ <= few; }
  /// Returns the place of a number, or the empty one where it belongs.
  [[nodiscard]] constexpr std::size_t place(std::uint64_t number) const {
    if (is_list()) {
      std::size_t at = 0;
      while (at < size_ && places_[at] != number) ++at;
      return at;
    }
    auto at = static_cast<std::uint32_t>(number) & (places_.size() - 1); // a std::size_t of 32 bits holds no more
    while (places_[at] != 0 && places_[at] != number) at = (at + 1) & (places_.size() - 1);
    return at;
  }
  constexpr void spread(std::size_t places) {
    auto const before = static_cast<std::vector<std::uint64_t>&&>(places_);
    places_ = {};
    places_.reserve(places);
    while (places_.size() < places) places_.push_back(0);
    for (auto const one : before)
      if (one != 0) places_[place(one)] = one;
  }

public:
  /// Returns true if the number is in the set.
  [[nodiscard]] constexpr bool has(std::uint64_t number) const {
    auto const at = place(number == 0 ? 1 : number);
    return is_list() ? at < size_ : places_[at] != 0;
  }
  /// Adds a number. Returns false if it was there.
  constexpr bool insert(std::uint64_t number) {
    if (number == 0) number = 1;
    auto at = place(number);
    if (is_list() ? at < size_ : places_[at] != 0) return false;
    ++size_;
    if (is_list()) return places_.push_back(number), true;
    if (size_ == few + 1 || 2 * size_ > places_.size()) spread(size_ == few + 1 ? 4 * few : 2 * places_.size());
    at = place(number);
    places_[at] = number;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
