// SPDX-License-Identifier: MIT
/// The runs already read, so that a change can name one: a change at the end may belong to a gathering far to the left
/// (A-D⁴ E² F-I⁴ K²(-A1)). Only the place in the text is kept and the run is read again when it is asked for; the last
/// 256 runs can be named. That bounds memory, which is on the stack, and time.
#pragma once

#include <bifolium/collation/detail/scan_element.hpp>
#include <bifolium/core/expected.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A gathering that a change names.
struct Target {
  GatheringAt gathering{};
  std::int64_t ordinal{}; ///< which gathering of the book, from 0
  int leaves{};
};

class KnownRuns {
  struct Known { // a run already read; deliberately without initialisers: only what is written is read
    std::size_t from;
    std::int64_t first_gathering, gatherings;
    std::uint32_t run;
    std::uint32_t number; // of the first gathering, where gatherings are numbered
    std::uint8_t series, terms;
    std::uint8_t name; // bytes of a name without brackets, else 0
    std::uint16_t leaves[Cycle::most_terms];
  };
  struct Gone { // a leaf already deleted or cancelled
    std::int64_t gathering;
    int leaf;
  };
  static constexpr std::size_t most_gone = 64;

public:
  /// How many runs back a change may reach.
  static constexpr std::size_t most_known = 256;

private:
  Known known_[most_known];
  Gone gone_[most_gone];
  std::size_t gone_count_{0};

public:
  /// `signature_at` is the byte where the first signature stands.
  constexpr void remember(std::uint32_t number, std::int64_t first_gathering, Run const& run,
                          std::size_t signature_at) {
    auto& known = known_[number % most_known];
    known.from = signature_at;
    known.first_gathering = first_gathering;
    known.gatherings = run.gatherings;
    known.run = number;
    known.number = run.first.mark() == Mark::number ? run.first.multiple() : 0;
    known.name = 0;
    known.series = static_cast<std::uint8_t>(run.first.series());
    known.terms = static_cast<std::uint8_t>(run.leaves.size());
    for (std::size_t i = 0; i < run.leaves.size(); ++i)
      known.leaves[i] = static_cast<std::uint16_t>(run.leaves.term(i));
  }
  /// The same for a plain run, of whose run only this much is known yet.
  constexpr void remember_plain(std::uint32_t number, std::int64_t first_gathering, std::int64_t gatherings, int leaves,
                                std::size_t signature_at) {
    auto& known = known_[number % most_known];
    known.from = signature_at;
    known.first_gathering = first_gathering;
    known.gatherings = gatherings;
    known.run = number;
    known.number = 0;
    known.name = 0;
    known.series = 0;
    known.terms = 1;
    known.leaves[0] = static_cast<std::uint16_t>(leaves);
  }
  /// The run remembered last is a name of so many bytes without brackets.
  constexpr void remember_name(std::uint32_t number, std::size_t bytes) {
    known_[number % most_known].name = static_cast<std::uint8_t>(bytes);
  }
  /// The nearest gathering of that name among the `runs` so far, of which `last_run` is the last. A name without a raised
  /// figure, π or χ may be of any series.
  [[nodiscard]] constexpr std::optional<Target> find(FormulaText const& text, Signature const& name, std::uint32_t runs,
                                                     Run const& last_run) const {
    auto const exact = find(text, name, runs, last_run, false);
    return exact || name.series() != 0 || name.duplicate() != Duplicate::none ? exact
                                                                              : find(text, name, runs, last_run, true);
  }
  /// Notes that a leaf (0: every leaf) was deleted or cancelled; false when it was before.
  constexpr bool take_out(std::int64_t gathering, int leaf) {
    auto const kept = gone_count_ < most_gone ? gone_count_ : most_gone;
    for (std::size_t i = 0; i < kept; ++i)
      if (gone_[i].gathering == gathering && (gone_[i].leaf == leaf || gone_[i].leaf == 0 || leaf == 0)) return false;
    gone_[gone_count_++ % most_gone] = Gone{gathering, leaf};
    return true;
  }

private:
  [[nodiscard]] constexpr std::optional<Target> find(FormulaText const& text, Signature const& name, std::uint32_t runs,
                                                     Run const& last_run, bool any_series) const {
    auto const most = runs < most_known ? runs : most_known;
    for (std::uint32_t back = 0; back < most; ++back) {
      auto const& known = known_[(runs - 1 - back) % most_known];
      Signature first = last_run.first, last = last_run.last;
      if (known.name != 0)
        first = last = Signature::text(Mark::name, text.view().data() + known.from, known.name);
      else if (back != 0) {
        Element e;
        auto const scanner = text.signatures();
        e.from = known.from;
        e.first = e.last = scanner.scan_first(known.from);
        e.end = e.first.end;
        auto const to = text.dash(e.end);
        auto const end = to != e.end && !is_minus(text.code(to)) ? scanner.scan(to) : SignatureScan{};
        if (to != e.end && end && known.gatherings >= 1 && end.end > to) {
          e.last = end;
          e.end = end.end;
          ElementScanner{text}.join(e);
        }
        first = e.first.signature;
        last = e.last.signature;
        if (first.mark() == Mark::number && known.number != 0 && first.multiple() != known.number)
          first = Signature::number(known.number);
        if (first.series() != known.series) first = first.in_series(known.series), last = last.in_series(known.series);
      }
      if (any_series) first = first.in_series(0).duplicated(Duplicate::none);
      auto const index = known.gatherings == 1 ? std::int64_t{among(first, name) == first ? 1 : 0}
                                               : run_length(first, name, text.alphabet()).value_or(0);
      if (index == 0 || index > known.gatherings) continue;
      auto const place = index - 1;
      return Target{{known.run, place},
                    known.first_gathering + place,
                    known.leaves[static_cast<std::size_t>(place) % known.terms]};
    }
    return {};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
