// SPDX-License-Identifier: MIT
/// The sheet a leaf implies. Put back together, the leaves of a scheme make the least sheet they can have been cut from;
/// the sheet itself was larger, by what the binder took. He cuts at head, tail and fore-edge and never in the gutter, so a
/// leaf loses twice in height and once in width, and from a height alone head and tail cannot be told apart.
///
/// The paper need not have come to press as it left an ordinary mould. Sheets were cut in two before printing, so that
/// royal gives leaves of a chancery shape; and moulds for two sheets, or double sheets cut in two, give sheets of the
/// common size with chain lines turned. Both are asked here, since otherwise the chain lines would exclude the true sheet.
///
/// Nothing here is a probability: what could be is listed, and `infer_format` weighs it.
#pragma once

#include <bifolium/evidence/inference.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// What a leaf has lost against its sheet. Less than zero where the sheet was larger than its name says.
struct LeafLoss {
  millimetres height{}; ///< at head and tail together
  millimetres width{};  ///< at the fore-edge
  friend constexpr bool operator==(LeafLoss const&, LeafLoss const&) = default;
};

/// How much may have been lost, as fractions of the uncut leaf.
struct LossLimits {
  double least{};       ///< of height and width alike; less than zero where sheets were larger than their name says
  double most_height{}; ///< at head and tail together
  double most_width{};  ///< at the fore-edge
};

/// What binders take, by state. `least` is less than zero, since sheets of one name differ: chancery of the fifteenth century
/// is 300-315 x 420-460 mm in Cambridge University Library, 4.5 % either side of its middle. Losses of copies measured
/// against uncut ones: one binding 5-10 % of height, a rebinding to 18 %. Where the state is not told, a quarter: of 3,024
/// copies in the British Museum's catalogue of incunables 2.4 % lost more. A chancery folio of the Morgan Library, its leaves
/// inlaid, 216 x 145 mm, lost 31 % and 36 %. The limits between are common practice.
[[nodiscard]] constexpr LossLimits loss_limits(LeafState state) {
  constexpr double spread = -0.045;
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

/// What the leaf lost, if it was laid so on that sheet.
[[nodiscard]] constexpr LeafLoss loss_against(SheetLine const& lay, Sheet<millimetres> const& paper,
                                              LeafSize<millimetres> leaf) {
  auto const uncut = leaf_size(lay, paper);
  return {uncut.height - leaf.height, uncut.width - leaf.width};
}
/// Whether that loss is one of those allowed.
[[nodiscard]] constexpr bool could_be(LeafLoss loss, LeafSize<millimetres> leaf, LossLimits const& limits) {
  auto const height = loss.height / (leaf.height + loss.height), width = loss.width / (leaf.width + loss.width);
  return height >= limits.least && height <= limits.most_height && width >= limits.least && width <= limits.most_width;
}

/// A named sheet from which a leaf could have been cut.
struct NamedOrigin {
  SheetSize const* sheet{};      ///< the row of the table of sheet sizes; never null in an answer
  PaperOrigin origin{};          ///< whether the sheet was folded whole or cut before printing
  Format format{};               ///< fraction of the whole sheet of paper: quarto leaves of cut halves are an eighth
  LeafSize<millimetres> uncut{}; ///< the leaf before any binder
  LeafLoss loss{};               ///< from that to the leaf as measured
};
/// What a leaf implies under one kind of leaf.
struct LeafOrigin {
  LeafShape const* shape{}; ///< the kind of leaf; never null in an answer
  /// The smallest sheet such a leaf can come of: from which no binder cut anything.
  ImpliedSheet<millimetres> least{Sheet<millimetres>{1_mm, 1_mm}, false};
  std::vector<NamedOrigin> named{}; ///< whole sheets before cut halves, the least loss of height first
};

namespace detail {
constexpr bool runs(ChainLines seen, ChainLines own) {
  return seen == ChainLines::unknown || seen == ChainLines::both || seen == own;
}
/// Adds a sheet unless the same size under the same name is there already.
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

/// The named sheets of which a leaf of one kind could have been cut. With a direction of chain lines seen, only those whose
/// chain lines would run so; of wove and of machine-made paper, whose lines follow the web, none should be given.
/// pre: height and width are measures. Allocates the result.
inline std::vector<NamedOrigin> named_origins(LeafShape const& shape, LeafSize<millimetres> leaf,
                                              SheetSizes const& sizes, LossLimits const& limits,
                                              ChainLines seen = ChainLines::unknown) {
  if (!is_measure(leaf.height) || !is_measure(leaf.width)) broken("a leaf has a height and a width");
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
    // Halved, the old short side becomes the long one, and the chain lines with it.
    if (shape.lay.part != PaperPart::whole || leaves * 2 > Format::most_leaves || sheet.ratio() >= 2) continue;
    auto const half = sheet.halved();
    auto const half_loss = loss_against(shape.lay, half, leaf);
    if (detail::runs(seen, other) && could_be(half_loss, leaf, limits))
      detail::add_origin(named, {&size, PaperOrigin::cut_half, Format::of(leaves * 2, shape.format.shape()),
                                 leaf_size(shape.lay, half), half_loss});
  }
  return named;
}

/// What a leaf implies under every kind of leaf that schemes make, in the order of `leaf_shapes`: also those of which no named sheet
/// of the place and time fits, for their least sheet.
inline std::vector<LeafOrigin> leaf_origins(LeafSize<millimetres> leaf, SheetSizes const& sizes,
                                            LossLimits const& limits, ChainLines seen = ChainLines::unknown) {
  auto const shapes = leaf_shapes();
  std::vector<LeafOrigin> origins(shapes.size());
  for (std::size_t i = 0; i < shapes.size(); ++i)
    origins[i] = {&shapes[i], sheet_implied(shapes[i].lay, leaf), named_origins(shapes[i], leaf, sizes, limits, seen)};
  return origins;
}

/// The named sheet of the years and the place that a sheet is most like; null where none has both sides within a tenth.
/// Without years, those of the hand press.
inline SheetSize const* named_like(Sheet<millimetres> sheet, std::optional<YearRange> years, Region place) {
  auto const when = years.value_or(YearRange{1450, 1850});
  SheetSize const* like = nullptr;
  double least = 0.1;
  for (auto const& size : usable_for({when.from, when.to}, place)) {
    if (!size.is_of_sheets()) continue;
    auto const off_long = size.long_side() / sheet.long_side() - 1,
               off_short = size.short_side() / sheet.short_side() - 1;
    auto const off = (std::max)(off_long < 0 ? -off_long : off_long, off_short < 0 ? -off_short : off_short);
    if (off < least) least = off, like = &size;
  }
  return like;
}

/// "whole sheets", and what else the paper can have been.
constexpr char const* to_words(PaperOrigin origin) noexcept {
  switch (origin) {
  case PaperOrigin::whole_sheet:
    return "whole sheets";
  case PaperOrigin::turned_mould:
    return "sheets with turned chain lines";
  case PaperOrigin::cut_half:
    return "half-sheets cut before printing";
  }
  return "";
}

} // namespace v0
} // namespace bifolium
