// SPDX-License-Identifier: MIT
/// Counts all ways to divide units among sheets: an exact cover with a capacity. The result for each state, which is
/// the number of units left of each class, is computed once. So twelve units need at most some thousand states, while
/// listing the ways would take minutes.
#pragma once

#include <bifolium/book/detail/sheets/cover_question.hpp>
#include <bifolium/core/insertion_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ExactCover {
  static constexpr std::size_t most_listed = 20, most_fillings = std::size_t{1} << 23U;
  using Piece = PressPieces::Piece;
  using Ways = CoverWays;
  using InPlace = UnitsInPlace;
  using Filled = PlacesFilled;

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

  std::vector<std::vector<InPlace>> options_{}; // of each place, those with the most leaves first
  std::vector<Filled> filled_{};                // by state
  /// Returns true if units of the class can have been printed in a place. A gathering was not printed in its own, and a
  /// sheet is of one stock of paper.
  [[nodiscard]] bool can_be_in(FreePlace const& place, PressPieces::Class const& one) const {
    auto const& unit = book_.units[one.units[0]];
    if (one.kind == Remnant::Kind::part_sheet && unit.name == place.gathering) return false;
    return one.leaves <= place.leaves && (!place.stock || !one.stock || *place.stock == *one.stock);
  }
  /// Adds all that fits in a place. False if there is too much of it.
  bool add_options(FreePlace const& place, std::size_t from, InPlace& taken, std::vector<InPlace>& all) const {
    if (from == classes().size()) {
      all.push_back(taken);
      return all.size() * pieces_.states() <= most_fillings;
    }
    auto const& one = classes()[from];
    auto const before = taken;
    std::size_t const most = can_be_in(place, one) ? one.units.size() : 0;
    for (std::size_t n = 0; n <= most && taken.leaves <= place.leaves; ++n) {
      if (!add_options(place, from + 1, taken, all)) return false;
      ++taken.of_class[from], taken.state += one.step, taken.leaves += one.leaves;
    }
    taken = before;
    return true;
  }
  void fill_places() {
    filled_.assign(pieces_.states(), {});
    filled_.back() = {1, 1};
    std::vector<std::uint8_t> const none(classes().size());
    for (auto const& options : options_) {
      std::vector<Filled> next(pieces_.states());
      for (std::size_t state = 0; state < filled_.size(); ++state) {
        auto const& here = filled_[state];
        if (here.times == 0) continue;
        for (auto const& option : options) {
          if (!pieces_.has(option.of_class, state)) continue;
          auto& there = next[state - option.state];
          there.times += here.times * pieces_.ways_to_take(option.of_class, state, none);
          there.of_likes += here.of_likes;
        }
      }
      filled_ = static_cast<std::vector<Filled>&&>(next);
    }
  }
  /// Counts the ways without distinguishing interchangeable units: each piece may be taken any number of times.
  void count_likes() {
    std::vector<std::int64_t> ways{1}; // nothing is made in one way
    ways.resize(pieces_.states());
    for (auto const& piece : pieces_.all())
      for (auto state = piece.state; state < pieces_.states(); ++state)
        if (pieces_.is_in(piece, state)) ways[state] += ways[state - piece.state];
    for (std::size_t state = 0; state < filled_.size(); ++state)
      book_.groupings_of_likes += filled_[state].of_likes * ways[state];
  }

  /// Returns the sheets of one copy if `leaves` leaves are printed in addition to the whole sheets.
  [[nodiscard]] Fraction paper(int leaves) const {
    return Fraction{book_.whole} + Fraction{leaves, book_.leaves_to_sheet};
  }
  /// Lists the ways to fill the places from `place` on that leave a state of `wanted`, and the sheets of each.
  /// `can_end[p]` has the states before place p from which such a state can be reached.
  void list_places(std::size_t place, std::size_t state, std::vector<std::vector<bool>> const& can_end,
                   SheetGrouping const& so_far, std::vector<std::size_t> const& used) {
    if (book_.likeliest.size() == most_listed || !can_end[place][state]) return;
    if (place == options_.size()) {
      std::vector<std::uint32_t> taken;
      return list(state, so_far, used, taken, 0);
    }
    for (auto const& option : options_[place]) {
      if (!pieces_.has(option.of_class, state)) continue;
      auto next = so_far;
      auto next_used = used;
      for (std::size_t c = 0; c < classes().size(); ++c)
        for (int n = 0; n < option.of_class[c]; ++n)
          next.in_places.push_back({classes()[c].units[next_used[c]++], static_cast<std::uint32_t>(place)});
      list_places(place + 1, state - option.state, can_end, next, next_used);
    }
  }
  /// Lists the likeliest groupings, those that take the least paper first.
  void list(std::vector<bool> const& wanted) {
    std::vector<std::vector<bool>> can_end(options_.size() + 1, std::vector<bool>(pieces_.states()));
    can_end.back() = wanted;
    for (std::size_t p = options_.size(); p-- > 0;)
      for (std::size_t state = 0; state < pieces_.states(); ++state)
        for (auto const& option : options_[p])
          if (pieces_.has(option.of_class, state) && can_end[p + 1][state - option.state]) can_end[p][state] = true;
    list_places(0, pieces_.states() - 1, can_end, {}, std::vector<std::size_t>(classes().size()));
    insertion_sort(book_.likeliest, [](auto const& a, auto const& b) { return a.paper < b.paper; });
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

public:
  static constexpr std::size_t most_units = PressPieces::most_units;
  /// So many units and places together have less than 2^63 groupings: the Bell number of 25 is 4.6 10^18.
  static constexpr std::size_t most_units_and_places = 25;
  explicit ExactCover(SheetsOfBook& book) : book_{book}, pieces_{book} {}
  [[nodiscard]] bool possible() const { return pieces_.possible(); }
  /// Finds what fits in each place. False if it is too much. Precondition: possible().
  [[nodiscard]] bool possible_in_places() {
    if (book_.units.size() + book_.places.size() > most_units_and_places) return false;
    for (auto const& place : book_.places) {
      InPlace none;
      none.of_class.resize(classes().size());
      auto& options = options_.emplace_back();
      if (!add_options(place, 0, none, options)) return false;
      insertion_sort(options, [](auto const& a, auto const& b) { return a.leaves > b.leaves; });
    }
    return true;
  }
  void count() {
    pieces_.make();
    work_out();
    fill_places();
    Ways total;
    for (std::size_t state = 0; state < filled_.size(); ++state) {
      auto const& ways = ways_[state];
      if (ways.all == 0 || filled_[state].times == 0) continue;
      Piece const none{};
      auto shifted = ways;
      shifted.pieces -= 1; // `add` counts one more piece
      add(total, shifted, none, filled_[state].times);
    }
    book_.groupings = total.all;
    book_.fewest_pieces = total.pieces;
    book_.with_fewest_pieces = total.fewest;
    book_.with_least_left_over = total.best;
    count_likes();
    std::vector<bool> wanted(pieces_.states());
    for (std::size_t state = 0; state < filled_.size(); ++state) {
      auto const& ways = ways_[state];
      wanted[state] =
          ways.all > 0 && filled_[state].times > 0 && ways.pieces == total.pieces && ways.left_over == total.left_over;
    }
    list(wanted);
    book_.paper = {paper(total.least), {}, paper(total.most)};
    book_.paper.stated = book_.likeliest.empty() ? book_.paper.low : book_.likeliest.front().paper;
    book_.decides = CoverQuestion{book_, pieces_, ways_, options_, filled_}.find();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
