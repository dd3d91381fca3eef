// SPDX-License-Identifier: MIT
/// Numbers keys: the first key is 0, the next new one 1. The searches of this folder store their results in rows and ask
/// here in which row the answer to a question is.
#pragma once

#include <bifolium/core/config.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Adds a word to a hash.
constexpr std::uint64_t mixed(std::uint64_t hash, std::uint64_t word) {
  hash = (hash ^ word) * 0x9E3779B97F4A7C15U;
  return hash ^ (hash >> 32U);
}
inline std::uint64_t hash_of(std::string_view text) {
  std::uint64_t hash = text.size(), word = 0;
  for (; text.size() >= sizeof word; text.remove_prefix(sizeof word)) {
    std::memcpy(&word, text.data(), sizeof word);
    hash = mixed(hash, word);
  }
  for (char c : text) hash = mixed(hash, static_cast<unsigned char>(c));
  return hash;
}
template <std::size_t N> constexpr std::uint64_t hash_of(std::array<std::uint64_t, N> const& words) {
  std::uint64_t hash = N;
  for (auto const word : words) hash = mixed(hash, word);
  return hash;
}

/// Keys in the order of their numbers, each once.
template <class Key> class KeyTable {
  struct Slot {
    std::uint32_t after{}; ///< the number of the key, and 1; 0 if the slot is empty
    std::uint32_t tag{};   ///< a part of the hash, so that most other keys are passed over unread
  };
  std::vector<Key> keys_{};
  std::vector<std::uint64_t> hashes_{}; ///< by number of the key
  std::vector<Slot> table_ = std::vector<Slot>(64);

  static std::uint32_t tag_of(std::uint64_t hash) { return static_cast<std::uint32_t>(hash >> 32U); }
  // the lower half of the hash, as a std::size_t of 32 bits holds no more
  [[nodiscard]] std::size_t slot_of(std::uint64_t hash) const {
    return static_cast<std::uint32_t>(hash) & (table_.size() - 1);
  }
  void grow() {
    table_.assign(table_.size() * 2, {});
    for (std::size_t i = 0; i < keys_.size(); ++i) {
      auto at = slot_of(hashes_[i]);
      while (table_[at].after != 0) at = (at + 1) & (table_.size() - 1);
      table_[at] = {static_cast<std::uint32_t>(i + 1), tag_of(hashes_[i])};
    }
  }

public:
  /// Returns the number of a key. A new key gets the next number, which is `size()` before the call.
  template <class Seen> std::size_t number(Seen const& key) {
    auto const hash = hash_of(key);
    auto at = slot_of(hash);
    for (; table_[at].after != 0; at = (at + 1) & (table_.size() - 1))
      if (table_[at].tag == tag_of(hash) && keys_[table_[at].after - 1] == key) return table_[at].after - 1;
    keys_.emplace_back(key);
    hashes_.push_back(hash);
    table_[at] = {static_cast<std::uint32_t>(keys_.size()), tag_of(hash)};
    if (keys_.size() * 2 > table_.size()) grow();
    return keys_.size() - 1;
  }
  [[nodiscard]] std::size_t size() const { return keys_.size(); }
  [[nodiscard]] Key const& operator[](std::size_t number) const { return keys_[number]; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
