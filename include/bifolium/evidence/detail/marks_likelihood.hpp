// SPDX-License-Identifier: MIT
/// The probability of the places of marks in one leaf: on paper with one mark or two in a sheet, and on paper of single
/// or of double moulds. `marked` is the share of paper that has a mark.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// How reliable the place of a mark and a second mark are, in the age of the paper.
struct MarkTrust {
  double in_place{}, second{};
  double in_another{}; ///< that it is seen in one of the five other places

  MarkTrust(PaperAge const& age, EvidenceParameters const& p)
      : in_place{p.mark_in_place + age.after_1794 * (p.mark_in_place_1794 - p.mark_in_place)},
        second{p.second_mark_early + age.second_mark * (p.second_mark_late - p.second_mark_early)},
        in_another{(1 - in_place) / 5} {}
};
/// Returns the probability that a mark which the fold puts in one place is seen in another. A mark that is not in the
/// leaf is never seen.
inline double mark_taken_for(MarkPlace there, MarkPlace seen, MarkTrust const& trust) {
  if (there == MarkPlace::absent || seen == MarkPlace::absent) return there == seen ? 1 : 0;
  return there == seen ? trust.in_place : trust.in_another;
}

/// Returns the probability of one mark, on paper that may have a second one. Precondition: `seen` is known.
inline double mark_likelihood(LeafShape const& shape, MarkPlace seen, MarkTrust const& trust, double marked) {
  auto const placed = [&](double absent, double here) {
    if (seen == MarkPlace::absent) return 1 - marked + marked * absent;
    return marked * (trust.in_place * here + trust.in_another * (1 - absent - here));
  };
  return (1 - trust.second) * placed(shape.mark(MarkPlace::absent), shape.mark(seen)) +
         trust.second * placed(shape.either_mark(MarkPlace::absent), shape.either_mark(seen));
}
/// Returns the probability of the places of the watermark and of the countermark in one leaf.
inline double both_marks_likelihood(LeafShape const& shape, MarkPlace watermark, MarkPlace countermark,
                                    MarkTrust const& trust, double marked) {
  constexpr auto absent = MarkPlace::absent;
  auto const second = trust.second;
  double both = 0;
  for (std::size_t a = 1; a < 8; ++a)
    for (std::size_t b = 1; b < 8; ++b) {
      auto const first =
          watermark == MarkPlace::unknown ? 1 : mark_taken_for(static_cast<MarkPlace>(a), watermark, trust);
      both += shape.marks[a][b] * first * mark_taken_for(static_cast<MarkPlace>(b), countermark, trust);
    }
  if (countermark != absent) return marked * second * both;
  auto one_mark = trust;
  one_mark.second = 0;
  auto const single = watermark == MarkPlace::unknown ? 1 : mark_likelihood(shape, watermark, one_mark, marked);
  return (1 - second) * single + second * marked * both + (watermark == absent ? second * (1 - marked) : 0);
}
/// Returns the probability of marks on double paper, where they are as on single paper, or in the middle of every other
/// sheet, in equal shares (proposed). `usual`: that on single paper.
inline double marks_on_double(LeafShape const& shape, MarkPlace mark, MarkTrust const& trust, double marked,
                              double usual) {
  if (mark == MarkPlace::unknown) return usual;
  auto const has = marked / 2, absent = shape.central[static_cast<std::size_t>(MarkPlace::absent)];
  auto const here = shape.central[static_cast<std::size_t>(mark)];
  auto const central = mark == MarkPlace::absent
                           ? 1 - has + has * absent
                           : has * (trust.in_place * here + trust.in_another * (1 - absent - here));
  return (usual + central) / 2;
}
/// Returns the probability of marks on paper of either mould.
inline double marks_likelihood(LeafShape const& shape, bool twofold, MarkPlace mark, MarkPlace countermark,
                               MarkTrust const& trust, double marked) {
  auto const usual = countermark == MarkPlace::unknown ? mark_likelihood(shape, mark, trust, marked)
                                                       : both_marks_likelihood(shape, mark, countermark, trust, marked);
  return twofold ? marks_on_double(shape, mark, trust, marked, usual) : usual;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
