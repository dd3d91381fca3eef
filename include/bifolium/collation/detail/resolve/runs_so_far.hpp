// SPDX-License-Identifier: MIT
/// The runs that have been read, so that a change can name one. A change at the end may belong to a gathering far to
/// the left (A-D⁴ E² F-I⁴ K²(−A1)); the nearest gathering with that name is meant. The last runs are searched one by
/// one. Earlier ones are found with an index, made of blocks that are merged as their number grows, so that no text is
/// slow and every run can be found.
#pragma once

#include <bifolium/collation/detail/resolve/name_stretches.hpp>
#include <bifolium/collation/detail/scan/found_run.hpp>
#include <bifolium/collation/detail/scan/small_list.hpp>

#include <optional>
#include <string_view>
#include <type_traits>

namespace bifolium {
inline namespace v0 {
namespace detail {

class RunsSoFar {
  static constexpr std::size_t without_allocation = 128; // this number of runs needs no allocation
  static constexpr std::size_t block = 16;               // this number of runs is searched one by one

  struct Kept { // without initialisers, as SmallList requires
    std::int64_t first_gathering, gatherings;
    std::uint32_t multiple, text_from;
    std::uint16_t series, leaves[Cycle::most_terms];
    std::uint8_t letter, text_size, terms;

    [[nodiscard]] constexpr SignatureKey first() const { return {series, letter, text_size, multiple, text_from}; }
  };
  /// The common part of the marks of one series.
  struct Series {
    std::uint16_t series{};
    std::string_view text{};
    friend constexpr auto operator<=>(Series const&, Series const&) = default;
  };
  struct Block {
    std::uint32_t from{}, to{}; // runs
    NameStretches<Series> exact{}, any{};
  };

  SmallList<Kept, without_allocation> runs_;
  std::vector<Block> blocks_{};
  bool has_series_{false}; // true if some run has a raised digit, π or χ before its marks

  [[nodiscard]] static constexpr Series series_of(SignatureKey key, std::string_view text) {
    return {key.series, text.substr(key.text_from, key.text_size)};
  }
  /// Returns a block of the runs from `from` to `to`. If several have one name, the last is meant, so owners count from
  /// the end.
  [[nodiscard]] constexpr Block block_of(std::uint32_t from, std::uint32_t to, std::string_view text,
                                         Alphabet alphabet) const {
    Block made{from, to, {}, {}};
    for (auto r = from; r < to; ++r) {
      auto const first = runs_[r].first();
      auto const rank = first.rank(alphabet), last = rank + runs_[r].gatherings - 1;
      made.exact.add(series_of(first, text), rank, last, to - 1 - r);
      if (has_series_) made.any.add(series_of(first.of_any_series(), text), rank, last, to - 1 - r);
    }
    made.exact.settle();
    made.any.settle();
    return made;
  }
  /// Makes blocks of all runs except the last few. Each is larger than the one after it, so there are few.
  constexpr void make_blocks(std::string_view text, Alphabet alphabet) {
    auto from = blocks_.empty() ? 0U : blocks_.back().to;
    while (from + block <= runs_.size()) {
      auto begin = from, to = static_cast<std::uint32_t>(from + block);
      while (!blocks_.empty() && blocks_.back().to - blocks_.back().from <= to - begin) {
        begin = blocks_.back().from;
        blocks_.pop_back();
      }
      blocks_.push_back(block_of(begin, to, text, alphabet));
      from = to;
    }
  }
  [[nodiscard]] constexpr std::optional<Target> in_run(std::uint32_t r, SignatureKey name, bool any_series,
                                                       std::string_view text, Alphabet alphabet) const {
    auto const& run = runs_[r];
    auto const first = any_series ? run.first().of_any_series() : run.first();
    auto const length = run_length(first, name, alphabet, text);
    if (!length || *length > run.gatherings) return std::nullopt;
    auto const index = *length - 1;
    return Target{{r, index}, run.first_gathering + index, leaves_folded({r, index}), any_series};
  }
  [[nodiscard]] constexpr std::optional<Target> find(SignatureKey name, bool any_series, std::string_view text,
                                                     Alphabet alphabet) {
    auto const size = static_cast<std::uint32_t>(runs_.size());
    auto const looked_through = size < block ? size : static_cast<std::uint32_t>(block);
    for (auto r = size; r-- > size - looked_through;)
      if (auto found = in_run(r, name, any_series, text, alphabet)) return found;
    if (size == looked_through) return std::nullopt;
    make_blocks(text, alphabet);
    auto const greek = among(SignatureKey::of(Mark::greek), name);
    for (auto b = blocks_.size(); b-- > 0;)
      for (auto const mark : {name, greek}) {
        auto const& index = any_series ? blocks_[b].any : blocks_[b].exact;
        auto const* const found = index.find(series_of(mark, text), mark.rank(alphabet));
        if (found == nullptr) continue;
        if (auto target = in_run(blocks_[b].to - 1 - found->owner, mark, any_series, text, alphabet)) return target;
      }
    return std::nullopt;
  }

public:
  constexpr void push_back(FoundRun const& run, std::int64_t first_gathering) {
    auto& kept = runs_.add();
    kept.first_gathering = first_gathering;
    kept.gatherings = run.gatherings;
    kept.multiple = run.first.multiple;
    kept.text_from = run.first.text_from;
    kept.series = run.first.series;
    kept.letter = run.first.letter;
    kept.text_size = run.first.text_size;
    if (!has_series_ && run.first.series != run.first.of_any_series().series) {
      has_series_ = true;
      blocks_.clear(); // they do not have this run
    }
    kept.terms = static_cast<std::uint8_t>(run.leaves.size());
    for (std::size_t i = 0; i < run.leaves.size(); ++i) kept.leaves[i] = static_cast<std::uint16_t>(run.leaves.term(i));
    if (std::is_constant_evaluated()) // a constant expression must not copy a value that was not set
      for (auto i = run.leaves.size(); i < Cycle::most_terms; ++i) kept.leaves[i] = 0;
  }
  [[nodiscard]] constexpr std::uint32_t size() const noexcept { return static_cast<std::uint32_t>(runs_.size()); }
  /// Returns how many leaf counts alternate in a run. Precondition: the run has been read.
  [[nodiscard]] constexpr std::size_t terms(std::uint32_t run) const noexcept { return runs_[run].terms; }
  /// Returns the number of leaves of a gathering as folded. Precondition: the run has been read.
  [[nodiscard]] constexpr int leaves_folded(GatheringAt at) const {
    auto const& run = runs_[at.run];
    return run.leaves[static_cast<std::size_t>(at.index) % run.terms];
  }
  /// Returns a gathering as the target of a change. Precondition: the run has been read.
  [[nodiscard]] constexpr Target target(GatheringAt at) const {
    return {at, runs_[at.run].first_gathering + at.index, leaves_folded(at), false};
  }
  /// Returns the nearest gathering with this name. A name without a raised digit, π or χ may be of any series if no
  /// gathering has exactly this name.
  [[nodiscard]] constexpr std::optional<Target> find(SignatureKey name, std::string_view text, Alphabet alphabet) {
    if (auto exact = find(name, false, text, alphabet)) return exact;
    if (!has_series_ || name.raised() || name.duplicate() != Duplicate::none) return std::nullopt;
    return find(name, true, text, alphabet);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
