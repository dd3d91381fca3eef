// SPDX-License-Identifier: MIT
/// A working is the type that is locked up and printed together. "Half-sheet" has four meanings (Tanselle, Studies in
/// Bibliography 53, note 65), and only a working tells them apart: one forme on both sides of the sheet, which then has two
/// copies; two half-sheets of different gatherings printed together; a half-sheet printed together with odd leaves, such as one
/// or two cancels; and paper cut before it was printed, which needs two formes, and an impression of each for every copy.
///
/// The arithmetic of the press holds for every working: the pages that its formes print, an impression each, are the
/// pages of the copies. A forme of a whole sheet has as many pages as the sheet has leaves. A forme that is turned holds
/// both sides of a leaf, so a half-sheet fills it once. A quarter of a sheet fills it only if each of its pages is set
/// twice, an eighth if each is set four times; then the sheet has four or eight copies. A third of a sheet can not be
/// turned: no forme of twelve pages is made of eights. It takes two formes, and in each its pages are set three times.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/edition/arranging.hpp>

#include <array>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The four meanings of half-sheet.
enum class HalfSheet : std::uint8_t {
  turned,              ///< half-sheet work: one forme, the paper turned, two copies to the sheet
  two_worked_together, ///< two different half-sheets of one book on one sheet
  with_odd_leaves,     ///< a part of a sheet whose other part has other leaves of the book
  cut_first            ///< half a sheet of paper, cut before it was printed
};

/// Returns true if parts of so many leaves fill a sheet. Leaves that are folded are even in number; `single` ones need
/// not be.
/// Example: `is_part_of_sheet(4, 12) && !is_part_of_sheet(8, 12) && !is_part_of_sheet(3, 12)`.
constexpr bool is_part_of_sheet(int part, int leaves_to_sheet, bool single = false) {
  return part > 0 && leaves_to_sheet % part == 0 && (single || part % 2 == 0);
}

/// Leaves that are printed together, and the number of times that this happens in a copy.
struct Working {
  /// The paper that goes through the press, and how often it is printed.
  enum class Kind : std::uint8_t {
    sheet,     ///< two formes, one copy to the sheet
    turned,    ///< a part of a sheet, one forme on both sides, an even number of copies to the sheet
    cut_first, ///< a part of a sheet cut before printing, two formes, one copy to the piece
    one_side,  ///< a sheet or piece with a blank side, such as a broadside: one forme, one impression
    repeated   ///< a part of a sheet, two formes in which each page is set as often as the sheet has copies
  };
  /// number of times in one copy: eight equal sheets are one working, eight times
  std::int64_t times{};
  std::uint8_t leaves{};                      ///< leaves of one copy
  Kind kind{};                                ///< the paper and the way of printing
  std::array<std::uint8_t, matters> shares{}; ///< leaves of each matter if several share the working, else all 0

  /// Returns the number of formes to impose each time, 1 or 2.
  [[nodiscard]] constexpr int formes() const noexcept { return kind == Kind::turned || kind == Kind::one_side ? 1 : 2; }
  /// Returns the number of impressions of each sheet or piece that goes to press, 1 or 2.
  [[nodiscard]] constexpr int impressions() const noexcept { return kind == Kind::one_side ? 1 : 2; }
  /// Returns true if each sheet or piece that goes to press belongs to one copy.
  [[nodiscard]] constexpr bool is_printed_copy_by_copy() const noexcept {
    return kind == Kind::cut_first || kind == Kind::one_side;
  }
  /// Returns how a part of a sheet is printed. On whole sheets, which are then cut, it is turned if the sheet has an even
  /// number of copies, else it takes two formes. Precondition: parts of so many leaves fill the sheet.
  [[nodiscard]] static constexpr Kind kind_of(int part, int leaves_to_sheet, PartWork parts) {
    if (!is_part_of_sheet(part, leaves_to_sheet, true)) broken("equal parts must fill the sheet");
    if (parts == PartWork::cut_first) return Kind::cut_first;
    return leaves_to_sheet / part % 2 == 0 ? Kind::turned : Kind::repeated;
  }
  /// Returns true if leaves of several matters are printed together in this working.
  [[nodiscard]] constexpr bool is_shared() const noexcept { return shares != std::array<std::uint8_t, matters>{}; }
  /// Returns true if two matters share the working half and half. Half-sheets printed separately explain such a book as
  /// well, so Bowers (Studies in Bibliography 1) asks for positive evidence.
  [[nodiscard]] constexpr bool is_equally_shared() const noexcept {
    int first = 0;
    for (auto share : shares) {
      if (share == 0) continue;
      if (first != 0 && share != first) return false;
      first = share;
    }
    return first != 0;
  }
  friend constexpr bool operator==(Working const&, Working const&) = default;
};

} // namespace v0
} // namespace bifolium
