// SPDX-License-Identifier: MIT
// Reckons the paper and presswork of editions, a row each: TSV on standard input, TSV on standard output.
#include <bifolium/core/message.hpp>
#include <bifolium/edition.hpp>

#include "support/arguments.hpp"
#include "support/reams.hpp"
#include "support/tsv.hpp"

#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: reckon_paper <EDITIONS\n"
    "Reads TSV with a header: scheme pages prelim_pages copies overs_percent ream_sheets, in any order; scheme is an "
    "id of\n"
    "show_formes --list, overs are a percentage (3.2), ream_sheets 472, 480, 500, 516 or 1000. prelim_pages, "
    "overs_percent and\n"
    "ream_sheets may be empty or missing; without a ream the answer stays in sheets. Other columns pass through.\n"
    "Writes the columns it read, then gatherings sheets_per_copy formes sheets reams quires loose_sheets impressions "
    "tokens\n"
    "message. A token is 240 impressions with reams of 480, 258 with reams of 516 (Savage), else Moxon's 250.\n";

/// A number with up to six decimals, exactly. Nothing when it is none.
std::optional<Fraction> decimal(std::string_view text) {
  bool const negative = text.starts_with("-");
  if (negative) text.remove_prefix(1);
  std::int64_t value = 0, below = 1;
  bool point = false, digits = false;
  for (char c : text) {
    if (c == '.' && !point) {
      point = true;
      continue;
    }
    if (c < '0' || c > '9' || value > 900'000'000'000 || below == 1'000'000) return std::nullopt;
    value = value * 10 + (c - '0');
    below *= point ? 10 : 1;
    digits = true;
  }
  if (!digits) return std::nullopt;
  return Fraction{negative ? -value : value, below};
}

/// An edition from its row, or what is wrong with it.
struct Row {
  Edition edition;
  std::string wrong;

  Row(Header const& header, Cells const& cells) : wrong{too_wide(cells, header.size())} {
    auto const scheme = header.cell(cells, "scheme");
    if (auto const found = Attested::find(scheme))
      edition.scheme = *found;
    else
      say("scheme: there is no scheme '" + scheme + "'");
    count(header, cells, "pages", true, edition.pages);
    count(header, cells, "prelim_pages", false, edition.prelim_pages);
    count(header, cells, "copies", true, edition.copies);
    if (auto const overs = header.cell(cells, "overs_percent"); !overs.empty()) {
      auto const value = decimal(overs);
      if (value)
        edition.overs_percent = *value;
      else
        say("overs_percent: found '" + overs + "' where a number should stand");
    }
    if (auto const ream = header.cell(cells, "ream_sheets"); !ream.empty()) {
      edition.ream = ream_of(ream);
      if (edition.ream == reams::of_480) edition.press.token = tokens::moxon_24;
      if (edition.ream == reams::of_516) edition.press.token = tokens::savage;
      if (!edition.ream) say("ream_sheets: no ream of '" + ream + "' sheets was counted: " + reams_known);
    }
  }

private:
  void say(std::string const& sentence) { wrong += (wrong.empty() ? "" : "; ") + sentence; }
  void count(Header const& header, Cells const& cells, std::string const& column, bool wanted, std::int64_t& value) {
    auto const text = header.cell(cells, column);
    if (text.empty()) {
      if (wanted) say(column + ": is missing");
      return;
    }
    auto const number = decimal(text);
    if (!number || !number->is_whole())
      say(column + ": found '" + text + "' where a whole number should stand");
    else if (number->numerator() < 0)
      say(column + ": '" + text + "' is below nothing");
    else
      value = number->numerator();
  }
};

} // namespace

int main(int argument_count, char** arguments) {
  Arguments const given{argument_count, arguments, {}, {}};
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  auto const first = next_line(std::cin);
  if (!first) {
    std::cerr << "there is no header line\n";
    return unreadable;
  }
  Header const header{*first};
  for (auto name : {"scheme", "pages", "copies"})
    if (!header.column(name)) {
      std::cerr << "the header has no column '" << name << "'\n";
      return unreadable;
    }
  std::cout
      << *first
      << "\tgatherings\tsheets_per_copy\tformes\tsheets\treams\tquires\tloose_sheets\timpressions\ttokens\tmessage\n";
  while (auto const line = next_line(std::cin)) {
    auto const cells = split(*line);
    Row const row{header, cells};
    std::cout << fitted(cells, header.size()) << '\t';
    auto const bill = row.wrong.empty() ? reckon(row.edition) : Expected<Bill>{error_at(Problem::not_a_number, 1, 1)};
    if (!bill) {
      std::cout << "\t\t\t\t\t\t\t\t\t" << (row.wrong.empty() ? sentence_of(bill.error()) : row.wrong) << '\n';
      continue;
    }
    std::cout << bill->plan.gatherings << '\t' << bill->sheets_a_copy() << '\t' << bill->plan.formes() << '\t'
              << bill->sheets.planned << '\t';
    if (bill->paper)
      std::cout << bill->paper->reams << '\t' << bill->paper->quires << '\t' << bill->paper->loose;
    else
      std::cout << "\t\t";
    std::cout << '\t' << bill->presswork.impressions << '\t' << bill->presswork.tokens << '\t'
              << (bill->plan.shares_a_sheet() ? "parts worked together on one sheet: inferred" : "")
              << '\n';
  }
  return all_done;
}
