// SPDX-License-Identifier: MIT
/// The extent of a book as a catalogue states it: "[8], 205, [3] p., [2] leaves of plates", "xii, 277 pages, 48 pages
/// of plates", "3 v. in 2". The pages are a pagination in short form, in which 205 means 1 to 205. Plates are counted
/// separately, since they do not belong to the gatherings, unless the statement says that the pages include them. record/read_extent.hpp makes an extent from a text.
#pragma once

#include <bifolium/record/pagination.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// Plates of one kind, as an extent lists them after the pages.
struct Plates {
  std::int64_t count{};                 ///< number of leaves or pages
  PageUnit unit{PageUnit::leaves};      ///< leaves, or pages if both sides are numbered
  Numerals numerals{};                  ///< the numerals of their numbers
  bool numbered{};                      ///< true if the plates are numbered
  std::optional<std::int64_t> folded{}; ///< number of folded plates, if it is stated
  bool approximate{};                   ///< true for `approximately 55`
  bool in_pages{};                      ///< true for `incl. 2 plates`: the pages count them
  TextSpan at{};                        ///< the number and words in the text

  /// Returns the number of leaves of plates. An odd number of pages is rounded up to a whole leaf.
  [[nodiscard]] constexpr std::int64_t leaves() const noexcept {
    return unit == PageUnit::pages ? (count + 1) / 2 : count;
  }
  /// Compares all fields except the place in the text.
  friend constexpr bool operator==(Plates const& a, Plates const& b) noexcept {
    return a.count == b.count && a.unit == b.unit && a.numerals == b.numerals && a.numbered == b.numbered &&
           a.folded == b.folded && a.approximate == b.approximate && a.in_pages == b.in_pages;
  }
};

/// An extent as stated. Comparison ignores doubts and places in the text.
struct Extent {
  Pagination pagination{};                ///< the pages, leaves or columns of text
  std::vector<Plates> plates{};           ///< the plates, in the order of the statement
  std::optional<std::int64_t> volumes{};  ///< number of volumes: 3 in `3 v.`
  std::optional<std::int64_t> bound_in{}; ///< number of volumes as bound: 2 in `3 v. in 2`
  std::optional<std::int64_t> sheets{};   ///< number of sheets: `1 sheet`, `1 folded sheet`
  bool various_pagings{};                 ///< true if the book has more sequences than the catalogue lists
  std::vector<TextSpan> unread{};         ///< text that does not belong to the extent, such as illustrations and size

  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    pagination.move_back(text);
    for (auto& one : plates) one.at = text.original(one.at);
    for (auto& span : unread) span = text.original(span);
  }
  /// Returns the number of pages of text, as stated, without plates.
  [[nodiscard]] std::int64_t pages() const noexcept { return pagination.pages(); }
  /// Returns the number of all leaves of plates, in the pages or apart from them, or no value if none are stated.
  [[nodiscard]] std::optional<std::int64_t> leaves_of_plates() const noexcept {
    if (plates.empty()) return std::nullopt;
    std::int64_t leaves = 0;
    for (auto const& one : plates) leaves += one.leaves();
    return leaves;
  }
  /// Returns the doubts, with their columns.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return pagination.warnings();
  }
  /// Returns the doubts of a temporary extent by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<Pagination&&>(pagination).warnings(); }

  friend bool operator==(Extent const& a, Extent const& b) {
    return a.pagination == b.pagination && a.plates == b.plates && a.volumes == b.volumes && a.bound_in == b.bound_in &&
           a.sheets == b.sheets && a.various_pagings == b.various_pagings;
  }
};

} // namespace v0
} // namespace bifolium
