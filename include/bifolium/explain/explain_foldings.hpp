// SPDX-License-Identifier: MIT
/// Explains foldings found for a set of pages, and misprints found in them, in plain English. The sentences also say
/// what the pages cannot show: whether leaves that could be folded together were cut apart, how the long side of the
/// paper lay, and whether a single forme is right at all.
#pragma once

#include <bifolium/explain/hundredths.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline std::string gatherings_words(Fold<> const& fold) {
  std::string sizes;
  int gatherings = 0, first = 0;
  bool alike = true;
  for (int g = 0; g < fold.gatherings(); ++g) {
    if (fold.is_copy(g)) continue;
    auto const leaves = fold.gathering(g).leaves();
    first = ++gatherings == 1 ? leaves : first;
    alike = alike && leaves == first;
    sizes.append(sizes.empty() ? "" : ", ").append(std::to_string(leaves));
  }
  auto const leaves = alike ? number_of(first, "leaf", "leaves") : sizes + " leaves";
  auto text = gatherings == 1 ? "one gathering of " + leaves : std::to_string(gatherings) + " gatherings of " + leaves;
  return fold.copies() > 1 ? text + ", in " + std::to_string(fold.copies()) + " copies" : text;
}
inline std::string work_words(Scheme const& scheme, FoldingWork const& work) {
  std::string text = scheme.sheets() == 1 ? "" : std::to_string(scheme.sheets()) + " sheets, ";
  if (work.cuts == 0)
    text.append("not cut");
  else
    text.append(number_of(work.cuts, "cut", "cuts")).append(" into ").append(number_of(work.pieces, "piece", "pieces"));
  if (work.singles > 0)
    text.append(", ")
        .append(std::to_string(work.singles))
        .append(work.singles == 1 ? " of them a single leaf" : " of them single leaves");
  text.append(", ").append(number_of(work.folds, "fold", "folds"));
  if (work.uneven > 0) text.append(", ").append(std::to_string(work.uneven)).append(" beside the middle");
  if (work.under > 0) text.append(", ").append(std::to_string(work.under)).append(" turned underneath");
  return text;
}
inline std::string place_words(Correction const& found) {
  std::string text = "of the ";
  text.append(found.side == Side::outer ? "outer forme" : found.side == Side::inner ? "inner forme" : "forme");
  return found.sheet == 0 ? text : text.append(" of sheet ").append(std::to_string(found.sheet + 1));
}
inline std::string cell_words(int row, int column) {
  return "row " + std::to_string(row + 1) + ", column " + std::to_string(column + 1);
}
inline std::string read_number(std::optional<std::uint16_t> page) { return page ? std::to_string(*page) : "illegible"; }

} // namespace detail

/// Describes one folding in a line: its name, its acts, its result, and whether it is attested. The function allocates
/// memory.
inline std::string folding_words(FoundFolding const& found) {
  auto text = title_of(found.scheme);
  text.append(": ").append(detail::work_words(found.scheme, found.work));
  text.append("; ").append(detail::gatherings_words(*fold(found.scheme)));
  if (!found.attested) return text.append("; not attested");
  return text.append("; attested as ")
      .append(found.attested->id())
      .append(", ")
      .append(to_words(found.attested->attestation()));
}

/// Describes the simplest of the foldings found, compares it with the others, and says what the pages cannot show;
/// several lines. The function allocates memory. Precondition: `found` has at least one folding, in the order of
/// `find_foldings`.
inline std::string explain_foldings(std::span<FoundFolding const> found) {
  if (found.empty()) broken("explain_foldings needs at least one folding");
  auto const& first = found[0];
  auto text = folding_words(first) + "\n";
  if (first.scheme.reads() == Reads::right_to_left)
    text += "The book is read from right to left; or these are printed sides, the mirrors of their formes.\n";
  if (first.attested && first.work.price() > first.price)
    text += "The same sheet can be folded more simply than the attested scheme does it.\n";
  if (first.attested_turned)
    text.append("The pages do not show how the paper lay: ")
        .append(first.attested_turned->id())
        .append(" gives the same pages, with the long side the other way.\n");
  auto const others = static_cast<int>(found.size()) - 1;
  if (others == 0) return text;
  for (auto const& one : found.subspan(1))
    if (one.attested && !first.attested)
      text.append("An attested folding gives the same pages, but is not the simplest (price ")
          .append(std::to_string(one.price))
          .append(", not ")
          .append(std::to_string(first.price))
          .append("): ")
          .append(folding_words(one))
          .append("\n");
  return text.append(number_of(others, "other folding gives", "other foldings give"))
      .append(" the same pages: the pages alone do not show which leaves were cut apart.\n");
}

/// Describes one correction in a line: the pages in question, and the folding of the corrected formes. The function
/// allocates memory.
inline std::string correction_words(Correction const& found) {
  std::string text = "misprint: ";
  auto const where = detail::place_words(found);
  auto const in_brackets = [](int row, int column) { return " (" + detail::cell_words(row, column) + ")"; };
  auto const here = in_brackets(found.row, found.column);
  auto const page = "page " + detail::read_number(found.printed) + " " + where + here;
  switch (found.kind) {
  case Correction::Kind::pages_exchanged:
  case Correction::Kind::pages_and_heads_exchanged:
    text.append("pages ").append(detail::read_number(found.printed)).append(here).append(" and ");
    text.append(detail::read_number(found.right)).append(in_brackets(found.other_row, found.other_column));
    text.append(" ").append(where).append(" are exchanged");
    if (found.kind == Correction::Kind::pages_and_heads_exchanged) text.append(" with their heads");
    break;
  case Correction::Kind::number_wrong:
    text.append(page).append(" should be ").append(detail::read_number(found.right));
    break;
  case Correction::Kind::head_turned:
    text.append(page).append(" lies with its head the wrong way");
    break;
  case Correction::Kind::printed_side:
    text.append("these are printed sides, the mirrors of their formes, or the book is read the other way");
    break;
  }
  return text.append("; corrected: ").append(folding_words(found.folding));
}

/// Describes the mistakes found, the most likely first, and says what these formes alone cannot show; several lines.
/// The function allocates memory.
inline std::string explain_misprints(Misprints const& found) {
  std::string text;
  for (auto const& one : found.corrections) text.append(correction_words(one)).append("\n");
  auto const changes = number_of(found.as_simple, "single change", "single changes");
  if (!found.corrections.empty() && !found.one_stands_out())
    text.append("These corrections are equally simple: these formes do not show which one is right.\n");
  if (found.corrections.empty()) {
    if (!found.as_printed && found.cut_short)
      text = "no folding of these pages was found, and none of the likeliest single corrections gives one\n";
    else if (!found.as_printed)
      text = "the pages do not fold, and no single correction changes that\n";
    else if (found.as_simple > 0)
      text = "these formes alone do not show whether there is a misprint: " + changes +
             " would fold as simply; give both formes\n";
    else if (found.cut_short)
      text = "no misprint was found: none of the likeliest single corrections makes a simpler folding\n";
    else
      text = "no misprint is likely: no single correction makes a simpler folding\n";
  }
  if (found.cut_short)
    text.append("There are too many ways to cut and nest these pages: not every correction was tried.\n");
  if (found.as_printed) text.append("as printed: ").append(folding_words(*found.as_printed)).append("\n");
  return text;
}

namespace detail {

/// Writes a count, rounded if it is too large to be read digit by digit.
inline std::string about(double n) {
  constexpr long readable = 100000;
  if (n < readable) return std::to_string(static_cast<long>(n + 0.5));
  return "more than " + std::to_string(readable);
}
inline std::string leaf_words(int gathering, int leaf, std::size_t gatherings) {
  auto text = "leaf " + std::to_string(leaf);
  return gatherings > 1 ? text + " of gathering " + std::to_string(gathering + 1) : text;
}
inline std::string look_words(LookNext const& look, std::size_t gatherings) {
  auto leaf = leaf_words(look.gathering, look.leaf, gatherings);
  switch (look.what) {
  case LookNext::What::chain_lines:
    return "how the chain lines run in " + leaf;
  case LookNext::What::watermark:
    return "whether " + leaf + " has a watermark";
  case LookNext::What::head:
    return "the head of " + leaf + ": bolt, deckle or cut";
  case LookNext::What::tail:
    return "the tail of " + leaf + ": bolt, deckle or cut";
  case LookNext::What::fore_edge:
    return "the fore-edge of " + leaf + ": bolt, deckle or cut";
  case LookNext::What::conjugate:
    return "which leaf " + leaf + " is joined to";
  }
  return leaf;
}

} // namespace detail

/// Describes one group of foldings in a line: "8°, one sheet, not cut: 1 folding, price 30; attested as 8_octavo
/// (probability 0.93 among the attested)". The function allocates memory.
inline std::string folding_group_words(FoldingGroup const& group) {
  std::string text{group.format.symbol().view()};
  text.append(group.sheets == 1 ? ", one sheet" : ", " + std::to_string(group.sheets) + " sheets to the gathering");
  if (group.part != PaperPart::whole) text.append(", of paper cut in half before it was printed");
  text.append(group.cut ? ", cut: " : ", not cut: ");
  if (group.foldings > 0)
    text.append(detail::about(group.foldings))
        .append(group.foldings < 1.5 ? " folding" : " foldings")
        .append(", price ");
  else
    text.append("price ");
  text.append(std::to_string(group.price));
  bool first = true;
  for (auto const scheme : group.attested)
    text.append(first ? "; attested as " : ", ").append(scheme.id()), first = false;
  if (!first) text.append(" (probability ").append(hundredths(group.probability)).append(" among the attested)");
  return text;
}

/// Describes the remaining foldings, group by group in the order of the answer and at most `most` groups, the leaves that
/// may be of other paper, and what to look at next; several lines. The function allocates memory. Precondition: `gatherings` is
/// the number of gatherings in the question.
inline std::string explain_foldings_left(FoldingsLeft const& left, std::size_t gatherings, std::size_t most = 8) {
  std::string text;
  if (left.groups.empty())
    text = left.blamed.empty() ? "no folding agrees with all of this, nor with all of it but one leaf\n"
                               : "no folding agrees with all of this\n";
  for (std::size_t i = 0; i < left.groups.size() && i < most; ++i)
    text.append(folding_group_words(left.groups[i])).append("\n");
  if (left.groups.size() > most)
    text.append(number_of(static_cast<std::int64_t>(left.groups.size() - most), "group", "groups")).append(" more\n");
  for (auto const& blamed : left.blamed) {
    if (blamed.price > left.blamed[0].price) break;
    text.append(detail::leaf_words(blamed.gathering, blamed.leaf, gatherings))
        .append(left.groups.empty() ? " does not agree: without it a folding shows the rest (price "
                                    : " does not agree: without it a simpler folding shows the rest (price ")
        .append(std::to_string(blamed.price))
        .append(" with the leaf set aside); it may be of another sheet, or was misread\n");
  }
  if (left.look_next) text.append("look next at ").append(detail::look_words(*left.look_next, gatherings)).append("\n");
  return text;
}

} // namespace v0
} // namespace bifolium
