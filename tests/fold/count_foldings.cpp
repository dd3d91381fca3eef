// SPDX-License-Identifier: MIT
// How many ways there are to fold a sheet: against figures of an earlier program that listed them, and against plain
// enumeration written here another way. No published source.
#include <bifolium/fold/count_foldings.hpp>

#include "check.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>
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

/// The foldings of a piece; the pieces of one size are counted once.
double foldings(int rows, int columns) {
  static std::map<std::pair<int, int>, double> known;
  auto const [at, is_new] = known.try_emplace({rows, columns}, 0.0);
  if (is_new) at->second = static_cast<double>((*count_foldings(rows, columns)).all());
  return at->second;
}
/// A rectangle: row and column of its corner, rows, columns.
using Rectangle = std::array<int, 4>;
/// The sum of the products of foldings over all ways of cutting a sheet into so many pieces, each by a cut from side to side.
double sum_of_cuts(int rows, int columns, std::size_t pieces) {
  std::set<std::set<Rectangle>> sets{{{0, 0, rows, columns}}};
  for (std::size_t n = 1; n < pieces; ++n) {
    std::set<std::set<Rectangle>> more;
    for (auto const& set : sets)
      for (auto const& [top, left, high, wide] : set) {
        auto rest = set;
        rest.erase({top, left, high, wide});
        auto const cut = [&](Rectangle one, Rectangle other) {
          auto all = rest;
          all.insert(one), all.insert(other);
          more.insert(all);
        };
        for (int k = 1; k < high; ++k) cut({top, left, k, wide}, {top + k, left, high - k, wide});
        for (int k = 1; k < wide; ++k) cut({top, left, high, k}, {top, left + k, high, wide - k});
      }
    sets = more;
  }
  double sum = 0;
  for (auto const& set : sets) {
    double product = 1;
    for (auto const& [top, left, high, wide] : set) product *= product > 0 ? foldings(high, wide) : 0;
    sum += product;
  }
  return sum;
}
double sum_of_sheets(int leaves, std::size_t pieces) {
  double sum = 0;
  for (int rows = 1; rows <= 8; ++rows)
    if (leaves % rows == 0 && leaves / rows <= 8) sum += sum_of_cuts(rows, leaves / rows, pieces);
  return sum;
}

} // namespace

TEST_CASE("the counts of foldings by leaves are those of an earlier program") {
  struct Row {
    int leaves;
    std::int64_t foldings;
    double two_pieces, three_pieces; // to two digits
  };
  // every way of laying so many leaves out in rows and columns of at most 8, taken together
  for (auto const& row : {Row{1, 1, 0, 0},
                          Row{2, 1, 32, 0},
                          Row{3, 2, -1, -1},
                          Row{4, 6, 96, 1.9e3},
                          Row{5, 6, -1, -1},
                          Row{6, 22, 512, 1.6e4},
                          Row{7, 18, -1, -1},
                          Row{8, 90, 2304, 8.4e4},
                          Row{9, 0, -1, -1},
                          Row{10, 50, 1472, 9.5e4},
                          Row{12, 272, 1.0e4, 5.2e5},
                          Row{14, 448, 1.6e4, 1.3e6},
                          Row{15, 0, -1, -1},
                          Row{16, 1924, 1.2e5, 7.7e6},
                          Row{18, 468, 4.9e4, 4.3e6},
                          Row{20, 812, 8.6e4, 5.8e6},
                          Row{21, 0, -1, -1},
                          Row{24, 8668, 1.9e6, 2.6e8},
                          Row{25, 0, -1, -1},
                          Row{28, 11464, 4.2e6, 4.1e8},
                          Row{30, 12268, 3.7e6, 6.1e8},
                          Row{32, 62232, 4.4e7, 6.7e9},
                          Row{35, 0, -1, -1},
                          Row{36, 56416, 3.0e7, 7.3e9},
                          Row{40, 128236, 1.1e8, 4.7e10}}) {
    CAPTURE(row.leaves);
    CHECK(sum_of_sheets(row.leaves, 1) == static_cast<double>(row.foldings));
    if (row.two_pieces < 0) continue; // not in the table
    constexpr double two_digits = 0.05;
    // A piece is read from either end and with either head: four ways. Pieces are set in or gathered one after another in
    // 4 ways if there are two, in 24 if there are three; four ways of laying the sheet on the type are one.
    CHECK(16 * sum_of_sheets(row.leaves, 2) == doctest::Approx(row.two_pieces).epsilon(two_digits));
    CHECK(384 * sum_of_sheets(row.leaves, 3) == doctest::Approx(row.three_pieces).epsilon(two_digits));
  }
}

TEST_CASE("the counts by sheet") {
  struct Row {
    int rows, columns;
    std::int64_t all, fewest;
  };
  for (auto const [rows, columns, all, fewest] :
       {Row{2, 2, 2, 2}, Row{2, 4, 12, 8}, Row{4, 2, 16, 0}, Row{2, 6, 76, 0}, Row{3, 4, 52, 40}, Row{4, 4, 200, 24},
        Row{3, 6, 468, 0}, Row{3, 8, 3204, 0}, Row{4, 6, 2424, 0}, Row{6, 4, 3040, 0}, Row{4, 8, 21008, 96},
        Row{8, 4, 41224, 0}, Row{1, 4, 4, 0}, Row{1, 6, 16, 0}, Row{1, 8, 62, 0}}) {
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
      CHECK((*count_foldings(rows, columns)).all() == static_cast<std::int64_t>(packets.size()));
    }
}

TEST_CASE("leaves one above the other have no spine, so there is no way to fold them") {
  auto const none = *count_foldings(2, 1);
  CHECK(none.all() == 0);
  CHECK(none.with_fewest_folds() == 0);
}

TEST_CASE("what takes too much is said, not begun") {
  CHECK(count_foldings(8, 9).error().problem == Problem::too_many_cells);
  auto const stopped = count_foldings(4, 8, 100);
  REQUIRE_FALSE(stopped);
  CHECK(stopped.error().problem == Problem::too_many_arrangements);
  CHECK(stopped.error().limit == 100);
  CHECK_THROWS_AS(static_cast<void>(count_foldings(0, 4)), BrokenPrecondition);
}
