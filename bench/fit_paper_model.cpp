// SPDX-License-Identifier: MIT
// Fits the paper model to the books of tests/data and writes include/bifolium/evidence/detail/paper_counts.hpp.
#include <bifolium/evidence/infer.hpp>

#include "paper_model/fitting.hpp"

#include <algorithm>
#include <cmath>
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
/// Four digits of a number of C++.
std::string digits(float value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.4g", static_cast<double>(value));
  std::string shown{text};
  if (shown.find_first_of(".e") == shown.npos) shown += '.';
  return shown + 'F';
}
void write(std::ostream& out, fitting::Fitted const& fitted, std::vector<fitting::Start> const& starts,
           fitting::Rows const& gatherings, std::size_t books) {
  out << "// SPDX-License-Identifier: MIT\n"
         "/// Written by bench/fit_paper_model.cpp from the tables of tests/data and bench/paper_model, which name "
         "their "
         "sources: "
      << books
      << " books.\n/// See paper_model.hpp for what the numbers mean.\n#pragma once\n\n"
         "#include <bifolium/evidence/paper_counts.hpp>\n\nnamespace bifolium {\ninline namespace v0 {\nnamespace "
         "detail "
         "{\nnamespace paper_rows {\n\nusing enum Region;\n// clang-format off\n\n"
         "/// Region, year, group of formats, population, books.\ninline constexpr SheetCount sheets[]{\n";
  int column = 0;
  for (auto const& one : fitted.sheets) {
    out << (column % 8 == 0 ? "    {" : " {") << identifier(one.region) << ',' << int{one.year_number} << ','
        << int{one.group} << ',' << int{one.population} << ',' << number(static_cast<double>(one.books), 1)
        << (number(static_cast<double>(one.books), 1).find('.') == std::string::npos ? ".F}," : "F},");
    if (++column % 8 == 0) out << '\n';
  }
  out << "};\n/// Region, year, shares of the formats.\ninline constexpr YearShares formats[]{\n";
  for (auto const& one : fitted.formats) {
    out << "    {" << identifier(one.region) << ',' << int{one.year_number} << ",{{";
    for (std::size_t f = 0; f < one.share.size(); ++f) out << (f > 0 ? "," : "") << digits(one.share[f]);
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
      << ",\n    .sheets = paper_rows::sheets,\n    .formats = paper_rows::formats,\n    .books{{";
  for (std::size_t y = 0; y < fitted.books.size(); ++y) out << (y > 0 ? "," : "") << digits(fitted.books[y]);
  out << "}}};\n// clang-format on\n\n"
         "} // namespace detail\n} // namespace v0\n} // namespace bifolium\n";
}

/// Tells how well books are named by a model that was fitted without them: size as recorded, year and place.
void tell_held_out(std::ostream& out, std::vector<fitting::Book> const& books,
                   std::vector<fitting::Start> const& starts, std::vector<fitting::Assumed> const& assumed) {
  constexpr char const* names[]{"incunables", "measured later", "catalogue heights", "census of quartos", "others"};
  struct Score {
    int books{}, first{}, two{};
    double loss{};
  } scores[std::size(names)];
  for (unsigned part = 0; part < fitting::parts; ++part) {
    std::vector<fitting::Book> taught;
    for (auto const& book : books)
      if (part_of(book) != part) taught.push_back(book);
    auto const fitted = fitting::fit(taught, starts, assumed);
    PaperModel const model{fitted.counts()};
    for (auto const& book : books) {
      if (part_of(book) != part) continue;
      auto& score = scores[static_cast<std::size_t>(book.source)];
      auto const inference = infer_format(*observe(seen_of(book)), Assumptions{.model = &model});
      double here = 0;
      for (auto const& one : inference)
        if (one.format.leaves_to_sheet() == book.leaves) here += one.probability;
      auto const is = [&](std::size_t i) { return inference.candidates[i].format.leaves_to_sheet() == book.leaves; };
      score.books += 1, score.first += is(0), score.two += is(0) || is(1);
      score.loss -= std::log(std::max(here, 1e-9));
    }
  }
  out << "held out by edition, a fifth at a time; first right, in the first two, log-loss:\n";
  for (std::size_t i = 0; i < std::size(names); ++i) {
    auto const n = static_cast<double>(scores[i].books);
    if (n > 0)
      out << "  " << names[i] << ", " << scores[i].books << " books: " << number(scores[i].first / n, 3) << ' '
          << number(scores[i].two / n, 3) << ' ' << number(scores[i].loss / n, 3) << '\n';
  }
}

/// Fits sets of books drawn again by edition, and writes what differs from the fit of all.
void write_resampled(std::ostream& out, fitting::Fitted const& fitted, std::vector<fitting::Book> const& books,
                     std::vector<fitting::Start> const& starts, std::vector<fitting::Assumed> const& assumed) {
  constexpr unsigned sets = 20;
  out << "// SPDX-License-Identifier: MIT\n"
         "/// Written by bench/fit_paper_model.cpp: the fit of the paper model again, on "
      << sets
      << " sets of books drawn anew, an edition at a time. Of each set:\n/// the populations, the tail, the counts of "
         "sheets "
         "in tenths, in the order of paper_counts.hpp, and the shares of 2°, 4° and 8°\n/// before 1501 and undated, "
         "in "
         "hundredths of the logarithm against the fit of all.\n#pragma once\n\n"
         "#include <bifolium/evidence/paper_counts.hpp>\n\nnamespace bifolium {\ninline namespace v0 "
         "{\nnamespace "
         "detail {\nnamespace paper_rows {\n\n// clang-format off\n";
  std::string populations, sheets, shares;
  for (unsigned set = 0; set < sets; ++set) {
    auto const again = fitting::fit(fitting::resampled(books, set), starts, assumed);
    populations += "    {{{";
    for (auto const& p : again.populations)
      populations += "{" + number(p.log_long, 4) + "," + number(p.log_short, 4) + "," + number(p.long_variance, 5) +
                     "," + number(p.covariance, 5) + "," + number(p.short_variance, 5) + "},";
    populations += "}}," + number(again.tail, 2) + "},\n";
    sheets += "    {";
    for (auto const& cell : fitted.sheets) {
      float count = 0;
      for (auto const& one : again.sheets)
        if (one.region == cell.region && one.year_number == cell.year_number && one.group == cell.group &&
            one.population == cell.population)
          count = one.books;
      sheets += std::to_string(static_cast<int>(count * 10 + 0.5F)) + ",";
    }
    sheets += "},\n";
    shares += "    {";
    for (std::size_t i = 0; i < fitted.formats.size(); ++i)
      for (std::size_t const f : {1U, 2U, 4U}) {
        auto const moved = i < again.formats.size() && again.formats[i].region == fitted.formats[i].region
                               ? std::log(again.formats[i].share[f] / fitted.formats[i].share[f])
                               : 0.0F;
        shares += std::to_string(static_cast<int>(std::lround(moved * 100))) + ",";
      }
    shares += "},\n";
  }
  out << "struct ResampledPopulations {\n  std::array<SheetPopulation, population_count> populations;\n  double "
         "tail;\n};\n"
         "inline constexpr ResampledPopulations resampled_populations[]{\n"
      << populations << "};\ninline constexpr std::uint16_t resampled_sheets[][" << fitted.sheets.size() << "]{\n"
      << sheets << "};\ninline constexpr std::int16_t resampled_shares[][" << fitted.formats.size() * 3 << "]{\n"
      << shares
      << "};\n// clang-format on\n\n} // namespace paper_rows\n} // namespace detail\n} // namespace v0\n} // "
         "namespace "
         "bifolium\n";
}

} // namespace

int main(int argument_count, char** arguments) {
  bool const again = argument_count == 4 && std::string{arguments[3]} == "--resampled";
  if (argument_count != 3 && !again) {
    std::cerr << "usage: fit_paper_model TESTS_DATA PAPER_MODEL >paper_counts.hpp\n"
                 "       fit_paper_model TESTS_DATA PAPER_MODEL --resampled >resampled_counts.hpp\n"
                 "The first also tells, on standard error, how well books held out are named.\n";
    return 2;
  }
  auto const books = fitting::books_of(arguments[1]);
  auto const starts = fitting::starts_of(arguments[2]);
  auto const assumed = fitting::assumed_of(arguments[2]);
  auto const fitted = fitting::fit(books, starts, assumed);
  std::cerr << books.size() << " books, log-likelihood " << fitted.log_likelihood << ", " << fitted.sheets.size()
            << " counts of sheets\n";
  for (auto const& p : fitted.populations)
    std::cerr << number(p.sheet().short_side().count(), 0) << " x " << number(p.sheet().long_side().count(), 0) << '\n';
  if (again) {
    write_resampled(std::cout, fitted, books, starts, assumed);
  } else {
    tell_held_out(std::cerr, books, starts, assumed);
    write(std::cout, fitted, starts, fitting::rows_of(std::string{arguments[2]} + "/gatherings.tsv"), books.size());
  }
}
