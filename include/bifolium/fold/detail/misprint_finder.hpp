// SPDX-License-Identifier: MIT
/// The method of `find_misprints`: each change is made in a copy of the formes, the sheet is folded, and the change is
/// undone. Most changes are excluded before that: if both formes are given, only pages that contradict their backs can
/// be wrong; if one is given, a change must keep the chessboard pattern of rectos and versos.
#pragma once

#include <bifolium/fold/detail/folding_finder.hpp>
#include <bifolium/fold/find_misprints.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Searches the mistakes in a set of formes.
class MisprintFinder {
  struct Change {
    Correction::Kind kind{};
    std::size_t forme{}, at{}, other{};
    SeenPage right{}; ///< the page that is put there; for an exchange, the other page
    int least{};      ///< a lower bound of the price of a folding
  };
  std::vector<SeenForme> formes_;
  FindRules rules_;
  std::vector<Change> changes_{};
  std::vector<Correction> found_{};
  std::optional<FoundFolding> as_printed_{};
  int as_simple_{};
  // A step takes some tenths of a microsecond, and whoever asks waits for the answer.
  static constexpr std::int64_t for_one_change = 200'000, for_pages_as_printed = 1'000'000;
  std::int64_t effort_{2'000'000}; // steps of nesting that all changes together may still take
  bool cut_short_{};

  [[nodiscard]] constexpr int printed_price() const { return as_printed_ ? as_printed_->price : PieceFolds::none; }
  /// Returns the price up to which corrections are kept and foldings are searched.
  [[nodiscard]] constexpr int limit() const {
    int least = printed_price();
    for (auto const& one : found_)
      if (one.price + rules_.dearer + 1 < least) least = one.price + rules_.dearer + 1;
    return least;
  }

  /// Returns the simplest folding of the present formes, if it costs less than `below`.
  /// `effort` is reduced by the steps of nesting that it takes.
  [[nodiscard]] constexpr std::optional<FoundFolding> simplest(Reads reads, int below, std::int64_t& effort) const {
    for (bool const even : {false, true}) {
      auto made = GridMaker{formes_}.result(even);
      if (!made) return std::nullopt;
      OpenCells open{*made};
      if (!open.can_supply()) return std::nullopt;
      auto rules = rules_;
      rules.reads = reads;
      rules.most = 1;
      rules.dearer = 0;
      FoldingFinder finder{formes_, rules, below, effort};
      open.each([&] { finder.find(*made); });
      effort = finder.effort_left();
      auto found = static_cast<FoldingFinder&&>(finder).answers();
      if (!found.empty()) return found[0];
    }
    return std::nullopt;
  }
  /// Returns a lower bound of the price of the present formes, or no value if they contradict each other.
  [[nodiscard]] constexpr std::optional<int> at_least() const {
    auto made = GridMaker{formes_}.result();
    if (!made) return std::nullopt;
    OpenCells open{*made};
    if (!open.can_supply()) return std::nullopt;
    std::optional<int> least;
    open.each([&] {
      auto const price = FoldingFinder{formes_, rules_}.least_price(*made);
      if (!least || price < *least) least = price;
    });
    return least;
  }
  [[nodiscard]] constexpr Reads reads() const { return rules_.reads.value_or(Reads::left_to_right); }

  /// Makes a change, or undoes it: `right` and the printed page are exchanged.
  constexpr void apply(Change& change) {
    auto& pages = formes_[change.forme].pages;
    if (change.kind == Correction::Kind::pages_exchanged) {
      auto const kept = pages[change.at].page;
      pages[change.at].page = pages[change.other].page;
      pages[change.other].page = kept;
    } else if (change.kind == Correction::Kind::pages_and_heads_exchanged) {
      auto const kept = pages[change.at];
      pages[change.at] = pages[change.other];
      pages[change.other] = kept;
    } else {
      auto const kept = pages[change.at];
      pages[change.at] = change.right;
      change.right = kept;
    }
  }
  /// Stores a change with the lower bound of its price.
  constexpr void consider(Change change) {
    apply(change);
    auto const least = at_least();
    apply(change);
    if (!least || *least > printed_price()) return;
    change.least = *least;
    changes_.push_back(change);
  }
  /// Considers that two pages are exchanged, and if their heads differ, that they are exchanged with their heads.
  constexpr void exchange(std::size_t forme, std::size_t one, std::size_t other) {
    consider({Correction::Kind::pages_exchanged, forme, one, other, {}, 0});
    auto const first = formes_[forme].pages[one].head, second = formes_[forme].pages[other].head;
    if (first && second && first != second)
      consider({Correction::Kind::pages_and_heads_exchanged, forme, one, other, {}, 0});
  }
  constexpr void renumber(std::size_t forme, std::size_t at, int page) {
    auto const& before = formes_[forme].pages[at];
    if (page < 1 || page > 65535 || before.page == page) return;
    consider({Correction::Kind::number_wrong, forme, at, at, {static_cast<std::uint16_t>(page), before.head}, 0});
  }
  constexpr void turn_head(std::size_t forme, std::size_t at) {
    auto const& before = formes_[forme].pages[at];
    if (!before.head) return;
    auto const turned = *before.head == Head::far_edge ? Head::near_edge : Head::far_edge;
    consider({Correction::Kind::head_turned, forme, at, at, {before.page, turned}, 0});
  }
  /// Folds the formes after a change, and keeps the correction if it helps.
  constexpr void look(Change& change) {
    auto const cost = folding_prices.correction;
    auto const below = limit();
    bool const counts = as_printed_.has_value() && change.least <= printed_price();
    if (!counts && change.least + cost >= below) return;
    auto const printed = formes_[change.forme].pages[change.at].page;
    apply(change);
    auto const most = effort_ < for_one_change ? effort_ : for_one_change;
    auto left = most;
    auto const folding = simplest(reads(), counts ? printed_price() + 1 : below - cost, left);
    effort_ -= most - left;
    cut_short_ = cut_short_ || (left <= 0 && !folding);
    if (folding && counts) ++as_simple_;
    if (folding && folding->price + cost < below) {
      auto const& forme = formes_[change.forme];
      auto const columns = static_cast<std::size_t>(forme.columns);
      auto const n = [](std::size_t i) { return static_cast<int>(i); };
      found_.push_back({change.kind, forme.side, forme.sheet, n(change.at / columns), n(change.at % columns),
                        n(change.other / columns), n(change.other % columns), printed, forme.pages[change.at].page,
                        *folding, folding->price + cost});
    }
    apply(change);
  }

  [[nodiscard]] constexpr std::optional<std::size_t> other_forme(std::size_t forme) const {
    for (std::size_t i = 0; i < formes_.size(); ++i)
      if (formes_[i].sheet == formes_[forme].sheet && i != forme) return i;
    return std::nullopt;
  }
  /// Returns the page in the other forme that is on the back of a page of this one.
  [[nodiscard]] constexpr SeenPage backing(std::size_t forme, std::size_t at) const {
    auto const columns = static_cast<std::size_t>(formes_[forme].columns);
    return formes_[*other_forme(forme)].pages[at / columns * columns + columns - 1 - at % columns];
  }
  /// Searches two formes. Only a page that contradicts its back can be wrong. Rectos are odd or even, as in most leaves.
  constexpr void try_contradictions(std::size_t number) {
    auto const& forme = formes_[number];
    int odd = 0;
    for (std::size_t i = 0; i < forme.pages.size(); ++i)
      if (auto const here = forme.pages[i].page, there = backing(number, i).page; here && there)
        odd += *here + 1 == *there ? (*here % 2 != 0 ? 1 : -1) : *there + 1 == *here ? (*there % 2 != 0 ? 1 : -1) : 0;
    auto const fellow = [&](int page) { return (page % 2 != 0) == (odd >= 0) ? page + 1 : page - 1; };
    std::vector<std::size_t> numbers, heads;
    for (std::size_t i = 0; i < forme.pages.size(); ++i) {
      auto const &here = forme.pages[i], there = backing(number, i);
      if (here.page && there.page && *here.page != fellow(*there.page)) numbers.push_back(i);
      if (here.head && there.head && here.head != there.head) heads.push_back(i);
    }
    if (heads.size() == 1) turn_head(number, heads[0]);
    if (numbers.size() == 2) exchange(number, numbers[0], numbers[1]);
    if (numbers.size() == 1) renumber(number, numbers[0], fellow(*backing(number, numbers[0]).page));
  }

  /// Counts the neighbours whose rectos both lie down or both lie up.
  [[nodiscard]] static constexpr int spoilt(SeenForme const& forme) {
    int n = 0;
    auto const odd = [&](int r, int c) {
      auto const& page = forme.pages[static_cast<std::size_t>(r * forme.columns + c)].page;
      return page ? *page % 2 : -1;
    };
    for (int r = 0; r < forme.rows; ++r)
      for (int c = 0; c < forme.columns; ++c) {
        if (c + 1 < forme.columns && odd(r, c) == odd(r, c + 1)) ++n;
        if (r + 1 < forme.rows && odd(r, c) == odd(r + 1, c)) ++n;
      }
    return n;
  }
  /// Searches one forme: tries every pair, every head and every number.
  constexpr void try_all(std::size_t number) {
    auto& forme = formes_[number];
    auto const now = spoilt(forme);
    for (std::size_t i = 0; i < forme.pages.size(); ++i) {
      turn_head(number, i);
      for (std::size_t k = i + 1; k < forme.pages.size(); ++k) {
        auto const &one = forme.pages[i].page, &other = forme.pages[k].page;
        if (!one || !other || *one == *other) continue;
        Change change{Correction::Kind::pages_exchanged, number, i, k, {}, 0};
        apply(change);
        bool const worse = spoilt(forme) > now;
        apply(change);
        if (!worse) exchange(number, i, k);
      }
      try_numbers(number, i);
    }
  }
  /// Replaces a number by one that no other page has, as if the page were illegible.
  constexpr void try_numbers(std::size_t number, std::size_t at) {
    auto& forme = formes_[number];
    auto const before = forme.pages[at];
    if (!before.page) return;
    forme.pages[at].page.reset();
    std::vector<int> pages;
    if (auto made = GridMaker{formes_}.result()) {
      auto const row = static_cast<int>(at) / forme.columns, column = static_cast<int>(at) % forme.columns;
      bool const inner = forme.side == Side::inner;
      auto const& cell =
          (*made)[static_cast<std::size_t>(forme.sheet)].at(row, inner ? forme.columns - 1 - column : column);
      OpenCells open{*made};
      if (open.can_supply()) open.each([&] { pages.push_back(cell.recto + (cell.recto_down != inner ? 0 : 1)); });
    }
    forme.pages[at] = before;
    for (auto const page : pages) renumber(number, at, page);
  }

public:
  constexpr MisprintFinder(std::span<SeenForme const> formes, FindRules const& rules) : rules_{sound(rules)} {
    for (auto const& forme : formes) formes_.push_back(forme);
  }
  constexpr Misprints result() {
    auto for_printed = for_pages_as_printed;
    as_printed_ = simplest(reads(), PieceFolds::none, for_printed);
    auto const other_way = reads() == Reads::left_to_right ? Reads::right_to_left : Reads::left_to_right;
    if (!rules_.reads && printed_price() > 0)
      if (auto const mirrored = simplest(other_way, printed_price() - folding_prices.correction, for_printed))
        found_.push_back({Correction::Kind::printed_side,
                          {},
                          0,
                          0,
                          0,
                          0,
                          0,
                          {},
                          {},
                          *mirrored,
                          mirrored->price + folding_prices.correction});
    cut_short_ = for_printed <= 0;
    for (std::size_t i = 0; i < formes_.size(); ++i)
      if (other_forme(i))
        try_contradictions(i);
      else
        try_all(i);
    insertion_sort(changes_, [](Change const& a, Change const& b) { return a.least < b.least; });
    for (auto& change : changes_) // the likeliest first
      if (effort_ > 0)
        look(change);
      else
        cut_short_ = true;
    insertion_sort(found_, [](Correction const& a, Correction const& b) { return a.price < b.price; });
    while (!found_.empty() && (found_.size() > static_cast<std::size_t>(rules_.most) ||
                               found_.back().price > found_.front().price + rules_.dearer))
      found_.pop_back();
    return {as_printed_, static_cast<std::vector<Correction>&&>(found_), as_simple_, cut_short_};
  }
};

} // namespace detail

namespace detail {
/// find_misprints, in constant expressions and when the program runs.
constexpr Expected<Misprints> misprints_found(std::span<SeenForme const> formes, FindRules const& rules) {
  if (auto const made = GridMaker{formes}.result(); !made) {
    auto const problem = made.error().problem;
    bool const contradict = problem == Problem::pages_not_backed || problem == Problem::heads_not_backed ||
                            problem == Problem::illegible_head_to_tail;
    if (!contradict) return made.error();
  }
  return MisprintFinder{formes, rules}.result();
}
namespace compiled {
Expected<Misprints> find_misprints(std::span<SeenForme const> formes, FindRules const& rules);
} // namespace compiled
} // namespace detail

constexpr Expected<Misprints> find_misprints(std::span<SeenForme const> formes, FindRules const& rules) {
  BIFOLIUM_WHEN_RUN(detail::compiled::find_misprints(formes, rules));
  return detail::misprints_found(formes, rules);
}

} // namespace v0
} // namespace bifolium
