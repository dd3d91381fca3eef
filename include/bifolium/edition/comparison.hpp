// SPDX-License-Identifier: MIT
/// Compares printing options: would twelves have been cheaper than octavo? One text is laid out under several options -
/// schemes, sheets, prices - and the options are ordered by cost for every number of copies in a range. Formes decide
/// the cost of a small run and paper that of a large one, so the order changes. The comparison finds every change
/// exactly; it does not sample.
///
/// Method. The cost of an option lies between two parallel straight lines over the number of copies, both known
/// exactly. Their distance is the most that rounding can add (an odd half-sheet, a started copy of overs). If the lines
/// of all options do not overlap at both ends of a stretch, the order is the same throughout; otherwise the stretch is
/// halved, down to single numbers of copies, whose cost is calculated. So only the numbers near a change of order are
/// calculated, each at most once.
#pragma once

#include <bifolium/core/merge_sort.hpp>
#include <bifolium/edition/bill.hpp>

#include <optional>
#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The quantity that is compared.
enum class CompareBy : std::uint8_t {
  cost,  ///< cost of paper, formes and presswork as far as prices are given, exact and without rounding to a coin
  sheets ///< paper, in the sheets of each option
};

/// One way to print the text: an edition without a number of copies, and its plan.
struct PrintingOption {
  Edition edition{}; ///< the edition; its number of copies is ignored
  Plan plan{};       ///< the arrangement of its pages, which is the same for every number of copies
};
/// Arranges an edition as a printing option. The number of copies may be left out. Errors: those of `reckon`.
constexpr Expected<PrintingOption> printing_option(Edition edition) {
  if (edition.copies == 0) edition.copies = 1;
  auto const bill = reckon(edition);
  if (!bill) return bill.error();
  return PrintingOption{edition, bill->plan};
}

/// A range of numbers of copies over which the order of the options stays the same: each option costs at most as much
/// as the next. Two options may cost the same for some numbers of copies and not for others: twelves by half-sheets and
/// by whole sheets cost the same for an even number of copies, and the whole sheets less for an odd one. The option
/// that is never dearer then comes first, and the stretch goes on.
struct Stretch {
  std::int64_t from{}, to{};        ///< the least and the greatest number of copies
  std::vector<std::size_t> order{}; ///< indices of the options, the least first
  /// for each place of the order: true if this option costs the same as the one before it throughout. Such options keep
  /// the order in which they were given.
  std::vector<bool> equal{};
  /// Returns the index of the option that is least throughout this stretch.
  [[nodiscard]] std::size_t least() const { return order.front(); }
  friend bool operator==(Stretch const&, Stretch const&) = default;
};

/// Returns whether two editions name the same prices: of the ream, the forme and the token. Costs can be compared only
/// then; a price that is not named is unknown, and 0 is the price of what costs nothing.
constexpr bool prices_alike(Edition const& one, Edition const& other) noexcept {
  return one.price_of_ream.has_value() == other.price_of_ream.has_value() &&
         one.price_of_forme.has_value() == other.price_of_forme.has_value() &&
         one.price_of_token.has_value() == other.price_of_token.has_value();
}

namespace detail {

/// Returns the error of an option that does not depend on the number of copies.
constexpr std::optional<Error> what_is_wrong(PrintingOption const& option) {
  auto edition = option.edition;
  edition.copies = 1;
  auto const bill = reckon(edition, option.plan);
  if (!bill) return bill.error();
  return {};
}
/// Returns the cost of a valid option for a number of copies.
constexpr Expected<Fraction> sound_cost_of(PrintingOption const& option, std::int64_t copies, CompareBy by) {
  auto const& edition = option.edition;
  Fits fits;
  auto const given_out = fits(checked_add(copies, fits(overs_of(copies, edition.overs_percent, edition.overplus))));
  auto const sheets = fits(option.plan.sheets_for(given_out));
  Fraction sum{sheets};
  if (by == CompareBy::cost) {
    sum = edition.price_of_ream ? fits(checked_multiply(Fraction{*edition.price_of_ream, edition.ream->good}, sum))
                                : Fraction{};
    auto const formes = fits(checked_multiply(edition.price_of_forme.value_or(0), option.plan.formes()));
    auto const impressions = fits(option.plan.impressions_for(given_out));
    auto const work = fits(checked_multiply(
        Fraction{edition.price_of_token.value_or(0), edition.press.token.impressions}, Fraction{impressions}));
    sum = fits(checked_add(fits(checked_add(sum, Fraction{formes})), work));
  }
  if (!fits.all()) return error_in_field(Problem::result_too_large, "");
  return sum;
}

} // namespace detail

/// Returns the exact cost of an option, or its sheets, for a number of copies. Zero copies cost only the formes.
/// Errors: those of `reckon`.
constexpr Expected<Fraction> cost_of(PrintingOption const& option, std::int64_t copies,
                                     CompareBy by = CompareBy::cost) {
  if (by > CompareBy::sheets) return error_in_field(Problem::no_such_value, "by");
  if (copies < 0) return error_in_field(Problem::negative_count, "copies", copies);
  if (auto const error = detail::what_is_wrong(option)) return *error;
  return detail::sound_cost_of(option, copies, by);
}

namespace detail {

/// Two parallel lines between which the cost of an option lies.
struct CostLines {
  Fraction rise{}, base{}, gap{};

  constexpr CostLines() = default;
  constexpr CostLines(PrintingOption const& option, CompareBy by, Fits& fits) {
    auto const& edition = option.edition;
    // the sheets and impressions of one more copy, and the most that rounding adds for each working
    Fraction sheets = option.plan.sheets_a_copy(), impressions{}, more_sheets{}, more_impressions{};
    for (auto const& working : option.plan) {
      Fraction const times{working.times};
      bool const alone = working.is_printed_copy_by_copy(), part = working.leaves != option.plan.leaves_to_sheet;
      auto const pieces = alone ? Fraction{1} : Fraction{working.leaves, option.plan.leaves_to_sheet};
      auto const sides = fits(checked_multiply(pieces, Fraction{working.impressions()}));
      impressions = fits(checked_add(impressions, fits(checked_multiply(times, sides))));
      if (!part) continue;
      more_sheets = fits(checked_add(more_sheets, times));
      if (!alone) more_impressions = fits(checked_add(more_impressions, fits(checked_multiply(times, Fraction{2}))));
    }
    auto const for_sheet = by == CompareBy::sheets ? Fraction{1}
                           : edition.price_of_ream ? Fraction{*edition.price_of_ream, edition.ream->good}
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
      base = fits(checked_add(
          base, Fraction{fits(checked_multiply(edition.price_of_forme.value_or(0), option.plan.formes()))}));
    gap = fits(checked_add(a_copy, priced(more_sheets, more_impressions))); // one more copy of overs, then the workings
  }
  [[nodiscard]] constexpr Fraction low(std::int64_t copies, Fits& fits) const {
    return fits(checked_add(fits(checked_multiply(rise, Fraction{copies})), base));
  }
  friend constexpr bool operator==(CostLines const&, CostLines const&) = default;
};

class Comparer {
public:
  /// Two options may change places at each of a million numbers of copies. Of more options fewer orders are kept, so that what
  /// a few rows ask for does not fill the memory.
  static constexpr std::size_t most_places = 2'000'000;

private:
  std::vector<PrintingOption> const& options_;
  CompareBy by_;
  std::size_t most_stretches_;
  bool too_many_{};
  std::vector<CostLines> lines_{};
  Fits fits_{};
  std::vector<Stretch> found_{};
  std::vector<std::size_t> ranks_{}, ranks_here_{}; // of each option in the last stretch, and at the numbers after it

  /// Sets the rank of each option of an order; options that are equal have the same.
  static void rank(Stretch const& stretch, std::vector<std::size_t>& ranks) {
    ranks.resize(stretch.order.size());
    for (std::size_t i = 0, rank = 0; i < stretch.order.size(); ++i) {
      if (!stretch.equal[i]) rank = i;
      ranks[stretch.order[i]] = rank;
    }
  }
  /// Makes the last stretch longer if there is an order that holds in it and in the one given, and otherwise adds that.
  /// Options that were equal so far take the order that they have here, and the other way round.
  void keep(Stretch const& here) {
    if (found_.empty()) return add(here);
    auto& last = found_.back();
    if (last.order == here.order && last.equal == here.equal) {
      last.to = here.to;
      return;
    }
    rank(here, ranks_here_);
    auto order = last.order;
    merge_sort(order, [&](std::size_t a, std::size_t b) {
      if (ranks_[a] != ranks_[b]) return ranks_[a] < ranks_[b];
      return ranks_here_[a] != ranks_here_[b] ? ranks_here_[a] < ranks_here_[b] : a < b;
    });
    for (std::size_t i = 1; i < order.size(); ++i)
      if (ranks_here_[order[i]] < ranks_here_[order[i - 1]]) return add(here);
    last.to = here.to;
    last.order = order;
    for (std::size_t i = 1; i < order.size(); ++i)
      last.equal[i] = ranks_[order[i]] == ranks_[order[i - 1]] && ranks_here_[order[i]] == ranks_here_[order[i - 1]];
    rank(last, ranks_);
  }
  void add(Stretch const& here) {
    too_many_ = found_.size() == most_stretches_;
    if (too_many_) return;
    found_.push_back(here);
    rank(here, ranks_);
  }
  /// Returns the options ordered by a number, the least first. Options with equal numbers keep their order.
  template <class Figure> [[nodiscard]] Stretch sorted_by(std::int64_t from, std::int64_t to, Figure figure) const {
    std::vector<Fraction> figures(options_.size());
    Stretch sorted{from, to, std::vector<std::size_t>(options_.size()), std::vector<bool>(options_.size())};
    for (std::size_t i = 0; i < options_.size(); ++i) figures[i] = figure(i), sorted.order[i] = i;
    merge_sort(sorted.order, [&](std::size_t a, std::size_t b) { return figures[a] < figures[b]; });
    for (std::size_t i = 1; i < options_.size(); ++i)
      sorted.equal[i] = figures[sorted.order[i]] == figures[sorted.order[i - 1]];
    return sorted;
  }
  [[nodiscard]] bool cost_alike(std::size_t a, std::size_t b) const {
    return lines_[a] == lines_[b] && options_[a].plan == options_[b].plan &&
           options_[a].edition.overs_percent == options_[b].edition.overs_percent &&
           options_[a].edition.overplus == options_[b].edition.overplus;
  }
  [[nodiscard]] bool keeps_clear(std::size_t less, std::size_t more, std::int64_t from, std::int64_t to) {
    if (cost_alike(less, more)) return less < more;
    for (auto copies : {from, to})
      if (fits_(checked_add(lines_[less].low(copies, fits_), lines_[less].gap)) >= lines_[more].low(copies, fits_))
        return false;
    return true;
  }

public:
  /// `places` is the number of places in all orders that are kept. Precondition: there is an option.
  Comparer(std::vector<PrintingOption> const& options, CompareBy by, std::size_t places = most_places)
      : options_{options}, by_{by}, most_stretches_{places / options.size()} {
    for (auto const& option : options) lines_.emplace_back(option, by, fits_);
  }
  /// Finds the stretches of a range. Precondition: from <= to.
  void walk(std::int64_t from, std::int64_t to) {
    if (!fits_.all() || too_many_) return;
    if (from == to) {
      keep(sorted_by(from, to, [&](std::size_t i) {
        auto const cost = sound_cost_of(options_[i], from, by_);
        return fits_(cost ? std::optional{*cost} : std::nullopt);
      }));
      return;
    }
    auto const sorted = sorted_by(from, to, [&](std::size_t i) { return lines_[i].low(from, fits_); });
    auto const& order = sorted.order; // options that keep clear are equal throughout or nowhere
    bool clear = true;
    for (std::size_t i = 1; clear && i < order.size(); ++i) clear = keeps_clear(order[i - 1], order[i], from, to);
    if (clear) return keep(sorted);
    auto const middle = from + (to - from) / 2;
    walk(from, middle);
    walk(middle + 1, to);
  }
  [[nodiscard]] Expected<std::vector<Stretch>> found() {
    if (!fits_.all()) return error_in_field(Problem::result_too_large, "");
    if (too_many_)
      return error_in_field(Problem::too_many_changes_of_order, "options",
                            static_cast<std::int64_t>(most_stretches_) - 1);
    return std::move(found_);
  }
};

} // namespace detail

/// Returns the order of the options for every number of copies in a range, as stretches without gaps. The range has at
/// most a million numbers, because all of them are calculated if two options differ only by rounding. The function
/// allocates memory. Errors: list_empty (no option), nothing_to_print (no copies), range_goes_backwards, negative_count,
/// number_too_large (copies), result_too_large, price_needed, prices_differ (by cost, where one option names a price that
/// another does not); and those of `reckon` for an option.
/// Example: `(*compare({*printing_option({.scheme = schemes::octavo, .pages = 320, .price_of_forme = 240}),
/// *printing_option({.scheme = schemes::duodecimo, .pages = 264, .price_of_forme = 600})}, 1, 9)).front().least() == 0`.
inline Expected<std::vector<Stretch>> compare(std::vector<PrintingOption> const& options, std::int64_t from,
                                              std::int64_t to, CompareBy by = CompareBy::cost) {
  if (from < 0) return error_in_field(Problem::negative_count, "from", from);
  if (to < 0) return error_in_field(Problem::negative_count, "to", to);
  if (options.empty()) return error_in_field(Problem::list_empty, "options");
  constexpr std::size_t most = 32;
  if (options.size() > most) return error_in_field(Problem::too_many_options, "options", most);
  if (from == 0) return error_in_field(Problem::nothing_to_print, "from");
  if (to < from) return error_in_field(Problem::range_goes_backwards, "to", from);
  if (to > 1'000'000) return error_in_field(Problem::number_too_large, "to", 1'000'000);
  for (auto const& option : options)
    if (by == CompareBy::cost && !option.edition.price_of_ream && !option.edition.price_of_forme &&
        !option.edition.price_of_token)
      return error_in_field(Problem::price_needed, "options");
  if (by > CompareBy::sheets) return error_in_field(Problem::no_such_value, "by");
  for (auto const& option : options)
    if (by == CompareBy::cost && !prices_alike(option.edition, options.front().edition))
      return error_in_field(Problem::prices_differ, "options");
  for (auto const& option : options)
    if (auto const error = detail::what_is_wrong(option)) return *error;
  detail::Comparer comparer{options, by};
  comparer.walk(from, to);
  return comparer.found();
}

} // namespace v0
} // namespace bifolium
