// SPDX-License-Identifier: MIT
// Mistakes put into right formes are found; right formes are left alone.
#include <bifolium/fold.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>
#include <bifolium/imposition/seen_formes.hpp>

#include "check.hpp"

#include <random>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;
using Kind = Correction::Kind;

namespace {

using Formes = std::vector<SeenForme>;

/// One mistake, and how it should be told.
struct Mistake {
  Kind kind{};
  std::size_t forme{}, at{}, other{};
  std::optional<std::uint16_t> right{};
};

class Spoiler {
  std::mt19937 random_{1755};

  std::size_t below(std::size_t n) { return random_() % n; }

public:
  /// Makes one mistake of that kind; none where the forme has too few pages for it.
  std::optional<Mistake> spoil(Formes& formes, Kind kind) {
    Mistake made{kind, below(formes.size()), 0, 0, {}};
    auto& pages = formes[made.forme].pages;
    made.at = below(pages.size());
    made.other = below(pages.size());
    made.right = pages[made.at].page;
    if (kind == Kind::pages_exchanged) {
      if (made.at == made.other) return std::nullopt;
      made.right = pages[made.other].page;
      std::swap(pages[made.at].page, pages[made.other].page);
      made.right = pages[made.at].page;
    } else if (kind == Kind::pages_and_heads_exchanged) {
      if (made.at == made.other || pages[made.at].head == pages[made.other].head) return std::nullopt;
      std::swap(pages[made.at], pages[made.other]);
    } else if (kind == Kind::number_wrong) {
      auto const wrong = static_cast<std::uint16_t>(1 + below(2 * pages.size()));
      if (wrong == made.right) return std::nullopt;
      pages[made.at].page = wrong;
    } else {
      auto& head = pages[made.at].head;
      head = head == Head::far_edge ? Head::near_edge : Head::far_edge;
    }
    return made;
  }
};

bool tells(Correction const& found, Mistake const& made, Formes const& formes) {
  auto const& forme = formes[made.forme];
  auto const columns = forme.columns;
  auto const at = static_cast<int>(made.at), other = static_cast<int>(made.other);
  auto const one = found.row * columns + found.column, two = found.other_row * columns + found.other_column;
  if (found.kind != made.kind || found.sheet != forme.sheet || found.side != forme.side) return false;
  if (made.kind == Kind::pages_exchanged || made.kind == Kind::pages_and_heads_exchanged)
    return (one == at && two == other) || (one == other && two == at);
  return one == at && (made.kind != Kind::number_wrong || found.right == made.right);
}

struct Score {
  int tried{}, alone{}, tied{}, printed_as_simple{}, else_where{};
};

/// Spoils the formes of all schemes of at most so many leaves and looks for what was done.
Score play(Kind kind, bool both_formes, int most_leaves, int times) {
  Spoiler spoiler;
  Score score;
  for (auto const attested : Attested::all()) {
    auto const scheme = attested.scheme();
    if (scheme.cells() > most_leaves || scheme.cells() < 2) continue;
    auto right = seen_formes(impose(*fold(scheme)));
    if (!both_formes) std::erase_if(right, [](auto const& forme) { return forme.side == Side::inner; });
    for (int i = 0; i < times; ++i) {
      auto formes = right;
      auto const made = spoiler.spoil(formes, kind);
      if (!made) continue;
      ++score.tried;
      auto const found = find_misprints(formes);
      if (!found || found->corrections.empty())
        ++(found && found->as_printed ? score.printed_as_simple : score.else_where);
      else if (tells(found->corrections[0], *made, formes))
        ++(found->one_stands_out() ? score.alone : score.tied);
      else
        ++(found->one_stands_out() ? score.else_where : score.tied);
    }
  }
  return score;
}

} // namespace

TEST_CASE("a number misread in a published forme of twelves is put right") {
  // Bosquet, Guide manuel de l'ouvrier relieur (1903), as an uncorrected copy of its text has it: 14 for 19 among the
  // pages of the twelves. The forme is the inner one of common twelves.
  auto const formes =
      *read_formes("inner\n10\u2193 15\u2193 14\u2193 11\u2193\n6\u2193 14\u2193 18\u2193 7\u2193\n3 22 23 2\n");
  auto const found = *find_misprints(formes);
  REQUIRE(!found.corrections.empty());
  auto const& first = found.corrections[0];
  CHECK(found.one_stands_out());
  CHECK(first.kind == Kind::number_wrong);
  CHECK(first.printed == 14);
  CHECK(first.right == 19);
  CHECK(first.row == 1);
  CHECK(first.column == 1);
  CHECK(first.folding.attested == schemes::duodecimo);
}

TEST_CASE("with both formes one mistake is found, first and alone, in 95 of 100") {
  // constructed mistakes; the share is the library's own aim
  for (auto const kind :
       {Kind::pages_exchanged, Kind::pages_and_heads_exchanged, Kind::number_wrong, Kind::head_turned}) {
    auto const score = play(kind, true, 64, kind == Kind::pages_and_heads_exchanged ? 6 : 3);
    CAPTURE(identifier(kind));
    CAPTURE(score.tried);
    CAPTURE(score.tied);
    CAPTURE(score.printed_as_simple);
    CHECK(score.tried > 100);
    CHECK(score.alone * 100 >= score.tried * 95);
    CHECK(score.else_where * 100 <= score.tried * 2);
  }
}

TEST_CASE("with one forme a mistake is found or the forme is said to be as simple as it is printed") {
  for (auto const kind :
       {Kind::pages_exchanged, Kind::pages_and_heads_exchanged, Kind::number_wrong, Kind::head_turned}) {
    auto const score = play(kind, false, 16, kind == Kind::pages_and_heads_exchanged ? 6 : 3);
    CAPTURE(identifier(kind));
    CAPTURE(score.tried);
    CHECK(score.tried > 60);
    CHECK(score.alone * 100 >= score.tried * 60);
    CHECK((score.alone + score.tied + score.printed_as_simple) * 100 >= score.tried * 95);
  }
}

TEST_CASE("a right forme is never corrected") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const both = seen_formes(impose(*fold(attested.scheme())));
    CHECK((*find_misprints(both)).corrections.empty());
    CHECK((*find_misprints(both)).as_printed);
    auto outer = both;
    std::erase_if(outer, [](auto const& forme) { return forme.side == Side::inner; });
    if (attested.scheme().cells() <= 36) CHECK((*find_misprints(outer)).corrections.empty());
  }
}

TEST_CASE("printed paper taken for the formes is offered as the mistake") {
  int told = 0;
  for (auto const attested : Attested::all()) {
    if (attested.scheme().cells() > 32) continue;
    CAPTURE(attested.id());
    auto const found = *find_misprints(seen_formes(impose(*fold(mirrored(attested.scheme())))));
    if (found.corrections.empty()) continue;
    CHECK(found.corrections[0].kind == Kind::printed_side);
    ++told;
  }
  CHECK(told >= 25);
}

TEST_CASE("two pages of an octavo that are exchanged with their heads are told") {
  // constructed: pages 3 and 6 of the inner forme, whose heads lie in opposite directions
  auto const right = impose(*fold(schemes::octavo.scheme()));
  CHECK(right.place(3).head != right.place(6).head);
  auto const found = *find_misprints(seen_formes(*exchanged(right, 3, 6, ExchangedHeads::of_page)));
  CHECK_FALSE(found.as_printed);
  REQUIRE(found.corrections.size() == 1);
  auto const& only = found.corrections[0];
  CHECK(only.kind == Kind::pages_and_heads_exchanged);
  CHECK(only.side == Side::inner);
  auto const first = FormePosition{0, static_cast<std::uint8_t>(only.row), static_cast<std::uint8_t>(only.column),
                                   Side::inner, right.inner(only.row, only.column).head};
  CHECK((only.printed == 3 ? first == right.place(6) : first == right.place(3)));
  CHECK(*only.printed + *only.right == 9);
  CHECK(only.folding.attested == schemes::octavo);
  // the same pages, each with the head of its place: no head is wrong
  auto const numbers = *find_misprints(seen_formes(*exchanged(right, 3, 6)));
  REQUIRE(numbers.corrections.size() == 1);
  CHECK(numbers.corrections[0].kind == Kind::pages_exchanged);
  // where the heads of the two places agree there is but one way to exchange them
  CHECK(right.place(3).head == right.place(14).head);
  for (auto const heads : {ExchangedHeads::of_place, ExchangedHeads::of_page})
    CHECK((*find_misprints(seen_formes(*exchanged(right, 3, 14, heads)))).corrections ==
          std::vector<Correction>{(*find_misprints(seen_formes(*exchanged(right, 3, 14)))).corrections});
}

TEST_CASE("a forme of few pages does not tell by itself whether it is right") {
  auto const quarto = *find_misprints(*read_formes("outer\n4\u2193 1\u2193\n5 8\n"));
  CHECK(quarto.corrections.empty());
  CHECK(quarto.as_printed);
  CHECK(quarto.as_simple > 0);
  // one forme of a folio: its two pages exchanged are folded once too, neither more simply nor less
  auto const folio = *read_formes("outer\n1 4\n");
  auto exchanged_pages = folio;
  std::swap(exchanged_pages[0].pages[0], exchanged_pages[0].pages[1]);
  CHECK((*find_foldings(exchanged_pages))[0].price == (*find_foldings(folio))[0].price);
  CHECK((*find_misprints(folio)).as_simple == 1);
  auto const octavo = *find_misprints(seen_formes(impose(*fold(schemes::octavo.scheme()))));
  CHECK(octavo.as_simple == 0);
}

TEST_CASE("pages in an order that hardly folds are not searched for ever, and that is told") {
  // constructed: a class types the numbers as it reads; each of 120 exchanges can be cut and nested in thousands of ways
  auto const found = *find_misprints(*read_formes("outer\n1 2 3 4\n5 6 7 8\n9 10 11 12\n13 14 15 16\n"));
  CHECK(found.cut_short);
  CHECK(found.as_printed);
  CHECK(found.as_simple > 0);
  CHECK(found.corrections.empty());
  // of these nobody sees whether they fold, which is not said either
  std::string rows;
  for (int page = 1; page <= 32; ++page) rows.append(std::to_string(page)).append(page % 8 == 0 ? "\n" : " ");
  auto const more = *find_misprints(*read_formes("outer\n" + rows));
  CHECK(more.cut_short);
  CHECK_FALSE(more.as_printed);
  CHECK(more.corrections.empty());
  // what is printed in books is searched to the end
  CHECK_FALSE((*find_misprints(seen_formes(impose(*fold(schemes::octavo.scheme()))))).cut_short);
  // a question is given up after the steps that it may take, and says so
  auto const octavo = seen_formes(impose(*fold(schemes::octavo.scheme())));
  for (std::int64_t const effort : {1, 100, 1'000'000}) {
    detail::FoldingFinder finder{octavo, {}, detail::PieceFolds::none, effort};
    auto made = *detail::GridMaker{octavo}.result();
    finder.find(made);
    CHECK(finder.gave_up() == (effort < 1000));
    CHECK((finder.effort_left() > 0) == (effort > 1000));
  }
}

TEST_CASE("what is no set of formes is refused, what contradicts itself is not") {
  CHECK(find_misprints({}).error().problem == Problem::forme_not_whole);
  auto formes = seen_formes(impose(*fold(schemes::octavo.scheme())));
  std::swap(formes[0].pages[0].page, formes[0].pages[5].page);
  REQUIRE(find_misprints(formes));
  CHECK_FALSE((*find_misprints(formes)).as_printed);
  formes.push_back(formes[0]);
  CHECK(find_misprints(formes).error().problem == Problem::forme_given_twice);
}
