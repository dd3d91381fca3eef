// SPDX-License-Identifier: MIT
/// Finds the sheets from which a leaf may come. Put together, the leaves of a scheme make the smallest sheet from which
/// they can have been cut; the real sheet was larger by the amount that binders cut. They cut at head, tail and
/// fore-edge and never in the gutter, so a leaf loses twice in height and once in width, and a height alone does not
/// show whether head or tail was cut.
///
/// The paper may have come to the press in other forms than whole sheets from an ordinary mould. Some sheets were cut
/// in two before printing, so that a royal sheet gives leaves of the shape of chancery. Double moulds, and double
/// sheets cut in two, give sheets of the ordinary size with turned chain lines. Both cases are included, because
/// otherwise the chain lines would exclude the true sheet.
///
/// This header lists possibilities; `infer_format` gives probabilities.
#pragma once

#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// The loss of a leaf compared with its sheet. It is less than zero if the sheet was larger than its name says.
struct LeafLoss {
  millimetres height{}; ///< loss at head and tail together
  millimetres width{};  ///< loss at the fore-edge
  friend constexpr bool operator==(LeafLoss const&, LeafLoss const&) = default;
};

/// The possible loss, as fractions of the uncut leaf.
struct LossLimits {
  double least{};       ///< of height and width; less than zero if sheets could be larger than their name says
  double most_height{}; ///< greatest loss of height, at head and tail together
  double most_width{};  ///< greatest loss of width, at the fore-edge
};

/// Returns the possible loss for a state of the leaf. `least` is less than zero, since sheets of one name differ
/// (`sheets_of_a_name_differ`). Losses of copies measured against uncut ones: one binding 5-10 % of height, a rebinding up to 18 %. If the
/// state is unknown the limit is a quarter: of 3,024 copies in the British Museum's catalogue of incunables, 2.4 % lost
/// more. A chancery folio of the Morgan Library with inlaid leaves, 216 x 145 mm, lost 31 % and 36 %. The limits in
/// between are common practice.
[[nodiscard]] constexpr LossLimits loss_limits(LeafState state) {
  constexpr double spread = -sheets_of_a_name_differ;
  switch (state) {
  case LeafState::uncut:
    return {spread, 0.045, 0.045};
  case LeafState::trimmed:
    return {spread, 0.12, 0.14};
  case LeafState::unknown:
    return {spread, 0.25, 0.25};
  case LeafState::rebound:
    return {spread, 0.20, 0.20};
  case LeafState::cropped:
    return {spread, 0.30, 0.30};
  case LeafState::inlaid:
    return {spread, 0.33, 0.37};
  }
  return {};
}

/// Returns the loss of the leaf if `paper` was laid as `lay` says.
[[nodiscard]] constexpr LeafLoss loss_against(SheetLine const& lay, Sheet<millimetres> const& paper,
                                              LeafSize<millimetres> leaf) {
  auto const uncut = leaf_size(lay, paper);
  return {uncut.height - leaf.height, uncut.width - leaf.width};
}
/// Returns true if the loss is within the limits.
[[nodiscard]] constexpr bool could_be(LeafLoss loss, LeafSize<millimetres> leaf, LossLimits const& limits) {
  auto const height = loss.height / (leaf.height + loss.height), width = loss.width / (leaf.width + loss.width);
  return height >= limits.least && height <= limits.most_height && width >= limits.least && width <= limits.most_width;
}

/// A named sheet from which a leaf may have been cut.
struct NamedOrigin {
  SheetSize const* sheet{};      ///< the row of the table of sheet sizes; never null in an answer
  PaperOrigin origin{};          ///< whole sheet, turned mould or cut half
  Format format{};               ///< fraction of the whole sheet of paper: quarto leaves of cut halves are an eighth
  LeafSize<millimetres> uncut{}; ///< size of the leaf before any binding
  LeafLoss loss{};               ///< what the leaf lost of this size before it was measured
};
/// The sheets from which a leaf may come, for one kind of leaf.
struct LeafOrigin {
  LeafShape const* shape{}; ///< the kind of leaf; never null in an answer
  /// The smallest sheet from which such a leaf can come, if no binder cut anything.
  ImpliedSheet<millimetres> least{Sheet<millimetres>{1_mm, 1_mm}, false};
  std::vector<NamedOrigin> named{}; ///< whole sheets before cut halves, those with the least loss of height first
};

namespace detail {
constexpr bool runs(ChainLines seen, ChainLines own) {
  return seen == ChainLines::unknown || seen == ChainLines::both || seen == own;
}
/// Adds a sheet unless one of the same size and name is there already.
inline void add_origin(std::vector<NamedOrigin>& named, NamedOrigin const& one) {
  for (auto const& other : named) {
    bool const same = other.origin == one.origin && other.uncut == one.uncut;
    if (same && std::string_view{other.sheet->name} == one.sheet->name) return;
  }
  auto const before = [](NamedOrigin const& a, NamedOrigin const& b) {
    return a.origin != b.origin ? a.origin < b.origin : a.loss.height <= b.loss.height;
  };
  std::size_t at = 0;
  while (at < named.size() && before(named[at], one)) ++at;
  named.insert(named.begin() + static_cast<std::ptrdiff_t>(at), one);
}
} // namespace detail

/// Returns the named sheets from which a leaf of one kind may have been cut. If a direction of chain lines was seen,
/// the result has only sheets whose chain lines would run in this direction; give none for wove and for machine-made
/// paper. The function allocates memory. Precondition: height and width can be measurements (paper/measure.hpp).
inline std::vector<NamedOrigin> named_origins(LeafShape const& shape, LeafSize<millimetres> leaf,
                                              SheetSizes const& sizes, LossLimits const& limits,
                                              ChainLines seen = ChainLines::unknown) {
  if (!is_measure(leaf.height) || !is_measure(leaf.width))
    broken("the height and the width of a leaf must be more than zero and less than a kilometre");
  auto const other = shape.chain_lines == ChainLines::vertical ? ChainLines::horizontal : ChainLines::vertical;
  auto const leaves = shape.format.leaves_to_sheet().value_or(1);
  std::vector<NamedOrigin> named;
  for (auto const& size : sizes) {
    if (!size.is_of_sheets()) continue;
    auto const sheet = size.sheet();
    auto const loss = loss_against(shape.lay, sheet, leaf);
    if (could_be(loss, leaf, limits)) {
      auto const uncut = leaf_size(shape.lay, sheet);
      if (detail::runs(seen, shape.chain_lines))
        detail::add_origin(named, {&size, PaperOrigin::whole_sheet, shape.format, uncut, loss});
      else
        detail::add_origin(named, {&size, PaperOrigin::turned_mould, shape.format, uncut, loss});
    }
    // In a half, the short side of the sheet becomes the long side, and the chain lines change their direction.
    if (shape.lay.part != PaperPart::whole || leaves * 2 > Format::most_leaves || sheet.ratio() >= 2) continue;
    auto const half = sheet.halved();
    auto const half_loss = loss_against(shape.lay, half, leaf);
    if (detail::runs(seen, other) && could_be(half_loss, leaf, limits))
      detail::add_origin(named, {&size, PaperOrigin::cut_half, Format::of(leaves * 2, shape.format.shape()),
                                 leaf_size(shape.lay, half), half_loss});
  }
  return named;
}

/// Returns the sheets from which a leaf may come, for every kind of leaf that schemes make, in the order of
/// `leaf_shapes`. Kinds for which no named sheet fits are included, for their smallest sheet. The function allocates
/// memory. Precondition: height and width can be measurements.
inline std::vector<LeafOrigin> leaf_origins(LeafSize<millimetres> leaf, SheetSizes const& sizes,
                                            LossLimits const& limits, ChainLines seen = ChainLines::unknown) {
  auto const shapes = leaf_shapes(leaf.width > leaf.height);
  std::vector<LeafOrigin> origins(shapes.size());
  for (std::size_t i = 0; i < shapes.size(); ++i)
    origins[i] = {&shapes[i], sheet_implied(shapes[i].lay, leaf), named_origins(shapes[i], leaf, sizes, limits, seen)};
  return origins;
}

namespace detail {
/// `candidate`: the sheet is one from which its leaf can have been cut; null if any will do.
inline std::optional<SheetSize> named_like(Sheet<millimetres> const& sheet, FormatCandidate const* candidate,
                                           std::optional<YearRange> years, Region place) {
  auto const when = years.value_or(years_of_paper);
  std::optional<SheetSize> like;
  double least = 0.1;
  for (auto const& size : usable_for({when.from, when.to}, place)) {
    if (!size.is_of_sheets() || (candidate != nullptr && !candidate->fits(size.sheet()))) continue;
    auto const off_long = size.long_side() / sheet.long_side() - 1,
               off_short = size.short_side() / sheet.short_side() - 1;
    auto const off = (std::max)(off_long < 0 ? -off_long : off_long, off_short < 0 ? -off_short : off_short);
    if (off < least) least = off, like = size;
  }
  return like;
}
} // namespace detail

/// Returns the named sheet of the years and the place that is most similar to a sheet, or no value if none has both
/// sides within a tenth. Without years, those of the hand press are used.
inline std::optional<SheetSize> named_like(Sheet<millimetres> sheet, std::optional<YearRange> years, Region place) {
  return detail::named_like(sheet, nullptr, years, place);
}
/// The same for the sheet of a candidate, of those from which its leaf can have been cut. Precondition: the candidate
/// has a kind of leaf.
inline std::optional<SheetSize> named_like(FormatCandidate const& candidate, std::optional<YearRange> years,
                                           Region place) {
  return detail::named_like(candidate.sheet, &candidate, years, place);
}

/// Returns words for the origin of the paper, such as "whole sheets".
constexpr char const* to_words(PaperOrigin origin) noexcept {
  switch (origin) {
  case PaperOrigin::whole_sheet:
    return "whole sheets";
  case PaperOrigin::turned_mould:
    return "sheets with turned chain lines";
  case PaperOrigin::cut_half:
    return "half-sheets cut before printing";
  case PaperOrigin::machine_web:
    return "sheets of machine-made paper";
  }
  return "";
}

} // namespace v0
} // namespace bifolium
