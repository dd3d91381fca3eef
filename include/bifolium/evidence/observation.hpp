// SPDX-License-Identifier: MIT
/// An observation of a leaf. Every field may be left out; "not looked at" and "not there" are different. An impossible
/// value (a height of zero) is an error. An unusual but real one (chain lines on wove paper: the first wove book has
/// both; a leaf three times as high as broad) is a warning.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/seen.hpp>
#include <bifolium/paper/measure.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// A valid observation. `observe` is the only function that makes one.
class Observation {
  LeafEvidence seen_;
  std::array<Error, 7> warnings_{};
  std::uint8_t warning_count_{};

  constexpr explicit Observation(LeafEvidence const& seen) : seen_{seen} {}
  [[gnu::noinline]] constexpr void warn(Problem problem, std::string_view field, std::int64_t limit = 0) {
    warnings_[warning_count_++] = error_in_field(problem, field, limit);
  }
  friend constexpr Expected<Observation> observe(LeafEvidence const& seen);

public:
  /// Marks a type whose members return references into it: `->` of a temporary `Expected` of it does not compile.
  using gives_views = void;

  /// Returns the evidence as given.
  [[nodiscard]] constexpr LeafEvidence const& seen() const& noexcept BIFOLIUM_LIFETIMEBOUND { return seen_; }
  /// Returns the evidence of a temporary observation by value.
  [[nodiscard]] constexpr LeafEvidence seen() const&& noexcept { return seen_; }
  /// Returns the warnings about unusual evidence, such as chain lines on wove paper, each with its field.
  [[nodiscard]] constexpr std::span<Error const> warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    return {warnings_.data(), warning_count_};
  }
  std::span<Error const> warnings() const&& = delete; // it would look at what goes
  friend constexpr bool operator==(Observation const&, Observation const&) = default;
};

namespace detail {

/// What is wrong with a field, if there is a problem. One place makes the error of it: each that does is code of its own.
struct FieldProblem {
  Problem problem{};
  std::string_view field{};
  std::int64_t limit{};
};
/// The field with a number that its type does not name: a caller can make any number a `MarkPlace`, and tables have a row for
/// each name only. Empty if there is none.
constexpr std::string_view field_without_name(LeafEvidence const& seen) noexcept {
  if (seen.of > MeasureOf::either) return "of";
  if (seen.material > Material::vellum) return "material";
  if (seen.chain_lines > ChainLines::both) return "chain_lines";
  if (seen.watermark > MarkPlace::absent) return "watermark";
  if (seen.countermark > MarkPlace::absent) return "countermark";
  if (seen.head > EdgeSeen::tranchefile) return "head";
  if (seen.tail > EdgeSeen::tranchefile) return "tail";
  if (seen.fore_edge > EdgeSeen::tranchefile) return "fore_edge";
  if (seen.point_hole > HolePlace::inside) return "point_hole";
  if (seen.state > LeafState::inlaid) return "state";
  if (static_cast<int>(seen.place) >= region_count) return "place";
  for (auto const& one : seen.leaves)
    if (one.mark > MarkPlace::absent || one.chain_lines > ChainLines::both) return "leaves";
  return {};
}
constexpr FieldProblem impossible_in(LeafEvidence const& seen) {
  if (auto const field = field_without_name(seen); !field.empty()) return {Problem::no_such_value, field};
  if (!is_measure(seen.height)) return {Problem::impossible_measure, "height"};
  if (!is_measure(seen.width)) return {Problem::impossible_measure, "width"};
  auto const step = seen.rounded_up_to;
  if (!(step >= 0_mm) || (seen.height && *seen.height < step) || (seen.width && *seen.width < step))
    return {Problem::impossible_step, "rounded_up_to"};
  if (!is_measure(seen.type_height)) return {Problem::impossible_measure, "type_height"};
  constexpr int most_year = 9999;
  if (seen.year && (seen.year->from > seen.year->to || seen.year->from < -most_year || seen.year->to > most_year))
    return {Problem::impossible_years, "year"};
  auto const is_size = [](std::optional<int> const& leaves) {
    return !leaves || (*leaves >= 1 && *leaves <= most_leaves_in_gathering);
  };
  if (!is_size(seen.gathering_leaves))
    return {Problem::impossible_gathering, "gathering_leaves", *seen.gathering_leaves};
  if (!is_size(seen.alternating_with))
    return {Problem::impossible_gathering, "alternating_with", *seen.alternating_with};
  for (std::size_t i = 0; i < seen.leaves.size() && seen.leaves[i].leaf != 0; ++i) {
    auto const leaf = seen.leaves[i].leaf;
    if (!seen.gathering_leaves) return {Problem::gathering_size_needed, "gathering_leaves"};
    if (leaf < 1 || leaf > *seen.gathering_leaves)
      return {Problem::leaf_outside_gathering, "leaves", *seen.gathering_leaves};
    for (std::size_t k = 0; k < i; ++k)
      if (seen.leaves[k].leaf == leaf) return {Problem::leaf_seen_twice, "leaves", leaf};
  }
  return {};
}

} // namespace detail

/// Checks the evidence. Errors: no_such_value, impossible_measure, impossible_step, impossible_years, impossible_gathering; for single
/// leaves gathering_size_needed, leaf_outside_gathering, leaf_seen_twice. A year outside those of which paper and formats
/// are known is a warning, years_not_known.
/// Example: `observe({.height = 201_mm, .year = 1490}).has_value()`.
constexpr Expected<Observation> observe(LeafEvidence const& seen) {
  if (auto const wrong = detail::impossible_in(seen); wrong.problem != Problem::none)
    return error_in_field(wrong.problem, wrong.field, wrong.limit);
  Observation observation{seen};
  bool const chains = seen.chain_lines != ChainLines::unknown;
  auto const is_there = [](MarkPlace mark) { return mark != MarkPlace::unknown && mark != MarkPlace::absent; };
  bool const marks = is_there(seen.watermark) || is_there(seen.countermark);
  // leaves of a thumb bible are about 45 mm high, those of the largest atlas less than a metre (common practice, no
  // source)
  constexpr auto least = 30_mm, most = 1000_mm;
  if (seen.height && (*seen.height < least || *seen.height > most))
    observation.warn(Problem::unlikely_measure, "height");
  if (seen.width && (*seen.width < 20_mm || *seen.width > most)) observation.warn(Problem::unlikely_measure, "width");
  if (seen.type_height && seen.height && *seen.type_height > *seen.height)
    observation.warn(Problem::type_page_above_leaf, "type_height");
  auto const kept = [](EdgeSeen edge) { return edge != EdgeSeen::unknown; };
  if (seen.state == LeafState::cropped && (kept(seen.head) || kept(seen.tail) || kept(seen.fore_edge)))
    observation.warn(Problem::edges_of_cropped_leaf, "state");
  if (seen.material == Material::wove && chains) observation.warn(Problem::chain_lines_on_wove, "chain_lines");
  if (seen.height && seen.width && seen.height->count() >= 3 * seen.width->count())
    observation.warn(Problem::very_narrow_leaf, "width");
  if (seen.year && !seen.year->meets(years_of_paper))
    observation.warn(Problem::years_not_known, "year",
                     seen.year->to < years_of_paper.from ? years_of_paper.from : years_of_paper.to);
  if (seen.material == Material::vellum && (marks || chains)) observation.warn(Problem::marks_in_vellum, "material");
  return observation;
}

} // namespace v0
} // namespace bifolium
