// SPDX-License-Identifier: MIT
// Reckons the paper and presswork of editions, a row each: TSV on standard input, TSV on standard output.
#include <bifolium/imposition.hpp>

#include "support/arguments.hpp"
#include "support/edition.hpp"

#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: reckon_paper [--full | --plans | --working | --compare FROM-TO] [--longest-line BYTES] <EDITIONS
Reads TSV with a header; columns in any order, and what may be missing may be empty too. Other columns pass through.
  scheme            an id of show_formes --list
  pages             of text; or cast off: words, letters or ens of the copy, with a_line (and least_a_line, most_a_line)
                    and lines_a_page, or page_height_mm and twenty_lines_mm
  copies            wanted
may be missing:
  prelim_pages end_pages cancel_leaves; end_matter apart or runs-on
  overs_percent     of every sheet (3.2); overplus: so many copies more
  ream_sheets       472, 480, 500, 516 or 1000; or ream_year (1682, 1800-1850) and ream_place (London): a ream is chosen
                    only where one alone was in use. Without a ream the answer stays in sheets.
  ream_price forme_price token_price   whole numbers of the smallest coin
  ream_kg or ream_lb; sheet_height_mm and sheet_width_mm for grammes a square metre
  sharing           once (parts of unequal matters on one sheet; the default), none, freely
  part_sheets       turned (one forme, several copies a sheet; the default) or cut-first
  token_impressions (else 240 with reams of 480, 258 with reams of 516 (Savage), 250 (Moxon)), impressions_an_hour (250),
  crew full or half, presses (1), hours_a_day (10), tokens_a_day (12)
Writes the columns it read, then gatherings sheets_per_copy formes sheets reams quires loose_sheets impressions tokens
message problem. A row that cannot be calculated has the reason in message, and its identifiers in problem.
  --full     before message: range of sheets, blank pages, formula, weight, costs, time, type and alphabets
  --plans    the same with a row for each plan of the edition, least paper first, then fewest formes
  --working  the working of each bill, in words
  --compare FROM-TO  rows that name one text (column text) are options for printing it: which is least, by cost where prices are
             named and else by sheets, for every run of FROM to TO copies; columns text from to least order message problem
  --longest-line BYTES  the limit of one line, 16777216 unless told; a longer one is a row in error
)";

constexpr auto usual = "gatherings\tsheets_per_copy\tformes\tsheets\treams\tquires\tloose_sheets\timpressions\ttokens";
constexpr auto full = "\tsheets_low\tsheets_high\tblank_pages\teven_working\tformula\tgrammes_m2\tkg\tkg_low\tkg_high\t"
                      "paper_cost\tpaper_cost_low\tpaper_cost_high\tforme_cost\tpress_cost\ttotal_cost\treams_to_buy\t"
                      "perfected\tclock_hours\tdays\tdays_of_pay\ttype_pages_in_order\ttype_pages_by_formes\t"
                      "cast_off_pages\talphabets";

void put_usual(Bill const& bill) {
  std::cout << bill.plan.gatherings << '\t' << bill.sheets_a_copy() << '\t' << bill.plan.formes() << '\t'
            << bill.sheets.stated << '\t';
  if (bill.paper)
    std::cout << bill.paper->reams << '\t' << bill.paper->quires << '\t' << bill.paper->loose;
  else
    std::cout << "\t\t";
  std::cout << '\t' << bill.presswork.impressions << '\t' << bill.presswork.tokens;
}

template <class T> void put(std::optional<T> const& value) {
  std::cout << '\t';
  if (value) std::cout << *value;
}

void put_full(Bill const& bill, EditionRow const& row) {
  std::cout << '\t' << bill.sheets.low << '\t' << bill.sheets.high << '\t' << bill.plan.blank_pages << '\t'
            << (bill.plan.is_even_working() ? "yes" : "no") << '\t';
  if (auto const formula = formula_of(bill)) std::cout << *formula;
  std::cout << '\t';
  if (row.edition.weight_of_ream && row.sheet_height && row.sheet_width) {
    auto const weight = grammes_per_square_metre(*row.edition.weight_of_ream, row.edition.ream->ream, *row.sheet_height,
                                                 *row.sheet_width);
    if (weight) std::cout << with_decimals(*weight, 2);
  }
  auto const kilogrammes = [&](Fraction Range<Fraction>::*which) {
    std::cout << '\t';
    if (bill.kilogrammes) std::cout << with_decimals((*bill.kilogrammes).*which, 3);
  };
  kilogrammes(&Range<Fraction>::stated), kilogrammes(&Range<Fraction>::low), kilogrammes(&Range<Fraction>::high);
  auto const cost = [&](std::int64_t Range<std::int64_t>::*which) {
    put(bill.paper_cost ? std::optional{(*bill.paper_cost).*which} : std::nullopt);
  };
  cost(&Range<std::int64_t>::stated), cost(&Range<std::int64_t>::low), cost(&Range<std::int64_t>::high);
  put(bill.forme_cost), put(bill.press_cost), put(bill.total_cost);
  put(row.edition.ream ? std::optional{reams_to_buy(bill.sheets.stated, *row.edition.ream)} : std::nullopt);
  auto const& work = bill.presswork;
  std::cout << '\t' << work.perfected << '\t' << with_decimals(work.clock_hours, 2) << '\t'
            << with_decimals(work.days, 2) << '\t' << with_decimals(work.days_of_pay, 2);
  auto const formes = impose(*fold(row.edition.scheme.scheme()));
  auto const in_order = first_forme_in_order(formes);
  int cast_off = 0;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto side : {Side::outer, Side::inner})
      if (!formes.one_forme(sheet)) cast_off = (std::max)(cast_off, forme_type(formes, sheet, side).cast_off_pages);
  std::cout << '\t' << in_order.set_in_order << '\t' << in_order.pages << '\t' << cast_off << '\t'
            << bill.sheets_a_copy() / Fraction{sheets_in_alphabet};
}

/// What has to be said of a plan beside its figures.
std::string remarks(Bill const& bill, EditionRow const& row) {
  auto text = row.said;
  if (auto const shared = bill.plan.shared()) {
    text += text.empty() ? "" : "; ";
    char const* between = "";
    for (std::size_t m = 0; m < matters; ++m)
      if (shared->shares[m] != 0) {
        text.append(between).append(std::to_string(shared->shares[m])).append(" leaves of ");
        text.append(to_words(static_cast<Matter>(m)));
        between = " and ";
      }
    text += " worked together on one sheet: inferred";
  }
  return text;
}

/// One row as it is asked for.
class Printer {
  Header header_;
  bool full_, plans_, working_;
  std::string empty_{};

  void put(std::string const& input, Expected<Bill> const& bill, EditionRow const& row) const {
    std::cout << input << '\t';
    if (!bill) {
      std::cout << empty_ << row.wrong.words() << '\t' << row.wrong.problems() << '\n';
      return;
    }
    put_usual(*bill);
    if (full_) put_full(*bill, row);
    std::cout << '\t' << remarks(*bill, row) << "\t\n";
  }

public:
  Printer(std::string const& first, Arguments const& given)
      : header_{first}, full_{given.has("--full") || given.has("--plans")}, plans_{given.has("--plans")},
        working_{given.has("--working")} {
    auto const columns = std::string{usual} + (full_ ? full : "");
    for (char c : columns) empty_ += c == '\t' ? "\t" : "";
    empty_ += '\t';
    if (!working_) std::cout << first << '\t' << columns << "\tmessage\tproblem\n";
  }
  void operator()(Lines const& lines) const {
    auto const cells = header_.cells(lines.text());
    EditionRow row{header_, cells, lines};
    auto const input = fitted(cells, header_.size());
    auto const bill = row.wrong.empty() ? reckon(row.edition) : Expected<Bill>{error_at(Problem::not_a_number, 1, 1)};
    if (row.wrong.empty() && !bill) row.wrong.add("", bill.error());
    if (working_) {
      std::cout << input << '\n'
                << (bill ? (row.said.empty() ? "" : row.said + "\n") + bifolium::working(*bill)
                         : row.wrong.words() + "\n")
                << '\n';
      return;
    }
    if (!plans_ || !bill) return put(input, bill, row);
    auto const all = bifolium::plans(make_up(*fold(row.edition.scheme.scheme())), pages_of(row.edition),
                                     row.edition.arranging.parts);
    for (auto const& plan : *all) put(input, reckon(row.edition, plan), row);
  }
};

/// The rows of one text, and what is wrong with others of it.
struct Text {
  std::string name;
  std::vector<PrintingOption> options;
  std::vector<std::string> names;
};

void put_comparison(Text const& text, std::int64_t from, std::int64_t to) {
  bool priced = true;
  for (auto const& option : text.options)
    priced = priced && (option.edition.price_of_ream || option.edition.price_of_forme || option.edition.price_of_token);
  auto const found = compare(text.options, from, to, priced ? CompareBy::cost : CompareBy::sheets);
  if (!found) {
    std::cout << text.name << "\t\t\t\t\t" << cell_of(sentence_of(found.error())) << '\t'
              << identifier(found.error().problem) << '\n';
    return;
  }
  for (auto const& stretch : *found) {
    std::cout << text.name << '\t' << stretch.from << '\t' << stretch.to << '\t' << text.names[stretch.least()] << '\t';
    for (std::size_t i = 0; i < stretch.order.size(); ++i)
      std::cout << (i == 0 ? "" : " < ") << text.names[stretch.order[i]];
    std::cout << '\t' << (priced ? "by cost" : "by sheets: not every row has a price") << "\t\n";
  }
}

int compare_rows(Lines& lines, Header const& header, std::int64_t from, std::int64_t to) {
  std::vector<Text> texts;
  std::cout << "text\tfrom\tto\tleast\torder\tmessage\tproblem\n";
  for (std::int64_t number = 1; next_row(lines, header); ++number) {
    auto const cells = header.cells(lines.text());
    EditionRow row{header, cells, lines, false};
    auto const option = row.wrong.empty() ? printing_option(row.edition)
                                          : Expected<PrintingOption>{error_at(Problem::not_a_number, 1, 1)};
    if (row.wrong.empty() && !option) row.wrong.add("", option.error());
    if (!option) {
      std::cout << row.named("text") << "\t\t\t\t\trow " << number << ": " << row.wrong.words() << '\t'
                << row.wrong.problems() << '\n';
      continue;
    }
    std::size_t at = 0;
    while (at < texts.size() && texts[at].name != row.named("text")) ++at;
    if (at == texts.size()) texts.push_back({row.named("text"), {}, {}});
    texts[at].options.push_back(*option);
    texts[at].names.push_back("row " + std::to_string(number) + " (" + row.named("scheme") + ")");
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

/// Refuses a table without the columns no edition can be reckoned without.
void need_columns(Header const& header, bool copies) {
  for (auto name : {"scheme", "copies"})
    if (!header.column(name) && (copies || std::string_view{name} != "copies"))
      throw Failure{"the header has no column '" + std::string{name} + "'"};
  for (auto name : {"pages", "words", "letters", "ens"})
    if (header.column(name)) return;
  throw Failure{"the header has no column 'pages', and none of words, letters or ens"};
}

int reckon_paper(Arguments given) {
  auto const limits = given.input_limits();
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
  if (copies) return compare_rows(lines, header, copies->first, copies->second);
  Printer const print{first, given};
  while (next_row(lines, header)) print(lines);
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return reckon_paper(
        {argument_count, arguments, {"--full", "--plans", "--working"}, {"--compare", "--longest-line"}});
  });
}
