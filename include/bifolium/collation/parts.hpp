// SPDX-License-Identifier: MIT
/// Runs of gatherings, of which a formula consists: A-K⁸. A run is kept as it is written and never as the gatherings it
/// means, so a formula is as small as its text. Changes to single leaves (−L4): collation/change.hpp.
#pragma once

#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/signature.hpp>

#include <array>
#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The leaf counts of a run: one, or several that take turns (8/4: the first gathering has eight leaves, the next four).
class Cycle {
public:
  /// The most counts that can alternate.
  static constexpr std::size_t most_terms = 8;

  constexpr Cycle() = default;
  /// The same count each time.
  constexpr explicit Cycle(int leaves) { push(leaves); }

  /// Adds a term; false when there is no room. pre: 1 to 4096 leaves.
  constexpr bool push(int leaves) {
    if (leaves < 1 || leaves > most_leaves_in_gathering) broken("a gathering has from 1 to 4096 leaves");
    if (size_ >= most_terms) return false;
    terms_[size_++] = static_cast<std::uint16_t>(leaves);
    return true;
  }
  /// The number of elements.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
  /// The count of that place. pre: i < size().
  [[nodiscard]] constexpr int term(std::size_t i) const {
    if (i >= size_) broken("the run has no such count of leaves");
    return terms_[i];
  }
  /// The leaves of gathering `index` of the run, from 0. pre: not empty; the index not below 0.
  [[nodiscard]] constexpr int at(std::int64_t index) const { return size_ == 1 ? terms_[0] : terms_[turn(index).term]; }
  /// The leaves of the first `gatherings` together. pre: not empty; not below 0, and so few that their leaves fit in 64 bits.
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
  /// The same counts, beginning `steps` terms later. pre: not empty; steps not below 0.
  [[nodiscard]] constexpr Cycle turned(std::int64_t steps) const {
    Cycle result;
    for (std::size_t i = 0; i < size_; ++i) result.push(terms_[(turn(steps).term + i) % size_]);
    return result;
  }
  friend constexpr bool operator==(Cycle const&, Cycle const&) = default;

private:
  /// How often all counts came before that place of the run, and which of them is there.
  struct Turn {
    std::int64_t cycles;
    std::size_t term;
  };
  [[nodiscard]] constexpr Turn turn(std::int64_t index) const {
    if (size_ == 0 || index < 0) broken("a run has some count of leaves, and its gatherings are counted from 0");
    return {index / size_, static_cast<std::size_t>(index % size_)};
  }
  std::array<std::uint16_t, most_terms> terms_{};
  std::uint8_t size_{};
};

/// Gatherings that follow one another in one series, with their leaf counts: A-K⁸, π², a-o8/6.
struct Run {
  Signature first, last;                  ///< the two ends of the run; the same where it is one gathering
  std::int64_t gatherings{1};             ///< how many
  Cycle leaves{};                         ///< how many leaves each has
  bool first_inferred{}, last_inferred{}; ///< [A]-D⁴: unsigned, the signature inferred from the sequence
  bool unsigned_throughout{};             ///< inside brackets round the whole formula: [a-c⁶]
  bool imperfect{};                       ///< followed by +: more leaves once existed
  bool begins_part{};                     ///< a semicolon or the name of a volume comes before it: another part

  /// Leaves of the whole run, before any change.
  [[nodiscard]] constexpr std::int64_t leaf_total() const { return leaves.total(gatherings); }
  friend constexpr bool operator==(Run const&, Run const&) = default;
};

/// A gathering of a formula: the run and the place in it, both from 0.
struct GatheringAt {
  std::uint32_t run{};  ///< which run of the formula, from 0
  std::int64_t index{}; ///< which gathering of the run, from 0
  friend constexpr auto operator<=>(GatheringAt, GatheringAt) = default;
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::GatheringAt> {
  std::size_t operator()(bifolium::GatheringAt at) const noexcept {
    return static_cast<std::size_t>(at.index) * 31U + at.run;
  }
};
