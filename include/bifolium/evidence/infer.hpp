// SPDX-License-Identifier: MIT
/// Which format is the leaf, on which sheet, how sure, and why? For each kind of leaf and each sheet of the place and time
/// the model asks how likely what was seen would be, if the leaf were that: uncut leaf by geometry, cut down by a binder, with
/// chain lines, marks and gatherings as the fold gives them and each kind of evidence wrong as often as it is known to
/// be. No evidence is a veto. Bayes's rule makes probabilities of it, some of which goes to none of these.
///
/// Size alone cannot part a royal quarto from a chancery folio, and the answer says so: both stand in it, and `look_next`
/// names what would part them.
///
/// The parts have a header each: what is taken for granted (assumptions), what was seen that counts (counted_signs), what
/// sheets there were (possible_sheets), how likely a size is on each of them (size_likelihood), marks and chain lines of one
/// leaf (paper_likelihood) and of several (leaves_likelihood), and edges and point-holes (scheme_likelihood). They are brought
/// together in weighing, and ranking makes the answer.
#pragma once

#include <bifolium/evidence/detail/ranking.hpp>
#include <bifolium/evidence/detail/weighing.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Chain lines read one way or, in a book whose leaves differ in them, three: all leaves together, and either part of them.
template <std::size_t N> std::array<Reading, N> read(CountedSigns const& signs) {
  std::array<Reading, N> readings;
  readings[0].chain_lines = signs.chains();
  if constexpr (N == 3) {
    readings[1].chain_lines = ChainLines::vertical;
    readings[2].chain_lines = ChainLines::horizontal;
  }
  return readings;
}

template <std::size_t N>
Inference infer(LeafEvidence const& seen, CountedSigns const& signs, Assumptions const& assumed) {
  auto const periods = assumed.priors ? *assumed.priors : priors_by_period(seen.year, seen.place);
  auto readings = read<N>(signs);
  Weighing{seen, signs, periods, assumed}.weigh({readings.data(), readings.size()});
  auto inference = Ranking{readings[0], signs}.inference(periods, *assumed.parameters);
  if constexpr (N == 3) {
    auto const vertical = Ranking{readings[1], signs}.candidate(0);
    auto const horizontal = Ranking{readings[2], signs}.candidate(0);
    if (vertical.format == horizontal.format) return inference;
    inference.mixed = MixedFormats{vertical, horizontal, vertical.probability * horizontal.probability};
    inference.certainty = certainty_of(inference.mixed->probability, 1);
  }
  return inference;
}

} // namespace detail

/// Ranks the formats of all schemes on the sheets of the place and time, under the priors of the period. It always answers;
/// with nothing seen the answer is the priors. The same observation gives the same answer to the last bit, in whatever
/// order and on whatever thread it is asked. Allocates the candidates of the result and nothing else. pre: if sheets are
/// assumed, at least one.
inline Inference infer_format(Observation const& observation, Assumptions const& assumed) {
  if (assumed.sheet_sizes && assumed.sheet_sizes->empty()) broken("a format is inferred on at least one sheet");
  auto const& seen = observation.seen();
  detail::CountedSigns const signs{seen};
  return signs.chains() == ChainLines::both ? detail::infer<3>(seen, signs, assumed)
                                            : detail::infer<1>(seen, signs, assumed);
}
/// The same with nothing assumed but what is usual of the years and the place seen.
inline Inference infer_format(Observation const& observation) { return infer_format(observation, Assumptions{}); }
/// The same under one set of priors, whatever the years.
inline Inference infer_format(Observation const& observation, Priors const& priors) {
  return infer_format(observation, {.priors = one_period(observation.seen().year, priors)});
}
/// The same on sheets of your choosing. pre: at least one.
inline Inference infer_format(Observation const& observation, SheetSizes const& sizes, Priors const& priors) {
  return infer_format(observation, {.priors = one_period(observation.seen().year, priors), .sheet_sizes = sizes});
}

} // namespace v0
} // namespace bifolium
