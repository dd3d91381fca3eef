// SPDX-License-Identifier: MIT
/// The packets into which pieces of one size can be folded, and the kinds of packets that differ in some of their leaves.
/// A piece of 24 leaves makes thousands of packets. But if somebody looked at one leaf only, a packet is told by the cell
/// of that leaf and the side of its gutter, so there are some dozens of kinds. Each kind is compared once and counts for
/// all its packets.
#pragma once

#include <bifolium/fold/detail/folding_counter.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Kinds of packets of one size. Packets of one kind agree in the leaves that were looked at.
struct PacketKinds {
  std::vector<int> places{};           ///< the leaves looked at, from 0
  std::vector<std::uint8_t> cells{};   ///< kind by kind, the cells of these leaves
  std::vector<std::uint8_t> columns{}; ///< by kind: 0 if the gutter is on the right of even columns, else 1
  std::vector<double> packets{};       ///< by kind: how many there are, read from either end
  std::vector<int> folds{};            ///< by kind: the fewest
  [[nodiscard]] std::size_t size() const { return packets.size(); }
  [[nodiscard]] std::uint8_t const* of(std::size_t kind) const { return cells.data() + kind * places.size(); }
};

/// Packets of every size, each found once.
class PacketTable {
  KeyTable<std::array<std::uint64_t, 1>> sizes_{};
  KeyTable<std::array<std::uint64_t, 2>> looks_{};
  std::vector<PacketList> lists_{};  // by number of size
  std::vector<PacketKinds> kinds_{}; // by number of look

  PacketList const& all(int rows, int columns) {
    constexpr std::int64_t no_limit = std::int64_t{1} << 40U;
    auto const before = sizes_.size(),
               number = sizes_.number(std::array{static_cast<std::uint64_t>(rows * 256 + columns)});
    if (number == before) {
      lists_.emplace_back();
      static_cast<void>(FoldingCounter{rows, columns}.count(no_limit, &lists_.back()));
    }
    return lists_[number];
  }
  static PacketKinds sorted(PacketList const& list, int columns, std::uint64_t looked_at) {
    PacketKinds kinds;
    for (int k = 0; k < list.leaves; ++k)
      if ((looked_at >> static_cast<unsigned>(k) & 1U) != 0) kinds.places.push_back(k);
    KeyTable<std::string> table;
    auto const last = list.leaves - 1;
    std::string key;
    for (std::size_t i = 0; i < list.size(); ++i)
      for (bool const from_end : {false, true}) {
        auto const* const cells = list.of(i);
        auto const left = cells[0] < cells[last] ? cells[0] : cells[last];
        auto const side = list.leaves == 1 ? (from_end ? 0 : 1) : left % columns % 2;
        key.assign(1, static_cast<char>(side));
        for (auto const k : kinds.places) key += static_cast<char>(cells[from_end ? last - k : k]);
        auto const before = table.size(), kind = table.number(key);
        if (kind == before) {
          kinds.columns.push_back(static_cast<std::uint8_t>(side));
          for (std::size_t k = 1; k < key.size(); ++k) kinds.cells.push_back(static_cast<std::uint8_t>(key[k]));
          kinds.packets.push_back(0);
          kinds.folds.push_back(list.folds[i]);
        }
        kinds.packets[kind] += 1;
        if (list.folds[i] < kinds.folds[kind]) kinds.folds[kind] = list.folds[i];
      }
    return kinds;
  }

public:
  /// Returns the packets of a piece, sorted by the leaves that were looked at: bit k is leaf k, from 0. The reference is
  /// valid until the next call.
  PacketKinds const& kinds(int rows, int columns, std::uint64_t looked_at) {
    auto const before = looks_.size(),
               number = looks_.number(std::array{static_cast<std::uint64_t>(rows * 256 + columns), looked_at});
    if (number == before) {
      auto const& list = all(rows, columns);
      kinds_.push_back(sorted(list, columns, looked_at));
    }
    return kinds_[number];
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
