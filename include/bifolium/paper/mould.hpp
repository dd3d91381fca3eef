// SPDX-License-Identifier: MIT
/// A sheet of paper shows the mould on which it was made: the wires of the mould leave chain lines, a watermark, and
/// sometimes a second mark, the countermark. On the ordinary hand mould the chain lines run parallel to the short side,
/// and the watermark is in the middle of one half of the sheet. The library derives the chain lines and marks of every
/// leaf from this value and from the folding. Paper that breaks the rule - turned chain lines, marks in the centre or
/// near the edge, machine-made laid paper - is another mould.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// The direction of the chain lines on the sheet.
enum class ChainRun : std::uint8_t {
  parallel_to_short_side, ///< the rule for paper made by hand
  parallel_to_long_side,  ///< turned chain lines: the sheet is half of a sheet from a double mould
  /// machine-made laid paper: the lines follow the web of the machine, not the sheet (from memory)
  not_told_by_the_sheet,
  no_chains, ///< wove paper, which has no chain lines
};

/// A point of the sheet, as fractions of its sides: `along` the long side and `across` along the short side, each from
/// 0 to 1. The corner from which they count is decided when the sheet is laid on the press; all four are possible.
struct PointOfSheet {
  double along{}, across{}; ///< fractions of the long and of the short side, 0 to 1
  friend constexpr bool operator==(PointOfSheet, PointOfSheet) = default;
};

/// A mould, described by the traces it leaves in the sheet.
struct Mould {
  ChainRun chains{ChainRun::parallel_to_short_side}; ///< the direction of the chain lines
  /// the centre of the watermark, when the long side of the mould is nearest
  std::optional<PointOfSheet> watermark{PointOfSheet{0.25, 0.5}};
  std::optional<PointOfSheet> countermark{}; ///< the centre of a second mark
  friend constexpr bool operator==(Mould const&, Mould const&) = default;
};

/// The ordinary hand mould: chain lines parallel to the short side (Roberts & Etherington s.v. chain lines), one mark
/// in the middle of one half.
inline constexpr Mould hand_mould{};
/// A mould with a mark in the middle of each half, common from the 17th century.
inline constexpr Mould countermark_mould{.countermark = PointOfSheet{0.75, 0.5}};
/// A mould with turned chain lines (Tanselle, Studies in Bibliography 53; Roberts & Etherington s.v. chain lines).
inline constexpr Mould turned_chain_mould{.chains = ChainRun::parallel_to_long_side};
/// A mould with the mark in the exact centre of the sheet, as at Leipzig in 1690-91 (Heawood to McKerrow, 1928).
inline constexpr Mould central_mark_mould{.watermark = PointOfSheet{0.5, 0.5}};
/// A mould with the mark near an edge of the sheet, as in central and southern France in 1535-70 (Heawood to McKerrow,
/// 1928). The source gives no distance; a twelfth of the short side is an assumption.
inline constexpr Mould edge_mark_mould{.watermark = PointOfSheet{0.25, 1.0 / 12}};
/// Machine-made laid paper. Its lines do not show how the sheet lies.
inline constexpr Mould machine_laid_mould{.chains = ChainRun::not_told_by_the_sheet, .watermark = std::nullopt};
/// Wove paper, which has neither chain lines nor marks.
inline constexpr Mould wove_mould{.chains = ChainRun::no_chains, .watermark = std::nullopt};

/// The distance of chain lines in mm, a usual one: see evidence/period.hpp for the distances of different times and
/// their sources. Measure if you can.
inline constexpr double usual_chain_interval = 25;

} // namespace v0
} // namespace bifolium
