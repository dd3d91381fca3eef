// SPDX-License-Identifier: MIT
/// What the tests of book/ share: a description from texts, and what a description adds up to, asked of the readers
/// alone.
#pragma once

#include <bifolium/book.hpp>
#include <bifolium/record/read_extent.hpp>

#include "data.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace book {

using namespace bifolium;

/// Formula, pagination and stated leaves; empty where not stated.
struct Texts {
  std::string formula{}, pagination{}, leaves{};
  friend bool operator==(Texts const&, Texts const&) = default;
};

inline Conventions conventions(Omitted omitted) {
  Conventions all;
  all.omitted = omitted;
  return all;
}
inline Audit examined(Texts const& texts, Omitted omitted = Omitted::eight, std::string const& plates = "") {
  FieldTexts fields;
  fields.formula = texts.formula, fields.pagination = texts.pagination, fields.leaves = texts.leaves;
  fields.plates = plates;
  return examine(read_description(fields, conventions(omitted)));
}

inline bool has(Audit const& audit, FindingId id) {
  return std::any_of(audit.findings.begin(), audit.findings.end(), [&](auto const& one) { return one.id == id; });
}

/// What a description says, by its counts: leaves of each gathering and of all, pages of each run, the number stated.
struct Counts {
  std::vector<std::int64_t> gatherings{}, pages{};
  std::int64_t leaves{}, stated{};
  bool by_leaf{};
  friend bool operator==(Counts const&, Counts const&) = default;
};
/// None where a field cannot be read.
inline std::optional<Counts> counts_of(Texts const& texts, Letters letters = {}, Omitted omitted = Omitted::eight) {
  Counts counts;
  if (!texts.formula.empty()) {
    auto const formula = read_formula(texts.formula, {omitted, letters, true});
    if (!formula) return std::nullopt;
    counts.leaves = formula->leaves();
    for (auto const& run : formula->runs())
      for (std::int64_t i = 0; i < run.gatherings; ++i) counts.gatherings.push_back(run.leaves.at(i));
  }
  if (!texts.pagination.empty()) {
    auto const extent = read_extent(texts.pagination);
    if (!extent) return std::nullopt;
    counts.by_leaf = extent->pagination.by_leaf();
    for (auto const& run : extent->pagination.runs) counts.pages.push_back(run.count);
  }
  if (!texts.leaves.empty()) counts.stated = std::stoll(texts.leaves);
  return counts;
}

/// The rows of tests/data that agree: formula, extent, what an omitted count means.
struct Sound {
  std::string name;
  Texts texts;
  Omitted omitted;
};
inline std::vector<Sound> sound_with_pages() {
  std::vector<Sound> all;
  for (auto const& row : data::rows("tcp_extents.tsv", 3))
    all.push_back({row[0], {row[1], row[2], ""}, Omitted::eight});
  for (auto const& row : data::rows("later_extents.tsv", 5))
    all.push_back({row[0], {row[2], row[3], ""}, Omitted::next});
  return all;
}
inline std::vector<Sound> sound_with_leaves() {
  std::vector<Sound> all;
  for (auto const& row : data::rows("bmc_formulas.tsv", 4))
    all.push_back({row[0], {row[2], "", row[3]}, Omitted::error});
  return all;
}

} // namespace book
