// SPDX-License-Identifier: MIT
/// Work at the press. A forme is what is locked up and printed at once; an impression is one side of one sheet, two pulls
/// on a two-pull press; a sheet perfected has had two. Work was paid by the token, an "hour" of account that the clock did
/// not keep, and a token was not one number: Moxon's is ten quires, Savage's half a perfect ream. So hours are given
/// twice, as the unit of pay and by the clock, and both name the figure they rest on.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>

#include <utility>

namespace bifolium {
inline namespace v0 {

/// A number of impressions that a source gives a name: what makes a token, what is done in an hour or a day.
struct PressFigure {
  std::int32_t impressions{}; ///< one side of one sheet each
  char const* source{};       ///< where the figure was read
  friend constexpr bool operator==(PressFigure a, PressFigure b) noexcept { return a.impressions == b.impressions; }
};
/// Impressions that make a token, the unit of pay.
namespace tokens {
/// Of quires of 24 sheets.
inline constexpr PressFigure moxon_24{240, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 24"};
/// Of quires of 25 sheets.
inline constexpr PressFigure moxon_25{250, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 25"};
/// Half a perfect ream of 516 sheets.
inline constexpr PressFigure savage{258, "Savage (1841), s.v. Token: ten quires and eighteen sheets"};
} // namespace tokens
/// Impressions in an hour of the clock by a full press, two men.
namespace rates {
/// As an ordinance of the town had it.
inline constexpr PressFigure frankfurt{240, "Frankfurt ordinances of 1573, in Moran, Printing Presses (1973), p. 32"};
/// A token an hour.
inline constexpr PressFigure moxon{250, "Moxon (1683), in Moran, Printing Presses (1973), p. 32"};
/// What could be kept up.
inline constexpr PressFigure sustained{200, "Moran, Printing Presses (1973), p. 32: over a day of twelve hours"};
} // namespace rates

/// Who works the press: two men, or one at half the rate (Moxon, in Savage s.v. Hours: one man five quires).
enum class Crew : std::uint8_t {
  full_press = 2, ///< one man beats and one pulls
  half_press = 1  ///< one man does both
};

/// What a number of impressions comes to.
struct Presswork {
  std::int64_t impressions{}; ///< one side of one sheet (or piece of paper cut before) each
  std::int64_t
      perfected{};   ///< sheets (or pieces of paper cut before) printed on both sides; a single side over is left out
  Fraction tokens{}; ///< of the definition given: hours of pay, not of the clock
  Fraction days_of_pay{}; ///< at the tokens a day of the terms, of one press
  Fraction clock_hours{}; ///< of one press
  Fraction days{};        ///< by the clock, for all presses together

  /// Pulls of the bar: two an impression on a two-pull press, one on later presses; the earliest, one-pull presses take a
  /// folio sheet in four passes, which is two for an impression (Hellinga). Nothing when that does not fit, or there are none.
  [[nodiscard]] constexpr std::optional<std::int64_t> pulls(int pulls_an_impression = 2) const {
    if (pulls_an_impression <= 0) return std::nullopt;
    return checked_multiply(impressions, pulls_an_impression);
  }
  friend constexpr bool operator==(Presswork const&, Presswork const&) = default;
};

/// How the work is done. The figures are of the sources above; another house needs others.
struct PressTerms {
  PressFigure token{tokens::moxon_25}; ///< impressions that are paid as one token
  PressFigure rate{rates::moxon};      ///< impressions in an hour of the clock by two men
  Crew crew{Crew::full_press};         ///< one man does half as much
  std::int32_t presses{1};             ///< that work at once
  std::int32_t hours_a_day{10};        ///< of the clock
  std::int32_t tokens_a_day{12};       ///< common work (Savage 1841, s.v. Hours); 3 or 4 of fine work
  friend constexpr bool operator==(PressTerms const&, PressTerms const&) = default;
};

/// So many impressions. error: negative_count, not_positive, result_too_large.
constexpr Expected<Presswork> presswork_of(std::int64_t impressions, PressTerms const& terms = {}) {
  if (impressions < 0) return error_in_field(Problem::negative_count, "impressions", impressions);
  for (auto const& [field, number] : {std::pair{"token", terms.token.impressions},
                                      {"rate", terms.rate.impressions},
                                      {"presses", terms.presses},
                                      {"hours_a_day", terms.hours_a_day},
                                      {"tokens_a_day", terms.tokens_a_day},
                                      {"crew", static_cast<std::int32_t>(terms.crew)}})
    if (number <= 0) return error_in_field(Problem::not_positive, field, number);
  auto const too_large = error_in_field(Problem::result_too_large, "");
  auto const twice = checked_multiply(impressions, 2); // a half press does half the rate
  if (!twice) return too_large;
  Fraction const token_count{impressions, terms.token.impressions};
  auto const days_of_pay = checked_divide(token_count, Fraction{terms.tokens_a_day});
  Fraction const hours{*twice, std::int64_t{terms.rate.impressions} * static_cast<std::int64_t>(terms.crew)};
  auto const days = checked_divide(hours, Fraction{std::int64_t{terms.presses} * terms.hours_a_day});
  if (!days_of_pay || !days) return too_large;
  return Presswork{impressions, impressions / 2, token_count, *days_of_pay, hours, *days};
}
/// Both sides of so many sheets. error: negative_count, not_positive, result_too_large.
constexpr Expected<Presswork> presswork(std::int64_t sheets, PressTerms const& terms = {}) {
  auto const impressions = checked_multiply(sheets, 2);
  if (!impressions && sheets > 0) return error_in_field(Problem::result_too_large, "");
  return presswork_of(impressions.value_or(-1), terms);
}

} // namespace v0
} // namespace bifolium
