// SPDX-License-Identifier: MIT
/// Finds the run of a formula that has the gathering with a given signature. A short formula is searched from end to
/// end. A long one gets a table, made once, so that a look-up is a search in sorted rows, even if the same letters
/// return in every part.
#pragma once

#include <bifolium/collation/detail/resolve/name_stretches.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/leaf/signature_run.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the mark without anything that distinguishes series of the same letters.
constexpr Signature of_any_series(Signature const& mark) { return mark.in_series(0).duplicated(Duplicate::none); }

/// Returns true for a W that the alphabet does not have. Its position is before X.
constexpr bool is_foreign(Signature const& mark, Alphabet alphabet) {
  return mark.is_latin() && !alphabet.has(*mark.letter_number());
}
/// Returns the position of a mark in its series, with a free position between two letters for one that the alphabet
/// does not have.
constexpr std::int64_t spaced_rank(Signature const& mark, Alphabet alphabet) {
  return 2 * mark.rank(alphabet) - (is_foreign(mark, alphabet) ? 1 : 0);
}
/// Returns the index, from 0, of the gathering of a run from `first` to `last` that has the mark, or no value if none
/// has.
constexpr std::optional<std::int64_t> place_in_run(Signature const& first, Signature const& last,
                                                   std::int64_t gatherings, Signature const& name, Alphabet alphabet) {
  std::optional<std::int64_t> place;
  auto const mark = among(first, name);
  if (is_foreign(mark, alphabet) && mark != first && mark != last) return place;
  if (auto const length = run_length(first, mark, alphabet); length && *length <= gatherings) place = *length - 1;
  return place;
}

/// A gathering found by its name.
struct NamedGathering {
  GatheringAt gathering{}; ///< the first with this name
  bool several{};          ///< more than one gathering has the name
};

class NameIndex {
  static constexpr std::size_t looked_through = 16; // up to this number of runs are searched one by one

  NameStretches<Signature> exact_, any_;
  bool has_series_{}; // true if some run has a raised digit, π or χ before its marks

  static std::optional<NamedGathering> look_up(NameStretches<Signature> const& all, std::vector<Run> const& runs,
                                               Signature const& name, Alphabet alphabet) {
    auto const* found = all.find(name.at_rank(1, alphabet), spaced_rank(name, alphabet));
    if (found == nullptr) return std::nullopt;
    auto const& run = runs[found->owner];
    auto const place =
        place_in_run(of_any_series(run.first), of_any_series(run.last), run.gatherings, of_any_series(name), alphabet);
    if (!place) return std::nullopt;
    return NamedGathering{{found->owner, *place}, found->several};
  }
  static std::optional<NamedGathering> look_through(std::vector<Run> const& runs, Signature const& name,
                                                    Alphabet alphabet, bool any_series) {
    std::optional<NamedGathering> found;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      auto const& run = runs[r];
      auto const place =
          any_series ? place_in_run(of_any_series(run.first), of_any_series(run.last), run.gatherings, name, alphabet)
                     : place_in_run(run.first, run.last, run.gatherings, name, alphabet);
      if (!place) continue;
      if (found) return found->several = true, found;
      found = NamedGathering{{static_cast<std::uint32_t>(r), *place}, false};
    }
    return found;
  }

public:
  NameIndex(std::vector<Run> const& runs, Alphabet alphabet) {
    for (auto const& run : runs)
      has_series_ = has_series_ || run.first.series() || run.first.duplicate() != Duplicate::none;
    if (runs.size() <= looked_through) return;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      auto const series = runs[r].first.at_rank(1, alphabet);
      auto const first = spaced_rank(runs[r].first, alphabet), last = spaced_rank(runs[r].last, alphabet);
      exact_.add(series, first, last, static_cast<std::uint32_t>(r));
      if (has_series_) any_.add(of_any_series(series), first, last, static_cast<std::uint32_t>(r));
    }
    exact_.settle();
    any_.settle();
  }
  /// Returns the first gathering with exactly this signature.
  [[nodiscard]] std::optional<NamedGathering> find(std::vector<Run> const& runs, Signature const& name,
                                                   Alphabet alphabet) const {
    if (runs.size() <= looked_through) return look_through(runs, name, alphabet, false);
    auto found = look_up(exact_, runs, name, alphabet);
    auto const greek = among(Signature::greek(1), name); // π and χ may be letters of a Greek series
    if (greek == name) return found;
    auto const letter = look_up(exact_, runs, greek, alphabet);
    if (!found || !letter) return found ? found : letter;
    auto first = found->gathering < letter->gathering ? *found : *letter;
    first.several = true;
    return first;
  }
  /// Returns the first gathering with this mark, with any raised digit, π or χ before it.
  [[nodiscard]] std::optional<NamedGathering> find_in_any_series(std::vector<Run> const& runs, Signature const& name,
                                                                 Alphabet alphabet) const {
    if (!has_series_) return std::nullopt;
    if (runs.size() <= looked_through) return look_through(runs, name, alphabet, true);
    return look_up(any_, runs, name, alphabet);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
