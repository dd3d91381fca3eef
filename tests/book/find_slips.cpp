// SPDX-License-Identifier: MIT
// One slip is put into each of many sound descriptions, and the true description must be found again. The rows are
// those of
// tests/data; half of their weights were counted on the same rows, so these are bars against getting worse, not
// measurements.
#include "slips.hpp"

#include <algorithm>

using namespace book;

namespace {

struct Tally {
  int cases{}, first{}, in_three{}, noticed{}, sure{}, sure_and_right{};
};
constexpr char const* formula_kinds[]{"formula exponent",     "formula end_letter",    "formula gathering_missing",
                                      "formula last_missing", "formula first_missing", "formula gathering_twice"};
constexpr char const* page_kinds[]{
    "pages transposed",         "pages dropped",         "pages doubled", "pages substituted",
    "pages unnumbered_missing", "pages unnumbered_value"};
constexpr char const* leaf_kinds[]{"leaves transposed",  "leaves dropped",          "leaves doubled",
                                   "leaves substituted", "leaves pages_for_leaves", "leaves blank_not_counted"};

/// The formula written out in one way, so that slips can be put into its words.
std::optional<Texts> written_out(Sound const& row, bool with_leaves) {
  auto const formula = read_formula(row.texts.formula, {row.omitted, {}, true});
  if (!formula || !formula->changes().empty()) return std::nullopt;
  Texts texts{write_signatures(*formula), row.texts.pagination, row.texts.leaves};
  if (with_leaves && texts.leaves.empty()) texts.leaves = std::to_string(formula->leaves());
  auto const audit = examined(texts);
  if (!audit.agrees()) return std::nullopt;
  return texts;
}
void measure(std::vector<Texts> const& rows, std::string const& kind, Slips& slips, Tally& tally) {
  int made = 0;
  for (int tried = 0; tried < 120 && made < 24; ++tried) {
    auto const& sound = slips.any_of(rows);
    auto slipped = sound;
    if (!slips.put(kind, slipped)) continue;
    auto const truth = counts_of(sound), seen = counts_of(slipped);
    if (!truth || !seen || *truth == *seen) continue;
    auto const audit = examined(slipped);
    if (audit.agrees() && audit.repairs.empty()) continue; // still agrees to the page: nobody could see it
    ++made;
    auto const place = place_of_truth(audit, slipped, *truth);
    ++tally.cases;
    tally.first += place && *place == 0 ? 1 : 0;
    tally.in_three += place && *place < 3 ? 1 : 0;
    tally.noticed += !audit.findings.empty() ? 1 : 0;
    if (!audit.repairs.empty() && audit.repairs[0].share >= .8) {
      ++tally.sure;
      tally.sure_and_right += place && *place == 0 ? 1 : 0;
    }
  }
  CHECK_MESSAGE(made > 0, kind << " was never put into a description");
}
template <std::size_t N>
void measure_all(std::vector<Texts> const& rows, char const* const (&kinds)[N], Slips& slips, Tally& tally) {
  for (auto const* kind : kinds) measure(rows, kind, slips, tally);
}

void check(std::string const& name, Tally const& tally, int first, int in_three) {
  MESSAGE(name << ": " << tally.cases << " slips, the truth first in " << percent(tally.first, tally.cases)
               << " %, among three in " << percent(tally.in_three, tally.cases) << " %; of " << tally.sure
               << " said to be very likely " << percent(tally.sure_and_right, tally.sure) << " % right");
  CHECK(tally.cases > 80);
  CHECK(percent(tally.first, tally.cases) >= first);
  CHECK(percent(tally.in_three, tally.cases) >= in_three);
  CHECK(percent(tally.sure_and_right, tally.sure) >= 85);
  CHECK(tally.noticed == tally.cases);
}

} // namespace

TEST_CASE("one slip is found again") {
  std::vector<Texts> pages, three, several, leaves;
  for (auto const& row : sound_with_pages()) {
    if (auto const texts = written_out(row, false)) pages.push_back(*texts);
    if (auto const texts = written_out(row, true)) {
      three.push_back(*texts);
      if (texts->pagination.find(',') != std::string::npos && texts->formula.find(' ') != std::string::npos)
        several.push_back(*texts);
    }
  }
  for (auto const& row : sound_with_leaves())
    if (auto const texts = written_out(row, true)) leaves.push_back(*texts);
  REQUIRE(pages.size() > 300);
  REQUIRE(several.size() > 15);
  Slips slips{20260601};
  Tally with_pages, with_three, with_several, with_leaves;
  measure_all(pages, formula_kinds, slips, with_pages), measure_all(pages, page_kinds, slips, with_pages);
  for (auto* tally : {&with_three, &with_several}) {
    auto const& rows = tally == &with_three ? three : several;
    measure_all(rows, formula_kinds, slips, *tally), measure_all(rows, page_kinds, slips, *tally);
    measure_all(rows, leaf_kinds, slips, *tally);
  }
  measure_all(leaves, formula_kinds, slips, with_leaves), measure_all(leaves, leaf_kinds, slips, with_leaves);
  check("formula and pagination", with_pages, 80, 91);
  check("formula, pagination and leaves", with_three, 88, 93);
  check("the same, several runs of pages", with_several, 78, 90);
  check("formula and leaves, before 1501", with_leaves, 83, 95);
}

TEST_CASE("two slips are found again, in one field or in two") {
  struct Set {
    std::string name;
    bool pages;
    int in_three;
  };
  Slips slips{20260603};
  for (auto const& set :
       {Set{"formula, pagination and leaves", true, 75}, {"formula and leaves, before 1501", false, 60}}) {
    std::vector<Texts> rows;
    for (auto const& row : set.pages ? sound_with_pages() : sound_with_leaves())
      if (auto const texts = written_out(row, true)) rows.push_back(*texts);
    std::vector<std::string> kinds(std::begin(formula_kinds), std::end(formula_kinds));
    kinds.insert(kinds.end(), std::begin(leaf_kinds), std::end(leaf_kinds));
    if (set.pages) kinds.insert(kinds.end(), std::begin(page_kinds), std::end(page_kinds));
    Tally tally;
    for (int round = 0; round < 4000 && tally.cases < 300; ++round) {
      auto const &one = slips.any_of(kinds), &other = slips.any_of(kinds);
      auto const& sound = slips.any_of(rows);
      auto slipped = sound;
      if (one == other || !slips.put(one, slipped) || !slips.put(other, slipped)) continue;
      auto const truth = counts_of(sound), seen = counts_of(slipped);
      if (!truth || !seen || *truth == *seen) continue;
      auto const audit = examined(slipped);
      if (audit.agrees() && audit.repairs.empty()) continue; // nobody could see it
      auto const place = place_of_truth(audit, slipped, *truth);
      ++tally.cases;
      tally.first += place && *place == 0 ? 1 : 0;
      tally.in_three += place && *place < 3 ? 1 : 0;
      tally.noticed += !audit.findings.empty() ? 1 : 0;
    }
    MESSAGE(set.name << ": " << tally.cases << " pairs of slips, the truth first in "
                     << percent(tally.first, tally.cases) << " %, among three in "
                     << percent(tally.in_three, tally.cases) << " %, noticed " << percent(tally.noticed, tally.cases)
                     << " %");
    CHECK(tally.cases >= 200);
    CHECK(percent(tally.in_three, tally.cases) >= set.in_three);
    CHECK(percent(tally.noticed, tally.cases) >= 97);
  }
}

TEST_CASE("two slips of one run, and both ends of a formula lost") { // constructed
  auto const texts_after = [](Texts const& texts) {
    std::vector<std::string> all;
    for (auto const& repair : examined(texts).repairs) all.push_back(repair.formula.value_or(texts.formula));
    return all;
  };
  auto const among_three = [&](Texts const& texts, std::string const& truth) {
    auto const all = texts_after(texts);
    for (std::size_t i = 0; i < all.size() && i < 3; ++i)
      if (all[i] == truth) return true;
    return false;
  };
  // a leaf count and a letter of one run do not add up: 6 gatherings of 4 are 5 of 8 in truth
  CHECK(among_three({"a-f⁴", "", "40"}, "a-e⁸"));
  CHECK(among_three({"a-f^4", "", "40"}, "a-e^8"));
  CHECK(among_three({"A-E4, F2", "", "42"}, "A-E8, F2"));
  // only the main sequence is given
  CHECK(among_three({"B-K⁴", "[4], 76 p.", "40"}, "A² B-K⁴ L²"));
  // the preliminary pages say which of the two numbers is wrong: [2] are the leaves of A
  CHECK(examined({"A² B-U⁸", "[2], 142 leaves", "154"}).repairs[0].pagination == "[2], 152 leaves");
}

TEST_CASE("repairs of several parts are edits of the whole texts, after which all parts agree") {
  std::vector<Texts> rows;
  for (auto const& row : sound_with_pages())
    if (auto const texts = written_out(row, false); texts && texts->pagination.ends_with(" p.")) rows.push_back(*texts);
  Slips slips{8};
  int repairs = 0, first = 0, cases = 0;
  for (int round = 0; round < 120; ++round) {
    auto one = slips.any_of(rows), other = slips.any_of(rows);
    auto const joined = [](Texts const& a, Texts const& b) {
      return Texts{a.formula + "; " + b.formula, a.pagination.substr(0, a.pagination.size() - 3) + "; " + b.pagination,
                   ""};
    };
    auto const sound = joined(one, other);
    if (!examined(sound).agrees() || !slips.put("pages transposed", one) || !slips.put("pages transposed", other))
      continue;
    auto const slipped = joined(one, other);
    auto const audit = examined(slipped);
    ++cases;
    CHECK(!audit.findings.empty());
    for (auto const& repair : audit.repairs) {
      ++repairs;
      CAPTURE(slipped.formula);
      CAPTURE(slipped.pagination);
      CAPTURE(repair.says);
      Texts const after{repair.formula.value_or(slipped.formula), repair.pagination.value_or(slipped.pagination), ""};
      CHECK(after.pagination == edited(slipped.pagination, Field::pagination, repair.edits));
      auto const counts = counts_of(after);
      REQUIRE(counts);
      CHECK(counts->leaves == repair.leaves);
    }
    first += !audit.repairs.empty() && audit.repairs[0].pagination == sound.pagination ? 1 : 0;
  }
  MESSAGE(cases << " books in two parts with a slip in each, both right first in " << percent(first, cases) << " %");
  CHECK(cases > 50);
  CHECK(repairs > 100);
  CHECK(percent(first, cases) >= 60);
}

TEST_CASE("every repair is an edit of the text, and reads back to what it says") {
  std::vector<Texts> rows;
  for (auto const& row : sound_with_pages())
    if (auto const texts = written_out(row, true)) rows.push_back(*texts);
  Slips slips{7};
  int repairs = 0;
  for (int round = 0; round < 400; ++round) {
    auto texts = slips.any_of(rows);
    for (auto const* kind :
         {formula_kinds[static_cast<std::size_t>(round) % 6], page_kinds[static_cast<std::size_t>(round / 6) % 6]})
      static_cast<void>(slips.put(kind, texts));
    auto const audit = examined(texts);
    double shares = audit.share_none;
    CHECK((audit.repairs.empty() || audit.repairs.size() <= 10));
    for (auto const& repair : audit.repairs) {
      ++repairs;
      shares += repair.share;
      CAPTURE(texts.formula);
      CAPTURE(texts.pagination);
      CAPTURE(repair.says);
      auto after = texts;
      for (auto field : {Field::formula, Field::pagination, Field::leaves}) {
        auto& text = field == Field::formula      ? after.formula
                     : field == Field::pagination ? after.pagination
                                                  : after.leaves;
        // from the last edit to the first, so that places stay what they are
        std::vector<Edit> edits;
        for (auto const& edit : repair.edits)
          if (edit.field == field) edits.push_back(edit);
        std::sort(edits.begin(), edits.end(),
                  [](Edit const& a, Edit const& b) { return a.from != b.from ? a.from > b.from : a.to > b.to; });
        for (auto const& edit : edits) {
          CHECK(text.substr(edit.from, edit.to - edit.from) == edit.old);
          text.replace(edit.from, edit.to - edit.from, edit.put);
        }
      }
      CHECK(after.formula == repair.formula.value_or(texts.formula));
      CHECK(after.pagination == repair.pagination.value_or(texts.pagination));
      CHECK(after.leaves == repair.leaves_text.value_or(texts.leaves));
      auto const counts = counts_of(after, repair.letters.value_or(Letters{}));
      REQUIRE(counts);
      CHECK(counts->leaves == repair.leaves);
      CHECK(counts->stated == repair.leaves);
    }
    if (!audit.repairs.empty()) CHECK(shares == doctest::Approx(1.0).epsilon(1e-6));
  }
  CHECK(repairs > 500);
}
