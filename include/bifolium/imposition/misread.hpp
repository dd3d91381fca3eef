// SPDX-License-Identifier: MIT
/// Mistakes of the printing house, simulated. A sheet is printed for one scheme and folded by another, or the inner
/// forme is laid on the press the wrong way round, or a half-sheet is turned about the wrong line, or two pages are set
/// in each other's place. The functions then fold the sheet and return the pages in the order in which a reader would
/// meet them. They refuse no mistake, because wrong sheets were printed and bound.
#pragma once

#include <bifolium/imposition/imposition.hpp>

#include <string>
#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The mistake at the press.
enum class Slip : std::uint8_t {
  none,
  inner_forme_turned, ///< the inner forme laid end for end; turning the sheet about the wrong line has the same result
  turned_about_other_line ///< half-sheet work: the sheet turned left for right instead of far for near, or the reverse
};

/// A page as the reader meets it.
struct PageRead {
  int page{};     ///< the page of the scheme, from 1
  bool upright{}; ///< true if the page is upright
  friend constexpr bool operator==(PageRead, PageRead) = default;
};

namespace detail {

/// Returns the page that is printed on the upper side of a cell as the sheet lies for folding.
inline ImposedPage printed_above(Imposition<> const& formes, int sheet, int row, int column, Slip slip) {
  auto const& lay = formes.sheet(sheet);
  auto const last_row = lay.rows - 1, last_column = lay.columns - 1;
  auto const turned = [](ImposedPage s) {
    return ImposedPage{s.page, s.head == Head::far_edge ? Head::near_edge : Head::far_edge};
  };
  if (!lay.one_forme) {
    if (slip != Slip::inner_forme_turned) return formes.inner(row, last_column - column, sheet);
    return turned(formes.inner(last_row - row, column, sheet));
  }
  bool const left_for_right = (lay.turned_about == Axis::far_near) != (slip == Slip::turned_about_other_line);
  return left_for_right ? formes.outer(row, last_column - column, sheet)
                        : turned(formes.outer(last_row - row, column, sheet));
}

} // namespace detail

/// Returns the pages of a gathering in the order in which a reader meets them, if sheets printed from `printed` are cut
/// and folded as `folded` says. Precondition: both have the same sheets, rows and columns, and `folded` has the
/// gathering, which counts from 0.
inline std::vector<PageRead> pages_met(Imposition<> const& printed, Fold<> const& folded, int gathering = 0,
                                       Slip slip = Slip::none) {
  if (printed.sheets() != folded.sheets()) broken("the numbers of printed and of folded sheets must be equal");
  for (int s = 0; s < printed.sheets(); ++s)
    if (printed.rows(s) != folded.sheet(s).rows || printed.columns(s) != folded.sheet(s).columns)
      broken("a sheet must be printed and folded with the same rows and columns");
  std::vector<PageRead> met(static_cast<std::size_t>(folded.gathering(gathering).pages()));
  std::size_t page = 0;
  for (int k = 1; k <= folded.gathering(gathering).leaves(); ++k) {
    auto const cell = folded.cell({gathering, folded.gathering(gathering).leaf(k)});
    auto const below = printed.outer(cell.row, cell.column, cell.sheet);
    auto const above = detail::printed_above(printed, cell.sheet, cell.row, cell.column, slip);
    auto const add = [&](ImposedPage s) { met[page++] = {s.page, (s.head == Head::far_edge) == cell.head_far}; };
    add(cell.recto_down ? below : above);
    add(cell.recto_down ? above : below);
  }
  return met;
}

/// The way in which pages that are set in each other's place lie there.
enum class ExchangedHeads : std::uint8_t {
  of_place, ///< each lies as the page that belongs there: the pages were taken for one another
  of_page   ///< each keeps its own head, and is upside down in the book if the heads of the two places differ
};

namespace detail {
/// Sets two pages of a set of formes in each other's place.
template <int N> class PageExchange {
  static constexpr ImposedPage& page_at(Imposition<N>& formes, FormePosition const& at) {
    auto const cell = formes.cell(at.row, at.column, at.sheet);
    return (at.side == Side::inner ? formes.inner_ : formes.outer_)[cell];
  }

public:
  static constexpr void make(Imposition<N>& formes, int page, int other, ExchangedHeads heads) {
    auto& first = formes.places_[*formes.slot(page)];
    auto& second = formes.places_[*formes.slot(other)];
    auto one = first, two = second;
    if (heads == ExchangedHeads::of_page) {
      auto const kept = one.head;
      one.head = two.head, two.head = kept;
    }
    page_at(formes, one) = {static_cast<std::uint16_t>(other), one.head};
    page_at(formes, two) = {static_cast<std::uint16_t>(page), two.head};
    first = two, second = one;
  }
};
} // namespace detail

/// Returns formes in which two pages are set in each other's place, in one forme or in two. `pages_met` of them says what
/// the reader meets. A page that is in both formes is exchanged where `Imposition::place` finds it. Error: no_such_page.
/// Example: `pages_text(pages_met(*exchanged(impose<schemes::folio>(), 1, 4), fold<schemes::folio>())) == "4 2 3 1"`.
template <int N>
constexpr Expected<Imposition<N>> exchanged(Imposition<N> const& formes, int page, int other,
                                            ExchangedHeads heads = ExchangedHeads::of_place) {
  for (auto const& [field, number] : {std::pair{"page", page}, {"other", other}})
    if (!formes.find_place(number)) return error_in_field(Problem::no_such_page, field, formes.last_page());
  auto made = formes;
  if (page != other) detail::PageExchange<N>::make(made, page, other, heads);
  return made;
}

/// Writes page numbers in this order, with ↓ after each page that is upside down in the folded book.
inline std::string pages_text(std::vector<PageRead> const& pages) {
  std::string text;
  for (auto const& page : pages) {
    if (!text.empty()) text += ' ';
    text += std::to_string(page.page);
    if (!page.upright) text += "↓";
  }
  return text;
}

} // namespace v0
} // namespace bifolium
