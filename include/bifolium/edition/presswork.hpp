// SPDX-License-Identifier: MIT
/// Work at the press. A forme is what is locked up and printed at once; an impression is one side of one sheet, two pulls
/// on a two-pull press; a sheet perfected has had two. Work was paid by the token, an "hour" of account that the clock did
/// not keep, and a token was not one number: Moxon's is ten quires, Savage's half a perfect ream.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/paper/count.hpp>

namespace bifolium {
inline namespace v0 {

/// Impressions that make a token, the unit of pay.
struct Token {
  std::int32_t impressions{};
  char const* source{};
};
namespace tokens {
inline constexpr Token moxon_24{240, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 24"};
inline constexpr Token moxon_25{250, "Moxon (1683), in Savage (1841) s.v. Hours: ten quires, of 25"};
inline constexpr Token savage{258, "Savage (1841), s.v. Token: ten quires and eighteen sheets"};
} // namespace tokens

/// Impressions in an hour of the clock by a full press, two men.
struct PressRate {
  std::int32_t impressions_an_hour{};
  char const* source{};
};
namespace rates {
inline constexpr PressRate frankfurt{240, "Frankfurt ordinances of 1573, in Moran, Printing Presses (1973), p. 32"};
inline constexpr PressRate moxon{250, "Moxon (1683), in Moran, Printing Presses (1973), p. 32"};
inline constexpr PressRate sustained{200, "Moran, Printing Presses (1973), p. 32: over a day of twelve hours"};
} // namespace rates

/// Who works the press: two men, or one at half the rate (Moxon, in Savage s.v. Hours: one man five quires).
enum class Crew : std::uint8_t { full_press = 2, half_press = 1 };

/// What a number of impressions comes to.
struct Presswork {
  std::int64_t impressions{};
  Fraction tokens{};      ///< of the definition given
  Fraction clock_hours{}; ///< of one press
  Fraction days{};        ///< for all presses together
  [[nodiscard]] constexpr std::int64_t pulls(int pulls_an_impression = 2) const {
    return impressions * pulls_an_impression;
  }
  friend constexpr bool operator==(Presswork const&, Presswork const&) = default;
};

/// How the work is done; nothing is assumed but a full press.
struct PressTerms {
  Token token{tokens::moxon_25};
  PressRate rate{rates::moxon};
  Crew crew{Crew::full_press};
  std::int32_t presses{1};
  std::int32_t hours_a_day{10};
};

/// Both sides of so many sheets. error: negative_count, not_positive, number_too_large.
constexpr Expected<Presswork> presswork(std::int64_t sheets, PressTerms const& terms = {}) {
  if (sheets < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  if (terms.token.impressions <= 0 || terms.rate.impressions_an_hour <= 0 || terms.presses <= 0 ||
      terms.hours_a_day <= 0)
    return error_at(Problem::not_positive, 1, 1);
  auto const impressions = checked_multiply(sheets, 2);
  if (!impressions) return error_at(Problem::number_too_large, 1, 1);
  auto const men = static_cast<std::int64_t>(terms.crew);
  auto const twice = checked_multiply(*impressions, 2); // a half press does half the rate
  if (!twice) return error_at(Problem::number_too_large, 1, 1);
  Fraction const hours{*twice, terms.rate.impressions_an_hour * men};
  auto const days = checked_divide(hours, Fraction{std::int64_t{terms.presses} * terms.hours_a_day});
  if (!days) return error_at(Problem::number_too_large, 1, 1);
  return Presswork{*impressions, Fraction{*impressions, terms.token.impressions}, hours, *days};
}

} // namespace v0
} // namespace bifolium
