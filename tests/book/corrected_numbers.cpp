// SPDX-License-Identifier: MIT
// A number that a description corrects (21 [i.e. 12]) counts as the correct one, and is not corrected again. The books
// are constructed.
#include <bifolium/book/detail/slips/likelihood.hpp>
#include <bifolium/book/detail/slips/page_places.hpp>

#include "book_of.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

using namespace book;

namespace {

detail::PageShape pages_in(std::string const& pages) {
  auto const extent = read_extent(pages);
  REQUIRE(extent);
  return detail::PagePlaces{pages, extent->pagination}.shape();
}
/// The edits after which a pagination agrees with 80 leaves.
std::vector<detail::PageEdit> edits_of(std::string const& pages) {
  auto const shape = pages_in(pages);
  std::vector<detail::PageEdit> edits;
  detail::PageSlips{shape, audit_weights, edits}.find(80);
  return edits;
}
bool corrects(detail::PageEdit const& edit) {
  return edit.what == detail::PageEdit::What::last || edit.what == detail::PageEdit::What::truly;
}
bool any_corrects(std::vector<detail::PageEdit> const& edits, int run) {
  return std::any_of(edits.begin(), edits.end(), [&](auto const& edit) { return corrects(edit) && edit.run == run; });
}

} // namespace

TEST_CASE("a number that is corrected is as likely as the correct number") {
  detail::Likelihood const likelihood{audit_weights, false, 0};
  for (auto const& [corrected, right] : {std::pair{"[8], 21 [i.e. 12], 13-152 p.", "[8], 12, 13-152 p."},
                                         {"[8], 251 [i.e. 152] p.", "[8], 152 p."},
                                         {"xxi [i.e. xii], 13-148 p.", "xii, 13-148 p."},
                                         {"91 [i.e. 19], [1], 21-160 p.", "19, [1], 21-160 p."},
                                         {"[6 i.e. 8], 152 p.", "[8], 152 p."},
                                         {"98 [i.e. 89] leaves", "89 leaves"}}) {
    INFO(std::string{corrected});
    CHECK(likelihood.of(pages_in(corrected)) == doctest::Approx(likelihood.of(pages_in(right))));
  }
}

TEST_CASE("a number that is corrected is not corrected again, and the others are") {
  struct Row {
    char const *pages, *right; ///< with a correction, and with the right number as if it were printed
    int run;                   ///< the run that is corrected
  };
  for (auto const& [pages, right, run] : {Row{"[8], 182 [i.e. 128], [2] p.", "[8], 128, [2] p.", 1},
                                          {"xxi [i.e. xii], 138 p.", "xii, 138 p.", 0},
                                          {"[8], 21 [i.e. 12], 13-141 p.", "[8], 12, 13-141 p.", 1},
                                          {"[4 i.e. 2], 148 p.", "[2], 148 p.", 0},
                                          {"148, [9] [i.e. 6] p.", "148, [6] p.", 1},
                                          {"81 [i.e. 80] p.", "80 p.", 0},
                                          {"98 [i.e. 89] leaves", "89 leaves", 0}}) {
    INFO(std::string{pages});
    auto const edits = edits_of(pages), without = edits_of(right);
    CHECK(!any_corrects(edits, run));
    CHECK(any_corrects(without, run));
    // whatever else is possible is possible in both
    auto const others = [&](auto const& all) {
      return std::count_if(all.begin(), all.end(),
                           [&](auto const& edit) { return !(corrects(edit) && edit.run == run); });
    };
    CHECK(others(edits) == others(without));
  }
}

TEST_CASE("two pages with repeated numbers are the likeliest mistake in numbering") {
  // which is counted over the corrections of the extents in tests/data
  std::map<std::int64_t, int> corrected;
  for (auto const& row : sound_with_pages())
    if (auto const extent = read_extent(row.texts.pagination))
      for (auto const& run : extent->pagination.runs)
        if (run.true_last) ++corrected[run.count - (run.last - run.first + 1)];
  REQUIRE(corrected.size() > 1);
  for (auto const& [pages, times] : corrected) CHECK((pages == 2 || times < corrected.at(2)));
  // a book of 80 leaves and 160 pages: its last page has a number that is too high or too low
  auto const weight = [](std::int64_t more) {
    for (auto const& edit : edits_of(std::to_string(160 - more) + " p."))
      if (edit.kind == SlipKind::misnumbered && edit.a == 160) return edit.weight;
    FAIL("no edit for " << more);
    return 0.0;
  };
  for (std::int64_t more : {1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 20, 30, 55}) {
    CAPTURE(more);
    CHECK(weight(2) > weight(more));
    CHECK(weight(2) > weight(-more));
  }
  CHECK(weight(2) > weight(-2));
}

TEST_CASE("repairs of a description with a correction agree when they are read again") {
  for (std::string const pages : {"[8], 182 [i.e. 128] p.", "xxi [i.e. xii], 138 p.", "81 [i.e. 80] p.",
                                  "[8], 21 [i.e. 12], 13-125 p.", "[4 i.e. 2], 148 p.", "[6] [i.e. 1], 149, [1] p."})
    for (std::string const leaves : {"", "80"}) {
      INFO(pages);
      auto const audit = examined({"A-K⁸", pages, leaves});
      CHECK(!audit.agrees());
      CHECK(!audit.repairs.empty());
      for (auto const& repair : audit.repairs) {
        Texts const after{repair.formula.value_or("A-K⁸"), repair.pagination.value_or(pages),
                          repair.leaves_text.value_or(leaves)};
        INFO(repair.says << ": " << after.pagination);
        auto const counts = counts_of(after);
        REQUIRE(counts);
        std::int64_t read = 0;
        for (auto const one : counts->pages) read += counts->by_leaf ? 2 * one : one;
        CHECK(counts->leaves == repair.leaves);
        CHECK(read <= 2 * repair.leaves);
        CHECK(read >= 2 * repair.leaves - 3); // a blank leaf and a blank page may be left out
      }
    }
}
