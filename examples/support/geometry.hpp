// SPDX-License-Identifier: MIT
/// Formats that the geometry of a leaf allows: for each scheme and each named sheet of the place and time, the uncut leaf
/// must be no smaller than the leaf in the hand, and not so much larger that no binder would have cut it so. The chain
/// lines, where seen, part what size alone cannot. No probability is claimed here.
#pragma once

#include <bifolium/fold.hpp>
#include <bifolium/paper.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace support {

/// One format with the named sheet that explains the leaf best.
struct Fit {
  bifolium::Attested scheme;
  bifolium::Format format;
  bifolium::SheetSize const* size{};
  bifolium::LeafSize<bifolium::millimetres> uncut{};
  double height_lost{}, width_lost{}; ///< as fractions of the uncut leaf
  bool chains_agree{};
};

/// A tenth of height and width is the usual loss (median of trimmed fifteenth-century copies against the Bologna sheet);
/// more than 30 % is mutilation.
inline constexpr double usual_loss = 0.10, greatest_loss = 0.30, shrinkage = 0.015;

inline std::vector<Fit> formats_that_fit(bifolium::LeafSize<bifolium::millimetres> leaf,
                                         std::optional<bifolium::ChainLines> chains, bifolium::SheetSizes sizes) {
  using namespace bifolium;
  std::vector<Fit> fits;
  auto const score = [](Fit const& fit) {
    return (fit.chains_agree ? 0.0 : 1.0) + std::abs(fit.height_lost - usual_loss) +
           std::abs(fit.width_lost - usual_loss);
  };
  for (int row = 0; row < Attested::count; ++row) {
    Attested const scheme{static_cast<SchemeRow>(row)};
    auto const folded = *fold(scheme.scheme());
    auto const format = format_of(folded, FormatReading::paper_fraction).with(folded.format().shape());
    auto const shown = shows(folded, {0, folded.gathering(0).leaf(1)});
    for (auto const& size : sizes) {
      auto const uncut = leaf_size(folded.sheet(0), size.sheet());
      Fit const fit{scheme,
                    format,
                    &size,
                    uncut,
                    1 - leaf.height.count() / uncut.height.count(),
                    1 - leaf.width.count() / uncut.width.count(),
                    !chains || shown.chain_lines == chains};
      if (std::min(fit.height_lost, fit.width_lost) < -shrinkage) continue;
      if (std::max(fit.height_lost, fit.width_lost) > greatest_loss) continue;
      auto const known =
          std::find_if(fits.begin(), fits.end(), [&](Fit const& other) { return other.format == format; });
      if (known == fits.end())
        fits.push_back(fit);
      else if (score(fit) < score(*known))
        *known = fit;
    }
  }
  std::stable_sort(fits.begin(), fits.end(), [&](Fit const& a, Fit const& b) { return score(a) < score(b); });
  return fits;
}

} // namespace support
