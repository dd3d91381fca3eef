// SPDX-License-Identifier: MIT
/// Numbers keys: the first key is 0, the next new one 1. The searches of this folder store their results in rows and ask
/// here in which row the answer to a question is.
#pragma once

#include <bifolium/core/config.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

inline constexpr std::uint64_t hash_start = 0xCBF29CE484222325U;
constexpr std::uint64_t hash_of(std::string_view text) {
  std::uint64_t hash = hash_start;
  for (char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3U;
  return hash ^ (hash >> 29U);
}
template <std::size_t N> constexpr std::uint64_t hash_of(std::array<std::uint64_t, N> const& words) {
  std::uint64_t hash = hash_start;
  for (auto const word : words) {
    hash = (hash ^ word) * 0x9E3779B97F4A7C15U;
    hash ^= hash >> 32U;
  }
  return hash;
}

/// Keys in the order of their numbers, each once.
template <class Key> class KeyTable {
  std::vector<Key> keys_{};
  std::vector<std::uint32_t> table_ = std::vector<std::uint32_t>(64, 0); // the number of a key, and 1

  template <class Seen> [[nodiscard]] std::size_t slot(Seen const& key) const {
    auto at = hash_of(key) & (table_.size() - 1);
    while (table_[at] != 0 && !(keys_[table_[at] - 1] == key)) at = (at + 1) & (table_.size() - 1);
    return at;
  }

public:
  /// Returns the number of a key. A new key gets the next number, which is `size()` before the call.
  template <class Seen> std::size_t number(Seen const& key) {
    auto const at = slot(key);
    if (table_[at] != 0) return table_[at] - 1;
    keys_.emplace_back(key);
    table_[at] = static_cast<std::uint32_t>(keys_.size());
    if (keys_.size() * 2 > table_.size()) {
      table_.assign(table_.size() * 2, 0);
      for (std::size_t i = 0; i < keys_.size(); ++i) table_[slot(keys_[i])] = static_cast<std::uint32_t>(i + 1);
    }
    return keys_.size() - 1;
  }
  [[nodiscard]] std::size_t size() const { return keys_.size(); }
  [[nodiscard]] Key const& operator[](std::size_t number) const { return keys_[number]; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
