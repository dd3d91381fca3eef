// SPDX-License-Identifier: MIT
// A program that includes no header of the library: a bit of each folder, operators and literals, hashes and printing among them,
// while compiling and when run. What it prints is kept in program.txt.
#include <format>
#include <iostream>
#include <unordered_set>

import bifolium;

using namespace bifolium;

constexpr auto const& octavo = impose<schemes::octavo>();
static_assert(octavo.outer(0, 0) == head_down(8));
static_assert(read_format("8°")->symbol() == "8°");
static_assert(Fraction{1, 2} + Fraction{1, 4} == Fraction{3, 4});
static_assert(187_mm < 19_cm && "12_common"_scheme.id() == "12_common");

int main() {
  std::cout << forme_text(octavo);
  auto const formula = read_formula("8°: π² A–K⁸ L⁴ (−L4)");
  std::cout << formula->leaves() << " leaves: " << write_formula(*formula) << '\n';
  std::cout << message(read_formula("8°: A8 B").error()) << '\n';
  std::unordered_set<Signature> seen{*read_signature("Aa"), *read_signature("2A")};
  std::cout << seen.size() << " signature: " << *seen.begin() << std::format(", {}\n", *seen.begin());
  auto const leaf = observe({.height = 201_mm, .width = 139_mm, .chain_lines = ChainLines::horizontal, .year = 1490});
  std::cout << verdict(infer_format(*leaf)) << '\n';
  auto const bill = reckon({.scheme = schemes::octavo, .pages = 340, .copies = 750, .ream = reams::of_500});
  std::cout << bill->sheets.stated << " sheets, " << counted(bill->sheets.stated, reams::of_500).reams << " reams\n";
  auto const description = read_description({.formula = "8°: A–C⁸", .pagination = "46, [4] p."});
  for (auto const& finding : examine(description).findings) std::cout << identifier(finding.id) << '\n';
  auto const formes = seen_formes(octavo);
  std::cout << (*find_foldings(formes)).front().scheme.id() << ", " << svg_number(1.5) << '\n';
}
