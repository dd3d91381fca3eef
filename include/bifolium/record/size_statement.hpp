// SPDX-License-Identifier: MIT
/// The size of a book as a record states it. A catalogue rounds: 19 cm means more than 18 and at most 19. So a stated
/// size is an interval, and sizes must be compared as intervals. The rules measure a bound book by its binding; its
/// leaf may be up to 3 cm lower. record/read_size.hpp makes a statement from a text.
#pragma once

#include <bifolium/core/character_references.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/leaf/cycle.hpp>
#include <bifolium/paper/length.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A length as a catalogue gives it: more than `above` and at most `to`, in millimetres. 19 cm is (180, 190].
struct SizeRange {
  double above{}; ///< lower limit in millimetres, not included
  double to{};    ///< upper limit in millimetres, included

  /// Returns true if the interval includes the length.
  [[nodiscard]] constexpr bool contains(millimetres length) const noexcept {
    return length.count() > above && length.count() <= to;
  }
  friend constexpr bool operator==(SizeRange, SizeRange) = default;
};

/// The content of a statement of size. Comparison ignores places in the text.
struct SizeStatement {
  std::optional<SizeRange> height{};  ///< height of the book: of its binding if it is bound, unless `binding` is stated
  std::optional<SizeRange> width{};   ///< width, stated beside the height
  std::optional<SizeRange> tallest{}; ///< 28 in `24-28 cm`: the tallest volume of a set
  std::optional<SizeRange> binding{}; ///< height of the binding, if it is stated: 26 in `24 cm, bound to 26 cm`
  std::optional<SizeRange> binding_width{};                 ///< width of the binding, if it is stated
  std::optional<SizeRange> folded_height{}, folded_width{}; ///< size when folded, of a sheet that was issued folded
  std::vector<Format> formats{};                            ///< the formats in parentheses after the size
  std::optional<Cycle> gathered{};                          ///< leaves of the gatherings: 4 in `20 cm (8vo in 4s)`
  /// true if the statement says that the height is that of the leaf or text block
  bool of_leaf{};
  /// true for `ca. 19 cm`: the interval is a unit wider at each end
  bool approximate{};
  std::vector<TextSpan> unread{}; ///< text that does not belong to the size

  /// Moves its places from a text of characters into the text with the references. Readers of statements call it.
  void move_back(TextOfCharacters const& text) {
    for (auto& span : unread) span = text.original(span);
  }
  /// The most that a binding is higher than its leaf by the rules, in millimetres.
  static constexpr double most_of_binding = 30;
  /// Returns the height that the leaf can have: as stated if the binding is stated separately; otherwise, by the rules,
  /// up to 3 cm less.
  [[nodiscard]] std::optional<SizeRange> leaf_height() const noexcept {
    if (!height || of_leaf || binding) return height;
    return SizeRange{height->above > most_of_binding ? height->above - most_of_binding : 0, height->to};
  }
  friend bool operator==(SizeStatement const& a, SizeStatement const& b) {
    return a.height == b.height && a.width == b.width && a.tallest == b.tallest && a.binding == b.binding &&
           a.binding_width == b.binding_width && a.folded_height == b.folded_height &&
           a.folded_width == b.folded_width && a.formats == b.formats && a.gathered == b.gathered &&
           a.of_leaf == b.of_leaf && a.approximate == b.approximate;
  }
};

} // namespace v0
} // namespace bifolium
