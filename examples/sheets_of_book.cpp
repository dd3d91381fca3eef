// SPDX-License-Identifier: MIT
// The sheets on which books were printed: what is left after whole sheets, and how it may have been put together. A row each.
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/message.hpp>

#include "support/arguments.hpp"
#include "support/remnants_seen.hpp"
#include "support/tsv.hpp"

#include <iostream>
#include <sstream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: sheets_of_book [--longest-line BYTES] <BOOKS
Reads TSV with a header. Columns can be in any order; other columns are copied:
  formula  with its format: 8°: A⁴ B-O⁸(±C3) P²
  stocks   units and their stocks of paper, if they are known: A=pot P=crown
  marks    units and the number of their leaves that show a part of a watermark: A=4 P=2
Writes the columns it read, then
  whole_sheets units groupings fewest_pieces with_fewest likeliest left_over paper look_at message
likeliest is a way with the fewest pieces of presswork and then the fewest unused leaves: {A P ±C3} {a}, ±H7 in L4
Only the number of leaves counts, not whether the pages can be imposed together. That little was wasted is an assumption.
)";

std::string in_words(SheetsOfBook const& book, SheetGrouping const& grouping) {
  std::string text;
  for (auto const& sheet : grouping.sheets) {
    text += text.empty() ? "{" : " {";
    for (std::size_t i = 0; i < sheet.size(); ++i) text.append(i == 0 ? "" : " ").append(book.units[sheet[i]].name);
    text += '}';
  }
  for (auto const& [unit, place] : grouping.in_places)
    text.append(text.empty() ? "" : ", ").append(book.units[unit].name + " in " + book.places[place].name);
  return text;
}
std::string answer(std::string const& text, std::string_view stocks, std::string_view marks) {
  auto const failed = [](std::string const& why) { return "\t\t\t\t\t\t\t\t\t" + cell_of(why); };
  auto const formula = read_formula(text);
  if (!formula) return failed(sentence_of(formula.error()));
  if (!formula->format() || !formula->format()->leaves_to_sheet())
    return failed("the formula does not say the format: write 8°: before it");
  std::vector<RemnantEvidence> seen;
  for (bool const are_marks : {false, true})
    if (auto const wrong = take_remnants(are_marks ? marks : stocks, are_marks, seen); !wrong.empty())
      return failed(wrong);
  auto const book = sheets_of_book(*formula, *formula->format(), seen);
  if (!book) return failed(sentence_of(book.error()));
  std::string units;
  for (auto const& unit : book->units)
    units.append(units.empty() ? "" : " ").append(unit.name + '(' + std::to_string(unit.leaves) + ')');
  std::ostringstream cells;
  cells << book->whole << '\t' << units << '\t' << book->groupings << '\t' << book->fewest_pieces << '\t'
        << book->with_fewest_pieces << '\t';
  if (book->likeliest.empty())
    cells << "\t\t\t";
  else
    cells << in_words(*book, book->likeliest[0]) << '\t' << book->likeliest[0].left_over << '\t'
          << book->likeliest[0].paper << '\t';
  if (book->decides) cells << to_words(*book, *book->decides);
  cells << '\t' << (book->groupings == 0 ? "no way agrees with what was seen" : "");
  return cells.str();
}

int sheets(Arguments given) {
  auto const limits = given.input_limits();
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  Input input;
  Lines lines{input, limits};
  auto const first = header_line(lines);
  Header const header{first};
  tell_columns(header, {"formula", "stocks", "marks"});
  std::cout << first << '\t'
            << added_columns(header,
                             "whole_sheets\tunits\tgroupings\tfewest_pieces\twith_fewest\tlikeliest\tleft_over\t"
                             "paper\tlook_at\tmessage")
            << '\n';
  while (next_row(lines, header)) {
    auto const cells = header.cells(lines.text());
    auto const wide = lines.too_long() ? lines.length_told() : too_wide(cells, header.size());
    std::cout << fitted(cells, header.size()) << '\t'
              << (wide.empty()
                      ? answer(header.cell(cells, "formula"), header.cell(cells, "stocks"), header.cell(cells, "marks"))
                      : "\t\t\t\t\t\t\t\t\t" + wide)
              << '\n';
  }
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] { return sheets({argument_count, arguments, {}, {"--longest-line"}}); });
}
