// SPDX-License-Identifier: MIT
/// What must hold of any text that is read as a formula, whatever stands in it. The tests ask it of catalogues, of all
/// short texts and of random ones; the fuzzer asks it of any bytes.
#pragma once

#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/text_place.hpp>

#include <algorithm>
#include <string>

/// Returns true if two readings of one text are equal in all that they tell, also in doubts and in places of the text.
inline bool read_alike(bifolium::Formula const& a, bifolium::Formula const& b) {
  if (!(a == b) || a.leaves() != b.leaves() || a.gatherings() != b.gatherings() || a.warnings() != b.warnings() ||
      a.change_forms() != b.change_forms() || a.blanks() != b.blanks() || a.passages() != b.passages())
    return false;
  for (std::size_t i = 0; i < a.changes().size(); ++i)
    if (!(a.changes()[i].text() == b.changes()[i].text())) return false;
  return true;
}

/// Empty where every law holds, else which one is broken, with the text.
inline std::string broken_law(std::string const& text, bifolium::Dialect dialect) {
  using namespace bifolium;
  auto const formula = read_formula(text, dialect);
  auto const count = count_formula(text, dialect);
  auto const by_grammar = detail::read_by_grammar(text, dialect);
  if (formula.has_value() != by_grammar.has_value()) return "the grammar alone says another thing: " + text;
  if (formula ? !read_alike(*formula, *by_grammar) : !(formula.error() == by_grammar.error()))
    return "the grammar alone reads another thing: " + text;
  if (formula.has_value() != count.has_value()) return "one reads, the other does not: " + text;
  auto const points_into = [&](Error const& error) {
    auto const place = error.place.value();
    return error.problem != Problem::none && place_in(text, position_of(text, place)) == place &&
           !std::string{message(error)}.empty();
  };
  if (!formula) {
    if (!(formula.error() == count.error())) return "two errors: " + text;
    return points_into(formula.error()) ? "" : "the error is not in the text: " + text;
  }
  if (formula->leaves() != count->leaves || formula->gatherings() != count->gatherings) return "two counts: " + text;
  auto const& doubts = formula->warnings();
  for (auto one = doubts.begin(); one != doubts.end(); ++one)
    if (std::find(doubts.begin(), one, *one) != one) return "a doubt is told twice: " + bifolium::message(*one);
  if (static_cast<std::int64_t>(formula->warnings().size()) != count->warning_count)
    return "two numbers of doubts: " + text;
  for (auto const& warning : formula->warnings())
    if (!points_into(warning)) return "a doubt is not in the text: " + text;
  if (formula->gatherings() < 10'000) {
    IdealCopy const book{*formula};
    std::int64_t leaves = 0;
    for (auto const gathering : book.gatherings()) leaves += gathering.leaves;
    if (leaves != count->leaves) return "the gatherings add up to another number: " + text;
    if (leaves < 0 || book.leaves() != leaves) return "no number of leaves: " + text;
    // every number is of one leaf, and every leaf has its number
    for (std::int64_t number = 1; number <= leaves; number += 1 + leaves / 40) {
      auto const leaf = book.leaf_of_number(number);
      if (!leaf || book.leaf_number(*leaf) != number) return "the numbering is no bijection: " + text;
    }
    if (book.leaf_of_number(0) || book.leaf_of_number(leaves + 1)) return "a leaf outside the book: " + text;
  }
  for (auto notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
    if (notation == Notation::flat && !dialect.flat_counts) continue;
    auto const written = write_formula(*formula, notation);
    if (written.size() > 16 * text.size() + 64) return "much is written of little: " + text;
    auto const again = read_formula(written, dialect);
    if (!again) return "what was written cannot be read: " + text + " -> " + written;
    if (!(*again == *formula)) return "what was written reads as another formula: " + text + " -> " + written;
    if (again->blanks() != formula->blanks())
      return "what was written has other blank leaves: " + text + " -> " + written;
    if (again->leaves() != count->leaves) return "what was written has other leaves: " + text + " -> " + written;
    if (write_formula(*again, notation) != written) return "no fixed point: " + text + " -> " + written;
  }
  if (states_paper(*formula)) {
    auto const sheets = paper(*formula).sheets;
    if (!(sheets.low <= sheets.stated && sheets.stated <= sheets.high)) return "the range is no range: " + text;
  }
  return "";
}
