// SPDX-License-Identifier: MIT
// Calls functions that bifolium::compiled holds. Their machinery is not seen from here: what this unit names after it would
// clash with it otherwise.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence/infer.hpp>

namespace bifolium::v0::detail {
enum class Grammar { not_seen }; // what only the definition of read_formula brings
enum class Weigher { not_seen }; // and that of infer_format
} // namespace bifolium::v0::detail

int main() {
  using namespace bifolium;
  auto const formula = read_formula("8\u00b0: A-B8 C4");
  auto const seen = observe({.height = 165.0_mm, .width = 100.0_mm, .year = 1600});
  auto const bill = reckon({.scheme = schemes::octavo, .pages = 40, .copies = 1000, .ream = reams::of_500});
  return formula && formula->leaves() == 20 && seen && infer_format(*seen).front().format == Format::of(8) && bill &&
                 bill->sheets.stated == 2500
             ? 0
             : 1;
}
