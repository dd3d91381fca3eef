// SPDX-License-Identifier: MIT
/// A sheet of paper shows the mould it was made on: the chain lines, the watermark, perhaps a countermark.
/// On the ordinary hand mould the chains run parallel to the short side and the watermark sits in the middle of one half of the sheet.
/// Everything said about chain lines and marks in a leaf follows from this value and from the folding; paper that
/// breaks the rule - turned chains, marks in the centre or near the edge, machine-made laid - is another mould.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// How the chain lines run on the sheet.
enum class ChainRun : std::uint8_t {
  parallel_to_short_side, ///< the rule for paper made by hand
  parallel_to_long_side,  ///< turned chain lines: a sheet from a double mould, cut in two
  not_told_by_the_sheet,  ///< machine-made laid: the dandy roll follows the web, not the sheet (from memory)
  no_chains,              ///< wove
};

/// A point of the sheet as fractions of its sides: `along` the long side, `across` along the short side, each 0 to 1.
/// From which corner is settled only when the sheet is laid on the press; all four ways are possible.
struct PointOfSheet {
  double along{}, across{}; ///< parts of the long and of the short side: 0 to 1
  friend constexpr bool operator==(PointOfSheet, PointOfSheet) = default;
};

/// A mould, by what it leaves in the sheet.
struct Mould {
  ChainRun chains{ChainRun::parallel_to_short_side}; ///< which way the chains run
  /// The middle of the mark, as the mould lies with its long side near
  std::optional<PointOfSheet> watermark{PointOfSheet{0.25, 0.5}};
  std::optional<PointOfSheet> countermark{}; ///< the middle of a second mark
  friend constexpr bool operator==(Mould const&, Mould const&) = default;
};

/// Chains parallel to the short side (Roberts & Etherington s.v. chain lines), one mark in the middle of a half.
inline constexpr Mould hand_mould{};
/// A mark in the middle of each half (common from the 17th century).
inline constexpr Mould countermark_mould{.countermark = PointOfSheet{0.75, 0.5}};
/// Turned chain lines (Tanselle, Studies in Bibliography 53; Roberts & Etherington s.v. chain lines).
inline constexpr Mould turned_chain_mould{.chains = ChainRun::parallel_to_long_side};
/// The mark in the exact middle of the sheet, as at Leipzig 1690-91 (Heawood to McKerrow, 1928).
inline constexpr Mould central_mark_mould{.watermark = PointOfSheet{0.5, 0.5}};
/// The mark near an edge of the sheet, as in central and southern France 1535-70 (Heawood to McKerrow, 1928). The source
/// gives no distance: a twelfth of the short side is an assumption.
inline constexpr Mould edge_mark_mould{.watermark = PointOfSheet{0.25, 1.0 / 12}};
/// Machine-made laid paper: its lines do not show how the sheet lies.
inline constexpr Mould machine_laid_mould{.chains = ChainRun::not_told_by_the_sheet, .watermark = std::nullopt};
/// Wove paper: neither chains nor marks.
inline constexpr Mould wove_mould{.chains = ChainRun::no_chains, .watermark = std::nullopt};

} // namespace v0
} // namespace bifolium
