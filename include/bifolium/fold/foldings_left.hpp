// SPDX-License-Identifier: MIT
/// The answer of `foldings_showing`: groups of foldings that agree with the evidence of leaves, leaves that do not
/// agree with the others, and the fact to look at next.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/shows.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// The sheets and foldings that the search considers: at most 64 leaves, 64 rows and columns, and 16 sheets.
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
  Format format{};                  ///< the format, counted on the whole sheet of paper
  int sheets{1};                    ///< number of sheets in a gathering
  PaperPart part{PaperPart::whole}; ///< the part of the sheet of paper that went to press
  bool cut{};                       ///< true if the sheet is cut into pieces, or makes more than this gathering
  /// number of foldings that fit; those that differ only in how the sheet lay on the type count once
  double foldings{};
  int price{};                      ///< the price of the simplest folding
  SheetLine sheet{};                ///< the rows, columns and long side of the simplest folding
  std::vector<Attested> attested{}; ///< attested schemes of this group that agree with the evidence
  /// the probability that one of these schemes was used, if the scheme is in the table; 0 if the group has none
  double probability{};
  /// A group with a lower probability is sorted by its price, like the groups without a scheme.
  static constexpr double likely_enough = 0.005;
  /// Returns true if the two groups agree in format, sheets and cutting.
  [[nodiscard]] bool is_like(FoldingGroup const& other) const noexcept {
    return format == other.format && sheets == other.sheets && part == other.part && cut == other.cut;
  }
  friend bool operator==(FoldingGroup const&, FoldingGroup const&) = default;
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

/// Returns the identifier of a kind of fact, for columns and fields that programs read. A number that is not such a
/// kind gives "unknown".
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
  return "unknown";
}

/// The foldings that agree with the evidence.
struct FoldingsLeft {
  /// groups with attested schemes that are likely enough, the most likely first; then the others, the simplest first
  std::vector<FoldingGroup> groups{};
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
  friend bool operator==(FoldingsLeft const&, FoldingsLeft const&) = default;
};

} // namespace v0
} // namespace bifolium
