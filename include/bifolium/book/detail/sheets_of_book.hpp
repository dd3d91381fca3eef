// SPDX-License-Identifier: MIT
/// sheets_of_book: what is left after whole sheets, the evidence of its units, and the ways to cover it.
#pragma once

#include <bifolium/book/detail/exact_cover.hpp>
#include <bifolium/book/detail/remnants.hpp>
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/leaf/read_signature.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// Returns the run of the gathering of which something was seen, or no value if it is no gathering.
inline std::optional<std::uint32_t> run_of(Formula const& formula, RemnantEvidence const& one) {
  auto const mark = read_signature(one.unit, formula.letters());
  auto const found = mark ? IdealCopy{formula}.find(*mark) : std::nullopt;
  return found ? std::optional{found->gathering.run} : std::nullopt;
}
/// Stores the evidence. It belongs to a unit, or to a gathering that fills whole sheets, of which only the stock of the
/// leaves that it lacks is asked.
inline std::optional<Error> take_evidence(Formula const& formula, std::vector<RemnantEvidence> const& seen,
                                          SheetsOfBook& book) {
  for (auto const& one : seen) {
    bool known = false;
    for (auto& unit : book.units)
      if (one.unit == unit.name) unit.stock = one.stock, unit.marked_leaves = one.marked_leaves, known = true;
    for (auto& place : book.places)
      if (one.unit == place.gathering && one.stock) place.stock = one.stock;
    if (!known && !run_of(formula, one)) return error_in_field(Problem::no_such_remnant, one.unit);
  }
  return std::nullopt;
}
} // namespace detail

BIFOLIUM_INLINE Expected<SheetsOfBook> sheets_of_book(Formula const& formula, Format format,
                                                      std::vector<RemnantEvidence> const& seen) {
  auto const leaves = format.leaves_to_sheet();
  if (!leaves) broken("sheets can be counted only for a format that says how many leaves a sheet makes");
  SheetsOfBook book;
  book.leaves_to_sheet = *leaves;
  std::vector<std::uint32_t> seen_of;
  for (auto const& one : seen)
    if (auto const run = detail::run_of(formula, one)) seen_of.push_back(static_cast<std::uint32_t>(*run));
  detail::Remnants{formula, book}.find(seen_of);
  if (auto const error = detail::take_evidence(formula, seen, book)) return *error;
  detail::ExactCover cover{book};
  if (!cover.possible())
    return error_in_field(Problem::number_too_large, "number of part-sheets", detail::ExactCover::most_units);
  if (!cover.possible_in_places())
    return error_in_field(Problem::number_too_large, "number of part-sheets and missing leaves together",
                          detail::ExactCover::most_units_and_places);
  cover.count();
  return book;
}

} // namespace v0
} // namespace bifolium
