// SPDX-License-Identifier: MIT
// Descriptions beyond the limits: what is not read, not compared or not told is said, with the limit and its number. All
// constructed. That memory and work grow with the texts and no faster is counted in tests/growth.
#include <bifolium/book/examine.hpp>
#include <bifolium/book/read_description.hpp>

#include "check.hpp"

#include <doctest/doctest.h>

using namespace bifolium;

namespace {

struct LimitedField {
  Field field;
  std::string_view FieldTexts::*text;
  char const* words;
};
constexpr LimitedField limited_fields[]{{Field::formula, &FieldTexts::formula, "8°: A-C8"},
                                        {Field::pagination, &FieldTexts::pagination, "46 p."},
                                        {Field::leaves, &FieldTexts::leaves, "24 leaves"},
                                        {Field::plates, &FieldTexts::plates, "4 plates"},
                                        {Field::format, &FieldTexts::format, "octavo"},
                                        {Field::signing, &FieldTexts::signing, "$4 signed"},
                                        {Field::gatherings, &FieldTexts::gatherings, "in fours"},
                                        {Field::height, &FieldTexts::height, "187 mm"},
                                        {Field::width, &FieldTexts::width, "120 mm"},
                                        {Field::binding, &FieldTexts::binding, "195 mm"},
                                        {Field::chain_lines, &FieldTexts::chain_lines, "vertical"},
                                        {Field::watermark, &FieldTexts::watermark, "gutter"},
                                        {Field::countermark, &FieldTexts::countermark, "gutter"},
                                        {Field::head_edge, &FieldTexts::head_edge, "deckle"},
                                        {Field::tail_edge, &FieldTexts::tail_edge, "deckle"},
                                        {Field::fore_edge, &FieldTexts::fore_edge, "deckle"},
                                        {Field::point_hole, &FieldTexts::point_hole, "inside"},
                                        {Field::leaves_seen, &FieldTexts::leaves_seen, "1 gutter"},
                                        {Field::material, &FieldTexts::material, "laid"},
                                        {Field::year, &FieldTexts::year, "[1725]"},
                                        {Field::coded_year, &FieldTexts::coded_year, "1725"},
                                        {Field::place, &FieldTexts::place, "Venetiis"},
                                        {Field::coded_place, &FieldTexts::coded_place, "it"}};
static_assert(std::size(limited_fields) == field_count);

Finding const* finding_of_limit(Audit const& audit) {
  for (auto const& one : audit.findings)
    if (one.id == FindingId::limit_reached) return &one;
  return nullptr;
}

} // namespace

TEST_CASE("a field that is longer than the limit is not read, and that is said") {
  for (auto const& one : limited_fields) {
    CAPTURE(identifier(one.field));
    std::string_view const words = one.words;
    FieldTexts texts;
    texts.*one.text = words;
    bool const of_gathering = one.field == Field::leaves_seen; // which needs to know how many leaves a gathering has
    if (of_gathering) texts.gatherings = "8";
    auto const bytes = static_cast<std::uint32_t>(words.size());
    auto const within = read_description(texts, {}, {.text_bytes = bytes});
    CHECK(within == read_description(texts));
    CHECK(within != Description{});
    CHECK(within.unread.empty());
    auto const book = read_description(texts, {}, {.text_bytes = bytes - 1});
    REQUIRE(book.unread.size() == 1);
    CHECK(book.unread[0].field == one.field);
    CHECK(book.unread[0].error == error_in_field(Problem::text_too_long, "text_bytes", bytes - 1));
    CHECK(book.unread[0].text.empty());
    CHECK(!book.unread[0].rest);
    CHECK(!book.is_complete());
    auto rest = book;
    rest.unread.clear();
    CHECK(rest == read_description({.gatherings = of_gathering ? "8" : ""}));
    auto const audit = examine(book);
    REQUIRE(audit.findings.size() == 1);
    CHECK(audit.findings[0].id == FindingId::part_unread);
    CHECK(audit.findings[0].says.find(std::to_string(bytes - 1)) != std::string::npos);
    CHECK(audit.findings[0].says.find("column 0") == std::string::npos);
  }
}

TEST_CASE("a field with more runs or changes than the limit is not read, and that is said") {
  struct {
    FieldTexts texts;
    Limits limits;
    Field field;
    Problem problem;
  } const cases[]{
      {{.formula = "8°: A8 B4 C2"}, {.runs = 2}, Field::formula, Problem::too_many_runs},
      {{.formula = "8°: A-C8(-A1,2, -B1)"}, {.changes = 1}, Field::formula, Problem::too_many_changes},
      {{.pagination = "[8], 20, [4] p."}, {.runs = 2}, Field::pagination, Problem::too_many_runs},
      {{.signing = "$4 (-A1, -B1, -C1) signed"}, {.changes = 2}, Field::signing, Problem::too_many_changes},
  };
  for (auto const& one : cases) {
    CAPTURE(identifier(one.field));
    CHECK(read_description(one.texts).unread.empty());
    auto const book = read_description(one.texts, {}, one.limits);
    REQUIRE(book.unread.size() == 1);
    CHECK(book.unread[0].field == one.field);
    CHECK(identifier(book.unread[0].error.problem) == identifier(one.problem));
  }
}

TEST_CASE("a description that reaches a limit is not compared, and does not agree") {
  auto const book = read_description({.formula = "8°: A8 B4 C2(-C1)", .pagination = "[8], 18 p."});
  CHECK(examine(book).agrees());
  CHECK(examine(book).leaves == 13);
  struct {
    Limits limits;
    Field field;
    char const* says;
  } const cases[]{
      {{.text_bytes = 16}, Field::formula, "more than 16 bytes"},
      {{.runs = 2}, Field::formula, "more than 2 runs"},
      {{.changes = 0}, Field::formula, "more than 0 changes"},
  };
  for (auto const& one : cases) {
    auto const audit = examine(book, audit_weights, one.limits);
    CAPTURE(one.says);
    auto const* finding = finding_of_limit(audit);
    REQUIRE(finding != nullptr);
    CHECK(finding->fields.has(one.field));
    CHECK(finding->says.find(one.says) != std::string::npos);
    CHECK(!audit.agrees());
    CHECK(!audit.leaves);
    CHECK(audit.implied.empty());
  }
  auto const pages = examine(book, audit_weights, {.runs = 1});
  REQUIRE(pages.findings.size() >= 2);
  CHECK(pages.findings[1].fields.has(Field::pagination));
}

TEST_CASE("of more findings than the limit the most severe are told, and how many are left out") {
  // an error of the pages, doubts of letters that are left out, notes of doubtful readings
  auto const book = read_description({.formula = "8°: A8 C8 E8 G8", .pagination = "900", .year = "742"});
  auto const all = examine(book);
  REQUIRE(all.findings.size() >= 6);
  CHECK(finding_of_limit(all) == nullptr);
  for (std::uint32_t most = 0; most < all.findings.size(); ++most) {
    auto const some = examine(book, audit_weights, {.findings = most});
    REQUIRE(some.findings.size() == most + 1);
    std::vector<Finding> told;
    for (auto const& one : some.findings)
      if (one.id != FindingId::limit_reached) told.push_back(one);
    CHECK(std::equal(told.begin(), told.end(), all.findings.begin()));
    auto const* left_out = finding_of_limit(some);
    REQUIRE(left_out != nullptr);
    CHECK(left_out->says.starts_with(std::to_string(all.findings.size() - most)));
    CHECK(!some.agrees());
    for (std::size_t i = 1; i < some.findings.size(); ++i) CHECK(some.findings[i - 1].level >= some.findings[i].level);
  }
  CHECK(examine(book, audit_weights, {.findings = static_cast<std::uint32_t>(all.findings.size())}) == all);
}

TEST_CASE("repairs of very many parts or parentheses are not searched for, which is said") {
  auto const says = [](Audit const& audit, std::string_view words) {
    for (auto const& one : audit.findings)
      if (one.id == FindingId::not_searched && one.says.find(words) != std::string::npos) return true;
    return false;
  };
  auto const parts = [&](int n) {
    std::string formula = "A8", pages = "20";
    for (int i = 1; i < n; ++i) formula += "; A8", pages += "; 20";
    return examine(read_description({.formula = formula, .pagination = pages + " p."}));
  };
  CHECK(!says(parts(16), "parts"));
  CHECK(!parts(16).repairs.empty());
  CHECK(says(parts(17), "more than 16 parts"));
  CHECK(parts(17).repairs.empty());
  CHECK(parts(17).share_none == 1);
  std::string formula = "8°: A-C8";
  for (int i = 0; i < 4000; ++i) formula += " (C8 blank)";
  CHECK(says(examine(read_description({.formula = formula, .pagination = "900 p."})), "parentheses"));
}

TEST_CASE("words in a formula that are not read are told in full, each with its place") {
  std::string_view const words = "A3 perhaps cancelled by the printer himself"; // more than an error quotes
  auto const text = "8°: A8 (" + std::string{words} + ")\n B8 (" + std::string{words} + ") C8";
  auto const book = read_description({.formula = text});
  REQUIRE(book.unread.size() == 2);
  std::size_t from = 0;
  for (auto const& one : book.unread) {
    from = text.find(words, from + 1);
    CHECK(one.rest);
    CHECK(one.text == words);
    CHECK(one.from == from);
    CHECK(one.error.place == place_in(text, from));
  }
}
