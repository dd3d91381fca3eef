// SPDX-License-Identifier: MIT
/// A scheme says how sheets are laid, cut, folded and set one inside another. It does not say where pages are in the
/// forme: that is found by folding. It is made by reading its text (`read_scheme`) and in no other way, so that a
/// scheme of the table and a scheme a reader wrote down this minute are the same kind of thing with the same rights.
///
/// Directions are the compositor's, who faces the stone: far, near, left, right. Rows count from the far edge, columns
/// from the left, both from 0; line k of the grid lies between row (or column) k-1 and k of the flat sheet.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/fold/format.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
class SchemeReader;
class SchemeMirror;
} // namespace detail

/// A direction on the flat sheet: of its long side, of a crease, of the axis about which it is turned.
enum class Axis : std::uint8_t { far_near, left_right };

/// The side towards which a book is read; a right-to-left book has its spine on the right.
enum class Reads : std::uint8_t { left_to_right, right_to_left };

/// How much of the sheet of paper went to press: paper may be cut before it is printed.
enum class PaperPart : std::uint8_t { whole = 1, half = 2, quarter = 4 };

/// Where in a scheme's text something is written; it is not part of what the scheme says, so it is never compared.
struct SourcePlace {
  std::uint16_t line{}, column{}; ///< from 1; 0 where the scheme came from no text
  friend constexpr bool operator==(SourcePlace, SourcePlace) noexcept { return true; }
};

/// The name of a piece: at most 15 bytes.
using PieceName = ShortText<15>;

/// A sheet as it lies on the type, outer side down: a grid of rows x columns leaves.
struct SheetLine {
  std::uint8_t rows{}, columns{};   ///< leaves as they lie, from the far edge and from the left
  Axis long_side{};                 ///< how the long side of the (uncut) paper lies
  PaperPart part{PaperPart::whole}; ///< what of the paper this is, when it was cut before printing
  bool one_forme{};                 ///< both sides printed from one forme, the sheet turned between
  Axis turned_about{};              ///< the axis of that turning
  SourcePlace place{};              ///< where its line is in the text
  friend constexpr bool operator==(SheetLine const&, SheetLine const&) = default;
};

/// One act of the knife or the folder.
struct Step {
  /// A piece is cut in two, or folded over a crease.
  enum class Kind : std::uint8_t { cut, fold };
  Kind kind{};              ///< which of the two
  Axis along{};             ///< how the cut or crease runs: along far_near it is a column line
  std::uint8_t piece{};     ///< the piece cut or folded
  std::uint8_t line{};      ///< the line of the flat sheet's grid
  bool far_or_left_moves{}; ///< fold: the far (or left) part is turned over on the other
  bool under{};             ///< fold: the part is turned underneath instead
  std::uint8_t far_or_left_piece{}, near_or_right_piece{}; ///< cut: the pieces it makes
  SourcePlace place{};                                     ///< where its line is in the text

  /// Whether a fold turns over what lies `at` cells from the far (or left) edge of the flat sheet.
  [[nodiscard]] constexpr bool moves(int at) const noexcept { return (at < line) == far_or_left_moves; }
  friend constexpr bool operator==(Step const&, Step const&) = default;
};

/// A piece's part in a gathering.
struct Placed {
  std::uint8_t piece{}; ///< the number of the piece
  bool heads_near{};    ///< the packet lies with its heads towards the near edge
  bool recto_inner{};   ///< a single leaf whose recto is on the inner side of the sheet
  bool opens_pair{};    ///< a single leaf that goes before what lies inside; the next one goes after
  SourcePlace place{};  ///< where it is in the text
  friend constexpr bool operator==(Placed const&, Placed const&) = default;
};

/// Pieces set one inside another, outermost first.
struct GatheringLine {
  PieceName name{};              ///< as the scheme calls it
  std::uint8_t first{}, count{}; ///< its pieces among `Scheme::placed`
  std::uint16_t first_page{};    ///< 0: its pages follow those of the gathering above
  SourcePlace place{};           ///< where its line is in the text
  friend constexpr bool operator==(GatheringLine const&, GatheringLine const&) = default;
};

/// How sheets become gatherings. About 2 KB: pass it by reference.
class Scheme {
public:
  /// The most a scheme can have of each.
  static constexpr int most_sheets = 8, most_pieces = 40, most_steps = 64, most_cells = 128, most_gatherings = 16;
  /// The most bytes of a piece's name and of the scheme's own.
  static constexpr int longest_name = 15, longest_id = 47;

  /// The name after the word `scheme`.
  [[nodiscard]] constexpr std::string_view id() const noexcept { return id_.view(); }
  /// As the scheme's first line states it; `format_of` computes it from the sheets.
  [[nodiscard]] constexpr Format format() const noexcept { return format_; }
  /// Whether the book turns right to left.
  [[nodiscard]] constexpr Reads reads() const noexcept { return reads_; }

  /// How many sheets.
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  /// How many pieces, cut up or not.
  [[nodiscard]] constexpr int pieces() const noexcept { return piece_count_; }
  /// How many cuts and folds.
  [[nodiscard]] constexpr int steps() const noexcept { return step_count_; }
  /// How many gatherings.
  [[nodiscard]] constexpr int gatherings() const noexcept { return gathering_count_; }
  /// Leaves of all sheets together, all copies counted.
  [[nodiscard]] constexpr int cells() const noexcept {
    int n = 0;
    for (int i = 0; i < sheets(); ++i) n += sheet(i).rows * sheet(i).columns;
    return n;
  }

  /// A sheet, in the order of the text; the first pieces are the sheets themselves. pre: 0 <= i < sheets().
  [[nodiscard]] constexpr SheetLine const& sheet(int i) const { return sheets_[index(i, sheet_count_)]; }
  /// The name of a piece. pre: 0 <= i < pieces().
  [[nodiscard]] constexpr PieceName const& piece_name(int i) const { return names_[index(i, piece_count_)]; }
  /// A cut or fold, in the order they are made. pre: 0 <= i < steps().
  [[nodiscard]] constexpr Step const& step(int i) const { return steps_[index(i, step_count_)]; }
  /// The steps as a range: `for (Step const& step : scheme)`.
  [[nodiscard]] constexpr Step const* begin() const noexcept { return steps_.data(); }
  /// The end of that range.
  [[nodiscard]] constexpr Step const* end() const noexcept { return steps_.data() + step_count_; }
  /// A gathering as its line has it. pre: 0 <= i < gatherings().
  [[nodiscard]] constexpr GatheringLine const& gathering(int i) const {
    return gatherings_[index(i, gathering_count_)];
  }
  /// The pieces of all gatherings in turn; a `GatheringLine` names its own by `first` and `count`.
  [[nodiscard]] constexpr Placed const& placed(int i) const { return placed_[index(i, piece_count_)]; }

  friend constexpr bool operator==(Scheme const&, Scheme const&) = default;

private:
  friend class detail::SchemeReader;
  friend class detail::SchemeMirror;
  constexpr Scheme() = default;

  static constexpr std::size_t index(int i, int count) {
    if (i < 0 || i >= count) broken("a scheme has no part of that number");
    return static_cast<std::size_t>(i);
  }

  ShortText<longest_id> id_{};
  Format format_{};
  Reads reads_{};
  std::uint8_t sheet_count_{}, piece_count_{}, step_count_{}, gathering_count_{}, placed_count_{};
  std::array<SheetLine, most_sheets> sheets_{};
  std::array<PieceName, most_pieces> names_{};
  std::array<Step, most_steps> steps_{};
  std::array<Placed, most_pieces> placed_{};
  std::array<GatheringLine, most_gatherings> gatherings_{};
};

} // namespace v0
} // namespace bifolium
