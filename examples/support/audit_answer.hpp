// SPDX-License-Identifier: MIT
/// The answer to one record, as `audit_records` writes it: lines of a table, repaired descriptions, or an object of JSON.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/core/character_references.hpp>

#include "json.hpp"
#include "tsv.hpp"

#include <array>
#include <string>
#include <vector>

namespace support {

/// The columns that are read, and those of MARC records, which are put into them.
inline constexpr std::array audit_columns{
    "record",      "formula",    "pagination", "leaves",      "plates",     "format",      "signing",
    "gatherings",  "height_mm",  "width_mm",   "height_cm",   "binding_mm", "chain_lines", "watermark",
    "countermark", "head_edge",  "tail_edge",  "fore_edge",   "point_hole", "leaves_seen", "material",
    "year",        "coded_year", "place",      "coded_place", "rules"};

/// The texts of a record, by column.
struct RecordTexts {
  std::array<std::string, audit_columns.size()> cells{};
  std::vector<std::string> left_out{}; ///< what of the record was not read into the columns, in sentences
  [[nodiscard]] std::string const& operator[](std::string_view column) const {
    static std::string const none;
    for (std::size_t i = 0; i < audit_columns.size(); ++i)
      if (column == audit_columns[i]) return cells[i];
    return none;
  }
  std::string& at(std::string_view column) {
    for (std::size_t i = 0; i + 1 < audit_columns.size(); ++i)
      if (column == audit_columns[i]) return cells[i];
    return cells.back();
  }
};

inline std::string letters_of(bifolium::Letters letters) {
  return std::string{letters.j ? "J" : ""} + (letters.u ? "U" : "") + (letters.w ? "W" : "");
}
inline std::string fields_of(bifolium::FieldSet fields) {
  std::string names;
  for (std::size_t i = 0; i < bifolium::field_count; ++i)
    if (auto const field = static_cast<bifolium::Field>(i); fields.has(field))
      names.append(names.empty() ? "" : " ").append(identifier(field));
  return names;
}

/// A line for each finding and for each edit of a repair.
class AuditTable {
  static std::string line(std::string_view record, std::array<std::string, 13> const& cells) {
    std::string text = data_cell(record);
    for (auto const& cell : cells) text.append("\t").append(data_cell(cell));
    return text += '\n';
  }

public:
  static constexpr auto header =
      "record\tfinding\tlevel\tfields\tdelta\tsays\trank\tedit_field\tedit_kind\told\tnew\tcolumn\tagrees\tshare\n";
  static std::string of(std::string_view record, bifolium::Audit const& audit) {
    std::string text;
    for (auto const& finding : audit.findings) {
      auto const says = finding.settle ? finding.says + "; look at: " + *finding.settle : finding.says;
      text +=
          line(record, {std::string{identifier(finding.id)}, std::string{identifier(finding.level)},
                        fields_of(finding.fields), finding.delta ? std::to_string(*finding.delta) : "", cell_of(says)});
    }
    int rank = 0;
    for (auto const& repair : audit.repairs) {
      if (repair.edits.empty() && !repair.letters) continue;
      ++rank;
      auto const says = cell_of(std::string{bifolium::likelihood_in_words(repair.share)} + ": " + repair.says);
      auto const rest = [&](bifolium::Edit const* edit) {
        return std::array<std::string, 13>{
            "",
            "",
            edit != nullptr ? std::string{identifier(edit->field)} : "formula",
            "",
            says,
            std::to_string(rank),
            edit != nullptr ? std::string{identifier(edit->field)} : "formula",
            std::string{identifier(edit != nullptr ? edit->kind : bifolium::SlipKind::alphabet)},
            edit != nullptr ? edit->old : "",
            edit != nullptr ? edit->put : "letters " + letters_of(*repair.letters),
            edit != nullptr ? std::to_string(edit->at.column) : "",
            std::to_string(repair.leaves),
            json_number(repair.share, 3)};
      };
      for (auto const& edit : repair.edits) text += line(record, rest(&edit));
      if (repair.letters) text += line(record, rest(nullptr));
    }
    return text;
  }
};

/// The description as it reads and as it would be after each repair, likeliest first. Rank 0 is as it reads.
class RepairedTable {
  static std::string line(std::string_view record, int rank, std::size_t edits, std::string_view formula,
                          std::string_view pagination, std::string_view leaves, std::string const& letters,
                          double share) {
    return data_cell(record) + '\t' + std::to_string(rank) + '\t' + std::to_string(edits) + '\t' + data_cell(formula) +
           '\t' + data_cell(pagination) + '\t' + data_cell(leaves) + '\t' + letters + '\t' + json_number(share, 3) +
           '\n';
  }

public:
  static constexpr auto header = "record\trank\tedits\tformula\tpagination\tleaves\tletters\tshare\n";
  static std::string of(std::string_view record, RecordTexts const& texts, bifolium::Audit const& audit) {
    auto const &formula = texts["formula"], &pagination = texts["pagination"], &leaves = texts["leaves"];
    std::string text;
    if (audit.repairs.empty()) text += line(record, 0, 0, formula, pagination, leaves, "", audit.agrees() ? 1 : 0);
    int rank = 0;
    for (auto const& repair : audit.repairs) {
      auto const edits = repair.edits.size() + (repair.letters ? 1 : 0);
      text += line(record, edits == 0 ? 0 : ++rank, edits, repair.formula.value_or(formula),
                   repair.pagination.value_or(pagination), repair.leaves_text.value_or(leaves),
                   repair.letters ? letters_of(*repair.letters) : "", repair.share);
    }
    // what was understood, written out: no other description, and so without a share
    if (audit.repairs.empty())
      for (auto const& finding : audit.findings)
        if (!finding.edits.empty()) {
          // edits are of the text with characters in the places of references
          bifolium::TextOfCharacters const characters{formula, bifolium::TextOfCharacters::Escapes::kept};
          auto const written_out =
              edited(characters.changed() ? characters.text() : formula, bifolium::Field::formula, finding.edits);
          text += line(record, ++rank, finding.edits.size(), written_out, pagination, leaves, "", 0);
        }
    return text;
  }
};

/// One object a record, in one line.
inline std::string audit_json(std::string_view record, bifolium::Audit const& audit) {
  auto implied = Json::array(), findings = Json::array(), repairs = Json::array();
  for (auto const& one : audit.implied) {
    auto object = Json::object();
    object.text("field", identifier(one.from));
    bool const leaves = one.of == bifolium::Implied::Quantity::leaves;
    object.number(leaves ? "leaves" : "year", one.low);
    if (one.high != one.low) object.number("to", one.high);
    implied.element(object.written());
  }
  auto const edits_of = [](std::vector<bifolium::Edit> const& edits) {
    auto array = Json::array();
    for (auto const& edit : edits)
      array.element(Json::object()
                        .text("field", identifier(edit.field))
                        .text("kind", identifier(edit.kind))
                        .number("column", edit.at.column)
                        .text("old", edit.old)
                        .text("new", edit.put)
                        .written());
    return array.written();
  };
  for (auto const& one : audit.findings) {
    auto fields = Json::array();
    for (std::size_t i = 0; i < bifolium::field_count; ++i)
      if (auto const field = static_cast<bifolium::Field>(i); one.fields.has(field))
        fields.element(json_string(identifier(field)));
    auto object = Json::object();
    object.text("id", identifier(one.id)).text("level", identifier(one.level)).add("fields", fields.written());
    if (one.delta) object.number("delta", *one.delta);
    object.text("says", one.says);
    if (one.doubted) object.text("likelier_wrong", identifier(*one.doubted));
    if (one.settle) object.text("look_at", *one.settle);
    if (!one.edits.empty()) object.add("edits", edits_of(one.edits));
    findings.element(object.written());
  }
  int rank = 0;
  for (auto const& one : audit.repairs) {
    auto object = Json::object();
    object.number("rank", one.edits.empty() && !one.letters ? 0 : ++rank).add("edits", edits_of(one.edits));
    if (one.letters) object.text("letters", letters_of(*one.letters));
    object.number("leaves", one.leaves).text("says", one.says);
    if (auto const look = what_settles(one)) object.text("look_at", *look);
    object.add("share", json_number(one.share, 3));
    repairs.element(object.written());
  }
  auto all = Json::object();
  all.text("record", record).add("implied", implied.written()).add("findings", findings.written());
  all.add("repairs", repairs.written());
  if (!audit.repairs.empty()) all.add("none", json_number(audit.share_none, 3));
  return all.written() + '\n';
}

} // namespace support
