// SPDX-License-Identifier: MIT
// GNU units is asked where it is installed; the values it gave (2.22, definitions of September 2022) are kept beside.
#include <bifolium/paper/count.hpp>
#include <bifolium/paper/length.hpp>

#include "check.hpp"

#include <cstdio>
#include <cstdlib>
#include <string>

using namespace bifolium;

namespace {

/// What `units -t FROM TO` answers; nothing where it is not installed.
std::optional<double> units(std::string const& from, std::string const& to) {
#if defined(__unix__)
  auto* const answer = popen(("units -t '" + from + "' '" + to + "' 2>/dev/null").c_str(), "r");
  if (answer == nullptr) return std::nullopt;
  char text[64]{};
  auto const size = std::fread(text, 1, sizeof text - 1, answer);
  if (pclose(answer) != 0 || size == 0) return std::nullopt;
  char* end = nullptr;
  auto const value = std::strtod(text, &end);
  return end == text ? std::nullopt : std::optional{value};
#else
  return std::nullopt;
#endif
}
double pounds_of_ream(Fraction pounds, std::int64_t sheets, Fraction inches_a, Fraction inches_b) {
  Fraction const inch{127, 5};
  return grammes_per_square_metre(pounds * grammes_in_pound, sheets, inches_a * inch, inches_b * inch)->as_double();
}

} // namespace

TEST_CASE("counts, weights and inches agree with GNU units") {
  struct Row {
    char const *from, *to;
    double recorded, ours;
  };
  Row const rows[]{{"quire", "1", 25, reams::of_500.quire},
                   {"shortquire", "1", 24, reams::of_480.quire},
                   {"shortream", "1", 480, reams::of_480.ream},
                   {"ream", "1", 500, reams::of_500.ream},
                   {"perfectream", "1", 516, reams::of_516.ream},
                   {"bundle", "1", 1000, lots::bundle.sheets},
                   {"bale", "1", 5000, lots::bale.sheets},
                   {"50 lbbook", "gsm", 74.007324, pounds_of_ream(50, 500, 25, 38)},
                   {"20 lbbond", "gsm", 75.194607, pounds_of_ream(20, 500, 17, 22)},
                   {"inch", "mm", 25.4, millimetres{inches{1}}.count()},
                   {"frenchinch", "mm", 27.069949, millimetres{paris_inches{1}}.count()}};
  bool asked = false;
  for (auto const& row : rows) {
    CAPTURE(row.from);
    CHECK(row.ours == doctest::Approx(row.recorded).epsilon(1e-7));
    if (auto const now = units(row.from, row.to)) {
      asked = true;
      CHECK(row.ours == doctest::Approx(*now).epsilon(1e-7));
    }
  }
  if (!asked) MESSAGE("GNU units is not installed: only its recorded values were compared");
}
