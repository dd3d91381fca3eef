// SPDX-License-Identifier: MIT
// Lesson 5. Paper: chain lines and the mark.
//
// Look: hold a sheet of laid paper against the light. Chain lines, about 25 mm apart, run
//   across its long side; a watermark is in the middle of one half. Hold an old leaf against
//   the light only as far as it opens by itself: never force a binding.
// Fold: draw chain lines and a ring on a sheet (the printed sheets have them, faint) and fold
//   it as folio, quarto and octavo.
// See: every fold turns the lines with the leaf. So a book whose formes nobody saw still shows
//   how it was folded. Look at the paper in octavo.html: where is the ring in each leaf?
// Task: tasks/05_paper.cpp
#include <bifolium/fold.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto first_leaf = [](auto const& folded) {
  return shows(folded, {0, folded.gathering(0).leaf(1)});
};
// Published: Aldis, The Printed Book (1916), 'Construction of a Book', for folio, quarto and
// octavo.
static_assert(first_leaf(fold<schemes::folio>()).chain_lines == ChainLines::vertical);
static_assert(first_leaf(fold<schemes::quarto>()).chain_lines == ChainLines::horizontal);
static_assert(first_leaf(fold<schemes::octavo>()).chain_lines == ChainLines::vertical);
static_assert(first_leaf(fold<schemes::duodecimo>()).chain_lines == ChainLines::horizontal);

int main() {
  for (auto const attested :
       {schemes::folio, schemes::quarto, schemes::octavo, schemes::duodecimo}) {
    auto const folded = fold(attested.scheme()).value();
    bool const vertical = first_leaf(folded).chain_lines == ChainLines::vertical;
    std::cout << folded.format() << ": chain lines " << (vertical ? "vertical" : "horizontal");
    for (auto lie : {Lie::as_given, Lie::end_for_end}) {
      std::cout << (lie == Lie::as_given ? "; mark in leaves"
                                         : ", or with the sheet turned in");
      for (auto const leaf : folded)
        if (shows(folded, leaf).watermark_lying(lie)) std::cout << ' ' << leaf.leaf.number();
    }
    std::cout << '\n';
  }
  // Wrong on purpose: paper cut in two before it was printed has its chain lines the other way.
  constexpr Scheme cut_paper = written("scheme folio_on_cut_paper 2°\n"
                                       "sheet S rows 1 columns 2 half long-side far-near\n"
                                       "fold S right-over-left 1\n"
                                       "gathering A S\n");
  auto const cut = fold(cut_paper).value();
  bool const level = first_leaf(cut).chain_lines == ChainLines::horizontal;
  std::cout << "\nA folio on paper cut in two: chain lines "
            << (level ? "horizontal" : "vertical") << ".\nBy the pages in the forme it is "
            << format_of(cut, FormatReading::pages_per_forme_side)
            << ", by the part of the sheet of paper "
            << format_of(cut, FormatReading::paper_fraction) << ".\n";
}
