// SPDX-License-Identifier: MIT
/// Writes an answer as a cataloguer needs it: first a line for the record (explain/verdict.hpp), then the reasons
/// (explain/reason_words.hpp), then what is inferred and assumed, and what would change the answer.
#pragma once

#include <bifolium/explain/reason_words.hpp>
#include <bifolium/explain/verdict.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {

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
