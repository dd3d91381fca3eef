// SPDX-License-Identifier: MIT
// How the work of each reader grows with its text: from n units to 10 n, at most 10 to the power 1.1 times as many steps.
// Steps are counted, not timed: the compiler calls a counter at each branch (count_work.cpp), so the answer is the same on
// every machine. And what a reader holds in memory is at most so many bytes for each byte of its text, whatever the text
// says. Common practice, no source.
//   bifolium_growth [UNITS]     the largest number of units; 5000 unless told, 1000000 for a long look
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>

#include "growth/measure.hpp"
#include "support/answers.hpp"
#include "support/looked_at.hpp"
#include "support/record.hpp"
#include "support/remnants_seen.hpp"
#include "support/tsv.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <sstream>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

auto const formula = [](std::string const& text) { return read_formula(text); };

std::vector<Case> formulas() {
  return {
      {"formula: runs", [](int n) { reads(each(n, [](int i) { return signature(i) + "⁸ "; }), formula); }},
      {"formula: doubts and character references",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"A7 B&#8312; "}; }, "8&deg;: "),
               formula);
       }},
      {"formula: numbered runs",
       [](int n) { reads(each(n, [](int i) { return std::to_string(i + 1) + "⁸ "; }), formula); }},
      {"formula: the same run", [](int n) { reads(each(n, [](int) { return std::string{"A⁸ "}; }), formula); }},
      {"formula: deletions in one run",
       [](int n) { reads(changed(n, [](int i) { return "−" + signature(i) + "1, "; }), formula); }},
      {"formula: deletions backwards",
       [](int n) {
         std::string text = run_of(n) + "(";
         for (int i = n; i-- > 0;) text += "−" + signature(i) + "1, ";
         reads(text + ")", formula);
       }},
      {"formula: deletions of one gathering",
       [](int n) {
         reads(each(
                   n, [](int i) { return "A" + std::to_string(i % 4096 + 1) + ", "; }, "8°: A4096(−", ")"),
               formula);
       }},
      {"formula: a parenthesis each",
       [](int n) { reads(each(n, [](int i) { return signature(i) + "⁸(−" + signature(i) + "1) "; }), formula); }},
      {"formula: insertions", [](int n) { reads(changed(n, [](int i) { return signature(i) + "1+χ1, "; }), formula); }},
      {"formula: inserted gatherings",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "1+a⁴, "; }), formula); }},
      {"formula: cancels", [](int n) { reads(changed(n, [](int i) { return "±" + signature(i) + "3, "; }), formula); }},
      {"formula: identities",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "1=" + signature(i / 2) + "2, "; }), formula); }},
      {"formula: notes", [](int n) { reads(changed(n, [](int i) { return signature(i) + "8 blank, "; }), formula); }},
      {"formula: cancels in words",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "8 a cancel, "; }), formula); }},
      {"formula: leaves that may be cancels",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "8, "; }), formula); }},
      {"formula: deletions, and words about each",
       [](int n) {
         reads(changed(n, [](int i) { return "−" + signature(i) + "8, " + signature(i) + "8 blank, "; }), formula);
       }},
      {"formula: remarks before a blank",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "1 title, "; }) + "(100A8 blank)", formula); }},
      {"formula: one long note",
       [](int n) { reads("A⁸(" + std::string(static_cast<std::size_t>(n), 'x') + ")", formula); }},
      {"formula: opened parentheses",
       [](int n) { reads("A⁸" + std::string(static_cast<std::size_t>(n), '('), formula); }},
      {"formula: opened brackets", [](int n) { reads(std::string(static_cast<std::size_t>(n), '['), formula); }},
      {"formula: blanks", [](int n) { reads(std::string(static_cast<std::size_t>(n), ' ') + "A⁸", formula); }},
      {"formula: digits", [](int n) { reads("A" + std::string(static_cast<std::size_t>(n), '8'), formula); }},
      {"formula: commas", [](int n) { reads("A⁸(" + std::string(static_cast<std::size_t>(n), ',') + ")", formula); }},
      {"formula: statements",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{" = A⁸"}; }, "A⁸"),
               formula);
       }},
      {"formula: doubts", [](int n) { reads(each(n, [](int i) { return signature(i) + "⁷ "; }), formula); }},
      {"formula: not UTF-8",
       [](int n) { reads("A⁸(" + std::string(static_cast<std::size_t>(n), '\xFF') + ")", formula); }},
      {"formula: a signing statement",
       [](int n) {
         reads(each(
                   n, [](int i) { return "−" + signature(i) + "1, "; }, run_of(n) + " [$4 (", ") signed]"),
               formula);
       }},
      {"formula counted",
       [](int n) {
         reads(changed(n, [](int i) { return "−" + signature(i) + "1, "; }),
               [](std::string const& text) { return count_formula(text); });
       }},
      {"formula written",
       [](int n) {
         auto const read = read_formula(changed(n, [](int i) { return "−" + signature(i) + "1, "; }));
         counted([&] { static_cast<void>(write_formula(*read, Notation::unicode)); });
       }},
      {"ideal copy",
       [](int n) {
         auto const read = read_formula(changed(n, [](int i) { return signature(i) + "1+χ1, "; }));
         counted([&] { static_cast<void>(IdealCopy{*read}); });
       }},
      {"paper of a formula",
       [](int n) {
         auto const read =
             read_formula(changed(n, [](int i) { return signature(i) + "1=" + signature(i / 2) + "2, "; }));
         counted([&] { static_cast<void>(paper(*read)); });
       }},
      {"ideal copy: the leaf of each number",
       [](int n) {
         auto const read = read_formula(each(n, [](int i) { return signature(i) + "⁸(−" + signature(i) + "1) "; }));
         IdealCopy const book{*read};
         counted([&] {
           for (int i = 1; i <= n; ++i) static_cast<void>(book.leaf_of_number(i * 7));
         });
       }},
  };
}

/// A few characters that name many leaves, pages or sheets.
std::vector<Case> expanded() {
  return {
      {"formula: thousands of leaves inserted",
       [](int n) { reads(changed(n, [](int i) { return signature(i) + "1+χ1-4096, "; }), formula); }},
      {"formula: thousands of gatherings",
       [](int n) { reads(each(n, [](int) { return std::string{"A-9999Z8 "}; }), formula); }},
      {"formula: much of it blank",
       [](int n) { reads("A⁸" + std::string(static_cast<std::size_t>(n) * 8, ' ') + "B⁸", formula); }},
      {"formula evaluated, thousands of leaves inserted",
       [](int n) {
         auto const text = changed(n, [](int i) { return signature(i) + "1+χ1-4096, "; });
         reads(text, [](std::string const& words) { return IdealCopy{*read_formula(words)}; });
       }},
      {"formula written, thousands of leaves inserted",
       [](int n) {
         auto const text = changed(n, [](int i) { return signature(i) + "1+χ1-4096, "; });
         reads(text, [](std::string const& words) { return write_formula(*read_formula(words), Notation::unicode); });
       }},
      {"formula explained, thousands of leaves inserted",
       [](int n) {
         auto const text = changed(n, [](int i) { return signature(i) + "1+χ1-4096, "; });
         reads(text, [](std::string const& words) { return explain_count(*read_formula(words)); });
       }},
      {"signing: ranges",
       [](int n) {
         reads(each(
                   n, [](int i) { return signature(i) + "1-64, "; }, "$4 (-", ") signed"),
               [](std::string const& text) { return read_signing(text); });
       }},
      {"signing: lists in the rule",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"1-4096,"}; }, "$", "1"),
               [](std::string const& text) { return read_signing(text); });
       }},
      {"signing of a formula: ranges",
       [](int n) {
         reads(each(
                   n, [](int i) { return signature(i) + "1-64, "; }, run_of(n) + " [$4 (-", ") signed]"),
               [](std::string const& text) { return signing_of(*read_formula(text)); });
       }},
      {"leaves present: the whole book",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8(A1+χ1-4096)")};
         reads(each(n, [](int) { return std::string{"A-9999Z "}; }),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: states of leaves named again",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return signature(i) + "1 facsimile, "; }, "A-9999Z "),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: leaves before a word for wanting",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return signature(i) + "1 lacking; "; }, "A-9999Z; "),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: figures after leaves",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return signature(i) + "1,3 "; }, ""),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: states alone",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return signature(i) + "1 and "; }, "", "1A1 torn"),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: numbers of leaves after joined names",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return signature(i) + "1 (3 leaves) and "; }, "", "1A1 torn"),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"leaves present: parentheses that are not closed",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8")};
         reads(each(
                   n, [](int i) { return "(" + signature(i) + "1 "; }, "", "lacking"),
               [](std::string const& text) { return read_leaves_present(book, text); });
       }},
      {"copy checked and said: the whole book",
       [](int n) {
         static IdealCopy const book{*read_formula("8°: A-9999Z8(A1+χ1-4096)")};
         reads(each(n, [](int) { return std::string{"A-9999Z "}; }), [](std::string const& text) {
           return wants(book, check_copy(book, (*read_leaves_present(book, text)).spans));
         });
       }},
      {"pagination: millions of pages",
       [](int n) {
         reads(each(
                   n, [](int i) { return std::to_string(i * 9 + 1) + "-" + std::to_string(i * 9 + 9) + ", "; }, "pp. "),
               [](std::string const& text) { return read_pagination(text); });
       }},
  };
}

std::vector<Case> copies() {
  return {
      {"references",
       [](int n) {
         IdealCopy const book{*read_formula(each(n, [](int i) { return signature(i) + "⁸ "; }))};
         counted([&] {
           for (int i = 0; i < n; ++i) static_cast<void>(read_reference(book, signature(i) + "3v"));
         });
       }},
      {"leaves present, read",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const text = each(n, [](int i) { return signature(i) + "1 " + signature(i) + "3 "; });
         counted([&] { static_cast<void>(read_leaves_present(book, text)); });
       }},
      {"copy checked: leaves missing everywhere",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const present =
             read_leaves_present(book, each(n, [](int i) { return signature(i) + "1 " + signature(i) + "3 "; }));
         counted([&] { static_cast<void>(wants(book, check_copy(book, present->spans))); });
       }},
      {"copy checked: backwards",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         std::string text;
         for (int i = n; i-- > 0;) text += signature(i) + "1-8 ";
         auto const present = read_leaves_present(book, text);
         counted([&] { static_cast<void>(check_copy(book, present->spans)); });
       }},
      {"copy checked: leaves twice",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const present =
             read_leaves_present(book, each(n, [](int i) { return signature(i) + "1-8 " + signature(i) + "2 "; }));
         counted([&] { static_cast<void>(check_copy(book, present->spans)); });
       }},
      {"copy checked: joints",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const present = read_leaves_present(book, "A-" + signature(n - 1));
         auto const joints = read_joints(book, each(n, [](int i) { return signature(i) + "1.8 conjugate; "; }));
         counted(
             [&] { static_cast<void>(check_copy(book, present ? present->spans : std::vector<LeafSpan>{}, *joints)); });
       }},
      {"joints, read",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const text = each(n, [](int i) { return signature(i) + "1.8 conjugate; "; });
         counted([&] { static_cast<void>(read_joints(book, text)); });
       }},
      {"paper of leaves, read",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         auto const text = each(n, [](int i) { return signature(i) + "1 vertical; "; });
         reads(text, [&](std::string const& words) { return read_paper_seen(book, words); });
       }},
      {"paper of leaves, read backwards",
       [](int n) {
         IdealCopy const book{*read_formula(run_of(n))};
         std::string text;
         for (int i = n; i-- > 0;) text += signature(i) + "1 vertical; ";
         reads(text, [&](std::string const& words) { return read_paper_seen(book, words); });
       }},
  };
}

std::vector<Case> records() {
  auto const pagination = [](std::string const& text) { return read_pagination(text); };
  auto const extent = [](std::string const& text) { return read_extent(text); };
  return {
      {"pagination: sequences",
       [=](int n) {
         reads(each(
                   n, [](int i) { return (i > 0 ? ", " : "") + std::to_string(i + 1); }, "pp. "),
               pagination);
       }},
      {"pagination: brackets",
       [=](int n) {
         reads(each(
                   n, [](int i) { return (i > 0 ? " [" : "[") + std::to_string(i % 9 + 1) + "]"; }, "pp. "),
               pagination);
       }},
      {"pagination: misprints",
       [=](int n) {
         reads(each(
                   n, [](int i) { return std::to_string(i + 1) + " misprinted " + std::to_string(i + 5) + ", "; },
                   "pp. 1-999999 (", ")"),
               pagination);
       }},
      {"pagination: omissions",
       [=](int n) {
         reads(each(
                   n, [](int i) { return (i > 0 ? ", " : "") + std::to_string(3 * i + 2) + " omitted"; },
                   "pp. 1-9999999, "),
               pagination);
       }},
      {"pagination: misprints after the numbers",
       [=](int n) {
         reads(each(
                   n,
                   [](int i) {
                     return (i > 0 ? ", " : "") + std::to_string(3 * i + 5) + " as " + std::to_string(3 * i + 7);
                   },
                   "pp. 1-9999999, misprinting "),
               pagination);
       }},
      {"extent: sequences",
       [=](int n) {
         reads(each(
                   n, [](int i) { return std::to_string(i + 1) + ", "; }, "", "2 p."),
               extent);
       }},
      {"extent: brackets",
       [=](int n) {
         reads(each(
                   n, [](int i) { return "[" + std::to_string(i % 9 + 1) + "], "; }, "", "2 p."),
               extent);
       }},
      {"extent: volumes",
       [=](int n) {
         reads(each(
                   n, [](int) { return std::string{"8 p. ; "}; }, "", "2 p."),
               extent);
       }},
      {"extent: words", [=](int n) { reads(each(n, [](int) { return std::string{"p "}; }), extent); }},
      {"signing: exceptions",
       [](int n) {
         reads(each(
                   n, [](int i) { return "−" + signature(i) + "1, "; }, "$4 (", ") signed"),
               [](std::string const& text) { return read_signing(text); });
       }},
      {"signature note",
       [](int n) {
         reads(each(
                   n, [](int i) { return signature(i) + "⁸ "; }, "Signatures: "),
               [](std::string const& text) { return read_signature_note(text); });
       }},
      {"signature note: superscripts in words",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"[superscript pi]A⁸ "}; }, "Signatures: "),
               [](std::string const& text) { return read_signature_note(text); });
       }},
      {"physical description: semicolons",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"8 p. ; "}; }, "", "9 p."),
               [](std::string const& text) { return read_physical_description(text); });
       }},
      {"physical description: formats",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"; 8vo , "}; }, "8 p.", "9 p."),
               [](std::string const& text) { return read_physical_description(text); });
       }},
      {"physical description: words",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{" : ill. + map"}; }, "8 p.", " ; 20 cm"),
               [](std::string const& text) { return read_physical_description(text); });
       }},
      {"format statement",
       [](int n) {
         reads(each(n, [](int) { return std::string{"4° and "}; }),
               [](std::string const& text) { return read_format_statement(text); });
       }},
      {"size",
       [](int n) {
         reads(each(
                   n, [](int i) { return std::to_string(i + 1) + " x "; }, "", " cm"),
               [](std::string const& text) { return read_size(text); });
       }},
      {"extent written",
       [](int n) {
         auto const read = read_extent(each(
             n, [](int i) { return std::to_string(i % 99 + 1) + ", "; }, "", "2 p."));
         counted([&] { static_cast<void>(extent_line(*read)); });
       }},
      {"extent compared",
       [](int n) {
         auto const read = read_extent(each(
             n, [](int i) { return std::to_string(i % 99 + 1) + ", "; }, "", "2 p."));
         auto const book = *read_formula(run_of(n));
         counted([&] { static_cast<void>(compare_extent(book, *read)); });
       }},
      {"pagination written",
       [](int n) {
         auto const read = read_pagination(each(
             n, [](int i) { return std::to_string(3 * i + 1) + "-" + std::to_string(3 * i + 2) + ", "; }, "pp. "));
         counted([&] { static_cast<void>(write_pagination(*read)); });
       }},
      {"signing written",
       [](int n) {
         auto const read = read_signing(each(
             n, [](int i) { return "−" + signature(i) + "1, "; }, "$4 (", ")"));
         counted([&] { static_cast<void>(write_signing(*read)); });
       }},
      {"leaves seen, of gatherings",
       [](int n) {
         reads(each(n, [](int i) { return std::to_string(i % 8 + 1) + ": head bolt\n"; }),
               [](std::string const& text) { return read_seen_leaves(text); });
       }},
      {"formes",
       [](int n) {
         reads(each(
                   n, [](int i) { return std::to_string(i + 1) + " "; }, "outer\n"),
               [](std::string const& text) { return read_formes(text); });
       }},
      {"date: digits",
       [](int n) {
         reads(std::string(static_cast<std::size_t>(n), '1'), [](std::string const& text) { return read_date(text); });
       }},
      {"date: words",
       [](int n) {
         reads(each(
                   n, [](int) { return std::string{"or "}; }, "1490 "),
               [](std::string const& text) { return read_date(text); });
       }},
      {"place: words",
       [](int n) {
         reads(each(n, [](int) { return std::string{"Londini et "}; }),
               [](std::string const& text) { return read_place(text); });
       }},
      {"length: digits",
       [](int n) {
         reads(std::string(static_cast<std::size_t>(n), '1') + " mm",
               [](std::string const& text) { return read_length(text); });
       }},
      {"format: letters",
       [](int n) {
         reads(std::string(static_cast<std::size_t>(n), 'o'),
               [](std::string const& text) { return read_format(text); });
       }},
      {"leaves seen",
       [](int n) {
         reads(each(n, [](int i) { return std::to_string(i + 1) + " gutter; "; }),
               [](std::string const& text) { return read_leaves_seen(text); });
       }},
      {"scheme: comments",
       [](int n) {
         reads(each(n, [](int) { return std::string{"# words\n"}; }) + "scheme a 8°",
               [](std::string const& text) { return read_scheme(text); });
       }},
      {"scheme: lines",
       [](int n) {
         reads(each(
                   n, [](int i) { return "sheet S" + std::to_string(i) + " rows 1 columns 2 long-side left-right\n"; },
                   "scheme a 2°\n"),
               [](std::string const& text) { return read_scheme(text); });
       }},
  };
}

/// What was seen of the units of a book: n words of a cell, of as many names or of one, and of one gathering of n.
void sees(int n, char const* book, Unit unit, bool marks) {
  auto const text = *read_formula(book);
  auto const cell = each(n, unit);
  text_bytes = cell.size();
  counted([&] {
    std::vector<RemnantEvidence> seen;
    static_cast<void>(support::take_remnants(cell, marks, seen));
    static_cast<void>(sheets_of_book(text, Format::of(4), seen));
  });
}

std::vector<Case> tables() {
  return {
      {"sheets of a book: stocks of units that are not there",
       [](int n) {
         sees(
             n, "4°: A2 B-I4 K2", [](int i) { return signature(i) + "=pot "; }, false);
       }},
      {"sheets of a book: marks of one unit",
       [](int n) {
         sees(
             n, "4°: A2 B-I4 K2", [](int) { return std::string{"A=2 "}; }, true);
       }},
      {"sheets of a book: stocks of whole sheets",
       [](int n) {
         sees(
             n, "4°: 100A-999Z4", [](int i) { return signature(i) + "=pot "; }, false);
       }},
      {"sheets of a book: a formula of as many gatherings, and what was seen of each",
       [](int n) {
         auto const text = *read_formula(each(
             n, [](int i) { return signature(i) + "⁴ "; }, "4°: "));
         std::vector<RemnantEvidence> seen;
         for (int i = 0; i < n; ++i) seen.push_back({signature(i), "pot", {}});
         counted([&] { static_cast<void>(sheets_of_book(text, Format::of(4), seen)); });
       }},
      {"sheets of a book: cancels and places of missing leaves",
       [](int n) {
         auto const text =
             *read_formula(changed(n, [](int i) { return (i % 2 == 0 ? "±" : "−") + signature(i) + "3, "; }));
         counted([&] { static_cast<void>(sheets_of_book(text, Format::of(8))); });
       }},
      {"sheets of a book: leaves in two places",
       [](int n) {
         auto const text =
             *read_formula(changed(n, [](int i) { return signature(i) + "1=" + signature(i / 2) + "2, "; }));
         counted([&] { static_cast<void>(sheets_of_book(text, Format::of(8))); });
       }},
      {"table: rows",
       [](int n) {
         auto const text = each(
             n, [](int i) { return std::to_string(i) + "\t2\t3\n"; }, "a\tb\tc\n");
         support::TextSource source{text};
         support::Lines lines{source};
         support::Header const header{support::header_line(lines)};
         std::ostringstream out;
         support::Answers answers{
             header, {"a", "b"}, 1, [](support::Question const& question) { return question.cell("a"); }};
         counted([&] { answers.write(lines, out); });
       }},
      {"table: one long line",
       [](int n) {
         auto const text = std::string(static_cast<std::size_t>(n) * 8, 'x');
         support::TextSource source{text};
         support::Lines lines{source, {std::size_t{1} << 30U}};
         counted([&] {
           while (lines.next()) static_cast<void>(support::split(lines.text()));
         });
       }},
      {"table: blanks before it",
       [](int n) {
         auto const text = std::string((std::min)(static_cast<std::size_t>(n) * 200, std::size_t{1} << 20U), '\n');
         support::TextSource source{text};
         counted([&] { static_cast<void>(support::LookedAt{source}.is_xml()); });
       }},
      {"table: tabs",
       [](int n) {
         auto const text = std::string(static_cast<std::size_t>(n), '\t');
         counted([&] { static_cast<void>(support::too_wide(support::split(text), 3)); });
       }},
      {"message of any text",
       [](int n) {
         auto const text = each(n, [](int i) { return std::string{i % 2 == 0 ? "\033" : "А"}; });
         counted([&] { static_cast<void>(support::shown(text)); });
       }},
      {"record: lines",
       [](int n) {
         auto const text = each(n, [](int i) { return "field " + std::to_string(i) + ": value\n"; });
         support::TextSource source{text};
         support::Lines lines{source};
         std::vector<support::RecordError> errors;
         constexpr std::string_view names[]{"title", "year"};
         counted([&] { static_cast<void>(support::Record::read(lines, names, errors)); });
       }},
  };
}

} // namespace

int main(int count, char** words) {
  auto const most = count > 1 ? std::atoi(words[1]) : 5000;
  int wrong = 0;
  for (auto const& cases : {formulas(), expanded(), copies(), records(), tables()})
    for (auto const& one : cases) {
      auto const result = grown(one, most / 100, most);
      print(one.name, result);
      wrong += result.holds ? 0 : 1;
    }
  wrong += lists_that_grow_too_fast(most / 10);
  wrong += descriptions_that_grow_too_fast(most / 10);
  if (steps_done == 0) {
    std::puts("no step was counted");
    return 1;
  }
  return wrong == 0 ? 0 : 1;
}
