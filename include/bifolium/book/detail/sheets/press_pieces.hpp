// SPDX-License-Identifier: MIT
/// The pieces of presswork that the remaining units of a book can form: each set of units that fits on one sheet, is of
/// one stock of paper and agrees with the evidence of marks. Interchangeable units form a class. The number of units
/// left of each class is a state, stored as one number; a piece is the difference of two states.
#pragma once

#include <bifolium/book/sheet_grouping.hpp>
#include <bifolium/edition/plan.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PressPieces {
public:
  static constexpr std::size_t most_units = 24;

  /// Interchangeable units.
  struct Class {
    int leaves{};
    std::optional<int> marked{};
    Remnant::Kind kind{};
    std::optional<std::string> stock{};
    std::vector<std::uint32_t> units{};
    std::size_t step{}; ///< difference of states for one more unit of the class
  };
  /// A piece of presswork: the number of units of each class, as a state.
  struct Piece {
    std::size_t state{};
    std::vector<std::uint8_t> of_class{};
    std::vector<std::uint8_t> classes{}; ///< the classes of its units
    int left_over{}, size{};
  };

private:
  static constexpr std::size_t most_states = std::size_t{1} << 16U;
  SheetsOfBook const& book_;
  std::vector<Class> classes_{};
  std::size_t states_{1};
  std::vector<Piece> all_{};
  std::vector<std::vector<std::uint32_t>> with_{}; // by the first class of their units
  std::vector<std::uint8_t> left_{};               // number of units of each class in each state

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
  /// Returns the number of leaves of a whole sheet that show a part of its one watermark. Derived from the folds; twin
  /// marks and countermarks are not counted.
  [[nodiscard]] int pieces_of_mark() const {
    auto const leaves = book_.leaves_to_sheet;
    return leaves == 2 ? 1 : leaves == 8 ? 4 : leaves == 16 ? 8 : 2;
  }
  /// Returns true if the marks are possible: a sheet has exactly one mark; half a sheet, printed together and cut, has
  /// the whole mark or none.
  [[nodiscard]] bool marks_agree(int leaves, int marked, int not_looked_at) const {
    auto const sheet = book_.leaves_to_sheet, wanted = pieces_of_mark();
    auto unseen = not_looked_at + sheet - leaves;
    if (leaves > sheet / 2) return marked <= wanted && wanted <= marked + unseen;
    unseen -= sheet - sheet / 2;
    return marked == 0 || (marked <= wanted && wanted <= marked + unseen);
  }
  /// Returns the number of leaves of the part of a sheet that is printed for `leaves` leaves: the smallest of its equal
  /// parts that holds them, but no part less than a twelfth. Two thirds of a sheet are no such part: a third would stay
  /// white.
  [[nodiscard]] int printed_for(int leaves) const {
    auto const sheet = book_.leaves_to_sheet;
    for (int part = leaves; part < sheet; ++part)
      if (12 * part >= sheet && is_part_of_sheet(part, sheet, part == 1 || 2 * part == sheet)) return part;
    return sheet;
  }
  void make_pieces() {
    with_.resize(classes_.size());
    std::vector<std::uint8_t> taken(classes_.size());
    extend(0, taken, 0, 0, 0, std::nullopt);
  }
  void extend(std::size_t from, std::vector<std::uint8_t>& taken, int leaves, int marked, int not_looked_at,
              std::optional<std::string_view> stock) {
    if (from == classes_.size()) {
      if (leaves > 0 && marks_agree(leaves, marked, not_looked_at)) keep(taken, leaves);
      return;
    }
    auto const& one = classes_[from];
    bool const fits = !stock || !one.stock || *stock == *one.stock;
    for (std::size_t n = 0; n <= (fits ? one.units.size() : 0); ++n) {
      auto const more = static_cast<int>(n) * one.leaves;
      if (leaves + more > book_.leaves_to_sheet) break;
      taken[from] = static_cast<std::uint8_t>(n);
      extend(from + 1, taken, leaves + more, marked + static_cast<int>(n) * one.marked.value_or(0),
             not_looked_at + (one.marked ? 0 : more),
             n > 0 && !stock && one.stock ? std::string_view{*one.stock} : stock);
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
    with_[first].push_back(static_cast<std::uint32_t>(all_.size()));
    all_.push_back(static_cast<Piece&&>(piece));
  }

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

public:
  explicit PressPieces(SheetsOfBook const& book) : book_{book} { make_classes(); }
  [[nodiscard]] bool possible() const {
    return book_.units.size() <= most_units && states_ <= most_states && book_.places.size() <= 6;
  }
  /// Makes the pieces. Precondition: possible().
  void make() {
    count_what_is_left();
    make_pieces();
  }
  [[nodiscard]] std::vector<Class> const& classes() const { return classes_; }
  /// Returns the number of states. The last state has all units.
  [[nodiscard]] std::size_t states() const { return states_; }
  [[nodiscard]] std::vector<Piece> const& all() const { return all_; }
  /// Returns the pieces with a unit of a class and none of the classes before it, by index.
  [[nodiscard]] std::vector<std::uint32_t> const& with_first(std::size_t c) const { return with_[c]; }
  /// Returns the first class with a unit in a state. Precondition: state > 0.
  [[nodiscard]] std::size_t first_of(std::size_t state) const {
    std::size_t first = 0;
    while (left(state, first) == 0) ++first;
    return first;
  }
  [[nodiscard]] std::size_t left(std::size_t state, std::size_t c) const { return left_[state * classes_.size() + c]; }
  [[nodiscard]] bool is_in(Piece const& piece, std::size_t state) const {
    for (auto const c : piece.classes)
      if (piece.of_class[c] > left(state, c)) return false;
    return true;
  }
  /// Returns true if a state has so many units of each class.
  [[nodiscard]] bool has(std::vector<std::uint8_t> const& of_class, std::size_t state) const {
    for (std::size_t c = 0; c < classes_.size(); ++c)
      if (of_class[c] > left(state, c)) return false;
    return true;
  }
  /// Returns the number of ways to take the piece from a state in which `fixed` units of each class are already chosen,
  /// or 0 if it cannot be taken.
  [[nodiscard]] std::int64_t ways_to_take(Piece const& piece, std::size_t state,
                                          std::vector<std::uint8_t> const& fixed) const {
    return is_in(piece, state) ? ways_to_take(piece.of_class, state, fixed) : 0;
  }
  /// The same, of units that the state has. Precondition: it has as many of each class.
  [[nodiscard]] std::int64_t ways_to_take(std::vector<std::uint8_t> const& of_class, std::size_t state,
                                          std::vector<std::uint8_t> const& fixed) const {
    std::int64_t ways = 1;
    for (std::size_t c = 0; c < classes_.size(); ++c) {
      auto const wanted = std::size_t{of_class[c]}, sure = std::size_t{fixed[c]};
      if (wanted < sure) return 0;
      if (wanted > sure) ways *= choose(left(state, c) - sure, wanted - sure);
    }
    return ways;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
