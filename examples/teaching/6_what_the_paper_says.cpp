// SPDX-License-Identifier: MIT
// Lesson 6. What the paper says. Chain lines run across the long side of the sheet, a mark sits in the middle of one of
// its halves. Every fold turns them with the leaf, so a book whose formes nobody saw still shows how it was folded.
// Hold no leaf against the light that does not want to open: look, do not force.
#include <bifolium/drawing.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/explain/explain_ranking.hpp>
#include <bifolium/fold.hpp>

#include <iostream>

using namespace bifolium;

constexpr auto first_leaf = [](auto const& folded) { return shows(folded, {0, folded.gathering(0).leaf(1)}); };
static_assert(first_leaf(fold<schemes::folio>()).chain_lines == ChainLines::vertical);
static_assert(first_leaf(fold<schemes::quarto>()).chain_lines == ChainLines::horizontal);
static_assert(first_leaf(fold<schemes::octavo>()).chain_lines == ChainLines::vertical);
static_assert(first_leaf(fold<schemes::duodecimo>()).chain_lines == ChainLines::horizontal);

int main() {
  for (auto const attested : {schemes::folio, schemes::quarto, schemes::octavo, schemes::duodecimo}) {
    auto const folded = *fold(attested.scheme());
    std::cout << folded.format() << ": chain lines "
              << (first_leaf(folded).chain_lines == ChainLines::vertical ? "vertical" : "horizontal");
    for (auto lie : {Lie::as_given, Lie::end_for_end}) {
      std::cout << (lie == Lie::as_given ? "; mark in leaves" : ", or with the sheet turned in");
      for (int k = 1; k <= folded.leaves(); ++k)
        if (shows(folded, {0, folded.gathering(0).leaf(k)}).watermark_lying(lie)) std::cout << ' ' << k;
    }
    std::cout << '\n';
  }
  // Wrong on purpose: a folio on half-sheets of larger paper has the shape of a folio and the chain lines of a quarto.
  constexpr Scheme cut_paper = written(R"(scheme folio_on_cut_paper 2°
sheet S rows 1 columns 2 half long-side far-near
fold S right-over-left 1
gathering A S
)");
  auto const cut = *fold(cut_paper);
  bool const level = first_leaf(cut).chain_lines == ChainLines::horizontal;
  std::cout << "\nA folio on paper cut in two: chain lines " << (level ? "horizontal" : "vertical")
            << ".\nBy the pages in the forme it is " << format_of(cut, FormatReading::pages_per_forme_side)
            << ", by the part of the sheet of paper " << format_of(cut, FormatReading::paper_fraction) << ".\n";

  // Backwards: from the leaf to the sheet. Size alone cannot part a quarto from an octavo on larger paper; the chain lines do.
  auto const seen = observe({.height = 187_mm, .width = 132_mm, .chain_lines = ChainLines::horizontal, .year = 1492});
  std::cout << "\nA leaf of 187 x 132 mm, 1492, chain lines horizontal:\n" << explain_ranking(infer_format(*seen));
}
