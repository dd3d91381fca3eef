// SPDX-License-Identifier: MIT
// A unit that includes the header of every folder and calls the entry points that most programs call, so that what optimizers warn about is
// seen under each level of optimization and under the address sanitizer (optimized.sh). (constructed)
#include <bifolium/bifolium.hpp>
#include <bifolium/book.hpp>
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/formatter.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>
#include <bifolium/record.hpp>

#include <iostream>

using namespace bifolium;

namespace {

int of_a_formula(std::string_view text) {
  auto const formula = read_formula(text, dialects::bmc);
  if (!formula) return std::cerr << formula.error() << '\n', 1;
  IdealCopy const book{*formula};
  auto const present = read_leaves_present(book, "A-B C1-3");
  auto const joints = read_joints(book, "A1.8 conjugate");
  if (!present || !joints) return 1;
  auto const checked = check_copy(book, present->spans, *joints);
  for (auto const& gathering : book.gatherings())
    if (auto const drawn = drawn_gathering(*formula, gathering.at, checked)) std::cout << gathering_svg(*drawn);
  if (auto const reference = read_reference(book, "B3v")) std::cout << write_reference(book, *reference);
  if (auto const page = class_page(*formula, text)) std::cout << *page;
  std::cout << wants(book, checked) << write_formula(*formula, Notation::tei) << explain_count(*formula);
  std::cout << count_formula(text).value_or(FormulaCount{}).leaves;
  return 0;
}
int of_a_record(std::string_view text) {
  auto const extent = read_extent(text);
  auto const pages = read_pagination(text);
  auto const date = read_date(text);
  auto const place = read_place(text);
  auto const size = read_size(text);
  auto const described = read_physical_description(text);
  auto const signing = read_signing(text);
  if (extent) std::cout << extent_line(*extent);
  if (signing) std::cout << write_signing(*signing);
  auto const description = read_description({.formula = text, .pagination = text});
  std::cout << examine(description).findings.size();
  return extent && pages && date && place && size && described ? 0 : 1;
}
int of_a_sheet(std::string_view name) {
  auto const scheme = find_scheme(name);
  if (!scheme) return std::cerr << no_scheme_message(name) << '\n', 1;
  auto const folded = fold(scheme->scheme());
  std::cout << forme_text(impose(*folded)) << explain_steps(scheme->scheme()).value_or("");
  auto const seen = observe({.height = 201_mm, .width = 139_mm, .chain_lines = ChainLines::horizontal, .year = 1490});
  if (seen) std::cout << cataloguer_words(infer_format(*seen));
  auto const bill = reckon({.scheme = *scheme, .pages = 340, .copies = 750, .ream = reams::of_500});
  if (bill) std::cout << bill->sheets.stated;
  return bill ? 0 : 1;
}

} // namespace

int main(int count, char** words) {
  if (count < 4) return 2;
  return of_a_formula(words[1]) + of_a_record(words[2]) + of_a_sheet(words[3]);
}
