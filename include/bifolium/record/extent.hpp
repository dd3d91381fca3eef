// SPDX-License-Identifier: MIT
/// The extent of a book as a catalogue states it: "[8], 205, [3] p., [2] leaves of plates", "xii, 277 pages, 48 pages of
/// plates", "3 v. in 2". The pages are a pagination in short form, in which 205 means 1 to 205; plates are counted apart,
/// since they do not belong to the gatherings. Made by reading a text: record/read_extent.hpp.
#pragma once

#include <bifolium/record/pagination.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// Plates of one kind, as an extent lists them after the pages.
struct Plates {
  std::int64_t count{};                 ///< how many, in `unit`
  PageUnit unit{PageUnit::leaves};      ///< leaves, or pages where both sides are numbered
  Numerals numerals{};                  ///< in which they are numbered
  bool numbered{};                      ///< they bear numbers
  std::optional<std::int64_t> folded{}; ///< how many of them are folded, where that is said
  bool approximate{};                   ///< `approximately 55`
  TextSpan at{};                        ///< in the text, number and words

  /// Leaves of plates; a page of plates at the end of an odd number takes a leaf.
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept {
    return unit == PageUnit::pages ? (count + 1) / 2 : count;
  }
  /// Equality leaves the place in the text out.
  friend constexpr bool operator==(Plates const& a, Plates const& b) noexcept {
    return a.count == b.count && a.unit == b.unit && a.numerals == b.numerals && a.numbered == b.numbered &&
           a.folded == b.folded && a.approximate == b.approximate;
  }
};

/// An extent as stated. Equality leaves doubts and places in the text out.
struct Extent {
  Pagination pagination{};                ///< pages, leaves or columns of text
  std::vector<Plates> plates{};           ///< in the order of the statement
  std::optional<std::int64_t> volumes{};  ///< `3 v.`
  std::optional<std::int64_t> bound_in{}; ///< 2 in `3 v. in 2`
  std::optional<std::int64_t> sheets{};   ///< `1 sheet`, `1 folded sheet`
  bool various_pagings{};                 ///< more sequences than the catalogue lists
  bool approximate{};                     ///< `ca. 300 p.`
  std::vector<TextSpan> unread{};         ///< text that is not of the extent, such as illustrations and size

  /// The pages of the text, as stated; plates are not among them.
  [[nodiscard]] std::int64_t pages() const noexcept { return pagination.pages(); }
  /// All leaves of plates; missing where none are stated.
  [[nodiscard]] std::optional<std::int64_t> leaves_of_plates() const noexcept {
    if (plates.empty()) return std::nullopt;
    std::int64_t leaves = 0;
    for (auto const& one : plates) leaves += one.leaves();
    return leaves;
  }
  /// What is doubtful, with its column.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return pagination.warnings(); }

  friend bool operator==(Extent const& a, Extent const& b) {
    return a.pagination == b.pagination && a.plates == b.plates && a.volumes == b.volumes && a.bound_in == b.bound_in &&
           a.sheets == b.sheets && a.various_pagings == b.various_pagings && a.approximate == b.approximate;
  }
};

} // namespace v0
} // namespace bifolium
