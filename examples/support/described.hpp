// SPDX-License-Identifier: MIT
/// A record and all that the library makes of it, evaluated once, so that the text and the JSON of an answer say the same: the
/// format, the lines for a record, and what the leaf shows against itself.
#pragma once

#include <bifolium/bifolium.hpp>
#include <bifolium/book/examine.hpp>
#include <bifolium/evidence/signs_against.hpp>
#include <bifolium/record/record_lines.hpp>

#include "book.hpp"
#include "leaf_told.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace support {
using namespace bifolium;

/// A record, and what the library makes of it.
struct Described {
  Book book;
  Observation observation;
  PeriodBounds bounds;
  Inference inference;
  Audit audit;
  bool format_is_stated{}; ///< in its field or before the formula

  /// The format that the leaf argues for, where one is at least probable.
  [[nodiscard]] std::optional<FormatCandidate> likely() const {
    if (inference.certainty < Certainty::probable || inference.mixed || is_one_leaf()) return std::nullopt;
    return inference.candidates.front();
  }
  /// The format to write in a record: as stated, else as the leaf argues.
  [[nodiscard]] std::optional<Format> format() const {
    if (auto const* stated = book.record.look_up("format"))
      if (auto const read = read_format_statement(stated->value)) return read->formats.front();
    if (book.collation && book.collation->format()) return book.collation->format();
    auto const candidate = likely();
    return candidate ? std::optional{candidate->format} : std::nullopt;
  }
  [[nodiscard]] std::string size() const { return recorded(book.seen, book.binding, format(), book.lowest); }
  /// The pages: of the field, else of the formula's text.
  [[nodiscard]] std::optional<Extent> pages() const {
    if (book.extent) return book.extent;
    if (!book.collation) return std::nullopt;
    auto const pages = pagination_of(*book.collation);
    if (!pages) return std::nullopt;
    Extent extent;
    extent.pagination = *pages;
    return extent;
  }
  /// Whether the whole text is on one leaf: one page, or two. No fold was needed for it, so that what the leaf shows does not
  /// tell a leaf of a gathering from a sheet or a part of one.
  [[nodiscard]] bool is_one_leaf() const {
    auto const stated = pages();
    if (!stated || stated->pagination.runs.empty()) return false;
    auto const total = stated->pagination.total();
    return total.high >= 1 && total.high <= 2 && !(book.collation && book.collation->leaves() > 1);
  }
  /// The pages with the plates, which may have a field of their own: as a catalogue writes them, or a number alone.
  [[nodiscard]] std::optional<Extent> extent() const {
    auto extent = pages();
    auto const* const field = book.record.look_up("plates");
    if (field == nullptr || (extent && !extent->plates.empty())) return extent;
    auto plates = read_extent(field->value);
    if (!plates) plates = read_extent(field->value + " leaves of plates");
    if (!plates || plates->plates.empty()) return extent;
    if (!extent) extent.emplace();
    extent->plates = plates->plates;
    return extent;
  }
  [[nodiscard]] std::string physical_line() const {
    auto const pages = extent();
    return physical_description(pages ? extent_line(*pages) : std::string{}, size());
  }
  [[nodiscard]] std::string collation() const {
    StatedBeside beside{book.signing, {}};
    if (book.extent) beside.pagination = book.extent->pagination;
    return collation_line(*book.collation, beside);
  }
};

/// What the leaf shows against itself, or against the format for which it argues.
struct Remark {
  bool doubt{}; ///< otherwise it is only odd
  std::string says{};
  std::string_view id{}; ///< identifier of the problem, if it is one
};

/// Whether a warning of the observation is that two of its signs contradict each other.
inline bool contradicts(Error const& warning) {
  return warning.problem == Problem::type_page_above_leaf || warning.problem == Problem::edges_of_cropped_leaf ||
         warning.problem == Problem::chain_lines_on_wove;
}
/// Remarks that no finding of the description has: those against a stated format are findings. `against` becomes true where
/// the leaf or its paper does not agree with the record.
inline std::vector<Remark> remarks(Described const& described, bool& against) {
  std::vector<Remark> said;
  auto const likely = described.likely();
  if (likely && !described.format_is_stated && likely->format.kind() == Format::Kind::leaves)
    for (auto const& sign : signs_against(described.observation, likely->format))
      if (sign.field != "watermark") said.push_back({true, to_words(sign, likely->format), {}});
  against = !said.empty();
  auto const odd = [&](Error const& warning) {
    said.push_back({false, sentence_of(warning), identifier(warning.problem)});
    against = against || contradicts(warning);
  };
  for (auto const& warning : described.observation.warnings()) odd(warning);
  // a distance of chain lines tells that there are some, and nothing of their direction
  auto const& seen = described.observation.seen();
  if (described.book.chain_spacing && seen.material == Material::wove && seen.chain_lines == ChainLines::unknown)
    odd(error_in_field(Problem::chain_lines_on_wove, "chain spacing"));
  for (auto const& bound : described.bounds)
    against = against || (bound.binds() && seen.year && seen.year->to < bound.year);
  return said;
}

} // namespace support
