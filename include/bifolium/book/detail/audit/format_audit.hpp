// SPDX-License-Identifier: MIT
/// The format as it is stated against what the rest of the description says: the inference takes size, chain lines,
/// watermark, gatherings, date and place as evidence, and where they argue for another format, there is a finding. Statements
/// of format are seldom wrong, so what speaks against one must outweigh that.
#pragma once

#include <bifolium/book/detail/audit/format_height.hpp>
#include <bifolium/book/detail/audit/format_statements.hpp>
#include <bifolium/evidence/signs_against.hpp>
#include <bifolium/evidence/words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FormatAudit : FormatFindings {
  /// The likeliest format with other chain lines than the one stated; null where there is none.
  static FormatCandidate const* other_chain_lines(Inference const& inference, FormatCandidate const& here) {
    auto const against = here.reason(EvidenceKind::chain_lines).weight;
    for (auto const& one : inference)
      if (one.reason(EvidenceKind::chain_lines).weight > against + 1) return &one;
    return nullptr;
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

  /// What the evidence of a kind is called, where it is a sign of the leaf and no field of its own is compared above.
  struct SignKind {
    EvidenceKind kind;
    FindingId id;
    char const *what, *settle;
  };
  static constexpr SignKind sign_kinds[]{
      {EvidenceKind::edges, FindingId::format_against_edges, "edges like these are", "the edges of several leaves"},
      {EvidenceKind::point_hole, FindingId::format_against_point_hole, "a point-hole there is",
       "the point-holes of several leaves"},
      {EvidenceKind::watermark, FindingId::format_against_countermark, "a countermark there is",
       "the marks against the light, in several leaves"},
      {EvidenceKind::leaves, FindingId::format_against_leaves, "marks and chain lines like these in several leaves are",
       "the leaves of another gathering"}};
  [[nodiscard]] static SignKind const* sign_kind(EvidenceKind kind) {
    for (auto const& row : sign_kinds)
      if (row.kind == kind) return &row;
    return nullptr;
  }
  [[nodiscard]] FieldSet fields_of(EvidenceKind kind) const {
    return kind == EvidenceKind::edges        ? stated_edges()
           : kind == EvidenceKind::point_hole ? FieldSet{Field::point_hole}
           : kind == EvidenceKind::watermark  ? FieldSet{Field::countermark}
                                              : FieldSet{Field::leaves_seen};
  }
  /// Signs that no leaf of the format shows. Returns true if there is one. A watermark is told by its own finding.
  [[nodiscard]] bool signs(Format stated, Observation const& observation) {
    bool any = false;
    for (auto const& sign : signs_against(observation, stated)) {
      auto const* const row = sign_kind(sign.kind);
      if (row == nullptr || sign.field == "watermark") continue;
      add(row->id, Severity::doubt, statement() | fields_of(sign.kind), to_words(sign, stated), row->settle);
      any = true;
    }
    return any;
  }
  /// A sign that leaves of the format may have, but those of another much more often. Returns false if no sign is what tells
  /// most against the format.
  [[nodiscard]] bool sign_of_another(Format stated, LeafEvidence const& seen, FormatCandidate const& here,
                                     FormatCandidate const& best, double odds) {
    auto const kind = strongest_against(here);
    auto const* const row = sign_kind(kind);
    if (row == nullptr || kind == EvidenceKind::watermark) return false;
    auto const wrong = doubted(stated, seen, best);
    add(row->id, odds > slip ? Severity::doubt : Severity::note, statement() | fields_of(kind),
        std::string{row->what} + " more often of " + std::string{best.format.symbol().view()} + " than of " +
            std::string{stated.symbol().view()} + likelier_wrong(wrong, stated, best.format),
        row->settle, named(wrong));
    return true;
  }

  /// A statement of format is seldom wrong: what speaks against it must outweigh that. Chain lines across what the
  /// format has as a rule are told in any case.
  void weigh(Format stated, LeafEvidence const& seen, Observation const& observation, Inference const& inference) {
    if (inference.candidates.empty() || inference.mixed) return;
    against_watermark(stated, seen, inference);
    bool const sign_told = signs(stated, observation);
    auto const* here = candidate_of(inference, *stated.leaves_to_sheet());
    auto const& best = inference.candidates.front();
    auto const odds =
        here == &best ? 0 : best.probability / probability(inference, *stated.leaves_to_sheet()) * format_wrong;
    bool const across = here != nullptr && here->reason(EvidenceKind::chain_lines).seen &&
                        here->reason(EvidenceKind::chain_lines).weight < -1;
    if (auto const* other = across ? other_chain_lines(inference, *here) : nullptr)
      return against_chain_lines(stated, seen, *other,
                                 odds > slip && other == &best ? Severity::doubt : Severity::note);
    if (odds < look_again || sign_told) return;
    if (here != nullptr && sign_of_another(stated, seen, *here, best, odds)) return;
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

public:
  FormatAudit(Description const& book, Audit& audit) : FormatFindings{book, audit} {}
  void run() {
    FormatStatements{book_, audit_}.run();
    auto const stated = stated_format(book_);
    if (!stated || !stated->leaves_to_sheet() || stated->kind() != Format::Kind::leaves ||
        (book_.formula && book_.formula->value.second_format()))
      return;
    auto const seen = evidence_of(book_);
    auto const observation = observe(seen);
    FormatHeight height{book_, audit_};
    if (height.impossible_height(*stated)) {
      if (observation) static_cast<void>(signs(*stated, *observation));
      return;
    }
    // of whole centimetres alone only those that are too many or too few accuse anybody
    bool const measured = is_measured(book_.height) || is_measured(book_.width);
    bool const marked = seen.watermark != MarkPlace::unknown || seen.countermark != MarkPlace::unknown;
    bool const of_leaf = shows_edges(seen) || seen.point_hole != HolePlace::unknown || seen.leaves[0].leaf != 0;
    if (observation && (measured || marked || of_leaf || seen.chain_lines != ChainLines::unknown))
      weigh(*stated, seen, *observation, infer_format(*observation));
    if (!book_.height || is_measured(book_.height)) return;
    height.too_high_for_format(*stated, seen);
    height.too_low_for_format(*stated, seen);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
