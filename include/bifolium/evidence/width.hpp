// SPDX-License-Identifier: MIT
/// How reliable a probability is. "Quarto 0.93" comes from a model that was fitted to about a thousand books; other
/// books of the same kind would have given another number. So the model was fitted again on twenty sets of books, each
/// drawn from the same books by edition, and all twenty can give their answers: 0.93, 0.85 to 0.97. The assumed parts
/// (how common formats were after 1500) are the same in all of them, so after 1500 the true uncertainty is larger.
///
/// The function computes twenty answers and keeps about 5 MB; infer.hpp does not include it.
#pragma once

#include <bifolium/core/range.hpp>
#include <bifolium/evidence/detail/resampled_counts.hpp>
#include <bifolium/evidence/infer.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

inline PaperModel resampled_model(std::size_t set) {
  std::vector<SheetCount> sheets(paper_counts.sheets.begin(), paper_counts.sheets.end());
  for (std::size_t i = 0; i < sheets.size(); ++i)
    sheets[i].books = static_cast<float>(paper_rows::resampled_sheets[set][i]) / 10;
  std::vector<YearShares> formats(paper_counts.formats.begin(), paper_counts.formats.end());
  constexpr std::array<std::size_t, 3> common{1, 2, 4}; // 2°, 4° and 8° among `ranked_leaves`
  for (std::size_t i = 0; i < formats.size(); ++i)
    for (std::size_t f = 0; f < common.size(); ++f) {
      auto const moved = paper_rows::resampled_shares[set][3 * i + f] / 100.0;
      formats[i].share[common[f]] *= static_cast<float>(real::exp(moved));
    }
  auto const& populations = paper_rows::resampled_populations[set];
  return PaperModel{{populations.populations, populations.tail, sheets, formats, paper_counts.books}};
}
inline std::vector<PaperModel> make_resampled_models() {
  std::vector<PaperModel> all;
  all.reserve(std::size(paper_rows::resampled_populations));
  for (std::size_t set = 0; set < std::size(paper_rows::resampled_populations); ++set)
    all.push_back(resampled_model(set));
  return all;
}
inline std::vector<PaperModel> const& resampled_models() {
  static auto const models = make_resampled_models();
  return models;
}

} // namespace detail

/// Returns the probability of a format, and the range that contains nine of ten fits, or no value if the format is not
/// ranked. The caller's own model is not used, since it was not fitted by resampling.
inline std::optional<Range<double>> probability_range(Observation const& observation, Format format,
                                                      Assumptions assumed = {}) {
  // no value if the format is not ranked: all models rank the same formats
  auto const probability = [&]() -> std::optional<double> {
    std::optional<double> sum;
    for (auto const& one : infer_format(observation, assumed))
      if (one.format == format) sum = sum.value_or(0) + one.probability;
    return sum;
  };
  assumed.model = nullptr;
  auto const stated = probability();
  if (!stated) return std::nullopt;
  std::vector<double> all;
  for (auto const& model : detail::resampled_models()) {
    assumed.model = &model;
    auto const here = *probability();
    auto at = all.end();
    while (at != all.begin() && *(at - 1) > here) --at;
    all.insert(at, here);
  }
  auto const low = all[1], high = all[all.size() - 2]; // one of twenty on either side is left out
  return Range<double>{low < *stated ? low : *stated, *stated, high > *stated ? high : *stated};
}

} // namespace v0
} // namespace bifolium
