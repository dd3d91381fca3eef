// SPDX-License-Identifier: MIT
#include <bifolium/edition/arrangement.hpp>
#include <bifolium/fold/static_fold.hpp>

#include "check.hpp"

#include <algorithm>
#include <map>
#include <tuple>

using namespace bifolium;

namespace {

SheetMakeUp of(char const* id) { return make_up(*fold(Attested::find(id)->scheme())); }

/// The fewest formes for rests of text and preliminaries, by trying everything: parts one after another, shared sheets.
/// What was tried once is remembered.
class Trial {
  SheetMakeUp by_;
  std::map<std::tuple<int, int, bool>, int> known_{};

public:
  explicit Trial(SheetMakeUp const& by) : by_{by} {}

  int formes(int text, int rest, bool may_share) {
    if (text == 0 && rest == 0) return 0;
    if (auto const found = known_.find({text, rest, may_share}); found != known_.end()) return found->second;
    int best = 1000;
    auto const n = by_.leaves_to_sheet;
    for (int part = 1; part < n; ++part) {
      bool const odd_half = part % 2 != 0 && 2 * part == n && by_.leaves() == part;
      if (n % part != 0 || (part % 2 != 0 && !odd_half)) continue;
      if (part <= text) best = std::min(best, 1 + formes(text - part, rest, false));
      if (part <= rest) best = std::min(best, 1 + formes(text, rest - part, false));
    }
    for (int shared = 2; may_share && shared < n; shared += 2)
      if (shared <= text && n - shared <= rest)
        best = std::min(best, 2 + formes(text - shared, rest - (n - shared), false));
    known_[{text, rest, may_share}] = best;
    return best;
  }
};

} // namespace

TEST_CASE("the make-up of a scheme is read off its fold") {
  STATIC_CHECK(make_up(fold<schemes::octavo>()).leaves_to_sheet == 8);
  STATIC_CHECK(make_up(fold<schemes::octavo_half_sheet>()).leaves() == 4);
  CHECK(of("12_8_plus_4").gathering_count == 2);
  CHECK(of("2_quired_8s").leaves() == 8);
  CHECK(of("2_quired_8s").leaves_to_sheet == 2);
  CHECK(of("4_quarto_in_6s").leaves() == 6); // the second copy of its half-sheet is not counted
  CHECK(of("18_half_sheet_9_transposed").leaves() == 9);
}

TEST_CASE("the twelves whose preliminaries and last gathering make one sheet") {
  // Bowers, Studies in Bibliography 1 (1948), p. 199: 12°: π⁴ A-N¹² O⁸ is fourteen sheets
  auto const plan = *arrange(of("12_common"), {.text = 2 * (13 * 12 + 8), .preliminaries = 8});
  CHECK(plan.sheets_a_copy() == 14);
  CHECK(plan.shares_a_sheet());
  CHECK(plan.shared_text == 8);
  CHECK(plan.formes() == 28);
  CHECK(plan.gatherings == 15);
  CHECK(plan.blank_pages == 0);
  auto const apart = *arrange(of("12_common"), {.text = 2 * (13 * 12 + 8), .preliminaries = 8}, false);
  CHECK(apart.sheets_a_copy() == 14);
  CHECK(apart.formes() == 26 + 3);
}

TEST_CASE("sheets of whole books that the sources state") {
  // Comedias sueltas glossary: quarto A-E⁴, 5 sheets; DCRM-L (Noble, 26 Apr 2010): folio A¹⁰, 5 sheets; DCRM-L (Lancaster, 20 Nov
  // 2012): quarto A¹⁰, two and a half; an octavo alphabet is 23 sheets, 368 pages (Bernard, Geofroy Tory, 1909)
  CHECK(arrange(of("4_quarto"), {40, 0})->sheets_a_copy() == 5);
  CHECK(arrange(of("2_folio"), {20, 0})->sheets_a_copy() == 5);
  CHECK(arrange(of("4_quarto"), {20, 0})->sheets_a_copy() == Fraction{5, 2});
  CHECK(arrange(of("8_octavo"), {368, 0})->sheets_a_copy() == 23);
}

TEST_CASE("half-sheets take half the paper, and an odd copy a sheet of its own") {
  // Moxon; Savage (1841), s.v. Half Sheet: N copies of a half-sheet take N/2 sheets
  auto const plan = *arrange(of("8_octavo"), {8, 0});
  CHECK(plan.sheets_a_copy() == Fraction{1, 2});
  CHECK(plan.formes() == 1);
  CHECK(plan.sheets_for(500) == 250);
  CHECK(plan.sheets_for(501) == 251);
  CHECK_FALSE(plan.sheets_for(INT64_MAX));
}

TEST_CASE("no way of arranging takes less paper or, at that paper, fewer formes") {
  for (auto id :
       {"1_broadside", "2_folio", "2_quired_6s", "4_quarto", "4_quarto_in_6s", "6_sexto", "8_octavo", "8_half_sheet",
        "12_common", "12_8_plus_4", "16_two_8s", "18_12_plus_6", "18_half_sheet_9_transposed", "20_half_sheet_10"}) {
    CAPTURE(id);
    auto const by = of(id);
    auto const n = by.leaves_to_sheet;
    Trial trial{by};
    for (int text = 1; text <= 4 * n; ++text)
      for (int preliminaries = 0; preliminaries <= 2 * n; preliminaries += n > 8 ? 3 : 1)
        for (bool share : {false, true}) {
          auto const plan = *arrange(by, {text, preliminaries}, share);
          CAPTURE(text);
          CAPTURE(preliminaries);
          // every page has its place, and what is blank is less than the leaf that evenness adds and its last page
          REQUIRE(plan.leaves() * 2 == text + preliminaries + plan.blank_pages);
          REQUIRE(plan.blank_pages <= 6);
          // no less paper than the leaves take
          REQUIRE(plan.sheets_a_copy() == Fraction{plan.leaves(), n});
          auto const text_rest = static_cast<int>(plan.text_leaves % n),
                     rest = static_cast<int>(plan.preliminary_leaves % n);
          auto const whole = plan.text_leaves / n + plan.preliminary_leaves / n;
          REQUIRE(plan.formes() == 2 * whole + trial.formes(text_rest, rest, share));
          // a plan's sheets for one copy after another add up to at least its paper
          REQUIRE(Fraction{*plan.sheets_for(100)} >= plan.sheets_a_copy() * Fraction{100});
        }
  }
}

TEST_CASE("plans are ranked by paper, then by formes") {
  auto const all = *plans(of("12_common"), {.text = 328, .preliminaries = 8});
  REQUIRE(all.size() == 3);
  CHECK(all[0].shares_a_sheet());
  CHECK(all[0].formes() < all[1].formes());
  CHECK(all[1].sheets_a_copy() < all[2].sheets_a_copy());
  CHECK(all[2].blank_pages == 24);
}

TEST_CASE("what cannot be arranged is an error value") {
  CHECK(arrange(of("8_octavo"), {-1, 0}).error().problem == Problem::negative_count);
  CHECK(arrange(of("8_octavo"), {0, 0}).error().problem == Problem::nothing_to_print);
  CHECK(arrange(of("8_octavo"), {INT64_MAX, 0}).error().problem == Problem::number_too_large);
}
