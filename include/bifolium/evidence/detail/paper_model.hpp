// SPDX-License-Identifier: MIT
/// Computes shares from counts. Each step mixes the counts with the shares that the step before predicts; the
/// prediction counts as a number of books. These numbers were chosen on books left out by edition
/// (bench/fit_paper_model.cpp).
#pragma once

#include <bifolium/evidence/detail/paper_counts.hpp>
#include <bifolium/evidence/detail/share_years.hpp>
#include <bifolium/evidence/detail/size_density.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/paper_model.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
/// Makes numbers shares of their sum.
template <std::size_t count> void divide(double (&numbers)[count]) {
  double sum = 0;
  for (auto const one : numbers) sum += one;
  auto const part = 1 / sum;
  for (auto& one : numbers) one *= part;
}
} // namespace detail

/// Computes the shares of the populations that are expected before the books are counted: those of the year times those
/// of the group of formats, unless the books of both together show otherwise.
[[gnu::cold]] inline void PaperModel::expect_papers(Years& expected) const {
  constexpr double of_all = 5, of_year = 20, of_group = 10;
  auto const& everywhere = counts_.of[0].of;
  constexpr auto years = count_years.size();
  double all[population_count]{}, by_year[years][population_count]{}, by_group[format_groups][population_count]{};
  for (std::size_t y = 0; y < years; ++y)
    for (std::size_t g = 0; g < format_groups; ++g)
      for (std::size_t k = 0; k < population_count; ++k) {
        auto const books = everywhere[y][g][k];
        by_year[y][k] += books, by_group[g][k] += books, all[k] += books;
      }
  for (auto& one : all) one += of_all;
  detail::divide(all);
  for (auto& group : by_group) {
    double books = 0;
    for (auto const one : group) books += one;
    for (std::size_t k = 0; k < population_count; ++k) group[k] = (group[k] + of_group * all[k]) / (books + of_group);
  }
  for (std::size_t y = 0; y < years; ++y) {
    double year[population_count], books = 0;
    for (std::size_t k = 0; k < population_count; ++k)
      books += year[k] = detail::with_neighbours(by_year, y, years, [k](auto const& one) { return one[k]; });
    for (std::size_t k = 0; k < population_count; ++k) { // after 1500 less is known about what was common
      auto const usual = count_years[y] > last_incunable_year ? 0.75 * all[k] + 0.25 / population_count : all[k];
      year[k] = (year[k] + of_year * usual) / (books + of_year);
    }
    for (std::size_t g = 0; g < format_groups; ++g) {
      for (std::size_t k = 0; k < population_count; ++k) expected.of[y][g][k] = by_group[g][k] * year[k] / all[k];
      detail::divide(expected.of[y][g]);
    }
  }
}
/// Computes the shares of the populations by region, year and group of formats.
[[gnu::cold]] inline void PaperModel::weigh() {
  constexpr double of_both = 20, of_region = 8;
  constexpr auto years = count_years.size();
  Regions weights;
  expect_papers(weights.of[0]);
  for (std::size_t r = 0; r < region_count; ++r) {
    auto const strength = r == 0 ? of_both : of_region;
    auto const& whole = weights.of[static_cast<std::size_t>(leans_on(static_cast<Region>(r)))].of;
    auto& here = weights.of[r].of;
    for (std::size_t y = 0; y < years; ++y)
      for (std::size_t g = 0; g < format_groups; ++g) {
        double counted[population_count], books = 0;
        for (std::size_t k = 0; k < population_count; ++k)
          books += counted[k] =
              detail::with_neighbours(counts_.of[r].of, y, years, [g, k](auto const& one) { return one[g][k]; });
        for (std::size_t k = 0; k < population_count; ++k) {
          here[y][g][k] = (counted[k] + strength * whole[y][g][k]) / (books + strength);
          roots_.of[r].of[y][g][k] = real::sqrt(here[y][g][k]);
        }
      }
  }
}

namespace detail {
/// The mean sheet of each population.
inline std::array<Sheet<millimetres>, population_count>
mean_sheets(std::array<SheetPopulation, population_count> const& all) {
  return [&]<std::size_t... k>(std::index_sequence<k...>) {
    return std::array<Sheet<millimetres>, population_count>{all[k].sheet()...};
  }
  (std::make_index_sequence<population_count>{});
}
} // namespace detail
[[gnu::cold]] inline PaperModel::PaperModel(PaperCounts const& counts)
    : populations_{counts.populations}, sheets_{detail::mean_sheets(populations_)}, tail_{counts.tail} {
  for (std::size_t k = 0; k < population_count; ++k) {
    auto const& p = populations_[k];
    densities_[k] = {p.log_long, p.log_short, p.long_variance, p.covariance, p.short_variance};
  }
  for (auto const& one : counts.sheets)
    for (auto region = one.region;; region = leans_on(region)) {
      counts_.of[detail::row_of(region)].of[one.year_number][one.group][one.population] +=
          static_cast<double>(one.books);
      if (region == Region::anywhere) break;
    }
  for (std::size_t y = 0; y < count_years.size(); ++y) books_[y] = static_cast<double>(counts.books[y]);
  bool known[region_count]{};
  for (auto const& one : counts.formats) {
    auto const r = detail::row_of(one.region);
    known[r] = true;
    for (std::size_t f = 0; f < ranked_leaves.size() && one.year_number < count_years.size(); ++f)
      log_shares_[r].of[one.year_number][f] = real::log(static_cast<double>(one.share[f]));
  }
  for (std::size_t r = 0; r < region_count; ++r) // a region without data has those of the region on which it relies
    if (!known[r]) log_shares_[r] = log_shares_[static_cast<std::size_t>(leans_on(static_cast<Region>(r)))];
  weigh();
  sum_undated(counts);
}
namespace detail {
/// Returns how the usual scheme of a format lays its sheet. Precondition: one of `ranked_leaves`.
inline SheetLine const& usual_lay(int leaves) {
  for (auto const& shape : leaf_shapes())
    if (shape.leaves == leaves && shape.format.shape() == Shape::usual) return shape.lay;
  broken("no scheme makes this format");
}
} // namespace detail

inline void PaperModel::learn(std::span<KnownBook const> books) {
  using real::log;
  detail::LossLaw const loss{tail_, 0, tail_};
  auto added = counts_;
  for (auto const& book : books) {
    auto const& lay = detail::usual_lay(book.leaves);
    auto const parts = detail::divided(lay);
    bool const upright = lay.long_side == Axis::left_right;
    auto const along = log((upright ? book.width : book.height).count() * parts.long_side);
    auto const across = log((upright ? book.height : book.width).count() * parts.short_side);
    auto const group = format_group(book.leaves);
    auto held = papers(book.region, book.year)[group];
    detail::BothSides const sheet{{along}, {across}};
    detail::NearSheets found;
    for (std::size_t k = 0; k < population_count; ++k) {
      densities_[k].of_both(sheet, 1, loss, found);
      held[k] *= found.count > 0 ? found.density[0] : 0;
    }
    auto const all = detail::sum_of(held);
    if (!(all > 0)) continue; // a leaf of no known sheet
    auto const at = detail::counted_between(book.year);
    for (auto region = book.region;; region = leans_on(region)) {
      auto& years = added.of[detail::row_of(region)].of;
      for (std::size_t k = 0; k < population_count; ++k) {
        years[at.before][group][k] += (1 - at.after) * held[k] / all;
        years[at.before + 1][group][k] += at.after * held[k] / all;
      }
      if (region == Region::anywhere) break;
    }
    ++own_books_;
  }
  counts_ = added;
  weigh();
}
[[gnu::noinline]] inline double PaperModel::books_of(int year) const {
  auto const at = detail::between_years(year);
  return (1 - at.after) * books_[at.before] + at.after * books_[at.before + 1];
}
[[gnu::noinline]] inline FormatShares PaperModel::shares(Region region, int year) const {
  auto const at = detail::share_change_at(year);
  auto const& years = log_shares_[detail::row_of(region)].of;
  FormatShares shares;
  double sum = 0;
  for (std::size_t f = 0; f < shares.size(); ++f)
    sum += shares[f] = real::quick_exp(years[at.from][f] + at.part * (years[at.to][f] - years[at.from][f]));
  detail::divide(shares, sum);
  return shares;
}
[[gnu::noinline]] inline std::array<std::array<double, population_count>, format_groups>
PaperModel::papers(Region region, int year) const {
  auto const at = detail::share_change_at(year);
  auto const& years = roots_.of[detail::row_of(region)].of;
  auto const &from = years[at.from], &to = years[at.to];
  std::array<std::array<double, population_count>, format_groups> papers;
  for (std::size_t g = 0; g < format_groups; ++g) {
    double sum = 0;
    for (std::size_t k = 0; k < population_count; ++k) {
      auto const root = from[g][k] + at.part * (to[g][k] - from[g][k]);
      sum += papers[g][k] = root * root;
    }
    detail::divide(papers[g], sum);
  }
  return papers;
}
inline std::array<PaperOfYear, 6> PaperModel::sampled(Region region, std::optional<YearRange> years) const {
  if (!years) return sampled_[detail::row_of(region)];
  std::array<PaperOfYear, 6> sampled;
  constexpr auto count = static_cast<int>(sampled.size());
  for (int i = 0; i < count; ++i) {
    auto const year = years->from + (2 * i + 1) * years->size() / (2 * count);
    sampled[static_cast<std::size_t>(i)] = {books_of(year), shares(region, year), papers(region, year)};
  }
  return sampled;
}
namespace detail {

/// The years at which a range is evaluated, evenly spread over it; all years of a short range.
class YearsAsked {
  YearRange years_;
  int count_;

public:
  explicit YearsAsked(YearRange years)
      : years_{years}, count_{years.size() <= 3    ? years.size()
                              : years.size() <= 25 ? 5
                                                   : 11} {}
  [[nodiscard]] int size() const { return count_; }
  [[nodiscard]] int operator[](int i) const {
    return years_.from + static_cast<int>((2 * i + 1) * static_cast<std::int64_t>(years_.size()) / (2 * count_));
  }
};

} // namespace detail

inline JointShares PaperModel::joint(Region region, std::optional<YearRange> years, FormatShares const* own) const {
  if (!years && own == nullptr) return undated_[detail::row_of(region)];
  if (years && own == nullptr && years->to <= 1510 && years->size() > 40)
    return undated_incunables_[detail::row_of(region)];
  detail::YearsAsked const asked{years.value_or(years_of_paper)};
  JointShares joint{};
  double all = 0;
  for (int i = 0; i < asked.size(); ++i) {
    auto const books = asked.size() == 1 ? 1 : books_of(asked[i]);
    auto const formats = own != nullptr ? *own : shares(region, asked[i]);
    auto const sheets = papers(region, asked[i]);
    for (std::size_t f = 0; f < formats.size(); ++f) {
      auto const& group = sheets[format_group(ranked_leaves[f])];
      auto const share = books * formats[f];
      for (std::size_t k = 0; k < population_count; ++k) joint[f][k] += share * group[k];
    }
    all += books;
  }
  if (asked.size() > 1)
    for (auto& format : joint) detail::divide(format, all);
  return joint;
}
[[gnu::cold]] inline void PaperModel::sum_undated(PaperCounts const& counts) {
  constexpr int first = 1450, last = 1849, step = 10;
  for (std::size_t r = 0; r < region_count; ++r) {
    auto const region = static_cast<Region>(r);
    double all = 0;
    JointShares sum{};
    for (int year = first; year < last; year += step) {
      auto const books = books_of(year + step / 2);
      auto const here = joint(region, YearRange{year + step / 2});
      for (std::size_t f = 0; f < sum.size(); ++f)
        for (std::size_t k = 0; k < population_count; ++k) sum[f][k] += books * here[f][k];
      all += books;
    }
    for (auto& format : sum) detail::divide(format, all);
    undated_[r] = sum;
    sampled_[r] = sampled(region, YearRange{first, last + 1});
    FormatShares incunables{};
    for (auto asked = region;; asked = leans_on(asked)) {
      for (auto const& one : counts.formats)
        if (one.region == asked && one.year_number == YearShares::undated)
          for (std::size_t f = 0; f < incunables.size(); ++f) incunables[f] = static_cast<double>(one.share[f]);
      if (incunables[2] > 0 || asked == Region::anywhere) break;
    }
    undated_incunables_[r] = joint(region, YearRange{1450, last_incunable_year}, &incunables);
  }
}
[[gnu::noinline]] inline PaperModel const& fitted_paper_model() {
  static PaperModel const model{detail::paper_counts};
  return model;
}

} // namespace v0
} // namespace bifolium
