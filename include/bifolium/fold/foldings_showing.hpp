// SPDX-License-Identifier: MIT
/// Finds the foldings that agree with evidence seen in leaves: which sheets, cut and folded in which way, give a
/// gathering with these chain lines, marks, bolts and rough edges? Every sheet within the limits is tried with every
/// way of folding it, so the answer does not depend on a table of formats. If nothing fits, or only something
/// complicated, the search names a leaf without which something simple fits: a cancel, a leaf put in the place of
/// another, shows by its paper.
///
/// A few facts leave many foldings. So the answer is in groups of one format, the simplest first
/// (fold/folding_prices.hpp), and says what to look at next.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/seen_leaf.hpp>

#include <span>
#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The sheets and foldings that the search considers.
struct SheetsAllowed {
  int most_rows{8}, most_columns{8}; ///< the greatest numbers of rows and columns of the sheet that goes to press
  int most_leaves{64};               ///< the greatest number of leaves of a whole sheet of paper
  int most_sheets{5};                ///< the greatest number of sheets set one inside another in a gathering
  int most_pieces{3};                ///< the greatest number of pieces of one sheet in a gathering
  bool half_sheets{true};            ///< true if paper may have been cut in half before it was printed
  Mould mould{hand_mould};           ///< the places of marks in the sheet, and the direction of the chain lines
  friend constexpr bool operator==(SheetsAllowed const&, SheetsAllowed const&) = default;
};

/// Foldings of one format that agree in the number of sheets to a gathering and in whether the sheets are cut.
struct FoldingGroup {
  Format format{};  ///< the format, counted on the whole sheet of paper
  int sheets{1};    ///< number of sheets in a gathering
  PaperPart part{}; ///< the part of the sheet of paper that went to press
  bool cut{};       ///< true if the sheet is cut into pieces, or makes more than this gathering
  /// number of foldings that fit; those that differ only in how the sheet lay on the type count once
  double foldings{};
  int price{};                      ///< the price of the simplest folding
  SheetLine sheet{};                ///< the rows, columns and long side of the simplest folding
  std::vector<Attested> attested{}; ///< attested schemes of this group that agree with the evidence
  /// Returns true if the two groups agree in format, sheets and cutting.
  [[nodiscard]] bool is_like(FoldingGroup const& other) const noexcept {
    return format == other.format && sheets == other.sheets && part == other.part && cut == other.cut;
  }
};

/// A leaf without which the other leaves fit a much simpler folding, or fit at all.
struct BlamedLeaf {
  int gathering{}; ///< the gathering, from 0, in the order given
  int leaf{};      ///< the leaf, from 1
  /// the price of the simplest folding that shows the other leaves, including the price of a leaf left out
  int price{};
  friend constexpr bool operator==(BlamedLeaf, BlamedLeaf) = default;
};

/// The fact to look at next.
struct LookNext {
  /// The kind of fact.
  enum class What : std::uint8_t { chain_lines, watermark, head, tail, fore_edge, conjugate };
  What what{};     ///< the kind of fact
  int gathering{}; ///< the gathering, from 0, in the order given
  int leaf{};      ///< the leaf, from 1
  friend constexpr bool operator==(LookNext, LookNext) = default;
};

/// Returns the identifier of a kind of fact, for columns and fields that programs read.
constexpr std::string_view identifier(LookNext::What what) noexcept {
  switch (what) {
  case LookNext::What::chain_lines:
    return "chain_lines";
  case LookNext::What::watermark:
    return "watermark";
  case LookNext::What::head:
    return "head";
  case LookNext::What::tail:
    return "tail";
  case LookNext::What::fore_edge:
    return "fore_edge";
  case LookNext::What::conjugate:
    return "conjugate";
  }
  return "";
}

/// The foldings that agree with the evidence.
struct FoldingsLeft {
  std::vector<FoldingGroup> groups{}; ///< the simplest first; among equal prices, groups with an attested scheme first
  std::vector<BlamedLeaf>
      blamed{}; ///< leaves that may be on other paper; the most likely first, in any order if the price is equal
  /// the fact that best separates the attested schemes that fit; no value if none does
  std::optional<LookNext> look_next{};
  /// Returns the number of foldings of all groups.
  [[nodiscard]] double foldings() const noexcept {
    double sum = 0;
    for (auto const& group : groups) sum += group.foldings;
    return sum;
  }
};

/// Returns the foldings that agree with the evidence of one gathering, or of several that were made of one sheet. The
/// function allocates memory. The work grows with the number of leaves and with the number of unknown facts: some tens
/// of milliseconds for 8 leaves, half a second for 24 leaves of which everything is known, some seconds for 24 of which
/// little is known. Errors: gathering_size_needed if there is no gathering; gathering_too_large for more than 32 leaves
/// in one gathering or more than 63 in all; leaf_outside_gathering, leaf_seen_twice.
Expected<FoldingsLeft> foldings_showing(std::span<SeenGathering const> gatherings, SheetsAllowed const& allowed = {});

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/showing_finder.hpp> // the body of this
