// SPDX-License-Identifier: MIT
// A description typed with other blanks: two of them, one that does not break, a thin one, a tab. People and programs
// type all of them (common practice, no source), so what is read, found and repaired stays the same.
#include "book_of.hpp"
#include "typed.hpp"

using namespace book;

namespace {

FieldTexts with_blanks(FieldTexts const& texts, std::string const& blank, std::vector<std::string>& kept) {
  auto all = texts;
  kept.reserve(16);
  for (auto field : {&FieldTexts::formula, &FieldTexts::pagination, &FieldTexts::plates, &FieldTexts::leaves,
                     &FieldTexts::format, &FieldTexts::height, &FieldTexts::width, &FieldTexts::signing,
                     &FieldTexts::gatherings, &FieldTexts::year, &FieldTexts::place})
    if (auto const text = texts.*field; !text.empty())
      all.*field = kept.emplace_back(with(std::string{text}, " ", blank));
  return all;
}
/// What was read, found and proposed, in words.
std::string told(FieldTexts const& texts, std::string const& blank, Omitted omitted) {
  std::vector<std::string> kept;
  auto const description = read_description(with_blanks(texts, blank, kept), conventions(omitted));
  auto const audit = examine(description);
  std::string all;
  auto const say = [&](std::string_view what, std::string const& words) {
    all.append(what).append(": ").append(with(words, blank, " ")).append("\n");
  };
  for (auto const& one : description.unread)
    say(one.rest ? "rest of" : "unread",
        std::string{identifier(one.field)} + ", " + with(one.text, blank, " ").substr(0, 12)); // it is cut
  if (description.height) say("height", std::to_string(description.height->value.to));
  if (description.width) say("width", std::to_string(description.width->value.to));
  if (description.format) say("format", std::string{description.format->value.symbol().view()});
  if (description.pagination) say("pages", std::to_string(description.pagination->value.pages()));
  for (auto const& finding : audit.findings)
    if (finding.says.find("column") == std::string::npos) say(identifier(finding.id), finding.says);
  for (auto const& repair : audit.repairs) {
    if (repair.formula) say("formula", *repair.formula);
    if (repair.pagination) say("pagination", *repair.pagination);
    if (repair.leaves_text) say("leaves", *repair.leaves_text);
  }
  return all;
}
/// The first line of a text that another has not in its place.
std::string first_difference(std::string const& a, std::string const& b) {
  auto const at = static_cast<std::size_t>(std::mismatch(a.begin(), a.end(), b.begin(), b.end()).first - a.begin());
  if (a == b) return "";
  auto const line = at == 0 ? std::string::npos : b.rfind('\n', at - 1);
  auto const from = line == std::string::npos ? 0 : line + 1;
  return b.substr(from, b.find('\n', from) - from) + " | " + a.substr(from, a.find('\n', from) - from);
}
void check_blanks(FieldTexts const& texts, Omitted omitted) {
  auto const usual = told(texts, " ", omitted);
  for (char const* blank : {"  ", "\u00a0", "\u2009", "\t", " \u00a0"}) {
    CAPTURE(std::string{blank});
    CHECK(first_difference(usual, told(texts, blank, omitted)) == "");
  }
}

} // namespace

TEST_CASE("other blanks change nothing in a description, field by field") { // constructed
  for (auto const& texts : std::initializer_list<FieldTexts>{
           {.pagination = "[8], 205, [3] p. : ill. ; 18 cm (8vo)"},
           {.pagination = "[8], 205, [3] p. : 2 maps, port. ; 18 x 12 cm"},
           {.pagination = "[8], 205, [3] p., [4] leaves of plates ; 4°"},
           {.pagination = "[8], 205, [3] p. ; 4to and 8vo"},
           {.pagination = "205 p. : col. ill. ; in folio"},
           {.pagination = "2 v. (205 ; 310 p.) ; 23 cm"},
           {.pagination = "xii and 205 pages"},
           {.pagination = "front. (port.), xii, 205 p."},
           {.pagination = "205 206 ."},
           {.leaves = "84 [i.e. 86] ff."},
           {.pagination = "205 p.", .leaves = "108 leaves ; 2 plates"},
           {.formula = "A-K⁸ ; A-C⁴", .format = "8vo in half sheets", .height = "18 cm ; 8vo"},
           {.format = "8vo", .gatherings = "gatherings in half sheets"},
           {.formula = "8°: A-H⁸; 64 leaves : p. [1-2] 3-126 [127-128] ; $4 signed"},
           {.formula = "A-H8 ; A-C8 ;", .pagination = "128 p. ; 50 p."},
           {.formula = "A-H⁸ (H8 blank ) ", .pagination = "126 p."},
           {.formula = "A-D⁸ E⁴ , F-G⁸ H²", .pagination = "96 p.", .leaves = "48"},
           {.year = "M. D.[XLIII]"},
           {.year = "MD XL[III]"},
           {.year = "M. D. [XLIII]", .place = "Impressum Venetiis ; Romae"},
           {.year = "MCCCC et LXXX et IX . "},
           {.year = "MCCCC LXXX et IX ."},
           {.year = "[M CCCC ]LXXX"},
           {.year = "anno domini M CCCC & IX"}}) {
    check_blanks(texts, Omitted::eight);
  }
}

TEST_CASE("other blanks change no finding and no repair") {
  for (auto const& [formula, pagination, leaves] :
       {Texts{"A-C D4", "32 p.", ""}, Texts{"A-G8 K4", "", "76"}, Texts{"A-C8", "", "23"}, Texts{"A-C8", "", "25"},
        Texts{"A-C8 (-A1,2,3,4)", "", "22"}, Texts{"A-C8 (-A1, 2, 3, 4)", "", "22"}, Texts{"A-C8 (-C8)", "48 p.", ""},
        Texts{"A-C8 (-C8) (-A1)", "46 p.", ""}, Texts{"A-C8 D4 (-D4)", "", "32"}, Texts{"A8 B8 , C8 D8", "48 p.", ""},
        Texts{"A-H8; A-C8;", "128 p. ; 50 p.", ""}, Texts{"A-H8", "[ 4 ], 60 leaves", ""}})
    check_blanks({.formula = formula, .pagination = pagination, .leaves = leaves}, Omitted::eight);
  int rows = 0;
  for (auto const& row : data::rows("contradicting_descriptions.tsv", 5))
    if (++rows % 3 == 0) {
      CAPTURE(row[0]);
      check_blanks({.formula = row[2], .pagination = row[3]}, row[4] == "8" ? Omitted::eight : Omitted::next);
    }
  CHECK(rows > 100);
}
