// SPDX-License-Identifier: MIT
/// The size of a book as a record states it. A catalogue rounds: 19 cm is more than 18 and at most 19, so a stated size is
/// an interval, and whoever compares sizes compares intervals. The rules measure a bound book by its binding; the leaf may
/// then be lower by up to 3 cm. Made by reading a text: record/read_size.hpp.
#pragma once

#include <bifolium/core/text_span.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/paper/length.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A length as a catalogue gives it: more than `above` and at most `to`, in millimetres. 19 cm is (180, 190].
struct SizeRange {
  double above{}; ///< millimetres; not in it
  double to{};    ///< millimetres; in it

  /// Whether the length can be meant.
  [[nodiscard]] constexpr bool contains(millimetres length) const noexcept {
    return length.count() > above && length.count() <= to;
  }
  friend constexpr bool operator==(SizeRange, SizeRange) = default;
};

/// What a statement of size says. Equality leaves places in the text out.
struct SizeStatement {
  std::optional<SizeRange> height{};  ///< of the book: its binding where it is bound, unless `binding` is stated apart
  std::optional<SizeRange> width{};   ///< stated beside the height
  std::optional<SizeRange> tallest{}; ///< 28 in `24-28 cm`: the tallest volume of a set
  std::optional<SizeRange> binding{}; ///< stated apart: 26 in `24 cm, bound to 26 cm`
  std::optional<SizeRange> binding_width{};                 ///< stated apart
  std::optional<SizeRange> folded_height{}, folded_width{}; ///< of what was issued folded
  std::vector<Format> formats{};                            ///< in parentheses after the size
  bool of_leaf{};                                           ///< the height is said to be that of the leaf or text block
  bool approximate{};                                       ///< `ca. 19 cm`: a unit wider at either end
  std::vector<TextSpan> unread{};                           ///< text that is not of the size

  /// The height the leaf can have: as stated where the binding is stated apart; else, by the rules, up to 3 cm less.
  [[nodiscard]] std::optional<SizeRange> leaf_height() const noexcept {
    if (!height || of_leaf || binding) return height;
    return SizeRange{height->above > 30 ? height->above - 30 : 0, height->to};
  }
  friend bool operator==(SizeStatement const& a, SizeStatement const& b) {
    return a.height == b.height && a.width == b.width && a.tallest == b.tallest && a.binding == b.binding &&
           a.binding_width == b.binding_width && a.folded_height == b.folded_height &&
           a.folded_width == b.folded_width && a.formats == b.formats && a.of_leaf == b.of_leaf &&
           a.approximate == b.approximate;
  }
};

} // namespace v0
} // namespace bifolium
