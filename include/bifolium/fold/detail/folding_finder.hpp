// SPDX-License-Identifier: MIT
/// The method of `find_foldings`: from formes to grids, from grids to partitions in the order of their prices, from
/// partitions to gatherings, from gatherings to the text of a scheme. The scheme is then folded to check that it gives
/// the pages.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/detail/compared_folds.hpp>
#include <bifolium/fold/detail/open_cells.hpp>
#include <bifolium/fold/detail/scheme_draft.hpp>
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/mirror.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the rules with a limit of the price that can be added to any price. Preconditions: at least one answer is wanted,
/// the limit is not below 0, and the directions are enumerators.
constexpr FindRules sound(FindRules rules) {
  if (rules.most < 1) broken("FindRules::most must be at least 1");
  if (rules.dearer < 0) broken("FindRules::dearer must be at least 0");
  if (rules.reads > Reads::right_to_left || rules.long_side > Axis::left_right)
    broken("a rule has a number that its type does not name");
  if (rules.dearer > PieceFolds::none) rules.dearer = PieceFolds::none; // above every price
  return rules;
}

/// Searches the foldings of a set of sheets.
class FoldingFinder {
  /// Returns into how many parts so many sheets can be cut: each cut makes two pieces of one, and a scheme names all of them.
  static constexpr std::size_t most_parts(std::size_t sheets) { return (Scheme::most_pieces + sheets) / 2; }
  /// for the partitions of a sheet, because pages in random order have too many of them
  static constexpr std::size_t most_nodes = 30000;
  static constexpr int farthest = 150; // highest price above the least one at which pieces are still tried
  std::span<SeenForme const> formes_;
  FindRules rules_;
  int below_;
  std::int64_t effort_; // steps of nesting that may still be made
  std::vector<SheetGrid> grids_{};
  std::vector<Partitions> partitions_{};
  std::vector<FoundFolding> answers_{}; // of all grids that were searched
  std::vector<FoundFolding> found_{};   // of the current grids
  std::vector<Fold<>> folds_{};         // the folds of found_
  bool gave_up_{};                      // true if sets of parts were left out of a search that found nothing
  bool right_to_left_{};

  [[nodiscard]] constexpr int least() const {
    int sum = 0;
    for (auto const& sheet : partitions_) sum += sheet.least();
    return sum;
  }
  /// Returns the direction of the long side for which the leaf is nearest to the usual shape on paper of 4 to 3:
  /// upright, 1.4 to 1.
  [[nodiscard]] constexpr Axis likely_long_side(SheetGrid const& grid) const {
    if (rules_.long_side) return *rules_.long_side;
    auto const off = [&](double high, double wide) {
      auto const shape = high / grid.rows / (wide / grid.columns) / 1.4;
      return shape < 1 ? 1 / shape : shape;
    };
    return off(4, 3) < off(3, 4) ? Axis::far_near : Axis::left_right;
  }

  /// Folds a set of parts that nest, and keeps the result if it gives the pages.
  constexpr void try_parts(std::vector<Part> const& parts, int price) {
    if (parts.size() > most_parts(grids_.size())) return;
    std::vector<PieceFolds> folds; // computed when they are needed
    auto const most = effort_ < Nester::most_steps ? static_cast<int>(effort_) : Nester::most_steps;
    Nester nester{parts, most};
    effort_ -= static_cast<std::int64_t>(parts.size());
    if (!nester.may_nest()) return;
    nester.nest([&](std::vector<Nested> const& nesting) {
      if (folds.empty())
        for (auto const& part : parts) folds.push_back(partitions_[part.rect.sheet].folds(part.rect));
      return try_nesting(parts, nesting, folds, price);
    });
    effort_ -= most - nester.left();
  }
  constexpr bool try_nesting(std::vector<Part> const& parts, std::vector<Nested> const& nesting,
                             std::vector<PieceFolds> const& folds, int price) {
    std::array<Axis, Scheme::most_sheets> long_sides{};
    for (std::size_t s = 0; s < grids_.size(); ++s) long_sides[s] = likely_long_side(grids_[s]);
    auto scheme = SchemeDraft{grids_, parts, nesting}.scheme(folds, long_sides.data());
    if (!scheme) return false; // the limits of a scheme are exceeded
    if (right_to_left_) scheme = mirrored(*scheme);
    auto const folded = fold(*scheme);
    if (!folded || !gives(*folded, formes_)) return false;
    double orders = 1;
    for (auto const& part : folds) orders *= part.orders;
    found_.push_back({*scheme, folding_work(*scheme), price, orders, {}, {}});
    folds_.push_back(*folded);
    return true;
  }
  /// Tries all sets of parts of the sheets from `sheet` on that cost `price` together.
  constexpr void each_set(std::size_t sheet, int price, std::vector<Part>& parts, int whole) {
    if (static_cast<int>(found_.size()) >= rules_.most || effort_ <= 0) return;
    if (sheet == partitions_.size()) return try_parts(parts, whole);
    int rest = 0;
    for (auto s = sheet + 1; s < partitions_.size(); ++s) rest += partitions_[s].least();
    auto& here = partitions_[sheet];
    bool const last = sheet + 1 == partitions_.size();
    for (int share = last ? price : here.least(); share <= price - rest; share += 5) {
      auto const steps = here.steps();
      auto const all = here.at(share);
      effort_ -= here.steps() - steps;
      for (auto const& rects : all) {
        auto const before = parts.size();
        for (auto const& rect : rects) parts.push_back({rect, here.piece(rect)});
        each_set(sheet + 1, price - share, parts, whole);
        cut_back(parts, before);
      }
    }
  }
  /// Finds the cheapest foldings, up to the allowed price above the first, and only those cheaper than `below`.
  constexpr void search(int below) {
    auto const before = found_.size();
    int fewest = 0;
    for (auto const& sheet : partitions_) fewest += sheet.fewest();
    if (fewest > static_cast<int>(most_parts(grids_.size()))) return;
    int last = least() + farthest, most = 0;
    for (int price = least(); price <= last && price < below; price += 5) {
      std::vector<Part> parts;
      each_set(0, price, parts, price);
      if (found_.size() > before && price + rules_.dearer < last + 1) {
        auto const end = found_[before].price + rules_.dearer;
        last = end < last ? end : last;
      }
    }
    if (found_.size() > before) return;
    for (auto const& sheet : partitions_) {
      most += sheet.most();
      gave_up_ = gave_up_ || sheet.capped();
    }
    gave_up_ = gave_up_ || effort_ <= 0 || (last < most && last < below);
  }

  /// Names the attested schemes that give these pages: those that were found, and others, which are added with their
  /// own price.
  constexpr void name_attested() {
    auto const later = first_page() - 1; // the schemes of the table begin with page 1
    for (auto const attested : Attested::all()) {
      if (!may_give(attested)) continue;
      auto scheme = SchemeMirror::of_later_pages(attested.scheme(), later);
      if (right_to_left_) scheme = mirrored(scheme);
      auto const fold_of_it = fold(scheme);
      if (!fold_of_it || !gives(*fold_of_it, formes_)) continue;
      auto const& folded = *fold_of_it;
      bool lies_so = true;
      for (int s = 0; s < scheme.sheets(); ++s)
        lies_so = lies_so && (!rules_.long_side || scheme.sheet(s).long_side == *rules_.long_side);
      std::size_t same = 0;
      while (same < found_.size() && !same_sheets(folds_[same], folded)) ++same;
      if (same == found_.size()) {
        if (!lies_so) continue;
        auto const work = folding_work(scheme);
        found_.push_back({scheme, work, work.price(), 0, {}, {}});
        folds_.push_back(folded);
      }
      auto& here = found_[same];
      if (!lies_so || here.attested) {
        if (!here.attested_turned) here.attested_turned = attested;
        continue;
      }
      here.attested = attested;
      here.scheme = scheme;
      here.work = folding_work(scheme);
    }
  }
  /// Returns the first page of the foldings found.
  [[nodiscard]] constexpr int first_page() const {
    int first = 65535;
    auto const& fold = folds_.front();
    for (int g = 0; g < fold.gatherings(); ++g) {
      auto const page = fold.pages_of({g, fold.gathering(g).leaf(1)}).recto;
      first = page < first ? page : first;
    }
    return first;
  }
  /// Compares the text of a scheme with the formes: the number of sheets, and rows and columns of the first. This is cheaper
  /// than to fold the scheme.
  [[nodiscard]] constexpr bool may_give(Attested attested) const {
    auto text = attested.text();
    std::size_t sheets = 0;
    for (auto at = text.find("\nsheet "); at != text.npos; at = text.find("\nsheet ", at + 1)) {
      auto const rows = text.find("rows ", at) + 5, columns = text.find("columns ", rows) + 8;
      if (sheets == grids_.size()) return false;
      if (number_at(text, rows) != grids_[sheets].rows || number_at(text, columns) != grids_[sheets].columns)
        return false;
      ++sheets;
    }
    return sheets == grids_.size();
  }
  static constexpr int number_at(std::string_view text, std::size_t at) {
    return static_cast<int>(TextCursor{text, at}.take_number(Scheme::most_cells).value_or(0));
  }
  constexpr void part(bool right_to_left) {
    right_to_left_ = right_to_left;
    if (right_to_left) mirror(grids_);
    partitions_.clear();
    for (std::size_t s = 0; s < grids_.size(); ++s)
      partitions_.emplace_back(grids_[s], static_cast<int>(s), rules_.turned_under,
                               static_cast<int>(most_parts(grids_.size())), most_nodes);
  }
  /// Searches the grids in one direction of reading, up to a price.
  constexpr void look(bool right_to_left, int below) {
    part(right_to_left);
    search(below);
    if (!found_.empty()) name_attested();
  }
  /// Searches from right to left, if that is cheaper than everything found before.
  constexpr void look_other_way() {
    auto kept = static_cast<std::vector<FoundFolding>&&>(found_);
    found_.clear(), folds_.clear();
    look(true, cheapest(kept));
    if (cheapest(found_) >= cheapest(kept)) found_ = static_cast<std::vector<FoundFolding>&&>(kept);
  }
  static constexpr int cheapest(std::vector<FoundFolding> const& found) {
    int price = PieceFolds::none;
    for (auto const& one : found) price = one.price < price ? one.price : price;
    return price;
  }

public:
  /// The steps of nesting that one question may take: some seconds of work.
  static constexpr std::int64_t most_effort = 20'000'000;
  /// Makes a finder. Foldings from the price `below` on are not searched, and no more steps of nesting are made than
  /// `effort`.
  constexpr FoldingFinder(std::span<SeenForme const> formes, FindRules const& rules, int below = PieceFolds::none,
                          std::int64_t effort = most_effort)
      : formes_{formes}, rules_{sound(rules)}, below_{below}, effort_{effort} {}
  /// Returns the steps of nesting that were not needed; 0 or less if they did not suffice.
  [[nodiscard]] constexpr std::int64_t effort_left() const noexcept { return effort_; }
  /// Adds the answers for grids whose pages are all known, if they are not much more expensive than those for others.
  constexpr void find(std::vector<SheetGrid> const& grids) {
    grids_ = grids;
    number_leaves(grids_);
    found_.clear(), folds_.clear();
    auto limit = answers_.empty() ? below_ : cheapest(answers_) + rules_.dearer + 1;
    limit = limit < below_ ? limit : below_;
    if (rules_.reads != Reads::right_to_left) look(false, limit);
    if (rules_.reads == Reads::right_to_left)
      look(true, limit);
    else if (!rules_.reads && cheapest(found_) > 0)
      look_other_way();
    for (auto const& one : found_) answers_.push_back(one);
  }
  /// Returns true if a search found nothing and did not try everything.
  [[nodiscard]] constexpr bool gave_up() const { return gave_up_; }
  /// Returns a lower bound of the price of the foldings of these grids. Pieces may not nest at this price.
  constexpr int least_price(std::vector<SheetGrid> const& grids) {
    grids_ = grids;
    number_leaves(grids_);
    part(rules_.reads == Reads::right_to_left);
    return least();
  }
  /// Returns all answers in the order of their prices.
  constexpr std::vector<FoundFolding> answers() && {
    insertion_sort(answers_, [](FoundFolding const& a, FoundFolding const& b) {
      return a.price != b.price ? a.price < b.price : a.attested.has_value() && !b.attested.has_value();
    });
    // If pages are illegible, answers come from many grids: those much more expensive than the first are removed,
    // except attested ones.
    auto const last = answers_.empty() ? 0 : answers_[0].price + rules_.dearer;
    std::vector<FoundFolding> kept;
    for (auto const& one : answers_)
      if (one.attested || (one.price <= last && static_cast<int>(kept.size()) < rules_.most)) kept.push_back(one);
    return kept;
  }
};

} // namespace detail

constexpr bool gives(Fold<> const& fold, std::span<SeenForme const> formes) {
  for (auto const& forme : formes) {
    if (forme.sheet < 0 || forme.sheet >= fold.sheets()) return false;
    auto const& lay = fold.sheet(forme.sheet);
    if (forme.rows != lay.rows || forme.columns != lay.columns || (forme.side == Side::only) != lay.one_forme)
      return false;
    std::size_t at = 0;
    for (int r = 0; r < forme.rows; ++r)
      for (int c = 0; c < forme.columns; ++c) {
        auto const& seen = forme.pages[at++];
        bool const inner = forme.side == Side::inner;
        auto const leaf = fold.leaf_at(forme.sheet, r, inner ? forme.columns - 1 - c : c);
        auto const pages = fold.pages_of(leaf);
        if (seen.page && *seen.page != (inner ? pages.inner() : pages.outer())) return false;
        if (seen.head && (*seen.head == Head::far_edge) != fold.cell(leaf).head_far) return false;
      }
  }
  return true;
}

namespace detail {
/// find_foldings, in constant expressions and when the program runs.
constexpr Expected<std::vector<FoundFolding>> foldings_found(std::span<SeenForme const> formes,
                                                             FindRules const& rules) {
  auto no_folding = error_in_field(Problem::no_folding, "formes", Scheme::most_pieces / 2);
  for (bool const even : {false, true}) {
    auto made = GridMaker{formes}.result(even);
    if (!made) return even ? no_folding : made.error();
    auto& grids = *made;
    OpenCells open{grids};
    if (!open.can_supply()) return error_in_field(Problem::too_many_illegible, "formes", most_open_cells);
    FoldingFinder finder{formes, rules};
    open.each([&] { finder.find(grids); });
    if (auto found = static_cast<FoldingFinder&&>(finder).answers(); !found.empty()) return found;
    if (finder.gave_up()) no_folding = error_in_field(Problem::cuts_not_all_tried, "formes");
  }
  return no_folding;
}
namespace compiled {
Expected<std::vector<FoundFolding>> find_foldings(std::span<SeenForme const> formes, FindRules const& rules);
} // namespace compiled
} // namespace detail

constexpr Expected<std::vector<FoundFolding>> find_foldings(std::span<SeenForme const> formes, FindRules const& rules) {
  BIFOLIUM_WHEN_RUN(detail::compiled::find_foldings(formes, rules));
  return detail::foldings_found(formes, rules);
}

} // namespace v0
} // namespace bifolium
