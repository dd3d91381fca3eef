// SPDX-License-Identifier: MIT
// What repairs promise: each edit is of the text of the field that it names, and after the edits the description, read and
// examined again, has as many leaves as the repair says and no field contradicts them. The descriptions are those of
// tests/data, with slips put into those that agree, and their facts are arranged as catalogues do: each in a field of its
// own, beside the formula, after a heading, with a change of a gathering that the formula does not have, in parts.
#include "slips.hpp"

using namespace book;

namespace {

/// The texts of a description that can be repaired.
struct Arranged {
  std::string formula{}, pagination{}, leaves{};

  [[nodiscard]] FieldTexts texts() const { return {.formula = formula, .pagination = pagination, .leaves = leaves}; }
  [[nodiscard]] std::string& of(Field field) {
    return field == Field::formula ? formula : field == Field::pagination ? pagination : leaves;
  }
};
constexpr Field edited_fields[]{Field::formula, Field::pagination, Field::leaves};

/// Counts what was looked at.
struct Held {
  int descriptions{}, repairs{}, of_other_fields{}, of_left_out{};
};

void edits_are_of_their_fields(Repair const& repair, Arranged texts) {
  for (auto const& edit : repair.edits) {
    REQUIRE((edit.field == Field::formula || edit.field == Field::pagination || edit.field == Field::leaves));
    auto const& text = texts.of(edit.field);
    REQUIRE(edit.from <= edit.to);
    REQUIRE(edit.to <= text.size());
    CHECK(text.substr(edit.from, edit.to - edit.from) == edit.old);
    CHECK(edit.at == place_in(text, edit.from));
  }
}
void repairs_hold(Arranged const& texts, Conventions const& stated, Held& held) {
  CAPTURE(texts.formula);
  CAPTURE(texts.pagination);
  CAPTURE(texts.leaves);
  auto const read = read_description(texts.texts(), stated);
  auto const audit = examine(read);
  ++held.descriptions;
  for (auto const& repair : audit.repairs) {
    CAPTURE(repair.says);
    edits_are_of_their_fields(repair, texts);
    auto after = texts;
    for (auto const field : edited_fields) after.of(field) = edited(after.of(field), field, repair.edits);
    CAPTURE(after.formula);
    CAPTURE(after.pagination);
    auto with = stated;
    if (repair.letters) with.letters = repair.letters;
    auto const book = read_description(after.texts(), with);
    auto const again = examine(book);
    // as it reads it may lack a blank leaf, which is a note
    for (auto const id : {FindingId::pages_contradict, FindingId::leaves_contradict, FindingId::plates_in_leaves})
      CHECK(!has(again, id));
    REQUIRE(!again.implied.empty());
    CHECK(again.leaves.value_or(again.implied.front().low) == repair.leaves);
    if (repair.formula && !texts.formula.empty()) CHECK(*repair.formula == after.formula);
    if (repair.pagination && !texts.pagination.empty()) CHECK(*repair.pagination == after.pagination);
    if (repair.leaves_text && !texts.leaves.empty()) CHECK(*repair.leaves_text == after.leaves);
    if (repair.pagination && texts.pagination.empty()) {
      REQUIRE(book.pagination);
      CHECK(*repair.pagination == book.pagination->text);
    }
    if (repair.leaves_text && texts.leaves.empty()) {
      REQUIRE(book.leaves);
      CHECK(*repair.leaves_text == book.leaves->text);
    }
    ++held.repairs;
    for (auto const& edit : repair.edits) held.of_other_fields += edit.field != edit.corrects ? 1 : 0;
    held.of_left_out += read.unread.empty() ? 0 : 1;
  }
}

/// The same facts, as catalogues arrange them.
std::vector<Arranged> arranged(Texts const& texts) {
  std::vector<Arranged> all{{texts.formula, texts.pagination, texts.leaves},
                            {"Signatures: " + texts.formula + '.', texts.pagination, texts.leaves},
                            {texts.formula + " (−9Z3)", texts.pagination, texts.leaves},
                            {texts.formula + " (-9Z3,4)", texts.pagination, texts.leaves}};
  if (!texts.leaves.empty()) all.push_back({texts.formula + ", " + texts.leaves + " leaves", texts.pagination, ""});
  if (texts.pagination.ends_with(" p.")) {
    auto const pages = texts.pagination.substr(0, texts.pagination.size() - 3);
    all.push_back({texts.formula + "; pp. " + pages, "", texts.leaves});
    all.push_back({"Signatures:\n" + texts.formula + ";\npp. " + pages, "", texts.leaves});
    if (!texts.leaves.empty()) all.push_back({texts.formula + "; " + texts.leaves + " leaves; pp. " + pages, "", ""});
  }
  return all;
}

} // namespace

TEST_CASE("every repair of a contradiction that catalogues left holds when it is made") {
  Held held;
  for (auto const& row : data::rows("contradicting_descriptions.tsv", 5))
    repairs_hold({row[2], row[3], ""}, conventions(row[4] == "8" ? Omitted::eight : Omitted::next), held);
  MESSAGE(held.repairs << " repairs of " << held.descriptions << " descriptions, " << held.of_left_out
                       << " with parentheses left out");
  CHECK(held.repairs > 300);
}

TEST_CASE("every repair of a slip holds when it is made, however the facts are arranged") {
  std::vector<Sound> rows;
  for (auto const& list : {sound_with_pages(), sound_with_leaves()}) rows.insert(rows.end(), list.begin(), list.end());
  Slips slips{20261201};
  Held held;
  for (int round = 0; round < 400; ++round) {
    auto const& row = slips.any_of(rows);
    auto texts = row.texts;
    auto const formula = read_formula(texts.formula, {row.omitted, {}, true});
    if (!formula) continue;
    if (round % 2 == 0) texts.leaves = std::to_string(formula->leaves());
    for (auto const* kind : {"formula exponent", "formula end_letter", "formula last_missing", "pages transposed",
                             "pages unnumbered_value", "leaves substituted"})
      if (round % 3 != 0 || kind[0] != 'f') {
        if (kind[0] != 'l' || !texts.leaves.empty())
          if (slips.put(kind, texts)) break;
      }
    for (auto const& one : arranged(texts)) repairs_hold(one, conventions(row.omitted), held);
  }
  MESSAGE(held.repairs << " repairs of " << held.descriptions << " descriptions, " << held.of_other_fields
                       << " edits of the text of another field, " << held.of_left_out << " with parentheses left out");
  CHECK(held.repairs > 2000);
  CHECK(held.of_other_fields > 200);
  CHECK(held.of_left_out > 500);
}

TEST_CASE("edits are refused by a text of which they are not") { // constructed
  std::string const formula = "4°: A-F4, 42 leaves";             // 24 leaves
  auto const audit = examine(read_description({.formula = formula}));
  REQUIRE(!audit.repairs.empty());
  auto const& edits = audit.repairs[0].edits;
  REQUIRE(edits.size() == 1);
  CHECK(edits[0].field == Field::formula);
  CHECK(edits[0].corrects == Field::leaves);
  CHECK(edited(formula, Field::formula, edits) == "4°: A-F4, 24 leaves");
  CHECK(edited(formula, Field::leaves, edits) == formula); // none of the edits is of that field
  for (auto const* other : {"", "4°: A-F4, ", "4°: A-F4, 43 leaves"})
    CHECK_THROWS_AS((void)edited(other, Field::formula, edits), BrokenPrecondition);
}

TEST_CASE("a part of a parenthesis that begins with a sign nobody knows takes no leaf away") {
  // EEBO-TCP A00723 (CC0): the page count shows that one leaf is gone
  for (std::string const sign : {"||", "|", "?", "<", "~"}) {
    FieldTexts texts;
    auto const formula = "A-H⁴ (-A1, " + sign + "-A2?)";
    texts.formula = formula, texts.pagination = "[62] p.";
    CAPTURE(formula);
    auto const audit = examine(read_description(texts));
    CHECK_FALSE(audit.contradicts());
    CHECK(audit.left_unread());
  }
}
