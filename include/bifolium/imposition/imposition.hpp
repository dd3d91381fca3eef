// SPDX-License-Identifier: MIT
/// Imposition is where each page of type lies on the stone so that the folded sheet reads. The outer forme prints the side that
/// lay on the type, the inner forme the other. A forme is drawn as the type lies, far row first; the printed side is its
/// left-right mirror. Where one forme prints both sides (half-sheet work) there is no outer and inner forme, only an
/// outer and an inner side of each copy. Which forme went to press first is another matter, and left to the caller: both
/// orders are history (Moxon 1683 against Savage 1841).
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/forme_side.hpp>

namespace bifolium {
inline namespace v0 {

/// A page as it is in a forme.
struct ImposedPage {
  std::uint16_t page{}; ///< of the scheme, which is not the page of the book
  Head head{};          ///< which way its head points
  friend constexpr bool operator==(ImposedPage, ImposedPage) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, ImposedPage s) {
    return out << s.page << (s.head == Head::near_edge ? "↓" : "");
  }
};
namespace detail {
inline constexpr int highest_page = 65535;
constexpr std::uint16_t page_number(int page) {
  if (page < 1 || page > highest_page) broken("pages of a scheme are counted from 1 to 65535");
  return static_cast<std::uint16_t>(page);
}
} // namespace detail
/// Page `page` with its head far (up, as the forme is drawn) or near (down). pre: 1 to 65535.
constexpr ImposedPage head_up(int page) { return {detail::page_number(page), Head::far_edge}; }
/// Page `page` with its head towards the compositor.
constexpr ImposedPage head_down(int page) { return {detail::page_number(page), Head::near_edge}; }

/// The position of a page: sheet, row from the far edge and column from the left of the forme as the type lies, from 0.
struct FormePosition {
  std::uint8_t sheet{}, row{}, column{}; ///< the sheet, and the place in its forme: all from 0
  Side side{};                           ///< outer or inner forme
  Head head{};                           ///< which way the head points
  friend constexpr bool operator==(FormePosition, FormePosition) = default;
};

/// One forme whole, row by row from the far edge: a view of rows x columns pages in an `Imposition`, valid while that is.
class FormeView {
  ImposedPage const* first_;
  int rows_, columns_;

public:
  /// A view of `row_count * column_count` pages, the far row first.
  constexpr FormeView(ImposedPage const* first, int row_count, int column_count)
      : first_{first}, rows_{row_count}, columns_{column_count} {}
  /// Rows of pages, from the far edge.
  [[nodiscard]] constexpr int rows() const noexcept { return rows_; }
  /// Columns of pages, from the left.
  [[nodiscard]] constexpr int columns() const noexcept { return columns_; }
  /// An iterator to the first element.
  [[nodiscard]] constexpr ImposedPage const* begin() const noexcept { return first_; }
  /// An iterator past the last element.
  [[nodiscard]] constexpr ImposedPage const* end() const noexcept { return first_ + rows_ * columns_; }
};

/// The formes of a fold with N leaves. An `Imposition<>` holds up to 128 leaves and is about 2.5 KB.
template <int N> class Imposition {
  static constexpr auto room = static_cast<std::size_t>(detail::capacity(N, Scheme::most_cells));
  struct Run { // pages without a gap between them
    std::uint16_t first{}, count{}, slot{};
    friend constexpr bool operator==(Run, Run) = default;
  };
  std::array<ImposedPage, room> outer_{}, inner_{};
  std::array<FormePosition, 2 * room> places_{};
  std::array<Run, Scheme::most_gatherings> runs_{};
  std::array<SheetLine, Scheme::most_sheets> sheets_{};
  std::array<std::uint8_t, Scheme::most_sheets> first_cell_{};
  std::uint16_t page_count_{};
  std::uint8_t sheet_count_{}, run_count_{};

  template <int> friend class Imposition;

  [[nodiscard]] constexpr std::size_t cell(int row, int column, int sheet_number) const {
    auto const& lay = sheet(sheet_number);
    if (row < 0 || row >= lay.rows || column < 0 || column >= lay.columns)
      broken("the forme has no such row or column");
    return static_cast<std::size_t>(first_cell_[static_cast<std::size_t>(sheet_number)] + row * lay.columns + column);
  }
  /// The slot of a page in places_, or -1.
  [[nodiscard]] constexpr int slot(int page) const noexcept {
    auto const after_first = [page](Run run) { return static_cast<unsigned>(page) - static_cast<unsigned>(run.first); };
    if (auto const n = after_first(runs_[0]); n < runs_[0].count) return static_cast<int>(n);
    for (std::size_t i = 1; i < run_count_; ++i)
      if (auto const n = after_first(runs_[i]); n < runs_[i].count) return runs_[i].slot + static_cast<int>(n);
    return -1;
  }
  constexpr void find_runs(Fold<N> const& fold);

public:
  /// Finds the position of each page of the fold.
  constexpr explicit Imposition(Fold<N> const& fold);
  /// The formes of another imposition, with room for any number of leaves.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Imposition(Imposition<M> const& other);

  /// How many different pages are in the formes: copies are not counted again.
  [[nodiscard]] constexpr int pages() const noexcept { return page_count_; }
  /// How many sheets.
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  /// pre: counting from 0.
  [[nodiscard]] constexpr SheetLine const& sheet(int s) const {
    if (s < 0 || s >= sheet_count_) broken("there is no sheet of that number");
    return sheets_[static_cast<std::size_t>(s)];
  }
  /// Rows of one forme of that sheet. pre: the sheet is there.
  [[nodiscard]] constexpr int rows(int sheet_number = 0) const { return sheet(sheet_number).rows; }
  /// Columns of one forme of that sheet. pre: the sheet is there.
  [[nodiscard]] constexpr int columns(int sheet_number = 0) const { return sheet(sheet_number).columns; }
  /// One forme prints both sides of the sheet.
  [[nodiscard]] constexpr bool one_forme(int sheet_number = 0) const { return sheet(sheet_number).one_forme; }

  /// The page at a position of the outer (or the only) forme. pre: row and column are in the forme, each from 0; rows count
  /// from the far edge.
  [[nodiscard]] constexpr ImposedPage outer(int row, int column, int sheet_number = 0) const {
    return outer_[cell(row, column, sheet_number)];
  }
  /// The page at a position of the inner forme, which is seen as its type lies. pre: the sheet has two formes; row and
  /// column are in the forme, each from 0.
  [[nodiscard]] constexpr ImposedPage inner(int row, int column, int sheet_number = 0) const {
    if (one_forme(sheet_number)) broken("a sheet worked from one forme has no inner forme");
    return inner_[cell(row, column, sheet_number)];
  }
  /// The whole of a forme. pre: not the inner forme of a sheet that has but one.
  [[nodiscard]] constexpr FormeView forme(Side side, int sheet_number = 0) const& {
    if (side == Side::inner && one_forme(sheet_number)) broken("a sheet worked from one forme has no inner forme");
    auto const first = cell(0, 0, sheet_number);
    return {(side == Side::inner ? inner_ : outer_).data() + first, rows(sheet_number), columns(sheet_number)};
  }
  FormeView forme(Side side, int sheet_number = 0) const&& = delete; // it would outlive the table it looks at
  /// The forme printed on paper: its left-right mirror. `side` outer (or only), or inner.
  [[nodiscard]] constexpr ImposedPage printed(Side side, int row, int column, int sheet_number = 0) const {
    auto const mirrored = column < 0 ? column : columns(sheet_number) - 1 - column;
    return side == Side::inner ? inner(row, mirrored, sheet_number) : outer(row, mirrored, sheet_number);
  }

  /// The position of a page of the scheme; that in the outer forme if the page is in both. pre: the page is in a forme.
  [[nodiscard]] constexpr FormePosition place(int page) const {
    auto const at = slot(page);
    if (at < 0) broken("none of these formes has that page");
    return places_[static_cast<std::size_t>(at)];
  }
  /// The position of a page of the scheme, or none if no forme has the page.
  [[nodiscard]] constexpr std::optional<FormePosition> find_place(int page) const noexcept {
    auto const at = slot(page);
    return at < 0 ? std::nullopt : std::optional{places_[static_cast<std::size_t>(at)]};
  }
  /// The second position of a page that is in both formes, as in half-sheets with transposed pages; none if it has only
  /// one. pre: the page is in a forme.
  [[nodiscard]] constexpr std::optional<FormePosition> second_place(int page) const;

  friend constexpr bool operator==(Imposition const&, Imposition const&) = default;
};

template <int N> constexpr void Imposition<N>::find_runs(Fold<N> const& fold) {
  // Gatherings in the order of their first pages; those that touch or overlap make one run.
  std::array<std::uint8_t, Scheme::most_gatherings> order{};
  auto const count = static_cast<std::size_t>(fold.gatherings());
  for (std::size_t g = 0; g < count; ++g) {
    auto at = g;
    for (; at > 0 && fold.first_page(order[at - 1]) > fold.first_page(static_cast<int>(g)); --at)
      order[at] = order[at - 1];
    order[at] = static_cast<std::uint8_t>(g);
  }
  for (std::size_t i = 0; i < count; ++i) {
    auto const first = fold.first_page(order[i]), end = first + fold.gathering(order[i]).pages();
    auto const open = run_count_ > 0 ? run_count_ - 1U : 0U;
    auto const open_end = run_count_ > 0 ? runs_[open].first + runs_[open].count : -1;
    if (first > open_end) {
      runs_[run_count_++] = {static_cast<std::uint16_t>(first), static_cast<std::uint16_t>(end - first), page_count_};
      page_count_ = static_cast<std::uint16_t>(page_count_ + end - first);
    } else if (end > open_end) {
      runs_[open].count = static_cast<std::uint16_t>(end - runs_[open].first);
      page_count_ = static_cast<std::uint16_t>(page_count_ + end - open_end);
    }
  }
}

template <int N> constexpr Imposition<N>::Imposition(Fold<N> const& fold) {
  find_runs(fold);
  std::size_t at = 0;
  for (int s = 0; s < fold.sheets(); ++s) {
    auto const& lay = fold.sheet(s);
    sheets_[sheet_count_] = lay;
    first_cell_[sheet_count_++] = static_cast<std::uint8_t>(at);
    at += static_cast<std::size_t>(lay.rows * lay.columns);
  }
  auto const each_leaf = [&](auto&& act) {
    for (int g = fold.gatherings(); g-- > 0;)
      for (int k = fold.gathering(g).leaves(); k > 0; --k) {
        auto const c = fold.cell({g, fold.gathering(g).leaf(k)});
        auto const pages = fold.pages_of({g, fold.gathering(g).leaf(k)});
        act(c, pages.outer(), pages.inner(), c.head_far ? Head::far_edge : Head::near_edge);
      }
  };
  // Inner formes first: a page that is in both formes is to be found in the outer one, and in the earlier sheet.
  each_leaf([&](Cell c, int, int inner_page, Head head) {
    auto const& lay = sheets_[c.sheet];
    auto const column = static_cast<std::uint8_t>(lay.columns - 1 - c.column);
    inner_[cell(c.row, column, c.sheet)] = {static_cast<std::uint16_t>(inner_page), head};
    if (!lay.one_forme)
      places_[static_cast<std::size_t>(slot(inner_page))] = {c.sheet, c.row, column, Side::inner, head};
  });
  each_leaf([&](Cell c, int outer_page, int, Head head) {
    outer_[cell(c.row, c.column, c.sheet)] = {static_cast<std::uint16_t>(outer_page), head};
    places_[static_cast<std::size_t>(slot(outer_page))] = {c.sheet, c.row, c.column,
                                                           sheets_[c.sheet].one_forme ? Side::only : Side::outer, head};
  });
}

template <int N> template <int M>
requires(N == dynamic && M != dynamic) constexpr Imposition<N>::Imposition(Imposition<M> const& other)
    : sheets_{other.sheets_}, first_cell_{other.first_cell_}, page_count_{other.page_count_},
      sheet_count_{other.sheet_count_}, run_count_{other.run_count_} {
  for (std::size_t i = 0; i < run_count_; ++i)
    runs_[i] = {other.runs_[i].first, other.runs_[i].count, other.runs_[i].slot};
  for (std::size_t i = 0; i < static_cast<std::size_t>(M); ++i) {
    outer_[i] = other.outer_[i];
    inner_[i] = other.inner_[i];
  }
  for (std::size_t i = 0; i < 2 * static_cast<std::size_t>(M); ++i) places_[i] = other.places_[i];
}

template <int N> constexpr std::optional<FormePosition> Imposition<N>::second_place(int page) const {
  auto const first = place(page);
  for (int s = 0; s < sheets(); ++s)
    for (int r = 0; r < rows(s); ++r)
      for (int c = 0; c < columns(s); ++c) {
        auto const at = [&](Side side, Head head) {
          return FormePosition{static_cast<std::uint8_t>(s), static_cast<std::uint8_t>(r), static_cast<std::uint8_t>(c),
                               side, head};
        };
        auto const out = outer(r, c, s);
        auto const one = at(one_forme(s) ? Side::only : Side::outer, out.head);
        if (out.page == page && one != first) return one;
        if (one_forme(s)) continue;
        auto const in = inner(r, c, s);
        auto const other = at(Side::inner, in.head);
        if (in.page == page && other != first) return other;
      }
  return std::nullopt;
}

/// The formes of a fold. It cannot fail: whatever folds to gatherings can be imposed.
template <int N> constexpr Imposition<N> impose(Fold<N> const& fold) { return Imposition<N>{fold}; }

} // namespace v0
} // namespace bifolium
