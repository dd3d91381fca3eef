// SPDX-License-Identifier: MIT
/// Decides for one piece of paper with numbered leaves: is there an order of folds that brings the leaves into the
/// order of their numbers, which is the cheapest, and how many are there?
///
/// A fold lays whole stacks on whole stacks and never puts a leaf between two that lie together. So at every moment the
/// leaves at one place are consecutive in the finished packet, and three numbers describe a place: its lowest leaf, the
/// number of leaves, and whether their numbers rise or fall from the table upwards. A fold joins stacks place by place;
/// if the numbers of one stack do not continue those of the other, the fold does not lead to this packet. The search
/// starts from the flat piece and stores every arrangement once, so it counts orders of folding without listing them.
#pragma once

#include <bifolium/fold/folding_prices.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The leaves that lie at one place.
struct Stack {
  std::uint8_t lowest{}, leaves{1};
  bool rising{}; ///< true if the numbers rise from the table upwards
  friend constexpr bool operator==(Stack, Stack) = default;
  [[nodiscard]] constexpr Stack turned_over() const { return {lowest, leaves, !rising}; }
};

/// A crease, given by lines of the flat piece.
struct Crease {
  Axis along{};
  std::uint8_t line{};
  bool far_or_left_moves{}, under{};
};

/// Shortens a vector. (With resize(), clang with libstdc++ leaves the constant expression.)
template <class T> constexpr void cut_back(std::vector<T>& values, std::size_t size) {
  while (values.size() > size) values.pop_back();
}

/// The folds of one piece.
struct PieceFolds {
  static constexpr int none = 1 << 28;
  int price{none};
  double orders{};               ///< number of orders of folding that give the same packet
  std::vector<Crease> creases{}; ///< the creases of the cheapest order
  /// true if the heads of the packet point in the other direction than those of the far row did
  bool heads_turned{};
  [[nodiscard]] constexpr bool found() const { return price < none; }
};

/// Folds one piece in all ways that bring its leaves into their order.
///
/// Laying one part over the other, or the other over the first, gives the same packet turned over. So each fold is
/// tried once, with the larger part staying (of equal parts the left and the near one), and an arrangement means itself
/// and the same turned over. The prices of the two differ, because the part that lies over in one lies under in the
/// other; so an arrangement has a price for each way up. After a crease in the middle the folder can choose which way
/// up the packet lies. After another crease the larger part stays, since it would project beyond the smaller part if it
/// were laid over it.
class Unfolder {
  struct Way { // one way to continue folding, for one way up
    int price{PieceFolds::none};
    Crease crease{}; ///< in lines of this arrangement, with the smaller part moving
    std::uint32_t after{};
    bool turns{}; ///< true if the larger part moves instead, so that the packet lies the other way up
  };
  struct State {
    std::uint8_t rows{}, columns{};
    bool known{};
    std::uint32_t first{}, next{}; // its stacks, and the next state with the same hash
    std::array<Way, 2> ways{};     // as it is, and turned over
    double orders{};
  };
  static constexpr std::size_t heads = 128;
  static constexpr std::uint32_t nowhere = 0xFFFFFFFFU;
  std::vector<Stack> stacks_{};
  std::vector<State> states_{};
  std::array<std::uint32_t, heads> by_hash_{};
  bool under_allowed_;

  [[nodiscard]] constexpr std::size_t hash_of(std::uint32_t first, std::size_t count, int columns) const {
    auto hash = static_cast<std::uint32_t>(columns);
    for (std::size_t i = 0; i < count; ++i) {
      auto const& stack = stacks_[first + i];
      hash = hash * 0x01000193U ^ (stack.lowest * 2U + (stack.rising ? 1U : 0U));
    }
    return (hash ^ (hash >> 15U)) % heads;
  }
  /// Returns the state whose stacks were written last; they are removed again if the state is known.
  constexpr std::uint32_t state_of(int rows, int columns, std::uint32_t first) {
    auto const count = static_cast<std::size_t>(rows * columns);
    auto& head = by_hash_[hash_of(first, count, columns)];
    for (auto at = head; at != nowhere; at = states_[at].next) {
      if (states_[at].columns != columns || states_[at].rows != rows) continue;
      std::size_t same = 0;
      while (same < count && stacks_[states_[at].first + same] == stacks_[first + same]) ++same;
      if (same == count) return cut_back(stacks_, first), at;
    }
    State state{};
    state.rows = static_cast<std::uint8_t>(rows);
    state.columns = static_cast<std::uint8_t>(columns);
    state.first = first;
    state.next = head;
    head = static_cast<std::uint32_t>(states_.size());
    states_.push_back(state);
    return head;
  }

  /// Puts `upper` on `lower`. The result has no leaves if the numbers of one do not continue those of the other.
  static constexpr Stack joined(Stack lower, Stack upper) {
    if (lower.rising != upper.rising) return {0, 0, false};
    auto const &first = lower.rising ? lower : upper, &second = lower.rising ? upper : lower;
    if (first.lowest + first.leaves != second.lowest) return {0, 0, false};
    return {first.lowest, static_cast<std::uint8_t>(first.leaves + second.leaves), lower.rising};
  }
  /// Writes the arrangement after the fold. Returns false if the fold interrupts consecutive numbers.
  constexpr bool lay_over(State const& from, Crease crease) {
    bool const by_column = crease.along == Axis::far_near;
    int const across = by_column ? from.columns : from.rows, rest = by_column ? from.rows : from.columns;
    int const line = crease.line, wide = crease.far_or_left_moves ? across - line : line;
    int const start = crease.far_or_left_moves ? line : 0;
    auto const stack = [&](int at, int other) {
      return stacks_[from.first +
                     static_cast<std::uint32_t>(by_column ? other * from.columns + at : at * from.columns + other)];
    };
    int const outer = by_column ? rest : wide, inner = by_column ? wide : rest;
    for (int r = 0; r < outer; ++r)
      for (int c = 0; c < inner; ++c) {
        int const at = start + (by_column ? c : r), other = by_column ? r : c, mate = 2 * line - 1 - at;
        auto kept = stack(at, other);
        if (mate >= 0 && mate < across) {
          auto const moved = stack(mate, other).turned_over();
          kept = crease.under ? joined(moved, kept) : joined(kept, moved);
          if (kept.leaves == 0) return false;
        }
        stacks_.push_back(kept);
      }
    return true;
  }

  constexpr void try_crease(std::uint32_t number, Crease crease) {
    auto const from = states_[number]; // a copy, because states_ grows
    auto const first = static_cast<std::uint32_t>(stacks_.size());
    if (!lay_over(from, crease)) return cut_back(stacks_, first);
    bool const by_column = crease.along == Axis::far_near;
    int const across = by_column ? from.columns : from.rows;
    int const wide = crease.far_or_left_moves ? across - crease.line : crease.line;
    auto const after = state_of(by_column ? from.rows : wide, by_column ? wide : from.columns, first);
    solve(after);
    auto const there = states_[after].ways;
    states_[number].orders += states_[after].orders;
    bool const halves = 2 * crease.line == across;
    for (std::size_t up = 0; up < 2; ++up) {
      bool const turns = halves && there[1 - up].price < there[up].price;
      bool const under = crease.under == (up == 0);
      auto const& each = folding_prices;
      auto const price =
          there[turns ? 1 - up : up].price + each.fold + (halves ? 0 : each.uneven) + (under ? each.under : 0);
      if (auto& way = states_[number].ways[up]; price < way.price) way = {price, crease, after, turns};
    }
  }
  constexpr void solve(std::uint32_t number) {
    if (states_[number].known) return;
    int const rows = states_[number].rows, columns = states_[number].columns;
    if (rows == 1 && columns == 1)
      states_[number].ways[0].price = states_[number].ways[1].price = 0, states_[number].orders = 1;
    for (auto along : {Axis::far_near, Axis::left_right}) {
      int const across = along == Axis::far_near ? columns : rows;
      for (int line = 1; line < across; ++line) {
        // Of equal parts the right one goes over the left, and the far one over the near.
        bool const first_moves = along == Axis::far_near ? 2 * line < across : 2 * line <= across;
        try_crease(number, {along, static_cast<std::uint8_t>(line), first_moves, false});
        if (under_allowed_) try_crease(number, {along, static_cast<std::uint8_t>(line), first_moves, true});
      }
    }
    states_[number].known = true;
  }

  /// The lines of an arrangement on the flat piece: line k is `start + k`, or `start - k` if it lies mirrored.
  struct Lines {
    int start{};
    bool mirrored{};
    [[nodiscard]] constexpr int operator()(int line) const { return mirrored ? start - line : start + line; }
  };
  /// Writes the cheapest creases. Returns true if the heads of the packet point in the other direction than those of
  /// the piece's first row.
  constexpr bool trace(std::uint32_t at, std::vector<Crease>& creases) const {
    std::array<Lines, 2> lines{}; // of rows and of columns
    int row = 0;
    for (std::size_t up = 0; states_[at].rows * states_[at].columns > 1;) {
      auto const& way = states_[at].ways[up];
      auto crease = way.crease;
      auto& across = lines[crease.along == Axis::far_near ? 1 : 0];
      auto const line = across(crease.line);
      auto const far_or_left = (crease.far_or_left_moves != across.mirrored) != way.turns;
      if (crease.far_or_left_moves) {
        if (crease.along == Axis::left_right) row += crease.line;
        across.start = line;
      }
      if (way.turns) across = {2 * line - across.start, !across.mirrored};
      crease.far_or_left_moves = far_or_left;
      crease.under = crease.under == (up == 0);
      crease.line = static_cast<std::uint8_t>(line);
      creases.push_back(crease);
      at = way.after;
      up = way.turns ? 1 - up : up;
    }
    return (row % 2 != 0) != lines[0].mirrored;
  }

public:
  constexpr explicit Unfolder(bool under_allowed = true) : under_allowed_{under_allowed} {}

  /// Finds the cheapest folds. `flat` has the stacks of one leaf each, row by row, with numbers from 0. The creases are
  /// given by lines of the flat piece.
  constexpr PieceFolds fold(int rows, int columns, std::vector<Stack> const& flat) {
    stacks_ = flat;
    states_.clear();
    for (auto& head : by_hash_) head = nowhere;
    auto const at = state_of(rows, columns, 0);
    solve(at);
    PieceFolds result{states_[at].ways[0].price, states_[at].orders, {}, false};
    if (result.found()) result.heads_turned = trace(at, result.creases);
    return result;
  }
  /// Returns the number of arrangements in the last search.
  [[nodiscard]] constexpr std::size_t states() const { return states_.size(); }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
