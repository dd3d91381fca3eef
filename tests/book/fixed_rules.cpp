// SPDX-License-Identifier: MIT
// What the ranking of proposals is worth, beside a fixed list of rules as people apply it: of the single slips that
// would make the fields agree, the one whose kind comes first in the list, and of one kind the first in the text. The
// list is given the ten proposals of the library to choose from, which flatters it: by itself it would have many more.
// It comes within 15 points only where a formula and a number of leaves are all there is. And what is said of slips
// that no kind of proposal explains: they must be noticed. Where one slip explains as much as two - a gathering that
// has the leaves of two lost ones - it comes first, but is seldom called very likely: the two come after it. The rows
// are those of tests/data; the figures are printed.
#include "slips.hpp"

#include <algorithm>
#include <tuple>

using namespace book;

namespace {

constexpr char const* kinds[]{"formula exponent",
                              "formula end_letter",
                              "formula gathering_missing",
                              "formula last_missing",
                              "formula first_missing",
                              "pages transposed",
                              "pages dropped",
                              "pages doubled",
                              "pages substituted",
                              "pages unnumbered_missing",
                              "pages unnumbered_value",
                              "leaves transposed",
                              "leaves dropped",
                              "leaves substituted",
                              "leaves pages_for_leaves"};

/// The place of a kind in the list; figures before letters, what is looked for first before what is looked for last.
int place_in_list(SlipKind kind) {
  constexpr SlipKind list[]{SlipKind::blank_not_counted, SlipKind::transposed,         SlipKind::unit,
                            SlipKind::pages_for_leaves,  SlipKind::leaf_as_page,       SlipKind::plates_counted,
                            SlipKind::gathering_missing, SlipKind::end_letter,         SlipKind::exponent,
                            SlipKind::last_missing,      SlipKind::first_missing,      SlipKind::dropped,
                            SlipKind::substituted,       SlipKind::unnumbered_missing, SlipKind::omitted_exponent};
  return static_cast<int>(std::find(std::begin(list), std::end(list), kind) - std::begin(list));
}
/// The proposals of one edit, by the list.
Audit by_fixed_rules(Audit audit) {
  auto& all = audit.repairs;
  all.erase(std::remove_if(all.begin(), all.end(), [](Repair const& one) { return one.edits.size() > 1; }), all.end());
  auto const rank = [](Repair const& one) {
    return one.edits.empty() ? std::tuple{99, std::size_t{0}, std::string{}}
                             : std::tuple{place_in_list(one.edits[0].kind), one.edits[0].from, one.edits[0].put};
  };
  std::sort(all.begin(), all.end(), [&](Repair const& a, Repair const& b) { return rank(a) < rank(b); });
  return audit;
}
std::vector<Texts> sound(bool pages) {
  std::vector<Texts> rows;
  for (auto const& row : pages ? sound_with_pages() : sound_with_leaves()) {
    auto const formula = read_formula(row.texts.formula, {row.omitted, {}, true});
    if (!formula || !formula->changes().empty()) continue;
    Texts texts{write_signatures(*formula), row.texts.pagination, row.texts.leaves};
    if (texts.leaves.empty()) texts.leaves = std::to_string(formula->leaves());
    if (examined(texts).agrees()) rows.push_back(texts);
  }
  return rows;
}

} // namespace

TEST_CASE("a fixed list of rules finds fewer slips") {
  struct Set {
    std::string name;
    bool pages, leaves, several; // several runs of pages, and of gatherings
  };
  Slips slips{20260602};
  for (auto const& set :
       {Set{"formula and pagination", true, false, false}, Set{"the same with leaves, several runs", true, true, true},
        Set{"formula and leaves, before 1501", false, true, false}}) {
    auto rows = sound(set.pages);
    if (set.several)
      rows.erase(std::remove_if(rows.begin(), rows.end(),
                                [](Texts const& one) {
                                  return one.pagination.find(',') == std::string::npos ||
                                         one.formula.find(' ') == std::string::npos;
                                }),
                 rows.end());
    REQUIRE(rows.size() > 15);
    int cases = 0, ranked = 0, listed = 0;
    for (std::string const kind : kinds)
      for (int tried = 0, made = 0; tried < 80 && made < 16; ++tried) {
        if (kind.starts_with("leaves") && !set.leaves) break;
        auto texts = slips.any_of(rows);
        if (!set.leaves) texts.leaves.clear();
        auto slipped = texts;
        if (!slips.put(kind, slipped)) continue;
        auto const truth = counts_of(texts), seen = counts_of(slipped);
        if (!truth || !seen || *truth == *seen) continue;
        auto const audit = examined(slipped);
        if (audit.agrees() && audit.repairs.empty()) continue; // nobody could see it
        ++made, ++cases;
        auto const first = [&](Audit const& one) { return place_of_truth(one, slipped, *truth) == std::size_t{0}; };
        ranked += first(audit) ? 1 : 0;
        listed += first(by_fixed_rules(audit)) ? 1 : 0;
      }
    MESSAGE(set.name << ": " << cases << " slips, the truth first in " << percent(ranked, cases)
                     << " %; by a fixed list of rules in " << percent(listed, cases) << " %");
    CHECK(cases > 80);
    CHECK(percent(ranked, cases) >= percent(listed, cases) + (set.pages ? 15 : 12));
  }
}

TEST_CASE("slips of kinds that no proposal knows are noticed") {
  Slips slips{9};
  struct Unknown {
    std::string name;
    int most_sure; // in a hundred
    int cases, in_three, noticed, sure;
  };
  Unknown all[]{{"the first and the last gathering lost", 10, 0, 0, 0, 0},
                {"the pages of another book", 12, 0, 0, 0, 0},
                {"two figures wrong", 20, 0, 0, 0, 0}};
  auto const rows = sound(true);
  for (int round = 0; round < 6000; ++round) {
    auto& kind = all[round % 3];
    if (kind.cases == 100) continue;
    auto const texts = slips.any_of(rows);
    auto slipped = texts;
    bool const made =
        &kind == &all[0]   ? slips.put("formula first_missing", slipped) && slips.put("formula last_missing", slipped)
        : &kind == &all[1] ? (slipped.pagination = slips.any_of(rows).pagination, true)
                           : slips.put("pages substituted", slipped) && slips.put("pages substituted", slipped);
    auto const truth = counts_of(texts), seen = counts_of(slipped);
    if (!made || !truth || !seen || *truth == *seen) continue;
    auto const audit = examined(slipped);
    if (audit.agrees() && audit.repairs.empty()) continue;
    ++kind.cases;
    kind.noticed += audit.findings.empty() ? 0 : 1;
    auto const place = place_of_truth(audit, slipped, *truth);
    kind.in_three += place && *place < 3 ? 1 : 0;
    kind.sure += !audit.repairs.empty() && audit.repairs[0].share >= .8 && place != std::size_t{0} ? 1 : 0;
  }
  for (auto const& kind : all) {
    MESSAGE(kind.name << ": " << kind.cases << " cases, noticed " << percent(kind.noticed, kind.cases)
                      << " %, the truth among three in " << percent(kind.in_three, kind.cases)
                      << " %, wrongly said to be very likely " << percent(kind.sure, kind.cases) << " %");
    CHECK(kind.cases >= 50);
    CHECK(percent(kind.noticed, kind.cases) >= 97);
    CHECK(percent(kind.sure, kind.cases) <= kind.most_sure);
  }
}
