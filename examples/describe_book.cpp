// SPDX-License-Identifier: MIT
// Describes a book from a small record. First the verdict: the format its leaf argues for, and whether the fields of the
// record agree; then what contradicts and the likely slip; then lines to paste into a record. The rest is told on request:
// why this format, sheets and height classes, formes, leaves and paper of the formula, the edition. cmake/doc/records.md
// tells what a record looks like.
#include <bifolium/bifolium.hpp>
#include <bifolium/book/evidence_of.hpp>
#include <bifolium/book/examine.hpp>
#include <bifolium/book/formula_plan.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/evidence/folding_weights.hpp>
#include <bifolium/evidence/seen_gathering.hpp>
#include <bifolium/explain/explain_foldings.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/record_lines.hpp>

#include "support/arguments.hpp"
#include "support/audit_answer.hpp"
#include "support/book.hpp"
#include "support/column_said.hpp"
#include "support/described.hpp"
#include "support/findings_told.hpp"
#include "support/leaf_told.hpp"
#include "support/wrong.hpp"

#include <iostream>
#include <string>
#include <vector>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    "usage: describe_book RECORD [--all] [--format] [--sheets] [--heights] [--formes] [--paper] [--json]\n"
    "                     [--longest-line BYTES]      a file, or - for standard input\n"
    "A record has one 'name: value' a line; a line that begins with # is a comment. Names: title, author, publisher,\n"
    "place, year, format, height, width, type height, material, chain lines, watermark, countermark, head edge,\n"
    "tail edge, fore-edge, point-hole, gatherings of, leaves, state, binding, chain spacing, year in watermark, "
    "formula,\n"
    "pagination, plates, signing, scheme, copies, overs, ream.\n"
    "  --format    also the reasons for this format, and the assumptions\n"
    "  --sheets    also the named sheets of the place and time from which the leaf can have been cut\n"
    "  --heights   also the height classes of libraries and the trade\n"
    "  --formes    also the formes of the most likely scheme\n"
    "  --paper     also the leaves and the paper of the formula, and the paper and presswork of the edition\n"
    "  --all       all of these\n"
    "  --json      one object of JSON in place of the text\n";

/// The format in its first line, and whether the record agrees with itself.
void tell_verdict(Described const& described) {
  auto const& seen = described.observation.seen();
  auto const words = cataloguer_words(described.inference, seen.year, seen.place);
  bool argues = false;
  for (auto const& reason : described.inference.candidates.front().reasons)
    argues = argues || (reason.seen && reason.kind != EvidenceKind::year);
  bool const one_leaf = described.is_one_leaf();
  std::cout << (!argues    ? "Nothing in the record argues for a format.\n"
                : one_leaf ? "One leaf: a sheet, or a part of one. It was not folded for a gathering, so that no "
                             "format is inferred.\n"
                           : words.substr(0, words.find('\n') + 1));
  if (auto const next = words.find("\nLook next at: "); next != words.npos && !one_leaf)
    std::cout << words.substr(next + 1, words.find('\n', next + 1) - next);
  bool against = false;
  auto const said = remarks(described, against);
  std::cout << verdict_of(described.audit, against) << '\n';
  tell_findings(std::cout, described.audit);
  for (auto const& remark : said) std::cout << (remark.doubt ? "  Doubtful: " : "  Odd: ") << remark.says << '\n';
  tell_period(std::cout, described.bounds, seen.year);
  std::cout << '\n';
}

/// Lines to paste into a record.
void tell_lines(Described const& described) {
  auto const& book = described.book;
  auto const line = described.physical_line();
  if (line.empty() && !book.collation) return;
  std::cout << "For the record:\n";
  if (book.collation) std::cout << "  " << signatures_note(*book.collation) << '\n';
  if (!line.empty()) std::cout << "  " << line << '\n';
  if (book.collation) std::cout << "  " << described.collation() << '\n';
  if (!described.extent()) std::cout << "  The pagination is not stated, so there is no extent.\n";
  if (book.collation)
    if (auto const signing = signing_of(*book.collation))
      for (auto const& warning : signing->warnings()) std::cout << "  signing: " << sentence_of(warning) << '\n';
  std::cout << '\n';
}

void tell_format(Described const& described, bool sheets) {
  auto const& seen = described.observation.seen();
  std::cout << cataloguer_words(described.inference, seen.year, seen.place) << '\n';
  for (auto const& candidate : described.inference)
    if (sheets && candidate.probability >= 0.1) tell_sheets(std::cout, seen, candidate.format);
  // every way of folding that shows these leaves, known formats or not
  if (auto const gathering = seen_gathering(seen))
    if (auto const left = foldings_showing(std::vector{*gathering}, {}, folding_weights(described.observation)))
      std::cout << "Foldings that show what these leaves of a gathering show, the likeliest on record first:\n"
                << explain_foldings_left(*left, 1, 5) << '\n';
}

void tell_formes(Attested scheme) {
  std::cout << "Formes of " << scheme.id() << " (" << scheme.what() << "; " << to_words(scheme.attestation())
            << "), type on the stone:\n"
            << forme_text(impose(*fold(scheme.scheme()))) << '\n';
}

/// Leaves of the formula, and its sheets under the format it states or, failing that, the one the leaf argues for.
void tell_formula(Described const& described) {
  auto const& formula = *described.book.collation;
  std::cout << "Formula: " << data_cell(described.book.formula) << "\n  "
            << number_of(formula.leaves(), "leaf in ", "leaves in ")
            << number_of(formula.gatherings(), "gathering, ", "gatherings, ")
            << number_of(formula.pages(), "page", "pages") << '\n';
  for (auto const& warning : formula.warnings())
    std::cout << "  doubtful, " << support::column_and_sentence(warning) << '\n';
  if (auto const pages = described.extent())
    if (auto const compared = compare_extent(formula, *pages)) std::cout << "  pages: " << compared->words << '\n';
  auto const format = states_paper(formula) ? formula.format() : described.format();
  if (format && format->leaves_to_sheet()) {
    auto const needed = paper(formula, *format);
    std::cout << "  " << needed.sheets.stated
              << (needed.sheets.stated > Fraction{1} ? " sheets of paper in " : " sheet of paper in ") << *format
              << " as written: " << needed.stated_assumes << "\n  " << needed.sheets.low << " if " << needed.low_assumes
              << "; " << needed.sheets.high << " if " << needed.high_assumes << '\n';
  }
  std::cout << '\n';
}

/// The edition as the formula has it: preliminaries, cancels and part-sheets too. A scheme that is named says how a sheet is
/// imposed; the formula says what went on it.
void tell_edition(Described const& described, std::optional<Attested> scheme) {
  auto const& book = described.book;
  auto const format = states_paper(*book.collation) ? book.collation->format() : described.format();
  auto sheet = format ? format->leaves_to_sheet() : std::nullopt;
  if (!sheet && scheme) sheet = make_up(*scheme).leaves_to_sheet;
  if (!sheet) return;
  Edition edition{.copies = *book.copies, .overs_percent = book.overs, .ream = book.ream};
  if (book.ream) edition.press.token = token_with(*book.ream);
  if (scheme) edition.scheme = *scheme;
  auto const bill = reckon(edition, plan_of(*book.collation, *sheet, edition.arranging));
  std::cout << "Paper for an edition, as the formula has it on sheets of " << number_of(*sheet, "leaf", "leaves")
            << ":\n"
            << (bill ? working(*bill) : sentence_of(bill.error()) + "\n");
}

/// What is told on request, in the order of the options.
void tell_rest(Described const& described, Arguments const& given) {
  auto const& book = described.book;
  auto const wanted = [&](char const* option) { return given.has("--all") || given.has(option); };
  if (wanted("--format") || wanted("--sheets")) tell_format(described, wanted("--sheets"));
  if (wanted("--heights") && book.seen.height)
    tell_height_classes(std::cout, book.binding.value_or(*book.seen.height)), std::cout << '\n';
  auto const likely = described.likely();
  auto scheme = book.scheme;
  if (!scheme && likely) scheme = likely->scheme;
  if (scheme && wanted("--formes")) tell_formes(*scheme);
  if (!wanted("--paper") || !book.collation) return;
  tell_formula(described);
  if (book.copies) tell_edition(described, scheme);
}

std::string json_of(Described const& described) {
  auto const& book = described.book;
  auto all = Json::object();
  for (auto const name : book_fields) // as written: what the library does not read passes through
    if (auto const* field = book.record.look_up(name)) {
      std::string key{name};
      for (char& c : key) c = c == ' ' || c == '-' ? '_' : c;
      all.text(key, field->value);
    }
  auto candidates = Json::array();
  for (auto const& candidate : described.inference)
    if (candidate.probability >= 0.001)
      candidates.element(Json::object()
                             .text("format", candidate.format.symbol().view())
                             .add("probability", json_number(candidate.probability, 3))
                             .written());
  auto const certainty = described.is_one_leaf() ? Certainty::not_determined : described.inference.certainty;
  all.text("certainty", to_words(certainty)).add("formats", candidates.written());
  auto lines = Json::object();
  if (book.collation) lines.text("signatures", signatures_note(*book.collation));
  if (auto const line = described.physical_line(); !line.empty()) lines.text("physical_description", line);
  if (book.collation) lines.text("collation", described.collation());
  all.add("lines", lines.written());
  if (book.collation) all.number("leaves_of_formula", book.collation->leaves());
  if (auto const pages = described.extent()) all.number("pages", pages->pages());
  bool against = false;
  auto leaf = Json::array();
  for (auto const& remark : remarks(described, against)) {
    auto object = Json::object();
    if (!remark.id.empty()) object.text("id", remark.id);
    leaf.element(object.text("level", remark.doubt ? "doubt" : "note").text("says", remark.says).written());
  }
  all.add("leaf", leaf.written());
  all.add("agrees", described.audit.agrees() && !against ? "true" : "false");
  auto audit = audit_json(book.title, described.audit);
  audit.pop_back(); // the end of the line
  return all.add("audit", audit).written() + '\n';
}

int describe(Arguments given) {
  auto const limits = given.input_limits();
  if (auto const code = given.settled(usage, 1, 1)) return *code;
  Input input{given.words()[0]};
  Lines lines{input, limits};
  std::vector<RecordError> errors;
  auto book = read_book(lines, errors);
  auto const description = read_description(texts_of(book));
  // gatherings of the formula, and the width in 19 x 12 cm, are evidence where none are stated by themselves
  auto const evidence = evidence_of(description);
  if (!book.seen.gathering_leaves)
    book.seen.gathering_leaves = evidence.gathering_leaves, book.seen.alternating_with = evidence.alternating_with;
  if (!book.seen.height && evidence.height) { // 17 cm after the pages
    book.seen.height = evidence.height, book.seen.width = evidence.width;
    book.seen.rounded_up_to = evidence.rounded_up_to, book.seen.of = evidence.of;
  }
  if (!book.seen.width && evidence.rounded_up_to == book.seen.rounded_up_to) book.seen.width = evidence.width;
  book.lowest = lowest_height(description);
  if (auto const& pages = description.pagination; pages && !pages->in && !book.extent) { // [4], 156: of pages
    book.extent.emplace();
    book.extent->pagination = pages->value;
  }
  if (!book.seen.gathering_leaves && book.seen.leaves[0].leaf != 0) leaves_of_no_gathering(book, errors);
  unread_fields(book, description, errors);
  auto const observation = observe(book.seen);
  auto const bounds = period_bounds(book.signs());
  for (auto const& error : errors)
    tell("line " + std::to_string(error.line) + ", column " + std::to_string(error.column) + ": " + error.sentence +
         " [" + std::string{error.identifier} + "]");
  if (!observation) tell(with_identifier(observation.error()));
  if (!bounds) tell(with_identifier(bounds.error()));
  // a field that cannot be read is told, and the others are described without it
  if (book.record.empty() || !observation || !bounds) return unreadable;
  auto const code = errors.empty() ? all_done : unreadable;

  Described const described{book,
                            *observation,
                            *bounds,
                            infer_format(*observation),
                            examine(description),
                            description.format || !description.formats.empty() ||
                                (description.formula && description.formula->value.format())};
  if (given.has("--json")) {
    std::cout << json_of(described);
    return code;
  }
  if (!book.title.empty()) std::cout << shown(book.title) << "\n\n";
  tell_verdict(described);
  tell_lines(described);
  tell_rest(described, given);
  return code;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return describe({argument_count,
                     arguments,
                     {"--all", "--format", "--sheets", "--heights", "--formes", "--paper", "--json"},
                     {"--longest-line"}});
  });
}
