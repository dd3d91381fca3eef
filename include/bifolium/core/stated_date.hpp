// SPDX-License-Identifier: MIT
/// The date of a book as a catalogue states it: what is printed on the book, what the cataloguer supplied, and how sure
/// that is. One range of years comes out of all of it, so that whoever reasons with a date need not know how it is
/// written. Made by reading a text: core/read_date.hpp.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/year_range.hpp>

#include <optional>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What a statement of date says.
struct StatedDate {
  /// The years in which the book was printed, as far as the statement tells: a correction, else what is in brackets, else
  /// what is printed. Missing where the statement says that no date is known (`n.d.`). A single year that is doubted or
  /// approximate (`1725?`, `ca. 1725`) is five years wider at either end than it is written.
  std::optional<YearRange> years{};
  /// The years as they are written, before anything is widened: 1725 of `ca. 1725`.
  std::optional<YearRange> written{};
  /// What is printed on the book where the statement corrects or resolves it: 1725 of `1725 [i.e. 1752]`.
  std::optional<YearRange> printed{};
  bool supplied{};     ///< in square brackets: not on the book
  bool corrected{};    ///< `i.e.`, `that is`: what is printed is wrong or of another calendar
  bool probable{};     ///< a question mark
  bool approximate{};  ///< `ca.`, `approximately`
  bool double_dated{}; ///< `1725/6`: the year began in March in the first reckoning, in January in the second
  bool open{};         ///< `not before`, `not after`: one end of the range is fifty years off, by convention

  TextSpan read{};                ///< from the first to the last character that tells of the years
  std::vector<TextSpan> unread{}; ///< words before, between and after, such as day, month and imprint
  /// What is doubtful: date_numerals_differ, several_dates, year_clipped, circa_or_copyright.
  [[nodiscard]] std::vector<Error> const& warnings() const noexcept { return warnings_; }
  /// Adds a doubt; for the reader.
  constexpr void warn(Error const& doubt) { warnings_.push_back(doubt); }

private:
  std::vector<Error> warnings_{};
};

} // namespace v0
} // namespace bifolium
