// SPDX-License-Identifier: MIT
/// A run of signatures, such as A-K: the number of its gatherings, and the mark of each. A run is stored as its two
/// ends, not as a list of marks.
#pragma once

#include <bifolium/leaf/signature.hpp>

#include <optional>

// g++ 12 takes what an empty std::optional does not hold for a value that is used, when the address sanitizer is on.
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif

namespace bifolium {
inline namespace v0 {

/// Returns π or χ as a Greek letter if `others` is a Greek letter, since π and χ are letters in a run of Greek letters.
/// Otherwise returns `mark` unchanged.
constexpr Signature among(Signature const& others, Signature const& mark) {
  bool const letter = others.mark() == Mark::greek && (mark.mark() == Mark::pi || mark.mark() == Mark::chi);
  if (!letter) return mark;
  return Signature::greek(mark.mark() == Mark::pi ? 16 : 22, false, mark.multiple())
      .in_series(mark.series().value_or(1));
}
/// Returns the number of gatherings of a run from `first` to `last`, including both, or no value if they belong to
/// different series or are in the wrong order. A W that the alphabet does not have is counted if it is an end of the
/// run (ICCU breaks the run there instead).
constexpr std::optional<std::int64_t> run_length(Signature const& first, Signature const& last,
                                                 Alphabet alphabet = Alphabet{}) noexcept {
  auto const end = among(first, last);
  if (!first.same_series_as(end)) return std::nullopt;
  auto const foreign = first.is_latin() && !alphabet.has(*first.letter_number());
  auto const number = end.rank(alphabet) - first.rank(alphabet) + 1;
  if (number < 1 || (foreign && first == end))
    return foreign && first == end ? std::optional<std::int64_t>{1} : std::nullopt;
  return number + (foreign ? 1 : 0);
}
/// Returns the mark of gathering `index` of a run, counting from 0. Precondition: 0 to run_length(first, last) - 1.
constexpr Signature run_member(Signature const& first, Signature const& last, std::int64_t index,
                               Alphabet alphabet = Alphabet{}) {
  auto const length = run_length(first, last, alphabet);
  if (index < 0 || !length || index >= *length) broken("the run has no gathering at this index");
  if (index == 0) return first;
  auto const foreign = first.is_latin() && !alphabet.has(*first.letter_number());
  auto const rank = first.rank(alphabet) + index - (foreign ? 1 : 0);
  auto const end = among(first, last);
  return rank >= end.rank(alphabet) ? end : first.at_rank(rank, alphabet);
}

} // namespace v0
} // namespace bifolium

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic pop
#endif
