// SPDX-License-Identifier: MIT
// Reckons the paper and presswork of editions, a row each: TSV on standard input, TSV on standard output.
#include "support/arguments.hpp"
#include "support/bill_told.hpp"
#include "support/edition.hpp"

#include <iostream>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: reckon_paper [--full | --plans | --working | --compare FROM-TO] [--decimals]
       [--omitted error|next|8] [--longest-line BYTES] <EDITIONS
Reads TSV with a header. Columns can be in any order; those that can be missing can be empty too. Other columns are copied.
  scheme            an id of show_formes --list, or a name such as octavo
  pages             pages of text; or for casting off: words, letters or ens of the manuscript, with a_line (and
                    least_a_line, most_a_line) and lines_a_page, or page_height_mm and twenty_lines_mm
  formula           in place of scheme and pages: 8°: π⁴ A-K⁸ L⁴; preliminaries, cancels and part-sheets are printed as
                    the formula has them. If there is a scheme too, the gatherings are put to press by it; it gives the
                    format if the formula states none.
  copies            copies wanted; or, if it is empty, reams (34 or 34.5), with quires and loose_sheets if an account names
                    them: copies_of_account has the copies that take this paper, by the ream that is named or by each of
                    472, 480, 500 and 516. The last unit of the account may be a started one.
Columns that can be missing:
  prelim_pages end_pages cancel_leaves; end_matter apart or runs-on
  overs_percent     overs of every sheet in per cent (3.2); overplus: a number of further copies
  ream_sheets       472, 480, 500, 516 or 1000; or ream_year (1682, 1800-1850) and ream_place (London): a ream is chosen
                    only if exactly one was in use. Without a ream the answer is in sheets.
  ream_price forme_price token_price   whole numbers of the smallest unit of the currency
  ream_kg or ream_lb; sheet_height_mm and sheet_width_mm for grammes a square metre
  sharing           once (unequal parts of two matters on one sheet; the default), none, freely
  part_sheets       turned (several copies a sheet; the default) or cut-first. A part that is less than half a sheet
                    has its pages set several times, which the message says and the prices do not count.
  token_impressions (by default 258 with reams of 516 (Savage), else 240 with quires of 24 and 250 with 25 (Moxon)),
  impressions_an_hour (250), crew full or half, presses (1), hours_a_day (10), tokens_a_day (12)
Writes the columns it read, then gatherings sheets_per_copy formes sheets reams quires loose_sheets impressions tokens
message problem, and copies_of_account if the table has reams, quires or loose_sheets. A row without an answer has the
reason in message and its identifiers in problem. If the table has a column of one of these names, the one that is added has
a number: sheets_2. Numbers are exact: 9 3/4 is nine sheets and three quarters.
  --decimals writes 9.75 for 9 3/4, rounded to six decimals, for programs that would read only the 9
  --omitted error|next|8  what a gathering without a leaf count means: a mistake (the default), the count of the next, or eight
  --full     adds before message: range of sheets, blank pages, formula, weight, costs, time, type and alphabets
  --plans    the same with a row for each plan of the edition, those with the least paper and the fewest formes first
  --working  how each bill was calculated, in words
  --compare FROM-TO  rows that name one text (column text), at most 32, are options for printing it: finds the least, by cost if all
             name the same prices and otherwise by sheets, for every run of FROM to TO copies; columns text from to least order
             message problem
             (order: <= where the option before is never dearer in these runs, = where the two cost the same)
  --longest-line BYTES  the limit of one line, 16777216 by default; a longer line is a row with an error
)";

/// One row as it is asked for.
class Printer {
  Header header_;
  Dialect dialect_;
  bool full_, plans_, working_, accounts_, decimals_;
  std::string empty_{};

  static std::string in_words(Bill const& bill, EditionRow const& row) {
    auto words = row.said.empty() ? "" : cell_of(row.said) + "\n";
    if (!row.asks_for_copies()) words.append(bifolium::working(bill));
    if (!row.account) return words;
    auto const copies = copies_in_words(row, bill.plan);
    return words.append(copies ? *copies : sentence_of(copies.error())).append("\n");
  }
  void put(std::string const& input, Expected<Bill> const& bill, EditionRow const& row) const {
    std::cout << input << '\t';
    auto wrong = row.wrong;
    std::string copies;
    if (bill && row.account) {
      if (auto const words = copies_in_words(row, bill->plan))
        copies = *words;
      else
        wrong.add("", words.error());
    }
    if (!bill || !wrong.empty()) {
      std::cout << empty_ << wrong.words() << '\t' << wrong.problems();
    } else if (row.asks_for_copies()) {
      put_copy(*bill, decimals_);
      for (auto c : std::string_view{full_ ? full : ""}) std::cout << (c == '\t' ? "\t" : "");
      std::cout << '\t' << remarks(*bill, row) << '\t';
    } else {
      put_usual(*bill, decimals_);
      if (full_) put_full(*bill, row, decimals_);
      std::cout << '\t' << remarks(*bill, row) << '\t';
    }
    std::cout << (accounts_ ? "\t" : "") << copies << '\n';
  }

public:
  Printer(std::string const& first, Arguments const& given, Dialect dialect)
      : header_{first}, dialect_{dialect}, full_{given.has("--full") || given.has("--plans")},
        plans_{given.has("--plans")}, working_{given.has("--working")}, accounts_{header_.column("reams") ||
                                                                                  header_.column("quires") ||
                                                                                  header_.column("loose_sheets")},
        decimals_{given.has("--decimals")} {
    auto const columns = std::string{usual} + (full_ ? full : "");
    for (char c : columns) empty_ += c == '\t' ? "\t" : "";
    empty_ += '\t';
    if (working_) return;
    auto const all = columns + "\tmessage\tproblem" + (accounts_ ? "\tcopies_of_account" : "");
    std::cout << first << '\t' << added_columns(header_, all) << '\n';
  }
  void operator()(Lines const& lines) const {
    auto const cells = header_.cells(lines.text());
    EditionRow row{header_, cells, lines, dialect_};
    auto const input = fitted(cells, header_.size());
    auto const bill = row.wrong.empty() ? row.bill() : Expected<Bill>{error_at(Problem::not_a_number, TextPlace{})};
    if (row.wrong.empty() && !bill) row.wrong.add("", bill.error());
    if (working_) {
      std::cout << input << '\n' << (bill ? in_words(*bill, row) : row.wrong.words() + "\n") << '\n';
      return;
    }
    if (!plans_ || !bill || row.plan) return put(input, bill, row);
    auto const all = bifolium::plans(make_up(row.edition.scheme), pages_of(row.edition), row.edition.arranging.parts);
    for (auto const& plan : *all) put(input, reckon(row.asks_for_copies() ? bill->edition : row.edition, plan), row);
  }
};

/// The rows of one text, and what is wrong with others of it.
struct Text {
  std::string name;
  std::vector<PrintingOption> options;
  std::vector<std::string> names;
};

void put_comparison(Text const& text, std::int64_t from, std::int64_t to) {
  bool any = false, same = true;
  for (auto const& option : text.options) {
    auto const& edition = option.edition;
    any = any || edition.price_of_ream || edition.price_of_forme || edition.price_of_token;
    same = same && prices_alike(edition, text.options.front().edition);
  }
  bool const priced = any && same;
  auto const found = compare(text.options, from, to, priced ? CompareBy::cost : CompareBy::sheets);
  if (!found) {
    std::cout << text.name << "\t\t\t\t\t" << cell_of(sentence_of(found.error())) << '\t'
              << identifier(found.error().problem) << '\n';
    return;
  }
  for (auto const& stretch : *found) {
    std::cout << text.name << '\t' << stretch.from << '\t' << stretch.to << '\t' << text.names[stretch.least()] << '\t';
    for (std::size_t i = 0; i < stretch.order.size(); ++i)
      std::cout << (i == 0 ? "" : stretch.equal[i] ? " = " : " <= ") << text.names[stretch.order[i]];
    std::cout << '\t'
              << (priced ? "by cost"
                  : any  ? "by sheets: not every row names the same prices; write 0 for what costs nothing"
                         : "by sheets: no row has a price")
              << "\t\n";
  }
}

int compare_rows(Lines& lines, Header const& header, Dialect dialect, std::int64_t from, std::int64_t to) {
  // one more than compare() takes, so that it says that there are too many, and no more
  constexpr std::size_t most_kept = 33;
  std::vector<Text> texts;                               // in the order in which they come
  std::unordered_map<std::string, std::size_t> place_of; // by name
  std::cout << "text\tfrom\tto\tleast\torder\tmessage\tproblem\n";
  for (std::int64_t number = 1; next_row(lines, header); ++number) {
    auto const cells = header.cells(lines.text());
    EditionRow row{header, cells, lines, dialect, false};
    auto const option =
        row.wrong.empty() ? row.option() : Expected<PrintingOption>{error_at(Problem::not_a_number, TextPlace{})};
    if (row.wrong.empty() && !option) row.wrong.add("", option.error());
    if (!option) {
      std::cout << row.named("text") << "\t\t\t\t\trow " << number << ": " << row.wrong.words() << '\t'
                << row.wrong.problems() << '\n';
      continue;
    }
    auto const [known, fresh] = place_of.try_emplace(row.named("text"), texts.size());
    auto const at = known->second;
    if (fresh) texts.push_back({row.named("text"), {}, {}});
    if (texts[at].options.size() == most_kept) continue;
    texts[at].options.push_back(*option);
    texts[at].names.push_back("row " + std::to_string(number) + " (" +
                              (row.has_scheme() ? row.named("scheme") : row.formula) + ")");
  }
  for (auto const& text : texts) put_comparison(text, from, to);
  return all_done;
}

/// The range that `--compare` names; none where it is not understood.
std::optional<std::pair<std::int64_t, std::int64_t>> copies_compared(std::string_view range) {
  auto const dash = range.find('-');
  if (dash == range.npos) return std::nullopt;
  auto const from = decimal(range.substr(0, dash)).value, to = decimal(range.substr(dash + 1)).value;
  if (!from || !to || !from->is_whole() || !to->is_whole() || *from < Fraction{1} || *to < *from) return std::nullopt;
  return std::pair{from->numerator(), to->numerator()};
}

/// Refuses a table without the columns that every edition needs.
void need_columns(Header const& header, bool copies) {
  auto const has = [&](std::initializer_list<char const*> names) {
    for (auto const* name : names)
      if (header.column(name)) return true;
    return false;
  };
  if (!has({"scheme", "formula"})) throw Failure{"the header has neither a column 'scheme' nor 'formula'"};
  if (copies && !has({"copies", "reams", "quires", "loose_sheets"}))
    throw Failure{"the header has neither a column 'copies' nor 'reams'"};
  if (!has({"formula", "pages", "words", "letters", "ens"}))
    throw Failure{"the header has no column 'pages' or 'formula', and none of words, letters or ens"};
}

int reckon_paper(Arguments given) {
  auto const limits = given.input_limits();
  auto dialect = dialects::strict;
  dialect.omitted = given.omitted();
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  auto const range = given.value("--compare");
  auto const copies = range ? copies_compared(*range) : std::nullopt;
  if (range && !copies) {
    tell("--compare takes a range of copies such as 100-3000");
    return wrong_usage;
  }
  Input input;
  Lines lines{input, limits};
  auto const first = header_line(lines);
  Header const header{first};
  tell_columns(header, edition_columns);
  need_columns(header, !copies);
  if (copies) return compare_rows(lines, header, dialect, copies->first, copies->second);
  Printer const print{first, given, dialect};
  while (next_row(lines, header)) print(lines);
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return reckon_paper({argument_count,
                         arguments,
                         {"--full", "--plans", "--working", "--decimals"},
                         {"--compare", "--omitted", "--longest-line"}});
  });
}
