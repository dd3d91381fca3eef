// SPDX-License-Identifier: MIT
// Describes a book from a small record: formats that fit its leaf and the sheet each implies, the formes of the likely
// scheme, leaves and sheets of its formula, paper for the edition. README.md tells what a record looks like.
#include <bifolium/bifolium.hpp>
#include <bifolium/fold/read_format.hpp>

#include "support/arguments.hpp"
#include "support/book.hpp"
#include "support/geometry.hpp"

#include <cmath>
#include <fstream>
#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: describe_book RECORD      a file, or - for standard input\n"
    "A record has one 'name: value' a line; a line that begins with # is a comment. Names: title, place,\n"
    "year, height, width, chain lines, formula, scheme, copies, ream.\n";

std::string whole(millimetres length) { return std::to_string(std::lround(length.count())); }
std::string percent(double part) { return std::to_string(std::lround(100 * part)) + " %"; }

/// The formats that fit, each with its sheet; gives back the first.
std::optional<Fit> tell_format(Book const& book) {
  if (!book.height || !book.width) {
    std::cout << "Format: not looked at, as the record gives no height and width.\n\n";
    return std::nullopt;
  }
  std::cout << "Leaf: " << whole(*book.height) << " x " << whole(*book.width) << " mm";
  if (book.chain_lines)
    std::cout << ", chain lines " << (*book.chain_lines == ChainLines::vertical ? "vertical" : "horizontal");
  std::cout << "\nFormats that fit, by geometry alone (what the binder took is given for height and width):\n";
  auto const fits = formats_that_fit({*book.height, *book.width}, book.chain_lines,
                                     usable_for(book.years.value_or(Years{1450, 1900}), book.region));
  for (auto const& fit : fits) {
    std::cout << "  " << fit.format << " (" << fit.format.name() << ") on " << fit.size->name << ", "
              << fit.size->sheet() << ": uncut " << whole(fit.uncut.height) << " x " << whole(fit.uncut.width)
              << ", lost " << percent(fit.height_lost) << " and " << percent(fit.width_lost)
              << (fit.chains_agree ? "" : "; the chain lines tell against it") << '\n';
    if (fit.chains_agree && &fit - fits.data() >= 5) break;
  }
  if (fits.empty()) std::cout << "  none on the sheets of the place and time\n";
  std::cout << '\n';
  return fits.empty() ? std::nullopt : std::optional{fits.front()};
}

void tell_formes(Attested scheme) {
  std::cout << "Formes of " << scheme.id() << " (" << scheme.what() << "; " << to_words(scheme.attestation())
            << "), type on the stone:\n"
            << forme_text(impose(*fold(scheme.scheme()))) << '\n';
}

/// Leaves and sheets; gives back the sheets of one copy.
std::optional<Fraction> tell_formula(Book const& book, std::optional<Format> likely) {
  if (!book.leaves) return std::nullopt;
  std::cout << "Formula: " << book.formula << "\n  " << book.leaves->leaves << " leaves in " << book.leaves->gatherings
            << (book.leaves->gatherings == 1 ? " gathering, " : " gatherings, ") << book.leaves->pages() << " pages\n";
  auto const stated = format_at_start(book.formula);
  auto const format = stated ? std::optional{stated->format} : likely;
  auto const to_sheet = format ? format->leaves_to_sheet() : std::nullopt;
  if (!to_sheet) return std::nullopt;
  Fraction const sheets{book.leaves->leaves, *to_sheet};
  std::cout << "  " << sheets << " sheets a copy, as the formula stands, in " << *format
            << (stated ? ", the format it states\n\n" : ", the first of the formats above\n\n");
  return sheets;
}

void tell_paper(Book const& book, std::optional<Fraction> sheets_a_copy) {
  if (!book.copies || !sheets_a_copy) return;
  auto const all = checked_multiply(*sheets_a_copy, Fraction{*book.copies});
  if (!all) {
    std::cout << "Paper: more than can be reckoned\n";
    return;
  }
  std::cout << "Paper: " << *book.copies << " copies x " << *sheets_a_copy << " sheets = " << all->ceil() << " sheets";
  if (book.ream) {
    auto const count = counted(all->ceil(), *book.ream);
    std::cout << " = " << count.reams << " reams, " << count.quires << " quires, " << count.loose << " sheets ("
              << book.ream->name << ", quires of " << book.ream->quire << ')';
  }
  std::cout << "\n  nothing is added for spoilage\n";
}

} // namespace

int main(int argument_count, char** arguments) {
  Arguments const given{argument_count, arguments, {}, {}};
  if (auto const code = given.settled(usage, 1, 1)) return *code;
  std::ifstream file;
  if (given.words()[0] != "-") file.open(given.words()[0]);
  if (given.words()[0] != "-" && !file) {
    std::cerr << "cannot read " << given.words()[0] << '\n';
    return unreadable;
  }
  std::vector<RecordError> errors;
  auto const book = read_book(given.words()[0] == "-" ? std::cin : file, errors);
  for (auto const& error : errors)
    std::cerr << "line " << error.line << ", column " << error.column << ": " << error.sentence << '\n';
  if (!errors.empty()) return unreadable;

  if (!book.title.empty()) std::cout << book.title << "\n\n";
  auto const likely = tell_format(book);
  if (book.scheme || likely) tell_formes(book.scheme ? *book.scheme : likely->scheme);
  tell_paper(book, tell_formula(book, likely ? std::optional{likely->format} : std::nullopt));
  return all_done;
}
