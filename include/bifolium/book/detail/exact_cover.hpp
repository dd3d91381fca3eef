// SPDX-License-Identifier: MIT
/// All ways to part units into sheets: exact cover with a capacity. Units that are alike make a class, and how many of each class
/// are left makes a state; what can be done with a state is worked out once. So twelve units take no more than some
/// thousand states, where listing would take minutes.
#pragma once

#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/core/insertion_sort.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class ExactCover {
public:
  static constexpr std::size_t most_units = 24;

private:
  static constexpr std::size_t most_states = std::size_t{1} << 16U, most_listed = 20;

  /// Units that are alike.
  struct Class {
    int leaves{};
    std::optional<int> marked{};
    Remnant::Kind kind{};
    std::string stock{};
    std::vector<std::uint32_t> units{};
    std::size_t step{}; ///< one unit more of the class is so many states further
  };
  /// A piece of presswork: how many units of each class, as a state.
  struct Piece {
    std::size_t state{};
    std::vector<std::uint8_t> of_class{};
    std::vector<std::uint8_t> classes{}; ///< those it has units of
    int left_over{}, size{};
  };
  /// What can be done with a state.
  struct Ways {
    std::int64_t all{};
    std::int64_t fewest{}; ///< ways of the fewest pieces
    std::int64_t best{};   ///< and of these, of the fewest leaves over
    int pieces{}, left_over{}, left_over_of_fewest{};
  };

  SheetsOfBook& book_;
  std::vector<Class> classes_{};
  std::size_t states_{1};
  std::vector<Piece> pieces_{};
  std::vector<std::vector<std::uint32_t>> pieces_with_{}; ///< by the first class they have a unit of
  std::vector<Ways> ways_{};

  void make_classes() {
    for (std::uint32_t u = 0; u < book_.units.size(); ++u) {
      auto const& unit = book_.units[u];
      Class* same = nullptr;
      for (auto& one : classes_) {
        auto const& first = book_.units[one.units[0]];
        if (first.likes == unit.likes && one.leaves == unit.leaves && one.stock == unit.stock &&
            one.marked == unit.marked_leaves)
          same = &one;
      }
      if (same == nullptr) {
        classes_.push_back({unit.leaves, unit.marked_leaves, unit.kind, unit.stock, {}, 0});
        same = &classes_.back();
      }
      same->units.push_back(u);
    }
    for (auto& one : classes_) {
      one.step = states_;
      if (states_ <= most_states) states_ *= one.units.size() + 1;
    }
  }
  /// Leaves of a whole sheet that bear a piece of its one mark. Argued from the folds; twins and countermarks are not counted.
  [[nodiscard]] int pieces_of_mark() const {
    auto const leaves = book_.leaves_to_sheet;
    return leaves == 2 ? 1 : leaves == 8 ? 4 : leaves == 16 ? 8 : 2;
  }
  /// A sheet has just one mark; half a sheet, worked together and cut, has the whole mark or none.
  [[nodiscard]] bool marks_agree(int leaves, int marked, int not_looked_at) const {
    auto const sheet = book_.leaves_to_sheet, wanted = pieces_of_mark();
    auto unseen = not_looked_at + sheet - leaves;
    if (leaves > sheet / 2) return marked <= wanted && wanted <= marked + unseen;
    unseen -= sheet - sheet / 2;
    return marked == 0 || (marked <= wanted && wanted <= marked + unseen);
  }
  /// The part of a sheet that is printed for so many leaves: the sheet, its half, quarter or eighth; thirds of a duodecimo.
  [[nodiscard]] int printed_for(int leaves) const {
    auto const sheet = book_.leaves_to_sheet;
    if (sheet == 12) {
      for (int part : {1, 2, 4, 6, 8})
        if (part >= leaves) return part;
      return 12;
    }
    auto const eighth = sheet / 8 > 1 ? sheet / 8 : 1;
    return leaves > sheet / 2 ? sheet : leaves > sheet / 4 ? sheet / 2 : leaves > eighth ? sheet / 4 : eighth;
  }
  void make_pieces() {
    pieces_with_.resize(classes_.size());
    std::vector<std::uint8_t> taken(classes_.size());
    extend(0, taken, 0, 0, 0, "");
  }
  void extend(std::size_t from, std::vector<std::uint8_t>& taken, int leaves, int marked, int not_looked_at,
              std::string_view stock) {
    if (from == classes_.size()) {
      if (leaves > 0 && marks_agree(leaves, marked, not_looked_at)) keep(taken, leaves);
      return;
    }
    auto const& one = classes_[from];
    bool const fits = stock.empty() || one.stock.empty() || stock == one.stock;
    for (std::size_t n = 0; n <= (fits ? one.units.size() : 0); ++n) {
      auto const more = static_cast<int>(n) * one.leaves;
      if (leaves + more > book_.leaves_to_sheet) break;
      taken[from] = static_cast<std::uint8_t>(n);
      extend(from + 1, taken, leaves + more, marked + static_cast<int>(n) * one.marked.value_or(0),
             not_looked_at + (one.marked ? 0 : more), n > 0 && stock.empty() ? std::string_view{one.stock} : stock);
    }
    taken[from] = 0;
  }
  void keep(std::vector<std::uint8_t> const& taken, int leaves) {
    Piece piece;
    std::size_t first = classes_.size();
    for (std::size_t c = classes_.size(); c-- > 0;)
      if (taken[c] > 0) {
        piece.state += taken[c] * classes_[c].step;
        piece.classes.push_back(static_cast<std::uint8_t>(c));
        first = c;
      }
    piece.of_class = taken;
    piece.size = printed_for(leaves);
    piece.left_over = piece.size - leaves;
    pieces_with_[first].push_back(static_cast<std::uint32_t>(pieces_.size()));
    pieces_.push_back(static_cast<Piece&&>(piece));
  }

  std::vector<std::uint8_t> left_{}; // how many units of each class each state has
  [[nodiscard]] std::size_t left(std::size_t state, std::size_t c) const { return left_[state * classes_.size() + c]; }
  void count_what_is_left() {
    left_.resize(states_ * classes_.size());
    for (std::size_t state = 0; state < states_; ++state)
      for (std::size_t c = 0; c < classes_.size(); ++c)
        left_[state * classes_.size() + c] =
            static_cast<std::uint8_t>(state / classes_[c].step % (classes_[c].units.size() + 1));
  }
  static std::int64_t choose(std::size_t n, std::size_t k) {
    std::int64_t ways = 1;
    for (std::size_t i = 0; i < k; ++i)
      ways = ways * static_cast<std::int64_t>(n - i) / static_cast<std::int64_t>(i + 1);
    return ways;
  }
  [[nodiscard]] bool is_in(Piece const& piece, std::size_t state) const {
    for (auto const c : piece.classes)
      if (piece.of_class[c] > left(state, c)) return false;
    return true;
  }
  /// In how many ways the piece can be taken from a state, `fixed` units of each class being in it anyhow; 0 where it cannot.
  [[nodiscard]] std::int64_t ways_to_take(Piece const& piece, std::size_t state,
                                          std::vector<std::uint8_t> const& fixed) const {
    if (!is_in(piece, state)) return 0;
    std::int64_t ways = 1;
    for (std::size_t c = 0; c < classes_.size(); ++c) {
      auto const wanted = std::size_t{piece.of_class[c]}, sure = std::size_t{fixed[c]};
      if (wanted < sure) return 0;
      if (wanted > sure) ways *= choose(left(state, c) - sure, wanted - sure);
    }
    return ways;
  }
  static void add(Ways& to, Ways const& rest, Piece const& piece, std::int64_t times) {
    to.all += times * rest.all;
    auto const pieces = rest.pieces + 1;
    if (rest.all == 0) return;
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
  /// Each state from the states that are left when the piece with its first unit is taken.
  void work_out() {
    ways_.resize(states_);
    ways_[0] = {1, 1, 1, 0, 0, 0};
    std::vector<std::uint8_t> fixed(classes_.size());
    for (std::size_t state = 1; state < states_; ++state) {
      std::size_t first = 0;
      while (left(state, first) == 0) ++first;
      fixed[first] = 1;
      for (auto const p : pieces_with_[first])
        if (auto const times = ways_to_take(pieces_[p], state, fixed); times > 0)
          add(ways_[state], ways_[state - pieces_[p].state], pieces_[p], times);
      fixed[first] = 0;
    }
  }

  /// A way to fill places of deleted leaves: what is left then, and the class that each place has a unit of (-1: none).
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
    for (std::size_t c = 0; c < classes_.size(); ++c) {
      auto const there = left(so_far.state, c);
      if (there == 0 || classes_[c].kind == Remnant::Kind::part_sheet ||
          classes_[c].leaves > book_.places[place].leaves)
        continue;
      next = so_far;
      next.place.push_back(static_cast<std::int32_t>(c));
      next.state -= classes_[c].step;
      next.times *= static_cast<std::int64_t>(there);
      fill(place + 1, next);
    }
  }
  /// Ways where likes are not told apart: each piece may be taken any number of times.
  void count_likes() {
    std::vector<std::int64_t> ways(states_);
    ways[0] = 1;
    for (auto const& piece : pieces_)
      for (auto state = piece.state; state < states_; ++state)
        if (is_in(piece, state)) ways[state] += ways[state - piece.state];
    for (auto const& filling : fillings_) book_.groupings_of_likes += ways[filling.state];
  }

  void list(Filling const& filling) {
    SheetGrouping grouping;
    std::vector<std::size_t> used(classes_.size());
    for (std::uint32_t p = 0; p < filling.place.size(); ++p)
      if (auto const c = filling.place[p]; c >= 0)
        grouping.in_places.push_back(
            {classes_[static_cast<std::size_t>(c)].units[used[static_cast<std::size_t>(c)]++], p});
    std::vector<std::uint32_t> taken;
    list(filling.state, grouping, used, taken, 0);
  }
  void list(std::size_t state, SheetGrouping const& so_far, std::vector<std::size_t> const& used,
            std::vector<std::uint32_t>& taken, std::uint32_t printed) {
    if (book_.likeliest.size() == most_listed) return;
    if (state == 0) {
      auto grouping = so_far;
      grouping.pieces = book_.fewest_pieces;
      grouping.paper = Fraction{book_.whole} + Fraction{static_cast<std::int64_t>(printed), book_.leaves_to_sheet};
      keep_once(grouping, taken);
      return;
    }
    std::size_t first = 0;
    while (left(state, first) == 0) ++first;
    std::vector<std::uint8_t> fixed(classes_.size());
    fixed[first] = 1;
    for (auto const p : pieces_with_[first]) {
      auto const& piece = pieces_[p];
      if (ways_to_take(piece, state, fixed) == 0) continue;
      auto const &rest = ways_[state - piece.state], &here = ways_[state];
      if (rest.best == 0 || rest.pieces + 1 != here.pieces || rest.left_over + piece.left_over != here.left_over)
        continue;
      auto next = so_far;
      auto next_used = used;
      next.sheets.emplace_back();
      for (std::size_t c = 0; c < classes_.size(); ++c)
        for (int n = 0; n < piece.of_class[c]; ++n) next.sheets.back().push_back(classes_[c].units[next_used[c]++]);
      next.left_over += piece.left_over;
      taken.push_back(p);
      list(state - piece.state, next, next_used, taken, printed + static_cast<std::uint32_t>(piece.size));
      taken.pop_back();
    }
  }
  std::vector<std::vector<std::uint32_t>> kept_{}; // pieces of the groupings listed, in order, and places
  void keep_once(SheetGrouping const& grouping, std::vector<std::uint32_t> taken) {
    insertion_sort(taken, [](auto a, auto b) { return a < b; });
    for (auto const& [unit, place] : grouping.in_places) taken.push_back(1000000 + unit * 1000 + place);
    for (auto const& other : kept_)
      if (other == taken) return;
    kept_.push_back(taken);
    book_.likeliest.push_back(grouping);
  }

  /// In how many groupings a unit of one class and a unit of another are on one sheet.
  [[nodiscard]] std::int64_t together(std::size_t a, std::size_t b) const {
    std::vector<std::uint8_t> fixed(classes_.size());
    ++fixed[a], ++fixed[b];
    std::int64_t ways = 0;
    for (auto const& filling : fillings_) {
      std::int64_t times = 1; // ways to fill the places with others than these two
      auto state = states_ - 1;
      for (auto const c : filling.place)
        if (c >= 0) {
          auto const one = static_cast<std::size_t>(c);
          auto const there = left(state, one), sure = std::size_t{fixed[one]};
          times *= there > sure ? static_cast<std::int64_t>(there - sure) : 0;
          state -= classes_[one].step;
        }
      if (times == 0) continue;
      for (auto const& piece : pieces_)
        if (auto const more = ways_to_take(piece, filling.state, fixed); more > 0)
          ways += times * more * ways_[filling.state - piece.state].all;
    }
    return ways;
  }
  void find_question() {
    if (book_.groupings < 2) return;
    std::int64_t nearest = book_.groupings;
    for (std::size_t a = 0; a < classes_.size(); ++a)
      for (auto b = a; b < classes_.size(); ++b) {
        if (a == b && classes_[a].units.size() < 2) continue;
        auto const ways = together(a, b);
        auto const off = 2 * ways > book_.groupings ? 2 * ways - book_.groupings : book_.groupings - 2 * ways;
        if (ways == 0 || ways == book_.groupings || off >= nearest) continue;
        nearest = off;
        book_.decides = SheetQuestion{classes_[a].units[0], classes_[b].units[a == b ? 1 : 0], ways, book_.groupings};
      }
  }

public:
  explicit ExactCover(SheetsOfBook& book) : book_{book} { make_classes(); }
  [[nodiscard]] bool possible() const {
    return book_.units.size() <= most_units && states_ <= most_states && book_.places.size() <= 6;
  }
  void count() {
    count_what_is_left();
    make_pieces();
    work_out();
    fill(0, {states_ - 1, 1, {}});
    Ways total;
    for (auto const& filling : fillings_) {
      auto const& ways = ways_[filling.state];
      if (ways.all == 0) continue;
      Piece const none{};
      auto shifted = ways;
      shifted.pieces -= 1; // `add` counts a piece more
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
    find_question();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
