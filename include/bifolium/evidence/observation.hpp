// SPDX-License-Identifier: MIT
/// What somebody saw of a leaf. Every field may be left out; "not looked at" and "not there" are different answers. What
/// cannot be (a height of nothing) is an error; what is odd but real (chain lines on wove paper: the first wove book has
/// both; a leaf three times as high as broad) is a warning beside the value.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/fold/shows.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/paper/sheet_size.hpp>

namespace bifolium {
inline namespace v0 {

enum class Material : std::uint8_t { unknown, laid, wove, vellum };
/// What the binder left: uncut, cut once by the trade, cut again, cut into the margins, or set into other paper.
enum class LeafState : std::uint8_t { unknown, uncut, trimmed, rebound, cropped, inlaid };
/// Where in the leaf the watermark is.
enum class MarkPlace : std::uint8_t {
  unknown,
  centre,
  gutter,
  head_of_gutter,
  fore_edge,
  head_or_tail_edge,
  corner,
  absent ///< looked for and not there
};

/// A year, or the years between which.
struct When {
  int from{}, to{};
  constexpr When(int year) : from{year}, to{year} {}
  constexpr When(int first, int last) : from{first}, to{last} {}
  friend constexpr bool operator==(When, When) = default;
};

/// What was seen, to be written as `{.height = 201_mm, .chain_lines = ChainLines::horizontal}`.
struct Seen {
  std::optional<millimetres> height{}, width{}; ///< of the leaf
  std::optional<millimetres> type_height{};     ///< of the type page, which no binder cuts
  Material material{};
  ChainLines chain_lines{};
  MarkPlace watermark{};
  std::optional<int> gathering_leaves{}; ///< of most gatherings
  LeafState state{};
  std::optional<When> year{};
  Region place{};
};

/// Something seen that can be. Made by `observe` alone.
class Observation {
  Seen seen_;
  std::array<Problem, 3> warnings_{};
  std::uint8_t warning_count_{};

  constexpr explicit Observation(Seen const& seen) : seen_{seen} {}
  constexpr void warn(Problem problem) { warnings_[warning_count_++] = problem; }
  friend constexpr Expected<Observation> observe(Seen const& seen);

public:
  [[nodiscard]] constexpr Seen const& seen() const noexcept { return seen_; }
  [[nodiscard]] constexpr int warnings() const noexcept { return warning_count_; }
  /// pre: counting from 0.
  [[nodiscard]] constexpr Problem warning(int i) const {
    if (i < 0 || i >= warning_count_) broken("there is no warning of that number");
    return warnings_[static_cast<std::size_t>(i)];
  }
};

/// Checks what was seen. error: impossible_measure, impossible_years, impossible_gathering.
constexpr Expected<Observation> observe(Seen const& seen) {
  auto const wrong = [](std::optional<millimetres> length) {
    return length && !(length->count() > 0 && length->count() < 1e6); // not a number fails both
  };
  if (wrong(seen.height)) return error_at(Problem::impossible_measure, 1, 1, "height", 6);
  if (wrong(seen.width)) return error_at(Problem::impossible_measure, 1, 1, "width", 5);
  if (wrong(seen.type_height)) return error_at(Problem::impossible_measure, 1, 1, "type height", 11);
  if (seen.year && seen.year->from > seen.year->to) return error_at(Problem::impossible_years, 1, 1);
  if (seen.gathering_leaves && (*seen.gathering_leaves < 1 || *seen.gathering_leaves > most_leaves_in_gathering))
    return error_at(Problem::impossible_gathering, 1, 1, "", 0, *seen.gathering_leaves);
  Observation observation{seen};
  bool const chains = seen.chain_lines != ChainLines::unknown;
  bool const marks = seen.watermark != MarkPlace::unknown && seen.watermark != MarkPlace::absent;
  if (seen.material == Material::wove && chains) observation.warn(Problem::chain_lines_on_wove);
  if (seen.height && seen.width && seen.height->count() >= 3 * seen.width->count())
    observation.warn(Problem::very_narrow_leaf);
  if (seen.material == Material::vellum && (marks || chains)) observation.warn(Problem::marks_in_vellum);
  return observation;
}

} // namespace v0
} // namespace bifolium
