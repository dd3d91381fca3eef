// SPDX-License-Identifier: MIT
/// sheets_of_book: what is left after whole sheets, the evidence of its units, and the ways to cover it.
#pragma once

#include <bifolium/book/detail/sheets/exact_cover.hpp>
#include <bifolium/book/detail/sheets/remnants.hpp>
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/leaf/read_signature.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// What was seen of the units and gatherings of a book, joined by name: a stock may be stated in one place and the marks in
/// another. The names are looked up in one ideal copy, as making it takes as long as the formula is.
class SeenRemnants {
  struct Seen {
    std::optional<std::string> stock{};
    OptionalNumber<int> marked{};
    std::optional<GatheringAt> gathering{}; // no value if the name is of no gathering
  };
  Formula const& formula_;
  std::optional<IdealCopy> copy_{}; // made for the first name
  std::unordered_map<std::string, Seen> seen_{};
  std::vector<std::string> names_{}; // in the order in which they come, so that the first that is wrong is told
  std::vector<bool> runs_ = std::vector<bool>(formula_.runs().size());

  /// Adds a fact. Returns false if another was stated before.
  template <class Fact> static bool join(Fact& to, Fact const& fact) {
    if (!fact) return true;
    if (to) return to == fact;
    to = fact;
    return true;
  }
  /// Returns the error of a number of marked leaves that `leaves` leaves cannot have.
  static std::optional<Error> what_is_wrong(std::string const& name, Seen const& one, int leaves) {
    if (one.marked && *one.marked > leaves) return error_in_field(Problem::too_many_marked_leaves, name, leaves);
    return {};
  }

public:
  explicit SeenRemnants(Formula const& formula) : formula_{formula} {}
  /// Adds evidence. A gathering is taken by the name that the formula gives it, however it is spelt.
  std::optional<Error> add(RemnantEvidence const& one) {
    auto const mark = read_signature(one.unit, formula_.letters());
    if (!copy_) copy_.emplace(formula_);
    auto found = mark ? copy_->find(*mark) : std::nullopt;
    if (found && found->several && found->other_series) found.reset(); // A, where there are πA and χA
    auto const name = found ? std::string{to_text(formula_.signature(found->gathering)).view()} : one.unit;
    auto const [at, is_new] = seen_.try_emplace(name);
    if (is_new) names_.push_back(name);
    auto& seen = at->second;
    if (found) {
      seen.gathering = found->gathering;
      runs_[found->gathering.run] = true;
    }
    if (one.marked_leaves && *one.marked_leaves < 0)
      return error_in_field(Problem::negative_count, one.unit, *one.marked_leaves);
    if (!join(seen.stock, one.stock) || !join(seen.marked, one.marked_leaves))
      return error_in_field(Problem::remnant_seen_twice, one.unit);
    return {};
  }
  /// Returns for each run whether something was seen of it.
  [[nodiscard]] std::vector<bool> const& runs() const { return runs_; }
  /// Stores the evidence. It belongs to a unit, or to a gathering that fills whole sheets, of which only the stock of the
  /// leaves that it lacks is asked.
  std::optional<Error> store(SheetsOfBook& book) const {
    std::unordered_set<std::string_view> units;
    for (auto& unit : book.units) {
      auto const one = seen_.find(unit.name);
      if (one == seen_.end()) continue;
      units.insert(unit.name);
      if (auto const error = what_is_wrong(unit.name, one->second, unit.leaves)) return error;
      unit.stock = one->second.stock, unit.marked_leaves = one->second.marked;
    }
    for (auto& place : book.places)
      if (auto const one = seen_.find(place.gathering); one != seen_.end()) place.stock = one->second.stock;
    for (auto const& name : names_) {
      auto const& one = seen_.at(name);
      if (units.contains(name)) continue;
      if (!one.gathering) return error_in_field(Problem::no_such_remnant, name);
      if (auto const error = what_is_wrong(name, one, formula_.leaves_folded(*one.gathering))) return error;
    }
    return {};
  }
};
} // namespace detail

BIFOLIUM_INLINE Expected<SheetsOfBook> sheets_of_book(Formula const& formula, Format format,
                                                      std::vector<RemnantEvidence> const& seen) {
  auto const leaves = format.leaves_to_sheet();
  if (!leaves) broken("sheets can be counted only for a format that says how many leaves a sheet makes");
  SheetsOfBook book;
  book.leaves_to_sheet = *leaves;
  detail::SeenRemnants all{formula};
  for (auto const& one : seen)
    if (auto const error = all.add(one)) return *error;
  detail::Remnants{formula, book}.find(all.runs());
  if (auto const error = all.store(book)) return *error;
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
