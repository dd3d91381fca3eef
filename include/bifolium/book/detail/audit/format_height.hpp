// SPDX-License-Identifier: MIT
/// The format against a height alone. Most records have nothing but a height in whole centimetres, which may be that of the
/// binding. It tells formats apart badly, but a leaf that no sheet is large enough for, or that is higher than any cover
/// explains, is a slip in one of the two fields all the same.
#pragma once

#include <bifolium/book/detail/audit/format_findings.hpp>
#include <bifolium/book/evidence_of.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Compares the height with the format.
class FormatHeight : FormatFindings {
  static constexpr int last_of_hand_made_paper = 1800; // soon after it machines make paper of any length; estimated

public:
  FormatHeight(Description const& book, Audit& audit) : FormatFindings{book, audit} {}

  /// A height that was not measured to the millimetre is of the binding as often as of the leaf, and accuses a format only
  /// where the leaf is too high even without a cover: 38 cm of a duodecimo, which may be a folio or 18 cm. The leaf is
  /// taken as low as such a height allows.
  void too_high_for_format(Format stated, LeafEvidence const& seen) {
    auto const leaf = book_.height->value.above - (book_.binding ? 0 : SizeStatement::most_of_binding);
    if (leaf > 0) hold_against(stated, seen, millimetres{leaf}, true);
  }
  /// The other side: 13 cm of a folio. A cover is higher than its leaf, so that the leaf is taken as high as the height
  /// allows. Leaves are trimmed, and those of books that are broader than high are low.
  void too_low_for_format(Format stated, LeafEvidence const& seen) {
    bool const broad = book_.width && book_.width->value.above > book_.height->value.to;
    bool const later = book_.year && book_.year->value.to > last_of_hand_made_paper;
    if (stated.shape() != Shape::usual || broad || later) return;
    hold_against(stated, seen, millimetres{book_.height->value.to}, false);
  }

  /// Adds a finding if no leaf of the format can be so high. The largest sheet of the tables before 1801, divided, gives the
  /// area of a leaf, and a leaf is not three times as high as broad. A height may be that of a binding. The other bound is
  /// below every leaf that was measured in tests/data (2° 140, 4° 113, 8° 92 mm). A leaf may have been cropped, so that it is
  /// only a doubt.
  [[nodiscard]] bool impossible_height(Format stated) {
    auto const leaves = *stated.leaves_to_sheet();
    if (!book_.height || (book_.year && book_.year->value.to > last_of_hand_made_paper)) return false;
    auto const& height = book_.height->value;
    constexpr double narrowest = 3; // height to width; estimated
    double largest = 0;
    for (auto const& sheet : find_sheets({})) {
      if (sheet.first_year > last_of_hand_made_paper) continue;
      auto const area = sheet.short_side().count() * sheet.long_side().count();
      largest = area > largest ? area : largest;
    }
    auto const least = height.above - (book_.binding ? 0 : SizeStatement::most_of_binding);
    bool const too_high = least > 0 && least * least > narrowest * largest / leaves;
    double const lowest = leaves == 2 ? 125 : leaves == 4 ? 111 : leaves == 8 ? 80 : 0;
    bool const broad = book_.width && book_.width->value.above > height.to; // height_below_width
    bool const too_low = height.to < lowest && stated.shape() == Shape::usual && !broad;
    if (!too_high && !too_low) return false;
    auto const format = std::string{stated.symbol().view()};
    add(FindingId::format_against_size, too_high ? Severity::error : Severity::doubt, statement() | Field::height,
        "the height is stated as '" + book_.height->text + "', " +
            (too_high ? "and no sheet is so large that a leaf of " + format + " can be so high, even with a binding"
                      : "and a leaf of " + format + " is hardly ever so low"),
        "the format and the height: one of the two is probably a slip");
    return true;
  }

private:
  /// Adds a finding if a leaf of this height is much more often of a larger format, where it is high, or of a smaller one.
  /// Its width is not looked at.
  void hold_against(Format stated, LeafEvidence seen, millimetres leaf, bool high) {
    seen.height = leaf, seen.width = std::nullopt;
    seen.rounded_up_to = millimetres{0.0}, seen.of = MeasureOf::leaf;
    auto const observation = observe(seen);
    if (!observation) return;
    auto const inference = infer_format(*observation);
    if (inference.candidates.empty() || inference.mixed) return;
    auto const& best = inference.candidates.front();
    auto const leaves = *stated.leaves_to_sheet();
    auto const odds = best.probability / probability(inference, leaves) * format_wrong;
    bool const larger = best.kind->leaves<leaves, smaller = best.kind->leaves> leaves;
    if (odds < look_again || !(high ? larger : smaller)) return;
    auto const* const here = candidate_of(inference, leaves);
    if (here != nullptr && strongest_against(*here) != EvidenceKind::size) return;
    auto const wrong = doubted(stated, seen, best);
    add(FindingId::format_against_size, Severity::note, statement() | Field::height,
        "the height is stated as '" + book_.height->text + "'; a leaf so " +
            (high ? "high, even if the cover was measured," : "low") + " is more often " +
            std::string{best.format.symbol().view()} + " than " + std::string{stated.symbol().view()} +
            likelier_wrong(wrong, stated, best.format),
        "the format and the height: one of the two is probably a slip", named(wrong));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
