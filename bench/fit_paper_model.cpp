// SPDX-License-Identifier: MIT
// Fits the paper model to the books of tests/data and writes include/bifolium/evidence/detail/paper_counts.hpp.
#include "paper_model/fitting.hpp"

#include <cstdio>
#include <iostream>
#include <string>

using namespace bifolium;

namespace {

std::string number(double value, int digits) {
  char text[32];
  std::snprintf(text, sizeof text, "%.*f", digits, value);
  std::string shown{text};
  while (digits > 0 && shown.back() == '0') shown.pop_back();
  if (shown.back() == '.') shown.pop_back();
  return shown;
}
char const* name_of(Region region) {
  constexpr char const* names[]{"anywhere",    "europe",      "italy",       "rome",    "venice",
                                "north_italy", "other_italy", "britain",     "ireland", "france",
                                "germany",     "switzerland", "netherlands", "spain",   "usa"};
  static_assert(std::size(names) == region_count);
  return names[static_cast<std::size_t>(region)];
}

void write(std::ostream& out, fitting::Fitted const& fitted, std::vector<fitting::Start> const& starts,
           fitting::Rows const& gatherings, std::size_t books) {
  out << "// SPDX-License-Identifier: MIT\n"
         "/// Written by bench/fit_paper_model.cpp from the tables of tests/data and bench/paper_model, which name "
         "their "
         "sources: "
      << books
      << " books.\n/// See paper_model.hpp for what the numbers mean.\n#pragma once\n\n"
         "#include <bifolium/evidence/paper_model.hpp>\n\nnamespace bifolium {\ninline namespace v0 {\nnamespace "
         "detail "
         "{\nnamespace paper_rows {\n\nusing enum Region;\n// clang-format off\n\n"
         "/// Region, year, group of formats, population, books.\ninline constexpr SheetCount sheets[]{\n";
  int column = 0;
  for (auto const& one : fitted.sheets) {
    out << (column % 8 == 0 ? "    {" : " {") << name_of(one.region) << ',' << int{one.year_number} << ','
        << int{one.group} << ',' << int{one.population} << ',' << number(static_cast<double>(one.books), 1)
        << (number(static_cast<double>(one.books), 1).find('.') == std::string::npos ? ".F}," : "F},");
    if (++column % 8 == 0) out << '\n';
  }
  out << "};\n/// Region, year, leaves to the sheet, books.\ninline constexpr FormatCount formats[]{\n";
  column = 0;
  for (auto const& one : fitted.formats) {
    out << (column % 8 == 0 ? "    {" : " {") << name_of(one.region) << ',' << int{one.year_number} << ','
        << int{one.leaves} << ',' << number(static_cast<double>(one.books), 1)
        << (number(static_cast<double>(one.books), 1).find('.') == std::string::npos ? ".F}," : "F},");
    if (++column % 8 == 0) out << '\n';
  }
  out << "};\n/// Region, year, books of a year about then, shares.\ninline constexpr AssumedShares assumed[]{\n";
  for (auto const& one : fitted.assumed) {
    out << "    {" << name_of(one.region) << ',' << int{one.year_number} << ','
        << number(static_cast<double>(one.books), 5) << "F,{{";
    for (std::size_t i = 0; i < one.share.size(); ++i) {
      auto const text = number(static_cast<double>(one.share[i]), 5);
      out << (i > 0 ? "," : "") << text << (text.find('.') == text.npos ? ".F" : "F");
    }
    out << "}}},\n";
  }
  out << "};\n/// Late, leaves of the format, larger and smaller gathering, share.\ninline constexpr GatheringShare "
         "gatherings[]{\n";
  column = 0;
  for (auto const& row : gatherings) {
    auto const point = row[2].find('.');
    out << (column % 8 == 0 ? "    {" : " {") << (row[0] == "late" ? "true," : "false,") << row[1] << ','
        << row[2].substr(0, point) << ',' << (point == row[2].npos ? "0" : row[2].substr(point + 1)) << ','
        << number(std::stod(row[3]) / 100, 4) << "F},";
    if (++column % 8 == 0) out << '\n';
  }
  out << "};\n\n} // namespace paper_rows\n\n/// The populations start at";
  for (std::size_t k = 1; k < starts.size(); ++k) out << (k > 1 ? ", " : " ") << starts[k].name;
  out << "; the first is odd paper.\ninline constexpr PaperCounts paper_counts{\n    .populations{{\n";
  for (auto const& p : fitted.populations)
    out << "        {" << number(p.log_long, 4) << ", " << number(p.log_short, 4) << ", " << number(p.long_variance, 5)
        << ", " << number(p.covariance, 5) << ", " << number(p.short_variance, 5) << "},\n";
  out << "    }},\n    .tail = " << number(fitted.tail, 2)
      << ",\n    .sheets = paper_rows::sheets,\n    .formats = paper_rows::formats,\n    .assumed = "
         "paper_rows::assumed};\n// clang-format on\n\n"
         "} // namespace detail\n} // namespace v0\n} // namespace bifolium\n";
}

} // namespace

int main(int argument_count, char** arguments) {
  if (argument_count < 3) {
    std::cerr << "usage: fit_paper_model TESTS_DATA PAPER_MODEL >paper_counts.hpp\n";
    return 2;
  }
  auto const books = fitting::books_of(arguments[1]);
  auto const starts = fitting::starts_of(arguments[2]);
  auto const assumed = fitting::assumed_of(arguments[2]);
  auto const fitted = fitting::fit(books, starts, assumed);
  write(std::cout, fitted, starts, fitting::rows_of(std::string{arguments[2]} + "/gatherings.tsv"), books.size());
  std::cerr << books.size() << " books, log-likelihood " << fitted.log_likelihood << ", " << fitted.sheets.size()
            << " counts of sheets, " << fitted.formats.size() << " of formats\n";
  for (auto const& p : fitted.populations)
    std::cerr << number(p.sheet().short_side().count(), 0) << " x " << number(p.sheet().long_side().count(), 0) << '\n';
}
