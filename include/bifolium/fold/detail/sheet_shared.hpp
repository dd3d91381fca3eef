// SPDX-License-Identifier: MIT
/// Counts the ways of making several gatherings from one sheet, without overlap. The places where each of them can be are
/// known. The next gathering depends only on the cells that are used, so ways that use the same cells and blame the same
/// leaves are combined.
#pragma once

#include <bifolium/fold/detail/key_table.hpp>
#include <bifolium/fold/detail/makings.hpp>
#include <bifolium/fold/detail/piece_finder.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Lays gatherings out on a sheet of at most 64 leaves, one after another.
class SheetShared {
public:
  /// The greatest number of arrangements of some of the gatherings that are stored.
  static constexpr std::int64_t most_states = 200000;

  /// The cells of a block, and the ways of making a gathering of it.
  struct Option {
    std::uint64_t cells{};
    Makings const* makings{};
  };
  [[nodiscard]] static std::uint64_t cells_of(GridRect const& rect, int columns) {
    std::uint64_t cells = 0;
    for (int row = rect.top; row < rect.bottom; ++row)
      for (int column = rect.left; column < rect.right; ++column)
        cells |= std::uint64_t{1} << static_cast<unsigned>(row * columns + column);
    return cells;
  }

private:
  using State = std::array<std::uint64_t, 5>; // cells taken, then the blame by lie
  std::size_t lies_;
  KeyTable<State> states_{};
  std::vector<Makings::Row> rows_{}; // by state
  bool too_many_{};

  /// Calls `take(state, row)` for all that comes of one more gathering.
  template <class Take> void each(std::vector<Option> const& options, Take take) const {
    for (std::size_t s = 0; s < states_.size(); ++s)
      for (auto const& option : options) {
        if ((states_[s][0] & option.cells) != 0) continue;
        for (std::size_t i = 0; i < option.makings->size(); ++i) {
          State state = states_[s];
          Blame any = 0;
          state[0] |= option.cells;
          for (std::size_t lie = 0; lie < lies_; ++lie) any |= state[1 + lie] &= option.makings->blame(i)[lie];
          auto const& row = (*option.makings)[i];
          if (any != 0) take(state, Makings::Row{rows_[s].ways * row.ways, rows_[s].price + row.price});
        }
      }
  }

public:
  explicit SheetShared(int lies) : lies_{static_cast<std::size_t>(lies)} {
    State empty{};
    for (std::size_t lie = 0; lie < lies_; ++lie) empty[1 + lie] = nobody;
    states_.number(empty);
    rows_.push_back({1, 0});
  }
  /// Lays out one more gathering.
  void lay(std::vector<Option> const& options) {
    KeyTable<State> after;
    std::vector<Makings::Row> rows;
    each(options, [&](State const& state, Makings::Row row) {
      if (too_many_) return;
      auto const before = after.size(), number = after.number(state);
      if (number == before) rows.push_back({0, row.price});
      rows[number].ways += row.ways;
      if (row.price < rows[number].price) rows[number].price = row.price;
      too_many_ = after.size() > static_cast<std::size_t>(most_states);
    });
    states_ = static_cast<KeyTable<State>&&>(after);
    rows_ = static_cast<std::vector<Makings::Row>&&>(rows);
  }
  /// Returns true if there were more ways than the search stores; the result is then unknown.
  [[nodiscard]] bool too_many() const { return too_many_; }
  /// Lays out the last gathering and calls `settle(blame by lie, row)` for each way of making all.
  template <class Settle> void finish(std::vector<Option> const& options, Settle settle) const {
    each(options, [&](State const& state, Makings::Row row) { settle(state.data() + 1, row); });
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
