// SPDX-License-Identifier: MIT
// How many ways there are to fold a sheet: against figures of an earlier program that listed them, and against plain
// enumeration written here another way. No published source.
#include <bifolium/fold/count_foldings.hpp>

#include "check.hpp"

#include <algorithm>
#include <set>
#include <vector>

using namespace bifolium;

namespace {

/// A sheet folded leaf by leaf without any of the counter's shortcuts.
struct Plain {
  using Packet = std::vector<int>;
  int rows, columns;
  std::vector<Packet> piles;

  static std::set<Packet> packets(int rows, int columns) {
    Plain flat{rows, columns, {}};
    for (int i = 0; i < rows * columns; ++i) flat.piles.push_back({i});
    std::set<Packet> found;
    flat.collect(found, columns);
    return found;
  }

private:
  void collect(std::set<Packet>& found, int width) const {
    if (piles.size() == 1) {
      auto packet = piles[0], turned = packet;
      std::reverse(turned.begin(), turned.end());
      int side = -1;
      for (std::size_t k = 0; k < packet.size() / 2; ++k) {
        int const one = packet[k], other = turned[k];
        if (one / width != other / width || std::abs(one - other) != 1) return;
        int const left = std::min(one, other) % width % 2;
        if (side >= 0 && side != left) return;
        side = left;
      }
      found.insert(std::min(packet, turned));
      return;
    }
    for (bool const columnwise : {false, true})
      for (int line = 1; line < (columnwise ? columns : rows); ++line)
        for (bool const under : {false, true}) over(columnwise, line, under).collect(found, width);
  }
  /// The part before the line goes over (or under) the rest, whichever is greater.
  [[nodiscard]] Plain over(bool columnwise, int line, bool under) const {
    int const across = columnwise ? columns : rows;
    int const wide = std::max(line, across - line);
    Plain after{columnwise ? rows : wide, columnwise ? wide : columns, {}};
    for (int r = 0; r < after.rows; ++r)
      for (int c = 0; c < after.columns; ++c) {
        int const k = columnwise ? c : r; // so far beyond the line, on the side that stays and on the one that moves
        int const stays = line + k, moves = line - 1 - k;
        auto const pile = [&](int at) {
          if (at < 0 || at >= across) return Packet{};
          return piles[static_cast<std::size_t>(columnwise ? r * columns + at : at * columns + c)];
        };
        auto bottom = pile(stays), top = pile(moves);
        std::reverse(top.begin(), top.end());
        if (under) std::swap(bottom, top);
        bottom.insert(bottom.end(), top.begin(), top.end());
        after.piles.push_back(bottom);
      }
    return after;
  }
};

} // namespace

TEST_CASE("the counts of foldings by leaves are those of an earlier program") {
  struct Row {
    int leaves;
    std::int64_t foldings;
  };
  // every way of laying so many leaves out in rows and columns of at most 8, taken together
  for (auto const [leaves, foldings] :
       {Row{1, 1}, Row{2, 1}, Row{3, 2}, Row{4, 6}, Row{5, 6}, Row{6, 22}, Row{7, 18}, Row{8, 90}, Row{10, 50},
        Row{12, 272}, Row{14, 448}, Row{16, 1924}, Row{18, 468}}) {
    std::int64_t all = 0;
    for (int rows = 1; rows <= 8; ++rows)
      if (leaves % rows == 0 && leaves / rows <= 8) all += count_foldings(rows, leaves / rows)->all();
    CAPTURE(leaves);
    CHECK(all == foldings);
  }
}

TEST_CASE("the counts by sheet") {
  struct Row {
    int rows, columns;
    std::int64_t all, fewest;
  };
  for (auto const [rows, columns, all, fewest] :
       {Row{2, 2, 2, 2}, Row{2, 4, 12, 8}, Row{4, 2, 16, 0}, Row{2, 6, 76, 0}, Row{3, 4, 52, 40}, Row{4, 4, 200, 24},
        Row{3, 6, 468, 0}, Row{1, 4, 4, 0}, Row{1, 6, 16, 0}, Row{1, 8, 62, 0}}) {
    CAPTURE(rows);
    CAPTURE(columns);
    auto const count = *count_foldings(rows, columns);
    CHECK(count.all() == all);
    if (fewest != 0) CHECK(count.with_fewest_folds() == fewest);
  }
}

TEST_CASE("plain enumeration counts the same packets") {
  for (int rows = 1; rows <= 4; ++rows)
    for (int columns = 1; columns <= 6; ++columns) {
      if (rows * columns > 12) continue;
      CAPTURE(rows);
      CAPTURE(columns);
      auto const packets = Plain::packets(rows, columns);
      CHECK(count_foldings(rows, columns)->all() == static_cast<std::int64_t>(packets.size()));
    }
}

TEST_CASE("what takes too much is said, not begun") {
  CHECK(count_foldings(8, 9).error().problem == Problem::too_many_cells);
  auto const stopped = count_foldings(4, 8, 100);
  REQUIRE_FALSE(stopped);
  CHECK(stopped.error().problem == Problem::too_many_arrangements);
  CHECK(stopped.error().limit == 100);
  CHECK_THROWS_AS(static_cast<void>(count_foldings(0, 4)), BrokenPrecondition);
}
