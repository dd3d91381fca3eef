// SPDX-License-Identifier: MIT
/// Work at the press. A forme is the type that is locked up and printed at once. An impression is one side of one
/// sheet, two pulls of the bar on a two-pull press. A sheet with both sides printed is perfected. Work was paid by the
/// token, which was called an hour but did not take exactly an hour, and a token was no fixed number: Moxon's is ten
/// quires, Savage's half a perfect ream. So hours are given twice, as the unit of pay and by the clock, and both name
/// the number on which they are based.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/paper/count.hpp>

#include <utility>

namespace bifolium {
inline namespace v0 {

/// A number of impressions that a source gives a name: for a token, an hour or a day.
struct PressFigure {
  std::int32_t impressions{}; ///< impressions, each one side of one sheet
  char const* source{""};     ///< the source; empty if there is none
  friend constexpr bool operator==(PressFigure a, PressFigure b) noexcept { return a.impressions == b.impressions; }
};
/// Impressions in a token, the unit of pay.
namespace tokens {
/// Ten quires of 24 sheets.
inline constexpr PressFigure moxon_24{240, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 24"};
/// Ten quires of 25 sheets.
inline constexpr PressFigure moxon_25{250, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 25"};
/// Half a perfect ream of 516 sheets.
inline constexpr PressFigure savage{258, "Savage (1841), s.v. Token: ten quires and eighteen sheets"};
} // namespace tokens
/// Returns the token that goes with a ream, since the token was counted in quires of the paper that lay at the press: half a
/// perfect ream of 516, ten quires of 24, or ten quires of 25, which is also taken for a ream in quires of another size.
constexpr PressFigure token_with(ReamCount const& ream) noexcept {
  if (ream == reams::of_516) return tokens::savage;
  return ream.quire == 24 ? tokens::moxon_24 : tokens::moxon_25;
}
/// Impressions in an hour of the clock by a full press with two men.
namespace rates {
/// The number in an ordinance of the town.
inline constexpr PressFigure frankfurt{240, "Frankfurt ordinances of 1573, in Moran, Printing Presses (1973), p. 32"};
/// One token an hour.
inline constexpr PressFigure moxon{250, "Moxon (1683), in Moran, Printing Presses (1973), p. 32"};
/// A rate that could be kept up over a day.
inline constexpr PressFigure sustained{200, "Moran, Printing Presses (1973), p. 32: over a day of twelve hours"};
} // namespace rates

/// The crew of the press: two men, or one man at half the rate (Moxon, in Savage s.v. Hours: one man five quires).
enum class Crew : std::uint8_t {
  full_press = 2, ///< one man inks the type and one pulls the bar
  half_press = 1  ///< one man does both
};

/// The work of a number of impressions.
struct Presswork {
  std::int64_t impressions{}; ///< impressions, each one side of one sheet (or of a piece cut before printing)
  std::int64_t
      perfected{};   ///< sheets (or pieces cut before printing) printed on both sides; an odd single side is left out
  Fraction tokens{}; ///< tokens of the given size: hours of pay, not of the clock
  Fraction days_of_pay{}; ///< days of pay of one press, at the number of tokens a day in the terms
  Fraction clock_hours{}; ///< hours of the clock, of one press
  Fraction days{};        ///< days by the clock, for all presses together

  /// Returns the pulls of the bar. An impression takes two pulls on a two-pull press and one on later presses; the
  /// earliest, one-pull presses took four pulls for a sheet of a folio, which is two for each impression (Hellinga).
  /// Returns no value if the number does not fit in 64 bits, or if `pulls_an_impression` is not positive.
  [[nodiscard]] constexpr std::optional<std::int64_t> pulls(int pulls_an_impression = 2) const {
    if (pulls_an_impression <= 0) return std::nullopt;
    return checked_multiply(impressions, pulls_an_impression);
  }
  friend constexpr bool operator==(Presswork const&, Presswork const&) = default;
};

/// The conditions of the work. The default numbers are those of the sources above; other houses had others.
struct PressTerms {
  PressFigure token{tokens::moxon_25}; ///< impressions that are paid as one token
  PressFigure rate{rates::moxon};      ///< impressions in an hour of the clock by two men
  Crew crew{Crew::full_press};         ///< the crew; one man does half as much as two
  std::int32_t presses{1};             ///< presses that work at once
  std::int32_t hours_a_day{10};        ///< working hours of a day
  std::int32_t tokens_a_day{12};       ///< tokens a day in common work (Savage 1841, s.v. Hours); fine work has 3 or 4
  friend constexpr bool operator==(PressTerms const&, PressTerms const&) = default;
};

/// Returns the work of a number of impressions. Errors: negative_count, not_positive, no_such_value,
/// result_too_large.
constexpr Expected<Presswork> presswork_of(std::int64_t impressions, PressTerms const& terms = {}) {
  if (impressions < 0) return error_in_field(Problem::negative_count, "impressions", impressions);
  for (auto const& [field, number] : {std::pair{"token", terms.token.impressions},
                                      {"rate", terms.rate.impressions},
                                      {"presses", terms.presses},
                                      {"hours_a_day", terms.hours_a_day},
                                      {"tokens_a_day", terms.tokens_a_day},
                                      {"crew", static_cast<std::int32_t>(terms.crew)}})
    if (number <= 0) return error_in_field(Problem::not_positive, field, number);
  if (terms.crew > Crew::full_press) return error_in_field(Problem::no_such_value, "crew");
  auto const too_large = error_in_field(Problem::result_too_large, "");
  auto const twice = checked_multiply(impressions, 2); // one man works at half the rate
  if (!twice) return too_large;
  Fraction const token_count{impressions, terms.token.impressions};
  auto const days_of_pay = checked_divide(token_count, Fraction{terms.tokens_a_day});
  Fraction const hours{*twice, std::int64_t{terms.rate.impressions} * static_cast<std::int64_t>(terms.crew)};
  auto const days = checked_divide(hours, Fraction{std::int64_t{terms.presses} * terms.hours_a_day});
  if (!days_of_pay || !days) return too_large;
  return Presswork{impressions, impressions / 2, token_count, *days_of_pay, hours, *days};
}
/// Returns the work of printing both sides of a number of sheets. Errors: negative_count, not_positive,
/// result_too_large.
constexpr Expected<Presswork> presswork(std::int64_t sheets, PressTerms const& terms = {}) {
  auto const impressions = checked_multiply(sheets, 2);
  if (!impressions && sheets > 0) return error_in_field(Problem::result_too_large, "");
  return presswork_of(impressions.value_or(-1), terms);
}

} // namespace v0
} // namespace bifolium
