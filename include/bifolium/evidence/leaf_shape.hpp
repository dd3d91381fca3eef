// SPDX-License-Identifier: MIT
/// The kinds of leaf that schemes make: how the sheet is divided, the direction of the chain lines, the places of a
/// watermark, and the sizes of gatherings. Schemes whose leaves agree in format, division and direction form one kind.
/// So 61 schemes have about twenty kinds, and everything that depends on size alone is computed once for each kind.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/ranked_formats.hpp>
#include <bifolium/evidence/scheme_facts.hpp>
#include <bifolium/fold/leaf_size.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// One kind of leaf.
struct LeafShape {
  Format format{};          ///< fraction of the sheet of paper, with the shape that the scheme states
  int leaves{};             ///< leaves to the sheet, 1 to 128
  SheetLine lay{};          ///< how the sheet is divided, and the direction of its long side
  ChainLines chain_lines{}; ///< direction of the chain lines on paper from an ordinary hand mould
  /// the schemes that make it, as indices of `scheme_facts()`; valid as long as the program
  std::span<int const> schemes{};
  std::uint32_t gatherings{}; ///< bit k: some scheme has gatherings of k leaves (k up to 31)
  /// index of the first scheme with gatherings of k leaves, or of the first of all if none has them
  std::array<std::uint8_t, 32> first_gathering{};
  std::size_t group{};                ///< group of its format, see `format_group`
  std::size_t ranked{};               ///< index of its number of leaves in `ranked_leaves`
  std::size_t ranked_half{};          ///< index of half its number of leaves; `ranked` if that is not ranked
  std::size_t format_number{};        ///< kinds of one format have the same number, from 0
  double parts_long{}, parts_short{}; ///< numbers of parts into which the long and the short side are divided
  double log_long{}, log_short{};     ///< their logarithms
  /// How common this division of the sheet is among the kinds of its format: two twelves make a 24° in one way, all
  /// other schemes in another. Its chain lines run either way (Cim, Le Livre III, 1907, pp. 89-90); nobody has counted
  /// them, so both are as common.
  double share{1};
  /// true if the format has several kinds, which gatherings may tell apart
  bool of_several{};
  /// true if manuals have a whole sheet of as many leaves in two gatherings, beside half-sheets
  bool two_to_sheet{};
  /// The sum of the shares of all kinds with the same number of leaves, including this one, for each `Shape`.
  std::array<double, 5> sharers{};
  /// Frequency with which a random leaf has the watermark at the first place and the countermark at the second, indexed
  /// by `MarkPlace`, if the paper has both; the mean over its schemes.
  std::array<std::array<double, 8>, 8> marks{};
  std::array<double, 8> one_mark{};  ///< sums of `marks`, see `mark`
  std::array<double, 8> two_marks{}; ///< sums of `marks`, see `either_mark`
  /// frequencies for a mark in the exact centre of the sheet; the mean over its schemes
  std::array<double, 8> central{};

  /// Returns the frequency of a mark at a place, for paper with one mark in a sheet.
  [[nodiscard]] double mark(MarkPlace place) const { return one_mark[static_cast<std::size_t>(place)]; }
  /// Returns the frequency of one of the two marks at a place, for paper with a countermark. In a format above
  /// broadside the two are never in one leaf; if both are described, the watermark is used.
  [[nodiscard]] double either_mark(MarkPlace place) const { return two_marks[static_cast<std::size_t>(place)]; }
  /// Returns the index in `scheme_facts()` of the first scheme with gatherings of so many leaves, or of the first
  /// scheme if none has them.
  [[nodiscard]] std::size_t gathering_in(int number) const {
    return first_gathering[number > 0 && number < 32 ? static_cast<std::size_t>(number) : 0];
  }
};

namespace detail {

/// Adds the `number`th scheme, from 1.
[[gnu::cold]] inline void add_marks(LeafShape& shape, SchemeFacts const& facts, int number) {
  double cases = 0, found[8][8]{}, central[8]{};
  for (auto const& leaf : facts.leaves)
    for (std::size_t lie = 0; lie < 2; ++lie, cases += 1)
      found[static_cast<std::size_t>(leaf.watermark[lie])][static_cast<std::size_t>(leaf.countermark[lie])] += 1;
  for (auto const& leaf : facts.leaves) central[static_cast<std::size_t>(leaf.central)] += 2;
  double const n = number;
  for (std::size_t a = 0; a < 8; ++a) shape.central[a] += (central[a] / cases - shape.central[a]) / n;
  for (std::size_t a = 0; a < 8; ++a)
    for (std::size_t b = 0; b < 8; ++b) shape.marks[a][b] += (found[a][b] / cases - shape.marks[a][b]) / n;
}
/// Whether the scheme is of a whole sheet in two gatherings, and not what the trade calls two half-sheets worked together.
[[gnu::cold]] inline bool is_two_to_sheet(SchemeFacts const& facts, int leaves) {
  bool const halves = facts.sheets == 1 && facts.gatherings == 2 && facts.gathered[0] == facts.gathered[1];
  return halves && 2 * facts.gathered[0] == leaves && facts.scheme.id().find("half_sheet") == std::string_view::npos;
}
/// Adds the gatherings of the scheme with this index.
[[gnu::cold]] inline void add_gatherings(LeafShape& shape, int scheme) {
  auto const& facts = scheme_facts()[static_cast<std::size_t>(scheme)];
  shape.two_to_sheet = shape.two_to_sheet || is_two_to_sheet(facts, shape.leaves);
  for (int g = 0; g < facts.gatherings; ++g) {
    auto const leaves = facts.gathered[static_cast<std::size_t>(g)];
    auto const bit = leaves < 32 ? std::uint32_t{1} << leaves : 0;
    if ((shape.gatherings & bit) == 0 && bit != 0) shape.first_gathering[leaves] = static_cast<std::uint8_t>(scheme);
    shape.gatherings |= bit;
  }
}

/// Room for the kinds of leaf, and so for their formats. Loops over all of them have this length, which is even, so that a
/// compiler takes two at once: room for no more than there are is a twelfth of their time.
inline constexpr std::size_t most_leaf_shapes = 22;

/// All kinds of leaf.
class AllLeafShapes {
  LeafShape shapes_[most_leaf_shapes]{};
  LeafShape broader_[most_leaf_shapes]{}; // for leaves that are broader than high
  std::size_t count_{};
  int schemes_[Attested::count]; // of one kind after the other

  /// Returns the kind of the leaves of a scheme, which may be a new one.
  [[gnu::cold]] LeafShape& kind_of(SchemeFacts const& facts) {
    auto const n = divided(facts.lay);
    auto const chains = facts.leaves[0].chain_lines;
    std::size_t format_number = 0, formats = 0;
    bool known = false;
    for (std::size_t i = 0; i < count_; ++i) {
      auto& other = shapes_[i];
      formats = (std::max)(formats, other.format_number + 1);
      if (other.format != facts.format) continue;
      known = true, format_number = other.format_number;
      auto const m = divided(other.lay);
      if (other.lay.long_side == facts.lay.long_side && m.long_side == n.long_side && m.short_side == n.short_side &&
          other.chain_lines == chains)
        return other;
    }
    if (count_ == most_leaf_shapes) broken("there is no room for so many kinds of leaf");
    auto& shape = shapes_[count_++];
    shape.format = facts.format, shape.lay = facts.lay, shape.chain_lines = chains;
    shape.leaves = facts.format.leaves_to_sheet().value_or(0);
    shape.group = format_group(shape.leaves);
    shape.ranked = ranked_number(shape.leaves);
    auto const half = ranked_number(shape.leaves / 2);
    shape.ranked_half = 2 * ranked_leaves[half] == shape.leaves ? half : shape.ranked;
    shape.format_number = known ? format_number : formats;
    shape.parts_long = n.long_side, shape.parts_short = n.short_side;
    shape.log_long = real::log(n.long_side), shape.log_short = real::log(n.short_side);
    return shape;
  }
  /// Computes the sums that need all kinds.
  [[gnu::cold]] void sum_up() {
    constexpr auto absent = static_cast<std::size_t>(MarkPlace::absent);
    for (std::size_t i = 0; i < count_; ++i) {
      auto& shape = shapes_[i];
      for (std::size_t a = 0; a < 8; ++a) {
        for (auto const one : shape.marks[a]) shape.one_mark[a] += one;
        shape.two_marks[a] = a == absent ? shape.marks[a][a] : shape.one_mark[a] + shape.marks[absent][a];
      }
      double alike = 0;
      for (std::size_t k = 0; k < count_; ++k) alike += shapes_[k].format == shape.format ? 1 : 0;
      shape.of_several = alike > 1, shape.share = 1 / alike;
    }
    for (std::size_t i = 0; i < count_; ++i)
      for (std::size_t k = 0; k < count_; ++k) {
        auto const& other = shapes_[k];
        if (other.leaves != shapes_[i].leaves) continue;
        shapes_[i].sharers[static_cast<std::size_t>(other.format.shape())] += other.share;
        shapes_[i].two_to_sheet = shapes_[i].two_to_sheet || other.two_to_sheet;
      }
  }

public:
  [[gnu::cold]] AllLeafShapes() {
    LeafShape const* kinds[Attested::count]; // of the schemes
    for (std::size_t i = 0; i < Attested::count; ++i) kinds[i] = &kind_of(scheme_facts()[i]);
    auto* schemes = schemes_;
    for (std::size_t k = 0; k < count_; ++k) {
      auto& shape = shapes_[k];
      auto* const first = schemes;
      for (std::size_t i = 0; i < Attested::count; ++i) {
        if (kinds[i] != &shape) continue;
        *schemes++ = static_cast<int>(i);
        add_marks(shape, scheme_facts()[i], static_cast<int>(schemes - first));
      }
      shape.schemes = {first, schemes};
      shape.first_gathering.fill(static_cast<std::uint8_t>(*first));
      for (auto const* scheme = first; scheme != schemes; ++scheme) add_gatherings(shape, *scheme);
    }
    sum_up();
    for (std::size_t k = 0; k < count_; ++k) {
      auto& shape = broader_[k] = shapes_[k];
      if (shape.leaves > 1) continue;
      shape.lay.long_side = Axis::left_right;
      shape.chain_lines = ChainLines::vertical; // along the short side
      shape.share = 0.3;                        // of broadsides are so (proposed)
    }
  }
  AllLeafShapes(AllLeafShapes const&) = delete; // the kinds look at its schemes
  AllLeafShapes& operator=(AllLeafShapes const&) = delete;
  [[nodiscard]] std::span<LeafShape const> all(bool broader) const BIFOLIUM_LIFETIMEBOUND {
    return {broader ? broader_ : shapes_, count_};
  }
};

} // namespace detail

/// Returns all kinds of leaf, in the order of the schemes. They are computed once in a program, at the first use.
/// `broader_than_high`: of the leaf that was seen. No fold says which way up a broadside is read, so the long side of its
/// sheet lies as that of the leaf.
[[gnu::noinline]] inline std::span<LeafShape const> leaf_shapes(bool broader_than_high = false) {
  static detail::AllLeafShapes const shapes;
  return shapes.all(broader_than_high);
}

} // namespace v0
} // namespace bifolium
