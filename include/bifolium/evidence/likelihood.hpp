// SPDX-License-Identifier: MIT
/// How likely each sign is, if the leaf were of a given kind on a given sheet. Each kind of evidence has its own function,
/// and each gives a wrong sign the frequency it is known to have: turned chain lines, marks out of place, odd gatherings.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include <cmath>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A sheet that may be meant, with its weight for each format.
struct PossibleSheet {
  char const* name;
  double log_short, log_long, weight;
  int early_class; ///< which of the four early sheets, or -1
};

inline std::vector<PossibleSheet> possible_sheets(Seen const& seen, Priors const& priors, SheetSizes const* sizes) {
  std::vector<PossibleSheet> sheets;
  if (priors.incunables && sizes == nullptr) {
    for (int i = 0; i < 4; ++i) {
      auto const& sheet = evidence_parameters::early_sheets[static_cast<std::size_t>(i)];
      sheets.push_back({sheet.name, std::log(sheet.short_side), std::log(sheet.long_side), 1, i});
    }
    return sheets;
  }
  auto const take = [&](SheetSizes const& from) {
    double all = 0;
    for (auto const& size : from) {
      if (size.basis == SheetBasis::least || size.basis == SheetBasis::most) continue;
      auto const weight = size.trust == Trust::from_memory ? 0.7 : 1.0;
      sheets.push_back(
          {size.name, std::log(size.short_side().count()), std::log(size.long_side().count()), weight, -1});
      all += weight;
    }
    for (auto& sheet : sheets) sheet.weight /= all;
  };
  if (sizes != nullptr) {
    take(*sizes);
  } else {
    auto const when = seen.year.value_or(When{1500, 1850});
    take(usable_for({when.from, when.to}, seen.place));
    if (sheets.empty()) take(usable_for({when.from, when.to}, Region::anywhere));
    if (sheets.empty()) take(usable_for({1500, 1850}, Region::anywhere));
  }
  return sheets;
}

/// The weight of an early sheet class under a format, by year; formats other than 2°, 4°, 8° are given the middle of them.
inline double early_weight(int format_leaves, int sheet_class, std::optional<When> when) {
  using namespace evidence_parameters;
  auto const c = static_cast<std::size_t>(sheet_class);
  std::size_t const f = format_leaves == 2 ? 0 : format_leaves == 4 ? 1 : 2;
  if (format_leaves != 2 && format_leaves != 4 && format_leaves != 8) return early_sheet_shares[f][c];
  auto const period_of = [](int year) {
    std::size_t p = 0;
    while (p < 3 && year > early_periods[p]) ++p;
    return p;
  };
  if (!when || period_of(when->from) != period_of(when->to)) return undated_shares[f][c];
  return early_shares[period_of(when->from)][f][c];
}

inline TrimModel trim_model(Seen const& seen, int format_leaves, bool early) {
  auto trim = early && seen.state == LeafState::unknown
                  ? evidence_parameters::early_trim[format_leaves <= 2   ? 0
                                                    : format_leaves == 4 ? 1
                                                                         : 2]
                  : evidence_parameters::trim_by_state[static_cast<std::size_t>(seen.state)];
  if (seen.material == Material::vellum) { // skins have no sheet sizes
    trim.height_variance *= evidence_parameters::vellum_spread;
    trim.covariance *= evidence_parameters::vellum_spread;
    trim.width_variance *= evidence_parameters::vellum_spread;
  }
  return trim;
}

/// Density of a loss in both, in one, or in none of the two sides: a multivariate t with six degrees of freedom, whose
/// powers are whole (4 in the plane, 3 1/2 on the line).
inline double loss_density(TrimModel const& trim, std::optional<double> height, std::optional<double> width) {
  constexpr double nu = evidence_parameters::tails, pi = 3.14159265358979323846;
  if (height && width) {
    auto const x = *height - trim.height, y = *width - trim.width;
    auto const determinant = trim.height_variance * trim.width_variance - trim.covariance * trim.covariance;
    auto const q =
        (trim.width_variance * x * x - 2 * trim.covariance * x * y + trim.height_variance * y * y) / determinant;
    auto const base = 1 + q / nu;
    return 1 / (base * base * base * base * 2 * pi * std::sqrt(determinant));
  }
  if (!height && !width) return 1;
  auto const x = height ? *height - trim.height : *width - trim.width;
  auto const variance = height ? trim.height_variance : trim.width_variance;
  auto const base = 1 + x * x / variance / nu;
  return 0.3827 / (base * base * base * std::sqrt(base) * std::sqrt(variance)); // t density at its middle, nu = 6
}

inline double chains_right(Seen const& seen) {
  using namespace evidence_parameters;
  int const year = seen.year ? (seen.year->from + seen.year->to) / 2 : 1600;
  bool const turned_there = seen.place == Region::britain || seen.place == Region::netherlands ||
                            seen.place == Region::anywhere || seen.place == Region::europe;
  if (year <= 1500) return chains_incunable;
  if (year > 1830) return chains_machine;
  if (year >= 1794) return chains_1794;
  return year >= 1680 && year <= 1760 && turned_there ? chains_turned : chains_early;
}
inline double chains_likelihood(LeafShape const& shape, ChainLines seen, double right) {
  if (seen == ChainLines::unknown || seen == ChainLines::both) return 1;
  return shape.chain_lines == seen ? right : 1 - right;
}
inline double mark_likelihood(LeafShape const& shape, MarkPlace seen, double in_place) {
  constexpr double marked = evidence_parameters::paper_is_marked;
  if (seen == MarkPlace::unknown) return 1;
  auto const absent = shape.marks[static_cast<std::size_t>(MarkPlace::absent)];
  if (seen == MarkPlace::absent) return 1 - marked + marked * absent;
  auto const here = shape.marks[static_cast<std::size_t>(seen)];
  return marked * (in_place * here + (1 - in_place) * (1 - absent) / 6);
}
inline double mark_in_place_for(Seen const& seen) {
  int const year = seen.year ? (seen.year->from + seen.year->to) / 2 : 1600;
  bool const act = year >= 1794 && year <= 1830 && (seen.place == Region::britain || seen.place == Region::anywhere);
  return act ? evidence_parameters::mark_in_place_1794 : evidence_parameters::mark_in_place;
}
inline double gathering_likelihood(LeafShape const& shape, std::optional<int> seen, bool early) {
  if (!seen) return 1;
  constexpr double least = evidence_parameters::least_gathering;
  auto const share = gathering_share(shape.format.leaves_to_sheet().value_or(0), *seen, early);
  if (share > 0) return least + (1 - least) * share;
  bool const made = *seen < 32 && (shape.gatherings >> static_cast<unsigned>(*seen) & 1U) != 0;
  return made ? 0.2 : least;
}
/// Of shapes with the same number of leaves, the usual is meant unless something speaks for another.
inline double shape_weight(Shape shape) {
  switch (shape) {
  case Shape::usual:
    return 1;
  case Shape::longer:
    return 0.05;
  case Shape::oblong:
    return 0.02;
  case Shape::agenda:
  case Shape::broad:
    return 0.01;
  }
  return 0;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
