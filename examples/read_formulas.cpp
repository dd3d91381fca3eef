// SPDX-License-Identifier: MIT
// Reads collation formulas, one a line, and counts their leaves and sheets; constant memory however many there are.
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/message.hpp>

#include "support/arguments.hpp"

#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: read_formulas [--omitted error|next|8] [--letters JUW] [--keyed] <FORMULAS\n"
    "Reads one collation formula a line. --omitted says what a gathering without a leaf count "
    "means: a mistake (as it is\n"
    "without the option), the count of the next one that has one (BMC, GW), or eight (notes derived "
    "from STC). --letters\n"
    "names letters used beside the 23.\n"
    "With --keyed a line is a key, a tab and a formula; the key is written in place of the number of "
    "the line, and no\n"
    "header line: for pieces of a longer list.\n"
    "Writes TSV with the header line status leaves sheets normalised message; status is ok, warning "
    "or error, sheets is\n"
    "empty without a format statement.\n";

/// A cell: no tabs or line ends in it.
std::string cell(std::string text) {
  for (auto& c : text)
    if (c == '\t' || c == '\n' || c == '\r') c = ' ';
  return text;
}

void tell(std::string_view text, Dialect dialect) {
  auto const formula = read_formula(text, dialect);
  if (!formula) {
    std::cout << "error\t\t\t\tcolumn " << formula.error().column << ": " << cell(sentence_of(formula.error())) << '\n';
    return;
  }
  auto const leaves = leaf_count(*formula);
  std::cout << (formula->warnings().empty() ? "ok" : "warning") << '\t' << leaves << '\t';
  if (states_paper(*formula)) std::cout << paper(*formula).as_stated;
  std::cout << '\t' << cell(write_formula(*formula, Notation::unicode)) << '\t';
  bool first = true;
  for (auto const& warning : formula->warnings()) {
    std::cout << (first ? "" : "; ") << "column " << warning.column << ": " << cell(sentence_of(warning));
    first = false;
  }
  std::cout << '\n';
}

} // namespace

int main(int argument_count, char** arguments) {
  Arguments const given{argument_count, arguments, {"--keyed"}, {"--omitted", "--letters"}};
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  auto dialect = dialects::strict;
  auto const omitted = given.value("--omitted").value_or("error");
  bool known = omitted == "error" || omitted == "next" || omitted == "8";
  dialect.omitted = omitted == "8" ? Omitted::eight : omitted == "next" ? Omitted::next : Omitted::error;
  for (char c : given.value("--letters").value_or("")) {
    if (c == 'J')
      dialect.letters.j = true;
    else if (c == 'U')
      dialect.letters.u = true;
    else if (c == 'W')
      dialect.letters.w = true;
    else
      known = false;
  }
  if (!known) {
    std::cerr << usage;
    return wrong_usage;
  }
  std::ios::sync_with_stdio(false); // nothing here reads or writes by <cstdio>
  std::cin.tie(nullptr);
  bool const keyed = given.has("--keyed");
  if (!keyed) std::cout << "line\tstatus\tleaves\tsheets\tnormalised\tmessage\n";
  std::string line;
  for (std::uint64_t number = 1; std::getline(std::cin, line); ++number) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    if (number == 1 && line.starts_with("\xEF\xBB\xBF")) line.erase(0, 3);
    if (line.find_first_not_of(" \t") == line.npos) continue;
    auto const tab = keyed ? line.find('\t') : line.npos;
    if (keyed)
      std::cout << line.substr(0, tab) << '\t';
    else
      std::cout << number << '\t';
    tell(keyed ? (tab == line.npos ? std::string_view{} : std::string_view{line}.substr(tab + 1)) : line, dialect);
  }
  return all_done;
}
