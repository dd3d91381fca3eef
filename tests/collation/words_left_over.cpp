// SPDX-License-Identifier: MIT
// Words after the gatherings. Whether a blank follows a comma says nothing of the book: people leave it out, and a formula that
// is written again has it. So the leaves are the same with it and without it. (constructed; the formulas are from the tables)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "data.hpp"
#include "true_book.hpp"

#include <random>
#include <set>
#include <string>

using namespace bifolium;

namespace {

std::set<std::string> const& formulas_of_tables() {
  static std::set<std::string> const all = [] {
    std::set<std::string> cells;
    for (char const* file : {"bmc_formulas.tsv", "bmc_formulas_ocr.tsv", "catalogue_examples.tsv",
                             "collation_examples.tsv", "contradicting_descriptions.tsv", "formula_variants.tsv",
                             "formulas_as_written.tsv", "later_formulas.tsv", "tcp_formulas.tsv"})
      for (auto const& row : data::rows_of_any_width(file))
        for (auto const& cell : row)
          if (count_formula(cell)) cells.insert(cell);
    return cells;
  }();
  return all;
}
/// The number of leaves, or -1 if the text is no formula.
std::int64_t leaves_of(std::string const& text) {
  auto const count = count_formula(text);
  return count ? count->leaves : -1;
}

} // namespace

TEST_CASE("a blank after a comma does not change the leaves of a formula") {
  int compared = 0;
  for (auto const& text : formulas_of_tables())
    for (auto const separator : {',', ';'})
      for (std::size_t at = 0; (at = text.find(separator, at)) != text.npos; ++at) {
        auto const next = text.find_first_not_of(' ', at + 1);
        if (next == text.npos || is_digit(text[next]) || raised_digit_at(text, next).bytes != 0) continue; // A-K12,6
        auto const before = text.substr(0, at);
        if (std::count(before.begin(), before.end(), '(') != std::count(before.begin(), before.end(), ')')) continue;
        auto close = text, open = text;
        if (text[at + 1] == ' ')
          close.erase(at + 1, 1);
        else
          open.insert(at + 1, " ");
        CAPTURE(close);
        CHECK(leaves_of(close) == leaves_of(open));
        ++compared;
      }
  CHECK(compared > 100);
}

TEST_CASE("words left over are written and read again with the same leaves") {
  for (char const* text : {"8°: A-V8, Aa-Vv8,lacking Vv8", "8°: A-B8;and 2, the probably; A4", "a-z8 &6: - 1-16 pp."})
    CHECK(broken_law(text, {}) == "");
  CHECK(leaves_of("8°: A-V8, Aa-Vv8,lacking Vv8") == 319);
  std::mt19937 random{1501};
  char const* const formulas[]{"8°: A-V8, Aa-Vv8", "A-K⁸", "8°: A-K8 L4", "4°: π² A-C⁴/² D1", "a-z8 &6", "12°: A-B12"};
  char const* const separators[]{",", ", ", ". ", ".", ";", "; ", " ", ":", ": "};
  char const* const words[]{"lacking",  "lacks", "wants",    "wanting", "less",      "minus", "without", "with",
                            "plus",     "and",   "in",       "the",     "last",      "leaf",  "leaves",  "blank",
                            "A3",       "Vv8",   "K8",       "L4",      "B",         "2",     "8",       "eights",
                            "fours",    "the 2", "pp.",      "-",       "−",         "±",     "+",       "a cancel",
                            "cancels",  "?",     "1-16",     "[4]",     "vide",      "&",     "of",      "is",
                            "probably", "A8",    "unsigned", "title",   "$3 signed", "K7,8",  "no",      "J"};
  int with_words = 0, changed = 0;
  for (int i = 0; i < truth::rounds(20000); ++i) {
    std::string const formula = formulas[random() % std::size(formulas)];
    auto close = formula, open = formula;
    for (auto n = 1 + random() % 3; n-- > 0;) {
      std::string const separator = separators[random() % std::size(separators)];
      close += separator, open += separator;
      for (auto m = 1 + random() % 3, first = m; m-- > 0;) {
        std::string const word = words[random() % std::size(words)];
        if (m + 1 == first && (separator == "," || separator == ";") && !is_digit(word[0])) open += ' '; // not A-K12,6
        close += word, open += word;
        if (m > 0) close += ' ', open += ' ';
      }
    }
    CHECK(broken_law(close, {}) == "");
    CAPTURE(close);
    CHECK(leaves_of(close) == leaves_of(open));
    auto const read = read_formula(close);
    with_words += read && !read->tail().empty() ? 1 : 0;
    changed += read && read->leaves() != leaves_of(formula) ? 1 : 0;
  }
  CHECK(with_words > 500);
  CHECK(changed > 500);
}

TEST_CASE("what is not read is told once, whatever brackets it has") { // common practice, no source
  for (auto const* words :
       {"advts. H1-2", "advts. H1–2", "index: K1-8", "A1 blank", "H1 signed", "+ plates", "with H1, H2 pasted",
        "errata on H2", "H2 advertisements", "2 plates", "first leaf of H", "contents H1, notes H2", "H1 or H2"})
    for (auto const& [open, close] : {std::pair{"[", "]"}, {"(", ")"}, {"; ", ""}, {", ", ""}})
      for (auto const* after : {"", " I⁸", "; 88 leaves"}) {
        auto const text = "12°: A-G¹² H² " + std::string{open} + words + close + after;
        CAPTURE(text);
        auto const formula = read_formula(text);
        if (!formula) continue;
        auto const& all = formula->warnings();
        for (std::size_t a = 0; a < all.size(); ++a)
          for (std::size_t b = a + 1; b < all.size(); ++b) {
            if (all[a].problem != Problem::text_not_read || all[b].problem != Problem::text_not_read) continue;
            auto const from = [&](Error const& one) { return one.place->column; };
            auto const to = [&](Error const& one) { return from(one) + one.found_text().size(); };
            CHECK((to(all[a]) <= from(all[b]) || to(all[b]) <= from(all[a])));
          }
      }
}
