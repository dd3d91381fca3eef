// SPDX-License-Identifier: MIT
// Checks descriptions of books against themselves, a record after another: what contradicts, and the likely slip.
#include <bifolium/book.hpp>

#include "support/arguments.hpp"
#include "support/audit_answer.hpp"
#include "support/audit_summary.hpp"
#include "support/tsv.hpp"

#include <iostream>
#include <optional>
#include <string>

using namespace bifolium;
using namespace support;

namespace {

constexpr auto usage =
    R"(usage: audit_records [--omitted error|next|8] [--letters JUW] [--blanks counted|left-out] [--repaired | --json]
                     [--longest-line BYTES] <RECORDS
Reads TSV with a header; columns in any order, any may be missing or empty:
  record formula pagination leaves plates format signing gatherings height_mm width_mm height_cm binding_mm chain_lines
  material year place
Writes TSV, a line for each finding and for each edit of a repair, with the header
  record finding level fields delta says rank edit_field edit_kind old new column agrees share
A record without findings has no line. A record without a name is named by the number of its line.
  --repaired  instead: record rank edits formula pagination leaves letters share; rank 0 is the description as it reads,
              then the repaired ones, the likeliest first
  --json      instead: one object a line for each record
  --omitted   what a gathering without a leaf count means: a mistake (unless told), the count of the next one, or eight
  --letters   letters used beside the 23; unless told, they are asked of the record
  --blanks    whether the catalogue counts blank leaves at the end; unless told, two or three pages too few are a note
How often each finding was met is said on standard error at the end.
)";

/// The conventions that the options ask for; none where they are not understood.
std::optional<Conventions> conventions_of(Arguments const& given) {
  Conventions conventions;
  auto const omitted = given.value("--omitted").value_or("error");
  if (omitted != "error" && omitted != "next" && omitted != "8") return std::nullopt;
  conventions.omitted = omitted == "8" ? Omitted::eight : omitted == "next" ? Omitted::next : Omitted::error;
  if (auto const names = given.value("--letters")) {
    Letters letters;
    for (char c : *names) {
      if (c != 'J' && c != 'U' && c != 'W') return std::nullopt;
      (c == 'J' ? letters.j : c == 'U' ? letters.u : letters.w) = true;
    }
    conventions.letters = letters;
  }
  if (auto const blanks = given.value("--blanks")) {
    if (*blanks != "counted" && *blanks != "left-out") return std::nullopt;
    conventions.blanks = *blanks == "counted" ? BlankLeaves::counted : BlankLeaves::left_out;
  }
  return conventions;
}

Audit examined(RecordTexts const& texts, Conventions const& conventions) {
  FieldTexts fields;
  fields.formula = texts["formula"], fields.pagination = texts["pagination"], fields.leaves = texts["leaves"];
  fields.plates = texts["plates"], fields.format = texts["format"], fields.signing = texts["signing"];
  fields.gatherings = texts["gatherings"], fields.width = texts["width_mm"], fields.binding = texts["binding_mm"];
  fields.chain_lines = texts["chain_lines"], fields.material = texts["material"];
  fields.year = texts["year"], fields.place = texts["place"];
  std::string centimetres;
  if (!texts["height_mm"].empty())
    fields.height = texts["height_mm"];
  else if (auto const& height = texts["height_cm"]; !height.empty())
    fields.height = centimetres = height.find("cm") == height.npos ? height + " cm" : height;
  return examine(read_description(fields, conventions));
}

int audit_records(Arguments given) {
  auto const limits = given.input_limits();
  if (auto const code = given.settled(usage, 0, 0)) return *code;
  auto const conventions = conventions_of(given);
  bool const repaired = given.has("--repaired"), json = given.has("--json");
  if (!conventions || (repaired && json)) {
    std::cerr << usage;
    return wrong_usage;
  }
  if (!json) std::cout << (repaired ? RepairedTable::header : AuditTable::header);
  AuditSummary summary;
  auto const answer = [&](std::string const& name, RecordTexts const& texts) {
    auto const audit = examined(texts, *conventions);
    std::cout << (json       ? audit_json(name, audit)
                  : repaired ? RepairedTable::of(name, texts, audit)
                             : AuditTable::of(name, audit));
    summary.count(audit);
  };
  Input input;
  Lines lines{input, limits};
  Header const header{header_line(lines)};
  tell_columns(header, {audit_columns.begin(), audit_columns.end()});
  while (next_row(lines, header)) {
    auto const number = std::to_string(lines.number());
    if (lines.too_long()) {
      summary.left_out(lines.length_told());
      continue;
    }
    auto const cells = header.cells(lines.text());
    if (auto const wide = too_wide(cells, header.size()); !wide.empty()) tell("line " + number + ": " + wide);
    RecordTexts texts;
    for (std::size_t i = 0; i < audit_columns.size(); ++i) texts.cells[i] = header.cell(cells, audit_columns[i]);
    answer(texts["record"].empty() ? number : texts["record"], texts);
  }
  summary.tell_all();
  return all_done;
}

} // namespace

int main(int argument_count, char** arguments) {
  return run([&] {
    return audit_records({argument_count,
                          arguments,
                          {"--repaired", "--json"},
                          {"--omitted", "--letters", "--blanks", "--longest-line"}});
  });
}
