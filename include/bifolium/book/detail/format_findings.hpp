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
  // argued, no source: how often chain lines, a watermark, a size and a number of leaves are stated wrongly
  static constexpr double chain_lines_wrong = .02, watermark_wrong = .02, size_wrong = .02, gatherings_wrong = .01;

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

  /// The field that is likelier wrong, where `best` agrees with all that was seen: the statement, or one without which
  /// the statement would be likely.
  [[nodiscard]] Field doubted(Format stated, LeafEvidence const& seen, FormatCandidate const& best) const {
    auto const leaves = *stated.leaves_to_sheet();
    auto field = Field::format;
    auto most = format_wrong * best.probability;
    auto const without = [&](Field one, double wrong, LeafEvidence const& rest) {
      auto const observation = observe(rest);
      if (!observation) return;
      auto const weight = wrong * probability(infer_format(*observation), leaves);
      if (weight > most) most = weight, field = one;
    };
    if (seen.chain_lines != ChainLines::unknown) {
      auto rest = seen;
      rest.chain_lines = ChainLines::unknown;
      without(Field::chain_lines, chain_lines_wrong, rest);
    }
    if (seen.watermark != MarkPlace::unknown) {
      auto rest = seen;
      rest.watermark = MarkPlace::unknown;
      without(Field::watermark, watermark_wrong, rest);
    }
    if (seen.height || seen.width) {
      auto rest = seen;
      rest.height = rest.width = std::nullopt, rest.rounded_up_to = millimetres{0.0};
      without(book_.height ? Field::height : Field::width, size_wrong, rest);
    }
    if (seen.gathering_leaves) {
      auto rest = seen;
      rest.gathering_leaves = std::nullopt;
      without(book_.gatherings ? Field::gatherings : Field::formula, gatherings_wrong, rest);
    }
    return field;
  }
  /// How it is said.
  [[nodiscard]] static std::string likelier_wrong(Field field, Format stated, Format best) {
    auto const format = std::string{stated.symbol().view()};
    switch (field) {
    case Field::format:
      return "; the format is more likely wrong, since " + std::string{best.symbol().view()} + " agrees with the rest";
    case Field::chain_lines:
      return "; the chain lines are more likely wrong, since " + format + " agrees with the rest";
    case Field::watermark:
      return "; the place of the watermark is more likely wrong, since " + format + " agrees with the rest";
    case Field::height:
    case Field::width:
      return "; the size is more likely wrong, since " + format + " agrees with the rest";
    default:
      return "; the gatherings are more likely wrong, since " + format + " agrees with the rest";
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
