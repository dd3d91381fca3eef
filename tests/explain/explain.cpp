// SPDX-License-Identifier: MIT
// Explanations of a count and of a ranking, checked as facts: the parts said of a formula add up to the leaves that the
// catalogue states; what is said of a leaf is what the manuals say of that format.
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/explain/explain_ranking.hpp>

#include "check.hpp"
#include "data.hpp"

#include <sstream>
#include <string>

using namespace bifolium;

namespace {

bool says(std::string const& text, std::string_view words) { return text.find(words) != std::string::npos; }

/// Adds up what the lines say at their ends, as a reader would.
std::int64_t added_up(std::string const& text) {
  std::istringstream lines{text};
  std::int64_t sum = 0;
  for (std::string line; std::getline(lines, line);) {
    auto const colon = line.rfind(": ");
    if (colon == std::string::npos) continue; // the sum itself
    std::istringstream part{line.substr(colon + 2)};
    std::int64_t number{};
    std::string word;
    if (part >> number >> word) sum += word == "fewer." ? -number : number;
  }
  return sum;
}

} // namespace

TEST_CASE("the parts of a formula, as explained, add up to the leaves the catalogue states") {
  // Catalogue of Books printed in the XVth century now in the British Museum: formula and leaves, see the file.
  int rows = 0;
  for (auto const& row : data::rows("bmc_formulas.tsv", 4)) {
    auto const formula = read_formula(row[2], dialects::bmc);
    if (!formula) continue;
    CAPTURE(row[2]);
    auto const text = explain_count(*formula);
    CHECK(added_up(text) == std::stoll(row[3]));
    CHECK(says(text, "Together " + row[3] + (row[3] == "1" ? " leaf" : " leaves")));
    ++rows;
  }
  CHECK(rows > 400);
  rows = 0;
  for (auto const& row : data::rows("collation_examples.tsv", 7)) { // worked examples with changes, see the file
    if (row[1] != "published" || row[2] != "leaves" || row[3] != "error") continue;
    auto const formula = read_formula(row[5], dialects::bmc);
    if (!formula) continue;
    CAPTURE(row[5]);
    CHECK(added_up(explain_count(*formula)) == std::stoll(row[4]));
    ++rows;
  }
  CHECK(rows > 20);
}

TEST_CASE("what was done to leaves is explained one by one") {
  auto const formula = read_formula("8°: π² A–K⁸ L⁴ (−L4, ±B3, A2+χ1.2)", dialects::bmc); // constructed
  REQUIRE(formula);
  CHECK(explain_count(*formula) == "π, 1 gathering of 2: 2 leaves.\n"
                                   "A to K, 10 gatherings of 8: 80 leaves.\n"
                                   "L, 1 gathering of 4: 4 leaves.\n"
                                   "L4 is not in the ideal copy: 1 fewer.\n"
                                   "B3 is a cancel, printed anew in the place of the old: the number of leaves stays.\n"
                                   "χ is inserted after A2: 2 more.\n"
                                   "Together 87 leaves, 174 pages.\n");
}

TEST_CASE("the parts of a formula and doubtful changes are explained as such") { // constructed
  CHECK(explain_count(*read_formula("Vol. I: A–B⁸; vol. II: A–C⁸ (−C7, −C8?)")) ==
        "Vol. I, 16 leaves in all.\n"
        "A to B, 2 gatherings of 8: 16 leaves.\n"
        "vol. II, 22 leaves in all.\n"
        "A to C, 3 gatherings of 8: 24 leaves.\n"
        "C7 is not in the ideal copy: 1 fewer.\n"
        "C8 is not in the ideal copy: 1 fewer, which is doubtful.\n"
        "Together 38 leaves, 76 pages.\n");
}

TEST_CASE("each kind of change is explained with its verb") { // constructed
  auto const told = [](char const* formula) {
    auto const text = explain_count(*read_formula(formula));
    return text.substr(text.find('\n') + 1); // without the line of the run A-B
  };
  CHECK(explain_count(*read_formula("12°: A-C⁸/⁴ (−A)")) == "A to C, 3 gatherings of 8 and 4 by turns: 20 leaves.\n"
                                                            "Gathering A is not in the ideal copy: 8 fewer.\n"
                                                            "Together 12 leaves, 24 pages.\n");
  CHECK(told("8°: A-B⁸ (−A3-5)") == "A3 to 5 are not in the ideal copy: 3 fewer.\nTogether 13 leaves, 26 pages.\n");
  CHECK(told("8°: A-B⁸ (±A3-5)") == "A3 to 5 are cancels, printed anew in the place of the old: the number of leaves "
                                    "stays.\nTogether 16 leaves, 32 pages.\n");
  CHECK(told("8°: A-B⁸ (±A)") == "Gathering A is a cancel, printed anew in the place of the old: the number of leaves "
                                 "stays.\nTogether 16 leaves, 32 pages.\n");
  CHECK(told("8°: A-B⁸ (A4+1?)") == "Inserted after A4: 1 more, which is doubtful.\nTogether 17 leaves, 34 pages.\n");
  CHECK(told("8°: A-B⁸ (A8+χ⁴(−χ4))") ==
        "χ is inserted after A8: 3 more, since it lacks 1 of 4.\nTogether 19 leaves, 38 pages.\n");
  // what is the same paper, and a note, add nothing
  CHECK(told("8°: A-B⁸ [=A3]") == "Together 16 leaves, 32 pages.\n");
  CHECK(told("8°: A-B⁸ (A1 blank)") == "Together 16 leaves, 32 pages.\n");
  CHECK(explain_count(*read_formula("A1")) == "A, 1 gathering of 1: 1 leaf.\nTogether 1 leaf, 2 pages.\n");
}

TEST_CASE("a ranking says what speaks for the first, what parts it from the next, and where to look") {
  // A quarto has horizontal chain lines and its mark in the gutter, an octavo vertical ones and the mark at the head of the
  // gutter (Roberts & Etherington, Bookbinding and the Conservation of Books, 1982, s.v. chain lines; common practice).
  LeafEvidence const quarto{.height = 187_mm, .width = 132_mm, .year = 1492};
  auto const size_only = explain_ranking(infer_format(*observe(quarto)));
  CHECK(says(size_only, "First: quarto ("));
  CHECK(says(size_only, "For quarto: size"));
  CHECK(says(size_only, "Look next at: chain lines; quarto has chain lines horizontal, octavo chain lines vertical."));
  auto with_chains = quarto;
  with_chains.chain_lines = ChainLines::horizontal;
  auto const sure = explain_ranking(infer_format(*observe(with_chains)));
  CHECK(says(sure, "For quarto: "));
  CHECK(says(sure, "Against it: no evidence that counts."));
  CHECK(says(sure, "chain lines horizontal, the mark in the gutter."));
  CHECK(says(sure, "What separates it from octavo most: chain lines; octavo would have chain lines vertical."));

  // Constructed: a folio by its size, with the chain lines of a quarto. What was seen must not be passed over.
  LeafEvidence const odd{.height = 420_mm, .width = 290_mm, .chain_lines = ChainLines::horizontal, .year = 1480};
  auto const ranking = infer_format(*observe(odd));
  auto const told = explain_ranking(ranking);
  auto const against = ranking.candidates[0].reason(EvidenceKind::chain_lines).weight;
  CHECK(says(told, "Against it: chain lines") == (against < -weight_that_counts));
}

TEST_CASE("where no evidence was seen, that is said") {
  auto const told = explain_ranking(infer_format(*observe({})));
  CHECK(says(told, ": only how common it was.\n"));
  CHECK(says(told, "No evidence separates it from "));
}
