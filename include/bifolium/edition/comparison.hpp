// SPDX-License-Identifier: MIT
/// Would twelves have been cheaper than octavo? One text is laid out in several ways - schemes, sheets, prices - and the
/// ways are put in order for every run from one number of copies to another. A small run is ruled by formes, a long one by
/// paper, so the order flips; where, is exact and not sampled.
///
/// Method. The cost of a way lies between two straight lines over the copies, parallel and known exactly: what rounding can
/// add (an odd half-sheet, a started copy of overs) is their distance. Where at both ends of a stretch the lines of all ways
/// keep clear of one another, the order holds throughout; else the stretch is halved, down to single runs, which are
/// reckoned out. So only the runs near a flip are reckoned one by one, at most each once.
#pragma once

#include <bifolium/core/list.hpp>
#include <bifolium/edition/bill.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What is compared.
enum class CompareBy : std::uint8_t {
  cost,  ///< paper, formes and presswork, as far as prices are named, exactly: no rounding to a coin
  sheets ///< paper of the sheet of each way, counted
};

/// One way to print the text: an edition, whose copies are left open, and its plan.
struct PrintingOption {
  Edition edition{}; ///< all but the copies, which are what is varied
  Plan plan{};       ///< how its pages are arranged; the same for every number of copies
};
/// Arranges an edition as a way. error: as `reckon`; copies need not be named.
constexpr Expected<PrintingOption> way_of(Edition edition) {
  if (edition.copies == 0) edition.copies = 1;
  auto const bill = reckon(edition);
  if (!bill) return bill.error();
  return PrintingOption{edition, bill->plan};
}

/// Runs throughout which the ways keep one order, the least first; ways that cost the same stand as they were given.
struct Stretch {
  std::int64_t from{}, to{};        ///< copies, both included
  std::vector<std::size_t> order{}; ///< indices of the ways
  /// The index of the way that is least throughout the stretch.
  [[nodiscard]] std::size_t least() const { return order.front(); }
  friend bool operator==(Stretch const&, Stretch const&) = default;
};

namespace detail {

/// What keeps a way from being reckoned, whatever the copies.
constexpr std::optional<Error> what_is_wrong(PrintingOption const& way) {
  auto edition = way.edition;
  edition.copies = 1;
  auto const bill = reckon(edition, way.plan);
  if (!bill) return bill.error();
  return {};
}
/// What a way in which nothing is wrong costs at so many copies.
constexpr Expected<Fraction> sound_cost_of(PrintingOption const& way, std::int64_t copies, CompareBy by) {
  auto const& edition = way.edition;
  Fits fits;
  auto const given_out = fits(checked_add(copies, fits(overs_of(copies, edition.overs_percent, edition.overplus))));
  auto const sheets = fits(way.plan.sheets_for(given_out));
  Fraction sum{sheets};
  if (by == CompareBy::cost) {
    sum = edition.price_of_ream
              ? fits(checked_multiply(Fraction{*edition.price_of_ream, edition.ream->printable()}, sum))
              : Fraction{};
    auto const formes = fits(checked_multiply(edition.price_of_forme.value_or(0), way.plan.formes()));
    auto const impressions = fits(way.plan.impressions_for(given_out));
    auto const work = fits(checked_multiply(
        Fraction{edition.price_of_token.value_or(0), edition.press.token.impressions}, Fraction{impressions}));
    sum = fits(checked_add(fits(checked_add(sum, Fraction{formes})), work));
  }
  if (!fits.all()) return error_in_field(Problem::result_too_large, "");
  return sum;
}

} // namespace detail

/// What a way costs at so many copies, or its sheets, exactly. error: as `reckon`, but no copies cost their formes.
constexpr Expected<Fraction> cost_of(PrintingOption const& way, std::int64_t copies, CompareBy by = CompareBy::cost) {
  if (copies < 0) return error_in_field(Problem::negative_count, "copies", copies);
  if (auto const error = detail::what_is_wrong(way)) return *error;
  return detail::sound_cost_of(way, copies, by);
}

namespace detail {

/// Two parallel lines between which the cost of a way lies.
struct CostLines {
  Fraction rise{}, base{}, gap{};

  constexpr CostLines() = default;
  constexpr CostLines(PrintingOption const& way, CompareBy by, Fits& fits) {
    auto const& edition = way.edition;
    // a copy more: sheets and impressions of it; and what rounding adds at most, by working
    Fraction sheets = way.plan.sheets_a_copy(), impressions{}, more_sheets{}, more_impressions{};
    for (auto const& working : way.plan) {
      Fraction const times{working.times};
      bool const cut = working.kind == Working::Kind::cut_first, part = working.leaves != way.plan.leaves_to_sheet;
      auto const share = cut ? Fraction{1} : Fraction{working.leaves, way.plan.leaves_to_sheet};
      impressions =
          fits(checked_add(impressions, fits(checked_multiply(times, fits(checked_multiply(share, Fraction{2}))))));
      if (!part) continue;
      more_sheets = fits(checked_add(more_sheets, times));
      if (!cut) more_impressions = fits(checked_add(more_impressions, fits(checked_multiply(times, Fraction{2}))));
    }
    auto const for_sheet = by == CompareBy::sheets ? Fraction{1}
                           : edition.price_of_ream ? Fraction{*edition.price_of_ream, edition.ream->printable()}
                                                   : Fraction{};
    auto const for_impression = by == CompareBy::sheets
                                    ? Fraction{}
                                    : Fraction{edition.price_of_token.value_or(0), edition.press.token.impressions};
    auto const priced = [&](Fraction sheet_count, Fraction impression_count) {
      return fits(checked_add(fits(checked_multiply(sheet_count, for_sheet)),
                              fits(checked_multiply(impression_count, for_impression))));
    };
    auto const a_copy = priced(sheets, impressions);
    auto const given_out = fits(checked_add(Fraction{1}, fits(checked_divide(edition.overs_percent, Fraction{100}))));
    rise = fits(checked_multiply(a_copy, given_out));
    base = fits(checked_multiply(a_copy, Fraction{edition.overplus}));
    if (by == CompareBy::cost)
      base = fits(
          checked_add(base, Fraction{fits(checked_multiply(edition.price_of_forme.value_or(0), way.plan.formes()))}));
    gap =
        fits(checked_add(a_copy, priced(more_sheets, more_impressions))); // a started copy of overs, then the workings
  }
  [[nodiscard]] constexpr Fraction low(std::int64_t copies, Fits& fits) const {
    return fits(checked_add(fits(checked_multiply(rise, Fraction{copies})), base));
  }
  friend constexpr bool operator==(CostLines const&, CostLines const&) = default;
};

class Comparer {
  std::vector<PrintingOption> const& ways_;
  CompareBy by_;
  List<CostLines> lines_{};
  Fits fits_{};
  std::vector<Stretch> found_{};

  void keep(std::int64_t from, std::int64_t to, std::vector<std::size_t> const& order) {
    if (!found_.empty() && found_.back().order == order)
      found_.back().to = to;
    else
      found_.push_back({from, to, order});
  }
  /// The ways from the least to the most by some figure; equal ones stay as they were.
  template <class Figure> [[nodiscard]] std::vector<std::size_t> sorted_by(Figure figure) const {
    List<Fraction> figures;
    std::vector<std::size_t> order(ways_.size());
    for (std::size_t i = 0; i < ways_.size(); ++i) {
      figures.push_back(figure(i));
      order[i] = i;
      for (auto k = i; k > 0 && figures[order[k]] < figures[order[k - 1]]; --k) {
        auto const moved = order[k];
        order[k] = order[k - 1];
        order[k - 1] = moved;
      }
    }
    return order;
  }
  [[nodiscard]] bool cost_alike(std::size_t a, std::size_t b) const {
    return lines_[a] == lines_[b] && ways_[a].plan == ways_[b].plan &&
           ways_[a].edition.overs_percent == ways_[b].edition.overs_percent &&
           ways_[a].edition.overplus == ways_[b].edition.overplus;
  }
  [[nodiscard]] bool keeps_clear(std::size_t less, std::size_t more, std::int64_t from, std::int64_t to) {
    if (cost_alike(less, more)) return less < more;
    for (auto copies : {from, to})
      if (fits_(checked_add(lines_[less].low(copies, fits_), lines_[less].gap)) >= lines_[more].low(copies, fits_))
        return false;
    return true;
  }

public:
  Comparer(std::vector<PrintingOption> const& ways, CompareBy by) : ways_{ways}, by_{by} {
    for (auto const& way : ways) lines_.push_back({way, by, fits_});
  }
  /// pre: from <= to.
  void walk(std::int64_t from, std::int64_t to) {
    if (!fits_.all()) return;
    if (from == to) {
      keep(from, to, sorted_by([&](std::size_t i) {
             auto const cost = sound_cost_of(ways_[i], from, by_);
             return fits_(cost ? std::optional{*cost} : std::nullopt);
           }));
      return;
    }
    auto const order = sorted_by([&](std::size_t i) { return lines_[i].low(from, fits_); });
    bool clear = true;
    for (std::size_t i = 1; clear && i < order.size(); ++i) clear = keeps_clear(order[i - 1], order[i], from, to);
    if (clear) return keep(from, to, order);
    auto const middle = from + (to - from) / 2;
    walk(from, middle);
    walk(middle + 1, to);
  }
  [[nodiscard]] Expected<std::vector<Stretch>> found() {
    if (!fits_.all()) return error_in_field(Problem::result_too_large, "");
    return static_cast<std::vector<Stretch>&&>(found_);
  }
};

} // namespace detail

/// The order of the ways for every run from `from` to `to` copies: stretches without a gap between them. A million copies
/// at most, as two ways that differ by rounding alone have every run reckoned out. Allocates.
/// error: nothing_to_print (no way, or no copies), negative_count, result_too_large, price_needed; and as `reckon` of a way.
inline Expected<std::vector<Stretch>> compare(std::vector<PrintingOption> const& ways, std::int64_t from,
                                              std::int64_t to, CompareBy by = CompareBy::cost) {
  if (from < 0) return error_in_field(Problem::negative_count, "from", from);
  if (to < 0) return error_in_field(Problem::negative_count, "to", to);
  if (ways.empty()) return error_in_field(Problem::nothing_to_print, "ways");
  if (from == 0 || to < from) return error_in_field(Problem::nothing_to_print, from == 0 ? "from" : "to");
  if (to > 1'000'000) return error_in_field(Problem::number_too_large, "to", 1'000'000);
  for (auto const& way : ways)
    if (by == CompareBy::cost && !way.edition.price_of_ream && !way.edition.price_of_forme &&
        !way.edition.price_of_token)
      return error_in_field(Problem::price_needed, "ways");
  for (auto const& way : ways)
    if (auto const error = detail::what_is_wrong(way)) return *error;
  detail::Comparer comparer{ways, by};
  comparer.walk(from, to);
  return comparer.found();
}

} // namespace v0
} // namespace bifolium
