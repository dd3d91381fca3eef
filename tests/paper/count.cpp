// SPDX-License-Identifier: MIT
#include <bifolium/paper/count.hpp>

#include "check.hpp"

#include <random>

using namespace bifolium;

TEST_CASE("reams as the sources make them up") {
  // Savage, Dictionary of the Art of Printing (1841): perfect ream 21 1/2 quires of 24; perfect bundle 43 quires; a
  // ream from the mill 18 inside quires of 24 and 2 outside quires of 20, good sheets 432
  STATIC_CHECK(reams::of_516.ream * 2 == 43 * 24 && lots::perfect_bundle.sheets == 43 * 24);
  STATIC_CHECK(reams::from_mill.ream == 18 * 24 + 2 * 20 && reams::from_mill.good == 18 * 24);
  // GNU units 2.22 (definitions of 2022): quire 25, shortquire 24, ream 500, shortream 480, perfectream 516, bundle
  // 1000, bale 5000
  STATIC_CHECK(reams::of_500.ream == 500 && reams::of_500.quire == 25);
  STATIC_CHECK(reams::of_480.ream == 480 && reams::of_480.quire == 24);
  STATIC_CHECK(lots::bundle.sheets == 1000 && lots::bale.sheets == 5000);
  // Nelkenbrecher (1890), p. 368: Ballen 10 Ries
  STATIC_CHECK(lots::ballen_writing.sheets == 10 * reams::ries_writing.ream);
}

TEST_CASE("paper for the usual runs, in perfect reams") {
  // MacKellar, The American Printer (1893): 258, 516, 774, 1032 sheets for 250, 500, 750, 1000 copies
  STATIC_CHECK(counted(258, reams::of_516) == PaperCount{0, 10, 18}); // a token: 10 quires 18 sheets (Savage)
  STATIC_CHECK(counted(516, reams::of_516) == PaperCount{1, 0, 0});
  STATIC_CHECK(counted(774, reams::of_516) == PaperCount{1, 10, 18});
  STATIC_CHECK(counted(1032, reams::of_516) == PaperCount{2, 0, 0});
}

TEST_CASE("reams, quires and loose sheets add up again to the sheet") {
  std::mt19937_64 random{516};
  for (auto const* by : detail::ream_counts)
    for (int i = 0; i < 2000; ++i) {
      auto const sheets = static_cast<std::int64_t>(random() % 1'000'000'000'000);
      auto const count = counted(sheets, *by);
      REQUIRE(*sheets_in(count, *by) == sheets);
      REQUIRE(count.loose < by->quire);
      REQUIRE(count.quires * by->quire + count.loose < by->ream);
    }
  CHECK(sheets_in({INT64_MAX / 2, 0, 0}, reams::of_500).error().problem == Problem::result_too_large);
  CHECK_THROWS_AS((void)counted(-1, reams::of_500), BrokenPrecondition);
}

TEST_CASE("which reams were in use is asked, never assumed") {
  int in_london_1650 = 0;
  bool perfect = false;
  each_ream_count({1650, 1650}, Region::britain, [&](ReamCount const& count) {
    ++in_london_1650;
    perfect = perfect || count == reams::of_516;
  });
  CHECK(in_london_1650 == 2); // 480 and 500: MS. of 1682, quires of 24 for writing and 25 for printing
  CHECK_FALSE(perfect);       // 516 is English of about 1800 and after (Savage 1841, MacKellar 1893)
}

TEST_CASE("a ream from the mill is paid for whole and printed in part") {
  // Savage (1841): two of twenty quires are outsides, of twenty imperfect sheets each
  STATIC_CHECK(reams::from_mill.good == 432);
  STATIC_CHECK(reams_to_buy(432, reams::from_mill) == 1);
  STATIC_CHECK(reams_to_buy(1000, reams::from_mill) == Fraction{1000, 432});
  STATIC_CHECK(counted(472, reams::from_mill) == PaperCount{1, 0, 0});
  STATIC_CHECK(reams_to_buy(1000, ReamCount{500, 25}) == 2);
}

TEST_CASE("bundles and bales") {
  // Wikipedia, Units of paper quantity: short bundle 960, short bale 4800, printer's bale 5160
  STATIC_CHECK(lots::short_bundle.sheets == 2 * reams::of_480.ream && lots::short_bundle.sheets == 960);
  STATIC_CHECK(lots::short_bale.sheets == 10 * reams::of_480.ream && lots::short_bale.sheets == 4800);
  STATIC_CHECK(lots::printers_bale.sheets == 10 * reams::of_516.ream && lots::printers_bale.sheets == 5160);
  // sizes.com: a bale is ten reams of twenty quires of 25
  STATIC_CHECK(lots::bale.sheets == 10 * 20 * 25);
}

TEST_CASE("prices by the alphabet of 23 sheets") {
  // German Wikipedia, Alphabet (Buchdruck): 23 letters, 23 sheets, 368 pages in octavo
  STATIC_CHECK(in_alphabets(368 / 16) == AlphabetCount{1, 0});
  STATIC_CHECK(in_alphabets(48) == AlphabetCount{2, 2});
  // Goldfriedrich, Geschichte des Deutschen Buchhandels II, in Pfennig, twelve to the Groschen: sheets, price, and the
  // printed price of an alphabet, which cut the price of a sheet short and so lies up to two Pfennig below the exact
  // one
  std::int64_t const books[][3]{{48, 108, 4 * 12 + 2}, {40, 78, 3 * 12 + 7}, {17, 36, 4 * 12}};
  for (auto const& [sheets, price, printed] : books) {
    auto const exact = *price_of_alphabet(price, sheets);
    CHECK(exact >= Fraction{printed});
    CHECK(exact < Fraction{printed + 2});
  }
  CHECK(price_of_alphabet(1, 0).error().problem == Problem::not_positive);
  CHECK(price_of_alphabet(-1, 1).error().problem == Problem::negative_count);
  CHECK(price_of_alphabet(INT64_MAX, 1).error().problem == Problem::result_too_large);
}

TEST_CASE("weight of a ream and weight of the paper") {
  auto const of = [](Fraction pounds, std::int64_t sheets, Fraction inches_a, Fraction inches_b) {
    Fraction const inch{127, 5};
    return grammes_per_square_metre(pounds * grammes_in_pound, sheets, inches_a * inch, inches_b * inch)->as_double();
  };
  // GNU units 2.22: units -t '50 lbbook' gsm gives 74.007324 (25 x 38 in., ream of 500); '20 lbbond' gsm 75.194607 (17
  // x 22)
  CHECK(of(50, 500, 25, 38) == doctest::Approx(74.007324).epsilon(1e-8));
  CHECK(of(20, 500, 17, 22) == doctest::Approx(75.194607).epsilon(1e-8));
  // Tomlinson, Cyclopedia of Useful Arts (1854), pounds a ream of 480: demy 24 lb, foolscap 15 lb (weights worked out
  // from the sizes 19 1/2 x 15 1/4 and 16 1/2 x 13 1/4)
  CHECK(of(24, 480, Fraction{39, 2}, Fraction{61, 4}) == doctest::Approx(118.21).epsilon(1e-4));
  CHECK(of(15, 480, Fraction{33, 2}, Fraction{53, 4}) == doctest::Approx(100.5).epsilon(1e-3));
  CHECK(grammes_per_square_metre(1, 0, 1, 1).error().problem == Problem::not_positive);
  CHECK(grammes_per_square_metre(Fraction{INT64_MAX}, 1, Fraction{1, INT64_MAX}, 1).error().problem ==
        Problem::result_too_large);
}
