// SPDX-License-Identifier: MIT
// Two statements are equal if they say the same: each fact alone makes a difference, and no place in the text does.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/reference.hpp>
#include <bifolium/paper/count.hpp>
#include <bifolium/record/extent.hpp>
#include <bifolium/record/read_format_statement.hpp>
#include <bifolium/record/signing.hpp>
#include <bifolium/record/size_statement.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// Every change of a value makes it another, and another than every other change does.
template <class T> void each_differs(T const& plain, std::vector<void (*)(T&)> const& changes) {
  std::vector<T> all{plain};
  for (auto change : changes) change(all.emplace_back(plain));
  for (std::size_t a = 0; a < all.size(); ++a)
    for (std::size_t b = 0; b < all.size(); ++b) {
      CAPTURE(a);
      CAPTURE(b);
      CHECK((all[a] == all[b]) == (a == b));
    }
}
template <class T> void none_differs(T const& plain, std::vector<void (*)(T&)> const& changes) {
  for (auto change : changes) {
    auto changed = plain;
    change(changed);
    CHECK(changed == plain);
  }
}

} // namespace

TEST_CASE("paginations and extents are equal if they say the same") {
  PageRun const run{.last = 4, .count = 4};
  each_differs<PageRun>(run,
                        {[](auto& r) { r.numbering = Numbering::none; }, [](auto& r) { r.numerals = Numerals::roman; },
                         [](auto& r) { r.series = 2; }, [](auto& r) { r.starred = true; },
                         [](auto& r) { r.unit = PageUnit::leaves; }, [](auto& r) { r.preliminary = true; },
                         [](auto& r) { r.folded = true; }, [](auto& r) { r.part = 1; }, [](auto& r) { r.first = 1; },
                         [](auto& r) { r.last = 5; }, [](auto& r) { r.count = 5; }, [](auto& r) { r.true_last = 5; }});
  none_differs<PageRun>(run, {[](auto& r) {
                                r.at = {1, 2};
                              },
                              [](auto& r) {
                                r.first_at = TextSpan{1, 2};
                              },
                              [](auto& r) {
                                r.last_at = TextSpan{1, 2};
                              },
                              [](auto& r) {
                                r.true_at = TextSpan{1, 2};
                              }});
  each_differs<Pagination>({}, {[](auto& p) { p.runs.resize(1); }, [](auto& p) { p.misprints.resize(1); },
                                [](auto& p) { p.unpaged = true; }, [](auto& p) { p.incomplete = true; },
                                [](auto& p) { p.plate_pages = 1; }});
  none_differs<Pagination>({}, {[](auto& p) { p.unread.resize(1); }, [](auto& p) { p.warn({}); }});
  each_differs<Plates>({}, {[](auto& p) { p.count = 1; }, [](auto& p) { p.unit = PageUnit::pages; },
                            [](auto& p) { p.numerals = Numerals::roman; }, [](auto& p) { p.numbered = true; },
                            [](auto& p) { p.folded = 0; }, [](auto& p) { p.approximate = true; },
                            [](auto& p) { p.in_pages = true; }});
  none_differs<Plates>({}, {[](auto& p) { p.at = {1, 2}; }});
  each_differs<Extent>({},
                       {[](auto& e) { e.pagination.unpaged = true; }, [](auto& e) { e.plates.resize(1); },
                        [](auto& e) { e.volumes = 1; }, [](auto& e) { e.bound_in = 1; }, [](auto& e) { e.sheets = 1; },
                        [](auto& e) { e.various_pagings = true; }, [](auto& e) { e.pagination.approximate = true; }});
  none_differs<Extent>({}, {[](auto& e) { e.unread.resize(1); }});
}

TEST_CASE("statements of signing, size and format are equal if they say the same") {
  each_differs<SigningPlace>({}, {[](auto& p) { p.any = true; }, [](auto& p) { p.gathering = Signature::letter('B'); },
                                  [](auto& p) { p.leaf = 1; }});
  none_differs<SigningPlace>({}, {[](auto& p) { p.at = {2, 3}; }});
  each_differs<SigningException>({}, {[](auto& e) { e.is_signed = true; }, [](auto& e) { e.place.leaf = 1; }});
  each_differs<Missigned>({}, {[](auto& m) { m.place.leaf = 1; }, [](auto& m) { m.as = "U4"; }});
  each_differs<Signing>({}, {[](auto& s) { s.first = 4; }, [](auto& s) { s.half = true; },
                             [](auto& s) { s.beyond_half = 1; }, [](auto& s) { s.listed = {1}; },
                             [](auto& s) { s.exceptions.resize(1); }, [](auto& s) { s.missigned.resize(1); }});
  none_differs<Signing>({}, {[](auto& s) { s.warn({}); }});
  SizeRange const range{1, 2};
  CHECK(range != SizeRange{1, 3});
  CHECK(range != SizeRange{0, 2});
  each_differs<SizeStatement>({}, {[](auto& s) {
                                     s.height = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.width = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.tallest = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.binding = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.binding_width = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.folded_height = SizeRange{1, 2};
                                   },
                                   [](auto& s) {
                                     s.folded_width = SizeRange{1, 2};
                                   },
                                   [](auto& s) { s.formats.resize(1); }, [](auto& s) { s.gathered.emplace(); },
                                   [](auto& s) { s.of_leaf = true; }, [](auto& s) { s.approximate = true; }});
  none_differs<SizeStatement>({}, {[](auto& s) { s.unread.resize(1); }});
  each_differs<FormatStatement>({}, {[](auto& f) { f.formats.resize(1); }, [](auto& f) { f.paper = "royal"; },
                                     [](auto& f) { f.gathered.emplace(); }, [](auto& f) { f.probable = true; }});
  none_differs<FormatStatement>({}, {[](auto& f) { f.unread.resize(1); }});
}

TEST_CASE("counts of a ream are equal if they count the same, whoever reports them") {
  each_differs<ReamCount>(
      {500, 25}, {[](auto& r) { r.ream = 480; }, [](auto& r) { r.quire = 24; }, [](auto& r) { r.good = 480; }});
  none_differs<ReamCount>({500, 25}, {[](auto& r) { r.name = "ream"; }, [](auto& r) { r.source = "somebody"; },
                                      [](auto& r) { r.region = Region::france; }});
}

TEST_CASE("formulas are equal if they say the same, and references if they mean the same side of a leaf") {
  std::vector<std::string> const all{"A⁸ B⁸",
                                     "8°: A⁸ B⁸",
                                     "4°: A⁸ B⁸",
                                     "A⁸ B⁴",
                                     "A⁸ C⁸",
                                     "A⁸ B⁸ (−B8)",
                                     "A⁸ B⁸ (−B7)",
                                     "A⁸ B⁸ (−B8?)",
                                     "A⁸ B⁸ (±B8)",
                                     "A⁸ B⁸ (B8+1)",
                                     "A⁸ B⁸ (B8+2)",
                                     "A⁸ B⁸ (B8 blank)",
                                     "A⁸ B⁸ [$4 signed]",
                                     "A⁸ B⁸ [$3 signed]",
                                     "8° in 4s: A⁸ B⁸",
                                     "vol. 1: A⁸; vol. 2: B⁸",
                                     "8° and 4°: A⁸ B⁸"};
  for (std::size_t a = 0; a < all.size(); ++a)
    for (std::size_t b = 0; b < all.size(); ++b) {
      CAPTURE(all[a]);
      CAPTURE(all[b]);
      auto const first = read_formula(all[a]), second = read_formula(all[b]);
      REQUIRE(first);
      REQUIRE(second);
      CHECK((*first == *second) == (a == b));
    }
  CHECK(*read_formula("A⁸ B⁸") == *read_formula("  A8\nB8")); // one text in two ways
  each_differs<Reference>({}, {[](auto& r) { r.leaf.leaf = 2; }, [](auto& r) { r.side = LeafSide::recto; }});
  none_differs<Reference>({}, {[](auto& r) { r.doubtful = true; }});
}
