// SPDX-License-Identifier: MIT
/// The date of a book as a catalogue states it: what is printed on the book, what the cataloguer supplied, and how
/// certain the date is. All of it gives one range of years, so that code that uses a date need not know how the date is
/// written. core/read_date.hpp makes it from a text.
#pragma once

#include <bifolium/core/character_references.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/year_range.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The content of a statement of date.
struct StatedDate {
  /// The years in which the book was printed. If the statement has a correction, these are the years of the correction;
  /// otherwise those in brackets; otherwise those printed on the book. A single year that is doubtful or approximate
  /// (`1725?`, `ca. 1725`) is widened by five years at each end. Missing if the statement says that no date is known
  /// (`n.d.`).
  std::optional<YearRange> years{};
  /// The years as they are written, before any widening: 1725 for `ca. 1725`.
  std::optional<YearRange> written{};
  /// The date printed on the book, if the statement corrects or explains it: 1725 for `1725 [i.e. 1752]`.
  std::optional<YearRange> printed{};
  bool supplied{};     ///< true if the date is in square brackets: the cataloguer supplied it
  bool corrected{};    ///< true after `i.e.` or `that is`: the printed date is wrong or in another calendar
  bool probable{};     ///< true if the date has a question mark
  bool approximate{};  ///< true after `ca.` or `approximately`
  bool double_dated{}; ///< true for `1725/6`: the first year begins in March, the second in January
  bool open{}; ///< true for `not before`, `or later`, `1640-`: the other end of the range is set fifty years away

  TextSpan read{};                ///< the part of the text that states the years
  std::vector<TextSpan> unread{}; ///< other words before, between and after, such as day, month and imprint
  /// Returns the doubts about the date: date_numerals_differ, several_dates, year_clipped,
  /// year_with_day, typed_figures, circa_or_copyright.
  [[nodiscard]] std::vector<Error> const& warnings() const& noexcept BIFOLIUM_LIFETIMEBOUND { return warnings_; }
  /// Returns the doubts of a temporary date by value.
  [[nodiscard]] std::vector<Error> warnings() && { return static_cast<std::vector<Error>&&>(warnings_); }
  /// Adds a doubt. Readers of dates call it.
  constexpr void warn(Error const& doubt) { warnings_.push_back(doubt); }
  /// Moves its places from a text of characters into the text with the references. Readers of dates call it.
  constexpr void move_back(TextOfCharacters const& text) {
    read = text.original(read);
    for (auto& span : unread) span = text.original(span);
    text.move_back(warnings_);
  }
  friend bool operator==(StatedDate const&, StatedDate const&) = default;

private:
  std::vector<Error> warnings_{};
};

} // namespace v0
} // namespace bifolium
