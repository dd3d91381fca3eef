// SPDX-License-Identifier: MIT
// What a value answers after it was moved away. It may be asked, by mistake or to be filled again, and must not count leaves that
// it no longer has: it answers as an empty one, whatever it held. The types with numbers of their own beside vectors are the
// formula and the ideal copy; all others that this concerns are sums over their members. (law of the types, no source)
#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signature_note.hpp>
#include <bifolium/record/read_signing.hpp>

#include "check.hpp"

#include <utility>

using namespace bifolium;

namespace {

// each with something that no other has: letters, parts, a cycle, changes, an alphabet, words, two formats, a long formula
constexpr char const* of_every_kind[]{
    "A⁸",
    "8°: π² A-K⁸ L⁴(−L4, ±L1) [$4 signed; missigning B2 as B3]; pp. [4] 1-160",
    "12° (8/4): A-I⁸/⁴ K⁸; K8 blank",
    "Royal 2° and 4°: A-Z⁸ 2A-2J⁸ 2K⁶(2K3+χ1.2, +2χ⁴)",
    "Vol. I: 8°: A-Z⁸; Vol. II: A-Y⁸ W⁸ Z⁴ [=A3]",
    "²A⁴ A⁴ B⁴ C⁴ D⁴ E⁴ F⁴ G⁴ H⁴ I⁴ K⁴ L⁴ M⁴ N⁴ O⁴ P⁴ Q⁴ R⁴ S⁴ T⁴ V⁴(V1+v1) X⁴ a⁴ b⁴ c⁴ d⁴+"};

/// Moves by constructing and by assigning, and calls `empty` with the value that was moved from.
template <class T, class Empty> void after_moving(T const& value, Empty empty) {
  auto made_of = value, assigned_from = value;
  auto made = std::move(made_of);
  made = std::move(assigned_from);
  empty(made_of);       // NOLINT(bugprone-use-after-move): that is the question
  empty(assigned_from); // NOLINT(bugprone-use-after-move)
  assigned_from = made; // it can be filled again
  auto const again = std::move(assigned_from);
  empty(assigned_from); // NOLINT(bugprone-use-after-move)
  static_cast<void>(again);
}

} // namespace

TEST_CASE("a formula that was moved from is empty, and what it was moved to is whole") {
  for (auto const* const text : of_every_kind) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    auto copy = *formula;
    auto const moved = std::move(copy);
    CHECK(moved == *formula);
    CHECK(moved.leaves() == formula->leaves());
    CHECK(moved.gatherings() == formula->gatherings());
    after_moving(*formula, [](Formula const& gone) {
      CHECK(gone.leaves() == 0);
      CHECK(gone.pages() == 0);
      CHECK(gone.gatherings() == 0);
      CHECK(gone.runs().empty());
      CHECK(gone.changes().empty());
      CHECK(gone.change_forms().empty());
      CHECK(gone.notes().empty());
      CHECK(gone.blanks().empty());
      CHECK(gone.passages().empty());
      CHECK(gone.warnings().empty());
      CHECK(gone.parts() == std::vector{FormulaPart{}});
      CHECK(!gone.format());
      CHECK(!gone.second_format());
      CHECK(!gone.gathered());
      CHECK(!gone.paper_class());
      CHECK(!gone.signing());
      CHECK(gone.tail().empty());
      CHECK(gone.letters() == Letters{});
      CHECK(gone.alphabet() == Alphabet{});
      CHECK(write_formula(gone).empty());
      CHECK(IdealCopy{gone}.leaves() == 0);
    });
    auto expected = read_formula(text);
    auto const taken = *std::move(expected);
    CHECK(taken == *formula);
    CHECK(expected->leaves() == 0); // NOLINT(bugprone-use-after-move)
  }
}

TEST_CASE("an ideal copy that was moved from has no leaves") {
  for (auto const* const text : of_every_kind) {
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    after_moving(book, [&](IdealCopy const& gone) {
      CHECK(gone.leaves() == 0);
      CHECK(gone.pages() == 0);
      CHECK(gone.gatherings_of_runs() == 0);
      CHECK(gone.runs().empty());
      CHECK(gone.blanks().empty());
      CHECK(gone.letters() == Letters{});
      CHECK(gone.alphabet() == Alphabet{});
      CHECK(gone.begin() == gone.end());
      CHECK(gone.gatherings().begin() == gone.gatherings().end());
      for (std::int64_t number = 0; number <= book.leaves() + 1; number += 7) CHECK(!gone.leaf_of_number(number));
      for (auto const& run : formula->runs()) {
        CHECK(!gone.find(run.first));
        CHECK(!gone.find(run.last, 1));
        CHECK(!gone.find_inserted(run.first));
      }
      for (auto const& change : formula->changes()) {
        auto const* const insertion = change.insertion();
        if (insertion == nullptr || !insertion->name) continue;
        CHECK(!gone.inserts(*insertion->name));
        CHECK(!gone.find(*insertion->name, 1));
        CHECK(!gone.find_inserted(*insertion->name));
      }
      CHECK(!gone.is_blank({{0, 0}, 1}));
    });
  }
}

TEST_CASE("what sums up its members has nothing to sum up after it was moved from") {
  after_moving(*read_pagination("pp. [8] 1-152 [misprinting 45 as 54]"), [](Pagination const& gone) {
    CHECK(gone.pages() == 0);
    CHECK(gone.parts() == 0);
    CHECK(gone.total().stated == 0);
    CHECK(gone.warnings().empty());
  });
  after_moving(*read_extent("xii, 320 p., [4] leaves of plates : ill. ; 20 cm"), [](Extent const& gone) {
    CHECK(gone.pages() == 0);
    CHECK(gone.plates.empty());
    CHECK(gone.warnings().empty());
  });
  after_moving(*read_signing("$1,3 (−A3; missigning B3 as B2)"), [](Signing const& gone) {
    CHECK(gone.listed.empty());
    CHECK(gone.exceptions.empty());
    CHECK(gone.missigned.empty());
    CHECK(gone.warnings().empty());
  });
  after_moving(*read_signature_note("Signatures: A-K⁸ L⁴ (last leaf blank)."), [](SignatureNote const& gone) {
    CHECK(gone.formula.leaves() == 0);
    CHECK(gone.formula.runs().empty());
  });
  after_moving(*read_place("London and Paris"), [](StatedPlace const& gone) {
    CHECK(gone.named.empty());
    CHECK(gone.places().empty());
    CHECK(gone.region() == Region::anywhere);
    CHECK(gone.warnings().empty());
  });
  after_moving(*read_date("printed in 1607"), [](StatedDate const& gone) {
    CHECK(gone.unread.empty());
    CHECK(gone.warnings().empty());
  });
}
