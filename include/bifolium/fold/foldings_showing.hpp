// SPDX-License-Identifier: MIT
/// From what leaves show back to the folding: which sheets, cut and folded how, give a gathering whose leaves have their
/// chain lines, marks, bolts and rough edges just there? Every sheet within the rules is tried with every way of folding
/// it, so that the answer does not hang on what formats are in a table. Where nothing fits, or only what is far-fetched,
/// the leaf is named without which something simple would: a cancel shows itself by its paper.
///
/// A few facts leave many foldings. The answer therefore comes in groups, those of one format, the simplest first
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

/// Which sheets and foldings are considered.
struct SheetsAllowed {
  int most_rows{8}, most_columns{8}; ///< of what goes to press
  int most_leaves{64};               ///< of a whole sheet of paper
  int most_sheets{5};                ///< set one inside another in a gathering
  int most_pieces{3};                ///< of one sheet in a gathering
  bool half_sheets{true};            ///< paper may have been cut in half before it was printed
  Mould mould{hand_mould};           ///< where marks are in the sheet, and how chain lines run
  friend constexpr bool operator==(SheetsAllowed const&, SheetsAllowed const&) = default;
};

/// Foldings of one format, alike in how many sheets a gathering takes and whether they are cut.
struct FoldingGroup {
  Format format{};                  ///< by the whole sheet of paper
  int sheets{1};                    ///< to a gathering
  PaperPart part{};                 ///< of the sheet of paper that went to press
  bool cut{};                       ///< the sheet is cut into pieces, or yields more than this gathering
  double foldings{};                ///< how many fit; those that differ only by how the sheet lay on the type are one
  int price{};                      ///< of the simplest
  SheetLine sheet{};                ///< of the simplest: rows, columns and the long side
  std::vector<Attested> attested{}; ///< schemes of the table that are of this group and show all that was seen
  /// Of the same format, sheets and cutting.
  [[nodiscard]] bool is_like(FoldingGroup const& other) const noexcept {
    return format == other.format && sheets == other.sheets && part == other.part && cut == other.cut;
  }
};

/// A leaf without which the rest fits a folding that is much simpler, or at all.
struct BlamedLeaf {
  int gathering{}; ///< from 0, as given
  int leaf{};      ///< from 1
  int price{};     ///< of the simplest folding that shows the rest, and of a leaf set aside
  friend constexpr bool operator==(BlamedLeaf, BlamedLeaf) = default;
};

/// What to look at next.
struct LookNext {
  /// What of a leaf.
  enum class What : std::uint8_t { chain_lines, watermark, head, tail, fore_edge, conjugate };
  What what{};     ///< the fact
  int gathering{}; ///< from 0, as given
  int leaf{};      ///< from 1
  friend constexpr bool operator==(LookNext, LookNext) = default;
};

/// The identifier of what to look at, for columns and fields that programs read.
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

/// The foldings that are left.
struct FoldingsLeft {
  std::vector<FoldingGroup> groups{}; ///< the simplest first; of equal price one with an attested scheme first
  std::vector<BlamedLeaf>
      blamed{}; ///< leaves that may be of other paper; the likeliest first, those of equal price alike
  std::optional<LookNext> look_next{}; ///< the fact that best parts the attested schemes that fit; none where none does
  /// All of them.
  [[nodiscard]] double foldings() const noexcept {
    double sum = 0;
    for (auto const& group : groups) sum += group.foldings;
    return sum;
  }
};

/// The foldings that show what was seen of one gathering, or of several that were made of one sheet. Allocates. The work
/// grows with the leaves and with what was not looked at: some tens of milliseconds for 8 leaves, half a second for 24 of
/// which all is known, some seconds for 24 of which little is.
/// error: gathering_size_needed without a gathering; gathering_too_large for more than 32 leaves, or 63 of all together;
/// leaf_outside_gathering, leaf_seen_twice.
Expected<FoldingsLeft> foldings_showing(std::span<SeenGathering const> gatherings, SheetsAllowed const& allowed = {});

} // namespace v0
} // namespace bifolium

#include <bifolium/fold/detail/showing_finder.hpp> // the body of this
