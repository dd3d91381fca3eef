// SPDX-License-Identifier: MIT
/// How much type must stand. Set in the order of the pages, a forme can go to press only when its last page is set, and all
/// pages before it stand until then. Set by formes, only its own pages stand, but every page between must have been cast
/// off: the outermost sheet of a quired folio asks that of the whole gathering. Which pages share a forme is read off the
/// imposition; formes kept standing for another impression hold all its pages().
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

/// One forme, as far as type is concerned.
struct FormeType {
  int sheet{};          ///< of the gathering, from 0, the outermost first
  Side side{};          ///< outer or inner forme
  int pages{};          ///< that stand in the forme
  int last_page{};      ///< of the scheme
  int set_in_order{};   ///< pages of type that must be set when the text is set in its order
  int cast_off_pages{}; ///< pages to be cast off before it can be set by itself
  friend constexpr bool operator==(FormeType, FormeType) = default;

  /// Ens of type in so many pages of so many lines. error: negative_count, result_too_large.
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

/// The type of one forme. pre: the sheet has it.
template <int N> constexpr FormeType forme_type(Imposition<N> const& formes, int sheet, Side side) {
  FormeType type{sheet, side, 0, 0, 0, 0};
  for (auto standing : formes.forme(side, sheet)) {
    ++type.pages;
    if (standing.page > type.last_page) type.last_page = standing.page;
  }
  // pages of the text up to the last one, wherever they stand; those of this forme need no casting off
  for (int page = 1; page <= type.last_page; ++page) {
    if (!formes.find_place(page)) continue;
    ++type.set_in_order;
    bool here = false;
    for (auto standing : formes.forme(side, sheet)) here = here || standing.page == page;
    type.cast_off_pages += here ? 0 : 1;
  }
  return type;
}

/// The forme that is complete first when the pages are set in order; of equals the one of the lower sheet, outer first.
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
