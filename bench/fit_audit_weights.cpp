// SPDX-License-Identifier: MIT
// Counts over the descriptions of tests/data what book/audit_weights.hpp holds, and prints it as it is written there.
// Run it again when rows are added:
//   fit_audit_weights tests/data
#include <bifolium/book.hpp>

#include <fstream>
#include <iostream>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

std::vector<std::vector<std::string>> rows(std::string const& file) {
  std::ifstream in{file};
  if (!in) std::cerr << "cannot read " << file << '\n';
  std::vector<std::vector<std::string>> all;
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line[0] == '#') continue;
    all.push_back({""});
    for (char c : line)
      if (c == '\t')
        all.back().emplace_back();
      else
        all.back().back() += c;
  }
  return all;
}
void add(WeightCounts& counts, std::string const& formula, std::string const& pages, Omitted omitted) {
  FieldTexts fields;
  fields.formula = formula, fields.pagination = pages;
  Conventions conventions;
  conventions.omitted = omitted;
  auto const book = read_description(fields, conventions);
  if (book.is_complete()) counts.add(book);
}
template <class Row> void print_row(Row const& row) {
  std::cout << '{';
  for (std::size_t i = 0; i < row.size(); ++i) std::cout << (i == 0 ? "" : ", ") << row[i];
  std::cout << '}';
}
void print(char const* name, GatheringCounts::Books const& books) {
  std::cout << "            ." << name << " = {{";
  for (auto const& row : books) std::cout << '{', print_row(row), std::cout << "},\n                      ";
  std::cout << "}},\n";
}
void print(char const* name, GatheringCounts const& counts) {
  std::cout << "    ." << name << " =\n        {\n";
  print("first", counts.first), print("middle", counts.middle), print("last", counts.last),
      print("aside", counts.aside);
  std::cout << "        },\n";
}

} // namespace

int main(int count, char** arguments) {
  if (count != 2) {
    std::cerr << "usage: fit_audit_weights tests/data\n";
    return 2;
  }
  std::string const folder = std::string{arguments[1]} + '/';
  WeightCounts counts;
  for (auto const& row : rows(folder + "bmc_formulas.tsv")) add(counts, row[2], "", Omitted::error);
  for (auto const& row : rows(folder + "tcp_extents.tsv")) add(counts, row[1], row[2], Omitted::eight);
  for (auto const& row : rows(folder + "later_extents.tsv")) add(counts, row[2], row[3], Omitted::next);
  auto const weights = counts.weights();
  std::cout << "    // " << counts.books() << " books\n";
  print("early", weights.early);
  print("late", weights.late);
  std::cout << "    .unnumbered = {", print_row(weights.unnumbered), std::cout << "},\n";
  std::cout << "    .numbers_begin = ", print_row(weights.numbers_begin), std::cout << ",\n";
  std::cout << "    .without_a = " << weights.without_a << ",\n";
  std::cout << "    .odd_total = " << weights.odd_total << ",\n";
  std::cout << "    .ends_make_one = " << weights.ends_make_one << ",\n";
  std::cout << "    .preliminaries_in_both = " << weights.preliminaries_in_both << ",\n";
  std::cout << "    .preliminaries_in_pages = " << weights.preliminaries_in_pages << ",\n";
}
