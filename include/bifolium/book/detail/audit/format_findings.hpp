// SPDX-License-Identifier: MIT
/// Which field is likelier wrong, where the format as it is stated does not agree with the leaf. A finding that names no
/// culprit leaves the cataloguer with two fields to check. So each field is left out in turn, and the one is named whose slip
/// is the likeliest account of all the rest: the statement itself, if another format agrees with everything that was seen.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/evidence/infer.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The format of its own field, else that of the formula.
inline std::optional<Format> stated_format(Description const& book) {
  if (book.format) return book.format->value;
  return book.formula ? book.formula->value.format() : std::nullopt;
}

/// A description and the findings about its format.
class FormatFindings {
  // argued, no source: how often chain lines, a mark, a size, a sign of the leaf and a number of leaves are stated wrongly
  static constexpr double chain_lines_wrong = .02, mark_wrong = .02, size_wrong = .02, sign_wrong = .02,
                          gatherings_wrong = .01;

protected:
  static constexpr double format_wrong = .03;        // argued, no source: how often a format is stated wrongly
  static constexpr double slip = 3, look_again = .5; // odds of a slip for a doubt, and for a note
  Description const& book_;
  Audit& audit_;

  FormatFindings(Description const& book, Audit& audit) : book_{book}, audit_{audit} {}
  void add(FindingId id, Severity level, FieldSet fields, std::string says, std::optional<std::string> settle,
           std::optional<Field> doubted = {}) {
    audit_.findings.push_back({id,
                               level,
                               fields,
                               {},
                               static_cast<std::string&&>(says),
                               static_cast<std::optional<std::string>&&>(settle),
                               {},
                               doubted});
  }
  static FormatCandidate const* candidate_of(Inference const& inference, int leaves) {
    for (auto const& one : inference)
      if (one.format.leaves_to_sheet() == leaves) return &one;
    return nullptr;
  }
  static double probability(Inference const& inference, int leaves) {
    constexpr double least = 1e-9;
    auto const* one = candidate_of(inference, leaves);
    return one != nullptr && one->probability > least ? one->probability : least;
  }
  /// The field that states the format.
  [[nodiscard]] FieldSet statement() const { return FieldSet{book_.format ? Field::format : Field::formula}; }
  [[nodiscard]] Field named(Field wrong) const {
    return wrong == Field::format && !book_.format ? Field::formula : wrong;
  }

  /// True if somebody described an edge.
  [[nodiscard]] static bool shows_edges(LeafEvidence const& seen) {
    return seen.head != EdgeSeen::unknown || seen.tail != EdgeSeen::unknown || seen.fore_edge != EdgeSeen::unknown;
  }
  /// All fields that describe an edge.
  [[nodiscard]] FieldSet stated_edges() const {
    FieldSet edges;
    if (book_.head_edge) edges = edges | Field::head_edge;
    if (book_.tail_edge) edges = edges | Field::tail_edge;
    if (book_.fore_edge) edges = edges | Field::fore_edge;
    return edges;
  }

  /// The field that is likelier wrong, where `best` agrees with all that was seen: the statement, or one without which
  /// the statement would be likely.
  [[nodiscard]] Field doubted(Format stated, LeafEvidence const& seen, FormatCandidate const& best) const {
    auto const leaves = *stated.leaves_to_sheet();
    auto field = Field::format;
    auto most = format_wrong * best.probability;
    auto const without = [&](bool is_seen, Field one, double wrong, void (*forget)(LeafEvidence&)) {
      if (!is_seen) return;
      auto rest = seen;
      forget(rest);
      auto const observation = observe(rest);
      if (!observation) return;
      auto const weight = wrong * probability(infer_format(*observation), leaves);
      if (weight > most) most = weight, field = one;
    };
    without(seen.chain_lines != ChainLines::unknown, Field::chain_lines, chain_lines_wrong,
            [](LeafEvidence& rest) { rest.chain_lines = ChainLines::unknown; });
    without(seen.watermark != MarkPlace::unknown, Field::watermark, mark_wrong,
            [](LeafEvidence& rest) { rest.watermark = MarkPlace::unknown; });
    without(seen.countermark != MarkPlace::unknown, Field::countermark, mark_wrong,
            [](LeafEvidence& rest) { rest.countermark = MarkPlace::unknown; });
    without(shows_edges(seen),
            book_.head_edge   ? Field::head_edge
            : book_.tail_edge ? Field::tail_edge
                              : Field::fore_edge,
            sign_wrong, [](LeafEvidence& rest) { rest.head = rest.tail = rest.fore_edge = EdgeSeen::unknown; });
    without(seen.point_hole != HolePlace::unknown, Field::point_hole, sign_wrong,
            [](LeafEvidence& rest) { rest.point_hole = HolePlace::unknown; });
    without(seen.leaves[0].leaf != 0, Field::leaves_seen, sign_wrong, [](LeafEvidence& rest) { rest.leaves = {}; });
    without(seen.height || seen.width, book_.height ? Field::height : Field::width, size_wrong,
            [](LeafEvidence& rest) { rest.height = rest.width = std::nullopt, rest.rounded_up_to = millimetres{0.0}; });
    without(seen.gathering_leaves.has_value(), book_.gatherings ? Field::gatherings : Field::formula, gatherings_wrong,
            [](LeafEvidence& rest) { rest.gathering_leaves = std::nullopt, rest.leaves = {}; });
    return field;
  }
  /// How it is said.
  [[nodiscard]] static std::string likelier_wrong(Field field, Format stated, Format best) {
    auto const wrong = [](char const* what, Format agrees) {
      return "; " + std::string{what} + " more likely wrong, since " + std::string{agrees.symbol().view()} +
             " agrees with the rest";
    };
    switch (field) {
    case Field::format:
      return wrong("the format is", best);
    case Field::chain_lines:
      return wrong("the chain lines are", stated);
    case Field::watermark:
      return wrong("the place of the watermark is", stated);
    case Field::countermark:
      return wrong("the place of the countermark is", stated);
    case Field::head_edge:
    case Field::tail_edge:
    case Field::fore_edge:
      return wrong("what is said of the edges is", stated);
    case Field::point_hole:
      return wrong("the place of the point-hole is", stated);
    case Field::leaves_seen:
      return wrong("what is said of several leaves is", stated);
    case Field::height:
    case Field::width:
      return wrong("the size is", stated);
    default:
      return wrong("the gatherings are", stated);
    }
  }
  /// The kind of evidence that tells most against a format.
  [[nodiscard]] static EvidenceKind strongest_against(FormatCandidate const& here) {
    auto const* least = &here.reasons.front();
    for (auto const& one : here.reasons)
      if (one.seen && one.weight < least->weight) least = &one;
    return least->kind;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
