// SPDX-License-Identifier: MIT
// The figures set by hand, against a second copy with its sources, and against copies and counts from outside where
// there are any.
#include <bifolium/evidence.hpp>

#include "check.hpp"
#include "data.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace bifolium;

namespace {

std::map<std::string, double> figures() {
  auto const& p = usual_parameters;
  std::map<std::string, double> all{{"cropped_unsaid", p.cropped_unsaid},
                                    {"loss_of_halving", p.loss_of_halving},
                                    {"vellum_variance", p.vellum_variance},
                                    {"boards", p.boards.count()},
                                    {"type_of_uncut", p.type_of_uncut},
                                    {"type_variance", p.type_variance},
                                    {"chain_slip", p.chain_slip},
                                    {"mark_in_place", p.mark_in_place},
                                    {"mark_in_place_1794", p.mark_in_place_1794},
                                    {"paper_is_marked", p.paper_is_marked},
                                    {"second_mark_early", p.second_mark_early},
                                    {"second_mark_late", p.second_mark_late},
                                    {"pattern_right", p.pattern_right},
                                    {"leaf_slip", p.leaf_slip},
                                    {"edge_right", p.edge_right},
                                    {"tranchefile_visible single", p.tranchefile_visible[0]},
                                    {"tranchefile_visible double", p.tranchefile_visible[1]},
                                    {"holes_visible", p.holes_visible},
                                    {"odd_gathering", p.odd_gathering},
                                    {"odder_gathering", p.odder_gathering},
                                    {"cut_halves", p.cut_halves},
                                    {"mixed_formats", p.mixed_formats},
                                    {"chance both_sides", p.chance.both_sides},
                                    {"chance one_side", p.chance.one_side},
                                    {"chance chain_lines", p.chance.chain_lines},
                                    {"chance no_mark", p.chance.no_mark},
                                    {"chance gathering", p.chance.gathering},
                                    {"chance type_page", p.chance.type_page},
                                    {"chance edge", p.chance.edge},
                                    {"chance tranchefile", p.chance.tranchefile},
                                    {"chance point_hole", p.chance.point_hole},
                                    {"none_of_these", usual_priors.none_of_these}};
  for (auto const& state : words_of<LeafState>()) {
    if (state.value == LeafState::unknown) continue;
    auto const& loss = p.loss_of_state[static_cast<std::size_t>(state.value)];
    all[std::string{state.word} + " larger"] = loss.larger;
    all[std::string{state.word} + " tail"] = loss.tail;
  }
  constexpr char const* shapes[]{"usual", "oblong", "agenda", "broad", "longer"};
  for (std::size_t s = 1; s < 5; ++s) all[std::string{"shape "} + shapes[s]] = usual_priors.shapes[s];
  return all;
}
/// Part of the format of so many leaves in a set of counts.
double counted_share(std::string const& set, int leaves) {
  double all = 0, here = 0;
  for (auto const& row : data::rows("format_shares.tsv", 3)) {
    if (row[0] != set) continue;
    all += std::stod(row[2]);
    if (std::stoi(row[1]) == leaves) here = std::stod(row[2]);
  }
  REQUIRE(here > 0);
  return here / all;
}

} // namespace

TEST_CASE("every figure set by hand is that of the second copy") {
  auto const all = figures();
  std::size_t seen = 0;
  for (auto const& row : data::rows("evidence_parameters.tsv", 3)) {
    CAPTURE(row[0]);
    auto const found = all.find(row[0]);
    REQUIRE(found != all.end());
    CHECK(found->second == doctest::Approx(std::stod(row[1])).epsilon(1e-6));
    ++seen;
  }
  CHECK(seen == all.size());
  // a leaf of which nothing is said loses as the populations have it
  CHECK(usual_parameters.loss_of_state[0].larger == 0);
  CHECK(usual_parameters.loss_of_state[0].tail == 1);
  CHECK(usual_priors.shapes[0] == 1);
}

TEST_CASE("binders took of an uncut leaf what the parameters say") {
  // tests/data/copies_cut.tsv: of duodecimos uncut and cut, the mean of the logarithm
  double lost = 0, most = 0;
  int copies = 0;
  for (auto const& row : data::rows("copies_cut.tsv", 4)) {
    auto const here = std::log(std::stod(row[2]) / std::stod(row[3]));
    most = std::max(most, here);
    if (row[1] == "uncut") lost += here, ++copies;
  }
  REQUIRE(copies == 10);
  auto const& p = usual_parameters;
  auto const& uncut = p.loss_of_state[static_cast<std::size_t>(LeafState::uncut)];
  auto const tail = 1 / fitted_paper_model().tail();
  auto const expected = uncut.larger + tail - tail / uncut.tail + p.loss_of_halving * (std::log2(12) - 1);
  MESSAGE("lost " << lost / copies << ", expected " << expected);
  CHECK(std::abs(lost / copies - expected) < 0.05);
  // the deepest cut of the table is still likelier than one of a hundred under what cropping is said to be
  auto const& cropped = p.loss_of_state[static_cast<std::size_t>(LeafState::cropped)];
  CHECK(std::exp(-(most + cropped.larger) * fitted_paper_model().tail() * cropped.tail) > 0.01);
}

TEST_CASE("bindings are higher than their leaves by about what the parameters say") {
  // thirteen copies of which descriptions give both (hugonnard-roche, curiosa, lamourquibouquine, livresetmanuscrits)
  constexpr int higher[]{3, 3, 4, 4, 5, 5, 5, 5, 5, 6, 6, 6, 7};
  for (int const mm : higher) CHECK(std::abs(mm - usual_parameters.boards.count()) <= 3);
}

TEST_CASE("books of two formats are as many as the catalogue has them") {
  int mixed = 0, all = 0;
  for (auto const& row : data::rows("bmc_leaf_sizes.tsv", 7)) ++all, mixed += row[1].find(' ') != row[1].npos;
  CHECK(usual_parameters.mixed_formats == doctest::Approx(static_cast<double>(mixed) / all));
}

TEST_CASE("formats of Britain in the eighteenth century lie between the two counts of them") {
  auto const& model = fitted_paper_model();
  for (int const leaves : {2, 4, 8, 12}) {
    double common = 0, here = 0;
    for (int year = 1705; year < 1800; year += 10) {
      auto const shares = model.shares(Region::britain, year);
      for (int const other : {2, 4, 8, 12}) common += shares[ranked_number(other)];
      here += shares[ranked_number(leaves)];
    }
    auto const of_all = counted_share("ESTC", leaves), of_texts = counted_share("ECCO-TCP", leaves);
    CAPTURE(leaves);
    CHECK(here / common > std::min(of_all, of_texts) - 0.02);
    CHECK(here / common < std::max(of_all, of_texts) + 0.02);
  }
}

TEST_CASE("formats of incunables are as common as all copies of the catalogue have them") {
  // the counts are of all copies; those with measured leaves taught the model, and give the years at which it is asked
  auto const& model = fitted_paper_model();
  auto const undated = model.joint(Region::anywhere, YearRange{1450, 1500});
  std::map<int, double> shares;
  double rows = 0;
  for (auto const& row : data::rows("bmc_leaf_sizes.tsv", 7)) {
    rows += 1;
    auto const of_year = row[4].empty() ? FormatShares{} : model.shares(Region::anywhere, std::stoi(row[4]));
    for (int const leaves : {2, 4, 8}) {
      auto const f = ranked_number(leaves);
      shares[leaves] += of_year[f];
      for (auto const one : undated[f]) shares[leaves] += row[4].empty() ? one : 0;
    }
  }
  for (int const leaves : {2, 4, 8}) {
    CAPTURE(leaves);
    CHECK(std::abs(shares[leaves] / rows - counted_share("BMC", leaves)) < 0.02);
  }
}

TEST_CASE("double paper is thickest where and when bibliographers met it") {
  // Povey & Foster, by way of Tanselle, Studies in Bibliography 53: late seventeenth and eighteenth century, Britain
  // and the Low Countries most; the stamp act of 1712 brought double sheets for newspapers
  for (auto const place : {Region::britain, Region::netherlands}) {
    auto const at = [&](int year) { return PaperAge::of(year, place).twofold; };
    CHECK(at(1722) > 0.09);
    CHECK(at(1722) < 0.15);
    CHECK(at(1690) > 0.04);
    CHECK(at(1755) > 0.04);
    CHECK(at(1600) < 0.02);
    CHECK(at(1480) < 0.005);
    for (int year = 1500; year < 1722; ++year) CHECK(at(year) <= at(year + 1) + 1e-12);
    CHECK(at(1722) > 2 * PaperAge::of(1722, Region::france).twofold);
  }
  CHECK(PaperAge::of(1850, Region::britain).twofold == doctest::Approx(0.45).epsilon(0.05)); // chains follow the web
  CHECK(PaperAge::of(1850, Region::britain).by_web ==
        doctest::Approx(PaperAge::of(1850, Region::britain).twofold).epsilon(0.02));
  CHECK(PaperAge::of(1780, Region::britain).by_web < 0.01); // the first patent of a machine is of 1799 (from memory)
  // the act of 1794 (34 Geo. III c. 20) is of Britain and Ireland
  CHECK(PaperAge::of(1800, Region::britain).after_1794 > 0.8);
  CHECK(PaperAge::of(1785, Region::britain).after_1794 < 0.06);
  CHECK(PaperAge::of(1800, Region::france).after_1794 == 0);
}

TEST_CASE("reasons weigh what their parameters come to") {
  // two formats alike common: what one sign says of them can be reckoned by hand
  Priors two;
  two.shares = {{{4, 1}, {8, 1}}};
  two.shapes = {1, 0, 0, 0, 0};
  auto const& p = usual_parameters;
  auto const weight = [&](LeafEvidence const& seen, EvidenceKind kind, int leaves) {
    for (auto const& one : infer_format(*observe(seen), two))
      if (one.format == Format::of(leaves)) return one.reason(kind).weight;
    FAIL("not ranked");
    return 0.0;
  };
  for (int const year : {1480, 1600, 1722, 1790}) {
    CAPTURE(year);
    auto const twofold = PaperAge::of(year, Region::britain).twofold;
    LeafEvidence seen{.chain_lines = ChainLines::horizontal, .year = year, .place = Region::britain};
    auto const across = (1 - twofold) * (1 - p.chain_slip) + twofold * p.chain_slip;
    CHECK(weight(seen, EvidenceKind::chain_lines, 4) == doctest::Approx(std::log(across / (1 - across))).epsilon(1e-9));
    CHECK(weight(seen, EvidenceKind::chain_lines, 8) == doctest::Approx(std::log((1 - across) / across)).epsilon(1e-9));
  }
  // gathered in fours and in eights in 1600: the rows of bench/paper_model/gatherings.tsv, of a hundred books
  auto const gathered = [&](int leaves, double quartos, double octavos, double folios) {
    auto const by_book = [&](double whole, double half) {
      auto const make_up = [&](double share) { return p.odd_gathering + 0.97 * share; };
      return (1 - p.cut_halves) * make_up(whole) + p.cut_halves * make_up(half);
    };
    LeafEvidence const seen{.gathering_leaves = leaves, .year = 1600};
    CHECK(weight(seen, EvidenceKind::gathering, 4) ==
          doctest::Approx(std::log(by_book(quartos, folios) / by_book(octavos, quartos))).epsilon(1e-6));
  };
  gathered(4, .60, .22, .30);
  gathered(8, .33, .74, .14);
  gathered(16, 0, .01, 0);
}
