// SPDX-License-Identifier: MIT
/// Writes an answer as a cataloguer needs it: first a line for the record, then the reasons, then what would change the
/// answer. Evidence is given as a reason only if it counts (a factor of three to one or more). The verdict uses a word
/// of a fixed scale and the probability.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/leaf_origin.hpp>
#include <bifolium/evidence/words.hpp>
#include <bifolium/explain/hundredths.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Returns the word of the scale: "not determined", "one of two", "probable", "very probable", "established".
constexpr char const* to_words(Certainty certainty) noexcept {
  switch (certainty) {
  case Certainty::not_determined:
    return "not determined";
  case Certainty::one_of_two:
    return "one of two";
  case Certainty::probable:
    return "probable";
  case Certainty::very_probable:
    return "very probable";
  case Certainty::established:
    return "established";
  }
  return "";
}

namespace detail {

/// The weight from which evidence speaks strongly: the natural logarithm of twenty to one.
inline constexpr double strong_weight = 2.995732273553991;

inline void append_list(std::string& text, std::string_view word, std::string_view last) {
  if (!text.empty()) text.append(last);
  text.append(word);
}
inline std::string rounded(millimetres length) { return std::to_string(static_cast<int>(length.count() + 0.5)); }
inline std::string sides(Sheet<millimetres> sheet) {
  return rounded(sheet.short_side()).append(" x ").append(rounded(sheet.long_side())).append(" mm");
}

/// Lists the places of a single mark of the sheet in leaves of this kind.
inline std::string mark_places(LeafShape const& kind) {
  std::string places;
  for (auto const& one : bifolium::words_of<MarkPlace>())
    if (one.value != MarkPlace::absent && one.value != MarkPlace::unknown && kind.mark(one.value) > 0.001)
      append_list(places, one.word, " or ");
  return places;
}
/// Lists the numbers of leaves in the gatherings of schemes of this kind.
inline std::string gatherings_made(LeafShape const& kind) {
  std::string sizes;
  for (unsigned k = 1; k < 32; ++k)
    if ((kind.gatherings >> k & 1U) != 0) append_list(sizes, std::to_string(k), ", ");
  return sizes;
}
/// Writes the format with its probability: "quarto (0.98)".
inline std::string with_probability(FormatCandidate const& candidate) {
  return std::string{candidate.format.name()}.append(" (").append(hundredths(candidate.probability)).append(")");
}
/// Writes the format that the leaves have on uncut paper. By its number of leaves it is half of the candidate's.
inline std::string uncut_format(FormatCandidate const& candidate) {
  auto const leaves = candidate.kind->leaves / 2;
  return std::string{Format::of(leaves > 0 ? leaves : 1).name()};
}

} // namespace detail

/// Describes the evidence of one kind that the format of a candidate predicts, in a few words: "horizontal", "gutter,
/// in 50 leaves of a hundred". The function allocates memory.
inline std::string predicted(FormatCandidate const& candidate, EvidenceKind of) {
  auto const& kind = *candidate.kind;
  auto const share = [](double part) { return std::to_string(static_cast<int>(part * 100 + 0.5)); };
  std::string text;
  switch (of) {
  case EvidenceKind::size:
    text.append(detail::rounded(candidate.uncut.height)).append(" x ").append(detail::rounded(candidate.uncut.width));
    return text.append(" mm uncut");
  case EvidenceKind::chain_lines:
    return text.append(to_words(kind.chain_lines));
  case EvidenceKind::watermark:
    text.append(detail::mark_places(kind)).append(", in ").append(share(1 - kind.mark(MarkPlace::absent)));
    return text.append(" leaves of a hundred");
  case EvidenceKind::gathering:
    text.append(detail::gatherings_made(kind));
    return text.append(text == "1" ? " leaf" : " leaves").append(" by its schemes");
  case EvidenceKind::type_page:
    text.append("about ").append(detail::rounded(candidate.uncut.height * real::exp(usual_parameters.type_of_uncut)));
    return text.append(" mm");
  case EvidenceKind::year:
    return text;
  default: // whatever else a leaf shows follows from the fold
    return text.append("as ").append(candidate.scheme.id()).append(" folds");
  }
}

/// Returns the reasons for which there is evidence, for or against, the strongest first. The function allocates memory.
inline std::vector<Reason> reasons_by_strength(FormatCandidate const& candidate) {
  std::vector<Reason> seen;
  for (auto const& reason : candidate.reasons) {
    if (!reason.seen || reason.kind == EvidenceKind::year) continue;
    auto at = seen.end();
    while (at != seen.begin() && real::abs((at - 1)->weight) < real::abs(reason.weight)) --at;
    seen.insert(at, reason);
  }
  return seen;
}
/// Describes a reason by its weight against all other formats: "for it, strongly" from twenty to one, "for it" from three to
/// one, otherwise "of little weight".
constexpr std::string_view to_words(Reason const& reason) {
  auto const strength = real::abs(reason.weight);
  if (strength < weight_that_counts) return "of little weight";
  if (reason.weight > 0) return strength < detail::strong_weight ? "for it" : "for it, strongly";
  return strength < detail::strong_weight ? "against it" : "against it, strongly";
}

/// Says how the sheets were printed, given the format, if they were not simply whole sheets of single paper: "on double paper
/// (0.93)", "on machine-made paper, whose chain lines follow the web (0.98)", "by half-sheets (0.97)", "by half-sheets or two gatherings to the sheet, which one leaf does not tell (0.99)", "on sheets cut
/// in two beforehand, as quarto (0.60)"; commas separate several. The text
/// is empty if none of these is likelier than not. The function allocates memory.
inline std::string printing_words(FormatCandidate const& candidate) {
  std::string text;
  auto const add = [&](std::string_view words, double probability) {
    text.append(text.empty() ? "" : ", ").append(words).append(" (").append(hundredths(probability)).append(")");
  };
  if (candidate.origin() == PaperOrigin::turned_mould) add("on double paper", candidate.twofold);
  if (candidate.origin() == PaperOrigin::machine_web)
    add("on machine-made paper, whose chain lines follow the web", candidate.by_web);
  if (candidate.origin() == PaperOrigin::cut_half)
    add("on sheets cut in two beforehand, as " + detail::uncut_format(candidate), candidate.cut_half);
  if (candidate.by_half_sheets()) add("by half-sheets", candidate.half_sheets);
  if (candidate.half_sheets_or_two())
    add("by half-sheets or two gatherings to the sheet, which one leaf does not tell",
        candidate.half_sheets + candidate.two_to_sheet());
  return text;
}

namespace detail {

/// Describes a reason. What weighs little against all formats may still decide between the first two, where other evidence
/// has excluded the rest: "for it rather than octavo".
inline std::string reason_words(Reason const& reason, Inference const& inference) {
  std::string text{to_words(reason)};
  if (inference.candidates.size() < 2 || real::abs(reason.weight) >= weight_that_counts) return text;
  auto const& second = inference.candidates[1];
  auto const favour = reason.weight - second.reason(reason.kind).weight;
  if (real::abs(favour) < weight_that_counts) return text;
  std::string const next{second.format.name()};
  return favour > 0 ? "for it rather than " + next : "for " + next + " rather than it";
}

/// Says of a leaf that is too narrow for the formats with schemes what it may be: long narrow books, such as books of
/// accounts, are known as folios and quartos (Roberts & Etherington s.v. agenda; STCV, whose rules take the shape of a
/// cheque-book for a folio), but no printer's manual with their formes was seen. The sheets and chain lines follow from the
/// folds.
inline std::string narrow_words(LeafSize<millimetres> const& leaf) {
  constexpr double narrow = 2.2;
  if (!(leaf.width.count() > 0) || leaf.height.count() < narrow * leaf.width.count()) return "";
  auto const sheet_of = [&](double across) { return sides(Sheet<millimetres>{leaf.height, leaf.width * across}); };
  bool const wider = leaf.width.count() * 4 > leaf.height.count();
  return "so narrow a leaf may be a folio folded lengthwise (a sheet of " + sheet_of(2) +
         " or more, chain lines horizontal) or a narrow quarto folded twice that way (a sheet of " + sheet_of(4) +
         " or more, chain lines " + (wider ? "vertical" : "horizontal") + "); ";
}
/// Lists the reasons, but says nothing of how the sheets were printed.
inline std::string reasons_of(Inference const& inference) {
  auto const& first = inference.front();
  std::string text;
  if (inference.mixed) text.append("chain lines run both ways, which no single format gives on one paper");
  for (auto const& reason : reasons_by_strength(first)) {
    if (inference.mixed && reason.kind == EvidenceKind::chain_lines) continue;
    text.append(text.empty() ? "" : "; ").append(to_words(reason.kind)).append(" ");
    text.append(reason_words(reason, inference));
  }
  if (text.empty()) text = "no evidence: only how common each format was";
  if (inference.none_of_these >= 0.5)
    text.insert(0, "no known format fits: check the measures; " + narrow_words(first.leaf) + "among those known, ");
  if (inference.own_priors) text.append("; with your shares of formats");
  if (inference.own_books) text.append("; with the paper of your books");
  if (first.stock) text.append("; your paper '").append(*first.stock).append("' explains it best");
  if (inference.small_by_size_alone) text.append("; size alone cannot distinguish formats of more than twelve leaves");
  return text;
}
/// Whether the verdict names one format, and so how its sheets were printed.
inline bool names_one_format(Inference const& inference) {
  auto const certainty = inference.certainty;
  return !inference.mixed && inference.none_of_these < 0.5 && certainty != Certainty::not_determined &&
         certainty != Certainty::one_of_two;
}

} // namespace detail

/// Lists the reasons: each kind of evidence for or against the first candidate, the strongest first. If chain lines run
/// both ways, both directions are named. If no known format fits, that is said first. How the sheets were printed, given
/// that format, is last. The function allocates memory.
inline std::string why(Inference const& inference) {
  auto text = detail::reasons_of(inference);
  if (auto const printed = printing_words(inference.front()); !printed.empty())
    text.append("; if it is, printed ").append(printed);
  return text;
}

/// Writes the formats of the answer as a record states them: "4°", "2° and 4°". The function allocates memory.
inline std::string format_statement(Inference const& inference) {
  std::string text;
  auto const add = [&](FormatCandidate const& candidate) { text.append(candidate.format.symbol().view()); };
  if (!inference.mixed) return add(inference.front()), text;
  auto const &vertical = inference.mixed->vertical, &horizontal = inference.mixed->horizontal;
  bool const vertical_first = vertical.format.leaves_to_sheet() < horizontal.format.leaves_to_sheet();
  add(vertical_first ? vertical : horizontal);
  text.append(" and ");
  add(vertical_first ? horizontal : vertical);
  return text;
}

/// Writes the verdict in a line without a full stop: "octavo, very probable (0.98), if it is, printed by half-sheets (0.97);
/// next quarto (0.02)". The first probability is that of the format, however it was printed. The function allocates memory.
inline std::string verdict(Inference const& inference) {
  using detail::with_probability;
  auto const& first = inference.front();
  auto const& second = inference.candidates.size() > 1 ? inference.candidates[1] : first;
  std::string text;
  if (inference.mixed) {
    auto const& mixed = *inference.mixed;
    text.append(format_statement(inference)).append(", ").append(to_words(inference.certainty)).append(" (");
    text.append(hundredths(mixed.probability)).append("): ").append(mixed.vertical.format.name());
    text.append(" where the chain lines are vertical, ").append(mixed.horizontal.format.name());
    text.append(" where they are horizontal; or all of it ").append(first.format.name());
    return text.append(" in imposition, part of it on sheets cut in two");
  }
  if (inference.none_of_these >= 0.5)
    return text.append("format not determined: no known format fits (")
        .append(hundredths(inference.none_of_these))
        .append(")");
  switch (inference.certainty) {
  case Certainty::not_determined:
    text.append("format not determined: ").append(with_probability(first)).append(" or ");
    return text.append(with_probability(second));
  case Certainty::one_of_two:
    text.append(with_probability(first)).append(" or ").append(with_probability(second));
    return text.append(first.probability - second.probability < 0.1 ? ", about even" : "");
  default:
    text.append(first.format.name()).append(", ").append(to_words(inference.certainty)).append(" (");
    text.append(hundredths(first.probability)).append(")");
    if (auto const printed = printing_words(first); !printed.empty())
      text.append(", if it is, printed ").append(printed);
    return text.append("; next ").append(with_probability(second));
  }
}

/// Describes the paper of a candidate: "a sheet like chancery, 305 x 436 mm". `years` and `place` are used to find the
/// name. The function allocates memory.
inline std::string paper_words(FormatCandidate const& candidate, std::optional<YearRange> years = {},
                               Region place = Region::anywhere) {
  if (candidate.stock)
    return std::string{"your paper '"}.append(*candidate.stock).append("', ").append(detail::sides(candidate.sheet));
  auto const like = named_like(candidate, years, place);
  std::string text{"a sheet "};
  if (like) {
    std::string_view const names{like->name};
    text.append("like ").append(names.substr(0, names.find(" / "))).append(", ");
  }
  text.append("of about ").append(detail::sides(candidate.sheet));
  if (candidate.origin() == PaperOrigin::turned_mould)
    text.append(", from a double mould or a double sheet cut in two: its chain lines are turned");
  if (candidate.origin() == PaperOrigin::machine_web)
    text.append(", cut from the web of a machine: its chain lines follow the web");
  return text;
}

/// Writes the answer in several lines: the verdict, the evidence, what is inferred, what is assumed, and what to look
/// at next. `years` and `place` are used to find the name of the sheet. The function allocates memory.
inline std::string cataloguer_words(Inference const& inference, std::optional<YearRange> years = {},
                                    Region place = Region::anywhere) {
  auto const& first = inference.front();
  std::string text = verdict(inference);
  text[0] = capital_letter(text[0]);
  text.append(".\nSeen: ").append(detail::names_one_format(inference) ? detail::reasons_of(inference) : why(inference));
  text.append(".\n");
  if (!inference.mixed && inference.candidates.size() > 1 && !reasons_by_strength(first).empty()) {
    auto const& second = inference.candidates[1];
    std::string expected;
    for (auto const& reason : reasons_by_strength(first)) {
      expected.append(expected.empty() ? "Expected: " : "; ").append(to_words(reason.kind)).append(" ");
      expected.append(predicted(first, reason.kind)).append(" (in ").append(second.format.name()).append(" ");
      expected.append(predicted(second, reason.kind)).append(")");
    }
    text.append(expected).append(".\n");
  }
  bool measured = false; // otherwise the sheet would only be a common one
  for (auto const& reason : reasons_by_strength(first))
    measured = measured || reason.kind == EvidenceKind::size || reason.kind == EvidenceKind::type_page;
  if (measured && inference.none_of_these < 0.5) {
    text.append("Inferred: ").append(paper_words(first, years, place)).append("; uncut the leaf was about ");
    text.append(detail::rounded(first.uncut.height)).append(" x ").append(detail::rounded(first.uncut.width));
    text.append(" mm.\n");
  }
  text.append("Assumed: ");
  text.append(inference.own_priors ? "your own shares of formats"
              : inference.of_sample
                  ? "formats as common as in the British Museum's catalogue of incunables"
                  : "formats as common as is usual for the years and the place; nobody has counted them");
  if (inference.own_books) text.append("; the paper of your own books");
  text.append(".\n");
  if (inference.look_next) text.append("Look next at: ").append(to_words(*inference.look_next)).append(".\n");
  return text;
}

} // namespace v0
} // namespace bifolium
