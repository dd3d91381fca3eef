// SPDX-License-Identifier: MIT
// An answer in words, to the letter. The answers are constructed, so that what is told can be read off them: a weight is the
// natural logarithm of odds, three to one are 1.0986 and twenty to one 2.9957; shares and lengths are rounded by hand.
#include <bifolium/explain/explain_ranking.hpp>
#include <bifolium/explain/inference_words.hpp>

#include "check.hpp"

#include <cmath>
#include <initializer_list>
#include <string>
#include <utility>

using namespace bifolium;

namespace {

bool tells(std::string const& text, std::string_view words) { return text.find(words) != std::string::npos; }

/// A quarto before an octavo, with the weights of some evidence for the first.
Inference constructed(std::initializer_list<std::pair<EvidenceKind, double>> weights) {
  auto answer = infer_format(*observe({.height = 187_mm, .width = 132_mm, .chain_lines = ChainLines::horizontal}));
  auto& all = answer.candidates;
  while (all[0].format != Format::of(4)) all.erase(all.begin());
  while (all[1].format != Format::of(8)) all.erase(all.begin() + 1);
  for (auto* one : {&all[0], &all[1]}) {
    one->twofold = one->cut_half = one->half_sheets = 0;
    one->sheet = {305.4_mm, 436.5_mm};
    one->uncut = {.height = 218.25_mm, .width = 152.7_mm};
    for (auto& reason : one->reasons) reason.seen = false, reason.weight = 0;
  }
  for (auto const& [kind, weight] : weights) {
    auto& reason = all[0].reasons[static_cast<std::size_t>(kind)];
    reason.seen = true, reason.weight = weight;
  }
  all[0].probability = .934, all[1].probability = .051;
  answer.none_of_these = .012;
  answer.certainty = Certainty::very_probable;
  answer.look_next = {};
  answer.mixed = {};
  return answer;
}

} // namespace

TEST_CASE("a reason counts from three to one and is strong from twenty to one") {
  auto const words = [](double weight) { return to_words(Reason{EvidenceKind::size, true, weight}); };
  CHECK(words(0) == "of little weight");
  CHECK(words(1.098) == "of little weight");
  CHECK(words(1.099) == "for it");
  CHECK(words(2.995) == "for it");
  CHECK(words(2.996) == "for it, strongly");
  CHECK(words(std::log(3.)) == "for it"); // from three and from twenty to one, these included
  CHECK(words(std::log(20.)) == "for it, strongly");
  CHECK(words(-std::log(3.)) == "against it");
  CHECK(words(-std::log(20.)) == "against it, strongly");
  CHECK(words(-1.098) == "of little weight");
  CHECK(words(-1.099) == "against it");
  CHECK(words(-2.995) == "against it");
  CHECK(words(-2.996) == "against it, strongly");
  // the explanation of a ranking draws the lines in the same places
  using enum EvidenceKind;
  auto const told = explain_ranking(constructed({{size, 1.098}, {chain_lines, 2.996}, {watermark, 2.995}}));
  CHECK(
      tells(told, "For quarto: chain lines (strongly), place of the watermark.\nAgainst it: no evidence that counts."));
  CHECK(tells(explain_ranking(constructed({{size, std::log(3.)}, {chain_lines, std::log(20.)}})),
              "For quarto: chain lines (strongly), size.\n"));
  auto const against = explain_ranking(constructed({{size, -1.099}, {gathering, -1.098}, {chain_lines, -2.996}}));
  CHECK(tells(against, "For quarto: no evidence that counts by itself.\nAgainst it: chain lines (strongly), size.\n"));
}

TEST_CASE("a leaf of which the chain lines decide against octavo says so, with 12mos about that have them too") {
  auto const seen = observe({.height = 215_mm, .chain_lines = ChainLines::horizontal}); // invented
  auto const answer = infer_format(*seen);
  CHECK(answer.front().format == Format::of(4));
  CHECK(why(answer).find("chain lines for it rather than octavo") != std::string::npos);
}

TEST_CASE("reasons are told the strongest first, for and against alike") {
  using enum EvidenceKind;
  auto const answer = constructed({{size, -2}, {chain_lines, 4}, {gathering, .5}, {type_page, 2.5}, {year, 9}});
  std::string order;
  for (auto const& reason : reasons_by_strength(answer.front())) order.append(identifier(reason.kind)).append(" ");
  CHECK(order == "chain_lines type_page size gathering "); // the years are an assumption and no reason
  CHECK(why(answer) == "chain lines for it, strongly; type page for it; size against it; gathering of little weight");
  CHECK(why(constructed({})) == "no evidence: only how common each format was");
  // what weighs little against all formats, but decides between the first two
  auto const parted = [&](double here, double there) {
    auto close = constructed({{size, 2}, {chain_lines, here}});
    close.candidates[1].reasons[static_cast<std::size_t>(chain_lines)].weight = there;
    return why(close);
  };
  CHECK(parted(.5, -.598) == "size for it; chain lines of little weight");
  CHECK(parted(.5, -.599) == "size for it; chain lines for it rather than octavo");
  CHECK(parted(-.5, .599) == "size for it; chain lines for octavo rather than it");
  CHECK(parted(1.099, -2) == "size for it; chain lines for it");
  CHECK(tells(explain_ranking(constructed({})), "For quarto: only how common it was.\n"));
}

TEST_CASE("what else was used is told after the reasons") {
  auto answer = constructed({{EvidenceKind::size, 2}});
  answer.own_priors = true;
  CHECK(why(answer) == "size for it; with your shares of formats");
  answer.own_books = true;
  CHECK(why(answer) == "size for it; with your shares of formats; with the paper of your books");
  CHECK(tells(cataloguer_words(answer), "\nAssumed: your own shares of formats; the paper of your own books.\n"));
  answer.own_priors = answer.own_books = false;
  answer.of_sample = false;
  CHECK(tells(cataloguer_words(answer),
              "\nAssumed: formats as common as is usual for the years and the place; nobody has "
              "counted them.\n"));
  answer.of_sample = true;
  CHECK(tells(cataloguer_words(answer), "\nAssumed: formats as common as in the British Museum's catalogue of "
                                        "incunables.\n"));
  answer.small_by_size_alone = true;
  CHECK(why(answer) == "size for it; size alone cannot distinguish formats of more than twelve leaves");
  answer.small_by_size_alone = false;
  answer.none_of_these = .5;
  CHECK(why(answer) == "no known format fits: check the measures; among those known, size for it");
  answer.none_of_these = .49;
  CHECK(why(answer) == "size for it");
  answer.candidates[0].stock = "mill 3";
  CHECK(why(answer) == "size for it; your paper 'mill 3' explains it best");
  CHECK(paper_words(answer.front()) == "your paper 'mill 3', 305 x 437 mm");
  CHECK(tells(cataloguer_words(answer), "\nInferred: your paper 'mill 3', 305 x 437 mm; uncut the leaf was about 218 x "
                                        "153 mm.\n"));
}

TEST_CASE("how the sheets were printed is told where it is likelier than not") {
  auto answer = constructed({{EvidenceKind::size, 2}});
  auto& first = answer.candidates[0];
  CHECK(printing_words(first).empty());
  first.half_sheets = .49;
  CHECK(printing_words(first).empty());
  first.half_sheets = .5;
  CHECK(printing_words(first) == "by half-sheets (0.50)");
  CHECK(verdict(answer) == "quarto, very probable (0.93), if it is, printed by half-sheets (0.50); next octavo (0.05)");
  CHECK(why(answer) == "size for it; if it is, printed by half-sheets (0.50)");
  first.twofold = .9;
  CHECK(printing_words(first) == "on double paper (0.90), by half-sheets (0.50)");
  CHECK(verdict(answer) == "quarto, very probable (0.93), if it is, printed on double paper (0.90), by half-sheets "
                           "(0.50); next octavo (0.05)");
  CHECK(paper_words(first).ends_with(", of about 305 x 437 mm, from a double mould or a double sheet cut in two: its "
                                     "chain lines are turned"));
  first.half_sheets = 0;
  first.twofold = 0;
  first.cut_half = .6; // leaves of a quarto by their paper: printed as folio on halves
  CHECK(printing_words(first) == "on sheets cut in two beforehand, as folio (0.60)");
  CHECK(verdict(answer) == "quarto, very probable (0.93), if it is, printed on sheets cut in two beforehand, as folio "
                           "(0.60); next octavo (0.05)");
  CHECK(paper_words(first).ends_with(", of about 305 x 437 mm"));
}

TEST_CASE("the verdict says how far the answer goes") {
  auto answer = constructed({{EvidenceKind::size, 2}});
  CHECK(verdict(answer) == "quarto, very probable (0.93); next octavo (0.05)");
  for (auto const& [certainty, words] : {std::pair{Certainty::probable, "probable"},
                                         {Certainty::very_probable, "very probable"},
                                         {Certainty::established, "established"}}) {
    answer.certainty = certainty;
    CHECK(verdict(answer) == std::string{"quarto, "} + words + " (0.93); next octavo (0.05)");
    CHECK(explain_ranking(answer).starts_with(std::string{"First: quarto (0.93), "} + words +
                                              "; then octavo (0.05); none of all these (0.01).\n"));
  }
  answer.certainty = Certainty::one_of_two;
  CHECK(verdict(answer) == "quarto (0.93) or octavo (0.05)");
  answer.candidates[0].probability = .5, answer.candidates[1].probability = .39;
  CHECK(verdict(answer) == "quarto (0.50) or octavo (0.39)");
  answer.candidates[1].probability = .41;
  CHECK(verdict(answer) == "quarto (0.50) or octavo (0.41), about even");
  CHECK(tells(explain_ranking(answer), "First: quarto (0.50), one of two; then octavo (0.41)"));
  answer.certainty = Certainty::not_determined;
  CHECK(verdict(answer) == "format not determined: quarto (0.50) or octavo (0.41)");
  CHECK(cataloguer_words(answer).starts_with(
      "Format not determined: quarto (0.50) or octavo (0.41).\nSeen: size for it"));
  answer.none_of_these = .49;
  CHECK(tells(verdict(answer), "quarto"));
  answer.none_of_these = .5;
  CHECK(verdict(answer) == "format not determined: no known format fits (0.50)");
  // a candidate alone is told against itself
  auto alone = constructed({});
  alone.candidates.resize(1);
  CHECK(verdict(alone) == "quarto, very probable (0.93); next quarto (0.93)");
  CHECK_FALSE(tells(cataloguer_words(alone), "Expected"));
  CHECK_THROWS(static_cast<void>(explain_ranking(alone)));
}

TEST_CASE("two formats in one book, one for each direction of the chain lines") {
  using enum EvidenceKind;
  auto answer = constructed({{chain_lines, 3}, {size, 2}});
  auto const quarto = answer.candidates[0], octavo = answer.candidates[1];
  answer.mixed = MixedFormats{.vertical = octavo, .horizontal = quarto, .probability = .876};
  CHECK(format_statement(answer) == "4° and 8°"); // fewer leaves to the sheet first
  CHECK(verdict(answer) ==
        "4° and 8°, very probable (0.88): octavo where the chain lines are vertical, quarto where they "
        "are horizontal; or all of it quarto in imposition, part of it on sheets cut in two");
  CHECK(why(answer) == "chain lines run both ways, which no single format gives on one paper; size for it");
  auto const told = cataloguer_words(answer);
  CHECK(tells(told, "4° and 8°, very probable"));
  CHECK_FALSE(tells(told, "Expected"));
  answer.mixed = MixedFormats{.vertical = quarto, .horizontal = octavo, .probability = .5};
  CHECK(format_statement(answer) == "4° and 8°");
  answer.mixed = {};
  CHECK(format_statement(answer) == "4°");
}

TEST_CASE("what a format predicts is what its leaves are known to show") {
  // One mark in a sheet: in a quarto it lies across the gutter of two of four leaves, in sixteens it shows in four of
  // sixteen, in twelves at the fore-edge of two of twelve, in eighteens in one (bibliographical manuals; counted by folding)
  auto const all = infer_format(*observe({})).candidates;
  auto const of = [&](Format format) -> FormatCandidate const& {
    for (auto const& one : all)
      if (one.format == format) return one;
    return all.front();
  };
  using enum EvidenceKind;
  CHECK(predicted(of(Format::of(1)), watermark) == "centre, in 100 leaves of a hundred");
  CHECK(predicted(of(Format::of(2)), watermark) == "centre, in 50 leaves of a hundred");
  CHECK(predicted(of(Format::of(4)), watermark) == "gutter, in 50 leaves of a hundred");
  CHECK(predicted(of(Format::of(8)), watermark) == "head-of-gutter or corner, in 50 leaves of a hundred");
  CHECK(predicted(of(Format::of(12)), watermark) == "fore-edge, in 17 leaves of a hundred");
  CHECK(predicted(of(Format::of(16)), watermark) == "corner, in 25 leaves of a hundred");
  CHECK(predicted(of(Format::of(18)), watermark) == "centre, in 6 leaves of a hundred");
  CHECK(predicted(of(Format::of(4)), chain_lines) == "horizontal");
  CHECK(predicted(of(Format::of(8)), chain_lines) == "vertical");
  CHECK(predicted(of(Format::of(1)), gathering) == "1 leaf by its schemes");
  CHECK(predicted(of(Format::of(2)), gathering) == "2, 4, 6, 8, 10 leaves by its schemes");
  CHECK(predicted(of(Format::of(18)), gathering) == "6, 9, 12, 18 leaves by its schemes");
  auto quarto = of(Format::of(4));
  quarto.uncut = {.height = 218.4_mm, .width = 152.5_mm};
  CHECK(predicted(quarto, size) == "218 x 153 mm uncut");
  CHECK(predicted(quarto, year).empty());
  // each of these is expected of the first and of the second
  auto answer = constructed({{chain_lines, 4}, {size, 2}});
  CHECK(tells(cataloguer_words(answer),
              "\nExpected: chain lines horizontal (in octavo vertical); size 218 x 153 mm uncut "
              "(in octavo 218 x 153 mm uncut).\nInferred: a sheet "));
  CHECK_FALSE(tells(cataloguer_words(answer), "Look next"));
  answer.look_next = watermark;
  CHECK(cataloguer_words(answer).ends_with("\nLook next at: place of the watermark.\n"));
}

TEST_CASE("a ranking is explained by what a leaf of each format shows") {
  using enum EvidenceKind;
  auto answer = constructed({{chain_lines, 2}, {size, 3}});
  // The place of the mark and the chain lines of each format: Roberts & Etherington 1982, s.v. chain lines; common practice
  // for the smaller formats
  std::pair<Attested, char const*> const shown[]{
      {schemes::folio, "chain lines vertical, the mark in the middle of the leaf"},
      {schemes::quarto, "chain lines horizontal, the mark in the gutter"},
      {schemes::octavo, "chain lines vertical, the mark at the head of the gutter"},
      {schemes::duodecimo, "chain lines horizontal, the mark at the fore-edge"},
      {*Attested::find("12_long_rolled"), "chain lines vertical, the mark at the head or tail"},
      {*Attested::find("16_one_gathering"), "chain lines horizontal, the mark at a corner of the fore-edge"}};
  for (auto const& [scheme, words] : shown) {
    answer.candidates[0].scheme = scheme;
    CHECK(tells(explain_ranking(answer), std::string{" mm: 218 x 153 mm, "} + words + ".\n"));
  }
  answer.candidates[0].scheme = schemes::quarto;
  answer.candidates[1].scheme = schemes::octavo;
  // what favours the first most over the second, by at least three to one: size by 3 - 2.5, chain lines by 2 + 1
  answer.candidates[1].reasons[static_cast<std::size_t>(size)].weight = 2.5;
  answer.candidates[1].reasons[static_cast<std::size_t>(chain_lines)].weight = -1;
  CHECK(tells(explain_ranking(answer), "What separates it from octavo most: chain lines; octavo would have chain lines "
                                       "vertical.\nNo further evidence would help much.\n"));
  answer.candidates[1].reasons[static_cast<std::size_t>(size)].weight = -1; // by 4
  CHECK(tells(explain_ranking(answer), "What separates it from octavo most: size.\n"));
  answer.candidates[1].reasons[static_cast<std::size_t>(size)].weight = 1.95;       // by 1.05
  answer.candidates[1].reasons[static_cast<std::size_t>(chain_lines)].weight = .95; // by 1.05
  CHECK(tells(explain_ranking(answer), "No evidence separates it from octavo.\n"));
  answer.look_next = watermark;
  CHECK(explain_ranking(answer).ends_with(
      "Look next at: place of the watermark; quarto has the mark in the gutter, octavo "
      "the mark at the head of the gutter.\n"));
  answer.look_next = type_page;
  CHECK(explain_ranking(answer).ends_with("\nLook next at: type page.\n"));
  CHECK(detail::where_words(MarkPlace::absent) == std::string_view{"in no leaf"});
}
