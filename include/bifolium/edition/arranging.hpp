// SPDX-License-Identifier: MIT
/// What has to be arranged, and what the printer decides.
#pragma once

#include <bifolium/edition/plan.hpp>

namespace bifolium {
inline namespace v0 {

/// What has to be arranged: pages of text, of preliminaries that are gathered apart, of end matter, and leaves to be
/// cancelled in every copy.
struct Pages {
  std::int64_t text{};          ///< pages
  std::int64_t preliminaries{}; ///< pages, gathered apart
  std::int64_t end_matter{};    ///< pages
  std::int64_t cancel_leaves{}; ///< leaves, not pages: both sides of a leaf are printed anew
  friend constexpr bool operator==(Pages const&, Pages const&) = default;
};

/// How far matters that are gathered apart may be worked on one sheet.
enum class Sharing : std::uint8_t {
  none,   ///< each by itself
  once,   ///< one working may be shared, by unequal numbers of leaves, as Bowers allows
  freely, ///< any number, equal or not; cancels stay by themselves
};

/// What the printer decides.
struct Arranging {
  Sharing sharing{Sharing::once};   ///< what may be worked on one sheet with something else
  PartWork parts{PartWork::turned}; ///< how half- and quarter-sheets are printed
  bool end_matter_runs_on{};        ///< the end matter is signed on with the text and has no gatherings of its own
  friend constexpr bool operator==(Arranging, Arranging) = default;
};

} // namespace v0
} // namespace bifolium
