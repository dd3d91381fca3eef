// SPDX-License-Identifier: MIT
/// A scheme says how sheets are laid, cut, folded and set one inside another. It does not contain the places of pages
/// in the forme; folding gives them. Reading its text (`read_scheme`) is the only way to make a scheme, so a scheme of
/// the table and a scheme that a user has just written are equal in every respect.
///
/// Directions are those of the compositor at the stone: far, near, left, right. Rows count from the far edge and
/// columns from the left, both from 0. Line k of the grid lies between row (or column) k-1 and k of the flat sheet.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/fold/format.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
class SchemeReader;
class SchemeMirror;
} // namespace detail

/// A direction on the flat sheet: of its long side, of a crease, or of the axis about which the sheet is turned.
enum class Axis : std::uint8_t { far_near, left_right };

/// The direction in which a book is read. A right-to-left book has its spine on the right.
enum class Reads : std::uint8_t { left_to_right, right_to_left };

/// The part of the sheet of paper that went to press: paper may be cut before it is printed.
enum class PaperPart : std::uint8_t { whole = 1, half = 2, quarter = 4 };

/// The place of a line in a scheme's text. It does not belong to the meaning of the scheme, so comparisons ignore it.
class SourcePlace {
  std::uint16_t line_{}, column_{}; // 0 without a text; an optional would double each step

public:
  /// Makes the place of what was not read from a text.
  constexpr SourcePlace() = default;
  /// Makes a place from a line and a column, each from 1.
  constexpr SourcePlace(std::uint16_t line, std::uint16_t column) noexcept : line_{line}, column_{column} {}
  /// Returns the line and the column, or no value if the scheme was not read from a text.
  [[nodiscard]] constexpr std::optional<TextPlace> in_text() const noexcept {
    return line_ == 0 ? std::nullopt : std::optional{TextPlace{line_, column_}};
  }
  friend constexpr bool operator==(SourcePlace, SourcePlace) noexcept { return true; }
};

namespace detail {
/// Makes an error about a part of a scheme that quotes `found`. Without a text it has no line.
constexpr Error error_in_scheme(Problem problem, SourcePlace place, std::string_view found, std::int64_t limit = 0) {
  return error_at(problem, place.in_text(), found, limit);
}
} // namespace detail

/// The name of a piece, at most 15 bytes.
using PieceName = ShortText<15>;

/// A sheet as it lies on the type, with its outer side down: a grid of rows x columns leaves.
struct SheetLine {
  std::uint8_t rows{}, columns{};   ///< number of leaves as they lie, from the far edge and from the left
  Axis long_side{};                 ///< the direction of the long side of the uncut paper
  PaperPart part{PaperPart::whole}; ///< the part of the paper, if it was cut before printing
  bool one_forme{};                 ///< true if one forme prints both sides, with the sheet turned in between
  Axis turned_about{};              ///< the axis about which it is turned
  SourcePlace place{};              ///< the place of its line in the text
  friend constexpr bool operator==(SheetLine const&, SheetLine const&) = default;
};

/// One cut or one fold.
struct Step {
  /// The kind of step: a piece is cut in two, or folded at a crease.
  enum class Kind : std::uint8_t { cut, fold };
  Kind kind{};              ///< cut or fold
  Axis along{};             ///< the direction of the cut or crease; along far_near it is a line between columns
  std::uint8_t piece{};     ///< the piece that is cut or folded
  std::uint8_t line{};      ///< the line of the flat sheet's grid
  bool far_or_left_moves{}; ///< for a fold: true if the far (or left) part is turned over onto the other
  bool under{};             ///< for a fold: true if the part is turned underneath instead
  std::uint8_t far_or_left_piece{}, near_or_right_piece{}; ///< for a cut: the two pieces that it makes
  SourcePlace place{};                                     ///< the place of its line in the text

  /// Returns true if a fold turns over the cells that are `at` cells from the far (or left) edge of the flat sheet.
  [[nodiscard]] constexpr bool moves(int at) const noexcept { return (at < line) == far_or_left_moves; }
  friend constexpr bool operator==(Step const&, Step const&) = default;
};

/// A piece as a part of a gathering.
struct Placed {
  std::uint8_t piece{}; ///< the number of the piece
  bool heads_near{};    ///< true if the heads of the packet point to the near edge
  bool recto_inner{};   ///< true for a single leaf whose recto is on the inner side of the sheet
  bool opens_pair{};    ///< true for a single leaf before the pieces inside; the next single leaf comes after them
  SourcePlace place{};  ///< its place in the text
  friend constexpr bool operator==(Placed const&, Placed const&) = default;
};

/// The pieces of one gathering, set one inside another, the outermost first.
struct GatheringLine {
  PieceName name{};              ///< the name in the scheme
  std::uint8_t first{}, count{}; ///< its pieces are `count` elements of `Scheme::placed` from `first`
  /// the page it begins with; no value if its pages follow those of the gathering above
  std::optional<std::uint16_t> first_page{};
  SourcePlace place{}; ///< the place of its line in the text
  friend constexpr bool operator==(GatheringLine const&, GatheringLine const&) = default;
};

/// How sheets become gatherings. The value takes about 2 KB: pass it by reference.
class Scheme {
public:
  /// The greatest numbers of sheets, pieces, steps, leaves and gatherings of a scheme.
  static constexpr int most_sheets = 8, most_pieces = 40, most_steps = 64, most_cells = 128, most_gatherings = 16;
  /// The greatest number of bytes of a piece's name and of the scheme's id.
  static constexpr int longest_name = 15, longest_id = 47;

  /// Marks a type whose members return references into it: `->` of a temporary `Expected` of it does not compile.
  using gives_views = void;

  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr Scheme(Text const&) {
    static_assert(detail::never<Text>,
                  "a text is not a scheme: write schemes::octavo, *find_scheme(name) or *read_scheme(text)");
  }

  /// Returns the id: the name after the word `scheme`.
  [[nodiscard]] constexpr std::string_view id() const& noexcept BIFOLIUM_LIFETIMEBOUND { return id_.view(); }
  std::string_view id() const&& = delete; // it would look at what goes
  /// Returns the format in the scheme's first line. `format_of` computes it from the sheets.
  [[nodiscard]] constexpr Format format() const noexcept { return format_; }
  /// Returns the direction in which the book is read.
  [[nodiscard]] constexpr Reads reads() const noexcept { return reads_; }

  /// Returns the number of sheets.
  [[nodiscard]] constexpr int sheets() const noexcept { return sheet_count_; }
  /// Returns the number of pieces, including those that are cut up.
  [[nodiscard]] constexpr int pieces() const noexcept { return piece_count_; }
  /// Returns the number of cuts and folds.
  [[nodiscard]] constexpr int steps() const noexcept { return step_count_; }
  /// Returns the number of gatherings.
  [[nodiscard]] constexpr int gatherings() const noexcept { return gathering_count_; }
  /// Returns the number of leaves of all sheets, including all copies.
  [[nodiscard]] constexpr int cells() const noexcept {
    int n = 0;
    for (int i = 0; i < sheets(); ++i) n += sheet(i).rows * sheet(i).columns;
    return n;
  }

  /// Returns sheet `i`, in the order of the text. The first pieces are the sheets themselves. Precondition: 0 <= i <
  /// sheets().
  [[nodiscard]] constexpr SheetLine const& sheet(int i) const& BIFOLIUM_LIFETIMEBOUND {
    return sheets_[index(i, sheet_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr SheetLine sheet(int i) const&& { return sheet(i); }
  /// Returns the name of piece `i`. Precondition: 0 <= i < pieces().
  [[nodiscard]] constexpr PieceName const& piece_name(int i) const& BIFOLIUM_LIFETIMEBOUND {
    return names_[index(i, piece_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr PieceName piece_name(int i) const&& { return piece_name(i); }
  /// Returns step `i`, a cut or fold, in the order in which they are made. Precondition: 0 <= i < steps().
  [[nodiscard]] constexpr Step const& step(int i) const& BIFOLIUM_LIFETIMEBOUND {
    return steps_[index(i, step_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr Step step(int i) const&& { return step(i); }
  /// Returns a pointer to the first step; a scheme is a range of its steps: `for (Step const& step : scheme)`.
  [[nodiscard]] constexpr Step const* begin() const& noexcept BIFOLIUM_LIFETIMEBOUND { return steps_.data(); }
  Step const* begin() const&& = delete; // it would look at what goes
  /// Returns a pointer past the last step.
  [[nodiscard]] constexpr Step const* end() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return steps_.data() + step_count_;
  }
  Step const* end() const&& = delete; // it would look at what goes
  /// Returns the line of gathering `i`. Precondition: 0 <= i < gatherings().
  [[nodiscard]] constexpr GatheringLine const& gathering(int i) const& BIFOLIUM_LIFETIMEBOUND {
    return gatherings_[index(i, gathering_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr GatheringLine gathering(int i) const&& { return gathering(i); }
  /// Returns piece `i` of all gatherings, in order. A `GatheringLine` gives the range of its pieces with `first` and
  /// `count`. Precondition: 0 <= i < pieces().
  [[nodiscard]] constexpr Placed const& placed(int i) const& BIFOLIUM_LIFETIMEBOUND {
    return placed_[index(i, piece_count_)];
  }
  /// Returns the same of a temporary, by value.
  [[nodiscard]] constexpr Placed placed(int i) const&& { return placed(i); }

  friend constexpr bool operator==(Scheme const&, Scheme const&) = default;

private:
  friend class detail::SchemeReader;
  friend class detail::SchemeMirror;
  constexpr Scheme() = default;

  static constexpr std::size_t index(int i, int count) {
    if (i < 0 || i >= count) broken("the scheme has no part with this number");
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
