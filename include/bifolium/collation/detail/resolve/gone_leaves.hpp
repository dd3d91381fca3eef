// SPDX-License-Identifier: MIT
/// The leaves that have been deleted or cancelled so far, one bit each, since a leaf cannot be deleted twice.
/// Gatherings are found by hashing, so the number of changes is not limited.
#pragma once

#include <bifolium/collation/detail/scan/small_list.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {
namespace detail {

class GoneLeaves {
  struct Gathering { // without initialisers, as SmallList requires
    std::int64_t ordinal;
    std::uint32_t next;  // with the same hash; counted from 1
    std::uint32_t words; // index at which its bits begin
  };
  static constexpr std::size_t looked_through = 16, most_near = 64;
  SmallList<Gathering, most_near> gatherings_;
  SmallList<std::uint64_t, 2 * most_near> words_;
  SmallList<std::uint32_t, 1> heads_; // of the lists of gatherings with one hash; empty while there are few

  [[nodiscard]] constexpr std::size_t hash(std::int64_t ordinal) const {
    auto const mixed = (static_cast<std::uint64_t>(ordinal) * 0x9E3779B97F4A7C15U) >> 32U;
    return static_cast<unsigned>(mixed) % heads_.size();
  }
  constexpr void hash_all(std::size_t heads) {
    while (heads_.size() < heads) heads_.push_back(0);
    for (std::size_t i = 0; i < heads_.size(); ++i) heads_[i] = 0;
    for (std::uint32_t g = 0; g < gatherings_.size(); ++g) link(g);
  }
  constexpr void link(std::uint32_t g) {
    auto& head = heads_[hash(gatherings_[g].ordinal)];
    gatherings_[g].next = head;
    head = g + 1;
  }
  static constexpr std::uint32_t none = 0xFFFFFFFFU;
  /// Returns the index at which the bits of a gathering begin, or `none` if it has none.
  [[nodiscard]] constexpr std::uint32_t find(std::int64_t ordinal) const {
    if (heads_.size() == 0) {
      for (auto g = gatherings_.size(); g-- > 0;)
        if (gatherings_[g].ordinal == ordinal) return gatherings_[g].words;
    } else
      for (auto g = heads_[hash(ordinal)]; g != 0; g = gatherings_[g - 1].next)
        if (gatherings_[g - 1].ordinal == ordinal) return gatherings_[g - 1].words;
    return none;
  }
  /// Returns the index at which the bits of a gathering begin. New bits are zero.
  constexpr std::uint32_t words_of(std::int64_t ordinal, int leaves) {
    auto const size = gatherings_.size();
    if (auto const found = find(ordinal); found != none) return found;
    auto const words = static_cast<std::uint32_t>(words_.size());
    for (int bits = 0; bits <= leaves; bits += 64) words_.push_back(0);
    gatherings_.push_back({ordinal, 0, words});
    if (size + 1 > looked_through && size + 1 > heads_.size())
      hash_all(2 * (size + 1));
    else if (heads_.size() != 0)
      link(static_cast<std::uint32_t>(size));
    return words;
  }

public:
  /// Returns true if the leaf is deleted.
  [[nodiscard]] constexpr bool is_out(std::int64_t ordinal, int leaf) const {
    auto const words = find(ordinal);
    auto const at = static_cast<unsigned>(leaf);
    return words != none && ((words_[words + at / 64U] >> (at % 64U)) & 1U) != 0;
  }
  /// Returns true if a leaf of a gathering of `leaves` leaves is deleted.
  [[nodiscard]] constexpr bool is_any_out(std::int64_t ordinal, int leaves) const {
    auto const words = find(ordinal);
    for (int bits = 0; words != none && bits <= leaves; bits += 64)
      if (words_[words + static_cast<unsigned>(bits) / 64U] != 0) return true;
    return false;
  }
  /// Deletes the leaves from `first` to `last` of a gathering of `leaves` leaves. Returns false if one of them is
  /// already deleted.
  constexpr bool take_out(std::int64_t ordinal, int leaves, int first, int last) {
    auto const words = words_of(ordinal, leaves);
    bool fresh = true;
    for (int leaf = first; leaf <= last;) { // word by word
      auto const at = static_cast<unsigned>(leaf) % 64U;
      auto const room = static_cast<int>(64U - at), left = last - leaf + 1;
      auto const bits = left < room ? left : room;
      auto const mask = (bits == 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << static_cast<unsigned>(bits)) - 1U) << at;
      auto& word = words_[words + static_cast<unsigned>(leaf) / 64U];
      fresh = fresh && (word & mask) == 0;
      word |= mask;
      leaf += bits;
    }
    return fresh;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
