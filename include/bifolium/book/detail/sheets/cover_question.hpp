// SPDX-License-Identifier: MIT
/// The question that decides most between the ways to print what is left of a book. Thousands of ways can be possible, and nobody
/// can look at all of them; but one look at the paper of two units, or of a unit and the gathering that has a place for it,
/// leaves about half of them. Interchangeable units are in as many ways in any place, so one of each class is asked for.
#pragma once

#include <bifolium/book/detail/sheets/press_pieces.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The results for one state.
struct CoverWays {
  std::int64_t all{};
  std::int64_t fewest{}; ///< number of ways with the fewest pieces
  std::int64_t best{};   ///< number of these with the fewest leaves over
  int pieces{}, left_over{};
  /// the least and the greatest number of leaves of printed sheets or parts, for any of the ways
  int least{}, most{};
};

/// Units that are printed in one place: how many of each class, and the difference of states.
struct UnitsInPlace {
  std::vector<std::uint8_t> of_class{};
  std::size_t state{};
  int leaves{};
};
/// The ways to fill all places so that a state is left: of units, and of interchangeable units.
struct PlacesFilled {
  std::int64_t times{}, of_likes{};
};

/// Finds the question, when all ways have been counted.
class CoverQuestion {
  SheetsOfBook const& book_;
  PressPieces const& pieces_;
  std::vector<CoverWays> const& ways_;                    // by state
  std::vector<std::vector<UnitsInPlace>> const& options_; // of each place
  std::vector<PlacesFilled> const& filled_;               // by state

  [[nodiscard]] auto const& classes() const { return pieces_.classes(); }
  /// Of ways that leave `left` of `all` interchangeable units, the number that leave one more certain unit: an exact part.
  static std::int64_t share(std::int64_t times, std::size_t left, std::size_t sure, std::size_t all) {
    auto const part = static_cast<std::int64_t>(left > sure ? left - sure : 0);
    auto const whole = static_cast<std::int64_t>(all - sure);
    return times / whole * part + times % whole * part / whole;
  }
  /// Returns the number of groupings in which a unit of one class and a unit of another are on one sheet.
  [[nodiscard]] std::int64_t together(std::size_t a, std::size_t b) const {
    std::vector<std::uint8_t> fixed(classes().size());
    ++fixed[a], ++fixed[b];
    std::int64_t ways = 0;
    for (std::size_t state = 0; state < filled_.size(); ++state) {
      auto times = filled_[state].times; // less those in which one of the two is in a place
      for (std::size_t c = 0; c < classes().size(); ++c)
        for (std::size_t sure = 0; sure < fixed[c]; ++sure)
          times = share(times, pieces_.left(state, c), sure, classes()[c].units.size());
      if (times == 0) continue;
      for (auto const& piece : pieces_.all())
        if (auto const more = pieces_.ways_to_take(piece, state, fixed); more > 0)
          ways += times * more * ways_[state - piece.state].all;
    }
    return ways;
  }
  /// Returns the number of groupings that can follow from each state before each place, and after the last one.
  [[nodiscard]] std::vector<std::vector<std::int64_t>> ways_from_places() const {
    std::vector<std::vector<std::int64_t>> ways(options_.size() + 1, std::vector<std::int64_t>(pieces_.states()));
    std::vector<std::uint8_t> const none(classes().size());
    for (std::size_t state = 0; state < pieces_.states(); ++state) ways.back()[state] = ways_[state].all;
    for (std::size_t p = options_.size(); p-- > 0;)
      for (std::size_t state = 0; state < pieces_.states(); ++state)
        for (auto const& option : options_[p])
          if (pieces_.has(option.of_class, state))
            ways[p][state] += pieces_.ways_to_take(option.of_class, state, none) * ways[p + 1][state - option.state];
    return ways;
  }
  /// Returns for each place the number of groupings in which one certain unit of a class was printed in it.
  [[nodiscard]] std::vector<std::int64_t> in_places(std::size_t of,
                                                    std::vector<std::vector<std::int64_t>> const& after) const {
    std::vector<std::int64_t> found(options_.size());
    std::vector<std::uint8_t> const none(classes().size());
    auto sure = none;
    sure[of] = 1;
    std::vector<std::int64_t> times(pieces_.states()); // ways to fill the places before that leave the unit
    times.back() = 1;
    for (std::size_t p = 0; p < options_.size(); ++p) {
      std::vector<std::int64_t> next(pieces_.states());
      for (std::size_t state = 0; state < times.size(); ++state) {
        if (times[state] == 0) continue;
        auto const left = static_cast<std::int64_t>(pieces_.left(state, of));
        for (auto const& option : options_[p]) {
          if (!pieces_.has(option.of_class, state)) continue;
          auto const there = state - option.state;
          found[p] += times[state] * pieces_.ways_to_take(option.of_class, state, sure) * after[p + 1][there];
          auto const ways = pieces_.ways_to_take(option.of_class, state, none);
          next[there] += times[state] * (ways * (left - option.of_class[of]) / left);
        }
      }
      times = static_cast<std::vector<std::int64_t>&&>(next);
    }
    return found;
  }

public:
  CoverQuestion(SheetsOfBook const& book, PressPieces const& pieces, std::vector<CoverWays> const& ways,
                std::vector<std::vector<UnitsInPlace>> const& options, std::vector<PlacesFilled> const& filled)
      : book_{book}, pieces_{pieces}, ways_{ways}, options_{options}, filled_{filled} {}
  /// Finds the question whose answer leaves the fewest groupings, whatever it is: the one that is true of about a half.
  [[nodiscard]] std::optional<SheetQuestion> find() const {
    std::optional<SheetQuestion> decides;
    if (book_.groupings < 2) return decides;
    std::int64_t nearest = book_.groupings;
    auto const ask = [&](SheetQuestion const& question) {
      auto const ways = question.together, all = book_.groupings;
      auto const off = ways > all - ways ? ways - (all - ways) : all - ways - ways;
      if (ways == 0 || ways == all || off >= nearest) return;
      nearest = off;
      decides = question;
    };
    for (std::size_t a = 0; a < classes().size(); ++a)
      for (auto b = a; b < classes().size(); ++b)
        if (a != b || classes()[a].units.size() > 1)
          ask({classes()[a].units[0], classes()[b].units[a == b ? 1 : 0], {}, together(a, b), book_.groupings});
    if (options_.empty()) return decides;
    auto const after = ways_from_places();
    for (auto const& one : classes()) {
      auto const ways = in_places(static_cast<std::size_t>(&one - classes().data()), after);
      for (std::size_t p = 0; p < ways.size(); ++p)
        ask({one.units[0], one.units[0], static_cast<std::uint32_t>(p), ways[p], book_.groupings});
    }
    return decides;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
