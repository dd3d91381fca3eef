// SPDX-License-Identifier: MIT
// A text that is entirely plain is read without the grammar. Whatever the text, and however it is typed, the grammar alone
// gives the same: leaves, doubts, changes, and their places. The formulas are those of tests/data, whose heads name the
// sources; no fact about them is stated here.
#include <bifolium/collation/count.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "data.hpp"
#include "typed.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

std::vector<std::string> formulas_of_data() {
  std::vector<std::string> all;
  for (auto const& row : data::rows("bmc_formulas.tsv", 4)) all.push_back(row[2]);
  for (auto const& row : data::rows("bmc_formulas_ocr.tsv", 3)) all.push_back(row[0]);
  for (auto const& row : data::rows("tcp_formulas.tsv", 4)) all.push_back(row[1]);
  for (auto const& row : data::rows("later_formulas.tsv", 3)) all.push_back(row[1]);
  for (auto const& row : data::rows("formulas_as_written.tsv", 2)) all.push_back(row[1]);
  for (auto const& row : data::rows("collation_examples.tsv", 7)) all.push_back(row[5]);
  return all;
}
bool is_plain(std::string_view text, Dialect dialect) {
  detail::CountSink sink;
  return detail::PlainText<detail::CountSink>{text, dialect, sink}.read().plain;
}
/// Empty if both ways read the text alike, else the text.
std::string read_in_two_ways(std::string const& text, Dialect dialect) {
  auto const one = read_formula(text, dialect), other = detail::read_by_grammar(text, dialect);
  bool const alike = one && other ? read_alike(*one, *other) : !one && !other && one.error() == other.error();
  return alike ? "" : text;
}
std::vector<std::string> typed_otherwise(std::string const& text) {
  return {text,
          with(text, " ", "  "),
          with(text, " ", "\u00a0"),
          with(text, " ", ", "),
          with(text, " ", "; "),
          with(text, "A", "[A]"),
          with(text, "-", "\u2013"),
          with(text, "^", ""),
          with(text, "\u2074", "^4"),
          text + "; " + text,
          text + ".",
          text + " (-A1)",
          text + " A\u2078(\u2212A1)",
          "[A]\u00b2 " + text,
          text + " " + text,
          with(text, "I", "J"),
          with(text, "V", "U"),
          with(text, "A", "U"),
          with(text, "\u2078", "\u2077"),
          with(text, "4", "3"),
          text + " (last leaf blank)",
          text + " (A1 blank), A8 (A8 blank).",
          text + " (-A1, blank?); A8(-A1, blank)"};
}

} // namespace

TEST_CASE("a plain text is read without the grammar as the grammar alone reads it") {
  long plain = 0, texts = 0;
  for (auto const& formula : formulas_of_data())
    for (auto const& text : typed_otherwise(formula))
      for (auto const& dialect :
           {dialects::strict, dialects::bmc, dialects::stc, Dialect{Omitted::next, {true, true, true}, false}}) {
        ++texts;
        plain += is_plain(text, dialect) ? 1 : 0;
        CHECK(read_in_two_ways(text, dialect) == "");
      }
  MESSAGE(plain << " of " << texts << " texts are plain");
  CHECK(plain > texts / 10);
}

TEST_CASE("every short parenthesis after a plain run is read without the grammar as the grammar alone reads it") {
  std::string const pieces[]{"A1", "A4", "B2", "C4",     "2",       "3", "12", "U1",
                             ",",  ", ", ".",  " blank", ", blank", "?", "-",  "last leaf blank"};
  long plain = 0, texts = 0;
  auto const read = [&](std::string const& text) {
    ++texts;
    plain += is_plain(text, dialects::stc) ? 1 : 0;
    for (auto const& dialect : {dialects::strict, dialects::stc}) CHECK(read_in_two_ways(text, dialect) == "");
  };
  for (std::string const run : {"A4", "A-C4 ", "[A]3", "T-V8", "A-C "})
    for (std::string const begins : {"(-", "(\u2212", "(", "(-A1"}) {
      for (auto const& one : pieces) {
        read(run + begins + one + ")");
        for (auto const& two : pieces) {
          read(run + begins + one + two + ")");
          for (auto const& three : pieces) read(run + begins + one + two + three + ") D2");
        }
      }
    }
  MESSAGE(plain << " of " << texts << " texts are plain");
  CHECK(plain > 200);
}

TEST_CASE("limits are told in the same place, whether the text is plain or not") {
  std::string text = "A\u2078";
  for (char const letter : std::string_view{"BCDEFGHIKLMNOPQRSTVXYZ"}) text += std::string{" "} + letter + "\u2078";
  for (std::uint32_t runs = 1; runs < 30; ++runs)
    for (auto const* const more : {"", "(-Z1)", " (Z8 blank)"}) {
      Limits limits;
      limits.runs = limits.changes = runs;
      auto const one = read_formula(text + more, {}, limits), other = detail::read_by_grammar(text + more, {}, limits);
      CHECK(one.has_value() == other.has_value());
      CHECK(one.has_value() == (runs >= 23));
      if (!one) CHECK(one.error() == other.error());
    }
}
