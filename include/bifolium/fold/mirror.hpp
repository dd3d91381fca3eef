// SPDX-License-Identifier: MIT
/// A book that is read from right to left is made with the left-right mirror of a folding: columns count from the other
/// side, and a part folded right over left is folded left over right, while heads stay as they are. Its forme looks
/// like the printed side of the other sheet. So a picture of a printed sheet that is taken for a forme gives the
/// folding of the other script.
#pragma once

#include <bifolium/fold/scheme.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class SchemeMirror {
public:
  static constexpr Scheme of(Scheme const& scheme) {
    Scheme mirror = scheme;
    mirror.reads_ = scheme.reads() == Reads::left_to_right ? Reads::right_to_left : Reads::left_to_right;
    // The pieces of a cut are numbered left before right, so a column cut exchanges two numbers.
    std::array<std::uint8_t, Scheme::most_pieces> number{}, columns{};
    for (std::size_t i = 0; i < number.size(); ++i) number[i] = static_cast<std::uint8_t>(i);
    for (std::size_t s = 0; s < scheme.sheet_count_; ++s) columns[s] = scheme.sheets_[s].columns;
    for (std::size_t i = 0; i < scheme.step_count_; ++i) {
      auto const& step = scheme.steps_[i];
      auto& mirrored = mirror.steps_[i];
      auto const one = step.far_or_left_piece, other = step.near_or_right_piece;
      mirrored.piece = number[step.piece];
      if (step.kind == Step::Kind::cut) columns[one] = columns[other] = columns[step.piece];
      if (step.along == Axis::left_right) continue;
      mirrored.line = static_cast<std::uint8_t>(columns[step.piece] - step.line);
      if (step.kind == Step::Kind::fold) {
        mirrored.far_or_left_moves = !step.far_or_left_moves;
      } else {
        number[one] = other;
        number[other] = one;
        mirror.names_[one] = scheme.names_[other];
        mirror.names_[other] = scheme.names_[one];
      }
    }
    for (auto& placed : mirror.placed_) placed.piece = number[placed.piece];
    return mirror;
  }
  /// Returns the same scheme for a later sheet of the book, with page numbers higher by `pages`.
  static constexpr Scheme of_later_pages(Scheme scheme, int pages) {
    for (auto& gathering : scheme.gatherings_)
      if (gathering.first_page) gathering.first_page = static_cast<std::uint16_t>(*gathering.first_page + pages);
    return scheme;
  }
};

} // namespace detail

/// Returns the scheme of the same sheet for a book that is read in the other direction. Mirroring twice gives the
/// scheme again.
constexpr Scheme mirrored(Scheme const& scheme) { return detail::SchemeMirror::of(scheme); }

} // namespace v0
} // namespace bifolium
