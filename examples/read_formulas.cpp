// SPDX-License-Identifier: MIT
/// Reads collation formulas, one a line, and says for each how many leaves and sheets it makes. A filter: memory does
/// not grow with the input.
#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>

#include "support/arguments.hpp"

using namespace bifolium;

namespace {

constexpr std::string_view usage = R"(read_formulas [--omitted error|next|8] [--letters JUW] < FORMULAS

Reads one collation formula a line and writes a table, tab-separated:
line  status (ok, warning, error)  leaves  sheets  normalised  message
Sheets are given where the formula states its format.

  --omitted   what a gathering without a count means: an error (the default),
              the next count, as in catalogues of incunables, or eight, as in
              short-title catalogues
  --letters   letters of the signatures beside the 23 of the printer's alphabet
)";

/// Text for one cell: what would end the cell becomes a blank.
std::string cell(std::string text) {
  for (char& c : text)
    if (c == '\t' || c == '\n' || c == '\r') c = ' ';
  return text;
}

std::optional<Dialect> dialect(support::Arguments const& arguments) {
  Dialect result;
  auto const omitted = arguments.value("--omitted").value_or("error");
  if (omitted == "next")
    result.omitted = Omitted::next;
  else if (omitted == "8")
    result.omitted = Omitted::eight;
  else if (omitted != "error")
    return std::nullopt;
  for (char c : arguments.value("--letters").value_or(""))
    if (c == 'J')
      result.letters.j = true;
    else if (c == 'U')
      result.letters.u = true;
    else if (c == 'W')
      result.letters.w = true;
    else
      return std::nullopt;
  return result;
}

void write_row(std::size_t line, std::string_view text, Dialect dialect) {
  std::cout << line << '\t';
  auto const formula = read_formula(text, dialect);
  if (!formula) {
    auto error = formula.error();
    error.line = static_cast<std::uint32_t>(line);
    std::cout << "error\t\t\t\t" << cell(message(error)) << '\n';
    return;
  }
  std::cout << (formula->warnings().empty() ? "ok" : "warning") << '\t' << leaf_count(*formula) << '\t';
  if (states_paper(*formula)) std::cout << paper(*formula).as_stated;
  std::cout << '\t' << cell(write_formula(*formula)) << '\t';
  for (std::size_t i = 0; i < formula->warnings().size(); ++i) {
    auto warning = formula->warnings()[i];
    warning.line = static_cast<std::uint32_t>(line);
    std::cout << (i > 0 ? "; " : "") << cell(message(warning));
  }
  std::cout << '\n';
}

} // namespace

int main(int count, char** words) {
  support::Arguments const arguments{count, words, {}, {"--omitted", "--letters"}};
  if (auto const code = arguments.settled(usage, 0, 0)) return *code;
  auto const how = dialect(arguments);
  if (!how) {
    std::cerr << usage;
    return support::wrong_usage;
  }
  std::ios::sync_with_stdio(false);
  std::cout << "line\tstatus\tleaves\tsheets\tnormalised\tmessage\n";
  std::string text;
  for (std::size_t line = 1; std::getline(std::cin, text); ++line) {
    if (!text.empty() && text.back() == '\r') text.pop_back();
    if (text.find_first_not_of(" \t") != std::string::npos) write_row(line, text, *how);
  }
  return std::cin.bad() || !std::cout.flush() ? support::unreadable : support::all_done;
}
