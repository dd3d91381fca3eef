// SPDX-License-Identifier: MIT
/// From the pages of a forme back to the folding: which cuts, folds and insets make a book of these pages? Whoever has an
/// old manual's diagram or a photograph of a forme asks this. One forme of a sheet is enough; heads may be unknown and
/// pages illegible.
///
/// A grid of pages never has just one answer, since every leaf could have been cut from every other. So the answers are
/// ordered by what they take (fold/folding_prices.hpp), the simplest first, and each was folded by `fold` and compared
/// with the given pages before it is handed out. Two things the pages cannot tell: whether leaves that could have been
/// folded together were parted before, and how the long side of the paper lay.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/folding_prices.hpp>
#include <bifolium/fold/seen_forme.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What is known besides the pages, and how far to look.
struct FindRules {
  std::optional<Reads> reads{}; ///< the direction of reading; not given: right to left only where that is simpler
  std::optional<Axis>
      long_side{};         ///< how the long side of the paper lay; not given: as for an attested scheme, else so
                           ///< that the leaf has a usual shape
  bool turned_under{true}; ///< parts may be turned underneath, too
  int dearer{15};          ///< answers up to this much above the price of the simplest one
  int most{12};            ///< answers at most; attested schemes that give the same pages are added beyond it
  friend constexpr bool operator==(FindRules const&, FindRules const&) = default;
};

/// One folding that gives the pages.
struct FoundFolding {
  Scheme scheme;                      ///< the attested scheme's own text where it is one, else one with the id `found`
  FoldingWork work{};                 ///< what that scheme takes
  int price{};                        ///< of the cheapest order of folding that gives this sheet
  double orders{};                    ///< how many orders of folding give this sheet, counted one for each direction
  std::optional<Attested> attested{}; ///< the scheme of the table that makes just this sheet
  /// Another scheme of the table that does, with the long side of the paper lying the other way: quarto and oblong quarto
  std::optional<Attested> attested_turned{};
};

/// The foldings that give these pages, the cheapest first; of equal price an attested scheme first. Allocates.
/// pre: `rules.most` is at least 1. error: forme_not_whole, formes_unlike, forme_given_twice, too_many_sheets,
/// too_many_cells; pages_not_backed and heads_not_backed where the two formes contradict one another (`limit` is the
/// page); too_many_illegible; no_folding where the pages make no gatherings of at most 20 pieces.
constexpr Expected<std::vector<FoundFolding>> find_foldings(std::span<SeenForme const> formes,
                                                            FindRules const& rules = {});

/// Whether a fold gives these pages, and heads as far as they are known; the formes of a sheet are those of the fold's
/// sheet of that number. False where sheets, rows or columns differ.
constexpr bool gives(Fold<> const& fold, std::span<SeenForme const> formes);

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/folding_finder.hpp> // the bodies of these two
