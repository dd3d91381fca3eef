// SPDX-License-Identifier: MIT
#include <bifolium/paper/sheet_size_sources.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include "check.hpp"

#include <iterator>
#include <ostream>
#include <string>

using namespace bifolium;

namespace {
/// The row of one source that has a name; broken when there is none.
constexpr SheetSize const& row(SheetSource source, std::string_view name) {
  for (auto const& size : all_sheet_sizes())
    if (size.source == source && is_called(size, name)) return size;
  broken("no such row");
}
} // namespace

TEST_CASE("grand aigle is 988.05 x 669.98 mm") {
  // Encyclopédie, vol. 11: 36 pouces 6 lignes x 24 pouces 9 lignes; millimetres by GNU units (frenchinch)
  auto const& grand_aigle = row(SheetSource::encyclopedie_1765, "grand aigle");
  CHECK(grand_aigle.long_side().count() == doctest::Approx(988.05313).epsilon(1e-7));
  CHECK(grand_aigle.short_side().count() == doctest::Approx(669.98123).epsilon(1e-7));
  CHECK(grand_aigle.sheet() == Sheet{36.5_pouces, 24.75_pouces});
}

TEST_CASE("an inch is not a pouce and neither is 24 mm") {
  // Cockerell (1901): royal 25 x 20 in; the Polish list has it as 60 x 48 cm
  auto const& royal = row(SheetSource::cockerell_1901, "royal");
  auto const& trap = row(SheetSource::polish_lexicon, "royal");
  CHECK(royal.sheet() == Sheet{508_mm, 635_mm});
  CHECK(trap.short_side() / royal.short_side() == doctest::Approx(24 / 25.4));
  CHECK(trap.long_side() / royal.long_side() == doctest::Approx(24 / 25.4));
  CHECK(Sheet{20_pouces, 25_pouces}.short_side() - royal.short_side() > 33_mm);
  for (auto const& size : find_sheets({})) CHECK(size.trust != Trust::unit_trap);
  CHECK(all_sheet_sizes().count() - find_sheets({}).count() == 8);
}

TEST_CASE("doubles are exact where the trade kept them exact") {
  auto const cockerell = [](char const* name) { return row(SheetSource::cockerell_1901, name).sheet(); };
  auto const american = [](char const* name) { return row(SheetSource::scientific_1854, name).sheet(); };
  CHECK(cockerell("crown").doubled() == cockerell("double crown"));
  CHECK(cockerell("foolscap").doubled() == cockerell("double foolscap"));
  CHECK(american("medium").doubled() == american("double medium"));
  CHECK(american("imperial").doubled() == american("double medium imperial"));
  // and the published exceptions
  CHECK(cockerell("post").doubled() != cockerell("double post")); // 31 x 19 1/4 against 31 1/2 x 19 1/2
  CHECK(row(SheetSource::tomlinson_1854, "elephant").sheet().doubled() !=
        row(SheetSource::tomlinson_1854, "double elephant").sheet());
  CHECK(american("royal and half").short_side() == 25_in);
  CHECK(american("royal and half").long_side() == 29_in); // one and a half would be 30
  CHECK(american("medium and half").long_side() / american("medium").short_side() == doctest::Approx(1.5));
}

TEST_CASE("printing paper is larger than writing paper of the same name") {
  // Tomlinson (1854) against Cockerell (1901)
  for (char const* name : {"foolscap", "demy", "medium", "royal", "imperial", "post"}) {
    CAPTURE(name);
    CHECK(row(SheetSource::cockerell_1901, name).long_side() > row(SheetSource::tomlinson_1854, name).long_side());
  }
}

TEST_CASE("before 1501 only chancery, median, royal and imperial speak") {
  auto const early = usable_for({1450, 1500}, Region::italy);
  CHECK(early.count() == 4); // the means of Needham (1988)
  for (auto const& size : early) {
    CHECK(is_early_size(size));
    CHECK(size.trust == Trust::published);
  }
  for (auto const& size : usable_for({1450, 1500}, Region::britain)) CHECK(is_early_size(size));
  CHECK(usable_for({1450, 1500}, Region::britain).count() == 6);
  CHECK(usable_for({1380, 1400}, Region::italy).count() == 14);
  CHECK(usable_for({1450, 1500}, Region::usa).empty());
}

TEST_CASE("browns and drawing papers are not printed on") {
  for (auto const& size : usable_for({1850, 1914}, Region::britain)) {
    CHECK(size.use != PaperUse::wrapping);
    CHECK(size.use != PaperUse::writing_drawing);
  }
  CHECK(find_sheets({.use = PaperUse::wrapping}).count() == 11); // Dawe (1914)
}

TEST_CASE("a name is found whatever its case, accents and hyphens, and alone fixes no size") {
  STATIC_CHECK(find_sheets({.name = "JESUS"}).count() == find_sheets({.name = "jésus"}).count());
  STATIC_CHECK(find_sheets({.name = "jésus"}).count() == 2);
  STATIC_CHECK(find_sheets({.name = "super-royal"}).count() == find_sheets({.name = "Super Royal"}).count());
  CHECK(find_sheets({.name = "royal"}).count() > 8);
  CHECK(find_sheets({.name = "royal", .years = {1901, 1901}, .region = Region::britain, .use = PaperUse::printing})
            .count() > 1);
  CHECK(find_sheets({.name = "roya"}).empty());
  CHECK(find_sheets({.name = std::string(96, 'x')}).empty()); // longer than is kept, and than any name
  CHECK(find_sheets({.name = std::string(4096, ' ')}).empty());
  auto const passing = find_sheets({.name = std::string{"a name in a string of its own, jésus"}.substr(31)});
  CHECK(passing.count() == 2); // the text is gone, the look-up keeps it
  CHECK(find_sheets({.name = "royal", .memory = false}).count() < find_sheets({.name = "royal"}).count());
  STATIC_CHECK(std::forward_iterator<SheetSizes::iterator>);
  STATIC_CHECK(
      std::is_same_v<std::iterator_traits<SheetSizes::iterator>::iterator_category, std::forward_iterator_tag>);
}

TEST_CASE("every row reads well") {
  int rows = 0;
  for (auto const& size : all_sheet_sizes()) {
    ++rows;
    CAPTURE(size.name);
    CHECK(size.short_figure <= size.long_figure);
    CHECK(size.short_side() > 25_cm);
    CHECK(size.long_side() < 310_cm);
    CHECK(size.sheet().ratio() < 2.51);
    CHECK(size.first_year <= size.last_year);
    CHECK(size.first_year >= 1301);
    CHECK(size.last_year <= 2000);
    CHECK(size.region != Region::anywhere);
    CHECK(title(size.source) != "an unknown source");
    CHECK((size.trust == Trust::from_memory) == title(size.source).starts_with("from memory"));
  }
  CHECK(rows == 273);
  CHECK(remark(row(SheetSource::tomlinson_1854, "antiquarian")) == "a ream of 480 weighs 236 lb");
  for (auto const& [source, name, text] : sheet_remarks) {
    CAPTURE(text);
    bool used = false;
    for (auto const& size : all_sheet_sizes()) used = used || remark(size) == text;
    CHECK(used);
  }
}
