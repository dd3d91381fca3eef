// SPDX-License-Identifier: MIT
/// Remembers what has been met under a name, because a name that two gatherings or two leaves have names neither. There
/// may be as many names as the text has room for, so they are hashed; the first few need no allocation.
#pragma once

#include <bifolium/collation/detail/scan/small_list.hpp>
#include <bifolium/leaf/signature_key.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

class NamesMet {
  struct Met { // without initialisers, as SmallList requires
    std::int64_t rank;
    std::uint64_t value;
    std::uint32_t part, text_from, next;
    std::uint16_t series;
    std::uint8_t text_size;
  };
  static constexpr std::size_t few = 16; // up to this number of names are looked through one by one
  SmallList<Met, few> all_;
  SmallList<std::uint32_t, 1> heads_; // of the lists of names with one hash; empty while there are few

  [[nodiscard]] constexpr std::size_t hash(Met const& one, std::string_view text) const noexcept {
    auto mixed =
        (std::uint64_t{one.part} << 16U | one.series) * 0x9E3779B97F4A7C15U + static_cast<std::uint64_t>(one.rank);
    for (auto const c : text.substr(one.text_from, one.text_size))
      mixed = (mixed ^ static_cast<unsigned char>(c)) * 0x9E3779B97F4A7C15U;
    return static_cast<unsigned>((mixed * 0x9E3779B97F4A7C15U) >> 32U) % heads_.size();
  }
  constexpr void link(std::uint32_t i, std::string_view text) {
    auto& head = heads_[hash(all_[i], text)];
    all_[i].next = head;
    head = i + 1;
  }
  constexpr void hash_all(std::size_t heads, std::string_view text) {
    while (heads_.size() < heads) heads_.push_back(0);
    for (std::size_t i = 0; i < heads_.size(); ++i) heads_[i] = 0;
    for (std::uint32_t i = 0; i < all_.size(); ++i) link(i, text);
  }
  [[nodiscard]] static constexpr bool same(Met const& a, Met const& b, std::string_view text) noexcept {
    return a.part == b.part && a.series == b.series && a.rank == b.rank && a.text_size == b.text_size &&
           text.substr(a.text_from, a.text_size) == text.substr(b.text_from, b.text_size);
  }

public:
  /// Returns what is remembered under position `rank` of the series of a mark in a part of the book; at first 0.
  constexpr std::uint64_t& of(SignatureKey mark, std::int64_t rank, std::uint32_t part, std::string_view text) {
    Met const name{rank, 0, part, mark.text_from, 0, mark.series, mark.text_size};
    if (heads_.size() == 0) {
      for (std::size_t i = 0; i < all_.size(); ++i)
        if (same(all_[i], name, text)) return all_[i].value;
    } else
      for (auto i = heads_[hash(name, text)]; i != 0; i = all_[i - 1].next)
        if (same(all_[i - 1], name, text)) return all_[i - 1].value;
    all_.push_back(name);
    auto const size = all_.size();
    if (size > few && size > heads_.size())
      hash_all(2 * size, text);
    else if (heads_.size() != 0)
      link(static_cast<std::uint32_t>(size - 1), text);
    return all_[size - 1].value;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
