// SPDX-License-Identifier: MIT
/// Leaf counts that alternate: in 12° in eights and fours the first gathering has eight leaves, the next four, and so
/// on. The runs of a formula have such counts, and so have statements of format.
#pragma once

#include <bifolium/leaf/gathering.hpp>

#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The leaf counts of a run: one, or several that alternate (8/4: the first gathering has eight leaves, the next four,
/// and so on).
class Cycle {
public:
  /// The greatest number of counts that can alternate.
  static constexpr std::size_t most_terms = 8;

  constexpr Cycle() = default;
  /// Makes a cycle with one count for all gatherings. Precondition: 1 to 4096 leaves.
  constexpr explicit Cycle(int leaves) { push(leaves); }
  /// The same of a number of a wider type. No number that is not whole is taken.
  template <detail::ChangesAs<int> Number>
  constexpr explicit Cycle(Number leaves) : Cycle{detail::unchanged<int>(leaves)} {}

  /// Adds a count. Returns false if there is no room. Precondition: 1 to 4096 leaves.
  constexpr bool push(int leaves) {
    if (leaves < 1 || leaves > most_leaves_in_gathering) broken("a gathering has from 1 to 4096 leaves");
    if (size_ >= most_terms) return false;
    terms_[size_++] = static_cast<std::uint16_t>(leaves);
    return true;
  }
  /// Returns the number of counts.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  /// Returns count `i`. Precondition: i < size().
  [[nodiscard]] constexpr int term(std::size_t i) const {
    if (i >= size_) broken("the run has no such count of leaves");
    return terms_[i];
  }
  /// Returns the leaves of gathering `index` of the run, counting from 0. Precondition: the cycle is not empty and
  /// `index` is at least 0.
  [[nodiscard]] constexpr int at(std::int64_t index) const { return size_ == 1 ? terms_[0] : terms_[turn(index).term]; }
  /// Returns the leaves of the first `gatherings` gatherings together. Precondition: the cycle is not empty,
  /// `gatherings` is at least 0, and the sum fits in 64 bits.
  [[nodiscard]] constexpr std::int64_t total(std::int64_t gatherings) const {
    if (size_ == 1) return gatherings * terms_[0];
    std::int64_t cycle = 0, rest = 0;
    auto const [cycles, over] = turn(gatherings);
    for (std::size_t i = 0; i < size_; ++i) {
      cycle += terms_[i];
      if (i < over) rest += terms_[i];
    }
    return cycles * cycle + rest;
  }
  /// Returns the cycle that begins `steps` counts later. Precondition: the cycle is not empty and `steps` is at least
  /// 0.
  [[nodiscard]] constexpr Cycle turned(std::int64_t steps) const {
    Cycle result;
    for (std::size_t i = 0; i < size_; ++i) result.push(terms_[(turn(steps).term + i) % size_]);
    return result;
  }
  friend constexpr bool operator==(Cycle const&, Cycle const&) = default;

private:
  /// The number of full turns of the cycle before a place of the run, and the count at this place.
  struct Turn {
    std::int64_t cycles;
    std::size_t term;
  };
  [[nodiscard]] constexpr Turn turn(std::int64_t index) const {
    if (size_ == 0 || index < 0) broken("a run needs a leaf count, and its gatherings count from 0");
    return {index / size_, static_cast<std::size_t>(index % size_)};
  }
  std::uint16_t terms_[most_terms]{};
  std::uint8_t size_{};
};

} // namespace v0
} // namespace bifolium
