// SPDX-License-Identifier: MIT
/// Ways of making a gathering, counted and not listed. Of each way only its blame is stored: for each sheet of the
/// gathering and each way in which that sheet may have lain, the leaves any one of which explains what disagrees. Ways
/// with the same blame are one row.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The leaves any one of which explains what disagrees: bit k is leaf k of the gatherings in turn; all bits if there is no
/// contradiction; zero if no single leaf explains it.
using Blame = std::uint64_t;
inline constexpr Blame nobody = ~Blame{0};

/// Ways of making one gathering, or a part of it.
class Makings {
public:
  /// The ways that blame the same leaves.
  struct Row {
    double ways{};
    int price{}; ///< of the simplest
  };
  /// If `counted`, all ways count. Otherwise ways are left out that cost more than others and explain no more.
  Makings(int sheets, int lies, bool counted)
      : sheets_{static_cast<std::size_t>(sheets)}, lies_{static_cast<std::size_t>(lies)}, counted_{counted} {}

  [[nodiscard]] std::size_t size() const { return rows_.size(); }
  [[nodiscard]] Row const& operator[](std::size_t i) const { return rows_[i]; }
  /// Returns the blame of one row, sheet by sheet and lie by lie: `width()` sets.
  [[nodiscard]] Blame const* blame(std::size_t i) const { return blame_.data() + i * width(); }
  [[nodiscard]] std::size_t width() const { return sheets_ * lies_; }

  /// Returns true if each sheet may have lain in some way that leaves an explanation.
  [[nodiscard]] bool possible(Blame const* blame) const {
    for (std::size_t sheet = 0; sheet < sheets_; ++sheet) {
      Blame any = 0;
      for (std::size_t lie = 0; lie < lies_; ++lie) any |= blame[sheet * lies_ + lie];
      if (any == 0) return false;
    }
    return true;
  }
  void add(Blame const* blame, Row row) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      auto const* const other = this->blame(i);
      if (counted_) {
        if (!same(other, blame)) continue;
        rows_[i].ways += row.ways;
        if (row.price < rows_[i].price) rows_[i].price = row.price;
        return;
      }
      if (rows_[i].price <= row.price && within(blame, other)) return;
      if (row.price <= rows_[i].price && within(other, blame)) remove(i--);
    }
    rows_.push_back(row);
    blame_.insert(blame_.end(), blame, blame + width());
  }
  /// Combines each of these with each of the others, if that leaves an explanation.
  [[nodiscard]] Makings joined(Makings const& others) const {
    Makings both{static_cast<int>(sheets_), static_cast<int>(lies_), counted_};
    std::vector<Blame> blamed(width());
    for (std::size_t i = 0; i < size(); ++i)
      for (std::size_t k = 0; k < others.size(); ++k) {
        for (std::size_t w = 0; w < blamed.size(); ++w) blamed[w] = blame(i)[w] & others.blame(k)[w];
        if (possible(blamed.data()))
          both.add(blamed.data(), {rows_[i].ways * others[k].ways, rows_[i].price + others[k].price});
      }
    return both;
  }

private:
  std::size_t sheets_, lies_;
  bool counted_;
  std::vector<Row> rows_{};
  std::vector<Blame> blame_{};

  [[nodiscard]] bool same(Blame const* one, Blame const* other) const {
    for (std::size_t w = 0; w < width(); ++w)
      if (one[w] != other[w]) return false;
    return true;
  }
  /// Returns true if the other explains whatever the one explains.
  [[nodiscard]] bool within(Blame const* one, Blame const* other) const {
    for (std::size_t w = 0; w < width(); ++w)
      if ((one[w] & ~other[w]) != 0) return false;
    return true;
  }
  void remove(std::size_t i) {
    auto const last = size() - 1;
    for (std::size_t w = 0; w < width(); ++w) blame_[i * width() + w] = blame_[last * width() + w];
    rows_[i] = rows_[last];
    rows_.pop_back();
    blame_.resize(last * width());
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
