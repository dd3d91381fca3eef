// SPDX-License-Identifier: MIT
/// Any bytes as the fields of a description, a line each: it is examined, every repair is an edit of the texts that reads back to
/// the number of leaves it says, and the shares add up.
#include <bifolium/book.hpp>
#include <bifolium/record/read_signature_note.hpp>

#include "must.hpp"

#include <algorithm>

using namespace bifolium;
using fuzz::must;

namespace {
std::string after(std::string text, Field field, std::vector<Edit> const& edits) {
  std::vector<Edit> of_field;
  for (auto const& edit : edits)
    if (edit.field == field) of_field.push_back(edit);
  std::sort(of_field.begin(), of_field.end(),
            [](Edit const& a, Edit const& b) { return a.from != b.from ? a.from > b.from : a.to > b.to; });
  for (auto const& edit : of_field) {
    must(edit.from <= edit.to && edit.to <= text.size(), "an edit that is not in the text", text);
    must(text.substr(edit.from, edit.to - edit.from) == edit.old, "an edit of another text", text);
    must(edit.at.column >= 1, "a column before the first", text);
    text.replace(edit.from, edit.to - edit.from, edit.put);
  }
  return text;
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
  std::string const all(data, data + size);
  std::string lines[8];
  std::size_t line = 0;
  for (char c : all)
    if (c != '\n')
      lines[line] += c;
    else if (++line == 8)
      break;
  FieldTexts fields;
  fields.formula = lines[0], fields.pagination = lines[1], fields.leaves = lines[2], fields.plates = lines[3];
  fields.format = lines[4], fields.height = lines[5], fields.chain_lines = lines[6], fields.year = lines[7];
  Conventions conventions;
  conventions.omitted = size % 2 == 0 ? Omitted::eight : Omitted::next;
  auto const book = read_description(fields, conventions);
  // what a field says beside its own matter fills an empty field, and is then the text that is edited
  if (lines[1].empty() && book.pagination) lines[1] = book.pagination->text;
  if (lines[2].empty() && book.leaves) lines[2] = book.leaves->text;
  auto const audit = examine(book);
  must(audit.repairs.size() <= 10, "more than ten repairs", all);
  double shares = audit.share_none;
  for (auto const& finding : audit.findings) must(!finding.says.empty(), "a finding without a sentence", all);
  bool const whole = std::none_of(book.unread.begin(), book.unread.end(),
                                  [](auto const& part) { return part.field == Field::formula; });
  for (auto const& repair : audit.repairs) {
    shares += repair.share;
    must(repair.share >= 0 && repair.share <= 1, "a share that is none", all);
    must(!repair.says.empty() && repair.edits.size() <= 64, "a repair without words", all);
    if (repair.formula) {
      must(*repair.formula == after(lines[0], Field::formula, repair.edits), "another formula", all);
      if (whole && lines[1].find(';') == std::string::npos) {
        auto dialect = conventions.dialect();
        if (repair.letters) dialect.letters = *repair.letters;
        auto const note = read_signature_note(*repair.formula, dialect); // a formula may be in the words of a note
        must(bool{note}, "a repaired formula that cannot be read", all + "\n-> " + *repair.formula);
        must(note->formula.leaves() == repair.leaves, "another number of leaves", all + "\n-> " + *repair.formula);
      }
    }
    if (repair.pagination)
      must(*repair.pagination == after(lines[1], Field::pagination, repair.edits), "another pagination", all);
    if (repair.leaves_text)
      must(*repair.leaves_text == after(lines[2], Field::leaves, repair.edits), "another number", all);
  }
  must(audit.repairs.empty() || (shares > .999 && shares < 1.001), "shares that do not add up", all);
  return 0;
}
