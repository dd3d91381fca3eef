// SPDX-License-Identifier: MIT
/// The format as it is stated against what the rest of the description says: the inference takes size, chain lines,
/// gatherings, date and place as evidence, and where they argue for another format, the field that is likelier wrong is
/// named: the statement if another format agrees with all else, or the one field without which the statement agrees.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/evidence_of.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/words.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The format of its own field, else that of the formula.
inline std::optional<Format> stated_format(Description const& book) {
  if (book.format) return book.format->value;
  return book.formula ? book.formula->value.format() : std::nullopt;
}

class FormatAudit {
  // argued, no source: how often a format, chain lines, a watermark, a size and a number of leaves are stated wrongly
  static constexpr double format_wrong = .03, chain_lines_wrong = .02, watermark_wrong = .02, size_wrong = .02,
                          gatherings_wrong = .01;
  static constexpr double slip = 3, look_again = .5; // odds of a slip for a doubt, and for a note
  Description const& book_;
  Audit& audit_;

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

  /// A statement of several formats, of which none is that of the formula.
  void several_and_another() {
    if (book_.formats.empty() || !book_.formula || book_.formula->value.second_format()) return;
    auto const of_formula = book_.formula->value.format();
    if (!of_formula || !of_formula->leaves_to_sheet()) return;
    std::string stated;
    for (auto const& one : book_.formats) {
      if (!one.leaves_to_sheet() || one.leaves_to_sheet() == of_formula->leaves_to_sheet()) return;
      stated += (stated.empty() ? "" : " and ") + std::string{one.symbol().view()};
    }
    add(FindingId::format_differs, Severity::error, FieldSet{Field::format} | Field::formula,
        "the formats are stated as " + stated + ", and in the formula as " + std::string{of_formula->symbol().view()},
        "chain lines and watermark");
  }
  /// Two statements of it.
  void two_statements() {
    if (!book_.format || !book_.formula || !book_.formula->value.format() || book_.formula->value.second_format())
      return;
    auto const stated = book_.format->value, of_formula = *book_.formula->value.format();
    if (!stated.leaves_to_sheet() || !of_formula.leaves_to_sheet() ||
        stated.leaves_to_sheet() == of_formula.leaves_to_sheet())
      return;
    std::optional<Field> doubted;
    if (auto const observation = observe(evidence_of(book_))) {
      auto const inference = infer_format(*observation);
      auto const here = probability(inference, *stated.leaves_to_sheet()),
                 there = probability(inference, *of_formula.leaves_to_sheet());
      bool const told = is_measured(book_.height) || book_.chain_lines;
      if (told && here > slip * there) doubted = Field::formula;
      if (told && there > slip * here) doubted = Field::format;
    }
    auto says = "the format is stated as " + std::string{stated.symbol().view()} + ", and in the formula as " +
                std::string{of_formula.symbol().view()};
    if (doubted)
      says += std::string{"; the rest of the description agrees with "} +
              std::string{(doubted == Field::formula ? stated : of_formula).symbol().view()};
    add(FindingId::format_differs, Severity::error, FieldSet{Field::format} | Field::formula, says,
        "chain lines and watermark", doubted);
  }

  /// The likeliest format with other chain lines than the one stated; null where there is none.
  static FormatCandidate const* other_chain_lines(Inference const& inference, FormatCandidate const& here) {
    auto const against = here.reason(EvidenceKind::chain_lines).weight;
    for (auto const& one : inference)
      if (one.reason(EvidenceKind::chain_lines).weight > against + 1) return &one;
    return nullptr;
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
  void against_chain_lines(Format stated, LeafEvidence const& seen, FormatCandidate const& best, Severity level) {
    auto const format = std::string{stated.symbol().view()};
    bool const vertical = seen.chain_lines == ChainLines::vertical;
    auto const wrong = doubted(stated, seen, best);
    add(FindingId::format_against_chain_lines, level, statement() | Field::chain_lines,
        format + " has its chain lines " + (vertical ? "horizontal" : "vertical") +
            " as a rule, but they are stated to be " + (vertical ? "vertical" : "horizontal") + "; " +
            std::string{best.format.symbol().view()} + " would agree" + likelier_wrong(wrong, stated, best.format),
        "the chain lines against the light, and where the watermark is", named(wrong));
  }
  /// The usual places of the watermark in leaves of a kind, in words.
  [[nodiscard]] static std::string places_of_mark(LeafShape const& kind) {
    constexpr double usual = 0.02;
    std::string places;
    for (auto const& one : bifolium::words_of<MarkPlace>())
      if (one.value != MarkPlace::absent && one.value != MarkPlace::unknown && kind.mark(one.value) > usual)
        places += (places.empty() ? "" : " or ") + std::string{where_words(one.value)};
    return places;
  }
  /// Whether a leaf of some scheme of a format has its watermark there.
  [[nodiscard]] static bool has_mark(int leaves, MarkPlace place) {
    for (auto const& kind : leaf_shapes())
      if (kind.leaves == leaves && kind.mark(place) > 0) return true;
    return false;
  }
  /// A watermark where no scheme of the format puts it. Marks near the edge, marks in the centre of the sheet and British
  /// moulds after 1794 are known, so that where the place is little reliable nothing is told.
  void against_watermark(Format stated, LeafEvidence const& seen, Inference const& inference) {
    auto const leaves = *stated.leaves_to_sheet();
    auto const* const here = candidate_of(inference, leaves);
    auto const place = seen.watermark;
    if (here == nullptr || place == MarkPlace::unknown || place == MarkPlace::absent || has_mark(leaves, place)) return;
    auto const weight = here->reason(EvidenceKind::watermark).weight;
    if (weight > -weight_that_counts) return;
    FormatCandidate const* other = nullptr;
    for (auto const& one : inference)
      if (other == nullptr && has_mark(one.kind->leaves, place)) other = &one;
    auto const format = std::string{stated.symbol().view()};
    auto says = "the watermark of " + format + " is " + places_of_mark(*here->kind) +
                " as a rule, but it is stated to be " + where_words(place);
    auto wrong = Field::watermark;
    if (other != nullptr && other->probability > 0.001) {
      wrong = doubted(stated, seen, *other);
      says += "; " + std::string{other->format.symbol().view()} + " would agree" +
              likelier_wrong(wrong, stated, other->format);
    }
    constexpr double strong = 2.995732273553991; // twenty to one
    add(FindingId::format_against_watermark, weight < -strong ? Severity::doubt : Severity::note,
        statement() | Field::watermark, says, "the watermark against the light, in several leaves", named(wrong));
  }
  /// The field that states the format.
  [[nodiscard]] FieldSet statement() const { return FieldSet{book_.format ? Field::format : Field::formula}; }
  [[nodiscard]] Field named(Field wrong) const {
    return wrong == Field::format && !book_.format ? Field::formula : wrong;
  }

  /// A statement of format is seldom wrong: what speaks against it must outweigh that. Chain lines across what the
  /// format has as a rule are told in any case.
  void weigh(Format stated, LeafEvidence const& seen, Inference const& inference) {
    if (inference.candidates.empty() || inference.mixed) return;
    against_watermark(stated, seen, inference);
    auto const* here = candidate_of(inference, *stated.leaves_to_sheet());
    auto const& best = inference.candidates.front();
    auto const odds =
        here == &best ? 0 : best.probability / probability(inference, *stated.leaves_to_sheet()) * format_wrong;
    bool const across = here != nullptr && here->reason(EvidenceKind::chain_lines).seen &&
                        here->reason(EvidenceKind::chain_lines).weight < -1;
    if (auto const* other = across ? other_chain_lines(inference, *here) : nullptr)
      return against_chain_lines(stated, seen, *other,
                                 odds > slip && other == &best ? Severity::doubt : Severity::note);
    if (odds < look_again) return;
    bool const size =
        here == nullptr || here->reason(EvidenceKind::size).weight < here->reason(EvidenceKind::gathering).weight;
    if (size && !is_measured(book_.height) && !is_measured(book_.width)) return; // of the binding as often as not
    // of size and gatherings alone nobody can tell: trimming and quiring explain nearly all
    auto const against = std::string{best.format.symbol().view()}, format = std::string{stated.symbol().view()};
    auto const wrong = doubted(stated, seen, best);
    auto const why = likelier_wrong(wrong, stated, best.format);
    if (size)
      add(FindingId::format_against_size, Severity::note, statement() | Field::height | Field::width,
          "a leaf of this size is more often " + against + " than " + format + why,
          "chain lines and watermark; size alone does not decide the format", named(wrong));
    else
      add(FindingId::format_against_gatherings, Severity::note,
          statement() | (book_.gatherings ? Field::gatherings : Field::formula),
          "gatherings of this size are more often " + against + " than " + format + why, "chain lines and watermark",
          named(wrong));
  }

  /// A height that was not measured to the millimetre is of the binding as often as of the leaf, and accuses a format only
  /// where the leaf is too high even without a cover: 38 cm of a duodecimo, which may be a folio or 18 cm. The leaf is
  /// taken as low as such a height allows; of its width nothing is asked.
  void too_high_for_format(Format stated, LeafEvidence seen) {
    auto const leaf = book_.height->value.above - (book_.binding ? 0 : SizeStatement::most_of_binding);
    if (leaf <= 0) return;
    seen.height = millimetres{leaf}, seen.width = std::nullopt;
    seen.rounded_up_to = millimetres{0.0}, seen.of = MeasureOf::leaf;
    auto const observation = observe(seen);
    if (!observation) return;
    auto const inference = infer_format(*observation);
    if (inference.candidates.empty() || inference.mixed) return;
    auto const& best = inference.candidates.front();
    auto const* const here = candidate_of(inference, *stated.leaves_to_sheet());
    auto const odds = best.probability / probability(inference, *stated.leaves_to_sheet()) * format_wrong;
    if (odds < look_again || best.kind->leaves >= *stated.leaves_to_sheet()) return;
    auto const size = here == nullptr ? EvidenceKind::size : strongest_against(*here);
    if (size != EvidenceKind::size) return;
    auto const wrong = doubted(stated, seen, best);
    add(FindingId::format_against_size, Severity::note, statement() | Field::height,
        "the height is stated as '" + book_.height->text +
            "'; a leaf so high, even if the cover was measured, is more often " +
            std::string{best.format.symbol().view()} + " than " + std::string{stated.symbol().view()} +
            likelier_wrong(wrong, stated, best.format),
        "the format and the height: one of the two is probably a slip", named(wrong));
  }
  /// The kind of evidence that tells most against a format.
  [[nodiscard]] static EvidenceKind strongest_against(FormatCandidate const& here) {
    auto const* least = &here.reasons.front();
    for (auto const& one : here.reasons)
      if (one.seen && one.weight < least->weight) least = &one;
    return least->kind;
  }

  /// Adds a finding if no leaf of the format can be so high. The largest sheet of the tables before 1801, divided, gives the
  /// area of a leaf, and a leaf is not three times as high as broad. A height may be that of a binding. The other bound is
  /// below every leaf that was measured in tests/data (2° 140, 4° 113, 8° 92 mm). A leaf may have been cropped, so that it is
  /// only a doubt.
  [[nodiscard]] bool impossible_height(Format stated) {
    constexpr int last_of_hand_made_paper = 1800; // soon after it machines make paper of any length; estimated
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

public:
  FormatAudit(Description const& book, Audit& audit) : book_{book}, audit_{audit} {}
  void run() {
    two_statements();
    several_and_another();
    auto const stated = stated_format(book_);
    if (!stated || !stated->leaves_to_sheet() || stated->kind() != Format::Kind::leaves ||
        (book_.formula && book_.formula->value.second_format()))
      return;
    if (impossible_height(*stated)) return;
    auto const seen = evidence_of(book_);
    // of whole centimetres alone only those that are too many accuse anybody
    bool const measured = is_measured(book_.height) || is_measured(book_.width);
    if (measured || seen.chain_lines != ChainLines::unknown || seen.watermark != MarkPlace::unknown)
      if (auto const observation = observe(seen)) weigh(*stated, seen, infer_format(*observation));
    if (book_.height && !is_measured(book_.height)) too_high_for_format(*stated, seen);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
