// SPDX-License-Identifier: MIT
/// One or more sheets folded into gatherings. For each leaf a `Fold` stores the cell of the flat sheet that became the
/// leaf, the side that lay on the type, and the direction in which the head pointed. Formes, conjugates, bolts (folded
/// edges), chain lines and watermarks are all computed from these few bytes.
///
/// To read a folded packet, hold it with its last far-near crease as the spine on the left (on the right for a
/// right-to-left book) and with heads up. This position decides whether the packet is turned over, and so which layer
/// is the first leaf.
#pragma once

#include <bifolium/fold/scheme.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/leaf.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf of a folded sheet: its gathering, and the leaf in that gathering. It prints as "leaf 3 of 8 in gathering 0".
struct LeafAt {
  int gathering{}; ///< the gathering, from 0, in the order of the scheme
  Leaf<> leaf;     ///< the leaf in that gathering
  friend constexpr bool operator==(LeafAt, LeafAt) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, LeafAt at) {
    return out << at.leaf << " in gathering " << at.gathering;
  }
};

/// The two pages of a leaf, with their numbers in the scheme, and how they lay on the flat sheet.
struct LeafPages {
  int recto{};       ///< the page that is read first; the verso is the next page
  bool recto_down{}; ///< true if the recto is on the outer side of the sheet
  /// Returns the page that is read second.
  [[nodiscard]] constexpr int verso() const noexcept { return recto + 1; }
  /// Returns the page that the outer (or only) forme prints.
  [[nodiscard]] constexpr int outer() const noexcept { return recto_down ? recto : recto + 1; }
  /// Returns the page that the inner forme prints.
  [[nodiscard]] constexpr int inner() const noexcept { return recto_down ? recto + 1 : recto; }
  friend constexpr bool operator==(LeafPages, LeafPages) = default;
};

/// The place of a leaf on the flat sheet, which lies with its outer side down.
struct Cell {
  std::uint8_t sheet{}, row{}, column{}; ///< each from 0: rows from the far edge, columns from the left
  std::uint8_t piece{};                  ///< the piece of the scheme that the cell belongs to
  bool recto_down{};                     ///< true if the recto is on the outer side of the sheet
  bool head_far{};                       ///< true if the head pointed away from the compositor
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

/// Sheets folded into N leaves, including all copies. `Fold<>` has up to 128 leaves and takes about 1 KB: pass it by
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
    if (at.leaf.leaves() != g.leaves) broken("the leaf belongs to a gathering of another size");
    return static_cast<std::size_t>(g.first + at.leaf.number() - 1);
  }
  static constexpr std::size_t checked(int i, int count) {
    if (i < 0 || i >= count) broken("the fold has no sheet or gathering with this number");
    return static_cast<std::size_t>(i);
  }

public:
  /// Copies a fold into one with room for exactly its leaves, or for any number of leaves. Precondition: the leaves
  /// fit.
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

  /// An iterator over the leaves of a fold, gathering by gathering. Each element is a `LeafAt`.
  class Iterator {
    Fold const* fold_{};
    int gathering_{}, number_{1};
    friend class Fold;
    constexpr Iterator(Fold const& fold, int gathering) : fold_{&fold}, gathering_{gathering} {}

  public:
    /// The type of an element.
    using value_type = LeafAt;
    /// The type of a distance between two iterators.
    using difference_type = std::ptrdiff_t;
    constexpr Iterator() = default;
    /// Returns the leaf at this position.
    constexpr LeafAt operator*() const { return {gathering_, fold_->gathering(gathering_).leaf(number_)}; }
    /// Moves to the next leaf and returns this iterator.
    constexpr Iterator& operator++() {
      if (++number_ > fold_->gathering(gathering_).leaves()) ++gathering_, number_ = 1;
      return *this;
    }
    /// Moves to the next leaf and returns the iterator as it was before.
    constexpr Iterator operator++(int) {
      auto const here = *this;
      ++*this;
      return here;
    }
    friend constexpr bool operator==(Iterator, Iterator) = default;
  };

  /// Returns the number of leaves of all sheets, including every copy: 8 for an octavo sheet, also if it makes two
  /// copies of 4 leaves.
  [[nodiscard]] constexpr int leaves() const noexcept { return leaf_count_; }
  /// Returns an iterator to the first leaf; the leaves are a range of `LeafAt`, gathering by gathering.
  [[nodiscard]] constexpr Iterator begin() const& BIFOLIUM_LIFETIMEBOUND { return {*this, 0}; }
  Iterator begin() const&& = delete; // it would look at what goes
  /// Returns an iterator past the last leaf.
  [[nodiscard]] constexpr Iterator end() const& BIFOLIUM_LIFETIMEBOUND { return {*this, gathering_count_}; }
  Iterator end() const&& = delete; // it would look at what goes
  /// Returns the number of folded sheets.
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  /// Returns the number of gatherings, including every copy.
  [[nodiscard]] constexpr int gatherings() const noexcept { return gathering_count_; }
  /// Returns the direction in which the book is read.
  [[nodiscard]] constexpr Reads reads() const noexcept { return reads_; }
  /// Returns the format that the scheme states.
  [[nodiscard]] constexpr Format format() const noexcept { return format_; }
  /// Returns sheet `s` as the scheme lays it. Precondition: 0 <= s < sheets().
  [[nodiscard]] constexpr SheetLine const& sheet(int s) const& BIFOLIUM_LIFETIMEBOUND {
    return sheets_[checked(s, sheet_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr SheetLine sheet(int s) const&& { return sheet(s); }
  /// Returns gathering `g`. Precondition: 0 <= g < gatherings().
  [[nodiscard]] constexpr Gathering<> gathering(int g) const {
    return Gathering<>{gatherings_[checked(g, gathering_count_)].leaves};
  }
  /// Returns the page of the scheme with which gathering `g` begins. Copies begin with the same page. Precondition: 0
  /// <= g < gatherings().
  [[nodiscard]] constexpr int first_page(int g) const { return gatherings_[checked(g, gathering_count_)].first_page; }
  /// Returns the number of complete copies of the pages that one printing of all sheets gives: 2 in half-sheet work. It
  /// depends on the pages, not on how the sheet was turned.
  [[nodiscard]] constexpr int copies() const;
  /// Returns true if another gathering has all pages of gathering `g` and is larger, or is as large and comes earlier.
  /// Half-sheet work makes every gathering twice, and the second is the copy. Precondition: 0 <= g < gatherings().
  [[nodiscard]] constexpr bool is_copy(int g) const;

  /// Returns the two pages of a leaf, with their numbers in the scheme. Precondition: the leaf belongs to this fold.
  [[nodiscard]] constexpr LeafPages pages_of(LeafAt at) const {
    return {first_page(at.gathering) + 2 * (at.leaf.number() - 1), cell(at).recto_down};
  }
  /// Returns the place of a leaf on the flat sheet. Precondition: the leaf belongs to this fold.
  [[nodiscard]] constexpr Cell cell(LeafAt at) const { return cells_[index(at)]; }
  /// Returns the leaf that a cell became. Precondition: the sheet has this cell; all three numbers count from 0.
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
  /// Returns true if the gutter was on the right of the leaf, and false if on the left, seen as the flat sheet lies.
  /// Precondition: the leaf belongs to this fold.
  [[nodiscard]] constexpr bool gutter_right(LeafAt at) const {
    auto const c = cell(at);
    return (c.recto_down == c.head_far) == (reads_ == Reads::left_to_right);
  }
  /// Returns the leaf joined to this one at the gutter on this sheet, or no value for a single leaf and for the odd
  /// leaf of a rolled fold, which is joined at a bolt only. Precondition: the leaf belongs to this fold.
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
  // The number of copies of a page changes only at the beginning and at the end of a gathering.
  int least = Scheme::most_gatherings;
  for (int g = 0; g < gatherings(); ++g)
    for (int page : {first_page(g), first_page(g) + gathering(g).pages()}) {
      int times = 0;
      for (int h = 0; h < gatherings(); ++h)
        times += page >= first_page(h) && page < first_page(h) + gathering(h).pages() ? 1 : 0;
      if (times != 0 && times < least) least = times;
    }
  return least;
}

template <int N> constexpr bool Fold<N>::is_copy(int g) const {
  auto const first = first_page(g), end = first + gathering(g).pages();
  for (int h = 0; h < gatherings(); ++h) {
    auto const other_end = first_page(h) + gathering(h).pages();
    if (h == g || first < first_page(h) || other_end < end) continue;
    if (h < g || gathering(h) != gathering(g)) return true;
  }
  return false;
}

/// Folds a scheme: makes its cuts and folds, sets the packets one inside another, and checks that the result is
/// gatherings. Errors, with the line of the scheme's text, if a crease does not run inside its piece, a piece is not
/// folded up, leaves are not conjugate, copies differ, a forme has a page twice, or a half-sheet is turned about the
/// wrong axis.
/// Example: `fold(schemes::octavo.scheme())->leaves() == 8`.
constexpr Expected<Fold<>> fold(Scheme const& scheme);

/// Computes the format from the sheets, by one of the two definitions of `FormatReading`. They differ for paper that
/// was cut before printing. The result is "not determined" if sheets are folded into different numbers of leaves.
template <int N> constexpr Format format_of(Fold<N> const& fold, FormatReading reading) {
  auto const by_sheet = [&](SheetLine const& sheet) {
    auto const cells = sheet.rows * sheet.columns;
    if (reading == FormatReading::pages_per_forme_side || sheet.part == PaperPart::whole) return Format::of(cells);
    auto const parts = cells * static_cast<int>(sheet.part);
    if (parts > Format::most_leaves) return Format{};
    return cells == 1 ? Format::part_of_sheet(parts) : Format::of(parts);
  };
  auto const format = by_sheet(fold.sheet(0));
  for (int s = 1; s < fold.sheets(); ++s)
    if (by_sheet(fold.sheet(s)) != format) return Format{};
  return format;
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::LeafAt> {
  std::size_t operator()(bifolium::LeafAt at) const noexcept {
    return std::hash<bifolium::Leaf<>>{}(at.leaf) * 31U + static_cast<std::size_t>(at.gathering);
  }
};

#include <bifolium/fold/detail/folder.hpp> // the body of fold(scheme)
