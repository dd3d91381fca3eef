// SPDX-License-Identifier: MIT
/// Finds the folding from the pages of a forme: which cuts, folds and insets make a book of these pages? This is the
/// question for a diagram in an old manual or a photograph of a forme. One forme of a sheet is enough; heads may be
/// unknown and pages illegible.
///
/// A grid of pages always has more than one answer, since every leaf could be cut from every other. So the answers are
/// ordered by price (fold/folding_prices.hpp), the simplest first. `fold` folds each answer, and it is compared with
/// the given pages before it is returned. The pages cannot show two things: whether leaves that could have been folded
/// together were cut apart first, and how the long side of the paper lay.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/folding_prices.hpp>
#include <bifolium/fold/seen_forme.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What is known besides the pages, and the limits of the search.
struct FindRules {
  std::optional<Reads> reads{}; ///< the direction of reading; if not given, right to left only when that is simpler
  /// how the long side of the paper lay; if not given, as in the attested scheme, else so that the leaf has a usual shape
  std::optional<Axis> long_side{};
  bool turned_under{true}; ///< true if parts may also be turned underneath
  int dearer{15};          ///< the greatest price above that of the simplest answer, at least 0
  int most{12};            ///< the greatest number of answers; attested schemes with the same pages are added to it
  friend constexpr bool operator==(FindRules const&, FindRules const&) = default;
};

/// A folding that gives the pages.
struct FoundFolding {
  /// the attested scheme if there is one, with the given page numbers; else a scheme with the id `found`
  Scheme scheme;
  FoldingWork work{}; ///< the number of cuts, folds and pieces of this scheme
  int price{};        ///< the price of the cheapest order of folding that gives this sheet
  /// the number of orders of folding that give this sheet, each counted in one direction
  double orders{};
  std::optional<Attested> attested{}; ///< the scheme of the table that makes exactly this sheet
  /// another scheme of the table that makes this sheet if the long side of the paper lies the other way, as for quarto
  /// and oblong quarto
  std::optional<Attested> attested_turned{};
  friend constexpr bool operator==(FoundFolding const&, FoundFolding const&) = default;
};

/// Returns the foldings that give these pages, the cheapest first; among equal prices an attested scheme comes first.
/// The function allocates memory. Preconditions: `rules.most` is at least 1, `rules.dearer` at least 0. Errors: forme_not_whole, formes_unlike,
/// forme_given_twice, too_many_sheets, too_many_cells; pages_not_backed and heads_not_backed if the two formes, or the
/// two sides that one forme prints, contradict each other (`limit` is the page), and illegible_head_to_tail if neither
/// page can be named; too_many_illegible; no_folding if the pages do not form gatherings of
/// at most 20 pieces; cuts_not_all_tried if none was found among the simplest 30,000 ways to cut a sheet and its parts,
/// or among those of a price up to 150 above the simplest, or in 20 million steps of nesting the parts, and there are
/// more.
/// Example: `(*find_foldings(seen_formes(impose<schemes::quarto>()))).front().attested == schemes::quarto`.
constexpr Expected<std::vector<FoundFolding>> find_foldings(std::span<SeenForme const> formes,
                                                            FindRules const& rules = {});

/// Returns true if a fold gives these pages, and these heads as far as they are known. The formes of a sheet are
/// compared with the sheet of that number in the fold. Returns false if the sheets, rows or columns differ.
constexpr bool gives(Fold<> const& fold, std::span<SeenForme const> formes);

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/folding_finder.hpp> // the bodies of these two
