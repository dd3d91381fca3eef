// SPDX-License-Identifier: MIT
// Checks descriptions of books against themselves, a record after another: what contradicts, and the likely slip.
#include <bifolium/book.hpp>

#include "support/arguments.hpp"
#include "support/audit_answer.hpp"
#include "support/audit_summary.hpp"
#include "support/looked_at.hpp"
#include "support/marc_exchange.hpp"
#include "support/records_in_order.hpp"
#include "support/tsv.hpp"

#if defined(BIFOLIUM_EXPAT)
#include "support/marc_xml.hpp"
#endif

#include <iostream>
#include <optional>
#include <string>
#include <thread>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: audit_records [--omitted error|next|8] [--letters JUW] [--blanks counted|left-out] [--repaired | --json]
                     [--threads N] [--longest-line BYTES] <RECORDS
Reads TSV with a header, or records of MARC 21 in MARCXML or ISO 2709, and recognises which. The columns of TSV can be in any
order, and each can be missing or empty:
  record formula pagination leaves plates format signing gatherings height_mm width_mm height_cm binding_mm chain_lines
  watermark countermark head_edge tail_edge fore_edge point_hole leaves_seen material year coded_year place coded_place
  rules
Cells are what catalogues write: a formula or its note (Signatures: ...), a whole physical description, a size with its format.
rules: codes of the rules that were followed, such as dcrmb or rda. Of a MARC record all of these are found in its fields.
Writes TSV, a line for each finding and for each edit of a repair, with the header
  record finding level fields delta says rank edit_field edit_kind old new column agrees share
A record without findings has no line. A record without a name is named by its number; in a table, by the number of its line.
  --repaired  writes instead: record rank edits formula pagination leaves letters share; rank 0 is the description as it is,
              then the repaired ones follow, the most likely first
  --json      writes instead one JSON object a line for each record
  --omitted   what a gathering without a leaf count means: error (a mistake, the default), next (it has the count of the next
              gathering), or 8 (eight leaves)
  --letters   the letters used in addition to the 23; by default they are inferred from each record
  --blanks    whether the catalogue counts blank leaves at the end; by default two or three pages too few are only a note
  --threads   number of threads, 1 to 256; by default as many as the machine runs at once
At the end, the number of findings of each kind is written to standard error.
)";

/// The conventions that the options ask for.
Conventions conventions_of(Arguments& given) {
  Conventions conventions;
  conventions.omitted = given.omitted();
  if (auto const letters = given.letters()) conventions.letters = *letters;
  if (given.has("--blanks"))
    conventions.blanks =
        given.choice("--blanks", {"counted", "left-out"}) == "counted" ? BlankLeaves::counted : BlankLeaves::left_out;
  return conventions;
}

Audit examined(RecordTexts const& texts, Conventions const& conventions) {
  FieldTexts fields;
  fields.formula = texts["formula"], fields.pagination = texts["pagination"], fields.leaves = texts["leaves"];
  fields.plates = texts["plates"], fields.format = texts["format"], fields.signing = texts["signing"];
  fields.gatherings = texts["gatherings"], fields.width = texts["width_mm"], fields.binding = texts["binding_mm"];
  fields.chain_lines = texts["chain_lines"], fields.watermark = texts["watermark"];
  fields.countermark = texts["countermark"], fields.point_hole = texts["point_hole"];
  fields.head_edge = texts["head_edge"], fields.tail_edge = texts["tail_edge"], fields.fore_edge = texts["fore_edge"];
  fields.leaves_seen = texts["leaves_seen"];
  fields.material = texts["material"];
  fields.year = texts["year"], fields.coded_year = texts["coded_year"], fields.place = texts["place"],
  fields.coded_place = texts["coded_place"];
  std::string centimetres;
  if (!texts["height_mm"].empty())
    fields.height = texts["height_mm"];
  else if (auto const& height = texts["height_cm"]; !height.empty())
    fields.height = centimetres = height.find("cm") == height.npos ? height + " cm" : height;
  auto audit = examine(read_description(fields, conventions_of(texts["rules"], conventions)));
  for (auto const& sentence : texts.left_out)
    audit.findings.push_back({FindingId::part_unread, Severity::note, {}, {}, sentence, {}, {}});
  return audit;
}

/// Takes all records of a source: `take(record)`.
template <class Take> void read_table(Source& source, InputLimits limits, Take take) {
  Lines lines{source, limits};
  Header const header{header_line(lines)};
  tell_columns(header, {audit_columns.begin(), audit_columns.end()});
  while (next_row(lines, header)) {
    if (lines.too_long()) {
      take({lines.number(), {}, lines.length_told()});
      continue;
    }
    auto const cells = header.cells(lines.text());
    if (auto const wide = too_wide(cells, header.size()); !wide.empty())
      tell("line " + std::to_string(lines.number()) + ": " + wide);
    RecordTexts texts;
    for (std::size_t i = 0; i < audit_columns.size(); ++i) texts.cells[i] = header.cell(cells, audit_columns[i]);
    take({lines.number(), std::move(texts), {}});
  }
}
template <class Take> void read_exchange(LookedAt& source, Take take) {
  source.pass_over_blanks();
  MarcExchange records{source};
  for (std::uint64_t number = 1; auto const record = records.next(); ++number)
    take({number, record->texts(), record->empty() ? records.wrong() : ""});
}
template <class Take> void read_xml([[maybe_unused]] Source& source, [[maybe_unused]] Take take) {
#if defined(BIFOLIUM_EXPAT)
  std::uint64_t number = 0;
  MarcXml{[&](MarcRecord const& record) { take({++number, record.texts(), {}}); }}.read(source);
#else
  throw Failure{"the program was built without expat, and reads no MARCXML: give ISO 2709 or TSV"};
#endif
}

/// The answer to a record, and what the summary counts of it.
struct AnsweredRecord {
  std::string text{};
  Audit audit{};
};

int audit_records(Arguments given) {
  auto const limits = given.input_limits();
  auto const conventions = conventions_of(given);
  bool const repaired = given.has("--repaired"), json = given.has("--json");
  if (repaired && json) given.refuse("--repaired and --json are two forms of the answer: give one of them");
  auto const threads = given.number("--threads", 1, 256).value_or(std::max(1U, std::thread::hardware_concurrency()));
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  if (!json) std::cout << (repaired ? RepairedTable::header : AuditTable::header);
  auto const answer = [&](TakenRecord const& record) {
    AnsweredRecord answered;
    auto& audit = answered.audit;
    auto const name = record.texts["record"].empty() ? std::to_string(record.number) : record.texts["record"];
    if (record.wrong.empty())
      audit = examined(record.texts, conventions);
    else // what is wrong with a record is told in its place
      audit.findings.push_back({FindingId::part_unread, Severity::error, {}, {}, record.wrong, {}, {}});
    answered.text = json       ? audit_json(name, audit)
                    : repaired ? RepairedTable::of(name, record.texts, audit)
                               : AuditTable::of(name, audit);
    return answered;
  };
  AuditSummary summary;
  auto const write = [&](AnsweredRecord const& answered) {
    std::cout << answered.text;
    summary.count(answered.audit);
  };
  RecordsInOrder records{static_cast<std::size_t>(threads), answer, write};
  auto const take = [&](TakenRecord record) { records.take(std::move(record)); };
  Input input;
  SourceAfter waited{input, [&] { records.answer_all(); }};
  LookedAt source{waited};
  try {
    if (source.is_xml())
      read_xml(source, take);
    else if (source.is_exchange())
      read_exchange(source, take);
    else
      read_table(source, limits, take);
  } catch (...) {
    records.answer_all(); // those before the failure
    throw;
  }
  records.answer_all();
  summary.tell_all();
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return audit_records({argument_count,
                          arguments,
                          {"--repaired", "--json"},
                          {"--omitted", "--letters", "--blanks", "--threads", "--longest-line"}});
  });
}
