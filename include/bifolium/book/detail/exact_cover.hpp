// SPDX-License-Identifier: MIT
/// Counts all ways to divide units among sheets: an exact cover with a capacity. The result for each state, which is
/// the number of units left of each class, is computed once. So twelve units need at most some thousand states, while
/// listing the ways would take minutes.
#pragma once

#include <bifolium/book/detail/press_pieces.hpp>
#include <bifolium/core/insertion_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ExactCover {
  static constexpr std::size_t most_listed = 20;
  using Piece = PressPieces::Piece;

  /// The results for one state.
  struct Ways {
    std::int64_t all{};
    std::int64_t fewest{}; ///< number of ways with the fewest pieces
    std::int64_t best{};   ///< number of these with the fewest leaves over
    int pieces{}, left_over{};
    /// the least and the greatest number of leaves of printed sheets or parts, for any of the ways
    int least{}, most{};
  };

  SheetsOfBook& book_;
  PressPieces pieces_;
  std::vector<Ways> ways_{};

  [[nodiscard]] auto const& classes() const { return pieces_.classes(); }
  static void add(Ways& to, Ways const& rest, Piece const& piece, std::int64_t times) {
    to.all += times * rest.all;
    auto const pieces = rest.pieces + 1;
    if (rest.all == 0) return;
    bool const first = to.all == times * rest.all;
    if (first || rest.least + piece.size < to.least) to.least = rest.least + piece.size;
    if (rest.most + piece.size > to.most) to.most = rest.most + piece.size;
    if (to.fewest == 0 || pieces < to.pieces) {
      to.pieces = pieces;
      to.fewest = to.best = 0;
    }
    if (pieces > to.pieces) return;
    to.fewest += times * rest.fewest;
    auto const over = rest.left_over + piece.left_over;
    if (to.best == 0 || over < to.left_over) to.left_over = over, to.best = 0;
    if (over == to.left_over) to.best += times * rest.best;
  }
  /// Computes the result of each state from the states that remain when the piece with its first unit is taken.
  void work_out() {
    ways_.resize(pieces_.states());
    ways_[0] = {1, 1, 1, 0, 0, 0, 0};
    std::vector<std::uint8_t> fixed(classes().size());
    for (std::size_t state = 1; state < pieces_.states(); ++state) {
      auto const first = pieces_.first_of(state);
      fixed[first] = 1;
      for (auto const p : pieces_.with_first(first))
        if (auto const times = pieces_.ways_to_take(pieces_.all()[p], state, fixed); times > 0)
          add(ways_[state], ways_[state - pieces_.all()[p].state], pieces_.all()[p], times);
      fixed[first] = 0;
    }
  }

  /// A way to fill places of deleted leaves: the remaining state, and the class of the unit in each place (-1: none).
  struct Filling {
    std::size_t state{};
    std::int64_t times{1};
    std::vector<std::int32_t> place{};
  };
  std::vector<Filling> fillings_{};
  void fill(std::size_t place, Filling const& so_far) {
    if (place == book_.places.size()) {
      fillings_.push_back(so_far);
      return;
    }
    auto next = so_far;
    next.place.push_back(-1);
    fill(place + 1, next);
    for (std::size_t c = 0; c < classes().size(); ++c) {
      auto const there = pieces_.left(so_far.state, c);
      if (there == 0 || classes()[c].kind == Remnant::Kind::part_sheet ||
          classes()[c].leaves > book_.places[place].leaves)
        continue;
      next = so_far;
      next.place.push_back(static_cast<std::int32_t>(c));
      next.state -= classes()[c].step;
      next.times *= static_cast<std::int64_t>(there);
      fill(place + 1, next);
    }
  }
  /// Counts the ways without distinguishing interchangeable units: each piece may be taken any number of times.
  void count_likes() {
    std::vector<std::int64_t> ways{1}; // nothing is made in one way
    ways.resize(pieces_.states());
    for (auto const& piece : pieces_.all())
      for (auto state = piece.state; state < pieces_.states(); ++state)
        if (pieces_.is_in(piece, state)) ways[state] += ways[state - piece.state];
    for (auto const& filling : fillings_) book_.groupings_of_likes += ways[filling.state];
  }

  /// Returns the sheets of one copy if `leaves` leaves are printed in addition to the whole sheets.
  [[nodiscard]] Fraction paper(int leaves) const {
    return Fraction{book_.whole} + Fraction{leaves, book_.leaves_to_sheet};
  }
  void list(Filling const& filling) {
    SheetGrouping grouping;
    std::vector<std::size_t> used(classes().size());
    for (std::uint32_t p = 0; p < filling.place.size(); ++p)
      if (auto const c = filling.place[p]; c >= 0)
        grouping.in_places.push_back(
            {classes()[static_cast<std::size_t>(c)].units[used[static_cast<std::size_t>(c)]++], p});
    std::vector<std::uint32_t> taken;
    list(filling.state, grouping, used, taken, 0);
  }
  void list(std::size_t state, SheetGrouping const& so_far, std::vector<std::size_t> const& used,
            std::vector<std::uint32_t>& taken, std::uint32_t printed) {
    if (book_.likeliest.size() == most_listed) return;
    if (state == 0) {
      auto grouping = so_far;
      grouping.pieces = book_.fewest_pieces;
      grouping.paper = paper(static_cast<int>(printed));
      keep_once(grouping, taken);
      return;
    }
    auto const first = pieces_.first_of(state);
    std::vector<std::uint8_t> fixed(classes().size());
    fixed[first] = 1;
    for (auto const p : pieces_.with_first(first)) {
      auto const& piece = pieces_.all()[p];
      if (pieces_.ways_to_take(piece, state, fixed) == 0) continue;
      auto const &rest = ways_[state - piece.state], &here = ways_[state];
      if (rest.best == 0 || rest.pieces + 1 != here.pieces || rest.left_over + piece.left_over != here.left_over)
        continue;
      auto next = so_far;
      auto next_used = used;
      next.sheets.emplace_back();
      for (std::size_t c = 0; c < classes().size(); ++c)
        for (int n = 0; n < piece.of_class[c]; ++n) next.sheets.back().push_back(classes()[c].units[next_used[c]++]);
      next.left_over += piece.left_over;
      taken.push_back(p);
      list(state - piece.state, next, next_used, taken, printed + static_cast<std::uint32_t>(piece.size));
      taken.pop_back();
    }
  }
  std::vector<std::vector<std::uint32_t>> kept_{}; // the pieces of the listed groupings, in order, and the places
  void keep_once(SheetGrouping const& grouping, std::vector<std::uint32_t> taken) {
    insertion_sort(taken, [](auto a, auto b) { return a < b; });
    for (auto const& [unit, place] : grouping.in_places) taken.push_back(1000000 + unit * 1000 + place);
    for (auto const& other : kept_)
      if (other == taken) return;
    kept_.push_back(taken);
    book_.likeliest.push_back(grouping);
  }

  /// Returns the number of groupings in which a unit of one class and a unit of another are on one sheet.
  [[nodiscard]] std::int64_t together(std::size_t a, std::size_t b) const {
    std::vector<std::uint8_t> fixed(classes().size());
    ++fixed[a], ++fixed[b];
    std::int64_t ways = 0;
    for (auto const& filling : fillings_) {
      std::int64_t times = 1; // ways to fill the places with other units than these two
      auto state = pieces_.states() - 1;
      for (auto const c : filling.place)
        if (c >= 0) {
          auto const one = static_cast<std::size_t>(c);
          auto const there = pieces_.left(state, one), sure = std::size_t{fixed[one]};
          times *= there > sure ? static_cast<std::int64_t>(there - sure) : 0;
          state -= classes()[one].step;
        }
      if (times == 0) continue;
      for (auto const& piece : pieces_.all())
        if (auto const more = pieces_.ways_to_take(piece, filling.state, fixed); more > 0)
          ways += times * more * ways_[filling.state - piece.state].all;
    }
    return ways;
  }
  void find_question() {
    if (book_.groupings < 2) return;
    std::int64_t nearest = book_.groupings;
    for (std::size_t a = 0; a < classes().size(); ++a)
      for (auto b = a; b < classes().size(); ++b) {
        if (a == b && classes()[a].units.size() < 2) continue;
        auto const ways = together(a, b);
        auto const off = 2 * ways > book_.groupings ? 2 * ways - book_.groupings : book_.groupings - 2 * ways;
        if (ways == 0 || ways == book_.groupings || off >= nearest) continue;
        nearest = off;
        book_.decides = SheetQuestion{classes()[a].units[0], classes()[b].units[a == b ? 1 : 0], ways, book_.groupings};
      }
  }

public:
  static constexpr std::size_t most_units = PressPieces::most_units;
  explicit ExactCover(SheetsOfBook& book) : book_{book}, pieces_{book} {}
  [[nodiscard]] bool possible() const { return pieces_.possible(); }
  void count() {
    pieces_.make();
    work_out();
    fill(0, {pieces_.states() - 1, 1, {}});
    Ways total;
    for (auto const& filling : fillings_) {
      auto const& ways = ways_[filling.state];
      if (ways.all == 0) continue;
      Piece const none{};
      auto shifted = ways;
      shifted.pieces -= 1; // `add` counts one more piece
      add(total, shifted, none, filling.times);
    }
    book_.groupings = total.all;
    book_.fewest_pieces = total.pieces;
    book_.with_fewest_pieces = total.fewest;
    book_.with_least_left_over = total.best;
    count_likes();
    for (auto const& filling : fillings_) {
      auto const& ways = ways_[filling.state];
      if (ways.all > 0 && ways.pieces == total.pieces && ways.left_over == total.left_over) list(filling);
    }
    book_.paper = {paper(total.least), {}, paper(total.most)};
    book_.paper.stated = book_.likeliest.empty() ? book_.paper.low : book_.likeliest.front().paper;
    find_question();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
