// SPDX-License-Identifier: MIT
/// The fit of the paper model: expectation-maximisation over what no book tells, the population its sheet is of and how
/// much was cut from its leaf beyond what all copies lose. Deterministic: the same books give the same counts.
#pragma once

#include <bifolium/evidence/paper_model.hpp>
#include <bifolium/evidence/seen.hpp>

#include <cstdint>
#include <fstream>
#include <string>
#include <vector>

namespace fitting {

/// A book of known format.
struct Book {
  int leaves{};              ///< to the sheet
  double height{}, width{};  ///< mm; a width of 0 was not measured
  std::optional<int> year{}; ///< none: the fifteenth century
  bifolium::Region region{}; ///< of printing
  bool in_centimetres{};     ///< the height is of the binding, in whole centimetres, rounded up
  bool of_incunables{};      ///< counts for how common formats were
  std::string edition{};     ///< books of one edition, or of one source, are held out together
  std::string gathering{};   ///< as recorded, empty where it is not
  enum class Source : std::uint8_t { incunables, measured, catalogue, census, other } source{};
};

/// The start of a population.
struct Start {
  std::string name;
  double short_side, long_side;
};

/// How common formats were from 1506 on, where nobody counted.
struct Assumed {
  bool british{}; ///< Britain with its daughters; otherwise anywhere
  std::size_t year_number{};
  float books{}; ///< how likely an undated book is of one year about then
  bifolium::FormatShares share{};
};

/// What the fit gives, and keeps what `PaperCounts` looks at.
struct Fitted {
  std::array<bifolium::SheetPopulation, bifolium::population_count> populations{};
  double tail{};
  std::vector<bifolium::SheetCount> sheets{};
  std::vector<bifolium::YearShares> formats{};
  std::array<float, bifolium::count_years.size()> books{};
  double log_likelihood{};

  [[nodiscard]] bifolium::PaperCounts counts() const { return {populations, tail, sheets, formats, books}; }
};

using Rows = std::vector<std::vector<std::string>>;
/// The rows of a table, without its comments.
Rows rows_of(std::string const& file);
/// All books of tests/data that teach.
std::vector<Book> books_of(std::string const& data);
std::vector<Start> starts_of(std::string const& folder);
std::vector<Assumed> assumed_of(std::string const& folder);
/// Fits the books. A book may be there more than once.
Fitted fit(std::vector<Book> const& books, std::vector<Start> const& starts, std::vector<Assumed> const& assumed);
/// Cross-validation holds out one of five parts at a time: which part the books of an edition are in, whatever else is
/// in the tables.
inline constexpr unsigned parts = 5;
unsigned part_of(Book const& book);
/// What is asked of a book: its size as it was recorded, its year and, unless told otherwise, its place.
bifolium::LeafEvidence seen_of(Book const& book, bool placed = true);
/// Books drawn again, an edition at a time, as many as there were: the set of one number is always the same.
std::vector<Book> resampled(std::vector<Book> const& books, unsigned number);

} // namespace fitting
