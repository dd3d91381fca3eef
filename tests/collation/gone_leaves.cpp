// SPDX-License-Identifier: MIT
// A leaf can be deleted or cancelled once, in formulas with any number of changes.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// A formula of 690 gatherings (30 alphabets of 23 letters) of eight, without one leaf of each of the first so many.
std::string without_leaves(int gatherings, std::string const& more) {
  static Formula const plain = *read_formula("A-30Z⁸");
  static std::vector<std::string> const names = [] {
    std::vector<std::string> all;
    for (int g = 0; g < 690; ++g) all.push_back(std::string{to_text(plain.signature({0, g})).view()});
    return all;
  }();
  std::string text = "A-30Z⁸ (";
  for (int g = 0; g < gatherings; ++g)
    text.append(g == 0 ? "−" : ", −").append(names[static_cast<std::size_t>(g)]).append(std::to_string(1 + g % 8));
  return text + more + ")";
}

} // namespace

TEST_CASE("a leaf cannot be deleted twice, however many leaves were") {
  for (int const n : {1, 2, 15, 16, 17, 18, 19, 33, 34, 35, 36, 37, 63, 64, 65, 66, 71, 72, 73, 74, 75, 150, 690}) {
    CAPTURE(n);
    auto const once = read_formula(without_leaves(n, ""));
    REQUIRE(once);
    CHECK(once->leaves() == 690 * 8 - n);
    CHECK(once->warnings().empty());
    for (int g = 0; g < n; g += 1 + n / 40) {
      CAPTURE(g);
      std::string const name{to_text(once->signature({0, g})).view()};
      auto const twice = read_formula(without_leaves(n, ", −" + name + std::to_string(1 + g % 8)));
      REQUIRE_FALSE(twice);
      CHECK(twice.error().problem == Problem::leaf_changed_twice);
      CHECK(read_formula(without_leaves(n, ", ±" + name + std::to_string(1 + g % 8))).error().problem ==
            Problem::leaf_changed_twice);
      auto const another = read_formula(without_leaves(n, ", −" + name + std::to_string(1 + (g + 1) % 8)));
      REQUIRE(another);
      CHECK(another->leaves() == 690 * 8 - n - 1);
    }
  }
}

TEST_CASE("any leaf of a large gathering can be deleted, and once") {
  for (int first = 1; first <= 200; ++first)
    for (int const last : {first, first + 1, first + 63, first + 64, first + 65, first + 130}) {
      if (last > 200) continue;
      CAPTURE(first);
      CAPTURE(last);
      auto const change = [&](int leaf) {
        return read_formula("A²⁰⁰ (−A" + std::to_string(first) + (last > first ? "-" + std::to_string(last) : "") +
                            ", ±A" + std::to_string(leaf) + ")");
      };
      if (first > 1) CHECK(change(first - 1));
      CHECK_FALSE(change(first));
      CHECK_FALSE(change((first + last) / 2));
      CHECK_FALSE(change(last));
      if (last < 200) CHECK(change(last + 1));
    }
}
