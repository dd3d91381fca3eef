// SPDX-License-Identifier: MIT
/// Finds the rectangles of a flat sheet that can be pieces: parts that are folded by themselves and make a part of a
/// gathering. Cheap tests come first: rectos and versos alternate like a chessboard; heads are equal along a row and
/// alternate from row to row; the leaves are consecutive, or two runs with a gap after the first half for other pieces;
/// leaves joined in the gathering are side by side across the gutter; and the piece can be folded in this order. A
/// single leaf is always a piece, so every grid has an answer.
#pragma once

#include <bifolium/fold/detail/page_grid.hpp>
#include <bifolium/fold/detail/unfolder.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A rectangle of a flat sheet: rows from `top` up to, but not including, `bottom`, and columns from `left` to `right`.
struct GridRect {
  std::uint8_t sheet{}, top{}, bottom{}, left{}, right{};
  [[nodiscard]] constexpr int rows() const { return bottom - top; }
  [[nodiscard]] constexpr int columns() const { return right - left; }
  [[nodiscard]] constexpr int cells() const { return rows() * columns(); }
  /// Returns its width across lines that run along `line`.
  [[nodiscard]] constexpr int across(Axis line) const { return line == Axis::far_near ? columns() : rows(); }
  [[nodiscard]] constexpr GridRect before(Axis along, int line) const {
    auto part = *this;
    (along == Axis::far_near ? part.right : part.bottom) =
        static_cast<std::uint8_t>(line + (along == Axis::far_near ? left : top));
    return part;
  }
  [[nodiscard]] constexpr GridRect beyond(Axis along, int line) const {
    auto part = *this;
    (along == Axis::far_near ? part.left : part.top) =
        static_cast<std::uint8_t>(line + (along == Axis::far_near ? left : top));
    return part;
  }
  friend constexpr bool operator==(GridRect, GridRect) = default;
};

/// A rectangle as one piece.
struct Piece {
  bool possible{};
  int first{};     ///< the number of its first leaf
  int leaves{};    ///< number of leaves of the piece
  int gap{};       ///< number of leaves of other pieces that are set in after its first `front()` leaves
  Head top_head{}; ///< direction of the heads of its far row
  int price{};     ///< price of its folds
  double orders{}; ///< number of orders of folding
  /// Returns the number of leaves before those that are set in.
  [[nodiscard]] constexpr int front() const { return leaves - leaves / 2; }
  /// Returns the number after the number of its last leaf.
  [[nodiscard]] constexpr int end() const { return first + leaves + gap; }
};

/// Tests rectangles of one sheet.
class PieceFinder {
  SheetGrid const& grid_;
  Unfolder unfolder_;
  std::array<std::uint8_t, Scheme::most_cells> cell_of_{}; // for each leaf of the piece from 0: row * columns + column
  std::array<std::uint8_t, Scheme::most_cells> leaf_of_{}; // for each cell
  std::vector<Stack> flat_{};

  [[nodiscard]] constexpr GridCell const& cell(GridRect const& rect, int row, int column) const {
    return grid_.at(rect.top + row, rect.left + column);
  }
  static constexpr Head turned(Head head, bool turn) {
    return turn ? (head == Head::far_edge ? Head::near_edge : Head::far_edge) : head;
  }

  /// Checks that rectos alternate, and that heads are equal in a row and alternate from row to row. Sets the head of
  /// the far row.
  [[nodiscard]] constexpr bool chessboard(GridRect const& rect, std::optional<Head>& top_head) const {
    bool const corner = cell(rect, 0, 0).recto_down;
    for (int r = 0; r < rect.rows(); ++r)
      for (int c = 0; c < rect.columns(); ++c) {
        auto const& here = cell(rect, r, c);
        if (here.recto == 0 || here.recto_down != (corner == ((r + c) % 2 == 0))) return false;
        if (!here.head) continue;
        auto const top = turned(*here.head, r % 2 != 0);
        if (top_head && *top_head != top) return false;
        top_head = top;
      }
    return true;
  }
  /// Checks that the leaves are one run, or two with a gap after the first half. Fills `cell_of_` and `leaf_of_`.
  constexpr bool runs(GridRect const& rect, Piece& piece) {
    int least = cell(rect, 0, 0).key, most = least;
    for (int r = 0; r < rect.rows(); ++r)
      for (int c = 0; c < rect.columns(); ++c) {
        auto const key = cell(rect, r, c).key;
        least = key < least ? key : least;
        most = key > most ? key : most;
      }
    piece.first = least;
    piece.gap = most - least + 1 - piece.leaves;
    if (piece.gap < 0) return false;
    std::array<bool, Scheme::most_cells> there{};
    for (int r = 0; r < rect.rows(); ++r)
      for (int c = 0; c < rect.columns(); ++c) {
        auto const place = cell(rect, r, c).key - least;
        if (place >= piece.front() && place < piece.front() + piece.gap) return false;
        auto const leaf = place < piece.front() ? place : place - piece.gap;
        auto const at = static_cast<std::size_t>(leaf), here = static_cast<std::size_t>(r * rect.columns() + c);
        if (there[at]) return false;
        there[at] = true;
        cell_of_[at] = static_cast<std::uint8_t>(here);
        leaf_of_[here] = static_cast<std::uint8_t>(leaf);
      }
    return true;
  }
  /// Checks that conjugate leaves are neighbours in a row with the gutter between them. This determines the heads if
  /// they are unknown.
  constexpr bool conjugates_joined(GridRect const& rect, std::optional<Head>& top_head) const {
    auto const n = rect.cells();
    for (int k = 0; k < n / 2; ++k) {
      int const one = cell_of_[static_cast<std::size_t>(k)], other = cell_of_[static_cast<std::size_t>(n - 1 - k)];
      int const left = one < other ? one : other, row = left / rect.columns(), column = left % rect.columns();
      if ((one < other ? other : one) != left + 1 || column + 1 == rect.columns()) return false;
      // The left leaf of the two has its gutter on the right: its recto lies down if its head points far.
      auto const top = turned(cell(rect, row, column).recto_down ? Head::far_edge : Head::near_edge, row % 2 != 0);
      if (top_head && *top_head != top) return false;
      top_head = top;
    }
    return true;
  }
  constexpr PieceFolds unfold(GridRect const& rect) {
    flat_.clear();
    for (int r = 0; r < rect.rows(); ++r)
      for (int c = 0; c < rect.columns(); ++c)
        flat_.push_back({leaf_of_[static_cast<std::size_t>(r * rect.columns() + c)], 1, cell(rect, r, c).recto_down});
    return unfolder_.fold(rect.rows(), rect.columns(), flat_);
  }

public:
  constexpr PieceFinder(SheetGrid const& grid, bool under_allowed) : grid_{grid}, unfolder_{under_allowed} {}

  /// Tests a rectangle as a piece.
  constexpr Piece test(GridRect const& rect) {
    Piece piece;
    piece.leaves = rect.cells();
    std::optional<Head> top_head;
    if (piece.leaves == 1) {
      auto const& only = cell(rect, 0, 0);
      bool const whole_sheet = grid_.cells.size() == 1;
      return {only.recto != 0,
              only.key,
              1,
              0,
              only.head.value_or(Head::far_edge),
              whole_sheet ? 0 : folding_prices.single,
              1};
    }
    if (rect.columns() < 2 || !chessboard(rect, top_head) || !runs(rect, piece) || !conjugates_joined(rect, top_head))
      return piece;
    auto const folds = unfold(rect);
    piece.possible = folds.found();
    piece.top_head = top_head.value_or(Head::far_edge);
    piece.price = folds.price;
    piece.orders = folds.orders;
    return piece;
  }
  /// Returns the cheapest way to fold a rectangle. Precondition: it can be a piece.
  constexpr PieceFolds folds(GridRect const& rect) {
    Piece piece;
    piece.leaves = rect.cells();
    if (piece.leaves == 1) return {0, 1, {}, false};
    if (!runs(rect, piece)) broken("the rectangle cannot be one piece");
    return unfold(rect);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
