// SPDX-License-Identifier: MIT
/// Imposition is the arrangement of pages of type on the stone so that the folded sheet reads in order. A forme is all
/// the type that prints one side of a sheet. The outer forme prints the side that lay on the type, the inner forme the
/// other side. A forme is drawn as the type lies, with the far row first; the printed side is its left-right mirror. If
/// one forme prints both sides (half-sheet work), there is no outer and inner forme, only an outer and an inner side of
/// each copy. The library does not say which forme was printed first: both orders are recorded (Moxon 1683 against
/// Savage 1841).
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/forme_side.hpp>

#include <string_view> // declares std::ranges::enable_borrowed_range

namespace bifolium {
inline namespace v0 {

/// A page as it lies in a forme.
struct ImposedPage {
  std::uint16_t page{}; ///< the page of the scheme, which is not the page of the book
  Head head{};          ///< the direction of its head
  friend constexpr bool operator==(ImposedPage, ImposedPage) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, ImposedPage s) {
    return out << s.page << (s.head == Head::near_edge ? "↓" : "");
  }
};
namespace detail {
inline constexpr int highest_page = 65535;
constexpr std::uint16_t page_number(int page) {
  if (page < 1 || page > highest_page) broken("a page of a scheme must be from 1 to 65535");
  return static_cast<std::uint16_t>(page);
}
} // namespace detail
/// Makes page `page` with its head far, so that it is upright in a drawing of the forme. Precondition: 1 to 65535.
constexpr ImposedPage head_up(int page) { return {detail::page_number(page), Head::far_edge}; }
/// Makes page `page` with its head near, towards the compositor. Precondition: 1 to 65535.
constexpr ImposedPage head_down(int page) { return {detail::page_number(page), Head::near_edge}; }

/// The position of a page: its sheet, and the row from the far edge and the column from the left in the forme as the
/// type lies. All count from 0.
struct FormePosition {
  std::uint8_t sheet{}, row{}, column{}; ///< the sheet, and the row and column in its forme, each from 0
  Side side{};                           ///< the outer or the inner forme, or the only one of half-sheet work
  Head head{};                           ///< the direction of the head
  friend constexpr bool operator==(FormePosition, FormePosition) = default;
};

/// One forme, row by row from the far edge. It is a view of rows x columns pages of an `Imposition`, and is valid as
/// long as that object.
class FormeView {
  ImposedPage const* first_;
  int rows_, columns_;

public:
  /// Makes a view of `row_count * column_count` pages that begin with the far row.
  constexpr FormeView(ImposedPage const* first, int row_count, int column_count)
      : first_{first}, rows_{row_count}, columns_{column_count} {}
  /// Returns the number of rows of pages.
  [[nodiscard]] constexpr int rows() const noexcept { return rows_; }
  /// Returns the number of columns of pages.
  [[nodiscard]] constexpr int columns() const noexcept { return columns_; }
  /// Returns a pointer to the first page.
  [[nodiscard]] constexpr ImposedPage const* begin() const noexcept { return first_; }
  /// Returns a pointer past the last page.
  [[nodiscard]] constexpr ImposedPage const* end() const noexcept { return first_ + rows_ * columns_; }
};

template <int N> class Imposition;
namespace detail {
template <int N> class PageExchange;
}

/// The formes of a fold with N leaves. `Imposition<>` has room for up to 128 leaves and takes about 2.5 KB.
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
  template <int> friend class detail::PageExchange; // imposition/misread.hpp

  [[nodiscard]] constexpr std::size_t cell(int row, int column, int sheet_number) const {
    auto const& lay = sheet(sheet_number);
    if (row < 0 || row >= lay.rows || column < 0 || column >= lay.columns)
      broken("the forme has no such row or column");
    return static_cast<std::size_t>(first_cell_[static_cast<std::size_t>(sheet_number)] + row * lay.columns + column);
  }
  /// Returns the index of a page in places_, or no value if there is no such page.
  [[nodiscard]] constexpr std::optional<std::size_t> slot(int page) const noexcept {
    auto const after_first = [page](Run run) { return static_cast<unsigned>(page) - static_cast<unsigned>(run.first); };
    if (auto const n = after_first(runs_[0]); n < runs_[0].count) return n;
    for (std::size_t i = 1; i < run_count_; ++i)
      if (auto const n = after_first(runs_[i]); n < runs_[i].count) return std::size_t{runs_[i].slot} + n;
    return std::nullopt;
  }
  constexpr void find_runs(Fold<N> const& fold);

public:
  /// Computes the position of each page of the fold.
  constexpr explicit Imposition(Fold<N> const& fold);
  /// Copies another imposition into one with room for any number of leaves.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Imposition(Imposition<M> const& other);
  // Compilers show the line of a deleted function, so the sentence is on it.
  // clang-format off
  operator Scheme() const = delete; // an imposition does not keep its scheme: pass the scheme itself, as in forme_svg(schemes::octavo)
  // clang-format on

  /// Returns the number of different pages in the formes. A page that is in both formes counts once.
  [[nodiscard]] constexpr int pages() const noexcept { return page_count_; }
  /// Returns the highest number of a page in the formes.
  [[nodiscard]] constexpr int last_page() const noexcept {
    return run_count_ == 0 ? 0 : runs_[run_count_ - 1U].first + runs_[run_count_ - 1U].count - 1;
  }
  /// Returns the number of sheets.
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  /// Returns sheet `s`. Precondition: 0 <= s < sheets().
  [[nodiscard]] constexpr SheetLine const& sheet(int s) const& BIFOLIUM_LIFETIMEBOUND {
    if (s < 0 || s >= sheet_count_) broken("there is no sheet with this number");
    return sheets_[static_cast<std::size_t>(s)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr SheetLine sheet(int s) const&& { return sheet(s); }
  /// Returns the number of rows of a forme of that sheet. Precondition: the sheet exists.
  [[nodiscard]] constexpr int rows(int sheet_number = 0) const { return sheet(sheet_number).rows; }
  /// Returns the number of columns of a forme of that sheet. Precondition: the sheet exists.
  [[nodiscard]] constexpr int columns(int sheet_number = 0) const { return sheet(sheet_number).columns; }
  /// Returns true if one forme prints both sides of the sheet. Precondition: the sheet exists.
  [[nodiscard]] constexpr bool one_forme(int sheet_number = 0) const { return sheet(sheet_number).one_forme; }

  /// Returns the page at a position of the outer (or only) forme. Precondition: the forme has this row, counted from
  /// the far edge, and this column, each from 0.
  [[nodiscard]] constexpr ImposedPage outer(int row, int column, int sheet_number = 0) const {
    return outer_[cell(row, column, sheet_number)];
  }
  /// Returns the page at a position of the inner forme, seen as its type lies. Precondition: the sheet has two formes,
  /// and the forme has this row and column, each from 0.
  [[nodiscard]] constexpr ImposedPage inner(int row, int column, int sheet_number = 0) const {
    if (one_forme(sheet_number)) broken("a sheet worked from one forme has no inner forme");
    return inner_[cell(row, column, sheet_number)];
  }
  /// Returns all pages of a forme. Precondition: the sheet has this forme.
  [[nodiscard]] constexpr FormeView forme(Side side, int sheet_number = 0) const& {
    if (side == Side::inner && one_forme(sheet_number)) broken("a sheet worked from one forme has no inner forme");
    auto const first = cell(0, 0, sheet_number);
    return {(side == Side::inner ? inner_ : outer_).data() + first, rows(sheet_number), columns(sheet_number)};
  }
  FormeView forme(Side side, int sheet_number = 0) const&& = delete; // it would outlive the table it looks at
  /// Returns the page at a position of the printed paper, which is the left-right mirror of the forme `side`.
  /// Precondition: the forme has this row and column.
  [[nodiscard]] constexpr ImposedPage printed(Side side, int row, int column, int sheet_number = 0) const {
    auto const mirrored = column < 0 ? column : columns(sheet_number) - 1 - column;
    return side == Side::inner ? inner(row, mirrored, sheet_number) : outer(row, mirrored, sheet_number);
  }

  /// Returns the position of a page of the scheme. If the page is in both formes, this is the position in the outer
  /// one. Precondition: a forme has the page.
  [[nodiscard]] constexpr FormePosition place(int page) const {
    auto const at = slot(page);
    if (!at) broken("none of these formes has this page");
    return places_[*at];
  }
  /// Returns the position of a page of the scheme, or no value if no forme has the page.
  [[nodiscard]] constexpr std::optional<FormePosition> find_place(int page) const noexcept {
    auto const at = slot(page);
    return at ? std::optional{places_[*at]} : std::nullopt;
  }
  /// Returns the second position of a page that is in both formes, as in half-sheets with transposed pages, or no value
  /// if it has only one position. Precondition: a forme has the page.
  [[nodiscard]] constexpr std::optional<FormePosition> second_place(int page) const;

  friend constexpr bool operator==(Imposition const&, Imposition const&) = default;
};

template <int N> constexpr void Imposition<N>::find_runs(Fold<N> const& fold) {
  // Gatherings in the order of their first pages; gatherings whose pages touch or overlap make one run.
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
  // Inner formes first, so that a page that is in both formes is found in the outer one, and in the earlier sheet.
  each_leaf([&](Cell c, int, int inner_page, Head head) {
    auto const& lay = sheets_[c.sheet];
    auto const column = static_cast<std::uint8_t>(lay.columns - 1 - c.column);
    inner_[cell(c.row, column, c.sheet)] = {static_cast<std::uint16_t>(inner_page), head};
    if (!lay.one_forme) places_[*slot(inner_page)] = {c.sheet, c.row, column, Side::inner, head};
  });
  each_leaf([&](Cell c, int outer_page, int, Head head) {
    outer_[cell(c.row, c.column, c.sheet)] = {static_cast<std::uint16_t>(outer_page), head};
    places_[*slot(outer_page)] = {c.sheet, c.row, c.column, sheets_[c.sheet].one_forme ? Side::only : Side::outer,
                                  head};
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

/// Returns the formes of a fold. The function cannot fail, because every fold can be imposed.
template <int N> constexpr Imposition<N> impose(Fold<N> const& fold) { return Imposition<N>{fold}; }

} // namespace v0
} // namespace bifolium

// Its pages are those of the imposition, and live as long as that.
template <> inline constexpr bool std::ranges::enable_borrowed_range<bifolium::FormeView> = true;
