// SPDX-License-Identifier: MIT
/// How much type must be kept standing, that is, set and not yet distributed. If type is set in the order of the pages,
/// a forme can go to press only when its last page is set, and all earlier pages stand until then. If type is set by
/// formes, only the pages of the forme stand, but every page between them must have been cast off; for the outermost
/// sheet of a folio in gatherings that means the whole gathering. The pages of a forme are computed from the
/// imposition.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

/// The type of one forme.
struct FormeType {
  int sheet{};          ///< the sheet of the gathering, from 0, the outermost first
  Side side{};          ///< the outer or the inner forme
  int pages{};          ///< number of pages in the forme
  int last_page{};      ///< the last page of the scheme in the forme
  int set_in_order{};   ///< number of pages that must be set if the text is set in order
  int cast_off_pages{}; ///< number of pages to cast off before the forme can be set by itself
  friend constexpr bool operator==(FormeType, FormeType) = default;

  /// Returns the ens of type in a number of pages with `lines` lines each. Errors: negative_count, result_too_large.
  [[nodiscard]] static constexpr Expected<std::int64_t> ens(std::int64_t pages_of_type, std::int64_t lines,
                                                            std::int64_t ens_a_line) {
    if (pages_of_type < 0) return error_in_field(Problem::negative_count, "pages_of_type", pages_of_type);
    if (lines < 0) return error_in_field(Problem::negative_count, "lines", lines);
    if (ens_a_line < 0) return error_in_field(Problem::negative_count, "ens_a_line", ens_a_line);
    auto const page = checked_multiply(lines, ens_a_line);
    auto const all = page ? checked_multiply(*page, pages_of_type) : std::nullopt;
    if (!all) return error_in_field(Problem::result_too_large, "");
    return *all;
  }
};

/// Returns the type of one forme. Precondition: the sheet has this forme.
template <int N> constexpr FormeType forme_type(Imposition<N> const& formes, int sheet, Side side) {
  FormeType type{sheet, side, 0, 0, 0, 0};
  for (auto standing : formes.forme(side, sheet)) {
    ++type.pages;
    if (standing.page > type.last_page) type.last_page = standing.page;
  }
  // pages of the text up to the last one, in whatever forme they are; pages of this forme need no casting off
  for (int page = 1; page <= type.last_page; ++page) {
    if (!formes.find_place(page)) continue;
    ++type.set_in_order;
    bool here = false;
    for (auto standing : formes.forme(side, sheet)) here = here || standing.page == page;
    type.cast_off_pages += here ? 0 : 1;
  }
  return type;
}

/// Returns the forme that is complete first if the pages are set in order. If two are equal, it is the one of the sheet
/// with the lower number, the outer forme first.
template <int N> constexpr FormeType first_forme_in_order(Imposition<N> const& formes) {
  FormeType first;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto side : {Side::outer, Side::inner}) {
      if (formes.one_forme(sheet) && side == Side::inner) continue;
      auto const type = forme_type(formes, sheet, formes.one_forme(sheet) ? Side::only : side);
      if (first.pages == 0 || type.set_in_order < first.set_in_order) first = type;
    }
  return first;
}

} // namespace v0
} // namespace bifolium
