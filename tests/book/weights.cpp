// SPDX-License-Identifier: MIT
// The weights are those counted over tests/data.
#include "book_of.hpp"

using namespace book;

namespace {
/// A row more or less that a reader takes makes no new weights of them; other than that the counts are the same.
bool alike(GatheringCounts::Books const& a, GatheringCounts::Books const& b) {
  for (std::size_t book = 0; book < a.size(); ++book)
    for (std::size_t size = 0; size < a[book].size(); ++size) {
      auto const off = a[book][size] > b[book][size] ? a[book][size] - b[book][size] : b[book][size] - a[book][size];
      if (off > 2 + b[book][size] / 40) return false;
    }
  return true;
}
} // namespace

TEST_CASE("the weights are what is counted over the descriptions kept here") {
  WeightCounts counts;
  for (auto const& rows : {sound_with_pages(), sound_with_leaves()})
    for (auto const& row : rows) {
      FieldTexts fields;
      fields.formula = row.texts.formula, fields.pagination = row.texts.pagination;
      auto const book = read_description(fields, conventions(row.omitted));
      if (book.is_complete()) counts.add(book);
    }
  auto const weights = counts.weights();
  CHECK(counts.books() > 880);
  for (auto const part :
       {&GatheringCounts::first, &GatheringCounts::middle, &GatheringCounts::last, &GatheringCounts::aside}) {
    CHECK(alike(weights.early.*part, audit_weights.early.*part));
    CHECK(alike(weights.late.*part, audit_weights.late.*part));
  }
  CHECK(weights.unnumbered == audit_weights.unnumbered);
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(weights.numbers_begin[i] == doctest::Approx(audit_weights.numbers_begin[i]).epsilon(.001));
  CHECK(weights.without_a == doctest::Approx(audit_weights.without_a).epsilon(.001));
  CHECK(weights.odd_total == doctest::Approx(audit_weights.odd_total).epsilon(.01));
  CHECK(weights.ends_make_one == doctest::Approx(audit_weights.ends_make_one).epsilon(.01));
  CHECK(weights.preliminaries_in_both == doctest::Approx(audit_weights.preliminaries_in_both).epsilon(.001));
  CHECK(weights.preliminaries_in_pages == doctest::Approx(audit_weights.preliminaries_in_pages).epsilon(.001));
}

TEST_CASE("a catalogue's own records are learnt from") {
  WeightCounts counts;
  FieldTexts fields;
  fields.formula = "A² B-K⁴ L²", fields.pagination = "[4], 76 p.";
  CHECK(counts.add(read_description(fields)));
  fields.pagination = "[4], 90 p.";
  CHECK(!counts.add(read_description(fields))); // contradicts
  fields.formula = "";
  CHECK(!counts.add(read_description(fields)));
  CHECK(counts.books() == 1);
  auto const weights = counts.weights();
  CHECK(weights.late.first[1][1] == 1);  // a first gathering of two leaves in a book of fours
  CHECK(weights.late.middle[1][3] == 9); // B to K
  CHECK(weights.late.last[1][1] == 1);
  CHECK(weights.unnumbered[4] == 1);
  CHECK(weights.field_wrong == audit_weights.field_wrong); // not counted, so taken over
}

TEST_CASE("a small first gathering and a last one that completes it are counted together") {
  WeightCounts counts;
  auto const add = [&](std::string_view formula) {
    FieldTexts fields;
    fields.formula = formula;
    REQUIRE(counts.add(read_description(fields)));
    return counts.weights().ends_make_one;
  };
  CHECK(add("A⁴ B-K⁴ L²") == 1); // the first gathering is as large as most
  // by chance one last gathering in two has two leaves: (1 + 10) / (1 + 10), then (1 + 10) / (2 / 3 + 10)
  CHECK(add("A² B-K⁴ L²") == doctest::Approx(1));
  CHECK(add("A-K⁴") == doctest::Approx(11 / (2. / 3 + 10)));
  // two small first gatherings, one of them completed: (1 + 10) / (2 * 2 / 4 + 10)
  CHECK(add("A² B-K⁴ L⁴") == doctest::Approx(1));
}

TEST_CASE("a first gathering that was lost with the last one is not hidden by a likelier single slip") { // constructed
  // A-I⁴ has the leaves of A² B-I⁴ K² too, and the pagination decides nothing
  auto const audit = examined({"B-I⁴", "[72] p.", "36"});
  REQUIRE(audit.repairs.size() >= 2);
  CHECK(audit.repairs[0].formula == "A-I⁴");
  CHECK(audit.repairs[0].share < .8);
  CHECK(audit.repairs[1].formula == "A² B-I⁴ K²");
  CHECK(audit.repairs[1].share > .1);
  // caller's weights may say that both are always lost together; the shares are still numbers that add up to 1
  auto weights = audit_weights;
  weights.ends_together = 1;
  FieldTexts fields;
  fields.formula = "B-I⁴", fields.leaves = "36";
  auto const always = examine(read_description(fields), weights);
  double sum = always.share_none;
  for (auto const& repair : always.repairs) sum += repair.share;
  CHECK(sum == doctest::Approx(1).epsilon(.01));
  CHECK(!always.repairs.empty());
}
