// SPDX-License-Identifier: MIT
// Reads collation formulas, one a line, and counts their leaves and sheets; constant memory however many there are.
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/message.hpp>

#include "support/arguments.hpp"
#include "support/column_said.hpp"
#include "support/decimal.hpp"
#include "support/tsv.hpp"

#include <iostream>
#include <optional>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: read_formulas [--omitted error|next|8] [--letters JUW] [--keyed] [--decimals]
       [--longest-line BYTES] <FORMULAS
Reads one collation formula a line. Writes a line for each, an empty one too, as TSV with the header
  line status leaves sheets normalised message problem
status is ok, warning or error; sheets is empty if the formula states no format; problem has identifiers for programs.
Sheets are exact: 9 3/4 is nine sheets and three quarters.
  --omitted  what a gathering without a leaf count means: error (a mistake, the default), next (it has the count of the next
             gathering that has one; BMC, GW), or 8 (eight leaves; notes derived from STC)
  --letters  the letters used in addition to the 23
  --keyed    a line is a key, a tab and a formula; the key is written in place of the line number, without a header
             line: for parts of a longer list
  --decimals writes 9.75 for 9 3/4, rounded to six decimals, for programs that would read only the 9
  --longest-line BYTES  the limit of one line, 16777216 by default; a longer line is a row with an error
)";

void answer(std::string_view text, Dialect dialect, bool decimals) {
  auto const place_and_words = [](Error const& error) { return cell_of(support::column_and_sentence(error)); };
  auto const formula = read_formula(text, dialect);
  if (!formula) {
    std::cout << "error\t\t\t\t" << place_and_words(formula.error()) << '\t' << identifier(formula.error().problem)
              << '\n';
    return;
  }
  std::cout << (formula->warnings().empty() ? "ok" : "warning") << '\t' << formula->leaves() << '\t';
  if (states_paper(*formula)) std::cout << in_cell(paper(*formula).sheets.stated, decimals);
  std::cout << '\t' << data_cell(write_formula(*formula, Notation::unicode)) << '\t';
  std::string words, problems;
  for (auto const& warning : formula->warnings()) {
    words.append(words.empty() ? "" : "; ").append(place_and_words(warning));
    problems.append(problems.empty() ? "" : ";").append(identifier(warning.problem));
  }
  std::cout << words << '\t' << problems << '\n';
}

/// The dialect that the options ask for.
Dialect dialect_of(Arguments& given) {
  auto dialect = dialects::strict;
  dialect.omitted = given.omitted();
  dialect.letters = given.letters().value_or(Letters{});
  return dialect;
}

int read_formulas(Arguments given) {
  auto const limits = given.input_limits();
  auto const dialect = dialect_of(given);
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  bool const keyed = given.has("--keyed"), decimals = given.has("--decimals");
  if (!keyed) std::cout << "line\tstatus\tleaves\tsheets\tnormalised\tmessage\tproblem\n";
  Input input;
  for (Lines lines{input, limits}; lines.next();) {
    auto const& line = lines.text();
    auto const tab = keyed ? line.find('\t') : line.npos;
    if (keyed)
      std::cout << line.substr(0, tab) << '\t';
    else
      std::cout << lines.number() << '\t';
    if (lines.too_long())
      std::cout << "error\t\t\t\t" << lines.length_told() << "\tline_too_long\n";
    else
      answer(keyed ? (tab == line.npos ? std::string_view{} : std::string_view{line}.substr(tab + 1)) : line, dialect,
             decimals);
  }
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return read_formulas(
        {argument_count, arguments, {"--keyed", "--decimals"}, {"--omitted", "--letters", "--longest-line"}});
  });
}
