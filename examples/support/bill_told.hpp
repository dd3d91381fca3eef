// SPDX-License-Identifier: MIT
/// A bill in the cells of a row, on standard output: the columns of `reckon_paper`, and what has to be said beside them.
#pragma once

#include <bifolium/core/number_of.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/imposition.hpp>

#include "decimal.hpp"
#include "edition.hpp"

#include <algorithm>
#include <iostream>
#include <optional>
#include <span>
#include <string>

namespace support {

using namespace bifolium;

inline constexpr auto usual =
    "gatherings\tsheets_per_copy\tformes\tsheets\treams\tquires\tloose_sheets\timpressions\ttokens";
inline constexpr auto full =
    "\tsheets_low\tsheets_high\tblank_pages\teven_working\tformula\tgrammes_m2\tkg\tkg_low\tkg_high\t"
    "paper_cost\tpaper_cost_low\tpaper_cost_high\tforme_cost\tpress_cost\ttotal_cost\treams_to_buy\t"
    "perfected\tclock_hours\tdays\tdays_of_pay\ttype_pages_in_order\ttype_pages_by_formes\t"
    "cast_off_pages\talphabets";

inline void put_usual(Bill const& bill, bool decimals) {
  std::cout << bill.plan.gatherings << '\t' << in_cell(bill.sheets_a_copy(), decimals) << '\t' << bill.plan.formes()
            << '\t' << bill.sheets.stated << '\t';
  if (bill.paper)
    std::cout << bill.paper->reams << '\t' << bill.paper->quires << '\t' << bill.paper->loose;
  else
    std::cout << "\t\t";
  std::cout << '\t' << bill.presswork.impressions << '\t' << in_cell(bill.presswork.tokens, decimals);
}

template <class T> void put(std::optional<T> const& value) {
  std::cout << '\t';
  if (value) std::cout << *value;
}

/// Pages of type that must be kept set, and pages that must be cast off.
inline void put_type(Imposition<> const& formes) {
  auto const in_order = first_forme_in_order(formes);
  int cast_off = 0;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto side : {Side::outer, Side::inner})
      if (!formes.one_forme(sheet)) cast_off = std::max(cast_off, forme_type(formes, sheet, side).cast_off_pages);
  std::cout << '\t' << in_order.set_in_order << '\t' << in_order.pages << '\t' << cast_off;
}

inline void put_full(Bill const& bill, EditionRow const& row, bool decimals) {
  std::cout << '\t' << bill.sheets.low << '\t' << bill.sheets.high << '\t' << bill.plan.blank_pages << '\t'
            << (bill.plan.is_even_working() ? "yes" : "no") << '\t';
  if (row.plan)
    std::cout << row.formula;
  else if (auto const formula = formula_of(bill))
    std::cout << *formula;
  std::cout << '\t';
  if (row.edition.weight_of_ream && row.sheet_height && row.sheet_width) {
    auto const weight = grammes_per_square_metre(*row.edition.weight_of_ream, row.edition.ream->ream, *row.sheet_height,
                                                 *row.sheet_width);
    if (weight) std::cout << with_decimals(*weight, 2);
  }
  auto const kilogrammes = [&](Fraction Range<Fraction>::*which) {
    std::cout << '\t';
    if (bill.kilogrammes) std::cout << with_decimals((*bill.kilogrammes).*which, 3);
  };
  kilogrammes(&Range<Fraction>::stated), kilogrammes(&Range<Fraction>::low), kilogrammes(&Range<Fraction>::high);
  auto const cost = [&](std::int64_t Range<std::int64_t>::*which) {
    put(bill.paper_cost ? std::optional{(*bill.paper_cost).*which} : std::nullopt);
  };
  cost(&Range<std::int64_t>::stated), cost(&Range<std::int64_t>::low), cost(&Range<std::int64_t>::high);
  put(bill.forme_cost), put(bill.press_cost),
      put(bill.total_cost ? std::optional{bill.total_cost->stated} : std::nullopt);
  std::cout << '\t';
  if (bill.reams_to_buy) std::cout << in_cell(*bill.reams_to_buy, decimals);
  auto const& work = bill.presswork;
  std::cout << '\t' << work.perfected << '\t' << with_decimals(work.clock_hours, 2) << '\t'
            << with_decimals(work.days, 2) << '\t' << with_decimals(work.days_of_pay, 2);
  if (row.has_scheme())
    put_type(impose(*fold(row.edition.scheme.scheme())));
  else
    std::cout << "\t\t\t";
  std::cout << '\t' << in_cell(bill.sheets_a_copy() / Fraction{sheets_in_alphabet}, decimals);
}

/// The figures of a copy where the copies are asked for: gatherings, sheets a copy and formes.
inline void put_copy(Bill const& bill, bool decimals) {
  std::cout << bill.plan.gatherings << '\t' << in_cell(bill.sheets_a_copy(), decimals) << '\t' << bill.plan.formes()
            << "\t\t\t\t\t\t";
}

inline std::string from_to(std::int64_t from, std::int64_t to) {
  return std::to_string(from) + (from == to ? "" : "-" + std::to_string(to));
}

/// Where no number of copies takes just the paper of an account: the numbers that take a little less and a little more.
inline Expected<std::string> nearest_copies(EditionRow const& row, Plan const& plan, ReamCount const& ream) {
  auto const sheets = sheets_stated(*row.account, ream);
  if (!sheets) return sheets.error();
  auto const least = copies_within(row.edition, plan, *sheets);
  if (!least) return least.error();
  std::string words = "by the ream of " + std::to_string(ream.ream) + " no number of copies takes just " +
                      bifolium::number_of(*sheets, "sheet", "sheets") + ": ";
  auto edition = row.edition;
  for (auto const copies : {*least, *least + 1}) {
    if (copies == 0) continue;
    edition.copies = copies;
    auto const bill = reckon(edition, plan);
    if (!bill) return bill.error();
    words += bifolium::number_of(copies, "copy takes ", "copies take ") + std::to_string(bill->sheets.stated) +
             (copies == *least ? ", " : "");
  }
  return words;
}

/// The copies that take the paper of an account, in words; where copies are named too, whether they are among them.
inline Expected<std::string> copies_in_words(EditionRow const& row, Plan const& plan) {
  auto const named = row.edition.ream; // one alone, or those of the table
  auto const found = named ? copies_of_account(row.edition, plan, *row.account, std::span{&*named, 1})
                           : copies_of_account(row.edition, plan, *row.account);
  if (!found) return found.error();
  std::string words;
  for (auto const& one : *found) {
    words.append(words.empty() ? "" : "; ")
        .append("by the ream of ")
        .append(std::to_string(one.ream.ream))
        .append(": ");
    words.append(from_to(one.least, one.most))
        .append(one.most == 1 ? " copy with " : " copies with ")
        .append(from_to(one.overs_least, one.overs_most));
    words.append(" over");
    if (!row.asks_for_copies())
      words.append(row.edition.copies >= one.least && row.edition.copies <= one.most ? ", agrees" : ", does not agree");
  }
  if (!words.empty()) return words;
  auto const known = named ? std::span{&*named, 1} : std::span{reams_of_accounts};
  for (auto const& ream : known) {
    auto const near = nearest_copies(row, plan, ream);
    if (!near) return near.error();
    words.append(words.empty() ? "" : "; ").append(*near);
  }
  return words;
}

/// What has to be said of a plan beside its figures.
inline std::string remarks(Bill const& bill, EditionRow const& row) {
  auto text = row.said;
  if (auto const shared = bill.plan.shared()) {
    text += text.empty() ? "" : "; ";
    char const* between = "";
    for (std::size_t m = 0; m < matters; ++m)
      if (shared->shares[m] != 0) {
        text.append(between).append(bifolium::number_of(shared->shares[m], "leaf of ", "leaves of "));
        text.append(to_words(static_cast<Matter>(m)));
        between = " and ";
      }
    text += " worked together on one sheet: inferred";
  }
  for (auto const& working : bill.plan) {
    auto const settings = bill.plan.settings(working);
    if (settings == 1) continue;
    text += text.empty() ? "" : "; ";
    text.append(bifolium::number_of(working.leaves, "leaf", "leaves")).append(" printed ");
    text.append(std::to_string(bill.plan.leaves_to_sheet / working.leaves))
        .append(" copies to the sheet, each page set ");
    text.append(settings == 2 ? "twice" : std::to_string(settings) + " times").append(": assumed");
  }
  return text;
}

} // namespace support
