// SPDX-License-Identifier: MIT
/// Writes the answer of an inference as a record needs it: the format, how sure it is, and how its sheets were printed. The
/// verdict uses a word of a fixed scale and the probability, since a word alone says more to one reader than to another.
#pragma once

#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/leaf_origin.hpp>
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

/// Says how the sheets were printed, given the format, if they were not simply whole sheets of single paper: "on double paper
/// (0.93)", "on machine-made paper, whose chain lines follow the web (0.98)", "by half-sheets (0.97)", "by half-sheets or two
/// gatherings to the sheet, which one leaf does not tell (0.99)", "on sheets cut in two beforehand, as quarto (0.60)"; commas
/// separate several. The text is empty if none of these is likelier than not. The function allocates memory.
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

/// Whether the verdict names one format, and so how its sheets were printed.
inline bool names_one_format(Inference const& inference) {
  auto const certainty = inference.certainty;
  return !inference.mixed && inference.none_of_these < 0.5 && certainty != Certainty::not_determined &&
         certainty != Certainty::one_of_two;
}

} // namespace detail

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

} // namespace v0
} // namespace bifolium
