// SPDX-License-Identifier: MIT
/// A sheet (or several) folded into gatherings: for each leaf the cell of the flat sheet it came from, which of its
/// sides lay on the type and which way its head pointed there. Everything else - formes, conjugates, bolts, chain lines,
/// watermarks - is read off these few bytes a leaf.
///
/// To read a folded packet one holds it by the last crease that runs far-near, as its spine, on the left (on the right
/// for a right-to-left book) and heads up; that settles whether it is turned over, so which layer is the first leaf.
#pragma once

#include <bifolium/fold/layers.hpp>
#include <bifolium/fold/scheme.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/leaf.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf of a folded sheet: the gathering, counting from 0 in the order of the scheme, and the leaf in it.
struct LeafAt {
  int gathering{};
  Leaf<> leaf;
  friend constexpr bool operator==(LeafAt, LeafAt) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, LeafAt at) {
    return out << at.leaf << " in gathering " << at.gathering;
  }
};

/// Where a leaf lay on the flat sheet, outer side down.
struct Cell {
  std::uint8_t sheet{}, row{}, column{}; ///< counting from 0: rows from the far edge, columns from the left
  std::uint8_t piece{};                  ///< the piece of the scheme it was folded with
  bool recto_down{};                     ///< the recto is on the outer side of the sheet
  bool head_far{};                       ///< the head pointed away from the compositor
  friend constexpr bool operator==(Cell, Cell) = default;
};

namespace detail {
class Folder;
struct FoldedGathering {
  std::uint8_t first{}, leaves{};
  std::uint16_t first_page{};
  friend constexpr bool operator==(FoldedGathering, FoldedGathering) = default;
};
constexpr int capacity(int n, int most) { return n == dynamic ? most : n; }
} // namespace detail

/// Sheets folded into N leaves together, all copies counted. A `Fold<>` holds up to 128 and is about 1 KB: pass it by
/// reference.
template <int N> class Fold {
  static constexpr auto room = static_cast<std::size_t>(detail::capacity(N, Scheme::most_cells));
  std::array<Cell, room> cells_{};           // leaf by leaf, gathering by gathering
  std::array<std::uint8_t, room> leaf_of_{}; // cell by cell, sheet by sheet: which of cells_
  std::array<SheetLine, Scheme::most_sheets> sheets_{};
  std::array<std::uint8_t, Scheme::most_sheets> first_cell_{};
  std::array<detail::FoldedGathering, Scheme::most_gatherings> gatherings_{};
  std::uint8_t leaf_count_{}, sheet_count_{}, gathering_count_{};
  Reads reads_{};
  Format format_{};

  friend class detail::Folder;
  template <int> friend class Fold;
  constexpr Fold() = default;

  [[nodiscard]] constexpr std::size_t index(LeafAt at) const {
    auto const& g = gatherings_[checked(at.gathering, gathering_count_)];
    if (at.leaf.leaves() != g.leaves) broken("the leaf is of a gathering of another size");
    return static_cast<std::size_t>(g.first + at.leaf.number() - 1);
  }
  static constexpr std::size_t checked(int i, int count) {
    if (i < 0 || i >= count) broken("the fold has no sheet or gathering of that number");
    return static_cast<std::size_t>(i);
  }

public:
  /// The same fold with room for exactly its leaves, or for any number. pre: the leaves fit.
  template <int M>
  constexpr explicit(N != dynamic) Fold(Fold<M> const& other) requires(M != N)
      : sheets_{other.sheets_}, first_cell_{other.first_cell_}, gatherings_{other.gatherings_},
        leaf_count_{other.leaf_count_}, sheet_count_{other.sheet_count_},
        gathering_count_{other.gathering_count_}, reads_{other.reads_}, format_{other.format_} {
    if (N != dynamic && other.leaves() != N) broken("the fold has another number of leaves");
    for (std::size_t i = 0; i < other.leaf_count_; ++i) {
      cells_[i] = other.cells_[i];
      leaf_of_[i] = other.leaf_of_[i];
    }
  }

  [[nodiscard]] constexpr int leaves() const noexcept { return leaf_count_; }
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  [[nodiscard]] constexpr int gatherings() const noexcept { return gathering_count_; }
  [[nodiscard]] constexpr Reads reads() const noexcept { return reads_; }
  /// As the scheme states it.
  [[nodiscard]] constexpr Format format() const noexcept { return format_; }
  /// pre (these three): an index counting from 0.
  [[nodiscard]] constexpr SheetLine const& sheet(int s) const { return sheets_[checked(s, sheet_count_)]; }
  [[nodiscard]] constexpr Gathering<> gathering(int g) const {
    return Gathering<>{gatherings_[checked(g, gathering_count_)].leaves};
  }
  /// The page of the scheme with which gathering g begins; copies begin with the same.
  [[nodiscard]] constexpr int first_page(int g) const { return gatherings_[checked(g, gathering_count_)].first_page; }
  /// Whole copies of the pages that one printing of all the sheets gives: 2 in half-sheet work.
  /// It follows from the pages, not from how the sheet was turned.
  [[nodiscard]] constexpr int copies() const;

  /// Where the leaf lay. pre: a leaf of this fold.
  [[nodiscard]] constexpr Cell cell(LeafAt at) const { return cells_[index(at)]; }
  /// The leaf made of a cell. pre: a cell of this fold, counting from 0.
  [[nodiscard]] constexpr LeafAt leaf_at(int sheet_number, int row, int column) const {
    auto const& lay = sheet(sheet_number);
    if (row < 0 || row >= lay.rows || column < 0 || column >= lay.columns) broken("the sheet has no such cell");
    auto const s = static_cast<std::size_t>(sheet_number);
    int const leaf = leaf_of_[static_cast<std::size_t>(first_cell_[s] + row * lay.columns + column)];
    int g = 0;
    while (leaf >= gatherings_[static_cast<std::size_t>(g)].first + gatherings_[static_cast<std::size_t>(g)].leaves)
      ++g;
    return {g, gathering(g).leaf(leaf + 1 - gatherings_[static_cast<std::size_t>(g)].first)};
  }
  /// The side of the flat sheet on which the gutter lay, seen as the sheet lies: right or left.
  [[nodiscard]] constexpr bool gutter_right(LeafAt at) const {
    auto const c = cell(at);
    return (c.recto_down == c.head_far) == (reads_ == Reads::left_to_right);
  }
  /// The leaf joined to this one at the gutter on this sheet; none for single leaves and for the odd leaf of a rolled
  /// fold, which hangs on a bolt only.
  [[nodiscard]] constexpr std::optional<LeafAt> conjugate(LeafAt at) const {
    auto const here = cell(at);
    auto const& lay = sheet(here.sheet);
    auto const column = here.column + (gutter_right(at) ? 1 : -1);
    if (column < 0 || column >= lay.columns) return std::nullopt;
    auto const other = leaf_at(here.sheet, here.row, column);
    if (cell(other).piece != here.piece || gutter_right(other) == gutter_right(at)) return std::nullopt;
    return other;
  }

  friend constexpr bool operator==(Fold const&, Fold const&) = default;
};

template <int N> constexpr int Fold<N>::copies() const {
  auto const stands_in = [&](int page, detail::FoldedGathering const& g) {
    return page >= g.first_page && page < g.first_page + 2 * g.leaves;
  };
  int least = Scheme::most_gatherings;
  for (int g = 0; g < gatherings(); ++g) // within a stretch between beginnings of gatherings the count is the same
    for (int end = 0; end < 2; ++end) {
      auto const& here = gatherings_[static_cast<std::size_t>(g)];
      auto const page = end == 0 ? here.first_page : here.first_page + 2 * here.leaves - 1;
      int times = 0;
      for (int h = 0; h < gatherings(); ++h) times += stands_in(page, gatherings_[static_cast<std::size_t>(h)]) ? 1 : 0;
      least = times < least ? times : least;
    }
  return least;
}

namespace detail {

/// Carries a scheme out and builds the fold, or finds what keeps it from being one.
class Folder {
  Scheme const& scheme_;
  Layers layers_;
  Fold<> fold_{};
  Error error_{};
  std::array<std::uint8_t, Scheme::most_pieces> spine_line_{}, spine_step_{}; // of the last far-near crease

  constexpr bool fail(Problem problem, SourcePlace place, std::string_view found = {}, std::int64_t limit = 0) {
    error_ = error_at(problem, place.line, place.column, found.data(), found.size(), limit);
    return false;
  }

  constexpr bool take_steps() {
    for (int i = 0; i < scheme_.steps(); ++i) {
      auto const& step = scheme_.step(i);
      char const line[2]{static_cast<char>('0' + step.line / 10), static_cast<char>('0' + step.line % 10)};
      if (!layers_.take(step))
        return fail(Problem::line_outside_piece, step.place, {line + (step.line < 10), step.line < 10 ? 1U : 2U});
      if (step.kind == Step::Kind::fold && step.along == Axis::far_near) {
        spine_line_[step.piece] = step.line;
        spine_step_[step.piece] = static_cast<std::uint8_t>(i + 1);
      }
    }
    return true;
  }

  /// What the packet's lie says: whether it is turned over to be read.
  constexpr bool packet(Placed const& placed, bool& turned_over) {
    auto const name = scheme_.piece_name(placed.piece).view();
    auto const leaves = layers_.count(placed.piece);
    auto const& bottom = layers_.layer(placed.piece, 0);
    int most_apart = 0;
    for (int i = 1; i < leaves; ++i) {
      auto const& layer = layers_.layer(placed.piece, i);
      for (auto apart : {layer.row - bottom.row, layer.column - bottom.column}) {
        apart = apart < 0 ? -apart : apart;
        most_apart = apart > most_apart ? apart : most_apart;
      }
    }
    if (most_apart != 0) return fail(Problem::not_folded_up, placed.place, name, most_apart + 1);
    if (leaves == 1) return turned_over = !placed.recto_inner, true;
    if (spine_step_[placed.piece] == 0) return fail(Problem::no_spine, placed.place, name);
    bool const spine_right = bottom.column < spine_line_[placed.piece];
    bool const spine_at_hand = spine_right == (scheme_.reads() == Reads::right_to_left);
    turned_over = spine_at_hand == placed.heads_near;
    return true;
  }

  constexpr void lay_down(int leaf, Placed const& placed, Layer const& layer, bool turned_over) {
    // Turned over, the reader meets the undersides first.
    bool const recto_down = turned_over != layer.outer_up;
    bool const head_far = placed.heads_near == layer.end_for_end;
    auto const at = static_cast<std::size_t>(leaf);
    fold_.cells_[at] = {layer.sheet, layer.home_row, layer.home_column, placed.piece, recto_down, head_far};
    auto const cell =
        fold_.first_cell_[layer.sheet] + layer.home_row * fold_.sheets_[layer.sheet].columns + layer.home_column;
    fold_.leaf_of_[static_cast<std::size_t>(cell)] = static_cast<std::uint8_t>(leaf);
  }

  /// Two cells that hang together across the gutter of both.
  [[nodiscard]] constexpr bool joined(Cell a, Cell b) const {
    auto const right = [&](Cell c) { return (c.recto_down == c.head_far) == (fold_.reads_ == Reads::left_to_right); };
    auto const& left_one = a.column < b.column ? a : b;
    auto const& right_one = a.column < b.column ? b : a;
    return a.sheet == b.sheet && a.piece == b.piece && a.row == b.row && left_one.column + 1 == right_one.column &&
           right(left_one) && !right(right_one);
  }

  constexpr bool gather(GatheringLine const& line) {
    int leaves = 0;
    for (int i = 0; i < line.count; ++i) leaves += layers_.count(scheme_.placed(line.first + i).piece);
    int front = fold_.leaf_count_, back = front + leaves;
    std::size_t const number = fold_.gathering_count_;
    int first_page = line.first_page;
    if (first_page == 0) {
      auto const above = number == 0 ? FoldedGathering{0, 0, 1} : fold_.gatherings_[number - 1];
      first_page = above.first_page + 2 * above.leaves;
    }
    fold_.gatherings_[number] = {fold_.leaf_count_, static_cast<std::uint8_t>(leaves),
                                 static_cast<std::uint16_t>(first_page)};
    fold_.leaf_count_ = static_cast<std::uint8_t>(fold_.leaf_count_ + leaves);
    ++fold_.gathering_count_;

    bool goes_behind = false;
    for (int i = 0; i < line.count; ++i) {
      auto const& placed = scheme_.placed(line.first + i);
      bool turned_over{};
      if (!packet(placed, turned_over)) return false;
      auto const n = layers_.count(placed.piece);
      auto const behind = goes_behind ? 1 : n / 2; // the others go before what lies inside
      back -= behind;
      auto const position = [&](int k) { return k < n - behind ? front + k : back + k - (n - behind); };
      for (int k = 0; k < n; ++k)
        lay_down(position(k), placed, layers_.layer(placed.piece, turned_over ? k : n - 1 - k), turned_over);
      for (int k = 0; n > 1 && k < n / 2; ++k)
        if (!joined(cell(position(k)), cell(position(n - 1 - k))))
          return fail(Problem::leaves_not_conjugate, scheme_.step(spine_step_[placed.piece] - 1).place,
                      scheme_.piece_name(placed.piece).view(), k + 1);
      front += n - behind;
      goes_behind = placed.opens_pair;
    }
    return true;
  }
  [[nodiscard]] constexpr Cell cell(int leaf) const { return fold_.cells_[static_cast<std::size_t>(leaf)]; }

  /// Gatherings that share pages must be copies of them, and one forme holds a page once.
  constexpr bool copies_agree() {
    for (std::size_t g = 1; g < fold_.gathering_count_; ++g)
      for (std::size_t h = 0; h < g; ++h) {
        auto const &a = fold_.gatherings_[g], &b = fold_.gatherings_[h];
        auto const first = a.first_page > b.first_page ? a.first_page : b.first_page;
        auto const end_a = a.first_page + 2 * a.leaves, end_b = b.first_page + 2 * b.leaves;
        auto const end = end_a < end_b ? end_a : end_b;
        if (first >= end) continue;
        auto const& line = scheme_.gathering(static_cast<int>(g));
        bool const other_make = a.first_page == b.first_page && a.leaves != b.leaves;
        if (other_make || (a.first_page - b.first_page) % 2 != 0)
          return fail(Problem::copies_differ, line.place, line.name.view(), first);
        for (auto page = first; page < end; page = page + 2) {
          auto const one = cell(a.first + (page - a.first_page) / 2), other = cell(b.first + (page - b.first_page) / 2);
          if (one.sheet == other.sheet && one.recto_down == other.recto_down)
            return fail(Problem::page_twice_in_forme, line.place, {}, page);
        }
      }
    return true;
  }

  struct LeafPages {
    int outer, inner;
  };
  [[nodiscard]] constexpr LeafPages pages(int leaf) const {
    std::size_t g = 0;
    while (leaf >= fold_.gatherings_[g].first + fold_.gatherings_[g].leaves) ++g;
    auto const recto = fold_.gatherings_[g].first_page + 2 * (leaf - fold_.gatherings_[g].first);
    return cell(leaf).recto_down ? LeafPages{recto, recto + 1} : LeafPages{recto + 1, recto};
  }

  /// One forme prints both sides: what the second impression puts on the back of each leaf must be its other page.
  constexpr bool second_impressions_agree() {
    for (std::size_t s = 0; s < fold_.sheet_count_; ++s) {
      auto const& lay = fold_.sheets_[s];
      if (!lay.one_forme) continue;
      bool const sideways = lay.turned_about == Axis::far_near;
      for (int r = 0; r < lay.rows; ++r)
        for (int c = 0; c < lay.columns; ++c) {
          auto const at = [&](int row, int column) {
            return int{fold_.leaf_of_[static_cast<std::size_t>(fold_.first_cell_[s] + row * lay.columns + column)]};
          };
          auto const here = at(r, c);
          auto const there = sideways ? at(r, lay.columns - 1 - c) : at(lay.rows - 1 - r, c);
          auto const page = pages(here).inner;
          if (pages(there).outer != page) return fail(Problem::backed_by_other_leaf, lay.place, {}, pages(here).outer);
          // turned sideways the heads keep their direction, turned end over end they exchange it
          if ((cell(there).head_far == cell(here).head_far) != sideways)
            return fail(Problem::backed_head_to_tail, lay.place, {}, pages(here).outer);
        }
    }
    return true;
  }

  constexpr bool whole() {
    fold_.reads_ = scheme_.reads();
    fold_.format_ = scheme_.format();
    int cells = 0;
    for (int s = 0; s < scheme_.sheets(); ++s) {
      auto const& sheet = scheme_.sheet(s);
      fold_.sheets_[fold_.sheet_count_] = sheet;
      fold_.first_cell_[fold_.sheet_count_++] = static_cast<std::uint8_t>(cells);
      cells += sheet.rows * sheet.columns;
    }
    if (!take_steps()) return false;
    for (int g = 0; g < scheme_.gatherings(); ++g)
      if (!gather(scheme_.gathering(g))) return false;
    return copies_agree() && second_impressions_agree();
  }

public:
  constexpr explicit Folder(Scheme const& scheme) : scheme_{scheme}, layers_{scheme} {}
  constexpr Expected<Fold<>> result() {
    if (whole()) return fold_;
    return error_;
  }
};

} // namespace detail

/// Folds a scheme. error: what keeps it from giving gatherings, with the line of its text: a crease off the piece, a
/// piece not folded up, leaves that are not conjugate, copies that differ, a page twice in one forme, a half-sheet turned
/// about the wrong axis.
constexpr Expected<Fold<>> fold(Scheme const& scheme) { return detail::Folder{scheme}.result(); }

} // namespace v0
} // namespace bifolium
