// SPDX-License-Identifier: MIT
/// The curves along which paper and gatherings changed over time.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/paper_model.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A curve from 0 to 1 that is a half in the year `middle` and changes mostly within `span` years on either side.
inline double change(double year, double middle, double span) { return 1 / (1 + real::exp(-(year - middle) / span)); }

/// Returns the share of double paper at its most frequent. Proposed.
constexpr double most_twofold(Region place) {
  switch (place) {
  case Region::britain:
    return 0.10;
  case Region::netherlands:
    return 0.12;
  case Region::ireland:
    return 0.08;
  case Region::anywhere:
  case Region::usa:
    return 0.05;
  default:
    return 0.03;
  }
}

} // namespace detail

inline PaperAge PaperAge::of(int year, Region place) {
  using namespace detail;
  auto const y = static_cast<double>(year);
  auto const from_peak = (y - 1722) / 28;
  auto const by_hand = 0.002 + 0.006 * change(y, 1530, 20) +
                       most_twofold(place) * real::exp(-from_peak * from_peak / 2) + 0.03 * change(y, 1790, 10);
  auto const by_machine = change(y, 1815, 8);
  auto const act = place == Region::britain || place == Region::ireland ? 1.0 : place == Region::anywhere ? 0.5 : 0.0;
  auto const make_up = (y - 1485) / 50;
  auto const by_web = 0.45 * by_machine;
  return {by_hand * (1 - by_machine) + by_web, by_web, act * change(y, paper_dates::act_of_1794, 3),
          change(y, 1620, 15),
          make_up < 0   ? 0
          : make_up > 1 ? 1
                        : make_up};
}
namespace detail {
inline PaperAge mean_age(YearsAsked const& years, Region place) {
  PaperAge mean;
  double all = 0;
  for (int i = 0; i < years.size(); ++i) {
    auto const here = PaperAge::of(years[i], place);
    auto const books = fitted_paper_model().books_of(years[i]);
    mean.twofold += books * here.twofold, mean.by_web += books * here.by_web;
    mean.after_1794 += books * here.after_1794, mean.second_mark += books * here.second_mark;
    mean.late_make_up += books * here.late_make_up;
    all += books;
  }
  return {mean.twofold / all, mean.by_web / all, mean.after_1794 / all, mean.second_mark / all,
          mean.late_make_up / all};
}
inline std::array<PaperAge, region_count> undated_ages() {
  std::array<PaperAge, region_count> ages;
  for (std::size_t r = 0; r < ages.size(); ++r) ages[r] = mean_age(YearsAsked{years_of_paper}, static_cast<Region>(r));
  return ages;
}
} // namespace detail
inline PaperAge PaperAge::of(std::optional<YearRange> years, Region place) {
  if (years && years->is_one_year()) return of(years->from, place);
  if (years) return detail::mean_age(detail::YearsAsked{*years}, place);
  static auto const undated = detail::undated_ages();
  return undated[detail::row_of(place)];
}

} // namespace v0
} // namespace bifolium
