// SPDX-License-Identifier: MIT
/// How likely the signs of the paper and the make-up are, if the leaf were of a given kind. Each kind of evidence has its
/// own function, and each gives a wrong sign the frequency it is known to have: turned chain lines, marks out of place, odd
/// gatherings. No sign is a veto.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// How far the signs of the paper can be trusted in the years and the place.
struct Trustworthiness {
  double chains{}, mark_in_place{}, second_mark{};
  friend constexpr bool operator==(Trustworthiness const&, Trustworthiness const&) = default;
};
inline Trustworthiness trustworthiness(When years, Region place, EvidenceParameters const& p) {
  int const year = (years.from + years.to) / 2;
  bool const anywhere = place == Region::anywhere || place == Region::europe;
  bool const turned_there = anywhere || place == Region::britain || place == Region::netherlands;
  using namespace paper_dates;
  bool const after_act = year >= act_of_1794, machine = year > machine_made_by;
  bool const act = after_act && !machine && (place == Region::britain || place == Region::anywhere);
  bool const turned = turned_there && year >= turned_chains_from && year <= turned_chains_common_to;
  auto const chains = year <= 1500 ? p.chains_incunable
                      : machine    ? p.chains_machine
                      : after_act  ? p.chains_1794
                      : turned     ? p.chains_turned
                                   : p.chains_early;
  return {chains, act ? p.mark_in_place_1794 : p.mark_in_place,
          year <= 1600 ? p.second_mark_early : p.second_mark_late};
}

inline double chains_likelihood(LeafShape const& shape, ChainLines seen, double right) {
  if (seen == ChainLines::unknown || seen == ChainLines::both) return 1;
  return shape.chain_lines == seen ? right : 1 - right;
}

/// How likely a mark that the fold puts in one place is seen in another. One that the leaf has not is not seen in it.
inline double mark_taken_for(MarkPlace there, MarkPlace seen, double in_place) {
  if (there == MarkPlace::absent || seen == MarkPlace::absent) return there == seen ? 1 : 0;
  return there == seen ? in_place : (1 - in_place) / 5;
}
/// How far the place of a mark can be trusted, in the mean over periods of a given weight: the sums of the weights, of the
/// weights of paper with a second mark, of marks in place, and of both together. Likelihoods of one mark are straight lines in
/// each, so the mean over the periods needs no more than these four.
struct MarkTrust {
  double all{}, second{}, in_place{}, second_in_place{};

  void add(Trustworthiness const& trust, double weight) {
    all += weight;
    second += weight * trust.second_mark;
    in_place += weight * trust.mark_in_place;
    second_in_place += weight * trust.second_mark * trust.mark_in_place;
  }
};
/// One mark, of paper that may have a second one. pre: `seen` is known.
inline double mark_likelihood(LeafShape const& shape, MarkPlace seen, MarkTrust const& trust, double marked) {
  auto const none_of_one = shape.mark(MarkPlace::absent), none_of_two = shape.either_mark(MarkPlace::absent);
  auto const single = trust.all - trust.second;
  if (seen == MarkPlace::absent)
    return (1 - marked) * trust.all + marked * (single * none_of_one + trust.second * none_of_two);
  auto const placed = [](double absent, double here, double all, double in) {
    return in * here + (all - in) * (1 - absent - here) / 5;
  };
  return marked * (placed(none_of_one, shape.mark(seen), single, trust.in_place - trust.second_in_place) +
                   placed(none_of_two, shape.either_mark(seen), trust.second, trust.second_in_place));
}
/// The place of the watermark and, where it was looked for in the same leaf, of the countermark.
inline double marks_likelihood(LeafShape const& shape, MarkPlace watermark, MarkPlace countermark,
                               Trustworthiness const& trust, double marked) {
  auto const in = trust.mark_in_place, second = trust.second_mark;
  constexpr auto absent = MarkPlace::absent;
  if (countermark == MarkPlace::unknown) {
    if (watermark == MarkPlace::unknown) return 1;
    return mark_likelihood(shape, watermark, {1, second, in, second * in}, marked);
  }
  std::array<double, 8> first_taken{}, second_taken{};
  for (std::size_t there = 1; there < 8; ++there) {
    auto const place = static_cast<MarkPlace>(there);
    first_taken[there] = watermark == MarkPlace::unknown ? 1 : mark_taken_for(place, watermark, in);
    second_taken[there] = mark_taken_for(place, countermark, in);
  }
  double both = 0;
  for (std::size_t a = 1; a < 8; ++a)
    for (std::size_t b = 1; b < 8; ++b) both += shape.marks[a][b] * first_taken[a] * second_taken[b];
  if (countermark != absent) return marked * second * both;
  auto const single = watermark == MarkPlace::unknown ? 1 : mark_likelihood(shape, watermark, {1, 0, in, 0}, marked);
  return (1 - second) * single + second * marked * both + (watermark == absent ? second * (1 - marked) : 0);
}

inline double gathering_likelihood(LeafShape const& shape, std::optional<int> seen, std::optional<int> other,
                                   bool early, EvidenceParameters const& p) {
  if (!seen) return 1;
  auto const leaves = shape.leaves;
  auto const at_least = [&](double share) { return p.least_gathering + (1 - p.least_gathering) * share; };
  if (other && *other != *seen) return at_least(alternating_share(leaves, *seen, *other));
  auto const share = gathering_share(leaves, *seen, early);
  if (share > 0) return at_least(share);
  bool const made = *seen < 32 && (shape.gatherings >> static_cast<unsigned>(*seen) & 1U) != 0;
  return made ? p.made_gathering : p.least_gathering;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
