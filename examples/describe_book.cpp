// SPDX-License-Identifier: MIT
// Describes a book from a small record: the format its leaf argues for and why, the sheets it could have been cut from, how
// its size is recorded, what its paper says of the date, the formes of the likely scheme, leaves and sheets of its formula,
// paper and presswork for the edition. README.md tells what a record looks like.
#include <bifolium/bifolium.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/record_lines.hpp>

#include "support/arguments.hpp"
#include "support/book.hpp"
#include "support/leaf_told.hpp"
#include "support/wrong.hpp"

#include <iostream>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: describe_book RECORD [--sheets] [--heights] [--longest-line BYTES]      a file, or - for standard input\n"
    "A record has one 'name: value' a line; a line that begins with # is a comment. Names: title, place, year, height, "
    "width,\n"
    "type height, material, chain lines, watermark, countermark, head edge, tail edge, fore-edge, point-hole,\n"
    "gatherings of, leaves, state, binding, chain spacing, year in watermark, formula, scheme, copies, overs, ream.\n"
    "  --sheets    also the named sheets of the place and time that the leaf could have been cut from\n"
    "  --heights   also the height classes of libraries and the trade\n";

/// The format the leaf argues for; gives back the first candidate where one is at least probable.
std::optional<FormatCandidate> tell_format(Observation const& observation, bool sheets) {
  auto const inference = infer_format(observation);
  auto const& seen = observation.seen();
  std::cout << cataloguer_words(inference, seen.year, seen.place);
  for (auto const& warning : observation.warnings()) std::cout << "Odd: " << sentence_of(warning) << ".\n";
  std::cout << '\n';
  for (auto const& candidate : inference)
    if (sheets && candidate.probability >= 0.1) tell_sheets(std::cout, observation.seen(), candidate.format);
  if (inference.certainty < Certainty::probable || inference.mixed) return std::nullopt;
  return inference.candidates.front();
}

/// Size, date and shelf: what the leaf tells besides its format.
void tell_record(Book const& book, PeriodBounds const& bounds, std::optional<Format> likely, bool heights) {
  auto const size = recorded(book.seen, book.binding, likely);
  if (!size.empty()) std::cout << "Size as recorded: " << size << '\n';
  tell_period(std::cout, bounds, book.seen.year);
  if (heights && book.seen.height) tell_height_classes(std::cout, book.binding.value_or(*book.seen.height));
  std::cout << '\n';
}

void tell_formes(Attested scheme) {
  std::cout << "Formes of " << scheme.id() << " (" << scheme.what() << "; " << to_words(scheme.attestation())
            << "), type on the stone:\n"
            << forme_text(impose(*fold(scheme.scheme()))) << '\n';
}

/// Leaves of the formula, and its sheets under the format it states or, failing that, the one the leaf argues for.
void tell_formula(Formula const& formula, std::string const& as_written, std::optional<Format> likely) {
  std::cout << "Formula: " << shown(as_written) << "\n  " << leaf_count(formula) << " leaves in "
            << gathering_count(formula) << (gathering_count(formula) == 1 ? " gathering, " : " gatherings, ")
            << page_count(formula) << " pages\n";
  for (auto const& warning : formula.warnings())
    std::cout << "  doubtful, column " << warning.column << ": " << sentence_of(warning) << '\n';
  auto const format = states_paper(formula) ? formula.format() : likely;
  if (format && format->leaves_to_sheet()) {
    auto const sheets = paper(formula, *format);
    std::cout << "  " << sheets.as_stated << " sheets of paper in " << *format
              << " as it stands: " << sheets.as_stated_assumes << "\n  " << sheets.low << " if " << sheets.low_assumes
              << "; " << sheets.high << " if " << sheets.high_assumes << '\n';
  }
  std::cout << '\n';
}

/// Lines to paste into a record, and whether the pages stated behind the formula bear it out.
void tell_lines(Formula const& formula, std::string const& size) {
  auto const pages = pagination_of(formula);
  auto const extent = pages ? extent_line(*pages) : std::string{};
  std::cout << "For the record:\n  " << signatures_note(formula) << '\n';
  if (auto const line = physical_description(extent, size); !line.empty()) std::cout << "  " << line << '\n';
  std::cout << "  " << collation_line(formula) << '\n';
  if (extent.empty()) std::cout << "  pages: the pagination is not stated, so the record has no extent\n";
  if (auto const compared = compare_stated_pages(formula)) std::cout << "  pages: " << compared->words << '\n';
  auto const tell_error = [](char const* of, Error const& error) {
    if (error.problem != Problem::not_stated) std::cout << "  " << of << ", " << message(error) << '\n';
  };
  if (!pages) tell_error("pages", pages.error());
  if (auto const signing = signing_of(formula))
    for (auto const& warning : signing->warnings) std::cout << "  signing: " << sentence_of(warning) << '\n';
  else
    tell_error("signing", signing.error());
  std::cout << '\n';
}

void tell_paper(Book const& book, Attested scheme) {
  auto const bill = reckon({.scheme = scheme,
                            .pages = page_count(*book.collation),
                            .copies = *book.copies,
                            .overs_percent = book.overs,
                            .ream = book.ream});
  std::cout << "Paper for an edition of as many leaves, by " << scheme.id() << ":\n"
            << (bill ? working(*bill) : sentence_of(bill.error()) + "\n");
}

int describe(Arguments given) {
  auto const limits = given.input_limits();
  if (auto const code = given.settled(usage, 1, 1)) return *code;
  Input input{given.words()[0]};
  Lines lines{input, limits};
  std::vector<RecordError> errors;
  auto const book = read_book(lines, errors);
  auto const observation = observe(book.seen);
  auto const bounds = period_bounds(book.signs());
  for (auto const& error : errors)
    tell("line " + std::to_string(error.line) + ", column " + std::to_string(error.column) + ": " + error.sentence);
  if (!observation) tell(with_identifier(observation.error()));
  if (!bounds) tell(with_identifier(bounds.error()));
  if (!errors.empty() || !observation || !bounds) return unreadable;

  if (!book.title.empty()) std::cout << shown(book.title) << "\n\n";
  auto const likely = tell_format(*observation, given.has("--sheets"));
  tell_record(book, *bounds, likely ? std::optional{likely->format} : std::nullopt, given.has("--heights"));
  auto scheme = book.scheme;
  if (!scheme && likely) scheme = likely->scheme;
  if (scheme) tell_formes(*scheme);
  if (book.collation) {
    auto const format = likely ? std::optional{likely->format} : std::nullopt;
    tell_formula(*book.collation, book.formula, format);
    tell_lines(*book.collation,
               recorded(book.seen, book.binding, book.collation->format() ? book.collation->format() : format));
  }
  if (book.collation && book.copies && scheme) tell_paper(book, *scheme);
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] { return describe({argument_count, arguments, {"--sheets", "--heights"}, {"--longest-line"}}); });
}
